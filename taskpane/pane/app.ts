import { writeCheckWithSuffix } from '../screens/check/commands/out';
import { insertAnyway } from '../screens/functions/commands/functions';
import { writeDoseWithSuffix } from '../screens/dose/commands/dose';
import { changeWord, dismiss, showScreen } from './navigate';
import { writeWithSuffix } from '../screens/plan/commands/plan';
import { writeSeasonWithSuffix } from '../screens/season/commands/plan';
import { writeSummaryWithSuffix } from '../screens/share/commands/summary';
import type { Child, VNode } from './draw';
import { h } from './draw';
import { openFunction } from '../screens/functions/state/functions';
import type { Answer, Question, ScreenId } from './state';
import { SCREENS } from './state';
import { aboutView } from '../screens/about/view/about';
import { recordsView } from '../screens/check/view/check';
import { doseView } from '../screens/dose/view/dose';
import { functionList } from '../screens/functions/view/list';
import { functionPage } from '../screens/functions/view/page';
import { messagesView } from '../screens/messages/view/messages';
import type { Scene } from './parts';
import { banner, button, inputOf, progress } from './parts';
import { plansView } from '../screens/plan/view/modes';
import { shareView } from '../screens/share/view/share';

const TITLES: Readonly<Record<ScreenId, string>> = {
  plan: 'Plan',
  dose: 'Dose',
  functions: 'Functions',
  messages: 'Messages',
  check: 'Check',
  share: 'Share',
  about: 'About',
};

function functionsView(scene: Scene): readonly VNode[] {
  const fn = openFunction(scene.state.functions);
  return fn ? functionPage(fn, scene) : [h('h2', {}, 'Functions'), ...functionList(scene)];
}

const VIEWS: Readonly<Record<ScreenId, (scene: Scene) => readonly VNode[]>> = {
  plan: plansView,
  dose: doseView,
  functions: functionsView,
  messages: messagesView,
  check: recordsView,
  share: shareView,
  about: aboutView,
};

/** Arrow keys, Home and End move along the tabs, as in every tab list. */
const tabFor = (key: string, from: ScreenId): ScreenId | undefined => {
  const at = SCREENS.indexOf(from);
  const next = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: SCREENS.length - 1 }[key];
  return next === undefined ? undefined : SCREENS[(next + SCREENS.length) % SCREENS.length];
};

const tab = (id: ScreenId, { state, send }: Scene): VNode =>
  h(
    'button',
    {
      type: 'button',
      role: 'tab',
      id: `tab-${id}`,
      'aria-selected': state.screen === id ? 'true' : 'false',
      'aria-controls': 'screen',
      tabindex: state.screen === id ? '0' : '-1',
      on: {
        click: () => {
          send(showScreen, id);
        },
        keydown: (event) => {
          const target = event instanceof KeyboardEvent ? tabFor(event.key, id) : undefined;
          if (!target) return;
          event.preventDefault();
          send(showScreen, target);
          document.getElementById(`tab-${target}`)?.focus();
        },
      },
    },
    TITLES[id],
  );

const answerTo = (answer: Answer, { send }: Scene): void => {
  if (answer.act === 'insertAnyway') send(insertAnyway);
  else if (answer.act === 'writeWithSuffix') send(writeWithSuffix);
  else if (answer.act === 'writeSeasonWithSuffix') send(writeSeasonWithSuffix);
  else if (answer.act === 'writeDoseWithSuffix') send(writeDoseWithSuffix);
  else if (answer.act === 'writeSummaryWithSuffix') send(writeSummaryWithSuffix);
  else if (answer.act === 'writeCheckWithSuffix') send(writeCheckWithSuffix);
  else send(dismiss);
};

const wordField = (word: NonNullable<Question['word']>, { send }: Scene): VNode =>
  h(
    'div',
    { class: 'field' },
    h('label', { for: 'question-word' }, word.label),
    h('input', {
      id: 'question-word',
      type: 'text',
      autocomplete: 'off',
      value: word.value,
      on: {
        input: (event) => {
          send(changeWord, inputOf(event));
        },
      },
    }),
  );

const questionView = (scene: Scene): Child => {
  const { question } = scene.state;
  const onKey = (event: Event): void => {
    if (event instanceof KeyboardEvent && event.key === 'Escape') scene.send(dismiss);
  };
  return (
    question &&
    h(
      'div',
      {
        id: 'question',
        class: 'question',
        role: 'group',
        tabindex: '-1',
        'aria-labelledby': 'question-text',
        on: { keydown: onKey },
      },
      h('p', { id: 'question-text' }, question.text),
      question.word && wordField(question.word, scene),
      h(
        'div',
        { class: 'actions' },
        question.answers.map((answer, i) =>
          button(
            answer.label,
            () => {
              answerTo(answer, scene);
            },
            { tone: i === 0 ? 'main' : 'plain' },
          ),
        ),
      ),
    )
  );
};

const noticeView = (scene: Scene): Child => {
  const { notice } = scene.state;
  return (
    notice &&
    h(
      'div',
      { class: 'notice' },
      banner(notice.tone, h('p', {}, notice.text)),
      button(
        '×',
        () => {
          scene.send(dismiss);
        },
        { tone: 'quiet', says: 'Close this message' },
      ),
    )
  );
};

const ABSENT =
  'No workbook here. You can read, try and save a plan as a file, but not insert ' +
  'formulas. In Excel: Home › Add-ins › Spawnbook; if this pane is already inside ' +
  'Excel, close it and open it again.';
const OLD =
  'This Excel is older than Spawnbook needs (Excel 2021 or Microsoft 365). You can ' +
  'read, try, and save a plan as a file.';
const hostView = ({ state }: Scene): Child => {
  if (state.host === 'absent') return banner('warning', h('p', {}, ABSENT));
  return state.host === 'old' && banner('warning', h('p', {}, OLD));
};

/** The whole pane. Top right stays free: Excel puts its own button there. */
export const appView = (scene: Scene): readonly VNode[] => [
  h(
    'a',
    {
      class: 'skip',
      href: '#screen',
      on: {
        click: (event) => {
          event.preventDefault();
          document.getElementById('screen')?.focus();
        },
      },
    },
    'Skip to content',
  ),
  h('header', { class: 'top' }, h('h1', {}, 'Spawnbook')),
  h(
    'div',
    { class: 'tabs', role: 'tablist', 'aria-label': 'Screens' },
    SCREENS.map((id) => tab(id, scene)),
  ),
  h(
    'main',
    {
      id: 'screen',
      class: 'screen',
      role: 'tabpanel',
      tabindex: '-1',
      'aria-labelledby': `tab-${scene.state.screen}`,
      'aria-busy': scene.state.task ? 'true' : undefined,
    },
    h('div', { class: 'host' }, hostView(scene)),
    h('div', { key: scene.state.screen, class: 'page' }, VIEWS[scene.state.screen](scene)),
  ),
  h(
    'footer',
    { class: 'foot' },
    h('div', { role: 'status', 'aria-live': 'polite' }, progress(scene), noticeView(scene)),
    h('div', { role: 'alert' }, questionView(scene)),
  ),
];
