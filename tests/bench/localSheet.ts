import { coldPaneStart, openLocalSheet } from '../browser/support/localSheet';
import { sheetOpening } from './sheetOpening';
import type { Timing } from './catalogue';

const CELLS = 10_000;

/**
 * 10,000 cells that each call one of our functions, against as many that call the engine's own, in the same
 * page.
 */
export async function localSheetTimings(): Promise<Timing[]> {
  const session = await openLocalSheet();
  try {
    const result = await session.page.evaluate((cells) => window.spawnbookBench?.cells(cells, 5), CELLS);
    if (!result) throw new Error('the page has no bench');
    const starts = [
      await coldPaneStart(session.pane.url()),
      await coldPaneStart(session.pane.url()),
      await coldPaneStart(session.pane.url()),
    ];
    return [
      ...(await sheetOpening(session.url)),
      {
        name: `${CELLS.toLocaleString('en')} function cells ÷ the spreadsheet's own function, local sheet`,
        value: result.ratio,
        unit: '×',
        limit: 2,
      },
      {
        name: 'pane usable in a browser that never saw it, best of 3',
        value: Math.min(...starts) / 1000,
        unit: 's',
        limit: 1,
      },
    ];
  } finally {
    await session.close();
  }
}
