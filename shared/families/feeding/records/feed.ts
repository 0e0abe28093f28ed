import { dailyFeed } from '../kernels/dailyFeed';
import { count, fishGram, gram, share } from '../../../units/quantities';
import { defineFunction, value } from '../../../functions/define';
import { num } from '../../../functions/params';

export const fishParam = num(count, { min: 0, max: 1e10, doc: 'Number of fish.' });
export const weightParam = num(fishGram, {
  min: 0.0005,
  max: 30000,
  doc: 'Mean weight of one fish, from a sample weighed now.',
});
export const rationParam = num(share, {
  min: 0,
  max: 1,
  doc: 'Feed per day as a share of the weight of the fish: 5% or 0.05.',
});

export const feedDaily = defineFunction({
  id: 'FEED.DAILY',
  family: 'Rearing',
  summary: 'Feed for one day: number of fish × mean weight × ration.',
  questions: [
    'daily ration',
    'feed for one month',
    'feeding chart',
    'feding chart',
    'how many kg feed for 1000 fish',
    'feed for one day',
  ],
  params: { fish: fishParam, weight: weightParam, ration: rationParam },
  returns: value(gram, 'Feed for the day.'),
  valid: "Any ration; weigh a sample every week, last week's weight underfeeds growing fish",
  sources: ['DEFINITION', 'FEEDFREQ'],
  help:
    'The ration is yours to choose: no published table of ration by weight for African ' +
    'catfish was found. SPAWN.RATION.STUDIES lists the rates used in published trials.',
  native: '{fish}*{weight}*{ration}',
  examples: [
    { args: [1000, 2, 0.05], gives: '100', because: '1,000 fish of 2 g are 2 kg; 5 % of that is 100 g.' },
    {
      args: [1000, 0.0002, 0.05],
      fails: { code: '#VALUE!', says: 'looks like kilograms' },
      because: 'Lighter than a new larva: the weight was typed in kilograms.',
    },
    { args: [1000, 2, 5], fails: { code: '#VALUE!', says: '5%' }, because: 'Excel stores 5 % as 0.05.' },
  ],
  compute: ({ fish, weight, ration }) => dailyFeed(fish, weight, ration),
});
