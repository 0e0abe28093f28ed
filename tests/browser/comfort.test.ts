import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Session } from './support/localSheet';
import { ask, openExample, openLocalSheet, OUT, picture, typeInto, until } from './support/localSheet';

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
