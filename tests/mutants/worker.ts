import { join } from 'node:path';
import { modules } from './modules';
import { runTests } from './testing';

/** A process that runs test files one after the other, as it is asked to. A hanging one is ended from outside. */
export interface Asked {
  readonly test: string;
  /** Other texts for some files. */
  readonly changed: readonly (readonly [file: string, text: string])[];
}
export interface Answered {
  readonly failed?: string | undefined;
  /** Processor time, milliseconds. */
  readonly took: number;
}
const root = process.cwd();
const [, , packages = '[]'] = process.argv;
const { run } = modules(root, join(root, '.cache/mutants/code'), JSON.parse(packages) as string[]);

let stray: string | undefined;
process.on('unhandledRejection', (reason) => {
  stray ??= String(reason);
});
process.on('uncaughtException', (error) => {
  stray ??= String(error);
});

process.on('message', (asked: Asked) => {
  void (async () => {
    stray = undefined;
    const begun = process.cpuUsage();
    const changed = new Map(asked.changed.map(([file, text]) => [join(root, file), text]));
    const failed = (await runTests(join(root, asked.test), () => run(asked.test, changed))) ?? stray;
    const { user, system } = process.cpuUsage(begun);
    process.send?.({ failed, took: (user + system) / 1000 } satisfies Answered);
  })();
});
process.send?.({ took: 0 } satisfies Answered);
