import { planBatches } from '../../shared/season/batches';
import { isoDateOfSerial } from '../../shared/units/dates';
import { bookOf, clockOf } from './support/support';

/**
 * The odds of a few fish from a batch that already stands have an answer on paper: it is lost altogether as often
 * as runs are, until its larvae are counted at first food; and then no more.
 */
const LOST = 0.25;
const QUICK = { draws: 4000, explains: false, effort: { looks: 5000, mostTries: 3, seed: 3 } } as const;
const ORDER = { name: 'Hill ponds', product: 'fry', number: 10, due: '2027-03-10', key: 'O1' };
const before = planBatches(bookOf({ orders: [{ ...ORDER, number: 20_000 }] }), QUICK);
const [first] = before.batches;
if (!first) throw new Error('no batch');
const { stripAt, hatchEndAt, feedFrom } = first;
const clock = clockOf(first);
const STAYS = before.stays.map(({ vat, stage, from, to }) => ({ vat, stage, from, to }));

const oddsWith = (stage: string, at: number, today: number): number => {
  const book = bookOf({
    plannedOn: isoDateOfSerial(Math.floor(today)),
    lost: LOST,
    orders: [ORDER],
    batches: [
      {
        name: 'B1',
        state: 'growing',
        clock,
        eggs: first.eggs,
        counts: [{ at, stage, number: 40_000 }],
        stays: STAYS,
        pairs: first.pairs,
      },
    ],
  });
  return planBatches(book, QUICK).orders[0]?.certainty ?? NaN;
};

test.each([
  ['eggs', stripAt, Math.ceil(stripAt), 1 - LOST],
  ['larvae', hatchEndAt, Math.ceil(hatchEndAt), 1 - LOST],
  ['feeding', feedFrom, feedFrom + 1, 1],
])('%s are counted', (stage, at, today, odds) => {
  // Four standard errors of the draws.
  const room = 4 * Math.sqrt((odds * (1 - odds)) / QUICK.draws);
  const got = oddsWith(stage, at, today);
  expect(got).toBeGreaterThanOrEqual(odds - room);
  expect(got).toBeLessThanOrEqual(odds + room);
});

/** Chances of 4,000 fry of one run that is lost so often, for a hatchery that wants to be so sure. */
const asked = (certainty: number, lost: number): readonly [odds: number, batches: number] => {
  const book = bookOf({ certainty, lost, orders: [{ ...ORDER, number: 4000 }] });
  const plan = planBatches(book, QUICK);
  return [plan.orders[0]?.certainty ?? NaN, plan.batches.length];
};
// Runs that are lost bound how sure one can be: nobody who asks for more is left without a plan.
test.each([
  [0.95, 0.03],
  [0.96, 0.03],
  [0.97, 0.03],
  [0.98, 0.03],
  [0.99, 0.03],
  [0.8, 0.19],
  [0.8, 0.21],
  [0.8, 0.25],
])(
  'asked to be %f sure of a run that is lost %f of the time, it is planned as surely as can be',
  (c, lost) => {
    const [odds, batches] = asked(c, lost);
    expect(batches).toBeGreaterThan(0);
    expect(odds).toBeGreaterThan(Math.min(c, 1 - lost) - 0.02);
    expect(odds).toBeLessThan(1 - lost + 0.02);
  },
);

test('without drawn seasons what is still to come is promised, and not what was handed over already', () => {
  const book = bookOf({
    plannedOn: isoDateOfSerial(feedFrom + 12),
    orders: [{ ...ORDER, number: 900 }],
    batches: [
      {
        name: 'B1',
        state: 'growing',
        clock,
        eggs: first.eggs,
        pairs: first.pairs,
        counts: [{ at: feedFrom + 11, stage: 'feeding', number: 40_000 }],
        events: [{ at: feedFrom + 11.5, kind: 'sold', number: 700, order: 'O1' }],
      },
    ],
  });
  const plan = planBatches(book, { ...QUICK, draws: 0 });
  expect(plan.orders[0]).toMatchObject({ delivered: 700, promise: 900 });
  expect([plan.promise, plan.hope, plan.fish.p50]).toEqual([200, 200, 200]);
});
