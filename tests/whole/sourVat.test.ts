import { columnOf, grid } from '../support/call';
import { drawsFrom } from '../support/draws';
import { METERS, airedPH, drawVat, pass, pour, read, truePH } from '../long/water/vat';

/**
 * A sour vat until next morning from the formula alone, in a sheet that has only the columns date, vat, pH, g:
 * the person does what BUFFER.NEXT says in a cell below. Waters and meter are simulated apart from the
 * product's chemistry (tests/long/water); at no time does anything stand above 8.
 */
interface SheetRow {
  readonly date: number;
  readonly ph: number;
  readonly grams: number | null;
  readonly what: string;
}
const ask = (rows: readonly SheetRow[], celsius: number): { action: string; grams: number; todo: string } => {
  const [heads = [], row = []] = grid(
    'BUFFER.NEXT',
    600,
    rows.map(({ grams }) => [grams]),
    columnOf(rows.map(({ ph }) => ph)),
    7,
    5,
    celsius,
    null,
    null,
    null,
    null,
    null,
    'cheap',
    null,
    null,
    null,
    null,
    null,
    columnOf(rows.map(({ what }) => what)),
    null,
    columnOf(rows.map(({ date }) => date)),
    'given before',
  );
  const at = (name: string): unknown => row[heads.findIndex((head) => String(head).startsWith(name))];
  return { action: String(at('Action')), grams: Number(at('Dose')), todo: String(at('What to do')) };
};

test('eight sour vats by the formula alone: nothing ever above 8, the morning after is named by its pH', () => {
  for (let seed = 7_000_001; seed <= 7_000_008; seed++) {
    const chance = drawsFrom(seed);
    const vat = { ...drawVat(chance, { kind: 'ordinary', meter: METERS.cheap }), litres: 600 };
    const own = airedPH(vat);
    const rows: SheetRow[] = [{ date: 46_027.3, ph: read(vat, chance), grams: null, what: '' }];
    const next = (hours: number, grams: number | null, what: string): void => {
      const before = rows.at(-1)?.date ?? 0;
      rows.push({ date: before + hours / 24, ph: read(vat, chance), grams, what });
    };
    for (let i = 0; i < 14; i++) {
      const { action, grams } = ask(rows, vat.celsius);
      if (action === 'dose') {
        pour(vat, grams);
        pass(vat, 0.25, 'strong');
        next(0.25, grams, '');
      } else if (action === 'air first') {
        pass(vat, 1, 'strong');
        next(1, null, 'aired');
      } else if (action === 'wait' || action === 'read again') {
        pass(vat, 0.25, 'strong');
        next(0.25, null, '');
      } else break;
    }
    pass(vat, 14, 'still');
    next(14, null, '');
    const morning = ask(rows, vat.celsius);
    const shown = rows.at(-1)?.ph.toFixed(2) ?? '';
    if (morning.action === 'done') expect(morning.todo).toContain(`pH ${shown}`);
    // Water that stands above 8 by itself once aired gets no product and goes where it goes.
    expect(Math.max(vat.highest, truePH(vat), airedPH(vat))).toBeLessThan(Math.max(8, own + 0.02));
    expect(morning.todo).not.toMatch(/bag/);
  }
});
