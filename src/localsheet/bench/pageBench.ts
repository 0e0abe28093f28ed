import { ICommandService } from '@univerjs/core';
import { SetFormulaCalculationResultMutation } from '@univerjs/engine-formula';
import type { CellInput } from '../../officeStandIn/book';
import type { UniverBook } from '../univer/book';

/**
 * window.spawnbookBench: how long the sheet takes to recalculate many separate cells of one of our functions,
 * against the engine's own function of as many arguments. Rounds alternate between the two, so that a slow
 * moment of the machine hits both.
 */
export interface TimedPair {
  readonly ours: (row: number) => string;
  readonly native: (row: number) => string;
}

/**
 * Each row has its own first argument in column A; the second, $C$1, is what changes and makes every cell
 * stale.
 */
export const PAIR: TimedPair = {
  ours: (row) => `=SPAWN.AMMONIA.SHARE(A${row},$C$1)`,
  native: (row) => `=POWER(A${row},$C$1)`,
};

export interface BenchResult {
  readonly cells: number;
  readonly rounds: number;
  /** Medians, milliseconds from the change to the results in the cells. */
  readonly ours: number;
  readonly native: number;
  /** One dependent cell while the others stand by: what a recalculation costs before any function runs. */
  readonly floor: number;
  readonly ratio: number;
  /** The same without that. */
  readonly netRatio: number;
}

const median = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;
const round = (n: number): number => Math.round(n * 100) / 100;

export interface PageBench {
  cells(count?: number, rounds?: number): Promise<BenchResult>;
}

export function pageBench({ book, context }: UniverBook): PageBench {
  const commands = context.engine.injector.get(ICommandService);
  const calculated = (): Promise<void> =>
    new Promise((resolve) => {
      const listening = commands.onCommandExecuted(({ id }) => {
        if (id === SetFormulaCalculationResultMutation.id) {
          listening.dispose();
          resolve();
        }
      });
    });
  const fill = async (name: string, formula: (row: number) => string, count: number): Promise<string> => {
    const sheet = await book.addSheet(name);
    const rows = Array.from({ length: count }, (_, i): CellInput[] => [
      { value: 6.5 + (i % 300) / 100 },
      { formula: formula(i + 1) },
    ]);
    await book.write(sheet, { row: 0, column: 2, rows: 1, columns: 1 }, [[{ value: 20 }]]);
    await book.write(sheet, { row: 0, column: 0, rows: count, columns: 2 }, rows);
    await book.settle();
    return sheet;
  };
  const once = async (sheet: string, value: number): Promise<number> => {
    const done = calculated();
    const started = performance.now();
    await book.write(sheet, { row: 0, column: 2, rows: 1, columns: 1 }, [[{ value }]]);
    await done;
    const time = performance.now() - started;
    await book.settle();
    return time;
  };
  return {
    async cells(count = 10_000, rounds = 7) {
      const stamp = Date.now().toString(36);
      const [ours, native, one] = [
        await fill(`ours ${stamp}`, PAIR.ours, count),
        await fill(`native ${stamp}`, PAIR.native, count),
        await fill(`one ${stamp}`, PAIR.native, 1),
      ];
      const times = { ours: [] as number[], native: [] as number[], floor: [] as number[] };
      for (let i = -1; i < rounds; i++) {
        // The first round warms up and is not counted.
        const at = [
          await once(ours, 18 + i / 10),
          await once(native, 2 + i / 100),
          await once(one, 2 + i / 100),
        ] as const;
        if (i >= 0) {
          times.ours.push(at[0]);
          times.native.push(at[1]);
          times.floor.push(at[2]);
        }
      }
      const wrong = (await book.read(ours, { row: 0, column: 1, rows: count, columns: 1 }, 'values')).filter(
        ([value]) => typeof value !== 'number',
      ).length;
      for (const sheet of [ours, native, one]) await book.deleteSheet(sheet);
      if (wrong > 0) throw new Error(`${wrong} of ${count} cells did not calculate.`);
      const [a, b, floor] = [median(times.ours), median(times.native), median(times.floor)];
      return {
        cells: count,
        rounds,
        ours: round(a),
        native: round(b),
        floor: round(floor),
        ratio: round(a / b),
        netRatio: round((a - floor) / (b - floor)),
      };
    },
  };
}
