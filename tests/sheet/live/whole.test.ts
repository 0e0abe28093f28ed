import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { findFunction } from '../../../shared/catalogue';
import { calculate } from '../../../shared/catalogue/calculation';
import { LiveBook } from '../../../shared/sheet/live/book';
import { isUnreadable, readXlsx } from '../../../shared/files';
import { addressOf, parseAddress, parseArea } from '../../../shared/sheet/formula/address';
import type { CellModel } from '../../../shared/sheet/workbook/model';
import { chance } from '../../support/chance';

import type { Content } from './desk';
import { Desk } from './desk';

/** The calculation that is kept up to date against the whole calculation, in many moves and in whole books. */

const COLUMNS = 6;
const ROWS = 14;

function randomContent(random: () => number, row: number): Content | null {
  const pick = (n: number): number => Math.floor(random() * n);
  // Formulas look upwards only: circles have their own test.
  const cell = (): string => addressOf(pick(Math.max(1, row)), pick(COLUMNS));
  const area = (): string => `${cell()}:${cell()}`;
  const target = random() < 0.3 ? (random() < 0.5 ? 'Two!' : "'A third'!") : '';
  const options: (() => Content | null)[] = [
    () => pick(20),
    () => random() * 100 - 50,
    () => ['x', 'egg', '12', ''][pick(4)] ?? 'x',
    () => null,
    () => random() < 0.5,
    () => `=${target}${cell()}+${cell()}*2`,
    () => `=SUM(${target}${area()})`,
    () => `=IF(${cell()}>${pick(10)},${target}${cell()},${cell()}&"!")`,
    () => `=SUMIFS(${target}A1:A${row || 1},${target}B1:B${row || 1},">${pick(10)}")`,
    () => `=IFERROR(${cell()}/${cell()},${pick(5)})`,
    () => `=COUNT(${target === '' ? 'Two!' : target}A1:C14)`,
    () => `=rate*${cell()}`,
    () => `=SUM(block)`,
    () => `=SPAWN.HORMONE.VOLUME(${cell()},0.5)`,
    () => `=MAX(${area()},${cell()})`,
  ];
  return options[pick(options.length)]?.() ?? null;
}

test('after any edits the kept values are those of the whole calculation', () => {
  for (let seed = 1; seed <= 5; seed++) {
    const random = chance(seed);
    const desk = new Desk('One', 'Two', 'A third');
    desk.names = [
      { name: 'rate', refersTo: '=Two!$B$1' },
      { name: 'block', refersTo: "'A third'!$A$1:$B$3" },
    ];
    desk.live.setNames(desk.names);
    for (let step = 0; step < 40; step++) {
      for (let i = 0; i < 4; i++) {
        // Only the first sheet holds formulas that read the others, so that there is no circle.
        const row = Math.floor(random() * ROWS);
        const sheet = random() < 0.6 ? 'One' : random() < 0.5 ? 'Two' : 'A third';
        const content = randomContent(random, row);
        const isOutward = typeof content === 'string' && /Two|third|rate|block/.test(content);
        desk.put(
          sheet,
          addressOf(row, Math.floor(random() * COLUMNS)),
          (isOutward && sheet !== 'One') || (typeof content === 'string' && row === 0) ? step : content,
        );
      }
      desk.live.calculate();
      expect([seed, step, ...desk.differences()]).toEqual([seed, step]);
    }
  }
});

test('a season as written: opened nothing differs, and edits of its inputs give what the whole gives', () => {
  const file = readXlsx(readFileSync(join(__dirname, '../../../templates/season-plan.xlsx')));
  if (isUnreadable(file)) throw new Error(file.fault);
  const { model } = file;
  const day = 46_000;
  const live = new LiveBook(findFunction);
  live.setToday(day);
  live.setSheets(model.sheets.map(({ name }) => ({ id: name, name })));
  live.setNames(model.names);
  const tables = model.sheets.flatMap((sheet) =>
    (sheet.tables ?? []).flatMap(({ name, range }) => {
      const area = parseArea(range);
      return area ? [{ name, sheet: sheet.name, area }] : [];
    }),
  );
  live.setTables(tables);
  for (const sheet of model.sheets)
    live.set(
      sheet.name,
      Object.entries(sheet.cells).map(([address, { value = null, formula }]) => ({
        ...(parseAddress(address) ?? { row: 0, column: 0 }),
        value,
        ...(formula === undefined ? {} : { formula }),
      })),
    );
  live.calculate();
  expect(live.formulaCount).toBeGreaterThan(400);
  expect(live.unknown()).toEqual([]);
  const inputs = model.sheets.flatMap((sheet, at) =>
    Object.entries(sheet.cells).flatMap(([address, { value, formula, style }]) =>
      formula === undefined && typeof value === 'number' && style === 'input' ? [{ at, address, value }] : [],
    ),
  );
  expect(inputs.length).toBeGreaterThan(10);
  const random = chance(3);
  for (let step = 0; step < 2; step++) {
    const { at, address, value } = inputs[Math.floor(random() * inputs.length)] ?? {
      at: 0,
      address: 'A1',
      value: 0,
    };
    const sheet = model.sheets[at];
    if (!sheet) continue;
    const next = value * 1.25 + 1;
    (sheet.cells as Record<string, CellModel>)[address] = { ...sheet.cells[address], value: next };
    live.set(sheet.name, [{ ...(parseAddress(address) ?? { row: 0, column: 0 }), value: next }]);
    live.calculate();
    const differing = calculate(model, day).model.sheets.flatMap(({ name, cells }) =>
      Object.entries(cells).filter(([where, cell]) => {
        const { row, column } = parseAddress(where) ?? { row: 0, column: 0 };
        return (
          cell.formula !== undefined &&
          JSON.stringify(live.value(name, row, column)) !== JSON.stringify(cell.value)
        );
      }),
    );
    expect([address, differing.slice(0, 3)]).toEqual([address, []]);
  }
});

test('a chain of twenty thousand cells', () => {
  const desk = new Desk('S');
  desk.put('S', 'A1', 1);
  for (let row = 2; row <= 20_000; row++) desk.put('S', `A${row}`, `=A${row - 1}+1`);
  desk.live.calculate();
  expect(desk.at('S', 'A20000')).toBe(20_000);
  desk.put('S', 'A1', 5);
  expect(desk.live.calculate()).toHaveLength(19_999);
});
