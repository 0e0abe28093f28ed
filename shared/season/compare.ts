import { isoDateOfSerial } from '../units/dates';
import type { SeasonBook } from './result';

/** What a new plan changes against the one before it. */
export interface SeasonChange {
  readonly order: string;
  readonly kind: 'moved' | 'new run' | 'run dropped' | 'fish';
  readonly message: string;
}

const many = (n: number): string => Math.round(n).toLocaleString('en');
/** Strips that move less than this, in days, are the same night. */
const SAME_NIGHT = 0.5;
/** Fish that differ by less than this share are the same number. */
const SAME_FISH = 0.005;

/** What is compared of a plan: also what a written season still says of it. */
export interface PlanBefore {
  readonly runs: readonly { readonly order: string; readonly stripAt: number; readonly fish: number }[];
  readonly orders: readonly { readonly order: { readonly name: string }; readonly expected: number }[];
}

const runsOf = (plan: PlanBefore, order: string) => plan.runs.filter((run) => run.order === order);

function runChanges(order: string, before: PlanBefore, after: SeasonBook, from: number): SeasonChange[] {
  // Runs already stripped are not the new plan's business.
  const [old, now] = [runsOf(before, order).filter(({ stripAt }) => stripAt >= from), runsOf(after, order)];
  const changes: SeasonChange[] = [];
  for (let i = 0; i < Math.max(old.length, now.length); i++) {
    const [was, is] = [old[i], now[i]];
    if (was && is) {
      const days = Math.round(is.stripAt - was.stripAt);
      if (Math.abs(is.stripAt - was.stripAt) > SAME_NIGHT)
        changes.push({
          order,
          kind: 'moved',
          message: `${order}: the strip of ${isoDateOfSerial(was.stripAt)} moves to ${isoDateOfSerial(is.stripAt)}, ${Math.abs(days)} ${Math.abs(days) === 1 ? 'day' : 'days'} ${days > 0 ? 'later' : 'earlier'}.`,
        });
    } else if (is)
      changes.push({
        order,
        kind: 'new run',
        message: `${order}: a new run is stripped on ${isoDateOfSerial(is.stripAt)} for ${many(is.fish)} fish.`,
      });
    else if (was)
      changes.push({
        order,
        kind: 'run dropped',
        message: `${order}: the run of ${isoDateOfSerial(was.stripAt)} is dropped.`,
      });
  }
  return changes;
}

/** What moved and what is now short, in sentences; `from` is the day of the new plan. */
export function compareSeasons(before: PlanBefore, after: SeasonBook, from: number): SeasonChange[] {
  const expected = new Map(before.orders.map(({ order, expected: fish }) => [order.name, fish]));
  return after.orders.flatMap(({ order, expected: fish }): SeasonChange[] => {
    const was = expected.get(order.name) ?? 0;
    const short = Math.max(0, order.number - fish);
    return [
      ...(Math.abs(fish - was) > SAME_FISH * order.number
        ? [
            {
              order: order.name,
              kind: 'fish',
              message: `${order.name}: ${many(fish)} fish instead of ${many(was)}${short >= 1 ? `, ${many(short)} short` : ''}.`,
            } as const,
          ]
        : []),
      ...runChanges(order.name, before, after, from),
    ];
  });
}
