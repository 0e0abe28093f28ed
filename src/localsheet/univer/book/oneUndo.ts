import type { IDisposable } from '@univerjs/core';
import { ICommandService, IUndoRedoService } from '@univerjs/core';
import { RemoveSheetMutation } from '@univerjs/sheets';
import type { Context } from './context';

/** Requests of one writing follow each other within this time, in milliseconds. */
const LINGER = 1500;

/** The engine runs commands of its own too, heights of rows that fit their text for one. */
const BY_A_PERSON =
  /^(univer\.command\.(undo|redo|paste|cut)|sheet\.operation\.set-cell-edit-visible|sheet\.command\.(set-range-values|clear-|delete-|insert-|remove-|move-range|set-style))/;

const UNDO = 'univer.command.undo';

/**
 * What the pane writes in several requests is one step back. The step stays open while requests follow each
 * other and is closed by the first thing a person does.
 */
export class OneUndo {
  private batch: { readonly unit: string; readonly open: IDisposable } | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private running = 0;
  private isListening = false;

  constructor(private readonly context: Context) {}

  private listen(): void {
    if (this.isListening) return;
    this.isListening = true;
    this.context.engine.injector.get(ICommandService).beforeCommandExecuted(({ id, params }) => {
      if (id === UNDO) this.stepAside();
      // The editor is told to close at many moments; only its opening is somebody typing.
      const isClosing = (params as { visible?: boolean } | undefined)?.visible === false;
      if (BY_A_PERSON.test(id) && !isClosing && this.running === 0 && !this.context.isWorking) this.close();
    });
  }

  /** The engine cannot draw a sheet that an undo takes away: another comes to the front before. */
  private stepAside(): void {
    const { engine, book } = this.context;
    const mutations = engine.injector.get(IUndoRedoService).pitchTopUndoElement()?.undoMutations ?? [];
    const going = new Set(
      mutations
        .filter(({ id }) => id === RemoveSheetMutation.id)
        .map(({ params }) => (params as { readonly subUnitId?: string }).subUnitId),
    );
    if (!going.has(book.getActiveSheet().getSheetId())) return;
    const stays = book.getSheets().find((sheet) => !going.has(sheet.getSheetId()) && !sheet.isSheetHidden());
    if (stays) book.setActiveSheet(stays.getSheetId());
  }

  private close(): void {
    clearTimeout(this.timer);
    this.batch?.open.dispose();
    this.batch = undefined;
  }

  /** A request that changes something. */
  change<T>(work: () => Promise<T>): Promise<T> {
    this.listen();
    const unit = this.context.unitId;
    if (this.batch && this.batch.unit !== unit) this.close();
    this.batch ??= {
      unit,
      open: this.context.engine.injector.get(IUndoRedoService).__tempBatchingUndoRedo(unit),
    };
    return this.during(work);
  }

  /** Any request: while it runs, a step that is open stays so. */
  async during<T>(work: () => Promise<T>): Promise<T> {
    this.running++;
    clearTimeout(this.timer);
    try {
      return await work();
    } finally {
      this.running--;
      if (this.running === 0 && this.batch)
        this.timer = setTimeout(() => {
          this.close();
        }, LINGER);
    }
  }
}
