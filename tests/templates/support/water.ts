import type { SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { carbonUnder, phAired, phNow } from '../../long/water/chemistry';
import type { Water } from '../../long/water/chemistry';

/**
 * The water of every template, followed until it has aired by a calculation apart from the product's (other
 * published constants, halving in pH: tests/long/water/chemistry.ts). Before air came first the four of them
 * ended at pH 8.5 to 8.9; the first screen gave 312 g to 1,000 L that needed nothing.
 */
const AIR = 420;
/** meq of a gram of soda ash, Na2CO3 105.988 g/mol. */
const MEQ_PER_GRAM = 2000 / 105.988;

/** Strong ions of a water of that pH and alkalinity: alkalinity is what stands against strong ions. */
export const waterOf = (celsius: number, alkalinity: number): Water => ({
  celsius,
  balance: alkalinity,
  carbon: 0,
  sites: [],
});
export const airedWith = (water: Water, gramsPerLitre: number): number =>
  phAired({ ...water, balance: water.balance + gramsPerLitre * MEQ_PER_GRAM }, AIR);

const sheetOf = (model: WorkbookModel, name: string): SheetModel => {
  const found = model.sheets.find((sheet) => sheet.name === name);
  if (!found) throw new Error(`no sheet ${name}`);
  return found;
};
/** Rows of a sheet under the headings of its row, as far as the first is filled. */
export const under = (sheet: SheetModel, row: number, first: string): Record<string, unknown>[] => {
  const heads = Object.entries(sheet.cells)
    .map(([address, { value }]) => [/^([A-Z]+)(\d+)$/.exec(address), value] as const)
    .filter(([place]) => Number(place?.[2]) === row)
    .map(([place, value]) => [place?.[1] ?? '', String(value)] as const);
  const found: Record<string, unknown>[] = [];
  for (let r = row + 1; ; r++) {
    const line = Object.fromEntries(heads.map(([col, head]) => [head, sheet.cells[`${col}${r}`]?.value]));
    if (line[first] === undefined || line[first] === '') return found;
    found.push(line);
  }
};

/** Every batch of a season, dosed as its sheet says and aired, stands between 6.5 and 8. */
export function seasonWaterHolds(model: WorkbookModel): void {
  const batches = under(sheetOf(model, 'Workings'), 4, 'Batch');
  expect(batches.length).toBeGreaterThan(0);
  for (const batch of batches) {
    const water = waterOf(Number(batch['Water']), Number(batch['Alkalinity']));
    const grams = Number(batch['Trial bucket of 10 L']);
    const end = airedWith(water, grams / 10);
    expect([batch['Batch'], end >= 6.5 && end <= 8]).toEqual([batch['Batch'], true]);
    // Left alone where air is enough by the other calculation too.
    if (airedWith(water, 0) >= 6.5) expect(grams).toBe(0);
    // Half of it for 1,000 L, and millilitres of 5 g/L instead of hundredths of a gram: by hand.
    expect(batch['First half for 1,000 L']).toBeCloseTo((grams * 100) / 2, 9);
    expect(batch['Trial bucket, of a stock of 5 g/L']).toBeCloseTo((grams / 5) * 1000, 9);
    // What is written there exists in nature: no more than 0.1 atm of carbon dioxide stands behind it.
    const most = { ...water, carbon: carbonUnder(water, 0.1) };
    expect(phNow(most)).toBeLessThan(Number(batch['pH now']));
  }
}

/** The dosing sheet's water with what was given and what is due stands between 6.5 and 8 once aired. */
export function dosingWaterHolds(model: WorkbookModel): void {
  const { cells } = sheetOf(model, 'Dosing');
  const [litres, celsius, due] = ['D14', 'D18', 'D32'].map((address) => Number(cells[address]?.value));
  expect(litres).toBe(1200);
  expect(Object.values(cells).some(({ value }) => String(value).includes('mL of a s'))).toBe(true);
  // The strong ions that its last reading, 6.21 after 1.25 g, leaves under air of a shed to a hard-blown vat.
  for (const pressure of [10 ** -3.4, 10 ** -3.1, 10 ** -2.9]) {
    let [low, high] = [-0.2, 1];
    for (let i = 0; i < 40; i++) {
      const middle = (low + high) / 2;
      const water = { ...waterOf(celsius ?? 26, middle), carbon: 0 };
      const held = { ...water, carbon: carbonUnder(water, pressure) };
      if (phNow(held) > 6.21) high = middle;
      else low = middle;
    }
    const end = airedWith(waterOf(celsius ?? 26, low), (0.98 * (due ?? 0)) / (litres ?? 1));
    expect(end).toBeGreaterThan(6.5);
    expect(end).toBeLessThan(8);
  }
}
