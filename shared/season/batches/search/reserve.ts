import type { Batch, BatchSchedule } from './schedule';

/**
 * Fish planned on top of an order are nobody's, and batches give what is ordered in the order of their nights. A
 * batch that stands in wholly against bad luck would so be for nobody, its work and its buyer untold: it is given
 * its part of the order it stands in for, and the batches before it give that much less.
 */

/** Fish kept for a batch, by batch and task. */
export type Reserved = ReadonlyMap<number, ReadonlyMap<number, number>>;

export interface Given {
  readonly task: number;
  readonly fish: number;
}

/** What each batch gives its orders: `left` is what they lack. In place of the batches' own order nothing is chosen. */
export function givenBy(
  batches: readonly Batch[],
  lacks: readonly number[],
  reserved: Reserved,
): ReadonlyMap<number, readonly Given[]> {
  const left = [...lacks];
  const kept = new Map<number, number>();
  for (const tasks of reserved.values())
    for (const [task, fish] of tasks) kept.set(task, (kept.get(task) ?? 0) + fish);
  return new Map(
    batches.map((batch) => {
      const own = reserved.get(batch.id);
      const given = batch.shares.map(({ task, fish }): Given => {
        const mine = own?.get(task) ?? 0;
        const others = (kept.get(task) ?? 0) - mine;
        kept.set(task, others);
        const open = Math.max(mine, (left[task] ?? 0) - others);
        const whole = Math.max(0, Math.min(left[task] ?? 0, open, Math.floor(fish + 1e-6)));
        left[task] = (left[task] ?? 0) - whole;
        return { task, fish: whole };
      });
      return [batch.id, given] as const;
    }),
  );
}

/** Batches in the order of their nights, each with the fish it gives to its orders; one entry a share. */
export function giftsOf(
  { problem }: BatchSchedule,
  batches: readonly Batch[],
): ReadonlyMap<number, readonly Given[]> {
  const lacks = problem.tasks.map(({ order }, t) => order.number - (problem.delivered[t] ?? 0));
  const planned = problem.tasks.map(() => 0);
  for (const { shares } of batches)
    for (const { task, fish } of shares) planned[task] = (planned[task] ?? 0) + fish;
  const reserved = new Map<number, ReadonlyMap<number, number>>();
  for (;;) {
    const given = givenBy(batches, lacks, reserved);
    const idle = batches.filter(
      ({ id, fixed, shares }) =>
        !fixed &&
        !reserved.has(id) &&
        shares.some(({ task, fish }) => fish >= 1 && (lacks[task] ?? 0) >= 1) &&
        (given.get(id) ?? []).every(({ fish }) => fish < 1),
    );
    if (idle.length === 0) return given;
    for (const { id, shares } of idle)
      reserved.set(
        id,
        new Map(
          shares.map(({ task, fish }) => [
            task,
            Math.max(1, Math.floor(((lacks[task] ?? 0) * fish) / (planned[task] ?? fish))),
          ]),
        ),
      );
  }
}
