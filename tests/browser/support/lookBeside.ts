import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ask, openLocalSheet, OUT } from './localSheet';
import { LOOKS, WIDTHS } from './looks';

/**
 * The states of the pane that need a season in the workbook, at three widths, light, dark and in forced colours:
 * `node src/build/run.mjs tests/browser/support/lookBeside.ts [language]`.
 */

const PATIENCE = 240_000;

const language = process.argv[2] ?? 'en';
const into = join(OUT, `look-beside-${language}`);
mkdirSync(into, { recursive: true });
const session = await openLocalSheet();
const { page, pane } = session;
try {
  await pane.click('#menu-button');
  await pane.click('#place-settings');
  await pane.selectOption('#setting-language', language);
  await pane.click('#place-plan');
  await pane.click('#mode-season', { force: true });
  await pane.click('#season-example');
  await pane.click('#season-plan');
  await pane.waitForSelector('#season-promise', { timeout: PATIENCE });
  await pane.click('#season-write');
  await pane.waitForSelector('.notice', { timeout: PATIENCE });
  const names = await ask(page, 'getSheetNames');
  const batches = names.find((name) => /^(Batches|Lots)/.test(name)) ?? names[0] ?? '';
  const states: readonly (readonly [string, () => Promise<void>])[] = [
    ['today', () => pane.click('#place-today')],
    ['vat', () => pane.click('#place-vat')],
    ['dead', () => pane.click('#card-dead')],
    [
      'why',
      async () => {
        await pane.click('#place-why');
        await pane.click('#part-cell').catch(() => undefined);
        await ask(page, 'select', `'${batches}'!F5`);
      },
    ],
    ['errors', () => pane.click('#part-errors')],
    ['check', () => pane.click('#part-check')],
    [
      'again',
      async () => {
        await pane.click('#place-plan');
        await pane.click('#season-again', { timeout: PATIENCE });
        await pane.waitForSelector('#season-read', { timeout: PATIENCE });
      },
    ],
  ];
  for (const [name, go] of states) {
    await page.setViewportSize({ width: 1366, height: 768 });
    await go().catch((error: unknown) => {
      console.log(`${name}: ${String(error)}`);
    });
    await page.waitForTimeout(1500);
    for (const [width, height] of WIDTHS) {
      await page.setViewportSize({ width, height });
      for (const [look, media] of Object.entries(LOOKS)) {
        await page.emulateMedia(media);
        await page.waitForTimeout(250);
        writeFileSync(join(into, `${width}-${look}-${name}.png`), await page.screenshot());
      }
    }
  }
} finally {
  await session.close();
}
