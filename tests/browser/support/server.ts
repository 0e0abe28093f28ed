import type { ChildProcess } from 'node:child_process';
import { spawn } from 'node:child_process';

export interface Started {
  readonly server: ChildProcess;
  /** What npm start printed. */
  readonly printed: string;
  readonly url: string;
}

/** npm start, on any free port; resolves with the address it prints. */
export async function startServer(): Promise<Started> {
  const server = spawn('npm', ['start', '--', '--port', '0', '--no-open'], {
    stdio: ['ignore', 'pipe', 'pipe'],
    detached: true,
  });
  let printed = '';
  const url = await new Promise<string>((found, failed) => {
    const read = (data: Buffer): void => {
      printed += data.toString();
      const address = /Spawnbook is at (http:\S+)[\s\S]*Ctrl\+C/.exec(printed)?.[1];
      if (address) found(address);
    };
    server.stdout.on('data', read);
    server.stderr.on('data', read);
    server.on('exit', () => {
      failed(new Error(`npm start ended: ${printed}`));
    });
  });
  return { server, printed, url };
}

/** npm passes no signal on to what it started: the whole group ends. */
export function stopServer({ server }: Started): void {
  if (server.pid === undefined || server.exitCode !== null) return;
  try {
    process.kill(-server.pid, 'SIGTERM');
  } catch {
    // It has ended by itself.
  }
}

/** Where the files of one run of the tests find the server that all of them share. */
export const SHARED = { url: 'SPAWNBOOK_TEST_URL', printed: 'SPAWNBOOK_TEST_PRINTED' } as const;
