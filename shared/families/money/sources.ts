import { sources } from '../../functions/source';

/** What only the season plan rests on; the rest of its figures name sources of the other lists. */
export const moneySources = sources({
  STERLETCHAIN: {
    citation:
      'Coursework (Russian) on sterlet brood stock: worked chain that adds the loss ' +
      'instead of dividing by the survival. cwetochki.ru, page 4',
    standing: 'seen',
    note: 'a counter-example: losing half needs twice the number, not one and a half times',
  },
  TP62: {
    citation: 'Effect of season on controlled propagation of Clarias gariepinus. 1990. Technical Paper 62',
    standing: 'seen',
    url: 'https://aquadocs.org/handle/1834/2436',
  },
  HYBRIDLARVAE: {
    citation: 'Hybrid catfish larvae on four diets for 28 days. Tropical Zoology (abstract)',
    standing: 'seen',
    url: 'https://ajol.info/index.php/tzool/article/view/52061',
    note: 'abstract only; a hybrid, not the pure species',
  },
  ALAWODE: {
    citation:
      'Alawode et al. Economic viability of Clarias gariepinus fingerlings production in Ibadan (abstract)',
    standing: 'seen',
    url: 'https://synapsesocial.com/papers/6a2f97a9a1cfeec490828b2d',
    note: 'abstract only; 31 hatcheries, costs of a cycle in naira, benefit-cost ratio 1.54',
  },
  THOMPSON14: {
    citation:
      'Thompson O.A., Mafimisebi T.E. 2014. Profitability of selected ventures in catfish ' +
      'aquaculture in Ondo State, Nigeria. Fisheries and Aquaculture Journal 5(2)',
    standing: 'seen',
    url: 'https://longdom.org/open-access/profitability-of-selected-ventures-in-catfish-aquaculture-in-ondo-state-nigeria-43199.html',
    note:
      'efficiency ratios are profitability plus one, and neither is the benefit-cost ratio ' +
      'printed beside them',
  },
  FEEDBUDGET: {
    citation: 'Landau M., Scarpa J. Teaching exercise 2. World Aquaculture magazine, 2009',
    standing: 'seen',
    url: 'https://was.org/Magazine/2009/01/11',
    note:
      'a counter-example: prints a break-even price of 0.884 $/kg, which is the feed ' +
      'alone; all costs ÷ fish sold is 6,754.04 ÷ 3,818 = 1.769',
  },
});
