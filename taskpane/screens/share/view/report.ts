import { makeCopy, saveAgain } from '../commands/copy';
import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Choices, Look, CopyMade } from '../state/share';
import { digestText, leavesOut } from '../state/share';
import type { Scene } from '../../../pane/frame/parts';
import { banner, button, facts, section } from '../../../pane/frame/parts';
import { counted, lines } from './pieces';

/** Before the copy is made: what will go. After: what became of it. */

/** So many names are read; more are counted. */
const FEW = 4;

function promised({ leftOut, blank, personal }: Choices): string[] {
  return [
    'What the add-in leaves in a file, so that no reader is asked to install anything.',
    ...(leftOut.size > 0
      ? [
          `${counted(leftOut.size, 'sheet')}: ${[...leftOut].join(', ')}. Formulas that read them become values.`,
        ]
      : []),
    ...(blank.size > 0
      ? [`${counted(blank.size, 'column or range', 'columns or ranges')}, and what would give them away.`]
      : []),
    ...(personal ? ['Authors, paths, printers and the like.'] : []),
  ];
}

export function makeView({ inspection }: Look, { state, send }: Scene): VNode {
  const { choices } = state.share;
  const isBlocked = inspection.stops && !choices.accept;
  return section(
    '3. Make the copy',
    h('p', {}, 'Will be taken out:'),
    lines(promised(choices)),
    inspection.calls === 0 &&
      !leavesOut(choices) &&
      h(
        'p',
        { class: 'hint' },
        'Nothing would change: no formula of Spawnbook is in it, and nothing is left out.',
      ),
    isBlocked &&
      h(
        'p',
        { class: 'hint' },
        'First mend the cells above, or tick that the copy shall be made all the same.',
      ),
    h(
      'div',
      { class: 'actions' },
      button(
        makeCopy.label,
        () => {
          send(makeCopy);
        },
        { tone: 'main', id: 'share-make', isOff: state.task !== undefined || isBlocked },
      ),
    ),
  );
}

const NAME_GONE = /^The name (.+) was removed: it stood for something left out\.$/;
/** A season plan has a hundred names; one line for those that went with a sheet. */
function condensed(removed: readonly string[]): string[] {
  // Excel's own names, such as the rows a sheet repeats in print, mean nothing to a reader.
  const names = removed
    .flatMap((line) => NAME_GONE.exec(line)?.[1] ?? [])
    .filter((name) => !name.startsWith('_xlnm.'));
  const rest = removed.filter((line) => !NAME_GONE.test(line));
  if (names.length === 0) return rest;
  return [
    ...rest,
    `${counted(names.length, 'name')} that stood for something left out: ${names.slice(0, FEW).join(', ')}${names.length > FEW ? ` and ${names.length - FEW} more` : ''}.`,
  ];
}

const digestView = (digest: string): Child => [
  h(
    'p',
    {},
    'Write this down, or put it into the message that goes with the copy. Whoever has it ' +
      'can tell later whether a number was changed.',
  ),
  h('p', { class: 'digest', tabindex: '0', 'aria-label': 'Digest of everything' }, digestText(digest)),
];

export function reportView({ report, fileName, delivered }: CopyMade, { state, send }: Scene): VNode {
  return h(
    'section',
    { id: 'share-report', class: 'block report', tabindex: '-1', 'aria-label': 'Report of the copy' },
    h('h3', {}, 'The copy'),
    h(
      'div',
      { 'aria-live': 'polite' },
      delivered === undefined
        ? banner('bad', h('p', {}, `${fileName} is made but not saved yet.`))
        : banner('good', h('p', {}, delivered)),
    ),
    h(
      'div',
      { class: 'actions' },
      button(
        saveAgain.label,
        () => {
          send(saveAgain);
        },
        {
          id: 'share-again',
          isOff: state.task !== undefined,
          tone: delivered === undefined ? 'main' : 'plain',
        },
      ),
    ),
    facts([
      ['Formulas of Spawnbook that became values', String(report.frozen)],
      ['that became ordinary formulas', String(report.alive)],
      ...(report.cut > 0 ? [['Other formulas that became values', String(report.cut)] as const] : []),
      ['Formulas that stay as they were', String(report.kept)],
    ]),
    h('p', {}, `The sheet “${report.page}” says for each of them where the number comes from.`),
    report.digest !== undefined && digestView(report.digest),
    report.problems.length > 0 && h('p', {}, h('strong', {}, 'To know')),
    lines(report.problems.map(({ sentence }) => sentence)),
    h('p', {}, h('strong', {}, 'Taken out or changed')),
    lines(condensed(report.removed), 'Nothing but the formulas.'),
    h('p', {}, h('strong', {}, 'Still in it')),
    lines(report.left, 'Nothing that tells more than the cells do.'),
  );
}
