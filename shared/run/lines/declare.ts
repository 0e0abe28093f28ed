import type { Quantity } from '../../units/quantities';

/**
 * A figure of a run, declared once. Its formula names other lines, what is given and SPAWN functions; {key}
 * stands for one of them. The engine, the cells of every workbook and the tests are derived from the text.
 */
export interface RunLine {
  readonly label: string;
  readonly quantity: Quantity;
  readonly formula: string;
  readonly note?: string;
  /** Keys of shared/families/sources.ts, where the rule itself has a source. */
  readonly sources?: readonly string[];
}
/** What lines may name without its being one: typed in, chosen by the plan, or a figure. */
export interface LineGivens {
  readonly label: string;
  readonly quantity: Quantity;
}

export const line = (
  label: string,
  quantity: Quantity,
  formula: string,
  more: Partial<RunLine> = {},
): RunLine => ({
  label,
  quantity,
  formula,
  ...more,
});
export const given = (label: string, quantity: Quantity): LineGivens => ({ label, quantity });

/** Fills the places of a formula; a sheet says where each key stands on its own row. */
export const filled = (formula: string, where: (key: string) => string): string =>
  formula.replace(/\{(\w+)\}/g, (_, key: string) => where(key));

/** Monday of the week a day lies in, as a formula; serial 2 stands for a Monday. */
export const mondayText = (day: string): string => `INT(${day})-MOD(INT(${day})-2,7)`;
/** A number somebody counted, or what follows without it. */
export const countedOr = (counted: string, otherwise: string): string =>
  `=IF(ISNUMBER({${counted}}),{${counted}},${otherwise})`;
/** The hour of a batch that is under way stays as it was; of one that is planned it follows the water. */
export const asWas = (was: string, otherwise: string): string =>
  `=IF(ISNUMBER({${was}}),{${was}},${otherwise})`;
