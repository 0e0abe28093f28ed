import { isoDateOfSerial, MONTH_NAMES, WEEKDAY_WORDS } from '../../../units/dates';
import type { SheetBuilder } from '../../../sheet/workbook/build';
import type { CellModel, SheetModel } from '../../../sheet/workbook/model';
import type { OrderBook } from '../../../season/book/orderBook';
import type { LivingPages } from '../context';
import { HEAD } from '../layout';
import type { SetupField } from './setupFields';
import { PRICE_FIELDS, SETUP_FIELDS } from './setupFields';

const WAIT = 'when planned again';

const entryOf = (book: OrderBook, [first, second]: SetupField['path']): unknown => {
  const part: unknown = book[first as keyof OrderBook];
  return second === undefined ? part : (part as Readonly<Record<string, unknown>>)[second];
};

/** An entry of the book as its cell shows it; nothing where the book has none. */
function shown(book: OrderBook, { kind, path }: SetupField): CellModel['value'] {
  const entry = entryOf(book, path);
  if (kind === 'yesNo') return entry === true ? 'yes' : 'no';
  if (kind === 'weekdays')
    return (entry as readonly number[]).map((day) => WEEKDAY_WORDS[day - 1] ?? '').join(', ');
  if (kind === 'dates') return (entry as readonly number[]).map(isoDateOfSerial).join(', ');
  if (kind === 'clock') return (entry as number) / 24;
  return typeof entry === 'number' || typeof entry === 'string' ? entry : undefined;
}

function guard(
  sheet: SheetBuilder,
  { kind, min = 0, max = 0, choices, label }: SetupField,
  range: string,
): void {
  if (kind === 'choice' && choices) sheet.validate({ range, kind: 'list', items: choices, message: label });
  else if (kind === 'yesNo') sheet.validate({ range, kind: 'list', items: ['yes', 'no'], message: label });
  else if (kind === 'whole' || kind === 'date') sheet.validate({ range, kind, min, max, message: label });
  else if (kind === 'number' || kind === 'share' || kind === 'clock')
    sheet.validate({ range, kind: 'decimal', min, max, message: label });
}

function field(
  pages: LivingPages,
  sheet: SheetBuilder,
  asked: SetupField,
  row: number,
  [label, value, unit]: readonly [string, string, string],
): void {
  const { format } = asked;
  const got = shown(pages.book, asked);
  sheet
    .put(`${label}${row}`, asked.label, 'label')
    .put(
      `${value}${row}`,
      got === undefined || got === '' ? {} : { value: got },
      'input',
      format === undefined ? {} : { format },
    )
    .put(`${unit}${row}`, [asked.unit, asked.isLive ? '' : WAIT].filter(Boolean).join(' · '), 'unit');
  guard(sheet, asked, `${value}${row}`);
  pages.define(asked.key, sheet.ref(`${value}${row}`));
}

/** What the plan starts from: days and hours, water by month, prices, the water of the vats. */
export function setupSheet(pages: LivingPages): SheetModel {
  const sheet = pages.sheet(
    'setup',
    pages.fx('={hatchery}&": what the season starts from"'),
    `Yellow cells are yours. Most sheets follow at once; what says "${WAIT}" waits for Plan again in the pane.`,
    {
      widths: [2, 40, 22, 24, 2, 16, 12, 12, 2, 38, 14, 10],
      tab: '12454F',
      print: { onePage: true },
    },
  );
  sheet
    .row(`B${HEAD}`, ['The hatchery', '', ''], 'heading')
    .row(`F${HEAD}`, ['By month', 'Water at night, °C', 'Eggs of body weight'], 'heading')
    .row(`J${HEAD}`, ['Prices', '', ''], 'heading');
  SETUP_FIELDS.forEach((asked, i) => {
    field(pages, sheet, asked, HEAD + 1 + i, ['B', 'C', 'D']);
  });
  MONTH_NAMES.forEach((month, i) => {
    const degrees = pages.book.temperatures[i];
    const eggs = pages.book.eggShares?.[i];
    sheet
      .put(`F${HEAD + 1 + i}`, month, 'label')
      .put(`G${HEAD + 1 + i}`, typeof degrees === 'number' ? { value: degrees } : {}, 'input', {
        format: '0.0',
      })
      .put(`H${HEAD + 1 + i}`, typeof eggs === 'number' ? { value: eggs } : {}, 'input', { format: '0.0%' });
  });
  const months = `G${HEAD + 1}:G${HEAD + MONTH_NAMES.length}`;
  sheet.validate({
    range: months,
    kind: 'decimal',
    min: 10,
    max: 40,
    message: 'Water expected at night in this month, °C. Leave unknown months empty.',
  });
  pages.define('waterByMonth', sheet.ref(months));
  const eggs = `H${HEAD + 1}:H${HEAD + MONTH_NAMES.length}`;
  sheet.validate({
    range: eggs,
    kind: 'decimal',
    min: 0.001,
    max: 0.3,
    message: 'Egg weight of body weight in this month; empty: the figure for the whole year on Figures.',
  });
  pages.define('eggShares', sheet.ref(eggs));
  PRICE_FIELDS.forEach((asked, i) => {
    field(pages, sheet, asked, HEAD + 1 + i, ['J', 'K', 'L']);
  });
  sheet.put(`J${HEAD + 1 + PRICE_FIELDS.length}`, 'Any one currency.', 'quiet');
  const chart = HEAD + 3 + MONTH_NAMES.length;
  sheet.chart({
    kind: 'line',
    title: 'Water by month',
    categories: sheet.ref(`F${HEAD + 1}:F${HEAD + MONTH_NAMES.length}`),
    series: [{ name: 'water', values: sheet.ref(months) }],
    yTitle: '°C',
    valueFormat: '0',
    from: `F${chart}`,
    to: `K${chart + 13}`,
  });
  return sheet.build();
}
