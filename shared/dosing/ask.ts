import { findFunction } from '../catalogue';
import { HEADINGS } from '../functions/define';
import type { Arg } from '../functions/invoke';
import { invoke } from '../functions/invoke';
import { isListParam, readScalar } from '../functions/read';
import type { Cell, CellError, Grid } from '../base/values';
import { isError, isGrid } from '../base/values';
import type { DosingField, DosingKey } from './fields';
import { DOSING_FIELDS, YES, paramOf } from './fields';

/** The answers to the questions, as cells: null is not answered. */
export type Vat = Readonly<Record<DosingKey, Cell>>;
/** Running total of product, g, and the pH read after it. */
export interface DosingReading {
  readonly grams: number;
  readonly ph: number;
}

export type Row = Readonly<Record<string, Cell>>;

/** What a function of the catalogue answers, row by row under the names of its columns. */
function ask(id: string, args: readonly Arg[]): readonly Row[] | CellError {
  const fn = findFunction(`SPAWN.${id}`);
  if (!fn) return { error: '#NAME?', message: `There is no function ${id}.` };
  const answer = invoke(
    fn,
    fn.params.map((param, i) => (param.name === HEADINGS ? false : args[i])),
  );
  if (isError(answer)) return answer;
  const keys = fn.returns.kind === 'value' ? ['value'] : Object.keys(fn.returns.columns);
  const grid: Grid = isGrid(answer) ? answer : [[answer]];
  return grid.map((row) => Object.fromEntries(keys.map((key, i) => [key, row[i] ?? null])));
}

const isStocked = (vat: Vat): boolean => vat.stocked === YES;

/** The kit's figure in the unit of the formulas. */
export const alkalinityOf = (vat: Vat): Cell => {
  if (vat.alkalinity === null) return null;
  const answer = ask('ALKALINITY.CONVERT', [vat.alkalinity, vat.kit]);
  return isError(answer) ? answer : (answer[0]?.value ?? null);
};

const doses = (readings: readonly DosingReading[]): Grid => readings.map(({ grams }) => [grams]);
const levels = (readings: readonly DosingReading[]): Grid => readings.map(({ ph }) => [ph]);

export const askNext = (vat: Vat, readings: readonly DosingReading[]): readonly Row[] | CellError =>
  ask('BUFFER.NEXT', [
    vat.volume,
    doses(readings),
    levels(readings),
    vat.target,
    vat.spoon,
    vat.temperature,
    vat.material,
    vat.purity,
    vat.origin,
    alkalinityOf(vat),
    null,
    vat.meter,
    vat.bottom,
    vat.top,
    null,
    isStocked(vat),
  ]);

/** The curve ends a little above the window: what lies beyond is not wanted. */
const ABOVE_TOP = 0.3;
export const askCurve = (vat: Vat, readings: readonly DosingReading[]): readonly Row[] | CellError =>
  ask('BUFFER.CURVE', [
    vat.volume,
    doses(readings),
    levels(readings),
    typeof vat.top === 'number' ? vat.top + ABOVE_TOP : null,
    vat.temperature,
    vat.material,
    vat.purity,
    vat.origin,
    alkalinityOf(vat),
    null,
    vat.meter,
  ]);

export const askRange = (vat: Vat, ph: number): readonly Row[] | CellError =>
  ask('BUFFER.RANGE', [
    vat.volume,
    ph,
    vat.target,
    vat.temperature,
    vat.material,
    vat.purity,
    vat.origin,
    vat.meter,
  ]);

export const askTrial = (vat: Vat, ph: number): readonly Row[] | CellError =>
  ask('BUFFER.TRIAL', [ph, vat.target, null, null, vat.temperature, vat.material, vat.origin, vat.meter]);

export const askAmmonia = (vat: Vat, ph: number, total: Cell): readonly Row[] | CellError =>
  ask('AMMONIA.RISE', [total, ph, vat.target, vat.temperature]);

/** The sentence about one answer, or nothing when it will do. */
export function faultOf(field: DosingField, cell: Cell): string | undefined {
  if (cell === null)
    return field.isRequired
      ? `${field.label}: ${field.choices ? 'choose one' : 'a number is needed'}. ${field.hint}`
      : undefined;
  if (field.choices)
    return field.choices.some(([value]) => value === cell)
      ? undefined
      : `${field.label}: choose one of the list.`;
  const param = paramOf(field.fills);
  if (!param || isListParam(param)) return undefined;
  const read = readScalar(param, cell);
  return isError(read) ? plain(read, field.label) : undefined;
}

export const GRAMS_SO_FAR = 'grams so far';

/** A sentence of the catalogue with the argument's name as the person knows it. */
export function plain({ error, message }: CellError, label?: string): string {
  const sentence = message ?? `The answer is ${error}.`;
  const [, name = '', row, rest = ''] = /^(\w+)(?:, row (\d+))?: (.*)$/s.exec(sentence) ?? [];
  if (rest === '') return sentence;
  if (name === 'doses' || name === 'readings')
    return `${row === undefined ? '' : `Reading ${row}, `}${name === 'doses' ? GRAMS_SO_FAR : 'pH'}: ${rest}`;
  return `${label ?? DOSING_FIELDS.find((field) => field.fills[1] === name)?.label ?? name}: ${rest}`;
}

/** Highest pH at which so much total ammonia (mg/L N) is safe; undefined where the functions say none. */
export const ammoniaAt = (total: number, ph: number, target: number, celsius: number): number | undefined => {
  const answer = ask('AMMONIA.RISE', [total, ph, target, celsius]);
  const safe = isError(answer) ? undefined : answer[0]?.safe;
  return typeof safe === 'number' ? safe : undefined;
};
