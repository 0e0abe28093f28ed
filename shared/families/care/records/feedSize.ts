import { grainFor, lengthOf, mealsFor } from '../kernels/grain';
import { dryShareAt, foodIntake } from '../../feeding/kernels/metabolism';
import { weightParam } from '../../feeding/records/feed';
import { count, millimetre, share, text } from '../../../units/quantities';
import { milligramsFromGrams } from '../../../units/convert';
import { column, defineFunction, fields } from '../../../functions/define';
import { num } from '../../../functions/params';

/** Dry feed holds a tenth of water. */
const FEED_DRY = 0.9; // share, practice
const BURSTING = [3, 5] as const; // g, RIS87

export const feedGrain = defineFunction({
  id: 'FEED.GRAIN',
  family: 'Rearing',
  summary: 'Pellet or grain size, meals a day and ration for fish of a weight.',
  params: {
    weight: weightParam,
    length: num(millimetre, {
      above: 0,
      max: 1000,
      optional: true,
      doc: 'Length of the fish, if measured; else worked out from weight.',
    }),
  },
  returns: fields(
    {
      from: column('Grain from', millimetre),
      to: column('Grain to', millimetre),
      fewest: column('Meals from', count),
      most: column('Meals to', count),
      eaten: column('Ration eaten', share, 'Dry feed of body weight a day, 28 °C.'),
      says: column('In words', text),
    },
    'Start low; stop when grains lie on the floor.',
  ),
  valid:
    'Grain by length from channel catfish (another catfish); ration of African catfish at 28 °C up to about 150 g',
  sources: ['WALSH86', 'ELGAMAL', 'FEEDFREQ', 'CONC98', 'RIS87', 'KAWAMURA17'],
  questions: [
    'what size pellet',
    'which size of crumble or pellet',
    'feed size for fingerlings',
    'how many times a day to feed',
    'grain size for fry',
    'when to change feed size',
    'what feed for 2 g fish',
  ],
  help:
    'Step up when 95 of 100 fish take the new grain, mix both for two days (practice). First ' +
    'grain for larvae of this fish 0.2 to 0.3 mm. A fingerling is 0.5 to 4 g depending on the ' +
    'seller: go by grams.',
  examples: [
    {
      args: [1],
      gives: [
        [
          '1.19',
          '1.68',
          '3',
          '6',
          '0.0454',
          'Step up when 95 of 100 take the new grain; mix both for two days.',
        ],
      ],
      because: 'A fish of 1 g is about 50 mm long; it eats 4.1 % of its weight, counted dry.',
    },
    {
      args: [4],
      gives: [
        [
          '1.68',
          '2.38',
          '3',
          '6',
          '0.0347',
          'Feed less at a meal: bellies burst at 3 to 5 g when there is too much. Step up when 95 ' +
            'of 100 take the new grain; mix both for two days.',
        ],
      ],
      because: 'Ruptured intestines at 3 to 5 g with high feeding.',
    },
    {
      args: [0.005],
      gives: [
        [
          '0.20',
          '0.30',
          '6',
          '8',
          '0.124',
          'Live food first; dust of 0.2 to 0.3 mm beside it. Step up when 95 of 100 take the new ' +
            'grain; mix both for two days.',
        ],
      ],
      because: 'Larvae take 0.2 to 0.3 mm.',
    },
    { args: [0], fails: { code: '#VALUE!', says: '0.0005' }, because: 'No fish weighs nothing.' },
  ],
  compute: ({ weight, length }) => {
    const isLarva = weight < 0.01;
    const [from, to] = isLarva ? ([0.2, 0.3] as const) : grainFor(length ?? lengthOf(weight));
    const [fewest, most] = mealsFor(weight);
    const dry = dryShareAt(milligramsFromGrams(weight));
    const eaten = foodIntake(milligramsFromGrams(weight * dry));
    const notes = [
      ...(isLarva ? ['Live food first; dust of 0.2 to 0.3 mm beside it.'] : []),
      ...(weight >= BURSTING[0] && weight <= BURSTING[1]
        ? ['Feed less at a meal: bellies burst at 3 to 5 g when there is too much.']
        : []),
      'Step up when 95 of 100 take the new grain; mix both for two days.',
    ];
    return {
      from,
      to,
      fewest,
      most,
      eaten: Number.isNaN(eaten) ? '' : (eaten * dry) / FEED_DRY,
      says: notes.join(' '),
    };
  },
});
