import { RATE_KEYS, rateSpec } from '../rates';
import { SOURCES } from '../../sources';
import { ratio, text } from '../../../units/quantities';
import { column, defineFunction, rows } from '../../../functions/define';
import { choice } from '../../../functions/params';

const KINDS = { share: 'share', log: 'factor', difference: 'difference' } as const;

export const rateList = defineFunction({
  id: 'RATE.LIST',
  family: 'Checks',
  summary: 'What is taken for granted of each rate before your own runs are seen: value, spreads, source.',
  questions: [
    'what is assumed of each rate',
    'usual survival and hatch taken for granted',
    'list of assumptions',
  ],
  params: {
    scale: choice(['all', 'share', 'factor', 'difference'], {
      default: 'all',
      doc: 'One kind of rate, or all.',
    }),
  },
  returns: rows(
    {
      rate: column('Rate', text),
      unit: column('Unit', text),
      scale: column('Scale', text),
      literature: column('Literature', ratio),
      farms: column(
        'Spread of farms',
        ratio,
        'On logits for shares, on logarithms for factors, in the unit for differences.',
      ),
      runs: column('Spread of runs', ratio),
      source: column('Source', text),
      note: column('Note', text),
    },
    'One row for each rate.',
  ),
  valid: 'African catfish; the spreads are mostly chosen here, as each note says',
  sources: ['GRAAF95', 'DADEBO00', 'PRACTICE'],
  help:
    'The values stand in for a farm without records. Each note says what was published ' +
    'and what was chosen.',
  examples: [
    {
      args: ['difference'],
      gives: [
        [
          'Strip later than the table by',
          'h',
          'difference',
          '0',
          '2',
          '0.7',
          ['GRAAF96', 'OKER15', 'CLARIIDPAGE', 'PRACTICE']
            .map((key) => SOURCES[key]?.citation ?? '')
            .join('; '),
          rateSpec('latencyOffset').note,
        ],
      ],
      because: 'The only rate that can lie either side of 0.',
    },
    {
      args: ['percent'],
      fails: { code: '#VALUE!', says: 'share' },
      because: 'The kinds are listed in the sentence.',
    },
  ],
  compute: ({ scale }) =>
    RATE_KEYS.map(rateSpec)
      .filter((spec) => scale === 'all' || KINDS[spec.scale] === scale)
      .map((spec) => ({
        rate: spec.label,
        unit: spec.unit,
        scale: KINDS[spec.scale],
        literature: spec.literature,
        farms: spec.farms,
        runs: spec.runs,
        source: spec.sources.map((key) => SOURCES[key]?.citation ?? key).join('; '),
        note: spec.note,
      })),
});
