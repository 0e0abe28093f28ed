import type { SheetFunction } from '../shared/catalogue/define';
import { invoke } from '../shared/catalogue/invoke';
import type { Cell, CellError, Grid } from '../shared/values';
import { isError, isGrid, refuse } from '../shared/values';
import type { ErrorClass } from './adapt';
import { toArgs, toHost, toHostError } from './adapt';
import type { LastErrors } from './lastErrors';

/** The registry a host offers: Excel's own, the local sheet's, a test's. */
export interface Host {
  associate(id: string, body: (...args: unknown[]) => unknown): void;
  readonly Error: ErrorClass;
}

interface Call { readonly address?: string; readonly isPreview: boolean }
const callOf = (given: unknown): Call => {
  const { address, isInValuePreview } = (given ?? {}) as { address?: unknown; isInValuePreview?: unknown };
  // Typed as text in the published declarations, sent as a truth value.
  const isPreview = isInValuePreview === true || isInValuePreview === 'true';
  return typeof address === 'string' && address !== '' ? { address, isPreview } : { isPreview };
};

function compute(fn: SheetFunction, names: readonly string[], values: readonly unknown[]): Cell | Grid {
  try {
    const read = toArgs(values, names);
    return isError(read) ? read : invoke(fn, read.args);
  } catch (fault) {
    const detail = fault instanceof Error ? fault.message : String(fault);
    return refuse(`${fn.name} failed in a way that is our mistake, not yours (${detail}). Please report the formula.`);
  }
}

const errorsIn = (result: Cell | Grid): readonly CellError[] => (isGrid(result) ? result.flat().filter(isError) : isError(result) ? [result] : []);

function note(errors: LastErrors, fn: SheetFunction, call: Call, result: Cell | Grid): void {
  if (call.address === undefined || call.isPreview) return;
  const found = errorsIn(result);
  const [first] = found;
  if (first) errors.record({ address: call.address, functionName: fn.name, code: first.error, message: first.message ?? '', cells: found.length });
  else errors.forget(call.address);
}

/**
 * The body Excel calls: the declared arguments, null where left out, then the invocation. Answers with rows of cells; an answer that
 * is an error as a whole is thrown as the host's own error, which is how every host shows its sentence.
 */
export function hostBody(fn: SheetFunction, Failure: ErrorClass, errors: LastErrors): (...given: unknown[]) => unknown {
  const names = fn.params.map((p) => p.name);
  return (...given) => {
    const result = compute(fn, names, given);
    note(errors, fn, callOf(given[names.length]), result);
    if (isError(result)) throw toHostError(result, Failure);
    return toHost(result, Failure);
  };
}

export function registerAll(functions: readonly SheetFunction[], host: Host, errors: LastErrors): void {
  for (const fn of functions) host.associate(fn.id, hostBody(fn, host.Error, errors));
}
