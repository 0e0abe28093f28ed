/* eslint-disable complexity -- one model, row after row */
import loadHighs from 'highs';
import type { BatchProblem } from '../../../shared/season/batches/problem';

/**
 * The best a season of batches can be, by an exact solver (HiGHS, mixed integer programming): nights, pairs,
 * vats by stage and time, fish of each night to each order as one model. Days, hours, eggs and litres come from
 * the problem; what is decided is written here on its own.
 */
interface Row {
  readonly terms: string[];
  readonly sense: '<=' | '>=' | '=';
  readonly right: number;
}
const STAGE_BITS = [1, 2, 4];
const EPS = 1e-6;
const num = (x: number): string => x.toPrecision(12);

export function modelOf(problem: BatchProblem): string {
  const { tasks, vats, females, males, byDay } = problem;
  const days = [...byDay.keys()].sort((a, b) => a - b);
  const rows: Row[] = [];
  const binaries: string[] = [];
  const add = (terms: string[], sense: Row['sense'], right: number): void => {
    if (terms.length > 0) rows.push({ terms, sense, right });
  };
  const plus = (factor: number, name: string): string =>
    `${factor < 0 ? '-' : '+'} ${num(Math.abs(factor))} ${name}`;
  const rest = Math.max(1, problem.restDays);
  const free = (used: readonly number[], day: number): boolean =>
    used.every((u) => Math.abs(u - day) >= rest);
  const pair = (f: number, m: number, d: number): string => `p_${f}_${m}_${d}`;
  const able = (f: number, m: number, d: number): boolean => {
    const [female, male] = [females[f], males[m]];
    if (!female || !male || (female.family !== '' && female.family === male.family)) return false;
    if (male.isGone) return false;
    return free(female.used, d) && (problem.malesSurvive ? free(male.used, d) : male.used.length === 0);
  };
  const F = females.map((_, i) => i);
  const M = males.map((_, i) => i);
  const pairsOn = (d: number, keep: (f: number, m: number) => boolean): string[] =>
    F.flatMap((f) => M.flatMap((m) => (keep(f, m) && able(f, m, d) ? [pair(f, m, d)] : [])));
  const holds: { name: string; vat: number; day: number; stage: number; from: number; to: number }[] = [];
  for (const d of days) {
    const list = byDay.get(d) ?? [];
    binaries.push(...pairsOn(d, () => true));
    for (const f of F)
      add(
        pairsOn(d, (g) => g === f).map((p) => plus(1, p)),
        '<=',
        1,
      );
    for (const m of M) {
      const mine = pairsOn(d, (_, n) => n === m);
      if (mine.length === 0) continue;
      binaries.push(`y_${m}_${d}`);
      add([...mine.map((p) => plus(1, p)), plus(-problem.femalesPerMale, `y_${m}_${d}`)], '<=', 0);
    }
    add(
      pairsOn(d, () => true).map((p) => plus(1, p)),
      '<=',
      problem.femalesPerDay,
    );
    add(
      [
        ...list.map(({ task, candidate }) =>
          plus((tasks[task]?.product.eggsPerFish ?? 0) / candidate.eggFactor, `x_${task}_${d}`),
        ),
        ...F.flatMap((f) => pairsOn(d, (g) => g === f).map((p) => plus(-(females[f]?.eggs ?? 0), p))),
      ],
      '<=',
      0,
    );
    for (const stage of [0, 1, 2]) {
      const using = list.flatMap(({ task, candidate }) => {
        const span = candidate.spans[stage];
        return span
          ? [
              {
                task,
                from: span[0],
                to: span[1],
                litres: tasks[task]?.product.stages[stage]?.litresPerFish ?? 0,
              },
            ]
          : [];
      });
      const ends = [...new Set(using.map(({ to }) => to))].sort((a, b) => a - b);
      const here = vats.flatMap((vat, v) =>
        (vat.holds & (STAGE_BITS[stage] ?? 0)) === 0
          ? []
          : ends.map((to, k) => ({
              name: `z_${v}_${d}_${stage}_${k}`,
              vat: v,
              day: d,
              stage,
              from: using[0]?.from ?? 0,
              to,
            })),
      );
      holds.push(...here);
      binaries.push(...here.map(({ name }) => name));
      for (const end of ends)
        add(
          [
            ...using
              .filter(({ to }) => to >= end - EPS)
              .map(({ task, litres }) => plus(litres, `x_${task}_${d}`)),
            ...here
              .filter(({ to }) => to >= end - EPS)
              .map(({ name, vat }) => plus(-(vats[vat]?.litres ?? 0), name)),
          ],
          '<=',
          0,
        );
    }
  }
  for (let i = 0; i < holds.length; i++)
    for (let j = i + 1; j < holds.length; j++) {
      const [a, b] = [holds[i], holds[j]];
      if (!a || !b || a.vat !== b.vat) continue;
      const gap = a.day === b.day ? 0 : problem.cleaningDays;
      if (a.from < b.to + gap - EPS && b.from < a.to + gap - EPS)
        add([plus(1, a.name), plus(1, b.name)], '<=', 1);
    }
  for (let i = 0; i < days.length; i++)
    for (let j = i + 1; j < days.length; j++) {
      const [d, e] = [days[i] ?? 0, days[j] ?? 0];
      if (e - d < rest)
        for (const f of F)
          add(
            [...pairsOn(d, (g) => g === f), ...pairsOn(e, (g) => g === f)].map((p) => plus(1, p)),
            '<=',
            1,
          );
      if (problem.malesSurvive && e - d < rest)
        for (const m of M)
          add(
            [d, e].filter((day) => binaries.includes(`y_${m}_${day}`)).map((day) => plus(1, `y_${m}_${day}`)),
            '<=',
            1,
          );
    }
  if (!problem.malesSurvive)
    for (const m of M)
      add(
        days.filter((d) => binaries.includes(`y_${m}_${d}`)).map((d) => plus(1, `y_${m}_${d}`)),
        '<=',
        1,
      );
  const whole = tasks.reduce((sum, { value, wanted }) => sum + value * wanted, 0);
  const goal: string[] = [];
  tasks.forEach(({ value, wanted, candidates }, t) => {
    if (candidates.length === 0) return;
    const mine = candidates.map(({ day }) => `x_${t}_${day}`);
    add(
      mine.map((x) => plus(1, x)),
      '<=',
      wanted,
    );
    add([...mine.map((x) => plus(1, x)), plus(-wanted, `w_${t}`)], '>=', 0);
    binaries.push(`w_${t}`);
    goal.push(...mine.map((x) => plus(value, x)), plus((whole * 0.004) / tasks.length, `w_${t}`));
  });
  return [
    'Maximize',
    ` goal: ${goal.join(' ') || '0 x_none'}`,
    'Subject To',
    ...rows.map(({ terms, sense, right }, i) => ` c${i}: ${terms.join(' ')} ${sense} ${num(right)}`),
    'Binary',
    ...binaries.map((name) => ` ${name}`),
    'End',
  ].join('\n');
}

/** Worth of the best season: fish by their value and a little for whole orders. */
export async function bestWorth(
  problem: BatchProblem,
): Promise<{ readonly worth: number; readonly isProven: boolean }> {
  if (problem.byDay.size === 0) return { worth: 0, isProven: true };
  const highs = await loadHighs();
  const { Status, ObjectiveValue } = highs.solve(modelOf(problem), { mip_rel_gap: 0.0005, time_limit: 60 });
  return { worth: ObjectiveValue, isProven: Status === 'Optimal' };
}
