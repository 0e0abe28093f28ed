import { expectKept } from '../../support/kept';
import { drawn } from '../support/drawn';
import { openPage } from '../support/page';

/** The form of one run: empty, with its example, with bad input; every field, default and sentence. */
test('one run', async () => {
  const page = openPage();
  const empty = drawn();
  await page.press('Fill in an example');
  const filled = drawn();
  for (const field of page.all('input').filter(({ id }) => id !== '')) await page.type(`#${field.id}`, '-1');
  expectKept('pane-plan', { empty, filled, bad: drawn() });
});

test('a season', async () => {
  const page = openPage();
  page.one('#mode-season').click();
  const empty = drawn();
  await page.press('Fill in an example');
  expectKept('pane-season', { empty, filled: drawn() });
});
