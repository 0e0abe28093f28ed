import { growthFromRation } from '../kernels/feedConversion';
import { daysToWeight, specificGrowth, weightAfter } from '../kernels/specificGrowth';
import { days, fishGram, gram, gramPerDay, percentPerDay, ratio, share } from '../../../units/quantities';
import type { CellError } from '../../../base/values';
import { noSolution, refuse } from '../../../base/values';
import { defineFunction, value } from '../../../functions/define';
import { num } from '../../../functions/params';
import { gramsFromKilograms } from '../../../units/convert';

const fish = (doc: string) => num(fishGram, { min: 0.0005, max: 30000, doc });
export const startParam = fish('Mean weight of one fish at the start.');
export const endParam = fish('Mean weight of one fish at the end.');
export const daysParam = num(days, { above: 0, max: 3650, doc: 'Days between the two weighings.' });
const rateParam = num(percentPerDay, { above: 0, max: 150, doc: 'Specific growth rate, % per day.' });

/** A fish that shrank this much was hardly weighed in the same unit. */
const HARDLY_SAME_UNIT = 20;
export const weightSlip = (start: number, end: number): CellError | undefined =>
  end * HARDLY_SAME_UNIT < start
    ? refuse(
        `end: ${end} g after ${start} g at the start. That looks like kilograms: ${end} kg is ${gramsFromKilograms(end)} g.`,
      )
    : undefined;

export const sgr = defineFunction({
  id: 'GROWTH.SGR',
  family: 'Rearing',
  summary: 'Specific growth rate from two mean weights: percent per day.',
  questions: [
    'growth rate',
    'SGR',
    'days to reach 5 g',
    'how long to grow to 10 g',
    'ADG',
    'spesific growth rate',
    'when will fry be fingerlings',
    'how long before I sell',
    'when dem go reach fingerlings',
  ],
  params: { start: startParam, end: endParam, days: daysParam },
  returns: value(percentPerDay, 'Growth in % per day; negative if the fish lost weight.'),
  valid: 'One stage at a time: the rate falls as fish grow',
  sources: ['RICKER79'],
  help: '100 × (ln end − ln start) ÷ days.',
  native: '100*LN({end}/{start})/{days}',
  examples: [
    { args: [50, 100, 10], gives: '6.931', because: 'A doubling in 10 days: 100 × ln 2 ÷ 10.' },
    {
      args: [30, 60, 15],
      gives: '4.621',
      because: 'A page in circulation prints 4.615 for this; it is 4.621.',
    },
    {
      args: [800, 1.1, 30],
      fails: { code: '#VALUE!', says: 'looks like kilograms' },
      because: '1.1 kg typed where grams are meant.',
    },
  ],
  compute: ({ start, end, days: span }) => weightSlip(start, end) ?? specificGrowth(start, end, span),
});

export const gain = defineFunction({
  id: 'GROWTH.GAIN',
  family: 'Rearing',
  summary: 'Weight gained per fish and day.',
  questions: ['grams gained per day', 'daily weight gain', 'adg', 'daily gain'],
  params: { start: startParam, end: endParam, days: daysParam },
  returns: value(gramPerDay, 'Gain of one fish per day.'),
  valid: 'Any',
  sources: ['DEFINITION', 'SOLARPOND'],
  help:
    'The gain, not the final weight, over the days: an abstract that divides the final ' +
    'weight prints 3.32 where the gain is 3.274 g.',
  native: '({end}-{start})/{days}',
  examples: [
    { args: [4.07, 298.75, 90], gives: '3.274', because: 'Gain of 294.68 g over 90 days.' },
    {
      args: [4.07, 298.75, 0],
      fails: { code: '#VALUE!', says: 'days' },
      because: 'Two weighings on one day show no growth.',
    },
  ],
  compute: ({ start, end, days: span }) => weightSlip(start, end) ?? (end - start) / span,
});

export const weightLater = defineFunction({
  id: 'GROWTH.WEIGHT',
  family: 'Rearing',
  summary: 'Mean weight after some days at a steady growth rate.',
  questions: [
    'weight after some days',
    'how heavy will they be in two weeks',
    'mean weight at the end',
    'weight after 30 days',
  ],
  params: {
    start: startParam,
    growth: num(percentPerDay, { min: 0, max: 150, doc: 'Specific growth rate, % per day.' }),
    days: num(days, { min: 0, max: 3650, doc: 'Days from the start.' }),
  },
  returns: value(gram, 'Mean weight.'),
  valid: 'A few weeks ahead: the rate falls as fish grow',
  sources: ['RICKER79', 'LEGE92'],
  help:
    'On a published growth curve of African catfish one rate taken over 239 days was up ' +
    'to 65 % too low in between (Legendre et al. 1992): measure again every few weeks.',
  native: '{start}*EXP({growth}*{days}/100)',
  examples: [
    { args: [50, 6.931, 10], gives: '100.0', because: 'The inverse of the growth rate example.' },
    { args: [50, 6.931, -1], fails: { code: '#VALUE!', says: 'days' }, because: 'No growing backwards.' },
  ],
  compute: ({ start, growth, days: span }) => weightAfter(start, growth, span),
});

export const daysToSize = defineFunction({
  id: 'GROWTH.DAYS',
  family: 'Rearing',
  summary: 'Days from one mean weight to another at a steady growth rate.',
  questions: ['days to reach a weight', 'how long until they are 5 grams', 'when will they be big enough'],
  params: { start: startParam, target: fish('Mean weight you want.'), growth: rateParam },
  returns: value(days, 'Days to that weight.'),
  valid: 'A few weeks ahead: the rate falls as fish grow',
  sources: ['RICKER79'],
  native: '100*LN({target}/{start})/{growth}',
  examples: [
    { args: [50, 100, 6.931], gives: '10.0', because: 'The inverse of the growth rate example.' },
    {
      args: [100, 50, 6.931],
      fails: { code: '#NUM!', says: 'already' },
      because: 'The fish are heavier than the target.',
    },
  ],
  compute: ({ start, target, growth }) =>
    target < start
      ? noSolution(
          `The fish weigh ${start} g, already more than ${target} g. Was one of them typed in kilograms?`,
        )
      : daysToWeight(start, target, growth),
});

export const fromRation = defineFunction({
  id: 'GROWTH.FROMRATION',
  family: 'Rearing',
  summary: 'Growth rate that a ration can give at your feed conversion ratio: a check on a feed plan.',
  questions: [
    'can they grow that fast on this feed',
    'growth that a ration can give',
    'is my feed plan enough for the growth',
  ],
  params: {
    ration: num(share, { min: 0, max: 1, doc: 'Feed per day as a share of body weight.' }),
    conversion: num(ratio, {
      above: 0,
      max: 20,
      doc: 'Feed given per weight gained, from your own records.',
    }),
  },
  returns: value(percentPerDay, 'Growth in % per day.'),
  valid: 'Feed that is eaten',
  sources: ['AQUATEXT'],
  native: '{ration}*100/{conversion}',
  examples: [
    { args: [0.05, 1.25], gives: '4', because: '5 % a day at 1.25 g of feed per g gained.' },
    {
      args: [0.05, 0],
      fails: { code: '#VALUE!', says: 'above 0' },
      because: 'Growth without feed does not exist.',
    },
  ],
  compute: ({ ration, conversion }) => growthFromRation(ration, conversion),
});
