import type { Near } from '../../base/near';
import type { Beside, Line } from './near';
import { answered, said } from './near';
import {
  AT_EDGE,
  CLEAR,
  GROWTH,
  HARDLY,
  IDLE,
  MISFIT,
  ORGANIC,
  RISES_ALONE,
  SINKS,
  STOOD,
  SURELY,
} from './titration/advise';
import { doubtsOf } from './titration/advise';
import { MATERIALS } from './carbonate/materials';
import type { Cloud } from './titration/cloud';

/** Cases beside the numbers by which a dosing ends, waits, or is doubted. */

const AIRED = 'aired';
/** Untouched water that two hours of air leave at a pH. */
const rested = (ph: number): readonly Line[] => [
  [0, 5.1],
  [0, ph, AIRED],
  [0, ph, AIRED],
];
/** A part-dose in each, and the pair read after it. */
const dosed = (
  from: number,
  ...parts: readonly (readonly [grams: number, ph: number])[]
): readonly Line[] => [...rested(from), ...parts.map(([grams, ph]): Line => [grams, ph, '', ph])];
const STRIPS: Beside = { meter: 'strips' };
const NO_AIR: Beside = { airing: 'cannot' };
/** Dosed to 6.5, then two readings under air. */
const airedAgain = (ph: number): readonly Line[] => [
  ...dosed(5.8, [1, 6.3], [0.5, 6.5]),
  [0, ph, AIRED],
  [0, ph, AIRED],
];
/** The same towards a window so low that a surely standing pH is not clear of its edge yet. */
const sourWindow = (ph: number): string =>
  said(
    [
      [0, 4.6],
      [0, 5, AIRED],
      [0, 5, AIRED],
      [0.5, 5.5, '', 5.5],
      [0, ph, AIRED, ph],
      [0, ph, AIRED, ph],
    ],
    { bottom: 5.5, top: 6.5, target: 6.4 },
  );
/** The same towards a window so narrow that a cheap meter leaves no room for a dose. */
const noRoom = (ph: number): string =>
  said([...dosed(5.8, [1, 6.3], [0.5, ph - 0.02]), [0, ph, AIRED, ph], [0, ph, AIRED, ph]], {
    meter: 'cheap',
    top: 6.7,
    target: 6.6,
  });
const nextMorning = (ph: number): readonly Line[] => [
  ...dosed(5.6, [1.5, 6.4], [0.6, 6.6]),
  [0, ph, 'night'],
];
const codes = (lines: readonly Line[]): string =>
  (answered(lines)?.reasons ?? []).map(({ code }) => code).join(' ');
const limitOf = (lines: readonly Line[]): string => answered(lines)?.limit ?? 'refused';
/** The next part-dose as so many times the last, in hundredths. */
const growth = (lines: readonly Line[], last: number): number =>
  Math.round((100 * (answered(lines)?.dose ?? NaN) * MATERIALS['soda ash'].molarMass) / last) / 100;
const doubt = (misfit: number): string =>
  doubtsOf({ doses: [0, 1], readings: [5, 6] }, { misfit, sites: [], weights: [] } as unknown as Cloud)
    .map(({ code }) => code)
    .join(' ');
/** What is said of three readings by which the water holds organic acids with this chance. */
const organic = (chance: number): string =>
  doubtsOf({ doses: [0, 1, 2], readings: [5, 5.5, 6] }, {
    misfit: 0,
    sites: [0.1, 0],
    weights: [chance, 1 - chance],
  } as unknown as Cloud)
    .map(({ code }) => code)
    .join(' ');
/** A dose to just below the bottom, where the pH has risen by this much since the one before. */
const slope = (rise: number): string =>
  answered(dosed(5.2, [1, 6.2], [0.2, 6.46], [0.05, 6.46 + rise]), { target: 6.51 })?.limit ?? 'refused';

export const NEAR: readonly Near[] = [
  {
    number: 'rise of pH by the last part-dose from which its slope counts',
    value: 0.02,
    below: () => slope(0.019),
    above: () => slope(0.021),
    answers: ['last', 'none'],
  },
  {
    number: 'pH below the window at which untouched, aired water is left alone',
    value: AT_EDGE,
    below: () => said(rested(6.458)),
    above: () => said(rested(6.462)),
    answers: ['dose limited', 'watch atEdge'],
  },
  {
    number: 'chance of standing inside at which dosed water gets no more',
    value: SURELY,
    below: () => said(airedAgain(6.7), { meter: 'cheap', target: 7.4 }),
    above: () => said(airedAgain(6.725), { meter: 'cheap', target: 7.4 }),
    answers: ['dose limited', 'done inWindow'],
  },
  {
    number: 'the same in the morning',
    value: STOOD,
    below: () => said(nextMorning(6.58)),
    above: () => said(nextMorning(6.61)),
    answers: ['dose limited', 'watch inWindow'],
  },
  {
    number: 'pH above the bottom of the window at which dosed water stands clear of it',
    value: CLEAR,
    below: () => sourWindow(5.645),
    above: () => sourWindow(5.65),
    answers: ['dose limited', 'done inWindow'],
  },
  {
    number: 'times a rise worth a dose by which water with no room for more may stand below the window',
    value: 2,
    below: () => noRoom(6.34),
    above: () => noRoom(6.36),
    answers: ['stop noUse', 'watch littleLeft'],
  },
  {
    number: 'pH by which dosed water will sink from which air is asked for',
    value: SINKS,
    below: () => said(dosed(5.2, [1, 6.53])),
    above: () => said(dosed(5.2, [1, 6.56])),
    answers: ['dose limited', 'airFirst sinksBack'],
  },
  {
    number: 'times the last part-dose that the next may be',
    value: GROWTH.usual,
    below: () => limitOf(dosed(5.2, [1, 5.8])),
    above: () => limitOf(dosed(5.2, [1, 5.81])),
    answers: ['last', 'step'],
  },
  {
    number: 'chance of rising by itself at which water that cannot be aired is left alone',
    value: RISES_ALONE,
    below: () => said([[0, 5.645]], NO_AIR),
    above: () => said([[0, 5.65]], NO_AIR),
    answers: ['stop noUse', 'stop risesAlone'],
  },
  {
    number: 'chance of a buffer beside carbon dioxide from which it is said',
    value: ORGANIC,
    below: () => organic(0.48),
    above: () => organic(0.52),
    answers: ['', 'organic'],
  },
  {
    number: 'rise of pH after a dose that counts as hardly moved',
    value: HARDLY,
    below: () => codes(dosed(5.2, [0.2, 5.247])),
    above: () => codes(dosed(5.2, [0.2, 5.253])),
    answers: ['limited hardlyMoved', 'limited'],
  },
  {
    number: 'reading errors left unexplained from which the readings do not go together',
    value: MISFIT,
    below: () => doubt(2.99),
    above: () => doubt(3.01),
    answers: ['', 'misfit'],
  },
  {
    number: 'reading errors left unexplained from which a part-dose is halved',
    value: MISFIT,
    below: () => limitOf(dosed(5.5, [0.6, 5.6], [0.6, 6.08])),
    above: () => limitOf(dosed(5.5, [0.6, 5.6], [0.6, 6.1])),
    answers: ['top', 'doubt'],
  },
  {
    number: 'the same where a reading lay lower than its dose should bring',
    value: GROWTH.doubtful,
    below: () => growth([...rested(5.2), [0.4, 5.3], [0, 5.33], [0, 5.33]], 0.4),
    above: () => growth(dosed(5.2, [0.4, 5.33]), 0.4),
    answers: [1, 2],
  },
  {
    number: 'rise of pH, read or once aired, that is worth a dose',
    value: IDLE,
    below: () => said(dosed(5.2, [1, 6.2], [1, 6.612]), STRIPS),
    above: () => said(dosed(5.2, [1, 6.2], [1, 6.615]), STRIPS),
    answers: ['watch littleLeft', 'dose limited'],
  },
];
