import type { SheetFunction } from '../../shared/functions/define';
import { BLANK_CHECK } from '../../shared/functions/blankCheck';
import { invoke } from '../../shared/functions/invoke';
import type { Cell, CellError, Grid } from '../../shared/base/values';
import { isError, isGrid, refuse } from '../../shared/base/values';
import type { ErrorClass } from './adapt';
import { toArgs, toHost, toHostError } from './adapt';
import type { LastErrors } from './lastErrors';

/** The registry a host offers: Excel's own, the local sheet's, a test's. */
export interface Host {
  associate(id: string, body: (...args: unknown[]) => unknown): void;
  readonly Error: ErrorClass;
  /** A host that cannot wait for an answer is given what fetches code that would come later; Excel has none. */
  prepare?(fetchAll: () => Promise<void>): void;
}

interface Call {
  readonly address?: string;
  readonly isPreview: boolean;
}
const callOf = (given: unknown): Call => {
  const { address, isInValuePreview } = (given ?? {}) as { address?: unknown; isInValuePreview?: unknown };
  // Typed as text in the published declarations, sent as a truth value.
  const isPreview = isInValuePreview === true || isInValuePreview === 'true';
  return typeof address === 'string' && address !== '' ? { address, isPreview } : { isPreview };
};

function compute(fn: SheetFunction, names: readonly string[], values: readonly unknown[]): Cell | Grid {
  try {
    const { args, fault } = toArgs(values, names);
    return fault ?? invoke(fn, args);
  } catch (fault) {
    const detail = fault instanceof Error ? fault.message : String(fault);
    return refuse(
      `${fn.name} failed in a way that is our mistake, not yours (${detail}). Please report the formula.`,
    );
  }
}

interface Tally {
  first: CellError | undefined;
  cells: number;
}
function tally(result: Cell | Grid): Tally {
  const found: Tally = { first: undefined, cells: 0 };
  const see = (cell: Cell): void => {
    if (!isError(cell)) return;
    found.first ??= cell;
    found.cells += 1;
  };
  if (isGrid(result)) for (const line of result) for (const cell of line) see(cell);
  else see(result);
  return found;
}

function note(errors: LastErrors, fn: SheetFunction, call: Call, result: Cell | Grid): void {
  if (call.address === undefined || call.isPreview) return;
  const { first, cells } = tally(result);
  if (first)
    errors.record({
      address: call.address,
      functionName: fn.name,
      code: first.error,
      message: first.message ?? '',
      cells,
    });
  else errors.forget(call.address);
}

/** Rows looked at: enough to meet a blank, few enough to cost nothing beside the call. */
const MOST_LOOKED = 1_000;
const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value);
/** A blank inside a range that arrives as null shows, without asking, that this host keeps blanks apart from 0. */
const holdsBlank = (given: readonly unknown[]): boolean =>
  given.some(
    (one) => isList(one) && one.slice(0, MOST_LOOKED).some((line) => isList(line) && line.includes(null)),
  );

/**
 * The body Excel calls: the declared arguments, null where left out, then the invocation. Answers with rows
 * of cells; an answer that is an error as a whole is thrown as the host's own error, which is how every host
 * shows its sentence.
 */
export function hostBody(
  fn: SheetFunction,
  Failure: ErrorClass,
  errors: LastErrors,
): (...given: unknown[]) => unknown {
  const names = fn.params.map((p) => p.name);
  return (...given) => {
    const result = compute(fn, names, given);
    if (errors.blanks === 'unknown' && holdsBlank(given)) errors.sawBlank('kept');
    if (fn.id === BLANK_CHECK && (result === 'kept' || result === 'zero')) errors.sawBlank(result);
    note(errors, fn, callOf(given[names.length]), result);
    if (isError(result)) throw toHostError(result, Failure);
    return toHost(result, Failure);
  };
}

export function registerAll(functions: readonly SheetFunction[], host: Host, errors: LastErrors): void {
  for (const fn of functions) host.associate(fn.id, hostBody(fn, host.Error, errors));
}

/**
 * Functions whose code comes when the first of them is called. Until it is there the host shows that the cell is
 * being worked on; a failed load is tried again at the next call. Once it is there, answers come at once.
 */
export function registerLater(
  ids: readonly string[],
  load: () => Promise<readonly SheetFunction[]>,
  host: Host,
  errors: LastErrors,
): void {
  let loading: Promise<void> | undefined;
  const bodies = new Map<string, (...given: unknown[]) => unknown>();
  const fetchAll = async (): Promise<void> => {
    for (const fn of await load()) bodies.set(fn.id, hostBody(fn, host.Error, errors));
  };
  const fetchOnce = (): Promise<void> =>
    (loading ??= fetchAll().catch((fault: unknown) => {
      loading = undefined;
      throw fault;
    }));
  const answer = (id: string, given: readonly unknown[]): unknown => {
    const body = bodies.get(id);
    if (!body) throw new Error(`no function ${id}`);
    return body(...given);
  };
  for (const id of ids)
    host.associate(id, (...given) =>
      bodies.has(id) ? answer(id, given) : fetchOnce().then(() => answer(id, given)),
    );
  host.prepare?.(fetchOnce);
}
