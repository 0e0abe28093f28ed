import { cashWeeks } from '../kernels/cashWeeks';
import { swingsOf } from '../kernels/swings';
import { day, money, ratio, text } from '../../../units/quantities';
import { refuse } from '../../../base/values';
import { column, defineFunction, rows } from '../../../functions/define';
import { num, series, texts } from '../../../functions/params';
import { FIRST_DAY, LAST_DAY } from '../../../units/dates';

const MOST_WEEKS = 520;

export const cashWeeksFunction = defineFunction({
  id: 'CASH.WEEKS',
  family: 'Plan and money',
  summary: 'Money in and out week by week, Monday to Sunday, with what is left at the end of each.',
  questions: [
    'cash flow',
    'when will I run out of money',
    'how much money do I need to start',
    'money wey go enter and comot every week',
  ],
  params: {
    dates: series(day, { min: FIRST_DAY, max: LAST_DAY, pair: 'entry', doc: 'Day of each payment.' }),
    amounts: series(money, {
      min: -1e12,
      max: 1e12,
      pair: 'entry',
      doc: 'Money in is positive, money out negative.',
    }),
    atHand: num(money, { min: -1e12, max: 1e12, default: 0, doc: 'Money at hand before the first payment.' }),
  },
  returns: rows(
    {
      begins: column('Week from', day),
      moneyIn: column('In', money),
      moneyOut: column('Out', money),
      balance: column('Left', money),
    },
    'One row a week, from the first payment to the last; quiet weeks are kept.',
  ),
  valid: 'Exact arithmetic; at most ten years',
  sources: ['DEFINITION'],
  help:
    'A negative balance in any week is money to find before that week, even when the ' +
    'season as a whole earns.',
  examples: [
    {
      args: [[[46092], [46106]], [[-80], [200]], 100],
      gives: [
        ['46090', '0', '80', '20'],
        ['46097', '0', '0', '20'],
        ['46104', '200', '0', '220'],
      ],
      because: 'Paid in the first week, sold in the third.',
    },
    {
      args: [[[46092], [46106]], [[-80], [null]], 100],
      fails: { code: '#VALUE!', says: 'blank' },
      because: 'A date without its amount is named.',
    },
  ],
  compute: ({ dates, amounts, atHand }) => {
    const weeks = (Math.max(...dates) - Math.min(...dates)) / 7;
    if (weeks > MOST_WEEKS)
      return refuse(
        `dates: expected payments within ${MOST_WEEKS} weeks, got ${Math.round(weeks)} weeks. Look for a mistyped year.`,
      );
    return cashWeeks(
      dates.map((date, i) => ({ date, amount: amounts[i] ?? NaN })),
      atHand,
    ).map((week) => ({ ...week }));
  },
});

export const profitSwings = defineFunction({
  id: 'PROFIT.SWINGS',
  family: 'Plan and money',
  summary:
    'Which figure the profit hangs on: each one moved from its low to its high end, the widest swing first.',
  questions: [
    'what does the profit hang on',
    'which price hurts profit most',
    'sensitivity of profit',
    'which cost matters most',
  ],
  params: {
    names: texts({
      pair: 'figure',
      doc: 'Name of each figure, for example females, eggs each, hatch, survival, price.',
    }),
    low: series(ratio, { min: 0, max: 1e12, pair: 'figure', doc: 'Poor end of each figure.' }),
    planned: series(ratio, { min: 0, max: 1e12, pair: 'figure', doc: 'Figure as planned.' }),
    high: series(ratio, { min: 0, max: 1e12, pair: 'figure', doc: 'Good end of each figure.' }),
    costs: num(money, { min: 0, max: 1e13, default: 0, doc: 'Costs taken off in every case.' }),
  },
  returns: rows(
    {
      name: column('Figure', text),
      atLow: column('Profit at its low end', money),
      atHigh: column('Profit at its high end', money),
      swing: column('Swing', money),
    },
    'One row a figure, the widest swing on top.',
  ),
  valid: 'Profit = all figures multiplied − costs; one figure moves at a time',
  sources: ['DEFINITION'],
  help:
    'Draw it as bars: the top one is what is worth measuring or improving first. Real ' +
    'seasons move several figures at once; SPAWN.SEASON.ODDS does that.',
  examples: [
    {
      args: [
        [['eggs'], ['hatch'], ['price']],
        [[20000], [0.284], [2]],
        [[60000], [0.59], [3]],
        [[90000], [0.864], [4]],
        50000,
      ],
      gives: [
        ['eggs', '-14600', '109300', '123900'],
        ['hatch', '1120', '105520', '104400'],
        ['price', '20800', '91600', '70800'],
      ],
      because: 'Profit as planned 56,200; eggs from 20,000 to 90,000 move it most.',
    },
    {
      args: [[['eggs']], [[-5]], [[1]], [[2]]],
      fails: { code: '#VALUE!', says: '−5' },
      because: 'A figure below nothing.',
    },
  ],
  compute: ({ names, low, planned, high, costs }) =>
    swingsOf(
      names.map((name, i) => ({
        name,
        low: low[i] ?? NaN,
        planned: planned[i] ?? NaN,
        high: high[i] ?? NaN,
      })),
      (values) => values.reduce((product, v) => product * v, 1) - costs,
    ).map((row) => ({ ...row })),
});
