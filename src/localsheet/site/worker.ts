/**
 * Keeps every file of the site in the browser, so that the page opens without network and server. A newer
 * site is fetched whole beside the old one and used when the page is started next, never half and half.
 */
declare const FILES: readonly string[];
declare const SITE_VERSION: string;

interface WorkerEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface Fetching extends WorkerEvent {
  readonly request: Request;
  respondWith(response: Promise<Response>): void;
}
interface Scope {
  readonly registration: { readonly scope: string };
  skipWaiting(): Promise<void>;
  readonly clients: { claim(): Promise<void> };
  addEventListener(type: string, listener: (event: never) => void): void;
}
const worker = self as unknown as Scope;
const NAME = `spawnbook-site-${SITE_VERSION}`;
const OURS = /^spawnbook-site-/;

const inScope = (path: string): string => new URL(path, worker.registration.scope).href;

async function install(): Promise<void> {
  const cache = await caches.open(NAME);
  // Past the browser's own cache: these files belong together.
  await cache.addAll(FILES.map((file) => new Request(inScope(file), { cache: 'reload' })));
}

async function forgetOld(): Promise<void> {
  for (const name of await caches.keys()) if (OURS.test(name) && name !== NAME) await caches.delete(name);
  await worker.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(NAME);
  const url = new URL(request.url);
  const path = url.origin + url.pathname;
  const found = await cache.match(path === worker.registration.scope ? inScope('index.html') : path);
  return found ?? fetch(request);
}

worker.addEventListener('install', (event: WorkerEvent) => {
  event.waitUntil(install());
});
worker.addEventListener('activate', (event: WorkerEvent) => {
  event.waitUntil(forgetOld());
});
worker.addEventListener('fetch', (event: Fetching) => {
  const { request } = event;
  if (request.method === 'GET' && request.url.startsWith(worker.registration.scope))
    event.respondWith(answer(request));
});
worker.addEventListener('message', (event: MessageEvent & WorkerEvent) => {
  if (event.data === 'use it now') event.waitUntil(worker.skipWaiting());
});
