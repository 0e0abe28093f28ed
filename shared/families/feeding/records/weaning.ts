import { weaningTable } from '../kernels/weaning';
import { count, day, days, gram, share } from '../../../units/quantities';
import { column, defineFunction, rows } from '../../../functions/define';
import { num } from '../../../functions/params';
import { harvestParam, naupliiPerGramParam } from './cysts';

export const weaningPlan = defineFunction({
  id: 'WEANING.TABLE',
  version: 2,
  family: 'Rearing',
  summary: 'Live food and dry feed day by day from first feeding, with the cysts to hatch for each day.',
  questions: [
    'from artemia to dry feed',
    'when to change feed',
    'feeding plan for fry day by day',
    'fry feeding schedule first two weeks',
    'when I go change from artemia go powder',
  ],
  params: {
    larvae: num(count, { min: 0, max: 1e10, doc: 'Larvae that begin to feed.' }),
    naupliiPerLarva: num(count, {
      above: 0,
      max: 20000,
      doc: 'Nauplii per larva per day while live food is all they get. Your own figure.',
    }),
    days: num(count, {
      min: 1,
      max: 60,
      whole: true,
      default: 12,
      doc: 'How many days to list: 12 if left out.',
    }),
    start: num(day, {
      min: 1,
      max: 2958465,
      optional: true,
      doc: 'Date of first feeding. Left out, the date column stays blank.',
    }),
    survival: num(share, {
      above: 0,
      max: 1,
      default: 1,
      doc: 'Share of the larvae still alive after the last day: 100% if left out.',
    }),
    liveOnly: num(days, {
      min: 0,
      max: 60,
      whole: true,
      default: 5,
      doc: 'Days of live food alone: 5 if left out.',
    }),
    mixed: num(days, {
      min: 0,
      max: 60,
      whole: true,
      default: 6,
      doc: 'Days over which dry feed takes over: 6 if left out, so day 8 is half and half.',
    }),
    naupliiPerGram: naupliiPerGramParam,
    harvest: harvestParam,
  },
  returns: rows(
    {
      day: column('Day', count),
      date: column('Date', day),
      larvae: column('Larvae', count),
      live: column('Live food', share),
      dry: column('Dry feed', share),
      nauplii: column('Nauplii', count),
      cysts: column('Cysts', gram),
    },
    'One row a day from first feeding. Set the cysts about a day before.',
  ),
  valid: 'African catfish larvae; the straight line between live and dry is common practice',
  sources: ['HECHT13', 'CHEP11', 'KKT1', 'PRACTICE'],
  help:
    'Live food alone for the first 5 days of feeding (FAO review by Hecht 2013). Half ' +
    'live and half dry from day 8 kept more than 90 % alive for 21 days, an abrupt ' +
    'change to dry feed less than 75 % (Chepkirui-Boit et al. 2011). The line between is ' +
    'common practice, no source. Most larvae die in the first four days of food.',
  examples: [
    {
      args: [50000, 100, 8, null, null, null, null, 230600, 1],
      gives: [['1', '', '50000', '1', '0', '5000000', '21.68']],
      because: '50,000 larvae × 100 nauplii ÷ 230,600 per gram.',
    },
    {
      args: [50000, 100, 0],
      fails: { code: '#VALUE!', says: 'days' },
      because: 'A plan has at least one day.',
    },
  ],
  compute: ({ start, ...plan }) =>
    weaningTable(plan).map((row) => ({
      ...row,
      date: start === undefined ? null : Math.floor(start) + row.day - 1,
    })),
});
