import { isError } from '../../../shared/base/values';
import { call } from '../../support/call';
import { tableOf } from '../../support/table';

/**
 * The same PHREEQC rows asked the way a sheet asks: pH and alkalinity (carbon dioxide where pH is below 5.2),
 * hardness, salt. The water's exact ions are not given, only its conductivity: in acid water without buffer
 * an ionic strength guessed from that is worth up to 0.05 pH, so a row may be off by that where its own
 * tolerance is smaller.
 */
const FROM_CONDUCTIVITY = 0.05;
const NAMES: Readonly<Record<string, string>> = {
  Na2CO3: 'soda ash',
  NaHCO3: 'baking soda',
  'Ca(OH)2': 'hydrated lime',
  CaO: 'quicklime',
  HCl: 'hydrochloric acid',
  H2SO4: 'sulfuric acid',
  CO2: 'carbon dioxide',
  none: 'soda ash',
};
const rows = tableOf('oracle_dev.csv').filter((r) => r.chem !== 'CaCO3');
type Row = (typeof rows)[number];
const n = (row: Row, key: string): number => Number(row[key]);

const tailOf = (row: Row): (number | string | null)[] => {
  const isAcid = n(row, 'pH_initial') < 5.2;
  const isSalted = row.group === 'G6_salted';
  return [
    isAcid ? null : n(row, 'alk_meq'),
    n(row, 'temp_C'),
    NAMES[row.chem ?? ''] ?? '',
    1,
    isAcid ? n(row, 'CO2aq_initial_mgL') : null,
    row.mode ?? '',
    n(row, 'Ca_mmol') * 100.087,
    isSalted ? n(row, 'I_initial_molal') * 58.44 : n(row, 'EC25_initial_uS'),
    isSalted ? 'g/L salt' : 'µS/cm',
    row.mode === 'open' ? 1e6 * 10 ** n(row, 'log10_pCO2_air') : 420,
  ];
};

test('pH after a dose, from what a hatchery can measure', () => {
  const off = rows
    .filter((r) => r.kind === 'forward')
    .filter((row) => {
      const got = call('BUFFER.PH', 1000, n(row, 'dose_mgL'), n(row, 'pH_initial'), ...tailOf(row));
      return (
        typeof got !== 'number' ||
        Math.abs(got - n(row, 'pH_final')) > Math.max(FROM_CONDUCTIVITY, n(row, 'tol_hint'))
      );
    });
  expect(off.map((r) => r.case_id)).toEqual([]);
});

test('dose to a target, from what a hatchery can measure', () => {
  const off = rows
    .filter((r) => r.kind === 'inverse' && r.feasible === '1')
    .filter((row) => {
      const got = call('BUFFER.DOSE', 1000, n(row, 'pH_initial'), n(row, 'target_pH'), ...tailOf(row));
      return typeof got !== 'number' || Math.abs(got / n(row, 'dose_mgL') - 1) > n(row, 'tol_hint');
    });
  expect(off.map((r) => r.case_id)).toEqual([]);
});

test('a target that cannot be reached is refused with a sentence', () => {
  for (const row of rows.filter((r) => r.feasible === '0' && r.note?.startsWith('already'))) {
    const got = call('BUFFER.DOSE', 1000, n(row, 'pH_initial'), n(row, 'target_pH'), ...tailOf(row));
    expect(isError(got) && got.message).toMatch(/Cannot be reached|only raises|only lowers/);
  }
});
