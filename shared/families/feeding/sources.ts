import { sources } from '../../functions/source';

/** A figure read only in an abstract or a copy says so in its note. */
export const feedingSources = sources({
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
});
