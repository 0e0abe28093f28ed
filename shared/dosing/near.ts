import type { Near } from '../base/near';
import type { VatEvent } from './events';
import { EMPTY_LINE } from './log';
import type { VatAdvice, VatSetup } from './vat';
import { ALLOWED, BETWEEN, STEP, TRIED, vatAdvice } from './vat';
import { gramsText } from './say';
import { mixMinutes } from './waits';

/** Cases beside the numbers by which one vat's water is taken for another's. */

const one: VatSetup = TRIED;
const two: VatSetup = { ...TRIED, name: '2', sameAs: one.name };
const read = (vat: string, ph: number, what: VatEvent['what'] = 'reading'): VatEvent => ({
  ...EMPTY_LINE,
  vat,
  what,
  ph,
  again: ph,
});
const give = (grams: number): VatEvent => ({ ...EMPTY_LINE, vat: one.name, what: 'dose', grams });
const FIRST: readonly VatEvent[] = [
  read('1', 5.1),
  read('1', 5.5, 'aired'),
  give(2),
  read('1', 6.3),
  give(1),
  read('1', 6.7),
];
/** The second vat, aired, after the first has been dosed to its end. */
const second = (ph: number, setup = two): VatAdvice =>
  vatAdvice(setup, [...FIRST, read('2', 5.1), read('2', ph, 'aired')], { vats: [one, two] });
const water = (ph: number): string =>
  second(ph)
    .reasons.map(({ code }) => code)
    .filter((code) => code.endsWith('Water'))
    .join(' ');
const limit = (ph: number, setup: VatSetup): string =>
  second(ph, setup)
    .reasons.flatMap((reason) => (reason.code === 'limited' ? [reason.by] : []))
    .join(' ');

export const NEAR: readonly Near[] = [
  {
    number: 'errors below which the other vat’s water may lie beyond what this vat’s readings allow',
    value: ALLOWED,
    below: () => water(4.49),
    above: () => water(4.52),
    answers: ['otherWater', 'sameWater'],
  },
  {
    number: 'spread between two fillings, as times that of the first',
    value: BETWEEN.share,
    below: () => water(6.39),
    above: () => water(6.42),
    answers: ['sameWater', 'otherWater'],
  },
  {
    number: 'pH units in one step where the water is known from another vat',
    value: STEP.known,
    below: () => limit(5.1, two),
    above: () => limit(5.1, { ...two, sameAs: null }),
    answers: ['top', 'step'],
  },
  {
    number: 'minutes to mix a thousand litres',
    value: 15,
    below: () => mixMinutes(990),
    above: () => mixMinutes(1010),
    answers: [15, 25],
  },
  {
    number: 'minutes more to mix each further thousand litres',
    value: 10,
    below: () => mixMinutes(1990),
    above: () => mixMinutes(2010),
    answers: [25, 35],
  },
  {
    number: 'grams from which on they are said whole',
    value: 100,
    below: () => gramsText(99.4),
    above: () => gramsText(100.4),
    answers: ['99.4', '100'],
  },
];
