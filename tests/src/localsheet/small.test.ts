import { CommandType } from '@univerjs/core';
import { CATALOGUE } from '../../../shared/catalogue';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import { answerFormats } from '../../../src/build/sheet/formats';
import { needsCalculation } from '../../../src/localsheet/files/stale';
import { workbookData } from '../../../src/localsheet/files/toEngine';
import { changedBy } from '../../../src/localsheet/keeping/changes';
import { isCutShort, keptData } from '../../../src/localsheet/keeping/kept';
import type { KeptWhole } from '../../../src/localsheet/keeping/shapes';
import { EVERY, KEPT_FOR, timesToKeep } from '../../../src/localsheet/keeping/versions';
import { onlyCall, widthForDate } from '../../../src/localsheet/univer/answerFormats';

const HOUR = 3_600_000;

describe('versions of a workbook', () => {
  const now = 1_800_000_000_000;
  test('all of the last hour, then one an hour, none after a day', () => {
    const times = Array.from({ length: 6 * 48 }, (_, i) => now - i * EVERY);
    const kept = timesToKeep(times, now);
    expect(kept.filter((at) => now - at <= HOUR)).toHaveLength(7);
    expect(kept.filter((at) => now - at > HOUR)).toHaveLength(23);
    expect(Math.min(...kept)).toBe(now - KEPT_FOR);
  });
  test.each([
    [KEPT_FOR, true],
    [KEPT_FOR + 1, false],
  ])('a version %d ms old beside a new one: kept %s', (age, isKept) => {
    expect(timesToKeep([now - age, now], now).includes(now - age)).toBe(isKept);
  });
  test('the last one stays however old it is', () => {
    expect(timesToKeep([now - 9 * KEPT_FOR], now)).toEqual([now - 9 * KEPT_FOR]);
  });
});

const book = (formula: string, value?: number | string | { error: '#NAME?' }): WorkbookModel => ({
  title: 'x',
  names: [],
  sheets: [{ name: 'S', widths: [], cells: { A1: { formula, ...(value === undefined ? {} : { value }) } } }],
});

test.each([
  ['=1+1', 2, false],
  ['=1+1', undefined, true],
  ['=SPAWN.X(1)', { error: '#NAME?' as const }, true],
  ['=TODAY()+1', 46000, true],
  ['=TODAYS+1', 46000, false],
  ['=IF(A2="","",1)', '', false],
])('%s with the stored value %j is calculated on opening: %s', (formula, value, isStale) => {
  expect(needsCalculation(book(formula, value))).toBe(isStale);
});

test('an answer that is an empty text stays one; a formula without it would count as 0', () => {
  const cell = (value?: string) =>
    workbookData(book('=IF(B1="","",1)', value), 'b').sheets?.sheet1?.cellData?.[0]?.[0];
  expect(cell('')).toMatchObject({ v: '', t: 1 });
  expect(cell()?.v).toBeUndefined();
});

test.each([
  ['=SPAWN.BUFFER.DOSE(1000,4.6,7)', 'SPAWN.BUFFER.DOSE'],
  ['= spawn.hatch.time( A1 , MAX(B1,{1,2}) ) ', 'SPAWN.HATCH.TIME'],
  ['=SPAWN.AMMONIA.SHARE(8,25)*2', undefined],
  ['=SPAWN.A.B("(",")")', 'SPAWN.A.B'],
  ['=SPAWN.A.B(1)&")"', undefined],
  ['=SUM(SPAWN.A.B(1))', undefined],
  ['=SPAWN.A.B(1', undefined],
])('%s is one call of %s', (formula, name) => {
  expect(onlyCall(formula)).toBe(name);
});

test('every function has the formats of what it answers', () => {
  const formats = answerFormats(CATALOGUE);
  for (const { name, returns } of CATALOGUE) {
    const count = returns.kind === 'value' ? 1 : Object.keys(returns.columns).length;
    expect([name, formats[name]?.length]).toEqual([name, count]);
  }
});

test('dates widen their column, numbers do not', () => {
  // The usual column is 88 pixels wide.
  expect(widthForDate('d mmm yyyy hh:mm')).toBeGreaterThan(120);
  expect(widthForDate('d mmm yyyy')).toBeGreaterThan(88);
  expect(widthForDate('d mmm yyyy')).toBeLessThan(110);
  for (const format of ['0.00', '0.0%', '#,##0', 'General', '@'])
    expect(widthForDate(format)).toBeUndefined();
});

test('typing is told from calculating, and both from moving about', () => {
  const set = { id: 'sheet.mutation.set-range-values', params: { subUnitId: 's1' } };
  expect(changedBy({ ...set, type: CommandType.MUTATION }, false)).toEqual({ sheets: ['s1'], isTyped: true });
  expect(changedBy({ ...set, type: CommandType.MUTATION }, true)).toEqual({ sheets: ['s1'], isTyped: false });
  expect(changedBy({ ...set, type: CommandType.OPERATION }, false)).toBeUndefined();
  expect(
    changedBy({ id: 'formula.mutation.set-formula-calculation-start', type: CommandType.MUTATION }, false),
  ).toBeUndefined();
});

test('a saving that was cut short is seen; sheets that did not arrive are left out of the order', () => {
  const whole = (saving: number): KeptWhole =>
    ({
      book: {
        id: 'k',
        saving: 4,
        workbook: {
          id: 'old',
          sheetOrder: ['a', 'b'],
          resources: [{ name: 'N', data: '{"x":{"unitId":"old"}}' }],
        },
      },
      sheets: [{ book: 'k', id: 'a', saving, data: { id: 'a' } }],
    }) as unknown as KeptWhole;
  expect([isCutShort(whole(4)), isCutShort(whole(5))]).toEqual([false, true]);
  const data = keptData(whole(4), 'new');
  expect(data.sheetOrder).toEqual(['a']);
  expect(data.resources?.[0]?.data).toBe('{"x":{"unitId":"new"}}');
});
