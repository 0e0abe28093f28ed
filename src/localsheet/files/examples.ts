import { livingBook } from '../../../shared/books/living';
import { BOOK_LANGUAGES } from '../../../shared/books/words';
import { inLanguage } from '../../../shared/books/words/inLanguage';
import type { BookWords } from '../../../shared/books/words/words';
import { planBatches } from '../../../shared/season/batches';
import { readOneOrder } from '../../../shared/season/one';
import { readOrderBook } from '../../../shared/season/book/orderBook';
import type { CellModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { SheetBuilder } from '../../../shared/sheet/workbook/build';
import type { ExampleId } from './exampleList';

/** Workbooks to look at and play with. Hatcheries, numbers and dates are invented. */

const LEAD_DAYS = 75;

/** One run of an invented hatchery on a peat stream, wanted some weeks from today. */
function season(today: number, words?: BookWords): WorkbookModel {
  const read = readOneOrder({
    hatchery: 'Alder Brook Hatchery',
    product: 'fry',
    wanted: 40_000,
    wantedOn: today + LEAD_DAYS,
    plannedOn: today,
    females: 8,
    femaleWeight: 1.4,
    males: 8,
    vats: 6,
    vatLitres: 1000,
    temperature: 26.5,
    ph: 5.2,
    phWanted: 7,
    alkalinity: 0.3,
    material: 'soda ash',
    preparation: 'ready-made solution',
    stripHour: 7,
  });
  if ('faults' in read) throw new Error(read.faults.map((fault) => fault.message).join(' '));
  return livingBook(read.book, planBatches(read.book), undefined, words);
}

/** A season of three runs in one set of vats, planned from today on. */
function wholeSeason(today: number, words?: BookWords): WorkbookModel {
  const read = readOrderBook({
    hatchery: 'Fern Hollow Hatchery',
    plannedOn: today,
    orders: [
      { name: 'Village ponds', product: 'fry', number: 20_000, due: today + 55, price: 0.04 },
      { name: 'Tank growers', product: 'fry', number: 16_000, due: today + 90, price: 0.045 },
      { name: 'Lake cages', product: 'fingerlings', number: 8000, due: today + 140, price: 0.12 },
    ],
    vats: ['Vat 1', 'Vat 2', 'Vat 3'].map((name) => ({ name, litres: 400 })),
    females: [0.9, 1.1, 1, 1.2, 0.8].map((kilograms, i) => ({
      tag: `F${i + 1}`,
      kilograms,
      family: i % 2 === 0 ? 'old' : 'new',
    })),
    males: ['M1', 'M2', 'M3', 'M4'].map((tag, i) => ({ tag, family: i % 2 === 0 ? 'bought' : 'river' })),
    temperatures: Array.from({ length: 12 }, () => 26.5),
    restDays: 60,
    spare: 0.4,
    water: { ph: 5.6, alkalinity: 0.4 },
    prices: {
      cystsPerKilogram: 65,
      feedPerKilogram: 2,
      hormonePerMillilitre: 3,
      male: 6,
      perRun: 20,
      perVatDay: 0.3,
      perMonth: 80,
      atHand: 500,
    },
  });
  if ('faults' in read) throw new Error(read.faults.map((fault) => fault.message).join(' '));
  return livingBook(read.book, planBatches(read.book), undefined, words);
}

const READINGS: readonly (readonly [number, number, number])[] = [
  [7.1, 26.4, 0.6],
  [7.3, 26.1, 0.9],
  [7.6, 27, 1.1],
  [7.9, 27.8, 1.4],
  [8.1, 28.2, 1.2],
  [8.3, 28.9, 1],
  [7.8, 27.5, 0.7],
  [7.4, 26.6, 0.5],
];
const LIMIT = 0.02;

/**
 * A week of water readings: one formula per row, the share of ammonia that is toxic, and the line against the
 * limit.
 */
function readings(today: number, words?: BookWords): WorkbookModel {
  const sheet = new SheetBuilder('Water log', {
    widths: [19, 9, 14, 16, 15, 18, 24],
    freeze: { rows: 5, columns: 1 },
  })
    .height(1, 27)
    .height(5, 20);
  sheet
    .put('A1', 'Water readings, nursery vat', 'title')
    .put('A2', 'Invented numbers. Change pH or temperature and watch the toxic part move.', 'subtitle');
  sheet.put('A3', 'Keep below (mg/L)', 'label').put('B3', LIMIT, 'input', { format: '0.000' });
  sheet.row(
    'A5',
    ['Day', 'pH', 'Temp. (°C)', 'Ammonia (mg/L)', 'Toxic share', 'Toxic part (mg/L)', 'What to do'],
    'heading',
  );
  READINGS.forEach(([ph, temperature, total], i) => {
    const row = 6 + i;
    const number = (value: number, format: string): CellModel => ({ value, format, style: 'input' });
    sheet.row(`A${row}`, [
      { value: Math.floor(today) - READINGS.length + i + 1, format: 'ddd d mmm', style: 'cell' },
      number(ph, '0.0'),
      number(temperature, '0.0'),
      number(total, '0.0'),
      { formula: `=SPAWN.AMMONIA.SHARE(B${row},C${row})`, format: '0.0%', style: 'result' },
      { formula: `=D${row}*E${row}`, format: '0.000', style: 'result' },
      { formula: `=IF(F${row}>$B$3,"Change water, feed less","Good")`, style: 'text' },
    ]);
  });
  const last = 5 + READINGS.length;
  sheet.when({ range: `F6:F${last}`, formula: '=$F6>$B$3', style: 'bad' });
  sheet.chart({
    kind: 'line',
    title: 'Toxic ammonia by day',
    categories: `'Water log'!$A$6:$A$${last}`,
    series: [{ name: 'Toxic part (mg/L)', values: `'Water log'!$F$6:$F$${last}` }],
    xTitle: 'Day',
    yTitle: 'mg/L',
    valueFormat: '0.000',
    categoryFormat: 'd mmm',
    from: `A${last + 2}`,
    to: `E${last + 17}`,
  });
  const model: WorkbookModel = { title: 'Water log', sheets: [sheet.build()], names: [] };
  return words ? inLanguage(model, words) : model;
}

const BUILDERS: Readonly<Record<ExampleId, (today: number, words?: BookWords) => WorkbookModel>> = {
  season,
  'whole-season': wholeSeason,
  water: readings,
};
/** `today` is an Excel serial; `language` as a browser says it. */
export const buildExample = (id: ExampleId, today: number, language = 'en'): WorkbookModel =>
  BUILDERS[id](today, BOOK_LANGUAGES[language.toLowerCase().split('-')[0] ?? '']);
