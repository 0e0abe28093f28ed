import { isoDateOfSerial, MONTH_NAMES } from '../../../../shared/units/dates';
import type { ListKey } from './lists';
import { daysIn, linesText, readLines } from './lists';
import type { OrderKey } from './fields';
import { ORDER_KEYS, SEASON_FIELDS } from './fields';

/** The season form as typed, and its way to an order book and back. */

export interface OrderRow {
  /** Stays with the row when rows before it come and go. */
  readonly id: number;
  readonly texts: Readonly<Record<OrderKey, string>>;
  readonly forBreeding: boolean;
}

export interface SeasonForm {
  /** Questions with one answer, by their path in an order book. */
  readonly texts: Readonly<Record<string, string>>;
  readonly orders: readonly OrderRow[];
  readonly lists: Readonly<Record<ListKey, string>>;
  /** 1 Monday … 7 Sunday. */
  readonly weekdays: readonly number[];
  readonly daysOff: string;
  /** What is in the vats; read from a workbook, not typed. */
  readonly underway: readonly Readonly<Record<string, unknown>>[];
  /** Figures the form keeps and does not ask for: assumptions, spreads, egg yields by month, seed. */
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
  underway: [],
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

export function orderInput({ texts, forBreeding }: OrderRow): Tree {
  return { ...Object.fromEntries(ORDER_KEYS.map((key) => [key, given(texts[key])])), forBreeding };
}

/** The form as an order book that nobody has checked yet. */
export function inputOfForm(form: SeasonForm): Tree {
  const tree: Tree = {};
  for (const { path, kind } of SEASON_FIELDS) {
    const text = form.texts[path] ?? '';
    put(tree, path, kind === 'hour' ? hourGiven(text) : kind === 'yesNo' ? text === 'yes' : given(text));
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
    underway: form.underway,
  };
}

const two = (n: number): string => String(n).padStart(2, '0');
const dayText = (value: unknown): string =>
  typeof value === 'number' ? isoDateOfSerial(value) : textOf(value);
const hourText = (value: unknown): string =>
  typeof value === 'number'
    ? `${two(Math.floor(value))}:${two(Math.round((value % 1) * 60))}`
    : textOf(value);
const textOf = (value: unknown): string =>
  typeof value === 'number' || typeof value === 'string' ? String(value) : '';
const shownAs = (kind: string, value: unknown): string =>
  kind === 'date'
    ? dayText(value)
    : kind === 'hour'
      ? hourText(value)
      : kind === 'yesNo' && typeof value === 'boolean'
        ? value
          ? 'yes'
          : 'no'
        : textOf(value);

function orderRow(order: unknown, id: number): OrderRow {
  const tree = asTree(order);
  const kinds: Readonly<Record<string, string>> = { due: 'date' };
  const texts = Object.fromEntries(
    ORDER_KEYS.map((key) => [key, shownAs(kinds[key] ?? 'text', tree[key])]),
  ) as Record<OrderKey, string>;
  return { id, texts: { ...texts, product: texts.product || 'fry' }, forBreeding: tree.forBreeding === true };
}

const fishLine = (fish: unknown, withWeight: boolean): (string | undefined)[] => {
  const { tag, kilograms, family, lastUsed } = asTree(fish);
  return [textOf(tag), ...(withWeight ? [textOf(kilograms)] : []), textOf(family), dayText(lastUsed)];
};

const ALL_STAGES = 3;
const vatLine = (vat: unknown): (string | undefined)[] => {
  const { name, litres, holds } = asTree(vat);
  const stages = asList(holds).map(textOf);
  return [
    textOf(name),
    textOf(litres),
    stages.length > 0 && stages.length < ALL_STAGES ? stages.join(' ') : undefined,
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
    underway: asList(tree.underway).map(asTree),
    kept: Object.fromEntries(
      ['assumptions', 'spreads', 'eggShares', 'seed']
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
