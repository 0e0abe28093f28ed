// Long: two printed cards, block by block.
import { calculate } from '../../../catalogue/calculation';
import { CAUTIONS } from '../../../functions/cautions';
import type { SheetBuilder } from '../../../sheet/workbook/build';
import { SheetBuilder as Builder, styled } from '../../../sheet/workbook/build';
import type { CellModel, SheetModel, StyleName, WorkbookModel } from '../../../sheet/workbook/model';
import { STYLES } from '../../../sheet/workbook/styles';
import { dayText, momentText, timeText, weekdayText } from '../../../units/dates';
import { formatNumber } from '../../../sheet/formula/textFormat';
import type { OrderBook } from '../../../season/book/orderBook';
import type { BatchStay, SeasonBatch } from '../../../season/types';
import { inLanguage } from '../../words/inLanguage';
import type { BookWords } from '../../words/words';
import { LivingPages } from '../context';
import type { BookPlan } from '../layout';
import { writtenNumber } from '../../../units/writtenNumber';

/** Cards to print and hang up: values only, so that they read the same everywhere. */

const many = (n: number): string => (Number.isFinite(n) ? writtenNumber(Math.round(n)) : '');
const when = (at: number): string =>
  Number.isFinite(at) ? `${weekdayText(at)} ${dayText(at)} ${timeText(at)}` : '';
const half = (at: number): number => Math.round(at * 48) / 48;

/** Lines of a text in a column of so many letters; words are not cut. */
const linesOf = (text: string, letters: number): number => {
  let [lines, used] = [1, 0];
  for (const word of text.split(' ')) {
    if (used > 0 && used + 1 + word.length > letters) [lines, used] = [lines + 1, 0];
    used += (used > 0 ? 1 : 0) + word.length;
  }
  return lines;
};
const HEIGHTS = { title: 42, section: 26, heading: 22, line: 30, text: 21 } as const;
const heightOf = (text: string, letters: number, least: number = HEIGHTS.line): number =>
  Math.max(least, linesOf(text, letters) * HEIGHTS.text + 6);

/** Columns B to the last one; the first is a margin. */
const LETTERS = { run: 'BCDEFGH', vat: 'BCDEFG' } as const;
type Kind = keyof typeof LETTERS;
const lastOf = (kind: Kind): string => LETTERS[kind].slice(-1);
const section = (sheet: SheetBuilder, row: number, title: string, kind: Kind): void => {
  for (const letter of LETTERS[kind]) sheet.put(`${letter}${row}`, letter === 'B' ? title : '', 'section');
  sheet.height(row, HEIGHTS.section);
};
const headings = (sheet: SheetBuilder, row: number, words: readonly string[]): void => {
  sheet.row(`B${row}`, words, 'heading').height(row, HEIGHTS.heading);
};

function parents(pages: LivingPages, sheet: SheetBuilder, batch: SeasonBatch, from: number): number {
  const reader = pages.reader(batch);
  const perKilogram = reader.number('hormone') / reader.number('kilograms');
  const unit = String(reader.get('hormoneUnit'));
  section(sheet, from, 'Parents', 'run');
  headings(sheet, from + 1, ['Female', 'kg', `Dose, ${unit}`, 'Male', 'Injected at', 'Eggs, g', 'Initials']);
  batch.pairs.forEach(({ female, male, kilograms }, i) => {
    sheet
      .row(`B${from + 2 + i}`, [
        styled(female, 'label'),
        styled(kilograms, 'cell', { format: '0.00' }),
        styled(kilograms * perKilogram, 'result', { format: '0.00' }),
        styled(male, 'text'),
        styled({}, 'blank'),
        styled({}, 'blank'),
        styled({}, 'blank'),
      ])
      .height(from + 2 + i, HEIGHTS.line);
  });
  const [saline, donors] = [reader.number('saline'), Math.ceil(reader.number('donors'))];
  if (!(saline > 0)) return from + 3 + batch.pairs.length;
  const row = from + 2 + batch.pairs.length;
  const text = `In all ${writtenNumber(reader.number('hormone'), 1)} ${unit} in ${writtenNumber(saline, 1)} mL of salt water (9 g in a litre, boiled)${donors > 0 ? `, glands of about ${donors} donor fish` : ''}.`;
  sheet.merge(`B${row}:H${row}`, text, 'text').height(row, heightOf(text, 80));
  return row + 2;
}

/** The clock of the run: what is expected, and a box for when it was. */
function clock(pages: LivingPages, sheet: SheetBuilder, batch: SeasonBatch, from: number): number {
  const reader = pages.reader(batch);
  const at = (key: 'inject' | 'look' | 'late' | 'hatchAt' | 'hatchEnd' | 'feed'): string =>
    when(half(reader.number(key)));
  // As the calendar says it: at an hour at which people work.
  const firstFood =
    pages.rows.tasks.find((t) => t.batch === batch.name && t.task === 'firstFeed')?.when ?? NaN;
  const lines: readonly (readonly [string, string, string])[] = [
    ['Inject', at('inject'), ''],
    ['First look', at('look'), 'each half hour'],
    ['Strip', when(half(batch.stripAt)), `${many(reader.number('eggs'))} eggs`],
    ['Not later than', at('late'), ''],
    ['First hatch', at('hatchAt'), `${many(reader.number('larvae'))} larvae`],
    ['Hatch over', at('hatchEnd'), 'nets out'],
    ['First food', when(firstFood), `${many(reader.number('feeding'))} larvae`],
    ['Weaned', when(reader.number('weaned') + 1 / 3), `${many(reader.number('fry'))} fry`],
  ];
  section(sheet, from, 'The clock', 'run');
  headings(sheet, from + 1, ['What', 'Expected', '', 'How many', 'Counted', 'Was at', 'Initials']);
  sheet.merge(`C${from + 1}:D${from + 1}`, 'Expected', 'heading');
  lines.forEach(([what, expected, number], i) => {
    const row = from + 2 + i;
    sheet
      .put(`B${row}`, what, 'label')
      .merge(`C${row}:D${row}`, expected, 'result')
      .put(`E${row}`, number, 'text');
    for (const letter of 'FGH') sheet.put(`${letter}${row}`, {}, 'blank');
    sheet.height(row, HEIGHTS.line);
  });
  return from + 3 + lines.length;
}

const WRITTEN: Readonly<Record<Kind, readonly string[]>> = {
  run: ['Date and hour', '°C', 'pH', 'Food, water', 'Counted', 'Dead', 'Initials'],
  vat: ['Day, hour', '°C', 'pH', 'Dead', 'Counted, food', 'Initials'],
};
/** Boxes to write in: readings, counts, dead, food, day by day. */
function boxes(sheet: SheetBuilder, from: number, lines: number, kind: Kind): number {
  section(sheet, from, 'Written down', kind);
  headings(sheet, from + 1, WRITTEN[kind]);
  for (let i = 0; i < lines; i++)
    sheet
      .row(
        `B${from + 2 + i}`,
        WRITTEN[kind].map(() => styled({}, 'blank')),
      )
      .height(from + 2 + i, HEIGHTS.line);
  return from + 3 + lines;
}

/** Letters of a card in points: it hangs on a wall and is read at arm's length, with wet hands. */
const POINTS: Readonly<Partial<Record<StyleName, number>>> = {
  title: 30,
  big: 22,
  section: 18,
  heading: 13,
  label: 17,
  cell: 18,
  result: 19,
  text: 16,
  quiet: 14,
  warning: 14,
};
/** The same card in large letters. */
function large(sheet: SheetModel): SheetModel {
  const cellOf = (cell: CellModel): CellModel => {
    const size = cell.style && POINTS[cell.style];
    return cell.style && size !== undefined ? { ...cell, look: { ...STYLES[cell.style], size } } : cell;
  };
  return {
    ...sheet,
    cells: Object.fromEntries(Object.entries(sheet.cells).map(([at, cell]) => [at, cellOf(cell)])),
  };
}

/** Orders on the cards and who they are for: names stand here alone, cards look them up. */
const NAMES = { sheet: 'Orders', first: 3 } as const;
interface Names {
  readonly sheet: SheetModel | undefined;
  /** The buyer's name of an order as a formula; '' where nobody is named. */
  readonly of: (key: string) => string;
}
function namesOf(pages: LivingPages, keys: readonly string[]): Names {
  const named = keys.filter((key) => (pages.buyers.get(key) ?? key) !== key);
  if (named.length === 0) return { sheet: undefined, of: () => '' };
  const sheet = new Builder(NAMES.sheet, { widths: [2, 10, 34], print: { landscape: false } });
  sheet.put('B1', 'Orders on these cards', 'title').row('B2', ['Order', 'Buyer'], 'heading');
  named.forEach((key, i) =>
    sheet
      .put(`B${NAMES.first + i}`, key, 'label')
      .put(`C${NAMES.first + i}`, pages.buyers.get(key) ?? '', 'text'),
  );
  const column = (letter: string): string =>
    `${NAMES.sheet}!$${letter}$${NAMES.first}:$${letter}$${NAMES.first + named.length - 1}`;
  return {
    sheet: sheet.build(),
    of: (key) => (named.includes(key) ? `=INDEX(${column('C')},MATCH("${key}",${column('B')},0))&""` : ''),
  };
}

/** Rows of a page, those to write in among them; fewer where more stands above. */
const LINES_ON_A4 = 31;
function runCard(pages: LivingPages, batch: SeasonBatch, names: Names): SheetModel {
  const sheet = new Builder(`Run ${batch.name}`, {
    widths: [1, 22, 17, 17, 23, 16, 13, 11],
    hasGridlines: false,
    print: {
      onePage: true,
      landscape: false,
      footer: `${pages.book.hatchery} · printed ${dayText(pages.plan.plannedOn)}`,
    },
  });
  sheet.put('B1', `${pages.book.hatchery}: batch ${batch.name}`, 'title').height(1, HEIGHTS.title);
  const text = `Water ${formatNumber(pages.reader(batch).number('water'), '0.0')} °C, ${pages.book.preparation}.`;
  sheet.merge('B2:H2', text, 'quiet').height(2, heightOf(text, 95));
  const orders = pages.rows.shares.filter((share) => share.batch === batch.name);
  orders.forEach(({ fish, order, on }, i) =>
    sheet
      .merge(`B${3 + i}:D${3 + i}`, `${many(fish)} for ${order} on ${dayText(on)}`, 'quiet')
      .merge(`E${3 + i}:H${3 + i}`, names.of(order), 'quiet'),
  );
  let row = parents(pages, sheet, batch, 3 + Math.max(1, orders.length));
  row = clock(pages, sheet, batch, row);
  const reader = pages.reader(batch);
  const stock = reader.get('stock');
  section(sheet, row, 'Water before the eggs', 'run');
  const water =
    typeof stock === 'number' && stock > 0
      ? `Air first, read the pH. Trial bucket of 10 L: ${writtenNumber(stock, 1)} mL of a stock of 5 g/L. All vats of the eggs: first half ${writtenNumber(reader.number('halfEggs'), 1)} g. Never above pH 8.`
      : 'Air overnight, read the pH. No dose is planned; the vat decides. Never above pH 8.';
  sheet.merge(`B${row + 1}:H${row + 1}`, water, 'text').height(row + 1, heightOf(water, 82));
  row = boxes(sheet, row + 3, Math.max(5, LINES_ON_A4 - row), 'run');
  const care = CAUTIONS['HORMONE'] ?? '';
  sheet.merge(`B${row}:H${row}`, care, 'warning').height(row, heightOf(care, 85));
  return large(sheet.build());
}

const AIR_GONE =
  'Air gone: stop feed, mains off before touching a pump, move the water by hand, ' +
  'then fresh aired water of the same warmth.';
/** What the vat asks for on the hardest day of the stay: its part of the batch's water, minutes without air. */
function asksOf(pages: LivingPages, stay: BatchStay, batch: SeasonBatch): string | undefined {
  const litres = (name: string): number => pages.book.vats.find((vat) => vat.name === name)?.litres ?? 0;
  const days = Array.from(
    { length: Math.max(0, Math.ceil(stay.to - batch.feedFrom)) },
    (_, day) => day,
  ).filter((day) => batch.feedFrom + day >= Math.floor(stay.from));
  const hardest = days
    .map((day) => ({ day, of: pages.day(batch, day) }))
    .reduce<{ day: number; of: ReturnType<LivingPages['day']> } | undefined>(
      (most, one) => (most && most.of.number('change') >= one.of.number('change') ? most : one),
      undefined,
    );
  if (!hardest) return undefined;
  const { day, of } = hardest;
  const part = of.number('litresNow') > 0 ? litres(stay.vat) / of.number('litresNow') : 1;
  const [water, feed] = [of.number('change') * part, of.number('dry') * part];
  return `By ${dayText(batch.feedFrom + day)}: ${many(feed)} g of dry feed and ${many(water)} L of new water a day, in parts. Without air act within ${many(of.number('air'))} minutes.`;
}

/** A task's hour on a vat that the batch is in for some days or weeks. */
const hourOf = (at: number): string => `${dayText(at)} ${timeText(at)}`;
const TASKS_ON_A5 = 4;

function vatCard(
  pages: LivingPages,
  stay: BatchStay,
  batch: SeasonBatch,
  { i, names }: { readonly i: number; readonly names: Names },
): SheetModel {
  const { stage } = stay;
  const vat = pages.book.vats.find(({ name }) => name === stay.vat);
  const last = lastOf('vat');
  const sheet = new Builder(`Vat card ${i + 1}`, {
    widths: [1, 24, 9, 9, 10, 22, 10],
    hasGridlines: false,
    print: { onePage: true, landscape: false, paper: 'A5', footer: pages.book.hatchery },
  });
  const line = (row: number, text: string, letters: number, style: 'text' | 'warning' = 'text'): void => {
    sheet.merge(`B${row}:${last}${row}`, text, style).height(row, heightOf(text, letters));
  };
  sheet
    .put('B1', stay.vat, 'title')
    .height(1, HEIGHTS.title)
    .merge(`B2:${last}2`, `Batch ${batch.name} · ${stay.stage} · ${many(vat?.litres ?? NaN)} L`, 'big')
    .height(2, 34);
  line(
    3,
    `${many(stay.fish)} in it at the beginning · ${when(half(stay.from))} to ${when(half(stay.to))}. Parents: ` +
      batch.pairs.map((p) => `${p.female} × ${p.male}`).join(', '),
    58,
  );
  const next = pages.rows.tasks
    .filter((task) => task.batch === batch.name && task.when >= stay.from - 1 / 24 && task.when <= stay.to)
    .slice(0, TASKS_ON_A5);
  section(sheet, 4, 'Next', 'vat');
  next.forEach(({ when: at, what, order }, k) => {
    const [at5, buyer] = [5 + k, names.of(order)];
    sheet
      .put(`B${at5}`, hourOf(at), 'result')
      .merge(`C${at5}:${buyer === '' ? last : 'E'}${at5}`, what, 'text')
      .height(at5, heightOf(what, buyer === '' ? 41 : 19));
    if (buyer !== '') sheet.merge(`F${at5}:${last}${at5}`, buyer, 'text');
  });
  const row = 6 + next.length;
  const asks = stage === 'eggs' ? undefined : asksOf(pages, stay, batch);
  sheet.height(row - 1, 8);
  if (asks) line(row, asks, 60);
  else sheet.height(row, 4);
  line(row + 1, AIR_GONE, 62, 'warning');
  sheet.height(row + 2, 8);
  boxes(sheet, row + 3, asks ? 6 : 8, 'vat');
  return large(sheet.build());
}

/** Cards of the batches that stand or come up, a workbook of its own: one A4 page a batch, one A5 a vat. */
export function cardsWorkbook(
  book: OrderBook,
  plan: BookPlan,
  batches: readonly string[] = plan.batches
    .filter(({ state }) => state !== 'over' && state !== 'lost')
    .map(({ name }) => name),
  words?: BookWords,
): WorkbookModel {
  const pages = new LivingPages(book, plan);
  const chosen = pages.plan.batches.filter(({ name }) => batches.includes(name));
  let cards = 0;
  const names = namesOf(pages, [
    ...new Set(pages.rows.shares.flatMap(({ batch, order }) => (batches.includes(batch) ? [order] : []))),
  ]);
  const model: WorkbookModel = {
    title: `${book.hatchery}: cards, ${momentText(plan.plannedOn)}`,
    sheets: [
      ...chosen.flatMap((batch) => [
        runCard(pages, batch, names),
        ...plan.stays
          .filter((stay) => stay.batch === batch.name)
          .map((stay) => vatCard(pages, stay, batch, { i: cards++, names })),
      ]),
      ...(names.sheet ? [names.sheet] : []),
    ],
    names: [],
  };
  return calculate(words ? inLanguage(model, words) : model, plan.plannedOn).model;
}
