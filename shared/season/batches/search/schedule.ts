// Long: state and what it may hold, in one place.
import type { Rng } from '../../../maths/rng';
import type { Pair, ParentUse } from '../../parents';
import { firstUse } from '../../parents';
import type { Candidate } from '../../problem';
import { stageBit } from '../../problem';
import { VAT_STAGES } from '../../figures/stages';
import type { Occupancy, Stay } from '../../vats';
import { addStay, chooseVats, isFree, removeRun } from '../../vats';
import type { BatchProblem, FixedBatch } from '../problem';
import { shareFor } from '../chance/safety';

/** Fish of a batch for one order. */
export interface Share {
  readonly task: number;
  readonly candidate: Candidate;
  fish: number;
}
/** Vat of a batch in a stage, until its fish leave. */
export interface VatHold {
  readonly stage: number;
  readonly vat: number;
  readonly from: number;
  readonly to: number;
}
export interface Batch {
  readonly id: number;
  readonly day: number;
  /** Set for a batch that stands. */
  readonly fixed: FixedBatch | undefined;
  pairs: readonly Pair[];
  /** Eggs expected of its females, as they give them in the middle of the year. */
  eggs: number;
  readonly shares: Share[];
  holds: readonly VatHold[];
}

export interface BatchSchedule {
  readonly problem: BatchProblem;
  readonly occupancy: Occupancy;
  readonly use: ParentUse;
  readonly hands: Map<number, number>;
  readonly batches: Map<number, Batch>;
  /** Fish still to find, by task. */
  readonly need: number[];
  /** Looks at vats so far: how much work was done. */
  looks: number;
  nextId: number;
  /** How a search strays from the usual choice of vats. */
  perturbation?: Perturbation | undefined;
}
export interface Perturbation {
  readonly rng: Rng;
  /** Share of the choices that chance makes. */
  readonly part: number;
}
export const strays = (perturbation: Perturbation | undefined): perturbation is Perturbation =>
  perturbation !== undefined && perturbation.rng.even() < perturbation.part;
export const mixed = <T>(items: readonly T[], rng: Rng): T[] =>
  items
    .map((item) => ({ item, at: rng.even() }))
    .sort((a, b) => a.at - b.at)
    .map(({ item }) => item);

/** Days on which a vat is out of use belong to no batch. */
const OUT = -1;
/** Batches that stand are kept under numbers below this; those planned by their day. */
const holdsOfFixed = (fixed: FixedBatch): VatHold[] =>
  fixed.stays.map(({ vat, stage, from, to }) => ({ vat, stage, from, to }));

export function emptyBatches(problem: BatchProblem): BatchSchedule {
  const occupancy: Occupancy = problem.vats.map(() => []);
  for (const { vat, from, until } of problem.taken)
    addStay(occupancy[vat] ?? [], { from, to: until, run: OUT });
  const schedule: BatchSchedule = {
    problem,
    occupancy,
    use: firstUse(problem),
    hands: new Map(problem.strippedOn),
    batches: new Map(),
    need: problem.tasks.map(({ wanted }) => wanted),
    looks: 0,
    nextId: 1,
  };
  for (const fixed of problem.fixed) {
    const id = schedule.nextId++;
    const holds = holdsOfFixed(fixed);
    for (const { vat, from, to } of holds) addStay(occupancy[vat] ?? [], { from, to, run: id });
    schedule.batches.set(id, { id, day: fixed.day, fixed, pairs: [], eggs: 0, shares: [], holds });
  }
  return schedule;
}

export function copyOf(schedule: BatchSchedule): BatchSchedule {
  return {
    ...schedule,
    occupancy: schedule.occupancy.map((stays) => [...stays]),
    use: {
      females: schedule.use.females.map((days) => [...days]),
      males: schedule.use.males.map((days) => [...days]),
    },
    hands: new Map(schedule.hands),
    batches: new Map(
      [...schedule.batches].map(([id, batch]) => [
        id,
        { ...batch, shares: batch.shares.map((s) => ({ ...s })) },
      ]),
    ),
    need: [...schedule.need],
  };
}

/** The planned batch that is stripped on a day, if there is one. */
export function plannedOnDay(schedule: BatchSchedule, day: number): Batch | undefined {
  for (const batch of schedule.batches.values()) if (batch.day === day && !batch.fixed) return batch;
  return undefined;
}

/** Water a fish takes in a stage, its safety included. */
export function litresFor({ tasks, safety }: BatchProblem, task: number, stage: number): number {
  const product = tasks[task]?.product;
  const litres = product?.stages[stage]?.litresPerFish ?? 0;
  if (litres === 0 || !product) return 0;
  const key = product.nurseryDays > 0 ? 'fingerlings' : 'fry';
  return litres / (stage === 2 ? safety.nursing : stage === 1 ? safety.feeding[key] : 1);
}

/** Times at which a batch needs less water in a stage, the latest first, with the water needed until then. */
export interface Step {
  readonly to: number;
  readonly litres: number;
}
function stepsOf(schedule: BatchSchedule, shares: readonly Share[], stage: number, eggScale: number): Step[] {
  const byEnd = new Map<number, number>();
  for (const { task, candidate, fish } of shares) {
    const span = candidate.spans[stage];
    if (!span || fish <= 0) continue;
    const litres = fish * litresFor(schedule.problem, task, stage) * (stage === 0 ? eggScale : 1);
    byEnd.set(span[1], (byEnd.get(span[1]) ?? 0) + litres);
  }
  let sum = 0;
  return [...byEnd].sort(([x], [y]) => y - x).map(([to, litres]) => ({ to, litres: (sum += litres) }));
}

export const fromOf = (batch: Pick<Batch, 'shares'>, stage: number): number | undefined => {
  for (const { candidate } of batch.shares) if (candidate.spans[stage]) return candidate.spans[stage][0];
  return undefined;
};

/** Places of the vats that a batch may use in a stage from a time to another. */
export function freeVats(
  schedule: BatchSchedule,
  id: number,
  stage: number,
  from: number,
  to: number,
): number[] {
  const { problem, occupancy } = schedule;
  const bit = stageBit(VAT_STAGES[stage] ?? 'eggs');
  const free: number[] = [];
  schedule.looks += problem.vats.length;
  for (let i = 0; i < problem.vats.length; i++)
    if (
      ((problem.vats[i]?.holds ?? 0) & bit) !== 0 &&
      isFree(occupancy[i] ?? [], from, to, id, problem.cleaningDays)
    )
      free.push(i);
  return free;
}

/** Stages of a standing batch that have begun: its fish stay in the vats they are in. */
export const hasBegun = ({ fixed }: Batch, stage: number): boolean =>
  fixed?.stays.some((stay) => stay.stage === stage) === true;

/** Vats that hold the litres; any that do when the search strays. */
function someVats(schedule: BatchSchedule, free: readonly number[], litres: number): number[] | undefined {
  const { problem, perturbation } = schedule;
  // Every set of a few vats is weighed.
  schedule.looks += 2 ** Math.min(9, free.length) / 4;
  if (!strays(perturbation)) return chooseVats(problem.vats, free, litres);
  const taken: number[] = [];
  let sum = 0;
  for (const i of mixed(free, perturbation.rng)) {
    if (sum >= litres * (1 - 1e-9)) break;
    taken.push(i);
    sum += problem.vats[i]?.litres ?? 0;
  }
  return sum >= litres * (1 - 1e-9) ? taken : undefined;
}

function holdsFor(
  schedule: BatchSchedule,
  batch: Batch,
  stage: number,
  steps: readonly Step[],
): VatHold[] | undefined {
  const from = fromOf(batch, stage);
  if (from === undefined) return [];
  const { problem, occupancy } = schedule;
  const taken: VatHold[] = [];
  let litres = 0;
  for (const { to, litres: needed } of steps) {
    if (litres >= needed * (1 - 1e-9)) continue;
    const free = freeVats(schedule, batch.id, stage, from, to).filter(
      (i) => !taken.some(({ vat }) => vat === i),
    );
    const chosen = someVats(schedule, free, needed - litres);
    if (!chosen) {
      for (const { vat } of taken) removeHold(occupancy[vat] ?? [], batch.id, from);
      return undefined;
    }
    for (const vat of chosen) {
      taken.push({ stage, vat, from, to });
      addStay(occupancy[vat] ?? [], { from, to, run: batch.id });
      litres += problem.vats[vat]?.litres ?? 0;
    }
  }
  return taken;
}
function removeHold(stays: Stay[], run: number, from: number): void {
  for (let i = stays.length - 1; i >= 0; i--)
    if (stays[i]?.run === run && stays[i]?.from === from) stays.splice(i, 1);
}

/** A stage that has begun: its vats stay, and stay longer while fish in them wait for their order. */
function extended(
  schedule: BatchSchedule,
  batch: Batch,
  stage: number,
  steps: readonly Step[],
): VatHold[] | undefined {
  const { problem, occupancy } = schedule;
  const litresOf = (vat: number): number => problem.vats[vat]?.litres ?? 0;
  const own = (batch.fixed?.stays ?? []).filter((stay) => stay.stage === stage);
  // The largest vats keep the fish that leave last; where the water is short they stand closer.
  const bySize = [...own].sort((a, b) => litresOf(b.vat) - litresOf(a.vat));
  let litres = 0;
  const holds = bySize.map(({ vat, from, to }, i): VatHold => {
    const step = i === 0 ? steps[0] : steps.find(({ litres: needed }) => needed > litres * (1 + 1e-9));
    litres += litresOf(vat);
    return { vat, stage, from, to: Math.max(to, step?.to ?? to) };
  });
  const clashes = ({ vat, from, to }: VatHold): boolean =>
    !own.some((stay) => stay.vat === vat && stay.to >= to) &&
    !isFree(occupancy[vat] ?? [], from, to, batch.id, problem.cleaningDays);
  if (holds.some(clashes)) return undefined;
  for (const { vat, from, to } of holds) addStay(occupancy[vat] ?? [], { from, to, run: batch.id });
  return holds;
}

const LAST_STAGE = VAT_STAGES.length - 1;
/** What a batch holds in a stage is enough for its steps, and begins when they do. */
function isEnough(
  { problem }: BatchSchedule,
  holds: readonly VatHold[],
  steps: readonly Step[],
  from: number | undefined,
): boolean {
  if (from === undefined) return holds.length === 0;
  for (const { to, litres } of steps) {
    let held = 0;
    for (const hold of holds)
      if (hold.to >= to - 1e-9 && hold.from === from) held += problem.vats[hold.vat]?.litres ?? 0;
    if (held < litres * (1 - 1e-9)) return false;
  }
  return true;
}

/** Vats of one stage anew; undefined when there are too few. */
function stageHolds(
  schedule: BatchSchedule,
  batch: Batch,
  stage: number,
  steps: readonly Step[],
): VatHold[] | undefined {
  if (hasBegun(batch, stage)) return extended(schedule, batch, stage, steps);
  // Eggs and larvae of a batch that is past them need no vats of their own any more.
  const isPast = batch.fixed !== undefined && (fromOf(batch, stage) ?? Infinity) <= schedule.problem.today;
  return isPast ? [] : holdsFor(schedule, batch, stage, steps);
}

/** Vats for all shares of a batch; false, and nothing changed, when there are too few. */
export function settleVats(schedule: BatchSchedule, batch: Batch): boolean {
  if (schedule.problem.without === 'vats') return true;
  const before = batch.holds;
  const scale = eggScaleOf(schedule, batch);
  for (let stage = LAST_STAGE; stage >= 0; stage--) {
    const steps = stepsOf(schedule, batch.shares, stage, stage === 0 ? scale : 1);
    const own = batch.holds.filter((hold) => hold.stage === stage);
    if (!hasBegun(batch, stage) && isEnough(schedule, own, steps, fromOf(batch, stage))) continue;
    for (const { vat, from } of own) removeHold(schedule.occupancy[vat] ?? [], batch.id, from);
    const found = stageHolds(schedule, batch, stage, steps);
    if (!found) {
      removeRun(schedule.occupancy, batch.id);
      for (const { vat, from, to } of before)
        addStay(schedule.occupancy[vat] ?? [], { from, to, run: batch.id });
      batch.holds = before;
      return false;
    }
    batch.holds = [...batch.holds.filter((hold) => hold.stage !== stage), ...found];
  }
  return true;
}

/** Eggs that the shares of a batch take on average, and with the safety of its number of females. */
export function eggsNeeded({ problem }: BatchSchedule, shares: readonly Share[], females: number): number {
  let eggs = 0;
  for (const { task, candidate, fish } of shares) {
    const product = problem.tasks[task]?.product;
    if (!product || fish <= 0) continue;
    const key = product.nurseryDays > 0 ? 'fingerlings' : 'fry';
    eggs +=
      (fish * product.eggsPerFish) /
      candidate.eggFactor /
      (females > 0 ? shareFor(problem.safety, key, females) : 1);
  }
  return eggs;
}
/** Eggs set for each that is needed on average: more where the females are few and may fail. */
function eggScaleOf(schedule: BatchSchedule, { shares, pairs }: Batch): number {
  const mean = eggsNeeded(schedule, shares, 0);
  return mean > 0 && pairs.length > 0 ? eggsNeeded(schedule, shares, pairs.length) / mean : 1;
}

/** Water a batch needs in a stage at its closest, before the first of its fish leave; and the water it has. */
export const litresNeeded = (schedule: BatchSchedule, batch: Batch, stage: number): number =>
  stepsOf(schedule, batch.shares, stage, stage === 0 ? eggScaleOf(schedule, batch) : 1).at(-1)?.litres ?? 0;
export const litresHeld = ({ problem }: BatchSchedule, { holds }: Batch, stage: number): number =>
  holds.reduce((sum, hold) => sum + (hold.stage === stage ? (problem.vats[hold.vat]?.litres ?? 0) : 0), 0);

export function dropBatch(schedule: BatchSchedule, batch: Batch): void {
  removeRun(schedule.occupancy, batch.id);
  releaseParents(schedule, batch);
  for (const { task, fish } of batch.shares) schedule.need[task] = (schedule.need[task] ?? 0) + fish;
  schedule.batches.delete(batch.id);
}

const without = (list: number[] | undefined, day: number): void => {
  const at = list?.lastIndexOf(day) ?? -1;
  if (at >= 0) list?.splice(at, 1);
};
export function releaseParents({ use, hands }: BatchSchedule, batch: Batch): void {
  for (const female of new Set(batch.pairs.map((pair) => pair.female)))
    without(use.females[female], batch.day);
  for (const male of new Set(batch.pairs.map((pair) => pair.male))) without(use.males[male], batch.day);
  hands.set(batch.day, (hands.get(batch.day) ?? 0) - batch.pairs.length);
}
export function takeParents(schedule: BatchSchedule, batch: Batch, pairs: readonly Pair[]): void {
  const { use, hands, problem } = schedule;
  batch.pairs = pairs;
  batch.eggs = pairs.reduce((sum, { female }) => sum + (problem.females[female]?.eggs ?? 0), 0);
  for (const { female } of pairs) use.females[female]?.push(batch.day);
  for (const male of new Set(pairs.map((pair) => pair.male))) use.males[male]?.push(batch.day);
  hands.set(batch.day, (hands.get(batch.day) ?? 0) + pairs.length);
}
