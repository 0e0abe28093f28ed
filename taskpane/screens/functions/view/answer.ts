import { headingText } from '../../../../shared/functions/invoke';
import type { SheetFunction } from '../../../../shared/functions/define';
import type { Cell, Grid } from '../../../../shared/base/values';
import { isError, isGrid } from '../../../../shared/base/values';
import type { CallDraft } from '../state/answer';
import { columnQuantities, hasHeadings } from '../state/answer';
import type { Child, VNode } from '../../../pane/frame/draw';
import { english, h } from '../../../pane/frame/draw';
import { errorWords } from '../../../pane/values/errorWords';
import { labelOf, showCell, showWithUnit } from '../../../pane/values/show';
import type { Scene } from '../../../pane/frame/parts';

/** More rows than this are counted, not shown. */
const ROWS_SHOWN = 8;

const sentenceOf = (value: Cell | Grid): string | undefined => {
  const error = isGrid(value) ? value.flat().find(isError) : isError(value) ? value : undefined;
  return error && (error.message ?? `The answer is ${error.error}.`);
};

/** One row of several values reads better as a list of name and value. */
const pairs = (fn: SheetFunction, row: readonly Cell[]): VNode => {
  const columns = fn.returns.kind === 'value' ? [] : Object.values(fn.returns.columns);
  return h(
    'dl',
    { class: 'facts' },
    columns.map((column, i) =>
      h(
        'div',
        { class: 'fact' },
        h('dt', {}, column.title),
        h('dd', {}, showWithUnit(row[i] ?? null, column.quantity)),
      ),
    ),
  );
};

function table(fn: SheetFunction, grid: Grid, headings: readonly string[]): VNode {
  const quantities = columnQuantities(fn, grid[0]?.length ?? 1);
  const rows = grid.slice(0, ROWS_SHOWN);
  return h(
    'div',
    { class: 'scroll', tabindex: '0', role: 'region', 'aria-label': 'Answer' },
    h(
      'table',
      {},
      headings.length > 0 &&
        h(
          'thead',
          {},
          h(
            'tr',
            {},
            headings.map((heading) => h('th', { scope: 'col' }, heading)),
          ),
        ),
      h(
        'tbody',
        {},
        rows.map((row) =>
          h(
            'tr',
            {},
            row.map((cell, i) => {
              const quantity = quantities[i];
              return h('td', {}, quantity ? showCell(cell, quantity) : String(cell));
            }),
          ),
        ),
      ),
    ),
    grid.length > ROWS_SHOWN && h('p', { class: 'hint' }, `and ${grid.length - ROWS_SHOWN} more rows`),
  );
}

function shown(fn: SheetFunction, value: Cell | Grid, scene: Scene): Child {
  const sentence = sentenceOf(value);
  if (isError(value))
    return english(
      'p',
      { class: 'answer-error' },
      h('strong', {}, `${value.error} `),
      ...(sentence === undefined ? [] : errorWords(sentence)),
    );
  if (!isGrid(value))
    return (
      fn.returns.kind === 'value' &&
      h('p', { class: 'answer-value' }, showWithUnit(value, fn.returns.quantity))
    );
  const skip = hasHeadings(fn, scene.state.functions.texts) ? 1 : 0;
  const body = value.slice(skip);
  const [first] = body;
  const headings = fn.returns.kind === 'value' ? [] : Object.values(fn.returns.columns).map(headingText);
  return [
    body.length === 1 && first && fn.returns.kind !== 'value' ? pairs(fn, first) : table(fn, body, headings),
    sentence && english('p', { class: 'answer-error' }, ...errorWords(sentence)),
  ];
}

function content(fn: SheetFunction, draft: CallDraft, scene: Scene): Child {
  const { state } = draft;
  switch (state.kind) {
    case 'incomplete':
      return h(
        'p',
        { class: 'hint' },
        'Still needed: ',
        english('span', {}, state.missing.map(labelOf).join(', ')),
      );
    case 'reading':
      return h('p', { class: 'hint' }, 'The answer shows once the cells are read from the workbook.');
    case 'unreadable':
      return english('p', { class: 'answer-error' }, ...errorWords(state.sentence));
    case 'answer':
      return shown(fn, state.value, scene);
  }
}

/** The formula as it would be inserted, and what it gives with these arguments. */
export const answerView = (fn: SheetFunction, draft: CallDraft, scene: Scene): VNode =>
  h(
    'div',
    { class: 'answer', id: 'function-answer', tabindex: '-1' },
    h('h3', {}, 'Answer'),
    h('div', { 'aria-live': 'polite' }, content(fn, draft, scene)),
    h('code', { class: 'formula' }, draft.formula),
  );
