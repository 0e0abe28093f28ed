import { vatSentences } from '../../../shared/dosing/say';
import type { VatAdvice } from '../../../shared/dosing/vat';
import { vatAdvice } from '../../../shared/dosing/vat';
import { verdictOf } from '../../../shared/maths/verdict';
import type { Advisor } from './play';
import { eventsIn, next, play, SETUP } from './play';
import type { Draw } from './vat';
import { METERS } from './vat';

/**
 * A headline must not promise more than the range printed beside it. Vats are walked to their end by the simulator of
 * the long tests; every answer on the way is read as the person reads it, from its sentences.
 */
const WALKS: readonly (readonly [name: string, draw: Draw, meter: 'good' | 'cheap'])[] = [
  ['ordinary', { kind: 'ordinary' }, 'good'],
  ['ordinary, cheap meter', { kind: 'ordinary', meter: METERS.cheap }, 'cheap'],
  ['hydrated lime', { kind: 'ordinary', product: 'hydrated lime' }, 'good'],
  ['brown', { kind: 'tannin' }, 'good'],
  ['hard well', { kind: 'hard well' }, 'good'],
];
const VATS = 14;
const WINDOW = { bottom: 6.5, ceiling: 8 };

/** The range once aired as it is printed. */
const printed = (expect: string): readonly [low: number, high: number] | undefined => {
  const found = /aired (\d+\.\d) to (\d+\.\d)/.exec(expect);
  return found ? [Number(found[1]), Number(found[2])] : undefined;
};
const isInside = ([low, high]: readonly [number, number]): boolean =>
  low >= WINDOW.bottom && high <= WINDOW.ceiling;

test.each(WALKS)('no headline says more than its range: %s', (_name, draw, meter) => {
  const seen = new Map<string, number>();
  const wrong: string[] = [];
  const look = (advice: VatAdvice): void => {
    const { headline, expect: range } = vatSentences(SETUP, advice);
    const aired = printed(range);
    const isSafe = advice.odds !== undefined && verdictOf(advice.odds) === 'safe';
    seen.set(headline, (seen.get(headline) ?? 0) + 1);
    if ((isSafe || headline === 'Done') && !(aired && isInside(aired))) wrong.push(`${headline}: ${range}`);
    // "Done" and "ends well" are one promise.
    if ((headline === 'Done') !== (isSafe && advice.action === 'done'))
      wrong.push(`${headline} ${advice.odds}`);
  };
  const looking: Advisor = (vat, lines, inBuffer) => {
    const { litres, celsius, product: material } = vat;
    const advice = vatAdvice({ ...SETUP, litres, celsius, material, meter }, eventsIn(lines));
    if (advice.action !== 'readAgain' && advice.action !== 'waitSettle') look(advice);
    const told = next(meter)(vat, lines, inBuffer);
    // The formula's row, by its own columns.
    const range = [told.airedLow, told.airedHigh] as const;
    if ((told.action === 'done' || told.odds >= 0.9) && !isInside(range))
      wrong.push(`formula: ${told.action} ${told.odds} ${range.join(' to ')}`);
    return told;
  };
  for (let i = 0; i < VATS; i++) play(151_000_000 + i, draw, looking);
  expect(wrong).toEqual([]);
  // The walk has met ends of either kind.
  expect(seen.get('No product; read again tomorrow') ?? 0).toBeGreaterThan(0);
  if (draw.kind !== 'hard well') expect(seen.get('Done') ?? 0).toBeGreaterThan(0);
});
