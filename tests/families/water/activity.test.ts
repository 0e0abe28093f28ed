import { activityAt } from '../../../shared/families/water/carbonate/activity';
import { conditionsFor, intensityAt, sharesAt } from '../../../shared/families/water/carbonate/conditions';
import { constantsAt } from '../../../shared/families/water/carbonate/constants';

/**
 * The chemistry below pH and alkalinity, written out a second time: activity coefficients as logarithms, each ion
 * and pair by its law of mass action. Radii and salting-out terms are those of PHREEQC's default database.
 */
const K = constantsAt(25);
const STRENGTHS = [0.0005, 0.005, 0.05, 0.3];

test('the slopes of Debye and Hückel at 25 °C', () => {
  // Printed 0.5085 and 0.3281 (Manov, Bates, Hamer and Acree 1943, as textbooks print them, from memory).
  expect(K.slopeA).toBeCloseTo(0.509, 2);
  expect(K.slopeB).toBeCloseTo(0.328, 2);
});

describe.each(STRENGTHS)('activity coefficients at an ionic strength of %f', (ionic) => {
  const root = Math.sqrt(ionic);
  const byRadius = (z: number, radius: number, salting = 0): number =>
    10 ** ((-K.slopeA * z * z * root) / (1 + K.slopeB * radius * root) + salting * ionic);
  const davies = 10 ** (-K.slopeA * (root / (1 + root) - 0.3 * ionic));
  const got = activityAt(K, ionic);
  test.each([
    ['h', byRadius(1, 9)],
    ['oh', byRadius(1, 3.5)],
    ['hco3', byRadius(1, 5.4)],
    ['co3', byRadius(2, 5.4)],
    ['na', byRadius(1, 4.08, 0.082)],
    ['ca', byRadius(2, 5, 0.165)],
    ['caHCO3', byRadius(1, 6)],
    ['so4', byRadius(2, 5, -0.04)],
    ['caOH', davies],
    ['hso4', davies],
    ['co2', 10 ** (0.066 * ionic)],
    ['neutral', 10 ** (0.1 * ionic)],
  ] as const)('%s', (ion, wanted) => {
    expect(got[ion] / wanted).toBeCloseTo(1, 12);
  });
});
test('Davies at 0.1 mol/kg: 0.78 for an ion of one charge', () => {
  expect(activityAt(K, 0.1).hso4).toBeCloseTo(0.78, 2);
});

// mmol/L of the free ions, from which everything else follows.
describe.each([
  { ionicStrength: 0.002, calcium: 0.5, sodium: 0.4, sulfate: 0.1 },
  { ionicStrength: 0.05, calcium: 4, sodium: 30, sulfate: 3 },
])('a water of %j', (free) => {
  const g = activityAt(K, free.ionicStrength);
  const c = conditionsFor(K, free);
  const [ph, gas] = [8.1, 0.02];
  const a = 10 ** -ph;
  const activity = (mmol: number, gamma: number): number => (mmol / 1000) * gamma;
  const concentration = (act: number, gamma: number): number => (act / gamma) * 1000;
  const co2 = activity(gas, g.co2);
  const [hco3, co3] = [(K.k1 * co2) / a, (K.k1 * K.k2 * co2) / (a * a)];
  const ca = activity(free.calcium, g.ca);
  const na = activity(free.sodium, g.na);
  const ions = {
    hco3: concentration(hco3, g.hco3),
    co3: concentration(co3, g.co3),
    caHCO3: concentration(K.kCaHCO3 * ca * hco3, g.caHCO3),
    caCO3: concentration(K.kCaCO3 * ca * co3, g.neutral),
    naHCO3: concentration(K.kNaHCO3 * na * hco3, g.neutral),
    oh: concentration(K.kw / a, g.oh),
    caOH: concentration((K.kCaOH * ca) / a, g.caOH),
    h: concentration(a, g.h),
    hso4: concentration((activity(free.sulfate, g.so4) * a) / K.kHSO4, g.hso4),
  };
  const bicarbonate = ions.hco3 + ions.caHCO3 + ions.naHCO3;
  const carbonate = ions.co3 + ions.caCO3;
  test('alkalinity and carbon are the sums of their ions and pairs', () => {
    const { perCarbon, perCO2, w } = sharesAt(c, ph);
    expect((gas * perCO2) / (bicarbonate + 2 * carbonate)).toBeCloseTo(1, 10);
    expect(perCarbon / ((bicarbonate + 2 * carbonate) / (gas + bicarbonate + carbonate))).toBeCloseTo(1, 10);
    expect(w).toBeCloseTo(ions.oh + ions.caOH - ions.h - ions.hso4, 10);
  });
  test('the pairs, the gas and the lime', () => {
    expect((c.pairCaHCO3 * free.calcium * ions.hco3) / ions.caHCO3).toBeCloseTo(1, 10);
    expect((c.pairCaCO3 * free.calcium * ions.co3) / ions.caCO3).toBeCloseTo(1, 10);
    expect((c.pairNaHCO3 * free.sodium * ions.hco3) / ions.naHCO3).toBeCloseTo(1, 10);
    expect((c.caOH * free.calcium) / a / ions.caOH).toBeCloseTo(1, 10);
    expect(c.kh / ((K.kh * 1000) / g.co2)).toBeCloseTo(1, 12);
    expect((c.calcite * free.calcium * ions.co3) / ((ca * co3) / K.kCalcite)).toBeCloseTo(1, 10);
  });
  test('the buffer intensity is the slope of the alkalinity', () => {
    const carbon = gas + bicarbonate + carbonate;
    const alkalinity = (at: number): number => {
      const { perCarbon, w } = sharesAt(c, at);
      return carbon * perCarbon + w;
    };
    for (const at of [5, 6.3, 8.1, 9.5]) {
      const slope = (alkalinity(at + 1e-4) - alkalinity(at - 1e-4)) / 2e-4;
      expect(intensityAt(c, at, carbon) / slope).toBeCloseTo(1, 5);
    }
  });
});
