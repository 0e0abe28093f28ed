import { fillSeasonExample } from '../commands/season';
import { planSeason, saveSeason, writeSeason } from '../commands/plan';
import type { Child, VNode } from '../../../pane/draw';
import { h } from '../../../pane/draw';
import { HATCHERY, USUAL_GROUPS } from '../state/fields';
import { LISTS } from '../state/lists';
import { isOutdated } from '../state/season';
import { hasWorkbook } from '../../../pane/state';
import type { Scene } from '../../../pane/parts';
import { banner, button } from '../../../pane/parts';
import { againView } from './again';
import { foldedGroup, listArea, monthsView, singleField, staffView } from './fields';
import { keptView, ordersView, underwayView } from './orders';
import { resultView } from './result';

/** Many orders, many runs: the form, then what the season comes to. */

const formView = (scene: Scene): VNode =>
  h(
    'form',
    {
      novalidate: true,
      on: {
        submit: (event) => {
          event.preventDefault();
        },
      },
    },
    h(
      'fieldset',
      { key: 'hatchery' },
      h('legend', { class: 'unseen' }, 'Hatchery'),
      h(
        'div',
        { class: 'fields' },
        HATCHERY.map((field) => singleField(field, scene)),
      ),
    ),
    underwayView(scene),
    ordersView(scene),
    h(
      'fieldset',
      { key: 'lists' },
      h('legend', {}, 'Vats and brood fish'),
      LISTS.map((list) => listArea(list, scene)),
    ),
    monthsView(scene),
    staffView(scene),
    h(
      'div',
      { class: 'folded', key: 'folded' },
      USUAL_GROUPS.map((group) => foldedGroup(group, scene)),
    ),
    keptView(scene),
  );

const outdatedView: VNode = banner(
  'warning',
  h('p', {}, 'The form has changed since: this plan is outdated. Work the plan out again.'),
);

function resultPart(scene: Scene): Child {
  const { state, send } = scene;
  const { made } = state.season;
  if (!made) return h('p', { class: 'hint' }, 'The plan shows here before anything is written.');
  const isOld = isOutdated(state.season);
  const isOff = state.task !== undefined || isOld;
  return [
    h('div', { class: 'host', role: 'status' }, isOld && outdatedView),
    h('div', { class: isOld ? 'outdated' : 'current', key: 'plan' }, resultView(made)),
    h(
      'div',
      { class: 'actions' },
      hasWorkbook(state) &&
        button(
          writeSeason.label,
          () => {
            send(writeSeason);
          },
          { tone: 'main', isOff, id: 'season-write' },
        ),
      button(
        saveSeason.label,
        () => {
          send(saveSeason);
        },
        { tone: hasWorkbook(state) ? 'plain' : 'main', isOff, id: 'season-save' },
      ),
      h(
        'p',
        { class: 'hint' },
        isOld
          ? 'Work the plan out again before it is written.'
          : 'New sheets only: nothing that is in the workbook now is changed.',
      ),
    ),
  ];
}

export function seasonView(scene: Scene): readonly VNode[] {
  const { state, send } = scene;
  const isOff = state.task !== undefined;
  return [
    h('h2', {}, 'A whole season'),
    h(
      'p',
      { class: 'lead' },
      'Many orders, with the fish, vats and hands you have: which run is when, in which ' +
        'vats, and how sure it is.',
    ),
    h(
      'div',
      { class: 'quick' },
      button(
        fillSeasonExample.label,
        () => {
          send(fillSeasonExample);
        },
        { tone: 'quiet', isOff, id: 'season-example' },
      ),
    ),
    h('div', { class: 'stack', key: 'again' }, againView(scene)),
    formView(scene),
    h(
      'div',
      { class: 'actions', key: 'plan-it' },
      button(
        state.season.made ? 'Work the plan out again' : planSeason.label,
        () => {
          send(planSeason);
        },
        { tone: 'main', isOff, id: 'season-plan' },
      ),
    ),
    h(
      'section',
      { class: 'preview', key: 'result', 'aria-label': 'The season planned' },
      h('h2', { id: 'season-result', tabindex: '-1' }, 'What it comes to'),
      resultPart(scene),
    ),
  ];
}
