import { assign } from '../../shared/records/columns/recognise';
import { column } from '../../shared/records/near/alone/looked';
import type { May } from '../../shared/records/near/alone/looked';

/** Best sum of scores of all ways to give each column one meaning or none, tried one by one. */
function bestOf(columns: readonly (readonly May[])[], taken: readonly string[] = []): number {
  const [first, ...others] = columns;
  if (!first) return 0;
  return Math.max(
    bestOf(others, taken),
    ...first
      .filter(([field]) => !taken.includes(field))
      .map(([field, score]) => score + bestOf(others, [...taken, field])),
  );
}
const given = (columns: readonly (readonly May[])[]): string => {
  const looked = columns.map((may) => column(may));
  const readings = assign(looked);
  return looked.map((one) => readings.get(one)?.field ?? 'open').join(' ');
};
const worth = (columns: readonly (readonly May[])[], read: string): number =>
  read.split(' ').reduce((sum, field, i) => sum + (columns[i]?.find(([may]) => may === field)?.[1] ?? 0), 0);

const W = 0.9;
test.each<[name: string, columns: readonly (readonly May[])[], read: string]>([
  ['the surer of two keeps the meaning', [[['date', 3, W]], [['date', 2, W]]], 'date open'],
  [
    'a column that can be something else gives way',
    [
      [
        ['date', 3, W],
        ['clock', 2.5, W],
      ],
      [['date', 2, W]],
    ],
    'clock date',
  ],
  [
    // The exchange of the third pair is worth it only after the second, and that after the first.
    'exchanges go on until none gains',
    [
      [['ph', 2.4, W]],
      [
        ['clock', 4.6, W],
        ['date', 3.4, W],
        ['ph', 2.4, W],
        ['vat', 1.9, W],
      ],
      [
        ['clock', 4.5, W],
        ['ph', 4, W],
        ['vat', 3.2, W],
        ['date', 2.5, W],
      ],
      [
        ['ph', 3.8, W],
        ['clock', 3.7, W],
        ['vat', 2.2, W],
      ],
    ],
    'ph date vat clock',
  ],
])('%s', (_name, columns, read) => {
  expect(given(columns)).toBe(read);
  expect(worth(columns, given(columns))).toBeCloseTo(bestOf(columns));
});
