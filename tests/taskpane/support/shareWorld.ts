import { strFromU8, unzipSync } from 'fflate';
import { writeXlsx } from '../../../shared/files';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import { simpleBook } from '../../files/share/support/parts';
import type { FakeWorld } from './fakePort';
import { fakeWorld } from './fakePort';
import type { Page } from './page';
import { openPage } from './page';
import { seasonModel, wholeSeasonModel } from './seasonModel';

/** Workbooks to share, and the screen driven as a user drives it. */

/** A plan, and beside it a list of buyers somebody typed. */
export const BUYERS: WorkbookModel['sheets'][number] = {
  name: 'Buyers',
  widths: [],
  cells: {
    A1: { value: 'Who buys' },
    A3: { value: 'Buyer' },
    B3: { value: 'Telephone' },
    C3: { value: 'Fish' },
    A4: { value: 'Mill Pond Farm' },
    B4: { value: '0555 0142' },
    C4: { value: 20_000 },
    A5: { value: 'Reed Bank' },
    B5: { value: '0555 0177' },
    C5: { value: 15_000 },
    C6: { formula: '=SUM(C4:C5)', value: 35_000 },
  },
};
export const seasonFile = (): Uint8Array => {
  const model = seasonModel();
  return writeXlsx({ ...model, sheets: [...model.sheets, BUYERS] });
};
/** With every sheet: what reads a plan back needs them all. */
export const wholeSeasonFile = (): Uint8Array => writeXlsx(wholeSeasonModel());
export const withFile = (bytes: Uint8Array, name = 'Season 2027.xlsx'): FakeWorld => {
  const world = fakeWorld();
  world.file = { kind: 'read', name, bytes };
  return world;
};
export async function look(world: FakeWorld): Promise<Page> {
  const page = openPage('ready', world);
  await page.go('share');
  await page.press('Look at this workbook');
  return page;
}
export const tickOf = (page: Page, face: string): HTMLInputElement => {
  const label = page
    .all('label')
    .find((one) => (one.textContent ?? '').replace(/\s+/g, ' ').trim().startsWith(face));
  if (!label)
    throw new Error(
      `no label ${face}; there are ${page
        .all('label')
        .map((one) => one.textContent)
        .join(' | ')}`,
    );
  return page.one(`#${label.getAttribute('for') ?? ''}`) as HTMLInputElement;
};
export const tick = (page: Page, face: string): void => {
  tickOf(page, face).click();
};
export const made = (page: Page): { readonly name: string; readonly bytes: Uint8Array } => {
  const [saved] = page.world.saved;
  if (!saved) throw new Error(`nothing was saved: ${page.text()}`);
  return saved;
};
export const allText = (bytes: Uint8Array): string =>
  Object.entries(unzipSync(Uint8Array.from(bytes)))
    .map(([name, part]) => `${name}\n${strFromU8(part)}`)
    .join('\n');
/** Chooses a file in the hidden field behind a button. */
export async function chooseFile(
  page: Page,
  selector: string,
  name: string,
  bytes: Uint8Array,
): Promise<void> {
  const field = page.one(selector);
  Object.defineProperty(field, 'files', { configurable: true, value: [new File([bytes.slice()], name)] });
  field.dispatchEvent(new Event('change', { bubbles: true }));
  await page.store.idle();
}
export const sheet = (cells: string): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${cells}</sheetData></worksheet>`;
export const STUCK = (): Uint8Array =>
  simpleBook({
    sheets: {
      Log: sheet(
        '<row r="1"><c r="A1" ' +
          't="e"><f>_xldudf_SPAWN_AMMONIA_SHARE(8,25)</f><v>#NAME?</v></c><c ' +
          'r="B1"><f>_xldudf_SPAWN_AMMONIA_SHARE(8,26)</f></c><c ' +
          'r="C1"><f>_xldudf_SPAWN_AMMONIA_SHARE(8,27)</f><v>0.06</v></c></row>',
      ),
    },
  });
