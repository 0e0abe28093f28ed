/** `name` under a table of sheet names: as it is in the table, or with a word put behind that name. */
export function sheetNameOf(table: Readonly<Record<string, string>>, name: string): string {
  const whole = table[name];
  if (whole !== undefined) return whole;
  const stem = Object.keys(table).find((one) => name.startsWith(`${one} `));
  return stem === undefined ? name : `${table[stem] ?? stem}${name.slice(stem.length)}`;
}

/** Name of the first sheet of a season's book by language: by it a book is known before its words are fetched. */
export const FIRST_SHEETS = { en: 'Today', fr: 'Aujourd’hui' } as const;
