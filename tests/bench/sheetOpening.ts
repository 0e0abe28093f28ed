import { build } from 'esbuild';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { BrowserContext, CDPSession, Page } from 'playwright-core';
import { pageBundle } from '../../src/build/sheet/bundle';
import { ask, freshBrowser, until, untilReady } from '../browser/support/localSheet';
import type { Timing } from './catalogue';

/**
 * Processor seconds of the page's main thread (TaskDuration of the browser's own metrics, counted in the thread's own
 * time, so that a busy machine changes little), each beside the engine's own blank page.
 */
const SEASON = 'templates/season-commercial.xlsx';
/** An input that some five thousand of the 34,510 formulas hang on. */
const INPUT = 'Figures!C27';
const RUNS = 3;

interface Measured {
  readonly page: Page;
  readonly devtools: CDPSession;
  readonly seconds: () => Promise<number>;
}

async function measured(context: BrowserContext): Promise<Measured> {
  const page = await context.newPage();
  const devtools: CDPSession = await context.newCDPSession(page);
  await devtools.send('Performance.enable', { timeDomain: 'threadTicks' });
  return {
    page,
    devtools,
    async seconds() {
      const { metrics } = await devtools.send('Performance.getMetrics');
      return metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN;
    },
  };
}

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Microseconds of the thread's own time. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}
/** The longest task of the main thread while something is done: for so long the page answers nobody. */
async function longestTask(page: Page, work: () => Promise<void>): Promise<number> {
  const browser = page.context().browser();
  if (!browser) throw new Error('This browser cannot be traced.');
  const devtools = await browser.newBrowserCDPSession();
  const events: TraceEvent[] = [];
  devtools.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as TraceEvent[])));
  await devtools.send('Tracing.start', {
    traceConfig: { includedCategories: ['toplevel', 'disabled-by-default-devtools.timeline'] },
    transferMode: 'ReportEvents',
  });
  await work();
  const complete = new Promise((done) => {
    devtools.once('Tracing.tracingComplete', done);
  });
  await devtools.send('Tracing.end');
  await complete;
  await devtools.detach();
  const main = new Set(
    events.flatMap(({ name, pid, tid, args }) =>
      name === 'thread_name' && args?.name === 'CrRendererMain' ? [`${pid} ${tid}`] : [],
    ),
  );
  const times = events.flatMap(({ name, pid, tid, tdur }) =>
    name.endsWith('RunTask') && tdur !== undefined && main.has(`${pid} ${tid}`) ? [tdur / 1e6] : [],
  );
  return Math.max(...times);
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
        // A page that closes meanwhile takes its answers along; what had come is measured.
        void response.body().then(
          (body) => scripts.push(body),
          () => 0,
        );
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

/** A cell that nothing hangs on: what the engine itself needs for any change in the same workbook. */
const LONELY = 'Figures!Z90';

interface SeasonTimes {
  readonly drawn: number;
  readonly confirmed: number;
  readonly blocked: number;
  readonly lonely: number;
  readonly edit: number;
  readonly result: number;
}
/** Opening the forty-run season and one edit in it: main thread, and the time until the results stand. */
async function season(url: string): Promise<SeasonTimes> {
  return freshBrowser(async (context) => {
    const { page, seconds } = await measured(context);
    await page.goto(url);
    await untilReady(page);
    const before = await seconds();
    let drawn = Number.NaN;
    const blocked = await longestTask(page, async () => {
      await page.evaluate(async (text) => {
        await window.spawnbook?.openFile(
          Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0)),
          'season.xlsx',
        );
      }, readFileSync(SEASON).toString('base64'));
      drawn = (await seconds()) - before;
      await ask(page, 'waitForCalculation');
    });
    const confirmed = (await seconds()) - before;
    const edits = async (address: string, from: number) => {
      const found = { main: [] as number[], wall: [] as number[] };
      for (const factor of [1.01, 1.02, 1.03]) {
        const start = await seconds();
        const started = performance.now();
        await ask(page, 'setValue', address, from * factor);
        await ask(page, 'waitForCalculation');
        found.wall.push((performance.now() - started) / 1000);
        found.main.push((await seconds()) - start);
      }
      return { main: best(found.main), wall: best(found.wall) };
    };
    const lonely = await edits(LONELY, 1);
    const edit = await edits(INPUT, Number(await ask(page, 'getValue', INPUT)));
    return { drawn, confirmed, blocked, lonely: lonely.main, edit: edit.main, result: edit.wall };
  });
}

/** A season of the example written by the pane into the open workbook, and taken back. */
async function writing(url: string): Promise<{ readonly written: number; readonly undone: number }> {
  return freshBrowser(async (context) => {
    const { page, seconds } = await measured(context);
    await page.goto(url);
    await untilReady(page);
    const pane = page.frameLocator('#pane-frame');
    await pane.locator('#place-plan').click();
    await pane.getByRole('button', { name: 'Fill in an example' }).click();
    await pane.locator('#plan-answer:not(.stale) .verdict-line').waitFor();
    const before = await seconds();
    await pane.locator('#plan-write').click();
    await pane.locator('.notice').waitFor();
    await ask(page, 'waitForCalculation');
    const written = (await seconds()) - before;
    await ask(page, 'select', 'A1');
    await page.keyboard.press('Control+z');
    await until(async () => (await ask(page, 'getSheetNames')).length === 1);
    return { written, undone: (await seconds()) - before - written };
  });
}

const SLOWER = 4;
/** A phone's screen and a processor slowed down four times: the first visit, and from what the browser kept. */
async function phone(url: string): Promise<{ readonly cold: number; readonly kept: number }> {
  return freshBrowser(async (context) => {
    const visit = async (): Promise<{ page: Page; time: number }> => {
      const { page, devtools, seconds } = await measured(context);
      await page.setViewportSize({ width: 360, height: 740 });
      await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
      await page.goto(url, { waitUntil: 'commit' });
      // The pane is what is seen first.
      await page.frameLocator('#pane-frame').locator('#place-vat').waitFor();
      const time = await seconds();
      await devtools.send('Emulation.setCPUThrottlingRate', { rate: 1 });
      return { page, time };
    };
    const first = await visit();
    await untilReady(first.page);
    await first.page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await first.page.close();
    const again = await visit();
    return { cold: first.time, kept: again.time };
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
    const atTheVat = await phone(url);
    const { written, undone } = await writing(url);
    const [screen] = screens;
    const name = 'local sheet:';
    return [
      { name: `${name} the engine's own blank page, main thread`, value: best(alone), unit: 's', limit: 3 },
      {
        name: `${name} first screen, main thread`,
        value: best(screens.map((s) => s.seconds)),
        unit: 's',
        limit: 3,
        isForReadme: true,
      },
      { name: `${name} scripts before it`, value: (screen?.bytes ?? 0) / 1e6, unit: 'MB', limit: 5 },
      { name: `${name} the same, gzip`, value: (screen?.packed ?? 0) / 1e6, unit: 'MB', limit: 1.5 },
      {
        name: `${name} forty-run season drawn, main thread`,
        value: forty.drawn,
        unit: 's',
        limit: 5,
        isForReadme: true,
      },
      { name: `${name} all of it confirmed, main thread`, value: forty.confirmed, unit: 's', limit: 6 },
      { name: `${name} longest task meanwhile`, value: forty.blocked, unit: 's', limit: 0.2 },
      { name: `${name} a cell nothing hangs on, main thread`, value: forty.lonely, unit: 's', limit: 1 },
      { name: `${name} one edit in it, main thread`, value: forty.edit, unit: 's', limit: 1 },
      {
        name: `${name} one edit in it, until the results stand`,
        value: forty.result,
        unit: 's',
        limit: 0.3,
        isForReadme: true,
      },
      { name: `${name} a season written by the pane, main thread`, value: written, unit: 's', limit: 5 },
      { name: `${name} one undo of it, main thread`, value: undone, unit: 's', limit: 9 },
      { name: `${name} phone, ${SLOWER} × slower: pane there`, value: atTheVat.cold, unit: 's', limit: 12 },
      {
        name: `${name} the same from what is kept`,
        value: atTheVat.kept,
        unit: 's',
        limit: 4,
        isForReadme: true,
      },
    ];
  } finally {
    blank.close();
  }
}
