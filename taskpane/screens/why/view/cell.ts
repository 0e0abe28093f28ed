import { defaultText } from '../../../../shared/functions/describe';
import type { Cell, Grid } from '../../../../shared/base/values';
import { isError, isGrid } from '../../../../shared/base/values';
import { SOURCES } from '../../../../shared/families/sources';
import type { Child, VNode } from '../../../pane/frame/draw';
import { english, h } from '../../../pane/frame/draw';
import { errorWords } from '../../../pane/values/errorWords';
import { labelOf, showCell, showWithUnit } from '../../../pane/values/show';
import type { Scene } from '../../../pane/frame/parts';
import { button, section } from '../../../pane/frame/parts';
import { hasWorkbook } from '../../../pane/keeping/state';
import { wordsFor } from '../../../words/words';
import { openPage } from '../../functions/commands/functions';
import { sourceItem } from '../../functions/view/help';
import { goToCell } from '../../messages/commands/messages';
import { quoteSheet, splitReference } from '../../../../shared/sheet/formula/address';
import { followCell, markCells, placed, showPart, unmarkCells } from '../commands/why';
import type { Explained, ExplainedArg } from '../state/explain';
import { explain } from '../state/explain';
import { text } from '../../../../shared/units/quantities';

/** The selected cell in words: what it says, of what, how far it holds, and what would mend it. */

const short = (value: Cell | Grid | undefined, arg: ExplainedArg, rows: (n: number) => string): string => {
  const quantity = 'quantity' in arg.param ? arg.param.quantity : text;
  if (value === undefined) return '';
  if (!isGrid(value)) return showWithUnit(value, quantity);
  const cells = value.flat();
  return cells.length === 1
    ? showWithUnit(cells[0] ?? null, quantity)
    : `${cells
        .slice(0, 3)
        .map((cell) => showCell(cell, quantity))
        .join(', ')}${cells.length > 3 ? ' …' : ''} (${rows(cells.length)})`;
};

function argView(arg: ExplainedArg, sheet: string, scene: Scene): VNode {
  const { why } = wordsFor(scene.state);
  const { param, reference } = arg;
  const usual = defaultText(param);
  const where = reference === undefined ? undefined : placed(reference, sheet);
  return h(
    'div',
    { class: 'fact' },
    h('dt', {}, labelOf(param.name)),
    h(
      'dd',
      {},
      arg.text === ''
        ? h('span', { class: 'hint' }, usual === undefined ? why.left : why.leftOut(usual))
        : reference === undefined
          ? h('strong', {}, arg.text)
          : [
              h('strong', {}, short(arg.value, arg, why.rows)),
              ' ',
              button(
                reference,
                () => {
                  const { sheet: on = sheet, area } = splitReference(where ?? reference);
                  scene.send(goToCell, { sheet: on, address: area });
                },
                { tone: 'quiet', says: why.goTo(where ?? reference) },
              ),
            ],
    ),
  );
}

const markButton = (found: Explained, { state, send }: Scene): Child => {
  const { why } = wordsFor(state);
  const isMarked = state.why.marked.length > 0;
  return (
    (isMarked || found.args.some(({ reference }) => reference !== undefined)) &&
    button(
      isMarked ? why.unmark : why.mark,
      () => {
        send(isMarked ? unmarkCells : markCells);
      },
      { id: 'why-mark', isOff: state.task !== undefined },
    )
  );
};

const explained = (found: Explained, sheet: string, scene: Scene): Child => {
  const { why } = wordsFor(scene.state);
  const { fn } = found;
  return [
    english('p', { class: 'lead' }, fn.summary),
    found.sentence &&
      section(why.fix, english('p', { class: 'answer-error' }, ...errorWords(found.sentence))),
    section(
      why.args,
      h(
        'dl',
        { class: 'facts' },
        found.args
          .filter(({ param, text: typed }) => typed !== '' || param.name !== 'headings')
          .map((arg) => argView(arg, sheet, scene)),
      ),
    ),
    section(why.holds, english('p', {}, fn.valid)),
    section(
      why.source,
      h('ul', { class: 'sources' }, fn.sources.filter((key) => SOURCES[key]).map(sourceItem)),
    ),
    h(
      'div',
      { class: 'actions' },
      button(
        why.open,
        () => {
          scene.send(showPart, 'find');
          scene.send(openPage, fn.name);
        },
        { id: 'why-open' },
      ),
      markButton(found, scene),
    ),
  ];
};

export function cellView(scene: Scene): readonly Child[] {
  const { state, send } = scene;
  const { why } = wordsFor(state);
  if (!hasWorkbook(state)) return [h('p', { class: 'hint' }, why.noWorkbook)];
  const { cell, holds } = state.why;
  if (!cell)
    return [
      h('p', { class: 'lead' }, why.follow),
      button(
        why.look,
        () => {
          send(followCell);
        },
        { id: 'why-look' },
      ),
    ];
  const place = `${quoteSheet(cell.sheet)}!${cell.address}`;
  const found =
    cell.formula === ''
      ? undefined
      : explain(cell.formula, (reference) => holds[reference] as Cell | Grid | undefined);
  const quantity = found?.fn.returns.kind === 'value' && !found.isPart ? found.fn.returns.quantity : text;
  const shown = isError(cell.value) ? cell.value.error : showWithUnit(cell.value, quantity);
  return [
    h(
      'div',
      { class: 'why-cell', role: 'status', 'aria-live': 'polite' },
      h('p', { class: 'hint' }, place),
      cell.formula === ''
        ? h('p', {}, cell.value === null ? why.empty(place) : why.value(place, shown))
        : [
            h('p', { class: 'answer-value' }, shown),
            cell.spilledFrom !== undefined && h('p', {}, why.spilled(place, cell.spilledFrom)),
            h('code', { class: 'formula' }, cell.formula),
            !found && h('p', {}, why.native(place)),
          ],
    ),
    found && h('div', { class: 'stack' }, explained(found, cell.sheet, scene)),
    !found && h('p', { class: 'hint' }, why.follow),
  ];
}
