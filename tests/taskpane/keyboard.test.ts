import { watchHost } from '../../taskpane/host/ready';
import type { HostState } from '../../taskpane/pane/state';
import { openPage } from './page';

const selected = (page: ReturnType<typeof openPage>): (string | undefined)[] =>
  page
    .all('[role=tab]')
    .filter((tab) => tab.getAttribute('aria-selected') === 'true')
    .map((tab) => tab.id);

describe('the tab list', () => {
  test('arrow keys, Home and End move along it and round its ends', () => {
    const page = openPage();
    page.one('#tab-plan').focus();
    const seen = ['ArrowRight', 'ArrowRight', 'End', 'ArrowRight', 'ArrowLeft', 'Home'].map((key) => {
      page.key(key);
      return [document.activeElement?.id, ...selected(page)];
    });
    expect(seen).toEqual([
      ['tab-dose', 'tab-dose'],
      ['tab-functions', 'tab-functions'],
      ['tab-about', 'tab-about'],
      ['tab-plan', 'tab-plan'],
      ['tab-about', 'tab-about'],
      ['tab-plan', 'tab-plan'],
    ]);
  });

  test('one tab is in the tab order; other keys do nothing', () => {
    const page = openPage();
    expect(
      page
        .all('[role=tab]')
        .filter((tab) => tab.tabIndex === 0)
        .map((tab) => tab.id),
    ).toEqual(['tab-plan']);
    page.one('#tab-plan').focus();
    page.key('a');
    expect(selected(page)).toEqual(['tab-plan']);
  });

  test('the panel names its tab, and the skip link leads to it', () => {
    const page = openPage();
    expect(page.one('[role=tabpanel]').getAttribute('aria-labelledby')).toBe('tab-plan');
    page.one('.skip').click();
    expect(document.activeElement?.id).toBe('screen');
  });
});

test('what was typed survives a look at another screen', async () => {
  const page = openPage();
  await page.type('#plan-wanted', '777');
  await page.press('About');
  await page.press('Plan');
  expect((page.one('#plan-wanted') as HTMLInputElement).value).toBe('777');
});

test('typing keeps the keyboard in the field', async () => {
  const page = openPage();
  await page.type('#plan-wanted', '7');
  expect(document.activeElement?.id).toBe('plan-wanted');
});

test('no screen has a button without a name, an input without a label or a duplicate id', async () => {
  const page = openPage();
  for (const screen of ['Plan', 'Dose', 'Functions', 'Messages', 'About']) {
    await page.press(screen);
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
