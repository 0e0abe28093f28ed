import { constantsAt } from '../../../../shared/families/water/carbonate/constants';
import { MATERIALS } from '../../../../shared/families/water/carbonate/materials';
import { posterior } from '../../../../shared/families/water/titration/posterior';
import { beliefsFrom } from '../../../../shared/families/water/titration/beliefs';
import type { Beliefs } from '../../../../shared/families/water/titration/series';
import { expected } from '../../../../shared/families/water/titration/nextDose';
import { tableOf } from '../../../support/table';
import type { Vat } from '../population/waters';
import { truePH } from '../population/waters';

/**
 * Dosing sequences made with PHREEQC 3 (v3.8.8, phreeqc.dat): 29 waters, closed, losing 20 % or 60 % of their
 * excess CO2 at each step, or holding organic acid sites; readings with noise and offset.
 */
const rows = tableOf('titration_dev.csv');
type Row = (typeof rows)[number];
const n = (row: Row, key: string): number => Number(row[key]);
const sequences = [...new Set(rows.map((r) => r.seq_id ?? ''))].map((id) =>
  rows.filter((r) => r.seq_id === id),
);
const SODA = MATERIALS['soda ash'];

const vatOf = (row: Row): Vat => {
  const third = n(row, 'organic_sites_meq') / 3;
  return {
    temperature: n(row, 'temp_C'),
    balance: n(row, 'SID_true_meq'),
    carbon: n(row, 'DIC_true_mmol'),
    calcium: n(row, 'Ca_mmol'),
    sites:
      third > 0
        ? [
            [third, 3.04],
            [third, 4.51],
            [third, 6.46],
          ]
        : [],
    meter: { offset: n(row, 'meter_offset'), slope: 1, noise: 0.02, digit: 0.01 },
    kind: third > 0 ? 'organic' : 'plain',
  };
};
const beliefs = (row: Row): Beliefs =>
  beliefsFrom({
    k: constantsAt(n(row, 'temp_C')),
    back: { temperature: n(row, 'temp_C'), calcium: 0, ionicStrength: 0 },
    material: SODA,
    meter: 'good',
    origin: 'unknown',
    kit: undefined,
    conductivity: n(row, 'EC25_uS'),
    airPpm: 420,
  });

test("the simulated vat follows the program's own pH at every step", () => {
  for (const sequence of sequences)
    for (const row of sequence) {
      const vat = vatOf(row);
      vat.balance += (2 * n(row, 'cum_dose_Na2CO3_mgL')) / SODA.molarMass;
      vat.carbon = n(row, 'DIC_now_mmol');
      expect(Math.abs(truePH(vat).ph - n(row, 'pH_true'))).toBeLessThan(0.02);
    }
});

test('the true pH lies in the 90 % range of the fit after the fact', () => {
  let inside = 0;
  let total = 0;
  for (const sequence of sequences)
    for (let last = 1; last < sequence.length; last++) {
      const seen = sequence.slice(0, last + 1);
      const b = beliefs(seen[0] ?? {});
      const s = {
        doses: seen.map((r) => n(r, 'cum_dose_Na2CO3_mgL') / SODA.molarMass),
        readings: seen.map((r) => n(r, 'pH_read_noisy')),
      };
      const cloud = posterior(b, s);
      const { low, high } = expected(b, cloud, 0);
      const truth = n(sequence[last] ?? {}, 'pH_true');
      total++;
      if (truth >= low && truth <= high) inside++;
    }
  process.stdout.write(`true pH inside the 90 % range of the fit: ${inside} of ${total}\n`);
  expect(inside / total).toBeGreaterThan(0.85);
});
