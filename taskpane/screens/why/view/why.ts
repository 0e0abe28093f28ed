import type { Child } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Scene } from '../../../pane/frame/parts';
import { wordsFor } from '../../../words/words';
import { recordsView } from '../../check/view/check';
import { openFunction } from '../../functions/state/functions';
import { functionList } from '../../functions/view/list';
import { functionPage } from '../../functions/view/page';
import { messagesView } from '../../messages/view/messages';
import { showPart } from '../commands/why';
import type { WhyPart } from '../state/why';
import { WHY_PARTS } from '../state/why';
import { cellView } from './cell';

const functionsView = (scene: Scene): readonly Child[] => {
  const fn = openFunction(scene.state.functions);
  return fn ? functionPage(fn, scene) : functionList(scene);
};

const VIEWS: Readonly<Record<WhyPart, (scene: Scene) => readonly Child[]>> = {
  cell: cellView,
  find: functionsView,
  check: recordsView,
  errors: messagesView,
};

export function whyView(scene: Scene): readonly Child[] {
  const { state, send } = scene;
  const { why } = wordsFor(state);
  return [
    h('h2', { class: 'unseen', key: 'title' }, why.title),
    h(
      'div',
      { class: 'parts', key: 'parts', role: 'group', 'aria-label': why.title },
      WHY_PARTS.map((part) =>
        h(
          'button',
          {
            type: 'button',
            id: `part-${part}`,
            class: 'chip',
            'aria-pressed': state.why.part === part ? 'true' : 'false',
            on: {
              click: () => {
                send(showPart, part);
              },
            },
          },
          why.parts[part],
        ),
      ),
    ),
    h('div', { class: 'page', key: `part-${state.why.part}` }, VIEWS[state.why.part](scene)),
  ];
}
