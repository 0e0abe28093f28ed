import { feedTable } from '../kernels/feedTable';
import { rationRows, rationTable } from '../kernels/rationTable';
import { gramsFromKilograms } from '../../../units/convert';
import {
  celsius,
  count,
  day,
  fishGram,
  gram,
  kilogram,
  percentPerDay,
  share,
} from '../../../units/quantities';
import type { CellError } from '../../../base/values';
import { isError, outside, refuse } from '../../../base/values';
import { column, defineFunction, rows } from '../../../functions/define';
import { num, series } from '../../../functions/params';
import { fishParam, weightParam } from './feed';

interface RationGiven {
  readonly ration: number | undefined;
  readonly tableWeights: readonly number[] | undefined;
  readonly tableRations: readonly number[] | undefined;
  readonly temperature: number | undefined;
  readonly tableTemperatures: readonly number[] | undefined;
}

/** The ration by weight, from one figure or from the user's table, or why neither can be used. */
const rationOf = ({
  ration,
  tableWeights,
  tableRations,
  temperature,
  tableTemperatures,
}: RationGiven): ((weight: number) => number) | CellError => {
  if ((tableWeights === undefined) !== (tableRations === undefined))
    return refuse('tableWeights and tableRations belong together: give both, row by row.');
  if ((temperature === undefined) !== (tableTemperatures === undefined))
    return refuse('temperature and tableTemperatures belong together: give both or neither.');
  if (tableWeights && tableRations) {
    if (ration !== undefined) return refuse('ration and a table are both given: leave one of them blank.');
    const look = rationTable(rationRows(tableWeights, tableRations, tableTemperatures));
    return (weight) => look(weight, temperature);
  }
  if (ration === undefined)
    return refuse(
      'ration is missing: give one share of body weight per day, or your own table of ' +
        'weights and rations. No published table was found, so none is assumed.',
    );
  return () => ration;
};

export const feedPlan = defineFunction({
  id: 'FEED.TABLE',
  family: 'Rearing',
  summary:
    'Feed table day by day: fish left, mean weight, ration, meals, grams a meal, running total and bags.',
  questions: [
    'how much feed per day',
    'kg feed per day',
    'grams per meal',
    'how many bag of feed to finish',
    'how many bag feed',
  ],
  params: {
    fish: fishParam,
    weight: weightParam,
    days: num(count, { min: 1, max: 400, whole: true, doc: 'How many days to list.' }),
    growth: num(percentPerDay, {
      min: 0,
      max: 150,
      doc: 'Growth rate in % per day (SPAWN.GROWTH.SGR from your own two weighings).',
    }),
    ration: num(share, {
      min: 0,
      max: 1,
      optional: true,
      doc: 'Feed per day as a share of body weight. Leave blank when you give your own table.',
    }),
    start: num(day, {
      min: 1,
      max: 2958465,
      optional: true,
      doc: 'Date of the first day. Left out, the date column stays blank.',
    }),
    survival: num(share, {
      above: 0,
      max: 1,
      default: 1,
      doc: 'Share of the fish still alive after the last day: 100% if left out.',
    }),
    meals: num(count, {
      min: 1,
      max: 48,
      whole: true,
      default: 3,
      doc: 'Meals a day: 3 if left out (published for fingerlings; fry grew best at 5 to 6).',
    }),
    bag: num(kilogram, {
      above: 0,
      max: 2000,
      default: 15,
      doc: 'Weight of one bag of feed: 15 kg if left out.',
    }),
    tableWeights: series(fishGram, {
      min: 0.0005,
      max: 30000,
      pair: 'table',
      atLeast: 2,
      optional: true,
      doc: 'Your own ration table: fish weights.',
    }),
    tableRations: series(share, {
      min: 0,
      max: 1,
      pair: 'table',
      atLeast: 2,
      optional: true,
      doc: 'Your own ration table: ration at each of those weights.',
    }),
    temperature: num(celsius, {
      min: 0,
      max: 45,
      optional: true,
      doc: 'Mean water temperature of the days, if your table depends on it.',
    }),
    tableTemperatures: series(celsius, {
      min: 0,
      max: 45,
      pair: 'table',
      atLeast: 2,
      optional: true,
      doc: 'Your own ration table: temperature of each row.',
    }),
  },
  returns: rows(
    {
      day: column('Day', count),
      date: column('Date', day),
      fish: column('Fish', count),
      weight: column('Mean weight', fishGram),
      ration: column('Feed', gram),
      meals: column('Meals', count),
      perMeal: column('A meal', gram),
      fed: column('Fed so far', gram),
      bags: column('Bags opened', count),
    },
    'One row a day.',
  ),
  valid:
    'Growth and deaths at an even rate over the days listed; weigh again and start a new ' +
    'table every week or two',
  sources: ['DEFINITION', 'RICKER79', 'FEEDFREQ'],
  help:
    'Each day: whole fish left × mean weight in the morning × ration. With your own ' +
    'table the ration follows the weight along a straight line over the logarithm of ' +
    'weight between two rows; a weight outside the table is not guessed.',
  examples: [
    {
      args: [1000, 2, 3, 6.931, 0.05],
      gives: [
        ['1', '', '1000', '2', '100', '3', '33.33', '100', '1'],
        ['2', '', '1000', '2.1435', '107.18', '3', '35.73', '207.18', '1'],
      ],
      because: '2 kg of fish at 5 % is 100 g; at 6.931 %/d the weight doubles in 10 days.',
    },
    {
      args: [100, 1, 2, 0, null, null, null, null, null, [[1], [4]], [[0.1], [0.06]]],
      gives: [['1', '', '100', '1', '10', '3', '3.333', '10', '1']],
      because: "The ration at 1 g is read from the user's own table.",
    },
    {
      args: [1000, 2, 3, 5],
      fails: { code: '#VALUE!', says: 'ration is missing' },
      because: 'Neither a ration nor a table was given; none is invented.',
    },
    {
      args: [1000, 2, 30, 10, null, null, null, null, null, [[1], [4]], [[0.1], [0.06]]],
      fails: { code: '#N/A', says: 'day 8' },
      because: 'On day 8 the fish outgrow the table.',
    },
  ],
  compute: ({ start, bag, fish, weight, days, growth, survival, meals, ...given }) => {
    const rationAt = rationOf(given);
    if (isError(rationAt)) return rationAt;
    const table = feedTable({
      fish,
      weight,
      days,
      growth,
      survival,
      meals,
      bag: gramsFromKilograms(bag),
      rationAt,
    });
    const stop = table.find((row) => Number.isNaN(row.ration));
    if (stop)
      return outside(
        `tableWeights: on day ${stop.day} the fish weigh ${stop.weight.toPrecision(4)} g${given.temperature === undefined ? '' : ` at ${given.temperature} °C`}, which your table does not cover. Add a row, or list fewer days.`,
      );
    return table.map((row) => ({
      ...row,
      date: start === undefined ? null : Math.floor(start) + row.day - 1,
      meals,
    }));
  },
});
