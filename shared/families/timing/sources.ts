import { sources } from '../../functions/source';

/** A figure read only in an abstract or a copy says so in its note. */
export const timingSources = sources({
  GRAAF96: {
    citation:
      'de Graaf G.J., Janssen H. 1996. Handbook on the artificial reproduction and pond ' +
      'rearing of the African catfish Clarias gariepinus in sub-Saharan Africa. FAO ' +
      'Fisheries Technical Paper 362 (tables credited there to Hogendoorn & Vismans 1980)',
    standing: 'memory',
    note: 'tables recalled from memory: the printed page was not seen; check them before relying on them',
  },
  OKER15: {
    citation: 'Okere E., Erondu E.S., Zabbey N. 2015. Agriculture, Forestry and Fisheries 4(2):71-76',
    standing: 'seen',
    note: 'latency in minutes at a mean of 26.0 ± 0.7 °C',
  },
  CLARIIDPAGE: {
    citation: 'Extension page "Fingerlings production and hatchery management", agric4profits.com',
    standing: 'seen',
    note: 'seems to derive from clariid culture handbooks',
    url: 'https://agric4profits.com/fingerlings-production-and-hatchery-management/',
  },
  TILAPIAGLAND: {
    citation:
      'Induced breeding of Clarias gariepinus and Heterobranchus bidorsalis with ' +
      'acetone-dried tilapia pituitary. Federal University of Agriculture, Abeokuta ' +
      '(abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  BIDOR04: {
    citation: 'Heterobranchus bidorsalis and exogenous hormones. 2004. Aquaculture 242:229-236',
    standing: 'seen',
    note: 'catalogue record only',
  },
  LONGIHCG: {
    citation:
      'Seasonal changes in sexual maturity and fecundity and hCG-induced breeding of ' +
      'Heterobranchus longifilis in Ebrie lagoon (journal abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  WORLDAQ25: {
    citation:
      'Role of latency period on breeding indices of Clarias gariepinus. World aquaculture ' +
      'conference 2025 (abstract)',
    standing: 'seen',
    note: 'abstract only; 8, 10 and 12 h compared at 26 to 27 °C',
  },
  AUDU23: {
    citation:
      'Audu S.I., Onyia E.C., Onyia L.U. 2023. Global Journal of Fisheries Science 5(1), article 108CC07C1',
    standing: 'seen',
    note: 'abstract only; the temperature is not given there',
  },
  AGBEBI: {
    citation:
      'Agbebi O.T., Faseluka O., Idowu A.A. Effects of various latency periods on Clarias ' +
      'gariepinus. Journal of Fisheries and Aquatic Science (abstract)',
    standing: 'seen',
    note: 'abstract only; the hormone is not named there',
  },
  SILVERLAT: {
    citation: 'Timing of hypophysation in the silver carp and the concept of latency time (journal abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  SALMAN23: {
    citation:
      'Salman N.A., Al-Noor S.S., Khalaf K.A. Thermal accumulated period of grass carp ' +
      '(abstracts, International Journal of Environmental Research, 2023 3(2):99-108 and ' +
      'companion)',
    standing: 'seen',
    note: 'abstracts only',
  },
  ACEH19: {
    citation:
      'Effect of water pH on hatching and survival of Clarias gariepinus. Aceh Journal of ' +
      'Animal Science, August 2019',
    standing: 'seen',
    note: 'abstract only; 28.0 ± 1.0 °C, pH 6.1 to 8.8',
  },
  AMPCLARIAS: {
    citation: 'Add-my-Pet collection, data file for Clarias gariepinus (timing credited there to FishBase)',
    standing: 'seen',
    url: 'https://github.com/add-my-pet/DEBtool_M',
  },
  UKAKALU: {
    citation:
      'Uka A., Kalu S.E. Neighbourhood boreholes and Clarias gariepinus egg hatching. ' +
      'Journal of Applied Sciences and Environmental Management (abstract)',
    standing: 'seen',
    note: 'abstract only; the temperature is not given there',
  },
  SPREAD01: {
    citation:
      'Fry cannibalism and hatching order in African catfish. 2001. Journal of Aquatic ' +
      'Sciences 16:1-6 (abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  BIDORLARV14: {
    citation: 'Embryonic and larval stages of Heterobranchus bidorsalis. 2014. SpringerPlus 3:677',
    standing: 'seen',
    note: 'abstract only; 28.5 ± 0.5 °C',
  },
  HOU15: {
    citation:
      'Hou C.H., Siew I.N. 2015. Nutritional transition period in early larvae of Clarias ' +
      'gariepinus. Malaysian Society of Analytical Sciences (abstract)',
    standing: 'seen',
    note: 'abstract only; 27.5 to 28.6 °C',
  },
  PROKES15: {
    citation:
      'Prokesova M., Drozd B., Kouril J., Stejskal V., Matousek J. 2015. Effect of water ' +
      'temperature on early life history of African sharp-tooth catfish. Journal of ' +
      'Applied Ichthyology, pp. 18-29',
    standing: 'seen',
    note: 'abstract only; 33 constant temperatures from 17.4 to 35.6 °C',
  },
  KAMLER02: {
    citation:
      'Kamler E. 2002. Ontogeny of yolk-feeding fish: an ecological perspective. Reviews ' +
      'in Fish Biology and Fisheries 12:79-103',
    standing: 'seen',
    note: 'abstract only',
    doi: '10.1023/A:1022603204337',
  },
  CARPZERO: {
    citation:
      'Thesis on the biological zero of common carp embryos, tables 4.2 and 4.3 (in ' +
      'Vietnamese; public extract)',
    standing: 'seen',
    note: 'extract only',
  },
  CHANNELDD: {
    citation:
      'Degree-days as a tool to determine the heating requirement for channel catfish ' +
      'spawning in earthen ponds (journal abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  RANACONE: {
    citation:
      'Rana K. Conical and round-bottomed containers for incubating Oreochromis eggs (journal abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  RANATEMP: {
    citation:
      'Rana K. Influence of incubation temperature on Oreochromis niloticus eggs and fry, ' +
      'part II (journal abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  KARONGA: {
    citation: 'Temperature-dependent egg development rates of Oreochromis karongae (journal abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  NWOSU00: {
    citation:
      'Nwosu F.M., Holzlohner S. 2000. Journal of Applied Ichthyology 16(1):20-23 ' +
      '(Heterobranchus longifilis)',
    standing: 'seen',
    note: 'newsletter summary only',
  },
  SWING: {
    citation:
      'Improving on-farm hatchability of Clarias gariepinus by narrowing the temperature ' +
      'range. Cameroon Journal of Agricultural Science (abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
});
