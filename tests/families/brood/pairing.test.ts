import fc from 'fast-check';
import { assign } from '../../../shared/families/brood/kernels/assign';
import {
  labelOf,
  offspringInbreeding,
  pairUp,
  relationship,
} from '../../../shared/families/brood/kernels/pairing';
import { evenShares } from '../../../shared/families/brood/kernels/inbreeding';
import { columnOf, grid, refusal } from '../../support/call';

const RUN = { seed: 20260316, numRuns: 300 };

/** Every way to seat the rows, for small tables. */
function cheapest(
  cost: readonly (readonly number[])[],
  row = 0,
  taken: ReadonlySet<number> = new Set(),
): number {
  const line = cost[row];
  if (!line) return 0;
  let best = Infinity;
  for (const [column, price] of line.entries())
    if (!taken.has(column))
      best = Math.min(best, price + cheapest(cost, row + 1, new Set([...taken, column])));
  return best;
}

test('the assignment costs as little as the best of all assignments', () => {
  const table = fc.tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 0, max: 2 })).chain(([n, extra]) =>
    fc.array(fc.array(fc.integer({ min: 0, max: 30 }), { minLength: n + extra, maxLength: n + extra }), {
      minLength: n,
      maxLength: n,
    }),
  );
  fc.assert(
    fc.property(table, (cost) => {
      const columns = assign(cost);
      expect(new Set(columns).size).toBe(cost.length);
      expect(columns.reduce((sum, column, row) => sum + (cost[row]?.[column] ?? Infinity), 0)).toBe(
        cheapest(cost),
      );
    }),
    RUN,
  );
});

const family = fc.constantFrom('A', 'B', 'L1/A', 'L1/B', 'L2/A', '');
const fish = (max: number): fc.Arbitrary<string[]> => fc.array(family, { minLength: 1, maxLength: max });

test('no male serves more than allowed and no other plan is less inbred', () => {
  fc.assert(
    fc.property(fish(4), fish(4), fc.integer({ min: 1, max: 3 }), (females, males, most) => {
      fc.pre(females.length <= males.length * most);
      const [her, his] = [females.map(labelOf), males.map(labelOf)];
      const chosen = pairUp(her, his, most);
      for (const male of males.keys())
        expect(chosen.filter((m) => m === male).length).toBeLessThanOrEqual(most);
      const inbred = (f: number, m: number): number =>
        offspringInbreeding(relationship(her[f], his[m])) ?? 1e-5;
      const places = males.flatMap((_, m) => Array.from({ length: most }, () => m));
      const best = cheapest(females.map((_, f) => places.map((m) => inbred(f, m))));
      expect(chosen.reduce((sum, m, f) => sum + inbred(f, m), 0)).toBeCloseTo(best, 9);
    }),
    RUN,
  );
});

test('a male is used again only when relationship asks for it', () => {
  const rows = grid(
    'PAIRING.PLAN',
    columnOf(['a', 'b', 'c']),
    columnOf(['1', '2', '3']),
    columnOf(['x', 'y', 'z']),
    columnOf(['7', '8', '9']),
    3,
    false,
  );
  expect(new Set(rows.map((r) => r[1])).size).toBe(3);
});

test.each([
  ['A', 'a ', 'full sibs'],
  ['L1/A', 'l1 / a', 'full sibs'],
  ['L1/A', 'L1/B', 'same line'],
  ['L1/A', 'L2/A', 'unrelated'],
  ['A', 'B', 'unrelated'],
  ['A', 'L1/A', 'unrelated'],
  ['', 'A', 'unknown'],
  ['L1/', 'L1/', 'same line'],
  ['/', 'A', 'unknown'],
])('"%s" with "%s": %s', (a, b, kin) => {
  expect(relationship(labelOf(a), labelOf(b))).toBe(kin);
  expect(relationship(labelOf(b), labelOf(a))).toBe(kin);
});

test('two hundred of each are paired, each male once', () => {
  const labels = Array.from({ length: 200 }, (_, i) => `L${i % 4}/${i % 23}`);
  const chosen = pairUp(labels.map(labelOf), [...labels].reverse().map(labelOf), 1);
  expect(new Set(chosen).size).toBe(200);
});

test('too few males, too many fish: a sentence', () => {
  const two = columnOf(['a', 'b']);
  expect(refusal('PAIRING.PLAN', two, two, columnOf(['m']), columnOf(['x']))).toMatch(
    /2 females need a male each, but 1 males at 1 each serve 1/,
  );
  const many = columnOf(Array.from({ length: 301 }, (_, i) => String(i)));
  expect(refusal('PAIRING.PLAN', many, many, two, two)).toMatch(/up to 300/);
});

test(
  'even shares: nothing over what is there, the sum as wished, no lot gives up one to ' +
    'a lot that keeps two more',
  () => {
    fc.assert(
      fc.property(fc.array(fc.nat(40), { minLength: 1, maxLength: 8 }), fc.nat(150), (available, wanted) => {
        const kept = evenShares(available, wanted);
        expect(kept.reduce((a, b) => a + b, 0)).toBe(
          Math.min(
            wanted,
            available.reduce((a, b) => a + b, 0),
          ),
        );
        for (const [i, k] of kept.entries()) {
          expect(k).toBeLessThanOrEqual(available[i] ?? 0);
          if (k < (available[i] ?? 0)) expect(Math.max(...kept)).toBeLessThanOrEqual(k + 1);
        }
      }),
      RUN,
    );
  },
);
