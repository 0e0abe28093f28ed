import type { Vat, DosingReading } from '../../../../shared/dosing/ask';
import { faultOf } from '../../../../shared/dosing/ask';
import type { DosingField, DosingKey } from '../../../../shared/dosing/fields';
import { DOSING_FIELDS } from '../../../../shared/dosing/fields';
import type { Dosing } from '../../../../shared/dosing/judge';
import { gramsText, judge } from '../../../../shared/dosing/judge';
import type { Cell } from '../../../../shared/base/values';
import { readNumber } from '../../../pane/typed';

export interface DoseState {
  /** What stands in each field, as typed. */
  readonly texts: DoseTexts;
  readonly touched: ReadonlySet<string>;
  readonly isAsked: boolean;
  readonly readings: readonly DosingReading[];
  /** The reading being typed. Grams left alone follow the advice. */
  readonly draft: Draft;
  /** Place of the reading that is being corrected; none when a new one is typed. */
  readonly correcting: number | undefined;
  /** What could not be taken, beside the field it stands in. */
  readonly fault: { readonly field: 'grams' | 'ph'; readonly sentence: string } | undefined;
  /** Earlier lists of readings, newest last. */
  readonly past: readonly (readonly DosingReading[])[];
  /** The questions stay out of the way once readings have begun, unless opened. */
  readonly isVatOpen: boolean;
}
export type DoseTexts = Readonly<Record<DosingKey, string>>;
export interface Draft {
  readonly grams: string | undefined;
  readonly ph: string;
}

export const EMPTY_DRAFT: Draft = { grams: undefined, ph: '' };

const isShare = (field: DosingField): boolean => field.unit === '%';
const initialText = (field: DosingField): string =>
  field.initial === null
    ? ''
    : typeof field.initial === 'number' && isShare(field)
      ? String(field.initial * 100)
      : String(field.initial);

export const initialDose: DoseState = {
  texts: Object.fromEntries(DOSING_FIELDS.map((field) => [field.key, initialText(field)])) as Record<
    DosingKey,
    string
  >,
  touched: new Set(),
  isAsked: false,
  readings: [],
  draft: EMPTY_DRAFT,
  correcting: undefined,
  fault: undefined,
  past: [],
  isVatOpen: true,
};

/** An invented vat of sour well water, to see how it goes. */
export const exampleDose = (texts: DoseTexts): DoseTexts => ({
  ...texts,
  volume: '1200',
  purity: '98',
  spoon: '5',
  temperature: '26',
  stocked: 'no',
  origin: 'well',
});
export const EXAMPLE_READINGS: readonly DosingReading[] = [
  { grams: 0, ph: 5.2 },
  { grams: 4, ph: 5.43 },
  { grams: 16, ph: 5.83 },
];

function cellOf(field: DosingField, text: string): Cell {
  if (text.trim() === '') return field.part === 'more' && field.isRequired ? field.initial : null;
  if (field.choices) return text;
  const typed = readNumber(text);
  if (typed === undefined) return text.trim();
  return isShare(field) && !text.includes('%') ? typed / 100 : typed;
}

export interface VatReading {
  readonly vat: Vat | undefined;
  readonly cells: Vat;
  readonly faults: ReadonlyMap<string, string>;
}
const known = new WeakMap<DoseTexts, VatReading>();

const faultIn = (field: DosingField, cell: Cell): string | undefined => {
  if (isShare(field) && (typeof cell !== 'number' || cell <= 0 || cell > 1) && cell !== null)
    return `${field.label}: expected a number above 0 and up to 100 %, got ${typeof cell === 'number' ? String(Number((cell * 100).toPrecision(10))) : `“${String(cell)}”`}.`;
  return faultOf(field, cell);
};

/** The typed answers, checked by the arguments they fill. Remembered per texts, because several views ask. */
export function readVat(texts: DoseTexts): VatReading {
  let reading = known.get(texts);
  if (!reading) {
    const cells = Object.fromEntries(
      DOSING_FIELDS.map((field) => [field.key, cellOf(field, texts[field.key])]),
    ) as Record<DosingKey, Cell>;
    const faults = new Map(
      DOSING_FIELDS.flatMap((field): [string, string][] => {
        const fault = faultIn(field, cells[field.key]);
        return fault === undefined ? [] : [[field.key, fault]];
      }),
    );
    reading = { cells, faults, vat: faults.size === 0 ? cells : undefined };
    known.set(texts, reading);
  }
  return reading;
}

export const isDosingKey = (key: string): key is DosingKey =>
  DOSING_FIELDS.some((field) => field.key === key);

/** The sentence beside a field, when it is time to show it. */
export const doseFaultShown = (dose: DoseState, key: string): string | undefined =>
  dose.isAsked || dose.touched.has(key) ? readVat(dose.texts).faults.get(key) : undefined;

const judged = new WeakMap<readonly DosingReading[], WeakMap<Vat, Dosing | undefined>>();
/**
 * What the readings come to. Remembered, because a redraw asks again and the answer takes some milliseconds.
 */
export function dosingOf({ texts, readings }: Pick<DoseState, 'texts' | 'readings'>): Dosing | undefined {
  const { vat } = readVat(texts);
  if (!vat) return undefined;
  const byVat = judged.get(readings) ?? new WeakMap<Vat, Dosing | undefined>();
  judged.set(readings, byVat);
  if (!byVat.has(vat)) byVat.set(vat, judge(vat, readings));
  return byVat.get(vat);
}

/** What stands in the field of grams: the advice until someone types something else. */
export function draftGrams(dose: DoseState): string {
  if (dose.draft.grams !== undefined) return dose.draft.grams;
  const total = dosingOf(dose)?.total ?? dose.readings.at(-1)?.grams ?? 0;
  return gramsText(total);
}
