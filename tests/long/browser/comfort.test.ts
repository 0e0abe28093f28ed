import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Session } from '../../browser/support/localSheet';
import {
  ask,
  openExample,
  openLocalSheet,
  OUT,
  picture,
  typeInto,
  until,
} from '../../browser/support/localSheet';

/** What the sheet does for the person at it: formats, sentences, the list of functions, undo, paper. */

let session: Session;
beforeAll(async () => {
  session = await openLocalSheet();
});
afterAll(async () => {
  await session.close();
});

test('an answer takes the format of what it is where the cell has none; a chosen format stays', async () => {
  const { page } = session;
  await typeInto(page, 'A1', '=SPAWN.BUFFER.DOSE(1000,4.6,7)');
  expect(await ask(page, 'getText', 'A1')).toMatch(/^\d+\.\d\d$/);
  await typeInto(page, 'A2', '=SPAWN.HATCH.TIME(46100.5,27)');
  // 18 March 2026 is day 46,099 of the sheet's calendar (Excel's own serial).
  expect(await ask(page, 'getText', 'A2')).toMatch(/^\d+ Mar 2026 \d\d:\d\d$/);
  await typeInto(page, 'A3', '=SPAWN.AMMONIA.SHARE(8,25)');
  expect(await ask(page, 'getText', 'A3')).toMatch(/^\d\.\d%$/);
  // Part of a larger formula: nobody knows what that is, so nothing is said.
  await typeInto(page, 'A4', '=SPAWN.AMMONIA.SHARE(8,25)*2');
  expect(await ask(page, 'getText', 'A4')).not.toContain('%');
  // Answers that spill, and the lines of a table, take it in every row; what is a text stays one.
  await typeInto(page, 'I5', '46100.5');
  await typeInto(page, 'I6', '46101.5');
  await typeInto(page, 'I8', '=SPAWN.HATCH.TIME(I5:I6,27)');
  await until(async () => /^\d+ Mar 2026 \d\d:\d\d$/.test(await ask(page, 'getText', 'I9')));
  await typeInto(page, 'K1', '=SPAWN.FEED.TABLE(10000,0.02,3,12,0.1)');
  await until(async () => (await ask(page, 'getText', 'K4')) !== '');
  const shown = await Promise.all(['M1', 'M2', 'M4', 'Q4'].map((cell) => ask(page, 'getText', cell)));
  expect(shown[0]).toMatch(/[a-z]/i);
  expect(shown[1]).toMatch(/^[\d ,]+$/);
  expect(shown[2]).toMatch(/^[\d ,]+$/);
  expect(shown[3]).toMatch(/^[\d ,]+(\.\d{1,3})?$/);
  await picture(page, 'answer-formats');
});

test('the sentence of an error stands beside the formula bar while its cell is selected', async () => {
  const { page } = session;
  await typeInto(page, 'C1', '=SPAWN.AMMONIA.SHARE(8,82)');
  await ask(page, 'select', 'C1');
  await page.waitForFunction(() => document.querySelector('#cell-note')?.textContent?.includes('82 °F'));
  await picture(page, 'cell-note');
  await ask(page, 'select', 'A1');
  await page.waitForFunction(() => document.querySelector<HTMLElement>('#cell-note')?.hidden);
});

test('the list of functions replaces nothing that was not chosen', async () => {
  const { page } = session;
  await ask(page, 'select', 'E1');
  await page.keyboard.type('=SPAWN.FEED.TABLE');
  // The list opens a moment after the last key.
  await page.getByText('SPAWN.FEED.TABLE', { exact: true }).last().waitFor();
  await page.keyboard.press('Enter');
  await ask(page, 'waitForCalculation');
  expect(await ask(page, 'getFormula', 'E1')).toBe('=SPAWN.FEED.TABLE');
  // Chosen with an arrow key and Enter it goes in.
  await ask(page, 'select', 'E2');
  await page.keyboard.type('=SPAWN.AMMONIA.SHA');
  await page.getByText('SPAWN.AMMONIA.SHARE', { exact: true }).last().waitFor();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  // The name goes in and the list away a moment later; the editor is a drawing and cannot be asked.
  await page.getByText('SPAWN.AMMONIA.SHARE', { exact: true }).last().waitFor({ state: 'detached' });
  await new Promise((resolve) => {
    setTimeout(resolve, 2000);
  });
  await page.keyboard.type('8,25)');
  await page.keyboard.press('Enter');
  await until(async () => (await ask(page, 'getFormula', 'E2')) !== null);
  expect(await ask(page, 'getFormula', 'E2')).toBe('=SPAWN.AMMONIA.SHARE(8,25)');
});

test('one undo takes back what the pane wrote in several requests', async () => {
  const { page, pane } = session;
  await typeInto(page, 'G1', 'before');
  await pane.evaluate(async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      sheet.getRange('H1').values = [['one']];
      await context.sync();
      sheet.getRange('H2').values = [['two']];
      sheet.getRange('H1:H2').format.font.bold = true;
      await context.sync();
      sheet.getRange('H3').formulas = [['=SUM(1,2)']];
      await context.sync();
    });
  });
  expect(await ask(page, 'getValues', 'H1:H3')).toEqual([['one'], ['two'], [3]]);
  await ask(page, 'select', 'G1');
  await page.keyboard.press('Control+z');
  await until(async () => (await ask(page, 'getValue', 'H3')) === null);
  expect(await ask(page, 'getValues', 'G1:H3')).toEqual([
    ['before', null],
    [null, null],
    [null, null],
  ]);
});

test('a sheet goes to paper with its values, title rows and page set-up', async () => {
  const { page } = session;
  await openExample(page, 'season');
  await ask(page, 'activate', 'Calendar');
  const shown = await ask(page, 'getText', 'A1');
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  await page.click('#print');
  await page.waitForSelector('#print-area table', { state: 'attached' });
  const file = join(OUT, 'printed.pdf');
  writeFileSync(file, await page.pdf({ preferCSSPageSize: true, printBackground: true }));
  const text = execFileSync('pdftotext', ['-layout', file, '-']).toString();
  expect(text).toContain(shown);
  const dates = (await ask(page, 'getValues', 'A1:F40')).flat().filter((v) => typeof v === 'number');
  expect(dates.length).toBeGreaterThan(5);
  // Sizes as poppler reads them off the file: A4.
  const info = execFileSync('pdfinfo', [file]).toString();
  expect(info).toMatch(/Page size:\s+(594|595|841|842)[\d.]* x (594|595|841|842)/);
  // The buttons of the page are not on the paper.
  expect(text).not.toContain('Workbooks…');
});

/**
 * A stand-in for the browser's list of files, which only a person can press: the file lies in memory, with the
 * methods of the File System Access specification that the page uses.
 */
async function layFile(isReadOnly: boolean): Promise<void> {
  const { bytes } = await ask(session.page, 'saveFile');
  await session.page.evaluate(
    ([content, readOnly]) => {
      const disk = { bytes: Uint8Array.from(content), modified: 1000, writes: 0 };
      const handle = {
        name: 'Mine.xlsx',
        getFile: () => Promise.resolve(new File([disk.bytes], 'Mine.xlsx', { lastModified: disk.modified })),
        queryPermission: () => Promise.resolve(readOnly ? 'denied' : 'prompt'),
        requestPermission: () => Promise.resolve(readOnly ? 'denied' : 'granted'),
        createWritable: () => {
          let next = new Uint8Array();
          return Promise.resolve({
            write: (data: Uint8Array<ArrayBuffer>) => {
              next = data;
              return Promise.resolve();
            },
            close: () => {
              Object.assign(disk, { bytes: next, modified: disk.modified + 1, writes: disk.writes + 1 });
              return Promise.resolve();
            },
            abort: () => Promise.resolve(),
          });
        },
      };
      Object.assign(window, { disk, showOpenFilePicker: () => Promise.resolve([handle]) });
    },
    [Object.values(bytes as unknown as Record<string, number>), isReadOnly] as const,
  );
}
const writes = (): Promise<number> =>
  session.page.evaluate(() => (window as unknown as { disk: { writes: number } }).disk.writes);
async function openMine(): Promise<void> {
  await session.page.click('#open');
  await session.page.getByText('Mine.xlsx is open.').waitFor();
}

test('a file opened from the disk is saved back into it; changed elsewhere, the page asks first', async () => {
  const { page } = session;
  await ask(page, 'newBook');
  await typeInto(page, 'A1', '1');
  await layFile(false);
  await openMine();
  await typeInto(page, 'A1', '2');
  await page.click('#save');
  await page.getByText('Mine.xlsx is saved.').waitFor();
  expect(await writes()).toBe(1);
  await openMine();
  expect(await ask(page, 'getValue', 'A1')).toBe(2);
  // Another program writes to it meanwhile: a copy goes to the downloads unless the person wants otherwise.
  await page.evaluate(() => {
    (window as unknown as { disk: { modified: number } }).disk.modified += 5;
  });
  await page.click('#save');
  await page.getByText('Mine.xlsx was changed elsewhere').waitFor();
  const download = page.waitForEvent('download');
  await page.click('#dialog-no');
  expect((await download).suggestedFilename()).toMatch(/\.xlsx$/);
  expect(await writes()).toBe(1);
  await page.click('#save');
  await page.click('#dialog-yes');
  await page.getByText('Mine.xlsx is saved.').waitFor();
  expect(await writes()).toBe(2);
});

test('where the person does not let the page write, the file goes to the downloads', async () => {
  const { page } = session;
  await layFile(true);
  await openMine();
  const download = page.waitForEvent('download');
  await page.click('#save');
  await download;
  expect(await writes()).toBe(0);
  await page.evaluate(() => {
    Object.assign(window, { showOpenFilePicker: undefined });
  });
  // A browser without it shows its own list of files.
  const chooser = page.waitForEvent('filechooser');
  await page.click('#open');
  await chooser;
});

test('no serious finding in the bar, the start list and the toolbar (axe-core)', async () => {
  const { page } = session;
  await page.evaluate(readFileSync('node_modules/axe-core/axe.min.js', 'utf8'));
  const found = await page.evaluate(async () => {
    const axe = (window as unknown as { axe: { run: (at: unknown, options: unknown) => Promise<unknown> } })
      .axe;
    return axe.run(
      { include: [['.bar'], ['#sheet']], exclude: [['canvas']] },
      { runOnly: ['wcag2a', 'wcag2aa'] },
    );
  });
  const { violations } = found as {
    violations: { id: string; impact: string; nodes: { html: string }[] }[];
  };
  const serious = violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 140)).join(' | ')}`);
  expect(serious).toEqual([]);
});

test('nothing went wrong unseen', () => {
  expect(session.trouble).toEqual([]);
});
