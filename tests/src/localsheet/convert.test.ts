import type { IWorksheetData } from '@univerjs/core';
import type {
  ChartModel,
  SheetModel,
  StyleName,
  ValidationModel,
} from '../../../shared/sheet/workbook/model';
import { STYLES } from '../../../shared/sheet/workbook/styles';
import { EXAMPLES } from '../../../src/localsheet/files/exampleList';
import { buildExample } from '../../../src/localsheet/files/examples';
import {
  chartModel,
  chartState,
  validationModel,
  validationState,
} from '../../../src/localsheet/files/features';
import { engineStyle, lookOf, namedLook } from '../../../src/localsheet/files/looks';
import { charactersOf, pixelsOf, workbookData } from '../../../src/localsheet/files/toEngine';
import { textOfArea } from '../../../src/localsheet/areas';
import { parseAddress, addressOf } from '../../../shared/sheet/formula/address';
import { modelOf } from '../../run/support';

const sheetOf = (cells: SheetModel['cells'], more: Partial<SheetModel> = {}): Partial<IWorksheetData> => {
  const data = workbookData(
    { title: 'T', names: [], sheets: [{ name: 'S', widths: [], cells, ...more }] },
    'b',
  );
  return data.sheets?.sheet1 ?? {};
};

test('values keep their kind, formulas their cached value', () => {
  const { cellData } = sheetOf({
    A1: { value: 1.5 },
    B1: { value: 'text' },
    C1: { value: true },
    D1: { value: { error: '#N/A' } },
    A2: { formula: '=SUM(A1)', value: 1.5 },
  });
  expect(cellData?.[0]).toEqual({
    0: { v: 1.5, t: 2 },
    1: { v: 'text', t: 1 },
    2: { v: 1, t: 3 },
    3: { v: '#N/A', t: 1 },
  });
  expect(cellData?.[1]?.[0]).toEqual({ v: 1.5, t: 2, f: '=SUM(A1)' });
});

test('cells a formula spills into keep their look but not the value, which would block it', () => {
  const { cellData } = sheetOf({
    B2: { formula: '=SPAWN.FEED.TABLE(1)', value: 1, spill: [2, 2] },
    C2: { value: 2 },
    B3: { value: 3, style: 'cell' },
    C3: { value: 4 },
    D3: { value: 5 },
  });
  expect(cellData?.[1]?.[1]).toMatchObject({ f: '=SPAWN.FEED.TABLE(1)', v: 1 });
  expect(cellData?.[1]?.[2]).toEqual({});
  expect(cellData?.[2]?.[1]).not.toHaveProperty('v');
  expect(cellData?.[2]?.[1]).toHaveProperty('s');
  expect(cellData?.[2]?.[3]).toEqual({ v: 5, t: 2 });
});

test('the sheet is large enough for everything on it', () => {
  const sheet = sheetOf({ A4000: { value: 1 }, AZ1: { value: 1 } });
  expect(sheet.rowCount).toBeGreaterThan(4000);
  expect(sheet.columnCount).toBeGreaterThan(52);
});

test.each(Object.entries(STYLES) as [StyleName, (typeof STYLES)[StyleName]][])(
  'the look "%s" comes back under its name or as itself',
  (name, look) => {
    const back = namedLook(lookOf(engineStyle(look, '0.0')));
    const same = (Object.entries(STYLES) as [StyleName, unknown][])
      .filter(([, other]) => JSON.stringify(other) === JSON.stringify(look))
      .map(([key]) => key);
    expect(same.length > 1 ? same : [name]).toContain(back.style);
  },
);

test('column widths come back to a hundredth of a character', () => {
  for (const width of [2, 8.43, 14, 33])
    expect(Math.abs(charactersOf(pixelsOf(width)) - width)).toBeLessThan(0.08);
});

const rules: ValidationModel[] = [
  { range: 'A1', message: 'one of them', kind: 'list', items: ['soda ash', 'baking soda'] },
  { range: 'B2:B9', message: 'a share', kind: 'decimal', min: 0, max: 1 },
  { range: 'C1', message: 'whole', kind: 'whole', min: 1, max: 500 },
  { range: 'D1', message: 'a day', kind: 'date', min: 36526, max: 73050 },
];
test.each(rules)('the input rule %o comes back', (rule) => {
  expect(validationModel(validationState(rule), rule.range)).toEqual(rule);
});

const corners = (place: { row: number; column: number; rows: number; columns: number }) => {
  const [from = '', to = from] = textOfArea(place).split(':');
  return [from, to] as const;
};
const charts = EXAMPLES.flatMap(({ id }) => buildExample(id, 46_350).sheets).flatMap(
  (sheet) => sheet.charts ?? [],
);
const [line] = charts;
/** Kinds the examples do not have. */
const others: readonly ChartModel[] = line
  ? (['column', 'occupancy'] as const).map((kind) => ({ ...line, kind, title: `a ${kind} chart` }))
  : [];
test('there are charts to try', () => {
  expect(new Set([...charts, ...others].map((c) => c.kind))).toEqual(
    new Set<ChartModel['kind']>(['line', 'column', 'occupancy']),
  );
});
test.each([...charts, ...others])('the chart $title comes back', (chart) => {
  expect(chartModel(chartState(chart, 'id'), corners)).toEqual(chart);
});

test('every cell of the book of one order is in the snapshot, at its place', () => {
  const model = modelOf({ wanted: 1000, product: 'fry' });
  const data = workbookData(model, 'b');
  expect(data.sheetOrder).toHaveLength(model.sheets.length);
  model.sheets.forEach((sheet, i) => {
    const found = Object.entries(data.sheets?.[`sheet${i + 1}`]?.cellData ?? {}).flatMap(([row, line]) =>
      Object.keys(line as object).map((column) => addressOf(Number(row), Number(column))),
    );
    expect(found.sort()).toEqual(
      Object.keys(sheet.cells)
        .filter((address) => parseAddress(address))
        .sort(),
    );
  });
});

test('a rule for days that the add-in wrote is kept: its bounds are formulas', () => {
  const state = (formula1: string | number, formula2: string | number) =>
    validationModel(
      { rule: { kind: 'date', operator: 'Between', formula1, formula2 }, ignoreBlanks: true },
      'B2:B9',
    );
  const kept = { range: 'B2:B9', message: '', kind: 'date', min: 36_526, max: 73_050 };
  expect(state('=36526', '=73050')).toEqual(kept);
  expect(state(36_526, '73050')).toEqual(kept);
  // A bound that moves cannot be kept as a number: it is listed before saving.
  expect(state('=TODAY()', '=73050')).toBeUndefined();
  expect(state('', '=73050')).toBeUndefined();
});
