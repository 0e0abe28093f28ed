/* eslint-disable complexity -- a life is one thing after another */
// Long: a season of twelve weeks is one thing after another.
import { asOf, livingBook, LivingPages } from '../../../shared/books/living';
import type { BookRead } from '../../../shared/books/living';
import type { Table } from '../../../shared/books/living/table';
import { calculate } from '../../../shared/catalogue/calculation';
import { readXlsx, writeXlsx } from '../../../shared/files';
import { rngOf } from '../../../shared/maths/rng';
import { planBatches, standingOf } from '../../../shared/season/batches';
import type { OrderBook } from '../../../shared/season/book/orderBook';
import { keyOf } from '../../../shared/season/book/orderKeys';
import type { SeasonPlan } from '../../../shared/season/types';
import { assumed } from '../../../shared/families/assumptions';
import { parseAddress } from '../../../shared/sheet/formula/address';
import type { CellModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { bookOf, checked } from './support';
import { readBack } from '../../books/living/support';

/**
 * A hatchery with thirty small buyers, lived for twelve weeks in its own workbook: every week what came is typed
 * into the cells, the file is saved, opened, read, planned again and written over itself. What was typed is kept
 * on paper beside it, and paper and workbook are compared every week.
 */
const START = 46_447; // Monday, 1 March 2027
const WEEKS = 12;
const EFFORT = { looks: 60_000, mostTries: 200, seed: 7 } as const;
const OPTIONS = { draws: 600, explains: false, effort: EFFORT } as const;

export const HATCHERY = {
  hatchery: 'Fig Lane Hatchery',
  plannedOn: START,
  certainty: 0.8,
  orders: Array.from({ length: 30 }, (_, i) => ({
    name: `Buyer ${i + 1}`,
    product: i % 2 === 0 ? 'fry' : 'fingerlings',
    number: 500 * (1 + ((i * 7) % 12)),
    due: START + 38 + Math.floor((i * 75) / 30),
    price: i % 2 === 0 ? 0.05 : 0.12,
  })),
  vats: Array.from({ length: 8 }, (_, i) => ({ name: `Vat ${i + 1}`, litres: 600 + 150 * (i % 4) })),
  females: Array.from({ length: 14 }, (_, i) => ({
    tag: `F${i + 1}`,
    kilograms: 0.9 + 0.07 * i,
    family: `line ${i % 4}`,
  })),
  males: Array.from({ length: 9 }, (_, i) => ({ tag: `M${i + 1}`, family: `line ${i % 4}` })),
  temperatures: [25, 26, 27, 27.5, 28, 27.5, 27, 27, 27, 26.5, 26, 25],
} as const;

type Value = string | number;
type Cells = Record<string, Value>;
type Batch = OrderBook['batches'][number];
type LogLine = Readonly<
  Partial<Record<'at' | 'batch' | 'what' | 'number' | 'stage' | 'order' | 'paid' | 'by' | 'note', Value>>
>;

/** All that anybody ever wrote into the book. */
export interface Paper {
  readonly log: LogLine[];
  readonly booked: { readonly date: number; readonly amount: number; readonly what: string }[];
  readonly ticks: {
    readonly batch: Value;
    readonly task: Value;
    readonly order: Value;
    readonly later: Value;
    readonly done: Value;
    readonly by: Value;
  }[];
  readonly remarks: { readonly batch: string; readonly female: string; readonly remark: string }[];
}
export interface Story {
  readonly wrong: string[];
  readonly paper: Paper;
  readonly book: OrderBook;
  readonly plan: SeasonPlan;
  readonly model: WorkbookModel;
  readonly sold: number;
}

/** Saved and opened again: what a program finds in the file. */
function saved(model: WorkbookModel): WorkbookModel {
  const read = readXlsx(writeXlsx(model));
  if (!('model' in read)) throw new Error(read.fault);
  return read.model;
}

/** A hand that types into tables by their headings. */
class Hand {
  private readonly sheets = new Map<string, Cells>();
  type<K extends string>(table: Table<K>, line: number, values: Readonly<Partial<Record<K, Value>>>): void {
    const cells = this.sheets.get(table.title) ?? {};
    this.sheets.set(table.title, cells);
    for (const [key, value] of Object.entries(values) as [K, Value | undefined][])
      if (value !== undefined) cells[`${table.letters[key]}${table.first + line}`] = value;
  }
  beside(model: WorkbookModel, sheet: string, label: string, value: Value): void {
    const cells = model.sheets.find(({ name }) => name === sheet)?.cells ?? {};
    const at = Object.keys(cells).find((address) => cells[address]?.value === label) ?? '';
    const place = parseAddress(at);
    if (!place) throw new Error(`no ${label} on ${sheet}`);
    const own = this.sheets.get(sheet) ?? {};
    this.sheets.set(sheet, own);
    own[`${String.fromCharCode(65 + place.column + 1)}${place.row + 1}`] = value;
  }
  into(model: WorkbookModel): WorkbookModel {
    return {
      ...model,
      sheets: model.sheets.map((sheet) => {
        const typed = this.sheets.get(sheet.name);
        if (!typed) return sheet;
        const cells: Record<string, CellModel> = { ...sheet.cells };
        for (const [address, value] of Object.entries(typed)) {
          if (cells[address]?.formula !== undefined)
            throw new Error(`${sheet.name} ${address} holds a formula`);
          cells[address] = { ...cells[address], value };
        }
        return { ...sheet, cells };
      }),
    };
  }
}

/** Lines of the Checks sheet that do not hold. */
export const broken = (model: WorkbookModel): string[] => {
  const cells = model.sheets.find(({ name }) => name === 'Checks')?.cells ?? {};
  return Object.entries(cells).flatMap(([address, { value }]) =>
    address.startsWith('F') && typeof value === 'string' && /^[×?]/.test(value)
      ? [
          `${String(cells[`B${address.slice(1)}`]?.value)} (${String(cells[`C${address.slice(1)}`]?.value)}, ${String(cells[`D${address.slice(1)}`]?.value)})`,
        ]
      : [],
  );
};
const errorsIn = (model: WorkbookModel): string[] =>
  model.sheets.flatMap((sheet) =>
    Object.entries(sheet.cells).flatMap(([address, { value }]) =>
      typeof value === 'object' ? [`${sheet.name} ${address} ${value.error}`] : [],
    ),
  );

const alike = (a: unknown, b: unknown): boolean =>
  typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) < 1e-6 : (a ?? '') === (b ?? '');

export function liveStory(seed: number, everyDays = 7, weeks = WEEKS): Story {
  const chance = rngOf(81_000 + seed);
  const wrong: string[] = [];
  const paper: Paper = { log: [], booked: [], ticks: [], remarks: [] };
  let book = bookOf(HATCHERY);
  let plan = planBatches(book, OPTIONS);
  let typed: BookRead['typed'] | undefined;
  let model = livingBook(book, plan);
  const counted = new Map<string, number>();
  const sold = new Map<string, number>();
  const orderSold = new Map<string, number>();
  const gone = new Map<string, number>();
  let failed: string | undefined;
  const cents = (x: number): number => Math.round(100 * x) / 100;
  const add = (map: Map<string, number>, key: string, n: number): void => {
    map.set(key, (map.get(key) ?? 0) + n);
  };

  for (
    let today = START + everyDays, week = 1;
    week * 7 <= weeks * 7 && today <= START + 7 * weeks;
    today += everyDays, week++
  ) {
    const since = today - everyDays;
    const pages = new LivingPages(book, plan, typed);
    const t = pages.tables;
    const hand = new Hand();
    let fresh = 0;
    const log = (line: LogLine): void => {
      // The first free line.
      hand.type(t.log, (typed?.log.length ?? 0) + fresh++, line);
      paper.log.push(line);
    };
    // What happened to each batch since the book was planned.
    plan.batches.forEach((batch, i) => {
      const { name } = batch;
      if (batch.state === 'lost' || batch.state === 'over' || batch.stripAt >= today) return;
      if (batch.stripAt >= since) {
        const pair = pages.rows.pairs.findIndex((p) => p.batch === name);
        const remark = `calm, eggs green-brown (${name})`;
        hand.type(t.pairs, pair, { grams: 95 + i, remark });
        paper.remarks.push({ batch: name, female: batch.pairs[0]?.female ?? '', remark });
      }
      if (failed === undefined && week >= 3 && batch.hatchAt < today && batch.hatchAt >= since) {
        failed = name;
        hand.type(t.batches, i, { state: 'lost' });
        log({
          at: today - 0.2,
          batch: name,
          what: 'lost',
          number: 0,
          note: 'no hatch: eggs white by noon',
          by: 'Ama',
        });
        return;
      }
      if (!counted.has(name) && batch.firstFeedAt < today - 1) {
        const number = Math.round(batch.feeding * (0.55 + 0.9 * chance.even()));
        counted.set(name, number);
        log({
          at: batch.firstFeedAt + 0.5,
          batch: name,
          what: 'counted',
          number,
          stage: 'feeding',
          by: 'Kofi',
        });
      }
    });
    const standing = checked(asOf(readBack(model), today)).batches;
    // Deaths, and buyers who fetch what the plan gave them, as far as it is there.
    const aliveOf = (name: string, at: number): number => {
      const events = paper.log.filter((l) => l.batch === name && l.what !== 'counted');
      const base = standing.find((b) => b.name === name);
      if (!base || !counted.has(name)) return 0;
      const whole: Batch = {
        ...base,
        state: 'growing',
        counts: paper.log.flatMap((l) =>
          l.batch === name && l.what === 'counted'
            ? [{ at: Number(l.at), stage: 'feeding' as const, number: Number(l.number) }]
            : [],
        ),
        events: events.map((l) => ({ at: Number(l.at), kind: l.what as 'sold', number: Number(l.number) })),
      };
      return standingOf(whole, assumed(book.assumptions), at).alive;
    };
    for (const [name] of counted) {
      if (chance.even() > 0.5) continue;
      const number = Math.floor(aliveOf(name, today - 0.5) * 0.04 * chance.even());
      if (number < 1) continue;
      add(gone, name, number);
      log({ at: today - 0.4, batch: name, what: 'died', number, by: 'Ama' });
    }
    const leaving = plan.allocations.filter(({ on }) => on >= since && on < today);
    for (const { batch: name, order, on, fish } of leaving) {
      const asked = book.orders.find((o) => o.name === order);
      if (!asked || asked.cancelled) continue;
      const number = Math.min(
        Math.floor(fish),
        Math.floor(aliveOf(name, on + 0.4)),
        asked.number - (orderSold.get(order) ?? 0),
      );
      if (number < 1) continue;
      const paid = cents(number * (asked.price ?? 0));
      add(sold, name, number);
      add(orderSold, order, number);
      log({ at: on + 0.4, batch: name, what: 'sold', number, order: keyOf(asked), paid, by: 'Kofi' });
    }
    // Work ticked off, money paid.
    pages.rows.tasks.forEach((task, i) => {
      if (task.when >= today || task.when < since || chance.even() < 0.3) return;
      const key = {
        batch: task.batch,
        task: t.times.columns[task.task].title,
        order: task.order,
        later: task.later,
      };
      if (
        paper.ticks.some(
          (tick) =>
            JSON.stringify({ ...tick, done: 0, by: 0 }) === JSON.stringify({ ...key, done: 0, by: 0 }),
        )
      )
        return;
      const done = Math.round((task.when + 0.05) * 1440) / 1440;
      hand.type(t.calendar, i, { done, by: 'Ama' });
      paper.ticks.push({ ...key, done, by: 'Ama' });
    });
    const amount = -cents(5 + 30 * chance.even());
    hand.type(t.booked, paper.booked.length, { date: today - 1, amount, what: `feed, week ${week}` });
    paper.booked.push({ date: today - 1, amount, what: `feed, week ${week}` });
    // What buyers, vats, fish and the sun do.
    const lineOf = (name: string): number => book.orders.findIndex((o) => o.name === name);
    const open = (from: number): string | undefined =>
      book.orders.find((o) => !o.cancelled && o.due > today + from && !orderSold.has(o.name))?.name;
    if (week === 2) hand.type(t.orders, lineOf(open(35) ?? ''), { cancelled: 'yes' });
    if (week === 3) {
      const late = open(21) ?? '';
      hand.type(t.orders, lineOf(late), { due: (book.orders.find((o) => o.name === late)?.due ?? 0) + 12 });
    }
    if (week === 5)
      hand.type(t.orders, book.orders.length, {
        buyer: 'Big new dam',
        product: 'fingerlings',
        number: 9000,
        due: today + 45,
        price: 0.11,
      });
    if (week === 6) hand.type(t.vats, 2, { outFrom: today + 2, outUntil: today + 23 });
    if (week === 7) hand.type(t.females, 13, { goneOn: today - 1 });
    if (week === 8) hand.beside(model, 'Setup', 'May', 31);

    // Excel works it out again, the file is saved, opened, read; planned again and written over itself.
    const live = saved(calculate(hand.into(model), today).model);
    const before = readBack(live);
    const next = checked(asOf(before, today));
    const after = planBatches(next, OPTIONS);
    const now = livingBook(next, after, before.typed);
    for (const error of errorsIn(now)) wrong.push(`week ${week}: ${error}`);
    for (const line of broken(now))
      if (!line.startsWith('Orders that ask for planning again')) wrong.push(`week ${week}: check: ${line}`);

    // Paper and workbook.
    const read = readBack(today + everyDays > START + 7 * weeks ? saved(now) : now);
    const has = (line: LogLine): boolean =>
      read.typed.log.some((got) => Object.entries(line).every(([key, value]) => alike(got[key], value)));
    for (const line of paper.log)
      if (!has(line)) wrong.push(`week ${week}: log: ${JSON.stringify(line)} is gone`);
    for (const tick of paper.ticks)
      if (
        !read.typed.calendar.some((l) =>
          Object.entries(tick).every(([key, value]) =>
            alike(l[key], value === 0 && l[key] === undefined ? undefined : value),
          ),
        ) &&
        !read.typed.log.some(({ note }) =>
          ['Kept of ' + tick.batch, String(tick.task), String(tick.order)].every((part) =>
            String(note ?? '').includes(part),
          ),
        )
      )
        wrong.push(`week ${week}: tick of ${tick.batch} ${tick.task} ${tick.order} is gone`);
    for (const { batch, female, remark } of paper.remarks)
      if (!read.typed.pairs.some((p) => p.batch === batch && p.female === female && p.remark === remark))
        wrong.push(`week ${week}: remark on ${batch} is gone`);
    const booked = (read.input.booked as { amount: number }[]).map((b) => b.amount);
    if (JSON.stringify(booked) !== JSON.stringify(paper.booked.map((b) => b.amount)))
      wrong.push(`week ${week}: money booked ${booked.join()}`);
    const received = paper.log.reduce((sum, l) => sum + Number(l.paid ?? 0), 0);
    const inHand = next.prices.atHand + booked.reduce((x, y) => x + y, 0) + received;
    const planned = after.entries
      .filter(({ isBooked }) => isBooked)
      .reduce((sum, e) => sum + e.amount, next.prices.atHand);
    if (Math.abs(inHand - planned) > 0.005)
      wrong.push(`week ${week}: money at hand ${planned}, paper ${inHand}`);
    const closing = after.cash.at(-1)?.balance ?? NaN;
    const all = next.prices.atHand + after.entries.reduce((sum, e) => sum + e.amount, 0);
    if (Math.abs(closing - all) > 0.005) wrong.push(`week ${week}: closes at ${closing}, events give ${all}`);
    for (const [order, number] of orderSold) {
      const got = after.orders.find((o) => o.order.name === order)?.delivered;
      if (got !== number) wrong.push(`week ${week}: ${order} has ${got}, paper ${number}`);
    }
    for (const batch of plan.batches.filter(({ stripAt }) => stripAt < today)) {
      const is = after.batches.find(({ name }) => name === batch.name);
      if (!is) wrong.push(`week ${week}: ${batch.name} is gone`);
      else if (
        JSON.stringify(is.pairs.map((p) => p.female)) !== JSON.stringify(batch.pairs.map((p) => p.female)) ||
        Math.abs(is.stripAt - batch.stripAt) > 1e-6
      )
        wrong.push(`week ${week}: ${batch.name} is not as it was`);
    }
    for (const { name, state, alive } of after.batches) {
      const promised = after.allocations
        .filter((a) => a.batch === name && a.on >= today)
        .reduce((sum, a) => sum + a.fish, 0);
      if (state === 'growing' && alive !== undefined && counted.has(name) && promised > alive + 1)
        wrong.push(`week ${week}: ${name} gives ${promised} of ${alive}`);
    }
    [book, plan, typed, model] = [next, after, read.typed, now];
  }
  // Every counted fish was sold, written off, lived on, or died at the usual rate: never more than there were.
  for (const [name, number] of counted) {
    const out = (sold.get(name) ?? 0) + (gone.get(name) ?? 0);
    if (out > number) wrong.push(`${name}: ${out} left of ${number}`);
  }
  return { wrong, paper, book, plan, model, sold: [...sold.values()].reduce((x, y) => x + y, 0) };
}
