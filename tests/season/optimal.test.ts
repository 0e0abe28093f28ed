import { isoDateOfSerial, serialOfIsoDate } from '../../shared/units/dates';
import { rngOf } from '../../shared/maths/rng';
import type { Problem } from '../../shared/season/problem';
import { problemOf } from '../../shared/season/problem';
import { deliveredOf, solve } from '../../shared/season/solve';
import { mostWorth } from './exhaustive';
import { bookOf } from './support';

const START = serialOfIsoDate('2027-02-20') ?? NaN;
const worthOf = (problem: Problem, fish: readonly number[]): number =>
  fish.reduce((sum, n, t) => sum + n * (problem.tasks[t]?.value ?? 0), 0);

/** A small tight problem: not everything can be had. */
function small(seed: number, orders: number, vats: number, females: number, holdDays: number): Problem {
  const { even } = rngOf(seed);
  const pick = (n: number): number => Math.floor(even() * n);
  return problemOf(
    bookOf({
      orders: Array.from({ length: orders }, (_, i) => ({
        name: `o${i}`,
        product: even() < 0.5 ? 'fry' : 'fingerlings',
        number: 5000 + pick(45_000),
        due: isoDateOfSerial(START + 30 + pick(50)),
        price: 0.05 + pick(4) * 0.03,
      })),
      vats: Array.from({ length: vats }, (_, i) => ({
        name: `v${i}`,
        litres: 200 + 100 * pick(10),
        holds: even() < 0.3 ? ['fry', 'nursing'] : ['eggs', 'fry', 'nursing'],
      })),
      females: Array.from({ length: females }, (_, i) => ({ tag: `f${i}`, kilograms: 0.5 + pick(12) / 10 })),
      males: Array.from({ length: 12 }, (_, i) => ({ tag: `m${i}` })),
      restDays: 20 + pick(40),
      cleaningDays: pick(4),
      holdDays,
      staff: { femalesPerDay: 1 + pick(3) },
    }),
  ).problem;
}

const CASES = [
  ...Array.from({ length: 25 }, (_, i) => [i + 1, 2, 3, 3, 1, 1] as const),
  ...Array.from({ length: 25 }, (_, i) => [i + 101, 3, 2, 3, 1, 1] as const),
  ...Array.from({ length: 15 }, (_, i) => [i + 201, 2, 2, 2, 2, 2] as const),
];

test('on small tight problems the schedule comes within 2 % of the best there is', () => {
  let tight = 0;
  const behind: unknown[] = [];
  for (const [seed, orders, vats, females, hold, runsEach] of CASES) {
    const problem = small(seed, orders, vats, females, hold);
    const best = mostWorth(problem, runsEach);
    const got = worthOf(problem, deliveredOf(solve(problem)));
    const whole = worthOf(
      problem,
      problem.tasks.map((t) => t.wanted),
    );
    if (best < 0.98 * whole && best > 0) tight++;
    if (got < 0.98 * best) behind.push([seed, orders, got / best]);
  }
  expect(behind).toEqual([]);
  // The problems would prove nothing if everything could be had in all of them.
  expect(tight).toBeGreaterThan(30);
});
