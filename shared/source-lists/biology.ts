import { rearingSources } from './rearing';
import { sources } from './source';

export const bodySources = sources({
  ...rearingSources,
});
