import type { Near } from '../../base/near';
import type { Line } from './check';
import { check } from './check';

/** What columns are read as changes at numbers somebody chose; no bundle holds this file. */
const fieldsOf = (values: readonly Line[]): readonly (string | undefined)[] =>
  check(values).tables[0]?.mapping.map(({ field }) => field) ?? [];

const DAYS = [3, 5, 8, 11, 13, 16, 20, 23, 27, 30].map((day) => `${String(day).padStart(2, '0')}/04/2025`);

/** Fish under a word nobody knows times their mean weight, beside their length. */
const weighed = (count: number): string | undefined =>
  fieldsOf([
    ['Date', 'Zrabe', 'Mean weight (g)', 'Quolt', 'Length (cm)'],
    ...DAYS.map((day, i): Line => {
      const [n, mean] = [count + 14 * ((i % 3) - 1), 2.1 + 0.3 * i];
      return [day, n, mean, Number((n * mean).toFixed(1)), 5.1 + 0.2 * i];
    }),
  ])[3];

/** Numbers under a word nobody knows beside pH and oxygen. */
const water = (from: number): string | undefined =>
  fieldsOf([
    ['Date', 'Zrabe', 'pH', 'Oxygen (mg/l)'],
    ...DAYS.map((day, i): Line => [day, from + 0.3 * (i % 4), 6.8 + 0.1 * (i % 3), 5.1 + 0.2 * (i % 4)]),
  ])[1];

/** Larvae under a word nobody knows between eggs and fry: this share of the eggs. */
const larvae = (share: number): string | undefined =>
  fieldsOf([
    ['Run', 'Date', 'Eggs', 'Zrabe', 'Fry'],
    ...DAYS.map((day, i): Line => {
      const eggs = 81_000 + 1237 * ((i * 5) % 7);
      return [`R${i + 1}`, day, eggs, Math.round(share * eggs), Math.round(0.6 * share * eggs)];
    }),
  ])[3];

export const NEAR: readonly Near[] = [
  {
    number: 'Fish, above which a number times the mean weight is no sample',
    value: 150,
    below: () => weighed(148),
    above: () => weighed(152),
    answers: ['sampleWeight', 'biomass'],
  },
  {
    number: 'Degrees from which a narrow column beside pH is the warmth of the water',
    value: 20,
    below: () => water(19),
    above: () => water(20.1),
    answers: [undefined, 'temperature'],
  },
  {
    number: 'Share of the eggs from which a count between eggs and fry is the larvae that hatched',
    value: 0.02,
    below: () => larvae(0.018),
    above: () => larvae(0.022),
    answers: [undefined, 'hatched'],
  },
];
