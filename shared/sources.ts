import { broodSources } from './families/brood/sources';
import { feedingSources } from './families/feeding/sources';
import { generalSources } from './families/sources';
import { growthSources } from './families/growth/sources';
import { learningSources } from './families/learning/sources';
import { moneySources } from './families/money/sources';
import { timingSources } from './families/timing/sources';
import { waterSources } from './families/water/sources';
import type { Source } from './functions/source';

/**
 * Source key → where a number comes from. Every coefficient, every function and every reference test names a
 * key.
 */
export const SOURCES: Readonly<Record<string, Source>> = {
  ...generalSources,
  ...waterSources,
  ...feedingSources,
  ...growthSources,
  ...timingSources,
  ...broodSources,
  ...moneySources,
  ...learningSources,
};

export type { Source };
