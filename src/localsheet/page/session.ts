import { ICommandService, IUndoRedoService, UniverInstanceType } from '@univerjs/core';
import { SetTriggerFormulaCalculationStartMutation } from '@univerjs/engine-formula';
import { IRenderManagerService } from '@univerjs/engine-render';
import { SetRangeValuesMutation } from '@univerjs/sheets';
import { SheetsScrollRenderController } from '@univerjs/sheets-ui';
import { isUnreadable, lostInFile, readXlsx, writeXlsx } from '../../../shared/files';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import { addFeatures } from '../files/features';
import { takeModel } from '../files/fromEngine';
import { workbookData } from '../files/toEngine';
import type { UniverBook } from '../univer/book';

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

  /**
   * `bind` makes the functions known; the engine takes them only once a workbook is there, and must have them
   * before it first calculates.
   */
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

  /** Puts a workbook in place of the open one. */
  async show(model: WorkbookModel): Promise<void> {
    const { book, beside, context } = this.open;
    const { univer, api, injector } = context.engine;
    this.isLoading = true;
    try {
      const old = api.getActiveWorkbook()?.getId();
      beside.clear();
      if (old !== undefined) api.disposeUnit(old);
      univer.createUnit(UniverInstanceType.UNIVER_SHEET, workbookData(model, `book${++this.count}`));
      this.title = model.title;
      await this.drawn();
      if (!this.isBound) await this.bind();
      this.isBound = true;
      await addFeatures(this.open, model);
      const [first] = await book.sheets();
      if (first) await book.select(first.id, { row: 0, column: 0, rows: 1, columns: 1 });
      context.run(SetTriggerFormulaCalculationStartMutation.id, { commands: [], forceCalculation: true });
      await book.settle();
      // Undo must not take the workbook apart again.
      injector.get(IUndoRedoService).clearUndoRedo(context.unitId);
    } finally {
      this.isLoading = false;
      this.isChanged = false;
    }
  }

  /** The same workbook once more, from its contents. */
  async again(): Promise<void> {
    const wasChanged = this.isChanged;
    const { settings } = this.open.beside;
    const { model } = await takeModel(this.open, this.title);
    await this.show(model);
    this.open.beside.settings = settings;
    this.isChanged = wasChanged;
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
    const found = readXlsx(bytes);
    if (isUnreadable(found)) throw new Error(found.fault);
    const { model, lost } = found;
    await this.show({ ...model, title: model.title || fileName.replace(/\.xlsx$/i, '') });
    return lost;
  }

  async save(): Promise<Saved> {
    const { model, lost } = await takeModel(this.open, this.title);
    return { bytes: writeXlsx(model), lost: [...lost, ...lostInFile(model)] };
  }

  saved(): void {
    this.isChanged = false;
  }
}
