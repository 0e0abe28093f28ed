import { CATALOGUE } from '../../../shared/catalogue';
import { HostProblem } from '../../../taskpane/host/port';
import { rangeOf } from '../support/fakePort';
import type { Page } from '../support/page';
import { openPage } from '../support/page';

async function openFunction(name: string, page = openPage('ready', undefined, 'why')): Promise<Page> {
  await page.go('find');
  await page.type('#function-search', name);
  const card = page.all('.card').find((element) => element.querySelector('.card-name')?.textContent === name);
  if (!card) throw new Error(`no card ${name}`);
  card.click();
  return page;
}
const formula = (page: Page): string => page.one('.answer .formula').textContent ?? '';
const answer = (page: Page): string => (page.one('.answer').textContent ?? '').replaceAll('\u202f', ' ');

describe('finding', () => {
  test('a question finds what answers it; at most five are near, nonsense is told', async () => {
    const page = openPage();
    await page.go('find');
    expect(page.all('.card')).toHaveLength(0);
    await page.type('#function-search', 'ammonia share');
    expect(page.one('.card-name').textContent).toBe('SPAWN.AMMONIA.SHARE');
    expect(page.all('.card').length).toBeLessThanOrEqual(5);
    await page.type('#function-search', 'zebra xylophone');
    expect(page.one('.count').textContent).toContain('Nothing fits');
  });

  test('a step of the job lists its functions, a second press folds them', async () => {
    const page = openPage();
    await page.go('find');
    await page.press('inject, strip, hatch');
    expect(page.all('.card')).toHaveLength(CATALOGUE.filter((fn) => fn.family === 'Timing').length);
    await page.press('inject, strip, hatch');
    expect(page.all('.card')).toHaveLength(0);
  });

  test('a question for a plan leads to the plan, one for a vet is answered so', async () => {
    const page = openPage('ready', undefined, 'why');
    await page.go('find');
    await page.type('#function-search', 'antibiotic dose');
    expect(page.one('.count').textContent).toContain('vet');
    expect(page.all('.card')).toHaveLength(0);
    await page.type('#function-search', 'season plan');
    await page.press('Open Plan');
    expect(page.store.state().screen).toBe('plan');
  });

  test('opening a page moves the keyboard to its title, going back to the search', async () => {
    const page = await openFunction('SPAWN.AMMONIA.SHARE');
    expect(document.activeElement?.id).toBe('function-title');
    await page.press('‹ All functions');
    expect(document.activeElement?.id).toBe('function-search');
  });
});

describe('the help page', () => {
  test.each(CATALOGUE.map((fn) => fn.name))(
    '%s: every argument, source and example is on its page',
    async (name) => {
      const fn = CATALOGUE.find((one) => one.name === name);
      const page = await openFunction(name);
      expect(page.all('.examples > li')).toHaveLength(fn?.examples.length ?? -1);
      expect(page.all('.sources > li')).toHaveLength(fn?.sources.length ?? -1);
      for (const param of fn?.params ?? [])
        expect(page.one(`label[for="argument-${param.name}"]`)).toBeDefined();
      expect(page.text()).not.toMatch(/undefined|\[object|NaN/);
    },
  );

  test('a figure from memory and common practice are told plainly', async () => {
    const page = await openFunction('SPAWN.CYSTS.NEEDED');
    expect(page.one('.standing.doubtful').textContent).toMatch(/From memory|Common practice/);
  });

  test('cautions stand with the numbers they belong to', async () => {
    const page = await openFunction('SPAWN.BUFFER.DOSE');
    expect(page.one('.banner.warning').textContent).toMatch(/goggles/i);
  });
});

describe('filling in', () => {
  test('says what is missing, then shows the live answer and the formula', async () => {
    const page = await openFunction('SPAWN.AMMONIA.SHARE');
    expect(answer(page)).toContain('Still needed: pH, Temperature');
    await page.type('#argument-ph', '8');
    await page.type('#argument-temperature', '25');
    expect(answer(page)).toContain('5.4 %');
    expect(formula(page)).toBe('=SPAWN.AMMONIA.SHARE(8,25)');
  });

  test('shows the error sentence before anything is inserted', async () => {
    const page = await openFunction('SPAWN.AMMONIA.SHARE');
    await page.type('#argument-ph', '8');
    await page.type('#argument-temperature', '82');
    expect(answer(page)).toMatch(/#VALUE!.*82 °F is 27.8 °C/);
    expect(page.world.inserted).toEqual([]);
  });

  test('takes the selection: its reference into the formula, its values into the answer', async () => {
    const page = await openFunction('SPAWN.AMMONIA.SHARE');
    page.world.selection = rangeOf('Sheet1!B2:B3', [[7], [8]]);
    await page.press('Use selection: pH');
    await page.type('#argument-temperature', '25');
    expect(formula(page)).toBe('=SPAWN.AMMONIA.SHARE(Sheet1!B2:B3,25)');
    expect(page.all('.answer td').map((cell) => cell.textContent)).toEqual(['0.564 %', '5.4 %']);
  });

  test('a typed reference is read; one that is not there gets a sentence', async () => {
    const page = await openFunction('SPAWN.AMMONIA.SHARE');
    page.world.cells['C4'] = [[8]];
    await page.type('#argument-ph', 'C4');
    await page.type('#argument-temperature', '25');
    expect(answer(page)).toContain('5.4 %');
    await page.type('#argument-ph', 'C5');
    expect(answer(page)).toContain('C5 is not in this workbook.');
    expect(page.one('#function-insert').getAttribute('aria-disabled')).toBe('true');
  });

  test('an example fills the fields and gives what it promises', async () => {
    const page = await openFunction('SPAWN.AMMONIA.SHARE');
    page.all('.examples .button')[0]?.click();
    expect(formula(page)).toBe('=SPAWN.AMMONIA.SHARE(8,25)');
    expect(document.activeElement?.id).toBe('function-answer');
  });

  test('works without any workbook', async () => {
    const page = await openFunction('SPAWN.AMMONIA.SHARE', openPage('absent'));
    await page.type('#argument-ph', '8');
    await page.type('#argument-temperature', '25');
    expect(answer(page)).toContain('5.4 %');
    expect(page.all('#function-insert')).toEqual([]);
    expect(page.all('.with-button button')).toEqual([]);
  });
});

describe('inserting', () => {
  const ready = async (): Promise<Page> => {
    const page = await openFunction('SPAWN.AMMONIA.SHARE');
    await page.type('#argument-ph', '8');
    await page.type('#argument-temperature', '25');
    return page;
  };

  test('an incomplete formula cannot be inserted', async () => {
    const page = await openFunction('SPAWN.AMMONIA.SHARE');
    await page.press('Insert into the selected cell');
    expect(page.world.inserted).toEqual([]);
  });

  test('hands over formula, size and number formats', async () => {
    const page = await ready();
    await page.press('Insert into the selected cell');
    expect(page.world.inserted).toEqual([
      {
        formula: '=SPAWN.AMMONIA.SHARE(8,25)',
        rows: 1,
        columns: 1,
        formats: ['0.0%'],
        hasHeadings: false,
        mayReplace: false,
      },
    ]);
    expect(page.text()).toContain('SPAWN.AMMONIA.SHARE is now in A1.');
  });

  test('asks before a cell is overwritten, and keeps it when told so', async () => {
    const page = await ready();
    page.world.insertOutcome = { kind: 'occupied', address: 'B2', content: '“my pH”' };
    await page.press('Insert into the selected cell');
    expect(page.one('[role=alert]').textContent).toContain('B2 holds “my pH”. Replace it');
    await page.press('Keep it');
    expect(page.world.inserted.map((one) => one.mayReplace)).toEqual([false]);
    await page.press('Insert into the selected cell');
    await page.press('Replace it');
    expect(page.world.inserted.map((one) => one.mayReplace)).toEqual([false, false, true]);
  });

  test('a refusal is a sentence', async () => {
    const page = await ready();
    page.world.insertOutcome = {
      kind: 'refused',
      sentence: 'A1 is locked because the sheet “Plan” is protected.',
    };
    await page.press('Insert into the selected cell');
    expect(page.one('footer [role=status]').textContent).toContain('A1 is locked');
    page.world.failure = new HostProblem('A cell is being edited.');
    await page.press('Insert into the selected cell');
    expect(page.one('footer [role=status]').textContent).toContain('A cell is being edited.');
  });

  test('a table says how much room it needs and which row is headings', async () => {
    const page = await openFunction('SPAWN.FEED.TABLE');
    page.all('.examples .button')[0]?.click();
    await page.press('Insert into the selected cell');
    const [inserted] = page.world.inserted;
    expect(inserted?.hasHeadings).toBe(true);
    expect(inserted?.rows).toBeGreaterThan(2);
    expect(inserted?.formats).toHaveLength(inserted?.columns ?? 0);
  });
});
