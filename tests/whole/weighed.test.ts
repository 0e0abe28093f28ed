import { LivingPages, asOf, bookSheetNames, livingBook, readBook } from '../../shared/books/living';
import { assumedOf } from '../../shared/season/figures/growth';
import { planBatches } from '../../shared/season/batches';
import { readOrderBook } from '../../shared/season/book/orderBook';
import type { SeasonPlan } from '../../shared/season/types';
import type { WorkbookModel } from '../../shared/sheet/workbook/model';
import { calculate } from '../../shared/catalogue/calculation';
import { gridOf } from '../../shared/sheet/workbook/grid';
import { contradictions } from './contradictions';

/** A weighing typed on Counts on day 6 decides which of two published paths the fish are on: the next plan follows. */

const read = readOrderBook({
  hatchery: 'Otter Mill Hatchery',
  plannedOn: '2027-02-15',
  orders: [
    { name: 'Hill ponds', product: 'fry', number: 8000, grams: 0.04, due: '2027-04-24', price: 0.05 },
    { name: 'Lake cages', product: 'fingerlings', number: 3000, grams: 1, due: '2027-05-26', price: 0.2 },
  ],
  vats: [1, 2, 3, 4].map((i) => ({ name: `Vat ${i}`, litres: 800 })),
  females: [1, 1.2, 1.4, 1.6].map((kilograms, i) => ({ tag: `F${i + 1}`, kilograms })),
  males: [1, 2, 3, 4].map((i) => ({ tag: `M${i}` })),
  temperatures: Array.from({ length: 12 }, () => 27),
  holdDays: 12,
});
if ('faults' in read) throw new Error(read.faults[0]?.message);
const { book } = read;
const plan = planBatches(book, { draws: 60, explains: false });
const [first] = [...plan.batches].sort((a, b) => a.stripAt - b.stripAt);
if (!first) throw new Error('nothing was planned');
const model = livingBook(book, plan);
const fry = new LivingPages(book, plan).tables.fry;
const row = fry.first + plan.batches.indexOf(first);
const WEIGHED_ON = first.feedFrom + 6;

/** The book as its sheets stand with a weighing typed, and the plan that is made from it two days later. */
function again(grams: number | undefined): { readonly plan: SeasonPlan; readonly pages: LivingPages } {
  const typed = (sheets: WorkbookModel['sheets']): WorkbookModel['sheets'] =>
    sheets.map((sheet) =>
      sheet.name !== 'Counts' || grams === undefined
        ? sheet
        : {
            ...sheet,
            cells: {
              ...sheet.cells,
              [`${fry.letters.weight}${row}`]: { value: grams },
              [`${fry.letters.weighed}${row}`]: { value: WEIGHED_ON },
            },
          },
    );
  const today = WEIGHED_ON + 2;
  const stood = calculate({ ...model, sheets: typed(model.sheets) }, today).model;
  const before = readBook(
    bookSheetNames('').flatMap((name) => {
      const sheet = stood.sheets.find((one) => one.name === name);
      return sheet ? [gridOf(sheet)] : [];
    }),
    '',
  );
  if (before.kind !== 'read') throw new Error(before.faults.join(' '));
  const checked = readOrderBook(asOf(before, today));
  if ('faults' in checked) throw new Error(checked.faults.map(({ message }) => message).join(' '));
  const next = planBatches(checked.book, { draws: 60, explains: false });
  expect(contradictions(checked.book, next)).toEqual([]);
  return { plan: next, pages: new LivingPages(checked.book, next, before.typed) };
}
const [unweighed, fast, slow] = [again(undefined), again(0.05), again(0.004)];
/** Dry feed of a thousand fish, day by day for a week from two days after the weighing. */
const feedOf = ({ plan: { feeding } }: typeof fast): number =>
  feeding
    .filter(({ batch, date }) => batch === first.name && date >= WEIGHED_ON + 2 && date < WEIGHED_ON + 9)
    .reduce((sum, { dry, fish }) => sum + (1000 * dry) / fish, 0);
const shareOf = ({ plan: { allocations } }: typeof fast, order: string) =>
  allocations.find((share) => share.order === order && share.batch === first.name);

test('55 mg on day 7 and 125 mg on day 14 (VERRETH99): from the weighing on they grow 11.7 % a day', () => {
  const a = assumedOf(unweighed.pages.assumed, {
    feedFrom: first.feedFrom,
    weighed: { on: first.feedFrom + 7, grams: 0.055 },
  });
  expect(a.fryGrowth).toBeCloseTo(11.7, 1);
  expect(a.startWeight * Math.exp((a.fryGrowth * 14) / 100)).toBeGreaterThan(0.1);
  expect(a.startWeight * Math.exp((a.fryGrowth * 14) / 100)).toBeLessThan(0.15);
});

test('planned again: weights, feed and the shopping follow the weighing, either way', () => {
  expect(feedOf(fast)).toBeGreaterThan(2 * feedOf(unweighed));
  expect(feedOf(slow)).toBeLessThan(0.7 * feedOf(unweighed));
  const [usual, heavy] = [shareOf(unweighed, 'Lake cages'), shareOf(fast, 'Lake cages')];
  if (usual && heavy) expect(heavy.grams).toBeGreaterThanOrEqual(usual.grams * 0.99);
});

test('planner and sheets say the same of a weighed batch, day by day', () => {
  for (const one of [fast, slow]) {
    const batch = one.plan.batches.find(({ name }) => name === first.name);
    if (!batch) throw new Error('the batch is gone');
    expect(batch.weighed?.on).toBe(WEIGHED_ON);
    const rows = one.plan.feeding.filter((line) => line.batch === batch.name);
    expect(rows.length).toBeGreaterThan(3);
    for (const line of rows.filter(({ date }) => date < batch.weanedAt - 1)) {
      const day = one.pages.day(batch, line.date - batch.feedFrom);
      expect([line.date, day.number('gramsNow')]).toEqual([line.date, expect.closeTo(line.grams, 9)]);
    }
  }
});

test('the day they are heavy enough moves: days earlier on plenty of Artemia, too late when slow', () => {
  const heavyOn = ({ pages, plan: { allocations } }: typeof fast): number[] =>
    allocations
      .filter(({ order, batch }) => order === 'Hill ponds' && batch === first.name)
      .map((share) => pages.share(share)?.number('heavyOn') ?? NaN);
  const [usual = NaN] = heavyOn(unweighed);
  const [early = NaN] = heavyOn(fast);
  expect(usual - early).toBeGreaterThanOrEqual(3);
  // What no longer weighs enough on the day is not promised from this batch any more, and it is said.
  expect(heavyOn(slow)).toEqual([]);
  expect(slow.plan.orders.find(({ order }) => order.name === 'Hill ponds')?.verdict).not.toBe('safe');
  expect(slow.plan.findings.length).toBeGreaterThan(0);
});
