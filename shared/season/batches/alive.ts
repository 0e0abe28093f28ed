import type { BookedBatch } from '../living';
import type { Assumed } from '../../families/assumptions';

/** Stages of a count along the chain. */
const STEP = { eggs: 0, larvae: 1, feeding: 2, weaned: 3, fish: 4 } as const;

/** Share of larvae at first food expected to live on a day after it, by the survival of its stages. */
export function liveShare(a: Assumed, feedFrom: number, at: number): number {
  const days = Math.max(0, at - feedFrom);
  const fry = Math.min(days, a.rearingDays);
  return a.frySurvival ** (fry / a.rearingDays) * a.nurserySurvival ** ((days - fry) / a.nurseryDays);
}

export interface Standing {
  /** Fish (or eggs) expected alive on the day, and whether they were ever counted. */
  readonly alive: number;
  readonly isCounted: boolean;
  /** Larvae at first food that would bring them: the measure in which orders are weighed. */
  readonly feeding: number;
  /** Chance still has to go through these: 0 the hatch on, 1 the yolk on, 2 growing. */
  readonly ahead: 0 | 1 | 2;
}

type Count = BookedBatch['counts'][number];
const lastCount = ({ counts }: BookedBatch, until: number): Count | undefined =>
  counts
    .filter(({ at }) => at <= until + 1)
    .reduce<Count | undefined>(
      (last, count) =>
        !last || count.at > last.at || (count.at === last.at && STEP[count.stage] >= STEP[last.stage])
          ? count
          : last,
      undefined,
    );

/** Fish that left a batch after a time, whatever the reason. */
export const leftAfter = ({ events }: BookedBatch, at: number): number =>
  events.reduce((sum, event) => sum + (event.at > at ? event.number : 0), 0);

/** What is left of a batch on a day: its last count, less what left since and what dies meanwhile. */
export function standingOf(batch: BookedBatch, a: Assumed, today: number): Standing {
  const { clock } = batch;
  if (batch.state === 'lost' || batch.state === 'over') return { alive: 0, isCounted: true, feeding: 0, ahead: 2 };
  const last = lastCount(batch, today);
  const stage = last?.stage ?? 'eggs';
  // Without a count the plan speaks, less all that left.
  const from = last?.at ?? clock.stripAt;
  const left = leftAfter(batch, last ? last.at : -Infinity);
  const number = Math.max(0, (last ? last.number : batch.eggs) - (stage === 'eggs' ? 0 : left));
  const byStep = [number * a.hatch * a.yolkSurvival, number * a.yolkSurvival, number, number, number];
  const step = STEP[stage];
  const grown = step >= STEP.feeding ? liveShare(a, clock.feedFrom, from) : 1;
  const feeding = Math.max(0, (byStep[step] ?? 0) / grown - (stage === 'eggs' ? left / liveShare(a, clock.feedFrom, today) : 0));
  return {
    isCounted: last !== undefined,
    feeding,
    alive: step < STEP.feeding && today < clock.feedFrom ? number : feeding * liveShare(a, clock.feedFrom, today),
    ahead: step === 0 ? 0 : step === 1 ? 1 : 2,
  };
}
