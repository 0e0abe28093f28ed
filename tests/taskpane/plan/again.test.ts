import { bookSheetNames, booksIn } from '../../../shared/books/engine';
import { fakeWorld } from '../support/fakePort';
import { openPage } from '../support/page';

/** Which season is read again is asked only where there are several. */
const sheetsNamed = (...suffixes: readonly string[]): string[] =>
  suffixes.flatMap((suffix) => bookSheetNames('').map((name) => `${name}${suffix}`));

test.each([
  [[''], false],
  [[' June'], false],
  [['', ' June'], true],
])('seasons %j: asked which: %s', async (suffixes, isAsked) => {
  const world = fakeWorld();
  world.sheets = sheetsNamed(...suffixes);
  expect(booksIn(world.sheets)).toHaveLength(suffixes.length);
  const page = openPage('ready', world);
  await page.press('Plan again from this workbook');
  expect(page.all('#season-which').length > 0).toBe(isAsked);
  expect(world.asked.length > 0).toBe(!isAsked);
});
