import { learnRates } from '../../../shared/learn';
import { ratesWorkbook } from '../../../shared/books/learn';
import { demoFarm } from '../../learn/support/demoFarm';
import { gridOf } from '../../season/support/support';
import { fakeWorld } from '../support/fakePort';
import type { Page } from '../support/page';
import { openPage } from '../support/page';

/** Own rates, written by Check as a sheet, taken into the plan of a season. */

const rates = (runs: number) => {
  const [sheet] = ratesWorkbook(learnRates(demoFarm(runs))).sheets;
  if (!sheet) throw new Error('no sheet');
  return gridOf(sheet);
};

async function opened(sheet: ReturnType<typeof gridOf> | undefined): Promise<Page> {
  const world = fakeWorld();
  world.rates = sheet;
  const page = openPage('ready', world);
  page.one('#mode-season').click();
  await page.press('Fill in an example');
  await page.press('Use our own rates');
  return page;
}

test('figures and spreads become the farm’s own, are counted, and the plan uses them', async () => {
  const page = await opened(rates(60));
  expect(page.one('.notice').textContent).toMatch(
    /\d+ figures of the season, and how much they vary, are now your own, from the sheet Rates\./,
  );
  expect(page.one('#season-kept').textContent).toMatch(/\d+ figures of the plan are your own/);
  await page.press('Work the plan out');
  const { made } = page.store.state().season;
  expect(made?.book.assumptions.hatch).toBeCloseTo(0.5, 1);
  expect(made?.book.spreads.hatch?.runs).toBeGreaterThan(0.05);
  await page.press('Go back to the published figures');
  expect(page.one('#season-kept').textContent).toContain('published ones');
  expect(page.store.state().season.form.kept).toEqual({});
});

test('no sheet of rates, or one without a run: a sentence, the form as it was', async () => {
  for (const [sheet, says] of [
    [undefined, 'There is no sheet of rates in this workbook'],
    [rates(0), 'No run of yours speaks of a figure'],
  ] as const) {
    const page = await opened(sheet);
    expect(page.one('.notice').textContent).toContain(says);
    expect(page.store.state().season.form.kept).toEqual({});
  }
});
