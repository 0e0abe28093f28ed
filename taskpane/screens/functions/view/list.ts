import type { SheetFunction } from '../../../../shared/functions/define';
import { PREFIX } from '../../../../shared/functions/define';
import { chooseFamily, openPage, searchFunctions } from '../commands/functions';
import type { Intent } from '../../../help/finding/intents';
import type { Child, VNode } from '../../../pane/frame/draw';
import { english, h } from '../../../pane/frame/draw';
import { showPlace } from '../../../pane/frame/navigate';
import type { PlaceId } from '../../../pane/frame/places';
import { wordsFor } from '../../../words/words';
import type { Matches } from '../state/functions';
import { FAMILIES, matching } from '../state/functions';
import type { Scene } from '../../../pane/frame/parts';
import { button, inputOf } from '../../../pane/frame/parts';

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
      english('span', { class: 'card-text' }, fn.summary),
    ),
  );

/** Where a question leads that no function answers. */
const INTENT_PLACES: Readonly<Partial<Record<Intent['key'], PlaceId>>> = { plan: 'plan', share: 'share' };

function intentView(intent: Intent, scene: Scene): Child {
  const { find, places } = wordsFor(scene.state);
  const place = INTENT_PLACES[intent.key];
  if (place)
    return button(
      find.place(places[place]),
      () => {
        scene.send(showPlace, place);
      },
      { id: 'find-place', tone: 'main' },
    );
  const says = { none: find.outside, why: find.diagnose, ask: find.ambiguous }[
    intent.key as 'none' | 'why' | 'ask'
  ];
  return h('p', { class: 'lead' }, says);
}

const said = ({ list, intent, fits }: Matches, scene: Scene): Child => {
  const { find } = wordsFor(scene.state);
  const { search } = scene.state.functions;
  if (intent) return intentView(intent, scene);
  if (search.trim() === '') return undefined;
  if (list.length === 0) return find.nothing(search);
  return fits ? find.best : find.none(search);
};

/** Steps of the job, to look around where no question comes to mind. */
const familyButtons = ({ state, send }: Scene): VNode => {
  const { steps, find } = wordsFor(state);
  return h(
    'div',
    { class: 'vat-choice', role: 'group', 'aria-label': find.some },
    FAMILIES.map((family) =>
      h(
        'button',
        {
          type: 'button',
          class: 'chip',
          id: `family-${FAMILIES.indexOf(family)}`,
          'aria-pressed': state.functions.family === family ? 'true' : 'false',
          on: {
            click: () => {
              send(chooseFamily, state.functions.family === family ? 'all' : family);
            },
          },
        },
        steps[family] ?? family,
      ),
    ),
  );
};

export function functionList(scene: Scene): readonly Child[] {
  const { state, send } = scene;
  const { find } = wordsFor(state);
  const matches = matching(state.functions);
  return [
    h(
      'div',
      { class: 'field' },
      h('label', { for: 'function-search' }, find.ask),
      h('input', {
        id: 'function-search',
        type: 'search',
        autocomplete: 'off',
        value: state.functions.search,
        placeholder: find.placeholder,
        'aria-controls': 'function-list',
        on: {
          input: (event) => {
            send(searchFunctions, inputOf(event));
          },
        },
      }),
    ),
    h('div', { class: 'count', role: 'status' }, said(matches, scene)),
    h(
      'ul',
      { id: 'function-list', class: 'cards' },
      matches.intent?.key === 'none' ? [] : matches.list.map((fn) => card(fn, scene)),
    ),
    familyButtons(scene),
  ];
}
