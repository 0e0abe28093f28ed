import { BLANK_CHECK } from '../../../shared/functions/blankCheck';
import { PREFIX } from '../../../shared/functions/define';
import { withExcel } from '../excelErrors';
import type { BlankHanding } from '../port';
import { interimNames, noteBegun, noteOf, takeLeftAway } from './unfinished';

/**
 * Asks the host how a blank cell reaches a function, before anything is written: a hidden sheet comes, holds one
 * formula until it is worked out, and goes. What breaks off is noted as every writing is, and never stops what was
 * asked for: then it stays unknown.
 */

/** Asked for so often, so many milliseconds apart: functions of add-ins answer late. */
const TRIES = 20; // chosen here, no source
const APART = 100;
const later = (): Promise<void> =>
  new Promise((go) => {
    setTimeout(go, APART);
  });
const QUESTION = `=${PREFIX}.${BLANK_CHECK}(B1,ISBLANK(B1))`;
const TITLE = 'How blank cells reach a function';

/** The range of the question; undefined when something of an earlier writing stands, which is asked about first. */
async function begin(context: Excel.RequestContext): Promise<Excel.Range | undefined> {
  const { worksheets } = context.workbook;
  const earlier = noteOf(context);
  worksheets.load('items/name');
  await context.sync();
  if (!earlier.isNullObject) return undefined;
  const [name = ''] = interimNames(
    { title: TITLE, names: [], sheets: [{ name: TITLE, cells: {}, widths: [] }] },
    worksheets.items.map((sheet) => sheet.name),
  );
  noteBegun(context, { title: TITLE, sheets: [name], ids: [], names: [] });
  const sheet = worksheets.add(name);
  sheet.visibility = 'Hidden';
  const cell = sheet.getRange('A1');
  cell.formulas = [[QUESTION]];
  await context.sync();
  return cell;
}

async function ask(wait: () => Promise<void>): Promise<BlankHanding> {
  let isBegun = false;
  try {
    return await withExcel(async (context) => {
      isBegun = true;
      const cell = await begin(context);
      isBegun = cell !== undefined;
      if (!cell) return 'unknown';
      for (let i = 0; i < TRIES; i++) {
        await wait();
        cell.load('values');
        await context.sync();
        const value: unknown = cell.values[0]?.[0];
        if (value === 'kept' || value === 'zero') return value;
      }
      return 'unknown';
    });
  } finally {
    // Once more where a passing hindrance stopped it.
    if (isBegun) await takeLeftAway().catch(takeLeftAway);
  }
}

export const askBlanks = (wait: () => Promise<void> = later): Promise<BlankHanding> =>
  ask(wait).catch((): BlankHanding => 'unknown');
