import { sources } from './source';

export const waterSources = sources({
  EMER75: {
    citation: 'Emerson K., Russo R.C., Lund R.E., Thurston R.V. 1975. Aqueous ammonia equilibrium calculations: effect of pH and temperature. J. Fish. Res. Board Can. 32:2379-2383',
    standing: 'seen',
    note: 'equation read in secondary copies that agree with each other; the paper itself was not opened',
  },
});
