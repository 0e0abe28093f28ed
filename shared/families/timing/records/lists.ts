import { DEFAULT_PREPARATION } from '../../preparations';
import { SOURCES } from '../../sources';
import type { Profile } from '../kernels/profile';
import { highest, hoursAt, lowest } from '../kernels/rateCurve';
import { celsius, hours, text } from '../../../units/quantities';
import { isError } from '../../../base/values';
import { column, defineFunction, rows } from '../../../functions/define';
import { choice } from '../../../functions/params';
import { anyProfile, PROFILES, profileFor, stage } from './profiles';

const STANDING = {
  memory: 'from memory, page not seen',
  seen: 'seen',
  computed: 'computed from one seen measurement',
} as const;
const ALL = ['all', 'latency', 'incubation', 'first feed', 'yolk gone'] as const;

const listRow = (
  p: Profile,
): {
  stage: string;
  name: string;
  low: number;
  high: number;
  slowest: number;
  fastest: number;
  standing: string;
  citation: string;
  note: string;
} => ({
  stage: p.stage,
  name: p.name,
  low: lowest(p.curve),
  high: highest(p.curve),
  slowest: hoursAt(p.curve, lowest(p.curve)),
  fastest: hoursAt(p.curve, highest(p.curve)),
  standing: STANDING[p.standing],
  citation: SOURCES[p.source]?.citation ?? '',
  note: p.note,
});

export const profileList = defineFunction({
  id: 'PROFILE.LIST',
  family: 'Timing',
  summary: 'Every built-in timing table: stage, name, temperatures, hours, standing and source.',
  questions: ['which timing tables are built in', 'list of latency tables', 'which species tables'],
  params: { stage: choice(ALL, { doc: 'One stage, or all.', default: 'all' }) },
  returns: rows(
    {
      stage: column('Stage', text),
      name: column('Name', text),
      low: column('From', celsius),
      high: column('To', celsius),
      slowest: column('Longest', hours),
      fastest: column('Shortest', hours),
      standing: column('Standing', text),
      citation: column('Source', text),
      note: column('Note', text),
    },
    'One row for each table.',
  ),
  valid: 'What is built in; a table of your own can take the place of any of them',
  sources: ['GRAAF96', 'OKER15', 'PROKES15'],
  help:
    'Standing: "from memory" means the publication is named but its page was not seen; ' +
    '"computed" means one measured duration carried to other temperatures with a ' +
    'published base temperature.',
  examples: [
    {
      args: ['yolk gone'],
      gives: [
        [
          'yolk gone',
          'African catfish',
          '20',
          '33',
          '187',
          '48.9',
          'computed from one seen measurement',
          'Hou C.H., Siew I.N. 2015. Nutritional transition period in early larvae of Clarias ' +
            'gariepinus. Malaysian Society of Analytical Sciences (abstract)',
          'Yolk gone at 68 h at 27.5 to 28.6 °C; carried to other temperatures with base 15.4 °C.',
        ],
      ],
      because: '68 h at 28.05 °C over a base of 15.4 °C.',
    },
    {
      args: ['hatching'],
      fails: { code: '#VALUE!', says: 'incubation' },
      because: 'The stages are listed in the sentence.',
    },
  ],
  compute: ({ stage: wanted }) =>
    Object.values(PROFILES)
      .flat()
      .filter((p) => wanted === 'all' || p.stage === wanted)
      .map(listRow),
});

export const profileTable = defineFunction({
  id: 'PROFILE.TABLE',
  family: 'Timing',
  summary: 'The rows of one built-in timing table, to copy and make your own.',
  questions: [
    'rows of a timing table',
    'copy a table of hours to make my own',
    'table of latency by temperature',
    'timing table',
  ],
  params: { stage, profile: anyProfile },
  returns: rows(
    { temperature: column('Temperature', celsius), hours: column('Time', hours) },
    'Temperatures and hours, to give back as ownTemperatures and ownHours.',
  ),
  valid: 'What is built in',
  sources: ['GRAAF96', 'OKER15', 'PROKES15'],
  help:
    'Copy the rows as values, change the hours to what your own runs took, and give the ' +
    'two columns as ownTemperatures and ownHours. The two handbook tables are recalled ' +
    'from memory.',
  examples: [
    {
      args: ['latency', 'handbook pituitary'],
      gives: [
        ['20', '21'],
        ['21', '18'],
        ['22', '15.5'],
      ],
      because: 'First rows of the handbook table (recalled from memory).',
    },
    {
      args: ['latency', 'Nile tilapia'],
      fails: { code: '#VALUE!', says: 'for latency' },
      because: 'No latency was published for it.',
    },
  ],
  compute: ({ stage: wanted, profile: name }) => {
    const profile = profileFor(
      wanted,
      name ?? (wanted === 'latency' ? DEFAULT_PREPARATION : 'African catfish'),
      {
        ownTemperatures: undefined,
        ownHours: undefined,
      },
    );
    if (isError(profile)) return profile;
    return profile.curve.temperatures.map((t) => ({ temperature: t, hours: hoursAt(profile.curve, t) }));
  },
});
