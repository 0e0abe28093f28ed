import { inShares, inSlices, LOOKING, MAKING } from '../../taskpane/pane/slices';
import type { PortTell } from '../../taskpane/host/port';
import { readWish } from '../../taskpane/screens/share/commands/choices';
import { formOfInput, inputOfForm } from '../../taskpane/screens/season/state/form';

/** Small parts of the pane, by hand: each side of every limit. */
type Told = Parameters<PortTell>[0];

describe('long work in slices', () => {
  let now = 0;
  beforeEach(() => {
    now = 0;
    jest.spyOn(performance, 'now').mockImplementation(() => now);
  });
  afterEach(() => jest.restoreAllMocks());

  /** Steps of equal length, in milliseconds. */
  function* steps(count: number, each: number): Generator<number, string> {
    for (let i = 1; i <= count; i++) {
      now += each;
      yield i / count;
    }
    return 'done';
  }
  const run = async (count: number, each: number, stopAfter = Infinity) => {
    const told: Told[] = [];
    let asked = 0;
    const answer = await inShares(
      steps(count, each),
      { label: 'Working', from: 10, to: 60 },
      (one) => told.push(one),
      () => ++asked >= stopAfter,
    );
    return { answer, told, asked };
  };
  test('short work is neither told nor broken off', async () => {
    expect(await run(4, 5.9, 1)).toEqual({ answer: 'done', told: [], asked: 0 });
    expect(await run(4, 6, 1)).toMatchObject({ answer: undefined, asked: 1 });
  });
  test('no more than ten times a second', async () => {
    const { told, asked } = await run(20, 25);
    expect(asked).toBe(20);
    expect(told.map(({ done }) => done)).toEqual([13, 23, 33, 43, 53]);
    expect(told[0]).toEqual({ label: 'Working', done: 13, total: 100, canStop: true });
    expect((await run(5, 99)).told).toHaveLength(3);
    expect((await run(5, 100)).told).toHaveLength(5);
  });
  test('stopped when asked to', async () => {
    const { answer, asked } = await run(20, 25, 3);
    expect([answer, asked]).toEqual([undefined, 3]);
  });
  test.each([
    ['looking', LOOKING, 'unpack', 0.5, 15, 'Unpacking the workbook'],
    ['looking', LOOKING, 'read', 0.5, 65, 'Reading formulas and values'],
    ['making', MAKING, 'unpack', 1, 10, 'Unpacking the workbook'],
    ['making', MAKING, 'read', 0.5, 30, 'Reading formulas and values'],
    ['making', MAKING, 'write', 1, 55, 'Putting values in place'],
    ['making', MAKING, 'page', 0.5, 65, 'Writing the page'],
    ['making', MAKING, 'pack', 1, 90, 'Packing the copy'],
    ['making', MAKING, 'prove', 0.9, 99, 'Searching the copy for what was left out'],
  ] as const)('%s: %#', async (_, spans, step, done, percent, label) => {
    const told: Told[] = [];
    function* one() {
      now += 200;
      yield { step, done };
      return 0;
    }
    await inSlices(
      one(),
      spans,
      (say) => told.push(say),
      () => false,
    );
    expect(told).toEqual([{ label, done: percent, total: 100, canStop: true }]);
  });
});

describe('cells that were typed', () => {
  const sheet = (name: string, isWorksheet = true) => ({ name, isWorksheet }) as never;
  test('where there is one sheet it need not be named', () => {
    expect(readWish('b', [sheet('Log')])).toEqual({ cells: 'Log!B' });
    expect(readWish('b', [sheet('Log'), sheet('Chart', false)])).toEqual({ cells: 'Log!B' });
    expect(readWish('$B$2:D4', [sheet('My log')])).toEqual({ cells: "'My log'!B2:D4" });
  });
  test('where there are two it must be', () => {
    expect(readWish('B', [sheet('Log'), sheet('Sales')])).toEqual({
      fault: 'Say on which sheet, for example Log!C.',
    });
    expect(readWish('Stock!B', [sheet('Log'), sheet('Sales')])).toEqual({
      fault: 'There is no sheet “Stock”. The sheets are: Log, Sales.',
    });
    expect(readWish('sales!B', [sheet('Log'), sheet('Sales')])).toEqual({ cells: 'Sales!B' });
  });
});

describe('the form of a season shows what a book holds', () => {
  const shown = (staff: object, more: object = {}) => formOfInput({ staff, ...more }, 46_400).texts;
  test.each([
    [6, '06:00'],
    [6.5, '06:30'],
    [18.25, '18:15'],
    [0, '00:00'],
    [24, '24:00'],
    // A hair below the hour, as fractions of a day come back from a sheet.
    [19.999999, '20:00'],
    [6.99, '06:59'],
    ['6:15', '6:15'],
  ])('an hour of %s', (hour, text) => {
    expect(shown({ stripFrom: hour })['staff.stripFrom']).toBe(text);
  });
  test('dates, shares, yes or no, and texts', () => {
    const texts = shown(
      {},
      { plannedOn: 46_397, certainty: 0.855, malesSurvive: true, hatchery: 'Heron Reach' },
    );
    expect([texts['plannedOn'], texts['certainty'], texts['malesSurvive'], texts['hatchery']]).toEqual([
      '2027-01-10',
      '85.5 %',
      'yes',
      'Heron Reach',
    ]);
    expect(shown({}, { malesSurvive: false })['malesSurvive']).toBe('no');
  });
  test('and hands it back', () => {
    const back = inputOfForm(formOfInput({ certainty: 0.855, staff: { stripFrom: 6.5 } }, 46_400));
    expect(back).toMatchObject({ certainty: '85.5 %', staff: { stripFrom: '06:30' } });
    const typed = formOfInput({}, 46_400);
    const given = (text: string) =>
      inputOfForm({ ...typed, texts: { ...typed.texts, certainty: text } })['certainty'];
    expect(['85', '8', '0.5', '85 %', ' 85,5 ', ''].map(given)).toEqual([
      '85 %',
      '8',
      '0.5',
      '85 %',
      '85,5 %',
      undefined,
    ]);
  });
});
