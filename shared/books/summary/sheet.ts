// Long: one page, its blocks in the order they are printed.
import { ASSUMPTIONS } from '../../families/assumptions';
import type { SheetBuilder } from '../../sheet/workbook/build';
import { SheetBuilder as Builder, styled } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import { VERDICTS, verdictText } from '../../maths/verdict';
import type { LivingPages } from '../living';
import { SHEETS } from '../living';
import { originOf } from '../living/reading/origin';
import { VERDICT_STYLE } from '../living/workings/verdicts';
import { FIGURES_SHOWN, PLAIN, STEPS, TRUST } from './content';

const WHOLE = '#,##0';
const DAY = 'd mmm yyyy';
const MOMENT = 'd mmm hh:mm';
const TABLE = 13;
const FULL_WIDTH = 128;
const ORIGIN_WIDTH = 50;
const LINE = 13.5;
const ORDERS_SHOWN = 12;
const BATCHES_SHOWN = 10;
const FIRST = TABLE + 1;
const LAST = FIRST + STEPS.length - 1;

const heightOf = (text: string, width: number): number => Math.ceil(text.length / width) * LINE + 3;
const SHEET_NAMES: ReadonlySet<string> = new Set(Object.values(SHEETS));

/** What the blocks of the page share. */
interface Page {
  readonly sheet: SheetBuilder;
  readonly pages: LivingPages;
  /** A formula over the book, with the words that stand behind its sheets and names. */
  readonly fx: (formula: string) => string;
}

const fxFor =
  (pages: LivingPages, suffix: string) =>
  (formula: string): string =>
    pages
      .fx(formula.replace(/\{(\w+)\}/g, (_, key: string) => `{${key}}${suffix.replace(/\s+/g, '_')}`))
      .replace(/'([^']+)'!|\b([A-Za-z]+)!/g, (whole, quoted?: string, plain?: string) => {
        const name = quoted ?? plain ?? '';
        return suffix !== '' && SHEET_NAMES.has(name) ? `'${name}${suffix}'!` : whole;
      });

function section({ sheet }: Page, columns: string, row: number, title: string): void {
  [...columns].forEach((column, i) => sheet.put(`${column}${row}`, i === 0 ? title : '', 'section'));
}

function boxes({ sheet, pages, fx }: Page): void {
  const { orders } = pages.tables;
  const box = (range: string, head: string, formula: string, format: string): void => {
    const below = range.replaceAll('4', '5');
    const content = styled(fx(formula), 'big', { format });
    if (range.includes(':')) sheet.merge(range, head, 'heading').merge(below, content, 'big', { format });
    else sheet.put(range, head, 'heading').put(below, content);
  };
  box('B4', 'FISH ORDERED', `=SUM(${orders.range('number')})`, WHOLE);
  box('C4:D4', 'LAST SALE', `=MAX(${orders.range('due')})`, DAY);
  box('E4:F4', 'PROMISE', `=SUM(${orders.range('promise')})`, WHOLE);
  box('H4', 'HOPE FOR', `=SUM(${orders.range('hope')})`, WHOLE);
  box('I4:J4', 'LEAST SURE ORDER IN', `=MIN(${orders.range('certainty')})`, '0% "of seasons"');
  sheet.height(5, 26);
}

function words(page: Page): void {
  section(page, 'BCDEFGHIJ', 7, 'In plain words');
  PLAIN.forEach((text, i) =>
    page.sheet.merge(`B${8 + i}:J${8 + i}`, text, 'quiet').height(8 + i, heightOf(text, FULL_WIDTH)),
  );
}

/** Each step as planned, and with every step so far at its poor or its good end. */
function stepsTable(page: Page): void {
  const { sheet, fx, pages } = page;
  const { workings } = pages.tables;
  const hasNursing = pages.rows.shares.some(({ stage }) => stage === 'nursing');
  section(page, 'BCDEF', TABLE - 1, 'How many are left at each step');
  sheet
    .row(
      `B${TABLE}`,
      ['Step', 'Comes through', 'As planned', 'Every step poor', 'Every step good'],
      'heading',
    )
    .height(TABLE, 30);
  STEPS.forEach(({ label, figure, by }, i) => {
    const row = FIRST + i;
    const keys = by.filter((key) => hasNursing || key !== 'nurserySurvival');
    const end = (column: 'E' | 'F'): string => {
      if (i === 0) return `=D${row}`;
      const factors = keys.map((key) =>
        column === 'E' ? `MIN(1,{${key}_low}/{${key}})` : `MAX(1,{${key}_high}/{${key}})`,
      );
      return fx(`=${column}${row - 1}*C${row}*${factors.join('*')}`);
    };
    sheet.row(`B${row}`, [
      styled(label, 'label'),
      i === 0
        ? styled('', 'cell')
        : styled(`=IF(D${row - 1}>0,D${row}/D${row - 1},0)`, 'cell', { format: '0%' }),
      styled(fx(`=SUM(${workings.range(figure)})`), 'result', { format: WHOLE }),
      styled(end('E'), 'cell', { format: WHOLE }),
      styled(end('F'), 'cell', { format: WHOLE }),
    ]);
  });
}

function moments(page: Page): number {
  const { sheet, fx, pages } = page;
  const { batches } = pages.tables;
  const shown = pages.rows.batches.slice(0, BATCHES_SHOWN);
  section(page, 'HIJ', TABLE - 1, 'When: strip of each batch, and its last sale');
  sheet.row(`H${TABLE}`, ['Batch, females', 'Strip', 'Leaves'], 'heading');
  shown.forEach((batch, i) => {
    const of = (key: keyof typeof batches.letters): string => fx(`=${batches.there(key, batches.first + i)}`);
    sheet.row(`H${FIRST + i}`, [
      styled(fx(`=${batches.there('batch', batches.first + i)}&", ${batch.pairs.length} females"`), 'label'),
      styled(of('strip'), 'cell', { format: MOMENT }),
      styled(of('leaves'), 'cell', { format: 'd mmm' }),
    ]);
  });
  const more = pages.rows.batches.length - shown.length;
  if (more > 0) sheet.put(`H${FIRST + shown.length}`, `and ${more} more batches`, 'quiet');
  return FIRST + shown.length + 1;
}

function chart(page: Page, from: number): void {
  const { sheet } = page;
  const column = (letter: string): string => sheet.ref(`${letter}${FIRST}:${letter}${LAST}`);
  sheet.chart({
    kind: 'column',
    title: 'From eggs to fish for sale',
    categories: column('B'),
    yTitle: 'number',
    valueFormat: WHOLE,
    from: `B${from}`,
    to: `J${from + 13}`,
    series: [
      { name: 'as planned', values: column('D') },
      { name: 'every step poor', values: column('E') },
      { name: 'every step good', values: column('F') },
    ],
  });
}

function ordersTable(page: Page, from: number): number {
  const { sheet, fx, pages } = page;
  const { orders } = pages.tables;
  const shown = pages.book.orders.slice(0, ORDERS_SHOWN);
  section(page, 'BCDEFGHIJ', from, 'The orders, and how sure they are');
  sheet.row(
    `B${from + 1}`,
    ['Order', 'Fish', 'Due', 'Promise', 'Hope for', '', 'What', 'Whole order in', 'Verdict'],
    'heading',
  );
  shown.forEach((_, i) => {
    const row = from + 2 + i;
    const of = (key: keyof typeof orders.letters): string => fx(`=${orders.there(key, orders.first + i)}`);
    sheet.row(`B${row}`, [
      styled(of('order'), 'label'),
      styled(of('number'), 'cell', { format: WHOLE }),
      styled(of('due'), 'cell', { format: DAY }),
      styled(of('promise'), 'result', { format: WHOLE }),
      styled(of('hope'), 'cell', { format: WHOLE }),
      styled('', 'cell'),
      styled(of('product'), 'text'),
      styled(of('certainty'), 'cell', { format: '0%' }),
      styled(of('verdict'), 'text'),
    ]);
    for (const word of VERDICTS)
      sheet.when({
        range: `J${row}`,
        formula: `=$J${row}="${verdictText(word)}"`,
        style: VERDICT_STYLE[word],
      });
  });
  const more = pages.book.orders.length - shown.length;
  if (more > 0) sheet.put(`B${from + 2 + shown.length}`, `and ${more} more on Orders`, 'quiet');
  return from + 3 + shown.length;
}

function assumptions(page: Page, from: number): number {
  const { sheet, fx } = page;
  section(page, 'BCDEFGHIJ', from, 'What is taken for granted');
  sheet
    .row(`B${from + 1}`, ['Figure', 'Planned', 'Poor', 'Good', 'Unit'], 'heading')
    .merge(`H${from + 1}:J${from + 1}`, 'Where the published figure comes from', 'heading');
  FIGURES_SHOWN.forEach((key, i) => {
    const row = from + 2 + i;
    const { label, format, unit } = ASSUMPTIONS[key];
    const origin = originOf(ASSUMPTIONS[key]);
    sheet
      .row(`B${row}`, [
        styled(label, 'label'),
        styled(fx(`={${key}}`), 'result', { format }),
        styled(fx(`={${key}_low}`), 'cell', { format }),
        styled(fx(`={${key}_high}`), 'cell', { format }),
        styled(unit === 'share' ? '' : unit, 'unit'),
      ])
      .merge(`H${row}:J${row}`, origin, 'quiet')
      .height(row, Math.max(heightOf(label, 32), heightOf(origin, ORIGIN_WIDTH)));
  });
  return from + 2 + FIGURES_SHOWN.length;
}

/** Fish taken and goods bought; the other side of the same rows tries a price. */
function needs(page: Page, from: number): number {
  const { sheet, fx, pages } = page;
  const { pairs, females, batches } = pages.tables;
  section(page, 'BCDEF', from, 'What it takes');
  sheet.row(`B${from + 1}`, ['For all batches', 'Needed', 'Unit'], 'heading');
  const unit =
    pages.rows.batches.length > 0
      ? `=${pages.tables.workings.there('hormoneUnit', pages.tables.workings.first)}`
      : '';
  const rows: readonly (readonly [string, string, string, string])[] = [
    ['Batches', `=COUNTA(${batches.range('batch')})`, '', WHOLE],
    ['Females stripped', `=COUNTA(${pairs.range('female')})`, '', WHOLE],
    ['Females at hand', `=COUNT(${females.range('kilograms')})`, '', WHOLE],
    ['To buy: hormone', '={bought_hormone}', fx(unit), '#,##0.0'],
    ['To buy: brine shrimp cysts', '={bought_cysts}', 'kg', '#,##0.00'],
    ['To buy: dry feed', '={bought_feed}', 'kg', '#,##0.0'],
  ];
  rows.forEach(([label, formula, of, format], i) =>
    sheet.row(`B${from + 2 + i}`, [
      styled(label, 'label'),
      styled(fx(formula), 'result', { format }),
      styled(of, 'unit'),
    ]),
  );
  return from + 2 + rows.length;
}

/** A price may be tried without the add-in, in a copy too. */
function prices(page: Page, from: number): void {
  const { sheet } = page;
  section(page, 'HIJ', from, 'What a price would bring');
  sheet
    .put(`H${from + 1}`, 'Type a price for one fish', 'label')
    .merge(`I${from + 1}:J${from + 1}`, styled({}, 'input', { format: '#,##0.00' }), 'input', {
      format: '#,##0.00',
    });
  (
    [
      ['Brings in, as planned', 'D'],
      ['Brings in, every step poor', 'E'],
      ['Every step good, if all sell', 'F'],
    ] as const
  ).forEach(([label, column], i) => {
    const row = from + 2 + i;
    const formula = `=IF(ISNUMBER($I$${from + 1}),$I$${from + 1}*${column}${LAST},"–")`;
    sheet
      .put(`H${row}`, label, 'label')
      .merge(`I${row}:J${row}`, styled(formula, 'cell', { format: WHOLE }), 'cell', { format: WHOLE });
  });
  sheet.validate({
    range: `I${from + 1}`,
    kind: 'decimal',
    min: 0,
    max: 1e9,
    message: 'Price of one fish, in any money. It is used on this page only.',
  });
}

export function summarySheet(pages: LivingPages, suffix: string): SheetModel {
  const sheet = new Builder(`Summary${suffix}`, {
    widths: [2, 32, 13, 13, 13, 13, 2, 29, 13, 15],
    tab: '12454F',
    isProtected: true,
    hasGridlines: false,
    print: { onePage: true, footer: `${pages.book.hatchery} · the season on one page` },
  });
  const page: Page = { sheet, pages, fx: fxFor(pages, suffix) };
  sheet.put('B1', page.fx('={hatchery}&": the season on one page"'), 'title').height(1, 26);
  sheet.put(
    'B2',
    'For a reader who does not breed fish. Every figure follows the season in this workbook.',
    'subtitle',
  );
  boxes(page);
  words(page);
  stepsTable(page);
  const picture = Math.max(LAST + 1, moments(page)) + 1;
  chart(page, picture);
  const ordered = ordersTable(page, picture + 15) + 1;
  const taken = assumptions(page, ordered) + 1;
  prices(page, taken);
  const trust = needs(page, taken) + 1;
  section(page, 'BCDEFGHIJ', trust, 'How far to trust it');
  TRUST.forEach((text, i) =>
    sheet
      .merge(`B${trust + 1 + i}:J${trust + 1 + i}`, text, 'quiet')
      .height(trust + 1 + i, heightOf(text, FULL_WIDTH)),
  );
  return sheet.build();
}
