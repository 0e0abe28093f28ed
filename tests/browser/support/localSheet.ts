import { cpSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { BrowserContext, Frame, Page } from 'playwright-core';
import { chromium } from 'playwright-core';
import { CHROMIUM, CHROMIUM_ARGS } from '../../../src/build/chromium';
import type { PageApi } from '../../../src/localsheet/page/api';
import { serve } from '../../../src/localsheet/server/http';
import { SITE_FOLDER } from '../../../src/localsheet/server/site';
import { SHARED, startServer, stopServer } from './server';

/** Pictures that a person looks at; CI keeps nothing. */
export const OUT = resolve('tests/browser/out');

export interface Session {
  readonly url: string;
  /** What npm start printed. */
  readonly printed: string;
  readonly page: Page;
  readonly pane: Frame;
  /** Console errors, failed and foreign requests since the start. */
  readonly trouble: readonly string[];
  /** Where the files of a site of its own lie. */
  readonly folder?: string;
  /** Ends a server of its own; the browser stays. */
  readonly stopServer: () => Promise<void>;
  readonly close: () => Promise<void>;
}

function watch(context: BrowserContext, url: string): string[] {
  const trouble: string[] = [];
  context.on('page', (page) => {
    page.on('console', (message) => {
      if (message.type() === 'error') trouble.push(`console: ${message.text()}`);
    });
    page.on('pageerror', (error) => trouble.push(`error: ${error.message}`));
    page.on('requestfailed', (request) => trouble.push(`failed: ${request.url()}`));
    page.on('response', (response) => {
      if (response.status() >= 400) trouble.push(`${response.status()}: ${response.url()}`);
    });
    page.on('request', (request) => {
      if (!request.url().startsWith(url) && !/^(data|blob):/.test(request.url()))
        trouble.push(`foreign: ${request.url()}`);
    });
  });
  return trouble;
}

const launch = () => chromium.launch({ executablePath: CHROMIUM, args: CHROMIUM_ARGS, headless: true });

/** A limit against hangs, in milliseconds: a busy machine must not fail a press of a button. */
const PATIENCE = 120_000;
const PHONE = {
  viewport: { width: 360, height: 740 },
  deviceScaleFactor: 2,
  isMobile: true,
  hasTouch: true,
} as const;

/** A phone's screen, with fingers. */
export async function launchPhone(profile: string, keepsSite = false): Promise<BrowserContext> {
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: CHROMIUM,
    args: CHROMIUM_ARGS,
    headless: true,
    ...PHONE,
    serviceWorkers: keepsSite ? 'allow' : 'block',
  });
  context.setDefaultTimeout(PATIENCE);
  return context;
}

/**
 * Milliseconds from asking for the pane to a tab that can be pressed, in a browser that has never seen it.
 */
export const coldPaneStart = (paneUrl: string): Promise<number> =>
  freshBrowser(async (context) => {
    const page = await context.newPage();
    const started = performance.now();
    await page.goto(paneUrl);
    await page.click('#place-why');
    await page.click('#part-find');
    await page.waitForSelector('input[type=search]');
    return performance.now() - started;
  }, 320);

/** A browser that has never seen anything, gone afterwards. */
export async function freshBrowser<T>(
  work: (context: BrowserContext) => Promise<T>,
  width = 1366,
): Promise<T> {
  const browser = await launch();
  try {
    const context = await browser.newContext({ viewport: { width, height: 768 } });
    context.setDefaultTimeout(PATIENCE);
    return await work(context);
  } finally {
    await browser.close();
  }
}

interface Served {
  readonly url: string;
  readonly printed: string;
  /** Files of a site of its own, which a test may change. */
  readonly folder?: string;
  readonly stop: () => Promise<void>;
}

/** A server of its own over a copy of the built site. */
async function ownSite(): Promise<Served> {
  const root = mkdtempSync(join(tmpdir(), 'spawnbook-site-'));
  cpSync(SITE_FOLDER, join(root, SITE_FOLDER), { recursive: true });
  const { url, close } = await serve(root, 0);
  return {
    url,
    printed: '',
    folder: join(root, SITE_FOLDER),
    stop: async () => {
      await close();
      rmSync(root, { recursive: true, force: true });
    },
  };
}

/** The server that all files of a run share; started here where a single script uses the page. */
export async function sharedSite(): Promise<Served> {
  const { [SHARED.url]: url, [SHARED.printed]: printed = '' } = process.env;
  if (url !== undefined) return { url, printed, stop: () => Promise.resolve() };
  const started = await startServer();
  return {
    ...started,
    stop: () => {
      stopServer(started);
      return Promise.resolve();
    },
  };
}

interface Wanted {
  /** A phone's screen, with fingers. */
  readonly isPhone?: boolean;
  readonly width?: number;
  readonly height?: number;
  /** A server and a site of its own, and a browser that keeps it: for tests of what happens without a server. */
  readonly keepsSite?: boolean;
}

/**
 * The page in a browser that has never seen it. It keeps the site for later only when asked: fetching every file
 * once more costs as much as the page itself.
 */
export async function openLocalSheet({
  isPhone = false,
  width = 1366,
  height = 768,
  keepsSite = false,
}: Wanted = {}): Promise<Session> {
  mkdirSync(OUT, { recursive: true });
  const { url, printed, folder, stop } = await (keepsSite ? ownSite() : sharedSite());
  const browser = await launch();
  const context = await browser.newContext({
    ...(isPhone ? PHONE : { viewport: { width, height } }),
    acceptDownloads: true,
    serviceWorkers: keepsSite ? 'allow' : 'block',
  });
  context.setDefaultTimeout(PATIENCE);
  const trouble = watch(context, url);
  const page = await context.newPage();
  await page.goto(url);
  await untilReady(page);
  const pane = page.frames().find((frame) => frame.url().includes('taskpane'));
  if (!pane) throw new Error('The pane is not in the page.');
  await pane.waitForSelector('#place-plan');
  return {
    url,
    printed,
    page,
    pane,
    trouble,
    ...(folder === undefined ? {} : { folder }),
    stopServer: stop,
    close: async () => {
      await browser.close();
      await stop();
    },
  };
}

type Methods = {
  [K in keyof PageApi]: PageApi[K] extends (...args: never[]) => unknown ? K : never;
}[keyof PageApi];

/** The page's API comes with its last script; then everything in it has to stand. */
export async function untilReady(page: Page): Promise<void> {
  await page.waitForFunction(() => 'spawnbook' in window, undefined, { timeout: 280_000 });
  await page.evaluate(() => window.spawnbook?.ready);
}

/** Calls the page's own API. */
export const ask = <K extends Methods>(
  page: Page,
  method: K,
  ...args: Parameters<PageApi[K]>
): Promise<Awaited<ReturnType<PageApi[K]>>> =>
  page.evaluate(
    ([name, given]) => {
      const api = window.spawnbook as unknown as Record<string, (...list: unknown[]) => unknown>;
      return api[name as string]?.(...(given as unknown[]));
    },
    [method, args] as const,
  ) as Promise<Awaited<ReturnType<PageApi[K]>>>;

/** Asks again until it is so, however long a busy machine takes. */
export async function until(isSo: () => Promise<boolean>): Promise<void> {
  const limit = Date.now() + PATIENCE;
  while (!(await isSo())) {
    if (Date.now() > limit) throw new Error('It did not come to that.');
    await new Promise((resolve) => {
      setTimeout(resolve, 100);
    });
  }
}

const ARRIVAL = PATIENCE;

/** The browser ends the tab's process: no closing event runs in it. */
export async function kill(page: Page): Promise<void> {
  const devtools = await page.context().newCDPSession(page);
  const gone = new Promise<void>((resolve) => {
    page.once('crash', () => {
      resolve();
    });
  });
  // Never answered: there is nobody left to answer.
  void devtools.send('Page.crash').catch(() => undefined);
  await gone;
  await page.close();
}

/**
 * Types into a chosen cell as a person does: keys and Enter; waits, however busy the machine is, until the
 * cell holds something else than before.
 */
export async function typeInto(page: Page, address: string, text: string): Promise<void> {
  await ask(page, 'select', address);
  const holds = async (): Promise<string> =>
    JSON.stringify([await ask(page, 'getFormula', address), await ask(page, 'getValue', address)]);
  const before = await holds();
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
  const limit = Date.now() + ARRIVAL;
  do await ask(page, 'waitForCalculation');
  while ((await holds()) === before && Date.now() < limit && before !== JSON.stringify([null, text]));
  await ask(page, 'waitForCalculation');
}

export const picture = (page: Page, name: string): Promise<unknown> =>
  page.screenshot({ path: join(OUT, `${name}.png`) });

/** Takes an example from the list and waits until it is laid out. */
export async function openExample(page: Page, id: string): Promise<void> {
  await page.selectOption('#examples', id);
  const leave = page.locator('#dialog-yes');
  await Promise.race([
    leave.waitFor({ state: 'visible', timeout: 2000 }).then(() => leave.click()),
    page.waitForFunction(() => document.querySelector<HTMLButtonElement>('#new')?.disabled === true),
  ]).catch(() => undefined);
  await page.waitForFunction(
    () =>
      document.querySelector<HTMLButtonElement>('#new')?.disabled === false &&
      document.querySelector('#status')?.textContent === '',
    undefined,
    { timeout: 120_000 },
  );
  await ask(page, 'waitForCalculation');
}

/** Turns the pane to one part of it. */
export async function turnTo(
  pane: Frame | Page,
  to: 'plan' | 'find' | 'check' | 'errors' | 'share' | 'dose',
): Promise<void> {
  if (to === 'share') {
    await pane.click('#menu-button');
    await pane.click('#place-share');
  } else if (to === 'dose') {
    await pane.click('#place-vat');
    await pane.click('#card-dose');
  } else if (to === 'plan') await pane.click('#place-plan');
  else {
    await pane.click('#place-why');
    await pane.click(`#part-${to}`);
  }
}
