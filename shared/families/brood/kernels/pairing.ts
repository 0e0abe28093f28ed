import { assign } from './assign';

/**
 * Pairing from labels alone. A label is "line/family" or just a family. Two fish of one family are full sibs
 * (0.5), two of one line but different families are taken as half sibs (0.25), others as unrelated (0).
 * Offspring inbreeding is half the relationship (PEDIGREE). A fish without a label is unknown: chosen after
 * unrelated ones, before half sibs.
 */
export interface Label {
  readonly line: string;
  readonly family: string;
}
export type Relationship = 'full sibs' | 'same line' | 'unrelated' | 'unknown';

export function labelOf(written: string): Label | undefined {
  const [line = '', ...rest] = written
    .trim()
    .toLowerCase()
    .split('/')
    .map((part) => part.trim());
  if (rest.length === 0) return line ? { line: '', family: line } : undefined;
  const family = rest.join('/');
  return line || family ? { line, family: family && `${line}/${family}` } : undefined;
}

export function relationship(a: Label | undefined, b: Label | undefined): Relationship {
  if (!a || !b) return 'unknown';
  if (a.family && a.family === b.family) return 'full sibs';
  return a.line && a.line === b.line ? 'same line' : 'unrelated';
}

/** Inbreeding of the offspring; undefined where nobody knows. */
export const offspringInbreeding = (kin: Relationship): number | undefined =>
  ({ 'full sibs': 0.25, 'same line': 0.125, unrelated: 0, unknown: undefined })[kin];

/** Weights far enough apart that no number of tie-breaks outweighs one step of relationship. */
const COST: Readonly<Record<Relationship, number>> = {
  unrelated: 0,
  unknown: 1e6,
  'same line': 1e9,
  'full sibs': 2e9,
};

/**
 * A male for every female: least inbreeding in sum, then as few repeats of a male as that allows. Index of
 * the male per female.
 */
export function pairUp(
  females: readonly (Label | undefined)[],
  males: readonly (Label | undefined)[],
  femalesPerMale: number,
): number[] {
  const places = males
    .flatMap((_, male) => Array.from({ length: femalesPerMale }, (__, turn) => ({ male, turn })))
    .sort((a, b) => a.turn - b.turn || a.male - b.male);
  const cost = females.map((female) =>
    places.map(({ male, turn }) => COST[relationship(female, males[male])] + turn),
  );
  return assign(cost).map((place) => places[place]?.male ?? -1);
}
