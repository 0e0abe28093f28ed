import { seasonWorkbook } from '../../shared/run';
import { RESULT_KEYS } from '../../shared/run/results';
import type { ResultKey } from '../../shared/run/results';
import { calculate, customDepths, lintWorkbook } from '../../shared/catalogue/calculation';
import { DEEPEST } from '../../shared/sheet/workbook/lint';
import type { WorkbookModel } from '../../shared/sheet/workbook/model';
import { cellNamed, planOf, typedInto } from './support';

const ORDERS = [
  {},
  { product: 'fry' },
  { alkalinity: undefined },
  { plannedOn: undefined },
  { ph: 7.6 },
  { females: 0, males: 0, vats: 1 },
  { females: 1, wanted: 900 },
  { wanted: 900_000, females: 40, males: 25, vats: 60, femaleWeight: 0.8 },
  { preparation: 'ready-made solution', temperature: 29, stripHour: 0 },
  { stripHour: 23.5, temperature: 23 },
  { assumptions: { latencyOffset: -2, weaningDays: 0, liveDays: 9, hatch: 0.3 } },
  { product: 'fry', assumptions: { liveDays: 10, weaningDays: 4, rearingDays: 7 } },
] as const;

const keysOf = (model: WorkbookModel): ResultKey[] =>
  RESULT_KEYS.filter(
    (key) => key !== 'vatsNursing' || model.names.some(({ name }) => name === 'vats_nursing'),
  );
const close = (got: unknown, wanted: unknown): boolean =>
  typeof got === 'number' &&
  typeof wanted === 'number' &&
  Math.abs(got - wanted) <= 1e-9 * Math.max(1, Math.abs(wanted));

describe.each(ORDERS.map((order) => [JSON.stringify(order), order] as const))('order %s', (_title, order) => {
  const plan = planOf(order);
  const model = seasonWorkbook(plan);

  test('has no faults and no deeper call than two', () => {
    expect(lintWorkbook(model)).toEqual([]);
    expect(calculate(model).faults).toEqual([]);
    expect(Math.max(...customDepths(model).values())).toBe(DEEPEST);
  });

  test('formulas of the workbook and the plan give the same answers', () => {
    const differing = keysOf(model).filter((key) => !close(cellNamed(model, key).value, plan.results[key]));
    expect(differing.map((key) => [key, cellNamed(model, key).value, plan.results[key]])).toEqual([]);
  });

  test('the calendar and the feed table say what the plan says', () => {
    const [calendar, feed] = ['Calendar', 'Feed'].map(
      (name) => model.sheets.find((s) => s.name === name)?.cells ?? {},
    );
    plan.tasks.forEach((task, i) => {
      expect(close(calendar?.[`C${5 + i}`]?.value, task.when)).toBe(true);
      if (task.howMuch !== undefined) expect(close(calendar?.[`G${5 + i}`]?.value, task.howMuch)).toBe(true);
    });
    plan.feed.forEach((row, i) => {
      for (const [column, wanted] of [
        ['E', row.fish],
        ['F', row.weight],
        ['I', row.cysts],
        ['K', row.dry],
      ] as const)
        expect([i, column, close(feed?.[`${column}${5 + i}`]?.value, wanted)]).toEqual([i, column, true]);
    });
  });
});

describe('the workbook is live', () => {
  const model = seasonWorkbook(planOf());

  test.each([
    [{ temperature: 24 }, { temperature: 24 }],
    [{ wanted: 75_000 }, { wanted: 75_000 }],
    [{ stripHour: 18 }, { stripHour: 0.75 }],
    [
      { ph: 6.4, alkalinity: undefined },
      { ph: 6.4, alkalinity: undefined },
    ],
    [{ material: 'baking soda' }, { material: 'baking soda' }],
    [{ preparation: 'carp pituitary' }, { preparation: 'carp pituitary' }],
    [
      { females: 2, femaleWeight: 0.9 },
      { females: 2, femaleWeight: 0.9 },
    ],
    [
      { assumptions: { hatch: 0.4, eggShare: 0.06, latencyOffset: 1.5 } },
      { hatch: 0.4, eggShare: 0.06, latencyOffset: 1.5 },
    ],
  ])('typing %j moves everything as planning again would', (changes, typed) => {
    const plan = planOf(changes);
    const now = calculate(typedInto(model, typed)).model;
    const differing = keysOf(now).filter((key) => !close(cellNamed(now, key).value, plan.results[key]));
    expect(differing.map((key) => [key, cellNamed(now, key).value, plan.results[key]])).toEqual([]);
  });

  test('a count typed on Chain carries on from there: later numbers and feed, not the eggs', () => {
    const chain = model.sheets.find((s) => s.name === 'Chain');
    if (!chain) throw new Error('no Chain');
    const counted = { ...chain, cells: { ...chain.cells, E7: { ...chain.cells['E7'], value: 30_000 } } };
    const now = calculate({ ...model, sheets: model.sheets.map((s) => (s === chain ? counted : s)) }).model;
    expect(cellNamed(now, 'larvaeFeeding').value).toBe(30_000);
    expect(cellNamed(now, 'fishWeaned').value).toBeCloseTo(30_000 * 0.75, 6);
    expect(cellNamed(now, 'eggsNeeded').value).toBe(cellNamed(model, 'eggsNeeded').value);
    const ratio = 30_000 / Number(cellNamed(model, 'larvaeFeeding').value);
    expect(cellNamed(now, 'feedTotal').value).toBeCloseTo(
      Number(cellNamed(model, 'feedTotal').value) * ratio,
      6,
    );
  });

  test('verdicts on Start follow: enough, then short', () => {
    const verdict = (m: WorkbookModel): unknown[] =>
      Object.values(m.sheets[0]?.cells ?? {})
        .map(({ value }) => value)
        .filter((v) => typeof v === 'string' && /^(enough|SHORT|can be met|CANNOT)/.test(v));
    expect(verdict(model)).toEqual(['enough', 'enough', 'enough', 'can be met']);
    expect(verdict(calculate(typedInto(model, { females: 1, vats: 1 })).model)).toEqual([
      'SHORT by 2',
      'enough',
      'SHORT by 1',
      'CANNOT be met',
    ]);
  });
});

test('a label keeps two plans apart in one workbook', () => {
  const [first, second] = [
    seasonWorkbook(planOf()),
    seasonWorkbook(planOf({ wanted: 5000 }), { label: 'Run 2' }),
  ];
  expect(second.sheets.map(({ name }) => name)).toEqual(first.sheets.map(({ name }) => `${name} Run2`));
  const both = {
    title: 'Both',
    sheets: [...first.sheets, ...second.sheets],
    names: [...first.names, ...second.names],
  };
  expect(lintWorkbook(both)).toEqual([]);
  expect(calculate(both).model.sheets[9]?.cells).toEqual(second.sheets[0]?.cells);
});

test('inputs are open, formulas are locked, and every input has its rule', () => {
  for (const sheet of seasonWorkbook(planOf()).sheets) {
    expect(sheet.isProtected).toBe(true);
    for (const [address, cell] of Object.entries(sheet.cells))
      if (cell.formula !== undefined)
        expect([sheet.name, address, cell.style]).not.toEqual([sheet.name, address, 'input']);
    const ruled = new Set((sheet.validations ?? []).map(({ range }) => range.split(':')[0]));
    const inputs = Object.entries(sheet.cells)
      .filter(([, cell]) => cell.style === 'input' && typeof cell.value === 'number')
      .map(([address]) => address);
    if (sheet.name !== 'Brood') expect(inputs.filter((address) => !ruled.has(address))).toEqual([]);
  }
});
