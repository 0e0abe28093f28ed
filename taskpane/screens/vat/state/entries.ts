import type { BookDay, DayBatch, DayOrder, DayStay } from '../../../../shared/books/living/reading/day';
import { calledOf } from '../../../../shared/season/book/orderKeys';
import type { PaneState } from '../../../pane/keeping/state';
import type { TaskOfDay } from '../../today/state/today';
import type { LineDraft, Values } from './cards';
import type { BookEntry, VatState } from './notebook';
import { batchNamed, standingIn, vatsOfBatch } from './standing';

/** What the season's book takes of a card or of an hour: counts and deaths of the batch in the vat. */

type Noted = Pick<LineDraft, 'entries' | 'isLogged'>;
const NOTHING: Noted = {};

const standing = ({ today, vat, now }: PaneState): DayStay | undefined =>
  standingIn(today.book, vat.vat, now);

/** Days around its planned hour in which a task may be the one that was done. */
const NEAR = 3;
/** The task of a kind of a batch that lies nearest to now and is still open. */
function taskNear(
  state: PaneState,
  batch: string | undefined,
  kinds: readonly string[],
): TaskOfDay | undefined {
  const done = new Set(state.vat.lines.flatMap(({ task }) => (task === undefined ? [] : [task])));
  const open = (state.today.tasks ?? []).filter(
    (task) =>
      task.task !== undefined &&
      kinds.includes(task.task) &&
      (batch === undefined || task.batch === batch) &&
      !task.isDone &&
      !done.has(task.key) &&
      Math.abs(task.at - state.now) < NEAR,
  );
  return open.sort((a, b) => Math.abs(a.at - state.now) - Math.abs(b.at - state.now))[0];
}
const ticking = (task: TaskOfDay | undefined): readonly BookEntry[] =>
  task?.tick === undefined ? [] : [{ kind: 'tick', sheet: task.sheet, address: task.tick }];

/** What each hour that can be noted means among the tasks of a batch. */
const TASK_OF_MARK: Readonly<Record<string, string>> = {
  injected: 'inject',
  stripped: 'strip',
  hatching: 'hatch',
  fed: 'firstFeed',
  graded: 'grade',
  cleaned: 'empty',
};

/** An hour noted at a vat: in the line of the pair, and its task ticked off. */
export function markEntries(state: PaneState, what: string): Noted {
  const kind = TASK_OF_MARK[what];
  if (kind === undefined || !state.today.book) return NOTHING;
  // Injected before any vat holds the batch: the task that is due says which.
  const own = what === 'injected' || what === 'stripped' ? undefined : standing(state)?.batch;
  const task = taskNear(state, own, [kind]);
  const batch = own ?? task?.batch;
  if (batch === undefined) return NOTHING;
  return { entries: [...hourOf(kind, batch), ...ticking(task)], isLogged: true };
}

/** The line of the pair takes the hours of injecting and stripping. */
const hourOf = (task: string | undefined, batch: string): readonly BookEntry[] =>
  task === 'inject'
    ? [{ kind: 'pairs', batch, key: 'injected' }]
    : task === 'strip'
      ? [{ kind: 'pairs', batch, key: 'stripped' }]
      : [];

/** A task ticked off at home. */
export const tickEntries = (task: TaskOfDay): readonly BookEntry[] => [
  ...(task.batch === undefined ? [] : hourOf(task.task, task.batch)),
  ...ticking(task),
];

const sameDay = (a: number, b: number): boolean => Math.floor(a) === Math.floor(b);

/** What fish of that age are called in a count. */
function stageNow(book: BookDay, batch: string, now: number): 'larvae' | 'feeding' | 'fish' {
  const { feed } = batchNamed(book, batch) ?? {};
  if (feed === undefined || now < feed - 0.5) return 'larvae';
  return now < feed + 1.5 ? 'feeding' : 'fish';
}

/** Days before its planned hour at which the first may be out. */
const EARLY_HATCH = 0.25;
const isHatching = (batch: DayBatch | undefined, now: number): boolean =>
  batch?.hatch !== undefined && now >= batch.hatch - EARLY_HATCH;

/**
 * A count of one vat is the count of a batch when the batch stands in that vat alone, or when each of its vats
 * was counted on the same day: then their sum.
 */
function countOf({ today: { book }, vat, now }: PaneState, value: number): Noted {
  const stay = book && standingIn(book, vat.vat, now);
  // Larvae stand where the eggs were until their first food; before the hatch there is nothing to count.
  if (!book || !stay || (stay.stage === 'eggs' && !isHatching(batchNamed(book, stay.batch), now)))
    return NOTHING;
  const others = vatsOfBatch(book, stay.batch, now).filter((name) => name !== vat.vat);
  const counts = others.map((name) => lastCount(vat, name, now));
  if (!counts.every((n) => n !== undefined)) return { isLogged: true };
  const number = counts.reduce((sum: number, n) => sum + (n ?? 0), value);
  const stage = stageNow(book, stay.batch, now);
  return {
    isLogged: true,
    entries: [
      {
        kind: 'log',
        fact: {
          batch: stay.batch,
          what: 'counted',
          number,
          stage,
          note: [...others, vat.vat].join(', '),
        },
      },
      ...(stage === 'larvae' ? [{ kind: 'larvae', batch: stay.batch, number } as const] : []),
    ],
  };
}
const lastCount = ({ lines }: VatState, vat: string, now: number): number | undefined =>
  lines.findLast((line) => line.vat === vat && line.what === 'fry' && sameDay(line.at, now))?.value ??
  undefined;

const samplesOf = (v: Values): readonly { grams: number; eggs: number }[] =>
  [1, 2, 3].flatMap((i) => {
    const [grams, eggs] = [v[`sample${i}`], v[`count${i}`]];
    return grams === undefined || eggs === undefined ? [] : [{ grams, eggs }];
  });

/**
 * Of the orders of one buyer the one that is handed over now: the batch's own task says which, or it is the one
 * that is due first of those still open.
 */
function handedNow(orders: readonly DayOrder[], taskOrder: string | undefined): DayOrder | undefined {
  const open = orders.filter((order) => !order.isCancelled && order.delivered < order.number);
  return (
    open.find(({ key }) => key === taskOrder) ??
    [...open].sort((a, b) => (a.due ?? Infinity) - (b.due ?? Infinity))[0] ??
    orders[0]
  );
}

/** The key of the order a word means: its key, its buyer, both, or the beginning of one buyer's name alone. */
export function orderNamed(book: BookDay | undefined, word: string, taskOrder?: string): string | undefined {
  const wanted = word.trim().toLowerCase();
  if (!book || wanted === '') return undefined;
  const words = (order: DayOrder): string[] =>
    [order.key, calledOf(order), order.name].map((one) => one.toLowerCase());
  const exact = [0, 1].flatMap((i) => book.orders.filter((order) => words(order)[i] === wanted));
  if (exact[0]) return exact[0].key;
  const own = book.orders.filter((order) => words(order)[2] === wanted);
  const begins = book.orders.filter(({ name }) => name.toLowerCase().startsWith(wanted));
  const isOneBuyer = new Set(begins.map(({ name }) => name.toLowerCase())).size === 1;
  return handedNow(own.length > 0 ? own : isOneBuyer ? begins : [], taskOrder)?.key;
}

/** The drafts of a card with what the book takes of each. */
export function withEntries(
  state: PaneState,
  drafts: readonly LineDraft[],
  values: Values,
  textOf: (key: string) => string,
): readonly LineDraft[] {
  const { book } = state.today;
  if (!book) return drafts;
  const batch = standing(state)?.batch ?? eggsBatch(state);
  const note = state.vat.vat;
  const of = (draft: LineDraft): Noted => {
    const number = draft.value;
    if (draft.what === 'weight' && textOf('female') !== '' && number !== null)
      return {
        isLogged: true,
        entries: [{ kind: 'weight', female: textOf('female').trim(), kilograms: number }],
      };
    if (batch === undefined || number === null) return NOTHING;
    if (draft.what === 'dead')
      return { entries: [{ kind: 'log', fact: { batch, what: 'died', number, note } }] };
    if (draft.what === 'eggGrams')
      return { isLogged: true, entries: [{ kind: 'eggGrams', batch, grams: number }] };
    if (draft.what === 'eggs')
      return {
        entries: [
          { kind: 'log', fact: { batch, what: 'counted', number, stage: 'eggs', note } },
          { kind: 'samples', batch, samples: samplesOf(values) },
        ],
      };
    if (draft.what === 'good' && values.seen !== undefined)
      return { isLogged: true, entries: [{ kind: 'look', batch, looked: values.seen, alive: number }] };
    if (draft.what === 'fry') return countOf(state, number);
    if (draft.what === 'fishWeight')
      return {
        isLogged: true,
        entries: [
          { kind: 'fishWeight', batch, grams: number },
          ...ticking(taskNear(state, batch, ['weighFry'])),
        ],
      };
    if (draft.what === 'handed') return soldOf(state, batch, number, values.paid, textOf('buyer'));
    return NOTHING;
  };
  return drafts.map((draft) => ({ ...draft, ...of(draft) }));
}

function soldOf(
  state: PaneState,
  batch: string,
  number: number,
  paid: number | undefined,
  buyer: string,
): Noted {
  const { book } = state.today;
  const task = taskNear(state, batch, ['handOver']);
  const order = orderNamed(book, buyer, task?.order);
  const fact = {
    batch,
    what: 'sold',
    number,
    ...(order === undefined ? {} : { order }),
    ...(paid === undefined ? {} : { paid }),
    note: order === undefined && buyer.trim() !== '' ? buyer.trim() : state.vat.vat,
  };
  return {
    entries: [
      { kind: 'log', fact },
      ...(task && (order === undefined || task.order === order) ? ticking(task) : []),
    ],
  };
}

/** Eggs are counted before they are in a vat: the batch stripped last, or about to be. */
function eggsBatch({ today: { book }, now }: PaneState): string | undefined {
  const near = (book?.batches ?? []).filter(
    ({ strip }) => strip !== undefined && strip - 0.5 < now && now < strip + 2,
  );
  return near.length === 1 ? near[0]?.name : undefined;
}
