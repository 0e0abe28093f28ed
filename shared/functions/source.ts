/**
 * How far a figure can be trusted:
 * seen     – read in the publication or a copy of it
 * memory   – the publication is named, its page was not seen: check before relying on it
 * practice – common practice, no source
 * computed – worked out here from seen figures
 * standard – textbook definition or exact arithmetic
 */
export type SourceStanding = 'seen' | 'memory' | 'practice' | 'computed' | 'standard';

export interface Source {
  readonly citation: string;
  readonly standing: SourceStanding;
  readonly doi?: string;
  readonly url?: string;
  readonly note?: string;
}

export const sources = <const K extends string>(list: Record<K, Source>): Record<K, Source> => list;
