import { spawn } from 'node:child_process';
import { dirname, resolve } from 'node:path';
import { buildAll } from './server/build';
import { serve } from './server/http';

/** npm start: builds what is stale, serves the local sheet, opens it in the browser. Options: --port N, --no-open. */
const PORT = 4100;
const FORMULA = '=SPAWN.BUFFER.DOSE(1000, 4.6, 7)';

const option = (name: string): string | undefined => {
  const at = process.argv.indexOf(name);
  return at < 0 ? undefined : process.argv[at + 1];
};
const say = (line: string): void => {
  process.stdout.write(`${line}\n`);
};

/** Under a build service, in a terminal of another machine or without a screen there is nobody to open it for. */
const hasScreen = (): boolean =>
  !process.env.CI &&
  !process.env.SSH_CONNECTION &&
  (process.platform !== 'linux' || Boolean(process.env.DISPLAY ?? process.env.WAYLAND_DISPLAY));

function openBrowser(url: string): void {
  const [command, args] =
    process.platform === 'win32'
      ? (['cmd', ['/c', 'start', '', url]] as const)
      : process.platform === 'darwin'
        ? (['open', [url]] as const)
        : (['xdg-open', [url]] as const);
  const child = spawn(command, args, { stdio: 'ignore', detached: true });
  child.on('error', () => {
    say('No browser could be opened from here; open the address by hand.');
  });
  child.unref();
}

async function main(): Promise<void> {
  // npm runs scripts in the project's folder; package.json tells where that is even when started elsewhere.
  const root = process.env.npm_package_json ? dirname(process.env.npm_package_json) : resolve('.');
  await buildAll(root, say);
  const wanted = Number(option('--port') ?? PORT);
  if (!Number.isInteger(wanted) || wanted < 0 || wanted > 65535)
    throw new Error('--port takes a whole number from 0 to 65535.');
  const running = await serve(root, wanted);
  say(`\nSpawnbook is at ${running.url}\nTry this in any cell:  ${FORMULA}\nCtrl+C stops it.`);
  if (!process.argv.includes('--no-open') && hasScreen()) openBrowser(running.url);
  const stop = (): void => {
    void running.close().then(() => {
      process.exit(0);
    });
  };
  process.on('SIGINT', stop);
  process.on('SIGTERM', stop);
}

main().catch((error: unknown) => {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
});
