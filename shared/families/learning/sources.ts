import { sources } from '../../functions/source';

/** Methods of learning from the farm's own runs and of watching them. */
export const learningSources = sources({
  NISTSIRSTV: {
    citation:
      'National Institute of Standards and Technology. Statistical Reference Datasets, analysis of variance, ' +
      'SiRstv: resistivity of silicon, five instruments, five readings each, with certified values',
    standing: 'seen',
    note: 'data and certified values read in two public reprints that agree',
  },
  GELMAN13: {
    citation:
      'Gelman A., Carlin J.B., Stern H.S., Dunson D.B., Vehtari A., Rubin D.B. 2013. ' +
      'Bayesian Data Analysis, 3rd ed., sections 5.3 (rat tumours, beta-binomial) and 5.4 ' +
      '(normal model)',
    standing: 'memory',
    note: 'the rat example with its data and posterior mode was read in the public PyMC example gallery',
  },
  ROVER20: {
    citation:
      'Röver C. 2020. Bayesian random-effects meta-analysis using the bayesmeta R package. ' +
      'Journal of Statistical Software 93(6):1-51',
    standing: 'seen',
    doi: '10.18637/jss.v093.i06',
    note: 'abstract, and the printed example of the package with its numbers',
  },
  SCHMIDLI14: {
    citation:
      "Schmidli H., Gsteiger S., Roychoudhury S., O'Hagan A., Spiegelhalter D., " +
      'Neuenschwander B. 2014. Robust meta-analytic-predictive priors in clinical trials ' +
      'with historical control information. Biometrics 70(4):1023-1032',
    standing: 'seen',
    note: 'abstract',
  },
  EFRONMORRIS71: {
    citation:
      'Efron B., Morris C. 1971. Limiting the risk of Bayes and empirical Bayes ' +
      'estimators, part I: the Bayes case. Journal of the American Statistical Association ' +
      '66(336):807-815',
    standing: 'seen',
    note: 'abstract; the form of the rule is from memory',
  },
  RUBIN81: {
    citation:
      'Rubin D.B. 1981. Estimation in parallel randomized experiments. Journal of ' +
      'Educational Statistics 6(4):377-401',
    standing: 'memory',
    note: 'its eight results were read in the printed example of the bayesmeta package',
  },
  TARONE82: {
    citation:
      'Tarone R.E. 1982. The use of historical control information in testing for a trend ' +
      'in proportions. Biometrics 38:215-220',
    standing: 'memory',
    note: 'its 71 counts were read in the public PyMC example gallery',
  },
  SKELLAM48: {
    citation:
      'Skellam J.G. 1948. A probability distribution derived from the binomial ' +
      'distribution by regarding the probability of success as variable between the sets ' +
      'of trials. J. R. Stat. Soc. B 10:257-261',
    standing: 'memory',
  },
  WILLIAMS75: {
    citation:
      'Williams D.A. 1975. The analysis of binary responses from toxicological experiments ' +
      'involving reproduction and teratogenicity. Biometrics 31:949-952',
    standing: 'memory',
  },
  MARSAGLIA04: {
    citation: 'Marsaglia G. 2004. Evaluating the normal distribution. Journal of Statistical Software 11(4)',
    standing: 'memory',
  },
  LANEY02: {
    citation: 'Laney D.B. 2002. Improved control charts for attributes. Quality Engineering 14(4):531-537',
    standing: 'seen',
    doi: '10.1081/QEN-120003555',
    note: 'title page of the paper; the formulas in public documentation of statistical software',
  },
  NISTPCHART: {
    citation: 'NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.3.2 Proportions control charts',
    standing: 'memory',
    url: 'https://www.itl.nist.gov/div898/handbook/pmc/section3/pmc332.htm',
    note: 'its centre line of 0.2313 was read in a textbook exercise',
  },
  NELSON84: {
    citation:
      'Nelson L.S. 1984. The Shewhart control chart: tests for special causes. Journal of ' +
      'Quality Technology 16(4):237-239',
    standing: 'seen',
    note:
      'as restated in public documentation of statistical software: one point beyond three ' +
      'sigma, nine in a row on one side',
  },
});
