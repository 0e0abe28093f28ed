import { within } from '../../../base/steps';
import type { OrderBook } from '../../book/orderBook';
import type { PlanFinding } from '../../types';
import { drawSeasons } from './odds';
import { batchProblemOf } from '../problem';
import type { BatchSchedule } from '../search/schedule';
import type { BatchEffort } from '../search/search';
import { searchSteps } from '../search/search';
import { later, meanWeight, moreFemales, moreMales } from '../answer/short';
import { certaintiesOf, surerSteps } from './surer';

/** What is said of orders that are planned whole and yet are less sure than wanted. */

const DRAWS = 500;
/** Surer by less than this is chance of searching and drawing: twice the error of a share of 500 seasons. */
const NOTICED = 0.04;
/** As near to the certainty wanted as planning comes. */
export const NEAR_WANTED = 0.02;
const WEEK = 7;
/** So many ways are said. */
const MOST_SAID = 2;

const sure = (book: OrderBook, schedule: BatchSchedule): Map<string, number> => {
  const shares = certaintiesOf(schedule, drawSeasons(book, schedule, DRAWS, book.seed + 1).orders);
  return new Map(schedule.problem.tasks.map(({ order }, t) => [order.name, shares[t] ?? 0]));
};
const percent = (share: number): string => `${Math.round(100 * share)} %`;
const points = (share: number): string => {
  const n = Math.round(100 * share);
  return `${n} ${n === 1 ? 'point' : 'points'}`;
};

/** Changes a hatchery can make for one order that is not sure enough. */
const waysFor = (book: OrderBook, name: string): (readonly [string, OrderBook])[] => {
  const kilograms = meanWeight(book).toFixed(1);
  return [
    [`one more female of ${kilograms} kg`, moreFemales(1)(book)],
    [`two more females of ${kilograms} kg and two more unrelated males`, moreMales(2)(moreFemales(2)(book))],
    ['the same order a week later', later(new Set([name]), WEEK)(book)],
  ];
};

/** The sentences; none where every order that can be planned is as sure as wanted. Yields the share done. */
export function* unsureSteps(
  book: OrderBook,
  found: BatchSchedule,
  effort: BatchEffort,
): Generator<number, readonly PlanFinding[]> {
  const asPlanned = sure(book, found);
  const low = [...asPlanned].filter(([, share]) => share < book.certainty - NEAR_WANTED);
  const [first] = low.sort((a, b) => a[1] - b[1]);
  if (!first) return [];
  const [name, share] = first;
  const ways = waysFor(book, name);
  const less = {
    ...effort,
    looks: effort.looks / 10,
    mostTries: Math.ceil(effort.mostTries / 10),
    sequences: 2,
  };
  function* shareOf(changed: OrderBook, i: number): Generator<number, number> {
    const part = 1 / (ways.length + 1);
    const { problem } = batchProblemOf(changed);
    const schedule = yield* within(searchSteps(problem, less), i * part, part / 2);
    const surer = yield* within(surerSteps(changed, schedule), (i + 0.5) * part, part / 2);
    return sure(changed, surer).get(name) ?? 0;
  }
  // Compared with the better of the plan and what the same small effort finds as things stand.
  const now = Math.max(share, yield* shareOf(book, 0));
  const helps: { readonly what: string; readonly share: number }[] = [];
  for (const [i, [what, changed]] of ways.entries()) {
    const then = yield* shareOf(changed, i + 1);
    if (then >= now + NOTICED) helps.push({ what, share: then });
  }
  return sentences(book, { name, share, low: low.length, helps });
}

function sentences(
  book: OrderBook,
  {
    name,
    share,
    low,
    helps,
  }: {
    readonly name: string;
    readonly share: number;
    readonly low: number;
    readonly helps: readonly { readonly what: string; readonly share: number }[];
  },
): readonly PlanFinding[] {
  const which = low > 1 ? `${name}, the least sure of ${low} orders,` : name;
  const said = [...helps]
    .sort((a, b) => b.share - a.share)
    .slice(0, MOST_SAID)
    .map(({ what, share: then }) => `${what} (${percent(then)} of seasons)`);
  const odds = `${which} is planned whole and comes whole in ${percent(share)} of seasons: ${points(book.certainty - share)} short of the ${percent(book.certainty)} wanted.`;
  const lower = `sk for ${percent(share)}, or promise the smaller number`;
  const help = said.length > 0 ? `What makes it surer: ${said.join('; ')}. Or a${lower}.` : `A${lower}.`;
  return [odds, help].map((message): PlanFinding => ({ kind: 'care', about: 'season', message }));
}
