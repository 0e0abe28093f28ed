import type { DaySheet } from '../../../../shared/books/living/reading/day';
import type { WorkbookPort } from '../../../host/port';
import { dayTables } from '../../today/commands/read';
import type { BookEntry, Filled } from '../state/notebook';

/** The cells of the season's book that take an entry, looked up in the sheet as it stands at this moment. */

const quiet = (): void => undefined;

/** undefined when the book has no such table any more; no cells when there is nothing to fill. */
export async function placeFor(
  entry: BookEntry,
  at: number,
  workbook: WorkbookPort,
  suffix: string | undefined,
): Promise<Filled | undefined> {
  if (entry.kind === 'tick')
    return { sheet: entry.sheet, cells: [{ address: entry.address, from: null, to: at }] };
  if (suffix === undefined) return undefined;
  const day = await dayTables();
  const there = await workbook.listSheets();
  const name = day.sheetNameOf(
    entry.kind === 'pairs' || entry.kind === 'weight' || entry.kind === 'eggGrams' ? 'batches' : 'counts',
    suffix,
    there,
  );
  const found: DaySheet | undefined = (
    await workbook.readCells({ sheet: name }, quiet, () => false)
  )?.sheets.find((one) => one.name === name);
  if (!found) return undefined;
  const { sheet, words } = day.placeSheet(found, suffix, there);
  const cells = (() => {
    switch (entry.kind) {
      case 'log':
        return day.logChanges(sheet, { at, ...entry.fact }, words);
      case 'pairs':
        return day.pairChanges(sheet, entry.batch, entry.key, at);
      case 'look':
        return day.lookChanges(sheet, entry.batch, entry.looked, entry.alive);
      case 'samples':
        return day.sampleChanges(sheet, entry.batch, entry.samples);
      case 'eggGrams':
        return day.eggGramChanges(sheet, entry.batch, entry.grams);
      case 'larvae':
        return day.larvaeChanges(sheet, entry.batch, entry.number);
      case 'fishWeight':
        return day.fishWeightChanges(sheet, entry.batch, entry.grams, at);
      case 'weight':
        return day.weightChanges(sheet, entry.female, entry.kilograms);
    }
  })();
  return cells && { sheet: name, cells };
}
