import { vatAdvice } from '../../../../shared/dosing/vat';
import { answered } from '../../../../shared/families/water/near';
import type { Line } from '../../../../shared/families/water/near';
import { chanceOf, closedAfter } from '../../../../shared/families/water/titration/nextDose';
import { SETUP, event } from '../../../dosing/support/lines';

/** How sure a reading is, and how much of that a dose may risk. */

const width = (...before: Parameters<typeof vatAdvice>[1]): number => {
  const { now } = vatAdvice(SETUP, [...before, event('reading', { ph: 5.5 })]);
  return (now?.high ?? NaN) - (now?.low ?? NaN);
};

test('a check in a buffer makes a reading surer by as much as its errors say', () => {
  // Independent errors add as squares: a reading 0.035, the offset of a good meter 0.06; after a check 0.035 is left of
  // it, and the check is a reading too.
  const checked = width(event('meter check', { number: 7, unit: 'buffer 7' }));
  expect(checked / width()).toBeCloseTo(Math.hypot(0.035, 0.035, 0.035) / Math.hypot(0.035, 0.06), 2);
});

const SOUR: readonly Line[] = [
  [0, 5.1],
  [0, 5.5, 'aired'],
  [0, 5.5, 'aired'],
];
test.each([
  ['good', 0.03],
  ['cheap', 0.01],
  ['strips', 0.01],
] as const)(
  'a dose held back by the top is passed by it in no more than the chance allowed: %s',
  (meter, risk) => {
    const advice = answered(SOUR, { meter });
    if (!advice) throw new Error('refused');
    expect([advice.action, advice.limit]).toEqual(['dose', 'top']);
    const { cloud, segment, dose } = advice;
    const chance = chanceOf(cloud, closedAfter(segment.beliefs, cloud, dose), (ph) => ph > 7.5);
    expect(chance).toBeLessThanOrEqual(risk + 0.002);
    // Held back by that and nothing else: a twentieth more passes it.
    const more = chanceOf(cloud, closedAfter(segment.beliefs, cloud, 1.05 * dose), (ph) => ph > 7.5);
    expect(more).toBeGreaterThan(0.8 * risk);
  },
);
