import { sources } from './source';

export const bodySources = sources({
});
