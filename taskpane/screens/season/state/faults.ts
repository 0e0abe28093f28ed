import { isoDateOfSerial, MONTH_NAMES } from '../../../../shared/units/dates';
import type { TypedTime } from '../../../../shared/units/typedTime';
import { readTypedDay, readTypedHour } from '../../../../shared/units/typedTime';
import { crossFaults } from '../../../../shared/season/book/crossFaults';
import type { BookFault, OrderBook } from '../../../../shared/season/book/orderBook';
import { readOrderBook } from '../../../../shared/season/book/orderBook';
import { ORDER_FIELDS, SEASON_FIELDS, idOfPath } from './fields';
import type { OrderRow, SeasonForm } from './form';
import { inputOfForm, orderInput } from './form';
import type { ListKey } from './lists';
import { LISTS, readLines } from './lists';

/** What is wrong in the form: for each field, by its id on the page, the sentences beside it. */
export type Faults = ReadonlyMap<string, readonly string[]>;

export const orderFieldId = (row: OrderRow, key: string): string =>
  `season-order-${row.id}-${key in ORDER_FIELDS || key === 'forBreeding' ? key : 'name'}`;
export const listId = (list: ListKey): string => `season-${list}`;
export const DAYS_OFF = 'season-staff-daysOff';
export const WEEKDAYS = 'season-staff-weekdays';
export const ORDERS = 'season-orders';
export const BATCHES = 'season-batches';
export const KEPT = 'season-kept';

const isList = (word: string): word is ListKey => LISTS.some((list) => list === word);

function listFault(
  form: SeasonForm,
  list: ListKey,
  at: string | undefined,
  isWhole: boolean,
  message: string,
): readonly [string, string] {
  if (at === undefined) return [listId(list), message];
  const lines = readLines(list, form.lists[list]);
  const { line = 0, fault, entry } = lines[Number(at)] ?? {};
  const name = String(entry?.name ?? entry?.tag ?? '');
  // A fault of the whole entry is that its name stands twice; the line says so in its own way.
  const first = lines.find(
    (other) => String(other.entry.name ?? other.entry.tag ?? '').toLowerCase() === name.toLowerCase(),
  );
  return [
    listId(list),
    `Line ${line}: ${fault ?? (isWhole && first ? `${name} stands on line ${first.line} already. Give each its own name.` : message)}`,
  ];
}

const orderFault = (
  row: OrderRow | undefined,
  key: string | undefined,
  message: string,
): readonly [string, string] => [row ? orderFieldId(row, key ?? 'name') : ORDERS, message];

/** The field a fault belongs to, and its sentence there. */
function placed(form: SeasonForm, { field, message }: BookFault): readonly [string, string] {
  const [head = '', second, third] = field.split('.');
  if (isList(head)) return listFault(form, head, second, third === undefined, message);
  if (head === 'orders') return orderFault(form.orders[Number(second ?? NaN)], third, message);
  if (head === 'batches') return [BATCHES, message];
  if (field.startsWith('staff.daysOff'))
    return [DAYS_OFF, third === undefined ? message : `Day ${Number(third) + 1}: ${message}`];
  if (field.startsWith('staff.weekdays'))
    return [WEEKDAYS, form.weekdays.length === 0 ? 'Choose at least one day of the week.' : message];
  return [SEASON_FIELDS.some(({ path }) => path === field) ? idOfPath(field) : KEPT, message];
}

/** A book in which only what is asked about can be wrong. */
const SOUND = {
  plannedOn: 40_000,
  orders: [{ name: 'sound', product: 'fry', number: 1, due: 73_050 }],
  vats: [{ name: 'sound', litres: 100 }],
  females: [],
  males: [],
  temperatures: MONTH_NAMES.map(() => 26),
};
const faultsIn = (input: object): readonly BookFault[] => {
  const read = readOrderBook(input);
  return 'faults' in read ? read.faults : [];
};

const rowsKnown = new WeakMap<OrderRow, readonly BookFault[]>();
/** Each row is read once and again when it changes: a thousand orders must not make typing slow. */
function rowFaults(row: OrderRow, i: number): readonly BookFault[] {
  let faults = rowsKnown.get(row);
  if (!faults) rowsKnown.set(row, (faults = faultsIn({ ...SOUND, orders: [orderInput(row)] })));
  return faults.length === 0
    ? faults
    : faults.map(({ field, message }) => ({ field: field.replace('orders.0', `orders.${i}`), message }));
}

const timeIn = (read: TypedTime): number | undefined => (read.kind === 'time' ? read.value : undefined);
const serialOf = (value: unknown): number | undefined =>
  typeof value === 'number' ? value : typeof value === 'string' ? timeIn(readTypedDay(value)) : undefined;
const hourOf = (text: string | undefined, otherwise: number): number =>
  timeIn(readTypedHour(text ?? '')) ?? otherwise;

const asBooked = (booked: unknown): readonly unknown[] => (Array.isArray(booked) ? booked : []);

/**
 * Entries that are not possible together are found even while others cannot be read yet: what is unreadable
 * is taken as harmless.
 */
function togetherFaults(form: SeasonForm): readonly BookFault[] {
  const plannedOn = serialOf(form.texts.plannedOn) ?? 0;
  const fish = (list: ListKey) =>
    readLines(list, form.lists[list]).map(({ entry }, i) => ({
      tag: String(entry.tag ?? entry.name ?? `\u0000${i}`),
      lastUsed: plannedOn > 0 ? serialOf(entry.lastUsed) : undefined,
    }));
  return crossFaults({
    plannedOn,
    // In a season that is under way, days gone by are its history.
    booked: form.batches.length > 0 ? form.batches : asBooked(form.kept.booked),
    females: fish('females'),
    males: fish('males'),
    vats: fish('vats').map(({ tag }) => ({ name: tag })),
    orders: form.orders.map(({ texts }, i) => ({
      name: texts.name.trim() || `\u0000${i}`,
      due: serialOf(texts.due) ?? Infinity,
    })),
    staff: {
      stripFrom: hourOf(form.texts['staff.stripFrom'], 6),
      stripTo: hourOf(form.texts['staff.stripTo'], 20),
      injectFrom: hourOf(form.texts['staff.injectFrom'], 0),
      injectTo: hourOf(form.texts['staff.injectTo'], 24),
    },
  }).map(({ path, message }) => ({ field: path.join('.'), message }));
}

function collect(form: SeasonForm, faults: readonly BookFault[]): Faults {
  const byField = new Map<string, string[]>();
  for (const fault of faults) {
    const [id, message] = placed(form, fault);
    const sentences = byField.get(id);
    // A field says one thing at a time; a list says it line by line.
    if (!sentences) byField.set(id, [message]);
    else if (
      !sentences.includes(message) &&
      (message.startsWith('Line ') || message.startsWith('Day ') || id === BATCHES)
    )
      sentences.push(message);
  }
  return byField;
}

const booksKnown = new WeakMap<SeasonForm, ReturnType<typeof readOrderBook>>();
const faultsKnown = new WeakMap<SeasonForm, Faults>();

/** Every fault by its path in the order book, also those that only show once the others are mended. */
export function bookFaults(form: SeasonForm): readonly BookFault[] {
  const full = booksKnown.get(form);
  const input = { ...inputOfForm({ ...form, orders: [] }), orders: SOUND.orders };
  return [
    ...(form.orders.length === 0
      ? [{ field: 'orders', message: 'Orders: there is none yet; add one.' }]
      : []),
    ...faultsIn(input),
    ...form.orders.flatMap(rowFaults),
    ...togetherFaults(form),
    ...(full && 'faults' in full ? full.faults : []),
  ];
}

/** Every fault, found quickly enough to be looked for at every key. */
export function faultsOf(form: SeasonForm): Faults {
  let faults = faultsKnown.get(form);
  if (!faults) {
    faults = collect(form, bookFaults(form));
    faultsKnown.set(form, faults);
  }
  return faults;
}

/**
 * The whole form as a checked order book; undefined when something in it cannot be used, which `faultsOf`
 * then tells.
 */
export function bookOfForm(form: SeasonForm): OrderBook | undefined {
  let read = booksKnown.get(form);
  if (!read) {
    booksKnown.set(form, (read = readOrderBook(inputOfForm(form))));
    faultsKnown.delete(form);
  }
  return 'book' in read ? read.book : undefined;
}

/** Ids in the order of the form. */
const idsOf = (form: SeasonForm): readonly string[] => [
  ...['hatchery', 'plannedOn'].map(idOfPath),
  BATCHES,
  ORDERS,
  ...form.orders.flatMap((row) =>
    [...Object.keys(ORDER_FIELDS), 'forBreeding'].map((key) => orderFieldId(row, key)),
  ),
  ...LISTS.map(listId),
  ...SEASON_FIELDS.filter(({ path }) => /^(temperatures|staff)/.test(path)).map(({ path }) => idOfPath(path)),
  WEEKDAYS,
  DAYS_OFF,
  ...SEASON_FIELDS.map(({ path }) => idOfPath(path)),
  KEPT,
];
export const firstFaultOf = (form: SeasonForm): string | undefined => {
  const faults = faultsOf(form);
  return faults.size === 0 ? undefined : idsOf(form).find((id) => faults.has(id));
};

/**
 * Months between the day of planning and the last order that nobody knows the water of: nothing can be
 * planned for them.
 */
export function unknownMonths(form: SeasonForm): ReadonlySet<number> {
  const from = serialOf(form.texts.plannedOn);
  const dues = form.orders.map(({ texts }) => serialOf(texts.due)).filter((due) => due !== undefined);
  const to = dues.reduce((last, due) => Math.max(last, due), 0);
  const unknown = new Set<number>();
  if (from === undefined || to <= from) return unknown;
  const monthOf = (day: number): number => {
    const [year = 0, month = 0] = isoDateOfSerial(day).split('-').map(Number);
    return year * 12 + month - 1;
  };
  const first = monthOf(from) % 12;
  const months = Math.min(12, monthOf(to) - monthOf(from) + 1);
  for (let i = 0; i < months; i++) {
    const month = (first + i) % 12;
    if ((form.texts[`temperatures.${month}`] ?? '').trim() === '') unknown.add(month);
  }
  return unknown;
}
