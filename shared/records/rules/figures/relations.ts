import { specificGrowth } from '../../../families/growth/kernels/specificGrowth';
import { gramsFromKilograms, hoursFromDays } from '../../../units/convert';
import type { NumericField } from '../../fields';
import type { RuleFinding } from '../rule';

/** What must follow from what, by arithmetic: the rules of consistency and of slips read the same list. */
export interface ColumnRelation {
  readonly rule: string;
  readonly result: NumericField;
  readonly inputs: readonly NumericField[];
  readonly how: string;
  readonly compute: (num: RuleFinding['num']) => number;
  /** Share of the value, and a fixed part, that rounding may explain. */
  readonly slack: readonly [number, number];
  /** Other relations that the record may have meant; one that holds is enough. */
  readonly either?: string;
}

const relation = (
  rule: string,
  result: NumericField,
  inputs: readonly NumericField[],
  how: string,
  slack: readonly [number, number],
  compute: ColumnRelation['compute'],
  either?: string,
): ColumnRelation => ({ rule, result, inputs, how, slack, compute, ...(either ? { either } : {}) });

/** Shares are kept to the whole percent by many. */
const SHARE_SLACK = [0, 0.0101] as const;

export const RELATIONS: readonly ColumnRelation[] = [
  relation(
    'EGGS.PRODUCT',
    'eggs',
    ['eggWeight', 'eggsPerGram'],
    'egg weight × eggs per gram',
    [0.015, 1],
    (n) => n('eggWeight') * n('eggsPerGram'),
  ),
  relation(
    'EGGS.YIELDSHARE',
    'eggYield',
    ['eggWeight', 'femaleWeight'],
    'egg weight ÷ body weight',
    [0.02, 0.0051],
    (n) => n('eggWeight') / gramsFromKilograms(n('femaleWeight')),
  ),
  relation(
    'SHARE.COUNTS',
    'fertilisedShare',
    ['sampleGood', 'sampleSize'],
    'good ÷ looked at',
    SHARE_SLACK,
    (n) => n('sampleGood') / n('sampleSize'),
  ),
  relation(
    'SHARE.COUNTS',
    'fertilisedShare',
    ['fertilised', 'eggs'],
    'fertilised ÷ eggs',
    SHARE_SLACK,
    (n) => n('fertilised') / n('eggs'),
  ),
  relation(
    'SHARE.COUNTS',
    'hatchShare',
    ['hatched', 'fertilised'],
    'hatched ÷ fertilised',
    SHARE_SLACK,
    (n) => n('hatched') / n('fertilised'),
    'hatch',
  ),
  relation(
    'SHARE.COUNTS',
    'hatchShare',
    ['hatched', 'eggs'],
    'hatched ÷ eggs',
    SHARE_SLACK,
    (n) => n('hatched') / n('eggs'),
    'hatch',
  ),
  relation(
    'SHARE.COUNTS',
    'survival',
    ['fingerlings', 'fry'],
    'fingerlings ÷ fry',
    SHARE_SLACK,
    (n) => n('fingerlings') / n('fry'),
    'survival',
  ),
  relation(
    'SHARE.COUNTS',
    'survival',
    ['fingerlings', 'stocked'],
    'fingerlings ÷ stocked',
    SHARE_SLACK,
    (n) => n('fingerlings') / n('stocked'),
    'survival',
  ),
  relation(
    'SHARE.COUNTS',
    'survival',
    ['alive', 'stocked'],
    'alive ÷ stocked',
    SHARE_SLACK,
    (n) => n('alive') / n('stocked'),
    'survival',
  ),
  relation(
    'SHARE.COUNTS',
    'survival',
    ['fry', 'hatched'],
    'fry ÷ hatched',
    SHARE_SLACK,
    (n) => n('fry') / n('hatched'),
    'survival',
  ),
  relation(
    'SHARE.COUNTS',
    'survival',
    ['fingerlings', 'hatched'],
    'fingerlings ÷ hatched',
    SHARE_SLACK,
    (n) => n('fingerlings') / n('hatched'),
    'survival',
  ),
  relation(
    'DOSE.VOLUME',
    'hormoneVolume',
    ['femaleWeight', 'hormoneDose'],
    'weight × dose per kg',
    [0.08, 0.06],
    (n) => n('femaleWeight') * n('hormoneDose'),
  ),
  relation(
    'LATENCY.STATED',
    'latency',
    ['stripped', 'injected'],
    'strip time − injection time',
    [0.01, 0.3],
    (n) => hoursFromDays(n('stripped') - n('injected')),
  ),
  relation(
    'HATCH.STATED',
    'incubationHours',
    ['hatchedAt', 'fertilisedAt'],
    'hatch time − fertilisation time',
    [0.01, 0.6],
    (n) => hoursFromDays(n('hatchedAt') - n('fertilisedAt')),
  ),
  relation(
    'DAYS.STATED',
    'days',
    ['emptiedAt', 'stockedAt'],
    'end date − stocking date',
    [0, 1.01],
    (n) => n('emptiedAt') - n('stockedAt'),
  ),
  relation(
    'FEED.STATED',
    'feed',
    ['fish', 'weight', 'ration'],
    'fish × mean weight × ration',
    [0.12, 1],
    (n) => n('fish') * n('weight') * n('ration'),
  ),
  relation(
    'GROWTH.STATED',
    'growthRate',
    ['startWeight', 'endWeight', 'days'],
    '100 × ln(end ÷ start) ÷ days',
    [0.04, 0.06],
    (n) => specificGrowth(n('startWeight'), n('endWeight'), n('days')),
  ),
  relation(
    'FCR.STATED',
    'conversion',
    ['feed', 'endWeight', 'alive', 'startWeight', 'stocked'],
    'feed ÷ gain of the batch',
    [0.06, 0.06],
    (n) => n('feed') / (n('endWeight') * n('alive') - n('startWeight') * n('stocked')),
  ),
];

export const fieldsOf = (one: ColumnRelation): readonly NumericField[] => [one.result, ...one.inputs];

export interface HeldRelation {
  readonly expected: number;
  readonly holds: boolean;
  readonly residual: number;
}

const isHeld = ({ slack }: ColumnRelation, seen: number, expected: number): boolean =>
  Math.abs(seen - expected) <= Math.max(slack[0] * Math.abs(expected), slack[1]) + 1e-9;

/** Is there a relation that does not hold? Asked of every record first, and makes no objects. */
export function hasBroken({ num, relations }: Pick<RuleFinding, 'num' | 'relations'>): boolean {
  for (const one of relations) {
    const seen = num(one.result);
    if (Number.isNaN(seen)) continue;
    const expected = one.compute(num);
    if (Number.isFinite(expected) && !isHeld(one, seen, expected)) return true;
  }
  return false;
}

/** Does the result follow? undefined when a value is missing. */
export function held(one: ColumnRelation, num: RuleFinding['num']): HeldRelation | undefined {
  const seen = num(one.result);
  if (Number.isNaN(seen)) return undefined;
  const expected = one.compute(num);
  if (!Number.isFinite(expected)) return undefined;
  return {
    expected,
    holds: isHeld(one, seen, expected),
    residual: Math.abs(seen - expected) / Math.max(Math.abs(expected), 1e-9),
  };
}

/** The relations a record breaks. Of alternatives only the nearest is reported, and only when none holds. */
export function broken({ num, relations }: Pick<RuleFinding, 'num' | 'relations'>): readonly {
  readonly relation: ColumnRelation;
  readonly held: HeldRelation;
}[] {
  const found: { relation: ColumnRelation; held: HeldRelation }[] = [];
  const groups = new Map<string, { relation: ColumnRelation; held: HeldRelation } | 'holds'>();
  for (const one of relations) {
    const now = held(one, num);
    if (!now) continue;
    if (one.either === undefined) {
      if (!now.holds) found.push({ relation: one, held: now });
      continue;
    }
    const best = groups.get(one.either);
    if (best === 'holds') continue;
    if (now.holds) groups.set(one.either, 'holds');
    else if (!best || now.residual < best.held.residual) groups.set(one.either, { relation: one, held: now });
  }
  for (const one of groups.values()) if (one !== 'holds') found.push(one);
  return found;
}
