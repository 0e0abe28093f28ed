import type { LogLine } from './log';
import { findFunction } from '../catalogue';
import { HEADINGS } from '../functions/define';
import type { Arg } from '../functions/invoke';
import { invoke } from '../functions/invoke';
import { isListParam, readScalar } from '../functions/read';
import type { Cell, CellError, Grid } from '../base/values';
import { isError, isGrid } from '../base/values';
import type { DosingField, DosingKey } from './fields';
import { YES, paramOf } from './fields';

/** The answers to the questions, as cells: null is not answered. */
export type Vat = Readonly<Record<DosingKey, Cell>>;
/** One row of the log: a reading, and the grams given before it. */
export type DosingReading = Pick<LogLine, 'at' | 'what' | 'grams' | 'ph' | 'again'> & Partial<LogLine>;

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

const columnOf = (readings: readonly DosingReading[], key: keyof LogLine): Grid =>
  readings.map((line) => [line[key] ?? null]);

export const askNext = (vat: Vat, readings: readonly DosingReading[]): readonly Row[] | CellError =>
  ask('BUFFER.NEXT', [
    vat.volume,
    columnOf(readings, 'grams'),
    columnOf(readings, 'ph'),
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
    null,
    columnOf(readings, 'what'),
    columnOf(readings, 'again'),
    columnOf(readings, 'at'),
    'given before',
  ]);

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

/** A sentence of the catalogue with the argument's name as the person knows it. */
const plain = ({ error, message }: CellError, label: string): string => {
  const sentence = message ?? `The answer is ${error}.`;
  const [, rest = ''] = /^\w+: (.*)$/s.exec(sentence) ?? [];
  return rest === '' ? sentence : `${label}: ${rest}`;
};

/** Highest pH at which so much total ammonia (mg/L N) is safe; undefined where the functions say none. */
export const ammoniaAt = (total: number, ph: number, target: number, celsius: number): number | undefined => {
  const answer = ask('AMMONIA.RISE', [total, ph, target, celsius]);
  const safe = isError(answer) ? undefined : answer[0]?.safe;
  return typeof safe === 'number' ? safe : undefined;
};
