import { sources } from './source';

/** Counting, live food, feed, stocking, growth, grading. */
export const rearingSources = sources({
  WILS27: {
    citation:
      'Wilson E.B. 1927. Probable inference, the law of succession, and statistical ' +
      'inference. J. Am. Stat. Assoc. 22:209-212',
    standing: 'seen',
    note: 'formula read in secondary pages; the paper itself was not opened',
  },
  NEWC98: {
    citation:
      'Newcombe R.G. 1998. Two-sided confidence intervals for the single proportion: ' +
      'comparison of seven methods. Statistics in Medicine 17:857-872',
    standing: 'seen',
    url: 'https://studylib.net/doc/7960426/two-sided-confidence-intervals-for-the-single-proportion',
    note:
      'digits of table I read where several public test suites quote them alike; the paper ' +
      'itself was not opened',
  },
  NEWC98D: {
    citation:
      'Newcombe R.G. 1998. Interval estimation for the difference between independent ' +
      'proportions: comparison of eleven methods. Statistics in Medicine 17:873-890',
    standing: 'seen',
    note:
      'method 10; digits of table II read where several public test suites quote them ' +
      'alike; the paper itself was not opened',
  },
  COCH77: {
    citation:
      'Cochran W.G. 1977. Sampling Techniques, 3rd ed., Wiley, chapter 6 (ratio estimator and its variance)',
    standing: 'memory',
    note: 'textbook formula from memory; page not opened',
  },
  GARW36: {
    citation: 'Garwood F. 1936. Fiducial limits for the Poisson distribution. Biometrika 28:437-442',
    standing: 'seen',
    note:
      'limits for a count of 25 and for 0 read on statistics help pages that name the ' +
      'method; the paper itself was not opened',
  },
  ZOUD08: {
    citation:
      'Zou G.Y., Donner A. 2008. Construction of confidence limits about effect measures: ' +
      'a general approach. Statistics in Medicine 27:1693-1702',
    standing: 'memory',
    note: 'limits of a sum from the limits of its parts, used here on logarithms; page not opened',
  },
  SATT46: {
    citation:
      'Satterthwaite F.E. 1946. An approximate distribution of estimates of variance ' +
      'components. Biometrics Bulletin 2:110-114',
    standing: 'memory',
    note: 'degrees of freedom for a difference of two estimates; page not opened',
  },
  WICH88: {
    citation:
      'Wichura M.J. 1988. Algorithm AS 241: the percentage points of the normal ' +
      'distribution. Applied Statistics 37:477-484',
    standing: 'memory',
    note: 'coefficients recalled, checked against an independent library to 13 digits',
  },
  NISTT: {
    citation:
      "NIST/SEMATECH e-Handbook of Statistical Methods, upper critical values of Student's t distribution",
    standing: 'seen',
    url: 'http://www.itl.nist.gov/div898/handbook/',
    note: 'read in a reprint that agrees with two others',
  },
  HILL70: {
    citation: "Hill G.W. 1970. Algorithm 396: Student's t-quantiles. Communications of the ACM 13:619-620",
    standing: 'memory',
    note: 'first value only; refined on the exact distribution and checked against an independent library',
  },
  WILSHIL31: {
    citation:
      'Wilson E.B., Hilferty M.M. 1931. The distribution of chi-square. Proc. Natl Acad. Sci. USA 17:684-688',
    standing: 'memory',
    note: 'first value only; refined on the exact distribution',
  },
  ROSE537: {
    citation: 'Rose, course slides BIOL/MSCI 537: harvesting, hauling, measuring',
    standing: 'seen',
    url: 'https://www.scribd.com/document/816762188/Techniques',
  },
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
    url: 'https://www.worldfishcenter.org/content/hatchability-african-catfish-clarias-gariepinus-eggs-hapas-and-basins-diagnostic-study-1',
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
  CONC98: {
    citation:
      'Conceicao L.E.C. et al. 1998. Cost of growth in larval and juvenile African catfish ' +
      '(Clarias gariepinus) in relation to growth rate, food intake and oxygen ' +
      'consumption. Aquaculture 161:95-106',
    standing: 'seen',
    note: 'abstract: the two ends of each range; the line between them on logarithms is worked out here',
  },
  DRYMATTER: {
    citation: 'Dry matter of small fish, about 15 % of wet weight in larvae to 25 % in fingerlings',
    standing: 'memory',
    note: 'no publication at hand: weigh and dry a sample if it matters',
  },
  TIMM10: {
    citation:
      'Timmons M.B., Ebeling J.M. Recirculating Aquaculture (ammonia from feed: 0.092 x ' +
      'feed x protein share)',
    standing: 'memory',
    note: 'coefficient recalled: 0.16 x 0.80 x 0.80 x 0.90; page not opened',
  },
  BOYDFEED: {
    citation: 'Boyd C.E. Oxygen demand of aquaculture feed. Global Seafood Alliance, Advocate',
    standing: 'seen',
    url: 'https://www.globalseafood.org/advocate/oxygen-demand-aquaculture-feed',
  },
  NEW02: {
    citation: 'New M.B. 2002. FAO Fish. Tech. Paper 428, Annex 4 (hatching Artemia)',
    standing: 'seen',
    url: 'https://www.progressivegardening.com/freshwater-prawns/ph.html',
    note: 'read in a copy of the text',
  },
  LAVENS96: {
    citation: 'Lavens P., Sorgeloos P. (eds) 1996. FAO Fish. Tech. Paper 361, chapter 4 (Artemia)',
    standing: 'memory',
    note: 'formulas and ranges recalled; page not opened',
  },
  ASEM13: {
    citation: 'Asem A. 2013. New concepts for hatching quality (Artemia definitions)',
    standing: 'seen',
    url: 'https://en.engormix.com/aquaculture/aquaculture-industry/new-concepts-hatching-quality_a35524',
  },
  KKT1: {
    citation: 'Hatching characteristics of Artemia strain KKT1. J. Biol. Res. 2005',
    standing: 'seen',
    url: 'http://www.jbr.gr/papers20051/frm5-04.htm',
    note: 'one strain: measure your own batch',
  },
  CONETEST: {
    citation: 'Instructions for a nauplii-per-gram test: 1 g cysts in 1 L of 25 g/L salt, 25-29 °C, 24 h',
    standing: 'seen',
    note: 'never above 2 g/L in this test',
  },
  HECHT13: {
    citation:
      'Hecht T. 2013. A review of on-farm feed management practices for North African ' +
      'catfish. FAO Fish. Aquac. Tech. Paper 583:463-479',
    standing: 'seen',
    url: 'https://docslib.org/doc/87088/a-review-of-on-farm-feed-management-practices-for-north-african-catfish-clarias-gariepinus-in-sub-saharan-africa',
  },
  CHEP11: {
    citation:
      'Chepkirui-Boit V. et al. 2011. Growth performance, survival, feed utilization and ' +
      'nutrient utilization of African catfish larvae. Aquaculture Nutrition',
    standing: 'seen',
    url: 'https://aquafishcrsp.oregonstate.edu/biblio/growth-performance-survival-feed-utilization-and-nutrient-utilization-african-catfish-clarias',
  },
  FEEDFREQ: {
    citation: 'Effects of feeding frequency on fry and fingerlings of African catfish (abstract)',
    standing: 'seen',
    url: 'https://discovery.researcher.life/article/effects-of-feeding-frequency-on-fry-and-fingerlings-of-african-catfish-clarias-gariepinus/04f7346ce3e1388084cd38b3baf6b946',
  },
  BASH23: {
    citation:
      'Basharat H. et al. Effects of feeding levels on pond-raised African catfish. Sarhad ' +
      'J. Agriculture 39(1):166-173',
    standing: 'seen',
    url: 'https://researcherslinks.com/current-issues/Effects-of-Feeding-Levels-on-Production-Characteristics/14/1/5953/html',
  },
  ILJS: {
    citation: 'Int. J. Life Sci. (ILJS) stocking density study, fingerlings of 5.88 g',
    standing: 'seen',
    url: 'https://iljs.org.ng/index.php/iljs/article/view/216',
  },
  UYS85: {
    citation: 'Uys W., Hecht T. 1985. Aquaculture 47 (primary nursing of Clarias gariepinus)',
    standing: 'memory',
    note: 'low certainty; page not opened',
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
});
