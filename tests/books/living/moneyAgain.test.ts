import { LivingPages, asOf, livingBook } from '../../../shared/books/living';
import { calculate } from '../../../shared/catalogue/calculation';
import { planBatches } from '../../../shared/season/batches';
import type { OrderBook } from '../../../shared/season/book/orderBook';
import type { SeasonPlan } from '../../../shared/season/types';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import { bookOf, checked } from '../../season/support/support';
import type { Values } from './support';
import { readBack, typeInto } from './support';

/** Costs to come: a book planned again and the plan it was written from count the same days, goods and months. */
const QUICK = {
  draws: 300,
  explains: false,
  effort: { looks: 15_000, mostTries: 15, seed: 3, sequences: 1 },
} as const;
const base = bookOf({
  orders: [
    { name: 'Fry man', product: 'fry', number: 4000, due: '2027-02-20', price: 0.05 },
    { name: 'Lake farms', product: 'fingerlings', number: 8000, due: '2027-03-10', price: 0.12 },
    { name: 'Pond club', product: 'fingerlings', number: 6000, due: '2027-05-10', price: 0.12 },
  ],
  prices: {
    atHand: 500,
    feedPerKilogram: 2,
    cystsPerKilogram: 80,
    hormonePerMillilitre: 3,
    perRun: 20,
    male: 10,
    perVatDay: 0.5,
    perMonth: 100,
  },
  malesSurvive: false,
});
const first = planBatches(base, QUICK);
const model = livingBook(base, first);
/** Two batches stand in their vats, one is planned. */
const TODAY = 46_436;
const [strips] = first.batches.map(({ stripAt }) => Math.floor(stripAt)).sort((a, b) => a - b);

interface Written {
  readonly book: OrderBook;
  readonly plan: SeasonPlan;
  readonly model: WorkbookModel;
}
function again(from: WorkbookModel, today: number): Written {
  const before = readBack(from);
  const book = checked(asOf(before, today));
  const plan = planBatches(book, QUICK);
  return { book, plan, model: livingBook(book, plan, before.typed) };
}
const booked = (date: number, what: string): WorkbookModel => {
  const { booked: t } = new LivingPages(base, first).tables;
  const line: Values = {
    [`${t.letters.date}${t.first}`]: date,
    [`${t.letters.amount}${t.first}`]: -100,
    [`${t.letters.what}${t.first}`]: what,
  };
  return typeInto(model, t.title, line);
};

/** What each label of the sheet of money stands for in a plan. */
const COSTS: Readonly<Record<string, readonly string[]>> = {
  Hormone: ['hormone'],
  Cysts: ['cysts'],
  'Dry feed': ['dry feed'],
  'Batches: wages, males used up': ['wages and other costs of runs', 'males used up'],
  'Water and power of vats': ['water and power of vats'],
  'Rent, wages and wear': ['rent, wages and wear'],
};
function shown({ model: written }: Written): Record<string, number> {
  const cells =
    calculate(written).model.sheets.find(
      ({ name }) => name === new LivingPages(base, first).tables.cash.title,
    )?.cells ?? {};
  const rows = Object.entries(cells).filter(([address]) => /^E\d+$/.test(address));
  return Object.fromEntries(
    Object.keys(COSTS).map((label) => {
      const [at = ''] = rows.find(([, cell]) => cell.value === label) ?? [];
      return [label, Number(cells[at.replace('E', 'G')]?.value)];
    }),
  );
}
const planned = ({ plan }: Written): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(COSTS).map(([label, kinds]) => [
      label,
      expect.closeTo(
        plan.entries.reduce(
          (sum, { what, amount, isBooked }) => (!isBooked && kinds.includes(what) ? sum - amount : sum),
          0,
        ),
        6,
      ) as unknown,
    ]),
  );

test.each<readonly [string, () => Written]>([
  ['as first planned', () => ({ book: base, plan: first, model })],
  ['with batches under way', () => again(model, TODAY)],
  ['on the day of a strip', () => again(model, strips ?? NaN)],
  ['the day after it', () => again(model, (strips ?? NaN) + 1)],
])('%s, the book and its plan agree on every cost to come', (_, make) => {
  const written = make();
  expect(shown(written)).toEqual(planned(written));
});

test.each<readonly [string, string, number]>([
  ['the rent of the month is paid', 'Rent of the yard', 1],
  ['its name alone', 'rent', 1],
  ['something else is paid', 'parents', 0],
  ['a word that only begins alike', 'renumbering', 0],
])('%s: months of rent still to pay', (_, what, less) => {
  const written = again(booked(TODAY - 1, what), TODAY);
  expect(shown(written)).toEqual(planned(written));
  const unpaid = again(model, TODAY);
  expect(shown(unpaid)['Rent, wages and wear']).toBeCloseTo(
    (shown(written)['Rent, wages and wear'] ?? NaN) + 100 * less,
    6,
  );
});
