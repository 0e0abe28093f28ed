import { sources } from '../functions/source';

/** Sources that belong to no one family. */
export const generalSources = sources({
  PRACTICE: { citation: 'Common practice, no source', standing: 'practice' },
  DEFINITION: { citation: 'Definition or exact arithmetic', standing: 'standard' },
});
