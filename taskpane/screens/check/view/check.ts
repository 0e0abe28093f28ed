// Long: one screen from top to bottom.
import type { AuditReport, Finding, FindingGroup } from '../../../../shared/records';
import { SEVERITY_WORDS } from '../../../../shared/records/findings/finding';
import type { Checked } from '../state/check';
import { LEAST_FOR_RATES, LEAST_FOR_TRENDS } from '../state/check';
import { checkAgain, checkBook, checkFile, checkSelection, checkSheet } from '../commands/check';
import { markCells, takeMarksAway, writeFindings, writeRates, writeTrends } from '../commands/out';
import { goToCell } from '../../messages/commands/messages';
import type { Child, VNode } from '../../../pane/frame/draw';
import { english, h } from '../../../pane/frame/draw';
import { withFigures } from '../../../pane/phrases';
import { hasWorkbook, isFree } from '../../../pane/keeping/state';
import { columnsView } from './columns';
import { questionsView } from './questions';
import { learnedView } from './learned';
import type { Scene } from '../../../pane/frame/parts';
import { banner, button, section } from '../../../pane/frame/parts';
import { counted, filePicker, lines } from '../../share/view/pieces';

/** Shown at once of one group; the others unfold, and beyond that the sheet has them. */
const FIRST = 3;
const LISTED = 30;
const SEVERITIES = ['impossible', 'unlikely', 'look'] as const;

function chooseView({ state, send }: Scene): VNode {
  const isOff = state.task !== undefined;
  const isOpen = hasWorkbook(state);
  const { given, fault } = state.check;
  const open = [
    [checkSelection, 'check-selection'],
    [checkSheet, 'check-sheet'],
    [checkBook, 'check-book'],
  ] as const;
  return section(
    '1. What to check',
    h(
      'p',
      { class: 'hint' },
      'Past runs, doses, feed or growth as you wrote them down. Headings stay in your ' +
        'words. Nothing is changed.',
    ),
    h(
      'div',
      { class: 'actions' },
      isOpen &&
        open.map(([command, id]) =>
          button(
            command.label,
            () => {
              send(command);
            },
            { id, isOff },
          ),
        ),
      filePicker(
        {
          id: 'check-file',
          face: checkFile.label,
          label: 'File with records',
          accept: '.xlsx,.csv,.tsv,.txt',
          isOff,
        },
        (chosen) => {
          send(checkFile, chosen);
        },
      ),
    ),
    h('div', { 'aria-live': 'polite' }, fault !== undefined && banner('warning', h('p', {}, fault))),
    given && given.notes.length > 0 && lines(given.notes),
  );
}

/** Said first: what nobody looked at. */
function notReadView({ notRead, reading, report }: Checked): Child {
  const skipped = report.notChecked.length;
  if (notRead === '' && skipped === 0) return undefined;
  const shown = reading.unread.slice(0, NAMED).map(({ header, sheet }) => header || `a column of ${sheet}`);
  const more = reading.unread.length - shown.length;
  return h(
    'div',
    { id: 'check-not-read', class: 'stack' },
    notRead !== '' &&
      h(
        'p',
        {},
        h('strong', {}, notRead),
        ` Not read: ${shown.join(', ')}${more > 0 ? ` and ${more} more` : ''}.`,
      ),
    skipped > 0 &&
      h('p', { class: 'hint' }, `${counted(skipped, 'rule')} had nothing to check; the list is at the end.`),
  );
}
/** Headings named in one line. */
const NAMED = 6;

function summaryView(result: Checked, name: string): VNode {
  const { report, reading, notRead } = result;
  const { found, records, tables } = report;
  const where = `in ${counted(records, 'record')} of ${counted(tables.length, 'table')}`;
  const isClean = found === 0 && reading.isEnough;
  return h(
    'div',
    { id: 'check-found', class: 'stack', tabindex: '-1', role: 'group', 'aria-label': 'What was found' },
    h('p', { class: 'file-name' }, 'Checked: ', h('strong', {}, name)),
    notReadView(result),
    banner(
      isClean ? 'good' : 'warning',
      h(
        'p',
        {},
        found === 0
          ? `Nothing was found ${where}${notRead === '' ? '' : ', as far as columns were read'}.`
          : `${counted(found, 'finding')} ${where}.`,
        found === 0 && !isClean && ' Too little was read to call the book clean: say what its columns are.',
      ),
    ),
  );
}

function findingView(
  { place: { sheet, cell }, sentence, seen, expected, proposal }: Finding,
  isOpen: boolean,
  { state, send }: Scene,
): VNode {
  const place = `${sheet}!${cell}`;
  return h(
    'li',
    { class: 'trouble' },
    h(
      'div',
      { class: 'trouble-head' },
      isOpen
        ? button(
            place,
            () => {
              send(goToCell, { sheet, address: cell });
            },
            { tone: 'quiet', isOff: !isFree(state), says: `Go to ${place}` },
          )
        : h('strong', {}, place),
    ),
    english('p', {}, withFigures(sentence)),
    (seen !== '' || expected !== '') &&
      english(
        'p',
        { class: 'hint' },
        seen !== '' && `Seen: ${withFigures(seen)}. `,
        expected !== '' && `Expected: ${withFigures(expected)}.`,
      ),
    proposal !== undefined &&
      h('p', { class: 'hint' }, h('strong', {}, 'Proposal, not written: '), withFigures(proposal)),
  );
}

function groupView(
  { rule, where, findings, more }: FindingGroup,
  { restsOn }: Checked,
  isOpen: boolean,
  scene: Scene,
): VNode {
  const rest = findings.slice(FIRST, LISTED);
  const beyond = findings.length - Math.min(findings.length, LISTED) + more;
  return h(
    'div',
    { class: 'stack finding-group', key: `${rule.id} ${where}` },
    h('h4', {}, `${rule.title} (${findings.length + more})`),
    english('p', { class: 'hint' }, `In ${where}. ${rule.why} Rests on: ${restsOn.get(rule.id) ?? ''}.`),
    h(
      'ul',
      { class: 'troubles' },
      findings.slice(0, FIRST).map((one) => findingView(one, isOpen, scene)),
    ),
    rest.length > 0 &&
      h(
        'details',
        { class: 'more' },
        h('summary', {}, `${rest.length} more of these`),
        h(
          'ul',
          { class: 'troubles' },
          rest.map((one) => findingView(one, isOpen, scene)),
        ),
      ),
    beyond > 0 && h('p', { class: 'hint' }, `and ${beyond} beyond those; the findings sheet lists more.`),
  );
}

const findingsView = (result: Checked, isOpen: boolean, scene: Scene): Child =>
  SEVERITIES.map((severity) => {
    const groups = result.report.groups.filter((group) => group.severity === severity);
    return (
      groups.length > 0 &&
      section(
        `${SEVERITY_WORDS[severity]} (${groups.reduce((sum, { findings, more }) => sum + findings.length + more, 0)})`,
        groups.map((group) => groupView(group, result, isOpen, scene)),
      )
    );
  });

const notCheckedView = ({ notChecked }: AuditReport): Child =>
  notChecked.length > 0 &&
  h(
    'details',
    { class: 'more' },
    h('summary', {}, `Not checked (${notChecked.length} rules)`),
    h(
      'ul',
      { class: 'said' },
      notChecked.map(({ title, because }) => h('li', {}, `${title}: not checked, because ${because}.`)),
    ),
  );

function outView({ report }: Checked, isOpen: boolean, { state, send }: Scene): Child {
  if (!hasWorkbook(state)) return undefined;
  const isOff = !isFree(state);
  const { marks } = state.check;
  return section(
    report.records >= LEAST_FOR_RATES ? '4. What to do with it' : '3. What to do with it',
    h(
      'div',
      { class: 'actions' },
      button(
        writeFindings.label,
        () => {
          send(writeFindings);
        },
        { id: 'check-write', tone: 'main', isOff },
      ),
      isOpen &&
        report.found > 0 &&
        button(
          markCells.label,
          () => {
            send(markCells);
          },
          { id: 'check-mark', isOff },
        ),
      marks.length > 0 &&
        button(
          takeMarksAway.label,
          () => {
            send(takeMarksAway);
          },
          { id: 'check-unmark', isOff },
        ),
      report.records >= LEAST_FOR_RATES &&
        button(
          writeRates.label,
          () => {
            send(writeRates);
          },
          { id: 'check-rates', isOff },
        ),
      report.records >= LEAST_FOR_TRENDS &&
        button(
          writeTrends.label,
          () => {
            send(writeTrends);
          },
          { id: 'check-trends', isOff },
        ),
      marks.length > 0 &&
        h(
          'p',
          { class: 'hint' },
          'The colours from before are kept until the pane is closed: take the marks away first.',
        ),
      h(
        'p',
        { class: 'hint' },
        'Rates and trends are learned from records without a finding. New sheets only; no value is changed.',
      ),
    ),
  );
}

function resultView(result: Checked, scene: Scene): Child {
  const { state, send } = scene;
  const { given, isChanged } = state.check;
  const isOpen = given?.again !== undefined && hasWorkbook(state);
  return [
    section(
      '2. What was found',
      summaryView(result, given?.name ?? ''),
      questionsView(result, scene),
      columnsView(result, scene),
      h(
        'div',
        { class: 'actions' },
        button(
          checkAgain.label,
          () => {
            send(checkAgain);
          },
          { id: 'check-again', tone: isChanged ? 'main' : 'plain', isOff: state.task !== undefined },
        ),
      ),
    ),
    findingsView(result, isOpen, scene),
    notCheckedView(result.report),
    learnedView(scene),
    outView(result, isOpen, scene),
  ];
}

export function recordsView(scene: Scene): readonly VNode[] {
  const { result } = scene.state.check;
  return [
    h('h2', {}, 'Check records'),
    h(
      'p',
      { class: 'lead' },
      'Finds numbers in your records that cannot be right, and says why. It never corrects anything.',
    ),
    h('div', { class: 'stack sharing' }, chooseView(scene), result && resultView(result, scene)),
  ];
}
