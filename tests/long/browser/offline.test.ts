import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Session } from '../../browser/support/localSheet';
import { ask, openLocalSheet, openExample, typeInto, untilReady } from '../../browser/support/localSheet';

/** Opened once, the page works with the network and the server gone. */

let session: Session;
beforeAll(async () => {
  session = await openLocalSheet({ keepsSite: true });
});
afterAll(async () => {
  await session.close();
});

test('the page can be put among the programs of the machine', async () => {
  const { page } = session;
  const manifest = (await page.evaluate(async () => {
    const link = document.querySelector<HTMLLinkElement>('link[rel=manifest]');
    return (await fetch(link?.href ?? '')).json() as unknown;
  })) as { name: string; icons: { src: string; sizes: string }[]; display: string; start_url: string };
  expect(manifest.name).toBe('Spawnbook');
  // What browsers ask for: a picture of at least 192 and one of 512, a start address, its own window.
  expect(manifest.icons.map(({ sizes }) => sizes)).toEqual(['192x192', '512x512']);
  expect(manifest.display).toBe('standalone');
  for (const { src } of manifest.icons)
    expect(await page.evaluate(async (address) => (await fetch(address)).ok, src)).toBe(true);
});

test('a newer site is there: the page says so, goes on with the old one, and uses it when asked', async () => {
  const { page, folder = '' } = session;
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null, undefined, {
    timeout: 120_000,
  });
  // Another version of the site: its first page says so, and its worker keeps it under another name.
  const change = (file: string, from: RegExp, to: string): void => {
    const text = readFileSync(join(folder, file), 'utf8');
    expect(text).toMatch(from);
    writeFileSync(join(folder, file), text.replace(from, to));
  };
  change('index.html', /<title>[^<]*<\/title>/, '<title>A newer one</title>');
  change('sw.js', /spawnbook-site-/, 'spawnbook-site-newer-');
  await page.reload();
  await untilReady(page);
  expect(await page.title()).not.toBe('A newer one');
  await page.getByText('A newer Spawnbook is here; it is used at the next start.').waitFor();
  await typeInto(page, 'A1', 'typed before');
  await ask(page, 'keepNow');
  await page.getByRole('button', { name: 'Use it now' }).click();
  await page.waitForFunction(() => document.title === 'A newer one');
  await untilReady(page);
  expect(await ask(page, 'getValue', 'A1')).toBe('typed before');
  const caches_ = await page.evaluate(() => caches.keys());
  expect(caches_).toEqual([expect.stringContaining('newer')]);
});

test('server gone: sheet, functions, pane, examples, files still work', async () => {
  const { page } = session;
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null, undefined, {
    timeout: 120_000,
  });
  await session.stopServer();
  const offline = await page.context().newPage();
  const wrong: string[] = [];
  offline.on('pageerror', (error) => wrong.push(error.message));
  offline.on('response', (response) => {
    if (!response.fromServiceWorker() && response.url().startsWith(session.url)) wrong.push(response.url());
  });
  await offline.goto(session.url);
  await untilReady(offline);
  await typeInto(offline, 'A1', '=SPAWN.BUFFER.DOSE(1000,4.6,7)');
  expect(await ask(offline, 'getValue', 'A1')).toEqual(expect.any(Number));
  await openExample(offline, 'water');
  expect(await ask(offline, 'getValue', 'E6')).toEqual(expect.any(Number));
  const size = await offline.evaluate(async () => {
    const saved = await window.spawnbook?.saveFile();
    if (!saved) return 0;
    await window.spawnbook?.openFile(saved.bytes, 'again.xlsx');
    return saved.bytes.length;
  });
  expect(size).toBeGreaterThan(3000);
  expect(await ask(offline, 'getValue', 'E6')).toEqual(expect.any(Number));
  // Every file of the site is there, also those nothing has asked for yet.
  const missing = await offline.evaluate(async () => {
    const kept = new Set<string>();
    for (const name of await caches.keys())
      for (const request of await (await caches.open(name)).keys()) kept.add(new URL(request.url).pathname);
    return ['/taskpane.html', '/taskpane.js', '/functions.js', '/localsheet/office.js', '/index.html'].filter(
      (path) => !kept.has(path),
    );
  });
  expect(missing).toEqual([]);
  expect(wrong).toEqual([]);
});
