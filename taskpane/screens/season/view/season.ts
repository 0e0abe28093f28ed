import { fillSeasonExample } from '../commands/season';
import { planSeason, saveSeason, saveSeasonCards, writeSeason } from '../commands/plan';
import { makeTables, readTablesIn } from '../commands/tables';
import { writeOverSeason } from '../commands/writeOver';
import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import { HATCHERY, USUAL_GROUPS } from '../state/fields';
import { LISTS } from '../state/lists';
import { isOutdated } from '../state/season';
import { hasWorkbook } from '../../../pane/keeping/state';
import type { Scene } from '../../../pane/frame/parts';
import { banner, button } from '../../../pane/frame/parts';
import { againView } from './again';
import { foldedGroup, listArea, monthsView, singleField, staffView } from './fields';
import { batchesView, keptView, ordersView } from './orders';
import { resultView } from './result';
import { pictureWords } from '../../../words/words';

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
    batchesView(scene),
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

/** What may be written, and where. */
function actionsOf({ state, send }: Scene, isOff: boolean): readonly Child[] {
  const isAgain = state.season.again?.read !== undefined;
  const isOpen = hasWorkbook(state);
  return [
    isOpen &&
      isAgain &&
      button(
        writeOverSeason.label,
        () => {
          send(writeOverSeason);
        },
        { tone: 'main', isOff, id: 'season-over' },
      ),
    isOpen &&
      button(
        isAgain ? 'Write as a season of its own' : writeSeason.label,
        () => {
          send(writeSeason);
        },
        { tone: isAgain ? 'plain' : 'main', isOff, id: 'season-write' },
      ),
    button(
      saveSeason.label,
      () => {
        send(saveSeason);
      },
      { tone: isOpen ? 'plain' : 'main', isOff, id: 'season-save' },
    ),
    button(
      saveSeasonCards.label,
      () => {
        send(saveSeasonCards);
      },
      { isOff, id: 'season-cards' },
    ),
  ];
}

const whatIsWritten = (isOld: boolean, isAgain: boolean): string =>
  isOld
    ? 'Work the plan out again before it is written.'
    : isAgain
      ? 'Written over, the season keeps its sheets, its batches under way and all that was ' +
        'typed; one press takes it back.'
      : 'New sheets only: nothing that is in the workbook now is changed.';

function resultPart(scene: Scene): Child {
  const { state } = scene;
  const { made, again } = state.season;
  if (!made) return h('p', { class: 'hint' }, 'The plan shows here before anything is written.');
  const isOld = isOutdated(state.season);
  return [
    h('div', { class: 'host', role: 'status' }, isOld && outdatedView),
    h(
      'div',
      { class: isOld ? 'outdated' : 'current', key: 'plan' },
      resultView(made, pictureWords(scene.state)),
    ),
    h(
      'div',
      { class: 'actions' },
      ...actionsOf(scene, state.task !== undefined || isOld),
      h('p', { class: 'hint' }, whatIsWritten(isOld, again?.read !== undefined)),
    ),
  ];
}

/** A sheet to type on instead of the lines below, for whoever sits before one. */
const tablesView = ({ state, send }: Scene): Child =>
  hasWorkbook(state) &&
  h(
    'section',
    { class: 'block', key: 'tables' },
    h('h3', {}, 'Orders, vats and fish on a sheet'),
    h('p', { class: 'hint' }, 'Type or paste them there, with lists to choose from; a wrong cell is marked.'),
    h(
      'div',
      { class: 'actions' },
      button(
        makeTables.label,
        () => {
          send(makeTables);
        },
        { isOff: state.task !== undefined, id: 'season-make-tables' },
      ),
      button(
        readTablesIn.label,
        () => {
          send(readTablesIn);
        },
        { isOff: state.task !== undefined, id: 'season-read-tables' },
      ),
    ),
  );

export function seasonView(scene: Scene): readonly Child[] {
  const { state, send } = scene;
  const isOff = state.task !== undefined;
  return [
    h('h2', {}, 'A whole season'),
    h(
      'p',
      { class: 'lead' },
      'Many orders, with the fish, vats and hands you have: which nights to strip, which fish ' +
        'go to whom, in which vats, and how much of it can be promised.',
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
    tablesView(scene),
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
      h('h2', { id: 'season-result', tabindex: '-1' }, 'Result'),
      resultPart(scene),
    ),
  ];
}
