import { offer } from './frame/elements';

/** Puts the page among those the browser can open without network, and says when a newer one is there. */

function announce(waiting: ServiceWorker): void {
  offer('A newer Spawnbook is here; it is used at the next start.', 'Use it now', () => {
    navigator.serviceWorker.addEventListener('controllerchange', () => {
      location.reload();
    });
    waiting.postMessage('use it now');
  });
}

export async function keepOffline(): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  const registration = await navigator.serviceWorker.register('sw.js');
  const watch = (worker: ServiceWorker | null): void => {
    worker?.addEventListener('statechange', () => {
      // The first one ever is no newer one.
      if (worker.state === 'installed' && navigator.serviceWorker.controller) announce(worker);
    });
  };
  if (registration.waiting && navigator.serviceWorker.controller) announce(registration.waiting);
  watch(registration.installing);
  registration.addEventListener('updatefound', () => {
    watch(registration.installing);
  });
}
