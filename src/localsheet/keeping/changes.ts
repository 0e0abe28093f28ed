import { CommandType } from '@univerjs/core';

/** What a command of the engine changed, for keeping. */
export interface CommandInfo {
  readonly id: string;
  readonly type?: CommandType;
  readonly params?: object;
}
export interface KeptChange {
  readonly sheets: readonly string[];
  /** By a person or the pane, not by the calculation. */
  readonly isTyped: boolean;
}

/** Mutations that change nothing to keep: the course of a calculation, and what its editor does. */
const PASSING = /^(formula\.mutation\.|doc\.|sheet\.mutation\.(set-array-formula-data|.*calculation))/;

export function changedBy({ id, type, params }: CommandInfo, isCalculated: boolean): KeptChange | undefined {
  if (type !== CommandType.MUTATION || PASSING.test(id)) return undefined;
  const { subUnitId } = (params ?? {}) as { subUnitId?: unknown };
  return { sheets: typeof subUnitId === 'string' ? [subUnitId] : [], isTyped: !isCalculated };
}
