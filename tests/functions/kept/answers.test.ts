import { CATALOGUE } from '../../../shared/catalogue';
import type { Family, NamedParam, SheetFunction } from '../../../shared/functions/define';
import type { Arg } from '../../../shared/functions/invoke';
import { invoke } from '../../../shared/functions/invoke';
import type { Rng } from '../../../shared/maths/rng';
import { rngOf } from '../../../shared/maths/rng';
import type { Cell, Grid } from '../../../shared/base/values';
import { isError, isGrid } from '../../../shared/base/values';
import { expectKept } from '../../support/kept';

/**
 * What every function answers to arguments drawn around those of its examples: other amounts, other words of
 * its lists, arguments left out and filled. Each branch of a kernel is met by some of them.
 */
const CASES = 14;

const rounded = (x: number): number => Number(x.toPrecision(3));
const within = (x: number, { min = -Infinity, max = Infinity }: { min?: number; max?: number }): number =>
  Math.min(max, Math.max(min, x));
const oneOf = <T>(list: readonly T[], chance: Rng): T => list[Math.floor(chance.even() * list.length)] as T;

/** A number of about the same size; a moment stays a moment of its days, a whole number whole. */
function near(value: number, param: NamedParam, chance: Rng): number {
  const { whole = false, ...limits } = param.kind === 'number' || param.kind === 'series' ? param : {};
  const moved =
    Math.abs(value) > 30_000
      ? value + (chance.even() < 0.8 ? 0.4 : 6) * (chance.even() - 0.5)
      : value * Math.exp((chance.even() < 0.6 ? 0.3 : 1.6) * (chance.even() - 0.5)) +
        (value === 0 ? 3 * chance.even() : 0);
  const number = Math.abs(value) > 30_000 ? Number(moved.toFixed(2)) : rounded(moved);
  return within(
    whole || (Number.isInteger(value) && value >= 3 && value < 1e4) ? Math.round(number) : number,
    limits,
  );
}

/** A list keeps its order: all of it is stretched, and sometimes one item is moved. */
function movedList(grid: Grid, param: NamedParam, chance: Rng): Grid {
  const stretch = Math.exp(0.5 * chance.even() - 0.25);
  const rows = grid.length * (grid[0]?.length ?? 1);
  const odd = chance.even() < 0.5 ? Math.floor(chance.even() * rows) : -1;
  let at = 0;
  return grid.map((row) =>
    row.map((cell): Cell => {
      const isOdd = at++ === odd;
      if (typeof cell !== 'number') return cell;
      if (Math.abs(cell) > 30_000) return cell + (isOdd ? 0.2 : 0);
      const limits = param.kind === 'number' || param.kind === 'series' ? param : {};
      const whole = Number.isInteger(cell) && cell >= 3;
      const next = rounded(cell * stretch * (isOdd ? 1.4 : 1));
      return within(whole ? Math.round(next) : next, limits);
    }),
  );
}

/** An argument nobody gave, filled in. */
function filled(param: NamedParam, chance: Rng): Arg {
  if (param.kind === 'choice') return oneOf(param.choices, chance);
  if (param.kind === 'flag') return !param.default;
  if (param.kind !== 'number') return null;
  const { min, max, above } = param;
  const [from, to] = [min ?? above ?? 0, max ?? 100];
  const value =
    param.default !== undefined && param.default !== 0
      ? param.default * Math.exp(chance.even() - 0.5)
      : from > 0 && to / from > 100
        ? from * (to / from) ** (0.2 + 0.5 * chance.even())
        : from + (Math.min(to, from + 100) - from) * (0.1 + 0.8 * chance.even());
  return within(param.whole ? Math.max(1, Math.round(value)) : rounded(value), param);
}

function drawn(fn: SheetFunction, example: readonly Arg[], chance: Rng): Arg[] {
  return fn.params.map((param, i): Arg => {
    const was = example[i] ?? null;
    if (was === null) return chance.even() < 0.3 ? filled(param, chance) : null;
    if (chance.even() < 0.4) return was;
    if (isGrid(was)) return movedList(was, param, chance);
    if (param.kind === 'choice') return oneOf(param.choices, chance);
    if (param.kind === 'flag') return chance.even() < 0.5;
    if (typeof was !== 'number') return was;
    const isOptional = param.kind === 'number' && (param.optional || param.default !== undefined);
    return isOptional && chance.even() < 0.25 ? null : near(was, param, chance);
  });
}

const said = (cell: Cell): Cell => (isError(cell) ? `${cell.error} ${cell.message ?? ''}` : cell);
const answerOf = (fn: SheetFunction, args: readonly Arg[]): unknown => {
  const answer = invoke(fn, args);
  return isGrid(answer) ? answer.map((row) => JSON.stringify(row.map(said).map(short))) : said(answer);
};
const short = (cell: Cell): Cell => (typeof cell === 'number' ? Number(cell.toPrecision(8)) : cell);

const FAMILIES = [...new Set(CATALOGUE.map(({ family }) => family))];
test.each(FAMILIES)('%s', (family: Family) => {
  const kept = CATALOGUE.filter((fn) => fn.family === family).map((fn) => {
    const chance = rngOf(fn.id.split('').reduce((sum, letter) => sum * 31 + letter.charCodeAt(0), 7) % 1e9);
    const answered = fn.examples.filter(({ fails }) => !fails).map(({ args }) => args);
    const cases = Array.from({ length: CASES }, () => {
      const args = drawn(fn, oneOf(answered, chance), chance);
      return [JSON.stringify(args), answerOf(fn, args)];
    });
    return { function: fn.id, cases };
  });
  expectKept(`functions-${family.toLowerCase().replace(/\W+/g, '-')}`, kept);
});
