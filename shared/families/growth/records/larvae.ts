import { LAST_DAY, ordinaryWeight, pathShare, plentyWeight, weightOnPath } from '../kernels/larvalWeight';
import { days, fishGram, text } from '../../../units/quantities';
import { refuse } from '../../../base/values';
import { column, defineFunction, fields } from '../../../functions/define';
import { num } from '../../../functions/params';

/** A weighing decides between the paths on these days of feeding; earlier they are too close. */
const FIRST_WEIGHING = 3;
/** Shares between the two paths that count as one of them. */
const NEAR_ORDINARY = 0.33;
const NEAR_PLENTY = 0.67;

export const larvaWeight = defineFunction({
  id: 'LARVA.WEIGHT',
  family: 'Rearing',
  summary: 'Weight of a larva by day of feeding: ordinary and plentiful feeding, or as your weighing says.',
  params: {
    day: num(days, { min: 0, max: LAST_DAY, doc: 'Days since the first feed.' }),
    weighed: num(fishGram, {
      above: 0,
      max: 5,
      optional: true,
      doc: 'Mean weight of 50 to 100 larvae weighed together, g.',
    }),
    weighedDay: num(days, {
      min: 0,
      max: LAST_DAY,
      default: 6,
      doc: 'Day of feeding on which they were weighed: day 5 to 7 tells best.',
    }),
  },
  returns: fields(
    {
      ordinary: column('Ordinary', fishGram),
      plenty: column('Plenty', fishGram, 'Artemia in surplus, warm water.'),
      expected: column('Expected', fishGram, 'As weighed; until then the ordinary one.'),
      says: column('In words', text),
    },
    'Two published paths and the one your fish are on.',
  ),
  valid:
    'African catfish, 30 days of feeding from 2 to 3 mg; hybrids and Heterobranchus start at 10 to 13 mg',
  sources: ['JANSSEN85', 'KAWAMURA17', 'NAJA16', 'VERRETH99', 'CONC98'],
  questions: [
    'how big should my larvae be',
    'weight of catfish larvae by day',
    'are my larvae growing well',
    'how much do larvae weigh at first feeding',
  ],
  help:
    'At day 12 of feeding an ordinary larva weighs 18 mg and one with plenty of Artemia about 100 mg: only a ' +
    'weighing tells. Weigh 50 to 100 together on day 5 to 7, in a sieve dabbed from below, and plan the feed from ' +
    'it. Order dry feed on the ordinary path until then.',
  examples: [
    {
      args: [0],
      gives: [
        [
          '0.0025',
          '0.0025',
          '0.0025',
          'Not weighed yet: order feed for the ordinary path, weigh 50 to 100 on day 5 to 7.',
        ],
      ],
      because: '2 to 3 mg at first food.',
    },
    {
      args: [12],
      gives: [
        [
          '0.0181',
          '0.0989',
          '0.0181',
          'Not weighed yet: order feed for the ordinary path, weigh 50 to 100 on day 5 to 7.',
        ],
      ],
      because: '2.5 mg at 16.5 % a day; 55 mg on day 7 and 125 mg on day 14 with plenty.',
    },
    {
      args: [14, 0.035, 6],
      gives: [
        ['0.0252', '0.125', '0.124', 'Near the plentiful path: your larvae eat well, order dry feed for it.'],
      ],
      because: 'On day 6 the paths are 6.7 and 35 mg.',
    },
    {
      args: [12, 0.035, 1],
      fails: { code: '#VALUE!', says: 'day 3' },
      because: 'On day 1 the two paths are one.',
    },
  ],
  compute: ({ day, weighed, weighedDay }) => {
    const [ordinary, plenty] = [ordinaryWeight(day), plentyWeight(day)];
    if (weighed === undefined)
      return {
        ordinary,
        plenty,
        expected: ordinary,
        says: 'Not weighed yet: order feed for the ordinary path, weigh 50 to 100 on day 5 to 7.',
      };
    if (weighedDay < FIRST_WEIGHING)
      return refuse(
        `weighedDay: on day ${weighedDay} the two paths are still one; weigh on day ${FIRST_WEIGHING} or later.`,
      );
    const share = pathShare(weighedDay, weighed);
    const says =
      share <= NEAR_ORDINARY
        ? share < -0.2
          ? 'Lighter than both paths: look at food, warmth and crowding first.'
          : 'Near the ordinary path: order dry feed for it.'
        : share >= NEAR_PLENTY
          ? 'Near the plentiful path: your larvae eat well, order dry feed for it.'
          : 'Between the paths: order for the expected weight and weigh again in three days.';
    return { ordinary, plenty, expected: weightOnPath(day, share), says };
  },
});
