import { SOURCES } from '../../../shared/families/sources';
import {
  anyProfile,
  feedingSpecies,
  hatchingSpecies,
  preparation,
  PROFILES,
  yolkSpecies,
} from '../../../shared/families/timing/records/profiles';
import { timingFunctions } from '../../../shared/families/timing';
import { columnOf, grid, number, refusal } from '../../support/call';

const all = Object.values(PROFILES).flat();

test('every built-in table names a known source, and one from memory has a source from memory', () => {
  for (const p of all) {
    expect(Object.keys(SOURCES)).toContain(p.source);
    expect([p.name, SOURCES[p.source]?.standing === 'memory']).toEqual([p.name, p.standing === 'memory']);
  }
});

test('the choices offered are the tables there are', () => {
  expect(preparation.choices).toEqual(PROFILES.latency.map((p) => p.name));
  expect([...hatchingSpecies.choices].sort()).toEqual(PROFILES.incubation.map((p) => p.name).sort());
  expect(feedingSpecies.choices).toEqual(PROFILES['first feed'].map((p) => p.name));
  expect(yolkSpecies.choices).toEqual(PROFILES['yolk gone'].map((p) => p.name));
  expect([...anyProfile.choices].sort()).toEqual([...new Set(all.map((p) => p.name))].sort());
});

test('every function that can use a recalled table says so in its help', () => {
  const users = timingFunctions.filter(
    (fn) => fn.sources.includes('GRAAF96') && !['PROFILE.LIST'].includes(fn.id),
  );
  expect(users.length).toBeGreaterThan(8);
  for (const fn of users) expect([fn.id, /recalled|from memory/.test(fn.help)]).toEqual([fn.id, true]);
});

test('the list shows every table with its standing', () => {
  const rows = grid('PROFILE.LIST', 'all', false);
  expect(rows).toHaveLength(all.length);
  expect(rows.find((row) => row[0] === 'latency' && row[1] === 'handbook pituitary')?.[6]).toBe(
    'from memory, page not seen',
  );
});

describe("a table of the user's own", () => {
  test('given back by PROFILE.TABLE it gives the same hours', () => {
    const rows = grid('PROFILE.TABLE', 'incubation', 'African catfish', false);
    const own = [columnOf(rows.map((r) => r[0] ?? null)), columnOf(rows.map((r) => r[1] ?? null))] as const;
    for (const t of [20, 23.7, 30])
      expect(number('INCUBATION.HOURS', t, 'African catfish', ...own)).toBeCloseTo(
        number('INCUBATION.HOURS', t),
        9,
      );
  });

  test('its rows may stand in any order', () => {
    expect(number('LATENCY.HOURS', 24, null, columnOf([28, 20]), columnOf([8, 20]))).toBeCloseTo(
      number('LATENCY.HOURS', 24, null, columnOf([20, 28]), columnOf([20, 8])),
      12,
    );
  });

  test.each([
    ['one column only', [columnOf([20, 28]), null], /belong together/],
    ['one row', [columnOf([20]), columnOf([20])], /at least two different temperatures/],
    ['a temperature twice', [columnOf([20, 20, 24]), columnOf([20, 19, 12])], /20 °C stands there twice/],
    [
      'longer when warmer',
      [columnOf([20, 24]), columnOf([12, 20])],
      /20 h at 24 °C is longer than 12 h at 20 °C.*swapped/,
    ],
    ['°F', [columnOf([68, 82]), columnOf([20, 8])], /20 °C/],
    ['hours of zero', [columnOf([20, 28]), columnOf([20, 0])], /ownHours, row 2/],
    ['a hole', [columnOf([20, 28]), columnOf([20, null])], /ownHours, row 2.*blank/],
  ] as const)('%s: a sentence says so', (_what, own, sentence) => {
    expect(refusal('LATENCY.HOURS', 24, null, ...own)).toMatch(sentence);
  });
});

test('offsets move the time by hours and cannot eat it up', () => {
  expect(number('STRIP.TIME', 46000, 25, 'handbook pituitary', 1.5)).toBeCloseTo(46000 + 12.5 / 24, 9);
  expect(number('INJECTION.TIME', 46001, 25, 'handbook pituitary', 1.5)).toBeCloseTo(46001 - 12.5 / 24, 9);
  expect(refusal('STRIP.TIME', 46000, 30, 'pituitary', -9)).toMatch(/small correction/);
});

test('a bad cell of a range spoils its own row only', () => {
  const rows = grid('LATENCY.HOURS', columnOf([25, 79, null, 'warm', 31, 26]), 'handbook pituitary');
  expect(
    rows.map(([cell]) => (typeof cell === 'object' && cell !== null && 'error' in cell ? cell.error : cell)),
  ).toEqual([11, '#VALUE!', '', '#VALUE!', '#N/A', 10]);
});
