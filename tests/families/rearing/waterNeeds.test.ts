import fc from 'fast-check';
import { cystsNeeded } from '../../../shared/families/feeding/kernels/cystsNeeded';
import { hatchTime, hatchingWater } from '../../../shared/families/feeding/kernels/cystHatching';
import {
  ammoniaFromFeed,
  nitrogenNotKept,
  oxygenPerFish,
} from '../../../shared/families/feeding/kernels/metabolism';
import { flowForAmmonia, flowForOxygen } from '../../../shared/families/feeding/kernels/waterFlow';
import {
  STAGES,
  STAGE_DENSITY,
  STOCKING_STUDIES,
  vatsFor,
} from '../../../shared/families/growth/kernels/stockingDensity';
import { SOURCES } from '../../../shared/families/sources';
import { RATION_STUDIES } from '../../../shared/families/feeding/kernels/rationStudies';
import '../../support/printed';
import { call } from '../../support/call';
import { column, rowsOf, sentenceOf } from '../../support/sheet';

const SEED = { seed: 20260304, numRuns: 300 };
const positive = fc.double({ min: 0.01, max: 1e4, noNaN: true });

test('the flow carries exactly the oxygen used and the ammonia made', () => {
  fc.assert(
    fc.property(positive, fc.double({ min: 5.1, max: 14, noNaN: true }), (use, inflow) => {
      expect((flowForOxygen(use, inflow, 5) * 60 * (inflow - 5)) / use).toBeCloseTo(1, 10);
    }),
    SEED,
  );
  fc.assert(
    fc.property(
      positive,
      fc.double({ min: 0.01, max: 5, noNaN: true }),
      fc.double({ min: 0.01, max: 5, noNaN: true }),
      (made, inflow, room) => {
        expect((flowForAmmonia(made, inflow + room, inflow) * 1440 * room) / 1000 / made).toBeCloseTo(1, 8);
      },
    ),
    SEED,
  );
  expect(flowForOxygen(100, 5, 5)).toBeNaN();
});

test('consistency: small fish need more oxygen per kilogram, and the figures are of the usual size', () => {
  // Per kg of wet fish at 25 % dry matter; fed juvenile catfish are usually put at a few hundred mg per kg
  // and hour (from memory).
  const perKilogram = (wet: number): number => (oxygenPerFish(wet * 250) / wet) * 1000;
  expect(perKilogram(100)).toBeGreaterThan(200);
  expect(perKilogram(100)).toBeLessThan(400);
  expect(perKilogram(0.01)).toBeGreaterThan(3 * perKilogram(10));
});

test('the usual ammonia stays below the most that nitrogen allows', () => {
  fc.assert(
    fc.property(positive, fc.double({ min: 0.1, max: 0.6, noNaN: true }), (feed, protein) => {
      expect(ammoniaFromFeed(feed, protein, 0.092)).toBeLessThan(nitrogenNotKept(feed, protein, 0.3));
    }),
    SEED,
  );
});

test('the flow for ammonia uses the share that is toxic at the pH and temperature', () => {
  const flow = (ph: number): number => Number(call('FLOW.AMMONIA', 41.4, ph, 28));
  expect(flow(8)).toBeGreaterThan(8 * flow(7));
  expect(sentenceOf('FLOW.AMMONIA', 41.4, 8, 82)).toContain('82 °F is 27.8 °C');
});

test('vats are enough and one less is not', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 1e7 }),
      fc.integer({ min: 1, max: 500 }),
      fc.integer({ min: 1, max: 5000 }),
      (n, density, size) => {
        const vats = vatsFor(n, density, size);
        expect(vats * density * size).toBeGreaterThanOrEqual(n);
        expect((vats - 1) * density * size).toBeLessThan(n);
      },
    ),
    SEED,
  );
});

test('every published density and ration names a known source, and the one from memory says so', () => {
  for (const stage of STAGES) expect(SOURCES[STAGE_DENSITY[stage].source]?.standing).toBe('seen');
  for (const study of STOCKING_STUDIES) expect(SOURCES[study.source]?.standing).toBe('seen');
  for (const study of RATION_STUDIES)
    expect(SOURCES[study.source]?.standing).toBe(study.standing === 'read' ? 'seen' : 'memory');
});

test('a full vat is named with the figure it exceeds', () => {
  expect(rowsOf('STOCKING.CHECK', 24000, 'eggs', 60)[0]?.[3]).toContain('Within');
  // 88 % at 50 and 64 % at 150 per litre (Makerere); 100 to 150 recommended (Ajani et al. 2015).
  for (const [fish, code] of [
    [50_000, 'thin'],
    [50_001, 'within'],
    [150_000, 'within'],
    [150_001, 'above'],
  ] as const)
    expect(rowsOf('STOCKING.CHECK', fish, 'fry', 1000)[0]?.[4]).toBe(code);
});

test('cysts: twice the larvae twice the cysts; water holds them at the density said', () => {
  expect(cystsNeeded(100000, 100, 230600, 0.8)).toBeCloseTo(2 * cystsNeeded(50000, 100, 230600, 0.8), 12);
  fc.assert(
    fc.property(positive, (grams) => {
      const { volume, density } = hatchingWater(grams);
      expect(volume * density).toBeCloseTo(grams, 8);
      expect(density).toBe(volume < 20 ? 5 : 2);
    }),
    SEED,
  );
});

test('consistency: 27.1 g of cysts take 5.4 L at 5 g/L', () => {
  expect(hatchingWater(27.1).volume).toAgreeWithPrinted('5.4');
});

test('synchrony comes from the readings alone and does not mind their scale', () => {
  const hours = [12, 14, 16, 18, 20, 24];
  const hatched = [0, 4, 30, 70, 96, 100];
  const spread = (f: number): number =>
    hatchTime(
      hours,
      hatched.map((h) => h * f),
      0.9,
    ) -
    hatchTime(
      hours,
      hatched.map((h) => h * f),
      0.1,
    );
  expect(spread(1)).toBeCloseTo(spread(37), 10);
  expect(hatchTime([12, 24], [50, 100], 0.1)).toBeNaN();
});

test.each([
  ['salt in percent', 'CYSTS.WATER', [50, null, 2.5], '5 to 35'],
  ['samples in microlitres', 'CYSTS.EFFICIENCY', [column(1150, 1156), 250, 0.08, 1.6], 'microlitres'],
  [
    'more nauplii than cysts',
    'CYSTS.EFFICIENCY',
    [column(1150, 1156), 0.025, 0.08, 1.6],
    'more than there are cysts',
  ],
  ['a curve that falls', 'CYSTS.SYNCHRONY', [column(12, 14, 16), column(0, 50, 40)], 'total hatched so far'],
  ['no density for the stage', 'VATS.NEEDED', [1000, 'brood fish', 50], 'expected one of'],
  ['protein in plain percent', 'AMMONIA.MADE', [1000, 45], 'type 45% or 0.45'],
  ['water poorer than the limit', 'FLOW.OXYGEN', [6000, 4.5], 'Aerate'],
  ['a fish beyond the published sizes', 'OXYGEN.USE', [10, 500], 'outside what was published'],
])('%s', (_what, id, args, says) => {
  expect(sentenceOf(id, ...args)).toContain(says);
});
