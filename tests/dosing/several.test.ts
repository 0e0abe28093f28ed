import { call } from '../support/call';
import { tankAdvice } from '../../shared/dosing/tank';
import type { VatEvent } from '../../shared/dosing/events';
import type { VatSetup } from '../../shared/dosing/vat';
import { vatAdvice } from '../../shared/dosing/vat';
import { airedPH, drawVat, pass, pour, truePH } from '../long/water/vat';
import { drawsFrom } from '../support/draws';
import { SETUP, event } from './support/lines';

/** Vats and tanks of one water, simulated apart from the product's own chemistry (tests/long/water). */

const water = (seed: number) => {
  const chance = drawsFrom(seed);
  for (;;) {
    const vat = drawVat(chance, { kind: 'ordinary' });
    if (airedPH(vat) < 6 && truePH(vat) > 4.6) return vat;
  }
};
const reading = (vat: string, ph: number, what: VatEvent['what'] = 'reading'): VatEvent =>
  event(what, { vat, ph: Number(ph.toFixed(2)), again: Number(ph.toFixed(2)) });

/** Follows the advice in one vat to its end; answers its events and the readings it took. */
const dosed = (
  setup: VatSetup,
  before: readonly VatEvent[],
  vats: readonly VatSetup[],
  vat: ReturnType<typeof water>,
) => {
  const events: VatEvent[] = [...before];
  let readings = 0;
  const read = (what: VatEvent['what'] = 'reading'): void => {
    readings++;
    events.push(reading(setup.name, truePH(vat), what));
  };
  read();
  for (let i = 0; i < 14; i++) {
    const advice = vatAdvice(setup, events, { vats });
    if (advice.action === 'airFirst') {
      pass(vat, 1, 'strong');
      read('aired');
    } else if (advice.action === 'dose') {
      const grams = advice.measures?.grams ?? 0;
      pour(vat, grams);
      events.push(event('dose', { vat: setup.name, grams }));
      pass(vat, 0.25, 'strong');
      read();
    } else if (advice.action === 'waitSettle' || advice.action === 'readAgain') {
      pass(vat, 0.25, 'strong');
      read();
    } else break;
  }
  return { events, readings, end: airedPH(vat), highest: vat.highest };
};

test('a second vat of the same water needs fewer readings and ends as well; nothing passes 8', () => {
  let [first, second] = [0, 0];
  for (let seed = 1; seed <= 6; seed++) {
    const one = { ...SETUP, name: '1', spoons: [1] };
    const two = { ...one, name: '2', sameAs: '1' };
    const a = dosed(one, [], [one, two], water(seed));
    const b = dosed(two, a.events, [one, two], water(seed));
    expect(Math.max(a.highest, b.highest, a.end, b.end)).toBeLessThan(8);
    expect(b.end).toBeGreaterThan(6.4);
    first += a.readings;
    second += b.readings;
  }
  process.stdout.write(
    `readings a vat: the first ${(first / 6).toFixed(1)}, the second ${(second / 6).toFixed(1)}\n`,
  );
  expect(second).toBeLessThan(first);
});

test('a vat that is said to hold the same water and does not is dosed by itself', () => {
  const one = { ...SETUP, name: '1' };
  const two = { ...SETUP, name: '2', sameAs: '1' };
  const events = [
    reading('1', 5.1),
    reading('1', 5.5, 'aired'),
    event('dose', { vat: '1', grams: 2 }),
    reading('1', 5.9),
    reading('2', 6.1),
    reading('2', 7.4, 'aired'),
  ];
  const advice = vatAdvice(two, events, { vats: [one, two] });
  expect([advice.action, advice.reasons.map(({ code }) => code).includes('otherWater')]).toEqual([
    'done',
    true,
  ]);
});

describe('a tank of 4,000 L, twelve vats of 300 L filled from it, topped up with raw water in between', () => {
  const tank: VatSetup = { ...SETUP, name: 'tank', litres: 4000, spoons: [15] };
  const vats = [
    tank,
    ...Array.from({ length: 12 }, (_, i) => ({ ...SETUP, name: `${i + 1}`, litres: 300, sameAs: 'tank' })),
  ];
  const begin = (): VatEvent[] => [
    event('filled', { vat: 'tank', litres: 4000 }),
    reading('tank', 5.1),
    reading('tank', 5.5, 'aired'),
  ];

  test('a little raw water changes next to nothing, a great deal of it makes raw water again', () => {
    const events = [...begin(), event('dose', { vat: 'tank', grams: 12 }), reading('tank', 6.9)];
    const { aired, afterTopUp } = tankAdvice(tank, events, { vats });
    const [little, half, much] = [40, 4000, 400_000].map((litres) => afterTopUp(litres)?.likely ?? NaN);
    expect(Math.abs((little ?? NaN) - (aired?.likely ?? NaN))).toBeLessThan(0.03);
    expect(half).toBeLessThan(little ?? NaN);
    expect(much).toBeLessThan((half ?? NaN) - 0.2);
  });

  test('it is dosed for what stands in it, mixed longer, and drawn down vat by vat', () => {
    const events = begin();
    const advice = tankAdvice(tank, events, { vats });
    expect(advice.action).toBe('dose');
    // Ten times the water of a vat of 400 L, ten times the grams.
    const small = vatAdvice({ ...tank, name: 'tank', litres: 400 }, events, { vats });
    expect(advice.grams).toBeCloseTo(10 * (small.grams ?? 0), 6);
    expect([advice.waitMinutes, advice.litres, advice.fillsLeft(300)]).toEqual([45, 4000, 13]);
    const drawn = [...events, ...['1', '2'].map((vat) => event('from tank', { vat, litres: 300 }))];
    expect(tankAdvice(tank, drawn, { vats })).toMatchObject({ litres: 3400, drawn: 600 });
  });

  test('a top-up with raw water: the pH it falls to agrees with mixing by the functions', () => {
    // Aired water of pH 5.5 holds about no alkalinity; 40 g of soda ash in 4,000 L bring 0.189 meq/L
    // (18.87 meq/g, standard atomic weights); half of it is left when 2,000 L of raw water come in.
    const events = [
      ...begin(),
      event('dose', { vat: 'tank', grams: 40 }),
      reading('tank', 7.46, 'night'),
      ...Array.from({ length: 7 }, (_, i) => event('from tank', { vat: `${i + 1}`, litres: 2000 / 7 })),
    ];
    const advice = tankAdvice(tank, events, { vats });
    expect(advice.litres).toBeCloseTo(2000);
    const half = call('BUFFER.PH', 4000, 20, 5.5, null, 25, 'soda ash', 1, null, 'open') as number;
    expect(advice.afterTopUp(2000)?.likely).toBeCloseTo(half, 0);
    expect(Math.abs((advice.afterTopUp(2000)?.likely ?? 0) - half)).toBeLessThan(0.2);
  });

  test('after the top-up it is read and dosed anew, for what stands in it now', () => {
    const events = [
      ...begin(),
      event('dose', { vat: 'tank', grams: 20 }),
      reading('tank', 6.9),
      event('from tank', { vat: '1', litres: 2000 }),
      event('refill', { vat: 'tank', litres: 1000 }),
      reading('tank', 5.6),
      reading('tank', 6, 'aired'),
    ];
    const advice = tankAdvice(tank, events, { vats });
    expect([advice.litres, advice.action, advice.isReady]).toEqual([3000, 'dose', false]);
    const alone = vatAdvice({ ...tank, litres: 3000 }, [reading('tank', 5.6), reading('tank', 6, 'aired')]);
    expect(advice.grams).toBeCloseTo(alone.grams ?? NaN, 6);
  });

  test('a vat filled from the tank starts from what the tank has become', () => {
    const events = [
      ...begin(),
      event('dose', { vat: 'tank', grams: 30 }),
      reading('tank', 7),
      event('filled', { vat: '1', litres: 300 }),
      event('from tank', { vat: '1', litres: 300 }),
      reading('1', 6.9),
    ];
    const advice = vatAdvice(vats[1] ?? SETUP, events, { vats });
    expect([advice.action, advice.reasons.map(({ code }) => code).includes('sameWater')]).toEqual([
      'done',
      true,
    ]);
  });
});
