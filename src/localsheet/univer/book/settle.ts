import { ICommandService } from '@univerjs/core';
import {
  IActiveDirtyManagerService, SetFormulaCalculationNotificationMutation, SetFormulaCalculationResultMutation, SetFormulaCalculationStartMutation, SetTriggerFormulaCalculationStartMutation,
} from '@univerjs/engine-formula';
import type { Engine } from '../engine';

/** The engine waits this long after a change before it starts to calculate (fixed inside it); a little is added for its timer. */
const START_DELAY = 140;
/** A calculation that never reports its end must not hang the pane. */
const LONGEST = 60_000;

/** Knows when no calculation is pending: a change was made and its results are not in the cells yet. */
export class Settling {
  private pendingUntil = 0;
  private isRunning = false;
  private waiters: (() => void)[] = [];

  constructor(engine: Engine) {
    const commands = engine.injector.get(ICommandService);
    const dirty = engine.injector.get(IActiveDirtyManagerService);
    commands.onCommandExecuted(({ id, params }) => {
      if (id === SetFormulaCalculationStartMutation.id) this.isRunning = true;
      else if (id === SetFormulaCalculationResultMutation.id) this.finished();
      else if (id === SetFormulaCalculationNotificationMutation.id) { if ((params as { functionsExecutedState?: number } | undefined)?.functionsExecutedState !== undefined) this.finished(); }
      else if (id === SetTriggerFormulaCalculationStartMutation.id || dirty.get(id)) this.pendingUntil = Date.now() + START_DELAY;
    });
  }

  private finished(): void {
    this.isRunning = false;
    if (Date.now() < this.pendingUntil) this.pendingUntil = Date.now() + START_DELAY;
    for (const wake of this.waiters.splice(0)) wake();
  }

  async settled(): Promise<void> {
    const limit = Date.now() + LONGEST;
    while (Date.now() < limit) {
      const wait = this.pendingUntil - Date.now();
      if (this.isRunning) await new Promise<void>((resolve) => { this.waiters.push(resolve); setTimeout(resolve, 250); });
      else if (wait > 0) await new Promise((resolve) => { setTimeout(resolve, Math.min(wait, 30)); });
      else return;
    }
  }
}
