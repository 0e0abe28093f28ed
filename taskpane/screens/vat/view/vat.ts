import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Scene } from '../../../pane/frame/parts';
import { button, inputOf } from '../../../pane/frame/parts';
import { wordsFor } from '../../../words/words';
import { doseView } from '../../dose/view/dose';
import { chooseVat } from '../commands/notebook';
import { addVat, keepVat, nameVat, openCard } from '../commands/vat';
import { CARD_IDS } from '../state/cards';
import type { NotebookLine } from '../state/notebook';
import { waiting } from '../state/notebook';
import { cardView } from './card';
import { lineView } from './line';
import { timerView } from './timer';

const adding = (scene: Scene): VNode => {
  const { state, send } = scene;
  const { vat } = wordsFor(state);
  return h(
    'form',
    {
      class: 'with-button',
      on: {
        submit: (event) => {
          event.preventDefault();
          send(keepVat);
        },
      },
    },
    h('label', { for: 'vat-added', class: 'unseen' }, vat.addName),
    h('input', {
      id: 'vat-added',
      type: 'text',
      autocomplete: 'off',
      placeholder: vat.addName,
      value: state.vat.added,
      on: {
        input: (event) => {
          send(nameVat, inputOf(event));
        },
      },
    }),
    button(
      vat.addDo,
      () => {
        send(keepVat);
      },
      { id: 'vat-keep', tone: 'main' },
    ),
  );
};

const vatChoice = (scene: Scene): VNode => {
  const { state, send } = scene;
  const { vat } = wordsFor(state);
  return h(
    'div',
    { class: 'vat-choice', role: 'group', 'aria-label': vat.which },
    state.vat.vats.map((name, i) =>
      h(
        'button',
        {
          type: 'button',
          key: name,
          id: `vat-${i}`,
          class: 'chip',
          'aria-pressed': state.vat.vat === name ? 'true' : 'false',
          on: {
            click: () => {
              send(chooseVat, name);
            },
          },
        },
        vat.of(name),
      ),
    ),
    h(
      'button',
      {
        type: 'button',
        id: 'vat-add',
        class: 'chip',
        'aria-label': vat.add,
        'aria-expanded': state.vat.isAdding ? 'true' : 'false',
        on: {
          click: () => {
            send(addVat, !state.vat.isAdding);
          },
        },
      },
      '+',
    ),
  );
};

const lastLines = (lines: readonly NotebookLine[], scene: Scene): Child =>
  lines.length > 0 &&
  h(
    'section',
    { class: 'block' },
    h('h3', {}, wordsFor(scene.state).vat.last),
    h(
      'ul',
      { class: 'lines' },
      lines.map((line, i) => lineView(line, scene, i === 0)),
    ),
  );

const LINES_SHOWN = 4;

const home = (scene: Scene): readonly Child[] => {
  const { state, send } = scene;
  const { vat } = wordsFor(state);
  const n = waiting(state.vat).length;
  return [
    h('h2', { class: 'unseen' }, vat.title),
    vatChoice(scene),
    state.vat.isAdding && adding(scene),
    h(
      'div',
      { class: 'card-grid', role: 'group', 'aria-label': vat.card },
      CARD_IDS.map((id) =>
        h(
          'button',
          {
            type: 'button',
            key: id,
            id: `card-${id}`,
            class: 'card-face',
            on: {
              click: () => {
                send(openCard, id);
              },
            },
          },
          vat.cards[id],
        ),
      ),
    ),
    n > 0 && h('p', { class: 'hint' }, vat.waits(n)),
    lastLines([...state.vat.lines].reverse().slice(0, LINES_SHOWN), scene),
  ];
};

export function vatView(scene: Scene): readonly Child[] {
  const { card } = scene.state.vat;
  return [
    // A clock that runs stands in the head of a card, or beside the vat that is dosed; what has rung is said above all.
    (card === undefined || scene.state.vat.timer?.hasRung) && timerView(scene),
    ...(card === undefined ? home(scene) : card === 'dose' ? doseView(scene) : cardView(card, scene)),
  ];
}
