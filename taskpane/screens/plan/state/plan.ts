import { isoDateOfSerial } from '../../../../shared/units/dates';
import type { FieldKey, PlanField } from '../../../../shared/run/fields';
import { PLAN_FIELDS, planFieldList } from '../../../../shared/run/fields';
import type { PlanForm } from '../../../../shared/run/form';
import { readPlanForm } from '../../../../shared/run/form';

export interface PlanState {
  /** What stands in each field, as typed. */
  readonly texts: PlanTexts;
  /** Fields the user has left or changed: only these complain before the user asks for the plan. */
  readonly touched: ReadonlySet<string>;
  readonly isAsked: boolean;
}
export type PlanTexts = Readonly<Record<FieldKey, string>>;

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
  Object.fromEntries(
    planFieldList.map((field) => [field.key, given[field.key as FieldKey] ?? initialText(field)]),
  ) as Record<FieldKey, string>;

/** Two months ahead leaves time for goods, fish and water. */
const USUAL_DAYS_AHEAD = 60;

export const initialPlan = (today: number): PlanState => ({
  texts: textsOf({ plannedOn: isoDateOfSerial(today), wantedOn: isoDateOfSerial(today + USUAL_DAYS_AHEAD) }),
  touched: new Set(),
  isAsked: false,
});

/** An invented small hatchery, to see what a plan looks like. */
export const exampleTexts = (texts: PlanTexts): PlanTexts => ({
  ...texts,
  hatchery: 'Kingfisher Creek',
  product: 'fry',
  wanted: '60000',
  females: '6',
  femaleWeight: '1.2',
  males: '4',
  vats: '8',
  vatLitres: '1000',
  temperature: '27',
  ph: '6.2',
  phWanted: '7',
  alkalinity: '1.1',
});

export interface PlanReading {
  readonly form: PlanForm | undefined;
  readonly faults: ReadonlyMap<string, string>;
}

const known = new WeakMap<PlanTexts, PlanReading>();

/** The typed form, checked. Remembered per texts, because several views ask. */
export function readForm(texts: PlanTexts): PlanReading {
  let reading = known.get(texts);
  if (!reading) {
    const result = readPlanForm(texts);
    reading =
      'form' in result
        ? { form: result.form, faults: new Map() }
        : { form: undefined, faults: new Map(result.faults.map(({ field, message }) => [field, message])) };
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
  return planFieldList.find((field) => faults.has(field.key))?.key;
};

export const isFieldKey = (key: string): key is FieldKey => key in PLAN_FIELDS;

/** What stands in for a question not answered yet, so that the answer can grow from the first. Common practice. */
const USUAL: Readonly<Partial<Record<FieldKey, string>>> = {
  females: '20',
  femaleWeight: '1',
  males: '20',
  vats: '20',
  vatLitres: '1000',
  temperature: '27',
  ph: '7',
  phWanted: '7',
};
const WORD: Readonly<Partial<Record<FieldKey, string>>> = {
  females: 'enough females',
  femaleWeight: 'females of 1 kg',
  males: 'enough males',
  vats: 'enough vats',
  temperature: 'water of 27 °C',
  ph: 'water that needs no dose',
};

export interface UsualReading {
  readonly form: PlanForm | undefined;
  /** What was taken for granted, in words; none when every question is answered. */
  readonly taken: readonly string[];
}
const usualKnown = new WeakMap<PlanTexts, UsualReading>();

/** The form as far as it is answered, the rest as usual; nothing before the number of fish is typed. */
export function usualForm(texts: PlanTexts): UsualReading {
  let reading = usualKnown.get(texts);
  if (!reading) {
    const empty = (Object.keys(USUAL) as FieldKey[]).filter((key) => texts[key].trim() === '');
    const filled = { ...texts, ...Object.fromEntries(empty.map((key) => [key, USUAL[key] ?? ''])) };
    const { form } = texts.wanted.trim() === '' ? { form: undefined } : readForm(filled);
    reading = { form, taken: empty.flatMap((key) => WORD[key] ?? []) };
    usualKnown.set(texts, reading);
  }
  return reading;
}
