import type { Cell } from '../../shared/base/values';
import { LOG_COLUMNS } from '../../shared/dosing/log';
import { readKept } from '../../taskpane/pane/keeping/kept';
import { keptOf, keptText } from '../../taskpane/pane/keeping/kept';
import { placeOf } from '../../taskpane/pane/frame/places';
import { fakeWorld } from './fakePort';
import type { Page } from './page';
import { openPage } from './page';

/** The cards at the vat: keys, answers, lines in the book at once, the clock. */

const keys = async (page: Page, ...faces: readonly string[]): Promise<void> => {
  for (const face of faces) {
    page.one(`#key-${face}`).click();
    await page.store.idle();
  }
};
const open = async (card: string, page = openPage('ready', fakeWorld(), 'vat')): Promise<Page> => {
  page.one(`#card-${card}`).click();
  await page.store.idle();
  return page;
};
/** The filled cells of a line by what they are, without its moment. */
const named = (row: readonly Cell[]): Record<string, Cell> =>
  Object.fromEntries(
    LOG_COLUMNS.flatMap(({ key }, i) => (key === 'at' || row[i] === null ? [] : [[key, row[i] ?? null]])),
  );
const answer = (page: Page): string => (page.one('#card-answer').textContent ?? '').replaceAll('\u202f', ' ');

test('a weighed female: 1.4 kg at 0.5 mL per kg is 0.70 mL, and both are lines at once', async () => {
  const page = await open('weigh');
  await keys(page, '1', 'point', '4');
  // 1.4 × 0.5 by hand.
  expect(answer(page)).toContain('0.70 mL');
  expect(answer(page)).toContain('vet');
  await keys(page, 'write');
  expect(page.world.logged.map((row) => named(row))).toEqual([
    { vat: '1', what: 'female weight', number: 1.4, unit: 'kg' },
    { vat: '1', what: 'hormone', number: 0.7, unit: 'mL' },
  ]);
  expect(page.world.logged[0]?.[0]).toBe(page.world.now);
});

test('the next female starts with an empty weight; the dose per kilogram stays', async () => {
  const page = await open('weigh');
  await keys(page, '1', 'write');
  expect((page.one('#field-weight') as HTMLInputElement).value).toBe('');
  expect((page.one('#field-rate') as HTMLInputElement).value).toBe('0.5');
});

test('what is missing is named, and nothing is written', async () => {
  const page = await open('eggs');
  await keys(page, '2', '0', 'write');
  expect(page.world.logged).toEqual([]);
  expect(page.text()).toContain('Sample 1');
});

test('a number beyond its limits is told, and nothing is written', async () => {
  const page = await open('weigh');
  // 30 kg is just inside, 31 kg outside.
  await keys(page, '3', '0');
  expect(answer(page)).toContain('15.00 mL');
  await keys(page, 'erase', '1', 'write');
  expect(answer(page)).toContain('not above 30');
  expect(page.world.logged).toEqual([]);
});

test('the last line is taken back, in the pane and in the sheet', async () => {
  const page = await open('dead');
  await keys(page, '1', '2', 'write');
  expect(page.world.logged).toHaveLength(1);
  page.one('#line-back').click();
  await page.store.idle();
  expect(page.world.logged).toEqual([]);
  expect(page.store.state().vat.lines).toEqual([]);
});

test('without a workbook lines wait, and go into it when one arrives', async () => {
  const page = await open('dead', openPage('absent', fakeWorld(), 'vat'));
  await keys(page, '7', 'write');
  expect(page.world.logged).toEqual([]);
  page.one('#card-back').click();
  await page.store.idle();
  expect(page.text()).toContain('1 line waits');
  const { hostArrived } = await import('../../taskpane/pane/frame/hostArrived');
  page.store.send(hostArrived, 'ready');
  await page.store.idle();
  expect(page.world.logged.map((row) => named(row).number)).toEqual([7]);
  expect(page.text()).not.toContain('waits');
});

test('a bath starts a clock that rings once when its minutes are over', async () => {
  const page = await open('formalin');
  await keys(page, '2', '0', 'next', '2', '0', '0', 'write');
  expect(page.text()).toContain('15:00 left');
  const { tick } = await import('../../taskpane/pane/clock');
  const { ringTimer } = await import('../../taskpane/screens/vat/commands/notebook');
  page.store.send(tick, page.world.now + 14.9 / 1440);
  page.store.send(ringTimer);
  expect(page.store.state().vat.timer?.hasRung).toBe(false);
  page.store.send(tick, page.world.now + 15.1 / 1440);
  page.store.send(ringTimer);
  expect(page.store.state().vat.timer?.hasRung).toBe(true);
  expect(page.text()).toContain('time is over');
});

test('what was typed and noted comes back when the pane is opened again', async () => {
  const page = await open('dead');
  await keys(page, '5', 'write', '3');
  const places = (['vat', 'plan', 'today'] as const).flatMap((id) => placeOf(id) ?? []);
  const kept = readKept(keptText(keptOf(page.store.state(), places), 1))?.kept;
  if (!kept) throw new Error('nothing kept');
  const again = openPage('absent', fakeWorld(), 'about');
  again.store.change((state) => ({ ...state, kept }));
  await again.go('vat');
  expect(again.store.state().vat.lines.map(({ value }) => value)).toEqual([5]);
  expect((again.one('#field-dead') as HTMLInputElement).value).toBe('3');
});

test('water measured at the vat stands in the columns of its kind, so that a dosing can read it', async () => {
  const page = await open('water');
  await keys(page, '2', '6', 'next', '6', 'point', '4', 'write');
  expect(page.world.logged.map((row) => named(row))).toEqual([
    { vat: '1', what: 'reading', celsius: 26 },
    { vat: '1', what: 'reading', ph: 6.4 },
  ]);
});

test('the lines of the workbook are read back when the pane opens; what was put right there is right here', async () => {
  const page = await open('dead');
  await keys(page, '5', 'write');
  const at = LOG_COLUMNS.findIndex(({ key }) => key === 'number');
  const row = [...(page.world.logged[0] ?? [])];
  row[at] = 6;
  page.world.logged[0] = row;
  const again = openPage('ready', page.world, 'vat');
  await again.store.idle();
  expect(again.store.state().vat.lines.map(({ value, what }) => [what, value])).toEqual([['dead', 6]]);
});

test('kept text that is damaged or of another version is left aside', () => {
  expect(readKept('{"version":1,"kept"')).toBeUndefined();
  expect(readKept('{"version":0,"kept":{}}')).toBeUndefined();
  expect(readKept(42)).toBeUndefined();
});

test('pounds and °F are typed and read where somebody chose them; the book keeps kilograms and °C', async () => {
  const page = openPage('ready', fakeWorld(), 'vat');
  page.store.change((state) => ({ ...state, settings: { ...state.settings, units: 'imperial' } }));
  await open('weigh', page);
  expect(page.one('.tile').textContent).toContain('lb');
  await keys(page, '3', 'point', '1', 'write');
  // A pound is 0.45359237 kg exactly.
  expect(named(page.world.logged[0] ?? [])).toMatchObject({
    number: expect.closeTo(3.1 * 0.45359237, 9),
    unit: 'kg',
  });
  page.one('#card-back').click();
  await page.store.idle();
  expect(page.text()).toContain('3.10 lb');
  await open('water', page);
  await keys(page, '8', '1', 'write');
  expect(page.world.logged.at(-1)).toContainEqual(expect.closeTo((81 - 32) / 1.8, 9));
  // 45 °C is the highest taken: 113 °F.
  await keys(page, '1', '1', '4', 'write');
  expect(page.text()).toContain('not above 113');
});

test('what was typed in one kind of units is not taken for the other', async () => {
  const page = await open('weigh');
  await keys(page, '2');
  page.store.change((state) => ({ ...state, settings: { ...state.settings, units: 'imperial' } }));
  expect((page.one('#field-weight') as HTMLInputElement).value).toBe('');
});

test('a usual figure gives way to the first key, and is only shortened by the erasing key', async () => {
  const page = await open('feed');
  await keys(page, '9', 'next', '1', 'next', '5', 'next');
  const meals = (): string => (page.one('#field-meals') as HTMLInputElement).value;
  expect(meals()).toBe('4');
  await keys(page, '6');
  expect(meals()).toBe('6');
  await keys(page, 'erase', '1', '2');
  expect(meals()).toBe('12');
});

test('thirty fish weighed together count as a mean, twenty-nine are told to be few', async () => {
  const page = await open('grow');
  await keys(page, '2', '9', 'next', '2', '9');
  expect(answer(page)).toContain('1.00 g a fish');
  expect(answer(page)).toContain('Fewer than 30 fish');
  await keys(page, 'next', 'erase', 'erase', '3', '0');
  expect(answer(page)).not.toContain('Fewer than');
  await keys(page, 'write');
  expect(page.world.logged.map((row) => named(row))).toEqual([
    { vat: '1', what: 'weight of a fish', number: 0.9667, unit: 'g', note: '30 × 29 g' },
  ]);
});
