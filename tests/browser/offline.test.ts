import type { Session } from './support/localSheet';
import { ask, openLocalSheet, openExample, typeInto, untilReady } from './support/localSheet';

/** Opened once, the page works with the network and the server gone. */

let session: Session;
beforeAll(async () => {
  session = await openLocalSheet();
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

test('server gone: sheet, functions, pane, examples, files still work', async () => {
  const { page } = session;
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null, undefined, {
    timeout: 120_000,
  });
  session.stopServer();
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
