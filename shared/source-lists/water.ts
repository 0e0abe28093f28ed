import { sources } from './source';

export const waterSources = sources({
  EMER75: {
    citation: 'Emerson K., Russo R.C., Lund R.E., Thurston R.V. 1975. Aqueous ammonia equilibrium calculations: effect of pH and temperature. J. Fish. Res. Board Can. 32:2379-2383',
    standing: 'seen',
    note: 'equation read in secondary copies that agree with each other; the paper itself was not opened',
  },
  PLBU82: {
    citation: 'Plummer L.N., Busenberg E. 1982. The solubilities of calcite, aragonite and vaterite in CO2-H2O solutions between 0 and 90 °C, and an evaluation of the aqueous model for the system CaCO3-CO2-H2O. Geochim. Cosmochim. Acta 46:1011-1040',
    standing: 'seen',
    url: 'https://pubs.er.usgs.gov/publication/70011789',
    note: 'coefficients read in the publisher\'s abstract',
  },
  PHREEQC: {
    citation: 'U.S. Geological Survey, PHREEQC version 3.8.8 and its database phreeqc.dat',
    standing: 'seen',
    note: 'ion sizes, ion pairs and Kw taken from the database; the program itself served as an independent check',
  },
  NOAACO2: { citation: 'Monthly mean CO2 in air at Mauna Loa, May 2025: 430 ppm (news report quoting NOAA)', standing: 'seen', note: 'rooms usually hold 600 to 1000 ppm' },
});
