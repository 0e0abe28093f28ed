import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext } from 'playwright-core';
import { chromium } from 'playwright-core';
import { buildAll } from '../server/build';
import { serve } from '../server/http';
import type { BenchResult } from './pageBench';

/** The page's bench and its start, run from Node in a real Chromium. */
export interface SheetTimings {
  readonly cells: BenchResult;
  /** Milliseconds from the request of the page, with an empty browser profile, until the functions calculate in the laid-out plan. */
  readonly ready: number;
}

const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';
const ARGS = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'];

async function withPage<T>(url: string, work: (context: BrowserContext, url: string) => Promise<T>): Promise<T> {
  const profile = mkdtempSync(join(tmpdir(), 'spawnbook-bench-'));
  const context = await chromium.launchPersistentContext(profile, { executablePath: CHROMIUM, args: ARGS, headless: true, viewport: { width: 1366, height: 768 } });
  try { return await work(context, url); } finally {
    await context.close();
    rmSync(profile, { recursive: true, force: true });
  }
}

const start = async (context: BrowserContext, url: string): Promise<{ page: Awaited<ReturnType<BrowserContext['newPage']>>; ready: number }> => {
  const page = await context.newPage();
  const started = performance.now();
  await page.goto(url);
  await page.evaluate(() => window.spawnbook.ready);
  return { page, ready: performance.now() - started };
};

const median = (times: readonly number[]): number => [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;

/** `root` is the project's folder. */
export async function benchLocalSheet(root: string, { cells = 10_000, rounds = 7, starts = 3 } = {}): Promise<SheetTimings> {
  await buildAll(root, () => undefined);
  const running = await serve(root, 0);
  try {
    const ready: number[] = [];
    // A new profile each time: nothing is cached.
    for (let i = 0; i < starts; i++) ready.push(await withPage(running.url, async (context, url) => (await start(context, url)).ready));
    const result = await withPage(running.url, async (context, url) => {
      const { page } = await start(context, url);
      await page.evaluate(() => window.spawnbook.newBook());
      return page.evaluate(([count, times]) => window.spawnbookBench.cells(count, times), [cells, rounds] as const);
    });
    return { cells: result, ready: Math.round(median(ready)) };
  } finally { await running.close(); }
}
