import type { Injector, Workbook } from '@univerjs/core';
import { BooleanNumber, ICommandService, IUniverInstanceService, UniverInstanceType } from '@univerjs/core';
import type { BaseValueObject, FunctionVariantType, IFunctionInfo } from '@univerjs/engine-formula';
import {
  BaseFunction,
  FunctionType,
  IFunctionService,
  SetTriggerFormulaCalculationStartMutation,
} from '@univerjs/engine-formula';
import { IDescriptionService } from '@univerjs/sheets-formula';
import { addressOf, quoteSheet } from '../../../shared/sheet/formula/address';
import type { Cell, Grid } from '../../../shared/base/values';
import { isError, isGrid } from '../../../shared/base/values';
import { readArgument } from './arguments';
import { asError, errorResult, toResult } from './results';

/** A function as the built bundle associated it; the last argument is Excel's invocation object. */
export type Associated = (...args: unknown[]) => unknown;

interface Parameter {
  readonly name: string;
  readonly description?: string;
  readonly type?: string;
  readonly dimensionality?: string;
  readonly optional?: boolean;
  readonly repeating?: boolean;
}
export interface FunctionRecord {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly parameters: readonly Parameter[];
}
/** functions.json as built. */
export interface FunctionsMetadata {
  readonly functions: readonly FunctionRecord[];
  readonly allowErrorForDataTypeAny?: boolean;
}

export interface FunctionSource {
  readonly namespace: string;
  readonly metadata: FunctionsMetadata;
  readonly associated: ReadonlyMap<string, Associated>;
  /** Makes the error object functions expect inside a range (CustomFunctions.Error of their own runtime). */
  readonly makeError?: (code: string) => unknown;
}

const MOST_ARGUMENTS = 255;
type SheetName = (unitId: string, sheetId: string) => string;

const firstError = (arg: Cell | Grid): string | undefined => {
  if (isError(arg)) return arg.error;
  if (!isGrid(arg)) return undefined;
  for (const row of arg) for (const cell of row) if (isError(cell)) return cell.error;
  return undefined;
};

/**
 * Runs one associated function inside the engine, with arguments and answers as Excel gives and takes them.
 */
class SheetFunction extends BaseFunction {
  // References instead of values: only they tell a blank cell from a zero.
  override needsReferenceObject = true;
  override minParams: number;
  override maxParams: number;
  private readonly wantsGrid: readonly boolean[];
  private readonly takesErrors: readonly boolean[];

  constructor(
    name: string,
    private readonly run: Associated,
    private readonly record: FunctionRecord,
    private readonly source: FunctionSource,
    private readonly sheetName: SheetName,
  ) {
    super(name);
    const { parameters } = record;
    this.minParams = 0;
    // As many as Excel allows, so that our own sentence says what is too many.
    this.maxParams = MOST_ARGUMENTS;
    this.wantsGrid = parameters.map((p) => p.dimensionality === 'matrix');
    this.takesErrors = parameters.map(
      (p) => source.metadata.allowErrorForDataTypeAny === true && (p.type ?? 'any') === 'any',
    );
  }

  private get invocation(): object {
    const { unitId, subUnitId, row, column, sheetName, name } = this;
    return {
      functionName: String(name),
      isInValuePreview: false,
      // Built only when a function asks: most never do.
      get address() {
        return `${quoteSheet(sheetName(unitId ?? '', subUnitId ?? ''))}!${addressOf(row, column)}`;
      },
    };
  }

  private hand(arg: Cell | Grid, at: number): unknown {
    const { makeError } = this.source;
    const cell = (value: Cell): unknown => (isError(value) && makeError ? makeError(value.error) : value);
    if (isGrid(arg))
      return makeError && firstError(arg) !== undefined ? arg.map((row) => row.map(cell)) : arg;
    return this.wantsGrid[at] && arg !== null ? [[cell(arg)]] : cell(arg);
  }

  override calculate(...variants: FunctionVariantType[]): BaseValueObject {
    const { parameters } = this.record;
    if (variants.length > parameters.length)
      return errorResult(
        '#VALUE!',
        `${String(this.name)} takes ${parameters.length} arguments at most; ${variants.length} were given.`,
      );
    const args: unknown[] = new Array(parameters.length + 1).fill(null);
    for (let at = 0; at < variants.length; at++) {
      const variant = variants[at];
      if (!variant) continue;
      const arg = readArgument(variant);
      const failed = firstError(arg);
      if (failed !== undefined && !this.takesErrors[at])
        return errorResult(
          failed,
          `${parameters[at]?.name ?? 'An argument'}: a cell it reads shows ${failed}. Mend that cell first.`,
        );
      // A blank cell of a matrix argument is a blank cell; an argument left out is null.
      args[at] =
        variant.isReferenceObject() && arg === null && this.wantsGrid[at] ? [[null]] : this.hand(arg, at);
    }
    args[parameters.length] = this.invocation;
    return this.answer(args);
  }

  private answer(args: readonly unknown[]): BaseValueObject {
    try {
      const answer = this.run(...args);
      if (answer instanceof Promise) throw new Error('its code has not come yet; reload the page');
      return toResult(answer);
    } catch (thrown) {
      const failure = asError(thrown);
      return failure
        ? errorResult(failure.error, failure.message ?? '')
        : errorResult(
            '#VALUE!',
            `${String(this.name)} stopped: ${thrown instanceof Error ? thrown.message : String(thrown)}`,
          );
    }
  }
}

/** Name, summary and arguments for the engine's own completion list and its screen tips. */
const describe = (name: string, record: FunctionRecord): IFunctionInfo => ({
  functionName: name,
  functionType: FunctionType.User,
  description: record.description ?? '',
  abstract: record.description ?? '',
  functionParameter: record.parameters.map((p) => ({
    name: p.name,
    detail: p.description ?? '',
    example: '',
    require: p.optional ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    repeat: p.repeating ? BooleanNumber.TRUE : BooleanNumber.FALSE,
  })),
});

/** Puts every associated function into the engine under its sheet name. Answers the names. */
export function registerFunctions(injector: Injector, source: FunctionSource): readonly string[] {
  const books = injector.get(IUniverInstanceService);
  const sheetName: SheetName = (unitId, sheetId) =>
    books.getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET)?.getSheetBySheetId(sheetId)?.getName() ??
    '';
  const functions: BaseFunction[] = [];
  const descriptions: IFunctionInfo[] = [];
  for (const record of source.metadata.functions) {
    const run = source.associated.get(record.id) ?? source.associated.get(record.id.toUpperCase());
    if (!run) continue;
    const name = `${source.namespace}.${record.name}`.toUpperCase();
    functions.push(new SheetFunction(name, run, record, source, sheetName));
    descriptions.push(describe(name, record));
  }
  const service = injector.get(IFunctionService);
  service.registerExecutors(...functions);
  // A formula typed before is remembered as unknown.
  service.deleteFormulaAstCacheKey(...functions.map((f) => String(f.name)));
  injector.get(IDescriptionService).registerDescriptions(descriptions);
  return descriptions.map((d) => d.functionName);
}

/** Every formula anew: needed when functions arrive after formulas that name them. */
export const recalculateAll = (injector: Injector): void => {
  injector
    .get(ICommandService)
    .syncExecuteCommand(
      SetTriggerFormulaCalculationStartMutation.id,
      { commands: [], forceCalculation: true },
      { onlyLocal: true },
    );
};
