import { findFunction } from '../../../shared/catalogue';
import { tokenize } from '../../../shared/sheet/formula/tokenize';
import { seasonWorkbook } from '../../../shared/run';
import { ASSUMPTIONS } from '../../../shared/families/assumptions';
import { stepsOf } from '../../../shared/run/steps';
import { summaryOf } from '../../../shared/books/summary';
import { isError } from '../../../shared/base/values';
import { calculate, customDepths, lintWorkbook } from '../../../shared/catalogue/calculation';
import type { SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { readXlsx, writeXlsx } from '../../../shared/files';
import { planOf, typedInto } from '../../run/support';

const pageOf = (book: WorkbookModel): WorkbookModel => {
  const summary = summaryOf(book);
  if ('fault' in summary) throw new Error(summary.fault);
  return summary.model;
};
/** The workbook of the plan with its page, calculated. */
const together = (book: WorkbookModel): WorkbookModel => {
  const { model, faults } = calculate({ ...book, sheets: [...book.sheets, ...pageOf(book).sheets] });
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

describe.each([
  ['fingerlings', {}],
  ['fry', { product: 'fry' }],
  ['short of all', { females: 0, males: 0, vats: 1 }],
  ['no dose', { ph: 7.6 }],
] as const)('%s', (_, order) => {
  const plan = planOf(order);
  const model = together(seasonWorkbook(plan));
  const sheet = sheetOf(model);

  test('has no faults, adds no name and no round of custom functions', () => {
    expect(lintWorkbook(model)).toEqual([]);
    expect(pageOf(seasonWorkbook(plan)).names).toEqual([]);
    const depths = [...customDepths(model)]
      .filter(([at]) => at.startsWith('Summary!'))
      .map(([, depth]) => depth);
    const own = [...customDepths(seasonWorkbook(plan)).values()];
    expect(Math.max(...depths)).toBeLessThanOrEqual(Math.max(...own));
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

  test('shows no error, and every chart draws cells of the page itself', () => {
    expect(
      Object.entries(sheet.cells).filter(([, { value }]) => value !== undefined && isError(value)),
    ).toEqual([]);
    const references = (sheet.charts ?? []).flatMap((chart) => [
      chart.categories,
      ...chart.series.map(({ values }) => values),
    ]);
    expect(references.filter((reference) => !reference.startsWith('Summary!'))).toEqual([]);
    expect(sheet.charts).toHaveLength(2);
  });

  test('poor and good ends are the chain worked through the ends, counted out by hand here', () => {
    const { eggsNeeded } = plan.results;
    if (isError(eggsNeeded)) throw new Error('no eggs');
    const steps = stepsOf(plan.form.product);
    const through = (of: (planned: number, key: keyof typeof ASSUMPTIONS) => number): number =>
      steps.reduce((n, { survival }) => n * of(plan.assumed[survival], survival), eggsNeeded);
    const label = `${plan.form.product === 'fry' ? 'Fry' : 'Fingerlings'} counted out to the buyer`;
    expect(beside(sheet, label, 'D')).toBeCloseTo(plan.form.wanted, 6);
    expect(beside(sheet, label, 'E')).toBeCloseTo(
      through((planned, key) => Math.min(planned, ASSUMPTIONS[key].low)),
      6,
    );
    expect(beside(sheet, label, 'F')).toBeCloseTo(
      through((planned, key) => Math.max(planned, ASSUMPTIONS[key].high)),
      6,
    );
  });

  test('times and needs are those of the plan', () => {
    expect(beside(sheet, 'Hormone given to the females', 'I')).toBeCloseTo(Number(plan.results.injectAt), 9);
    expect(beside(sheet, 'Ready for the buyer', 'I')).toBeCloseTo(Number(plan.results.readyAt), 9);
    expect(beside(sheet, 'Ripe females', 'C')).toBe(plan.results.femalesNeeded);
    expect(beside(sheet, 'Ripe females', 'E')).toBe(
      Number(plan.results.femalesNeeded) <= plan.form.females
        ? 'enough'
        : `short by ${Number(plan.results.femalesNeeded) - plan.form.females}`,
    );
    expect(beside(sheet, 'To buy: dry feed', 'C')).toBeCloseTo(Number(plan.results.feedTotal), 9);
  });
});

test('it follows the plan: another survival, another page', () => {
  const model = together(seasonWorkbook(planOf()));
  const now = calculate(typedInto(model, { hatch: 0.4 })).model;
  const wanted = planOf({ assumptions: { hatch: 0.4 } });
  expect(beside(sheetOf(now), 'Ripe females', 'C')).toBe(wanted.results.femalesNeeded);
  expect(beside(sheetOf(now), 'Eggs stripped and fertilised', 'D')).toBeCloseTo(
    Number(wanted.results.eggsNeeded),
    6,
  );
});

test('a price typed on the page brings what the fish bring', () => {
  const model = together(seasonWorkbook(planOf()));
  const sheet = sheetOf(model);
  const at =
    Object.entries(sheet.cells)
      .find(([, { value }]) => value === 'Type a price for one fish')?.[0]
      .replace('H', 'I') ?? '';
  expect(beside(sheet, 'Brings in, as planned', 'I')).toBe('–');
  const priced = { ...sheet, cells: { ...sheet.cells, [at]: { ...sheet.cells[at], value: 0.25 } } };
  const now = calculate({
    ...model,
    sheets: model.sheets.map((one) => (one === sheet ? priced : one)),
  }).model;
  expect(beside(sheetOf(now), 'Brings in, as planned', 'I')).toBeCloseTo(10_000, 6);
});

test('a second plan in the same workbook gets a page of its own, over its own names', () => {
  const one = seasonWorkbook(planOf());
  const two = seasonWorkbook(planOf({ wanted: 9000 }), { label: '2' });
  const model = together({
    ...one,
    sheets: [...one.sheets, ...two.sheets],
    names: [...one.names, ...two.names],
  });
  expect(lintWorkbook(model)).toEqual([]);
  expect(sheetOf(model).cells.B5?.value).toBe(40_000);
  expect(sheetOf(model, 'Summary 2').cells.B5?.value).toBe(9000);
});

test('a plan read from a file gives the same page', () => {
  const read = readXlsx(writeXlsx(seasonWorkbook(planOf())));
  if (!('model' in read)) throw new Error(read.fault);
  expect(pageOf(read.model).sheets[0]?.cells.D15?.formula).toBe(
    pageOf(seasonWorkbook(planOf())).sheets[0]?.cells.D15?.formula,
  );
});

describe('what cannot be summed up is told', () => {
  const book = seasonWorkbook(planOf());
  test.each([
    ['a workbook without a plan', { ...book, names: [] }, /no season plan in this workbook/],
    [
      'a plan that lost a name',
      { ...book, names: book.names.filter(({ name }) => name !== 'ready_at') },
      /lacks the name ready_at/,
    ],
    ['a product nobody knows', typedInto(book, { product: 'roe' }), /fry or fingerlings/],
    [
      'assumptions that were rearranged',
      {
        ...book,
        sheets: book.sheets.map((s) =>
          s.name === 'Assumptions' ? { ...s, cells: { ...s.cells, E4: { value: 'Mine' } } } : s,
        ),
      },
      /rearranged/,
    ],
  ])('%s', (_, given, sentence) => {
    const summary = summaryOf(given);
    expect('fault' in summary && summary.fault).toMatch(sentence);
  });
});
