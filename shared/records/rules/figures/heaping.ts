import { FIELDS, NUMERIC_FIELDS } from '../../fields';
import type { RecordTable } from '../../table';
import type { TableRule, TableVerdict } from '../rule';
import { nounOf, percent } from '../show';

const COUNTS = NUMERIC_FIELDS.filter(
  (name) => 'isCount' in FIELDS[name] && !['stocked', 'vatsInUse', 'vatsOwned', 'sampleSize'].includes(name),
);
const LEAST = 10;
const LARGE = 1000;
/**
 * From this share on, counts that end in 00 were rounded or guessed; counting by weight leaves one in a
 * hundred.
 */
const HEAPED = 0.5;

/** How many large counts end in two zeros. */
export const heapOf = (values: ArrayLike<number>): { readonly n: number; readonly round: number } => {
  let n = 0;
  let round = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] ?? NaN;
    if (!(value >= LARGE)) continue;
    n++;
    if (value % 100 === 0) round++;
  }
  return { n, round };
};

/** At least half of enough; by chance it is one in a hundred. */
export const isHeaped = ({ n, round }: { readonly n: number; readonly round: number }): boolean =>
  n >= LEAST && round >= HEAPED * n;

export const heapSentence = (
  noun: string,
  { n, round }: { readonly n: number; readonly round: number },
): string =>
  `${round} of ${n} values of ${noun} end in 00 (${percent(round / n)}, where counting leaves about 1 %): rounded or estimated, so no interval worked out from them is true.`;

function heaped(table: RecordTable): readonly TableVerdict[] | string {
  const found: TableVerdict[] = [];
  let judged = 0;
  for (const name of COUNTS) {
    const values = table.numbers[name];
    if (!values) continue;
    const heap = heapOf(values);
    if (heap.n >= LEAST) judged++;
    if (!isHeaped(heap)) continue;
    found.push({
      record: 0,
      field: name,
      seen: `${heap.round} of ${heap.n} end in 00`,
      expected: 'about 1 in 100',
      sentence: heapSentence(nounOf(name), heap),
    });
  }
  return judged === 0 ? `fewer than ${LEAST} counts of ${LARGE} and more` : found;
}

const table = (values: readonly number[]): readonly (readonly (string | number)[])[] => [
  ['Run', 'Fry'],
  ...values.map((value, i) => [`R${i + 1}`, value]),
];

export const heapingRules: readonly TableRule[] = [
  {
    id: 'COUNT.HEAPED',
    scope: 'table',
    severity: 'look',
    title: 'Round numbers where counts belong',
    needs: COUNTS.map((name) => [name]),
    check: heaped,
    checks: 'Columns of counts of 1,000 and more in which at least half of ten or more values end in 00.',
    why: 'A count by eye is often wrong by half; a round number says that it was one.',
    sources: ['PRACTICE'],
    examples: [
      {
        sheets: {
          Runs: table([20_000, 35_000, 18_500, 22_000, 30_000, 25_000, 19_300, 41_000, 27_500, 23_000]),
        },
        says: '10 of 10',
        because: 'Not one was counted.',
      },
      {
        sheets: {
          Runs: table([20_341, 35_127, 18_512, 22_096, 30_411, 25_220, 19_367, 41_003, 27_518, 23_000]),
        },
        because: 'One round number in ten is chance.',
      },
    ],
  },
];
