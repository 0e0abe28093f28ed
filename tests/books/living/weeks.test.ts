import { asOf, changesOf, livingBook } from '../../../shared/books/living';
import { planBatches } from '../../../shared/season/batches';
import { calculate, customDepths, lintWorkbook } from '../../../shared/catalogue/calculation';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import { BOOK, bookOf, checked } from '../../season/support/support';
import { readBack } from './support';

const OPTIONS = { draws: 200, explains: false } as const;
const errorsIn = (model: WorkbookModel) =>
  model.sheets.flatMap((s) =>
    Object.entries(s.cells).flatMap(([address, c]) =>
      typeof c.value === 'object' ? [`${s.name} ${address} ${c.value.error}`] : [],
    ),
  );
const broken = (model: WorkbookModel): string[] => {
  const cells = model.sheets.find(({ name }) => name === 'Checks')?.cells ?? {};
  return Object.entries(cells).flatMap(([a, { value }]) =>
    a.startsWith('F') && typeof value === 'string' && /^[×?]/.test(value)
      ? [
          `${String(cells[`B${a.slice(1)}`]?.value)}: ${JSON.stringify([cells[`C${a.slice(1)}`]?.value, cells[`D${a.slice(1)}`]?.value])}`,
        ]
      : [],
  );
};

const MANY = {
  orders: Array.from({ length: 8 }, (_, i) => ({
    name: `Buyer ${i + 1}`,
    product: i % 2 ? 'fry' : 'fingerlings',
    number: 2000 + 500 * i,
    due: 46_440 + 9 * i,
    price: 0.1,
  })),
  females: BOOK.females,
};

describe('a season of batches in one book', () => {
  const book = bookOf(MANY);
  const plan = planBatches(book, OPTIONS);
  const model = livingBook(book, plan);

  test('is written without a fault, and its checks hold', () => {
    expect(plan.batches.length).toBeGreaterThan(0);
    expect(lintWorkbook(model)).toEqual([]);
    expect(calculate(model, plan.plannedOn).faults).toEqual([]);
    expect(errorsIn(model)).toEqual([]);
    expect(Math.max(...customDepths(model).values())).toBeLessThanOrEqual(2);
    expect(broken(model)).toEqual([]);
  });

  test('planned again every three weeks: batches under way stay, what was typed stays', () => {
    let now = model;
    let kept: readonly string[] = [];
    for (const today of [46_420, 46_440, 46_460, 46_480]) {
      const before = readBack(now);
      const next = checked(asOf(before, today));
      const after = planBatches(next, OPTIONS);
      for (const name of kept) expect(after.batches.map((b) => b.name)).toContain(name);
      const under = next.batches.map((b) => b.name);
      for (const batch of after.batches.filter(({ name }) => under.includes(name))) {
        const was = before.plan.batches.find(({ name }) => name === batch.name);
        expect([batch.name, batch.stripAt, batch.pairs.length]).toEqual([
          batch.name,
          was?.stripAt,
          was?.pairs.length,
        ]);
      }
      expect(changesOf(before.plan, after).filter(({ kind }) => kind === 'kept').length).toBe(under.length);
      now = livingBook(next, after, before.typed);
      expect(errorsIn(now)).toEqual([]);
      kept = under;
    }
    expect(kept.length).toBeGreaterThan(0);
  });
});
