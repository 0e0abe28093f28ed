import { findFunction } from '../../catalogue';
import { invoke } from '../../functions/invoke';
import type { EagerFunction, Operand, Resolver } from './evaluate';
import { evaluateWith } from './evaluate';
import { nativeFunction } from './natives';

export type { EagerFunction, Operand, Resolver };

/** Our functions first, then the built-in ones. */
export const callFunction = (name: string): EagerFunction | undefined => {
  const fn = findFunction(name);
  return fn ? (args) => invoke(fn, args) : nativeFunction(name);
};

/**
 * Calculates a formula with the catalogue and the built-in functions; cells and names come from the resolver.
 */
export const evaluate = (formula: string, resolver: Resolver = {}): Operand =>
  evaluateWith(formula, { call: callFunction, ...resolver });
