import { RATION_STUDIES } from '../kernels/rationStudies';
import { count, share, text } from '../../../units/quantities';
import { column, defineFunction, rows } from '../../../functions/define';
import { choice } from '../../../functions/params';
import { SOURCES } from '../../sources';

export const rationStudies = defineFunction({
  id: 'RATION.STUDIES',
  family: 'Rearing',
  summary: 'Rations and meals of published trials with African catfish, and what came of them.',
  questions: ['published feeding trials', 'rations tried with african catfish', 'meals a day in trials'],
  params: {
    stage: choice(['all', 'fry', 'larvae', 'fingerlings'], {
      default: 'all',
      doc: 'Which rows: all, fry, larvae or fingerlings. All if left out.',
    }),
  },
  returns: rows(
    {
      stage: column('Stage', text),
      ration: column('Ration', share),
      meals: column('Meals', count),
      result: column('Result', text),
      source: column('Source', text),
      standing: column('Standing', text),
    },
    'One row per published trial.',
  ),
  valid: 'As printed in abstracts; one row is from memory and says so',
  sources: ['FEEDFREQ', 'UYS85', 'MAKERERE', 'ILJS', 'BASH23'],
  examples: [
    {
      args: ['fry'],
      gives: [
        [
          'Fry',
          '',
          '5',
          'live food as much as they take; growth best at 5 to 6 meals',
          'Effects of feeding frequency on fry and fingerlings of African catfish (abstract)',
          'read',
        ],
        [
          'Fry',
          '0.25',
          '6',
          'dry feed in the first nursing, every 4 h, 28 °C',
          'Uys W., Hecht T. 1985. Aquaculture 47 (primary nursing of Clarias gariepinus)',
          'from memory',
        ],
      ],
      because: 'The two rows for fry.',
    },
    {
      args: ['brood'],
      fails: { code: '#VALUE!', says: 'expected one of' },
      because: 'No trial on brood fish is listed.',
    },
  ],
  compute: ({ stage }) =>
    RATION_STUDIES.filter((row) => stage === 'all' || row.stage.toLowerCase().startsWith(stage)).map(
      (row) => ({ ...row, source: SOURCES[row.source]?.citation ?? row.source }),
    ),
});
