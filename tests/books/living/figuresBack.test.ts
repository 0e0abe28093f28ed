import type { Cell } from '../../../shared/base/values';
import { figuresOf, spreadsOf } from '../../../shared/books/living/reading/readFigures';
import {
  dayOf,
  isYes,
  numberIn,
  rowsUnder,
  setupOf,
  textIn,
} from '../../../shared/books/living/reading/sheetReading';
import {
  EGGS_VARY,
  FIGURES,
  FIGURE_HEADINGS,
  SPREAD_HEADINGS,
} from '../../../shared/books/living/workings/figureList';

/** What is taken of the sheet of figures: what somebody typed or learned, not what we wrote ourselves. */
const sheet = (...values: readonly (readonly Cell[])[]) => ({ name: 'Figures', values });
const hatch = FIGURES.find(({ key }) => key === 'hatch');
const { label = '', planned = NaN } = hatch ?? {};
const row = (value: Cell, whose: Cell): readonly Cell[] => [label, value, 'share', null, null, whose];

test.each<readonly [string, Cell, Cell, unknown]>([
  ['ours, untouched', planned, 'ours', {}],
  ['ours, the word gone', planned, null, {}],
  ['the same number, but the farm’s own', planned, 'your own', { hatch: planned }],
  ['another number', planned + 0.01, 'ours', { hatch: planned + 0.01 }],
  ['nothing', null, 'your own', {}],
  ['an error', { error: '#N/A' }, 'your own', {}],
  ['a word', 'half', 'ours', { hatch: 'half' }],
])('a figure: %s', (_, value, whose, taken) => {
  expect(figuresOf(sheet(FIGURE_HEADINGS, row(value, whose)))).toEqual(taken);
});
test('no row, no heading', () => {
  expect(figuresOf(sheet(FIGURE_HEADINGS))).toEqual({});
  expect(figuresOf(sheet(row(0.3, 'your own')))).toEqual({});
});

describe('spreads', () => {
  const back = (value: number, runs: number, season: number) =>
    spreadsOf(sheet(SPREAD_HEADINGS, [label, runs, season]), { hatch: value });
  // Of a mean of 0.5: three tenths and two tenths of 0.5.
  test('the usual ones are nobody’s, within half a thousandth', () => {
    expect(back(0.5, 0.15, 0.1)).toEqual({});
    expect(back(0.5, 0.1504, 0.0996)).toEqual({});
    expect(back(0.5, 0.1506, 0.1)).toEqual({ hatch: { runs: 0.1506, season: 0.1 } });
    expect(back(0.5, 0.15, 0.0994)).toEqual({ hatch: { runs: 0.15, season: 0.0994 } });
    expect(back(0.2, 0.12, 0.08)).toEqual({});
  });
  test('those of eggs', () => {
    const eggs = (runs: number, season: number, females: number) =>
      spreadsOf(sheet(SPREAD_HEADINGS, [EGGS_VARY, runs, season, females]), {});
    expect(eggs(0.15, 0.2, 0.3)).toEqual({});
    expect(eggs(0.15, 0.2, 0.31)).toEqual({ eggs: { runs: 0.15, season: 0.2, females: 0.31 } });
    expect(eggs(0.16, 0.2, 0.3)).toEqual({ eggs: { runs: 0.16, season: 0.2, females: 0.3 } });
    expect(eggs(0.15, 0.21, 0.3)).toEqual({ eggs: { runs: 0.15, season: 0.21, females: 0.3 } });
  });
});

describe('reading by headings', () => {
  const titles = ['A', 'B', 'C', 'D'];
  const blank = (n: number): readonly (readonly Cell[])[] => Array.from({ length: n }, () => []);
  test('half of the headings are enough, wherever they stand', () => {
    expect(rowsUnder(sheet(['D', 'x', 'A'], [1, 2, 3]), titles)).toEqual([{ A: 3, D: 1 }]);
    expect(rowsUnder(sheet(['D', 'x'], [1, 2]), titles)).toEqual([]);
  });
  test('in the first sixty rows', () => {
    expect(rowsUnder(sheet(...blank(59), titles, [1]), titles)).toHaveLength(1);
    expect(rowsUnder(sheet(...blank(60), titles, [1]), titles)).toHaveLength(0);
  });
  test('what cells say', () => {
    expect([true, 'Yes', 'y', 'X', ' true ', 'no', 1, undefined, 'yesterday'].map(isYes)).toEqual([
      ...[true, true, true, true, true],
      ...[false, false, false, false],
    ]);
    expect([textIn(undefined), textIn(' a '), textIn(5), numberIn('5'), numberIn(5)]).toEqual([
      '',
      'a',
      '5',
      undefined,
      5,
    ]);
    expect([dayOf('2026-11-28'), dayOf(46_354), dayOf('soon')]).toEqual([46_354, 46_354, undefined]);
  });
  test('water of a month stands beside it, its share of eggs one further', () => {
    const months = sheet(['January', 24.5, 0.12], ['x', 'May', 26, null]);
    const { temperatures, eggShares } = setupOf(months) as { temperatures: unknown[]; eggShares: unknown[] };
    expect([temperatures[0], temperatures[4], temperatures[1], temperatures.length]).toEqual([
      24.5,
      26,
      null,
      12,
    ]);
    expect([eggShares[0], eggShares[4]]).toEqual([0.12, null]);
    expect(setupOf(sheet(['January', 24.5])).eggShares).toBeUndefined();
  });
});
