import type { BookedBatch } from '../book/living';
import type { Assumed } from '../../families/assumptions';
import { larvaeLeft } from '../../families/care/kernels/losses';

/** Stages of a count along the chain. */
const STEP = { eggs: 0, larvae: 1, feeding: 2, weaned: 3, fish: 4 } as const;

/** Share of larvae at first food expected to live on a day after it, by the survival of its stages. */
export function liveShare(a: Assumed, feedFrom: number, at: number): number {
  const days = Math.max(0, at - feedFrom);
  const fry = Math.min(days, a.rearingDays);
  return larvaeLeft(a.frySurvival, a.rearingDays, fry) * a.nurserySurvival ** ((days - fry) / a.nurseryDays);
}

export interface BatchStanding {
  /** Fish (or eggs) expected alive on the day, and whether they were ever counted. */
  readonly alive: number;
  readonly isCounted: boolean;
  /** Larvae at first food that would bring them: the measure in which orders are weighed. */
  readonly feeding: number;
  /** Rng still has to go through these: 0 the hatch on, 1 the yolk on, 2 growing. */
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

/** Fish that left a batch after a time, each in the measure of its hour. */
const leftAfter = ({ events }: BookedBatch, at: number, measure: (at: number) => number): number =>
  events.reduce((sum, event) => sum + (event.at > at ? event.number / measure(event.at) : 0), 0);

/** The count a batch is judged by; without one the plan speaks, at the strip. */
function basisOf(
  batch: BookedBatch,
  today: number,
): {
  readonly step: number;
  readonly from: number;
  readonly number: number;
  readonly isCounted: boolean;
} {
  const last = lastCount(batch, today);
  const step = STEP[last?.stage ?? 'eggs'];
  return {
    step,
    from: last?.at ?? batch.clock.stripAt,
    number: last?.number ?? batch.eggs,
    isCounted: last !== undefined,
  };
}

const AHEAD = [0, 1, 2, 2, 2] as const;
/** What is left of a batch on a day: its last count, less what left since and what dies meanwhile. */
export function standingOf(batch: BookedBatch, a: Assumed, today: number): BatchStanding {
  const { clock } = batch;
  if (batch.state === 'lost' || batch.state === 'over')
    return { alive: 0, isCounted: true, feeding: 0, ahead: 2 };
  const { step, from, number, isCounted } = basisOf(batch, today);
  const living = (at: number): number => liveShare(a, clock.feedFrom, at);
  const since = isCounted ? from : -Infinity;
  const left = leftAfter(batch, since, () => 1);
  // Fish that left on a day are that day's fish: of more larvae at first food the older they were.
  const toFeeding = [a.hatch * a.yolkSurvival, a.yolkSurvival, 1][step] ?? 1;
  const feeding =
    (step < STEP.feeding ? number * toFeeding : number / living(from)) - leftAfter(batch, since, living);
  return {
    isCounted,
    feeding: Math.max(0, feeding),
    alive:
      step < STEP.feeding && today < clock.feedFrom
        ? Math.max(0, number - (step === 0 ? 0 : left))
        : Math.max(0, feeding) * living(today),
    ahead: AHEAD[step] ?? 2,
  };
}
