import type { PaneSettings } from '../../../pane/keeping/settings';
import { readNumber } from '../../../pane/values/typed';
import { shownUnit } from '../../../pane/values/units';
import type { Words } from '../../../words/en';
import type { CardContext, CardField, Values } from './cards';
import { CARDS, isPadCard } from './cards';
import type { VatState } from './notebook';

type Units = PaneSettings['units'];
/** A number typed in pounds is never read as kilograms: each kind of units has its own texts. */
const keyOf = (vat: VatState, field: string, units: Units): string =>
  `${vat.vat}/${vat.card ?? ''}/${field}${units === 'metric' ? '' : `/${units}`}`;
/** What stands in a field at first, in the units typed. */
const initialOf = ({ initial = '', unit }: CardField, units: Units): string => {
  const value = Number(initial);
  if (initial === '' || units === 'metric' || Number.isNaN(value)) return initial;
  return String(Number(shownUnit(unit, { units }).fromMetric(value).toPrecision(3)));
};
export const fieldsOf = ({ card }: VatState): readonly CardField[] =>
  isPadCard(card) ? CARDS[card].fields : [];
export const textOf = (vat: VatState, field: CardField, units: Units): string =>
  vat.texts[keyOf(vat, field.key, units)] ?? initialOf(field, units);
/** Nobody typed into it yet: what stands there is the usual figure, and the first key takes its place. */
export const isUsual = (vat: VatState, field: CardField, units: Units): boolean =>
  vat.texts[keyOf(vat, field.key, units)] === undefined;
export const withText = (vat: VatState, field: string, text: string, units: Units): VatState => ({
  ...vat,
  texts: { ...vat.texts, [keyOf(vat, field, units)]: text },
});

export interface CardReading {
  readonly values: Values;
  /** By field: what is wrong with what stands there. */
  readonly faults: ReadonlyMap<string, string>;
  readonly missing: readonly CardField[];
}

function faultOf(
  field: CardField,
  value: number | undefined,
  { vat, fields }: { vat: Words['vat']; fields: Words['vat']['fields'] },
  units: Units,
): string | undefined {
  const { fromMetric } = shownUnit(field.unit, { units });
  const limit = (metric: number): string => String(Number(fromMetric(metric).toPrecision(4)));
  const label = fields[field.key] ?? field.key;
  if (value === undefined || (field.kind === 'whole' && !Number.isInteger(value)))
    return vat.notNumber(label);
  if (field.min !== undefined && value < field.min) return vat.tooLow(label, limit(field.min));
  return field.max !== undefined && value > field.max ? vat.tooHigh(label, limit(field.max)) : undefined;
}

/** The card's fields as numbers, with a sentence for each that is none. */
export function readCard(vat: VatState, words: Words, units: Units): CardReading {
  const values: Record<string, number> = {};
  const faults = new Map<string, string>();
  const missing: CardField[] = [];
  for (const field of fieldsOf(vat)) {
    const text = textOf(vat, field, units).trim();
    if (text === '') {
      if (!field.isOptional) missing.push(field);
      continue;
    }
    if (field.kind === 'text') continue;
    const typed = readNumber(text);
    const value = typed === undefined ? undefined : shownUnit(field.unit, { units }).toMetric(typed);
    const fault = faultOf(field, value, { vat: words.vat, fields: words.vat.fields }, units);
    if (fault !== undefined) faults.set(field.key, fault);
    else if (value !== undefined) values[field.key] = value;
  }
  return { values, faults, missing };
}

export const contextOf = (vat: VatState, now: number, words: Words, units: Units): CardContext => ({
  words,
  now,
  earlier: (what) =>
    vat.lines
      .filter((line) => line.vat === vat.vat && line.what === what && line.value !== null)
      .map(({ at, value }) => ({ at, value: value ?? 0 })),
  text: (key) => vat.texts[keyOf(vat, key, units)] ?? '',
});

/** Fields that do not stay are empty for the next reading. */
export function cleared(vat: VatState, units: Units): VatState {
  const gone = new Set(
    fieldsOf(vat)
      .filter(({ stays }) => !stays)
      .map(({ key }) => keyOf(vat, key, units)),
  );
  return { ...vat, texts: Object.fromEntries(Object.entries(vat.texts).filter(([key]) => !gone.has(key))) };
}
