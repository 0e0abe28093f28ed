import type { Command } from '../../../pane/command';
import type { OrderRow, SeasonForm } from '../state/form';
import { blankOrder, freshId } from '../state/form';
import type { OrderKey } from '../state/fields';
import type { ListKey } from '../state/lists';
import { readOrderLines } from '../state/lists';
import { orderFieldId } from '../state/faults';
import type { PlanMode, SeasonState } from '../state/season';
import { ROWS_SHOWN, exampleForm, pagesOf } from '../state/season';
import { wordsFor } from '../../../words/words';
import type { PaneState } from '../../../pane/keeping/state';

/** Filling the season form. */

export const inSeason = (state: PaneState, season: Partial<SeasonState>): PaneState => ({
  ...state,
  season: { ...state.season, ...season },
});
export const withForm = (state: PaneState, form: Partial<SeasonForm>): PaneState => ({
  ...inSeason(state, { form: { ...state.season.form, ...form } }),
  notice: undefined,
  question: undefined,
});

export const choosePlanMode: Command<PlanMode> = {
  name: 'choosePlanMode',
  label: 'What to plan',
  perform: (state, mode) => ({ ...inSeason(state, { mode }), notice: undefined, question: undefined }),
};

export const fillSeasonField: Command<{ readonly path: string; readonly text: string }> = {
  name: 'fillSeasonField',
  label: 'Type',
  perform: (state, { path, text }) =>
    withForm(state, { texts: { ...state.season.form.texts, [path]: text } }),
};

export const fillSeasonList: Command<{ readonly list: ListKey; readonly text: string }> = {
  name: 'fillSeasonList',
  label: 'Type',
  perform: (state, { list, text }) =>
    withForm(state, { lists: { ...state.season.form.lists, [list]: text } }),
};

export const fillDaysOff: Command<string> = {
  name: 'fillDaysOff',
  label: 'Type',
  perform: (state, daysOff) => withForm(state, { daysOff }),
};

export const toggleWeekday: Command<number> = {
  name: 'toggleWeekday',
  label: 'Day people strip on',
  perform: (state, day) => {
    const { weekdays } = state.season.form;
    return withForm(state, {
      weekdays: weekdays.includes(day)
        ? weekdays.filter((other) => other !== day)
        : [...weekdays, day].sort((a, b) => a - b),
    });
  },
};

/** A field complains only once the user has left it. */
export const leaveSeasonField: Command<string> = {
  name: 'leaveSeasonField',
  label: 'Leave the field',
  perform: (state, id) =>
    state.season.touched.has(id)
      ? state
      : inSeason(state, { touched: new Set([...state.season.touched, id]) }),
};

const changeRow = (state: PaneState, id: number, change: (row: OrderRow) => OrderRow): PaneState =>
  withForm(state, { orders: state.season.form.orders.map((row) => (row.id === id ? change(row) : row)) });

export const fillOrder: Command<{ readonly id: number; readonly key: OrderKey; readonly text: string }> = {
  name: 'fillOrder',
  label: 'Type',
  perform: (state, { id, key, text }) =>
    changeRow(state, id, (row) => ({ ...row, texts: { ...row.texts, [key]: text } })),
};

export const toggleBreeding: Command<number> = {
  name: 'toggleBreeding',
  label: 'To become brood fish',
  perform: (state, id) => changeRow(state, id, (row) => ({ ...row, forBreeding: !row.forBreeding })),
};

/** The new row gets the keyboard, on its page. */
function withNewRow(state: PaneState, row: OrderRow, place: number): PaneState {
  const { orders } = state.season.form;
  const next = withForm(state, { orders: [...orders.slice(0, place), row, ...orders.slice(place)] });
  return { ...inSeason(next, { page: Math.floor(place / ROWS_SHOWN) }), focus: orderFieldId(row, 'name') };
}

export const addOrder: Command = {
  name: 'addOrder',
  label: 'Add an order',
  perform: (state) =>
    withNewRow(state, blankOrder(state.season.form.orders), state.season.form.orders.length),
};

export const fillPasted: Command<string> = {
  name: 'fillPasted',
  label: 'Type',
  perform: (state, pasted) => inSeason(state, { pasted }),
};

/** A form's first row, still empty, gives way. */
export const addPasted: Command = {
  name: 'addPasted',
  label: 'Add these orders',
  perform: (state) => {
    const { form, pasted } = state.season;
    const lines = readOrderLines(pasted);
    if (lines.length === 0)
      return {
        ...state,
        notice: {
          tone: 'warning',
          text: 'There is no order in these lines yet. Copy rows from a sheet and paste them here.',
        },
        focus: 'season-pasted',
      };
    const kept = form.orders.filter(({ texts }) => texts.name.trim() !== '' || texts.number.trim() !== '');
    const first = freshId(form.orders);
    const next = withForm(state, {
      orders: [...kept, ...lines.map((line, i) => ({ id: first + i, ...line }))],
    });
    const notice = {
      tone: 'good',
      text: lines.length === 1 ? 'One order is added.' : `${lines.length} orders are added.`,
    } as const;
    return {
      ...inSeason(next, { pasted: '', page: Math.floor(kept.length / ROWS_SHOWN), isAsked: true }),
      notice,
      focus: `season-order-${first}-name`,
    };
  },
};

const unusedName = (name: string, orders: readonly OrderRow[]): string => {
  const taken = new Set(orders.map(({ texts }) => texts.name.trim().toLowerCase()));
  const stem = name.trim().replace(/ \d+$/, '') || 'Order';
  for (let i = 2; ; i++) if (!taken.has(`${stem} ${i}`.toLowerCase())) return `${stem} ${i}`;
};

export const duplicateOrder: Command<number> = {
  name: 'duplicateOrder',
  label: 'Duplicate',
  perform: (state, id) => {
    const { orders } = state.season.form;
    const place = orders.findIndex((row) => row.id === id);
    const row = orders[place];
    if (!row) return state;
    return withNewRow(
      state,
      {
        ...row,
        key: undefined,
        id: freshId(orders),
        texts: { ...row.texts, name: unusedName(row.texts.name, orders) },
      },
      place + 1,
    );
  },
};

export const removeOrder: Command<number> = {
  name: 'removeOrder',
  label: 'Remove',
  perform: (state, id) => {
    const { orders } = state.season.form;
    const place = orders.findIndex((row) => row.id === id);
    const left = orders.filter((row) => row.id !== id);
    const next = withForm(state, { orders: left });
    const neighbour = left[Math.min(place, left.length - 1)];
    return {
      ...inSeason(next, {
        page: Math.min(
          Math.floor(Math.max(0, Math.min(place, left.length - 1)) / ROWS_SHOWN),
          pagesOf(next.season.form) - 1,
        ),
      }),
      focus: neighbour ? orderFieldId(neighbour, 'name') : 'season-add-order',
    };
  },
};

export const showOrders: Command<number> = {
  name: 'showOrders',
  label: 'Show orders',
  perform: (state, page) => ({
    ...inSeason(state, { page: Math.max(0, Math.min(page, pagesOf(state.season.form) - 1)) }),
    focus: 'season-orders',
  }),
};

export const toggleCancelled: Command<number> = {
  name: 'toggleCancelled',
  label: 'The buyer wants it no more',
  perform: (state, id) => changeRow(state, id, (row) => ({ ...row, cancelled: row.cancelled !== true })),
};

export const usePublished: Command = {
  name: 'usePublished',
  label: 'Go back to the published figures',
  perform: (state) => ({
    ...withForm(state, {
      kept: Object.fromEntries(
        ['seed', 'booked'].flatMap((key) =>
          key in state.season.form.kept ? [[key, state.season.form.kept[key]]] : [],
        ),
      ),
    }),
    focus: 'season-kept',
  }),
};

/** The example is a season of its own: nothing of a workbook read before stays. */
export const fillSeasonExample: Command = {
  name: 'fillSeasonExample',
  label: 'Fill in an example',
  perform: (state) => ({
    ...inSeason(state, {
      form: exampleForm(state.season.today, wordsFor(state).example),
      page: 0,
      touched: new Set(),
      isAsked: false,
      again: undefined,
    }),
    notice: undefined,
    question: undefined,
  }),
};
