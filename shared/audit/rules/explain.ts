import { kilogramsFromPounds, poundsFromKilograms } from '../../units/convert';
import type { NumericField } from '../fields';
import { fieldSpec } from '../fields';
import { fitOfMiddle } from '../columns/plausible';
import type { Relation } from './relations';
import { fieldsOf, held } from './relations';
import type { Said } from './rule';

export type SlipKind = 'ten' | 'thousand' | 'pound' | 'digits';
export interface Slip { readonly kind: SlipKind; readonly field: NumericField; readonly seen: number; readonly meant: number; readonly says: string }

const isWeight = (field: NumericField): boolean => ['kg', 'g'].includes(fieldSpec(field).quantity.unit);
/** Longest number whose digits people swap: beyond, it is not typed by hand. */
const MOST_DIGITS = 8;

/** The number with two neighbouring digits swapped, for every pair. */
export function swaps(value: number): number[] {
  const text = String(value);
  if (!/^\d+(?:\.\d+)?$/.test(text) || text.replace('.', '').length > MOST_DIGITS) return [];
  const digits = [...text];
  const found: number[] = [];
  for (let i = 0; i < digits.length; i++) {
    if (digits[i] === '.') continue;
    const j = digits[i + 1] === '.' ? i + 2 : i + 1;
    if (j >= digits.length || digits[i] === digits[j]) continue;
    const swapped = [...digits];
    [swapped[i], swapped[j]] = [digits[j] ?? '', digits[i] ?? ''];
    if (swapped[0] !== '0' || swapped[1] === '.') found.push(Number(swapped.join('')));
  }
  return found;
}

/** A share is typed as percent: its digits are those of the percent. */
const swapsOf = (field: NumericField, value: number): number[] =>
  (fieldSpec(field).quantity.unit === 'share' ? swaps(Number((100 * value).toPrecision(8))).map((x) => x / 100) : swaps(Number(value.toPrecision(10))));

function slipsOf(field: NumericField, seen: number): Slip[] {
  if (fieldSpec(field).kind === 'moment') return [];
  const one = (kind: SlipKind, meant: number, says: string): Slip => ({ kind, field, seen, meant, says });
  return [
    one('ten', seen / 10, 'ten times too much'), one('ten', seen * 10, 'ten times too little'),
    one('ten', seen / 100, 'a hundred times too much'), one('ten', seen * 100, 'a hundred times too little'),
    one('thousand', seen / 1000, 'a thousand times too much'), one('thousand', seen * 1000, 'a thousand times too little'),
    ...(isWeight(field) ? [one('pound', kilogramsFromPounds(seen), 'in pounds'), one('pound', poundsFromKilograms(seen), 'turned from pounds twice over')] : []),
    ...swapsOf(field, seen).map((meant) => one('digits', meant, 'with two digits swapped')),
  ];
}

/** How much better the meant value sits among the farm's own, or in what is usual, than the seen one. */
function gain(said: Said, { field, seen, meant }: Slip): number {
  const middle = said.middle(field);
  if (Number.isNaN(middle) || middle <= 0) return fitOfMiddle(field, meant) - fitOfMiddle(field, seen);
  return Math.abs(Math.log(seen / middle)) - Math.abs(Math.log(meant / middle));
}

const KIND_COST: Readonly<Record<SlipKind, number>> = { ten: 0, thousand: 0.05, digits: 0.1, pound: 0.2 };

export interface Scored { readonly slip: Slip; readonly score: number }

/** Every slip in one of the cells after which a broken relation holds, best first; a change of unit that makes the value stranger is no explanation. */
export function explanations(said: Said, relation: Relation): Scored[] {
  const found: Scored[] = [];
  for (const field of fieldsOf(relation)) {
    for (const slip of slipsOf(field, said.num(field))) {
      const now = held(relation, (name) => (name === field ? slip.meant : said.num(name)));
      if (!now?.holds) continue;
      const score = gain(said, slip) - KIND_COST[slip.kind] - now.residual;
      if (slip.kind === 'digits' || score > -0.3) found.push({ slip, score });
    }
  }
  return found.sort((a, b) => b.score - a.score);
}
