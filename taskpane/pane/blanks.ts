import type { Doors } from './command';
import type { BlankHanding } from '../host/port';

/**
 * How this Excel hands a blank cell to a function, found out once a session: the functions may have seen it
 * already; else the workbook is asked before something is written into it, or when it is looked through.
 */

const asked = new WeakMap<Doors['workbook'], Promise<BlankHanding>>();

export async function blanksOf({
  workbook,
  errors,
}: Pick<Doors, 'workbook' | 'errors'>): Promise<BlankHanding> {
  if (errors.blanks !== 'unknown') return errors.blanks;
  let answer = asked.get(workbook);
  if (!answer) asked.set(workbook, (answer = workbook.askBlanks().catch((): BlankHanding => 'unknown')));
  const found = await answer;
  return errors.blanks === 'unknown' ? found : errors.blanks;
}

export const BLANK_AS_ZERO =
  'This Excel hands a blank cell to functions as 0. Workbooks made here are safe from it. In your own ' +
  'formulas write IF(B2="","",B2) in place of B2 where a cell may stay blank.';
