import { orderBookWorkbook, planSeasonBook } from '../../shared/season';
import { calculate } from '../../shared/workbook/calculate';
import { DEEPEST, customDepths, lintWorkbook } from '../../shared/workbook/lint';
import type { CellModel, WorkbookModel } from '../../shared/workbook/model';
import { BOOK, bookOf } from './support';

const DRAWN = { draws: 300 };
const made = (changes: object = {}) => {
  const book = bookOf(changes);
  const plan = planSeasonBook(book, DRAWN);
  return { book, plan, model: orderBookWorkbook(book, plan) };
};
const cell = (model: WorkbookModel, sheet: string, address: string): CellModel => model.sheets.find(({ name }) => name === sheet)?.cells[address] ?? {};
const typed = (model: WorkbookModel, sheet: string, address: string, value: number): WorkbookModel => calculate({
  ...model, sheets: model.sheets.map((s) => (s.name === sheet ? { ...s, cells: { ...s.cells, [address]: { ...s.cells[address], value } } } : s)),
}).model;

describe.each([
  ['two orders', {}],
  ['one that cannot be met', { females: BOOK.females.slice(0, 2) }],
  ['no run at all', { females: [] }],
  ['a run under way', { underway: [{ order: 'Lake farms', vats: ['Vat 1'], until: '2027-03-01', fish: 7000 }] }],
  ['fry without prices', { orders: [{ name: 'A', product: 'fry', number: 20_000, due: '2027-04-01' }], prices: {} }],
])('%s', (_title, changes) => {
  const { plan, model } = made(changes);

  test('has no faults, no wrong cell and no deeper call than two', () => {
    expect(lintWorkbook(model)).toEqual([]);
    expect(calculate(model).faults).toEqual([]);
    expect(Math.max(0, ...customDepths(model).values())).toBeLessThanOrEqual(DEEPEST);
    const errors = model.sheets.flatMap((s) => Object.entries(s.cells).flatMap(([address, c]) => (typeof c.value === 'object' ? [[s.name, address, c.formula, c.value.error]] : [])));
    expect(errors).toEqual([]);
  });

  test('says what the plan says', () => {
    plan.orders.forEach(({ expected }, i) => { expect(Number(cell(model, 'Orders', `G${5 + i}`).value)).toBeCloseTo(expected, 3); });
    expect(Number(cell(model, 'Money', 'C7').value)).toBeCloseTo(plan.money.profit, 6);
    expect(Number(cell(model, 'Money', 'C12').value)).toBeCloseTo(plan.money.leastBalance, 6);
  });
});

describe('the workbook is live', () => {
  const { plan, model } = made();

  test('clock times are formulas that agree with the plan to the rounding of the water', () => {
    plan.runs.forEach((run, i) => {
      for (const [column, when] of [['H', run.injectAt], ['I', run.lateAt], ['J', run.hatchAt], ['K', run.firstFeedAt]] as const)
        expect(Math.abs(Number(cell(model, 'Runs', `${column}${5 + i}`).value) - when) * 24).toBeLessThan(0.5);
      expect(cell(model, 'Runs', `L${5 + i}`).value).toBe(run.readyAt);
    });
  });

  test('cooler water: injection earlier, hatch later, and the calendar follows', () => {
    const cooler = typed(model, 'Runs', 'E5', 24);
    const at = (m: WorkbookModel, column: string): number => Number(cell(m, 'Runs', `${column}5`).value);
    expect(at(cooler, 'H')).toBeLessThan(at(model, 'H') - 1 / 24);
    expect(at(cooler, 'J')).toBeGreaterThan(at(model, 'J') + 1 / 24);
    const inject = Object.entries(model.sheets.find(({ name }) => name === 'Calendar')?.cells ?? {}).find(([, c]) => c.value === 'Inject')?.[0].replace('F', 'C') ?? '';
    expect(cell(cooler, 'Calendar', inject).value).toBe(at(cooler, 'H'));
  });

  test('a count of half the fish makes the order short and the profit smaller', () => {
    const fewer = typed(model, 'Runs', 'Q5', 30_000);
    expect(cell(fewer, 'Orders', 'G5').value).toBe(30_000);
    expect(cell(fewer, 'Orders', 'I5').value).toBe('SHORT');
    expect(Number(cell(fewer, 'Money', 'C7').value)).toBeCloseTo(plan.money.profit - 30_000 * 0.12, 4);
  });

  test('a bar of the vat chart ends where the stay ends', () => {
    const chart = model.sheets.find(({ name }) => name === 'Vats')?.charts?.[0];
    expect(chart?.kind).toBe('occupancy');
    const stays = plan.occupancy.filter(({ vat }) => vat === plan.occupancy[0]?.vat);
    const row = 5 + BOOK.vats.findIndex(({ name }) => name === plan.occupancy[0]?.vat);
    let end = 0;
    stays.forEach((stay, k) => {
      const letter = (n: number): string => String.fromCharCode('C'.charCodeAt(0) + n);
      end += Number(cell(model, 'Bars', `${letter(2 * k)}${row}`).value) + Number(cell(model, 'Bars', `${letter(2 * k + 1)}${row}`).value);
      expect(end).toBeCloseTo(stay.to, 6);
    });
  });
});
