import { readFileSync } from 'node:fs';
import type { BookDay } from '../../../shared/books/living/reading/day';
import type { PaneState } from '../../../taskpane/pane/keeping/state';
import { tasksOfBook } from '../../../taskpane/screens/today/state/calendar';
import { dayOf, isShort } from '../../../taskpane/screens/today/state/today';
import type { LineDraft } from '../../../taskpane/screens/vat/state/cards';
import {
  markEntries,
  orderNamed,
  tickEntries,
  withEntries,
} from '../../../taskpane/screens/vat/state/entries';
import { fishHere, growthOf, plannedAt } from '../../../taskpane/screens/vat/state/growth';
import { ageOf, batchNamed, standingIn, vatsOfBatch } from '../../../taskpane/screens/vat/state/standing';
import { initialVat, WHAT } from '../../../taskpane/screens/vat/state/notebook';
import { expectKept } from '../../support/kept';

/** A season half lived, as the pane reads it of its book: what it shows and writes at a vat, week after week. */

const book = JSON.parse(readFileSync('tests/golden/kept/lived-day.json', 'utf8')) as BookDay;
const tasks = tasksOfBook(book);
const first = Math.floor(Math.min(...tasks.map(({ at }) => at)));
const last = Math.ceil(Math.max(...tasks.map(({ at }) => at)));
const NOWS = Array.from({ length: 14 }, (_, i) => first + 0.35 + ((last - first) * i) / 13 + (i % 3) * 0.27);

const stateAt = (now: number, vat: string, more: object = {}): PaneState =>
  ({ now, today: { book, tasks }, vat: { ...initialVat, vat, lines: [], ...more } }) as unknown as PaneState;
const VALUES = { seen: 100, paid: 40, sample1: 1.02, count1: 700, sample2: 0.98, count2: 680 };
const DRAFTS: readonly LineDraft[] = [
  { what: 'weight', value: 1.3, unit: 'kg' },
  { what: 'dead', value: 12, unit: 'fish' },
  { what: 'eggGrams', value: 118, unit: 'g' },
  { what: 'eggs', value: 82_000, unit: 'eggs' },
  { what: 'good', value: 83, unit: 'eggs' },
  { what: 'fry', value: 5200, unit: 'fry' },
  { what: 'fishWeight', value: 0.4, unit: 'g' },
  { what: 'handed', value: 900, unit: 'fish' },
  { what: 'salt', value: 3, unit: 'g' },
  { what: 'dead', value: null, unit: 'fish' },
];
const short = (value: unknown): string => JSON.stringify(value);

test('what stands in each vat, and what a line noted there becomes in the book', () => {
  expectKept(
    'pane-vats',
    NOWS.map((now) => ({
      now,
      vats: book.vats.map((vat) => {
        const state = stateAt(now, vat);
        const stay = standingIn(book, vat, now);
        const drafts = withEntries(state, DRAFTS, VALUES, (key) =>
          key === 'buyer' ? 'mill' : key === 'female' ? 'F1' : '',
        );
        return {
          vat,
          stay: stay && `${stay.batch} ${stay.stage}`,
          beside: stay && vatsOfBatch(book, stay.batch, now).join(', '),
          age: ageOf(batchNamed(book, stay?.batch ?? ''), now),
          fish: short(fishHere(state)),
          planned: plannedAt(book, stay?.batch, now),
          marks: Object.keys(WHAT).flatMap((what) => {
            const noted = short(markEntries(state, what));
            return noted === '{}' ? [] : [`${what}: ${noted}`];
          }),
          drafts: drafts.map(
            ({ what, entries, isLogged = false }) => `${what}: ${short(entries)} ${String(isLogged)}`,
          ),
        };
      }),
    })),
  );
});

test('the day, its tasks and what is short', () => {
  const named = (list: readonly { key: string; at: number }[]): string[] =>
    list.map(({ key, at }) => `${key} ${at.toFixed(4)}`);
  expectKept('pane-days', {
    tasks: tasks.map((task) => [task.key, task.amount, task.what, short(tickEntries(task))].join(' ¦ ')),
    days: NOWS.map((now) => {
      const day = dayOf(tasks, new Set(tasks.slice(0, 3).map(({ key }) => key)), now);
      return {
        now,
        next: day.next?.key,
        overdue: named(day.overdue),
        today: named(day.today),
        tomorrow: named(day.tomorrow),
        short: book.orders.filter(isShort(now)).map(({ key }) => key),
      };
    }),
    growth: book.batches.map(({ name }) => {
      const lines = [
        {
          what: 'fishWeight',
          value: 0.2,
          at: NOWS[5] ?? 0,
          vat: book.stays.find(({ batch }) => batch === name)?.vat ?? '',
        },
      ];
      return [name, short(growthOf(stateAt(NOWS[5] ?? 0, '', { lines }), name))];
    }),
    orders: ['o1', 'O2', 'mill', 'Mill pond', 'lake', 'Lake farms', 'pond', 'nobody', 'O3 Mill pond', ''].map(
      (word) => `${word}: ${orderNamed(book, word) ?? '–'} ${orderNamed(book, word, 'O3') ?? '–'}`,
    ),
  });
});
