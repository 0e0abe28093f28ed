import type { Cell } from '../../../shared/base/values';
import { LOG_COLUMNS } from '../../../shared/dosing/log';
import { readKept } from '../../../taskpane/pane/keeping/kept';
import { keptOf, keptText } from '../../../taskpane/pane/keeping/kept';
import { placeOf } from '../../../taskpane/pane/frame/places';
import { fakeWorld } from '../support/fakePort';
import type { Page } from '../support/page';
import { openPage } from '../support/page';

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

// Days 2, 5 and 10 with food from day 3: 8, 4 and 1.5 % are the most that is usual, 4 % from day 7 is too much
// (limits of DEATHS.EXPECTED, drawn from MAKERERE, KAWAMURA17 and KISANGANI).
test.each([
  { age: 2, dead: 1600, tone: 'plain', says: 'Usual for this age' },
  { age: 2, dead: 1601, tone: 'bad', says: 'Act now' },
  { age: 5, dead: 800, tone: 'plain', says: 'Usual for this age' },
  { age: 5, dead: 801, tone: 'bad', says: 'Act now' },
  { age: 10, dead: 300, tone: 'plain', says: 'Usual for this age' },
  { age: 10, dead: 301, tone: 'warning', says: 'More than usual' },
  { age: 10, dead: 799, tone: 'warning', says: 'More than usual' },
  { age: 10, dead: 800, tone: 'bad', says: 'Act now' },
])('$dead dead of 20,000 on day $age: $says', async ({ age, dead, tone, says }) => {
  const page = await open('dead');
  for (const text of [String(dead), '20000', String(age)]) await keys(page, ...text, 'next');
  expect(answer(page)).toContain(says);
  expect(page.one('#card-answer').classList).toContain(tone);
  await keys(page, 'write');
  expect(page.world.logged.map((row) => named(row).number)).toEqual([dead]);
  // The age is asked anew; the fish in the vat stay.
  expect((page.one('#field-age') as HTMLInputElement).value).toBe('');
  expect((page.one('#field-stocked') as HTMLInputElement).value).toBe('20000');
});

test('dead twice on one day are one count; twice as many as the day before is a reason to act from 2 %', async () => {
  const page = await open('dead');
  await keys(page, ...'150', 'next', ...'20000', 'next', ...'10', 'write');
  await keys(page, ...'200', 'next', 'next', ...'10');
  expect(answer(page)).toContain('350 today');
  expect(answer(page)).toContain('More than usual');
  const { tick } = await import('../../../taskpane/pane/clock');
  for (const [days, dead, says] of [
    [1, 399, 'More than usual'],
    [1, 400, 'Act now'],
  ] as const) {
    const next = await open('dead');
    await keys(next, ...'190', 'next', ...'20000', 'next', ...'10', 'write');
    next.store.send(tick, next.world.now + days);
    await next.store.idle();
    await keys(next, ...String(dead), 'next', 'next', ...'11');
    expect([dead, answer(next)]).toEqual([dead, expect.stringContaining(says)]);
    expect(answer(next)).toContain('190 the day before');
  }
});

test.each([
  [2, true],
  [2.01, false],
])('%d days after a count what is left of it is said: %s', async (days, isSaid) => {
  const { tick } = await import('../../../taskpane/pane/clock');
  const page = await open('fry');
  // 30 in a cup of 250 mL are 60,000 in 500 L.
  await keys(page, ...'500', 'next', ...'250', 'next', ...'30', 'write');
  page.store.send(tick, page.world.now + days);
  page.one('#card-back').click();
  await page.store.idle();
  await open('hand', page);
  await keys(page, ...'6000');
  expect(answer(page)).toContain('6 000 handed over');
  expect(answer(page).includes('54 000 left of what was counted')).toBe(isSaid);
});

test('without an age the share alone is said; more dead than fish is refused in a sentence', async () => {
  const page = await open('dead');
  await keys(page, ...'300', 'next', ...'20000');
  expect(answer(page)).toContain('1.5 % of the vat today');
  expect(answer(page)).not.toContain('sual');
  await keys(page, 'next', ...'10');
  expect(answer(page)).toContain('usual on day 10: 60 to 300');
  const more = await open('dead');
  await keys(more, ...'30', 'next', ...'20', 'next', ...'10');
  expect(answer(more)).toContain('more than');
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
  const { hostArrived } = await import('../../../taskpane/pane/frame/hostArrived');
  page.store.send(hostArrived, 'ready');
  await page.store.idle();
  expect(page.world.logged.map((row) => named(row).number)).toEqual([7]);
  expect(page.text()).not.toContain('waits');
});

test('a pane closed after it wrote a line and before it could remember that does not write it twice', async () => {
  const page = await open('dead', openPage('absent', fakeWorld(), 'vat'));
  await keys(page, '7', 'write');
  const { hostArrived } = await import('../../../taskpane/pane/frame/hostArrived');
  // What was kept still waits; the log has the line already, and one of another moment that only looks alike.
  const waits = page.store.state().vat.lines;
  page.store.send(hostArrived, 'ready');
  await page.store.idle();
  const [row] = page.world.logged;
  if (!row) throw new Error('nothing was written');
  page.world.logged.unshift([Number(row[0]) - 1 / 86_400, ...row.slice(1)]);
  const again = openPage('absent', page.world, 'vat');
  again.store.change((state) => ({ ...state, vat: { ...state.vat, lines: waits } }));
  again.store.send(hostArrived, 'ready');
  await again.store.idle();
  expect(page.world.logged.map((one) => named(one).number)).toEqual([7, 7]);
  expect(again.store.state().vat.lines.map(({ row: at }) => at)).toEqual([2, 3]);
  // A second line of the same moment is a line of its own: the log answers for one alone.
  const third = openPage('absent', page.world, 'vat');
  third.store.change((state) => ({
    ...state,
    vat: { ...state.vat, lines: waits.flatMap((line) => [line, { ...line, id: 99 }]) },
  }));
  third.store.send(hostArrived, 'ready');
  await third.store.idle();
  expect(page.world.logged).toHaveLength(3);
});

test('a bath starts a clock that rings once when its minutes are over', async () => {
  const page = await open('formalin');
  await keys(page, '2', '0', 'next', '2', '0', '0', 'write');
  // In the head of the card the minutes alone; among all cards what they are for.
  expect(page.one('.card-head .timer').textContent).toContain('15:00');
  page.one('#card-back').click();
  await page.store.idle();
  expect(page.text()).toContain('15:00 left');
  const { tick } = await import('../../../taskpane/pane/clock');
  const { ringTimer } = await import('../../../taskpane/screens/vat/commands/notebook');
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
