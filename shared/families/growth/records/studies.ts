import { STOCKING_STUDIES } from '../kernels/stockingDensity';
import { days, ratio, share, text } from '../../../units/quantities';
import { column, defineFunction, rows } from '../../../functions/define';
import { choice } from '../../../functions/params';
import { SOURCES } from '../../sources';

export const stockingStudies = defineFunction({
  id: 'STOCKING.STUDIES',
  family: 'Rearing',
  summary: 'Stocking densities of published trials with African catfish and what came of them.',
  questions: ['published stocking densities', 'density trials', 'what densities were tried'],
  params: {
    stage: choice(['all', 'eggs', 'tanks', 'ponds'], {
      default: 'all',
      doc: 'Which rows: all, eggs, tanks or ponds. All if left out.',
    }),
  },
  returns: rows(
    {
      stage: column('Stage', text),
      density: column('Density', ratio),
      unit: column('Unit', text),
      days: column('Days', days),
      survival: column('Alive', share),
      note: column('Note', text),
      source: column('Source', text),
    },
    'One row per published trial.',
  ),
  valid: 'As printed in abstracts; different farms, waters and feeds',
  sources: ['YONG08', 'MAKERERE', 'AJANI15', 'GRAAF95', 'FAO362MONO'],
  examples: [
    {
      args: ['eggs'],
      gives: [
        [
          'Eggs, standing water',
          '480',
          'per L',
          '',
          '',
          'the most; hatch falls as density rises, or renew part of the water daily',
          'Yong-Sulem S., Brummett R.E., Tchoumboue J. 2008. Tropicultura 26(1):39-42 ' +
            '(hatchability of African catfish eggs in hapas and basins)',
        ],
      ],
      because: 'Yong-Sulem et al. 2008.',
    },
    {
      args: ['cages'],
      fails: { code: '#VALUE!', says: 'expected one of' },
      because: 'No trial in cages is listed.',
    },
  ],
  compute: ({ stage }) =>
    STOCKING_STUDIES.filter((row) => stage === 'all' || row.stage.toLowerCase().includes(stage)).map(
      (row) => ({ ...row, source: SOURCES[row.source]?.citation ?? row.source }),
    ),
});
