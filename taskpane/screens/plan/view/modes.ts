import { choosePlanMode } from '../../season/commands/season';
import { planAgain } from '../../season/commands/again';
import type { VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { PlanMode } from '../../season/state/season';
import { PLAN_MODES } from '../../season/state/season';
import { hasWorkbook } from '../../../pane/keeping/state';
import type { Scene } from '../../../pane/frame/parts';
import { button } from '../../../pane/frame/parts';
import { planView } from './plan';
import { seasonView } from '../../season/view/season';

const FACES: Readonly<Record<PlanMode, string>> = { run: 'One run', season: 'A whole season' };

const choice = (mode: PlanMode, { state, send }: Scene): VNode =>
  h(
    'div',
    { class: 'segment' },
    h('input', {
      type: 'radio',
      id: `mode-${mode}`,
      name: 'plan-mode',
      value: mode,
      checked: state.season.mode === mode,
      on: {
        change: () => {
          send(choosePlanMode, mode);
        },
      },
    }),
    h('label', { for: `mode-${mode}` }, FACES[mode]),
  );

/** One run for one order, a season of many, or the rest of a season that is under way. */
export function plansView(scene: Scene): readonly VNode[] {
  const { state, send } = scene;
  return [
    h(
      'div',
      { class: 'ways', key: 'ways' },
      h(
        'fieldset',
        { class: 'segments' },
        h('legend', { class: 'unseen' }, 'What to plan'),
        PLAN_MODES.map((mode) => choice(mode, scene)),
      ),
      hasWorkbook(state) &&
        button(
          planAgain.label,
          () => {
            send(planAgain);
          },
          { tone: 'quiet', isOff: state.task !== undefined, id: 'season-again' },
        ),
    ),
    h(
      'div',
      { class: 'way', key: state.season.mode },
      state.season.mode === 'run' ? planView(scene) : seasonView(scene),
    ),
  ];
}
