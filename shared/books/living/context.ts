import type { Assumed } from '../../families/assumptions';
import { assumed } from '../../families/assumptions';
import type { Operand } from '../../sheet/formula';
import { keyed, namesToKeys, typedUnder } from './keyed';
import { nameOf } from './names';
import { dayLines, runLines, shareLines, taskTimes } from '../../run/lines';
import type { LineReader, RunLineKey, ShareLineKey, TaskKey } from '../../run/lines';
import type { Content } from '../../sheet/workbook/build';
import { SheetBuilder } from '../../sheet/workbook/build';
import type { NameModel, SheetModel } from '../../sheet/workbook/model';
import { givenBy } from '../../season/figures/given';
import type { OrderBook } from '../../season/book/orderBook';
import { liveShare } from '../../season/batches';
import type { Allocation, SeasonBatch } from '../../season/types';
import type { BookPlan, SheetKey, Tables, LivingRows } from './layout';
import { SHEETS, SHOWN, rowsOf, tablesOf, tickOf, weeksOf } from './layout';

import type { TypedActuals } from './reading/typed';

/** Name of a cell of the season: season_price_feed. */
export const seasonName = (key: string): string => `season_${nameOf(key)}`;

/** Days between the first full day of feeding and a moment. */
const daysAfter = (from: number, at: number): number => Math.max(0, Math.floor(at) - from);

/** The last count of a stage that came with the batch: written where it would be typed. */
export const lastCount = (
  { counts }: SeasonBatch,
  stage: SeasonBatch['counts'][number]['stage'],
): number | undefined => counts.filter((count) => count.stage === stage).at(-1)?.number;

/** What the sheets of one book share: the plan, where every table stands, the names of single cells. */
export class LivingPages {
  readonly names: NameModel[] = [];
  readonly assumed: Assumed;
  readonly rows: LivingRows;
  readonly tables: Tables;
  readonly weeks: { readonly from: number; readonly count: number };
  private readonly given = new Map<SeasonBatch, Record<string, Operand>>();
  private readonly readers = new Map<string, LineReader<RunLineKey>>();

  /** Name of the buyer by the key of his order; everything else here knows orders by their keys. */
  readonly buyers: ReadonlyMap<string, string>;
  private readonly keys: ReadonlyMap<string, string>;
  readonly book: OrderBook;
  readonly plan: BookPlan;
  readonly typed: TypedActuals | undefined;

  constructor(ofBook: OrderBook, ofPlan: BookPlan, written?: TypedActuals) {
    const { book, plan, buyers, keys } = keyed(ofBook, ofPlan);
    this.keys = keys;
    const typed = written && typedUnder(written, namesToKeys(buyers));
    [this.book, this.plan, this.buyers, this.typed] = [book, plan, buyers, typed];
    this.assumed = assumed(book.assumptions);
    const ticked = new Set(typed?.calendar.map(tickOf));
    this.rows = rowsOf(plan, book.preparation, (batch, share) => this.timesOf(batch, share), ticked);
    this.weeks = weeksOf(book, plan);
    this.tables = tablesOf(book, this.rows, this.weeks.count, typed?.log.length);
  }

  sheet(
    key: SheetKey,
    heading: Content,
    subtitle: string,
    layout: Omit<SheetModel, 'name' | 'cells'>,
  ): SheetBuilder {
    return new SheetBuilder(SHEETS[key], {
      isProtected: true,
      hasGridlines: false,
      ...(SHOWN.has(key) ? {} : { isHidden: true }),
      ...layout,
      print: { landscape: true, footer: `${this.book.hatchery} · season`, ...layout.print },
    })
      .put('B1', heading, 'title')
      .height(1, 26)
      .put('B2', subtitle, 'subtitle');
  }

  define(key: string, refersTo: string): void {
    this.names.push({ name: seasonName(key), refersTo });
  }
  /** A formula with {key} in place of the names. */
  readonly fx = (formula: string): string =>
    formula.replace(/\{(\w+)\}/g, (_, key: string) => seasonName(key));

  /** What a batch gives to its lines beside the book: as the sheet Workings takes it from the other sheets. */
  givenOf(batch: SeasonBatch): Record<string, Operand> {
    let given = this.given.get(batch);
    if (!given) this.given.set(batch, (given = this.givenAnew(batch)));
    return given;
  }
  private givenAnew(batch: SeasonBatch): Record<string, Operand> {
    const own = this.plan.allocations.filter((a) => a.batch === batch.name);
    const rearing = daysAfter(batch.feedFrom, batch.weanedAt);
    const litres = (stage: string): number =>
      this.plan.stays
        .filter((s) => s.batch === batch.name && s.stage === stage)
        .reduce((sum, s) => sum + (this.book.vats.find(({ name }) => name === s.vat)?.litres ?? 0), 0);
    const isPlanned = batch.state === 'planned';
    const was = (moment: number): Operand => (isPlanned ? null : moment);
    return {
      ...givenBy(this.book, this.assumed),
      restDays: this.book.restDays,
      strip: batch.stripAt,
      measured: was(batch.temperature),
      wasInject: was(batch.injectAt),
      wasLook: was(batch.checkAt),
      wasLate: was(batch.lateAt),
      wasHatch: was(batch.hatchAt),
      wasHatchEnd: was(batch.hatchEndAt),
      wasFeed: was(batch.firstFeedAt),
      rearing,
      nursing: nursingOf(own, rearing),
      leaves: batch.leavesOn,
      firstLeaves: Math.min(batch.leavesOn, ...own.map(({ on }) => on)),
      kilograms: batch.pairs.reduce((sum, pair) => sum + pair.kilograms, 0),
      females: batch.pairs.length,
      males: batch.males.length,
      hundred: 100,
      toSet: batch.eggs,
      litresEggs: litres('eggs'),
      litresFry: litres('fry'),
      litresNursing: litres('nursing'),
      isLost: batch.state,
      ...this.weighingOf(batch),
      ...this.standingOf(batch),
    };
  }

  /** How many there are by the plan, and which counts it knew of. */
  private standingOf(batch: SeasonBatch): Record<string, Operand> {
    const [hatched, feeding, weaned] = (['larvae', 'feeding', 'weaned'] as const).map((stage) =>
      lastCount(batch, stage),
    );
    const left = (...kinds: SeasonBatch['events'][number]['kind'][]): number =>
      batch.events.reduce((sum, { kind, number }) => sum + (kinds.includes(kind) ? number : 0), 0);
    const known = batch.known ?? {
      eggs: lastCount(batch, 'eggs') === undefined ? 0 : 1,
      counted: (hatched ?? 0) + (feeding ?? 0) + (weaned ?? 0),
      lost: left('lost', 'released'),
      sold: left('sold'),
    };
    const isThere = batch.state === 'growing';
    return {
      hatchedCounted: hatched ?? null,
      feedingCounted: feeding ?? null,
      weanedCounted: weaned ?? null,
      eggsKnown: known.eggs,
      countedThen: known.counted,
      lostThen: known.lost,
      soldThen: known.sold,
      standing: isThere
        ? (batch.alive ?? batch.feeding * liveShare(this.assumed, batch.feedFrom, this.book.plannedOn))
        : null,
      lostSince: 0,
    };
  }

  /** A weighing typed on Counts decides how fast its fish grow. */
  private weighingOf({ name, weighed }: SeasonBatch): Record<string, Operand> {
    const line = this.typed?.fry.find((one) => one.batch === name);
    const number = (key: string, otherwise: number | undefined): Operand => {
      const value = line?.[key];
      return typeof value === 'number' ? value : (otherwise ?? null);
    };
    return { weighedGrams: number('weight', weighed?.grams), weighedOn: number('weighed', weighed?.on) };
  }

  reader(batch: SeasonBatch): LineReader<RunLineKey> {
    let reader = this.readers.get(batch.name);
    if (!reader) this.readers.set(batch.name, (reader = runLines.open(this.givenOf(batch))));
    return reader;
  }
  /** A given or a line of a batch. */
  figure(batch: SeasonBatch, key: string): Operand {
    const given = this.givenOf(batch);
    return key in given ? (given[key] ?? null) : this.reader(batch).get(key);
  }

  /** The share of a batch's larvae at first feed that an order's fish are grown from. */
  partOf(share: Allocation): number {
    const batch = this.plan.batches.find(({ name }) => name === share.batch);
    return batch && batch.feeding > 0 ? share.feeding / batch.feeding : 0;
  }
  /** The lines of a share, as the sheet Shares works them out. */
  share(share: Allocation): LineReader<ShareLineKey> | undefined {
    const batch = this.plan.batches.find(({ name }) => name === share.batch);
    return (
      batch &&
      shareLines.open({
        ...this.carried(batch, shareLines.needs),
        on: share.on,
        part: this.partOf(share),
        ...this.orderOf(share),
      })
    );
  }
  private orderOf({ order: name }: Allocation): Record<string, Operand> {
    // Shares of a plan may still go by the name plans know an order by.
    const key = this.keys.get(name) ?? name;
    const order = this.plan.orders.find((one) => one.order.name === key)?.order;
    return { price: order?.price ?? 0, wanted: order?.grams ?? null };
  }
  day(batch: SeasonBatch, day: number, left = 0) {
    return dayLines.open({ ...this.carried(batch, dayLines.needs), day, left });
  }

  private carried(batch: SeasonBatch, needs: readonly string[]): Record<string, Operand> {
    const own = this.givenOf(batch);
    const reader = this.reader(batch);
    return Object.fromEntries(
      needs.map((key) => [key, key in own ? (own[key] ?? null) : reader.has(key) ? reader.get(key) : null]),
    );
  }
  private timesOf(batch: SeasonBatch, share: Allocation | undefined): (task: TaskKey) => number {
    const own = this.givenOf(batch);
    const reader = this.reader(batch);
    return taskTimes((key) =>
      key === 'on' ? (share?.on ?? null) : key in own ? (own[key] ?? null) : reader.get(key),
    );
  }
}

/** Days the longest nursed fish of a batch are nursed; waiting for a buyer counts as nursing. */
function nursingOf(own: readonly Allocation[], rearing: number): number {
  const nursed = own.filter(({ stage }) => stage === 'nursing').map(({ ageDays }) => ageDays - rearing);
  return Math.max(0, ...nursed);
}
