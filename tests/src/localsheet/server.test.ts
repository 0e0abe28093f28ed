import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Running } from '../../../src/localsheet/server/http';
import { serve } from '../../../src/localsheet/server/http';
import { panePage, SITE_FOLDER } from '../../../src/localsheet/server/site';
import { isStale } from '../../../src/localsheet/server/stale';

let root = '';
let running: Running;
const put = (path: string, text: string): void => {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
};
beforeAll(async () => {
  root = mkdtempSync(join(tmpdir(), 'spawnbook-server-'));
  put(`${SITE_FOLDER}/index.html`, '<title>sheet</title>');
  put(`${SITE_FOLDER}/functions.js`, 'CustomFunctions');
  put('secret.txt', 'not for the browser');
  running = await serve(root, 0);
});
afterAll(async () => {
  await running.close();
  rmSync(root, { recursive: true });
});
const get = (path: string, init?: RequestInit): Promise<Response> =>
  fetch(`http://127.0.0.1:${running.port}${path}`, init);

test('the page, and nothing may come from elsewhere', async () => {
  const response = await get('/');
  expect(await response.text()).toContain('sheet');
  const policy = response.headers.get('content-security-policy') ?? '';
  expect(policy).toContain("script-src 'self'");
  expect(policy).toContain("connect-src 'self'");
  expect(policy).not.toMatch(/https?:|\*/);
});

test('in the pane only the address of the host script is changed', async () => {
  const page = (office: string): string =>
    `<script src="${office}"></script><script src="taskpane.js"></script>`;
  expect(panePage(page('https://appsforoffice.microsoft.com/lib/1/hosted/office.js'))).toBe(
    page('localsheet/office.js'),
  );
  expect(await (await get('/functions.js')).text()).toBe('CustomFunctions');
});

test.each([
  '/../secret.txt',
  '/%2e%2e/secret.txt',
  '/localsheet/..%2f..%2f..%2f..%2fsecret.txt',
  '/templates/../secret.txt',
  '/nothing.js',
  '/%E0%A4%A',
])('%s is not served', async (path) => {
  expect([400, 404]).toContain((await get(path)).status);
});

test('only reading is possible', async () => {
  expect((await get('/', { method: 'POST' })).status).toBe(405);
});

test('an unchanged file is not sent twice', async () => {
  const tag = (await get('/functions.js')).headers.get('etag') ?? '';
  expect((await get('/functions.js', { headers: { 'If-None-Match': tag } })).status).toBe(304);
});

test('a taken port leads to the next one', async () => {
  const second = await serve(root, running.port);
  expect(second.port).toBe(running.port + 1);
  await second.close();
});

test('an output is stale when missing or older than anything it is made from', () => {
  put('in/a.ts', 'a');
  put('in/deep/b.ts', 'b');
  expect(isStale(root, ['out.js'], ['in'])).toBe(true);
  put('out.js', 'x');
  const later = new Date(Date.now() + 5000);
  utimesSync(join(root, 'out.js'), later, later);
  expect(isStale(root, ['out.js'], ['in'])).toBe(false);
  const muchLater = new Date(Date.now() + 10_000);
  utimesSync(join(root, 'in/deep/b.ts'), muchLater, muchLater);
  expect(isStale(root, ['out.js'], ['in'])).toBe(true);
});
