import type { FieldName } from '../../fields';
import type { Given } from './given';
import { holderOf } from './given';
import type { Looked } from './looked';
import { LEAST_SCORE, LEAST_WORDS, scoreIn } from './looked';

/** What is written down first where a line has both: the work is done in this order. */
const FIRST_THEN: readonly (readonly [FieldName, FieldName])[] = [
  ['ph', 'phAfter'],
  ['femaleWeight', 'hormoneDose'],
  ['hormoneDose', 'hormoneVolume'],
  ['fertilisedShare', 'hatchShare'],
  ['hatched', 'fry'],
  ['injected', 'stripped'],
  ['startTime', 'endTime'],
];
/** What an exchange may cost: headings that clearly say otherwise stay. */
const MOST_LOST = 1;

/** Two meanings that stand against the order of the work change places where the headings leave that open. */
export function byWorkOrder(looked: readonly Looked[], given: Given): void {
  for (const [first, then] of FIRST_THEN) {
    const [a, b] = [holderOf(given, first), holderOf(given, then)];
    if (!a || !b || looked.indexOf(a) < looked.indexOf(b)) continue;
    const [wasA, wasB, asThen, asFirst] = [given.get(a), given.get(b), scoreIn(a, then), scoreIn(b, first)];
    if (!wasA || !wasB || !asThen || !asFirst) continue;
    if (asThen.score + asFirst.score < wasA.score + wasB.score - MOST_LOST) continue;
    given.set(a, {
      ...asThen,
      score: Math.max(LEAST_SCORE, asThen.score),
      because: 'of the order of the work',
    });
    given.set(b, {
      ...asFirst,
      score: Math.max(LEAST_SCORE, asFirst.score),
      because: 'of the order of the work',
    });
  }
}

/** What a column holds by its kind of content alone, where nothing else of the table is that. */
export function byKind(looked: readonly Looked[], given: Given): void {
  const clock = looked.find(
    (one) =>
      !given.has(one) &&
      one.evidence.unit === undefined &&
      !((one.candidates[0]?.words ?? 0) >= LEAST_WORDS) &&
      one.content.filled >= 3 &&
      one.content.clocks >= 0.8 * one.content.filled,
  );
  if (clock && !holderOf(given, 'clock'))
    given.set(clock, {
      field: 'clock',
      score: LEAST_SCORE,
      words: 0,
      because: 'nearly every cell holds an hour',
    });
}

/** Water that warm-water fish are kept in, °C, as a thermometer is read: to the tenth or the half. */
const WARM = { low: 20, high: 34, widest: 6 } as const;
const WATER: readonly FieldName[] = ['ph', 'phAfter', 'oxygen', 'injected', 'stripped', 'eggWeight', 'eggs'];
/** Beside what is measured in water or done in warm water, a narrow column of such numbers is its temperature. */
export function byWarmth(looked: readonly Looked[], given: Given): void {
  const held = new Set([...given.values()].map(({ field }) => field));
  if (held.has('temperature') || !WATER.some((field) => held.has(field))) return;
  const warm = looked.filter(
    (one) =>
      !given.has(one) &&
      one.evidence.unit === undefined &&
      scoreIn(one, 'temperature') &&
      isWarm(one.content),
  );
  const [only] = warm;
  if (only && warm.length === 1)
    given.set(only, {
      field: 'temperature',
      score: LEAST_SCORE,
      words: 0,
      because: 'its numbers are those of warm water',
    });
}
const isWarm = ({ middle, high, numbers, fractions, filled }: Looked['content']): boolean =>
  numbers >= 5 &&
  numbers >= 0.8 * filled &&
  fractions >= 0.3 &&
  middle >= WARM.low &&
  high <= WARM.high &&
  high - middle <= WARM.widest;
