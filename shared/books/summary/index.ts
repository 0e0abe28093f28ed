import { PRODUCTS } from '../../run/fields';
import type { NameKey } from '../../run/results';
import { nameOf } from '../../run/results';
import type { WorkbookModel } from '../../sheet/workbook/model';
import { assumptionKeys, NEEDED } from './content';
import { ENDS, PlanPlaces, planSuffixes } from './places';
import { summarySheet } from './sheet';

export type Summary = { readonly model: WorkbookModel } | { readonly fault: string };

const NO_PLAN =
  'There is no season plan in this workbook. Write one on the screen Plan, then add the summary.';

function faultOf(places: PlanPlaces): string | undefined {
  const product = PRODUCTS.find((one) => one === places.value('product'));
  if (!product)
    return `The plan in this workbook does not say whether it sells ${PRODUCTS.join(' or ')}. Write the plan anew, then add the summary.`;
  const keys: readonly NameKey[] = [...NEEDED, ...assumptionKeys(product)];
  const missing = keys.find((key) => !places.has(key));
  if (missing !== undefined)
    return `The plan in this workbook lacks the name ${nameOf(missing, places.suffix)}, so the summary cannot follow it. Write the plan anew, then add the summary.`;
  const heads = ENDS.map((head, i) => places.headingOf('hatch', 2 + i) === head);
  return heads.every(Boolean)
    ? undefined
    : 'The sheet of assumptions was rearranged, so their poor and good ends cannot be ' +
        'found. Write the plan anew, then add the summary.';
}

/**
 * One page for each season plan of a workbook, as sheets to be written into that workbook: native formulas
 * over the plan's names.
 */
export function summaryOf(book: WorkbookModel): Summary {
  const plans = planSuffixes(book).map((suffix) => new PlanPlaces(book, suffix));
  if (plans.length === 0) return { fault: NO_PLAN };
  const fault = plans.map(faultOf).find((one) => one !== undefined);
  if (fault !== undefined) return { fault };
  return { model: { title: 'The season on one page', sheets: plans.map(summarySheet), names: [] } };
}
