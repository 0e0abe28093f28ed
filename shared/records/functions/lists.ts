import { heapOf, heapSentence, isHeaped } from '../rules/figures/heaping';
import { standingOf } from '../rules/farming/history';
import { plain } from '../rules/show';
import { count, ratio } from '../../units/quantities';
import { defineFunction } from '../../functions/define';
import { flag, num, series } from '../../functions/params';
import { HELP, OK, verdict } from './verdict';

const LEAST = 10;

export const checkHistory = defineFunction({
  id: 'CHECK.HISTORY',
  family: 'Checks',
  summary: "Is a value far from the farm's own earlier ones? Robust: a few wild ones do no harm.",
  questions: [
    'is this value far from my usual ones',
    'odd value against earlier runs',
    'outlier in my records',
  ],
  params: {
    value: num(ratio, { doc: 'Value to judge.' }),
    history: series(ratio, { atLeast: LEAST, doc: 'Earlier values of the same thing, ten or more.' }),
    byFactors: flag(false, 'TRUE for weights and counts, which spread by factors rather than by steps.'),
  },
  returns: verdict,
  valid:
    'Ten or more earlier values; more than 6 robust deviations from their middle is far, ' +
    'a little more when they are few',
  sources: ['PRACTICE'],
  help: HELP,
  examples: [
    {
      args: [0.04, [[0.61], [0.66], [0.58], [0.63], [0.6], [0.65], [0.62], [0.59], [0.64], [0.61]]],
      gives:
        '0.04 is far from the 10 earlier values, whose middle is 0.615: 0.3481 to 0.8819 would be usual.',
      because: '4 % where 58 to 66 % is usual.',
    },
    {
      args: [0.6, [[0.61], [0.66], [0.58], [0.63], [0.6], [0.65], [0.62], [0.59], [0.64], [0.61]]],
      gives: 'ok',
      because: 'Among the others.',
    },
    {
      args: [0.6, [[0.61], [0.66], [0.58]]],
      fails: { code: '#N/A', says: 'at least 10' },
      because: 'Three values say nothing.',
    },
  ],
  compute: ({ value, history, byFactors }) => {
    const { off, limit, low, high, middle, n } = standingOf(value, history, byFactors);
    return off <= limit
      ? OK
      : `${plain(value)} is far from the ${n} earlier values, whose middle is ${plain(middle)}: ${plain(low)} to ${plain(high)} would be usual.`;
  },
});

export const checkRound = defineFunction({
  id: 'CHECK.ROUND',
  family: 'Checks',
  summary: 'Were these numbers counted, or do too many of them end in 00?',
  questions: [
    'were these numbers really counted',
    'too many round numbers in my book',
    'numbers all end in 00',
    'rounded numbers',
  ],
  params: {
    counts: series(count, { atLeast: LEAST, doc: 'Counts of one kind, ten or more of at least 1,000.' }),
  },
  returns: verdict,
  valid: 'Counts of 1,000 and more',
  sources: ['PRACTICE'],
  help: HELP,
  examples: [
    {
      args: [
        [[20_000], [35_000], [18_500], [22_000], [30_000], [25_000], [19_300], [41_000], [27_500], [23_000]],
      ],
      gives:
        '10 of 10 values of counts end in 00 (100 %, where counting leaves about 1 %): ' +
        'rounded or estimated, so no interval worked out from them is true.',
      because: 'Not one was counted.',
    },
    {
      args: [
        [[20_341], [35_127], [18_512], [22_096], [30_411], [25_220], [19_367], [41_003], [27_518], [23_000]],
      ],
      gives: 'ok',
      because: 'One round number in ten is chance.',
    },
    {
      args: [[[20_000], [35_000]]],
      fails: { code: '#N/A', says: 'at least 10' },
      because: 'Two numbers prove nothing.',
    },
  ],
  compute: ({ counts }) => {
    const heap = heapOf(counts);
    return heap.n < LEAST
      ? `not checked: needs ${LEAST} counts of 1,000 and more`
      : isHeaped(heap)
        ? heapSentence('counts', heap)
        : OK;
  },
});
