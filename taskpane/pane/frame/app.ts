import { changeWord, dismiss, showPlace, toggleMenu } from './navigate';
import type { Child, VNode } from './draw';
import { h } from './draw';
import type { PlaceId } from './places';
import { MENU, PLACES, placeOf } from './places';
import type { ShownAnswer, PaneQuestion } from '../keeping/state';
import type { Scene } from './parts';
import { banner, button, inputOf, progress } from './parts';
import type { Command } from '../command';
import { keepLeft, putLeftBack, takeLeftAway } from '../keeping/unfinished';
import { wordsFor } from '../../words/words';

/** The pane's frame: where one is, where one can go, what is going on, and what is asked. */

const placeButton = (id: PlaceId, scene: Scene): VNode => {
  const isHere = scene.state.screen === id;
  return h(
    'li',
    { key: id },
    h(
      'button',
      {
        type: 'button',
        id: `place-${id}`,
        class: 'place',
        'aria-current': isHere ? 'page' : undefined,
        on: {
          click: () => {
            scene.send(showPlace, id);
          },
        },
      },
      wordsFor(scene.state).places[id],
    ),
  );
};

const menuView = (scene: Scene): VNode => {
  const { state, send } = scene;
  const { places } = wordsFor(state);
  return h(
    'li',
    { key: 'menu', class: 'menu' },
    h(
      'button',
      {
        type: 'button',
        id: 'menu-button',
        class: 'place',
        'aria-expanded': state.isMenuOpen ? 'true' : 'false',
        'aria-controls': state.isMenuOpen ? 'menu' : undefined,
        'aria-label': places.menu,
        'aria-current': (MENU as readonly string[]).includes(state.screen) ? 'page' : undefined,
        on: {
          click: () => {
            send(toggleMenu);
          },
        },
      },
      '⋯',
    ),
    state.isMenuOpen &&
      h(
        'ul',
        {
          id: 'menu',
          class: 'menu-list',
          on: {
            keydown: (event) => {
              if (!(event instanceof KeyboardEvent) || event.key !== 'Escape') return;
              send(toggleMenu);
              document.getElementById('menu-button')?.focus();
            },
          },
        },
        MENU.map((id) => placeButton(id, scene)),
      ),
  );
};

/** Answers that no place of its own has. */
const EVERYWHERE: Partial<Record<ShownAnswer['act'], Command>> = { takeLeftAway, keepLeft, putLeftBack };

const answerTo = (answer: ShownAnswer, { state, send }: Scene): void => {
  const command = placeOf(state.screen)?.answers?.[answer.act] ?? EVERYWHERE[answer.act];
  send(command ?? dismiss);
};

const wordField = (word: NonNullable<PaneQuestion['word']>, { send }: Scene): VNode =>
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
        { tone: 'quiet', says: wordsFor(scene.state).shell.closeMessage },
      ),
    )
  );
};

const hostView = ({ state }: Scene): Child => {
  const { shell } = wordsFor(state);
  // Said once, at home; elsewhere the actions that need a workbook are simply not there.
  if (state.screen !== 'today') return undefined;
  if (state.host === 'absent') return h('p', { class: 'hint' }, shell.absent);
  return state.host === 'old' && banner('warning', h('p', {}, shell.old));
};

const placeView = (scene: Scene): readonly Child[] => {
  const { screen, ready } = scene.state;
  const place = placeOf(screen);
  return place && ready.includes(screen)
    ? place.view(scene)
    : [h('p', { class: 'wait' }, wordsFor(scene.state).shell.opening)];
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
    wordsFor(scene.state).shell.skip,
  ),
  h('header', { class: 'top' }, h('h1', {}, 'Spawnbook')),
  h(
    'nav',
    { class: 'places', 'aria-label': wordsFor(scene.state).places.all },
    h(
      'ul',
      {},
      PLACES.map((id) => placeButton(id, scene)),
      menuView(scene),
    ),
  ),
  h(
    'main',
    {
      id: 'screen',
      class: `screen at-${scene.state.screen}`,
      tabindex: '-1',
      'aria-busy': scene.state.task ? 'true' : undefined,
    },
    h('div', { class: 'host' }, hostView(scene)),
    h('div', { key: scene.state.screen, class: 'page' }, placeView(scene)),
  ),
  h(
    'footer',
    { class: 'foot' },
    scene.state.ready.includes(scene.state.screen) && placeOf(scene.state.screen)?.foot?.(scene),
    h('div', { role: 'status', 'aria-live': 'polite' }, progress(scene), noticeView(scene)),
    h('div', { role: 'alert' }, questionView(scene)),
  ),
];
