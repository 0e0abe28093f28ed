// Long: one screen from top to bottom.
import { timeText } from '../../../../shared/units/dates';
import type { Child, VNode } from '../../../pane/draw';
import { h } from '../../../pane/draw';
import { showPlace } from '../../../pane/navigate';
import type { Scene } from '../../../pane/parts';
import { banner, button, section } from '../../../pane/parts';
import { hasWorkbook } from '../../../pane/state';
import type { Words } from '../../../words/en';
import { dayWords, wordsFor } from '../../../words/words';
import { chooseVat } from '../../vat/commands/notebook';
import type { NotebookLine } from '../../vat/state/notebook';
import { lineText, lineView, momentOf } from '../../vat/view/line';
import type { Start } from '../commands/today';
import { begin, doneTasks, readDay, tickTask } from '../commands/today';
import type { Day, TaskOfDay } from '../state/today';
import { dayOf } from '../state/today';

/** The home: what now, what next, what was noted; or five ways to begin. */

const MINUTES_A_DAY = 1440;
const lapse = (days: number, { today }: Words): string => {
  const minutes = Math.round(Math.abs(days) * MINUTES_A_DAY);
  return minutes >= 2 * MINUTES_A_DAY
    ? today.days(Math.round(minutes / MINUTES_A_DAY))
    : today.hours(Math.floor(minutes / 60), minutes % 60);
};

const taskView = (task: TaskOfDay, scene: Scene, tone: 'late' | 'plain'): VNode => {
  const { state, send } = scene;
  const words = wordsFor(state);
  return h(
    'li',
    { class: `task ${tone}`, key: task.key },
    h(
      'button',
      {
        type: 'button',
        class: 'ticker',
        'aria-label': words.today.tick(task.what),
        on: {
          click: () => {
            send(tickTask, task);
          },
        },
      },
      '○',
    ),
    h(
      'div',
      { class: 'task-text' },
      h(
        'p',
        {},
        h('span', { class: 'clock' }, momentOf(task.at, state.now)),
        ' ',
        h('strong', {}, task.what),
        task.amount && h('span', { class: 'amount' }, ` · ${task.amount}`),
      ),
      tone === 'late' && h('p', { class: 'hint' }, words.today.lateBy(lapse(state.now - task.at, words))),
      task.remember && tone === 'plain' && h('p', { class: 'hint' }, task.remember),
    ),
  );
};

const LISTED = 6;
const taskList = (title: string, tasks: readonly TaskOfDay[], scene: Scene, tone: 'late' | 'plain'): Child =>
  tasks.length > 0 &&
  section(
    title,
    h(
      'ul',
      { class: 'tasks' },
      tasks.slice(0, LISTED).map((task) => taskView(task, scene, tone)),
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
    h('p', { class: 'big' }, next.what, next.amount && h('span', { class: 'amount' }, ` · ${next.amount}`)),
    h(
      'p',
      { class: 'when' },
      h('strong', { class: 'clock' }, momentOf(next.at, state.now)),
      ', ',
      words.today.inTime(lapse(next.at - state.now, words)),
    ),
    next.remember && h('p', { class: 'hint' }, next.remember),
    button(
      words.today.done,
      () => {
        send(tickTask, next);
      },
      { id: 'next-done', tone: 'main', says: words.today.tick(next.what) },
    ),
  );
};

const dayView = (day: Day, scene: Scene): Child => {
  const { today } = wordsFor(scene.state);
  return [
    day.overdue.length > 0 && banner('warning', h('p', {}, today.late(day.overdue.length))),
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

const latestOf = (lines: readonly NotebookLine[], vat: string): NotebookLine | undefined =>
  lines.filter((line) => line.vat === vat && line.what !== 'done').at(-1);

const vatsView = (scene: Scene): Child => {
  const { state, send } = scene;
  const { today, vat } = wordsFor(state);
  const used = state.vat.vats.filter((name) => latestOf(state.vat.lines, name));
  return (
    used.length > 0 &&
    section(
      today.vats,
      h(
        'ul',
        { class: 'vat-tiles' },
        used.map((name) => {
          const line = latestOf(state.vat.lines, name);
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
              h(
                'span',
                {},
                line ? today.vatSince(lineText(line, scene), momentOf(line.at, state.now)) : today.empty,
              ),
            ),
          );
        }),
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

export function todayView(scene: Scene): readonly Child[] {
  const { state, send } = scene;
  const { today } = wordsFor(state);
  const { tasks, hasPlan } = state.today;
  return [
    h(
      'h2',
      {},
      today.title,
      h('span', { class: 'date' }, ` ${dayWords(state, state.now)}, ${timeText(state.now)}`),
    ),
    goOn(scene),
    hasPlan && tasks
      ? dayView(dayOf(tasks, doneTasks(state.vat.lines), state.now), scene)
      : startsView(scene),
    vatsView(scene),
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
