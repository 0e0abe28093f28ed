import type { Page } from 'playwright-core';

/** Every state of the pane that a person can come to without a workbook, by how one gets there. */

/** What a finger has to meet and is too small for it. */
export const smallTargets = (page: Page, least: number): Promise<string[]> =>
  page.evaluate(
    (size) =>
      [
        ...document.querySelectorAll(
          'button, select, summary, .padkey, input:not([type=radio],[type=checkbox],.unseen)',
        ),
      ]
        .filter((element) => {
          const { width, height } = element.getBoundingClientRect();
          return width > 0 && (width < size - 0.5 || height < size - 0.5);
        })
        .map((element) => `${element.tagName} ${element.id} ${(element.textContent ?? '').slice(0, 20)}`),
    least,
  );

export interface Walk {
  readonly card: (id: string) => Promise<void>;
  readonly part: (id: string) => Promise<void>;
  readonly plan: (mode: 'run' | 'season') => Promise<void>;
  readonly states: readonly (readonly [string, () => Promise<unknown>])[];
}

export function walkOf(page: Page): Walk {
  const keys = async (...faces: readonly string[]): Promise<void> => {
    for (const face of faces) await page.click(`#key-${face}`);
  };
  const home = async (): Promise<void> => {
    await page.click('#place-vat');
    // The place is fetched when it is opened first, and stands where it was left.
    await page.waitForSelector('#card-back, .card-face');
    if ((await page.locator('#card-back').count()) > 0) await page.click('#card-back');
  };
  const card = async (id: string): Promise<void> => {
    await home();
    await page.click(`#card-${id}`);
  };
  const part = async (id: string): Promise<void> => {
    await page.click('#place-why');
    await page.click(`#part-${id}`);
    // A page of a function that was opened before is left.
    if (id === 'find' && (await page.locator('.back button').count()) > 0) await page.click('.back button');
  };
  const menu = async (id: string): Promise<void> => {
    await page.click('#menu-button');
    await page.click(`#place-${id}`);
  };
  const plan = async (mode: 'run' | 'season'): Promise<void> => {
    await page.click('#place-plan');
    await page.check(`#mode-${mode}`, { force: true });
  };

  /** Each state, by how one gets there. */
  const states: readonly (readonly [string, () => Promise<unknown>])[] = [
    ['today', () => page.click('#place-today')],
    ['menu', async () => page.click('#menu-button')],
    ['vat', home],
    ['vat: adding', async () => page.click('#vat-add')],
    [
      'weigh',
      async () => {
        await card('weigh');
        await keys('1', 'point', '4');
      },
    ],
    ['weigh: noted', () => keys('write')],
    [
      'eggs: too few',
      async () => {
        await card('eggs');
        await keys('2', '1', '0', 'next', '1', 'next', '6', '4', '0');
      },
    ],
    ['fry', () => card('fry')],
    [
      'weigh fry',
      async () => {
        await card('grow');
        await keys('1', '0', '0', 'next', '1');
      },
    ],
    ['salt', () => card('salt')],
    ['dead', () => card('dead')],
    ['feed', () => card('feed')],
    ['water', () => card('water')],
    [
      'white eggs',
      async () => {
        await card('look');
        await keys('8', '0', 'next', '1', '0', '0');
      },
    ],
    [
      'formalin with its clock',
      async () => {
        await card('formalin');
        await keys('2', '0', 'next', '2', '0', '0', 'write');
      },
    ],
    [
      'weigh: beyond the limit',
      async () => {
        await card('weigh');
        await keys('3', '1', 'write');
      },
    ],
    ['hand over', () => card('hand')],
    ['hours', () => card('mark')],
    ['dose: set-up', () => card('dose')],
    [
      'dose: what to give',
      async () => {
        await card('dose');
        // Set up once; a second visit goes on with the readings.
        if ((await page.locator('#dose-volume').count()) === 0) return;
        for (const [key, text] of Object.entries({ volume: '600', temperature: '26', spoon: '1' }))
          await page.fill(`#dose-${key}`, text);
        await page.selectOption('#dose-stocked', 'no');
        await page.click('#dose-ready');
        await keys('5', 'point', '1', 'write', '5', 'point', '5', 'next', '5', 'point', '5', 'write');
        // The button that comes fades in.
        await page.waitForTimeout(500);
      },
    ],
    ['plan: empty', () => plan('run')],
    [
      'plan: example',
      async () => {
        await plan('run');
        await page
          .getByRole('button', { name: /Fill in an example|Remplir un exemple/ })
          .first()
          .click();
        await page.waitForSelector('#plan-answer:not(.stale) .verdict-line');
      },
    ],
    ['season', () => plan('season')],
    [
      'season: planned',
      async () => {
        await plan('season');
        await page.click('#season-example');
        await page.click('#season-plan');
        await page.waitForSelector('.current .order-plan', { timeout: 120_000 });
      },
    ],
    ['why: cell', () => part('cell')],
    ['find: empty', () => part('find')],
    ['find: found', () => page.fill('#function-search', 'when will they hatch')],
    ['find: nothing', () => page.fill('#function-search', 'zebra xylophone')],
    [
      'function',
      async () => {
        await page.fill('#function-search', 'buffer dose');
        await page.click('#function-list button');
      },
    ],
    [
      'function: answered',
      async () => {
        await part('find');
        await page.fill('#function-search', 'buffer dose');
        await page.click('#function-list button');
        await page.locator('.example:not(.fails) button').first().click();
      },
    ],
    ['function: refused', () => page.locator('.example.fails button').first().click()],
    ['check', () => part('check')],
    ['errors', () => part('errors')],
    ['settings', () => menu('settings')],
    ['about', () => menu('about')],
    ['share', () => menu('share')],
  ];
  return { card, part, plan, states };
}
