import { goToCell, lookThrough, repair } from '../commands/messages';
import type { Child, VNode } from '../../../pane/frame/draw';
import { english, h } from '../../../pane/frame/draw';
import type { MessagesState, Report, Trouble } from '../state/messages';
import { placeText } from '../state/messages';
import { hasWorkbook, isFree } from '../../../pane/keeping/state';
import { BLANK_AS_ZERO } from '../../../pane/blanks';
import { errorWords } from '../../../pane/values/errorWords';
import type { Scene } from '../../../pane/frame/parts';
import { banner, button, section } from '../../../pane/frame/parts';

/** More than this makes no list a person reads; the rest is counted. */
const LISTED = 100;

const counted = (n: number, one: string, many: string): string => (n === 1 ? `1 ${one}` : `${n} ${many}`);

const summary = ({ calls, sheets, troubles }: Report): VNode => {
  const where = `${counted(calls, 'SPAWN formula', 'SPAWN formulas')} on ${counted(sheets, 'sheet', 'sheets')}`;
  if (calls === 0) return banner('good', `No SPAWN formulas on ${counted(sheets, 'sheet', 'sheets')}.`);
  return troubles.length === 0
    ? banner('good', `${where}, none of them shows an error.`)
    : banner('bad', `${where}, ${counted(troubles.length, 'shows', 'show')} an error.`);
};

const jump = (sheet: string, address: string, { state, send }: Scene): VNode =>
  button(
    placeText(sheet, address),
    () => {
      send(goToCell, { sheet, address });
    },
    { tone: 'quiet', isOff: !isFree(state), says: `Go to ${placeText(sheet, address)}` },
  );

const troubleView = (trouble: Trouble, scene: Scene): VNode =>
  h(
    'li',
    { class: 'trouble' },
    h(
      'div',
      { class: 'trouble-head' },
      jump(trouble.sheet, trouble.address, scene),
      h('span', { class: 'code' }, trouble.code),
    ),
    english('p', {}, ...errorWords(trouble.sentence)),
    h('code', { class: 'formula' }, trouble.formula),
  );

const troubleList = (troubles: readonly Trouble[], scene: Scene): Child =>
  troubles.length > 0 &&
  section(
    'Cells in error',
    h(
      'ul',
      { class: 'troubles' },
      troubles.slice(0, LISTED).map((trouble) => troubleView(trouble, scene)),
    ),
    troubles.length > LISTED &&
      h('p', { class: 'hint' }, `and ${troubles.length - LISTED} more. Mend these first, then look again.`),
  );

const repairView = ({ repairs }: Report, scene: Scene): Child =>
  repairs.length > 0 &&
  section(
    'Formulas to re-enter',
    h(
      'p',
      {},
      `${counted(repairs.length, 'cell was', 'cells were')} entered before the functions were there, or ${repairs.length === 1 ? 'is' : 'are'} tied to another file. Re-entering the same formula mends that; recalculating does not.`,
    ),
    h(
      'div',
      { class: 'actions' },
      button(
        repair.label,
        () => {
          scene.send(repair);
        },
        { tone: 'main', isOff: !isFree(scene.state), id: 'messages-repair' },
      ),
    ),
  );

/** Said only where it matters: most programs keep a blank blank. */
const blanksView = ({ blanks }: Report): Child => blanks === 'zero' && banner('warning', BLANK_AS_ZERO);

const leftView = ({ mended }: MessagesState, scene: Scene): Child =>
  mended &&
  mended.left.length > 0 &&
  section(
    'Left as they were',
    h(
      'ul',
      { class: 'troubles' },
      mended.left
        .slice(0, LISTED)
        .map(({ sheet, address, sentence }) =>
          h(
            'li',
            { class: 'trouble' },
            h('div', { class: 'trouble-head' }, jump(sheet, address, scene)),
            english('p', {}, ...errorWords(sentence)),
          ),
        ),
    ),
  );

export function messagesView(scene: Scene): readonly VNode[] {
  const { state, send } = scene;
  const { report } = state.messages;
  return [
    h('h2', {}, 'Messages'),
    h('p', { class: 'lead' }, 'What the SPAWN formulas of this workbook complain about, cell by cell.'),
    hasWorkbook(state)
      ? h(
          'div',
          { class: 'actions' },
          button(
            report ? 'Look again' : lookThrough.label,
            () => {
              send(lookThrough);
            },
            { tone: report ? 'plain' : 'main', isOff: !isFree(state), id: 'messages-look' },
          ),
        )
      : h(
          'p',
          { class: 'hint' },
          'This needs a workbook. Open Spawnbook inside Excel or in the local sheet.',
        ),
    h('div', { 'aria-live': 'polite' }, report && summary(report)),
    h(
      'div',
      { class: 'stack' },
      report && blanksView(report),
      report && repairView(report, scene),
      leftView(state.messages, scene),
      report && troubleList(report.troubles, scene),
    ),
  ];
}
