import type { FieldName } from '../../fields';
import type { Given } from './given';
import { at, holderOf, MOSTLY, shareOf } from './given';
import type { Candidate, Looked } from './looked';
import { LEAST_SCORE, scoreIn } from './looked';

const SHARES: ReadonlySet<FieldName> = new Set(['fertilisedShare', 'hatchShare', 'survival']);
const isShare = ({ candidates: [best], evidence, content }: Looked): boolean =>
  content.middle > 0 &&
  content.high <= 100 &&
  (evidence.unit?.unit === '%' || (best !== undefined && SHARES.has(best.field)));

const WORTH = { product: 2.4, share: 1.6 } as const;
/** How nearly: shares are written to the whole percent. */
const ROUNDED = 0.03;
/** Eggs times two shares are the larvae that hatched; the first share is of the eggs, the second of the fertilised. */
export function byShares(looked: readonly Looked[], plain: readonly Float64Array[]): void {
  const shares = looked.flatMap((one, i) => (isShare(one) ? [i] : []));
  const eggs = looked.findIndex(({ candidates: [best] }) => best?.field === 'eggs');
  if (eggs < 0 || shares.length < 2) return;
  for (const [n, a] of shares.entries())
    for (const b of shares.slice(n + 1))
      for (const [result, one] of looked.entries()) {
        if ([eggs, a, b].includes(result) || !scoreIn(one, 'hatched')) continue;
        const share = shareOf(plain[result]?.length ?? 0, (line) => {
          const [seen, made] = [
            at(plain[result], line),
            at(plain[eggs], line) * part(at(plain[a], line)) * part(at(plain[b], line)),
          ];
          return seen > 0 && made > 0 ? Math.abs(seen - made) <= ROUNDED * made : undefined;
        });
        if (share < MOSTLY) continue;
        speak(one, 'hatched', WORTH.product);
        speak(looked[a], 'fertilisedShare', WORTH.share);
        speak(looked[b], 'hatchShare', WORTH.share);
        return;
      }
}
const part = (share: number): number => (share > 1 ? share / 100 : share);
function speak(one: Looked | undefined, field: FieldName, worth: number): void {
  const candidate = one && scoreIn(one, field);
  if (!one || !candidate) return;
  candidate.score += worth;
  candidate.because = 'the numbers of the table bear it out';
  one.candidates.sort((x, y) => y.score - x.score);
}

const CLEAR_WORDS = 0.7;
/** Words that numbers between the eggs and the fry overrule. */
const OVERRULED = 0.85;
const isBetween = (plain: readonly Float64Array[], [most, middle, least]: readonly number[]): boolean =>
  shareOf(plain[middle ?? -1]?.length ?? 0, (line) => {
    const [all, some, few] = [most, middle, least].map((column) => at(plain[column ?? -1], line));
    if (!(all && few && some) || Number.isNaN(all + some + few)) return undefined;
    return few <= some && some <= 1.02 * all && some >= 0.02 * all;
  }) >= 0.95;
/** One column of counts between eggs and fry, more than these and less than those, holds the larvae that hatched. */
function larvaeBetween(looked: readonly Looked[], plain: readonly Float64Array[], given: Given): void {
  const [eggs, fry] = [holderOf(given, 'eggs'), holderOf(given, 'fry')];
  if (!eggs || !fry || holderOf(given, 'hatched')) return;
  const [from, to] = [looked.indexOf(eggs), looked.indexOf(fry)];
  const between = looked.filter((one, i) => {
    const now = given.get(one);
    const isOpen = now === undefined || (now.field !== 'fertilised' && now.words < OVERRULED);
    return i > from && i < to && isOpen && isBetween(plain, [from, i, to]);
  });
  const [only] = between;
  if (only && between.length === 1) given.set(only, stage('hatched'));
}
/** Counts nobody named, right behind the larvae that hatched and a part of them, are the fry. */
function fryBehind(looked: readonly Looked[], plain: readonly Float64Array[], given: Given): void {
  const [eggs, hatched] = [holderOf(given, 'eggs'), holderOf(given, 'hatched')];
  if (!eggs || !hatched || holderOf(given, 'fry')) return;
  const [from, place] = [looked.indexOf(eggs), looked.indexOf(hatched)];
  const next = looked.findIndex((one, i) => i > place && i <= place + 2 && !isShare(one));
  const later = looked[next];
  if (later && !given.has(later) && isBetween(plain, [from, place, next])) given.set(later, stage('fry'));
}
/** What the counts behind the eggs are, by how many are left. */
export function byStages(looked: readonly Looked[], plain: readonly Float64Array[], given: Given): void {
  larvaeBetween(looked, plain, given);
  fryBehind(looked, plain, given);
  larvaeAndFry(looked, plain, given);
}
const stage = (field: FieldName): Candidate => ({
  field,
  score: LEAST_SCORE,
  words: 0,
  because: 'larvae come before fry',
});

/** Where nobody says what hatched, two counts of which the second is a part of the first are larvae and then fry. */
function larvaeAndFry(looked: readonly Looked[], plain: readonly Float64Array[], given: Given): void {
  const [eggs, fry] = [holderOf(given, 'eggs'), holderOf(given, 'fry')];
  if (!eggs || !fry || holderOf(given, 'hatched') || (given.get(fry)?.words ?? 0) >= SURE_WORDS) return;
  const [from, place] = [looked.indexOf(eggs), looked.indexOf(fry)];
  const next = looked.findIndex((one, i) => i > place && i <= place + 2 && !isShare(one));
  const later = looked[next];
  if (!later || !mayBeFry(given.get(later)) || !isBetween(plain, [from, place, next])) return;
  given.set(fry, stage('hatched'));
  given.set(later, stage('fry'));
}
const SURE_WORDS = 0.95;
const mayBeFry = (now: Candidate | undefined): boolean =>
  now === undefined || (now.field === 'fingerlings' && now.words < CLEAR_WORDS);
