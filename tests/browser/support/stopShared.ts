import type { Started } from './server';
import { stopServer } from './server';

export default function stopShared(): void {
  const { sharedServer } = globalThis as { sharedServer?: Started };
  if (sharedServer) stopServer(sharedServer);
}
