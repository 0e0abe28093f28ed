import type { RangeCells } from '../../../shared/records';
import { trendsOf } from '../../../shared/learn';
import { pictureOf, spoken } from '../../../taskpane/screens/check/state/trend';
import { demoFarm, record } from '../../learn/support/demoFarm';
import { fakeWorld } from '../support/fakePort';
import type { Page } from '../support/page';
import { openPage } from '../support/page';

/**
 * Runs of an invented farm whose eleventh went wrong; hatch about a half, two females, water at 26 or 27 °C.
 */
const SHARES = [0.51, 0.48, 0.52, 0.49, 0.51, 0.48, 0.52, 0.5, 0.48, 0.51, 0.3, 0.5];
const rows = (n: number): RangeCells['values'] => [
  ['Date', 'Female', 'Water temperature', 'Eggs', 'Hatched'],
  ...SHARES.slice(0, n).map((share, i) => [
    46_000 + 7 * i,
    `F${1 + (i % 2)}`,
    26 + (i % 2),
    81_233 + 137 * i * i,
    Math.round(share * (81_233 + 137 * i * i)),
  ]),
];
async function learned(n: number): Promise<Page> {
  const world = fakeWorld();
  const values = rows(n);
  world.records = {
    sheets: [
      {
        name: 'Runs',
        top: 0,
        left: 0,
        values,
        formats: values.map((line) => line.map((_, c) => (c === 0 ? 'yyyy-mm-dd' : 'General'))),
      },
    ],
    again: { sheet: 'Runs' },
  };
  const page = openPage('ready', world);
  await page.go('check');
  await page.press('This sheet');
  await page.press('Show our rates and trends');
  return page;
}

test(
  'own rates stand beside the literature with interval and runs, before any sheet is ' + 'written',
  async () => {
    const page = await learned(12);
    const hatch =
      page
        .all('.fact')
        .map((fact) => (fact.textContent ?? '').replaceAll('\u00a0', ' '))
        .find((text) => text.startsWith('Eggs that hatch')) ?? '';
    expect(hatch).toMatch(/59 % → \d+ % \(\d+ % to \d+ %; 1[12] runs\)/);
    expect(page.text()).toContain('No run speaks of:');
    expect(page.world.written).toEqual([]);
  },
);

test('the picture says in words what it shows, and what stands out by its shape', async () => {
  const page = await learned(12);
  expect(page.one('.trend svg').getAttribute('aria-label')).toMatch(
    /^Eggs that hatch, run by run, in order of time: 12 runs from .* to .*, shares from 30 % to 52 %; the farm's middle is 4\d %\. 1 stands out, listed below\.$/,
  );
  expect(page.all('.trend .point')).toHaveLength(12);
  expect(page.all('.trend .odd').map((shape) => shape.tagName)).toEqual(['path']);
  expect(page.all('.trend circle.dot')).toHaveLength(11);
  expect(
    page.all('.said li').some((line) => /30 %, .* eggs; below the limits/.test(line.textContent ?? '')),
  ).toBe(true);
});

test('the keyboard steps through the points, one stop of Tab for all; each is read out', async () => {
  const page = await learned(12);
  const stops = (): string[] =>
    page
      .all('.trend .point')
      .filter((point) => point.getAttribute('tabindex') === '0')
      .map(({ id }) => id);
  expect(stops()).toEqual(['trend-point-11']);
  page.one('#trend-point-11').focus();
  page.key('ArrowLeft');
  expect([document.activeElement?.id, stops()]).toEqual(['trend-point-10', ['trend-point-10']]);
  expect(page.one('.trend-point').textContent).toMatch(/: 30 %, .* eggs; below the limits/);
  page.key('Home');
  expect(document.activeElement?.id).toBe('trend-point-0');
  page.key('ArrowLeft');
  expect(document.activeElement?.id).toBe('trend-point-0');
  page.key('End');
  expect(document.activeElement?.id).toBe('trend-point-11');
});

test(
  'groups: by female with intervals, by water in degrees; fertilisation nobody wrote ' + 'down is a sentence',
  async () => {
    const page = await learned(12);
    await page.type('#trend-by', 'female');
    expect(
      page
        .all('.trend .point')
        .map((point) => point.getAttribute('aria-label')?.split(':')[0])
        .sort(),
    ).toEqual(['F1', 'F2']);
    expect(page.all('.trend .reach')).toHaveLength(6);
    await page.type('#trend-by', 'temperature');
    expect(page.all('.trend .point').map((point) => point.getAttribute('aria-label')?.split(':')[0])).toEqual(
      ['26 to 27 °C', '27 to 28 °C'],
    );
    await page.type('#trend-by', 'male');
    expect(page.text()).toContain('No run says the male.');
    await page.type('#trend-share', 'fertilisation');
    expect(page.text()).toContain(
      'No run free of findings says how many eggs there were and how many of them were fertilised',
    );
    expect(page.all('.trend')).toEqual([]);
  },
);

test('too few runs: rates, and a sentence instead of a picture', async () => {
  const page = await learned(5);
  expect(page.all('.trend')).toEqual([]);
  expect(page.text()).toContain(
    'Only 5 runs free of findings say how many eggs there were and how many of them hatched; trends need 8',
  );
});

test('a hatch share of unsaid base is asked for; the answer is learned at once and remembered', async () => {
  const world = fakeWorld();
  const values = [
    ['Date', 'Water temperature', 'Fertilised %', 'Hatch %'],
    ...SHARES.map((_, i) => [46_000 + 7 * i, 26 + (i % 2), 78 + (i % 5), 69 + (i % 4)]),
  ];
  world.records = {
    sheets: [
      {
        name: 'Runs',
        top: 0,
        left: 0,
        values,
        formats: values.map((line) => line.map((_, c) => (c === 0 ? 'yyyy-mm-dd' : 'General'))),
      },
    ],
    again: { sheet: 'Runs' },
  };
  const page = openPage('ready', world);
  await page.go('check');
  await page.press('This sheet');
  await page.press('Show our rates and trends');
  const hatch = (): string =>
    page
      .all('.fact')
      .map((fact) => (fact.textContent ?? '').replaceAll('\u00a0', ' '))
      .find((text) => text.startsWith('Eggs that hatch')) ?? '';
  expect(hatch()).toBe('');
  expect(page.text()).toContain('Hatch 70 %: of all eggs, or of the fertilised eggs?');
  expect(page.text()).toContain('Hatch left out in 12 records: the book does not say');
  await page.type('#check-base-0', 'fertilised');
  expect(hatch()).toMatch(/59 % → 5[67] % /);
  expect(page.text()).not.toContain('Hatch left out');
  await page.type('#check-base-0', 'eggs');
  expect(hatch()).toMatch(/59 % → (69|70|71) % /);
  await page.press('Check again');
  await page.press('Show our rates and trends');
  expect(hatch()).toMatch(/59 % → (69|70|71) % /);
});

test('a new check takes the figures of the old one away', async () => {
  const page = await learned(12);
  await page.press('Check again');
  expect(page.all('#check-learned')).toEqual([]);
  expect(page.all('#check-learn')).toHaveLength(1);
});

describe('the picture', () => {
  test('no more points than have room; the latest runs, the best and the poorest females', () => {
    const farm = trendsOf(demoFarm(90));
    const runs = pictureOf(farm, 'run');
    expect(typeof runs === 'string' ? 0 : [runs.points.length, runs.notes[0]]).toEqual([
      60,
      'The latest 60 of 90 runs are shown.',
    ]);
    const many = trendsOf(
      Array.from({ length: 300 }, (_, i) =>
        record(i + 5, {
          date: 46_000 + i,
          female: `F${i % 50}`,
          eggs: 10_000,
          hatched: 2000 + 100 * (i % 50),
        }),
      ),
    );
    const females = pictureOf(many, 'female');
    if (typeof females === 'string') throw new Error(females);
    expect([females.points.length, females.points[0]?.name, females.points.at(-1)?.name]).toEqual([
      30,
      'F49',
      'F0',
    ]);
    expect(females.points[0]?.says).toMatch(/ eggs in 6 runs\.$/);
    expect(females.points[0]?.standsOut).toBe('above');
    expect(females.points.at(-1)?.standsOut).toBe('below');
    expect(spoken(females)).toMatch(/stand out, listed below\.$/);
  });

  test('all or none hatched draws without a fault', () => {
    for (const hatched of [0, 1000]) {
      const picture = pictureOf(
        trendsOf(
          Array.from({ length: 9 }, (_, i) => record(i + 5, { date: 46_000 + i, eggs: 1000, hatched })),
        ),
        'run',
      );
      expect(typeof picture === 'string' ? picture : picture.signals).toEqual([]);
    }
  });
});
