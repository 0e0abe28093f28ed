import type { SheetBuilder } from '../../sheet/workbook/build';
import { styled } from '../../sheet/workbook/build';
import type { DosingReading } from '../../dosing/ask';
import { DRAWING, FIRST_READING, LOG_AT, IS_GIVEN, LAST_PH, LEVELS, READINGS, fx, spilled } from './layout';

const AXIS = { low: 4, high: 9 } as const;

const LINES = [
  { name: 'Read', column: 'D', color: '12454F' },
  { name: 'Likely', column: 'E', color: 'C8742A' },
  { name: 'At least', column: 'F', color: 'B9A088' },
  { name: 'At most', column: 'G', color: 'B9A088' },
  { name: 'Window from', column: 'H', color: '0B4F2A' },
  { name: 'Window to', column: 'I', color: '0B4F2A' },
] as const;

/**
 * The path of the pH, reading by reading, with the window as two lines; its numbers stand on the second page.
 */
export function drawing(sheet: SheetBuilder, readings: readonly DosingReading[]): void {
  const first = DRAWING + 1;
  const last = DRAWING + READINGS;
  sheet.put(`B${DRAWING - 2}`, 'Behind the drawing', 'section');
  for (const column of 'CDEFGHIJ') sheet.put(`${column}${DRAWING - 2}`, '', 'section');
  sheet.merge(
    `B${DRAWING - 1}:J${DRAWING - 1}`,
    '#N/A leaves a gap in the drawing. Nothing is to be typed here.',
    'quiet',
  );
  sheet
    .put(`B${DRAWING}`, 'No.', 'heading')
    .row(
      `D${DRAWING}`,
      LINES.map(({ name }) => name),
      'heading',
    )
    .height(DRAWING, 30);
  for (let i = 0; i < READINGS; i++) {
    const row = first + i;
    const at = FIRST_READING + i;
    const after = (key: 'low' | 'likely' | 'high'): string => {
      const next = `INDEX(${spilled(key)},MAX(1,B${row}-COUNT(${LEVELS})))`;
      return `=IF(OR(COUNT(${LEVELS})=0,B${row}<COUNT(${LEVELS})),NA(),IF(B${row}=COUNT(${LEVELS}),${LAST_PH},IF(${IS_GIVEN},IF(ISNUMBER(${next}),${next},NA()),NA())))`;
    };
    sheet.row(`B${row}`, [
      styled(i + 1, 'cell'),
      undefined,
      ...[
        `=IF(ISNUMBER(${LOG_AT.ph}${at}),${LOG_AT.ph}${at},NA())`,
        after('likely'),
        after('low'),
        after('high'),
        fx('={bottom}'),
        fx('={top}'),
      ].map((formula) => styled(formula, 'cell', { format: '0.00' })),
    ]);
  }
  const levels = readings.flatMap(({ ph }) => (ph === null ? [] : [ph]));
  sheet.chart({
    kind: 'line',
    title: 'The path of the pH',
    categories: sheet.ref(`B${first}:B${last}`),
    series: LINES.map(({ name, column, color }) => ({
      name,
      values: sheet.ref(`${column}${first}:${column}${last}`),
      color,
    })),
    xTitle: 'Reading',
    yTitle: 'pH',
    valueFormat: '0.0',
    valueRange: [Math.floor(Math.min(AXIS.low, ...levels)), Math.ceil(Math.max(AXIS.high, ...levels))],
    from: `J${DRAWING}`,
    to: `O${DRAWING + 16}`,
  });
}
