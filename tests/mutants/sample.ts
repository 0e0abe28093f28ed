import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Mutant } from './mutate';
import { mutantsOf } from './mutate';

export const listed = (pattern: string): string[] =>
  execFileSync('git', ['ls-files', pattern], { encoding: 'utf8' }).trim().split('\n').filter(Boolean);

/** Files that hold words, provenance or looks; a number there changes no answer. */
const QUIET_FILES =
  /(\.d|sources|cautions|guideIds|near\w*)\.ts$|\/(near|words|phrases|view|pictures|guides|questions|assets)\//;
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

/** Folders that came when a room grew too large to be flat: a file that moved keeps its place in the draw. */
const DIVIDED =
  /(records\/columns|records\/rules|season\/batches|shared\/season|taskpane\/host|water\/records)\/(?:cells|steps|farming|figures|search|chance|answer|book|writing|reading|buffer)\//;
const drawnAs = (file: string): string => file.replace(DIVIDED, '$1/');

/**
 * Where each change stands in the draw: by chance, but by what it changes and not by its place, so that work
 * elsewhere leaves the sample as it is.
 */
function ranked(mutants: readonly Mutant[], lines: readonly string[], seed: number): [string, Mutant][] {
  const met = new Map<string, number>();
  return mutants.map((mutant) => {
    const { file, line, before, after } = mutant;
    const change = [drawnAs(file), lines[line - 1]?.trim(), before, after].join('\0');
    const times = met.get(change) ?? 0;
    met.set(change, times + 1);
    return [createHash('sha256').update(`${seed}\0${change}\0${times}`).digest('hex'), mutant];
  });
}

/** So many mutants, a fair draw within each room, the rooms in turn. */
export function sample(size: number, seed: number, only: string): Mutant[] {
  const rooms = new Map<string, [string, Mutant][]>(ROOMS.map(([room]) => [room, []]));
  for (const file of [...listed('shared/*.ts'), ...listed('taskpane/*.ts')].filter(isCode)) {
    if (!file.startsWith(only)) continue;
    const text = readFileSync(file, 'utf8');
    rooms.get(roomOf(file))?.push(...ranked(mutantsOf(file, text), text.split('\n'), seed));
  }
  const inTurn = [...rooms.values()].map((room) => room.sort(([a], [b]) => (a < b ? -1 : 1)));
  const longest = Math.max(...inTurn.map((room) => room.length));
  return Array.from({ length: longest }, (_, turn) => inTurn.flatMap((room) => room.slice(turn, turn + 1)))
    .flat()
    .slice(0, size)
    .map(([, mutant]) => mutant);
}
