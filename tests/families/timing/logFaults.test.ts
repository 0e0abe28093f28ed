import { logFaults, orderFault } from '../../../shared/families/timing/kernels/logFaults';

/** Faults of a kept log, each side of every limit. */
const DAY = 46_500;
const kinds = (
  hours: readonly (number | undefined)[],
  readings: readonly (number | undefined)[],
  longest = 6,
): string[] =>
  logFaults(
    hours.map((hour) => (hour === undefined ? undefined : DAY + hour / 24)),
    readings,
    longest,
  ).map(({ kind, index }) => `${kind} ${index}`);

test.each<readonly [string, readonly (number | undefined)[], readonly string[]]>([
  ['good', [26, 26, 26], []],
  ['as cold and as warm as water with fish may be', [1e-9], []],
  ['45 °C', [45], []],
  ['just over 45', [45.1], ['fahrenheit 0']],
  ['just under nothing', [-0.1], ['impossible 0']],
  ['nothing', [0], ['zero 0']],
  ['7 °C in °F', [44.6 + 1e-9], []],
  ['113 °F is 45 °C', [113], ['fahrenheit 0']],
  ['over 113 °F', [113.1], ['impossible 0']],
  ['blank', [undefined], ['noReading 0']],
  ['no number', [NaN], ['notANumber 0']],
])('a reading: %s', (_, readings, faults) => {
  expect(
    kinds(
      readings.map((__, i) => i),
      readings,
    ),
  ).toEqual(faults);
});
test('a reading in °F is told in °C', () => {
  expect(logFaults([DAY], [77], 6)).toEqual([{ kind: 'fahrenheit', index: 0, celsius: 25 }]);
});
test.each([
  [6, []],
  [6.001, ['gap 1']],
])('%f hours of silence of six allowed', (hours, faults) => {
  expect(kinds([0, hours], [26, 26])).toEqual(faults);
});
test.each([
  // Four degrees an hour, two in less than half an hour; beyond two hours nothing is a leap.
  [1, 3.99, []],
  [1, 4.01, ['jump 1']],
  [1, -4.01, ['jump 1']],
  [1.5, 5.99, []],
  [1.5, 6.01, ['jump 1']],
  [0.5, 1.99, []],
  [0.1, 1.99, []],
  [0.1, 2.01, ['jump 1']],
  [1.999, 8.01, ['jump 1']],
  [2.001, 12, []],
])('in %f hours %f °C', (hours, degrees, faults) => {
  expect(kinds([0, hours], [26, 26 + degrees])).toEqual(faults);
});
test('a leap is told in minutes', () => {
  expect(logFaults([DAY, DAY + 0.25 / 24], [26, 30], 6)).toEqual([
    { kind: 'jump', index: 1, degrees: 4, minutes: expect.closeTo(15, 4) },
  ]);
});
test.each([
  [0.1, undefined],
  [0, 'repeat'],
  [-0.1, 'midnight'],
  [-0.99, 'midnight'],
  [-1, 'order'],
  [-2, 'order'],
])('a step of %f days', (step, kind) => {
  expect(orderFault([DAY, DAY + step])?.kind).toBe(kind);
  expect(orderFault([DAY, DAY + 1, DAY + 1 + step])?.index).toBe(kind && 2);
});
test('times: a clock without a day, none at all; the next is measured against the last good one', () => {
  expect(logFaults([0.99, 1, undefined, NaN], [26, 26, 26, 26], 1e9).map(({ kind }) => kind)).toEqual([
    'clock',
    'notATime',
    'notATime',
  ]);
  expect(kinds([0, undefined, 6.1], [26, 26, 26])).toEqual(['notATime 1', 'gap 2']);
  expect(kinds([0, 1, 6.1], [26, undefined, 26])).toEqual(['noReading 1', 'gap 2']);
  expect(kinds([0, -1, 1], [26, 26, 26])).toEqual(['midnight 1']);
});
