import type { Assumption } from '../../../families/assumptions';
import { SOURCES } from '../../../families/sources';
import type { SourceStanding } from '../../../functions/source';

const STANDING: Readonly<Record<SourceStanding, string>> = {
  seen: 'published',
  memory: 'from memory, page not seen',
  practice: 'common practice, no source',
  computed: 'computed',
  standard: 'definition',
};

/** "Brzuska E. 2003" of a long citation. */
export const shortCitation = (citation: string): string => {
  const upToYear = /^(.{3,70}?\b(?:19|20)\d{2})\b/.exec(citation)?.[1];
  return upToYear ?? (citation.length > 48 ? `${citation.slice(0, 47)}…` : citation);
};
/** Where an assumption comes from, in a few words. */
export const originOf = ({ sources }: Assumption): string =>
  sources
    .map((key) => {
      const source = SOURCES[key];
      if (!source) return key;
      return source.standing === 'practice'
        ? STANDING.practice
        : `${shortCitation(source.citation)} (${STANDING[source.standing]})`;
    })
    .join('; ');
