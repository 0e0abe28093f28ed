import type { FieldName, NumericField } from '../../fields';
import type { Link } from '../../meaning/links';
import type { MeaningPattern } from '../../meaning/patterns';
import { PATTERNS } from '../../meaning/patterns';
import type { Looked } from './looked';
import { scoreIn } from './looked';
import { converter, ownUnit, unitForField } from '../cells/units';

/** Orders in which the inputs of a found relation may stand in a pattern. */
function orders(link: Link, pattern: MeaningPattern): (readonly number[])[] {
  if (link.inputs.length !== pattern.inputs.length) return [];
  if (link.kind === 'product') return [link.inputs, [...link.inputs].reverse()];
  if (link.kind !== 'sum' || !pattern.signs) return [link.inputs];
  const plus = link.inputs.filter((_, i) => link.signs[i] === 1);
  const minus = link.inputs.filter((_, i) => link.signs[i] === -1);
  if (plus.length !== pattern.signs.filter((sign) => sign === 1).length) return [];
  return permutations(plus).flatMap((p) => permutations(minus).map((m) => [...p, ...m]));
}
function permutations(list: readonly number[]): (readonly number[])[] {
  if (list.length < 2) return [list];
  return list.flatMap((first, i) =>
    permutations([...list.slice(0, i), ...list.slice(i + 1)]).map((rest) => [first, ...rest]),
  );
}

interface Reading {
  readonly of: readonly (readonly [number, FieldName])[];
  readonly worth: number;
}

/** What one of the written unit is in the field's own, where the heading or the cells say the unit. */
function inOwn(one: Looked | undefined, field: NumericField): number | undefined {
  const said = one?.evidence.unit?.unit;
  if (!one || (said === undefined && one.evidence.heading.times === 1)) return undefined;
  const unit = said === undefined ? ownUnit(field) : unitForField(field, said);
  return unit === undefined ? undefined : converter(field, unit)(one.evidence.heading.times);
}
/** Grams a kilogram times kilograms are grams: a factor that contradicts units that are said rules the pattern out. */
function contradictsUnits(
  link: Link,
  of: Reading['of'],
  looked: readonly Looked[],
  { scale = 1 }: MeaningPattern,
): boolean {
  if (link.kind !== 'product' || Number.isNaN(scale)) return false;
  const own = of.map(([column, field]) => inOwn(looked[column], field as NumericField));
  const [result, a, b] = own;
  if (result === undefined || a === undefined || b === undefined) return false;
  const expected = (scale * a * b) / result;
  return Math.abs(Math.log(link.factor / expected)) > 0.05;
}

/** With so few words a relation must hold in nearly all lines, and be of more than a few. */
const FEW_WORDS = { share: 0.85, lines: 6 } as const;
const SPOKEN = 0.4;
function saysEnough(link: Link, spoken: number, of: number): boolean {
  if (spoken >= Math.min(2, of - 1)) return true;
  return spoken >= 1 && link.tried >= FEW_WORDS.lines && link.holds >= FEW_WORDS.share * link.tried;
}

/** The pattern that a found relation fits best, by what its columns say themselves. */
function readLink(link: Link, looked: readonly Looked[], links: readonly Link[]): Reading | undefined {
  // Two columns that go with one are two doses, or anything: the numbers do not say which is which.
  if (link.kind === 'part' && links.some((one) => one !== link && isPartOfSame(one, link))) return undefined;
  let best: Reading | undefined;
  const isRunning = link.kind === 'sum' && link.isRunning;
  for (const pattern of PATTERNS) {
    if (pattern.kind !== link.kind || (pattern.isRunning ?? false) !== isRunning) continue;
    for (const inputs of orders(link, pattern)) {
      const reading = readAs(link, pattern, inputs, looked);
      if (reading && (!best || reading.worth > best.worth)) best = reading;
    }
  }
  return best;
}
const isPartOfSame = (one: Link, link: Link): boolean =>
  one.kind === 'part' && one.inputs[0] === link.inputs[0] && one.result !== link.result;
function readAs(
  link: Link,
  pattern: MeaningPattern,
  inputs: readonly number[],
  looked: readonly Looked[],
): Reading | undefined {
  const of = [
    [link.result, pattern.result] as const,
    ...inputs.map((column, i) => [column, pattern.inputs[i] ?? pattern.result] as const),
  ];
  const found = of.map(([column, field]) => {
    const one = looked[column];
    return one && scoreIn(one, field);
  });
  if (found.some((one) => one === undefined) || contradictsUnits(link, of, looked, pattern)) return undefined;
  const spoken = found.filter((one) => one && one.words >= SPOKEN).length;
  if (!saysEnough(link, spoken, found.length)) return undefined;
  return { of, worth: found.reduce((sum, one) => sum + Math.max(0, one?.score ?? 0), 0) / found.length };
}

const LINK_WEIGHS = 1.4;
/** Relations found by trying speak for the meanings under which they would hold. */
export function byLinks(links: readonly Link[], looked: readonly Looked[]): void {
  const given = new Set<string>();
  for (const link of links) {
    const reading = readLink(link, looked, links);
    if (!reading) continue;
    for (const [column, field] of reading.of) {
      const one = looked[column];
      const candidate = one && scoreIn(one, field);
      if (!candidate || given.has(`${column} ${field}`)) continue;
      given.add(`${column} ${field}`);
      candidate.score += (LINK_WEIGHS * link.holds) / link.tried;
      candidate.because = 'the numbers of the table bear it out';
    }
  }
  for (const { candidates } of looked) candidates.sort((a, b) => b.score - a.score);
}
