import { findFunction } from '../../../shared/catalogue';
import { tokenize } from '../../../shared/sheet/formula/tokenize';
import { summaryOf } from '../../../shared/books/summary';
import { isError } from '../../../shared/base/values';
import { calculate, customDepths, lintWorkbook } from '../../../shared/catalogue/calculation';
import { LivingPages, livingBook } from '../../../shared/books/living';
import type { SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { readXlsx, writeXlsx } from '../../../shared/files';
import { withSuffix } from '../../../taskpane/host/writing/rename';
import { runOf } from '../../run/support';

/** 15 February 2027, the day of planning. */
const TODAY = 46_433;

const pageOf = (book: WorkbookModel): WorkbookModel => {
  const summary = summaryOf(book);
  if ('fault' in summary) throw new Error(summary.fault);
  return summary.model;
};
/** The workbook of the plan with its page, calculated. */
const together = (book: WorkbookModel): WorkbookModel => {
  const { model, faults } = calculate({ ...book, sheets: [...book.sheets, ...pageOf(book).sheets] }, TODAY);
  expect(faults).toEqual([]);
  return model;
};
const sheetOf = (model: WorkbookModel, name = 'Summary'): SheetModel => {
  const sheet = model.sheets.find((one) => one.name === name);
  if (!sheet) throw new Error(`no sheet ${name}`);
  return sheet;
};
/** The value beside a label. */
const beside = (sheet: SheetModel, label: string, column: string): unknown => {
  const row = Object.entries(sheet.cells)
    .find(([, cell]) => cell.value === label)?.[0]
    .replace(/^[A-Z]+/, '');
  if (row === undefined) throw new Error(`no label ${label}`);
  return sheet.cells[`${column}${row}`]?.value;
};
const CASES = [
  ['fingerlings', {}],
  ['fry', { product: 'fry' }],
  ['no females', { females: 0 }],
] as const;
const made = CASES.map(([name, order]) => {
  const run = runOf(order);
  const book = livingBook(run.book, run.plan);
  return { name, ...run, own: book, model: together(book) };
});

describe.each(made)('$name', ({ plan, book, own, model }) => {
  const sheet = sheetOf(model);

  test('has no faults, adds no name and no round of custom functions', () => {
    expect(lintWorkbook(model)).toEqual([]);
    expect(pageOf(own).names).toEqual([]);
    const depths = [...customDepths(model)]
      .filter(([at]) => at.startsWith('Summary!'))
      .map(([, depth]) => depth);
    expect(Math.max(0, ...depths)).toBeLessThanOrEqual(Math.max(...customDepths(own).values()));
  });

  test('calls native functions only, so that it lives on in a copy', () => {
    const calls = Object.values(sheet.cells).flatMap(({ formula }) =>
      formula === undefined
        ? []
        : tokenize(formula)
            .filter(({ kind }) => kind === 'call')
            .map(({ text }) => text),
    );
    expect(calls.length).toBeGreaterThan(10);
    expect(calls.filter((name) => findFunction(name))).toEqual([]);
  });

  test('shows no error, and its chart draws cells of the page itself', () => {
    expect(
      Object.entries(sheet.cells).filter(([, { value }]) => value !== undefined && isError(value)),
    ).toEqual([]);
    const references = (sheet.charts ?? []).flatMap((chart) => [
      chart.categories,
      ...chart.series.map(({ values }) => values),
    ]);
    expect(references.length).toBeGreaterThan(0);
    expect(references.filter((reference) => !reference.startsWith('Summary!'))).toEqual([]);
  });

  test('steps, hours and odds are those of the plan', () => {
    const pages = new LivingPages(book, plan);
    const sum = (key: string): number =>
      plan.batches.reduce((total, batch) => total + pages.reader(batch).number(key), 0);
    expect(beside(sheet, 'Eggs stripped and fertilised', 'D')).toBeCloseTo(sum('eggs'), 6);
    expect(beside(sheet, 'Fish counted out', 'D')).toBeCloseTo(sum('fish'), 6);
    expect(sheet.cells.E5?.value).toBe(plan.orders[0]?.promise);
    expect(beside(sheet, 'Females stripped', 'C')).toBe(
      plan.batches.reduce((total, { pairs }) => total + pairs.length, 0),
    );
    const [first] = plan.batches;
    if (first) expect(sheet.cells.I14?.value).toBeCloseTo(first.stripAt, 9);
  });

  test('poor, planned and good are in this order at every step', () => {
    for (let row = 14; row <= 18; row++) {
      const [poor, planned, good] = ['E', 'D', 'F'].map((c) => Number(sheet.cells[`${c}${row}`]?.value));
      expect(poor).toBeLessThanOrEqual((planned ?? NaN) + 1e-9);
      expect(good).toBeGreaterThanOrEqual((planned ?? NaN) - 1e-9);
    }
  });
});

test('it follows the plan: another survival typed, another page', () => {
  const { model } = made[0] ?? {};
  if (!model) throw new Error('none');
  const [, at = ''] =
    model.names.find(({ name }) => name === 'season_hatch')?.refersTo.match(/!\$?([A-Z]+\$?\d+)$/) ?? [];
  const address = at.replaceAll('$', '');
  const now = calculate(
    {
      ...model,
      sheets: model.sheets.map((sheet) =>
        sheet.name === 'Figures'
          ? { ...sheet, cells: { ...sheet.cells, [address]: { ...sheet.cells[address], value: 0.3 } } }
          : sheet,
      ),
    },
    TODAY,
  ).model;
  const larvae = (book: WorkbookModel): number => Number(beside(sheetOf(book), 'Larvae hatched', 'D'));
  expect(larvae(now) / larvae(model)).toBeCloseTo(0.3 / 0.59, 6);
});

test('a price typed on the page brings what the fish bring', () => {
  const { model } = made[1] ?? {};
  if (!model) throw new Error('none');
  const sheet = sheetOf(model);
  const at =
    Object.entries(sheet.cells)
      .find(([, { value }]) => value === 'Type a price for one fish')?.[0]
      .replace('H', 'I') ?? '';
  expect(beside(sheet, 'Brings in, as planned', 'I')).toBe('–');
  const priced = { ...sheet, cells: { ...sheet.cells, [at]: { ...sheet.cells[at], value: 0.25 } } };
  const now = calculate(
    {
      ...model,
      sheets: model.sheets.map((one) => (one === sheet ? priced : one)),
    },
    TODAY,
  ).model;
  expect(beside(sheetOf(now), 'Brings in, as planned', 'I')).toBeCloseTo(
    0.25 * Number(beside(sheetOf(now), 'Fish counted out', 'D')),
    6,
  );
});

test('a second season in the same workbook gets a page of its own, over its own cells', () => {
  const [one, two] = made;
  if (!one || !two) throw new Error('none');
  const second = withSuffix(two.own, ' 2');
  const model = together({
    ...one.own,
    sheets: [...one.own.sheets, ...second.sheets],
    names: [...one.own.names, ...second.names],
  });
  expect(lintWorkbook(model)).toEqual([]);
  expect(sheetOf(model).cells.E5?.value).toBe(one.plan.orders[0]?.promise);
  expect(sheetOf(model, 'Summary 2').cells.E5?.value).toBe(two.plan.orders[0]?.promise);
});

test('a season read from a file gives the same page', () => {
  const { own } = made[0] ?? {};
  if (!own) throw new Error('none');
  const read = readXlsx(writeXlsx(own));
  if (!('model' in read)) throw new Error(read.fault);
  expect(pageOf(read.model).sheets[0]?.cells.D15?.formula).toBe(pageOf(own).sheets[0]?.cells.D15?.formula);
});

describe('what cannot be summed up is told', () => {
  const own = made[0]?.own ?? { title: '', sheets: [], names: [] };
  test.each([
    ['a workbook without a season', { ...own, sheets: [] }, /no season plan in this workbook/],
    [
      'headings that were moved',
      {
        ...own,
        sheets: own.sheets.map((s) => (s.name === 'Vats' ? { ...s, cells: { B1: { value: 'Mine' } } } : s)),
      },
      /headings of “Vats”/,
    ],
  ])('%s', (_, given, sentence) => {
    const summary = summaryOf(given);
    expect('fault' in summary && summary.fault).toMatch(sentence);
  });
});
