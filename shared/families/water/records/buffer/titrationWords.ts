import type { MaterialName } from '../../carbonate/materials';
import type { Action, Advice, AdviceReason } from '../../titration/advise';
import type { Limit } from '../../titration/nextDose';

/** What the tables of a dosing say in words: drawn last, from the codes. */

const to2 = (x: number): string => (Math.round(x * 100) / 100).toFixed(2);
const to1 = (x: number): string => (Math.round(x * 10) / 10).toFixed(1);

/** The action as a cell holds it. */
export const ACTION_WORDS: Readonly<Record<Action, string>> = {
  airFirst: 'air first',
  dose: 'dose',
  waitSettle: 'wait',
  readAgain: 'read again',
  done: 'done',
  watch: 'watch',
  stop: 'stop',
};

const WHY: Readonly<Record<Limit, string>> = {
  target: 'This should reach the target once aired.',
  step: 'One step, no more.',
  top: 'Held back so as not to pass the top of the window.',
  last: 'Held to twice the part-dose before; the readings will earn more.',
  doubt: 'Held back: the water does not answer as carbon dioxide alone would.',
  none: '',
};

const AIR =
  'Air the vat strongly for an hour or more, read, and write that reading down with "aired" beside it. Quicker: ' +
  'shake a half-full bottle of the water for some minutes, changing its air, and read that ("jar").';

type Code = AdviceReason['code'];
type OfCode<C extends Code> = Extract<AdviceReason, { readonly code: C }>;

/** One sentence per code; the action's own sentence is that of its first reason. */
const SENTENCES: { readonly [C in Code]: (reason: OfCode<C>) => string } = {
  airMayDo: (reason) =>
    `Air first, no product yet: air alone may bring this water into the window (chance ${Math.round(100 * reason.odds)}` +
    ` %). ${AIR}`,
  stillMoving: () =>
    'No product yet: the pH is still on the move, because gas is leaving or the dose is mixing. ' +
    'Keep the air on and read again, until two readings agree.',
  sinksBack: (reason) =>
    'Air on, no product yet: the dose has used up the carbon dioxide, and as it comes in again from ' +
    `the air the pH sinks to about ${to1(reason.ph)}. Read again after an hour of air.`,
  unexpected: (reason) =>
    `Read again before anything else: pH ${to2(reason.read)} was read, between ${to2(reason.low)} ` +
    `and ${to2(reason.high)} was expected. Look at the figure typed, mix, rinse the meter, check it ` +
    'in a buffer.',
  low: (reason) =>
    `Read again before more product: pH ${to2(reason.read)} is lower than this dose should bring; ` +
    'perhaps it has not mixed yet. Wait a quarter of an hour more, with the water moving.',
  high: (reason) =>
    `Read again before anything else: pH ${to2(reason.read)} was read, above 8. Look at the figure typed, rinse the ` +
    `meter, check it in a buffer. If a second reading agrees, add nothing and exchange part of the water.`,
  unusual: (reason) =>
    `Read again before anything else: pH ${to2(reason.read)} is unusual for water. Check the meter ` +
    'in a buffer; write the second reading down too.',
  differ: (reason) =>
    `Wait: the two readings, pH ${to2(reason.one)} and ${to2(reason.other)}, do not agree. Mix, ` +
    'wait as long again, and read once more.',
  aboveTop: (reason) =>
    `Add nothing: pH ${to2(reason.read)} was read, above the window${reason.isBelowCeiling ? ', but not above 8' : ''}` +
    `. ${reason.hasDose ? 'Gas that leaves the water lifts the pH for a day or more; that is no fault of the product. ' : ''}${reason.isBelowCeiling ? 'Leave the vat and measure again tomorrow' : 'Exchange part of the water, and measure again'}` +
    '; check ammonia if fish are in.',
  inWindow: (reason) =>
    `Stop: pH ${to2(reason.read)} is in the window. No more product; keep the air on and measure ` +
    'again tomorrow.',
  willRise: (reason) =>
    `Air on, no product yet: with what has gone in, the pH should rise to about ${to1(reason.ph)} as carbon dioxide ` +
    'leaves. Read again after an hour of air and write "aired" beside it; if it has not risen, more is given.',
  littleLeft: () =>
    'Stop: what is left to give moves the pH by less than a meter shows. Keep the air on and ' +
    'measure again tomorrow.',
  mayEnd: (reason) =>
    `Once the gas has come to rest the pH may stand anywhere from ${to1(reason.low)} to ${to1(reason.high)}: keep ` +
    'the air on, read it tomorrow, write that reading down with "night" beside it, and do what is said then.',
  atEdge: (reason) =>
    `Stop: pH ${to2(reason.read)} lies just below the window, which begins at ${to1(reason.bottom)}, by less than a ` +
    'meter can tell. No product; keep the air on, hold the meter in a buffer, and measure again tomorrow.',
  climbs: (reason) =>
    `Once the carbon dioxide has left, the pH stands near ${to1(reason.ph)}${reason.isOwn ? ' by itself: this water needs no product' : ''}` +
    '.',
  risesAlone: (reason) =>
    `No product: as carbon dioxide leaves, the pH rises by itself to about ${to1(reason.ph)}. In a ` +
    'still vat that takes two days and more, in a stirred or shallow one about a day (from memory).',
  noUse: () => 'No dose of this product is of use here. Read again, check the meter and the product.',
  oneReading: () =>
    'One reading only: the answer rests on what such waters usually hold. The next reading tells far more.',
  misfit: () =>
    'The readings do not go together: a hidden buffer (peat, ammonia, phosphate, limestone in the ' +
    'vat), a wrong volume, a wrong product, or a meter that drifts. Half steps only.',
  organic: (reason) =>
    `The water answers as if it held a buffer beside carbon dioxide (chance ${Math.round(100 * reason.odds)}` +
    ' %), most likely acids of peat or leaves, or as if the product were weaker than said: small ' +
    'steps, pH can leap once the buffer is used up.',
  hardlyMoved: () =>
    'The last dose hardly moved the pH: the water is strongly buffered, or the product, the meter ' +
    'or the volume is not what it seems.',
  limited: (reason) =>
    'Dissolve this dose in a bucket, pour it in where the water moves, mix with the air on, wait a ' +
    `quarter of an hour, measure twice, write the pH down. ${WHY[reason.by]}`,
};

/** The sentence that goes with one reason. */
export const reasonText = <C extends Code>(reason: OfCode<C>): string =>
  (SENTENCES[reason.code] as (one: OfCode<C>) => string)(reason);

/** The first reason is what to do; the rest are remarks. */
export const todoFor = ({ reasons }: Advice): string => (reasons[0] ? reasonText(reasons[0]) : '');

export interface LikelierProduct {
  readonly name: MaterialName;
  readonly odds: number;
}

/** What does not fit, and what the answer rests on. */
export const remarksFor = (
  a: { readonly material: MaterialName },
  { reasons }: Pick<Advice, 'reasons'>,
  likelier: LikelierProduct | undefined,
): string =>
  [
    ...reasons.map(reasonText),
    ...(likelier ? [`The readings fit ${likelier.name} better than ${a.material}: look at the bag.`] : []),
  ].join(' ');
