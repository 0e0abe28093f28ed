import { sources } from './source';

/**
 * Timing and brood fish of warm-water hatcheries. A figure read only in an abstract or a copy says so in its
 * note.
 */
export const timingBroodSources = sources({
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
  GRAAF95: {
    citation: 'de Graaf G.J., Galemoni F., Banzoussi B. 1995. Aquaculture Research 26(4):233-242',
    standing: 'seen',
    note: 'abstract only',
  },
  BRZUSKA03: { citation: 'Brzuska E. 2003. Czech Journal of Animal Science 48(5):181-190', standing: 'seen' },
  SUEZ: {
    citation:
      'Seasonal biology and artificial propagation of female Clarias gariepinus. Journal ' +
      'of Animal, Poultry and Fish Production, Suez Canal University (abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  SALEH: {
    citation:
      'Saleh H.H.E. et al. hCG at 500 to 6000 IU/kg in Clarias gariepinus. Journal of Zoological Research',
    standing: 'seen',
    note: 'abstract only',
  },
  SHOURBELA: {
    citation: 'Shourbela R.M. et al. Benha Veterinary Medical Journal (abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  SHARAF12: { citation: 'Sharaf S.M. 2012. Theriogenology 77:1709-1716', standing: 'seen' },
  READYMADE: {
    citation:
      'Extension page on the composition and dose of a ready-made salmon GnRHa and domperidone solution',
    standing: 'seen',
    note: '20 µg/mL salmon GnRHa and 10 mg/mL domperidone',
  },
  NEOTROP13: {
    citation: 'Five neotropical species, induced spawning. 2013. Natural Science 5(7A):1-6',
    standing: 'seen',
  },
  DADEBO00: {
    citation: 'Dadebo E. 2000. SINET: Ethiopian Journal of Science 23(2):231-246',
    standing: 'seen',
    note: 'preserved ovaries: 435 to 1176 eggs per gram, mean 669',
  },
  RURANGWA98: {
    citation: 'Rurangwa E. et al. 1998. Journal of Fish Biology 53(2):402-413',
    standing: 'seen',
    note: 'abstract only',
    doi: '10.1111/j.1095-8649.1998.tb00989.x',
  },
  IDAHOR18: {
    citation:
      'Idahor K.O. et al. 2018. International Journal of Innovative Studies in Aquatic ' +
      'Biology and Fisheries 4(1):7-12',
    standing: 'seen',
    note: '5.62e9 to 6.54e9 sperm per mL',
  },
  SOLOMON15: {
    citation: 'Solomon S.G. et al. 2015. International Journal of Aquaculture 5(29):1-5',
    standing: 'seen',
    note: '3.8e10 to 9.7e10 sperm per mL, ten times other counts',
  },
  SAIDU21: {
    citation: 'Saidu K.A. et al. 2021. International Journal of Aquaculture 11(1):1-11',
    standing: 'seen',
    note: '2.2 mL of milt from injected males of 1.2 kg',
  },
  MANSOUR04: {
    citation: 'Mansour N., Lahnsteiner F., Berger B. 2004. Aquaculture Research 35(3):232-244',
    standing: 'seen',
    note: 'newsletter summary only; milt kept 1:5 in a medium with 150 mM NaCl',
  },
  SALMONIDBOOK: {
    citation: 'United States Fish and Wildlife Service. Inland Salmonid Broodstock Handbook, p. 1-8',
    standing: 'seen',
  },
  NACAINBREED: {
    citation: 'Network of Aquaculture Centres in Asia-Pacific. Training of trainers, text on inbreeding',
    standing: 'seen',
    note: 'the relation to Ne was read there; dF = 1/(2 Ne) is the textbook formula',
  },
  FAORATE: {
    citation: 'Wageningen University breeding text quoting the advice of FAO on the rate of inbreeding',
    standing: 'seen',
  },
  FAO217: { citation: 'FAO/UNEP expert consultation. FAO Fisheries Technical Paper 217', standing: 'seen' },
  BENTSEN02: {
    citation:
      'Bentsen H.B., Olesen I. 2002. Designing aquaculture mass selection programs to ' +
      'avoid high inbreeding rates. Aquaculture 204(3)',
    standing: 'seen',
    note: 'abstract only',
  },
  BUSACK: {
    citation: 'Busack C. Impact of repeat spawning of males on effective number of breeders (abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  PEDIGREE: {
    citation:
      'Path coefficients of relationship (Wright 1922), textbook values: full sibs 0.5, half sibs 0.25',
    standing: 'standard',
  },
  KUHN55: {
    citation:
      'Kuhn H.W. 1955. The Hungarian method for the assignment problem. Naval Research ' +
      'Logistics Quarterly 2:83-97',
    standing: 'standard',
  },
  EGGFORMALIN10: {
    citation:
      'Formalin on eggs and larvae of African catfish. December 2010. Journal of Applied ' +
      'Sciences and Environmental Management 14(4):31-34',
    standing: 'seen',
    note: 'abstract only',
  },
  ANTIFUNGUS: {
    citation: 'Embryo-larval toxicity of anti-fungus chemicals used on Clarias gariepinus (journal abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  TROUTFORMALIN: {
    citation:
      'Formalin and hydrogen peroxide treatment regimes on rainbow trout eyed eggs (journal abstract)',
    standing: 'seen',
    note: 'abstract only',
  },
  FRYSALT11: {
    citation:
      'Sodium chloride as a prophylactic for Clarias gariepinus yolk-sac and swim-up fry. 2011. Aquaculture',
    standing: 'seen',
    note: 'abstract only',
  },
  GBULUBO98: {
    citation: 'Gbulubo A.J., Erondu E.S. 1998. Aquaculture International 6(5):369-377',
    standing: 'seen',
    note: 'newsletter summary only',
  },
  SRAC1803: {
    citation:
      'Steeby J., Avery J. 2005. Channel catfish broodfish and hatchery management. ' +
      'Southern Regional Aquaculture Center Publication 1803',
    standing: 'seen',
  },
  PIKEPLAN: { citation: 'Capacity calculation of a pike farm (Russian coursework)', standing: 'seen' },
});
