import { zipSync } from 'fflate';
import type { RangeCells } from '../../../shared/records';
import { rememberedFrom, rememberedText } from '../../../shared/records';
import type { Cell } from '../../../shared/base/values';
import { HostProblem } from '../../../taskpane/host/port';
import { fakeWorld } from '../support/fakePort';
import type { Page } from '../support/page';
import { openPage } from '../support/page';
import { chooseFile } from '../support/shareWorld';

/** Records of an invented farm: row 4 says more hatched than there were eggs. */
const ROWS: RangeCells['values'] = [
  ['Date', 'Female', 'Eggs', 'Hatched', 'Weather'],
  [46_000, 'F1', 81_230, 42_310, 'fair'],
  [46_003, 'F2', 76_410, 39_020, 'rain'],
  [46_007, 'F3', 60_150, 91_400, 'fair'],
  [46_010, 'F4', 90_780, 51_160, 'fair'],
];
const RUNS: RangeCells = {
  name: 'Runs',
  top: 0,
  left: 0,
  values: ROWS,
  formulas: ROWS,
  formats: ROWS.map((row) => row.map((_, c) => (c === 0 ? 'yyyy-mm-dd' : 'General'))),
};

/** A sheet of rates that says how much later strips are, and what share hatches. */
const ratesCells = (offset: number, hatch: number): RangeCells => ({
  name: 'Rates',
  top: 0,
  left: 0,
  values: [
    ['Rate', 'For', 'Farm value', 'Low', 'High', 'Next run low', 'Next run high', 'Runs'],
    [
      'Strip later than the table by',
      'a preparation not used yet',
      offset,
      offset - 1,
      offset + 1,
      offset - 2,
      offset + 2,
      12,
    ],
    ['Eggs that hatch', 'every run', hatch, 0.4, 0.6, 0.3, 0.7, 12],
  ],
});

async function checked(): Promise<Page> {
  const world = fakeWorld();
  world.records = { sheets: [RUNS], again: { sheet: 'Runs' } };
  const page = openPage('ready', world);
  await page.go('check');
  await page.press('This sheet');
  return page;
}

test('a sheet is read, what is wrong is said with its cell, and the button goes there', async () => {
  const page = await checked();
  expect(page.world.asked).toEqual(['sheet']);
  expect(page.text()).toContain('4 records');
  expect(page.text()).toContain('Cannot be right');
  await page.press('Go to Runs!D4');
  expect(page.world.visited).toEqual(['Runs!D4']);
  expect(page.text()).toContain('not checked, because');
});

test('a column is corrected, and checked again without it', async () => {
  const page = await checked();
  const id =
    page
      .all('label')
      .find((label) => (label.textContent ?? '').startsWith('Hatched'))
      ?.getAttribute('for') ?? '';
  await page.type(`#${id}`, 'ignore');
  expect(page.text()).toContain('You changed how a column is read');
  await page.press('Check again');
  expect(page.world.asked).toEqual(['sheet', { sheet: 'Runs' }]);
  expect(page.all('button').some((one) => one.getAttribute('aria-label') === 'Go to Runs!D4')).toBe(false);
});

const selectOf = (page: Page, header: string): string =>
  `#${
    page
      .all('label')
      .find((label) => (label.textContent ?? '').startsWith(header))
      ?.getAttribute('for') ?? ''
  }`;
const faceOf = (page: Page, header: string): string =>
  (page.one(selectOf(page, header)) as HTMLSelectElement).value;

test(
  'what was said about a column is remembered with the workbook, used by the next ' +
    'pane, and forgotten when asked',
  async () => {
    const page = await checked();
    expect(page.all('#check-said')).toEqual([]);
    await page.type(selectOf(page, 'Hatched'), 'fertilised');
    await page.type(selectOf(page, 'Female'), 'male');
    expect(rememberedFrom(page.world.kept)).toEqual([
      { sheet: 'Runs', header: 'Hatched', field: 'fertilised' },
      { sheet: 'Runs', header: 'Female', field: 'male' },
    ]);
    expect(page.text()).toContain('What you said about 2 columns is remembered with this workbook');
    const next = openPage('ready', page.world);
    await next.go('check');
    await next.press('This sheet');
    expect([faceOf(next, 'Hatched'), faceOf(next, 'Female')]).toEqual(['fertilised', 'male']);
    expect(next.text()).toContain('remembered with this workbook and used');
    await next.press('Forget what I said');
    expect(next.world.kept).toBeUndefined();
    await next.press('Check again');
    expect(faceOf(next, 'Hatched')).toBe('hatched');
    expect(next.all('#check-said')).toEqual([]);
  },
);

test(
  'a workbook that takes nothing: the correction holds for the session, and no fault ' + 'is shown',
  async () => {
    const page = await checked();
    page.world.isReadOnly = true;
    await page.type(selectOf(page, 'Hatched'), 'ignore');
    expect(page.text()).toContain('it holds until the pane is closed');
    expect(page.store.state().notice).toBeUndefined();
    await page.press('Check again');
    expect(faceOf(page, 'Hatched')).toBe('ignore');
    await page.press('Forget what I said');
    await page.press('Check again');
    expect(faceOf(page, 'Hatched')).toBe('hatched');
  },
);

test('a read-only workbook that remembers is left aside once it was told to forget', async () => {
  const world = fakeWorld();
  world.records = { sheets: [RUNS], again: { sheet: 'Runs' } };
  world.kept = rememberedText([{ sheet: 'Runs', header: 'Hatched', field: 'ignore' }]);
  world.isReadOnly = true;
  const page = openPage('ready', world);
  await page.go('check');
  await page.press('This sheet');
  expect(faceOf(page, 'Hatched')).toBe('ignore');
  await page.press('Forget what I said');
  await page.press('Check again');
  expect(faceOf(page, 'Hatched')).toBe('hatched');
  expect(page.text()).toContain('left aside until the pane is closed');
});

test.each([
  ['{"version":1,"colu'],
  [42],
  [{ version: 1 }],
  ['{"version":1,"columns":[{"header":"Hatched","field":"roe"}]}'],
])('damaged memory %j is ignored', async (kept) => {
  const world = fakeWorld();
  world.records = { sheets: [RUNS], again: { sheet: 'Runs' } };
  world.kept = kept;
  const page = openPage('ready', world);
  await page.go('check');
  await page.press('This sheet');
  expect(page.text()).toContain('4 records');
  expect(page.all('#check-said')).toEqual([]);
});

test('what is said about a file is not remembered, and does not spill into the workbook', async () => {
  const page = openPage('ready', fakeWorld());
  page.world.records = { sheets: [RUNS], again: { sheet: 'Runs' } };
  await page.go('check');
  const csv = [
    'Date;Eggs;Hatched',
    '2027-03-01;81230;42310',
    '2027-03-04;76410;99000',
    '2027-03-09;60150;31400',
  ].join('\n');
  await chooseFile(
    page,
    '#check-file-field',
    'runs.csv',
    Uint8Array.from(csv, (c) => c.charCodeAt(0)),
  );
  await page.type(selectOf(page, 'Hatched'), 'ignore');
  expect(page.text()).toContain('a file that is only read remembers nothing');
  await page.press('Check again');
  expect(faceOf(page, 'Hatched')).toBe('ignore');
  await page.press('This sheet');
  expect([faceOf(page, 'Hatched'), page.world.kept]).toEqual(['hatched', undefined]);
});

test(
  'strip times are judged with the own rates of the workbook; a rate that is nonsense ' + 'is named',
  async () => {
    const world = fakeWorld();
    const hours = [14, 14.5, 13.5, 14.2];
    const values: RangeCells['values'] = [
      ['Run', 'Preparation', 'Water temperature', 'Latency (h)'],
      ...hours.map((h, i) => [`R${i}`, 'ready-made solution', 27, h]),
    ];
    world.records = { sheets: [{ name: 'Runs', top: 0, left: 0, values }], again: { sheet: 'Runs' } };
    const page = openPage('ready', world);
    await page.go('check');
    await page.press('This sheet');
    const latency = 'Latency does not fit the temperature';
    world.rates = ratesCells(-4, 0.5);
    await page.press('Check again');
    expect(page.text()).toContain(latency);
    expect(page.text()).toContain('judged with your own rates on the sheet Rates');
    world.rates = ratesCells(2, 7);
    await page.press('Check again');
    expect(page.text()).not.toContain(latency);
    expect(page.text()).toContain('Eggs that hatch is left out: Farm value in C3 is 700 %');
  },
);

test('cells are marked and the marks are taken away; a refusal is said and nothing is lost', async () => {
  const page = await checked();
  await page.press('Mark the cells');
  expect(page.world.marks.map(({ sheet, address }) => `${sheet}!${address}`)).toContain('Runs!D4');
  page.world.refusal = '“Runs” is protected.';
  await page.press('Take the marks away');
  expect(page.text()).toContain('“Runs” is protected.');
  page.world.refusal = undefined;
  await page.press('Take the marks away');
  expect(page.world.marks).toEqual([]);
  expect(page.all('#check-unmark')).toEqual([]);
});

test('the findings are written as new sheets; a taken name asks for a word', async () => {
  const page = await checked();
  page.world.writeOutcome = (suffix) =>
    suffix === ''
      ? { kind: 'taken', sheets: ['Check findings'], names: [], free: ' 2' }
      : { kind: 'written', sheets: ['Check findings 2'] };
  await page.press('Write the findings as a sheet');
  await page.press('Write beside it');
  expect(page.world.written.map(({ suffix }) => suffix)).toEqual(['', ' 2']);
  expect(page.world.written[0]?.model.sheets[0]?.name).toBe('Check findings');
});

test('own rates are written from the records without findings', async () => {
  const page = await checked();
  await page.press('Write our own rates as a sheet');
  expect(page.world.written[0]?.model.names.map(({ name }) => name)).toContain('rate_hatch');
});

test('a text file is checked without a workbook; a damaged one is refused with a sentence', async () => {
  const page = openPage('absent');
  await page.go('check');
  const csv = [
    'Date;Eggs;Hatched',
    '2027-03-01;81230;42310',
    '2027-03-04;76410;99000',
    '2027-03-09;60150;31400',
  ].join('\n');
  await chooseFile(
    page,
    '#check-file-field',
    'runs.csv',
    Uint8Array.from(csv, (c) => c.charCodeAt(0)),
  );
  expect(page.text()).toContain('runs!C3');
  expect(page.all('#check-mark')).toEqual([]);
  await chooseFile(page, '#check-file-field', 'broken.xlsx', Uint8Array.from([0x50, 0x4b, 3, 4, 9, 9]));
  expect(page.text()).toContain('broken.xlsx:');
  expect(page.all('#check-found')).toEqual([]);
});

test('nothing that looks like records, and nothing at all, are each a sentence', async () => {
  const world = fakeWorld();
  const page = openPage('ready', world);
  await page.go('check');
  await page.press('Selected cells');
  expect(page.text()).toContain('There is nothing in these cells');
  world.records = {
    sheets: [
      {
        name: 'Buyers',
        top: 0,
        left: 0,
        values: [
          ['Who', 'Telephone'],
          ['Mill Pond', 'x'],
        ],
      },
    ],
    again: 'book',
  };
  await page.press('All sheets');
  expect(page.text()).toContain('No records were recognised');
});

test.each([
  ['damaged.xlsx', Uint8Array.from([0x50, 0x4b, 3, 4, 9, 9])],
  [
    'locked.xlsx',
    Uint8Array.from([
      0xd0,
      0xcf,
      0x11,
      0xe0,
      ...[...'EncryptedPackage'].flatMap((c) => [c.charCodeAt(0), 0]),
    ]),
  ],
  ['bomb.xlsx', zipSync({ 'xl/worksheets/sheet1.xml': [new Uint8Array(60_000_000), { level: 9 }] })],
  ['blank.csv', Uint8Array.from([10, 10, 10])],
  ['moon.csv', Uint8Array.from('Moon,Mood\nfull,good\nnew,bad\n', (c) => c.charCodeAt(0))],
])(
  '%s: a sentence, nothing to write, and what was checked before is not mistaken for it',
  async (name, bytes) => {
    const page = await checked();
    await chooseFile(page, '#check-file-field', name, bytes);
    expect(page.one('.banner.warning').textContent).toMatch(/[a-z].*[.!?)]$/);
    expect(page.all('#check-found, #check-write, #check-learn, #check-mark')).toEqual([]);
    expect([page.store.state().task, page.store.state().check.result, page.world.written]).toEqual([
      undefined,
      undefined,
      [],
    ]);
  },
);

test('a host that refuses to read: its sentence, and the last check stays', async () => {
  const page = await checked();
  page.world.failure = new HostProblem(
    'A cell is being edited. Press Enter or Esc in the sheet, then try again.',
  );
  await page.press('This sheet');
  expect(page.text()).toContain('A cell is being edited.');
  expect(page.all('#check-found')).toHaveLength(1);
});

test(
  'a long check is stopped in the middle: nothing is made, nothing stays half, and the ' +
    'next one is whole',
  async () => {
    const page = await checked();
    const before = page.store.state().check;
    const long = Array.from({ length: 30_000 }, (_, i): Cell[] => [
      30_000 + i,
      `F${i % 9}`,
      80_000 + ((i * 7919) % 997),
      40_000 + ((i * 104_729) % 991),
      'fair',
    ]);
    page.world.records = {
      sheets: [{ name: 'Runs', top: 0, left: 0, values: [ROWS[0] ?? [], ...long] }],
      again: { sheet: 'Runs' },
    };
    page
      .all('button')
      .find((one) => one.textContent === 'This sheet')
      ?.click();
    for (let tries = 0; tries < 500 && page.all('#task-stop').length === 0; tries++)
      await new Promise((go) => {
        setTimeout(go, 2);
      });
    page.one('#task-stop').click();
    await page.store.idle();
    expect(page.text()).toContain('Stopped. Nothing was made and nothing was changed.');
    const now = page.store.state();
    expect([now.task, now.check.result, now.check.given, page.world.written]).toEqual([
      undefined,
      before.result,
      before.given,
      [],
    ]);
    await page.press('This sheet');
    expect(page.text()).toContain('30000 records');
  },
  60_000,
);
