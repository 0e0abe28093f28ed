// Long: two printed cards, block by block.
import { calculate } from '../../catalogue/calculation';
import { CAUTIONS } from '../../functions/cautions';
import type { SheetBuilder } from '../../sheet/workbook/build';
import { SheetBuilder as Builder, heightFor, styled } from '../../sheet/workbook/build';
import type { SheetModel, WorkbookModel } from '../../sheet/workbook/model';
import { dayText, momentText, timeText, weekdayText } from '../../units/dates';
import { formatNumber } from '../../sheet/formula/textFormat';
import type { OrderBook } from '../../season/orderBook';
import type { BatchStay, SeasonBatch } from '../../season/types';
import { LivingPages } from './context';
import type { BookPlan } from './layout';

/** Cards to print and hang up: values only, so that they read the same everywhere. */

const many = (n: number): string => (Number.isFinite(n) ? formatNumber(Math.round(n), '#,##0') : '');
const when = (at: number): string =>
  Number.isFinite(at) ? `${weekdayText(at)} ${dayText(at)} ${timeText(at)}` : '';
const half = (at: number): number => Math.round(at * 48) / 48;

const section = (sheet: SheetBuilder, row: number, title: string): void => {
  for (const letter of 'BCDEFG') sheet.put(`${letter}${row}`, letter === 'B' ? title : '', 'section');
};

function parents(pages: LivingPages, sheet: SheetBuilder, batch: SeasonBatch, from: number): number {
  const reader = pages.reader(batch);
  const perKilogram = reader.number('hormone') / reader.number('kilograms');
  const unit = String(reader.get('hormoneUnit'));
  section(sheet, from, 'Parents');
  sheet.row(`B${from + 1}`, ['Female', 'kg', `Dose, ${unit}`, 'Male', 'Injected at', 'Eggs, g'], 'heading');
  batch.pairs.forEach(({ female, male, kilograms }, i) => {
    sheet
      .row(`B${from + 2 + i}`, [
        styled(female, 'label'),
        styled(kilograms, 'cell', { format: '0.00' }),
        styled(kilograms * perKilogram, 'result', { format: '0.00' }),
        styled(male, 'label'),
        styled({}, 'blank'),
        styled({}, 'blank'),
      ])
      .height(from + 2 + i, 22);
  });
  const [saline, donors] = [reader.number('saline'), Math.ceil(reader.number('donors'))];
  if (!(saline > 0)) return from + 3 + batch.pairs.length;
  const row = from + 2 + batch.pairs.length;
  sheet
    .merge(
      `B${row}:G${row}`,
      `In all ${formatNumber(reader.number('hormone'), '#,##0.0')} ${unit} in ${formatNumber(saline, '0.0')} mL of salt water (9 g in a litre, boiled)${donors > 0 ? `, glands of about ${donors} donor fish` : ''}.`,
      'text',
    )
    .height(row, 24);
  return row + 2;
}

/** The clock of the run: what is expected, and a box for when it was. */
function clock(pages: LivingPages, sheet: SheetBuilder, batch: SeasonBatch, from: number): number {
  const reader = pages.reader(batch);
  const at = (key: 'inject' | 'look' | 'late' | 'hatchAt' | 'hatchEnd' | 'feed'): string =>
    when(half(reader.number(key)));
  const lines: readonly (readonly [string, string, string])[] = [
    ['Inject', at('inject'), ''],
    ['First look, then every half hour', at('look'), ''],
    ['Strip', when(half(batch.stripAt)), `${many(reader.number('eggs'))} eggs`],
    ['Nobody has tested later than', at('late'), ''],
    ['First hatch', at('hatchAt'), `${many(reader.number('larvae'))} larvae`],
    ['Hatch over, net out', at('hatchEnd'), ''],
    ['First food', at('feed'), `${many(reader.number('feeding'))} larvae`],
    ['Weaned', when(reader.number('weaned') + 1 / 3), `${many(reader.number('fry'))} fry`],
  ];
  section(sheet, from, 'The clock');
  sheet
    .row(`B${from + 1}`, ['What', 'Expected', '', 'How many', 'Was at', 'Initials'], 'heading')
    .merge(`C${from + 1}:D${from + 1}`, 'Expected', 'heading');
  lines.forEach(([what, expected, number], i) => {
    const row = from + 2 + i;
    sheet
      .put(`B${row}`, what, 'label')
      .merge(`C${row}:D${row}`, expected, 'result')
      .put(`E${row}`, number, 'text')
      .put(`F${row}`, {}, 'blank')
      .put(`G${row}`, {}, 'blank')
      .height(row, 24);
  });
  return from + 3 + lines.length;
}

/** Boxes to write in: readings, doses, dead, day by day. */
function boxes(sheet: SheetBuilder, from: number, lines: number): number {
  section(sheet, from, 'Written down');
  sheet.row(
    `B${from + 1}`,
    ['Date and hour', '°C', 'pH', 'Dead', 'Food, water changed', 'Initials'],
    'heading',
  );
  for (let i = 0; i < lines; i++)
    sheet
      .row(
        `B${from + 2 + i}`,
        Array.from({ length: 6 }, () => styled({}, 'blank')),
      )
      .height(from + 2 + i, 22);
  return from + 3 + lines;
}

const LINES_ON_A4 = 34;
function runCard(pages: LivingPages, batch: SeasonBatch): SheetModel {
  const sheet = new Builder(`Run ${batch.name}`, {
    widths: [1, 30, 14, 14, 18, 22, 12],
    hasGridlines: false,
    print: {
      onePage: true,
      landscape: false,
      footer: `${pages.book.hatchery} · printed ${dayText(pages.plan.plannedOn)}`,
    },
  });
  sheet.put('B1', `${pages.book.hatchery}: batch ${batch.name}`, 'title').height(1, 30);
  const orders = pages.rows.shares
    .filter((share) => share.batch === batch.name)
    .map((share) => `${many(share.fish)} for ${share.order} on ${dayText(share.on)}`);
  const text = `Water ${formatNumber(pages.reader(batch).number('water'), '0.0')} °C, ${pages.book.preparation}. ${orders.join('; ')}`;
  sheet.merge('B2:G2', text, 'quiet').height(2, heightFor([text, 105]));
  let row = parents(pages, sheet, batch, 4);
  row = clock(pages, sheet, batch, row);
  const reader = pages.reader(batch);
  const stock = reader.get('stock');
  section(sheet, row, 'Water before the eggs');
  sheet
    .merge(
      `B${row + 1}:G${row + 1}`,
      typeof stock === 'number' && stock > 0
        ? `Air first, read the pH. Trial bucket of 10 L: ${formatNumber(stock, '0.0')} mL of a stock of 5 g/L. All vats of the eggs: first half ${formatNumber(reader.number('halfEggs'), '#,##0.0')} g. Never above pH 8.`
        : 'Air overnight, read the pH. No dose is planned; the vat decides. Never above pH 8.',
      'text',
    )
    .height(row + 1, 32);
  row = boxes(sheet, row + 3, Math.max(6, LINES_ON_A4 - row));
  const care = CAUTIONS['HORMONE'] ?? '';
  sheet.merge(`B${row}:G${row}`, care, 'warning').height(row, heightFor([care, 90]));
  return sheet.build();
}

function vatCard(pages: LivingPages, stay: BatchStay, batch: SeasonBatch, i: number): SheetModel {
  const vat = pages.book.vats.find(({ name }) => name === stay.vat);
  const sheet = new Builder(`Vat card ${i + 1}`, {
    widths: [1, 16, 10, 10, 10, 20, 10],
    hasGridlines: false,
    print: { onePage: true, landscape: false, paper: 'A5', footer: pages.book.hatchery },
  });
  sheet
    .put('B1', stay.vat, 'title')
    .height(1, 34)
    .merge('B2:G2', `Batch ${batch.name} · ${stay.stage} · ${many(vat?.litres ?? NaN)} L`, 'big')
    .height(2, 28)
    .merge(
      'B3:G3',
      `${many(stay.fish)} in it at the beginning · ${when(stay.from)} to ${when(stay.to)}`,
      'text',
    )
    .height(3, 30)
    .merge('B4:G4', `Parents: ${batch.pairs.map((p) => `${p.female} × ${p.male}`).join(', ')}`, 'text')
    .height(4, 30);
  const next: readonly string[] = pages.rows.tasks
    .filter((task) => task.batch === batch.name && task.when >= stay.from - 1 / 24 && task.when <= stay.to)
    .slice(0, 5)
    .map((task) => `${when(task.when)}  ${task.what}`);
  section(sheet, 6, 'Next');
  next.forEach((text, k) =>
    sheet.merge(`B${7 + k}:G${7 + k}`, text, 'text').height(7 + k, heightFor([text, 62])),
  );
  boxes(sheet, 8 + next.length, 12);
  return sheet.build();
}

/** Cards of the batches that stand or come up, a workbook of its own: one A4 page a batch, one A5 a vat. */
export function cardsWorkbook(
  book: OrderBook,
  plan: BookPlan,
  batches: readonly string[] = plan.batches
    .filter(({ state }) => state !== 'over' && state !== 'lost')
    .map(({ name }) => name),
): WorkbookModel {
  const pages = new LivingPages(book, plan);
  const chosen = plan.batches.filter(({ name }) => batches.includes(name));
  let cards = 0;
  return calculate(
    {
      title: `${book.hatchery}: cards, ${momentText(plan.plannedOn)}`,
      sheets: chosen.flatMap((batch) => [
        runCard(pages, batch),
        ...plan.stays
          .filter((stay) => stay.batch === batch.name)
          .map((stay) => vatCard(pages, stay, batch, cards++)),
      ]),
      names: [],
    },
    plan.plannedOn,
  ).model;
}
