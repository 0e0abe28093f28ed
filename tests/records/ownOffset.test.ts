import type { LatencyOffsets } from '../../shared/records';
import { latencySpan } from '../../shared/records/rules/farming/timing';
import { latencyOffsetsOf, learnRates, rateOf } from '../../shared/learn';
import { demoFarm, TRUTH } from '../learn/support/demoFarm';
import { auditGrid } from './support/grid';

/**
 * An invented farm that strips five hours after the handbook table at 27 °C (9 h), run after run, and once at
 * the hour of the table.
 */
const HOURS = [14, 14.5, 13.5, 14, 9];
const ROWS = [
  ['Run', 'Preparation', 'Water temperature', 'Latency (h)'],
  ...HOURS.map((hours, i) => [`R${i + 1}`, 'handbook pituitary', 27, hours]),
];
const found = (latencyOffsets?: LatencyOffsets): string[] =>
  auditGrid(ROWS, latencyOffsets ? { latencyOffsets } : {})
    .groups.flatMap(({ findings }) => findings)
    .filter(({ rule }) => rule === 'LATENCY.FIT')
    .map(({ place: { cell }, sentence }) => `${cell} ${sentence}`);
const OWN: LatencyOffsets = {
  whole: 0,
  by: {
    'handbook pituitary': 5,
    'carp pituitary': 5,
    'own-species pituitary': 5,
    'tilapia pituitary': 5,
  },
};

test('the published windows hold without own rates', () => {
  const before = latencySpan(27, 'ready-made solution', '');
  expect(latencySpan(27, 'ready-made solution', '', { whole: 0, by: {} })).toEqual(before);
});

test('a window moves by the offset of its preparation, or of the farm', () => {
  const before = latencySpan(27, 'ready-made solution', '');
  const later = latencySpan(27, 'ready-made solution', '', { whole: 3, by: {} });
  const named = latencySpan(27, 'ready-made solution', '', { whole: 3, by: { 'ready-made solution': -2 } });
  expect([(later?.low ?? 0) - (before?.low ?? 0), (later?.high ?? 0) - (before?.high ?? 0)]).toEqual([
    expect.closeTo(3 * 0.85, 9),
    expect.closeTo(3 * 1.15, 9),
  ]);
  expect((named?.low ?? 0) - (before?.low ?? 0)).toBeCloseTo(-2 * 0.85, 9);
});

test(
  'a farm that always strips late is let be, a strip at the hour of the table is then ' +
    'the odd one, and the sentence says why',
  () => {
    expect(found().some((one) => one.startsWith('D6'))).toBe(false);
    const own = found(OWN);
    expect(own).toHaveLength(1);
    expect(own[0]).toMatch(
      /^D6 9 h from injection to strip does not fit 27 °C.*moved by your own rates\)\.$/,
    );
  },
);

test('offsets come from learned rates, by preparation', () => {
  const farm = learnRates(demoFarm(20));
  const offsets = latencyOffsetsOf(farm.rates);
  expect(offsets).toEqual({
    whole: rateOf(farm, 'latencyOffset')?.value,
    by: { 'ready-made solution': rateOf(farm, 'latencyOffset', 'ready-made solution')?.value },
  });
  expect(offsets?.by['ready-made solution']).toBeCloseTo(TRUTH.offset, 0);
});

test('no run speaks of it: no offsets at all', () => {
  expect(latencyOffsetsOf(learnRates([]).rates)).toBeUndefined();
  expect(latencyOffsetsOf([])).toBeUndefined();
});
