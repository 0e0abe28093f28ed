import { mkdirSync, mkdtempSync, rmSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Running } from '../../../src/localsheet/server/http';
import { isOwnHost, serve } from '../../../src/localsheet/server/http';
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

test('a link out of the folder is not followed, one inside it is', async () => {
  symlinkSync(join(root, 'secret.txt'), join(root, SITE_FOLDER, 'out.txt'));
  symlinkSync(join(root, SITE_FOLDER, 'functions.js'), join(root, SITE_FOLDER, 'in.js'));
  symlinkSync(root, join(root, SITE_FOLDER, 'up'));
  expect((await get('/out.txt')).status).toBe(404);
  expect((await get('/up/secret.txt')).status).toBe(404);
  expect(await (await get('/in.js')).text()).toBe('CustomFunctions');
});

test.each([
  ['localhost', true],
  ['localhost:4100', true],
  ['127.0.0.1:9', true],
  ['[::1]:4100', true],
  ['localhost.example.org', false],
  ['example.org:4100', false],
  ['127.0.0.1.example.org', false],
  ['192.168.0.7:4100', false],
  [undefined, false],
])('asked as %s', (host, isOurs) => {
  expect(isOwnHost(host)).toBe(isOurs);
});

test('a page that makes its own name mean this machine gets nothing', async () => {
  const status = await new Promise<number | undefined>((resolve, reject) => {
    request(
      { host: '127.0.0.1', port: running.port, path: '/', headers: { Host: 'rebound.example.org' } },
      (r) => {
        r.resume();
        resolve(r.statusCode);
      },
    )
      .on('error', reject)
      .end();
  });
  expect(status).toBe(421);
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
