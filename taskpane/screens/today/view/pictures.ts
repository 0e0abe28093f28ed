import type { BookDay, DayFact } from '../../../../shared/books/living/reading/day';
import type { Child } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Scene } from '../../../pane/frame/parts';
import { deathsPicture, funnelPicture, growthPicture, vatsPicture } from '../../../pane/pictures/draw';
import { section } from '../../../pane/frame/parts';
import { pictureWords, wordsFor } from '../../../words/words';
import { growthOf } from '../../vat/state/growth';
import { batchNamed, standingIn } from '../../vat/state/standing';

/** The season in pictures: vats over the next days, eggs to fry of the batch that stands, dead a day. */

const DAYS_BEFORE = 2;
const DAYS_AFTER = 8;

const vatsOf = (book: BookDay, now: number) => {
  const [from, to] = [Math.floor(now) - DAYS_BEFORE, Math.floor(now) + DAYS_AFTER];
  return {
    from,
    to,
    now,
    vats: book.vats.map((name) => ({
      name,
      stays: book.stays.filter((stay) => stay.vat === name && stay.to > from && stay.from < to),
    })),
  };
};

/** Steps whose planned number stands in the list of what to do, and the count that belongs to each. */
const STEPS = [
  ['strip', 'eggs'],
  ['hatch', 'larvae'],
  ['firstFeed', 'feeding'],
  ['weaned', 'weaned'],
] as const;
function funnelOf(book: BookDay, batch: string, names: Readonly<Record<string, string>>) {
  const planned = new Map(
    book.tasks.filter((task) => task.batch === batch).map(({ task, amount }) => [task as string, amount]),
  );
  return {
    steps: STEPS.flatMap(([task, stage]) => {
      const number = planned.get(task);
      const counted = book.log.findLast(
        (fact) => fact.batch === batch && fact.what === 'counted' && fact.stage === stage,
      )?.number;
      return number === undefined ? [] : [{ name: names[stage] ?? stage, planned: number, counted }];
    }),
  };
}

/** Deaths day by day from the first to today; days without a line had none noted. */
function deathsOf(log: readonly DayFact[], now: number) {
  const died = log.filter(({ what, at }) => what === 'died' && at <= now + 1);
  const first = Math.floor(Math.min(...died.map(({ at }) => at)));
  if (died.length === 0) return { days: [] };
  return {
    days: Array.from({ length: Math.floor(now) - first + 1 }, (_, i) => ({
      day: first + i,
      dead: died
        .filter(({ at }) => Math.floor(at) === first + i)
        .reduce((sum, { number }) => sum + number, 0),
    })),
  };
}

/** The batch most of the vats hold now, else the next one. */
function batchNow(book: BookDay, now: number): string | undefined {
  const standing = book.vats.flatMap((vat) => standingIn(book, vat, now)?.batch ?? []);
  return standing[0] ?? book.batches.find(({ strip }) => strip !== undefined && strip > now)?.name;
}

/** Before it is fed a batch has nothing to weigh. */
const isFed = (book: BookDay, batch: string, now: number): boolean =>
  (batchNamed(book, batch)?.feed ?? Infinity) <= now;

/** Fewer days of deaths say nothing about a limit. */
const LEAST_DAYS = 3;

export function picturesView(book: BookDay, { state }: Scene): Child {
  const words = wordsFor(state);
  const how = pictureWords(state);
  const batch = batchNow(book, state.now);
  const deaths = deathsOf(book.log, state.now);
  return section(
    words.pictures.all,
    vatsPicture(vatsOf(book, state.now), how, (stage) => words.today.stages[stage] ?? stage),
    batch !== undefined && [
      h('h4', {}, batch),
      funnelPicture(funnelOf(book, batch, words.pictures.stageNames), how),
      isFed(book, batch, state.now) && growthPicture(growthOf(state, batch), how),
    ],
    deaths.days.length >= LEAST_DAYS && deathsPicture(deaths, how),
  );
}
