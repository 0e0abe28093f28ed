import type { Executor } from '../../../src/officeStandIn/executor';
import type { StandInBook } from '../../../src/officeStandIn/book';

/**
 * A host that refuses at a sync: before any of its changes, in the middle of them (what came before stays, as Excel
 * does it), or after all of them, the answer lost on its way.
 */
export const BREAKS = ['before', 'midway', 'after'] as const;
export interface Breaking {
  readonly how: (typeof BREAKS)[number];
  /** The first sync that fails, from 1, and how many fail in a row. */
  readonly first: number;
  readonly times: number;
}

export interface FaultyHost extends Executor {
  /** Syncs so far. */
  readonly syncs: () => number;
  readonly breakAt: (breaking: Breaking | undefined) => void;
}

export function faultyHost(executor: Executor): FaultyHost {
  let count = 0;
  let breaking: Breaking | undefined;
  return {
    syncs: () => count,
    breakAt: (next) => {
      count = 0;
      breaking = next;
    },
    execute: async (body) => {
      count += 1;
      if (!breaking || count < breaking.first || count >= breaking.first + breaking.times)
        return executor.execute(body);
      const share = { before: 0, midway: 0.5, after: 1 }[breaking.how];
      const actions = body.Actions.slice(0, Math.floor(body.Actions.length * share));
      const done = await executor.execute({ ...body, Actions: actions });
      return {
        Results: done.Results,
        Error: {
          Code: 'GeneralException',
          Message: 'injected',
          Location: '',
          ActionIndex: 0,
          HttpStatusCode: 400,
        },
      };
    },
  };
}

const BOX = { row: 0, column: 0, rows: 14, columns: 8 };

/** Everything a person could see in a book, to compare before and after. */
export async function everythingIn(book: StandInBook): Promise<unknown> {
  const sheets = await book.sheets();
  return {
    active: await book.activeSheet(),
    sheets: await Promise.all(
      sheets.map(async ({ id, name, visibility }) => ({
        name,
        visibility,
        cells: await book.read(id, BOX, 'formulas'),
        formats: await book.read(id, BOX, 'formats'),
        fills: await Promise.all(
          Array.from({ length: 12 }, async (_, i) =>
            book.format(id, { row: i % 6, column: Math.floor(i / 6), rows: 1, columns: 1 }),
          ),
        ),
        merges: await book.merges(id),
        charts: (await book.charts(id)).length,
        rules: (await book.conditionals(id)).length,
        protection: await book.protection(id),
      })),
    ),
    names: await book.names(),
    tables: (await book.tables()).map(({ name }) => name),
    settings: await book.settings(),
  };
}
