import { findFunction } from '../../../shared/catalogue';
import { invoke } from '../../../shared/functions/invoke';
import type { Cell } from '../../../shared/base/values';
import { isError, isGrid } from '../../../shared/base/values';

/** The mean of a farm's runs as a factor: numbers above 0, also those below 1; the row at fault is named. */
const fn = findFunction('SPAWN.RATE.MEAN');
function answer(...values: readonly number[]): Cell {
  if (!fn) throw new Error('no function');
  const got = invoke(fn, [values.map((x) => [x]), 0.8]);
  return isGrid(got) ? (got[0]?.[0] ?? null) : got;
}

test('factors below 1 are factors', () => {
  const mean = answer(0.6, 0.7, 0.65);
  expect(mean).toBeGreaterThan(0.6);
  expect(mean).toBeLessThan(0.8);
});

test.each([
  [[0, 2, 2], 'row 1'],
  [[2, -1, 2], 'row 2'],
  [[2, 2, 0], 'row 3'],
] as const)('%j: %s is at fault', (values, row) => {
  const got = answer(...values);
  expect(isError(got) ? [got.error, got.message] : got).toEqual([
    '#VALUE!',
    expect.stringContaining(`values, ${row}: a factor needs numbers above 0`),
  ]);
});
