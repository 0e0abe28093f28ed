import type { Near } from '../../base/near';
import type { BookedOrder, OrderBook } from '../book/orderBook';
import type { OrderPlan, PlanFinding } from '../types';
import { planFindings } from './answer/findings';
import type { BatchProblem } from './problem';

/** What is said of promises changes at numbers somebody chose; no bundle holds this file. */
const order = (i: number, number: number): BookedOrder =>
  ({ name: `Order ${i}`, number, product: 'fry', due: 46_100 + i }) as unknown as BookedOrder;
const planned = (one: BookedOrder, certainty: number): OrderPlan =>
  ({ order: one, batches: ['B1'], delivered: 0, promise: 900, certainty }) as unknown as OrderPlan;
const said = (orders: readonly BookedOrder[], certainty: number): readonly PlanFinding[] =>
  planFindings(
    { orders, plannedOn: 46_000, certainty: 0.8, leastParents: 0 } as unknown as OrderBook,
    { vats: [{}] } as unknown as BatchProblem,
    [],
    orders.map((one) => planned(one, certainty)),
    undefined,
  );
/** The finding on one order that comes in this share of the seasons, where four in five are wanted. */
const kindAt = (certainty: number): string | undefined => said([order(1, 1000)], certainty)[0]?.kind;
const different = (n: number): readonly BookedOrder[] =>
  Array.from({ length: n }, (_, i) => order(i, 1000 + i));
const last = (findings: readonly PlanFinding[]): string | undefined => findings.at(-1)?.about;
/** So many orders that say the same as the first. */
const same = (n: number): string | undefined =>
  last(
    said(
      Array.from({ length: n + 1 }, (_, i) => ({ ...order(i, 1000), buyer: 'Pond farm', due: 46_100 })),
      1,
    ),
  );

export const NEAR: readonly Near[] = [
  {
    number: 'Share of seasons a promise may lack of what is wanted',
    value: 0.02,
    below: () => kindAt(0.779),
    above: () => kindAt(0.781),
    answers: ['care', undefined],
  },
  {
    number: 'Share of seasons below which an order cannot be promised',
    value: 0.4,
    below: () => kindAt(0.399),
    above: () => kindAt(0.401),
    answers: ['cannot', 'care'],
  },
  {
    number: 'Sentences about orders that are read',
    value: 8,
    below: () => last(said(different(8), 0.5)),
    above: () => last(said(different(9), 0.5)),
    answers: ['Order 7', 'orders'],
  },
  {
    number: 'Orders that say the same, named one by one',
    value: 3,
    below: () => same(3),
    above: () => same(4),
    answers: ['Order 3', 'orders'],
  },
];
