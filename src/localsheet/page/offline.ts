import { element } from './elements';

/** Puts the page among those the browser can open without network, and says when a newer one is there. */

function offer(waiting: ServiceWorker): void {
  const line = element('status', HTMLElement);
  const now = Object.assign(document.createElement('button'), { type: 'button', textContent: 'Use it now' });
  now.addEventListener('click', () => {
    navigator.serviceWorker.addEventListener('controllerchange', () => {
      location.reload();
    });
    waiting.postMessage('use it now');
  });
  line.replaceChildren('A newer Spawnbook is here; it is used at the next start. ', now);
}

export async function keepOffline(): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  const registration = await navigator.serviceWorker.register('sw.js');
  const watch = (worker: ServiceWorker | null): void => {
    worker?.addEventListener('statechange', () => {
      // The first one ever is no newer one.
      if (worker.state === 'installed' && navigator.serviceWorker.controller) offer(worker);
    });
  };
  if (registration.waiting && navigator.serviceWorker.controller) offer(registration.waiting);
  watch(registration.installing);
  registration.addEventListener('updatefound', () => {
    watch(registration.installing);
  });
}
