import { LOG_COLUMNS, readLog } from '../../../shared/dosing/log';
import { vatAdvice } from '../../../shared/dosing/vat';
import { eventsOf } from '../../../shared/dosing/events';
import { keptOf, keptText, readKept } from '../../../taskpane/pane/keeping/kept';
import { placeOf } from '../../../taskpane/pane/frame/places';
import { tick } from '../../../taskpane/pane/clock';
import { textsOf } from '../../../taskpane/screens/dose/state/dose';
import { openVats } from '../../../taskpane/screens/vat/commands/notebook';
import { changeSetting } from '../../../taskpane/screens/settings/commands/settings';
import { SETUP } from '../../dosing/support/lines';
import type { FakeWorld } from '../support/fakePort';
import { fakeWorld } from '../support/fakePort';
import type { Page } from '../support/page';
import { openPage } from '../support/page';

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
    // In the window as drawn, but above 8 perhaps once aired.
    expect.stringContaining('tomorrow'),
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
  expect(big(again)).toContain('No product; read again tomorrow');
  expect(logIn(elsewhere).map(({ what, ph }) => [what, ph])).toEqual([['aired', 6.9]]);
});

test('opened on an empty workbook and then on its own, no line counts twice', async () => {
  const page = await atVat();
  await read(page, '5.1');
  await read(page, '5.6>5.6', 60);
  await press(page, '#dose-given');
  const count = page.store.state().vat.lines.length;
  const places = [placeOf('vat')].flatMap((one) => one ?? []);
  const kept = readKept(keptText(keptOf(page.store.state(), places), 1))?.kept;
  if (!kept) throw new Error('nothing kept');
  const elsewhere = fakeWorld();
  const again = openPage('ready', elsewhere, 'about');
  again.store.change((state) => ({ ...state, kept }));
  again.store.send(tick, page.world.now);
  await again.go('dose');
  expect(again.store.state().vat.lines).toHaveLength(count);
  elsewhere.logged.push(...page.world.logged);
  again.store.send(openVats);
  await again.store.idle();
  expect(again.store.state().vat.lines).toHaveLength(count);
  expect(big(again)).toContain('Mix');
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
  expect(big(page)).toContain('No product; read again tomorrow');
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

test('gallons and °F are typed where somebody chose them, or behind a number; what was understood is said', async () => {
  const world = fakeWorld();
  const page = openPage('ready', world, 'vat');
  page.store.change((state) => ({ ...state, settings: { ...state.settings, units: 'imperial' } }));
  await page.go('dose');
  expect(page.one('label[for=dose-volume]').textContent).toContain('US gal');
  await page.type('#dose-volume', '150');
  await page.type('#dose-temperature', '78.8');
  await page.type('#dose-spoon', '0.2 oz');
  await page.type('#dose-stocked', 'no');
  // 150 US gallons of 3.785411784 L, 78.8 °F, a fifth of 28.349523125 g.
  expect(page.one('#dose-volume-said').textContent).toContain('Taken as 567.8 L');
  expect(page.one('#dose-temperature-said').textContent).toContain('Taken as 26 °C');
  expect(page.one('#dose-spoon-said').textContent).toContain('Taken as 5.67 g');
  // Another kind of units in Settings does not change what was typed.
  page.store.change((state) => ({ ...state, settings: { ...state.settings, units: 'metric' } }));
  await page.store.idle();
  expect(page.one('label[for=dose-volume]').textContent).toContain('US gal');
  await press(page, '#dose-ready');
  expect(logIn(world)[0]).toMatchObject({ what: 'filled', litres: expect.closeTo(150 * 3.785411784, 6) });
  page.store.change((state) => ({ ...state, settings: { ...state.settings, units: 'imperial' } }));
  await page.store.idle();
  expect(page.one('label[for=field-celsius]').textContent).toContain('Water °F');
  await read(page, '5.1>>77');
  expect(logIn(world).at(-1)).toMatchObject({ ph: 5.1, celsius: expect.closeTo(25, 9) });
});

test('a unit behind a number counts in metric set-ups too', async () => {
  const page = await atVat(fakeWorld(), { volume: '150 gal', temperature: '79 °F', spoon: '5; 1' });
  expect(logIn(page.world)[0]?.litres).toBeCloseTo(567.81, 2);
});

test('the way of the pH is drawn under the answer, with its numbers as a table', async () => {
  const page = await atVat();
  await read(page, '5.1');
  await read(page, '5.5>5.5', 60);
  expect(page.all('#picture-path')).toEqual([]);
  (page.one('#dose-more') as HTMLDetailsElement).open = true;
  page.one('#dose-more').dispatchEvent(new Event('toggle'));
  await page.store.idle();
  const picture = page.one('#picture-path');
  expect(picture.textContent).toContain('The way of the pH From 5.1 to');
  expect(picture.textContent).toContain('never above 8');
  expect(picture.querySelector('svg')?.getAttribute('aria-label')).toContain('The way of the pH');
  const rows = [...picture.querySelectorAll('tbody tr')].map((row) =>
    [...row.children].map((cell) => cell.textContent),
  );
  // Two readings, what is expected after the dose, and once aired: the last two with their ends.
  expect(rows.map(([label, ph]) => [label, ph]).slice(0, 2)).toEqual([
    [expect.stringMatching(/\d:\d\d/), '5.1'],
    [expect.stringMatching(/\d:\d\d/), '5.5'],
  ]);
  expect(rows.slice(2).map(([label]) => label)).toEqual(['next', 'aired']);
  for (const [, ph, low, high] of rows.slice(2)) {
    expect(Number(low)).toBeLessThanOrEqual(Number(ph));
    expect(Number(high)).toBeGreaterThanOrEqual(Number(ph));
  }
});

test('a storage tank says what is left in it and what raw water would make of it', async () => {
  const page = await atVat(fakeWorld(), { volume: '4000', kind: 'tank', spoon: '' });
  await read(page, '5.6');
  await read(page, '5.7>5.7', 60);
  expect(page.one('#tank-now').textContent).toMatch(/^4\s000 L in the tank now/);
  expect(page.one('#tank-now').textContent).toContain('45 minutes');
  expect(page.all('#tank-top-up')).toEqual([]);
  await press(page, '#dose-given');
  await read(page, '6.7', 45);
  await press(page, '#dose-vat-1');
  await page.type('#dose-volume', '600');
  await page.type('#dose-temperature', '26');
  await page.type('#dose-stocked', 'no');
  await page.type('#dose-sameAs', '1');
  await press(page, '#dose-ready');
  expect(logIn(page.world).at(-1)).toMatchObject({ what: 'from tank', vat: '2', litres: 600, note: '1' });
  await press(page, '#dose-vat-0');
  expect(page.one('#tank-now').textContent).toMatch(/^3\s400 L in the tank now; enough for 5 vats/);
  const topUp = page.one('#tank-top-up').textContent ?? '';
  expect(topUp).toMatch(/Topped up with 600 L of raw water: pH once aired about \d\.\d \(\d\.\d to \d\.\d\)/);
  await press(page, '#dose-what-refill');
  await page.type('#field-litres', '200');
  expect(page.one('#tank-top-up').textContent).toContain('Topped up with 200 L');
});
