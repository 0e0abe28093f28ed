import { learnRates } from '../../shared/learn/learn';
import { ratesToAssumptions, ratesToFigures } from '../../shared/learn';
import { trendsOf } from '../../shared/learn/trends';
import { expectKept } from '../support/kept';
import { demoFarm } from './support/demoFarm';

/** What a farm of many runs, of few, and of one learns; every figure. */
test.each([1, 4, 24])('a farm of %i runs', (runs) => {
  const rates = learnRates(demoFarm(runs, 11));
  expectKept(`learned-${runs}`, {
    rates,
    assumptions: ratesToAssumptions(rates),
    figures: ratesToFigures(rates),
    trends: trendsOf(demoFarm(runs, 11)),
  });
});
