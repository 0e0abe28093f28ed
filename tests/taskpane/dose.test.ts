import { findFunction } from '../../shared/catalogue';
import { invoke } from '../../shared/functions/invoke';
import { gramsText } from '../../shared/dosing/judge';
import { lintWorkbook } from '../../shared/catalogue/calculation';
import type { Page } from './page';
import { openPage } from './page';

async function atVat(): Promise<Page> {
  const page = openPage();
  await page.go('dose');
  await page.type('#dose-volume', '1000');
  await page.type('#dose-temperature', '25');
  await page.type('#dose-spoon', '5');
  await page.type('#dose-stocked', 'no');
  return page;
}
/** As a person gives it: the form is sent, by Enter or by the button. */
async function read(page: Page, ph: string, grams?: string): Promise<void> {
  if (grams !== undefined) await page.type('#dose-grams', grams);
  await page.type('#dose-ph', ph);
  page.one('.reading-form').dispatchEvent(new Event('submit', { bubbles: true, cancelable: true }));
  await page.store.idle();
}
const valueOf = (page: Page, selector: string): string => (page.one(selector) as HTMLInputElement).value;
/** The list as a person reads it: its spaces that do not break are spaces. */
const texts = (page: Page): string[] =>
  page.all('.reading-text').map((item) => (item.textContent ?? '').replaceAll('\u00a0', ' '));
const next = (doses: readonly number[], readings: readonly number[]): readonly unknown[] => {
  const fn = findFunction('SPAWN.BUFFER.NEXT');
  if (!fn) throw new Error('no BUFFER.NEXT');
  const answer = invoke(fn, [1000, doses.map((d) => [d]), readings.map((r) => [r]), 7, 5, 25]);
  return (answer as readonly (readonly unknown[])[])[1] ?? [];
};

describe('the flow of readings', () => {
  test(
    'the first pH gives a first small dose, in grams and spoons, with what to expect and ' +
      'how long to wait',
    async () => {
      const page = await atVat();
      await read(page, '4.3');
      const [, , dose, , , low, likely, high] = next([0], [4.3]) as number[];
      const answer = page.one('#dose-answer').textContent ?? '';
      for (const words of [
        `${gramsText(dose ?? NaN)} g`,
        `pH ${likely?.toFixed(2)}`,
        `between ${low?.toFixed(2)} and ${high?.toFixed(2)}`,
        'Wait.',
        '15 minutes',
        'no source',
      ])
        expect(answer).toContain(words);
      expect(document.activeElement?.id).toBe('dose-answer');
      expect(page.text()).toContain('try a bucket first');
    },
  );

  test(
    'the next reading stands ready with the total the advice makes; what is typed ' + 'instead counts',
    async () => {
      const page = await atVat();
      await read(page, '4.3');
      expect(valueOf(page, '#dose-grams')).toBe(gramsText(Number(next([0], [4.3])[4])));
      await read(page, '4.32', '0');
      const row = next([0, 0], [4.3, 4.32]);
      expect(page.one('.amount-big').textContent).toBe(`${gramsText(Number(row[2]))} g`);
      expect(texts(page)).toEqual(['Before: pH 4.3', '0 g: pH 4.32']);
      expect(valueOf(page, '#dose-ph')).toBe('');
    },
  );

  test('it ends with DONE, and no grams, once the water is there', async () => {
    const page = await atVat();
    await read(page, '6.95');
    expect(page.one('.amount-big').textContent).toBe('DONE');
    expect(page.one('#dose-answer').className).toContain('good');
    expect(page.one('#dose-answer').textContent).toContain('is in the window');
    expect(page.all('.trial')).toEqual([]);
  });

  test('above the window it is a bad stop', async () => {
    const page = await atVat();
    await read(page, '5.2');
    await read(page, '7.9', '2');
    expect(page.one('#dose-answer').className).toContain('bad');
    expect(page.one('#dose-answer').textContent).toContain('above the window');
  });
});

test('water rich in carbon dioxide: air comes first, and where the pH goes is said', async () => {
  const page = await atVat();
  await read(page, '5.2');
  expect(page.one('.amount-big').textContent).toBe('AIR FIRST');
  expect(page.one('#dose-answer').textContent).toMatch(/Once aired, without product pH \d\.\d\d/);
});

describe('mistakes', () => {
  test('a reading before the vat is filled in leads to the first open question', async () => {
    const page = openPage();
    await page.go('dose');
    await read(page, '5');
    expect(document.activeElement?.id).toBe('dose-volume');
    expect(page.one('#dose-volume-fault').textContent).toContain('Water in the vat');
    expect(page.one('#dose-stocked-fault').textContent).toContain('choose one');
    expect(page.all('.reading-row')).toEqual([]);
  });

  test('an empty pH, a word and a pH of 52 are not taken; each says why beside the field', async () => {
    const page = await atVat();
    for (const [text, words] of [
      ['', 'Type the pH'],
      ['sour', '“sour”'],
      ['52', 'from 3 to 11'],
    ] as const) {
      await read(page, text);
      expect(page.one('#dose-ph-fault').textContent).toContain(words);
      expect(page.one('#dose-ph').getAttribute('aria-describedby')).toContain('dose-ph-fault');
      expect(document.activeElement?.id).toBe('dose-ph');
    }
    await page.type('#dose-ph', '5,2');
    expect(page.all('#dose-ph-fault')).toEqual([]);
    await read(page, '5,2');
    expect(page.all('.reading-row')).toHaveLength(1);
  });

  test('grams that fall are refused with the sentence of the function', async () => {
    const page = await atVat();
    await read(page, '4.9');
    await read(page, '5.5', '6');
    await read(page, '5.9', '4');
    expect(page.one('#dose-grams-fault').textContent).toContain('less than 6 g');
    expect(page.all('.reading-row')).toHaveLength(2);
  });

  test('a percentage is a share, whichever way it is typed', async () => {
    const page = await atVat();
    await read(page, '5');
    const pure = Number(valueOf(page, '#dose-grams'));
    await page.type('#dose-purity', '50');
    expect(Number(valueOf(page, '#dose-grams'))).toBeCloseTo(2 * pure, 0);
    await page.type('#dose-purity', '500');
    page.one('#dose-purity').dispatchEvent(new Event('blur'));
    expect(page.one('#dose-purity-fault').textContent).toContain('up to 100 %, got 500');
    expect(page.text()).toContain('The answer comes back');
  });

  test('a reading is corrected in its place, and left as it was', async () => {
    const page = await atVat();
    await read(page, '4.9');
    await read(page, '5.5', '4');
    await page.press('Correct reading 1');
    expect(valueOf(page, '#dose-ph')).toBe('4.9');
    expect(page.all('#dose-grams')).toEqual([]);
    await page.press('Leave it as it was');
    await page.press('Correct reading 2');
    expect([valueOf(page, '#dose-grams'), valueOf(page, '#dose-ph')]).toEqual(['4', '5.5']);
    await read(page, '5.3');
    expect(texts(page)).toEqual(['Before: pH 4.9', '4 g: pH 5.3']);
  });

  test('undo takes back an addition, a correction, a removal and a new vat, one by one', async () => {
    const page = await atVat();
    const undo = (): Promise<void> => page.press('Undo the last change of readings');
    await read(page, '4.9');
    await read(page, '5.5', '4');
    await page.press('Correct reading 2');
    await read(page, '5.4');
    await page.press('Take out reading 2');
    await page.press('New vat');
    expect(texts(page)).toEqual([]);
    await undo();
    expect(texts(page)).toEqual(['Before: pH 4.9']);
    await undo();
    expect(texts(page)).toEqual(['Before: pH 4.9', '4 g: pH 5.4']);
    await undo();
    expect(texts(page)).toEqual(['Before: pH 4.9', '4 g: pH 5.5']);
    await undo();
    await undo();
    expect(texts(page)).toEqual([]);
    expect(page.all('button').find((button) => button.textContent === 'Undo')).toBeUndefined();
  });

  test('the first reading stays while others rest on it', async () => {
    const page = await atVat();
    await read(page, '4.9');
    await read(page, '5.5', '4');
    await page.press('Take out reading 1');
    expect(page.all('.reading-row')).toHaveLength(2);
    expect(page.text()).toContain('needed by all that follow');
  });
});

describe('fish in the vat', () => {
  test('ammonia is asked for, and nothing is dosed before it is known', async () => {
    const page = await atVat();
    expect(page.all('#dose-ammonia')).toEqual([]);
    await page.type('#dose-stocked', 'yes');
    expect(page.one('.banner.bad').textContent).toContain('measure total ammonia');
    await read(page, '6');
    expect(page.one('.amount-big').textContent).toBe('STOP');
    await page.press('Type the ammonia');
    expect(document.activeElement?.id).toBe('dose-ammonia');
    await page.type('#dose-ammonia', '0.4');
    expect(page.all('button').find((button) => button.textContent === 'Type the ammonia')).toBeUndefined();
    expect(page.one('.amount-big').textContent).toBe('AIR FIRST');
    expect(page.text()).toContain('Stays under the limit');
    await page.type('#dose-ammonia', '50');
    expect(page.one('.amount-big').textContent).toBe('STOP');
  });
});

describe('the picture', () => {
  test('is told in words: readings, what comes next, the window', async () => {
    const page = await atVat();
    await read(page, '4.3');
    await read(page, '4.32', '0');
    const words = page.one('.path svg').getAttribute('aria-label') ?? '';
    for (const part of ['0 g, pH 4.3', '0 g, pH 4.32', 'is likely', 'The window is pH 6.5 to 7.5'])
      expect(words).toContain(part);
    expect(page.all('.path .reading')).toHaveLength(2);
    for (const shape of page.all('.path path')) expect(shape.getAttribute('d')).not.toMatch(/NaN|Infinity/);
  });
});

describe('writing it down', () => {
  test('the sheet holds what was typed, live, once for each press', async () => {
    const page = await atVat();
    await read(page, '4.9');
    await read(page, '5.5', '4');
    page.one('#dose-write').click();
    page.one('#dose-write').click();
    await page.store.idle();
    expect(page.world.written).toHaveLength(1);
    const [{ model } = { model: undefined }] = page.world.written;
    if (!model) throw new Error('nothing written');
    expect(lintWorkbook(model)).toEqual([]);
    expect([
      model.sheets[0]?.cells['D14']?.value,
      model.sheets[0]?.cells['H16']?.value,
      model.sheets[0]?.cells['I16']?.value,
    ]).toEqual([1000, 4, 5.5]);
  });

  test(
    'a sheet of that name is never overwritten: the user is asked for a word behind the ' + 'name',
    async () => {
      const page = await atVat();
      page.world.writeOutcome = (suffix) =>
        suffix === ''
          ? { kind: 'taken', sheets: ['Dosing'], names: [], free: ' 2' }
          : { kind: 'written', sheets: [`Dosing${suffix}`] };
      await page.press('Write as a sheet');
      expect(page.one('#question').textContent).toContain('There is a sheet called “Dosing” already');
      await page.type('#question-word', 'no/good');
      await page.press('Write beside it');
      expect(page.text()).toContain('cannot go behind a sheet name');
      await page.type('#question-word', '3');
      await page.press('Write beside it');
      expect(page.world.written.map(({ suffix }) => suffix)).toEqual(['', ' 3']);
      expect(page.text()).toContain('“Dosing 3”');
    },
  );

  test('an unfinished vat is not written', async () => {
    const page = openPage();
    await page.go('dose');
    await page.press('Write as a sheet');
    expect(page.world.written).toEqual([]);
    expect(document.activeElement?.id).toBe('dose-volume');
  });

  test('without a workbook a file is made', async () => {
    const page = openPage('absent');
    await page.go('dose');
    await page.press('Show an example');
    expect(page.all('#dose-write')).toEqual([]);
    await page.press('Save as .xlsx file');
    expect(page.world.saved.map(({ name }) => name)).toEqual(['dosing.xlsx']);
    expect(page.world.saved[0]?.bytes.length).toBeGreaterThan(3000);
  });
});

test('readings survive a look at another screen', async () => {
  const page = await atVat();
  await read(page, '5');
  await page.go('about');
  await page.go('dose');
  expect(page.all('.reading-row')).toHaveLength(1);
});

test('every field of the screen has a label and links to hints that exist', async () => {
  const page = await atVat();
  await page.type('#dose-stocked', 'yes');
  await read(page, '5');
  for (const field of page.all('input, select')) {
    expect(page.all(`label[for="${field.id}"]`)).toHaveLength(1);
    for (const id of (field.getAttribute('aria-describedby') ?? '').split(' '))
      expect(document.getElementById(id)).not.toBeNull();
  }
  const ids = page.all('[id]').map((element) => element.id);
  expect(new Set(ids).size).toBe(ids.length);
});
