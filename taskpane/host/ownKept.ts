import type { RangeCells } from '../../shared/records';
import { gridFrom } from './reading/cells';
import { withExcel } from './excelErrors';

/**
 * What the workbook keeps for the check of records: meanings of columns among its settings, own rates on a
 * sheet.
 */

const KEY = 'spawnbook.columns';
const PANE_KEY = 'spawnbook.pane';
/** Of the part a file brings its settings in; a test holds it to what is written. */
const NAMESPACE = 'urn:spawnbook:settings';
/** A name every sheet of rates brings with it, and the sheet it is on unless somebody renamed it. */
const RATES_NAME = 'rate_latency_offset';
const RATES_SHEET = 'Rates';
/** A sheet of rates is some forty rows; a bigger one of that name is something else. */
const MOST_CELLS = 20_000;

/**
 * A file of the local sheet brings its settings in a part of their own. They become settings of the workbook,
 * where those of the same name are newer, and the part goes; in a workbook that cannot be changed they are
 * only read.
 */
async function fromFile(context: Excel.RequestContext, key: string): Promise<unknown> {
  const { customXmlParts, settings } = context.workbook;
  const part = customXmlParts.getByNamespace(NAMESPACE).getOnlyItemOrNullObject();
  part.load('id');
  settings.load('items/key');
  await context.sync();
  if (part.isNullObject) return undefined;
  const xml = part.getXml();
  await context.sync();
  const { settingsOfXml } = await import('../../shared/files/settings');
  const kept = settingsOfXml(xml.value);
  const present = new Set(settings.items.map((one) => one.key));
  try {
    for (const [name, text] of Object.entries(kept)) if (!present.has(name)) settings.add(name, text);
    part.delete();
    await context.sync();
  } catch {
    // Read only: the next time they are read from the part again.
  }
  return kept[key];
}

/** undefined when nothing was kept. It may be anything: whoever reads it judges. */
const recallKey = (key: string): Promise<unknown> =>
  withExcel(async (context) => {
    const kept = context.workbook.settings.getItemOrNullObject(key);
    kept.load('value');
    await context.sync();
    return kept.isNullObject ? fromFile(context, key) : (kept.value as unknown);
  });

export const recall = (): Promise<unknown> => recallKey(KEY);
/** Forms, readings and choices of the pane, as it put them there. */
export const recallPane = (): Promise<unknown> => recallKey(PANE_KEY);

const rememberKey = (key: string, text: string | undefined): Promise<void> =>
  withExcel(async (context) => {
    const { settings } = context.workbook;
    if (text === undefined) {
      const kept = settings.getItemOrNullObject(key);
      await context.sync();
      if (!kept.isNullObject) kept.delete();
    } else settings.add(key, text);
    await context.sync();
  });
/** Other texts of ours, each under a name of its own. */
export const recallText = (key: string): Promise<unknown> => recallKey(`spawnbook.${key}`);
export const rememberText = (key: string, text: string | undefined): Promise<void> =>
  rememberKey(`spawnbook.${key}`, text);
/** undefined takes it away. */
export const remember = (text: string | undefined): Promise<void> => rememberKey(KEY, text);
export const rememberPane = (text: string): Promise<void> => rememberKey(PANE_KEY, text);

async function sheetOfName(context: Excel.RequestContext): Promise<string | undefined> {
  const name = context.workbook.names.getItemOrNullObject(RATES_NAME);
  await context.sync();
  if (name.isNullObject) return undefined;
  const range = name.getRangeOrNullObject();
  range.load('address');
  await context.sync();
  if (range.isNullObject) return undefined;
  range.worksheet.load('name');
  await context.sync();
  return range.worksheet.name;
}

/** The sheet of own rates; undefined when the workbook has none. */
export const readRates = (): Promise<RangeCells | undefined> =>
  withExcel(async (context) => {
    const title = (await sheetOfName(context)) ?? RATES_SHEET;
    const sheet = context.workbook.worksheets.getItemOrNullObject(title);
    await context.sync();
    if (sheet.isNullObject) return undefined;
    const used = sheet.getUsedRangeOrNullObject(true);
    sheet.load('name');
    used.load('rowIndex,columnIndex,rowCount,columnCount');
    await context.sync();
    if (used.isNullObject || used.rowCount * used.columnCount > MOST_CELLS) return undefined;
    used.load('values');
    await context.sync();
    return { name: sheet.name, top: used.rowIndex, left: used.columnIndex, values: gridFrom(used.values) };
  });
