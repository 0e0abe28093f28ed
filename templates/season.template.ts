import { livingBook } from '../shared/books/living';
import type { BookInput } from '../shared/books/living';
import { planBatches } from '../shared/season/batches';
import { readOrderBook } from '../shared/season/book/orderBook';
import type { WorkbookModel } from '../shared/sheet/workbook/model';
import type { TemplateLanguage } from './languages';
import { withNames } from './languages';

const numbered = <T>(count: number, of: (i: number) => T): T[] =>
  Array.from({ length: count }, (_, i) => of(i));
const EGGS_AND_FRY = ['eggs', 'fry'];

/** An invented backyard hatchery: one set of three vats under a roof, a few brood fish, three orders. */
export const BACKYARD: BookInput = {
  hatchery: 'Mango Court Hatchery',
  plannedOn: '2027-02-01',
  orders: [
    { name: 'Neighbours', product: 'fry', number: 22_000, due: '2027-03-20', price: 0.04 },
    { name: 'School pond', product: 'fry', number: 18_000, due: '2027-04-24', price: 0.04 },
    { name: 'Market cages', product: 'fingerlings', number: 9000, due: '2027-07-03', price: 0.12 },
  ],
  vats: numbered(3, (i) => ({ name: `Vat ${i + 1}`, litres: 300 })),
  females: [
    { tag: 'Ada', kilograms: 1.4, family: 'old' },
    { tag: 'Bea', kilograms: 1.6, family: 'old' },
    { tag: 'Cleo', kilograms: 1.3, family: 'river' },
    { tag: 'Dot', kilograms: 1.5, family: 'river' },
    { tag: 'Eve', kilograms: 1.4, family: 'old' },
    { tag: 'Fay', kilograms: 1.8, family: 'bought' },
    { tag: 'Gem', kilograms: 1.5, family: 'river' },
    { tag: 'Hope', kilograms: 1.6, family: 'bought' },
  ],
  males: [
    { tag: 'M1', family: 'river' },
    { tag: 'M2', family: 'river' },
    { tag: 'M3', family: 'old' },
    { tag: 'M4', family: 'bought' },
    { tag: 'M5', family: 'old' },
  ],
  staff: { stripFrom: '6:00', stripTo: '10:00', femalesPerDay: 4 },
  temperatures: [25, 26, 27, 27.5, 27.5, 26.5, 26, 26, 26, 26, 25.5, 25],
  restDays: 60,
  spare: 0.1,
  leadDays: { hormone: 10, cysts: 10, feed: 5 },
  water: { ph: 5.9, alkalinity: 0.5 },
  prices: {
    cystsPerKilogram: 70,
    feedPerKilogram: 2.2,
    hormonePerMillilitre: 3.5,
    male: 6,
    perRun: 15,
    perVatDay: 0.2,
    perMonth: 60,
    atHand: 400,
  },
};

const BUYERS = [
  'Hill ponds',
  'Weir farm',
  'Clay pits',
  'Island cages',
  'Canal co-op',
  'Upper dam',
  'Brick works',
  'Palm estate',
] as const;

/** An invented commercial season: forty deliveries to eight buyers from March to November. */
export const COMMERCIAL: BookInput = {
  hatchery: 'Long Weir Hatchery',
  plannedOn: '2027-01-04',
  orders: numbered(40, (i) => ({
    name: `${BUYERS[i % BUYERS.length] ?? ''} ${Math.floor(i / BUYERS.length) + 1}`,
    product: i % 3 === 0 ? 'fry' : 'fingerlings',
    number: (i % 3 === 0 ? 18_000 : 9500) + 500 * (i % 7),
    due: 46_470 + 6 * i,
    price: i % 3 === 0 ? 0.045 : 0.12,
  })),
  vats: [
    ...numbered(8, (i) => ({ name: `Trough ${i + 1}`, litres: 600, holds: EGGS_AND_FRY })),
    ...numbered(16, (i) => ({ name: `Round ${i + 1}`, litres: 1000 + 500 * (i % 3) })),
  ],
  females: numbered(72, (i) => ({
    tag: `F${i + 1}`,
    kilograms: Number((1.1 + 0.05 * (i % 16)).toFixed(2)),
    family: `line ${'ABCD'.charAt(i % 4)}`,
  })),
  males: numbered(96, (i) => ({ tag: `M${i + 1}`, family: `line ${'ABCD'.charAt((i + 1) % 4)}` })),
  staff: {
    stripFrom: '5:00',
    stripTo: '11:00',
    weekdays: [1, 2, 3, 4, 5, 6],
    femalesPerDay: 12,
    daysOff: ['2027-05-01'],
  },
  temperatures: [25.5, 26, 27, 27.5, 28, 27.5, 27, 27, 27, 26.5, 26, 25.5],
  restDays: 75,
  water: { ph: 6.2, alkalinity: 0.6 },
  prices: {
    cystsPerKilogram: 62,
    feedPerKilogram: 1.8,
    hormonePerMillilitre: 2.8,
    male: 7,
    perRun: 120,
    perVatDay: 0.9,
    perMonth: 3400,
    atHand: 12_000,
  },
};

export function seasonTemplate(input: BookInput, language?: TemplateLanguage): WorkbookModel {
  const read = readOrderBook(language ? withNames(input, language.names) : input);
  if ('faults' in read) throw new Error(read.faults.map(({ message }) => message).join(' '));
  return livingBook(read.book, planBatches(read.book), undefined, language?.words);
}
