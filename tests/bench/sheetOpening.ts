import { build } from 'esbuild';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { BrowserContext, CDPSession, Page } from 'playwright-core';
import { pageBundle } from '../../src/build/sheet/bundle';
import { ask, freshBrowser, untilReady } from '../browser/support/localSheet';
import type { Timing } from './catalogue';

/**
 * Main-thread seconds (TaskDuration of the browser's own metrics) of the local sheet, each beside the engine's
 * own blank page in the same minute: a busy machine slows both.
 */
const SEASON = 'templates/season-commercial.xlsx';
/** An input that some five thousand of the 34,510 formulas hang on. */
const INPUT = 'Figures!C27';
const RUNS = 3;

interface Measured {
  readonly page: Page;
  readonly seconds: () => Promise<number>;
}

async function measured(context: BrowserContext): Promise<Measured> {
  const page = await context.newPage();
  const devtools: CDPSession = await context.newCDPSession(page);
  await devtools.send('Performance.enable');
  return {
    page,
    async seconds() {
      const { metrics } = await devtools.send('Performance.getMetrics');
      return metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN;
    },
  };
}

/** The engine alone, built as the page is. */
async function blankPage(): Promise<{ readonly url: string; readonly close: () => void }> {
  const folder = mkdtempSync(join(tmpdir(), 'spawnbook-blank-'));
  mkdirSync(folder, { recursive: true });
  await build({
    ...pageBundle(resolve('.'), folder),
    entryPoints: { blank: 'src/localsheet/bench/blank.ts' },
  });
  writeFileSync(
    join(folder, 'index.html'),
    '<!doctype html><div id="sheet" style="height:700px"></div><script type="module" src="blank.js"></script>',
  );
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://localhost').pathname;
    const file = join(folder, path === '/' ? 'index.html' : path);
    response.setHeader('Content-Type', extname(file) === '.js' ? 'text/javascript' : 'text/html');
    try {
      response.end(readFileSync(file));
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((done) => {
    server.listen(0, '127.0.0.1', () => {
      done();
    });
  });
  const address = server.address();
  const port = typeof address === 'object' && address ? address.port : 0;
  return {
    url: `http://127.0.0.1:${port}/`,
    close: () => {
      server.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

const best = (values: readonly number[]): number => Math.min(...values);

async function blankSeconds(url: string): Promise<number> {
  return freshBrowser(async (context) => {
    const { page, seconds } = await measured(context);
    await page.goto(url);
    await page.waitForFunction(() => 'blankDrawn' in window);
    await page.evaluate(() => (window as unknown as { blankDrawn: Promise<void> }).blankDrawn);
    return seconds();
  });
}

async function firstScreen(url: string): Promise<{ seconds: number; bytes: number; packed: number }> {
  return freshBrowser(async (context) => {
    const { page, seconds } = await measured(context);
    const scripts: Buffer[] = [];
    page.on('response', (response) => {
      if (/\.js$/.test(new URL(response.url()).pathname))
        void response.body().then((body) => scripts.push(body));
    });
    await page.goto(url, { waitUntil: 'commit' });
    await page.waitForFunction(() => 'spawnbook' in window);
    await page.evaluate(() => window.spawnbook?.usable);
    const time = await seconds();
    const sizes = [...scripts];
    return {
      seconds: time,
      bytes: sizes.reduce((sum, body) => sum + body.length, 0),
      packed: sizes.reduce((sum, body) => sum + gzipSync(body).length, 0),
    };
  });
}

/** Opening the forty-run season and one edit in it: main thread, and the time until the results stand. */
async function season(
  url: string,
): Promise<{ drawn: number; confirmed: number; edit: number; result: number }> {
  return freshBrowser(async (context) => {
    const { page, seconds } = await measured(context);
    await page.goto(url);
    await untilReady(page);
    const before = await seconds();
    await page.evaluate(async (text) => {
      await window.spawnbook?.openFile(
        Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0)),
        'season.xlsx',
      );
    }, readFileSync(SEASON).toString('base64'));
    const drawn = (await seconds()) - before;
    await ask(page, 'waitForCalculation');
    const confirmed = (await seconds()) - before;
    const old = Number(await ask(page, 'getValue', INPUT));
    const edits: number[] = [];
    const results: number[] = [];
    for (const factor of [1.01, 1.02, 1.03]) {
      const from = await seconds();
      const started = performance.now();
      await ask(page, 'setValue', INPUT, old * factor);
      await ask(page, 'waitForCalculation');
      results.push((performance.now() - started) / 1000);
      edits.push((await seconds()) - from);
    }
    return { drawn, confirmed, edit: best(edits), result: best(results) };
  });
}

export async function sheetOpening(url: string): Promise<Timing[]> {
  const blank = await blankPage();
  try {
    const alone: number[] = [];
    const screens: Awaited<ReturnType<typeof firstScreen>>[] = [];
    for (let i = 0; i < RUNS; i++) {
      alone.push(await blankSeconds(blank.url));
      screens.push(await firstScreen(url));
    }
    const forty = await season(url);
    const [screen] = screens;
    const name = 'local sheet:';
    return [
      { name: `${name} the engine's own blank page, main thread`, value: best(alone), unit: 's', limit: 3 },
      {
        name: `${name} first screen, main thread`,
        value: best(screens.map((s) => s.seconds)),
        unit: 's',
        limit: 3,
      },
      { name: `${name} scripts before it`, value: (screen?.bytes ?? 0) / 1e6, unit: 'MB', limit: 5 },
      { name: `${name} the same, gzip`, value: (screen?.packed ?? 0) / 1e6, unit: 'MB', limit: 1.5 },
      { name: `${name} forty-run season drawn, main thread`, value: forty.drawn, unit: 's', limit: 5 },
      { name: `${name} all of it confirmed, main thread`, value: forty.confirmed, unit: 's', limit: 6 },
      { name: `${name} one edit in it, main thread`, value: forty.edit, unit: 's', limit: 1 },
      { name: `${name} one edit in it, until the results stand`, value: forty.result, unit: 's', limit: 1 },
    ];
  } finally {
    blank.close();
  }
}
