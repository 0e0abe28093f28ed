import type { ChildProcess } from 'node:child_process';
import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import type { Answered, Asked } from './worker';

/** Hands test files to a worker and ends it when a test hangs; the next file gets a new one. */
const TICK = 500;
/** A test that has waited this long for nothing waits for something that will not come. */
const IDLE_MS = 90_000;
const HZ = 100;

function processorTime(pid: number): number | undefined {
  const path = `/proc/${pid}/stat`;
  if (!existsSync(path)) return undefined;
  const fields = readFileSync(path, 'utf8')
    .replace(/^.*\) /, '')
    .split(' ');
  return ((Number(fields[11]) + Number(fields[12])) * 1000) / HZ;
}

export class Worker {
  #child: ChildProcess | undefined;
  readonly #packages: string;
  constructor(packages: readonly string[]) {
    this.#packages = JSON.stringify(packages);
  }

  async #start(): Promise<ChildProcess> {
    const child = spawn(
      process.execPath,
      ['--max-old-space-size=3000', 'src/build/run.mjs', 'tests/mutants/worker.ts', this.#packages],
      { stdio: ['ignore', 'ignore', process.env['MUTANTS_LOUD'] ? 'inherit' : 'ignore', 'ipc'] },
    );
    await new Promise((done, fail) => {
      child.once('message', done);
      child.once('exit', () => fail(new Error('The process that runs the tests did not start.')));
    });
    child.removeAllListeners('exit');
    this.#child = child;
    return child;
  }

  stop(): void {
    this.#child?.kill('SIGKILL');
    this.#child = undefined;
  }

  /** Undefined when the file hung or took the process with it. */
  async ask(asked: Asked, limit: number): Promise<Answered | undefined> {
    const child = this.#child ?? (await this.#start());
    const pid = child.pid ?? 0;
    const begun = processorTime(pid) ?? 0;
    return new Promise((done) => {
      let waited = 0;
      const finish = (answered: Answered | undefined): void => {
        clearInterval(watch);
        child.off('message', finish);
        child.off('exit', died);
        if (!answered) this.stop();
        done(answered);
      };
      const died = (): void => finish(undefined);
      const watch = setInterval(() => {
        waited += TICK;
        const used = (processorTime(pid) ?? begun + waited) - begun;
        if (used > limit || (waited > IDLE_MS && used < waited / 50)) finish(undefined);
      }, TICK);
      child.once('message', finish);
      child.once('exit', died);
      child.send(asked);
    });
  }
}
