import type { Cell } from '../../base/values';
import { addressOf, parseAddress } from '../formula/address';
import type { SheetModel } from './model';

/** The values of a sheet as rows from A1 on, null where nothing stands. */
export function gridOf({ name, cells }: SheetModel): { readonly name: string; readonly values: Cell[][] } {
  const places = Object.keys(cells).flatMap((address) => parseAddress(address) ?? []);
  const rows = places.reduce((most, { row }) => Math.max(most, row + 1), 0);
  const columns = places.reduce((most, { column }) => Math.max(most, column + 1), 0);
  const row = (r: number): Cell[] =>
    Array.from({ length: columns }, (_, c): Cell => cells[addressOf(r, c)]?.value ?? null);
  return { name, values: Array.from({ length: rows }, (_, r) => row(r)) };
}
