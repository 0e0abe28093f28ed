import { sources } from '../../functions/source';

/** A figure read only in an abstract or a copy says so in its note. */
export const growthSources = sources({
  PIPER82: {
    citation:
      'Piper R.G. et al. 1982. Fish Hatchery Management. US Fish and Wildlife Service, pp. 79, 182, 185, 356',
    standing: 'seen',
    url: 'https://www.yumpu.com/en/document/view/48053267/fish-hatchery-management-fisheries-aquaculture/205',
  },
  YONG08: {
    citation:
      'Yong-Sulem S., Brummett R.E., Tchoumboue J. 2008. Tropicultura 26(1):39-42 ' +
      '(hatchability of African catfish eggs in hapas and basins)',
    standing: 'seen',
    url:
      ' ' +
      'https://www.worldfishcenter.org/content/hatchability-african-catfish-clarias-gariepinus-eggs-hapas-and-basins-diagnostic-study-1',
  },
  MAKERERE: {
    citation:
      'Makerere University dissertation: African catfish larvae at 50, 100 and 150 per litre for 28 days',
    standing: 'seen',
    url: 'https://dissertations.mak.ac.ug/handle/20.500.12281/16037',
    note: 'abstract',
  },
  AJANI15: {
    citation:
      'Ajani E.K., Orisasona O., Jenyo-Oni A. 2015. Growth and economic performance of ' +
      'Clarias gariepinus fry at various stocking densities. J. Fish. Livest. Prod.',
    standing: 'seen',
    note: 'abstract',
  },
  FAO362MONO: {
    citation: 'de Graaf G.J., Janssen H. 1996. FAO Fish. Tech. Paper 362, chapter 6 (monoculture)',
    standing: 'seen',
    url: 'http://www.fao.org/docrep/003/w3595e/w3595e07.htm',
  },
  MODULE7: {
    citation: 'Nigerian hatchery training module 7 (oxygen, pH, hardness guide)',
    standing: 'seen',
    url: 'https://www.scribd.com/document/891354173/Module-7',
    note: 'training sheet',
  },
  BOYDFEED: {
    citation: 'Boyd C.E. Oxygen demand of aquaculture feed. Global Seafood Alliance, Advocate',
    standing: 'seen',
    url: 'https://www.globalseafood.org/advocate/oxygen-demand-aquaculture-feed',
  },
  RICKER79: {
    citation: 'Ricker W.E. 1979. Growth rates and models. In: Fish Physiology VIII (specific growth rate)',
    standing: 'standard',
  },
  AQUATEXT: {
    citation: 'Specific growth rate page: growth rate = ration % / feed conversion ratio',
    standing: 'seen',
    note: 'the same page prints 4.615 for 30 to 60 g in 15 days; the correct value is 4.621',
  },
  IWAM81: {
    citation:
      'Iwama G.K., Tautz A.F. 1981. A simple growth model for salmonids in hatcheries. ' +
      'Can. J. Fish. Aquat. Sci. 38:649-656; Cho C.Y. 1992 (thermal growth coefficient)',
    standing: 'memory',
    note: 'formula seen on a farm advice page, papers not opened',
  },
  TGCPAGE: {
    citation:
      'Farm advice page with growth formulas: 10 to 350 g at 11 °C in 200 days gives 0.222 (x100 form)',
    standing: 'seen',
  },
  JOBL03: {
    citation:
      'Jobling M. 2003. The thermal growth coefficient (TGC) model of fish growth: a ' +
      'cautionary note. Aquaculture Research 34:581-584',
    standing: 'seen',
    url: 'https://scribd.com/document/522162971/jobling2003',
  },
  LEGE92: {
    citation:
      'Legendre M. et al. 1992. J. Fish Biology 40:59-79, growth of Clarias gariepinus at ' +
      '29.5 °C, digitised in an open data file',
    standing: 'seen',
    url: 'https://github.com/add-my-pet/DEBtool_M',
    note: 'origin of the day count not given',
  },
  SOLARPOND: {
    citation: 'Solar-induced water temperature and growth of Clarias gariepinus (abstract)',
    standing: 'seen',
    note: 'its 3.32 g/day is final weight / 90; the gain / 90 is 3.274',
  },
  HECHT88: {
    citation:
      'Hecht T., Appelbaum S. 1988. Observations on intraspecific aggression and coeval ' +
      'sibling cannibalism by larval and juvenile Clarias gariepinus. J. Zoology',
    standing: 'seen',
    url: 'https://cris.bgu.ac.il/en/publications/observations-on-intraspecific-aggression-and-coeval-sibling-canni',
    note: 'abstract',
  },
  CANNJUV: {
    citation:
      'Cannibalism of juvenile catfish Clarias gariepinus (abstract): two of 100 fish, ' +
      '27.2 and 42.4 g against 4.1 g at the start, caused over 68 % of deaths',
    standing: 'seen',
  },
  MWAN20: {
    citation:
      'Mwangi A.M., Ngugi C.C., Jumbe J.J., Oyoo-Okoth E. 2020. Grading frequency and ' +
      'cannibalism in African catfish. J. Aquac. Fish. Fish Sci. 3(2):222-231',
    standing: 'seen',
  },
  FULTON: {
    citation: 'Fulton condition factor, 100 x weight (g) / length (cm) cubed',
    standing: 'standard',
  },
  LONGIDENS09: {
    citation:
      'Stocking density of Heterobranchus longifilis larvae. 2009. Journal of Applied Aquaculture 21:183-195',
    standing: 'seen',
    note: 'abstract only; 15 per litre recommended of 1 to 25',
  },
  JANSSEN85: {
    citation: 'Janssen J. 1985. FAO GCP/CAF/007/NET field documents 20 and 21 (Clarias gariepinus)',
    standing: 'seen',
    note:
      '1.0 to 1.5 mg at hatch, 2 to 3 mg at first food, 30 to 50 mg at the end of ' +
      'metamorphosis, 1 g at 40 to 50 days',
    url: 'https://www.fao.org/4/AB641F/AB641F01.htm',
  },
  VERRETH99: {
    citation: 'Verreth J. 1999. Letter printed in Larviculture Newsletter 81, Ghent University',
    standing: 'seen',
    note: 'expert statement: 50 to 60 mg after a week of feeding, 100 to 150 after two, 300 to 500 after a month',
  },
  LAGOSGRADE: {
    citation: 'On-farm trial of sorting sieves, six farms in Lagos State (slides)',
    standing: 'seen',
    note: 'hatch to week 6: 70.8 ± 6.7 % graded by sieve, 60.7 ± 7.5 % by hand; to week 10 62.3 and 40.6 %',
  },
  ATAGUBA22: {
    citation:
      'Ataguba G.A., Okomoda V.T., Ukpong P. 2022. Livestock Research for Rural Development 34(11):106',
    standing: 'seen',
    note: 'larvae alive 98 % in river and 55 % in borehole water',
  },
  EBONYI: {
    citation: 'Water sources and breeding of Clarias gariepinus, Ebonyi State (abstract)',
    standing: 'seen',
    note: 'alive to day 4: 44 % in rain, 64 % in borehole water; hatch 69 to 93 %',
  },
  HLREAR94: {
    citation: 'Larval rearing of Heterobranchus longifilis. 1994. Aquatic Living Resources (abstract)',
    standing: 'seen',
    note: 'first 14 days: 79 to 92 % in one experiment, 61 to 73 % in the next with the same foods',
  },
});
