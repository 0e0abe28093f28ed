import { ICommandService } from '@univerjs/core';
import {
  FormulaExecutedStateType,
  IActiveDirtyManagerService,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationResultMutation,
  SetFormulaCalculationStartMutation,
  SetFormulaCalculationStopMutation,
  SetTriggerFormulaCalculationStartMutation,
} from '@univerjs/engine-formula';
import type { Engine } from '../engine';

/**
 * The engine waits 100 ms after a change before it starts to calculate (fixed inside it). A timer set at the
 * same change and due a little later fires after the engine's, however busy the page is; a clock would not
 * know.
 */
const START_DELAY = 140;
/** A calculation that never reports its end must not hang the pane. */
const LONGEST = 60_000;

/** Knows when no calculation is pending: a change was made and its results are not in the cells yet. */
export class Settling {
  private pending: ReturnType<typeof setTimeout> | undefined;
  private isRunning = false;
  private isStopping = false;
  /** The next calculation began before the one that was stopped has said that it ended. */
  private isBegunAnew = false;
  private waiters: (() => void)[] = [];

  constructor(engine: Engine) {
    const commands = engine.injector.get(ICommandService);
    const dirty = engine.injector.get(IActiveDirtyManagerService);
    commands.onCommandExecuted(({ id, params }, options) => {
      if (id === SetFormulaCalculationStartMutation.id) this.started();
      else if (id === SetFormulaCalculationStopMutation.id) this.isStopping = true;
      else if (id === SetFormulaCalculationResultMutation.id) this.finished(false);
      else if (id === SetFormulaCalculationNotificationMutation.id)
        this.notified(
          (params as { functionsExecutedState?: FormulaExecutedStateType } | undefined)
            ?.functionsExecutedState,
        );
      // The results themselves are written as a change too; they set off nothing.
      else if (
        options?.fromFormula !== true &&
        (id === SetTriggerFormulaCalculationStartMutation.id || dirty.get(id))
      )
        this.expect();
    });
  }

  private started(): void {
    this.isRunning = true;
    this.isBegunAnew = this.isStopping;
  }

  private expect(): void {
    clearTimeout(this.pending);
    this.pending = setTimeout(() => {
      this.pending = undefined;
      this.wake();
    }, START_DELAY);
  }

  private wake(): void {
    for (const wake of this.waiters.splice(0)) wake();
  }

  private notified(state: FormulaExecutedStateType | undefined): void {
    if (state === undefined) return;
    const { isBegunAnew } = this;
    this.isStopping = false;
    this.isBegunAnew = false;
    // Stopped because something changed meanwhile: it has begun again, or does in a moment.
    if (!isBegunAnew) this.finished(state === FormulaExecutedStateType.STOP_EXECUTION);
  }

  private finished(isStopped: boolean): void {
    this.isRunning = false;
    if (isStopped || this.pending !== undefined) this.expect();
    // After the other listeners, which put the results into the cells.
    else
      setTimeout(() => {
        this.wake();
      }, 0);
  }

  async settled(): Promise<void> {
    const limit = Date.now() + LONGEST;
    while ((this.isRunning || this.pending !== undefined) && Date.now() < limit) {
      await new Promise<void>((resolve) => {
        this.waiters.push(resolve);
        setTimeout(resolve, 1000);
      });
    }
  }
}
