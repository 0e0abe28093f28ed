import { vatAdvice } from '../../shared/dosing/vat';
import { SETUP, event } from './support/lines';

/** What went in since the last reading, and what went in at all, by hand. */
const reading = (ph: number) => event('reading', { ph, again: ph });
const dose = (grams: number) => event('dose', { grams });

test('doses after the last reading are told together; all of them since it was filled are kept', () => {
  const events = [
    dose(9),
    event('filled', { litres: 1000 }),
    reading(5.4),
    dose(1),
    reading(5.8),
    dose(2),
    dose(3),
  ];
  const { action, reasons, total, waitMinutes } = vatAdvice({ ...SETUP, canAir: false }, events);
  expect([action, reasons[0], total, waitMinutes]).toEqual([
    'mix',
    { code: 'given', grams: 5, read: 5.8 },
    6,
    15,
  ]);
});
test('after a refill only what went in since counts', () => {
  const events = [
    event('filled', { litres: 1000 }),
    reading(5.4),
    dose(4),
    event('refill', { litres: 200 }),
    reading(5.5),
    dose(2),
  ];
  expect(vatAdvice({ ...SETUP, canAir: false }, events).total).toBe(2);
});

test('what a spoon holds is less sure than what is weighed: the pH expected after it spreads wider', () => {
  const events = [event('filled', { litres: 1000 }), reading(5.4), dose(6)];
  const after = (spoons: readonly number[]) => vatAdvice({ ...SETUP, spoons, canAir: false }, events).now;
  const [weighed, levelled] = [after([]), after([5])];
  expect(weighed && levelled && levelled.high - levelled.low > weighed.high - weighed.low).toBe(true);
});
