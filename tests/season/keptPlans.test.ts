import { planBatches } from '../../shared/season';
import type { OrderBook } from '../../shared/season';
import { BACKYARD } from '../../templates/season.template';
import { expectKept } from '../support/kept';
import { bookOf, checked } from './support/support';

/** Four seasons, planned whole: each another part of the planner decides in. */
const BOOKS: readonly (readonly [name: string, book: () => OrderBook])[] = [
  ['backyard', () => checked(BACKYARD)],
  ['two-orders', () => bookOf()],
  [
    'too-much',
    () =>
      bookOf({
        orders: [
          { name: 'Lake farms', product: 'fingerlings', number: 400_000, due: '2027-03-31', price: 0.12 },
          { name: 'Pond club', product: 'fry', number: 30_000, due: '2027-02-20', price: 0.03 },
        ],
        males: [{ tag: 'M1' }, { tag: 'M2' }],
      }),
  ],
  [
    'eggs-and-hands',
    () =>
      bookOf({
        orders: [
          { name: 'Mill', product: 'fry', number: 25_000, due: '2027-03-06', price: 0.03 },
          { name: 'Dam', product: 'fry', number: 21_000, due: '2027-03-20', price: 0.03 },
          { name: 'Weir', product: 'fingerlings', number: 14_000, due: '2027-05-22', price: 0.1 },
        ],
        staff: { stripFrom: '5:00', stripTo: '9:00', femalesPerDay: 2, weekdays: [2, 4, 6] },
        restDays: 50,
        spare: 0.15,
        certainty: 0.9,
      }),
  ],
];

/** One is searched as long as in the pane; the others show what is decided, not how long it was looked for. */
const BRIEFLY = { looks: 12_000, mostTries: 30, seed: 20 } as const;

test.each(BOOKS)('the plan of %s is the one kept', (name, book) => {
  const effort = name === 'two-orders' ? {} : { effort: BRIEFLY };
  expectKept(`plan-${name}`, planBatches(book(), { draws: 300, ...effort }));
});
