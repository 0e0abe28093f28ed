import type { Label } from '../kernels/pairing';
import { labelOf, offspringInbreeding, pairUp, relationship } from '../kernels/pairing';
import { count, share, text } from '../../../units/quantities';
import { refuse } from '../../../base/values';
import { column, defineFunction, rows } from '../../../functions/define';
import { num, texts } from '../../../functions/params';

const LABELS = 'Family of each, or "line/family"; blank or ? when unknown.';
const HELP =
  'Labels decide: the same family counts as full sibs (offspring inbred 25 %), the ' +
  'same line as half sibs (12.5 %), different lines as unrelated, a blank as unknown. ' +
  'A label with a slash is "line/family"; without one it is a family. ' +
  ('Real relationship can be closer than labels know: bring in new fish, and do not ' +
    'mate fish of one mass lot with each other. Marks get lost, so tag brood fish.');
const RESULT = {
  female: column('Female', text),
  male: column('Male', text),
  relationship: column('Relationship', text),
  inbreeding: column('Offspring inbreeding', share, 'Blank when unknown.'),
  advice: column('Advice', text),
};
const ADVICE = {
  'full sibs': 'Do not mate: bring another male',
  'same line': 'Only if no other male is left',
  unrelated: '',
  unknown: 'Find out where they come from',
} as const;
const MOST = 300;

const named = (tag: string | undefined, i: number): string => tag?.trim() || String(i + 1);
const read = (labels: readonly string[]): (Label | undefined)[] =>
  labels.map((written) => (written.trim() === '?' ? undefined : labelOf(written)));

export const pairingPlan = defineFunction({
  id: 'PAIRING.PLAN',
  family: 'Brood fish',
  summary: 'A male for every female so that offspring are as little inbred as the labels allow.',
  questions: [
    'which male with which female',
    'are these two related',
    'crossing plan',
    'which male I go use for which female',
  ],
  params: {
    females: texts({ pair: 'females', doc: 'Tags of the females.' }),
    femaleFamilies: texts({ pair: 'females', doc: LABELS }),
    males: texts({ pair: 'males', doc: 'Tags of the males.' }),
    maleFamilies: texts({ pair: 'males', doc: LABELS }),
    femalesPerMale: num(count, {
      min: 1,
      max: 20,
      whole: true,
      default: 1,
      doc: 'Females one male may serve; his milt is divided between them.',
    }),
  },
  returns: rows(
    RESULT,
    'One row for each female, in the order given. The sum of inbreeding is the least there is.',
  ),
  valid: `Up to ${MOST} females and ${MOST} males; as good as the labels`,
  sources: ['PEDIGREE', 'KUHN55', 'BUSACK', 'SALMONIDBOOK'],
  help: HELP,
  examples: [
    {
      args: [
        [['F1'], ['F2']],
        [['A'], ['B']],
        [['M1'], ['M2']],
        [['A'], ['B']],
      ],
      gives: [
        ['F1', 'M2', 'unrelated', '0', ''],
        ['F2', 'M1', 'unrelated', '0', ''],
      ],
      because: 'Crossing over keeps sibs apart.',
    },
    {
      args: [
        [['F1'], ['F2']],
        [['Lake/1'], ['Lake/2']],
        [['M1'], ['M2']],
        [['Lake/1'], ['River/1']],
      ],
      gives: [
        ['F1', 'M2', 'unrelated', '0', ''],
        ['F2', 'M1', 'same line', '0.125', 'Only if no other male is left'],
      ],
      because: 'M1 is a full sib of F1 but only of the same line as F2.',
    },
    {
      args: [[['F1'], ['F2']], [['A'], ['B']], [['M1']], [['A']]],
      fails: { code: '#VALUE!', says: '2 females' },
      because: 'One male cannot serve two at one each.',
    },
  ],
  compute: ({ females, femaleFamilies, males, maleFamilies, femalesPerMale }) => {
    if (females.length > MOST || males.length > MOST)
      return refuse(
        `females: up to ${MOST} females and ${MOST} males are paired at once. Plan line by line.`,
      );
    if (females.length > males.length * femalesPerMale)
      return refuse(
        `femalesPerMale: ${females.length} females need a male each, but ${males.length} males at ${femalesPerMale} each serve ${males.length * femalesPerMale}. Raise femalesPerMale or bring males.`,
      );
    const her = read(femaleFamilies);
    const his = read(maleFamilies);
    return pairUp(her, his, femalesPerMale).map((male, i) => {
      const kin = relationship(her[i], his[male]);
      return {
        female: named(females[i], i),
        male: named(males[male], male),
        relationship: kin,
        inbreeding: offspringInbreeding(kin) ?? '',
        advice: ADVICE[kin],
      };
    });
  },
});

export const pairingCheck = defineFunction({
  id: 'PAIRING.CHECK',
  family: 'Brood fish',
  summary: 'Relationship and offspring inbreeding of pairs already chosen, row by row.',
  questions: [
    'are these pairs related',
    'check pairs for brother and sister',
    'inbreeding of chosen pairs',
    'pair brothers and sisters check',
  ],
  params: {
    femaleFamilies: texts({ pair: 'pairs', doc: `Of the female. ${LABELS}` }),
    maleFamilies: texts({ pair: 'pairs', doc: `Of the male. ${LABELS}` }),
  },
  returns: rows(RESULT, 'One row for each pair; female and male are shown by their labels.'),
  valid: 'As good as the labels',
  sources: ['PEDIGREE'],
  help: HELP,
  examples: [
    {
      args: [
        [['A'], ['Lake/1']],
        [['a'], ['Lake/2']],
      ],
      gives: [
        ['A', 'a', 'full sibs', '0.25', 'Do not mate: bring another male'],
        ['Lake/1', 'Lake/2', 'same line', '0.125', 'Only if no other male is left'],
      ],
      because: 'Letter case does not matter.',
    },
    {
      args: [[['A'], ['B']], [['A']]],
      fails: { code: '#VALUE!', says: 'Each row needs both' },
      because: 'Columns of different length do not belong together.',
    },
  ],
  compute: ({ femaleFamilies, maleFamilies }) => {
    const her = read(femaleFamilies);
    const his = read(maleFamilies);
    return her.map((label, i) => {
      const kin = relationship(label, his[i]);
      return {
        female: femaleFamilies[i] ?? '',
        male: maleFamilies[i] ?? '',
        relationship: kin,
        inbreeding: offspringInbreeding(kin) ?? '',
        advice: ADVICE[kin],
      };
    });
  },
});
