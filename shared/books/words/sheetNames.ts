/** `name` under a table of sheet names: as it is in the table, or with a word put behind that name. */
export function sheetNameOf(table: Readonly<Record<string, string>>, name: string): string {
  const whole = table[name];
  if (whole !== undefined) return whole;
  const stem = Object.keys(table).find((one) => name.startsWith(`${one} `));
  return stem === undefined ? name : `${table[stem] ?? stem}${name.slice(stem.length)}`;
}

/** Name of the first sheet of a season's book by language: by it a book is known before its words are fetched. */
export const FIRST_SHEETS = { en: 'Today', fr: 'Aujourd’hui' } as const;

/** Sheets that the check of records writes: it does not check them itself, in whatever language they stand. */
const CHECK_NAMES = ['Check findings', 'Check reading', 'Rates', 'Trends'] as const;
export const CHECK_SHEETS: Readonly<Record<'fr', Readonly<Record<(typeof CHECK_NAMES)[number], string>>>> = {
  fr: {
    'Check findings': 'Constats du contrôle',
    'Check reading': 'Lecture du contrôle',
    Rates: 'Taux de la ferme',
    Trends: 'Tendances',
  },
};
const OWN_NAMES: readonly string[] = [...CHECK_NAMES, ...Object.values(CHECK_SHEETS).flatMap(Object.values)];
/** With a word behind it, or without one. */
export const isCheckSheet = (name: string): boolean =>
  OWN_NAMES.some(
    (own) => name === own || (name.startsWith(`${own} `) && !name.slice(own.length + 1).includes(' ')),
  );
