import { dosingWorkbook } from '../../shared/books/dosing/sheet';
import type { DosingReading, Vat } from '../../shared/dosing/ask';
import { askNext } from '../../shared/dosing/ask';
import { LOG_COLUMNS, readLog } from '../../shared/dosing/log';
import { eventsOf } from '../../shared/dosing/events';
import { gramsText } from '../../shared/dosing/say';
import { vatAdvice } from '../../shared/dosing/vat';
import { SETUP } from './support/lines';
import { isError } from '../../shared/base/values';
import { customDepths, lintWorkbook } from '../../shared/catalogue/calculation';
import { DEEPEST } from '../../shared/sheet/workbook/lint';
import type { WorkbookModel } from '../../shared/sheet/workbook/model';

const VAT: Vat = {
  volume: 1200,
  material: 'soda ash',
  purity: 0.98,
  spoon: 5,
  temperature: 26,
  target: 7,
  stocked: 'no',
  ammonia: null,
  alkalinity: 2,
  kit: '°d',
  bottom: 6.5,
  top: 7.5,
  origin: 'aerated',
  meter: 'good',
};
const EMPTY: Vat = { ...VAT, volume: null, spoon: null, temperature: null, stocked: null, alkalinity: null };
const series = (...pairs: readonly (readonly [number, number])[]): DosingReading[] =>
  pairs.map(([grams, ph], i) => ({
    at: 46_000 + i / 96,
    vat: '1',
    what: 'reading',
    grams: grams || null,
    ph,
    again: null,
    who: 'Ama',
  }));
const THREE = series([0, 5.5], [0, 5.52], [0, 5.5]);
const at = (model: WorkbookModel, address: string) => model.sheets[0]?.cells[address]?.value;

test.each([
  ['empty', EMPTY, []],
  ['one reading', VAT, series([0, 5.4])],
  ['three readings', VAT, THREE],
  ['fish in', { ...VAT, stocked: 'yes', ammonia: 1 }, THREE],
] as const)('the sheet holds together: %s', (_name, vat, readings) => {
  const model = dosingWorkbook(vat, readings);
  expect(lintWorkbook(model)).toEqual([]);
  expect(Math.max(...customDepths(model).values())).toBeLessThanOrEqual(DEEPEST);
});

test('one spilled call gives the rows the pane gets', () => {
  const model = dosingWorkbook(VAT, THREE);
  const rows = askNext(VAT, THREE);
  if (isError(rows)) throw new Error(rows.message);
  const calls = Object.values(model.sheets[0]?.cells ?? {}).filter(({ formula }) =>
    formula?.includes('SPAWN.BUFFER.NEXT'),
  );
  expect(calls.map(({ spill }) => spill)).toEqual([[rows.length, 14]]);
  rows.forEach((row, i) => {
    expect([at(model, `D${32 + i}`), at(model, `F${32 + i}`), at(model, `H${32 + i}`)]).toEqual([
      row.dose,
      row.total,
      row.likely,
    ]);
  });
});

test('the large line says what the pane says: grams to give, or nothing and why', () => {
  const rows = askNext(VAT, THREE);
  if (isError(rows)) throw new Error(rows.message);
  const grams = Number(rows[0]?.dose);
  const now = String(at(dosingWorkbook(VAT, THREE), 'B5'));
  expect(now).toContain(`GIVE NOW   ${gramsText(grams)} g`);
  // A stock of 5 g in a litre holds 1 g in 200 mL.
  if (grams < 2) expect(now).toContain(`${(grams * 200).toFixed(0)} mL of a stock`);
  expect(at(dosingWorkbook(VAT, series([0, 7])), 'B5')).toBe('DONE');
  expect(at(dosingWorkbook({ ...VAT, origin: 'unknown' }, series([0, 5.2])), 'B5')).toBe('AIR FIRST');
  expect(at(dosingWorkbook(VAT, series([0, 7.9])), 'B5')).toBe('GIVE NOTHING NOW');
  const fish = dosingWorkbook({ ...VAT, stocked: 'yes' }, THREE);
  expect([at(fish, 'B5'), at(fish, 'B6')]).toEqual([
    'GIVE NOTHING',
    'Fish are in the water: measure total ammonia before you raise the pH.',
  ]);
  const lime = dosingWorkbook({ ...VAT, stocked: 'yes', ammonia: 0, material: 'quicklime' }, THREE);
  expect([at(lime, 'B5'), at(lime, 'B6')]).toEqual([
    'GIVE NOTHING',
    'Never put quicklime into water that holds fish. Use baking soda or soda ash.',
  ]);
  const toxic = dosingWorkbook({ ...VAT, stocked: 'yes', ammonia: 60 }, THREE);
  expect([at(toxic, 'B5'), String(at(toxic, 'B6')).startsWith('Ammonia: Do not raise')]).toEqual([
    'GIVE NOTHING',
    true,
  ]);
});

test('an empty sheet asks for what is missing, one thing at a time', () => {
  const asks = (vat: Partial<Vat>, readings: readonly DosingReading[] = []) =>
    at(dosingWorkbook({ ...EMPTY, ...vat }, readings), 'B6');
  expect(asks({})).toBe('Type the water in the vat.');
  expect(asks({ volume: 800 })).toBe('Type the water temperature.');
  expect(asks({ volume: 800, temperature: 25 })).toMatch(/^Say whether fish/);
  expect(asks({ volume: 800, temperature: 25, stocked: 'no' })).toMatch(/first row of the log/);
  const late = series([0, 4.3], [5, 4.4]);
  expect(asks({ volume: 800, temperature: 25, stocked: 'no' }, [...late].reverse())).toMatch(
    /every dose|follow in time/i,
  );
});

test('only answers and readings are open; everything else is locked', () => {
  const [sheet] = dosingWorkbook(VAT, THREE).sheets;
  expect(sheet?.isProtected).toBe(true);
  const open = Object.entries(sheet?.cells ?? {})
    .filter(([, { style }]) => style === 'input')
    .map(([address]) => address);
  expect(open).toHaveLength(14 + 9 * 12);
  for (const address of open) expect(sheet?.cells[address]?.formula).toBeUndefined();
});

test('what stands on the sheet is the log: read back, the engine says what the sheet says', () => {
  const model = dosingWorkbook({ ...VAT, alkalinity: null }, THREE);
  const cells = model.sheets[0]?.cells ?? {};
  const grid = Array.from({ length: 14 }, (_, i) =>
    [...'GHIJKLMNO'].map((column) => cells[`${column}${i + 14}`]?.value ?? null),
  );
  const { lines, faults } = readLog(grid);
  expect([faults, lines.map(({ ph, who }) => [ph, who])]).toEqual([[], THREE.map(({ ph }) => [ph, 'Ama'])]);
  expect(grid[0]).toEqual(
    LOG_COLUMNS.filter(({ key }) => !['product', 'litres', 'number', 'unit'].includes(key)).map(
      ({ heading }) => heading,
    ),
  );
  const setup = { ...SETUP, litres: 1200, celsius: 26, purity: 0.98, origin: 'aerated' as const };
  expect(vatAdvice(setup, eventsOf(lines)).grams).toBeCloseTo(Number(at(model, 'D32')), 6);
});

test('the cautions of the product chosen, and of fish where fish are in, no others', () => {
  const shown = (vat: Partial<Vat>): string[] => {
    const model = dosingWorkbook({ ...VAT, ...vat }, THREE);
    return [46, 47, 48].map((row) => String(at(model, `B${row}`)).slice(0, 20));
  };
  expect(shown({})).toEqual(['Take care: Soda ash ', '', '']);
  expect(shown({ material: 'baking soda', stocked: 'yes' })).toEqual(['', '', 'Take care: Raising p']);
  expect(shown({ material: 'hydrated lime' })).toEqual(['', 'Take care: Hydrated ', '']);
});

test('the drawing: readings, what is likely after them, the window as lines', () => {
  const model = dosingWorkbook(VAT, THREE);
  const [chart] = model.sheets[0]?.charts ?? [];
  expect(chart?.series.map(({ name }) => name)).toEqual([
    'Read',
    'Likely',
    'At least',
    'At most',
    'Window from',
    'Window to',
  ]);
  expect([55, 56, 57].map((row) => at(model, `D${row}`))).toEqual([5.5, 5.52, 5.5]);
  expect(at(model, 'E57')).toBe(5.5);
  expect(at(model, 'E58')).toBe(at(model, 'H32'));
  expect(at(model, 'D58')).toEqual(expect.objectContaining({ error: '#N/A' }));
  expect([at(model, 'H66'), at(model, 'I66')]).toEqual([6.5, 7.5]);
});
