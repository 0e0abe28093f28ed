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
  OLUBIYI05: {
    citation:
      'Olubiyi O.A., Ayinla O.A., Adeyemo A.A. 2005. African Journal of Applied Zoology and ' +
      'Environmental Biology 7:101-105',
    standing: 'seen',
    note: 'abstract only; 0.2 to 0.5 mL/kg at 26.3 to 28.0 °C, latency 8 to 11.5 h, incubation 22 to 30 h',
  },
  NGUEKU15: {
    citation: 'Ngueku B.B. 2015. International Journal of Fisheries and Aquatic Studies 3(1):34-37',
    standing: 'seen',
    note: 'abstract only; the temperature is not given there',
  },
  GADISSA13: {
    citation: 'Gadissa S., Prabha Devi L. 2013. International Journal of Fisheries and Aquatic Studies 1(1)',
    standing: 'seen',
    note: 'abstract only; stripped at 13.5 h, incubated at 23 °C, hatched within 33 h',
  },
  MOSHAAND: {
    citation:
      'Moshaand S.S., Mlingi F.T. Pituitary dosage at constant latency in Clarias gariepinus (abstract)',
    standing: 'seen',
    note: 'abstract only; 26 to 28 °C, stripped at 17 h',
  },
  VILLANUEVA25: {
    citation: 'Villanueva R.C. 2025. Acta Natura et Scientia 6(1):32-36',
    standing: 'seen',
    note: 'abstract only; the temperature is not given there',
    doi: '10.61326/actanatsci.v6i1.347',
  },
  ATAGUBA24: {
    citation: 'Ataguba G.A., Abi A. 2024. Aquaculture Studies 24(1), AQUAST1154',
    standing: 'seen',
    note: 'abstract only; the temperature is not given there',
  },
  YULIANTI20: {
    citation:
      'Yulianti N., Utomo D.S.C., Putri B. 2020. Journal of Aquaculture, University of Bangka Belitung 5(2)',
    standing: 'seen',
    note: 'abstract only; 606 ± 18 minutes, the temperature is not given there',
  },
  DOCTOLERO: {
    citation: 'Doctolero J.S., Sotero D.S., Fajardo L.J. Journal of Fisheries, article 416',
    standing: 'seen',
    note: 'abstract only; the temperature is not given there',
  },
  LEGENDRE95: {
    citation: 'Legendre M., Oteme Z. 1995. Aquatic Living Resources 8:309-316',
    standing: 'seen',
    note: 'abstract only; Heterobranchus longifilis at 30 °C, hCG 1.5 IU/g',
    doi: '10.1051/alr:1995032',
  },
  LEGENDRE91: {
    citation: 'Legendre M., Teugels G.G. 1991. Aquatic Living Resources 4:227-240',
    standing: 'seen',
    note: 'summary only; Heterobranchus longifilis 26 to 33 h at 25 and 14 to 18 h at 33 °C',
  },
  NGUENGA04: {
    citation: 'Nguenga D., Teugels G.G., Legendre M., Ollevier F. 2004. Aquaculture Research 35:1358-1369',
    standing: 'seen',
    note: 'newsletter summary only; two strains of Heterobranchus longifilis at 29 °C',
  },
  NAJA16: {
    citation:
      'African catfish, Heterobranchus and their hybrids. 2016. North American Journal of Aquaculture 78:346-355',
    standing: 'seen',
    note: 'abstract only; hatch within 15 minutes of each other, fed from 72 h',
    doi: '10.1080/15222055.2016.1194926',
  },
  TSADU: {
    citation: 'Tsadu S.M., Yisa A.T., Etuh S.P. Journal of Aquatic Sciences, article 94104',
    standing: 'seen',
    note: 'abstract only; Clarias anguillaris with frog glands',
  },
});
