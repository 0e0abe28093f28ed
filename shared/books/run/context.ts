import type { NameModel, SheetModel } from '../../sheet/workbook/model';
import { SheetBuilder } from '../../sheet/workbook/build';
import type { NameKey } from '../../run/results';
import { nameOf, named } from '../../run/results';
import type { OneRunPlan } from '../../run/season';

/**
 * What the sheets of one workbook share: the plan, the names they define and use, and the suffix of a second
 * plan.
 */
export class Book {
  readonly names: NameModel[] = [];
  constructor(
    readonly plan: OneRunPlan,
    readonly suffix: string,
  ) {}

  sheet(title: SheetTitle, layout: Omit<SheetModel, 'name' | 'cells'>): SheetBuilder {
    return new SheetBuilder(this.suffix ? `${title}${this.suffix.replaceAll('_', ' ')}` : title, {
      isProtected: true,
      hasGridlines: false,
      ...layout,
      print: { footer: `${this.plan.form.hatchery} · season plan`, ...layout.print },
    });
  }

  define(key: NameKey, refersTo: string): void {
    this.names.push({ name: nameOf(key, this.suffix), refersTo });
  }

  /** A formula with {key} in place of the names. */
  readonly fx = (formula: string): string => named(formula, this.suffix);
}

export const SHEET_TITLES = [
  'Start',
  'Calendar',
  'Chain',
  'Stages',
  'Brood',
  'Water',
  'Feed',
  'Assumptions',
  'Notes',
] as const;
export type SheetTitle = (typeof SHEET_TITLES)[number];

export const MOMENT = 'ddd d mmm yyyy hh:mm';
export const DAY = 'ddd d mmm yyyy';
export const WHOLE = '#,##0';
