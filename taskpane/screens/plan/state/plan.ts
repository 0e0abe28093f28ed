import type { Assumption, AssumptionKey } from '../../../../shared/families/assumptions';
import { ASSUMPTIONS, assumptionList } from '../../../../shared/families/assumptions';
import type { OrderBook } from '../../../../shared/season/book/orderBook';
import type { FieldKey, PlanField, PlanForm } from '../../../../shared/season/one';
import { planFieldList, readOneOrder } from '../../../../shared/season/one';
import { isoDateOfSerial } from '../../../../shared/units/dates';
import { readTypedNumber } from '../../../../shared/units/typedNumber';
import { en } from '../../../words/en';
import type { MadeRun } from './run';

export interface PlanState {
  /** What stands in each field, as typed. */
  readonly texts: PlanTexts;
  /** Fields the user has left or changed: only these complain before the user asks for the plan. */
  readonly touched: ReadonlySet<string>;
  readonly isAsked: boolean;
  /** The last plan made, and the texts it was made from. */
  readonly made: MadeRun | undefined;
}
/** A figure of the hatchery's own in place of what is assumed. */
export type FigureKey = `assumptions.${AssumptionKey}`;
export type TextKey = FieldKey | FigureKey;
export type PlanTexts = Readonly<Record<TextKey, string>>;

export const figureKey = (key: AssumptionKey): FigureKey => `assumptions.${key}`;
const FIGURES = assumptionList.map(({ key }) => figureKey(key));

const two = (n: number): string => String(n).padStart(2, '0');
export const clockText = (hour: number): string =>
  `${two(Math.floor(hour))}:${two(Math.round((hour % 1) * 60))}`;

function initialText(field: PlanField): string {
  if (field.initial === undefined) return '';
  return field.kind === 'hour' && typeof field.initial === 'number'
    ? clockText(field.initial)
    : String(field.initial);
}

const textsOf = (given: Partial<PlanTexts>): PlanTexts =>
  Object.fromEntries([
    ...planFieldList.map((field) => [field.key, given[field.key as FieldKey] ?? initialText(field)]),
    ...FIGURES.map((key) => [key, given[key] ?? '']),
  ]) as Record<TextKey, string>;

/** Two months ahead leaves time for goods, fish and water. */
const USUAL_DAYS_AHEAD = 60;

export const initialPlan = (today: number): PlanState => ({
  texts: textsOf({ plannedOn: isoDateOfSerial(today), wantedOn: isoDateOfSerial(today + USUAL_DAYS_AHEAD) }),
  touched: new Set(),
  isAsked: false,
  made: undefined,
});

/** An invented small hatchery, to see what a plan looks like. */
export const exampleTexts = (texts: PlanTexts, hatchery = en.example.creek): PlanTexts => ({
  ...texts,
  hatchery,
  product: 'fry',
  wanted: '30000',
  females: '6',
  femaleWeight: '1.2',
  males: '6',
  vats: '8',
  vatLitres: '1000',
  temperature: '27',
  ph: '6.2',
  phWanted: '7',
  alkalinity: '0.2',
});

export interface Reading {
  readonly form: PlanForm | undefined;
  readonly book: OrderBook | undefined;
  readonly faults: ReadonlyMap<string, string>;
}

/** What a person typed for a figure, as the number meant; text that is none stays, and gets its sentence. */
function figureOf(a: Assumption, text: string): unknown {
  const read = readTypedNumber(text, { unit: a.unit === 'share' ? '' : a.unit, min: a.min, max: a.max });
  return read.kind === 'number' ? read.value : read.kind === 'blank' ? undefined : text;
}
const inputOf = (texts: PlanTexts): Record<string, unknown> => ({
  ...Object.fromEntries(planFieldList.map(({ key }) => [key, texts[key as FieldKey]])),
  assumptions: Object.fromEntries(
    assumptionList.flatMap((a) => {
      const value = figureOf(a, texts[figureKey(a.key)]);
      return value === undefined ? [] : [[a.key, value]];
    }),
  ),
});

const known = new WeakMap<PlanTexts, Reading>();

/** The typed form, checked. Remembered per texts, because several views ask. */
export function readForm(texts: PlanTexts): Reading {
  let reading = known.get(texts);
  if (!reading) {
    const result = readOneOrder(inputOf(texts));
    reading =
      'form' in result
        ? { ...result, faults: new Map() }
        : {
            form: undefined,
            book: undefined,
            faults: new Map(result.faults.map(({ field, message }) => [field, message])),
          };
    known.set(texts, reading);
  }
  return reading;
}

/** The sentence beside a field, when it is time to show it. */
export function faultShown(plan: PlanState, key: string): string | undefined {
  return plan.isAsked || plan.touched.has(key) ? readForm(plan.texts).faults.get(key) : undefined;
}

/** The first field, in the order of the form, that cannot be used. */
export const firstFault = (texts: PlanTexts): string | undefined => {
  const { faults } = readForm(texts);
  return [...planFieldList.map(({ key }) => key), ...FIGURES].find((key) => faults.has(key));
};

export const isTextKey = (key: string): key is TextKey =>
  planFieldList.some((field) => field.key === key) || (FIGURES as readonly string[]).includes(key);
export const assumptionOf = (key: FigureKey): Assumption =>
  ASSUMPTIONS[key.slice('assumptions.'.length) as AssumptionKey];

/** What stands in for a question not answered yet, so that the answer can grow from the first. */
export interface UsualReading {
  readonly form: PlanForm | undefined;
  readonly book: OrderBook | undefined;
  /** What was taken for granted, in words; none when every question is answered. */
  readonly taken: readonly string[];
}
const usualKnown = new WeakMap<PlanTexts, UsualReading>();

/** The form as far as it is answered, the rest as usual; nothing before the number of fish is typed. */
export function usualForm(texts: PlanTexts): UsualReading {
  let reading = usualKnown.get(texts);
  if (!reading) {
    const empty = planFieldList.flatMap((field) =>
      'usual' in field && field.usual !== undefined && texts[field.key as FieldKey].trim() === ''
        ? [field]
        : [],
    );
    const filled = { ...texts, ...Object.fromEntries(empty.map(({ key, usual }) => [key, String(usual)])) };
    const { form, book } =
      texts.wanted.trim() === '' ? { form: undefined, book: undefined } : readForm(filled);
    reading = { form, book, taken: empty.flatMap(({ usualWords }) => usualWords ?? []) };
    usualKnown.set(texts, reading);
  }
  return reading;
}

/** May be taken as usual in what is written too; how many fish and vats there are, and the water, must be told. */
const MAY_BE_USUAL: readonly FieldKey[] = ['femaleWeight'];
/** The first field that keeps the form from being written. */
export const firstOpen = (texts: PlanTexts): string | undefined => {
  const usual = MAY_BE_USUAL.filter((key) => texts[key].trim() === '');
  const filled = planFieldList.flatMap((field) =>
    usual.includes(field.key as FieldKey) && 'usual' in field ? [[field.key, String(field.usual)]] : [],
  );
  return firstFault({ ...texts, ...(Object.fromEntries(filled) as Partial<PlanTexts>) });
};
const readyKnown = new WeakMap<PlanTexts, UsualReading>();

/** The form to be written: every question answered but those that may be taken as usual. */
export function readyForm(texts: PlanTexts): UsualReading {
  let reading = readyKnown.get(texts);
  if (!reading) {
    const empty = planFieldList.flatMap((field) =>
      MAY_BE_USUAL.includes(field.key as FieldKey) && texts[field.key as FieldKey].trim() === ''
        ? [field]
        : [],
    );
    const filled = empty.map((field) => [field.key, String('usual' in field ? field.usual : '')]);
    const whole = empty.length === 0 ? texts : { ...texts, ...Object.fromEntries(filled) };
    const { form, book } = readForm(whole);
    const taken = empty.flatMap((field) => ('usualWords' in field ? (field.usualWords ?? []) : []));
    reading = { form, book, taken };
    readyKnown.set(texts, reading);
  }
  return reading;
}
