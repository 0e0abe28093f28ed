import { lookForLeft } from '../../taskpane/pane/keeping/unfinished';
import type { LeftBehind } from '../../taskpane/host/port';
import { fakeWorld } from './support/fakePort';
import type { Page } from './support/page';
import { openPage } from './support/page';

async function opened(left: LeftBehind | undefined): Promise<Page> {
  const world = fakeWorld();
  world.left = left;
  const page = openPage('ready', world);
  page.store.send(lookForLeft);
  await page.store.idle();
  return page;
}

test('a writing that broke off is asked about, and taken away on a word', async () => {
  const page = await opened({ title: 'Season', sheets: ['Orders', 'Being written 3'] });
  expect(page.text()).toContain('“Season” was broken off the last time and left 2 sheets: “Orders”');
  await page.press('Take away');
  expect(page.text()).toContain('2 sheets of the broken-off writing taken away.');
  expect(page.world.left).toBeUndefined();
});

test('or left as it is', async () => {
  const page = await opened({ title: 'Season', sheets: ['Orders'] });
  await page.press('Leave as it is');
  expect(page.all('#question')).toHaveLength(0);
  expect(page.world.left).toBeUndefined();
});

test('where nothing was left nothing is asked; names that point nowhere go without a word', async () => {
  expect((await opened(undefined)).text()).not.toContain('broken off');
  const page = await opened({ title: 'Season', sheets: [] });
  expect(page.text()).not.toContain('broken off');
  expect(page.world.left).toBeUndefined();
});

test('a season half written over is put back from what the workbook keeps, or the pane says that it keeps nothing', async () => {
  const over = { suffix: '', strays: [] };
  const page = await opened({ title: 'Season', sheets: ['Orders', 'Calendar'], over });
  expect(page.text()).toContain('its sheets are half written. Put back what stood there?');
  await page.press('Put back what stood there');
  expect(page.text()).toContain('The workbook keeps nothing of that season any more');
});
