import { rearingSources } from './rearing';
import { sources } from './source';
import { timingBroodSources } from './timingBrood';

export const bodySources = sources({
  ...rearingSources,
  ...timingBroodSources,
});
