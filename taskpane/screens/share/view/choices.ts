import { addCells, nameCopy, toggleColumn, toggleSheet, toggleSwitch, typeCells } from '../commands/choices';
import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Look } from '../state/share';
import { copyFileName } from '../state/share';
import type { Scene } from '../../../pane/frame/parts';
import { button, hint, inputOf, section } from '../../../pane/frame/parts';
import { counted, tick } from './pieces';

/** What the copy shall hold: sheets, columns, personal data, formulas that stay alive. */

type Sheet = Look['sheets'][number];

/** Columns of one sheet beyond this are seldom what somebody looks for; the field below takes any. */
const MOST_COLUMNS = 60;

const sheetsField = (sheets: readonly Sheet[], { state, send }: Scene): VNode =>
  h(
    'fieldset',
    {},
    h('legend', {}, 'Sheets in the copy'),
    sheets.map(({ name, isHidden }, i) =>
      tick(
        isHidden ? `${name} (hidden)` : name,
        () => {
          send(toggleSheet, name);
        },
        { id: `share-sheet-${i}`, isOn: !state.share.choices.leftOut.has(name) },
      ),
    ),
  );

function columnsOf(sheet: Sheet, at: number, { state, send }: Scene): Child {
  const { leftOut, blank } = state.share.choices;
  if (leftOut.has(sheet.name) || sheet.columns.length === 0) return undefined;
  const chosen = sheet.columns.filter(({ cells }) => blank.has(cells)).length;
  return h(
    'details',
    { class: 'more', key: sheet.name },
    h(
      'summary',
      {},
      sheet.name,
      chosen > 0 && h('span', { class: 'chosen' }, ` – ${counted(chosen, 'column')} emptied`),
    ),
    sheet.columns.slice(0, MOST_COLUMNS).map(({ letter, heading, filled, cells }) =>
      tick(
        [
          h('span', { class: 'letter' }, letter),
          ` ${heading} `,
          h('span', { class: 'count' }, `(${counted(filled, 'cell')})`),
        ],
        () => {
          send(toggleColumn, cells);
        },
        { id: `share-column-${at}-${letter}`, isOn: blank.has(cells) },
      ),
    ),
  );
}

function otherCells({ sheets }: Look, { state, send }: Scene): VNode {
  const { blank, typed, typedFault } = state.share.choices;
  const listed = new Set(sheets.flatMap(({ columns }) => columns.map(({ cells }) => cells)));
  const others = [...blank].filter((wish) => !listed.has(wish));
  return h(
    'div',
    { class: typedFault === undefined ? 'field' : 'field has-fault' },
    others.map((wish, i) =>
      tick(
        wish,
        () => {
          send(toggleColumn, wish);
        },
        { id: `share-other-${i}`, isOn: true },
      ),
    ),
    h('label', { for: 'share-cells' }, 'Another column or range'),
    h(
      'div',
      { class: 'with-button' },
      h('input', {
        id: 'share-cells',
        type: 'text',
        autocomplete: 'off',
        spellcheck: 'false',
        value: typed,
        'aria-invalid': typedFault === undefined ? undefined : 'true',
        'aria-describedby':
          typedFault === undefined ? 'share-cells-hint' : 'share-cells-fault share-cells-hint',
        on: {
          input: (event) => {
            send(typeCells, inputOf(event));
          },
          keydown: (event) => {
            if (!(event instanceof KeyboardEvent) || event.key !== 'Enter') return;
            event.preventDefault();
            send(addCells);
          },
        },
      }),
      button(
        addCells.label,
        () => {
          send(addCells);
        },
        { says: 'Add these cells' },
      ),
    ),
    typedFault !== undefined &&
      h(
        'p',
        { id: 'share-cells-fault', class: 'fault' },
        h('span', { class: 'mark', 'aria-hidden': 'true' }, '✕'),
        typedFault,
      ),
    hint('share-cells-hint', 'Such as Buyers!C or Buyers!B2:D40.'),
  );
}

const columnsField = (look: Look, scene: Scene): VNode =>
  h(
    'fieldset',
    {},
    h('legend', {}, 'Columns to empty'),
    h(
      'p',
      { class: 'hint' },
      'Names, telephone numbers, prices. What would give them away goes too: the same ' +
        'words elsewhere, results worked out from one of them, notes, what charts remember.',
    ),
    look.sheets.map((sheet, i) => columnsOf(sheet, i, scene)),
    otherCells(look, scene),
  );

function switches({ inspection }: Look, { state, send }: Scene): VNode {
  const { personal, leftOut, keepResults, keepAlive, accept } = state.share.choices;
  return h(
    'fieldset',
    {},
    h('legend', {}, 'And'),
    leftOut.size > 0 &&
      tick(
        'Keep results worked out from the sheets left out',
        () => {
          send(toggleSwitch, 'keepResults');
        },
        {
          id: 'share-results',
          isOn: keepResults,
          hint:
            'They stay as plain numbers and may tell what stood there: a sum of money and the ' +
            'fish beside it tell the price. Left out unless you tick this.',
        },
      ),
    tick(
      'Take out personal data',
      () => {
        send(toggleSwitch, 'personal');
      },
      {
        id: 'share-personal',
        isOn: personal,
        hint: 'Authors, the folder the workbook lay in, printers, names of those who wrote notes.',
      },
    ),
    tick(
      'Keep simple formulas alive',
      () => {
        send(toggleSwitch, 'keepAlive');
      },
      {
        id: 'share-alive',
        isOn: keepAlive,
        hint:
          'Formulas of ours that ordinary functions can stand in for go on calculating, so a ' +
          'reader can change a survival or a price. The others become values.',
      },
    ),
    inspection.stops &&
      tick(
        'Make the copy although cells hold no finished value',
        () => {
          send(toggleSwitch, 'accept');
        },
        { id: 'share-accept', isOn: accept, hint: 'They stay as they are: an error, or nothing.' },
      ),
  );
}

export function choicesView(look: Look, scene: Scene): VNode {
  const { choices } = scene.state.share;
  return section(
    '2. Choose what it holds',
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
        'div',
        { class: 'field' },
        h('label', { for: 'share-name' }, 'Name of the workbook, for the reader'),
        h('input', {
          id: 'share-name',
          type: 'text',
          autocomplete: 'off',
          value: choices.name,
          'aria-describedby': 'share-name-hint',
          on: {
            input: (event) => {
              scene.send(nameCopy, inputOf(event));
            },
          },
        }),
        hint('share-name-hint', `The file is called ${copyFileName(choices.name)}.`),
      ),
      sheetsField(look.sheets, scene),
      columnsField(look, scene),
      switches(look, scene),
    ),
  );
}
