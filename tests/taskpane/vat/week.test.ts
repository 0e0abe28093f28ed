import { dayOfBook } from '../../../shared/books/living/reading/day';
import { readBook } from '../../../shared/books/living/reading/read';
import { tick } from '../../../taskpane/pane/clock';
import { gridOf } from '../../season/support/support';
import { bookWorld, demoBook } from '../support/bookWorld';
import type { Page } from '../support/page';
import { openPage } from '../support/page';

/**
 * A week of a hatchery through Today and At the vat alone: nothing is typed into a cell. What judges it is the
 * book: its own checks, and the reader that plans again from it.
 */

const world = bookWorld(demoBook());
const first = () => {
  const [batch] = dayOf().batches;
  if (batch?.strip === undefined) throw new Error('no batch');
  return { ...batch, strip: batch.strip };
};
const dayOf = () => dayOfBook(world.model().sheets.map(gridOf), '');
const page: Page = openPage('ready', world, 'today');

const at = async (moment: number): Promise<void> => {
  world.now = moment;
  page.store.send(tick, moment);
  await page.go('today');
};
const keys = async (text: string): Promise<void> => {
  for (const key of text) {
    page
      .one(
        key === '>' ? '#key-next' : key === '.' ? '#key-point' : key === '!' ? '#key-write' : `#key-${key}`,
      )
      .click();
    await page.store.idle();
  }
};
const card = async (id: string, vat: string, text: string): Promise<void> => {
  await page.go('vat');
  if (page.all('#card-back').length > 0) await page.press('All cards');
  await page.press(vat);
  page.one(`#card-${id}`).click();
  await page.store.idle();
  await keys(text);
};
const done = async (kind: string): Promise<void> => {
  const task = page.store.state().today.tasks?.find((one) => one.task === kind && !one.isDone);
  if (!task) throw new Error(`no task ${kind}`);
  await at(task.at + 1 / 96);
  const label = `Done: ${task.batch ?? ''} ${task.what}`;
  const button = page.all('.ticker').find((one) => one.getAttribute('aria-label') === label);
  if (!button) throw new Error(`no tick for ${label} in ${page.text()}`);
  button.click();
  await page.store.idle();
};
const counts = () =>
  world.rowsOf('Counts', 'Of what').filter((row) => typeof row['Date and hour'] === 'number');

beforeAll(async () => {
  await page.store.idle();
});

test('Today shows the next hour, the vats of the season and what is off plan', async () => {
  const { inject = 0 } = first();
  await at(inject - 2 / 24);
  expect(page.one('.next').textContent).toMatch(/B1 Weigh every female/);
  // An hour before the injection, to the half hour.
  expect(page.one('.next').textContent).toMatch(/in (5\d) min|in 1 h/);
  expect(page.text()).toContain('5 tasks are late');
  expect(page.text()).not.toContain('when planned');
  expect(page.store.state().vat.vats).toEqual(demoBook().vats.map(({ name }) => name));
});

test('the night: injected and stripped, with their real hours in the line of the pair', async () => {
  await done('inject');
  await done('strip');
  const pair = world.rowsOf('Batches', 'Injected at')[0];
  expect(pair?.['Injected at']).toBeCloseTo((first().inject ?? 0) + 1 / 96, 1);
  expect(typeof pair?.['Stripped at']).toBe('number');
  const ticked = world.rowsOf('Calendar', 'What to do').filter((row) => typeof row.Done === 'number');
  expect(ticked).toHaveLength(2);
});

test('eggs: weighed samples give a count, in the log and in the samples of the batch', async () => {
  const vat = dayOf().stays.find(({ stage }) => stage === 'eggs')?.vat ?? '';
  await card('eggs', vat, '285>1.02>712>0.98>690>1.01>701!');
  expect(counts()).toEqual([expect.objectContaining({ Batch: 'B1', What: 'counted', 'Of what': 'eggs' })]);
  // 285 g × (712 + 690 + 701) / (1.02 + 0.98 + 1.01) g, by hand.
  expect(Number(counts()[0]?.Number) / ((285 * 2103) / 3.01)).toBeCloseTo(1, 2);
  expect(world.rowsOf('Counts', 'Eggs in 1')[0]).toMatchObject({ 'Sample 1, g': 1.02, 'Eggs in 1': 712 });
  // Weighed together: each female's line takes its part, and the sheet's own estimate follows at once.
  expect(world.rowsOf('Counts', 'Eggs in 1')[0]?.['Eggs stripped, g']).toBeCloseTo(285, 6);
  expect(
    Number(world.rowsOf('Counts', 'Eggs in 1')[0]?.['Eggs estimated']) / ((285 * 2103) / 3.01),
  ).toBeCloseTo(1, 6);
  await card('look', vat, '84>100!');
  expect(world.rowsOf('Counts', 'Fertilised')[0]?.Fertilised).toBeCloseTo(0.84, 6);
});

test('the hatch: its tick takes the hour it was seen, not the planned one', async () => {
  await done('hatch');
  const hatch = world
    .rowsOf('Calendar', 'What to do')
    .find((row) => /^First larvae hatch/.test(String(row['What to do'])));
  expect(hatch?.Done).toBe(world.now);
  expect(world.now).not.toBeCloseTo(first().hatch ?? 0, 3);
});

test('larvae counted after the hatch, where the eggs were: the book has them at once', async () => {
  const vats = dayOf().stays.filter(
    ({ batch, stage, from, to }) => batch === 'B1' && stage === 'eggs' && from <= world.now && world.now < to,
  );
  expect(vats.length).toBeGreaterThan(0);
  // About as many as planned: so many in a cup of 200 mL, 500 L.
  const hoped = dayOf().tasks.find(({ task }) => task === 'hatch')?.amount ?? NaN;
  const cup = Math.round(hoped / vats.length / 2500);
  for (const { vat } of vats) await card('fry', vat, `500>200>${cup - 1}>${cup}>${cup + 1}!`);
  const [line] = world.rowsOf('Counts', 'Larvae hatched').filter(({ Batch }) => Batch === 'B1');
  expect(line?.['Larvae hatched']).toBe(2500 * cup * vats.length);
  expect(counts().at(-1)).toMatchObject({
    What: 'counted',
    'Of what': 'larvae',
    Number: 2500 * cup * vats.length,
  });
});

test('dead of a day stand in the log at once; the last line is taken back', async () => {
  const { strip, feed = 0 } = first();
  await at(Math.max(strip + 3, feed + 1));
  const vat = dayOf().stays.find(({ stage, from }) => stage === 'fry' && from <= world.now)?.vat ?? '';
  expect(vat).not.toBe('');
  await card('dead', vat, '120');
  // Age and fish are the book's: its own line of the day calls the same share of them usual.
  const morning = world
    .rowsOf('Feed by batch', 'Usual dead in a day, up to')
    .find((row) => row.Batch === 'B1' && row.Date === Math.floor(world.now));
  const share = Number(morning?.['Usual dead in a day, up to']) / Number(morning?.['Fish expected']);
  const alive = dayOf().stays.find((stay) => stay.vat === vat && stay.stage === 'fry')?.now?.fish ?? NaN;
  const [, most = ''] = /usual on day \d+: \S+ to (\S+)/.exec(page.text().replaceAll('\u202f', '')) ?? [];
  expect(Number.parseInt(most, 10)).toBe(Math.round(share * Math.round(alive)));
  await keys('!7!');
  expect(
    counts()
      .filter(({ What }) => What === 'died')
      .map(({ Number: n }) => n),
  ).toEqual([120, 7]);
  page.one('#line-back').click();
  await page.store.idle();
  expect(
    counts()
      .filter(({ What }) => What === 'died')
      .map(({ Number: n }) => n),
  ).toEqual([120]);
  // Nothing of this went into the vat log.
  expect(world.logged.filter((row) => row[2] === 'dead')).toEqual([]);
});

test('a save that fails says so and keeps the entry; it goes in with the next', async () => {
  const { HostProblem } = await import('../../../taskpane/host/port');
  world.failure = new HostProblem('A cell is being edited.');
  await keys('9!');
  expect(page.text()).toContain('Not written into the workbook yet');
  await keys('4!');
  expect(
    counts()
      .filter(({ What }) => What === 'died')
      .map(({ Number: n }) => n),
  ).toEqual([120, 9, 4]);
});

test('fry of a batch in several vats are counted when each of its vats is', async () => {
  const { now } = world;
  const stays = dayOf().stays.filter(({ batch, from, to }) => batch === 'B1' && from <= now && now < to);
  expect(stays.length).toBeGreaterThan(0);
  for (const [i, { vat }] of stays.entries()) {
    const before = counts().filter(({ What }) => What === 'counted').length;
    await card('fry', vat, '500>200>31>28>33!');
    expect(counts().filter(({ What }) => What === 'counted').length).toBe(
      before + (i === stays.length - 1 ? 1 : 0),
    );
  }
});

test('a sample weighed: weight and day stand in the book, the task is ticked, growth is drawn against the plan', async () => {
  const task = page.store.state().today.tasks?.find((one) => one.task === 'weighFry' && one.batch === 'B1');
  if (!task) throw new Error('nothing to weigh');
  await at(task.at + 1 / 24);
  const vat = dayOf().stays.find(
    ({ batch, from, to }) => batch === 'B1' && from <= world.now && world.now < to,
  )?.vat;
  await card('grow', vat ?? '', '100>1');
  // The book's own sheet, a row a day, planned before anything was weighed.
  const planned = world
    .rowsOf('Feed by batch', 'Mean weight')
    .find((row) => row.Batch === 'B1' && row.Date === Math.floor(world.now));
  const asked = Number(planned?.['Mean weight']);
  expect(asked).toBeGreaterThan(0);
  expect(page.one('#card-answer').textContent).toContain('0.0100 g a fish');
  expect(page.one('#card-answer').textContent).toContain(`planned today: ${asked.toFixed(4)} g`);
  await keys('!');
  const line = world
    .rowsOf('Counts', 'Weight of one, g')
    .find((row) => row.Batch === 'B1' && row['Weight of one, g']);
  expect(line).toMatchObject({ 'Weight of one, g': 0.01, 'Weighed on': Math.floor(world.now) });
  await at(world.now + 1 / 24);
  expect(page.store.state().today.tasks?.find(({ key }) => key === task.key)?.isDone).toBe(true);
  expect(page.text()).toContain(`Last weighed 0.010 g, planned ${asked.toFixed(3)} g.`);
  // The plan goes on from the weighed fish: the ration of that day follows.
  const now = world
    .rowsOf('Feed by batch', 'Mean weight')
    .find((row) => row.Batch === 'B1' && row.Date === Math.floor(world.now));
  expect(now?.['Mean weight']).toBeCloseTo(0.01, 6);
});

test('feed and a dose of the water are lines of the vat log', async () => {
  const vat =
    dayOf().stays.find(({ batch, from, to }) => batch === 'B1' && from <= world.now && world.now < to)?.vat ??
    '';
  const before = world.logged.length;
  await card('feed', vat, '12000>0.01>10>6!');
  // 12,000 × 0.01 g × 10 % / 6 meals = 2 g, by hand.
  expect(world.logged.slice(before).map((row) => [row[2], row[9], row[10]])).toEqual([
    ['feed given', 2, 'g'],
  ]);
  await card('water', vat, '27>6.8>5!');
  // The vat that is made ready for the next batch.
  await card('dose', dayOf().vats.at(-1) ?? '', '');
  const texts = { volume: '600', temperature: '26', spoon: '1', stocked: 'no' };
  for (const [key, text] of Object.entries(texts)) await page.type(`#dose-${key}`, text);
  page.one('#dose-ready').click();
  await page.store.idle();
  for (const [reading, minutes] of [
    ['5.1!', 15],
    ['5.5>5.5!', 60],
  ] as const) {
    world.now += minutes / 1440;
    page.store.send(tick, world.now);
    await keys(reading);
  }
  page.one('#dose-given').click();
  await page.store.idle();
  const doses = world.logged.filter((row) => row[2] === 'dose');
  expect(doses).toHaveLength(1);
  expect(Number(doses[0]?.[4])).toBeGreaterThan(0);
  page.one('#card-back').click();
  await page.store.idle();
});

test('handed over: in the log with its order, and its task ticked', async () => {
  const task = page.store.state().today.tasks?.find((one) => one.task === 'handOver');
  if (!task) throw new Error('nothing to hand over');
  await at(task.at);
  const vat = dayOf().stays.find(
    ({ batch, from, to }) => batch === task.batch && from <= world.now && world.now <= to,
  )?.vat;
  await page.go('vat');
  await card('hand', vat ?? '', '2500>');
  await page.type('#field-buyer', task.order?.slice(0, 6) ?? '');
  await keys('!');
  expect(counts().at(-1)).toMatchObject({ What: 'sold', Number: 2500, Order: task.order });
  const line = world.rowsOf('Orders', 'Handed over').find((row) => row.Order === task.order);
  expect(line?.['Handed over']).toBe(2500);
});

test('at the end every check of the book holds, and it is read back whole', () => {
  expect(dayOf().broken).toBe(0);
  const reading = readBook(world.model().sheets.map(gridOf), '');
  if (reading.kind !== 'read') throw new Error(reading.faults.join(' '));
  expect(reading.plan.batches[0]?.events.map(({ kind, number }) => [kind, number])).toEqual([
    ['died', 120],
    ['died', 9],
    ['died', 4],
    ['sold', 2500],
  ]);
});
