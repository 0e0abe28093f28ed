// Long: one run, day by day.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Frame, Page } from 'playwright-core';
import { isError } from '../../../shared/base/values';
import { isoDateOfSerial, serialOfDay, timeText } from '../../../shared/units/dates';
import { ask, launchPhone, picture, sharedSite, turnTo, untilReady } from '../../browser/support/localSheet';

/**
 * One run from the net to the sale on a phone of 360 points: planned, written, and everything after it typed at the
 * vat with the number keys, on the days it happens. The clock of the browser is set; nothing else is.
 */

jest.setTimeout(900_000);
const PATIENCE = 60_000;
const profile = mkdtempSync(join(tmpdir(), 'spawnbook-run-'));
let site: Awaited<ReturnType<typeof sharedSite>>;
let phone: Awaited<ReturnType<typeof launchPhone>>;
let page: Page;
let pane: Frame;
const HOUR = 1 / 24;
/** The clock of the browser at a moment of the sheet. */
async function at(serial: number): Promise<void> {
  const moment = new Date(Math.round((serial - serialOfDay(1970, 1, 1)) * 86_400) * 1000);
  moment.setMinutes(moment.getMinutes() + moment.getTimezoneOffset());
  await phone.clock.setSystemTime(moment);
}
const paneOf = async (): Promise<Frame> => {
  const found = page.frames().find((frame) => frame.url().includes('taskpane'));
  if (!found) throw new Error('The pane is not in the page.');
  await found.waitForSelector('#place-plan');
  return found;
};

beforeAll(async () => {
  site = await sharedSite();
  phone = await launchPhone(profile);
  await at(serialOfDay(2027, 2, 15) + 8 * HOUR);
  page = await phone.newPage();
  page.setDefaultTimeout(PATIENCE);
  await page.goto(site.url);
  await untilReady(page);
  pane = await paneOf();
  await ask(page, 'newBook');
});
afterAll(async () => {
  await phone.close();
  await site.stop();
  rmSync(profile, { recursive: true, force: true });
});

/** Lines of a table by its headings, wherever on its sheet it stands. */
async function linesOf(sheet: string, ...headings: readonly string[]): Promise<Record<string, unknown>[]> {
  const values = await ask(page, 'getValues', `'${sheet}'!A1:AK90`);
  const head = values.findIndex((row) => headings.every((heading) => row.includes(heading)));
  if (head < 0) return [];
  const titles = values[head] ?? [];
  const rows = values.slice(head + 1);
  const end = rows.findIndex((row) => row.every((cell) => cell === null || cell === ''));
  return rows
    .slice(0, end < 0 ? undefined : end)
    .map((row) =>
      Object.fromEntries(titles.flatMap((title, i) => (title ? [[String(title), row[i] ?? null]] : []))),
    );
}
const batch = async (): Promise<Record<string, unknown>> =>
  (await linesOf('Batches', 'State', 'Strip at')).find((line) => line.Batch === 'B1') ?? {};
const eggsOf = async (): Promise<Record<string, unknown>> =>
  (await linesOf('Counts', 'Sample 1, g', 'Fertilised')).find((line) => line.Batch === 'B1') ?? {};
const fryOf = async (): Promise<Record<string, unknown>> =>
  (await linesOf('Counts', 'Larvae hatched', 'Weighed on')).find((line) => line.Batch === 'B1') ?? {};
const logged = async (): Promise<Record<string, unknown>[]> =>
  (await linesOf('Counts', 'Date and hour', 'Of what')).filter(({ What }) => What);
const noted = (): Promise<Record<string, unknown>[]> => linesOf('Vat log', 'When', 'Vat', 'What');

/** A vat's card, its fields by the number keys, one after the other. */
async function typeAt(vat: number, card: string, ...numbers: readonly (number | string)[]): Promise<void> {
  await pane.click('#place-vat');
  await pane.waitForSelector('#card-dose, #card-back');
  if ((await pane.locator('#card-back').count()) > 0) await pane.click('#card-back');
  await pane.click(`#vat-${vat - 1}`);
  await pane.click(`#card-${card}`);
  for (const [i, number] of numbers.entries()) {
    if (i > 0) await pane.click('#key-next');
    for (const face of String(number)) await pane.click(face === '.' ? '#key-point' : `#key-${face}`);
  }
}
const type = (card: string, ...numbers: readonly (number | string)[]): Promise<void> =>
  typeAt(1, card, ...numbers);
/** Nothing lies beyond the edge, and what was written stands in the book. */
async function write(name?: string): Promise<void> {
  expect(
    await pane.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
  ).toBeLessThanOrEqual(0);
  if (name !== undefined) await picture(page, name);
  await pane.click('#key-write');
  await settled();
}
async function settled(): Promise<void> {
  await pane.waitForFunction(() => document.querySelector('[aria-busy="true"]') === null);
  await ask(page, 'waitForCalculation');
  expect(await pane.locator('.notice.warning').allInnerTexts()).toEqual([]);
}
async function mark(what: string): Promise<void> {
  await type('mark');
  await pane.click(`#mark-${what}`);
  await settled();
}
/** The page is opened anew at that hour, as a phone is; the book is the one that was left. */
async function comeBack(serial: number): Promise<void> {
  await ask(page, 'keepNow');
  await at(serial);
  await page.reload();
  await untilReady(page);
  pane = await paneOf();
  await pane.click('#place-today');
  await pane.waitForFunction(() => document.body.innerText.includes('B1'));
}
/** A function found by a question and filled in; its answer as it is shown. */
async function asked(
  question: string,
  name: string,
  given: Readonly<Record<string, string>>,
): Promise<string> {
  await turnTo(pane, 'find');
  await pane.waitForSelector('#function-search, .back button');
  if ((await pane.locator('.back button').count()) > 0) await pane.click('.back button');
  await pane.fill('#function-search', question);
  await pane.locator(`#function-list button:has-text("${name}")`).first().click();
  await pane.waitForSelector('[id^="argument-"]');
  await pane.evaluate(() => {
    for (const part of document.querySelectorAll('details')) part.open = true;
  });
  for (const [key, value] of Object.entries(given)) {
    const field = pane.locator(`#argument-${key}`);
    if ((await field.evaluate((one) => one.tagName)) === 'SELECT') await field.selectOption(value);
    else await field.fill(value);
  }
  await settled();
  const text = (await pane.innerText('main')).replace(/[\s\u202f]+/g, ' ');
  return /Answer (.*?) =SPAWN/.exec(text)?.[1] ?? text;
}
const answerText = async (): Promise<string> =>
  (await pane.innerText('#card-answer')).replace(/[\s\u202f]+/g, ' ');

let strip = NaN;
let inject = NaN;
let fedFrom = NaN;
/** When eggs really flow. */
let real = NaN;
const textOf = (serial: number): string => `${isoDateOfSerial(Math.floor(serial))} ${timeText(serial)}`;

test('planned and written: two buyers, four females, ready-made solution, an evening injection', async () => {
  await turnTo(pane, 'plan');
  await pane.check('#mode-season', { force: true });
  await pane.locator('summary:has-text("Many orders from a sheet")').click();
  await pane.fill(
    '#season-pasted',
    'Hill ponds; fry; 6000; 2027-04-24; 0.05\nSchool pond; fry; 2500; 2027-04-24; 0.05',
  );
  await pane.click('#season-add-pasted');
  await pane.fill('#season-vats', 'Vat 1 600\nVat 2 600\nVat 3 600');
  await pane.fill('#season-females', 'F1 1\nF2 1.2\nF3 1.4\nF4 1.6');
  await pane.fill('#season-males', 'M1\nM2\nM3\nM4');
  for (let month = 0; month < 12; month++) await pane.fill(`#season-temperatures-${month}`, '26');
  await pane.evaluate(() => {
    for (const part of document.querySelectorAll('details')) part.open = true;
  });
  await pane.fill('#season-certainty', '95 %');
  for (const [price, paid] of Object.entries({
    hormonePerMillilitre: '3',
    cystsPerKilogram: '60',
    feedPerKilogram: '2',
    male: '6',
    perRun: '30',
  }))
    await pane.fill(`#season-prices-${price}`, paid);
  await pane.click('#season-plan');
  await pane.waitForSelector('#season-promise');
  expect(await pane.locator('.fault').allInnerTexts()).toEqual([]);
  await picture(page, 'run-planned');
  await pane.click('#season-write');
  await pane.waitForSelector('.notice');
  expect(await pane.innerText('.notice')).toContain('The season is written');
  await ask(page, 'waitForCalculation');
  const line = await batch();
  [strip, inject] = [Number(line['Strip at']), Number(line['Inject at'])];
  fedFrom = Math.floor(Number(line['First feed']) + 0.5);
});

/** Latency of the ready-made solution: 120.75 degree-hours above 15.4 °C, by its table (10.22 h at 26.0 °C in OKER15, 12 h best at 26 to 27 °C in WORLDAQ25). */
const DEGREE_HOURS = 120.75;
const ZERO = 15.4;

test('the evening: females weighed, injected; the hours are those of the published trials', async () => {
  await comeBack(inject - 1 * HOUR);
  for (const [female, kilograms] of Object.entries({ F1: 1.02, F2: 1.18, F3: 1.4, F4: 1.58 })) {
    await type('weigh', kilograms);
    await pane.fill('#field-female', female);
    // 0.5 mL a kilogram.
    expect(await answerText()).toContain(`${(kilograms / 2).toFixed(2)} mL`);
    await write();
  }
  const pairs = await linesOf('Batches', 'Female', 'Injected at');
  expect(pairs.map((line) => [line.Female, line['Weight, kg']]).sort()).toEqual([
    ['F1', 1.02],
    ['F2', 1.18],
    ['F3', 1.4],
    ['F4', 1.58],
  ]);
  await comeBack(inject);
  await mark('injected');
  const injected = (await linesOf('Batches', 'Female', 'Injected at')).map((line) =>
    Number(line['Injected at']),
  );
  expect(injected).toHaveLength(4);
  for (const hour of injected) expect(hour).toBeCloseTo(inject, 2);
  // 120.75 / (26 − 15.4) = 11.39 h, between the 10.22 h and the 12 h of the trials at 26 °C.
  expect(24 * (strip - inject)).toBeCloseTo(DEGREE_HOURS / (26 - ZERO), 1);
  const line = await batch();
  expect(Number(line['First look'])).toBeLessThan(strip);
  expect(Number(line['Not later than'])).toBeGreaterThan(strip);
});

test('the night: water falls from 27 to 24.5 °C, each reading a line of the log; eggs come later than planned', async () => {
  const readings = [
    [0.5, 27],
    [3.5, 26.4],
    [6.5, 25.6],
    [9.5, 24.5],
  ] as const;
  for (const [hours, celsius] of readings) {
    await comeBack(inject + hours * HOUR);
    await type('water', celsius);
    await write();
  }
  await picture(page, 'run-night');
  const read = (await noted()).filter((line) => typeof line['Water, °C'] === 'number');
  expect(read.map((line) => line['Water, °C'])).toEqual(readings.map(([, celsius]) => celsius));
  // By hand, in degree-hours above 15.4 °C: half an hour at 27, then three times three hours straight down, the
  // rest at the 24.5 °C read last.
  const above = readings.map(([, celsius]) => celsius - ZERO);
  const [first = NaN, second = NaN, third = NaN, last = NaN] = above;
  const done = 0.5 * first + 1.5 * (first + second) + 1.5 * (second + third) + 1.5 * (third + last);
  const hours = 9.5 + (DEGREE_HOURS - done) / last;
  const grid = await ask(page, 'getValues', "'Vat log'!A1:M40");
  const rows = grid.filter((row) => row[0] !== null).length;
  const column = 'ABCDEFGHIJKLM'[grid[0]?.indexOf('Water, °C') ?? -1] ?? '';
  const finish = await asked('when is the stage done with changing water temperature', 'LOG.FINISH', {
    start: textOf(inject),
    times: `'Vat log'!A2:A${rows}`,
    temperatures: `'Vat log'!${column}2:${column}${rows}`,
    expected: '24.5',
    stage: 'latency',
  });
  await picture(page, 'run-finish');
  real = inject + hours * HOUR;
  // By the sum 6:20, twenty minutes after the plan's hour; the function says the same to five minutes.
  process.stdout.write(`the night: ${finish}; by hand ${textOf(real)}\n`);
  const said = / (\d\d):(\d\d)/.exec(finish);
  expect(Math.abs(Number(said?.[1]) + Number(said?.[2]) / 60 - 24 * (real % 1))).toBeLessThan(0.1);
  expect(24 * (real - strip)).toBeGreaterThan(0.2);
});

test('at the net: stripped late; eggs of three samples, their net, white eggs', async () => {
  await comeBack(real);
  await mark('stripped');
  for (const line of await linesOf('Batches', 'Female', 'Stripped at'))
    expect(Number(line['Stripped at'])).toBeCloseTo(real, 2);
  await type('eggs', 210, 1, 660, 1.1, 731, 0.9, 602);
  // 210 g × (660 + 731 + 602) / (1 + 1.1 + 0.9) g.
  expect(await answerText()).toContain('139 510 eggs');
  await write('run-eggs');
  expect((await eggsOf())['Eggs stripped, g']).toBeCloseTo(210, 6);
  expect((await eggsOf())['Eggs estimated']).toBeCloseTo(139_510, 0);
  // One layer: 20 eggs on a square centimetre.
  expect(Number((await batch())['Net, m²'])).toBeCloseTo(139_510 / 200_000, 4);
  await comeBack(real + 9 * HOUR);
  await type('look', 79, 100);
  await write('run-white');
  expect(await eggsOf()).toMatchObject({ 'Eggs looked at': 100, Alive: 79 });
});

test('the hatch is half of what was hoped: counted, and asked why', async () => {
  const hoped = Number((await linesOf('Batches', 'State', 'Strip at'))[0]?.['First hatch']);
  await comeBack(hoped + 0.3);
  await mark('hatching');
  // Cups of 250 mL out of 600 L: 8.5 and 8.75 larvae on average are 20,400 and 21,000; 82,000 were hoped for.
  await typeAt(1, 'fry', 600, 250, 9, 8, 9, 8);
  expect(await answerText()).toContain('20 400 fry');
  await write('run-hatch');
  await typeAt(2, 'fry', 600, 250, 8, 9, 9, 9);
  expect(await answerText()).toContain('21 000 fry');
  await write();
  expect((await fryOf())['Larvae hatched']).toBe(41_400);
  // Four of five live to their first food, as the plan takes for granted.
  expect(Number((await batch())['Larvae feeding'])).toBeCloseTo(0.8 * 41_400, 0);
  const why = await asked('only half of the eggs hatched', 'HATCH.WHY', {
    fertilised: '0.79',
    hatched: '0.3',
  });
  process.stdout.write(`why: ${why.slice(0, 300)}\n`);
  expect(why).not.toContain('#');
});

test('first food, the dead by day, the weighing on day 6', async () => {
  await comeBack(fedFrom + 7 * HOUR);
  await mark('fed');
  await comeBack(fedFrom + 2 + 8 * HOUR);
  await type('dead', 900);
  process.stdout.write(`dead: ${await answerText()}\n`);
  // More than 4 % of about 11,000 on the days after the first food.
  expect(await answerText()).toContain('Act now');
  await write('run-dead');
  await comeBack(fedFrom + 6 + 9 * HOUR);
  await type('dead', 60);
  process.stdout.write(`dead: ${await answerText()}\n`);
  // Less than 1.5 % from a week of age on.
  expect(await answerText()).toContain('Usual for this age');
  await write();
  await type('grow', 100, 1.2);
  await write('run-weighed');
  expect(await fryOf()).toMatchObject({ 'Weight of one, g': 0.012, 'Weighed on': fedFrom + 6 });
});

test('water changed, and power out for forty minutes', async () => {
  await mark('changed');
  const air = await asked('power cut', 'AIR.MINUTES', { fish: '11000', weight: '0.012', volume: '600' });
  // By half of the time to 3 mg/L; forty minutes are no danger yet, and were none on the hardest day of the plan.
  const [, act = ''] = /Act within ([\d.]+) min/.exec(air) ?? [];
  expect(Number(act)).toBeGreaterThan(40);
  expect(Number((await batch())['Least minutes without air'])).toBeGreaterThan(40);
  await picture(page, 'run-power');
  await type('water', '', '', 4.6);
  await write();
});

test('graded, bagged for five hours at 29 °C, sold to two buyers; what one fish cost', async () => {
  await comeBack(serialOfDay(2027, 4, 23) + 10 * HOUR);
  await mark('graded');
  const bags = await asked('how many fish in a bag', 'BAG.FISH', {
    weight: '0.05',
    water: '5',
    hours: '5',
    temperature: '29',
    fish: '8500',
  });
  process.stdout.write(`bags: ${bags}\n`);
  // Half to 0.4 lb a gallon from 1 to 12 h at 65 °F, half of it for each 10 °C more (DUPREE84, SWANN): 26.46 g/L.
  expect(bags).toContain('Fish in a bag 2 646');
  expect(bags).toContain('Bags 4');
  await picture(page, 'run-bags');
  await comeBack(serialOfDay(2027, 4, 24) + 8.5 * HOUR);
  for (const [number, buyer, paid] of [
    [6000, 'Hill ponds', 300],
    [2500, 'School pond', 125],
  ] as const) {
    await type('hand', number);
    await pane.fill('#field-buyer', buyer);
    await pane.fill('#field-paid', String(paid));
    await write(`run-sold-${number}`);
  }
  const orders = await linesOf('Orders', 'Order', 'Handed over');
  expect(orders.slice(0, 2).map((line) => [line.Buyer, line['Handed over']])).toEqual([
    ['Hill ponds', 6000],
    ['School pond', 2500],
  ]);
  const money = (await ask(page, 'getValues', "'Shopping and money'!A1:L60")).map((row) =>
    row.filter((cell) => cell !== null && cell !== ''),
  );
  const of = (label: string): number => {
    const row = money.find((cells) => cells.includes(label)) ?? [];
    return Number(row[row.indexOf(label) + 1]);
  };
  // 5.18 kg × 0.5 mL × 3; two males at 6 and 30 for the run.
  expect(of('Hormone')).toBeCloseTo(7.77, 6);
  expect(of('Batches: wages, males used up')).toBeCloseTo(42, 6);
  const bought = money.find(([label]) => label === 'In all') ?? [];
  expect(of('Cysts')).toBeCloseTo(60 * Number(bought[2]), 6);
  expect(of('Dry feed')).toBeCloseTo(2 * Number(bought[3]), 6);
  const cost = 7.77 + 42 + of('Cysts') + of('Dry feed');
  process.stdout.write(`a fish costs ${of('Cost of a fish')}\n`);
  expect(of('Cost of a fish')).toBeCloseTo(cost / 8500, 6);
  expect(of('Paid and received so far')).toBe(425);
  expect(of('Profit, if all fish come')).toBeCloseTo(425 - cost, 6);
});

test('at the end every check holds, every typed line stands in the book, no cell is wrong', async () => {
  const checks = await linesOf('Checks', 'What must hold', 'It');
  // Every line typed at the vat, once.
  expect((await logged()).map((line) => [line.What, line.Number])).toEqual([
    ['counted', 139_510],
    ['counted', 41_400],
    ['died', 900],
    ['died', 60],
    ['sold', 6000],
    ['sold', 2500],
  ]);
  expect((await noted()).map((line) => line.What)).toEqual([
    ...Array.from({ length: 4 }, () => ['female weight', 'hormone']).flat(),
    'injected',
    ...Array.from({ length: 4 }, () => 'reading'),
    'stripped',
    'weight of eggs',
    'good eggs seen',
    'eggs looked at',
    'first hatch seen',
    'fry counted',
    'fry counted',
    'first food',
    'weight of a fish',
    'water changed',
    'oxygen',
    'graded',
  ]);
  for (const sheet of ['Today', 'Orders', 'Batches', 'Counts', 'Shopping and money', 'Checks'])
    for (const row of await ask(page, 'getValues', `'${sheet}'!A1:Q60`))
      for (const cell of row) expect(isError(cell) ? [sheet, cell.error, cell.message] : []).toEqual([]);
  expect(checks.filter((line) => line.It !== '● holds' && line['What must hold'])).toEqual([]);
});
