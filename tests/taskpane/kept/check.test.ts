import { expectKept } from '../../support/kept';
import { drawn } from '../support/drawn';
import type { FakeWorld } from '../support/fakePort';
import { fakeWorld } from '../support/fakePort';
import { openPage } from '../support/page';

/** Runs of an invented farm with three slips in it: a decimal point, a share above one, days the wrong way round. */
const rows = Array.from({ length: 14 }, (_, i) => [
  46_000 + 7 * i - (i === 9 ? 200 : 0),
  `F${1 + (i % 3)}`,
  i === 4 ? 262 : 26 + (i % 2),
  81_233 + 137 * i * i,
  Math.round((i === 6 ? 1.2 : 0.5 + 0.01 * (i % 4)) * (81_233 + 137 * i * i)),
]);
function recordsWorld(): FakeWorld {
  const values = [['Date', 'Female', 'Water temperature', 'Eggs', 'Hatched'], ...rows];
  const world = fakeWorld();
  world.records = {
    sheets: [
      {
        name: 'Runs',
        top: 0,
        left: 0,
        values,
        formats: values.map((line) => line.map((_, c) => (c === 0 ? 'yyyy-mm-dd' : 'General'))),
      },
    ],
    again: { sheet: 'Runs' },
  };
  return world;
}

test('records checked, and what is learned from them', async () => {
  const page = openPage('ready', recordsWorld(), 'why');
  await page.go('check');
  await page.press('This sheet');
  const checked = drawn();
  await page.press('Show our rates and trends');
  expectKept('pane-check', { checked, learned: drawn() });
});
