import type { IWorkbookData } from '@univerjs/core';
import { ICommandService, IUndoRedoService, UniverInstanceType } from '@univerjs/core';
import { IRenderManagerService } from '@univerjs/engine-render';
import { SetRangeValuesMutation } from '@univerjs/sheets';
import { SheetsScrollRenderController } from '@univerjs/sheets-ui';
import type { WorkbookModel } from '../../../../shared/sheet/workbook/model';
import { addFeatures } from '../../files/features';
import { countFormulas, countFormulasKept, needsCalculation, needsCalculationKept } from '../../files/stale';
import type { Grids } from '../../files/grid';
import { gridsOf } from '../../files/grid';
import type { Prepared } from '../../files/prepared';
import { readBeside } from '../../files/readBeside';
import { LARGE } from '../../calculating/calculator';
import { workbookData } from '../../files/toEngine';
import type { UniverBook } from '../../univer/book';
import { isCutShort, keptData } from '../../keeping/kept';
import type { KeptWhole } from '../../keeping/shapes';
import { knowTableTheme } from '../../univer/book/tables';
import { recalculateAll } from '../../univer/functions';

const MOST_TRIES = 300;

interface Laid {
  /** Values have to be worked out before they are shown. */
  readonly isStale: boolean;
  readonly isLarge: boolean;
}

export interface Saved {
  readonly bytes: Uint8Array;
  readonly lost: readonly string[];
}

/**
 * The workbook that is open: replaces it, reads and writes files, knows whether there is something unsaved.
 */
export class Session {
  title = 'Workbook';
  private isChanged = false;
  private isLoading = false;
  private isBound = false;
  private count = 0;
  private readonly typedListeners: (() => void)[] = [];
  private readonly shownListeners: (() => void)[] = [];

  /** `bind` makes the functions known; the engine takes them only once a workbook is there. */
  constructor(
    private readonly open: UniverBook,
    private readonly bind: () => Promise<void>,
  ) {
    open.context.engine.injector.get(ICommandService).onCommandExecuted(({ id }, options) => {
      // Results of a calculation come in the same way as typing, marked as local.
      if (id !== SetRangeValuesMutation.id || options?.onlyLocal === true || this.isLoading) return;
      this.isChanged = true;
      for (const listener of this.typedListeners) listener();
    });
  }

  /** Called at each change by a person or the pane. */
  onTyped(listener: () => void): void {
    this.typedListeners.push(listener);
  }
  /** Called when another workbook has taken the place of the open one. */
  onShown(listener: () => void): void {
    this.shownListeners.push(listener);
  }

  get hasUnsaved(): boolean {
    return this.isChanged;
  }

  /** Puts a workbook in place of the open one; answers when it is drawn. */
  private async put(title: string, dataOf: (id: string) => Partial<IWorkbookData>): Promise<void> {
    const { beside, context, tableExtras } = this.open;
    const { univer, api, injector } = context.engine;
    const old = api.getActiveWorkbook()?.getId();
    beside.clear();
    tableExtras.clear();
    // The engine's services exist once a first workbook does; that one is empty.
    if (old !== undefined) {
      knowTableTheme(injector);
      api.disposeUnit(old);
    }
    univer.createUnit(UniverInstanceType.UNIVER_SHEET, dataOf(`book${++this.count}`));
    this.title = title;
    await this.drawn();
  }
  private putModel(model: WorkbookModel, grids?: Grids): Promise<void> {
    return this.put(model.title, (id) => workbookData(model, id, this.open.tableExtras, grids));
  }

  /** While a workbook is being laid out, nothing is typed. */
  get isLayingOut(): boolean {
    return this.isLoading;
  }

  /** An empty workbook at once, before the functions are there. */
  async start(model: WorkbookModel): Promise<void> {
    this.isLoading = true;
    await this.putModel(model);
    this.isLoading = false;
  }

  /** Makes the functions known; formulas that stand already are calculated again. */
  async bindFunctions(): Promise<void> {
    if (this.isBound) return;
    this.isBound = true;
    await this.bind();
    if (this.isChanged) recalculateAll(this.open.context.engine.injector);
  }

  /** Puts a workbook in place of the open one, with all that belongs to it. */
  show(model: WorkbookModel): Promise<void> {
    return this.showPrepared({
      model,
      grids: gridsOf(model),
      isStale: needsCalculation(model),
      formulas: countFormulas(model),
    });
  }
  private showPrepared({ model, grids, isStale, formulas }: Prepared): Promise<void> {
    return this.replace(async () => {
      await this.putModel(model, grids);
      await addFeatures(this.open, model);
      for (const [key, value] of Object.entries(model.settings ?? {}))
        this.open.beside.putSetting(key, value);
      return { isStale, isLarge: formulas >= LARGE };
    });
  }

  /** A workbook as the browser kept it. */
  showKept(whole: KeptWhole): Promise<void> {
    const { beside, tableExtras } = this.open;
    return this.replace(async () => {
      await this.put(whole.book.title, (id) => keptData(whole, id));
      for (const [id, extra] of whole.book.tables) tableExtras.set(id, extra);
      beside.restore(whole.book.beside, whole.book.settings);
      return {
        isStale: isCutShort(whole) || needsCalculationKept(whole),
        isLarge: countFormulasKept(whole) >= LARGE,
      };
    });
  }

  private async replace(lay: () => Promise<Laid>): Promise<void> {
    const { book, context } = this.open;
    const { injector } = context.engine;
    await this.bindFunctions();
    this.isLoading = true;
    try {
      const { isStale, isLarge } = await lay();
      const [first] = await book.sheets();
      if (first) await book.select(first.id, { row: 0, column: 0, rows: 1, columns: 1 });
      if (isStale) recalculateAll(injector);
      // A large workbook is calculated beside the page: its stored values are shown and worked on meanwhile.
      if (!isLarge) await book.settle();
      // Undo must not take the workbook apart again.
      injector.get(IUndoRedoService).clearUndoRedo(context.unitId);
    } finally {
      this.isLoading = false;
      this.isChanged = false;
    }
    for (const listener of this.shownListeners) listener();
  }

  /**
   * The engine builds what draws a workbook a moment after the workbook itself; scrolling and charts need it.
   */
  private async drawn(): Promise<void> {
    const { context } = this.open;
    const renders = context.engine.injector.get(IRenderManagerService);
    for (let tries = 0; tries < MOST_TRIES; tries++) {
      try {
        if (renders.getRenderById(context.unitId)?.with(SheetsScrollRenderController)) return;
      } catch {
        /* not yet */
      }
      await new Promise((resolve) => {
        setTimeout(resolve, 16);
      });
    }
  }

  /**
   * Throws a sentence when the file cannot be read; the open workbook then stays. Answers what the file held
   * that cannot be shown.
   */
  async read(bytes: Uint8Array, fileName: string): Promise<readonly string[]> {
    const { model, lost, ...rest } = await readBeside(bytes);
    await this.showPrepared({
      ...rest,
      model: { ...model, title: model.title || fileName.replace(/\.xlsx$/i, '') },
    });
    return lost;
  }

  async save(): Promise<Saved> {
    const [{ takeModel }, { lostInFile, writeXlsx }] = await Promise.all([
      import('../../files/fromEngine'),
      import('../../../../shared/files'),
    ]);
    const { model, lost } = await takeModel(this.open, this.title);
    return { bytes: writeXlsx(model), lost: [...lost, ...lostInFile(model)] };
  }

  saved(): void {
    this.isChanged = false;
  }
}
