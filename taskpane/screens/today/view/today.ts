// Long: one screen from top to bottom.
import { calledOf } from '../../../../shared/season/book/orderKeys';
import { timeText } from '../../../../shared/units/dates';
import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import { goTo, showPlace } from '../../../pane/frame/navigate';
import type { Scene } from '../../../pane/frame/parts';
import { banner, button, inputOf, section } from '../../../pane/frame/parts';
import { grouped } from '../../../pane/values/show';
import { hasWorkbook } from '../../../pane/keeping/state';
import type { Words } from '../../../words/en';
import { dayWords, momentOf, wordsFor } from '../../../words/words';
import { chooseVat } from '../../vat/commands/notebook';
import type { BookDay } from '../../../../shared/books/living/reading/day';
import type { CardId } from '../../vat/state/cards';
import type { NotebookLine } from '../../vat/state/notebook';
import { waiting } from '../../vat/state/notebook';
import { ageOf, batchNamed, standingIn, vatsOfBatch } from '../../vat/state/standing';
import { lineText, lineView } from '../../vat/view/line';
import type { Start } from '../commands/today';
import { chooseBook, readDay } from '../commands/read';
import { begin, doneTasks, tickTask } from '../commands/today';
import { picturesView } from './pictures';
import type { Day, TaskOfDay } from '../state/today';
import { dayOf, isShort } from '../state/today';

/** The home: what now, what next, what was noted; or five ways to begin. */

const MINUTES_A_DAY = 1440;
const lapse = (days: number, { today }: Words): string => {
  const minutes = Math.round(Math.abs(days) * MINUTES_A_DAY);
  return minutes >= 2 * MINUTES_A_DAY
    ? today.days(Math.round(minutes / MINUTES_A_DAY))
    : today.hours(Math.floor(minutes / 60), minutes % 60);
};

/** Cards at the vat that take what a task asks to be counted or weighed. */
const CARD_OF_TASK: Readonly<Record<string, CardId>> = {
  weigh: 'weigh',
  strip: 'eggs',
  white: 'look',
  firstFeed: 'fry',
  weighFry: 'grow',
  daily: 'dead',
  weaned: 'fry',
  handOver: 'hand',
  trial: 'dose',
  dose1: 'dose',
  dose2: 'dose',
};
const cardButton = (task: TaskOfDay, { state, send }: Scene): Child => {
  const card = task.task === undefined ? undefined : CARD_OF_TASK[task.task];
  const { today, vat } = wordsFor(state);
  return (
    card !== undefined &&
    button(
      vat.cards[card],
      () => {
        send(begin, { start: 'card', card, vat: vatOfTask(task, state) });
      },
      { tone: 'quiet', says: today.card(vat.cards[card]) },
    )
  );
};
/** The first vat that holds the batch of a task. */
const vatOfTask = ({ batch, at }: TaskOfDay, { today, now }: Scene['state']): string | undefined =>
  today.book && batch !== undefined
    ? (vatsOfBatch(today.book, batch, now)[0] ?? vatsOfBatch(today.book, batch, at)[0])
    : undefined;

/** What to do in a few words, and the rest of the sentence. */
const partsOf = (what: string): readonly [string, string] => {
  const at = /[:;.](?=\s)/.exec(what)?.index;
  // "From now on every morning: …" says nothing without its rest.
  return at === undefined || /^From now on/.test(what)
    ? [what, '']
    : [what.slice(0, at), what.slice(at + 1).trim()];
};
const titleOf = (task: TaskOfDay): Child => [
  task.batch && h('span', { class: 'batch' }, task.batch),
  task.batch && ' ',
  h('strong', {}, partsOf(task.what)[0]),
  task.amount && h('span', { class: 'amount' }, ` · ${task.amount}`),
];
const restOf = ({ what }: TaskOfDay): string => partsOf(what)[1];

const taskView = (task: TaskOfDay, scene: Scene, tone: 'late' | 'plain'): VNode => {
  const { state, send } = scene;
  const words = wordsFor(state);
  const isLate = tone === 'late';
  const clock = momentOf(state, task.at);
  return h(
    'li',
    { class: `task ${tone}`, key: task.key },
    h(
      'button',
      {
        type: 'button',
        class: 'ticker',
        'aria-label': words.today.tick(`${task.batch ?? ''} ${task.what}`.trim()),
        on: {
          click: () => {
            send(tickTask, { task });
          },
        },
      },
      h('span', { class: 'unseen' }, words.today.done),
    ),
    h(
      'div',
      { class: 'task-text' },
      h('p', {}, h('span', { class: 'clock' }, clock), ' ', titleOf(task)),
      isLate &&
        h(
          'p',
          { class: 'late-line' },
          h('span', { class: 'hint' }, words.today.lateBy(lapse(state.now - task.at, words))),
          button(
            words.today.doneThen(clock),
            () => {
              send(tickTask, { task, isOnTime: true });
            },
            { tone: 'quiet', says: `${words.today.doneThen(clock)}: ${task.what}` },
          ),
        ),
      restOf(task) && h('p', { class: 'hint' }, restOf(task)),
      task.remember && !isLate && h('p', { class: 'hint' }, task.remember),
    ),
  );
};

/** So many are seen at once; the others are folded. */
const LISTED = 4;
const MOST_LISTED = 60;
const taskList = (title: string, tasks: readonly TaskOfDay[], scene: Scene, tone: 'late' | 'plain'): Child =>
  tasks.length > 0 &&
  section(
    title,
    h(
      'ul',
      { class: 'tasks' },
      tasks.slice(0, LISTED).map((task) => taskView(task, scene, tone)),
    ),
    tasks.length > LISTED &&
      h(
        'details',
        { class: 'more' },
        h('summary', {}, wordsFor(scene.state).today.others(tasks.length - LISTED)),
        h(
          'ul',
          { class: 'tasks' },
          tasks.slice(LISTED, MOST_LISTED).map((task) => taskView(task, scene, tone)),
        ),
      ),
  );

/** The next hour, large: what, when, in how long. */
const nextView = (next: TaskOfDay, scene: Scene): VNode => {
  const { state, send } = scene;
  const words = wordsFor(state);
  return h(
    'section',
    { class: 'next', 'aria-labelledby': 'next-title' },
    h('h3', { id: 'next-title' }, words.today.next),
    h('p', { class: 'big' }, titleOf(next)),
    h(
      'p',
      { class: 'when' },
      h('strong', { class: 'clock' }, momentOf(state, next.at)),
      h('span', {}, `, ${words.today.inTime(lapse(next.at - state.now, words))}`),
    ),
    restOf(next) && h('p', { class: 'more-words' }, restOf(next)),
    next.remember && h('p', { class: 'hint' }, next.remember),
    h(
      'div',
      { class: 'actions' },
      button(
        words.today.done,
        () => {
          send(tickTask, { task: next });
        },
        { id: 'next-done', tone: 'main', says: words.today.tick(next.what) },
      ),
      cardButton(next, scene),
    ),
  );
};

const dayView = (day: Day, scene: Scene): Child => {
  const { today } = wordsFor(scene.state);
  return [
    day.next ? nextView(day.next, scene) : h('p', { class: 'lead' }, today.nothingNext),
    taskList(today.overdue, day.overdue, scene, 'late'),
    taskList(
      today.due,
      day.today.filter((task) => task !== day.next),
      scene,
      'plain',
    ),
    taskList(
      today.tomorrow,
      day.tomorrow.filter((task) => task !== day.next),
      scene,
      'plain',
    ),
  ];
};

const STARTS: readonly Start[] = ['order', 'season', 'sour', 'number', 'check'];
const startsView = (scene: Scene): VNode => {
  const { today } = wordsFor(scene.state);
  return h(
    'section',
    { class: 'block', 'aria-labelledby': 'starts-title' },
    h('h3', { id: 'starts-title' }, today.start),
    h(
      'ul',
      { class: 'cards' },
      STARTS.map((id) =>
        h(
          'li',
          { key: id },
          h(
            'button',
            {
              type: 'button',
              id: `start-${id}`,
              class: 'card',
              on: {
                click: () => {
                  scene.send(begin, id);
                },
              },
            },
            h('span', { class: 'card-name' }, today.starts[id][0]),
            h('span', { class: 'card-text' }, today.starts[id][1]),
          ),
        ),
      ),
    ),
  );
};

/** The last thing typed in the pane, to go on with. */
const goOn = (scene: Scene): Child => {
  const { state, send } = scene;
  const { today, vat } = wordsFor(state);
  const card = state.vat.card;
  return (
    card !== undefined &&
    button(
      today.goOn(`${vat.cards[card]}, ${vat.of(state.vat.vat)}`),
      () => {
        send(showPlace, 'vat');
      },
      { id: 'today-continue', tone: 'main' },
    )
  );
};

/** What stands off the plan, and the way to plan again; one sentence when nothing does. */
const offView = (day: Day, book: BookDay, scene: Scene): Child => {
  const { state, send } = scene;
  const { today } = wordsFor(state);
  const orders = book.orders.filter(isShort(state.now));
  const said = [
    ...(day.overdue.length > 0 ? [today.late(day.overdue.length)] : []),
    ...orders.map(({ key, name, expected = 0, planned = 0 }) =>
      today.offOrder(calledOf({ key, name }), grouped(expected), grouped(planned)),
    ),
    ...(book.broken ? [today.offChecks(book.broken)] : []),
  ];
  return h(
    'section',
    { class: 'block', 'aria-labelledby': 'off-title' },
    h('h3', { id: 'off-title' }, today.off),
    said.length > 0
      ? banner(
          'warning',
          h(
            'ul',
            { class: 'said' },
            said.slice(0, LISTED).map((text) => h('li', {}, text)),
          ),
        )
      : h('p', { class: 'hint' }, `✓ ${today.on}`),
    h(
      'div',
      { class: 'actions' },
      button(
        today.replan,
        () => {
          send(goTo, { place: 'plan', act: 'planAgain' });
        },
        { id: 'today-replan', tone: said.length > 0 ? 'main' : 'plain' },
      ),
      button(
        today.cards,
        () => {
          send(goTo, { place: 'plan', act: 'printCards' });
        },
        { id: 'today-cards', tone: 'quiet' },
      ),
    ),
  );
};

const latestOf = (lines: readonly NotebookLine[], vat: string): NotebookLine | undefined =>
  lines.filter((line) => line.vat === vat && line.what !== 'done').at(-1);

/** What a vat holds by the book: stage, age, number, food, what comes next. */
function holding(vat: string, book: BookDay, scene: Scene): readonly string[] {
  const { state } = scene;
  const { today } = wordsFor(state);
  const stay = standingIn(book, vat, state.now);
  if (!stay) return [];
  const age = ageOf(batchNamed(book, stay.batch), state.now);
  const fish = stay.now?.fish ?? stay.fish;
  const next = (state.today.tasks ?? [])
    .filter(({ batch, at, isDone }) => batch === stay.batch && !isDone && at >= state.now)
    .sort((a, b) => a.at - b.at)[0];
  const when = stay.from > state.now ? today.ageFrom : today.ageSince;
  return [
    `${stay.batch} · ${today.stages[stay.stage] ?? stay.stage}`,
    age === undefined ? when(momentOf(state, stay.from)) : today.age(age),
    ...(fish === undefined ? [] : [today.fish(grouped(Math.round(fish)), stay.stage)]),
    ...(stay.now?.feed ? [today.feed(grouped(stay.now.feed, 1))] : []),
    ...(next ? [today.then(shortened(next.what), momentOf(state, next.at))] : []),
  ];
}
const SHORT = 42;
const shortened = (text: string): string => {
  const [first = text] = text.split(/[:;.]/);
  return first.length > SHORT ? `${first.slice(0, SHORT)}…` : first;
};

const vatTile = (name: string, scene: Scene): VNode => {
  const { state, send } = scene;
  const { today, vat } = wordsFor(state);
  const line = latestOf(state.vat.lines, name);
  const holds = state.today.book ? holding(name, state.today.book, scene) : [];
  return h(
    'li',
    { key: name },
    h(
      'button',
      {
        type: 'button',
        class: 'vat-tile',
        on: {
          click: () => {
            send(chooseVat, name);
            send(showPlace, 'vat');
          },
        },
      },
      h('strong', {}, vat.of(name)),
      holds.map((text) => h('span', {}, text)),
      h(
        'span',
        { class: 'hint' },
        line
          ? today.vatSince(lineText(line, scene), momentOf(state, line.at))
          : holds.length === 0 && today.empty,
      ),
    ),
  );
};

const vatsView = (scene: Scene): Child => {
  const { state } = scene;
  const { book } = state.today;
  const used = state.vat.vats.filter(
    (name) => latestOf(state.vat.lines, name) ?? standingIn(book, name, state.now),
  );
  return (
    used.length > 0 &&
    section(
      wordsFor(state).today.vats,
      h(
        'ul',
        { class: 'vat-tiles' },
        used.map((name) => vatTile(name, scene)),
      ),
    )
  );
};

const linesView = (scene: Scene): Child => {
  const { state } = scene;
  const { today } = wordsFor(state);
  const lines = state.vat.lines.filter(({ at }) => Math.floor(at) === Math.floor(state.now)).reverse();
  return (
    lines.length > 0 &&
    section(
      today.lines,
      h(
        'ul',
        { class: 'lines' },
        lines.slice(0, LISTED).map((line, i) => lineView(line, scene, i === 0)),
      ),
    )
  );
};

const whichBook = (scene: Scene): Child => {
  const { state, send } = scene;
  const { today } = wordsFor(state);
  const { seasons, book } = state.today;
  return (
    seasons.length > 1 &&
    h(
      'div',
      { class: 'field' },
      h('label', { for: 'today-which' }, today.which),
      h(
        'select',
        {
          id: 'today-which',
          value: book?.suffix,
          on: {
            change: (event) => {
              send(chooseBook, inputOf(event));
            },
          },
        },
        seasons.map((suffix) => h('option', { value: suffix }, today.whichOne(suffix))),
      ),
    )
  );
};

export function todayView(scene: Scene): readonly Child[] {
  const { state, send } = scene;
  const { today, vat } = wordsFor(state);
  const { tasks, book } = state.today;
  const day = tasks && tasks.length > 0 ? dayOf(tasks, doneTasks(state.vat.lines), state.now) : undefined;
  const left = waiting(state.vat).length;
  return [
    h(
      'h2',
      {},
      today.title,
      h('span', { class: 'date' }, ` ${dayWords(state, state.now)}, ${timeText(state.now)}`),
    ),
    whichBook(scene),
    goOn(scene),
    left > 0 && h('p', { class: 'hint' }, vat.waits(left)),
    day ? dayView(day, scene) : startsView(scene),
    vatsView(scene),
    day && book && offView(day, book, scene),
    book && picturesView(book, scene),
    linesView(scene),
    hasWorkbook(state) &&
      h(
        'div',
        { class: 'actions' },
        button(
          today.read,
          () => {
            send(readDay);
          },
          { id: 'today-read', tone: 'quiet' },
        ),
      ),
  ];
}
