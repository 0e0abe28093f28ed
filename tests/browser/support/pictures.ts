import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Frame, Page } from 'playwright-core';
import { ask, launchPhone, openLocalSheet } from './localSheet';

// `npm run pictures`: the pictures of README and the guides, taken from the program itself. Run it after a
// change of looks, and look at them.
const README = 'templates/pictures';
const GUIDES = 'taskpane/help/pictures';
const WIDTH = 1280;
const HEIGHT = 760;
/** Longest wait for a plan or a written season on a busy machine. */
const PATIENCE = 240_000;
const SETTLE = 2500;

async function season(page: Page, pane: Frame): Promise<void> {
  await pane.click('#place-plan');
  await pane.click('#mode-season', { force: true });
  await pane.click('#season-example');
  await pane.click('#season-plan');
  await pane.waitForSelector('#season-promise', { timeout: PATIENCE });
  await page.waitForTimeout(SETTLE);
  await page.screenshot({ path: `${GUIDES}/season-plan.png` });
  await pane.click('#season-write');
  await page.waitForFunction(
    async () => ((await window.spawnbook?.getSheetNames()) ?? []).some((name) => name.startsWith('Checks')),
    undefined,
    { timeout: PATIENCE },
  );
  // Charts come last; the word of the pane tells that all is written.
  await pane.waitForSelector('.notice', { timeout: PATIENCE });
  await page.waitForTimeout(SETTLE);
  const names = await ask(page, 'getSheetNames');
  await ask(page, 'activate', names.find((name) => name.startsWith('Today')) ?? 'Today');
  await page.waitForTimeout(SETTLE);
  await page.screenshot({ path: `${README}/season.png` });
}

async function formulas(page: Page, pane: Frame): Promise<void> {
  await ask(page, 'newBook');
  const cells: readonly (readonly [string, string])[] = [
    ['A1', 'Vat'],
    ['B1', 'pH'],
    ['C1', '°C'],
    ['D1', 'Poisonous ammonia'],
    ['A2', 'North'],
    ['B2', '7.4'],
    ['C2', '26.5'],
    ['A3', 'South'],
    ['B3', '8.1'],
    ['C3', '27'],
    ['A4', 'Shed'],
    ['B4', '74'],
    ['C4', '26'],
    ['D2', '=SPAWN.AMMONIA.SHARE(B2:B4, C2:C4)'],
  ];
  for (const [address, text] of cells) await ask(page, 'setFormula', address, text);
  await ask(page, 'select', 'D2');
  await pane.click('#place-why');
  await pane.click('#part-cell');
  await page.waitForTimeout(SETTLE);
  await page.screenshot({ path: `${GUIDES}/formulas.png` });
}

async function phone(url: string): Promise<void> {
  const profile = mkdtempSync(join(tmpdir(), 'spawnbook-phone-'));
  const context = await launchPhone(profile);
  try {
    const page = await context.newPage();
    await page.goto(`${url}taskpane.html?place=vat`);
    await page.click('#card-dose');
    await page.waitForTimeout(SETTLE);
    await page.screenshot({ path: `${GUIDES}/vat-start.png` });
  } finally {
    await context.close();
    rmSync(profile, { recursive: true, force: true });
  }
}

mkdirSync(README, { recursive: true });
mkdirSync(GUIDES, { recursive: true });
const session = await openLocalSheet({ width: WIDTH, height: HEIGHT });
session.page.context().setDefaultTimeout(PATIENCE);
try {
  await season(session.page, session.pane);
  await formulas(session.page, session.pane);
  await phone(session.url);
} finally {
  await session.close();
}
