import type { Near } from '../../base/near';
import { controlChart } from './kernels/controlChart';

/** When a chart of shares raises an alarm changes at numbers somebody chose; no bundle holds this file. */
const signals = (counts: readonly number[]): readonly string[] =>
  controlChart(
    counts,
    counts.map(() => 200),
  ).points.flatMap(({ signal }) => signal ?? []);
/** So many shares above the middle, one after the other. */
const above = (row: number): boolean =>
  signals([
    100,
    92,
    101,
    93,
    100,
    92,
    ...new Array<number>(row).fill(0).map((_, i) => 104 + (i % 2)),
    90,
    99,
  ]).includes('nine in a row above');
/** Runs about half, and one of another count. */
const far = (count: number, runs = 19): boolean =>
  signals([...Array.from({ length: runs }, (_, i) => 100 + (i % 2 === 0 ? 1 : -1)), count]).includes(
    'above the limits',
  );

export const NEAR: readonly Near[] = [
  {
    number: 'Points in a row on one side of the middle',
    value: 9,
    below: () => above(8),
    above: () => above(9),
    answers: [false, true],
  },
  {
    number: 'Sigmas from the middle',
    value: 3,
    below: () => far(120),
    above: () => far(124),
    answers: [false, true],
  },
  {
    number: 'Runs from which on there are limits',
    value: 8,
    below: () => far(160, 6),
    above: () => far(160, 7),
    answers: [false, true],
  },
];
