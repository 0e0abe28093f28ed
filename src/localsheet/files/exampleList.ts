import type { WorkbookModel } from '../../../shared/sheet/workbook/model';

/** Names of the examples, by what they show; the builders are fetched when one is opened. */
export const EXAMPLES = [
  { id: 'season', title: 'One run for one order, from brood fish to sale' },
  { id: 'whole-season', title: 'A season of three orders in three vats' },
  { id: 'water', title: 'A week of water readings with a limit' },
] as const;
export type ExampleId = (typeof EXAMPLES)[number]['id'];

/** An empty workbook. */
export const blank = (): WorkbookModel => ({
  title: 'Workbook',
  sheets: [{ name: 'Sheet1', widths: [], cells: {} }],
  names: [],
});
