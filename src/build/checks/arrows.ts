import { dirname, join } from 'node:path/posix';
import type { SourceText } from './longFiles';

/** Rooms of the engine, the lowest first. A room may know those before it. */
export const ROOMS = [
  'base',
  'units',
  'maths',
  'functions',
  'families',
  'sheet',
  'files',
  'records',
  'catalogue',
  'learn',
  'run',
  'season',
  'books',
] as const;

/** Files that may know each other: the object graph of a workbook is a circle, as Excel's own is. */
const OBJECT_GRAPH = 'src/officeStandIn/nodes/';

interface Arrow {
  readonly from: string;
  readonly to: string;
  readonly isType: boolean;
}

const IMPORT = /^(?:import|export)( type)?[^'";]*?from '(\.[^']+)'/gm;

/** What each file imports, types and values. */
export function arrowsOf(files: readonly SourceText[]): Arrow[] {
  const known = new Set(files.map(({ path }) => path));
  return files.flatMap(({ path, text }) =>
    [...text.matchAll(IMPORT)].flatMap(([, type, target = '']) => {
      const base = join(dirname(path), target);
      const to = [`${base}.ts`, `${base}.tsx`, `${base}/index.ts`].find((one) => known.has(one));
      return to === undefined ? [] : [{ from: path, to, isType: type !== undefined }];
    }),
  );
}

const roomOf = (path: string): number => {
  const [top, room] = path.split('/');
  if (top !== 'shared') return ROOMS.length;
  return (ROOMS as readonly string[]).indexOf(room ?? '');
};

const upward = ({ from, to }: Arrow): boolean => {
  const [a, b] = [roomOf(from), roomOf(to)];
  return a >= 0 && b > a;
};

/** Groups of files that reach each other by values (Tarjan 1972: strongly connected components). */
function circles(arrows: readonly Arrow[]): string[][] {
  const next = new Map<string, string[]>();
  for (const { from, to } of arrows) next.set(from, [...(next.get(from) ?? []), to]);
  const index = new Map<string, number>();
  const low = new Map<string, number>();
  const stack: string[] = [];
  const found: string[][] = [];
  const visit = (file: string): void => {
    index.set(file, index.size);
    low.set(file, index.size - 1);
    stack.push(file);
    for (const to of next.get(file) ?? []) {
      if (!index.has(to)) visit(to);
      if (stack.includes(to)) low.set(file, Math.min(low.get(file) ?? 0, low.get(to) ?? 0));
    }
    if (low.get(file) !== index.get(file)) return;
    const circle = stack.splice(stack.indexOf(file));
    if (circle.length > 1) found.push(circle.sort());
  };
  for (const file of next.keys()) if (!index.has(file)) visit(file);
  return found;
}

/** Arrows that run up, and circles of values outside the object graph of the stand-in. */
export function arrowFaults(files: readonly SourceText[]): string[] {
  const arrows = arrowsOf(files);
  return [
    ...arrows.filter(upward).map(({ from, to }) => `${from} knows ${to}, a room above its own`),
    ...circles(arrows.filter(({ isType }) => !isType))
      .filter((circle) => !circle.every((file) => file.startsWith(OBJECT_GRAPH)))
      .map((circle) => `${circle.join(', ')} know each other in a circle`),
  ];
}
