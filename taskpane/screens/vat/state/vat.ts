import { readNumber } from '../../../pane/typed';
import type { Words } from '../../../words/en';
import type { CardContext, CardField, Values } from './cards';
import { CARDS, isPadCard } from './cards';
import type { VatState } from './notebook';

const keyOf = (vat: VatState, field: string): string => `${vat.vat}/${vat.card ?? ''}/${field}`;
export const fieldsOf = ({ card }: VatState): readonly CardField[] =>
  isPadCard(card) ? CARDS[card].fields : [];
export const textOf = (vat: VatState, field: CardField): string =>
  vat.texts[keyOf(vat, field.key)] ?? field.initial ?? '';
export const withText = (vat: VatState, field: string, text: string): VatState => ({
  ...vat,
  texts: { ...vat.texts, [keyOf(vat, field)]: text },
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
): string | undefined {
  const label = fields[field.key] ?? field.key;
  if (value === undefined || (field.kind === 'whole' && !Number.isInteger(value)))
    return vat.notNumber(label);
  if (field.min !== undefined && value < field.min) return vat.tooLow(label, String(field.min));
  return field.max !== undefined && value > field.max ? vat.tooHigh(label, String(field.max)) : undefined;
}

/** The card's fields as numbers, with a sentence for each that is none. */
export function readCard(vat: VatState, words: Words): CardReading {
  const values: Record<string, number> = {};
  const faults = new Map<string, string>();
  const missing: CardField[] = [];
  for (const field of fieldsOf(vat)) {
    const text = textOf(vat, field).trim();
    if (text === '') {
      if (!field.isOptional) missing.push(field);
      continue;
    }
    if (field.kind === 'text') continue;
    const value = readNumber(text);
    const fault = faultOf(field, value, { vat: words.vat, fields: words.vat.fields });
    if (fault !== undefined) faults.set(field.key, fault);
    else if (value !== undefined) values[field.key] = value;
  }
  return { values, faults, missing };
}

export const contextOf = (vat: VatState, now: number, words: Words): CardContext => ({
  words,
  now,
  earlier: (what) =>
    vat.lines
      .filter((line) => line.vat === vat.vat && line.what === what && line.value !== null)
      .map(({ at, value }) => ({ at, value: value ?? 0 })),
  text: (key) => vat.texts[keyOf(vat, key)] ?? '',
});

/** Fields that do not stay are empty for the next reading. */
export function cleared(vat: VatState): VatState {
  const gone = new Set(
    fieldsOf(vat)
      .filter(({ stays }) => !stays)
      .map(({ key }) => keyOf(vat, key)),
  );
  return { ...vat, texts: Object.fromEntries(Object.entries(vat.texts).filter(([key]) => !gone.has(key))) };
}
