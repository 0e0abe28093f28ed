import { foodIntake } from '../kernels/metabolism';
import { rationRows, rationTable } from '../kernels/rationTable';
import { milligramsFromGrams } from '../../../units/convert';
import { celsius, fishGram, share } from '../../../units/quantities';
import { outside, refuse } from '../../../base/values';
import { defineFunction, value } from '../../../functions/define';
import { num, series } from '../../../functions/params';
import { weightParam } from './feed';
import { LINE_HELP, beyondLine, dryMatterParam, dryShareOr } from '../../growth/records/water';

const plain = (x: number): string => String(Number(x.toPrecision(5)));
const range = (list: readonly number[]): string =>
  `${plain(Math.min(...list))} to ${plain(Math.max(...list))}`;

type Look = ReturnType<typeof rationTable>;
/** One call reads its lists once for all its rows: the sorted table is kept as long as they live. */
const tables = new WeakMap<readonly number[], Look>();
const prepared = (
  weights: readonly number[],
  rations: readonly number[],
  temperatures: readonly number[] | undefined,
): Look => {
  const known = tables.get(rations);
  if (known) return known;
  const made = rationTable(rationRows(weights, rations, temperatures));
  tables.set(rations, made);
  return made;
};

export const rationLookup = defineFunction({
  id: 'RATION.LOOKUP',
  family: 'Rearing',
  summary:
    'Daily ration at a weight (and temperature) from your own table, between its rows, never beyond it.',
  questions: ['feeding rate for 5 g fish', 'feeding percentage', 'recommended feeding rate'],
  params: {
    weight: weightParam,
    tableWeights: series(fishGram, {
      min: 0.0005,
      max: 30000,
      pair: 'table',
      atLeast: 2,
      doc: 'Weights in your table, one per row.',
    }),
    tableRations: series(share, {
      min: 0,
      max: 1,
      pair: 'table',
      atLeast: 2,
      doc: 'Ration at each of those rows, as a share of body weight per day.',
    }),
    temperature: num(celsius, {
      min: 0,
      max: 45,
      optional: true,
      doc: 'Water temperature, if your table has one.',
    }),
    tableTemperatures: series(celsius, {
      min: 0,
      max: 45,
      pair: 'table',
      atLeast: 2,
      optional: true,
      doc: 'Temperature of each row, if your table depends on it.',
    }),
  },
  returns: value(share, 'Ration as a share of body weight per day.'),
  valid: 'Inside your own table',
  sources: ['DEFINITION'],
  help:
    'Fill the table from your feed supplier or your own records: no published table of ' +
    'ration by weight for African catfish was found, so none is built in. Between rows ' +
    'the ration follows a straight line over the logarithm of weight, then over ' +
    'temperature.',
  examples: [
    {
      args: [2, [[1], [4]], [[0.1], [0.06]]],
      gives: '0.08',
      because: '2 g is half way from 1 to 4 on a scale of doublings.',
    },
    {
      args: [2, [[1], [4], [1], [4]], [[0.1], [0.06], [0.12], [0.08]], 27, [[26], [26], [28], [28]]],
      gives: '0.09',
      because: 'Half way between 8 % at 26 °C and 10 % at 28 °C.',
    },
    {
      args: [9, [[1], [4]], [[0.1], [0.06]]],
      fails: { code: '#N/A', says: 'covers 1 to 4 g' },
      because: 'The table ends at 4 g.',
    },
    {
      args: [2, [[1], [4]], [[10], [6]]],
      fails: { code: '#VALUE!', says: 'Excel stores 10 %' },
      because: 'Rations were typed as plain percent.',
    },
  ],
  compute: ({ weight, tableWeights, tableRations, temperature, tableTemperatures }) => {
    if ((temperature === undefined) !== (tableTemperatures === undefined))
      return refuse('temperature and tableTemperatures belong together: give both or neither.');
    const ration = prepared(tableWeights, tableRations, tableTemperatures)(weight, temperature);
    if (!Number.isNaN(ration)) return ration;
    const heat = tableTemperatures ? ` and ${range(tableTemperatures)} °C` : '';
    const asked = temperature === undefined ? '' : ` at ${temperature} °C`;
    return outside(
      `weight: your table covers ${range(tableWeights)} g${heat}; ${plain(weight)} g${asked} is outside it or between temperatures that lack it. Add a row.`,
    );
  },
});

export const rationGuide = defineFunction({
  id: 'RATION.GUIDE',
  version: 2,
  family: 'Rearing',
  summary:
    'What growing African catfish ate in one published study at 28 °C, as dry feed per ' +
    'wet weight: a starting point.',
  params: { weight: weightParam, dryMatter: dryMatterParam },
  returns: value(share, 'Dry food eaten per wet body weight and day.'),
  valid: '0.07 mg to 38 g dry body weight, 28 °C, fed as much as they take',
  sources: ['CONC98', 'DRYMATTER'],
  help: `${LINE_HELP} The food is counted dry: bagged feed holds about a tenth of water. More than this only fouls the water; feed that lies on the bottom after a few minutes was too much.`,
  questions: [
    'what ration does one study give',
    'feed per weight in the study',
    'published ration at 28 degrees',
    'what % of body weight',
    'how much can the fry eat',
    'how much feed a day for fry',
    'how much feed for 20 mg larvae',
    'am I overfeeding',
  ],
  examples: [
    {
      args: [0.0025],
      gives: '0.128',
      because: 'A larva at first food, 12 % dry: 107 % of its dry weight a day.',
    },
    {
      args: [152, 0.25],
      gives: '0.0155',
      because: '152 g at 25 % dry matter is 38 g: 6.2 % of dry weight, the published end.',
    },
    {
      args: [500],
      fails: { code: '#N/A', says: 'outside what was published' },
      because: 'Beyond 38 g of dry weight.',
    },
  ],
  compute: ({ weight, dryMatter }) => {
    const dry = dryShareOr(dryMatter, weight);
    const eaten = foodIntake(milligramsFromGrams(weight * dry));
    return Number.isNaN(eaten) ? beyondLine(weight, dry) : eaten * dry;
  },
});
