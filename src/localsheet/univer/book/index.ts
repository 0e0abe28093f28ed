import { SetTriggerFormulaCalculationStartMutation } from '@univerjs/engine-formula';
import type { StandInBook } from '../../../officeStandIn/book';
import type { Engine } from '../engine';
import { BesideStore, besidePart } from './beside';
import { cellPart, UniverCells } from './cells';
import { Context } from './context';
import { featurePart } from './features';
import { formatPart } from './formats';
import { OneUndo } from './oneUndo';
import { sheetPart } from './sheets';
import type { TableExtra } from './tables';
import { tablePart } from './tables';
import { Settling } from './settle';

/** Steps that only give looks; a request gathers them. */
const GIVES_LOOKS: ReadonlySet<string> = new Set(['setFormat', 'setBorder', 'setNumberFormats']);
/** Steps that neither read nor change cells and their looks. */
const BESIDE: ReadonlySet<string> = new Set([
  ...['sheets', 'activeSheet', 'selection', 'names', 'tables', 'charts', 'protection', 'page', 'settings'],
  ...['freeze', 'merges', 'settle'],
]);

/** Every step of the backend runs marked as its own; `group`, which waits for its caller, does not. */
const marked = (context: Context, { group, ...steps }: StandInBook): StandInBook => ({
  group: (work) => group(() => context.gather(work)),
  ...(Object.fromEntries(
    Object.entries(steps).map(([name, step]) => {
      const does = step as (...given: unknown[]) => unknown;
      return [
        name,
        (...args: unknown[]) =>
          context.work(() =>
            BESIDE.has(name) ? does(...args) : context.step(GIVES_LOOKS.has(name), () => does(...args)),
          ),
      ];
    }),
  ) as unknown as Omit<StandInBook, 'group'>),
});

export interface UniverBook {
  readonly book: StandInBook;
  readonly context: Context;
  readonly cells: UniverCells;
  readonly beside: BesideStore;
  readonly oneUndo: OneUndo;
  /** Style and totals of tables, by their ids. */
  readonly tableExtras: Map<string, TableExtra>;
}

/** The open workbook of the embedded spreadsheet as the Excel stand-in sees it. */
export function openBook(engine: Engine): UniverBook {
  const context = new Context(engine);
  const cells = new UniverCells(context);
  const beside = new BesideStore();
  const oneUndo = new OneUndo(context);
  const tableExtras = new Map<string, TableExtra>();
  const settling = new Settling(engine);
  const book: StandInBook = {
    ...sheetPart(context, oneUndo, (sheet) => {
      beside.forget(sheet);
    }),
    ...cellPart(context, cells),
    ...formatPart(context),
    ...tablePart(context, tableExtras),
    ...featurePart(context),
    ...besidePart(beside),
    settle: () => settling.settled(),
    calculate: async () => {
      context.run(SetTriggerFormulaCalculationStartMutation.id, { commands: [], forceCalculation: true });
      await settling.settled();
    },
  };
  return { book: marked(context, book), context, cells, beside, tableExtras, oneUndo };
}
