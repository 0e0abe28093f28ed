import { kilogramsFromPounds, poundsFromKilograms } from '../../units/convert';
import type { NumericField } from '../fields';
import { fieldSpec } from '../fields';
import { fitOfMiddle } from '../columns/cells/plausible';
import type { ColumnRelation } from './figures/relations';
import { fieldsOf, held } from './figures/relations';
import type { RuleFinding } from './rule';

export type SlipKind = 'ten' | 'thousand' | 'pound' | 'digits';
export interface Slip {
  readonly kind: SlipKind;
  readonly field: NumericField;
  readonly seen: number;
  readonly meant: number;
  readonly says: string;
}

/** Weighed on a scale that may be set to pounds. */
const IN_POUNDS: readonly NumericField[] = ['femaleWeight', 'feed'];
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
  fieldSpec(field).quantity.unit === 'share'
    ? swaps(Number((100 * value).toPrecision(8))).map((x) => x / 100)
    : swaps(Number(value.toPrecision(10)));

function slipsOf(field: NumericField, seen: number): Slip[] {
  if (fieldSpec(field).kind === 'moment') return [];
  const one = (kind: SlipKind, meant: number, says: string): Slip => ({ kind, field, seen, meant, says });
  return [
    one('ten', seen / 10, 'ten times too much'),
    one('ten', seen * 10, 'ten times too little'),
    one('ten', seen / 100, 'a hundred times too much'),
    one('ten', seen * 100, 'a hundred times too little'),
    one('thousand', seen / 1000, 'a thousand times too much'),
    one('thousand', seen * 1000, 'a thousand times too little'),
    ...(IN_POUNDS.includes(field)
      ? [
          one('pound', kilogramsFromPounds(seen), 'in pounds'),
          one('pound', poundsFromKilograms(seen), 'turned from pounds twice over'),
        ]
      : []),
    ...swapsOf(field, seen).map((meant) => one('digits', meant, 'with two digits swapped')),
  ];
}

/** How much better the meant value sits among the farm's own, or in what is usual, than the seen one. */
function gain(said: RuleFinding, { field, seen, meant }: Slip): number {
  const middle = said.middle(field);
  if (Number.isNaN(middle) || middle <= 0) return fitOfMiddle(field, meant) - fitOfMiddle(field, seen);
  return Math.abs(Math.log(seen / middle)) - Math.abs(Math.log(meant / middle));
}

/**
 * How nearly the relation must hold afterwards: roughly, a slip in some cell or other explains any
 * difference.
 */
const NEARNESS: Readonly<Record<SlipKind, number>> = {
  ten: 0.025,
  thousand: 0.025,
  digits: 0.012,
  pound: 0.05,
};
const KIND_COST: Readonly<Record<SlipKind, number>> = { ten: 0, thousand: 0.05, digits: 0.1, pound: 0.2 };

/**
 * Does the field still matter once it is put right? A slip that makes it vanish from a difference explains
 * anything.
 */
function matters(said: RuleFinding, relation: ColumnRelation, { field, meant }: Slip): boolean {
  if (field === relation.result) return true;
  const at = (value: number): number => relation.compute((name) => (name === field ? value : said.num(name)));
  return Math.abs(at(meant * 1.1) / at(meant) - 1) > 0.04;
}

export interface Scored {
  readonly slip: Slip;
  readonly score: number;
}

/**
 * Every slip in one of the cells after which a broken relation holds, best first; a change of unit that makes
 * the value stranger is no explanation.
 */
export function explanations(said: RuleFinding, relation: ColumnRelation): Scored[] {
  const found: Scored[] = [];
  for (const field of fieldsOf(relation)) {
    for (const slip of slipsOf(field, said.num(field))) {
      const now = held(relation, (name) => (name === field ? slip.meant : said.num(name)));
      if (!now?.holds || now.residual > NEARNESS[slip.kind] || !matters(said, relation, slip)) continue;
      const score = gain(said, slip) - KIND_COST[slip.kind] - now.residual;
      if (slip.kind === 'digits' || score > -0.3) found.push({ slip, score });
    }
  }
  return found.sort((a, b) => b.score - a.score);
}
