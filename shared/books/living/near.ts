import { strToU8, zlibSync } from 'fflate';
import type { Near } from '../../base/near';
import type { SeasonBatch } from '../../season/types';
import type { BookPlan } from './layout';
import { evaluateWith } from '../../sheet/formula/evaluate';
import { DAYS } from './columns';
import { areFewer, isTooLight } from './pages/orders';
import { changesOf } from './reading/again';
import { linesUnder } from './reading/day';
import { unpackState } from './reading/keep';
import { booksIn, bookSheetNames, endsBefore, isSameCount } from './reading/read';
import { spreadsOf } from './reading/readFigures';
import { shortCitation } from './reading/origin';
import { textOf } from './reading/typed';
import type { ColumnsOf } from './table';
import { FIGURES, SPREAD_HEADINGS } from './workings/figureList';

/** What a book that is read back says changes at numbers somebody chose; no bundle holds this file. */
const planAt = (stripAt: number): BookPlan =>
  ({
    batches: [{ name: 'B1', state: 'planned', stripAt } as unknown as SeasonBatch],
    orders: [],
  }) as unknown as BookPlan;
const moves = (by: number): string =>
  changesOf(planAt(46_085.25), planAt(46_085.25 + by))
    .map(({ kind }) => kind)
    .join(' ');

/** Lines found under a table of twenty headings of which so many still stand. */
function found(standing: number): number {
  const titles = Array.from({ length: 20 }, (_, i) => `Heading ${i + 1}`);
  const of = Object.fromEntries(
    titles.map((title, i) => [`c${i}`, { title }]),
  ) as unknown as ColumnsOf<string>;
  const head = titles.map((title, i) => (i < standing ? title : `Own ${i}`));
  const sheet = { name: 'Log', top: 0, left: 0, values: [head, titles.map((_, i) => i)] };
  return linesUnder(sheet as unknown as Parameters<typeof linesUnder>[0], of, 'c0').length;
}
const kept = (version: number): boolean =>
  unpackState(zlibSync(strToU8(JSON.stringify({ version, book: {}, plan: {}, typed: {} })))) !== undefined;

/** Spreads that are read where hatch, at 59 %, varies by this much more between runs than usual. */
const spreads = (more: number): string => {
  const label = FIGURES.find(({ key }) => key === 'hatch')?.label ?? '';
  // 0.3 and 0.2 of √(0.59 × 0.41).
  const values = [[...SPREAD_HEADINGS], [label, 0.147_55 + more, 0.098_37]];
  const sheet = { name: 'Figures', top: 0, left: 0, values };
  return Object.keys(spreadsOf(sheet as unknown as Parameters<typeof spreadsOf>[0], {})).join(' ');
};

const isTrue = (condition: string): unknown => evaluateWith(`=${condition}`, {});
/** Books found where so many of the sheets of one still stand. */
const books = (standing: number): number => booksIn(bookSheetNames('').slice(0, standing)).length;
/** Does a table end before a row that holds so many of the 24 headings of another? */
const endsAbove = (headings: number): boolean =>
  endsBefore(
    ['a', 1],
    Object.values(DAYS).map(({ title }, i) => (i < headings ? title : null)),
    ['Name', 'Number'],
    0,
  );
/** Does it end at a line with so many signs under its first heading and nothing beside them? */
const endsAt = (signs: number): boolean =>
  endsBefore(['x'.repeat(signs), null], ['a', 1], ['Name', 'Number'], 0);
const isHeldTwice = (more: number): boolean =>
  isSameCount({ stage: 'larvae', number: 40_000 }, { stage: 'larvae', number: 40_000 + more });

export const NEAR: readonly Near[] = [
  {
    number: 'Days a strip may move by and be the same night',
    value: 0.5,
    below: () => moves(0.47),
    above: () => moves(0.53),
    answers: ['', 'moved'],
  },
  {
    number: 'Share of the headings of a table that must stand',
    value: 0.6,
    below: () => found(11),
    above: () => found(12),
    answers: [0, 1],
  },
  {
    number: 'Deviation from a usual spread that nobody typed',
    value: 5e-4,
    below: () => spreads(4.8e-4),
    above: () => spreads(5.2e-4),
    answers: ['', 'hatch'],
  },
  {
    number: 'Version of a book that is kept',
    value: 1,
    below: () => kept(1),
    above: () => kept(2),
    answers: [true, false],
  },
  {
    number: 'Signs of a citation without a year that is said whole',
    value: 48,
    below: () => shortCitation('A table of a hatchery school, no year, forty six'.slice(0, 46)),
    above: () => shortCitation('A table of a hatchery school that nobody wrote a year on'.slice(0, 51)),
    answers: [
      'A table of a hatchery school, no year, forty s',
      'A table of a hatchery school that nobody wrote …',
    ],
  },
  {
    number: 'Part of the weight wanted at which an order is met',
    value: 0.95,
    below: () => isTrue(isTooLight('3.78', '4')),
    above: () => isTrue(isTooLight('3.82', '4')),
    answers: [true, false],
  },
  {
    number: 'Part of the fish expected at which the odds hold',
    value: 0.9,
    below: () => isTrue(areFewer('1780', '2000')),
    above: () => isTrue(areFewer('1820', '2000')),
    answers: [true, false],
  },
  {
    number: 'Sheets of a book that may be missing',
    value: 5,
    below: () => books(8),
    above: () => books(7),
    answers: [1, 0],
  },
  {
    number: 'Share of the headings of another table that end the one above',
    value: 0.6,
    below: () => endsAbove(14),
    above: () => endsAbove(15),
    answers: [false, true],
  },
  {
    number: 'Signs of a name, above which a text is a note below its table',
    value: 60,
    below: () => endsAt(58),
    above: () => endsAt(62),
    answers: [false, true],
  },
  {
    number: 'Fish by which two counts of one stage differ',
    value: 0.5,
    below: () => isHeldTwice(0.48),
    above: () => isHeldTwice(0.52),
    answers: [true, false],
  },
  {
    number: 'Number from which on what was typed is a moment',
    value: 36_526,
    below: () => textOf(36_000),
    above: () => textOf(37_000),
    answers: ['36000', '19 Apr'],
  },
];
