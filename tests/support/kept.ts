import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

/**
 * Whole answers, kept in tests/golden/kept as the code gave them when somebody last looked: a number moved
 * anywhere in them is noticed. That they are right is the matter of the tests beside; that a change of them is
 * meant, a reader of the change decides. `WRITE_KEPT=1` writes them anew.
 */
const FOLDER = 'tests/golden/kept';

/** Eight digits: what the code says, not how this machine's exp and pow end. */
const digits = (_key: string, value: unknown): unknown =>
  typeof value === 'number'
    ? Number.isFinite(value)
      ? Number(value.toPrecision(8))
      : String(value)
    : value instanceof Float64Array
      ? [...value]
      : value instanceof Map
        ? [...(value as ReadonlyMap<unknown, unknown>)]
        : value;

/** The first lines that part, with what stands before them. */
function parting(old: readonly string[], fresh: readonly string[]): readonly string[] {
  const at = fresh.findIndex((line, i) => line !== old[i]);
  const from = at < 0 ? fresh.length : at;
  return [
    `line ${from + 1}: …${fresh.slice(Math.max(0, from - 3), from).join(' ')}`,
    `kept: ${old.slice(from, from + 3).join(' ')}`,
    `now: ${fresh.slice(from, from + 3).join(' ')}`,
    'If the change is meant: WRITE_KEPT=1 npx jest --selectProjects unit pane -i kept, and look at what git diff shows.',
  ];
}

/** As it is kept: one value a line. */
export const keptText = (value: unknown): string => `${JSON.stringify(value, digits, 1)}\n`;

/** What parts an answer from a kept file; nothing where they are the same. */
export function partsFrom(path: string, value: unknown): readonly string[] {
  const fresh = keptText(value);
  const old = readFileSync(path, 'utf8');
  return old === fresh ? [] : parting(old.split('\n'), fresh.split('\n'));
}

/** Expects an answer to be the one kept under this name. */
export function expectKept(name: string, value: unknown): void {
  const path = `${FOLDER}/${name}.json`;
  if (process.env.WRITE_KEPT === '1') {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, keptText(value));
  }
  expect(partsFrom(path, value)).toEqual([]);
}
