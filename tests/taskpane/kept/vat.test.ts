import { expectKept } from '../../support/kept';
import { drawn } from '../support/drawn';
import { fakeWorld } from '../support/fakePort';
import { openPage } from '../support/page';

/** Every card at the vat: empty, and with one more digit typed into each field it asks. */
test('the cards', async () => {
  const page = openPage('ready', fakeWorld(), 'vat');
  const cards = page.all('[id^=card-]').map(({ id }) => id);
  expect(cards.length).toBeGreaterThan(4);
  const seen: Record<string, unknown> = {};
  for (const id of cards) {
    page.one(`#${id}`).click();
    await page.store.idle();
    const empty = drawn();
    for (let digit = 3; digit < 9 && page.all(`#key-${digit}`).length > 0; digit++) {
      page.one(`#key-${digit}`).click();
      await page.store.idle();
      const next = page.all('#key-next')[0];
      next?.click();
      await page.store.idle();
    }
    seen[id] = { empty, typed: drawn() };
    if (page.all('#card-back').length === 0) break;
    await page.press('All cards');
  }
  expectKept('pane-cards', seen);
});
