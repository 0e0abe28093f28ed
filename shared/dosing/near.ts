import type { Near } from '../base/near';
import type { VatEvent } from './events';
import { EMPTY_LINE } from './log';
import type { VatAdvice, VatSetup } from './vat';
import { ALLOWED, FILLINGS_DIFFER, STEP, TRIED, vatAdvice } from './vat';
import { gramsText, vatSentences } from './say';
import { measuresFor } from './spoons';
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

const lone = (...events: readonly VatEvent[]): VatAdvice => vatAdvice(one, events);
/** What is said of a meter that shows so much too much in a buffer of pH 7. */
const meter = (by: number): string | undefined => {
  const check: VatEvent = {
    ...EMPTY_LINE,
    vat: one.name,
    what: 'meter check',
    number: 7 + by,
    unit: 'buffer 7',
    at: 1000,
  };
  const advice = vatAdvice(one, [check, { ...read('1', 5.5), at: 1000 }], { now: 1000 });
  return vatSentences(one, advice).why.find((sentence) => sentence.includes('buffer'));
};
/** Litres of stock for a dose too small for a spoon of lime. */
const stockLitres = (spoon: number): number | undefined =>
  measuresFor(spoon / 5, [spoon], 'hydrated lime').stock?.litres;
/** Highest pH that may be read after 1.3 g in spoons of which so many hold it. */
const highest = (spoon: number): number =>
  Math.round(
    1000 *
      (vatAdvice({ ...one, spoons: [spoon] }, [read('1', 5.1), read('1', 5.4, 'aired')]).now?.high ?? NaN),
  ) / 1000;

export const NEAR: readonly Near[] = [
  {
    number: 'pH in its buffer by which a meter is right',
    value: 0.005,
    below: () => meter(0.0047),
    above: () => meter(0.0053),
    answers: [
      'The meter was right in its buffer.',
      'The meter shows 0.01 too much in its buffer: that is taken off every reading.',
    ],
  },
  {
    number: 'parts of a spoon that can be levelled off',
    value: 4,
    below: () => measuresFor(3.1, [4]).grams,
    above: () => measuresFor(7.2, [4]).grams,
    answers: [3, 7],
  },
  {
    number: 'grams in a litre of stock where no spoon is known',
    value: 5,
    below: () => measuresFor(0.9, []).millilitres,
    above: () => measuresFor(1.3, []).millilitres,
    answers: [180, 260],
  },
  {
    number: 'times a spoon that must dissolve in a litre of stock',
    value: 2,
    // 1.6 g of lime dissolve in a litre.
    below: () => stockLitres(0.75),
    above: () => stockLitres(0.9),
    answers: [1, 10],
  },
  {
    number: 'share by which a spoon is off, in what may be read',
    value: 0.1,
    below: () => highest(0.4),
    above: () => highest(0.6),
    answers: [6.785, 6.721],
  },
  {
    number: 'minutes until a reading is taken again',
    value: 5,
    below: () => lone({ ...read('1', 3.5), again: null }).waitMinutes,
    above: () => lone(read('1', 5.5)).waitMinutes,
    answers: [5, 60],
  },
  {
    number: 'minutes of air before the next reading',
    value: 60,
    below: () => lone(read('1', 3.5)).waitMinutes,
    above: () => lone(read('1', 5.5)).waitMinutes,
    answers: [15, 60],
  },
  {
    number: 'errors below which the other vat’s water may lie beyond what this vat’s readings allow',
    value: ALLOWED,
    below: () => water(4.49),
    above: () => water(4.52),
    answers: ['otherWater', 'sameWater'],
  },
  {
    number: 'meq/L by which two fillings of one water differ',
    value: FILLINGS_DIFFER,
    below: () => water(6.44),
    above: () => water(6.47),
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
