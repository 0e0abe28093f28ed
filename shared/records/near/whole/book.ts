import type { Near } from '../../../base/near';
import type { Cell } from '../../../base/values';
import { readingShare } from '../../findings/reading';
import { findLinks } from '../../meaning/links';
import type { Line } from '../check';
import { check, findingsOf } from '../check';

/** What the check finds or reads changes at numbers somebody chose; no bundle holds this file. */
const isAccused = (values: readonly Line[]): boolean =>
  findingsOf(values).some(({ severity }) => severity !== 'look');

/** Is more of a later stage than of an earlier one what the check says? */
const isMoreThanBefore = (values: readonly Line[]): boolean =>
  findingsOf(values).some(({ rule }) => rule === 'STAGE.GROWS');

const DATES = [13, 16, 20, 23, 27, 30].map((day) => `${day}/04/2025`);
/** Spawnings without fault, one cell of the fourth line another. */
function spawnings(changed: Readonly<Record<number, Cell>>): readonly Line[] {
  const rows = DATES.map((date, i): Line => {
    const [grams, perGram] = [110 + 17 * ((i * 5) % 6), 640 + 9 * ((i * 7) % 5)];
    return [
      i + 1,
      date,
      1.1 + 0.13 * ((i * 3) % 6),
      grams,
      perGram,
      grams * perGram,
      41_000 + 1237 * ((i * 5) % 6),
    ];
  });
  return [
    ['Run', 'Date', 'Female weight (kg)', 'Egg weight (g)', 'Eggs per gram', 'Eggs', 'Hatched'],
    ...rows.map((row, r) => row.map((cell, c) => (r === 3 ? (changed[c] ?? cell) : cell))),
  ];
}
const eggsOfFourth = Number(spawnings({})[4]?.[5]);

/** Rows of which the first `holding` are a product. */
const productLinks = (rows: number, holding: number): number => {
  const a = Float64Array.from({ length: rows }, (_, i) => 11 + 7 * i);
  const b = Float64Array.from({ length: rows }, (_, i) => 5 + ((i * 3) % 8));
  const c = a.map((x, i) => x * (b[i] ?? NaN) + (i < holding ? 0 : 977 + 131 * i * i));
  return findLinks([a, b, c], rows).filter(({ kind }) => kind === 'product').length;
};

const clock = (hours: number): string =>
  `${String(Math.floor(hours) % 24).padStart(2, '0')}:${String(Math.round((hours % 1) * 60)).padStart(2, '0')}`;
/** What the second of two clocks under unknown words is read as, so many hours after the first. */
const secondClock = (hours: number): string | undefined =>
  check([
    ['Run', 'Date', 'Female weight (kg)', 'Hormone (ml)', 'Zrabe', 'Quolt', 'Egg weight (g)'],
    ...DATES.map((date, i): Line => [
      i + 1,
      date,
      1.1 + 0.13 * i,
      0.55 + 0.065 * i,
      clock(20 + i / 4),
      clock(20 + i / 4 + hours),
      110 + 17 * ((i * 5) % 6),
    ]),
  ]).tables[0]?.mapping[5]?.field;

/** Lines of deaths with their sum below, under a word nobody knows. */
const feet = (lines: number): number =>
  check([
    ['Date', 'Dead', 'Sold'],
    ...Array.from({ length: lines }, (_, i): Line => [DATES[i] ?? null, 12 + 5 * i, 300 + 50 * i]),
    ['Zrabe', 12 * lines + (5 * lines * (lines - 1)) / 2, 300 * lines + 25 * lines * (lines - 1)],
  ]).tables[0]?.skipped.length ?? 0;

/** Columns under unknown words beside known ones. */
const isEnough = (known: number, unknown: number): boolean => {
  const names = ['Date', 'Eggs', 'Hatched', 'Female weight (kg)', 'Egg weight (g)', 'Eggs per gram', 'Run'];
  const values = (i: number): Line => [
    DATES[i] ?? null,
    81_000 + 1237 * ((i * 5) % 6),
    41_000 + 737 * ((i * 3) % 6),
    1.1 + 0.13 * ((i * 3) % 6),
    110 + 17 * ((i * 5) % 6),
    640 + 9 * ((i * 7) % 5),
    i + 1,
  ];
  const strange = Array.from({ length: unknown }, (_, c) => `Zq${'abcdefgh'[c] ?? ''}`);
  return readingShare(
    check([
      [...names.slice(0, known), ...strange],
      ...DATES.map((_, i) => [
        ...values(i).slice(0, known),
        ...strange.map((_s, c) => ((i * 7919 + c * 611) % 97) + 1),
      ]),
    ]).tables,
  ).isEnough;
};

export const NEAR: readonly Near[] = [
  {
    number: 'Kilograms no brood fish is above',
    value: 25,
    below: () =>
      isAccused(
        [...spawnings({})].map((line, r) =>
          r === 0 ? line : [...line.slice(0, 2), r === 4 ? 24.9 : 22 + r / 5, ...line.slice(3)],
        ),
      ),
    above: () =>
      isAccused(
        [...spawnings({})].map((line, r) =>
          r === 0 ? line : [...line.slice(0, 2), r === 4 ? 25.1 : 22 + r / 5, ...line.slice(3)],
        ),
      ),
    answers: [false, true],
  },
  {
    number: 'Larvae for each egg, with what two counts may differ by',
    value: 1.02,
    below: () => isMoreThanBefore(spawnings({ 6: Math.round(1.019 * eggsOfFourth) })),
    above: () => isMoreThanBefore(spawnings({ 6: Math.round(1.021 * eggsOfFourth) })),
    answers: [false, true],
  },
  {
    number: 'Share of the lines a relation must hold in',
    value: 0.66,
    below: () => productLinks(10, 6),
    above: () => productLinks(10, 7),
    answers: [0, 1],
  },
  {
    number: 'Lines a relation is tried on, at least',
    value: 4,
    below: () => productLinks(3, 3),
    above: () => productLinks(4, 4),
    answers: [0, 1],
  },
  {
    number: 'Hours after an injection from which the second clock is the strip',
    value: 5,
    below: () => secondClock(4.75),
    above: () => secondClock(5.25),
    answers: ['endTime', 'stripped'],
  },
  {
    number: 'Lines above a sum that is known by its shape',
    value: 4,
    below: () => feet(3),
    above: () => feet(4),
    answers: [0, 1],
  },
  {
    number: 'Share of the columns read that makes "nothing found" mean something',
    value: 0.7,
    below: () => isEnough(6, 3),
    above: () => isEnough(7, 3),
    answers: [false, true],
  },
];
