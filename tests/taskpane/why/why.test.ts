import { fakeWorld } from '../support/fakePort';
import { openPage } from '../support/page';

/** Why?: the selected cell in words. */

test('a formula is taken apart: the summary, its arguments with their cells, limits and source', async () => {
  const world = fakeWorld();
  world.cell = {
    sheet: 'Water',
    address: 'C2',
    formula: '=SPAWN.AMMONIA.SHARE(A2,25)',
    value: 0.0537,
  };
  world.cells['Water!A2'] = [[8]];
  const page = openPage('ready', world, 'why');
  await page.store.idle();
  const text = page.text().replaceAll('\u202f', ' ');
  expect(text).toContain('Water!C2');
  expect(text).toContain('5.4 %');
  expect(text).toContain('pH');
  expect(text).toContain('Emerson');
  await page.press('Go to Water!A2');
  expect(world.visited).toEqual(['Water!A2']);
});

test('an argument that cannot be: the sentence says what to do', async () => {
  const world = fakeWorld();
  world.cell = {
    sheet: 'Water',
    address: 'C3',
    formula: '=SPAWN.AMMONIA.SHARE(8,A3)',
    value: { error: '#VALUE!' },
  };
  world.cells['Water!A3'] = [[82]];
  const page = openPage('ready', world, 'why');
  await page.store.idle();
  expect(page.text()).toContain('82 °F is 27.8 °C');
});

test('follows the selection while it is open; a typed number is just that', async () => {
  const world = fakeWorld();
  const page = openPage('ready', world, 'why');
  await page.store.idle();
  expect(page.text()).toContain('holds 1. No formula stands in it');
  world.cell = { sheet: 'Sheet1', address: 'B3', formula: '=A1+1', value: 2 };
  const { followCell } = await import('../../../taskpane/screens/why/commands/why');
  page.store.send(followCell);
  await page.store.idle();
  expect(page.text()).toContain('worked out with the sheet’s own functions');
});

test('a cell that an answer spills into tells whose answer it is, and explains that', async () => {
  const world = fakeWorld();
  world.cell = {
    sheet: 'Water',
    address: 'C3',
    formula: '=SPAWN.AMMONIA.SHARE(A2:A3,25)',
    value: 0.05,
    spilledFrom: 'C2',
  };
  world.cells['Water!A2:A3'] = [[8], [7]];
  const page = openPage('ready', world, 'why');
  await page.store.idle();
  expect(page.text()).toContain('Water!C3 shows a part of the answer of C2:');
  expect(page.text()).toContain('=SPAWN.AMMONIA.SHARE(A2:A3,25)');
  expect(page.all('#why-open')).toHaveLength(1);
  expect(page.text()).not.toContain('No formula stands in it');
});

test('its cells are marked with a note that says by which cell, and the marks go away again', async () => {
  const world = fakeWorld();
  world.cell = { sheet: 'Water', address: 'C2', formula: '=SPAWN.AMMONIA.SHARE(A2:A3,B2)', value: 0.05 };
  world.cells['Water!A2:A3'] = [[8], [7]];
  world.cells['Water!B2'] = [[25]];
  const page = openPage('ready', world, 'why');
  await page.store.idle();
  await page.press('Mark its cells');
  expect(world.marks.map(({ sheet, address, note }) => `${sheet}!${address} ${note}`)).toEqual([
    'Water!A2 Read by Water!C2',
    'Water!A3 Read by Water!C2',
    'Water!B2 Read by Water!C2',
  ]);
  await page.press('Take the marks away');
  expect(world.marks).toEqual([]);
  world.refusal = '“Water” is protected.';
  await page.press('Mark its cells');
  expect(page.text()).toContain('“Water” is protected.');
});
