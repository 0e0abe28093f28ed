import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { chance } from '../support/chance';
import type { Mutant } from './mutate';
import { mutantsOf } from './mutate';

export const listed = (pattern: string): string[] =>
  execFileSync('git', ['ls-files', pattern], { encoding: 'utf8' }).trim().split('\n').filter(Boolean);

/** Files that hold words, provenance or looks; a number there changes no answer. */
const QUIET_FILES =
  /(\.d|sources|cautions|guideIds|near|nearEnds)\.ts$|\/(words|phrases|view|pictures|guides|questions|assets)\//;
const isCode = (file: string): boolean => /^(shared|taskpane)\/.*\.ts$/.test(file) && !QUIET_FILES.test(file);

/** The rooms a sample draws from in turn, so that a large one does not stand for the house. */
const ROOMS: readonly (readonly [room: string, at: RegExp])[] = [
  ['water', /^shared\/families\/water\//],
  ['families', /^shared\/families\//],
  ['dosing', /^shared\/dosing\//],
  ['run', /^shared\/run\//],
  ['season', /^shared\/season\//],
  ['books', /^shared\/books\//],
  ['records', /^shared\/records\//],
  ['learn', /^shared\/learn\//],
  ['files', /^shared\/files\//],
  ['sheet', /^shared\/sheet\//],
  ['base', /^shared\//],
  ['pane', /^taskpane\//],
];
export const roomOf = (file: string): string => ROOMS.find(([, at]) => at.test(file))?.[0] ?? '';

/** So many mutants, a fair draw within each room, the rooms in turn. */
export function sample(size: number, seed: number, only: string): Mutant[] {
  const rng = chance(seed);
  const rooms = new Map<string, Mutant[]>(ROOMS.map(([room]) => [room, []]));
  for (const file of [...listed('shared/*.ts'), ...listed('taskpane/*.ts')].filter(isCode).sort())
    if (file.startsWith(only)) rooms.get(roomOf(file))?.push(...mutantsOf(file, readFileSync(file, 'utf8')));
  const drawn: Mutant[] = [];
  while (drawn.length < size && [...rooms.values()].some((left) => left.length > 0))
    for (const left of rooms.values()) {
      const at = Math.floor(rng() * left.length);
      const [mutant] = left.splice(at, 1);
      if (mutant && drawn.length < size) drawn.push(mutant);
    }
  return drawn;
}
