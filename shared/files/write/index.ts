import type { SheetModel, WorkbookModel } from '../../sheet/workbook/model';
import { SETTINGS_PART, settingsXml } from '../settings';
import { drawingXml, noteBoxesXml, notesOf, notesXml, tableXml } from './attached';
import type { CellWriting } from './cells';
import { SharedTexts } from './cells';
import { Places } from '../../sheet/workbook/places';
import { chartXml } from './chart';
import { isProvenSingle } from './scalar';
import { WrittenPackage, appXml, coreXml, metadataXml, workbookXml } from './package';
import { sheetXml } from './sheet';
import { StyleTable } from './styleTable';
import { THEME_XML } from './theme';

const WORKBOOK = 'xl/workbook.xml';

interface Counters {
  charts: number;
  tables: number;
}

function addSheet(
  file: WrittenPackage,
  model: WorkbookModel,
  sheet: SheetModel,
  index: number,
  context: CellWriting,
  count: Counters,
): string {
  const path = `xl/worksheets/sheet${index + 1}.xml`;
  const charts = sheet.charts ?? [];
  const notes = notesOf(sheet);
  let drawing: string | undefined;
  if (charts.length > 0) {
    const drawingPath = `xl/drawings/drawing${index + 1}.xml`;
    drawing = file.link(path, 'drawing', drawingPath);
    file.add(drawingPath, 'drawing', drawingXml(charts));
    for (const chart of charts) {
      const chartPath = `xl/charts/chart${++count.charts}.xml`;
      file.link(drawingPath, 'chart', chartPath);
      file.add(chartPath, 'chart', chartXml(chart, model));
    }
  }
  let boxes: string | undefined;
  if (notes.length > 0) {
    boxes = file.link(path, 'noteBoxes', `xl/drawings/notes${index + 1}.vml`);
    file.add(`xl/drawings/notes${index + 1}.vml`, 'noteBoxes', noteBoxesXml(notes));
    file.link(path, 'notes', `xl/comments${index + 1}.xml`);
    file.add(`xl/comments${index + 1}.xml`, 'notes', notesXml(notes));
  }
  const tables = (sheet.tables ?? []).map((table) => {
    const id = ++count.tables;
    file.add(`xl/tables/table${id}.xml`, 'table', tableXml(table, sheet, id));
    return file.link(path, 'table', `xl/tables/table${id}.xml`);
  });
  file.add(
    path,
    'sheet',
    sheetXml(sheet, index === 0, context, {
      ...(drawing ? { drawing } : {}),
      ...(boxes ? { notes: boxes } : {}),
      tables,
    }),
  );
  return file.link(WORKBOOK, 'sheet', path);
}

/**
 * The bytes of an .xlsx file. The same model gives the same bytes. Values are written as they stand in the
 * model: calculate it first.
 */
export function writeXlsx(model: WorkbookModel): Uint8Array {
  if (model.sheets.length === 0) throw new Error('A workbook needs at least one sheet.');
  const file = new WrittenPackage();
  file.link('', 'workbook', WORKBOOK);
  file.link('', 'core', 'docProps/core.xml');
  file.link('', 'app', 'docProps/app.xml');
  const places = new Places(model);
  let home = model.sheets[0] as SheetModel;
  const context: CellWriting = {
    styles: new StyleTable(),
    texts: new SharedTexts(),
    isDynamic: false,
    isSingle: (formula) => isProvenSingle(formula, places, home),
  };
  const count: Counters = { charts: 0, tables: 0 };
  const ids = model.sheets.map((sheet, i) => {
    home = sheet;
    return addSheet(file, model, sheet, i, context, count);
  });
  const rest = [
    ['theme', 'xl/theme/theme1.xml', THEME_XML],
    ['styles', 'xl/styles.xml', context.styles.xml()],
    ['texts', 'xl/sharedStrings.xml', context.texts.xml()],
  ] as const;
  for (const [kind, path, xml] of rest) {
    file.link(WORKBOOK, kind, path);
    file.add(path, kind, xml);
  }
  if (context.isDynamic) {
    file.link(WORKBOOK, 'metadata', 'xl/metadata.xml');
    file.add('xl/metadata.xml', 'metadata', metadataXml());
  }
  const settings = settingsXml(model.settings);
  if (settings !== undefined) {
    file.link(WORKBOOK, 'settings', SETTINGS_PART);
    file.add(SETTINGS_PART, 'settings', settings);
  }
  file.add(WORKBOOK, 'workbook', workbookXml(model, ids));
  file.add('docProps/core.xml', 'core', coreXml(model.title));
  file.add('docProps/app.xml', 'app', appXml());
  return file.bytes();
}
