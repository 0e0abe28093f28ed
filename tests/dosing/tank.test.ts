import type { VatEvent } from '../../shared/dosing/events';
import { tankAdvice } from '../../shared/dosing/tank';
import type { VatSetup } from '../../shared/dosing/vat';
import { SETUP, event } from './support/lines';

/** What stands in a tank after each line of the log, counted by hand. */
const TANK: VatSetup = { ...SETUP, name: 'tank', litres: 4000, spoons: [15] };
const VATS: readonly VatSetup[] = [
  TANK,
  { ...SETUP, name: '1', litres: 300, sameAs: 'tank' },
  { ...SETUP, name: '2', litres: 300, sameAs: null },
  { ...SETUP, name: '3', litres: 300, sameAs: '1' },
];
const filled = (litres: number | null = 4000): VatEvent => event('filled', { vat: 'tank', litres });
const to = (vat: string, litres: number): VatEvent => event('from tank', { vat, litres });
const here = (what: VatEvent['what'], litres: number): VatEvent => event(what, { vat: 'tank', litres });
const dose = (vat: string, grams: number): VatEvent => event('dose', { vat, grams });
const after = (...events: readonly VatEvent[]) => {
  const { litres, drawn, total, mixMinutes, fillsLeft } = tankAdvice(TANK, events, { vats: VATS });
  return { litres, drawn, total, mixMinutes, fills: fillsLeft(300) };
};

test.each<readonly [string, readonly VatEvent[], object]>([
  ['full', [filled()], { litres: 4000, drawn: 0, total: 0, fills: 13, mixMinutes: 45 }],
  ['half full', [filled(2000)], { litres: 2000, fills: 6, mixMinutes: 25 }],
  ['filled, litres not said', [filled(null)], { litres: 4000 }],
  ['vats of its water drawn', [filled(), to('1', 300), to('2', 200)], { litres: 3500, drawn: 500 }],
  ['a vat of another water is not from here', [filled(), to('3', 300)], { litres: 4000, drawn: 0 }],
  ['exactly thirteen vats', [filled(), to('1', 100)], { litres: 3900, fills: 13 }],
  ['a litre short of thirteen', [filled(), to('1', 101)], { litres: 3899, fills: 12 }],
  ['more drawn than there was', [filled(100), to('1', 300)], { litres: 0, drawn: 300, fills: 0 }],
  ['topped up', [filled(3000), here('refill', 400), here('rain', 100)], { litres: 3500 }],
  ['no more than it holds', [filled(3000), here('refill', 1001)], { litres: 4000 }],
  ['water changed', [filled(3000), here('change', 1000)], { litres: 3000, drawn: 0 }],
  ['its own doses', [filled(), dose('tank', 12), dose('1', 3), dose('tank', 5)], { total: 17 }],
  [
    'counted anew when filled',
    [filled(), dose('tank', 12), to('1', 300), filled(), dose('tank', 4)],
    { litres: 4000, drawn: 0, total: 4 },
  ],
])('%s', (_, events, wanted) => {
  expect(after(...events)).toMatchObject(wanted);
});

test('raw water takes the product away in its share; so does water that is drawn or changed', () => {
  const likely = (raw: number, ...more: readonly VatEvent[]): number =>
    tankAdvice(
      TANK,
      [
        filled(),
        event('reading', { vat: 'tank', ph: 5.5, again: 5.5 }),
        dose('tank', 40),
        event('reading', { vat: 'tank', ph: 7.4, again: 7.4 }),
        ...more,
      ],
      { vats: VATS },
    ).afterTopUp(raw)?.likely ?? NaN;
  // 4,000 L more to 4,000 L, 2,000 more to 2,000, 1,000 more to 1,000: the same water each time.
  const half = likely(4000);
  expect(likely(2000, to('1', 2000))).toBeCloseTo(half, 6);
  expect(likely(1000, to('1', 2000), to('1', 1000))).toBeCloseTo(half, 6);
  expect(likely(0)).toBeGreaterThan(half + 0.05);
  expect(likely(12_000)).toBeLessThan(half - 0.05);
});
