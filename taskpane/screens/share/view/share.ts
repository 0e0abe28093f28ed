import { goToCell } from '../../messages/commands/messages';
import { showErrors } from '../../why/commands/errors';
import { lookAtFile, lookFirst } from '../commands/share';
import { writeSummary } from '../commands/summary';
import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Look } from '../state/share';
import { hasWorkbook, isFree } from '../../../pane/keeping/state';
import type { Scene } from '../../../pane/frame/parts';
import { banner, button, facts, section } from '../../../pane/frame/parts';
import { checkView } from './check';
import { choicesView } from './choices';
import { makeView, reportView } from './report';
import { counted, filePicker, lines } from './pieces';

type Inspection = Look['inspection'];
type Problem = Inspection['problems'][number];

/** More than this makes no list a person reads. */
const LISTED = 20;

function verdict({ refused, calls, sheets, problems }: Inspection): VNode {
  if (refused !== undefined) return banner('bad', h('p', {}, refused));
  const stopping = problems.filter(({ stops }) => stops).length;
  if (stopping > 0)
    return banner(
      'bad',
      h(
        'p',
        {},
        `${counted(stopping, 'formula holds', 'formulas hold')} no finished value. Mend them first, or a reader finds an error or an empty cell there.`,
      ),
    );
  if (calls === 0)
    return banner(
      'good',
      h(
        'p',
        {},
        'No formula of Spawnbook is in this workbook: it can be shared as it is. A copy can ' +
          'still leave out sheets, columns and personal data.',
      ),
    );
  const where = counted(sheets.filter((sheet) => sheet.calls > 0).length, 'sheet');
  return banner(
    'good',
    h(
      'p',
      {},
      `${counted(calls, 'formula')} of Spawnbook on ${where} would hold ${calls === 1 ? 'its value' : 'their values'} in a copy. All other formulas go on working.`,
    ),
  );
}

/** "Log!B4: never calculated…" without the place, where a button says it. */
const withoutPlace = ({ sheet, cell, sentence }: Problem): string => {
  const place = `${sheet}!${cell}: `;
  const rest = sentence.startsWith(place) ? sentence.slice(place.length) : sentence;
  return `${rest.charAt(0).toUpperCase()}${rest.slice(1)}`;
};

function problemView(problem: Problem, isOpen: boolean, { state, send }: Scene): VNode {
  const { sheet, cell, stops, sentence } = problem;
  const place = `${sheet}!${cell}`;
  if (!isOpen || !hasWorkbook(state)) return h('li', { class: 'trouble' }, h('p', {}, sentence));
  return h(
    'li',
    { class: 'trouble' },
    h(
      'div',
      { class: 'trouble-head' },
      button(
        place,
        () => {
          send(goToCell, { sheet, address: cell });
        },
        { tone: 'quiet', isOff: !isFree(state), says: `Go to ${place}` },
      ),
      stops && h('span', { class: 'code' }, 'mend first'),
    ),
    h('p', {}, withoutPlace(problem)),
  );
}

const problemsView = ({ inspection: { problems, refused, stops }, isOpen }: Look, scene: Scene): Child => {
  if (refused !== undefined || problems.length === 0) return undefined;
  const sorted = [...problems].sort((a, b) => Number(b.stops) - Number(a.stops));
  return section(
    counted(problems.length, 'cell to look at', 'cells to look at'),
    stops &&
      isOpen &&
      h(
        'div',
        { class: 'actions' },
        button('Open Errors to repair', () => {
          scene.send(showErrors);
        }),
      ),
    h(
      'ul',
      { class: 'troubles' },
      sorted.slice(0, LISTED).map((problem) => problemView(problem, isOpen, scene)),
    ),
    problems.length > LISTED && h('p', { class: 'hint' }, `and ${problems.length - LISTED} more.`),
  );
};

const sheetsView = ({ inspection: { sheets, refused }, sheets: all }: Look): Child =>
  refused === undefined &&
  h(
    'details',
    { class: 'more' },
    h('summary', {}, `What is in it, sheet by sheet (${all.length})`),
    facts(
      all.map(({ name, isHidden }) => {
        const calls = sheets.find((sheet) => sheet.name === name)?.calls ?? 0;
        return [
          isHidden ? `${name} (hidden)` : name,
          calls === 0 ? 'none of ours' : counted(calls, 'formula'),
        ];
      }),
    ),
  );

function foundView(look: Look, scene: Scene): VNode {
  return h(
    'div',
    { id: 'share-found', class: 'stack', tabindex: '-1', role: 'group', 'aria-label': 'What was found' },
    h(
      'p',
      { class: 'file-name' },
      look.isOpen ? 'The open workbook: ' : 'The file: ',
      h('strong', {}, look.name),
    ),
    h('div', { 'aria-live': 'polite' }, verdict(look.inspection)),
    look.inspection.notes.length > 0 && lines(look.inspection.notes),
    problemsView(look, scene),
    sheetsView(look),
  );
}

function firstStep(scene: Scene): VNode {
  const { state, send } = scene;
  const { look, closed } = state.share;
  const isOpen = hasWorkbook(state);
  const isOff = state.task !== undefined;
  return section(
    '1. Look first',
    h('p', { class: 'hint' }, 'Nothing is changed, now or later: the copy is a new file.'),
    h('div', { 'aria-live': 'polite' }, closed !== undefined && banner('warning', h('p', {}, closed))),
    h(
      'div',
      { class: 'actions' },
      isOpen &&
        button(
          look ? 'Look again' : lookFirst.label,
          () => {
            send(lookFirst);
          },
          { tone: look || closed !== undefined ? 'plain' : 'main', isOff, id: 'share-look' },
        ),
      filePicker(
        {
          id: 'share-file',
          face: 'Choose a saved file',
          label: 'Saved workbook',
          tone: isOpen && closed === undefined ? 'plain' : look ? 'plain' : 'main',
          isOff,
        },
        (chosen) => {
          send(lookAtFile, chosen);
        },
      ),
    ),
    look && foundView(look, scene),
  );
}

const summaryView = ({ state, send }: Scene): Child =>
  hasWorkbook(state) &&
  section(
    'One page for an investor',
    h(
      'p',
      {},
      'The season of the plan in this workbook on one sheet: plain words, two charts, the ' +
        'poor and the good end, and what is taken for granted. It follows the plan, and ' +
        'lives on in a copy.',
    ),
    h(
      'div',
      { class: 'actions' },
      button(
        writeSummary.label,
        () => {
          send(writeSummary);
        },
        { id: 'share-summary', isOff: !isFree(state) },
      ),
    ),
  );

export function shareView(scene: Scene): readonly VNode[] {
  const { look, made } = scene.state.share;
  const canGoOn = look !== undefined && look.inspection.refused === undefined;
  return [
    h('h2', {}, 'Share a copy'),
    h(
      'p',
      { class: 'lead' },
      'A copy that opens anywhere without Spawnbook, with the same numbers and a page that ' +
        'says where each comes from.',
    ),
    h(
      'div',
      { class: 'stack sharing' },
      firstStep(scene),
      summaryView(scene),
      canGoOn && choicesView(look, scene),
      canGoOn && makeView(look, scene),
      made && reportView(made, scene),
      checkView(scene),
    ),
  ];
}
