import { tableOf } from '../../support/table';
import { carbonUnder, phAired, phNow } from './chemistry';

/** The simulator's water against PHREEQC 3 (v3.8.8, phreeqc.dat), soft and acid groups without calcium pairs. */
test('the simulated water agrees with PHREEQC', () => {
  const n = (row: Readonly<Record<string, string>>, key: string): number => Number(row[key]);
  const rows = tableOf('oracle_dev.csv').filter(
    (r) =>
      ['G1_acid', 'G2_soft', 'G4_wellCO2'].includes(r.group ?? '') &&
      r.chem === 'Na2CO3' &&
      r.kind === 'forward',
  );
  const off = rows.map((row) => {
    const moles = n(row, 'dose_mgL') / 105.988;
    const water = {
      celsius: n(row, 'temp_C'),
      balance: n(row, 'alk_meq') + 2 * moles,
      carbon: n(row, 'DIC_mmol') + moles,
      sites: [],
    };
    const ph = row.mode === 'open' ? phAired(water, 1e6 * 10 ** n(row, 'log10_pCO2_air')) : phNow(water);
    return Math.abs(ph - n(row, 'pH_final'));
  });
  off.sort((a, b) => a - b);
  process.stdout.write(
    `simulator against PHREEQC: ${off.length} rows, median ${off[Math.floor(off.length / 2)]?.toFixed(4)}, most ${off.at(-1)?.toFixed(3)}\n`,
  );
  expect(off.length).toBeGreaterThan(40);
  expect(off[Math.floor(off.length / 2)] ?? 1).toBeLessThan(0.01);
  expect(off[Math.floor(off.length * 0.95)] ?? 1).toBeLessThan(0.05);
});

test('rain water under 10^-3.5 atm stands at pH 5.65 (textbook value)', () => {
  const rain = { celsius: 25, balance: 0, sites: [] };
  expect(phNow({ ...rain, carbon: carbonUnder(rain, 10 ** -3.5) })).toBeCloseTo(5.65, 1);
});
