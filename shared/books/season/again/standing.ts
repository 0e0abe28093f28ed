import type { FISH, PAIRS, RUNS, STAYS } from '../columns';
import { MORNING } from '../../../season/problem';
import type { Line } from './sheetReading';
import { dayOf, numberIn, textIn } from './sheetReading';

/** Runs of a written season on the day it is planned again: which stand, and what they hold. */

export interface UnderwayInput {
  readonly order: string;
  readonly vats: readonly string[];
  readonly from?: number;
  readonly until: number;
  readonly fish: number;
  readonly strippedOn?: number;
  readonly females: readonly string[];
  readonly males: readonly string[];
}
export interface StandingRun {
  readonly run: number;
  readonly order: string;
  readonly stripAt: number;
  /** Fish when it was planned, and now. */
  readonly planned: number;
  readonly fish: number;
  /** Why it stands; undefined when it may still be moved. */
  readonly why: 'stripped' | 'ordered' | 'lost' | 'over' | undefined;
  readonly isStripped: boolean;
  readonly underway: readonly UnderwayInput[];
}

interface Tables {
  readonly runs: readonly Line<keyof typeof RUNS.letters>[];
  /** How many each run has. */
  readonly fish: readonly Line<keyof typeof FISH.letters>[];
  readonly pairs: readonly Line<keyof typeof PAIRS.letters>[];
  readonly stays: readonly Line<keyof typeof STAYS.letters>[];
}

/**
 * Vats leave at eight: a stay that ends in the morning ends on that day, a later one is taken through the
 * next.
 */
const lastDay = (to: number): number => Math.ceil(to - MORNING - 1e-6);

interface Span {
  readonly vat: string;
  readonly from: number;
  readonly until: number;
}
/** A vat that goes from one stage of a run to the next is one span. */
function spansOf(stays: Tables['stays'], today: number): Span[] {
  const spans: Span[] = [];
  for (const stay of stays) {
    const [vat, from, to] = [textIn(stay.vat), numberIn(stay.from), numberIn(stay.to)];
    if (from === undefined || to === undefined || lastDay(to) < today) continue;
    const next: Span = { vat, from: Math.max(today, Math.floor(from)), until: lastDay(to) };
    const at = spans.findIndex(
      (span) => span.vat === vat && span.from <= next.until && next.from <= span.until,
    );
    const met = spans[at];
    if (met) spans[at] = { vat, from: Math.min(met.from, next.from), until: Math.max(met.until, next.until) };
    else spans.push(next);
  }
  return spans;
}

function underwayOf(
  run: Omit<StandingRun, 'underway'>,
  pairs: Tables['pairs'],
  stays: Tables['stays'],
  today: number,
): UnderwayInput[] {
  const parents = {
    strippedOn: Math.floor(run.stripAt),
    females: [...new Set(pairs.map((p) => textIn(p.female)))],
    males: [...new Set(pairs.map((p) => textIn(p.male)))],
  };
  const groups = new Map<string, UnderwayInput>();
  for (const { vat, from, until } of spansOf(stays, today)) {
    const key = `${from} ${until}`;
    const group = groups.get(key) ?? {
      order: run.order,
      vats: [],
      ...(from > today ? { from } : {}),
      until,
      fish: 0,
      females: [],
      males: [],
    };
    groups.set(key, { ...group, vats: [...group.vats, vat] });
  }
  // Its fish and its parents count once.
  return [...groups.values()]
    .sort((a, b) => a.until - b.until)
    .map((group, i) => (i === 0 ? { ...group, fish: Math.floor(run.fish), ...parents } : group));
}

/** When a run was stripped: as written down for its first female, or as planned. */
const stripOf = (
  line: Tables['runs'][number],
  own: Tables['pairs'],
): { readonly stripAt: number; readonly isKnown: boolean } => {
  const really = own.flatMap((pair) => dayOf(pair.stripped) ?? []);
  return really.length > 0
    ? { stripAt: Math.min(...really), isKnown: true }
    : { stripAt: numberIn(line.strip) ?? Infinity, isKnown: false };
};

function whyOf(
  line: Tables['runs'][number],
  fish: number,
  isStripped: boolean,
  today: number,
  lead: number,
): StandingRun['why'] {
  if ((dayOf(line.due) ?? Infinity) <= today) return 'over';
  if (fish <= 0) return 'lost';
  if (isStripped) return 'stripped';
  return Math.floor(numberIn(line.inject) ?? Infinity) - lead < today ? 'ordered' : undefined;
}

/** `lead`: days the goods of a run are ordered before its injection. */
export function standingRuns(
  { runs, fish, pairs, stays }: Tables,
  today: number,
  lead: number,
): StandingRun[] {
  return runs.map((line): StandingRun => {
    const run = numberIn(line.run) ?? 0;
    const own = pairs.filter((pair) => pair.run === run);
    const { stripAt, isKnown } = stripOf(line, own);
    const isStripped = isKnown || Math.floor(stripAt) < today;
    const numbers = fish.find((one) => one.run === run);
    const left = numberIn(numbers?.fish) ?? 0;
    const why = whyOf(line, left, isStripped, today, lead);
    const about = {
      run,
      order: textIn(line.order),
      stripAt,
      planned: numberIn(numbers?.planned) ?? 0,
      fish: left,
      why,
      isStripped,
    } as const;
    return {
      ...about,
      underway:
        why === 'stripped' || why === 'ordered'
          ? underwayOf(
              about,
              own,
              stays.filter((stay) => stay.run === run),
              today,
            )
          : [],
    };
  });
}

/** The last day each fish was used by a run that was stripped, whatever became of it. */
export function lastUses(runs: readonly StandingRun[], pairs: Tables['pairs']): ReadonlyMap<string, number> {
  const dayOfRun = new Map(
    runs.filter(({ isStripped }) => isStripped).map(({ run, stripAt }) => [run, Math.floor(stripAt)]),
  );
  const uses = new Map<string, number>();
  for (const { run, female, male } of pairs) {
    const day = dayOfRun.get(numberIn(run) ?? -1);
    for (const tag of [`female ${textIn(female)}`, `male ${textIn(male)}`])
      if (day !== undefined) uses.set(tag, Math.max(day, uses.get(tag) ?? -Infinity));
  }
  return uses;
}
