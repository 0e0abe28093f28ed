import { CATALOGUE } from '../../shared/catalogue';
import type { NamedParam, SheetFunction } from '../../shared/functions/define';
import { invoke } from '../../shared/functions/invoke';
import type { NumberLimits, NumberParam, SeriesParam } from '../../shared/functions/params';
import * as say from '../../shared/functions/sentences';
import type { Cell, CellError, Grid } from '../../shared/base/values';
import { isError, isGrid } from '../../shared/base/values';

/**
 * Both sides of every bound of every argument, from the records themselves: the bound itself (or, where it is
 * exclusive, the smallest step above it) is taken, the step beyond it gets the sentence of that bound.
 */
type Numeric = (NumberParam | SeriesParam) & { readonly name: string };
const isNumeric = (param: NamedParam): param is Numeric => param.kind === 'number' || param.kind === 'series';

interface Edge {
  readonly what: string;
  readonly inside: number;
  readonly outside: number;
  readonly isPublished: boolean;
}
const stepAt = (value: number, whole: boolean | undefined): number =>
  whole ? 1 : Math.max(1e-9, Math.abs(value) * 1e-9);

function edgesOf(limits: NumberLimits, isPublished: boolean, whole = limits.whole): Edge[] {
  const { min, max, above } = limits;
  const edge = (what: string, bound: number, inside: number, outside: number): Edge => ({
    what: `${what} ${bound}`,
    inside,
    outside,
    isPublished,
  });
  return [
    ...(min === undefined ? [] : [edge('from', min, min, min - stepAt(min, whole))]),
    ...(max === undefined ? [] : [edge('to', max, max, max + stepAt(max, whole))]),
    ...(above === undefined ? [] : [edge('above', above, above + stepAt(above, whole), above)]),
  ];
}

const sentencesOf = (param: Numeric, value: number, row: number | undefined): CellError[] => {
  const { unit } = param.quantity;
  const place = say.place(param.name, row);
  return [
    say.outOfBounds(place, param, unit, value, param.quantity.slip?.(value)),
    ...(param.published ? [say.beyondPublished(place, param, unit, value)] : []),
  ];
};
const answer = (fn: SheetFunction, args: readonly (Cell | Grid)[]): Cell => {
  const got = invoke(fn, args);
  return isGrid(got) ? (got.flat().find(isError) ?? got[0]?.[0] ?? null) : got;
};

/** The arguments of an example with one of them, or the first item of one, exchanged. */
function withValue(fn: SheetFunction, at: number, value: number): (Cell | Grid)[] | undefined {
  const answered = fn.examples.filter(({ fails, args }) => !fails && args.length > 0);
  // Lists that belong together have one length: an example that fills the argument shows it.
  const example = answered.find(({ args }) => (args[at] ?? null) !== null) ?? answered[0];
  if (!example) return undefined;
  const args = Array.from(
    { length: Math.max(at + 1, example.args.length) },
    (_, i) => example.args[i] ?? null,
  );
  const old = args[at];
  args[at] = isGrid(old) ? old.map((row, r) => (r === 0 ? [value] : row)) : value;
  return args;
}

const cases = CATALOGUE.flatMap((fn) =>
  fn.params
    .filter(isNumeric)
    .flatMap((param) =>
      [
        ...edgesOf(param, false),
        ...(param.published ? edgesOf({ doc: '', ...param.published }, true, param.whole) : []),
      ].map((edge) => [`${fn.name} ${param.name} ${edge.what}`, fn, param, edge] as const),
    ),
);

test.each(cases)('%s', (_name, fn, param, { inside, outside, isPublished }) => {
  const at = fn.params.findIndex(({ name }) => name === param.name);
  const [taken, refused] = [withValue(fn, at, inside), withValue(fn, at, outside)];
  if (!taken || !refused) throw new Error(`${fn.name} has no example with an answer`);
  const isList = isGrid(refused[at] ?? null);
  const row = isList && (refused[at] as Grid).length > 1 ? 1 : undefined;
  const got = answer(fn, taken);
  const [bound, published] = sentencesOf(param, inside, row);
  expect(got).not.toEqual(isPublished ? published : bound);
  const refusal = answer(fn, refused);
  const wanted = sentencesOf(param, outside, row);
  // Beyond a published limit that lies on a sanity bound, either sentence is right.
  if (isPublished) expect(wanted).toContainEqual(refusal);
  else expect(refusal).toEqual(wanted[0]);
});

test('there are bounds to test', () => {
  expect(cases.length).toBeGreaterThan(300);
});
