import { conditionsFor } from '../../../shared/families/water/carbonate/conditions';
import { solve } from '../../../shared/families/water/carbonate/carbonate';
import { constantsAt } from '../../../shared/families/water/carbonate/constants';
import { afterDose } from '../../../shared/families/water/carbonate/dose';
import { MATERIALS } from '../../../shared/families/water/carbonate/materials';
import { waterFromAlkalinity, waterFromCO2 } from '../../../shared/families/water/carbonate/readings';
import type { Cloud } from '../../../shared/families/water/titration/cloud';
import { quantile } from '../../../shared/families/water/titration/cloud';
import { sampleFrom, samplePH } from '../../../shared/families/water/titration/model';
import { airedPH, balanceAired } from '../../../shared/families/water/titration/open';

/** Roots that are sought in steps, put back into what they solve. */
const K = constantsAt(25);
const C = conditionsFor(K, { ionicStrength: 0.002, calcium: 0, sodium: 1, sulfate: 0 });
const AIR = C.kh * 4.2e-4;
const PHS = Array.from({ length: 55 }, (_, i) => 4 + i / 10);

test.each([0, 0.1, 0.3])(
  'a sample with %f meq/L of organic sites has the pH it was made of, to a millionth',
  (sites) => {
    for (const ph of PHS)
      for (const co2 of [0.001, 0.01, 0.1, 1]) {
        const { balance, carbon } = sampleFrom(C, ph, co2, sites);
        for (const guess of [4, 6, 7, 9])
          expect(Math.abs(samplePH(C, balance, carbon, sites, guess) - ph)).toBeLessThan(1.5e-6);
        const aired = { balance: balanceAired(C, AIR, sites, ph), sites };
        expect(Math.abs(airedPH(C, AIR, aired) - ph)).toBeLessThan(1.5e-6);
      }
  },
);

test('a water composed of what was read has the pH that was read', () => {
  for (const ph of [5.4, 6, 6.7, 7.4, 8.2, 9])
    for (const calcium of [0, 0.5, 2])
      for (const ionicStrength of [0, 0.02, 0.1]) {
        const back = { temperature: 25, calcium, ionicStrength };
        for (const alkalinity of [0.05, 0.5, 3]) {
          const water = waterFromAlkalinity(K, back, ph, alkalinity);
          if (typeof water === 'string') continue;
          expect(Math.abs(solve(K, water, { kind: 'closed' }).ph - ph)).toBeLessThan(1e-6);
        }
        for (const co2 of [0.001, 0.01, 0.05]) {
          const water = waterFromCO2(K, back, ph, co2);
          expect(Math.abs(solve(K, water, { kind: 'closed' }).ph - ph)).toBeLessThan(1e-6);
        }
      }
});

test('lime in excess dissolves until the water is saturated, no more and no less', () => {
  const soft = { temperature: 25, sodium: 0.1, calcium: 0, chloride: 0, sulfate: 0, carbon: 0.5 };
  for (const [air, lime] of [
    [4.2e-4, 50],
    [4.2e-4, 2],
    ['closed', 5],
  ] as const) {
    const { state, dissolved } = afterDose(K, soft, MATERIALS['agricultural lime'], lime, air);
    expect(Math.abs(state.saturationIndex)).toBeLessThan(1e-8);
    expect(dissolved).toBeLessThan(lime);
  }
});

test('a weighted quantile by places is the one of the whole list in order', () => {
  // A list whose steps are all alike, out of order: each value speaks for the stretch half way to its neighbours.
  const values = Array.from({ length: 997 }, (_, i) => 5 + ((i * 389) % 997) / 10);
  const cloud = { weights: values.map(() => 1 / values.length) } as unknown as Cloud;
  for (const part of [0.01, 0.1, 0.5, 0.77, 0.975])
    expect(quantile(cloud, values, part)).toBeCloseTo(5 + (part * 997 - 0.5) / 10, 6);
});
