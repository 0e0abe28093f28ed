import type { Family, SheetFunction } from '../../../../shared/functions/define';
import { PREFIX } from '../../../../shared/functions/define';
import { chooseFamily, openPage, searchFunctions } from '../commands/functions';
import type { VNode } from '../../../pane/draw';
import { h } from '../../../pane/draw';
import { FAMILIES, matching } from '../state/functions';
import type { Scene } from '../../../pane/parts';
import { inputOf } from '../../../pane/parts';

const familyOf = (value: string): Family | 'all' => FAMILIES.find((family) => family === value) ?? 'all';

const found = (n: number, search: string): string => {
  if (n === 0) return `No function holds all of “${search}”. Try fewer or other words.`;
  return n === 1 ? '1 function' : `${n} functions`;
};

const card = (fn: SheetFunction, { send }: Scene): VNode =>
  h(
    'li',
    { key: fn.name },
    h(
      'button',
      {
        type: 'button',
        class: 'card',
        on: {
          click: () => {
            send(openPage, fn.name);
          },
        },
      },
      h(
        'span',
        { class: 'card-name' },
        h('span', { class: 'prefix' }, `${PREFIX}.`),
        fn.id.split('.').flatMap((part, i) => (i > 0 ? ['.', h('wbr'), part] : [part])),
      ),
      h('span', { class: 'card-text' }, fn.summary),
    ),
  );

export function functionList(scene: Scene): readonly VNode[] {
  const { state, send } = scene;
  const list = matching(state.functions);
  return [
    h(
      'div',
      { class: 'field' },
      h('label', { for: 'function-search' }, 'What do you want to know?'),
      h('input', {
        id: 'function-search',
        type: 'search',
        autocomplete: 'off',
        value: state.functions.search,
        placeholder: 'for example: hatch time',
        'aria-controls': 'function-list',
        on: {
          input: (event) => {
            send(searchFunctions, inputOf(event));
          },
        },
      }),
    ),
    h(
      'div',
      { class: 'field' },
      h('label', { for: 'function-family' }, 'Subject'),
      h(
        'select',
        {
          id: 'function-family',
          value: state.functions.family,
          on: {
            change: (event) => {
              send(chooseFamily, familyOf(inputOf(event)));
            },
          },
        },
        h('option', { value: 'all' }, 'All subjects'),
        FAMILIES.map((family) => h('option', { value: family }, family)),
      ),
    ),
    h('p', { class: 'count', role: 'status' }, found(list.length, state.functions.search)),
    h(
      'ul',
      { id: 'function-list', class: 'cards' },
      list.map((fn) => card(fn, scene)),
    ),
  ];
}
