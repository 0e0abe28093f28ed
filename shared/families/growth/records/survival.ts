import { feedConversion } from '../kernels/feedConversion';
import { dailySurvival, survivorsAfter } from '../kernels/survival';
import { transportLoad } from '../kernels/transportLoad';
import { gramsFromKilograms } from '../../../units/convert';
import { celsius, count, days, kilogram, ratio, share } from '../../../units/quantities';
import { noSolution, outside, refuse } from '../../../base/values';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { num } from '../../../functions/params';
import { weightParam } from '../../feeding/records/feed';

const stocked = num(count, { above: 0, max: 1e12, doc: 'Fish at the start.' });
const span = num(days, { above: 0, max: 3650, doc: 'Days between the two counts.' });
const biomass = (doc: string) => num(kilogram, { min: 0, max: 1e7, doc });

export const survivalDaily = defineFunction({
  id: 'SURVIVAL.DAILY',
  family: 'Rearing',
  summary: 'Daily survival behind a total one: the even share that stays alive each day.',
  questions: [
    'daily survival',
    'mortality per day from a total',
    'share that dies each day',
    'daily mortality percent',
  ],
  params: { stocked, alive: num(count, { min: 0, max: 1e12, doc: 'Fish alive at the end.' }), days: span },
  returns: value(share, 'Share alive from one day to the next.'),
  valid: 'Deaths spread evenly; a disease does not',
  sources: ['DEFINITION'],
  native: '({alive}/{stocked})^(1/{days})',
  examples: [
    { args: [1000, 500, 10], gives: '0.9330', because: '0.9330 multiplied ten times by itself is one half.' },
    {
      args: [1000, 1200, 10],
      fails: { code: '#VALUE!', says: 'more than' },
      because: 'More alive than stocked.',
    },
  ],
  compute: ({ stocked: start, alive, days: d }) =>
    alive > start
      ? refuse(
          `alive: ${alive} is more than the ${start} stocked. Were fish added, or the two typed the wrong way round?`,
        )
      : dailySurvival(start, alive, d),
});

export const survivalAfter = defineFunction({
  id: 'SURVIVAL.AFTER',
  family: 'Rearing',
  summary: 'Fish left after some days at an even daily survival.',
  questions: [
    'fish left after some days',
    'how many will be alive in a month',
    'number left at daily survival',
    'how many will be left after 30 days',
    'how many go remain after one month',
  ],
  params: {
    stocked,
    daily: num(share, {
      min: 0,
      max: 1,
      doc: 'Share alive from one day to the next (SPAWN.SURVIVAL.DAILY).',
    }),
    days: num(days, { min: 0, max: 3650, doc: 'Days from the start.' }),
  },
  returns: value(count, 'Fish left; round down before you promise them.'),
  valid: 'Deaths spread evenly',
  sources: ['DEFINITION'],
  native: '{stocked}*{daily}^{days}',
  examples: [
    { args: [1000, 0.99, 10], gives: '904.4', because: '0.99 to the tenth power is 0.9044.' },
    { args: [1000, 99, 10], fails: { code: '#VALUE!', says: '99%' }, because: 'Excel stores 99 % as 0.99.' },
  ],
  compute: ({ stocked: start, daily, days: d }) => survivorsAfter(start, daily, d),
});

export const survivalImplied = defineFunction({
  id: 'SURVIVAL.IMPLIED',
  family: 'Rearing',
  summary: 'Survival behind a harvest: fish harvested, from total and mean weight, over fish stocked.',
  questions: [
    'survival from the harvest',
    'survival from weight harvested',
    'how many survived by weight',
    'survival from harvest',
  ],
  params: { stocked, harvest: biomass('Weight of all fish harvested.'), weight: weightParam },
  returns: value(share, 'Share of the stocked fish that was harvested.'),
  valid: 'Mean weight from a fair sample of the harvest',
  sources: ['DEFINITION', 'FAO362MONO'],
  examples: [
    {
      args: [100000, 10000, 200],
      gives: '0.50',
      because: '10 fingerlings per m² are 100,000 per hectare; 10,000 kg of 200 g fish are 50,000.',
    },
    {
      args: [100000, 10000, 0.2],
      fails: { code: '#VALUE!', says: 'kilograms' },
      because: 'The mean weight was typed in kilograms.',
    },
  ],
  compute: ({ stocked: start, harvest, weight }) => {
    const survival = gramsFromKilograms(harvest) / weight / start;
    return survival > 1
      ? refuse(
          `harvest: ${harvest} kg of ${weight} g fish are more than the ${start} stocked. Was the mean weight typed in kilograms, or the harvest in grams?`,
        )
      : survival;
  },
});

export const fcr = defineFunction({
  id: 'FEED.FCR',
  family: 'Rearing',
  summary: 'Feed conversion ratio, biological and economic: feed given per weight gained.',
  questions: [
    'FCR',
    'how well do they use feed',
    'kg feed per kg fish',
    'feed conversion',
    'fcr calculaton',
    'food conversion',
    'how much feed turn to fish',
  ],
  params: {
    feed: biomass('Feed given over the time.'),
    startWeight: biomass('Weight of all fish at the start.'),
    endWeight: biomass('Weight of all living fish at the end.'),
    deadWeight: num(kilogram, {
      min: 0,
      max: 1e7,
      default: 0,
      doc: 'Weight of the fish that died or were taken out: none if left out.',
    }),
  },
  returns: fields(
    { biological: column('Biological', ratio), economic: column('Economic', ratio) },
    'Counting what died, and counting only what is left to sell.',
  ),
  valid: 'One unit for all weights',
  sources: ['DEFINITION'],
  help:
    'Economic: feed ÷ (end − start). Biological: feed ÷ (end + dead − start). Farm-made ' +
    'feeds are reported down to 1.1 for African catfish (FAO).',
  examples: [
    {
      args: [12, 5, 15, 1],
      gives: [['1.091', '1.2']],
      because: '12 kg for 11 kg grown, of which 10 kg are left.',
    },
    {
      args: [12, 5, 4],
      fails: { code: '#NUM!', says: 'no gain' },
      because: 'The fish weigh less than before.',
    },
    {
      args: [12000, 5, 15],
      fails: { code: '#VALUE!', says: 'grams' },
      because: 'Feed was typed in grams, fish in kilograms.',
    },
  ],
  compute: ({ feed, startWeight, endWeight, deadWeight }) => {
    if (endWeight + deadWeight <= startWeight)
      return noSolution(
        'There was no gain: the fish weigh no more than at the start. Were the weights typed ' +
          'the wrong way round?',
      );
    const answer = feedConversion(feed, startWeight, endWeight, deadWeight);
    if (answer.biological > 100)
      return refuse(
        `feed: ${feed} kg for a gain of ${endWeight + deadWeight - startWeight} kg is ${Math.round(answer.biological)} to 1. Was the feed typed in grams?`,
      );
    if (feed > 0 && answer.biological < 0.05)
      return refuse(
        `feed: ${feed} kg for a gain of ${endWeight + deadWeight - startWeight} kg cannot be. Were the fish typed in grams?`,
      );
    return {
      ...answer,
      economic: Number.isNaN(answer.economic)
        ? noSolution('Less weight is left to sell than was stocked.')
        : answer.economic,
    };
  },
});

export const load = defineFunction({
  id: 'TRANSPORT.LOAD',
  family: 'Rearing',
  summary: 'Safe load of a transport tank at another temperature, from a load you know to be safe.',
  questions: [
    'how many fish in transport bag',
    'carry fingerlings',
    'fish died on the road',
    'oxygen bag',
    'how many fingerlings per nylon',
    'how many fish I go put for nylon',
  ],
  params: {
    load: num(kilogram, { above: 0, max: 1e6, doc: 'Load known to be safe for this tank and trip.' }),
    known: num(celsius, { min: 0, max: 45, doc: 'Water temperature of that trip.' }),
    now: num(celsius, { min: 0, max: 45, doc: 'Water temperature now.' }),
  },
  returns: value(kilogram, 'Load that is as safe at the new temperature.'),
  valid: 'Up to 2.8 °C warmer or cooler',
  sources: ['PIPER82'],
  help:
    '5.56 % less for each °F warmer, as much more for each °F cooler; printed for 5 °F. ' +
    'Made for trout and bass, not for catfish: a rule to be careful by.',
  examples: [
    {
      args: [1000, 20, 22.7777777778],
      gives: '722',
      because: 'Printed: 5 °F warmer cuts 1,000 lb to 722 lb; a share needs no unit.',
    },
    { args: [1000, 20, 26], fails: { code: '#N/A', says: '2.8' }, because: 'Farther than was printed.' },
  ],
  compute: ({ load: safe, known, now }) => {
    const answer = transportLoad(safe, known, now);
    return Number.isNaN(answer)
      ? outside(
          `now: ${now} °C is more than 2.8 °C (5 °F) from ${known} °C, farther than was published. Start from a trip nearer in temperature.`,
        )
      : answer;
  },
});
