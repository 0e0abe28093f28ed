import fc from 'fast-check';
import { CATALOGUE } from '../../../shared/catalogue';
import type { Arg } from '../../../shared/functions/invoke';
import { invoke } from '../../../shared/functions/invoke';
import type { Cell } from '../../../shared/base/values';
import { isError, isGrid } from '../../../shared/base/values';

/**
 * Whatever a sheet hands over, a function answers with a cell or a rectangular grid, and every #VALUE! and
 * #N/A has a sentence.
 */

const SEED = 20260301;
const cell: fc.Arbitrary<Cell> = fc.oneof(
  fc.constantFrom<Cell>(
    null,
    '',
    0,
    -1,
    1,
    7,
    25,
    46000.5,
    1e308,
    -1e308,
    1e-300,
    NaN,
    Infinity,
    true,
    false,
    'x',
    '4,6',
    '=1+1',
    'soda ash',
    ' ',
    '☃',
    { error: '#N/A' },
    { error: '#DIV/0!' },
  ),
  fc.double({ min: 0, max: 100, noNaN: true }),
  fc.integer({ min: 0, max: 50_000 }),
  fc.string({ maxLength: 12 }),
);
const grid = fc
  .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 3 }))
  .chain(([rows, columns]) =>
    fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), {
      minLength: rows,
      maxLength: rows,
    }),
  );
const anyArg: fc.Arbitrary<Arg> = fc.oneof(
  { weight: 3, arbitrary: cell },
  { weight: 2, arbitrary: grid },
  { weight: 1, arbitrary: fc.constant(undefined) },
);

/**
 * The arguments of a working example with some replaced: gets past the first check more often than pure
 * chance.
 */
const argsFor = (examples: readonly (readonly Arg[])[], count: number): fc.Arbitrary<readonly Arg[]> =>
  fc.oneof(
    fc.array(anyArg, { maxLength: count + 1 }),
    fc
      .tuple(
        fc.constantFrom(...examples),
        fc.array(fc.tuple(fc.nat({ max: Math.max(0, count - 1) }), anyArg), { maxLength: 2 }),
      )
      .map(([args, changes]) => {
        const changed = Array.from({ length: count }, (_, i) => args[i]);
        for (const [at, arg] of changes) changed[at] = arg;
        return changed;
      }),
  );

const isSound = (value: Cell): boolean =>
  isError(value)
    ? !['#VALUE!', '#N/A'].includes(value.error) || (value.message ?? '').length > 10
    : typeof value === 'number'
      ? Number.isFinite(value)
      : typeof value === 'string' || typeof value === 'boolean';

test.each(CATALOGUE.map((fn) => [fn.name, fn] as const))('%s answers anything', (_name, fn) => {
  fc.assert(
    fc.property(
      argsFor(
        fn.examples.map((example) => example.args),
        fn.params.length,
      ),
      (args) => {
        const frozen = JSON.stringify(args);
        const answer = invoke(fn, args);
        expect(JSON.stringify(args)).toBe(frozen);
        const rows = isGrid(answer) ? answer : [[answer]];
        expect(rows.every((row) => row.length === rows[0]?.length)).toBe(true);
        const bad = rows.flat().find((value) => !isSound(value));
        expect(bad).toBeUndefined();
      },
    ),
    { seed: SEED, numRuns: 150 },
  );
});
