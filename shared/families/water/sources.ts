import { sources } from '../../functions/source';

export const waterSources = sources({
  EMER75: {
    citation:
      'Emerson K., Russo R.C., Lund R.E., Thurston R.V. 1975. Aqueous ammonia equilibrium ' +
      'calculations: effect of pH and temperature. J. Fish. Res. Board Can. 32:2379-2383',
    standing: 'seen',
    note: 'equation read in secondary copies that agree with each other; the paper itself was not opened',
  },
  PLBU82: {
    citation:
      'Plummer L.N., Busenberg E. 1982. The solubilities of calcite, aragonite and ' +
      'vaterite in CO2-H2O solutions between 0 and 90 °C, and an evaluation of the aqueous ' +
      'model for the system CaCO3-CO2-H2O. Geochim. Cosmochim. Acta 46:1011-1040',
    standing: 'seen',
    url: 'https://pubs.er.usgs.gov/publication/70011789',
    note: "coefficients read in the publisher's abstract",
  },
  PHREEQC: {
    citation: 'U.S. Geological Survey, PHREEQC version 3.8.8 and its database phreeqc.dat',
    standing: 'seen',
    note:
      'ion sizes, ion pairs and Kw taken from the database; the program itself served as ' +
      'an independent check',
  },
  NOAACO2: {
    citation: 'Monthly mean CO2 in air at Mauna Loa, May 2025: 430 ppm (news report quoting NOAA)',
    standing: 'seen',
    note: 'rooms usually hold 600 to 1000 ppm',
  },
  KOHL00: {
    citation:
      'Köhler S., Laudon H., Wilander A., Bishop K. 2000. Estimating organic acid ' +
      'dissociation in natural surface waters using total alkalinity and TOC. Water ' +
      'Research 34:1425; Hruška J., Köhler S., Laudon H., Bishop K. 2003. Environ. Sci. ' +
      'Technol. 37(9)',
    standing: 'seen',
    note:
      'records of both papers were seen, not the papers; the three acid constants 3.04, ' +
      '4.51 and 6.46 serve as a stand-in for humic matter',
  },
  BEKR84: {
    citation:
      'Benson B.B., Krause D. 1984. The concentration and isotopic fractionation of oxygen ' +
      'dissolved in freshwater and seawater in equilibrium with the atmosphere. Limnol. ' +
      'Oceanogr. 29:620-632',
    standing: 'seen',
    note: 'equation read in published program code that quotes it; the paper itself was not opened',
  },
  EN25814: {
    citation: 'EN 25814 (ISO 5814): Water quality, determination of dissolved oxygen, table of saturation',
    standing: 'seen',
    note: 'table read in an instrument manual that reprints it',
  },
  MONT64: {
    citation:
      'Montgomery H.A.C., Thom N.S., Cockburn A. 1964. Determination of dissolved oxygen ' +
      'by the Winkler method and the solubility of oxygen in pure water and sea water. J. ' +
      'Appl. Chem. 14:280-296',
    standing: 'seen',
    note: 'table read in a copy; its 9.64 at 18 °C is a misprint for 9.46',
  },
  TUCK84: {
    citation: 'Tucker C.S. 1984. Carbon dioxide. In: For fish farmers, table of factors',
    standing: 'seen',
    note: 'factors read in a web page that reproduces them; its rows for pH 7.6 and 7.8 have typing errors',
  },
  SCHR10: {
    citation:
      'Schram E., Roques J.A.C., Abbink W. and others 2010. The impact of elevated water ' +
      'ammonia concentration on physiology, growth and feed intake of African catfish ' +
      '(Clarias gariepinus). Aquaculture 306:108-115',
    standing: 'seen',
    note: 'do not exceed 0.34 mg/L NH3-N, fish of 141 g; abstract',
  },
  NH3LEAF: {
    citation:
      'Extension leaflet on ammonia in fish ponds (copy on a web page): harm from about ' +
      '0.05 mg/L of un-ionised ammonia',
    standing: 'seen',
  },
  ECMEM: { citation: 'Conductivity rises by about 2 % per °C', standing: 'memory' },
  WATERUNITS: {
    citation: 'Karrasch + Eckert, water treatment: table of water units (web page)',
    standing: 'seen',
    url: 'https://karrasch-eckert.de/wissen/umrechnung_en.html',
    note: '1 mg/L of sodium chloride is about 1.89 µS/cm at 20 °C',
  },
  CLARSALT: {
    citation:
      'Salinity tolerance in Clarias gariepinus (Burchell 1822): insight on blood ' +
      'parameter variations and gill histological changes (abstract)',
    standing: 'seen',
  },
  HETSALT: {
    citation:
      'Influence of salinity on the developmental stages of African catfish Heterobranchus ' +
      'longifilis (Valenciennes 1840) (abstract)',
    standing: 'seen',
  },
  HYBSALT: {
    citation:
      'Salinity tolerance of hybrid catfish larvae. 2012. Animal Research International ' +
      '9(3):1654-1664 (abstract)',
    standing: 'seen',
    url: 'https://www.ajol.info/index.php/ari/article/view/89221',
  },
  KAWAMURA17: {
    citation: 'Kawamura G. et al. 2017. Fisheries Science',
    standing: 'seen',
    note: 'abstract only; larvae of 2.8 mg on day 4, 90 mg on day 21',
    doi: '10.1007/s12562-017-1088-y',
  },
  HETEROPN20: {
    citation: 'Salt tolerance of Heteropneustes fossilis. 2020. Journal of Fisheries and Life Sciences 5(2)',
    standing: 'seen',
    note: 'abstract only; another genus',
  },
  BORODE05: {
    citation: 'Borode A.O., Oyintoke A. 2005. Journal of Food, Agriculture and Environment 3(1)',
    standing: 'seen',
    note: 'abstract only; eggs of hybrids both ways',
  },
  CALABAR: {
    citation: 'Growth of Clarias gariepinus fingerlings in diluted sea water, Calabar (abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
});
