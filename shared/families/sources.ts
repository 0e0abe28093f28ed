import { broodSources } from './brood/sources';
import { careSources } from './care/sources';
import { feedingSources } from './feeding/sources';
import { generalSources } from './general';
import { growthSources } from './growth/sources';
import { learningSources } from './learning/sources';
import { moneySources } from './money/sources';
import { timingSources } from './timing/sources';
import { waterSources } from './water/sources';
import type { Source } from '../functions/source';

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
  ...careSources,
  ...moneySources,
  ...learningSources,
};

export type { Source };
