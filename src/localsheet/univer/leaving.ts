import { IUniverInstanceService, UniverInstanceType } from '@univerjs/core';
import { SheetsDataValidationValidatorService } from '@univerjs/sheets-data-validation';
import type { Engine } from './engine';

/**
 * The engine checks input rules a moment later and trips over a workbook or sheet that was closed in between.
 */
export function leaveQuietly({ injector }: Engine): void {
  const books = injector.get(IUniverInstanceService);
  const validator = injector.get(SheetsDataValidationValidatorService);
  const check = validator.validatorRanges.bind(validator);
  validator.validatorRanges = (unitId, sheetId, ranges) => {
    const book = books.getUnit(unitId, UniverInstanceType.UNIVER_SHEET) as {
      getSheetBySheetId?(id: string): unknown;
    } | null;
    return book?.getSheetBySheetId?.(sheetId) ? check(unitId, sheetId, ranges) : Promise.resolve([]);
  };
}
