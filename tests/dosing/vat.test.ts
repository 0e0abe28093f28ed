import { call, columnOf, grid } from '../support/call';
import { drawsFrom } from '../support/draws';
import type { VatEvent } from '../../shared/dosing/events';
import type { VatAdvice, VatSetup } from '../../shared/dosing/vat';
import { columnsOf, vatAdvice } from '../../shared/dosing/vat';
import { SETUP, event } from './support/lines';
import { ACTION_WORDS } from '../../shared/families/water/records/buffer/titrationWords';

const NOON = 46_000.5;
/** What BUFFER.NEXT says of the same lines, column by column, as a sheet would ask. */
const formula = (setup: VatSetup, events: readonly VatEvent[]) => {
  const { doses, readings, events: words = [], again = [], at = [] } = columnsOf(events);
  const cells = (list: readonly number[]): (number | null)[][] =>
    list.map((x) => [Number.isNaN(x) ? null : x]);
  const [heads = [], row = []] = grid(
    'BUFFER.NEXT',
    setup.litres,
    cells(doses),
    cells(readings),
    setup.target,
    null,
    setup.celsius,
    setup.material,
    setup.purity,
    setup.origin,
    setup.alkalinity,
    null,
    setup.meter,
    setup.bottom,
    setup.top,
    null,
    setup.isStocked,
    null,
    columnOf(words),
    cells(again),
    cells(at),
    'given before',
  );
  const cell = (head: string): unknown => row[heads.findIndex((one) => String(one).startsWith(head))];
  return { action: cell('Action'), grams: cell('Dose'), aired: cell('Aired likely'), odds: cell('Chance') };
};

/** Histories nobody would write down, and some somebody would. */
const history = (seed: number): { setup: VatSetup; events: VatEvent[] } => {
  const chance = drawsFrom(seed);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(chance.uniform() * list.length)] as T;
  const setup: VatSetup = {
    ...SETUP,
    litres: pick([60, 600, 1000, 4000]),
    material: pick(['soda ash', 'baking soda', 'hydrated lime'] as const),
    meter: pick(['good', 'cheap', 'strips'] as const),
    origin: pick(['unknown', 'well', 'aerated'] as const),
    alkalinity: chance.uniform() < 0.2 ? chance.between(0, 1) : null,
  };
  let ph = chance.between(4.2, 7.8);
  let at = NOON;
  const events: VatEvent[] = [event('filled', { litres: setup.litres, at }), event('reading', { ph, at })];
  const n = 1 + Math.floor(5 * chance.uniform());
  for (let i = 0; i < n; i++) {
    at += chance.between(0.01, 0.3);
    const what = pick(['reading', 'reading', 'aired', 'jar', 'night', 'change', 'rain'] as const);
    if (chance.uniform() < 0.6)
      events.push(event('dose', { grams: (chance.between(0.2, 8) * setup.litres) / 1000, at }));
    ph = Math.min(9.5, Math.max(4, ph + chance.between(-0.2, 0.7)));
    const again = chance.uniform() < 0.5 ? ph + chance.between(-0.1, 0.1) : null;
    events.push(event(what, { ph, again, at: at + 0.01 }));
  }
  return { setup, events };
};

test('formula and pane say the same on eighty random histories', () => {
  const actions = new Set<string>();
  for (let seed = 1; seed <= 80; seed++) {
    const { setup, events } = history(seed);
    const advice = vatAdvice(setup, events);
    const said = formula(setup, events);
    if (advice.action === 'refused') continue;
    actions.add(advice.action);
    const word = ACTION_WORDS[advice.action as keyof typeof ACTION_WORDS];
    expect([seed, word]).toEqual([seed, said.action]);
    expect(advice.grams ?? 0).toBeCloseTo(Number(said.grams), 9);
    if (advice.action !== 'dose') expect(advice.aired?.likely).toBeCloseTo(Number(said.aired), 9);
  }
  expect([...actions].sort()).toEqual([
    'airFirst',
    'done',
    'dose',
    'readAgain',
    'stop',
    'waitSettle',
    'watch',
  ]);
});

const codes = (advice: VatAdvice): string[] => advice.reasons.map(({ code }) => code);

describe('one vat', () => {
  test('before any reading: read, and check the meter', () => {
    const advice = vatAdvice(SETUP, [event('filled')]);
    expect([advice.action, codes(advice)]).toEqual(['readFirst', ['meterUnchecked']]);
    const checked = vatAdvice(SETUP, [event('meter check', { number: 6.9, unit: 'buffer 7' })]);
    expect(checked.reasons).toEqual([{ code: 'meterOff', by: expect.closeTo(-0.1) }]);
  });

  test('the error found in the buffer is taken off: 5.8 on a meter 0.2 low is 6.0', () => {
    const read = (ph: number) => [event('reading', { ph }), event('aired', { ph, again: ph })];
    const check = event('meter check', { number: 6.8, unit: 'buffer 7', vat: '' });
    const low = vatAdvice(SETUP, [check, ...read(5.8)]);
    const right = vatAdvice(SETUP, [{ ...check, number: 7 }, ...read(6)]);
    expect(low.grams).toBeCloseTo(right.grams ?? NaN, 6);
  });

  test('a check of the day before yesterday no longer counts; a meter 0.6 off is not used', () => {
    const check = event('meter check', { number: 6.8, unit: 'buffer 7', at: NOON - 2 });
    const reading = event('reading', { ph: 5.5, at: NOON });
    expect(codes(vatAdvice(SETUP, [check, reading], { now: NOON }))).not.toContain('meterOff');
    const off = vatAdvice(SETUP, [{ ...check, number: 6.4, at: NOON }, reading], { now: NOON });
    expect(off.action).toBe('refused');
    expect(off.reasons[0]).toMatchObject({ sentence: expect.stringContaining('Clean and calibrate') });
  });

  test('a dose nobody has read after is mixed first, and nothing more is given', () => {
    const events = [
      event('reading', { ph: 5.1 }),
      event('aired', { ph: 5.5, again: 5.5 }),
      event('dose', { grams: 2 }),
    ];
    const advice = vatAdvice(SETUP, events);
    expect([advice.action, advice.grams, advice.total, advice.waitMinutes]).toEqual(['mix', null, 2, 15]);
    expect(advice.now?.likely).toBeGreaterThan(5.5);
  });

  test('an hour of air, a quarter of an hour to mix, five minutes between two readings (common practice, no source)', () => {
    const wait = (...events: readonly VatEvent[]) => {
      const { action, waitMinutes } = vatAdvice(SETUP, events);
      return [action, waitMinutes];
    };
    expect(wait(event('reading', { ph: 5.5 }))).toEqual(['airFirst', 60]);
    expect(wait(event('reading', { ph: 4.4, again: 4.6 }))).toEqual(['waitSettle', 15]);
    expect(wait(event('reading', { ph: 3.9 }))).toEqual(['readAgain', 5]);
  });

  test('filled anew, the old lines no longer count', () => {
    const before = [
      event('filled'),
      event('reading', { ph: 5.1 }),
      event('dose', { grams: 2 }),
      event('reading', { ph: 6.9 }),
    ];
    const advice = vatAdvice(SETUP, [...before, event('filled'), event('reading', { ph: 5.1 })]);
    expect([advice.action, advice.total]).toEqual(['airFirst', 0]);
  });

  test('what cannot be read is refused by name', () => {
    for (const ph of [1.2, 11.5])
      expect(vatAdvice(SETUP, [event('reading', { ph })]).reasons[0]).toMatchObject({
        sentence: expect.stringContaining(`pH ${ph} is no reading of a vat`),
      });
    expect(vatAdvice({ ...SETUP, litres: 0 }, []).action).toBe('refused');
  });

  test('fish in: ammonia before anything, lime never', () => {
    const stocked = { ...SETUP, isStocked: true, origin: 'aerated' as const };
    const events = [event('reading', { ph: 5.5, again: 5.5 })];
    expect(codes(vatAdvice(stocked, events))[0]).toBe('measureAmmonia');
    expect(vatAdvice({ ...stocked, ammonia: 0.5 }, events).action).toBe('dose');
    expect(codes(vatAdvice({ ...stocked, ammonia: 40 }, events))[0]).toBe('ammonia');
    const lime = vatAdvice({ ...stocked, ammonia: 0, material: 'hydrated lime' }, events);
    expect(lime.reasons[0]).toMatchObject({ sentence: expect.stringContaining('never put hydrated lime') });
  });
});

test('where the pH climbs later agrees with the solver', () => {
  // 45 mg/L of CO2 at pH 5.2: readings made with BUFFER.PH, so what is tested is the way back.
  const events = [0, 1.2, 2.8, 10].flatMap((grams, i, parts) => {
    const total = parts.slice(0, i + 1).reduce((sum, one) => sum + one, 0);
    const ph = call('BUFFER.PH', 1000, total, 5.2, null, 25, 'soda ash', 1, 45, 'closed') as number;
    return [...(grams > 0 ? [event('dose', { grams })] : []), event('reading', { ph, again: ph })];
  });
  const advice = vatAdvice(SETUP, events);
  const [row = []] = call('BUFFER.OUTCOME', 1000, 14, 5.2, null, 25, 'soda ash', 1, 45) as number[][];
  expect(advice.action).toBe('airFirst');
  expect(Math.abs((advice.aired?.likely ?? 0) - (row[1] ?? NaN))).toBeLessThan(0.15);
});
