import type { WorkbookModel } from '../../../shared/sheet/workbook/model';

/** Names of the examples, by what they show and in each language they are written in; fetched when one is opened. */
export const EXAMPLES = [
  {
    id: 'season',
    title: 'One run for one order, from brood fish to sale',
    fr: 'Une ponte pour une commande, des géniteurs à la vente',
  },
  {
    id: 'whole-season',
    title: 'A season of three orders in three vats',
    fr: 'Une saison de trois commandes dans trois bacs',
  },
  {
    id: 'water',
    title: 'A week of water readings with a limit',
    fr: 'Une semaine de mesures d’eau avec une limite',
  },
] as const;
export type ExampleId = (typeof EXAMPLES)[number]['id'];

/** An empty workbook. */
export const blank = (): WorkbookModel => ({
  title: 'Workbook',
  sheets: [{ name: 'Sheet1', widths: [], cells: {} }],
  names: [],
});

/** The title of an example for a reader of a language. */
export const titleFor = (example: (typeof EXAMPLES)[number], language: string): string =>
  /^fr\b/i.test(language) ? example.fr : example.title;
