/** The words by which a page is found and read again, whatever language the copy was made in. */
export interface PageWords {
  /** Name of its sheet, at most 31 letters. */
  readonly name: string;
  /** In its first cell. */
  readonly title: string;
  readonly labels: {
    readonly format: string;
    readonly workbook: string;
    readonly date: string;
    readonly seal: string;
    readonly sheets: string;
    readonly sources: string;
    readonly lines: string;
    readonly others: string;
    readonly people: string;
  };
  /** Second heading of the lines and of the sheets, by which the tables are known. */
  readonly cells: string;
  readonly typed: string;
  /** What a frozen formula became. */
  readonly value: string;
}

export const PAGE_WORDS = {
  en: {
    name: 'Where numbers come from',
    title: 'Where the numbers in this copy come from',
    labels: {
      format: 'Made with',
      workbook: 'Workbook',
      date: 'Copy made on',
      seal: 'Digest of everything',
      sheets: 'Sheet by sheet',
      sources: 'Sources of the methods',
      lines: 'Numbers worked out by Spawnbook',
      others: 'Also changed in this copy',
      people: 'What this copy may still tell of people',
    },
    cells: 'Cells',
    typed: 'Digest of typed cells',
    value: 'value',
  },
  fr: {
    name: 'D’où viennent les nombres',
    title: 'D’où viennent les nombres de cette copie',
    labels: {
      format: 'Fait avec',
      workbook: 'Classeur',
      date: 'Copie faite le',
      seal: 'Empreinte de tout',
      sheets: 'Feuille par feuille',
      sources: 'Sources des méthodes',
      lines: 'Nombres calculés par Spawnbook',
      others: 'Aussi changé dans cette copie',
      people: 'Ce que cette copie peut encore dire de personnes',
    },
    cells: 'Cellules',
    typed: 'Empreinte des cellules tapées',
    value: 'valeur',
  },
} as const satisfies Readonly<Record<string, PageWords>>;

export type PageLanguage = keyof typeof PAGE_WORDS;
const ALL: readonly PageWords[] = Object.values(PAGE_WORDS);
export const wordsOfTitle = (title: string | undefined): PageWords | undefined =>
  ALL.find((words) => words.title === title);
export const isPageName = (sheet: string): boolean => ALL.some(({ name }) => sheet.startsWith(name));
export const isSeal = (label: string | undefined): boolean => ALL.some(({ labels }) => labels.seal === label);
