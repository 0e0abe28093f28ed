// Long: one screen from top to bottom.
import { isoDateOfSerial } from '../../../../shared/units/dates';
import {
  addOrder,
  addPasted,
  duplicateOrder,
  fillOrder,
  fillPasted,
  removeOrder,
  showOrders,
  toggleBreeding,
  toggleCancelled,
  usePublished,
} from '../commands/season';
import { useOwnRates } from '../commands/rates';
import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import { BATCHES, KEPT, ORDERS, orderFieldId } from '../state/faults';
import { sameOrders } from '../state/sameOrders';
import { ORDER_FIELDS, ORDER_KEYS } from '../state/fields';
import type { OrderRow } from '../state/form';
import { ownFigures } from '../state/form';
import { ROWS_SHOWN, pagesOf, seasonFaults } from '../state/season';
import { grouped } from '../../../pane/values/show';
import { hasWorkbook } from '../../../pane/keeping/state';
import type { Scene } from '../../../pane/frame/parts';
import { button, hint, inputOf } from '../../../pane/frame/parts';
import { askedField, faultsView } from './fields';

/** Orders, page by page; batches under way; figures of the hatchery's own. */

function orderView(row: OrderRow, place: number, scene: Scene): VNode {
  const { state, send } = scene;
  const name = row.texts.name.trim() || `order ${place + 1}`;
  const breeding = orderFieldId(row, 'forBreeding');
  const cancelled = `season-order-${row.id}-cancelled`;
  const sameAs = sameOrders(state.season.form).get(row.id);
  return h(
    'div',
    { class: 'order', key: `order-${row.id}`, role: 'group', 'aria-label': `Order ${place + 1}` },
    h('p', { class: 'order-number', 'aria-hidden': 'true' }, `Order ${place + 1}`),
    h(
      'div',
      { class: 'fields' },
      ORDER_KEYS.map((key) => {
        const id = orderFieldId(row, key);
        const fill = (text: string): void => {
          if (text !== row.texts[key]) send(fillOrder, { id: row.id, key, text });
        };
        return askedField(
          {
            id,
            field: ORDER_FIELDS[key],
            text: row.texts[key],
            faults: seasonFaults(state.season, id),
            fill,
            isWide: key === 'name',
            care:
              key === 'name' && sameAs !== undefined
                ? `Order ${sameAs} says the same. If this one was typed twice, remove it.`
                : undefined,
          },
          scene,
        );
      }),
    ),
    h(
      'div',
      { class: 'order-foot' },
      h(
        'div',
        { class: 'tick' },
        h('input', {
          type: 'checkbox',
          id: breeding,
          checked: row.forBreeding,
          on: {
            change: () => {
              send(toggleBreeding, row.id);
            },
          },
        }),
        h('div', { class: 'tick-text' }, h('label', { for: breeding }, 'To become brood fish')),
      ),
      (row.cancelled === true || state.season.again !== undefined) &&
        h(
          'div',
          { class: 'tick' },
          h('input', {
            type: 'checkbox',
            id: cancelled,
            checked: row.cancelled === true,
            on: {
              change: () => {
                send(toggleCancelled, row.id);
              },
            },
          }),
          h('div', { class: 'tick-text' }, h('label', { for: cancelled }, toggleCancelled.label)),
        ),
      button(
        duplicateOrder.label,
        () => {
          send(duplicateOrder, row.id);
        },
        { tone: 'quiet', says: `Duplicate ${name}` },
      ),
      button(
        removeOrder.label,
        () => {
          send(removeOrder, row.id);
        },
        { tone: 'quiet', says: `Remove ${name}` },
      ),
    ),
  );
}

function pager({ state, send }: Scene): Child {
  const { form, page } = state.season;
  const pages = pagesOf(form);
  if (pages === 1) return undefined;
  const [first, last] = [page * ROWS_SHOWN + 1, Math.min(form.orders.length, (page + 1) * ROWS_SHOWN)];
  const turn = (face: string, to: number, says: string): VNode =>
    button(
      face,
      () => {
        send(showOrders, to);
      },
      { isOff: to < 0 || to >= pages, says },
    );
  return h(
    'div',
    { class: 'pager' },
    turn('‹', page - 1, 'Orders before these'),
    h('p', {}, `${first}–${last} of ${grouped(form.orders.length)} orders`),
    turn('›', page + 1, 'Orders after these'),
  );
}

const pasteView = ({ state, send }: Scene): VNode =>
  h(
    'details',
    { class: 'more' },
    h('summary', {}, 'Many orders from a sheet'),
    h(
      'div',
      { class: 'field' },
      h('label', { for: 'season-pasted' }, 'Rows of orders'),
      hint(
        'season-pasted-hint',
        'Name; fry or fingerlings; number; due on (2027-03-31); weight in g; price. Copy the ' +
          'rows in a sheet and paste them.',
      ),
      h('textarea', {
        id: 'season-pasted',
        rows: 4,
        value: state.season.pasted,
        spellcheck: 'false',
        autocomplete: 'off',
        'aria-describedby': 'season-pasted-hint',
        placeholder: 'Pond club; fry; 20000; 2027-03-31',
        on: {
          input: (event) => {
            send(fillPasted, inputOf(event));
          },
        },
      }),
      h(
        'div',
        { class: 'actions' },
        button(
          addPasted.label,
          () => {
            send(addPasted);
          },
          { id: 'season-add-pasted' },
        ),
      ),
    ),
  );

export function ordersView(scene: Scene): VNode {
  const { form, page } = scene.state.season;
  const first = page * ROWS_SHOWN;
  return h(
    'fieldset',
    { key: 'orders', id: ORDERS, tabindex: '-1' },
    h('legend', {}, 'Orders'),
    faultsView(ORDERS, seasonFaults(scene.state.season, ORDERS)),
    pager(scene),
    h(
      'div',
      { class: 'orders' },
      form.orders.slice(first, first + ROWS_SHOWN).map((row, i) => orderView(row, first + i, scene)),
    ),
    hint('season-orders-hint', 'Weight and price may stay empty. A buyer may have several orders.'),
    pasteView(scene),
    h(
      'div',
      { class: 'actions' },
      button(
        addOrder.label,
        () => {
          scene.send(addOrder);
        },
        { id: 'season-add-order' },
      ),
    ),
  );
}

const text = (value: unknown): string =>
  typeof value === 'string' || typeof value === 'number' ? String(value) : '';
const STATES: Readonly<Record<string, string>> = {
  fixed: 'goods ordered, not stripped yet',
  growing: 'in the vats',
  over: 'over',
  lost: 'lost',
};
function batchWords(batch: Readonly<Record<string, unknown>>): string {
  const { stripAt } = (batch.clock ?? {}) as { readonly stripAt?: unknown };
  const pairs = Array.isArray(batch.pairs) ? batch.pairs.length : 0;
  const day = typeof stripAt === 'number' ? `stripped ${isoDateOfSerial(stripAt)}, ` : '';
  const females = `${pairs} ${pairs === 1 ? 'female' : 'females'}`;
  return `${day}${females}: ${STATES[text(batch.state)] ?? text(batch.state)}`;
}

/** Read from the workbook; they stay as they are, and what was counted of them is changed on its sheets. */
export function batchesView({ state }: Scene): Child {
  const { batches } = state.season.form;
  const faults = seasonFaults(state.season, BATCHES);
  if (batches.length === 0 && faults.length === 0) return undefined;
  return h(
    'fieldset',
    { key: 'batches', id: BATCHES, tabindex: '-1' },
    h('legend', {}, 'Batches that stay as they are'),
    faultsView(BATCHES, faults),
    h(
      'ul',
      { class: 'underway' },
      batches.map((batch) =>
        h(
          'li',
          {},
          h(
            'div',
            { class: 'what' },
            h('strong', {}, text(batch.name)),
            h('p', { class: 'hint' }, batchWords(batch)),
          ),
        ),
      ),
    ),
    hint(
      'season-batches-hint',
      'Counts, deaths and sales of them stand on Counts; a lost batch is said on Batches.',
    ),
  );
}

export function keptView({ state, send }: Scene): Child {
  const own = ownFigures(state.season.form);
  const faults = seasonFaults(state.season, KEPT);
  const isOpen = hasWorkbook(state);
  if (own === 0 && faults.length === 0 && !isOpen) return undefined;
  const isOff = state.task !== undefined;
  return h(
    'fieldset',
    { key: 'kept', id: KEPT, tabindex: '-1' },
    h('legend', {}, 'Figures of your own'),
    faultsView(KEPT, faults),
    h(
      'p',
      {},
      own === 0
        ? 'Survival, growth and yields are published ones. Your own, learned in Check from ' +
            'your records, make the plan and its odds yours.'
        : `${own} ${own === 1 ? 'figure of the plan is' : 'figures of the plan are'} your own; the others are published ones.`,
    ),
    h(
      'div',
      { class: 'actions' },
      isOpen &&
        button(
          useOwnRates.label,
          () => {
            send(useOwnRates);
          },
          { id: 'season-rates', isOff },
        ),
      own > 0 &&
        button(
          usePublished.label,
          () => {
            send(usePublished);
          },
          { id: 'season-published' },
        ),
    ),
  );
}
