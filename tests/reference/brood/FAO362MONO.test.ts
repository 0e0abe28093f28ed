/**
 * de Graaf G.J., Janssen H. 1996. FAO Fish. Tech. Paper 362, chapter 6
 * (http://www.fao.org/docrep/003/w3595e/w3595e07.htm): 10 fingerlings per m², after 6 months 10,000 kg per
 * hectare at 200 g. That half were alive was worked out by the project.
 */
import { findFunction } from '../../../shared/catalogue';
import { invoke } from '../../../shared/functions/invoke';
import '../../support/printed';

test('consistency: 10,000 kg of 200 g fish from 10 per m² means half were alive', () => {
  const fn = findFunction('SPAWN.SURVIVAL.IMPLIED');
  expect(fn && invoke(fn, [10 * 10000, 10000, 200])).toAgreeWithPrinted('0.50');
});
