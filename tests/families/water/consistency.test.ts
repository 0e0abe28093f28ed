import '../../support/printed';
import { constantsAt } from '../../../shared/families/water/carbonate/constants';
import { grid, number } from '../../support/call';
import { tableOf } from '../../support/table';

/**
 * Against figures worked out once with PHREEQC 3 or from the same equations in another program: consistency,
 * not reference.
 */
test('the field rule over 180 waters: start, fresh and aired pH, and the doses', () => {
  const rows = tableOf('fieldrule_computed.csv');
  expect(rows).toHaveLength(180);
  const off = rows.filter((r) => {
    const n = (key: string): number => Number(r[key]);
    // pH is printed to two decimals; the water is set up from its carbon dioxide and that pH, so mineral acid
    // is known to 2 % only.
    const state = [
      1000,
      5,
      n('pH_initial'),
      null,
      n('temp_C'),
      'soda ash',
      1,
      n('CO2aq_initial_mgL'),
      'open',
      0,
      0,
      'µS/cm',
      417,
    ] as const;
    const alkalinity = Number(
      grid(
        'WATER.STATE',
        n('pH_initial'),
        null,
        n('temp_C'),
        n('CO2aq_initial_mgL'),
        0,
        0,
        'µS/cm',
        417,
      )[0]?.[0],
    );
    return (
      Math.abs(alkalinity - n('alk_meq_L')) > 0.003 + 0.04 * Math.abs(n('alk_meq_L')) ||
      Math.abs(number('BUFFER.PH', ...state) - n('pH_after_5mgL_open_417ppm')) > 0.16
    );
  });
  expect(off.map((r) => `${r.temp_C} ${r.alk_meq_L} ${r.log10_pCO2_initial}`)).toEqual([]);
});

test('alkalinity that gives a pH after full aeration', () => {
  const table: readonly (readonly [number, number, readonly string[]])[] = [
    [417, 20, ['0.006', '0.021', '0.069', '0.220', '0.707']],
    [417, 25, ['0.005', '0.020', '0.064', '0.205', '0.659']],
    [417, 28, ['0.005', '0.019', '0.061', '0.196', '0.630']],
    [1000, 25, ['0.014', '0.048', '0.154', '0.494', '1.604']],
    [1000, 28, ['0.014', '0.046', '0.148', '0.472', '1.534']],
  ];
  for (const [ppm, t, printed] of table)
    printed.forEach((text, i) => {
      // The table's water has a little more salt in it: 1.5 %, or a unit of the last digit.
      const got = number('ALKALINITY.AERATED', 6 + 0.5 * i, t, 0, 0, 'µS/cm', ppm);
      expect(Math.abs(got - Number(text))).toBeLessThan(Math.max(0.001, 0.015 * Number(text)));
    });
});

test('drift after dosing, soft and hard waters', () => {
  const at = (hours: number, ph: number, alkalinity: number, tank: string): number =>
    number('DRIFT.PH', hours, ph, alkalinity, 26, null, tank, null, 0, 0, 'µS/cm', 417);
  const rows: readonly (readonly [number, number, number, string, number])[] = [
    [1, 5.81, 0.1, 'vigorous', 6.57],
    [4, 5.81, 0.1, 'vigorous', 7.19],
    [1, 6.53, 1, 'gentle', 6.66],
    [4, 6.53, 1, 'gentle', 7.03],
    [8, 6.53, 1, 'gentle', 7.48],
    [24, 6.53, 1, 'gentle', 8.15],
  ];
  for (const [hours, ph, alkalinity, tank, printed] of rows)
    expect(Math.abs(at(hours, ph, alkalinity, tank) - printed)).toBeLessThan(0.015);
});

test("constants beside those of the other program's database", () => {
  for (const r of tableOf('water_constants.csv')) {
    const k = constantsAt(Number(r.temp_C));
    expect(Math.abs(-Math.log10(k.kw) - Number(r['pKw_phreeqc.dat']))).toBeLessThan(0.0002);
    expect(Math.abs(-Math.log10(k.kh) - Number(r['pKH_phreeqc.dat']))).toBeLessThan(0.0006);
    expect(Math.abs(k.slopeA - Number(r.DH_A))).toBeLessThan(0.0012);
    expect(Math.abs(k.slopeB - Number(r.DH_B_per_angstrom))).toBeLessThan(0.0005);
  }
});
