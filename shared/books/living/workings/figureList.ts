import type { Assumption, AssumptionKey } from '../../../families/assumptions';
import { assumptionList } from '../../../families/assumptions';

/** Headings of the sheet, by which it is read back. */
export const FIGURE_HEADINGS = [
  'Figure',
  'Value',
  'Unit',
  'Poor',
  'Good',
  'Whose',
  'Where ours is from',
  'Note',
] as const;
export const SPREAD_HEADINGS = [
  'How much it varies',
  'Between runs',
  'Between seasons',
  'Between females',
] as const;
export const EGGS_VARY = 'Eggs of a female (of the logarithm)';
/** Asked of a plan of one run only. */
const UNUSED: ReadonlySet<string> = new Set(['orderDays']);
export const FIGURES: readonly Assumption<AssumptionKey>[] = assumptionList.filter(
  ({ key }) => !UNUSED.has(key),
);
