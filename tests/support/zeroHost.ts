import { findFunction } from '../../shared/catalogue';
import type { Cell } from '../../shared/base/values';
import { isGrid } from '../../shared/base/values';
import type { EagerFunction } from '../../shared/sheet/formula';
import { callsOf } from '../../shared/sheet/formula';

/**
 * Calls as a build of Excel makes them that hands a blank cell to a custom function as 0 (OfficeDev/office-js
 * issues 1951, 4702 and 5262, seen 2021 to 2025). An argument left out stays left out.
 */
const zeroed = (cell: Cell): Cell => cell ?? 0;

export const zeroHostCalls = (name: string): EagerFunction | undefined => {
  const call = callsOf(findFunction)(name);
  if (!call || !findFunction(name)) return call;
  return (args) =>
    call(
      args.map((arg) =>
        arg === undefined ? undefined : isGrid(arg) ? arg.map((line) => line.map(zeroed)) : zeroed(arg),
      ),
    );
};
