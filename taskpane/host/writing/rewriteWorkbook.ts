import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import { toProblem } from '../excelErrors';
import type { OwnCells, PortTell } from '../port';
import { HalfWritten, HostProblem } from '../port';
import { withSuffix } from './rename';
import type { SheetToWrite } from './renderWorkbook';
import { send, stagesOf } from './renderWorkbook';
import type { BegunWriting } from './unfinished';
import { forget, noteBegun, noteOf } from './unfinished';

/**
 * A book written over itself. Its sheets stay where they are under their names, so that formulas elsewhere
 * which read them go on; only what stands on them is taken away and written anew. Excel does not undo a batch
 * that fails half-way: the book as it was is written back then.
 */

const USUAL_HEIGHT = 15;

interface Standing {
  readonly sheets: readonly SheetToWrite[];
  readonly names: ReadonlySet<string>;
  /** Takes away what stands on the sheets. */
  readonly clear: () => void;
}

async function lookAt(context: Excel.RequestContext, model: WorkbookModel): Promise<Standing> {
  const { worksheets, names } = context.workbook;
  worksheets.load('items/name');
  names.load('items/name');
  await context.sync();
  const there = new Map(worksheets.items.map((sheet) => [sheet.name.toLowerCase(), sheet]));
  const found = model.sheets.map((sheet) => ({ model: sheet, old: there.get(sheet.name.toLowerCase()) }));
  const parts = found.flatMap(({ old }) => {
    if (!old) return [];
    const { charts, tables, protection } = old;
    charts.load('items/id');
    tables.load('items/id');
    protection.load('protected');
    return [{ old, charts, tables, protection, used: old.getUsedRangeOrNullObject() }];
  });
  await context.sync();
  return {
    sheets: found.map(({ model: sheet, old }) => ({ model: sheet, worksheet: old ?? worksheets.add() })),
    names: new Set(names.items.map(({ name }) => name.toLowerCase())),
    clear: () => {
      for (const { old, charts, tables, protection, used } of parts) {
        if (protection.protected) protection.unprotect();
        for (const chart of charts.items) chart.delete();
        for (const table of tables.items) table.delete();
        old.freezePanes.unfreeze();
        if (used.isNullObject) continue;
        used.unmerge();
        used.conditionalFormats.clearAll();
        used.dataValidation.clear();
        used.clear('All');
        used.format.rowHeight = USUAL_HEIGHT;
      }
    },
  };
}

async function writeOver(
  context: Excel.RequestContext,
  model: WorkbookModel,
  tell: PortTell,
  begun: BegunWriting,
  destroys: () => void,
): Promise<void> {
  const { sheets, names, clear } = await lookAt(context, model);
  const stages = stagesOf(context, model, sheets, names);
  const total = stages.length + 1;
  tell({ label: 'Making room', done: 0, total });
  // First the note, in a trip of its own: from the next one on the sheets are not what they were.
  noteBegun(context, begun);
  await context.sync();
  const note = noteOf(context);
  destroys();
  clear();
  await context.sync();
  for (const [done, stage] of stages.entries()) {
    tell({ label: stage.label, done: done + 1, total });
    await send(context, stage);
  }
  forget(note);
  await context.sync();
}

const forgetNote = (): Promise<void> =>
  Excel.run(async (context) => {
    const note = noteOf(context);
    await context.sync();
    forget(note);
    await context.sync();
  });

export async function rewriteWorkbook(
  model: WorkbookModel,
  before: WorkbookModel,
  suffix: string,
  tell: PortTell,
  strays: readonly OwnCells[] = [],
): Promise<readonly string[]> {
  const wanted = withSuffix(model, suffix);
  const sheets = wanted.sheets.map(({ name }) => name);
  const begun = { title: model.title, sheets, ids: [], names: [], over: { suffix, strays } };
  let isDestroyed = false;
  const destroys = (): void => {
    isDestroyed = true;
  };
  try {
    await Excel.run((context) => writeOver(context, wanted, tell, begun, destroys));
  } catch (error) {
    const problem = toProblem(error);
    if (!isDestroyed) {
      // Nothing was touched yet but the note.
      await forgetNote().catch(() => undefined);
      throw problem;
    }
    tell({ label: 'Putting back what stood there', done: 0, total: 1 });
    const old = withSuffix(before, suffix);
    const putBack = (): Promise<void> =>
      Excel.run((context) => writeOver(context, old, () => undefined, begun, destroys));
    try {
      // Once more where a passing hindrance stopped it.
      await putBack().catch(putBack);
    } catch {
      throw new HalfWritten(
        `The writing was not finished, and the season as it was could not be put back yet. Keep this workbook: Spawnbook asks the next time it is opened and puts it back then. ${problem.message}`,
        { cause: error },
      );
    }
    throw new HostProblem(`The season stays as it was: it could not be written over. ${problem.message}`, {
      cause: error,
    });
  }
  return sheets;
}
