import { sources } from './source';

/** What only the season plan rests on; the rest of its figures name sources of the other lists. */
export const planningSources = sources({
  STERLETCHAIN: {
    citation: 'Coursework (Russian) on sterlet brood stock: worked chain that adds the loss instead of dividing by the survival. cwetochki.ru, page 4',
    standing: 'seen',
    note: 'a counter-example: losing half needs twice the number, not one and a half times',
  },
  TP62: { citation: 'Effect of season on controlled propagation of Clarias gariepinus. 1990. Technical Paper 62', standing: 'seen', url: 'https://aquadocs.org/handle/1834/2436' },
  HYBRIDLARVAE: {
    citation: 'Hybrid catfish larvae on four diets for 28 days. Tropical Zoology (abstract)',
    standing: 'seen', url: 'https://ajol.info/index.php/tzool/article/view/52061', note: 'abstract only; a hybrid, not the pure species',
  },
});
