import type { FieldName } from '../../fields';
import type { Given } from './given';
import { at, holderOf, LEAST_LINES, LINES, MOSTLY, shareOf } from './given';
import type { Looked } from './looked';
import { scoreIn } from './looked';

/** Meanings that must follow from two others, and by how much they may miss. */
const FOLLOWS: readonly (readonly [result: FieldName, a: FieldName, b: FieldName])[] = [
  ['fertilised', 'eggs', 'fertilisedShare'],
  ['hormoneVolume', 'femaleWeight', 'hormoneDose'],
  ['sampleGood', 'sampleSize', 'fertilisedShare'],
  ['eggs', 'eggWeight', 'eggsPerGram'],
];
/** In powers of ten. */
const FAR = 0.052;
/** Fewer than this share of the eggs in nearly every line are no larvae: they are what was looked at under the lens. */
const TINY = 0.005;
const FROM_EGGS: readonly FieldName[] = ['fertilised', 'hatched', 'fry'];
/** Headings that clearly say so are not overruled. */
const [CLEAR_WORDS, OVERRULED] = [0.7, 0.85];

type Plain = readonly Float64Array[];
/** The column is read as the next best thing; false where its heading is too clear for that. */
function takenBack(one: Looked | undefined, field: FieldName, clear: number): boolean {
  const candidate = one && scoreIn(one, field);
  if (!one || !candidate || candidate.words >= clear) return false;
  candidate.score = -1;
  one.candidates.sort((x, y) => y.score - x.score);
  return true;
}

function isTiny(plain: Plain, eggs: number, column: number): boolean {
  const share = shareOf(plain[column]?.length ?? 0, (line) => {
    const [all, some] = [at(plain[eggs], line), at(plain[column], line)];
    return all > 0 && some > 0 ? some < TINY * all : undefined;
  });
  return share >= MOSTLY;
}

/** Does the product come out in most lines, up to the zeros of units? True too where too few lines say. */
function comesOut(plain: Plain, [result, a, b]: readonly number[]): boolean {
  const factors = Array.from({ length: Math.min(LINES, plain[result ?? -1]?.length ?? 0) }, (_, i) =>
    Math.log10(at(plain[result ?? -1], i) / (at(plain[a ?? -1], i) * at(plain[b ?? -1], i))),
  )
    .filter(Number.isFinite)
    .sort((x, y) => x - y);
  if (factors.length < LEAST_LINES) return true;
  const middle = factors[factors.length >> 1] ?? NaN;
  const near = factors.filter((x) => Math.abs(x - middle) <= FAR).length;
  return Math.abs(middle - Math.round(middle)) < FAR && near >= 0.5 * factors.length;
}

function doubtfulOf(members: readonly Looked[], given: Given): Looked {
  const sureness = (one: Looked): number => (given.get(one)?.words ?? 0) + 0.2 * (given.get(one)?.score ?? 0);
  return members.reduce((x, y) => (sureness(y) < sureness(x) ? y : x));
}

/**
 * A reading under which most lines would be wrong is no reading: of three columns whose product does not come out,
 * the one least sure of itself is read as the next best thing. Says whether one was taken back.
 */
export function refuted(plain: Plain, looked: readonly Looked[], given: Given): boolean {
  const eggs = holderOf(given, 'eggs');
  const few = FROM_EGGS.some((field) => {
    const one = holderOf(given, field);
    const isFew = eggs && one && isTiny(plain, looked.indexOf(eggs), looked.indexOf(one));
    return isFew && takenBack(one, field, OVERRULED);
  });
  return few || FOLLOWS.some((fields) => followsNot(fields, plain, looked, given));
}

function followsNot(
  fields: readonly FieldName[],
  plain: Plain,
  looked: readonly Looked[],
  given: Given,
): boolean {
  const members = fields.flatMap((field) => holderOf(given, field) ?? []);
  if (members.length < fields.length) return false;
  if (
    comesOut(
      plain,
      members.map((one) => looked.indexOf(one)),
    )
  )
    return false;
  const doubtful = doubtfulOf(members, given);
  return takenBack(doubtful, given.get(doubtful)?.field ?? 'note', CLEAR_WORDS);
}
