import type { MappedColumn, RecordTable } from '../../../../shared/records';
import type { FieldName } from '../../../../shared/records/fields';
import { FIELD_NAMES, fieldSpec } from '../../../../shared/records/fields';
import type { Checked, Meaning } from '../state/check';
import { saidOf, sureness } from '../state/check';
import { forgetColumns, sayColumn } from '../commands/check';
import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Scene } from '../../../pane/frame/parts';
import { button, inputOf } from '../../../pane/frame/parts';
import { counted, lines } from '../../share/view/pieces';

/** How each column was read, and a way to say otherwise. */

const isMeaning = (text: string): text is Meaning =>
  text === 'ignore' || (FIELD_NAMES as readonly string[]).includes(text);
const option = (field: FieldName): VNode => h('option', { value: field }, fieldSpec(field).noun);
const SORTED = [...FIELD_NAMES].sort((a, b) => fieldSpec(a).noun.localeCompare(fieldSpec(b).noun, 'en'));

const howRead = ({ field, unit, confidence, reasons, isCorrected }: MappedColumn): string => {
  if (isCorrected) return 'As you said.';
  if (!field) return 'Not recognised.';
  return `${sureness(confidence)}${unit === undefined ? '' : `, in ${unit}`}${reasons.length > 0 ? `: ${reasons.join('; ')}` : ''}.`;
};

function columnView(table: RecordTable, column: MappedColumn, id: string, { state, send }: Scene): VNode {
  const sheet = table.layout === 'rows' ? table.title : undefined;
  const said = saidOf(state.check).find((one) => one.header === column.header && one.sheet === sheet)?.field;
  const known = [...new Set([...(column.field ? [column.field] : []), ...column.alternatives])];
  const face = column.header === '' ? `Column ${column.column}` : column.header;
  return h(
    'div',
    { class: 'field', key: id },
    h(
      'label',
      { for: id },
      face,
      table.layout === 'rows' && column.header !== '' && h('span', { class: 'unit' }, ` (${column.column})`),
    ),
    column.header !== '' &&
      h(
        'select',
        {
          id,
          value: said ?? column.field ?? 'ignore',
          'aria-describedby': `${id}-hint`,
          on: {
            change: (event) => {
              const field = inputOf(event);
              if (isMeaning(field)) send(sayColumn, { sheet, header: column.header, field });
            },
          },
        },
        h('option', { value: 'ignore' }, 'not used'),
        known.map(option),
        SORTED.filter((field) => !known.includes(field)).map(option),
      ),
    h('p', { id: `${id}-hint`, class: 'hint' }, howRead(column)),
  );
}

const SKIPPED = {
  total: 'row of totals',
  note: 'row of notes',
  'header again': 'repeated heading',
  units: 'row of units',
} as const;
const skippedLines = ({ skipped }: RecordTable): string[] =>
  Object.entries(SKIPPED).flatMap(([why, one]) => {
    const n = skipped.filter((row) => row.why === why).length;
    return n === 0
      ? []
      : [`${counted(n, one, one.replace(/^row /, 'rows ').replace(/heading$/, 'headings'))} left out`];
  });

function tableView(table: RecordTable, at: number, scene: Scene): VNode {
  const unknown = table.mapping.filter(({ field }) => field === undefined).length;
  return h(
    'details',
    { class: 'more', key: `table-${at}` },
    h(
      'summary',
      {},
      `How ${table.title} was read: ${counted(table.length, 'record')}, ${counted(table.mapping.length - unknown, 'column')} known${unknown > 0 ? `, ${unknown} not` : ''}`,
    ),
    h('div', {}, lines(skippedLines(table))),
    table.mapping.map((column, i) => columnView(table, column, `check-column-${at}-${i}`, scene)),
  );
}

const LASTS = {
  kept: (n: number) =>
    `${n === 1 ? 'What you said about one column is' : `What you said about ${n} columns is`} remembered with this workbook and used.`,
  notKept: () =>
    'This workbook does not take notes of what you said (it may be read only): it holds ' +
    'until the pane is closed.',
  file: () => 'What you said holds until the pane is closed; a file that is only read remembers nothing.',
} as const;

/** How long what the user said lasts, and a way to take it back. */
function saidView({ state, send }: Scene): Child {
  const { check } = state;
  const n = saidOf(check).length;
  const isFile = check.given?.again === undefined;
  if (n === 0)
    return (
      !isFile &&
      !check.isKept &&
      h(
        'p',
        { class: 'hint' },
        'This workbook does not let go of what it remembered (it may be read only): it is ' +
          'left aside until the pane is closed.',
      )
    );
  return h(
    'div',
    { id: 'check-said', class: 'actions' },
    h('p', { class: 'hint' }, LASTS[isFile ? 'file' : check.isKept ? 'kept' : 'notKept'](n)),
    button(
      forgetColumns.label,
      () => {
        send(forgetColumns);
      },
      { id: 'check-forget', tone: 'quiet', isOff: state.task !== undefined },
    ),
  );
}

export const columnsView = ({ report, unread, ownRates }: Checked, scene: Scene): Child => [
  report.tables.map((table, at) => tableView(table, at, scene)),
  unread.length > 0 && h('p', { class: 'hint' }, `No records recognised on: ${unread.join(', ')}.`),
  ownRates !== undefined && h('p', { class: 'hint' }, ownRates),
  saidView(scene),
  scene.state.check.isChanged &&
    h('p', { class: 'chosen' }, 'You changed how a column is read. Check again to use it.'),
];
