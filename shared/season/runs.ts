import type { Assumed } from '../families/assumptions';
import type { PlacedRun, Schedule } from './place';
import type { PlannedRun, VatStay } from './result';

/** Runs in the order they are stripped, with their times, fish and vats. */
export function plannedRuns(
  schedule: Schedule,
  a: Assumed,
): { readonly runs: readonly PlannedRun[]; readonly placed: readonly PlacedRun[] } {
  const { problem } = schedule;
  const placed = [...schedule.runs].sort(
    (x, y) => x.candidate.clock.stripAt - y.candidate.clock.stripAt || x.task - y.task,
  );
  const runs = placed.flatMap(({ task: t, candidate, fish, pairs, vats }, i): PlannedRun[] => {
    const task = problem.tasks[t];
    if (!task) return [];
    const { product, order } = task;
    const [atEggs, atFeed] = [product.stages[0]?.fishPerFish ?? NaN, product.stages[1]?.fishPerFish ?? NaN];
    const [hatch = NaN, , fry = NaN] = product.survivals;
    const females = pairs.map(({ female, male }) => ({
      tag: problem.females[female]?.tag ?? '',
      kilograms: problem.females[female]?.kilograms ?? NaN,
      male: problem.males[male]?.tag ?? '',
    }));
    return [
      {
        ...candidate.clock,
        run: i + 1,
        order: order.name,
        females,
        males: [...new Set(females.map(({ male }) => male))],
        hormone: females.reduce((sum, f) => sum + f.kilograms, 0) * a.hormoneDose,
        eggs: fish * atEggs,
        larvae: fish * atEggs * hatch,
        feeding: fish * atFeed,
        weaned: fish * atFeed * fry,
        fish,
        weanedAt: candidate.weanedAt,
        readyAt: candidate.readyAt,
        due: order.due,
        vats: product.stages.map(({ key }, s) => ({
          stage: key,
          names: (vats[s] ?? []).map((v) => problem.vats[v]?.name ?? ''),
        })),
      },
    ];
  });
  return { runs, placed };
}

/**
 * Every stay of every vat, vat by vat in order of time. Fish spread over the vats of a stage by their water.
 */
export function vatStays({ problem }: Schedule, placed: readonly PlacedRun[]): VatStay[] {
  const stays: (VatStay & { readonly place: number })[] = [];
  placed.forEach(({ task: t, candidate, fish, vats }, i) => {
    const product = problem.tasks[t]?.product;
    product?.stages.forEach(({ key, fishPerFish }, s) => {
      const [from, to] = candidate.spans[s] ?? [NaN, NaN];
      const litres = (vats[s] ?? []).reduce((sum, v) => sum + (problem.vats[v]?.litres ?? 0), 0);
      const next = vats[s + 1] ?? [];
      for (const v of vats[s] ?? []) {
        const vat = problem.vats[v];
        if (!vat) continue;
        stays.push({
          place: v,
          vat: vat.name,
          run: i + 1,
          stage: key,
          from,
          to,
          cleanAt: next.includes(v) ? to : to + problem.cleaningDays,
          fish: (fish * fishPerFish * vat.litres) / litres,
          perLitre: (fish * fishPerFish) / litres,
        });
      }
    });
  });
  return stays
    .sort((x, y) => x.place - y.place || x.from - y.from)
    .map(({ vat, run, stage, from, to, cleanAt, fish, perLitre }) => ({
      vat,
      run,
      stage,
      from,
      to,
      cleanAt,
      fish,
      perLitre,
    }));
}
