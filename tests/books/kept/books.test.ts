import { learnRates } from '../../../shared/learn/learn';
import { trendsOf } from '../../../shared/learn/trends';
import { ratesWorkbook } from '../../../shared/books/learn/ratesSheet';
import { trendsWorkbook } from '../../../shared/books/learn/trendsSheet';
import { summaryOf } from '../../../shared/books/summary';
import { dosingTemplate } from '../../../templates/dosing.template';
import { seasonPlanTemplate } from '../../../templates/season-plan.template';
import { demoFarm } from '../../learn/support/demoFarm';
import { expectKept, partsFrom } from '../../support/kept';

/** Every cell of every kind of book we write: place, formula, value, format. */

const season = seasonPlanTemplate();

test('the living book of one run: sheet by sheet what `npm run gen` kept', () => {
  expect(partsFrom('tests/golden/season-plan.json', season)).toEqual([]);
});

test('the dosing sheet', () => {
  expect(partsFrom('tests/golden/dosing.json', dosingTemplate())).toEqual([]);
});

test('the page for somebody who lends money', () => {
  const page = summaryOf(season);
  if ('fault' in page) throw new Error(page.fault);
  expectKept('summary', page.model);
});

test('learned rates and their trends', () => {
  expectKept('rates', ratesWorkbook(learnRates(demoFarm(20))));
  expectKept('trends', trendsWorkbook(trendsOf(demoFarm(20))));
});
