import { isError } from '../../../../shared/base/values';
import { beliefsOf } from '../../../../shared/families/water/records/buffer/titrationInputs';
import type { Cloud } from '../../../../shared/families/water/titration/cloud';
import { airedReach } from '../../../../shared/families/water/titration/nextDose';
import { phAired } from '../../../long/water/chemistry';

/** One known water: the range once aired has its low end in the air of a shed, twice the carbon dioxide outdoors. */
test.each([0.02, 0.1, 0.4])('%f meq/L: outdoors and in a shed by another calculation', (balance) => {
  const beliefs = beliefsOf({
    temperature: 25,
    material: 'soda ash',
    origin: 'unknown',
    alkalinity: balance,
    conductivity: 0,
    meter: 'good',
  });
  if (isError(beliefs)) throw new Error(beliefs.message);
  const one = [1];
  const cloud = {
    weights: one,
    balances: [balance],
    carbons: [0],
    sites: [0],
    airs: one,
    now: [6],
  } as unknown as Cloud;
  const reach = airedReach(beliefs, cloud, 0);
  const water = { celsius: 25, balance, carbon: 0, sites: [] };
  // Other constants and another activity law: two hundredths.
  expect(Math.abs(reach.likely - phAired(water, 420))).toBeLessThan(0.03);
  expect(Math.abs(reach.low - phAired(water, 840))).toBeLessThan(0.03);
  // Ten times the carbon dioxide is one pH: twice is 0.3.
  expect(reach.likely - reach.low).toBeCloseTo(Math.log10(2), 1);
});
