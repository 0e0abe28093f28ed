import { LOG_COLUMNS, readLog } from '../../shared/dosing/log';
import { vatAdvice } from '../../shared/dosing/vat';
import { eventsOf } from '../../shared/dosing/events';
import { keptOf, keptText, readKept } from '../../taskpane/pane/kept';
import { placeOf } from '../../taskpane/pane/places';
import { tick } from '../../taskpane/pane/clock';
import { textsOf } from '../../taskpane/screens/dose/state/dose';
import { changeSetting } from '../../taskpane/screens/settings/commands/settings';
import { SETUP } from '../dosing/support/lines';
import type { FakeWorld } from './fakePort';
import { fakeWorld } from './fakePort';
import type { Page } from './page';
import { openPage } from './page';

/** Dosing at the vat, driven by what is on the screen. */

const keys = async (page: Page, text: string): Promise<void> => {
  for (const face of text) {
    page.one(face === '.' ? '#key-point' : face === '>' ? '#key-next' : `#key-${face}`).click();
    await page.store.idle();
  }
};
const press = async (page: Page, selector: string): Promise<void> => {
  page.one(selector).click();
  await page.store.idle();
};
const setUp = async (page: Page, more: Readonly<Record<string, string>> = {}): Promise<void> => {
  const texts = { volume: '600', temperature: '26', spoon: '1', stocked: 'no', ...more };
  for (const [key, text] of Object.entries(texts)) await page.type(`#dose-${key}`, text);
  await press(page, '#dose-ready');
};
const atVat = async (world = fakeWorld(), more: Readonly<Record<string, string>> = {}): Promise<Page> => {
  const page = openPage('ready', world, 'vat');
  await page.go('dose');
  await setUp(page, more);
  return page;
};
/** The clock goes on by minutes. */
const later = (page: Page, minutes: number): void => {
  page.world.now += minutes / 1440;
  page.store.send(tick, page.world.now);
};
const read = async (page: Page, text: string, minutes = 15): Promise<void> => {
  later(page, minutes);
  await keys(page, text);
  await press(page, '#key-write');
};
const big = (page: Page): string => (page.one('#card-answer .big').textContent ?? '').trim();
const answer = (page: Page): string => page.one('#card-answer').textContent ?? '';
const logIn = (world: FakeWorld) =>
  readLog([LOG_COLUMNS.map(({ heading }) => heading), ...world.logged]).lines;

test('what is missing of the set-up is said beside its field, and nothing is logged', async () => {
  const page = openPage('ready', fakeWorld(), 'vat');
  await page.go('dose');
  await press(page, '#dose-ready');
  expect(page.text()).toContain('Water in the vat: a number is needed');
  expect(document.activeElement?.id).toBe('dose-volume');
  expect(page.world.logged).toEqual([]);
});

test('from the set-up to the end: each line stands in the log at once, and the advice is the engine’s', async () => {
  const page = await atVat();
  expect(big(page)).toContain('Read the pH');
  await read(page, '5.1');
  expect(big(page)).toContain('Air first');
  expect(page.one('#dose-what-aired').getAttribute('aria-pressed')).toBe('true');
  await read(page, '5.5>5.5', 60);
  const events = eventsOf(logIn(page.world));
  const advice = vatAdvice({ ...SETUP, litres: 600, celsius: 26, spoons: [1] }, events);
  expect(advice.action).toBe('dose');
  expect(big(page)).toContain('Give');
  expect(answer(page)).toContain('Goggles and gloves');
  await press(page, '#dose-given');
  expect(logIn(page.world).map(({ what, ph, again, grams }) => [what, ph, again, grams])).toEqual([
    ['filled', null, null, null],
    ['reading', 5.1, null, null],
    ['aired', 5.5, 5.5, null],
    ['dose', null, null, expect.closeTo(advice.measures?.grams ?? NaN, 6)],
  ]);
  expect(big(page)).toContain('Mix, then read');
  expect(page.one('#dose-vat-0').textContent).toContain('mixing 15:00');
  later(page, 5);
  expect(page.one('#dose-vat-0').textContent).toContain('mixing 10:00');
  // The dose has robbed the water of gas: what stands at 6.9 now is not the end yet.
  await read(page, '6.9');
  expect(big(page)).toContain('Air first');
  await read(page, '6.8', 60);
  expect(big(page)).toContain('Done');
  expect(answer(page)).toContain('pH 6.80 is in the window');
});

test('the spoon of the dose card and of Settings is one value, at every vat', async () => {
  const page = await atVat();
  expect(page.store.state().settings.spoon).toBe('1');
  page.store.send(changeSetting, { spoon: '2.5' });
  await page.store.idle();
  for (const name of ['1', '2']) expect(textsOf(page.store.state(), name).spoon).toBe('2.5');
  page.store.send(changeSetting, { spoon: '' });
  await page.store.idle();
  expect(textsOf(page.store.state(), '1').spoon).toBe('');
});

test('another amount than the spoons hold is logged as typed', async () => {
  const page = await atVat();
  await read(page, '5.1');
  await read(page, '5.5>5.5', 60);
  await page.type('#field-grams', '0,8');
  await press(page, '#dose-given');
  expect(logIn(page.world).at(-1)).toMatchObject({ what: 'dose', grams: 0.8, product: 'soda ash' });
});

test('a reading no vat can show is refused beside the keys and not logged; a slip can be taken back', async () => {
  const page = await atVat();
  await read(page, '1.2');
  expect(answer(page)).toContain('pH 1.2 is no reading of a vat');
  expect(logIn(page.world)).toHaveLength(1);
  await press(page, '#key-erase');
  await press(page, '#key-erase');
  await press(page, '#key-erase');
  await read(page, '6.1');
  await read(page, '9.1');
  expect(big(page)).toContain('Read again');
  expect(answer(page)).toContain('pH 9.10 was read');
  await press(page, '#line-back');
  expect(logIn(page.world).map(({ ph }) => ph)).toEqual([null, 6.1]);
  expect(big(page)).toContain('Air first');
});

test('the second vat takes everything over from the first; the list shows the state of each', async () => {
  const page = await atVat();
  await read(page, '5.1');
  await press(page, '#dose-vat-1');
  await press(page, '#dose-same-0');
  expect(logIn(page.world).at(-1)).toMatchObject({ what: 'filled', vat: '2', litres: 600 });
  await read(page, '6.9');
  expect(['#dose-vat-0', '#dose-vat-1'].map((id) => page.one(id).textContent)).toEqual([
    expect.stringContaining('air'),
    expect.stringContaining('done'),
  ]);
});

test('closed in the middle, it goes on: typed keys, set-up and clock come back', async () => {
  const page = await atVat();
  await read(page, '5.1');
  await read(page, '5.5>5.5', 60);
  await press(page, '#dose-given');
  await keys(page, '5.8');
  const places = [placeOf('vat')].flatMap((one) => one ?? []);
  const kept = readKept(keptText(keptOf(page.store.state(), places), 1))?.kept;
  if (!kept) throw new Error('nothing kept');
  const again = openPage('ready', page.world, 'about');
  again.store.change((state) => ({ ...state, kept }));
  again.store.send(tick, page.world.now);
  await again.go('dose');
  expect((again.one('#field-ph') as HTMLInputElement).value).toBe('5.8');
  expect(big(again)).toContain('Mix, then read');
  expect(again.one('#dose-vat-0').textContent).toContain('mixing 15:00');
});

test('only the workbook came along: the log gives back lines, litres and product; what it lacks is asked', async () => {
  const page = await atVat();
  await read(page, '5.1');
  const again = openPage('ready', page.world, 'vat');
  await again.go('dose');
  expect((again.one('#dose-volume') as HTMLInputElement).value).toBe('600');
  await again.type('#dose-temperature', '26');
  await again.type('#dose-stocked', 'no');
  await press(again, '#dose-ready');
  expect(big(again)).toContain('Air first');
  // Nothing is written twice.
  expect(logIn(again.world)).toHaveLength(2);
});

test('opened on an empty workbook the dosing goes on, and nothing is written there twice', async () => {
  const page = await atVat();
  await read(page, '5.1');
  const kept = readKept(
    keptText(
      keptOf(
        page.store.state(),
        [placeOf('vat')].flatMap((one) => one ?? []),
      ),
      1,
    ),
  )?.kept;
  if (!kept) throw new Error('nothing kept');
  const elsewhere = fakeWorld();
  const again = openPage('ready', elsewhere, 'about');
  again.store.change((state) => ({ ...state, kept }));
  again.store.send(tick, page.world.now);
  await again.go('dose');
  expect(big(again)).toContain('Air first');
  expect(elsewhere.logged).toEqual([]);
  await read(again, '6.9', 60);
  expect(big(again)).toContain('Done');
  expect(logIn(elsewhere).map(({ what, ph }) => [what, ph])).toEqual([['aired', 6.9]]);
});

test('the meter in its buffer: a line of its own, taken off every reading, said', async () => {
  const page = await atVat();
  await press(page, '#dose-what-meter-check');
  await read(page, '6.8');
  expect(logIn(page.world).at(-1)).toMatchObject({ what: 'meter check', number: 6.8, unit: 'buffer 7' });
  await read(page, '5.1');
  expect(page.one('#dose-more').textContent).toContain('0.2 too little in its buffer');
});

test('new water begins another dosing; the name of who writes stands beside each line', async () => {
  const page = await atVat(fakeWorld(), { who: 'Ama' });
  await read(page, '6.9');
  expect(big(page)).toContain('Done');
  await press(page, '#dose-new-water');
  expect(big(page)).toContain('Read the pH');
  expect(new Set(logIn(page.world).map(({ who }) => who))).toEqual(new Set(['Ama']));
});

test('fish in the vat: ammonia is asked for before anything is given', async () => {
  const page = await atVat(fakeWorld(), { stocked: 'yes', origin: 'aerated' });
  await read(page, '5.5>5.5');
  expect(big(page)).toContain('Stop: ammonia');
  expect(page.all('#dose-given')).toEqual([]);
});
