import type { CallCell } from '../../taskpane/host/port';
import { fakeWorld } from './support/fakePort';
import type { Page } from './support/page';
import { openPage } from './support/page';

const call = (address: string, formula: string, value: CallCell['value']): CallCell => ({
  sheet: 'Night log',
  address,
  formula,
  value,
});

async function look(calls: readonly CallCell[], world = fakeWorld()): Promise<Page> {
  world.calls = calls;
  const page = openPage('ready', world);
  await page.go('errors');
  await page.press('Look through the workbook');
  return page;
}

test('a clean workbook is told so, with the count', async () => {
  const page = await look([call('B2', '=SPAWN.AMMONIA.SHARE(8,25)', 0.05)]);
  expect(page.one('.banner.good').textContent).toContain(
    '1 SPAWN formula on 1 sheet, none of them shows an error.',
  );
});

test('a cell in error is listed with the sentence the function gives', async () => {
  const page = await look([call('B2', '=SPAWN.AMMONIA.SHARE(8,82)', { error: '#VALUE!' })]);
  expect(page.one('.trouble').textContent).toMatch(/'Night log'!B2.*#VALUE!.*°F/s);
});

test('the sentence the function gave in the cell wins over working it out again', async () => {
  const world = fakeWorld({
    blanks: 'unknown',
    list: () => [{ address: "'Night log'!B2", code: '#VALUE!', message: 'temperature: the probe was dry.' }],
  });
  const page = await look([call('B2', '=SPAWN.AMMONIA.SHARE(8,82)', { error: '#VALUE!' })], world);
  expect(page.one('.trouble').textContent).toContain('the probe was dry');
});

test('an error inside a spilled answer is listed at its first cell', async () => {
  const world = fakeWorld({
    blanks: 'unknown',
    list: () => [{ address: "'Night log'!$C$2", code: '#VALUE!', message: 'ph, row 2: got 99.' }],
  });
  const page = await look([call('C2', '=SPAWN.AMMONIA.SHARE(A1:A9,25)', 0.05)], world);
  expect(page.one('.trouble').textContent).toContain('In the answer that starts here: ph, row 2');
});

test('a stale memory of a cell that holds no formula now is not shown', async () => {
  const world = fakeWorld({
    blanks: 'unknown',
    list: () => [{ address: "'Night log'!Z9", code: '#VALUE!', message: 'old' }],
  });
  const page = await look([], world);
  expect(page.all('.trouble')).toEqual([]);
});

test('the place is a button that goes there', async () => {
  const page = await look([call('B2', '=SPAWN.AMMONIA.SHARE(8,82)', { error: '#VALUE!' })]);
  await page.press("Go to 'Night log'!B2");
  expect(page.world.visited).toEqual(['Night log!B2']);
});

test('formulas entered too early are offered for re-entering, with a report', async () => {
  const page = await look([
    call('B2', '=_xldudf_SPAWN_AMMONIA_SHARE(8,25)', { error: '#NAME?' }),
    call('B3', '=[1]!SPAWN.AMMONIA.SHARE(8,25)', 0.05),
    call('B4', '=SPAWN.AMMONIA.SHARE(8,25)', 0.05),
  ]);
  expect(page.text()).toContain('2 cells were entered before');
  page.world.mendReport = {
    mended: 1,
    left: [{ sheet: 'Night log', address: 'B3', sentence: 'The sheet is protected.' }],
  };
  await page.press('Re-enter formulas');
  expect(page.world.mended.map((one) => [one.address, one.formula, one.showsValue])).toEqual([
    ['B2', '=SPAWN.AMMONIA.SHARE(8,25)', false],
    ['B3', '=SPAWN.AMMONIA.SHARE(8,25)', true],
  ]);
  expect(page.one('footer [role=status]').textContent).toContain('1 cell re-entered, 1 cell left as before');
  expect(page.text()).toContain('The sheet is protected.');
});

test('a formula that stands there as a text is told and mended', async () => {
  const page = await look([call('B2', '=SPAWN.AMMONIA.SHARE(8,25)', '=SPAWN.AMMONIA.SHARE(8,25)')]);
  expect(page.one('.trouble').textContent).toContain('formatted as text');
  await page.press('Re-enter formulas');
  expect(page.world.mended.map((one) => one.address)).toEqual(['B2']);
});

test('without a workbook the screen says what it needs', async () => {
  const page = openPage('absent');
  await page.go('errors');
  expect(page.text()).toContain('This needs a workbook');
  expect(page.all('#messages-look')).toEqual([]);
});

test.each([
  ['zero', 1],
  ['kept', 0],
  ['unknown', 0],
] as const)('blank cells handed over as 0 are said, %s', async (blanks, banners) => {
  const page = await look([], fakeWorld({ blanks, list: () => [] }));
  expect(page.all('.banner.warning').filter(({ textContent }) => textContent?.includes('as 0'))).toHaveLength(
    banners,
  );
});
