import { constantsAt } from '../../../shared/families/water/carbonate/constants';
import type { Air } from '../../../shared/families/water/carbonate/dose';
import { doseTo, withDose } from '../../../shared/families/water/carbonate/dose';
import type { Water } from '../../../shared/families/water/carbonate/carbonate';
import { solve } from '../../../shared/families/water/carbonate/carbonate';
import type { Material, MaterialName } from '../../../shared/families/water/carbonate/materials';
import { MATERIALS } from '../../../shared/families/water/carbonate/materials';
import { tableOf } from '../../support/table';

/**
 * Agreement with an independent chemistry program: PHREEQC 3 of the U.S. Geological Survey (v3.8.8, database
 * phreeqc.dat), run once over 567 waters; each row carries its own fair tolerance.
 */
const rows = tableOf('oracle_dev.csv');
const NAMES: Readonly<Record<string, MaterialName>> = {
  Na2CO3: 'soda ash',
  NaHCO3: 'baking soda',
  CaCO3: 'agricultural lime',
  'Ca(OH)2': 'hydrated lime',
  CaO: 'quicklime',
  HCl: 'hydrochloric acid',
  H2SO4: 'sulfuric acid',
  CO2: 'carbon dioxide',
};
type Row = (typeof rows)[number];
const n = (row: Row, key: string): number => Number(row[key]);
const waterOf = (row: Row): Water => ({
  temperature: n(row, 'temp_C'),
  sodium: n(row, 'Na_mmol'),
  calcium: n(row, 'Ca_mmol'),
  chloride: n(row, 'Cl_mmol'),
  sulfate: 0,
  carbon: n(row, 'DIC_mmol'),
});
const airOf = (row: Row): Air => (row.mode === 'closed' ? 'closed' : 10 ** n(row, 'log10_pCO2_air'));
/** The rows take lime as fully dissolved. */
const materialOf = (row: Row): Material => ({
  ...MATERIALS[NAMES[row.chem ?? ''] ?? 'soda ash'],
  stopsAtCalcite: false,
});

const after = (row: Row, milligrams: number): number => {
  const air = airOf(row);
  const dosed = withDose(waterOf(row), materialOf(row), milligrams / materialOf(row).molarMass);
  return solve(
    constantsAt(n(row, 'temp_C')),
    dosed,
    air === 'closed' ? { kind: 'closed' } : { kind: 'open', pressure: air },
  ).ph;
};

test.each(rows.filter((r) => r.kind === 'forward').map((r) => [r.case_id, r] as const))(
  '%s: pH after the dose',
  (_id, row) => {
    expect(Math.abs(after(row, n(row, 'dose_mgL')) - n(row, 'pH_final'))).toBeLessThanOrEqual(
      n(row, 'tol_hint'),
    );
  },
);

test.each(rows.filter((r) => r.kind === 'inverse' && r.feasible === '1').map((r) => [r.case_id, r] as const))(
  '%s: dose to the target',
  (_id, row) => {
    const moles = doseTo(
      constantsAt(n(row, 'temp_C')),
      waterOf(row),
      materialOf(row),
      n(row, 'target_pH'),
      airOf(row),
    );
    expect(typeof moles).toBe('number');
    const milligrams = Number(moles) * materialOf(row).molarMass;
    expect(Math.abs(milligrams / n(row, 'dose_mgL') - 1)).toBeLessThanOrEqual(n(row, 'tol_hint'));
  },
);

test.each(rows.filter((r) => r.feasible === '0').map((r) => [r.case_id, r] as const))(
  '%s: cannot be reached, for the same reason',
  (_id, row) => {
    const answer = doseTo(
      constantsAt(n(row, 'temp_C')),
      waterOf(row),
      materialOf(row),
      n(row, 'target_pH'),
      airOf(row),
    );
    const [, printed = ''] = /(?:start pH|only) ([\d.]+)/.exec(row.note ?? '') ?? [];
    if (row.note?.startsWith('already')) {
      expect(answer).toMatchObject({ reason: 'already past' });
      expect(
        Math.abs(typeof answer === 'number' ? NaN : 'ph' in answer ? answer.ph - Number(printed) : NaN),
      ).toBeLessThanOrEqual(0.02);
      return;
    }
    // The program stopped looking at 600 mg/L: what it found there must agree, and nothing at or below 600
    // mg/L may be answered.
    expect(Math.abs(after(row, 600) - Number(printed))).toBeLessThanOrEqual(0.02);
    expect(typeof answer === 'number' ? answer * materialOf(row).molarMass : Infinity).toBeGreaterThan(600);
  },
);

test('the rows are all there', () => {
  expect(rows).toHaveLength(567);
});
