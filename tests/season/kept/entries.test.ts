import { planFieldList, readOneOrder } from '../../../shared/season/one';
import { readOrderBook } from '../../../shared/season/book/orderBook';
import { seasonSchemas } from '../../../shared/season/batches/answer/schema';
import { expectKept } from '../../support/kept';
import { ORDER } from '../../run/support';
import { LIVED } from '../../books/living/livedBook';

/**
 * Every entry of an order book and of the form of one order: least, most and usual value as its schema says them,
 * the entry at either end (taken) and just beyond it (a sentence), and entries of the wrong kind.
 */
type Json = Readonly<Record<string, unknown>>;
const isJson = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const { book: schema } = seasonSchemas();

/** Every number of the schema, with its way from the top; of a list, the first item. */
function numbersOf(about: unknown, way: readonly (string | number)[] = []): [typeof way, Json][] {
  if (!isJson(about)) return [];
  if ('minimum' in about || 'maximum' in about) return [[way, about]];
  const own = isJson(about.properties)
    ? Object.entries(about.properties).flatMap(([key, inner]) => numbersOf(inner, [...way, key]))
    : [];
  const any = Array.isArray(about.anyOf) ? about.anyOf.flatMap((inner) => numbersOf(inner, way)) : [];
  return [...own, ...any, ...numbersOf(about.items, [...way, 0])];
}
const put = (value: unknown, [step, ...rest]: readonly (string | number)[], to: unknown): unknown => {
  if (step === undefined) return to;
  if (Array.isArray(value) || typeof step === 'number') {
    const list = [...((Array.isArray(value) ? value : []) as unknown[])];
    list[Number(step)] = put(list[Number(step)], rest, to);
    return list;
  }
  return { ...(isJson(value) ? value : {}), [step]: put(isJson(value) ? value[step] : undefined, rest, to) };
};
const BATCH = {
  name: 'B1',
  clock: {
    temperature: 26,
    latencyHours: 11,
    injectAt: 46_420.8,
    checkAt: 46_421.2,
    stripAt: 46_421.3,
    lateAt: 46_421.4,
    hatchAt: 46_422.4,
    hatchEndAt: 46_422.6,
    firstFeedAt: 46_424.4,
    feedFrom: 46_424,
    weanedAt: 46_436.3,
  },
  pairs: [{ female: 'F1', male: 'M1', kilograms: 1.1 }],
  eggs: 50_000,
  counts: [{ at: 46_424.5, stage: 'feeding', number: 20_000 }],
  weighed: { on: 46_430, grams: 0.05 },
  events: [{ at: 46_428, kind: 'died', number: 10, paid: 0 }],
  stays: [{ vat: 'Round 1', stage: 'eggs', from: 46_421.3, to: 46_424.4 }],
  ticks: [{ task: 'Inject', at: 46_420.8 }],
};
const FULL = {
  ...LIVED,
  batches: [BATCH],
  booked: [{ date: 46_420, what: 'cysts', amount: -60 }],
  earlier: [{ name: 'B0', stripOn: 46_400 }],
};
const said = (input: unknown): string => {
  const read = readOrderBook(input);
  return 'faults' in read ? read.faults.map(({ field, message }) => `${field} | ${message}`).join(' / ') : '';
};

const step = (about: Json, bound: number): number =>
  about.type === 'integer' || (Array.isArray(about.type) && about.type.includes('integer'))
    ? 1
    : Math.max(1e-9, Math.abs(bound) * 1e-6);

test('the book that holds every entry is taken', () => {
  expect(said(FULL)).toBe('');
});

test('an order book: limits, usual values and sentences', () => {
  const numbers = numbersOf(schema);
  expect(numbers.length).toBeGreaterThan(60);
  expectKept('order-book', {
    schema,
    ends: numbers.map(([way, about]) => {
      const { minimum, maximum } = about as { minimum?: number; maximum?: number };
      return [
        way.join('.'),
        ...(minimum === undefined
          ? []
          : [said(put(FULL, way, minimum)), said(put(FULL, way, minimum - step(about, minimum)))]),
        ...(maximum === undefined
          ? []
          : [said(put(FULL, way, maximum)), said(put(FULL, way, maximum + step(about, maximum)))]),
        said(put(FULL, way, 'a few')),
      ];
    }),
  });
});

test('the form of one order: either end and beyond', () => {
  const saidOf = (key: string, value: unknown): string => {
    const read = readOneOrder({ ...ORDER, [key]: value });
    return 'faults' in read ? read.faults.map(({ message }) => message).join(' / ') : '';
  };
  expectKept(
    'one-order',
    planFieldList.map((field) => {
      const { key } = field;
      if (field.kind === 'choice') return [key, ...[...field.choices, 'other', 7].map((v) => saidOf(key, v))];
      if (field.kind === 'text')
        return [
          key,
          ...['', ' ', 'x'.repeat(field.longest), 'x'.repeat(field.longest + 1), 5].map((v) =>
            saidOf(key, v),
          ),
        ];
      const by = field.kind === 'number' || field.kind === 'hour' ? 1e-3 : 1;
      return [
        key,
        field.initial ?? '',
        field.usual ?? '',
        ...[field.min, field.min - by, field.max, field.max + by, field.min + 0.5, 'a few', '', null].map(
          (v) => saidOf(key, v),
        ),
      ];
    }),
  );
});
