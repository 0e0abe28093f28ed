import { ICommandService, IUndoRedoService, UniverInstanceType } from '@univerjs/core';
import { IRenderManagerService } from '@univerjs/engine-render';
import { SetRangeValuesMutation } from '@univerjs/sheets';
import { SheetsScrollRenderController } from '@univerjs/sheets-ui';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import { addFeatures } from '../files/features';
import { needsCalculation } from '../files/stale';
import { workbookData } from '../files/toEngine';
import type { UniverBook } from '../univer/book';
import { knowTableTheme } from '../univer/book/tables';
import { recalculateAll } from '../univer/functions';

const MOST_TRIES = 300;

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

  /** `bind` makes the functions known; the engine takes them only once a workbook is there. */
  constructor(
    private readonly open: UniverBook,
    private readonly bind: () => Promise<void>,
  ) {
    open.context.engine.injector.get(ICommandService).onCommandExecuted(({ id }, options) => {
      // Results of a calculation come in the same way as typing, marked as local.
      if (id === SetRangeValuesMutation.id && options?.onlyLocal !== true && !this.isLoading)
        this.isChanged = true;
    });
  }

  get hasUnsaved(): boolean {
    return this.isChanged;
  }

  /** Puts a workbook in place of the open one; answers when it is drawn. */
  private async put(model: WorkbookModel): Promise<void> {
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
    univer.createUnit(
      UniverInstanceType.UNIVER_SHEET,
      workbookData(model, `book${++this.count}`, tableExtras),
    );
    this.title = model.title;
    await this.drawn();
  }

  /** An empty workbook at once, before the functions are there. */
  async start(model: WorkbookModel): Promise<void> {
    this.isLoading = true;
    await this.put(model);
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
  async show(model: WorkbookModel): Promise<void> {
    const { book, context } = this.open;
    const { injector } = context.engine;
    await this.bindFunctions();
    this.isLoading = true;
    try {
      await this.put(model);
      await addFeatures(this.open, model);
      const [first] = await book.sheets();
      if (first) await book.select(first.id, { row: 0, column: 0, rows: 1, columns: 1 });
      if (needsCalculation(model)) recalculateAll(injector);
      await book.settle();
      // Undo must not take the workbook apart again.
      injector.get(IUndoRedoService).clearUndoRedo(context.unitId);
    } finally {
      this.isLoading = false;
      this.isChanged = false;
    }
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
    const { isUnreadable, readXlsx } = await import('../../../shared/files');
    const found = readXlsx(bytes);
    if (isUnreadable(found)) throw new Error(found.fault);
    const { model, lost } = found;
    await this.show({ ...model, title: model.title || fileName.replace(/\.xlsx$/i, '') });
    return lost;
  }

  async save(): Promise<Saved> {
    const [{ takeModel }, { writeXlsx }] = await Promise.all([
      import('../files/fromEngine'),
      import('../../../shared/files'),
    ]);
    const { model, lost } = await takeModel(this.open, this.title);
    return { bytes: writeXlsx(model), lost };
  }

  saved(): void {
    this.isChanged = false;
  }
}
