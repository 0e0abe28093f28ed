import { createExecutor, createOffice, installOffice } from '../../src/officeStandIn';
import { createMemoryBook } from '../../src/officeStandIn/memoryBook';
import type { Calculate } from '../../src/officeStandIn/memoryBook';
import { callsOf } from '../../shared/sheet/formula';
import { findFunction } from '../../shared/catalogue';
import { askBlanks } from '../../taskpane/host/writing/askBlanks';
import { leftBehind } from '../../taskpane/host/writing/unfinished';
import { calculating } from './calculating';
import { BREAKS, everythingIn, faultyHost } from './support/faultyHost';

/** The question how blanks reach a function: on a host that hands over 0, on one that keeps them, on none. */

const soon = async (): Promise<void> => undefined;
/** Calculates the one formula that is asked, as a host does that keeps blanks blank. */
const keeping: Calculate = ({ formulas, give }) => {
  for (const cell of formulas)
    if (cell.formula.includes('BLANK.CHECK'))
      give(cell, callsOf(findFunction)('SPAWN.BLANK.CHECK')?.([null, true]) ?? null);
};

async function open(calculate?: Calculate) {
  const book = createMemoryBook(calculate);
  const host = faultyHost(createExecutor(book));
  installOffice(createOffice({ executor: host }));
  await book.write('{sheet1}', { row: 0, column: 0, rows: 1, columns: 1 }, [[{ value: 'my notes' }]]);
  return { book, host, before: JSON.stringify(await everythingIn(book)) };
}

test.each([
  ['hands a blank over as 0', calculating, 'zero'],
  ['keeps a blank', keeping, 'kept'],
  ['does not know the function', undefined, 'unknown'],
] as const)('a host that %s: %#', async (_, calculate, answer) => {
  const { book, before } = await open(calculate);
  expect(await askBlanks(soon)).toBe(answer);
  // Nothing is left: no sheet, no note, the same sheet in front.
  expect(JSON.stringify(await everythingIn(book))).toBe(before);
  expect(await leftBehind()).toBeUndefined();
});

test('a host that answers late is waited for, and not for ever', async () => {
  let asked = 0;
  const { book, before } = await open((calculation) => {
    if (asked >= 5) calculating(calculation);
  });
  const wait = async (): Promise<void> => {
    asked++;
    // A recalculation comes with the next change of the book.
    await book.write('{sheet1}', { row: 0, column: 0, rows: 1, columns: 1 }, [[{ value: 'my notes' }]]);
  };
  expect(await askBlanks(wait)).toBe('zero');
  expect(asked).toBe(5);
  asked = -1000;
  expect(await askBlanks(wait)).toBe('unknown');
  expect(asked).toBe(-980);
  expect(JSON.stringify(await everythingIn(book))).toBe(before);
});

test('where something of an earlier writing stands, nothing is asked and its note stays', async () => {
  const { book } = await open(calculating);
  await book.putSetting(
    'spawnbook.writing',
    JSON.stringify({ title: 'A book', sheets: ['x'], ids: [], names: [] }),
  );
  expect(await askBlanks(soon)).toBe('unknown');
  expect(await leftBehind()).toEqual({ title: 'A book', sheets: [] });
  expect((await book.sheets()).length).toBe(1);
});

test.each([
  ['once', 1],
  ['twice in a row', 2],
  ['for good', Infinity],
] as const)(
  'every sync fails %s: never an error, and what stays is found at the next start',
  async (_, times) => {
    const whole = await open(calculating);
    whole.host.breakAt(undefined);
    await askBlanks(soon);
    const syncs = whole.host.syncs();
    expect(syncs).toBeGreaterThan(3);
    for (const how of BREAKS)
      for (let first = 1; first <= syncs; first++) {
        const { book, host, before } = await open(calculating);
        host.breakAt({ how, first, times });
        expect(['zero', 'unknown']).toContain(await askBlanks(soon));
        host.breakAt(undefined);
        if (JSON.stringify(await everythingIn(book)) === before) continue;
        const left = await leftBehind();
        expect([how, first, left !== undefined]).toEqual([how, first, true]);
        const { takeLeftAway } = await import('../../taskpane/host/writing/unfinished');
        await takeLeftAway();
        expect(JSON.stringify(await everythingIn(book))).toBe(before);
      }
  },
);
