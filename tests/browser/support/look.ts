import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { openLocalSheet, OUT } from './localSheet';
import { LOOKS, WIDTHS } from './looks';
import { walkOf } from './states';

/**
 * Every state of the pane at three widths, light, dark and in forced colours, as pictures to be looked at, and
 * how far question and answer lie apart: `node src/build/run.mjs tests/browser/support/look.ts [language]`.
 */

const language = process.argv[2] ?? 'en';
const into = join(OUT, `look-${language}`);
mkdirSync(into, { recursive: true });
const session = await openLocalSheet();
const profile = mkdtempSync(join(tmpdir(), 'spawnbook-look-'));
const context = await chromium.launchPersistentContext(profile, {
  executablePath: '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--no-first-run'],
  headless: true,
  viewport: { width: 360, height: 640 },
  locale: language,
});
try {
  const page = await context.newPage();
  await page.goto(`${session.url}taskpane.html`);
  await page.waitForSelector('#start-order');
  const far: string[] = [];
  for (const [name, go] of walkOf(page).states) {
    try {
      await go();
      await page.waitForSelector('.page > :not(.wait)');
      await page.waitForTimeout(300);
      const heights = await page.evaluate(() => ({
        whole: document.documentElement.scrollHeight,
        apart: (() => {
          const answer = document.querySelector(
            '#card-answer, #plan-answer, #function-answer, #function-list',
          );
          const asked = document.querySelector('.pad, #plan-wanted, #function-search, [id^=argument-]');
          if (!answer || !asked) return 0;
          const [a, q] = [answer.getBoundingClientRect(), asked.getBoundingClientRect()];
          return Math.max(a.bottom, q.bottom) - Math.min(a.top, q.top);
        })(),
      }));
      far.push(`${name}: whole ${heights.whole}, question to answer ${Math.round(heights.apart)}`);
      for (const [look, media] of Object.entries(LOOKS)) {
        await page.emulateMedia(media);
        for (const [width, height] of WIDTHS) {
          await page.setViewportSize({ width, height });
          await page.screenshot({
            path: join(into, `${width}-${look}-${name.replace(/\W+/g, '-')}.png`),
          });
        }
      }
      await page.emulateMedia(LOOKS.light);
      await page.setViewportSize({ width: 360, height: 640 });
    } catch (error) {
      far.push(`${name}: ${String(error).slice(0, 200)}`);
    }
  }
  writeFileSync(join(into, 'heights.txt'), far.join('\n'));
  console.log(far.join('\n'));
} finally {
  await context.close();
  rmSync(profile, { recursive: true, force: true });
  await session.close();
}
