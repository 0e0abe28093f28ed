import { isoDateOfSerial, MONTH_NAMES } from '../../../../shared/units/dates';
import { fieldShown } from '../../../pane/values/show';
import type { ListKey } from './lists';
import { GONE, OUT, daysIn, linesText, readLines } from './lists';
import type { OrderKey } from './fields';
import { ORDER_KEYS, SEASON_FIELDS } from './fields';

/** The season form as typed, and its way to an order book and back. */

export interface OrderRow {
  /** Stays with the row when rows before it come and go. */
  readonly id: number;
  /** What the sheets of its book call it; a new order gets one when it is planned. */
  readonly key?: string | undefined;
  readonly texts: Readonly<Record<OrderKey, string>>;
  readonly forBreeding: boolean;
  /** The buyer no longer wants it; it stays in the book. */
  readonly cancelled?: boolean;
}

export interface SeasonForm {
  /** Questions with one answer, by their path in an order book. */
  readonly texts: Readonly<Record<string, string>>;
  readonly orders: readonly OrderRow[];
  readonly lists: Readonly<Record<ListKey, string>>;
  /** 1 Monday … 7 Sunday. */
  readonly weekdays: readonly number[];
  readonly daysOff: string;
  /** Batches that no longer move, in full; read from a workbook, not typed. */
  readonly batches: readonly Readonly<Record<string, unknown>>[];
  /** What the form keeps and does not ask for: money booked, assumptions, spreads, egg yields by month, seed. */
  readonly kept: Readonly<Record<string, unknown>>;
}

const EVERY_DAY: readonly number[] = [1, 2, 3, 4, 5, 6, 7];
const blankTexts: OrderRow['texts'] = { name: '', product: 'fry', number: '', due: '', grams: '', price: '' };

export const freshId = (orders: readonly OrderRow[]): number =>
  orders.reduce((most, { id }) => Math.max(most, id), 0) + 1;
export const blankOrder = (orders: readonly OrderRow[]): OrderRow => ({
  id: freshId(orders),
  texts: blankTexts,
  forBreeding: false,
});

export const initialForm = (today: number): SeasonForm => ({
  texts: {
    ...Object.fromEntries(SEASON_FIELDS.map(({ path, initial }) => [path, initial ?? ''])),
    plannedOn: isoDateOfSerial(today),
  },
  orders: [blankOrder([])],
  lists: { vats: '', females: '', males: '' },
  weekdays: EVERY_DAY,
  daysOff: '',
  batches: [],
  kept: {},
});

type Tree = Record<string, unknown>;
const asTree = (value: unknown): Tree => (typeof value === 'object' && value !== null ? (value as Tree) : {});
const asList = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
const at = (tree: unknown, path: string): unknown =>
  path.split('.').reduce<unknown>((part, key) => asTree(part)[key], tree);

function put(tree: Tree, path: string, value: unknown): void {
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  let part = tree;
  for (const key of keys) part = (part[key] ??= {}) as Tree;
  part[last] = value;
}

/**
 * Empty fields are left out, so that the order book takes its usual value. Hours may be typed bare; 24:00 is
 * midnight.
 */
const given = (text: string): string | undefined => (text.trim() === '' ? undefined : text.trim());
const hourGiven = given;
/** "85" of a share is meant as 85 %. */
const shareGiven = (text: string): string | undefined =>
  /^\s*\d{2}([.,]\d+)?\s*$/.test(text) ? `${text.trim()} %` : given(text);

export function orderInput({ key: own, texts, forBreeding, cancelled = false }: OrderRow): Tree {
  return {
    ...(own === undefined ? {} : { key: own }),
    ...Object.fromEntries(ORDER_KEYS.map((key) => [key, given(texts[key])])),
    forBreeding,
    cancelled,
  };
}

const entryOf = (kind: string, text: string): unknown =>
  kind === 'hour'
    ? hourGiven(text)
    : kind === 'yesNo'
      ? text === 'yes'
      : kind === 'share'
        ? shareGiven(text)
        : given(text);

/** The form as an order book that nobody has checked yet. */
export function inputOfForm(form: SeasonForm): Tree {
  const tree: Tree = {};
  for (const { path, kind } of SEASON_FIELDS) {
    const text = form.texts[path] ?? '';
    put(tree, path, entryOf(kind, text));
  }
  const entries = (list: ListKey): readonly unknown[] =>
    readLines(list, form.lists[list]).map(({ entry }) => entry);
  return {
    ...tree,
    ...form.kept,
    temperatures: MONTH_NAMES.map((_, i) => given(form.texts[`temperatures.${i}`] ?? '') ?? null),
    staff: { ...asTree(tree.staff), weekdays: form.weekdays, daysOff: daysIn(form.daysOff) },
    orders: form.orders.map(orderInput),
    vats: entries('vats'),
    females: entries('females'),
    males: entries('males'),
    batches: form.batches,
  };
}

const two = (n: number): string => String(n).padStart(2, '0');
const dayText = (value: unknown): string =>
  typeof value === 'number' ? isoDateOfSerial(value) : textOf(value);
const hourText = (value: unknown): string => {
  if (typeof value !== 'number') return textOf(value);
  const minutes = Math.round(60 * value);
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
};
const textOf = (value: unknown): string =>
  typeof value === 'number' || typeof value === 'string' ? String(value) : '';
const shownAs = (kind: string, value: unknown): string => {
  if (kind === 'date') return dayText(value);
  if (kind === 'hour') return hourText(value);
  if (kind === 'yesNo' && typeof value === 'boolean') return value ? 'yes' : 'no';
  if (kind === 'share' && typeof value === 'number') return `${Number((100 * value).toPrecision(6))} %`;
  return textOf(value);
};

function orderRow(order: unknown, id: number): OrderRow {
  const tree = asTree(order);
  const kinds: Readonly<Record<string, string>> = { due: 'date' };
  const texts = Object.fromEntries(
    ORDER_KEYS.map((key) => [key, shownAs(kinds[key] ?? 'text', tree[key])]),
  ) as Record<OrderKey, string>;
  // A book that was read has key and buyer in the name where a buyer comes twice.
  if (typeof tree.buyer === 'string') texts.name = tree.buyer;
  return {
    id,
    ...(typeof tree.key === 'string' ? { key: tree.key } : {}),
    texts: { ...texts, product: texts.product || 'fry' },
    forBreeding: tree.forBreeding === true,
    cancelled: tree.cancelled === true,
  };
}

const fishLine = (fish: unknown, withWeight: boolean): (string | undefined)[] => {
  const { tag, kilograms, family, lastUsed, goneOn } = asTree(fish);
  const gone = dayText(goneOn);
  return [
    textOf(tag),
    ...(withWeight ? [fieldShown(textOf(kilograms))] : []),
    textOf(family),
    dayText(lastUsed),
    gone && `${GONE} ${gone}`,
  ];
};

const ALL_STAGES = 3;
const vatLine = (vat: unknown): (string | undefined)[] => {
  const { name, litres, holds, outFrom, outUntil } = asTree(vat);
  const stages = asList(holds).map(textOf);
  const [from, until] = [dayText(outFrom), dayText(outUntil)];
  return [
    textOf(name),
    fieldShown(textOf(litres)),
    stages.length > 0 && stages.length < ALL_STAGES ? stages.join(' ') : undefined,
    (from || until) && [OUT, from, until && `to ${until}`].filter(Boolean).join(' '),
  ];
};

/**
 * An order book as it would be typed; what it does not say keeps what a new form has. Leaves may be numbers,
 * texts or missing.
 */
export function formOfInput(input: unknown, today: number): SeasonForm {
  const fresh = initialForm(today);
  const tree = asTree(input);
  // A day that cannot be read leaves none: the form then asks for them.
  const days = asList(at(tree, 'staff.weekdays')).map(Number);
  const weekdays = days.length === 0 ? EVERY_DAY : days.every((day) => EVERY_DAY.includes(day)) ? days : [];
  const orders = asList(tree.orders).map((order, i) => orderRow(order, i + 1));
  return {
    texts: Object.fromEntries(
      SEASON_FIELDS.map(({ path, kind }) => [
        path,
        shownAs(kind, at(tree, path)) || (path.startsWith('temperatures.') ? '' : (fresh.texts[path] ?? '')),
      ]),
    ),
    orders: orders.length > 0 ? orders : fresh.orders,
    lists: {
      vats: linesText(asList(tree.vats).map(vatLine)),
      females: linesText(asList(tree.females).map((fish) => fishLine(fish, true))),
      males: linesText(asList(tree.males).map((fish) => fishLine(fish, false))),
    },
    weekdays,
    daysOff: asList(at(tree, 'staff.daysOff')).map(dayText).join('\n'),
    batches: asList(tree.batches).map(asTree),
    kept: Object.fromEntries(
      ['assumptions', 'spreads', 'eggShares', 'seed', 'booked', 'earlier']
        .filter((key) => tree[key] !== undefined)
        .map((key) => [key, tree[key]]),
    ),
  };
}

/** How many figures are the hatchery's own, spreads and months included. */
export const ownFigures = ({ kept }: SeasonForm): number =>
  Object.keys(asTree(kept.assumptions)).length +
  Object.keys(asTree(kept.spreads)).length +
  asList(kept.eggShares).filter((share) => share !== null).length;
