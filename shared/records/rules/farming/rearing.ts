import { feedConversion } from '../../../families/growth/kernels/feedConversion';
import { specificGrowth } from '../../../families/growth/kernels/specificGrowth';
import type { RowRule, RuleFinding, RuleVerdict } from '../rule';
import { percent, plain } from '../show';

/**
 * Most a day's ration can be of the body, by weight of one fish: trials fed fry at 25 % and fingerlings at 2
 * to 15 % (judgement above that).
 */
const mostRation = (weight: number): number => (weight < 0.1 ? 2 : weight < 1 ? 1 : weight < 10 ? 0.4 : 0.2);
const LEAST_RATION = 0.001;

function rationVerdict(said: RuleFinding): RuleVerdict | undefined {
  const [feed, fish, weight] = [said.num('feed'), said.num('fish'), said.num('weight')];
  const ration = feed / (fish * weight);
  const most = mostRation(weight);
  if (!(feed > 0 && fish > 0 && weight > 0) || (ration <= most && ration >= LEAST_RATION)) return undefined;
  const isGrams = ration / 1000 <= most && ration / 1000 >= 5 * LEAST_RATION;
  const isKilograms = ration * 1000 <= most && ration * 1000 >= LEAST_RATION;
  const hint = isGrams
    ? ' A thousand times less would fit: grams and kilograms mixed?'
    : isKilograms
      ? ' A thousand times more would fit: grams and kilograms mixed?'
      : '';
  return {
    field: 'feed',
    with: ['fish', 'weight'],
    seen: percent(ration),
    expected: `${percent(LEAST_RATION)} to ${percent(most)} of body weight`,
    sentence: `${plain(feed)} g for ${plain(fish, 9)} fish of ${plain(weight)} g is ${percent(ration)} of their weight in a day; ${percent(most)} is more than they eat.${hint}`,
  };
}

/**
 * % per day that no fish of that size has kept up: 4 g fish in warm ponds made 4.8 (SOLARPOND), larvae from
 * day 7 12.5 (MAKERERE), newly feeding larvae near 50 (LEGE92, digitised).
 */
const mostGrowth = (start: number): number => (start < 0.1 ? 75 : start < 1 ? 30 : start < 10 ? 15 : 8);

function growthVerdict(said: RuleFinding): RuleVerdict | undefined {
  const [start, end, days] = [said.num('startWeight'), said.num('endWeight'), said.num('days')];
  const span = Number.isNaN(days) ? said.num('emptiedAt') - said.num('stockedAt') : days;
  if (!(start > 0 && end > 0 && span >= 1)) return undefined;
  const rate = specificGrowth(start, end, span);
  const most = mostGrowth(start);
  const base = {
    field: 'endWeight',
    with: ['startWeight', Number.isNaN(days) ? 'emptiedAt' : 'days'],
    seen: `${plain(rate, 3)} % per day`,
  } as const;
  if (rate > most)
    return {
      ...base,
      expected: `up to ${most} % per day`,
      sentence: `From ${plain(start)} to ${plain(end)} g in ${plain(span)} days is ${plain(rate, 3)} % per day; fish of that size do not grow above ${most}.`,
    };
  return end < 0.8 * start
    ? {
        ...base,
        expected: `above ${plain(start)} g`,
        sentence: `The fish are lighter at the end: ${plain(start)} g became ${plain(end)} g. Were the two samples of the same fish, and in the same unit?`,
      }
    : undefined;
}

/** Below this more weight would be gained than eaten as dry feed; live food and pond food can do it. */
const FCR = [0.45, 6] as const;

function conversionVerdict(said: RuleFinding): RuleVerdict | undefined {
  const [feed, start, end, stocked, alive, stated] = [
    said.num('feed'),
    said.num('startWeight'),
    said.num('endWeight'),
    said.num('stocked'),
    said.num('alive'),
    said.num('conversion'),
  ];
  const worked = feedConversion(feed, start * stocked, end * alive, 0).economic;
  const ratio = Number.isNaN(stated) ? worked : stated;
  if (!Number.isFinite(ratio) || (ratio >= FCR[0] && ratio <= FCR[1])) return undefined;
  const field = Number.isNaN(stated) ? ('feed' as const) : ('conversion' as const);
  return {
    field,
    ...(field === 'feed' ? { with: ['startWeight', 'endWeight', 'stocked', 'alive'] as const } : {}),
    seen: plain(ratio, 3),
    expected: `${FCR[0]} to ${FCR[1]}`,
    severity: ratio < 0.2 || ratio < 0 ? 'impossible' : 'unlikely',
    sentence:
      ratio < FCR[0]
        ? `Feed conversion of ${plain(ratio, 3)} is beyond belief: so little dry feed does not make so much fish.`
        : `Feed conversion of ${plain(ratio, 3)}: the feed was lost, or fish died or were taken out unseen.`,
  };
}

export const rearingRules: readonly RowRule[] = [
  {
    id: 'FEED.RATION',
    scope: 'row',
    severity: 'unlikely',
    title: 'Feed does not fit number and weight',
    needs: [['feed', 'fish', 'weight']],
    check: rationVerdict,
    checks: 'Feed of a day as a share of number × mean weight, against what fish of that size eat.',
    why: 'Grams for kilograms, an old weight, or fish that are no longer there.',
    sources: ['UYS85', 'FEEDFREQ', 'BASH23', 'PRACTICE'],
    examples: [
      { record: { feed: 5000, fish: 2000, weight: 2 }, says: '125 %', because: '5 kg for 4 kg of fish.' },
      {
        record: { feed: 200_000, fish: 2000, weight: 2 },
        says: 'thousand times less',
        because: '200 g entered in a column of kilograms.',
      },
      { record: { feed: 200, fish: 2000, weight: 2 }, because: 'A ration of 5 %.' },
    ],
  },
  {
    id: 'GROWTH.RANGE',
    scope: 'row',
    severity: 'unlikely',
    title: 'Growth beyond belief',
    needs: [
      ['startWeight', 'endWeight', 'days'],
      ['startWeight', 'endWeight', 'stockedAt', 'emptiedAt'],
    ],
    check: growthVerdict,
    checks: 'Specific growth against the best published for that size, and fish that weigh less at the end.',
    why: 'A sample of the biggest, a unit slip, or a date that is wrong by a month.',
    sources: ['SOLARPOND', 'MAKERERE', 'LEGE92', 'PRACTICE'],
    examples: [
      {
        record: { startWeight: 5, endWeight: 80, days: 10 },
        says: '27.7 % per day',
        because: '5 to 80 g in ten days.',
      },
      { record: { startWeight: 12, endWeight: 6, days: 20 }, says: 'lighter', because: 'Half the weight.' },
      { record: { startWeight: 4.07, endWeight: 298.75, days: 90 }, because: 'Published: 4.77 % per day.' },
    ],
  },
  {
    id: 'FCR.RANGE',
    scope: 'row',
    severity: 'unlikely',
    title: 'Feed conversion beyond belief',
    needs: [['conversion'], ['feed', 'startWeight', 'endWeight', 'stocked', 'alive']],
    check: conversionVerdict,
    checks: 'Feed conversion, written down or worked out, from 0.45 to 6.',
    why:
      'Water makes up most of a fish, so a little less than 1 is possible; far less is a ' +
      'wrong weight or number.',
    sources: ['BASH23', 'PRACTICE'],
    examples: [
      { record: { conversion: 0.12 }, says: 'beyond belief', because: '1.2 without its point moved.' },
      {
        record: { feed: 100_000, stocked: 1000, startWeight: 5, alive: 1000, endWeight: 15 },
        says: 'Feed conversion of 10',
        because: '100 kg for 10 kg.',
      },
      { record: { conversion: 1.2 }, because: 'Usual.' },
    ],
  },
];
