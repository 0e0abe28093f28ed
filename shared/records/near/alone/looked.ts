import type { Cell } from '../../../base/values';
import type { CellRun, ColumnContent } from '../../columns/cells/content';
import { contentOf } from '../../columns/cells/content';
import { unitOfText } from '../../columns/cells/units';
import type { Looked } from '../../columns/steps/looked';
import type { FieldName } from '../../fields';
import { evidenceOf } from '../../meaning/fit';
import type { Link } from '../../meaning/links';

/** Columns half understood, for steps that are asked alone. */
export const runOf = (cells: readonly Cell[]): CellRun => ({
  length: cells.length,
  cellAt: (i) => cells[i] ?? null,
  numberAt: (i) => {
    const cell = cells[i];
    return typeof cell === 'number' ? cell : NaN;
  },
  isDate: () => false,
});
/** What a column may be: score, and what its words say. */
export type May = readonly [field: FieldName, score: number, words?: number];
interface Told {
  readonly content?: Partial<ColumnContent>;
  readonly cells?: readonly Cell[];
  /** As a heading says it. */
  readonly unit?: string;
  /** What its words say of things that it is not. */
  readonly words?: Readonly<Partial<Record<FieldName, number>>>;
}
/** A column that may be these things. */
export function column(may: readonly May[], { content, cells = [], unit, words = {} }: Told = {}): Looked {
  const run = runOf(cells);
  const evidence = evidenceOf('', '', undefined);
  return {
    unread: { name: 'A', header: '', parent: '', run },
    content: { ...contentOf(run), ...content },
    evidence: {
      ...evidence,
      unit: unit === undefined ? undefined : unitOfText(unit),
      words: new Map([
        ...may.map(([field, , said = 0]) => [field, said] as const),
        ...(Object.entries(words) as [FieldName, number][]),
      ]),
    },
    candidates: may.map(([field, score, said = 0]) => ({ field, score, words: said })),
  };
}
/** What the columns are read as after a step. */
export const best = (...columns: readonly (Looked | undefined)[]): string =>
  columns.map((one) => one?.candidates[0]?.field ?? 'open').join(' ');

/** A relation that holds in all of ten lines. */
export const link = (
  kind: Link['kind'],
  result: number,
  inputs: readonly number[],
  more: Partial<Link> = {},
): Link => ({
  kind,
  result,
  inputs,
  signs: inputs.map(() => 1),
  factor: 1,
  isRunning: false,
  holds: 10,
  tried: 10,
  ...more,
});
