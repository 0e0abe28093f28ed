import { watchHost } from '../../taskpane/host/ready';
import type { HostState } from '../../taskpane/pane/keeping/state';
import { fakeWorld } from './support/fakePort';
import { EVERY_PLACE, openPage } from './support/page';

const here = (page: ReturnType<typeof openPage>): string[] =>
  page.all('[aria-current=page]').map(({ id }) => id);

describe('the places', () => {
  test('one is the current one; each is a press of Tab away', async () => {
    const page = openPage();
    const seen: string[][] = [];
    for (const id of ['today', 'plan', 'vat', 'why']) {
      page.one(`#place-${id}`).click();
      await page.store.idle();
      seen.push(here(page));
    }
    expect(seen).toEqual([['place-today'], ['place-plan'], ['place-vat'], ['place-why']]);
    expect(page.all('nav button').every(({ tabIndex }) => tabIndex === 0)).toBe(true);
  });

  test('the menu opens, closes with Escape and leads to what is seldom needed', async () => {
    const page = openPage();
    await page.press('Menu: share, settings, about');
    expect(page.one('#menu-button').getAttribute('aria-expanded')).toBe('true');
    page.one('#place-about').focus();
    page.key('Escape');
    expect(page.all('#menu')).toEqual([]);
    expect(document.activeElement?.id).toBe('menu-button');
    await page.press('Menu: share, settings, about');
    await page.press('About');
    expect(page.one('main h2').textContent).toBe('About Spawnbook');
  });

  test('main is a landmark of its own, and the skip link leads to it', () => {
    const page = openPage();
    expect(page.one('main').getAttribute('role')).toBeNull();
    page.one('.skip').click();
    expect(document.activeElement?.id).toBe('screen');
  });
});

test('what was typed survives a look at another screen', async () => {
  const page = openPage();
  await page.type('#plan-wanted', '777');
  await page.go('about');
  await page.go('plan');
  expect((page.one('#plan-wanted') as HTMLInputElement).value).toBe('777');
});

test('typing keeps the keyboard in the field', async () => {
  const page = openPage();
  await page.type('#plan-wanted', '7');
  expect(document.activeElement?.id).toBe('plan-wanted');
});

test('no screen has a button without a name, an input without a label or a duplicate id', async () => {
  const page = openPage();
  for (const screen of EVERY_PLACE) {
    await page.go(screen);
    for (const button of page.all('button'))
      expect(button.getAttribute('aria-label') ?? button.textContent).not.toBe('');
    for (const field of page.all('input, select'))
      expect(page.all(`label[for="${field.id}"]`)).toHaveLength(1);
    const ids = page.all('[id]').map((element) => element.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(page.all('[style], script, [onclick]')).toEqual([]);
  }
});

describe('waiting for the host', () => {
  const door = globalThis as { Office?: unknown; Excel?: unknown };
  afterEach(() => {
    jest.useRealTimers();
    delete door.Office;
    delete door.Excel;
  });
  const watch = async (office: unknown, excel: unknown = {}, wait = 0): Promise<HostState[]> => {
    jest.useFakeTimers();
    door.Office = office;
    door.Excel = excel;
    const seen: HostState[] = [];
    watchHost((host) => seen.push(host), 1000);
    await jest.advanceTimersByTimeAsync(wait);
    return seen;
  };
  const answering = (host: unknown, supports: boolean): unknown => ({
    onReady: () => Promise.resolve({ host }),
    context: { requirements: { isSetSupported: () => supports } },
  });

  test('Excel that is new enough is ready', async () => {
    expect(await watch(answering('Excel', true))).toEqual(['ready']);
  });
  test('Excel that is too old is told so', async () => {
    expect(await watch(answering('Excel', false))).toEqual(['old']);
  });
  test('the library outside Office finds no host', async () => {
    expect(await watch(answering(null, true))).toEqual(['absent']);
  });
  test('a blocked library counts as absent at once', async () => {
    expect(await watch(undefined)).toEqual(['absent']);
  });
  test('a library that never answers counts as absent after a while', async () => {
    expect(await watch({ onReady: () => new Promise(() => undefined) }, {}, 999)).toEqual([]);
    jest.useRealTimers();
    expect(await watch({ onReady: () => new Promise(() => undefined) }, {}, 1000)).toEqual(['absent']);
  });
  test('a late answer is still taken', async () => {
    const office = {
      onReady: () =>
        new Promise((resolve) => {
          setTimeout(() => {
            resolve({ host: 'Excel' });
          }, 5000);
        }),
      context: { requirements: { isSetSupported: () => true } },
    };
    expect(await watch(office, {}, 6000)).toEqual(['absent', 'ready']);
  });
});

test('from the first page to a written plan by keyboard: fewer than 25 presses', async () => {
  const page = openPage('ready', fakeWorld(), 'today');
  await page.store.idle();
  // Skip to content, on to the first start, and into it.
  let presses = 3;
  page.one('#start-order').click();
  await page.store.idle();
  for (const [key, text] of [
    ['wanted', '10000'],
    ['females', '4'],
    ['males', '4'],
    ['vats', '8'],
    ['vatLitres', '1000'],
    ['temperature', '27'],
  ] as const) {
    expect(document.activeElement?.id).toBe(`plan-${key}`);
    await page.type(`#plan-${key}`, text);
    page.key('Enter');
    await page.store.idle();
    presses += text.length + 1;
  }
  expect(page.world.written).toHaveLength(1);
  expect(page.text()).toContain('Taken for granted: females of 1 kg.');
  expect(presses).toBeLessThan(25);
});
