import { breakEvenNumber, breakEvenPrice, costPerFish } from '../kernels/breakEven';
import { profitRatios } from '../kernels/ratios';
import { count, money, ratio, share } from '../../../units/quantities';
import { noSolution } from '../../../base/values';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { num, series } from '../../../functions/params';

const fixed = num(money, {
  min: 0,
  max: 1e13,
  doc: 'Costs that come whether fish are sold or not: rent, wages, wear. Any one currency.',
});
const variablePerFish = num(money, {
  min: 0,
  max: 1e9,
  doc: 'Costs that come with each fish: feed, cysts, hormone, bags, divided by the fish.',
});
const price = num(money, { above: 0, max: 1e9, doc: 'Price of one fish.' });
const typedPercent = 'A percentage typed as a number is named.';

export const costPerFishFunction = defineFunction({
  id: 'COST.PERFISH',
  family: 'Plan and money',
  summary: 'Cost of one fish sold: all costs of the run together, divided by the fish sold.',
  questions: [
    'cost per fish',
    'how much does one fry cost me',
    'unit cost',
    'cost price',
    'how much one fingerlings cost me',
    'how much one fish cost me',
  ],
  params: {
    costs: series(money, {
      min: 0,
      max: 1e13,
      doc: 'Every cost of the run or the season, one cell each. Feed alone is not the cost.',
    }),
    fish: num(count, { above: 0, max: 1e10, doc: 'Fish sold, not fish hatched or stocked.' }),
  },
  returns: value(money, 'Cost of one fish: at this price nothing is won or lost.'),
  valid: 'Exact arithmetic; as good as the list of costs',
  sources: ['DEFINITION', 'ALAWODE', 'FEEDBUDGET'],
  native: 'SUM({costs})/{fish}',
  help:
    'Write down your own hours and the wear of pumps too: they are the costs most often ' +
    'forgotten. A published exercise divides the feed alone by the fish and comes out at ' +
    'half the true price.',
  examples: [
    {
      args: [[[237919.9], [104705]], 15451.6],
      gives: '22.174',
      because: 'Mean of 31 hatcheries: variable and fixed costs of a cycle over its seed.',
    },
    { args: [6754.04, 3818], gives: '1.769', because: 'FEEDBUDGET prints 0.884, the feed alone.' },
    {
      args: [[[100], [200]], 0],
      fails: { code: '#VALUE!', says: 'above 0' },
      because: 'No fish sold has no cost per fish.',
    },
  ],
  compute: ({ costs, fish }) => costPerFish(costs, fish),
});

export const breakEvenPriceFunction = defineFunction({
  id: 'BREAKEVEN.PRICE',
  family: 'Plan and money',
  summary: 'Lowest price of a fish that covers all costs, or leaves the margin you want.',
  questions: [
    'break even',
    'at what price do I lose',
    'selling price',
    'cover my money',
    'brake even',
    'how much should I sell fingerlings',
    'how much I go sell am',
    'how many I go sell before my money come back',
  ],
  params: {
    fixed,
    variablePerFish,
    fish: num(count, {
      above: 0,
      max: 1e10,
      doc: 'Fish you expect to sell. Try the number of a poor season too.',
    }),
    margin: num(share, {
      min: 0,
      max: 0.95,
      default: 0,
      doc: 'Profit wanted as a share of sales (0.2 is 20 %).',
    }),
  },
  returns: value(money, 'Price of one fish.'),
  valid: 'Exact arithmetic; as good as the costs',
  sources: ['DEFINITION', 'ALAWODE'],
  native: '({fixed}/{fish}+{variablePerFish})/(1-{margin})',
  examples: [
    {
      args: [104705, 15.39775, 15451.6],
      gives: '22.174',
      because: 'Fixed costs spread over the seed of a cycle plus variable costs of 237,919.90 ÷ 15,451.6.',
    },
    { args: [1000, 2, 500, 0.2], gives: '5', because: 'Cost 4; 5 leaves a fifth of the sales.' },
    { args: [1000, 2, 500, 20], fails: { code: '#VALUE!', says: '0.2' }, because: typedPercent },
  ],
  compute: ({ fixed: f, variablePerFish: v, fish, margin }) => breakEvenPrice(f, v, fish, margin),
});

export const breakEvenNumberFunction = defineFunction({
  id: 'BREAKEVEN.NUMBER',
  family: 'Plan and money',
  summary: 'Fish that must be sold at a price until all costs are covered, or the profit you want is made.',
  questions: [
    'how many fish must i sell to cover costs',
    'how many fingerlings to break even',
    'sales needed for a profit',
    'how many must I sell to cover costs',
  ],
  params: {
    fixed,
    variablePerFish,
    price,
    profit: num(money, { min: 0, max: 1e13, default: 0, doc: 'Profit wanted on top.' }),
  },
  returns: value(count, 'Fish to sell, not rounded: round it up yourself.'),
  valid: 'One price for all fish, costs of a fish that do not change with their number',
  sources: ['DEFINITION', 'ALAWODE'],
  native: '({fixed}+{profit})/({price}-{variablePerFish})',
  examples: [
    {
      args: [104705, 15.39775, 34.148],
      gives: '5584',
      because: 'Of 15,452 fish, at the price that a benefit-cost ratio of 1.54 implies.',
    },
    { args: [1000, 2, 4, 200], gives: '600', because: 'Each fish leaves 2 towards 1,200.' },
    {
      args: [1000, 4, 4],
      fails: { code: '#NUM!', says: 'more than' },
      because: 'A fish that brings no more than it costs never pays the rent.',
    },
  ],
  compute: ({ fixed: f, variablePerFish: v, price: p, profit }) => {
    const fish = breakEvenNumber(f, v, p, profit);
    return Number.isNaN(fish)
      ? noSolution('price: it must be more than variablePerFish, or every fish sold loses money.')
      : fish;
  },
});

export const marginShare = defineFunction({
  id: 'MARGIN.SHARE',
  family: 'Plan and money',
  summary: 'Profit as a share of sales.',
  questions: ['profit margin', 'is it profitable', 'sensitivity', 'gain', 'how much gain'],
  params: {
    sales: num(money, { above: 0, max: 1e13, doc: 'Money the fish brought.' }),
    costs: num(money, { min: 0, max: 1e13, doc: 'All costs of the same fish.' }),
  },
  returns: value(share, 'Share of sales; negative is a loss.'),
  valid: 'Exact arithmetic',
  sources: ['DEFINITION'],
  native: '({sales}-{costs})/{sales}',
  help:
    'Of sales, not of costs: 54 on costs of 100 is a margin of 35 %, not 54 %. ' +
    'SPAWN.PROFIT.RATIOS gives both with their names.',
  examples: [
    { args: [154, 100], gives: '0.35065', because: '54 of 154.' },
    { args: [80, 100], gives: '-0.25', because: 'A loss of a quarter of the sales.' },
    { args: [0, 100], fails: { code: '#VALUE!', says: 'above 0' }, because: 'No sales, no share of them.' },
  ],
  compute: ({ sales, costs }) => profitRatios(sales, costs).margin,
});

export const profitRatiosFunction = defineFunction({
  id: 'PROFIT.RATIOS',
  family: 'Plan and money',
  summary: 'Profit, and the three ratios that reports call profitability, each under its own name.',
  questions: ['profit over sales or over cost', 'profitability ratios', 'return on money', 'how much profit'],
  params: {
    sales: num(money, { above: 0, max: 1e13, doc: 'Money the fish brought.' }),
    costs: num(money, { above: 0, max: 1e13, doc: 'All costs of the same fish.' }),
  },
  returns: fields(
    {
      profit: column('Profit', money),
      margin: column('Profit of sales', share),
      onCost: column('Profit of costs', share),
      benefitCost: column('Sales to costs', ratio),
    },
    'Profit in money, as a share of sales, as a share of costs, and sales ÷ costs.',
  ),
  valid: 'Exact arithmetic',
  sources: ['DEFINITION', 'ALAWODE', 'THOMPSON14'],
  help:
    'Sales ÷ costs is always profit of costs plus one. Publications print any of the ' +
    'three as "profitability": compare like with like.',
  examples: [
    {
      args: [527642.35, 342624.9],
      gives: [['185017.45', '0.3506', '0.54', '1.54']],
      because: 'ALAWODE prints a benefit-cost ratio of 1.54 and a return of 0.54.',
    },
    {
      args: [100, 0],
      fails: { code: '#VALUE!', says: 'above 0' },
      because: 'A ratio to no costs has no meaning.',
    },
  ],
  compute: ({ sales, costs }) => ({ ...profitRatios(sales, costs) }),
});
