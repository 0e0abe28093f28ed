import { isError } from '../../../shared/base/values';
import { calculate } from '../../../shared/catalogue/calculation';
import type { SheetModel } from '../../../shared/sheet/workbook/model';
import { SheetBuilder } from '../../../shared/sheet/workbook/build';
import { phAired } from './chemistry';
import type { Vat } from './vat';
import { METERS, airedPH, drawVat, pass, pour, read } from './vat';
import { modelOf } from '../../run/support';
import { call } from '../../support/call';
import { drawsFrom } from '../../support/draws';
import { airedWith, under, waterOf } from '../../templates/support/water';

/** The water of a plan and of a sheet, followed to the end by chemistry apart from the product's. */

test('the first screen as it was, pH 5 and 0.3 meq/L: 312 g then, nothing now; air alone brings it to 7.67', () => {
  expect(call('BUFFER.AIRED', 1000, 5, 7, 0.3, 26)).toBe(0);
  expect(phAired(waterOf(26, 0.3), 420)).toBeCloseTo(7.67, 1);
});

test('a plan for sour water: the bucket is millilitres of a stock, and its dose ends inside once aired', () => {
  const model = modelOf({ product: 'fry', wanted: 20_000, ph: 5.1, alkalinity: '' });
  const sheet = (name: string): SheetModel => {
    const found = model.sheets.find((one) => one.name === name);
    if (!found) throw new Error(name);
    return found;
  };
  const [batch] = under(sheet('Workings'), 4, 'Batch');
  const grams = Number(batch?.['Trial bucket of 10 L']);
  expect(grams).toBeGreaterThan(0.01);
  // 5 g in a litre: hundredths of a gram become millilitres a syringe shows.
  expect(batch?.['Trial bucket, of a stock of 5 g/L']).toBeCloseTo(grams * 200, 9);
  const trial = Object.values(sheet('Task list').cells).map(({ value }) => value);
  expect(trial).toContain('Trial bucket, of a stock of 5 g/L');
  // Water of pH 5.1 in balance with the air holds next to no strong base: 10^-5.1 mol/L of acid, 0.008 meq/L.
  const end = airedWith(waterOf(26.5, -0.008), grams / 10);
  expect(end).toBeGreaterThan(6.5);
  expect(end).toBeLessThan(8);
});

interface Row {
  readonly date: number;
  readonly ph: number;
  readonly grams: number | null;
  readonly what: string;
}
const ROWS = 20;
/** Three vats below each other; the fifth column is what the answer asks to write down beside a reading. */
const asked = (vats: readonly (readonly Row[])[]): { action: unknown; grams: number; todo: unknown }[] => {
  const builder = new SheetBuilder('Water', { widths: [] });
  ['date', 'vat', 'pH', 'g', 'what'].forEach((head, i) => builder.put(`${'ABCDE'[i] ?? ''}1`, head));
  const answers = vats.map((rows, v) => {
    const first = 2 + v * ROWS;
    rows.forEach(({ date, ph, grams, what }, i) => {
      builder
        .put(`A${first + i}`, date)
        .put(`B${first + i}`, `${v + 1}`)
        .put(`C${first + i}`, ph);
      if (grams !== null) builder.put(`D${first + i}`, grams);
      if (what) builder.put(`E${first + i}`, what);
    });
    const range = (column: string): string => `${column}${first}:${column}${first + ROWS - 1}`;
    const next = `SPAWN.BUFFER.NEXT(600,${range('D')},${range('C')},7,5,26,,,,,,"cheap",,,,,,${range('E')},,${range('A')},"given before")`;
    [2, 3, 10].forEach((column, i) =>
      builder.put(`${'GHI'[i] ?? ''}${first}`, `=INDEX(${next},2,${column})`),
    );
    return first;
  });
  const { model, faults } = calculate({ title: 'Water', sheets: [builder.build()], names: [] });
  expect(faults.filter((fault) => !fault.includes('no reading of a vat'))).toEqual([]);
  const cells = model.sheets[0]?.cells ?? {};
  return answers.map((first) => ({
    todo: cells[`G${first}`]?.value,
    grams: Number(cells[`H${first}`]?.value),
    action: cells[`I${first}`]?.value,
  }));
};

test('story 1 by formulas in a sheet: three vats of one borehole until next morning, nothing ever above 8', () => {
  const chance = drawsFrom(7_100_003);
  let water: Vat;
  do water = { ...drawVat(chance, { kind: 'ordinary', meter: METERS.cheap }), litres: 600, celsius: 26 };
  while (airedPH(water) > 6.2 || airedPH(water) < 5);
  const vats = [0, 1, 2].map(() => ({ ...water }));
  const DAY = 46_027.3;
  const rows: Row[][] = vats.map((vat) => [{ date: DAY, ph: read(vat, chance), grams: null, what: '' }]);
  const write = (v: number, hours: number, grams: number | null, what: string): void => {
    const [vat, list] = [vats[v], rows[v]];
    if (!vat || !list) return;
    pass(vat, hours, what === 'aired' ? 'strong' : hours > 3 ? 'still' : 'stirred');
    const date = (list.at(-1)?.date ?? DAY) + hours / 24;
    list.push({ date, ph: read(vat, chance), grams, what });
  };
  for (let round = 0; round < ROWS - 3; round++) {
    const told = asked(rows);
    if (told.every(({ action }) => action === 'done')) break;
    told.forEach(({ action, grams, todo }, v) => {
      if (action === 'dose') {
        const vat = vats[v];
        if (vat) pour(vat, grams);
        write(v, 0.25, grams, '');
      } else if (action === 'air first') {
        expect(todo).toMatch(/"aired" beside it|[Aa]ir on/);
        write(v, 1, null, 'aired');
      } else if (action === 'wait' || action === 'read again') write(v, 0.25, null, '');
    });
  }
  // No product in any; what the readings leave open of the second is said.
  expect(asked(rows).map(({ action }) => action)).toEqual(['done', 'watch', 'done']);
  vats.forEach((_, v) => {
    write(v, 14, null, '');
  });
  for (const { action, todo } of asked(rows)) {
    expect(action).not.toBe('dose');
    expect(String(todo)).not.toMatch(/bag/);
  }
  for (const vat of vats) {
    expect(Math.max(vat.highest, airedPH(vat))).toBeLessThan(8);
    expect(airedPH(vat)).toBeGreaterThan(6.3);
  }
  // The meter is off: a sentence in the cells of that vat, the other vats answer as before.
  rows[1]?.push({ date: DAY + 1.2, ph: 1.2, grams: null, what: '' });
  const [one, off] = asked(rows);
  expect(one?.action).not.toBe('dose');
  expect(isError(off?.action ?? null) || String(off?.action).startsWith('#')).toBe(true);
});
