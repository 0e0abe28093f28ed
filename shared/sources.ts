import { bodySources } from './source-lists/biology';
import { learningSources } from './source-lists/learning';
import { methodSources } from './source-lists/methods';
import { planningSources } from './source-lists/planning';
import { waterSources } from './source-lists/water';
import type { Source } from './source-lists/source';

/**
 * Source key → where a number comes from. Every coefficient, every function and every reference test names a
 * key.
 */
export const SOURCES: Readonly<Record<string, Source>> = {
  ...methodSources,
  ...waterSources,
  ...bodySources,
  ...planningSources,
  ...learningSources,
};

export type { Source };
