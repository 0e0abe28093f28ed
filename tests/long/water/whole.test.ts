import type { Figures } from './play';
import { figuresOf, line, many, next } from './play';
import type { Draw } from './vat';
import { METERS } from './vat';
import type { Draws } from '../../support/draws';

/**
 * Whole vats, followed until they have aired: water, gas, mixing, meter and hand are simulated apart from the
 * product's own chemistry (chemistry.ts, vat.ts); the person does what BUFFER.NEXT says, nothing else.
 * Before air came first (measured with the same simulator): ordinary waters 27 % pushed above 8, 72 % inside
 * once aired, none left alone; hard wells 75 %; meter 0.3 low 40 % and read too early 81 % ever above 8.
 */
const N = Number(process.env['VATS'] ?? 200);
const SHIFT = Number(process.env['SEED'] ?? 0);
const low = (chance: Draws) => ({ ...METERS.good(chance), offset: -0.3 });

const of = (name: string, from: number, draw: Draw, meter = 'good'): Figures => {
  const f = figuresOf(many(N, from + SHIFT, draw, next(meter)));
  process.stdout.write(`${line(name, f)}\n`);
  return f;
};

test('ordinary waters, pH 4.3 to 6.4, end inside and are not pushed over', () => {
  const f = of('ordinary', 1, { kind: 'ordinary' });
  expect(f.pushedOver).toBeLessThanOrEqual(0.02);
  expect(f.ever8).toBeLessThanOrEqual(0.02);
  expect(f.inside).toBeGreaterThanOrEqual(0.95);
  expect(f.leftAlone).toBeGreaterThanOrEqual(0.95);
  expect(f.readings).toBeLessThanOrEqual(5);
  expect(f.held).toBeGreaterThanOrEqual(0.85);
  expect(f.held).toBeLessThanOrEqual(0.96);
});

test('a cheap meter', () => {
  const f = of('ordinary, cheap meter', 1001, { kind: 'ordinary', meter: METERS.cheap }, 'cheap');
  expect(f.pushedOver).toBeLessThanOrEqual(0.02);
  expect(f.inside).toBeGreaterThanOrEqual(0.9);
  expect(f.held).toBeGreaterThanOrEqual(0.85);
});

test('hard wells get nothing', () => {
  expect(of('hard wells', 2001, { kind: 'hard well' }).leftAlone).toBeGreaterThanOrEqual(0.95);
});

test('a meter 0.3 low, and readings taken too early, hardly ever pass 8', () => {
  const early: Draw = { kind: 'ordinary', mixing: (chance) => chance.between(0.3, 0.7) };
  for (const f of [
    of('meter 0.3 low', 3001, { kind: 'ordinary', meter: low }),
    of('read too early', 4001, early),
  ]) {
    expect(f.ever8).toBeLessThanOrEqual(0.1);
    expect(f.pushedOver).toBeLessThanOrEqual(0.02);
  }
});

test('water of peat and leaves', () => {
  const f = of('tannin', 5001, { kind: 'tannin' });
  expect(f.ever8).toBeLessThanOrEqual(0.02);
  expect(f.inside).toBeGreaterThanOrEqual(0.93);
});

test('baking soda and hydrated lime', () => {
  for (const product of ['baking soda', 'hydrated lime'] as const) {
    const f = of(product, product === 'baking soda' ? 6001 : 7001, { kind: 'ordinary', product });
    expect(f.ever8).toBeLessThanOrEqual(0.02);
    expect(f.inside).toBeGreaterThanOrEqual(0.93);
  }
});
