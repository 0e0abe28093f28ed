import { BLANK_AS_ZERO, blanksOf } from '../../taskpane/pane/blanks';
import { noMemory } from '../../taskpane/host/port';
import { fakeWorld } from './support/fakePort';
import { openPage } from './support/page';

/** How blanks reach a function is asked once a session, before the first formula is written, and said. */

test.each([
  ['seen already', 'kept', 'zero', 'kept', 0],
  ['not seen yet', 'unknown', 'zero', 'zero', 1],
  ['cannot be told', 'unknown', 'unknown', 'unknown', 1],
] as const)('%s: asked no more than once', async (_, seen, there, answer, times) => {
  const world = fakeWorld();
  world.blanks = there;
  const doors = { workbook: world.doors.workbook, errors: { ...noMemory, blanks: seen } };
  expect([await blanksOf(doors), await blanksOf(doors)]).toEqual([answer, answer]);
  expect(world.blanksAsked).toBe(times);
});

test('a host that cannot be asked is no hindrance', async () => {
  const world = fakeWorld();
  const workbook = {
    ...world.doors.workbook,
    askBlanks: () => Promise.reject(new Error('away')),
  };
  expect(await blanksOf({ workbook, errors: noMemory })).toBe('unknown');
});

test.each([
  ['zero', true],
  ['kept', false],
] as const)('a formula is inserted where blanks are %s: said %s', async (blanks, isSaid) => {
  const world = fakeWorld();
  world.blanks = blanks;
  world.insertOutcome = { kind: 'inserted', address: 'B7' };
  const page = openPage('ready', world);
  await page.go('find');
  await page.type('#function-search', 'SPAWN.AMMONIA.SHARE');
  page.one('.card').click();
  await page.press('Try these numbers');
  await page.press('Insert into the selected cell');
  expect(world.inserted).toHaveLength(1);
  expect(page.text().includes(BLANK_AS_ZERO)).toBe(isSaid);
});

test('looked through, a workbook with functions is told the same; one without is not asked', async () => {
  const call = { sheet: 'Log', address: 'B2', formula: '=SPAWN.AMMONIA.SHARE(8,25)', value: 0.05 };
  for (const calls of [[], [call]]) {
    const world = fakeWorld();
    world.blanks = 'zero';
    world.calls = calls;
    const page = openPage('ready', world);
    await page.go('errors');
    await page.press('Look through the workbook');
    expect(page.text().includes(BLANK_AS_ZERO)).toBe(calls.length > 0);
    expect(world.blanksAsked).toBe(calls.length);
  }
});
