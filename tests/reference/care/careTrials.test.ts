/**
 * Printed figures behind the daily work around a vat, each with a case just inside and just outside of it. From abstracts and
 * pages, by key: MAKERERE, KAWAMURA17, KISANGANI (survivals), RIS87 (ruptured intestines at 3 to 5 g), OKOYE (males of 12
 * months), DIYAWARE10 and THERIO12 (sewn males), ACEH19 and PHTWO (pH), SCHR10, NH3LEAF and AGUIGWO03 (ammonia), ELGAMAL
 * (one spawn on 50 × 70 cm), FAOBETTER38 (hand splashing, tyre pump), LONGIDENS09 (15 larvae a litre), LAGOSGRADE, HLREAR94,
 * ATAGUBA22 and EBONYI (survival by farm, run and water), HETEROPN20, BORODE05, CALABAR and FRYSALT11 (salt).
 */
import '../../support/printed';
import { ASSUMPTIONS } from '../../../shared/families/assumptions';
import { deathDays, deathDaysText, larvaeLeft } from '../../../shared/families/care/kernels/losses';
import { evaluate } from '../../../shared/catalogue/calculation';
import { call, grid, number } from '../../support/call';

const first = (id: string, ...args: Parameters<typeof grid> extends [string, ...infer A] ? A : never) =>
  grid(id, ...args)[0] ?? [];

describe('loss a day from printed survivals at an even rate', () => {
  test.each([
    ['MAKERERE, 50 a litre: 88 % over 28 d', 0.88, 28, '0.46', 'usual'],
    ['MAKERERE, 150 a litre: 64 % over 28 d', 0.64, 28, '1.58', 'look'],
    ['KAWAMURA17, best: 55 % over 21 d', 0.55, 21, '2.81', 'look'],
    ['KAWAMURA17, worst: 24 % over 21 d', 0.24, 21, '6.57', 'act'],
    ['KISANGANI, unsorted: 10.7 % over 21 d', 0.107, 21, '10.1', 'act'],
  ])('%s', (_what, survival, days, printed, code) => {
    const loss = 1 - survival ** (1 / days);
    expect(loss * 100).toAgreeWithPrinted(printed);
    expect(first('DEATHS.EXPECTED', 100_000, 14, loss * 100_000)[3]).toBe(code);
  });
});

describe('deaths of larvae day by day', () => {
  const left = (day: number): number => larvaeLeft(ASSUMPTIONS.frySurvival.planned, 12, day);
  test('the whole stays as printed: between the runs of HLREAR94 (61 to 92 % alive after two weeks)', () => {
    expect(left(12)).toBeCloseTo(0.75, 12);
    expect(left(14)).toBeGreaterThan(0.61);
    expect(left(14)).toBeLessThan(0.92);
  });
  test('most die in the first five days (KISANGANI: heavy losses on days 5 to 8 after the hatch)', () => {
    expect((1 - left(5)) / (1 - left(12))).toBeGreaterThan(0.6);
    expect(
      [1 - left(1), 1 - left(3) / left(2), 1 - left(9) / left(8)].map((x) => (100 * x).toFixed(1)),
    ).toEqual(['6.3', '3.6', '1.4']);
  });
  test('every day is usual to SPAWN.DEATHS.EXPECTED, and a day like the even rate once was (2.4 %) is not', () => {
    for (let day = 0; day < 12; day++) {
      const [now, next] = [1e6 * left(day), 1e6 * left(day + 1)];
      expect([day, first('DEATHS.EXPECTED', now, 3 + day, now - next)[3]]).toEqual([day, 'usual']);
    }
    expect(first('DEATHS.EXPECTED', 1e6, 8, 24_000)[3]).toBe('look');
  });
  test('the formula of the cells is the kernel', () => {
    for (const day of [0, 0.5, 1, 2.5, 4, 9, 30])
      expect(evaluate(`=${deathDaysText(String(day))}`)).toBeCloseTo(deathDays(day), 12);
  });
});

test('LIM03: up to the highest load in print no more than 5 % are expected dead; JANSSEN85 lost none', () => {
  // JANSSEN85: 15,000 of 1 g in 80 L, 187 a litre, 50 km; an hour or two.
  const [dead = NaN, share = NaN] = first('BAG.DEAD', 15_000, 1, 187, 2, 27).map(Number);
  expect(share).toBeGreaterThanOrEqual(0.02);
  expect(share).toBeLessThanOrEqual(0.05);
  expect(dead / (15_000 + dead)).toBeCloseTo(share, 3);
});

test.each([
  [2.99, false],
  [3, true],
  [5, true],
  [5.01, false],
])('RIS87: at %d g the warning of burst bellies is %s', (grams, warns) => {
  expect(String(first('FEED.GRAIN', grams)[5]).includes('bellies burst')).toBe(warns);
});

test.each([
  ['OKOYE: a day short of 12 months', 364, null, 'look again'],
  ['OKOYE: 12 months', 365, null, 'ready'],
  ['DIYAWARE10: 89 days after the operation', 500, 89, 'wait'],
  ['DIYAWARE10: 90 days, THERIO12 all lived', 500, 90, 'ready'],
])('%s', (_what, age, sewn, verdict) => {
  expect(first('RIPE.MALE', age, true, sewn)[0]).toBe(verdict);
});

test.each([
  ['rested 59 days (practice 60)', [true, true, true, true, 59], 'wait'],
  ['rested 60 days', [true, true, true, true, 60], 'ready'],
  ['294 days old, mature at 295', [true, true, true, true, null, 294], 'wait'],
  ['295 days old', [true, true, true, true, null, 295], 'ready'],
  ['eggs of 0.93 mm, SHARAF12 0.94 to 1.07', [true, true, true, true, null, null, 0.93], 'look again'],
  ['eggs of 0.94 mm', [true, true, true, true, null, null, 0.94], 'ready'],
] as const)('a female, %s: %s', (_what, signs, verdict) => {
  expect(first('RIPE.FEMALE', ...signs)[0]).toBe(verdict);
});

describe('pH as ACEH19 printed it, and PHTWO beside it', () => {
  test.each([
    ['eggs', 6.7, 'good'],
    ['eggs', 6.69, 'borne'],
    ['eggs', 7.6, 'good'],
    ['eggs', 7.61, 'borne'],
    ['eggs', 6.1, 'borne'],
    ['eggs', 6.09, 'harmful'],
    ['eggs', 8.8, 'borne'],
    ['eggs', 8.81, 'harmful'],
    ['eggs', 10, 'deadly'],
    ['eggs', 9.99, 'harmful'],
    ['eggs', 3.4, 'deadly'],
    ['eggs', 3.41, 'harmful'],
    ['larvae', 6.5, 'good'],
    ['larvae', 7.5, 'good'],
    ['larvae', 7.51, 'borne'],
    ['larvae', 6, 'borne'],
    ['larvae', 5.99, 'harmful'],
    ['larvae', 8.5, 'borne'],
    ['larvae', 8.51, 'harmful'],
    ['larvae', 9, 'harmful'],
    ['larvae', 9.01, 'deadly'],
    ['larvae', 4.5, 'harmful'],
    ['larvae', 4.49, 'deadly'],
  ])('%s at %d: %s', (life, ph, verdict) => {
    expect(first('PH.CHECK', ph, life)[0]).toBe(verdict);
  });
  test('both trials are named, also where they disagree', () => {
    expect(String(first('PH.CHECK', 9.5, 'larvae')[1])).toMatch(
      /none below 4\.5 or above 9.*4\.25 and 10\.1/,
    );
  });
});

test.each([
  ['just below first harm (NH3LEAF 0.05)', 0.0499, 'good'],
  ['at it', 0.0501, 'harmful'],
  ['what 141 g fish bear (SCHR10 0.34)', 0.3399, 'harmful'],
  ['above it', 0.3401, 'deadly'],
  ['AGUIGWO03 half dead at 3.85, whatever form', 3.85, 'deadly'],
])('toxic ammonia %s', (_what, toxic, verdict) => {
  const total = toxic / number('AMMONIA.SHARE', 7.5, 27);
  expect(first('AMMONIA.CHECK', total, 7.5, 27)[1]).toBe(verdict);
});

test('ELGAMAL: a spawn of 115,000 eggs hung on 0.35 m²: the densest the function allows is a tenth wider', () => {
  expect(Math.abs(Number(first('NET.AREA', 115_000)[1]) / 0.35 - 1)).toBeLessThan(0.1);
});

test('FAOBETTER38: splashing and a tyre pump stand among the first acts', () => {
  expect(grid('AIR.STEPS').flat().join(' ')).toMatch(/tyre pump.*splashing/);
});

test('JANSSEN85: above 3 and better 4 mg/L; already there means no time', () => {
  expect(number('AIR.MINUTES', 1000, 1, 100, 3)).toBe(0);
  expect(number('AIR.MINUTES', 1000, 1, 100, 3.1)).toBeGreaterThan(0);
});

test('LONGIDENS09: the verdict on fry names the 15 a litre of the other species', () => {
  expect(String(first('STOCKING.CHECK', 60_000, 'fry', 1000)[3])).toContain('Heterobranchus longifilis 15');
});

test('survival: what is planned lies inside what farms, runs and waters gave', () => {
  const { yolkSurvival: yolk, frySurvival: fry, nurserySurvival: nursery } = ASSUMPTIONS;
  // EBONYI 44.2 % in rain water, OLUBIYI05 up to 93.5 %, ATAGUBA22 55 to 98 %.
  expect(yolk.low).toBeCloseTo(0.442, 2);
  expect(yolk.high).toBeLessThanOrEqual(0.935);
  // HLREAR94: 61 to 73 % in one experiment, 79 to 92 % in the other.
  expect(fry.planned).toBeGreaterThan(0.61);
  expect(fry.planned).toBeLessThan(0.92);
  // LAGOSGRADE: 60.7 and 70.8 % from hatch to week 6 on six farms; IRJET laboratories 30 to 60 %. The plan is careful.
  const planned = yolk.planned * fry.planned * nursery.planned;
  expect(planned).toBeGreaterThan(0.3);
  expect(planned).toBeLessThan(0.607);
});

describe('salt, the rows as printed', () => {
  const rows = grid('SALT.LIMITS', 'all', false);
  test.each([
    ['FRYSALT11', 'larvae', '', 0.61],
    ['HETEROPN20', 'larvae', '', 2.82],
    ['HETEROPN20', 'fingerlings', '', 10],
    ['BORODE05', 'eggs', 0, ''],
    ['CALABAR', 'fingerlings', 5, ''],
    ['CLARSALT', 'juveniles', 10, 15],
    ['HETSALT', 'larvae', '', 4.35],
  ])('%s, %s: borne %s, harm %s g/L', (source, stage, borne, harm) => {
    expect(rows).toContainEqual(
      expect.arrayContaining([stage, borne, harm, source]) as unknown as readonly unknown[],
    );
  });
  test('one stands alone and is called so', () => {
    expect(rows.filter((row) => String(row[5]).includes('stands alone'))).toHaveLength(1);
  });
});

describe('failed hatch and lost larvae: never one verdict, the first look fits the signs', () => {
  test.each([
    ['AUDU23: 99 % fertilised, hatch 2 %', [0.99, 0.02], 'Stripped too late or too early'],
    ['few fertilised', [0.4, 0.3], 'Milt dead, watered or too little'],
    ['white within hours', [null, null, true], 'Females not ripe'],
    ['cotton', [null, null, false, true], 'Fungus from dead eggs'],
    ['more than a quarter bent', [0.9, 0.8, false, false, false, 0.3], 'Heat, over-ripe eggs or hormone'],
    ['nothing wrong', [0.9, 0.8], 'Nothing stands out'],
  ] as const)('%s', (_what, signs, cause) => {
    expect(grid('HATCH.WHY', ...signs)[1]?.[1]).toBe(cause);
  });
  test('no drug is named anywhere', () => {
    const words = JSON.stringify([
      call('LARVAE.WHY', 'day 3 to 8'),
      call('HATCH.WHY', null, null, true, true),
    ]);
    expect(words).not.toMatch(/malachite|tetracycline|nitrofuran|penicillin/i);
  });
});

test('units people have: exact factors', () => {
  expect(number('UNIT.READ', '81 F', '°C')).toBeCloseTo(((81 - 32) * 5) / 9, 9);
  expect(number('UNIT.READ', '20 gal', 'L')).toBeCloseTo(20 * 3.785411784, 9);
  expect(number('UNIT.READ', '3 lb', 'kg')).toBeCloseTo(3 * 0.45359237, 9);
  expect(number('UNIT.READ', '8 oz', 'g')).toBeCloseTo(226.796185, 6);
  expect(number('UNIT.READ', '2 in', 'mm')).toBeCloseTo(50.8, 9);
  expect(number('UNIT.READ', '3 ft', 'm')).toBeCloseTo(0.9144, 9);
  expect(number('UNIT.READ', '1,5 kg', 'g')).toBeCloseTo(1500, 9);
});
