import type { SheetFunction } from '../../functions/define';
import { invoke } from '../../functions/invoke';
import type { EagerFunction, Operand, Resolver } from './evaluate';
import { evaluateWith } from './evaluate';
import { nativeFunction } from './natives';

export type { EagerFunction, Operand, Resolver };

/** Our own functions by full name; a sheet is handed the table it calculates with. */
export type FindFunction = (name: string) => SheetFunction | undefined;

/** Our functions first, then the built-in ones. */
export const callsOf =
  (find: FindFunction) =>
  (name: string): EagerFunction | undefined => {
    const fn = find(name);
    return fn ? (args) => invoke(fn, args) : nativeFunction(name);
  };

/** Calculates a formula with a table of functions and the built-in ones; cells and names come from the resolver. */
export const evaluateBy =
  (find: FindFunction) =>
  (formula: string, resolver: Resolver = {}): Operand =>
    evaluateWith(formula, { call: callsOf(find), ...resolver });
