import type { IFormulaDatasetConfig, IAllRuntimeData } from '@univerjs/engine-formula';
import {
  ICalculateFormulaService,
  IDependencyManagerService,
  IFunctionService,
} from '@univerjs/engine-formula';
import { addressOf, quoteSheet } from '../../../shared/sheet/formula/address';
import { isError } from '../../../shared/base/values';
import type { LiveAnswer } from '../../../shared/sheet/live/work';
import type { WatchAnswer } from '../../../shared/sheet/live/watch';
import { lastErrors } from '../../shell/lastErrors';
import { onlyCall } from '../univer/answerFormats';
import type { UniverBook } from '../univer/book';
import { beside } from './beside';
import { Changed } from './changes';
import { announcement } from './results';

/**
 * From so many formulas on, a workbook is calculated beside the page, by our own evaluator; smaller ones stay
 * with the engine, which knows more functions and answers them in no time.
 */
export const LARGE = 2000;
/** The engine reads these itself; they are no functions to it. */
const SPECIAL = new Set(['LET', 'LAMBDA']);

const OURS = /SPAWN\.[A-Z0-9.]+/i;

interface Service {
  execute(config: IFormulaDatasetConfig): Promise<void>;
  /** There is no public door for results that come from elsewhere. */
  readonly _executionCompleteListener$: { next(data: IAllRuntimeData): void };
}

const today = (): number => {
  const now = new Date();
  return Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / 86_400_000 + 25_569;
};

function isLarge({ formulaData }: IFormulaDatasetConfig, unit: string): boolean {
  let count = 0;
  for (const sheet of Object.values(formulaData[unit] ?? {}))
    for (const line of Object.values(sheet ?? {})) {
      count += Object.keys(line ?? {}).length;
      if (count >= LARGE) return true;
    }
  return false;
}

/** Decides who calculates the open workbook, and stands in for the engine's calculation where it is the worker. */
export class Calculator {
  private readonly service: Service;
  private readonly own: Service['execute'];
  private readonly changed: Changed;
  /** The workbook the worker knows. */
  private known = '';
  private readonly refused = new Set<string>();
  private isRunning = false;
  private isAsked = false;
  private isAll = false;
  private again = new Set<string>();

  constructor(private readonly open: UniverBook) {
    const { injector } = open.context.engine;
    this.service = injector.get(ICalculateFormulaService) as unknown as Service;
    this.own = this.service.execute.bind(this.service);
    this.changed = new Changed(open);
    this.service.execute = (config) => this.execute(config);
  }

  private execute(config: IFormulaDatasetConfig): Promise<void> {
    const { unitId } = this.open.context;
    if (this.refused.has(unitId) || (this.known !== unitId && !isLarge(config, unitId)))
      return this.own(config);
    this.isAsked = true;
    this.isAll ||= config.forceCalculate;
    return this.isRunning ? Promise.resolve() : this.run(config);
  }

  private async run(config: IFormulaDatasetConfig): Promise<void> {
    this.isRunning = true;
    const answers: LiveAnswer[] = [];
    const watches: WatchAnswer[] = [];
    let unit = '';
    try {
      while (this.isAsked) {
        unit = this.open.context.unitId;
        const found = await this.ask(unit);
        if (this.open.context.unitId !== unit) this.isAsked ||= !this.refused.has(this.open.context.unitId);
        else if (found.unknown.some((name) => this.engineKnows(name))) throw new Error('engine');
        else {
          answers.push(...found.answers);
          watches.push(...found.watches);
        }
      }
    } catch {
      // Functions only the engine knows, or no worker: the engine takes this workbook over.
      this.refused.add(unit);
      this.known = '';
      this.isRunning = false;
      // What the engine knew of this workbook is from before the worker had it.
      this.open.context.engine.injector.get(IDependencyManagerService).reset();
      return this.own({ ...config, forceCalculate: true });
    }
    this.isRunning = false;
    this.announce(unit, answers, watches);
  }

  private ask(unit: string) {
    const isNew = this.known !== unit;
    this.known = unit;
    this.isAsked = false;
    const isAll = this.isAll;
    this.isAll = false;
    const again = [...this.again];
    this.again.clear();
    return beside.ask<'calculate'>({
      task: 'calculate',
      book: unit,
      today: today(),
      isAll,
      again,
      ...this.changed.take(isNew),
    });
  }

  private engineKnows(name: string): boolean {
    return SPECIAL.has(name) || this.open.context.engine.injector.get(IFunctionService).hasExecutor(name);
  }

  private announce(unit: string, answers: readonly LiveAnswer[], watches: readonly WatchAnswer[]): void {
    const isHere = unit === this.open.context.unitId;
    const present = isHere ? answers.filter((answer) => this.isPresent(answer)) : [];
    this.remember(present);
    this.service._executionCompleteListener$.next(announcement(unit, present, isHere ? watches : []));
  }

  /** What was typed meanwhile stands; it has been told to the worker, or will be. */
  private isPresent({ sheet, row, column }: LiveAnswer): boolean {
    if (this.changed.isMoved(sheet)) {
      this.again.add(sheet);
      return false;
    }
    return (
      this.open.context.workbook.getSheetBySheetId(sheet) !== null &&
      !this.changed.isTyped(sheet, row, column)
    );
  }

  /** The pane lists the sentences of the cells that show an error now. */
  private remember(answers: readonly LiveAnswer[]): void {
    const errors = lastErrors();
    const hasSome = errors.list().length > 0;
    for (const answer of answers) {
      const { sheet, row, column, value, grid } = answer;
      if (!isError(value) && !hasSome) continue;
      const name = this.open.context.workbook.getSheetBySheetId(sheet)?.getName() ?? '';
      const address = `${quoteSheet(name)}!${addressOf(row, column)}`;
      const functionName = isError(value) ? this.calledAt(answer) : undefined;
      if (isError(value) && value.message && functionName !== undefined) {
        const cells = grid?.flat().filter(isError).length ?? 1;
        errors.record({ address, functionName, code: value.error, message: value.message, cells });
      } else errors.forget(address);
    }
  }

  /** The function of ours that the formula of a cell calls. */
  private calledAt({ sheet, row, column }: LiveAnswer): string | undefined {
    const formula = this.open.cells.formula(sheet, row, column) ?? '';
    return onlyCall(formula) ?? OURS.exec(formula)?.[0];
  }
}
