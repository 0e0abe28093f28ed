import type { Started } from './server';
import { SHARED, startServer } from './server';

/** Before the first browser test of a run: one build and one npm start for all of them. */
export default async function startShared(): Promise<void> {
  const started = await startServer();
  process.env[SHARED.url] = started.url;
  process.env[SHARED.printed] = started.printed;
  (globalThis as { sharedServer?: Started }).sharedServer = started;
}
