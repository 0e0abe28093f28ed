import fc from 'fast-check';
import type { Water } from '../../../shared/families/water/carbonate/carbonate';
import { alkalinityOf, solve } from '../../../shared/families/water/carbonate/carbonate';
import { constantsAt } from '../../../shared/families/water/carbonate/constants';
import { afterDose, doseTo } from '../../../shared/families/water/carbonate/dose';
import { drift } from '../../../shared/families/water/carbonate/drift';
import type { MaterialName } from '../../../shared/families/water/carbonate/materials';
import { MATERIALS } from '../../../shared/families/water/carbonate/materials';
import { afterExchange, exchangeFor, mixed } from '../../../shared/families/water/kernels/mixing';
import {
  compose,
  waterFromAlkalinity,
  waterFromCO2,
} from '../../../shared/families/water/carbonate/readings';
import { ammoniaFraction, phForFraction } from '../../../shared/families/water/kernels/ammonia';
import { oxygenSaturation } from '../../../shared/families/water/kernels/oxygen';
import {
  coneBottom,
  lyingDrum,
  oval,
  rectangle,
  round,
  tapered,
} from '../../../shared/families/water/kernels/vats';
import { HARDNESS_UNITS, hardnessFrom, hardnessTo } from '../../../shared/units/convert';

const SEED = { seed: 20260415, numRuns: 400 };
const double = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/**
 * Any water a hatchery may meet: acid rain to hard wells, aired to fizzing, fresh to 10 g/L of salt. Caustic
 * waters are left out: there the salt that soda ash brings lowers the activity of OH−, and with it the pH, by
 * a few millionths.
 */
const water: fc.Arbitrary<Water> = fc
  .tuple(double(0, 40), double(-0.2, 5), double(0, 2), double(0, 0.17), double(0.005, 15))
  .map(([temperature, alkalinity, calcium, ionicStrength, carbon]) =>
    compose({ temperature, calcium, ionicStrength }, alkalinity, Math.max(carbon, 0.55 * alkalinity)),
  );
const bases: readonly MaterialName[] = [
  'soda ash',
  'washing soda',
  'hydrated lime',
  'quicklime',
  'caustic soda',
];
const base = fc.constantFrom(...bases).map((name) => MATERIALS[name]);
const AIR = 420e-6;

test('more base never lowers the pH, closed or open', () => {
  fc.assert(
    fc.property(
      water,
      base,
      double(0, 3),
      double(1e-4, 3),
      fc.constantFrom<'closed' | number>('closed', AIR, 1e-3),
      (w, material, x, more, air) => {
        const k = constantsAt(w.temperature);
        expect(afterDose(k, w, material, x + more, air).state.ph).toBeGreaterThanOrEqual(
          afterDose(k, w, material, x, air).state.ph - 1e-6,
        );
      },
    ),
    SEED,
  );
});

test('more acid never raises the pH', () => {
  fc.assert(
    fc.property(water, double(0, 3), double(1e-4, 3), (w, x, more) => {
      const k = constantsAt(w.temperature);
      const acid = MATERIALS['hydrochloric acid'];
      expect(afterDose(k, w, acid, x + more, 'closed').state.ph).toBeLessThanOrEqual(
        afterDose(k, w, acid, x, 'closed').state.ph + 1e-7,
      );
    }),
    SEED,
  );
});

test('dose, then the inverse, returns the dose', () => {
  fc.assert(
    fc.property(
      water,
      base,
      double(0.001, 3),
      fc.constantFrom<'closed' | number>('closed', AIR),
      (w, material, x, air) => {
        const k = constantsAt(w.temperature);
        const { ph } = afterDose(k, w, material, x, air).state;
        const back = doseTo(k, w, material, ph, air);
        expect(typeof back).toBe('number');
        expect(Math.abs(Number(back) - x)).toBeLessThan(1e-4 * x + 1e-5);
      },
    ),
    SEED,
  );
});

test('a target that is reached is reached within 0.001 pH, one that is not has a reason', () => {
  const any = fc.constantFrom(...Object.values(MATERIALS));
  fc.assert(
    fc.property(
      water,
      any,
      double(4, 11),
      fc.constantFrom<'closed' | number>('closed', AIR),
      (w, material, target, air) => {
        const k = constantsAt(w.temperature);
        const answer = doseTo(k, w, material, target, air);
        if (typeof answer === 'number')
          expect(Math.abs(afterDose(k, w, material, answer, air).state.ph - target)).toBeLessThan(0.001);
        else expect(['already past', 'never', 'leaves', 'saturated']).toContain(answer.reason);
      },
    ),
    SEED,
  );
});

test('mixing conserves alkalinity and carbon, and mixing with itself changes nothing', () => {
  fc.assert(
    fc.property(water, water, double(1, 1000), double(1, 1000), (a, b, va, vb) => {
      const m = mixed(a, va, b, vb);
      expect(
        Math.abs(alkalinityOf(m) * (va + vb) - alkalinityOf(a) * va - alkalinityOf(b) * vb),
      ).toBeLessThan(1e-9 * (va + vb) * 10);
      expect(Math.abs(m.carbon * (va + vb) - a.carbon * va - b.carbon * vb)).toBeLessThan(
        1e-9 * (va + vb) * 10,
      );
      const k = constantsAt(a.temperature);
      expect(
        Math.abs(solve(k, mixed(a, va, a, vb), { kind: 'closed' }).ph - solve(k, a, { kind: 'closed' }).ph),
      ).toBeLessThan(1e-6);
    }),
    SEED,
  );
});

test('an aired water closed again keeps its pH; drift starts closed and ends open', () => {
  fc.assert(
    fc.property(
      water.filter((w) => w.calcium < 0.5 && w.carbon < 10),
      (w) => {
        const k = constantsAt(w.temperature);
        const open = solve(k, w, { kind: 'open', pressure: AIR });
        expect(
          Math.abs(solve(k, { ...w, carbon: open.carbon }, { kind: 'closed' }).ph - open.ph),
        ).toBeLessThan(1e-5);
        const [start, end] = drift(k, w, AIR, 2, [0, 2000]);
        expect(Math.abs((start?.ph ?? NaN) - solve(k, w, { kind: 'closed' }).ph)).toBeLessThan(1e-3);
        // The drift holds ion pairs and ionic strength at their first values: 0.1 pH in calcium-rich or
        // salted waters.
        expect(Math.abs((end?.ph ?? NaN) - open.ph)).toBeLessThan(0.1);
      },
    ),
    { ...SEED, numRuns: 150 },
  );
});

test('a water rebuilt from its pH and alkalinity, or its pH and CO2, is the same water', () => {
  fc.assert(
    fc.property(
      double(5, 35),
      double(0.02, 4),
      double(5.5, 9),
      double(0, 0.02),
      (temperature, alkalinity, ph, ionicStrength) => {
        const back = { temperature, calcium: 0, ionicStrength };
        const k = constantsAt(temperature);
        const built = waterFromAlkalinity(k, back, ph, alkalinity);
        if (typeof built === 'string') return;
        const state = solve(k, built, { kind: 'closed' });
        expect(Math.abs(state.ph - ph)).toBeLessThan(1e-4);
        const again = waterFromCO2(k, back, ph, state.carbonDioxide);
        expect(Math.abs(alkalinityOf(again) - alkalinity)).toBeLessThan(1e-3 * (0.01 + alkalinity));
      },
    ),
    SEED,
  );
});

test('exchange and its inverse; ammonia and its inverse; units there and back', () => {
  fc.assert(
    fc.property(
      double(10, 5000),
      double(1, 10),
      double(0, 0.9),
      fc.constantFrom<'drain' | 'flow'>('drain', 'flow'),
      double(0.05, 0.95),
      (volume, present, incoming, method, part) => {
        const wanted = incoming + (present - incoming) * part;
        expect(
          Math.abs(
            afterExchange(
              volume,
              exchangeFor(volume, present, wanted, incoming, method),
              present,
              incoming,
              method,
            ) - wanted,
          ),
        ).toBeLessThan(1e-9);
      },
    ),
    SEED,
  );
  fc.assert(
    fc.property(double(0, 50), double(4, 11), (t, ph) => {
      expect(Math.abs(phForFraction(t, ammoniaFraction(t, ph)) - ph)).toBeLessThan(1e-6);
    }),
    SEED,
  );
  fc.assert(
    fc.property(double(-10, 1000), fc.constantFrom(...HARDNESS_UNITS), (amount, unit) => {
      expect(Math.abs(hardnessTo(hardnessFrom(amount, unit), unit) - amount)).toBeLessThan(1e-9);
    }),
    SEED,
  );
});

test('warmer, saltier or higher water holds less oxygen', () => {
  fc.assert(
    fc.property(double(0, 39), double(0, 39), double(0.5, 1), (t, salt, p) => {
      const here = oxygenSaturation(t, salt, p);
      expect(oxygenSaturation(t + 1, salt, p)).toBeLessThan(here);
      expect(oxygenSaturation(t, salt + 1, p)).toBeLessThan(here);
      expect(oxygenSaturation(t, salt, p + 0.05)).toBeGreaterThan(here);
    }),
    SEED,
  );
});

test('part fills grow with depth and meet the full vat; shapes agree where they coincide', () => {
  fc.assert(
    fc.property(double(20, 300), double(5, 150), double(0, 1), double(0, 0.9), (d, h, part, narrow) => {
      const outlet = d * narrow;
      expect(coneBottom(d, h, h * part * 0.5, outlet)).toBeLessThanOrEqual(
        coneBottom(d, h, h * (part * 0.5 + 0.1), outlet),
      );
      expect(Math.abs(coneBottom(d, h, h, outlet) - coneBottom(d, h, h * (1 - 1e-9), outlet))).toBeLessThan(
        1e-3,
      );
      expect(Math.abs(tapered(d, d, d, d, h, h * part) - rectangle(d, d, h * part))).toBeLessThan(1e-6);
      expect(Math.abs(oval(d, d, h, true) - round(d, h))).toBeLessThan(1e-6);
      expect(Math.abs(oval(d, d, h, false) - round(d, h))).toBeLessThan(1e-6);
      expect(
        Math.abs(lyingDrum(d, h, d * part) + lyingDrum(d, h, d * (1 - part)) - round(d, h)),
      ).toBeLessThan(1e-5);
    }),
    SEED,
  );
});
