import { dosingField, DOSING_KEYS } from '../../../shared/dosing/fields';
import { faultOf } from '../../../shared/dosing/ask';
import { stateOf, vatSentences } from '../../../shared/dosing/say';
import type { Around, VatSetup } from '../../../shared/dosing/vat';
import { vatAdvice } from '../../../shared/dosing/vat';
import type { VatEvent } from '../../../shared/dosing/events';
import { expectKept } from '../../support/kept';
import { SETUP, event } from '../support/lines';

/** What is advised and said at a vat, whole: one situation of each kind, and where they turn into another. */
const DAY = 46_400;
const reading = (ph: number, more: Partial<VatEvent> = {}) => event('reading', { ph, again: ph, ...more });
const dose = (grams: number) => event('dose', { grams });
const check = (ph: number, at: number | null = DAY) =>
  event('meter check', { number: ph, at, unit: 'buffer 7' });
/** Aired until it moved no more: what is missing now is product. */
const rested = (ph: number, more: Partial<VatEvent> = {}) =>
  [0, 1].map(() => event('aired', { ph, again: ph, ...more }));
const filled = event('filled', { litres: 1000 });

interface Situation {
  readonly events: readonly VatEvent[];
  readonly setup?: Partial<VatSetup>;
  readonly around?: Around;
}
const other: VatSetup = { ...SETUP, name: '2', sameAs: '1' };
const ofOther = (ph: number) => rested(ph, { vat: '2' });
/** The first vat from sour to done: what the second one of its water may start from. */
const known = [filled, ...rested(5.4), dose(8), reading(6.1), dose(4), ...rested(6.7)];

const SITUATIONS: Readonly<Record<string, Situation>> = {
  'nothing read': { events: [filled] },
  'nothing read, meter checked': { events: [check(7.2), filled] },
  'sour, never aired': { events: [filled, reading(5.4)] },
  'sour, no air to be had': { events: [filled, reading(5.4)], setup: { canAir: false } },
  'two readings apart': { events: [filled, event('reading', { ph: 5.4, again: 5.9 })] },
  'dose in, not read': { events: [filled, reading(5.4), dose(20)], setup: { canAir: false } },
  'dose in and read': { events: [filled, reading(5.4), dose(20), reading(6.1)] },
  'aired to rest, sour': { events: [filled, ...rested(5.4)] },
  'aired, sour': { events: [filled, event('aired', { ph: 5.8, again: 5.8 })] },
  'aired twice, done': {
    events: [filled, event('aired', { ph: 7.1, again: 7.1 }), event('aired', { ph: 7.1, again: 7.1 })],
  },
  'well inside': { events: [filled, reading(5.4), dose(40), reading(7)] },
  'above the window': { events: [filled, reading(8.6)] },
  'a reading nobody believes': { events: [filled, reading(5.4), dose(20), reading(9.8)] },
  'fell after a dose': { events: [filled, ...rested(5.4), dose(8), reading(5)] },
  'much lower than before': { events: [filled, ...rested(6.4), dose(8), reading(4.6)] },
  'a first reading no water has': { events: [filled, event('reading', { ph: 3.9 })] },
  'a second reading no dose explains': { events: [filled, ...rested(5.4), dose(1), reading(9.9)] },
  'leapt after a little': { events: [filled, ...rested(5.4), dose(0.3), reading(7.4)] },
  'beyond a meter': { events: [filled, reading(2.9)] },
  'fish in, ammonia unknown': { events: [filled, ...rested(5.4)], setup: { isStocked: true, canAir: false } },
  'fish in, little ammonia': {
    events: [filled, ...rested(5.4)],
    setup: { isStocked: true, ammonia: 0.5, canAir: false },
  },
  'fish in, much ammonia': {
    events: [filled, reading(6.8)],
    setup: { isStocked: true, ammonia: 40, canAir: false, target: 7.5, bottom: 7.2, top: 8 },
  },
  lime: { events: [filled, ...rested(5.4)], setup: { material: 'hydrated lime', canAir: false } },
  'weak product, no spoons': {
    events: [filled, ...rested(5.4)],
    setup: { material: 'baking soda', purity: 0.6, spoons: [], canAir: false },
  },
  'alkalinity measured': { events: [filled, ...rested(5.8)], setup: { alkalinity: 0.3, canAir: false } },
  'strips of paper': { events: [filled, ...rested(5.8)], setup: { meter: 'strips', canAir: false } },
  ...Object.fromEntries(
    [7.2, 6.8, 7, 7.004, 7.006].map((ph) => [
      `meter shows ${ph} in its buffer`,
      { events: [check(ph), filled, ...rested(5.6)], setup: { canAir: false }, around: { now: DAY + 0.1 } },
    ]),
  ),
  ...Object.fromEntries(
    [23.99, 24, 24.01].map((hours) => [
      `meter checked ${hours} h ago`,
      {
        events: [check(7.2), filled, ...rested(5.6)],
        setup: { canAir: false },
        around: { now: DAY + hours / 24 },
      },
    ]),
  ),
  'meter checked, nobody knows when': {
    events: [check(7.2, null), filled, ...rested(5.6)],
    setup: { canAir: false },
    around: { now: DAY + 9 },
  },
  ...Object.fromEntries(
    [5.3, 5.45, 6.4].map((ph) => [
      `water of another vat, read at ${ph}`,
      {
        events: [...known, event('filled', { vat: '2', litres: 1000 }), ...ofOther(ph)],
        setup: { ...other, canAir: false },
        around: { vats: [SETUP, other] },
      },
    ]),
  ),
};

test('advice and its sentences', () => {
  expectKept(
    'dosing-advice',
    Object.entries(SITUATIONS).map(([situation, { events, setup: more, around }]) => {
      const setup = { ...SETUP, ...more };
      const advice = vatAdvice(setup, events, around);
      return { situation, advice, state: stateOf(advice).word, said: vatSentences(setup, advice) };
    }),
  );
});

test('the set-up begins with what is allowed', () => {
  expect(
    DOSING_KEYS.flatMap((key) => {
      const field = dosingField(key);
      return field.initial === null ? [] : [faultOf(field, field.initial)];
    }).filter((fault) => fault !== undefined),
  ).toEqual([]);
  expect(Object.fromEntries(DOSING_KEYS.map((key) => [key, dosingField(key).initial]))).toMatchObject({
    material: 'soda ash',
    purity: 1,
    target: 7,
    bottom: 6.5,
    top: 7.5,
  });
});
