import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { chromium } from 'playwright-core';
import { CHROMIUM, CHROMIUM_ARGS } from '../../src/build/chromium';
import type { Timing } from './catalogue';

interface WorkerRun {
  readonly ms: number;
  readonly steps: number;
  readonly kind: string;
  readonly frozen: number;
}
interface Order {
  readonly code: string;
  readonly file: string;
  readonly stopAt: number | undefined;
}

const STOP_AT = 400;

/** Runs in the page: starts the worker, hands it the file, waits for its one answer. */
function runWorker({ code, file, stopAt }: Order): Promise<WorkerRun> {
  const bytes = Uint8Array.from(atob(file), (letter) => letter.charCodeAt(0));
  const worker = new Worker(URL.createObjectURL(new Blob([code], { type: 'text/javascript' })));
  return new Promise((give, fail) => {
    worker.onmessage = ({ data }): void => {
      give(data as WorkerRun);
      worker.terminate();
    };
    worker.onerror = (event): void => {
      fail(new Error(event.message));
    };
    worker.postMessage({ file: bytes.buffer, ...(stopAt === undefined ? {} : { stopAt }) });
  });
}

/** The same file in a web worker of Chromium, with progress, and how soon it stops when it is told to. */
export async function freezeBrowserTimings(
  file: Uint8Array,
  calls: number,
  nodeMs: number,
): Promise<Timing[]> {
  const {
    outputFiles: [bundle],
  } = await build({
    entryPoints: ['tests/bench/freezeWorker.ts'],
    bundle: true,
    write: false,
    format: 'iife',
    target: 'es2022',
    logLevel: 'error',
  });
  const profile = mkdtempSync(join(tmpdir(), 'spawnbook-bench-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: CHROMIUM,
    args: CHROMIUM_ARGS,
    headless: true,
  });
  try {
    const page = await context.newPage();
    const order = { code: bundle?.text ?? '', file: Buffer.from(file).toString('base64') };
    const whole = await page.evaluate(runWorker, { ...order, stopAt: undefined });
    if (whole.frozen !== calls || whole.steps < 50)
      throw new Error(`the worker made ${whole.kind} with ${whole.frozen} values in ${whole.steps} steps`);
    const stopped = await page.evaluate(runWorker, { ...order, stopAt: STOP_AT });
    if (stopped.kind !== 'cancelled') throw new Error('the worker did not stop');
    return [
      { name: 'freeze in a Chromium worker ÷ in Node', value: whole.ms / nodeMs, unit: '×', limit: 2 },
      { name: 'freeze, from stop to stopped', value: stopped.ms - STOP_AT, unit: 'ms', limit: 2000 },
    ];
  } finally {
    await context.close();
    rmSync(profile, { recursive: true, force: true });
  }
}
