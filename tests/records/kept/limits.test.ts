import type { ExampleCell } from '../../../shared/records/rules/rule';
import { expectKept } from '../../support/kept';
import { auditGrid } from '../support/grid';

/**
 * What is said of one odd value, from a little odd to beyond belief, in books of one kind of trouble each: where the
 * judgement turns from nothing to a look, a slip or an impossible line.
 */
const LINES = 14;
const DAYS = Array.from(
  { length: 60 },
  (_, i) => `2025-${i < 20 ? '04' : i < 40 ? '05' : '06'}-${String(10 + (i % 20)).padStart(2, '0')}`,
);
const ODD = 7;
const wavy = (i: number): number => 1 + 0.05 * Math.sin(7 * i);
const digits = (x: number, n: number): number => Number(x.toPrecision(n));

type Row = readonly ExampleCell[];
const said = (rows: readonly Row[]): string =>
  auditGrid(rows)
    .groups.flatMap(({ findings }) => findings)
    .filter(({ rule }) => rule !== 'TEXT.NUMBER')
    .map(({ rule, severity, place, sentence }) => `${rule} ${severity} ${place.cell} ${sentence}`)
    .join(' ');

/** Two columns with a ratio that belongs to the farm. */
const PAIRS: readonly (readonly [over: string, under: string, usual: number, size: number])[] = [
  ['Hormone volume (ml)', 'Female weight (kg)', 0.5, 1.2],
  ['Second dose', 'First dose', 9, 0.5],
  ['Egg weight (g)', 'Female weight (kg)', 100, 1.2],
  ['Eggs', 'Egg weight (g)', 700, 100],
  ['Eggs', 'Female weight (kg)', 70_000, 1.2],
  ['Hatched', 'Eggs', 0.8, 80_000],
  ['Feed (kg)', 'Biomass (kg)', 0.05, 40],
  ['Biomass (kg)', 'Fish', 0.02, 900],
  ['Highest temperature', 'Lowest temperature', 1.1, 25],
  ['Dead eggs', 'Eggs', 0.1, 80_000],
];
const FACTORS = ['0.001', '0.3', '0.65', '1.4', '1.7', '10'];

test('a ratio that is off', () => {
  expectKept(
    'limits-ratios',
    PAIRS.map(([over, under, usual, size]) => ({
      of: `${over} ÷ ${under}`,
      said: Object.fromEntries(
        FACTORS.map((factor) => [
          factor,
          said([
            ['Date', under, over],
            ...DAYS.slice(0, LINES).map((day, i): Row => {
              const below = digits(size * wavy(i), 4);
              return [
                day,
                below,
                digits(below * usual * wavy(3 * i + 1) * (i === ODD ? Number(factor) : 1), 5),
              ];
            }),
          ]),
        ]),
      ),
    })),
  );
});

/** Columns that are measured anew for each line, with a stretch of equal values. */
test('values copied down', () => {
  const one = (heading: string, middle: number, lines: number, length: number): string =>
    said([
      ['Date', heading],
      ...DAYS.slice(0, lines).map((day, i): Row => [
        day,
        i >= 2 && i < 2 + length
          ? digits(middle, 3)
          : digits(middle * (1 + 0.013 * ((i * 7) % 11) - 0.05), 3),
      ]),
    ]);
  expectKept('limits-copied', {
    stretches: Object.fromEntries(
      [8, 14, 40].map((lines) => [
        lines,
        Object.fromEntries(
          [3, 4, 5, 6, 7].map((length) => [length, one('Egg weight (g)', 121, lines, length)]),
        ),
      ]),
    ),
    whole: Object.fromEntries(
      [7, 8, 9].map((lines) => [
        lines,
        said([['Date', 'Egg weight (g)'], ...DAYS.slice(0, lines).map((day): Row => [day, 121])]),
      ]),
    ),
    coarse: said([
      ['Date', 'Temperature'],
      ...DAYS.slice(0, 20).map((day, i): Row => [day, i < 12 ? 26 : 27]),
    ]),
    blanksBetween: said([
      ['Date', 'Egg weight (g)'],
      ...DAYS.slice(0, 20).map((day, i): Row => [day, i % 2 ? null : i < 12 ? 121 : 100 + i]),
    ]),
  });
});
