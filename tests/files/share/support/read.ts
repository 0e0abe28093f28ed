import { readXlsx } from 'hucre/xlsx';

/** Values of all cells as an independent reader sees them, by Sheet!A1. */
export async function valuesOf(file: Uint8Array): Promise<Map<string, unknown>> {
  const book = await readXlsx(file);
  const found = new Map<string, unknown>();
  for (const sheet of book.sheets) {
    for (const [row, line] of sheet.rows.entries())
      for (const [column, value] of line.entries()) {
        if (value === null || value === '') continue;
        found.set(`${sheet.name}!${row + 1},${column + 1}`, value instanceof Date ? value.getTime() : value);
      }
  }
  return found;
}

export function differences(
  a: ReadonlyMap<string, unknown>,
  b: ReadonlyMap<string, unknown>,
  skip = '',
  tolerance = 1e-12,
): string[] {
  const out: string[] = [];
  for (const [place, value] of a) {
    if (skip && place.startsWith(`${skip}!`)) continue;
    const other = b.get(place);
    const same =
      typeof value === 'number' && typeof other === 'number'
        ? Math.abs(value - other) <= tolerance * Math.max(1, Math.abs(value))
        : value === other;
    if (!same) out.push(`${place}: ${String(value)} → ${String(other)}`);
  }
  for (const place of b.keys())
    if (!a.has(place) && !(skip && place.startsWith(`${skip}!`))) out.push(`${place}: new`);
  return out;
}
