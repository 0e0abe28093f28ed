import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import type { Session } from '../../browser/support/localSheet';
import { ask, openLocalSheet, OUT } from '../../browser/support/localSheet';
import type { Walk } from '../../browser/support/states';
import { smallTargets, walkOf } from '../../browser/support/states';

/**
 * The pane by axe-core (rules of WCAG 2.2 A and AA) in every state, at the widths of a phone and of a pane;
 * targets are measured. What axe finds is judged by it, not by us.
 */

const axeSource = readFileSync(createRequire(__filename).resolve('axe-core/axe.min.js'), 'utf8');
interface Axe {
  run(options: unknown): Promise<{ violations: { id: string; nodes: { target: string[] }[] }[] }>;
}

let session: Session;
let page: Page;
let walk: Walk;
/** Names are known before there is a page. */
const names = walkOf(undefined as unknown as Page).states.map(([name]) => name);
beforeAll(async () => {
  session = await openLocalSheet();
  await ask(session.page, 'newBook');
  page = await session.page.context().newPage();
  await page.setViewportSize({ width: 360, height: 640 });
  // The page's own policy allows no foreign script; the test puts it in from outside.
  await page.addInitScript(axeSource);
  await page.goto(session.pane.url());
  await page.waitForSelector('#start-order');
  walk = walkOf(page);
});
afterAll(async () => {
  await session.close();
});

interface Measured {
  readonly findings: readonly string[];
  readonly sideways: number;
}
const measure = (): Promise<Measured> =>
  page.evaluate(async () => {
    const { axe } = window as unknown as { axe: Axe };
    const { violations } = await axe.run({
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
    });
    return {
      findings: violations.flatMap(({ id, nodes }) =>
        nodes.map(({ target }) => `${id}: ${target.join(' ')}`),
      ),
      sideways: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    };
  });

test.each(names)('%s: axe finds nothing, targets are 44 by 44, nothing scrolls sideways', async (name) => {
  await new Map(walk.states).get(name)?.();
  await page.waitForSelector('.page > :not(.wait)');
  const measured = await measure();
  const small = await smallTargets(page, 44);
  for (const [width, height] of [
    [270, 640],
    [1024, 768],
  ] as const) {
    await page.setViewportSize({ width, height });
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
    ).toBe(0);
    small.push(...(await smallTargets(page, 44)));
  }
  await page.setViewportSize({ width: 360, height: 640 });
  await page.screenshot({ path: `${OUT}/state-${name.replace(/\W+/g, '-')}.png` });
  expect({ ...measured, small }).toEqual({ findings: [], small: [], sideways: 0 });
});

test('on a phone no field of one run is covered when it gets the keyboard, and the answer stays in sight', async () => {
  await walk.plan('run');
  await page.getByRole('button', { name: 'Fill in an example' }).first().click();
  await page.waitForSelector('#plan-answer:not(.stale) .verdict-line');
  const fields = await page.evaluate(() =>
    [...document.querySelectorAll('form fieldset > .fields :is(input, select)')]
      .filter((field) => field.closest('details') === null)
      .map(({ id }) => id),
  );
  expect(fields).toContain('plan-vatLitres');
  const seen = [];
  for (const id of [...fields, ...[...fields].reverse()]) {
    await page.focus(`#${id}`);
    seen.push(
      await page.evaluate((name) => {
        const field = document.getElementById(name);
        const { left, right, top, bottom } = field?.getBoundingClientRect() ?? new DOMRect();
        const isOn = (x: number, y: number, on: Element | null): boolean =>
          on?.contains(document.elementFromPoint(x, y)) ?? false;
        const answer = document.getElementById('plan-answer')?.getBoundingClientRect();
        const line = document.getElementById('plan-line');
        const place = line?.getBoundingClientRect() ?? new DOMRect();
        const middle = (left + right) / 2;
        return {
          name,
          isFree: [top + 2, bottom - 2].every((y) => isOn(middle, y, field)),
          isAnswered:
            (answer?.bottom ?? 0) > place.bottom ||
            isOn(place.left + 20, (place.top + place.bottom) / 2, line),
          isWhole: line !== null && line.scrollWidth <= line.clientWidth,
        };
      }, id),
    );
  }
  await page.screenshot({ path: `${OUT}/plan-line.png` });
  expect(seen.filter(({ isFree, isAnswered, isWhole }) => !(isFree && isAnswered && isWhole))).toEqual([]);
});

test('the keys at the vat are 56 by 56 at 270 pixels, and answer and keys stand on one screen', async () => {
  await page.setViewportSize({ width: 270, height: 640 });
  await walk.card('weigh');
  const places = await page.evaluate(() => {
    const box = (selector: string): DOMRect[] =>
      [...document.querySelectorAll(selector)].map((element) => element.getBoundingClientRect());
    return {
      least: Math.min(...box('.padkey').flatMap(({ width, height }) => [width, height])),
      top: box('#card-answer')[0]?.top ?? -1,
      bottom: Math.max(...box('.padkey').map(({ bottom }) => bottom)),
    };
  });
  expect(places.least).toBeGreaterThanOrEqual(55.5);
  expect(places.top).toBeGreaterThanOrEqual(0);
  expect(places.top).toBeLessThan(640 / 3);
  expect(places.bottom).toBeLessThanOrEqual(640);
});

/** What of a card lies under the keys, and whether the keys lie under the screen. */
const underKeys = (card: string): Promise<string[]> =>
  page.evaluate((name) => {
    document.scrollingElement?.scrollTo(0, 0);
    const top = document.querySelector('.pad')?.getBoundingClientRect().top ?? 0;
    const bottoms = [...document.querySelectorAll('.padkey')].map(
      (key) => key.getBoundingClientRect().bottom,
    );
    return [
      ...[...document.querySelectorAll('.tile')]
        .filter((tile) => tile.getBoundingClientRect().bottom > top + 0.5)
        .map((tile) => `${name}: ${tile.textContent ?? ''}`),
      ...(Math.max(...bottoms) > innerHeight ? [`${name}: keys`] : []),
    ];
  }, card);

test('at 360 pixels a running bath clock hides no field behind the keys, at 270 no more than without it', async () => {
  await new Map(walk.states).get('formalin with its clock')?.();
  const widths = [360, 270];
  const look = async (): Promise<readonly string[][]> => {
    const found: string[][] = [];
    for (const width of widths) {
      await page.setViewportSize({ width, height: 640 });
      const all: string[] = [];
      for (const card of ['formalin', 'salt', 'eggs', 'fry', 'feed']) {
        await walk.card(card);
        all.push(...(await underKeys(card)));
      }
      await page.screenshot({ path: `${OUT}/clock-${width}.png` });
      found.push(all);
    }
    return found;
  };
  await page.locator('.timer[role=timer]').waitFor();
  const running = await look();
  await page.click('#timer-stop');
  const stopped = await look();
  await page.setViewportSize({ width: 360, height: 640 });
  expect(running[0]).toEqual([]);
  expect(running[1]).toEqual(stopped[1]);
});

/** Dark, forced colours, less motion, and a pane of 640 by 768 zoomed to 200 %. */
const LOOKS = {
  dark: { colorScheme: 'dark' },
  forced: { forcedColors: 'active' },
  calm: { reducedMotion: 'reduce' },
  zoomed: {},
} as const;
test.each(Object.keys(LOOKS) as (keyof typeof LOOKS)[])(
  '%s: axe finds nothing at the vat, today, in Why, in a plan and in the settings',
  async (look) => {
    await page.emulateMedia(LOOKS[look]);
    await page.setViewportSize(look === 'zoomed' ? { width: 320, height: 384 } : { width: 360, height: 640 });
    for (const name of ['today', 'weigh', 'find: empty', 'plan: empty', 'settings']) {
      await new Map(walk.states).get(name)?.();
      await page.waitForSelector('.page > :not(.wait)');
      const { findings, sideways } = await measure();
      expect([name, findings, sideways]).toEqual([name, [], 0]);
      await page.screenshot({ path: `${OUT}/look-${look}-${name.replace(/\W+/g, '-')}.png` });
    }
    await page.emulateMedia({ colorScheme: 'light', forcedColors: 'none', reducedMotion: 'no-preference' });
    await page.setViewportSize({ width: 360, height: 640 });
  },
);

test('question and answer are never more than one and a half screens apart', async () => {
  const far: [string, number][] = [];
  for (const name of [
    'weigh',
    'eggs: too few',
    'fry',
    'white eggs',
    'dose: what to give',
    'find: empty',
    'find: found',
    'function: answered',
  ]) {
    await new Map(walk.states).get(name)?.();
    const apart = await page.evaluate(() => {
      const boxes = [
        '#card-answer, #function-list > li, #function-answer',
        '.pad, #function-search, [id^=argument-]',
      ].map((selector) => document.querySelector(selector)?.getBoundingClientRect());
      const [answer, asked] = boxes;
      return answer && asked ? Math.max(answer.bottom, asked.bottom) - Math.min(answer.top, asked.top) : 0;
    });
    far.push([name, apart]);
  }
  expect(far.filter(([, apart]) => apart > 1.5 * 640)).toEqual([]);
});
