// Long: one screen from top to bottom.
import {
  fillDaysOff,
  fillSeasonField,
  fillSeasonList,
  leaveSeasonField,
  toggleWeekday,
} from '../commands/season';
import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import { say } from '../../../pane/phrases';
import { DAYS_OFF, WEEKDAYS, listId, unknownMonths } from '../state/faults';
import type { SeasonField, SeasonGroup } from '../state/fields';
import { STAFF, WATER_BY_MONTH, idOfPath } from '../state/fields';
import type { ListKey } from '../state/lists';
import { daysIn, echoOf } from '../state/lists';
import { seasonFaults } from '../state/season';
import { MONTH_NAMES, WEEKDAY_WORDS } from '../../../../shared/units/dates';
import type { Scene } from '../../../pane/frame/parts';
import { hint, inputOf } from '../../../pane/frame/parts';

/** Fields of the season form. */

/** Of a long list the first few faults are read; they are mended one by one anyway. */
const FAULTS_SHOWN = 4;
export const faultsView = (id: string, faults: readonly string[]): Child =>
  faults.length > 0 &&
  h(
    'div',
    { id: `${id}-fault` },
    faults
      .slice(0, FAULTS_SHOWN)
      .map((fault) =>
        h(
          'p',
          { class: 'fault' },
          h('span', { class: 'mark', 'aria-hidden': 'true' }, '✕'),
          h('span', {}, fault),
        ),
      ),
    faults.length > FAULTS_SHOWN && h('p', { class: 'fault' }, `and ${faults.length - FAULTS_SHOWN} more.`),
  );

interface Asked {
  readonly id: string;
  readonly field: Omit<SeasonField, 'path'>;
  readonly text: string;
  readonly faults: readonly string[];
  readonly fill: (text: string) => void;
  /** A caution that stops nothing. */
  readonly care?: string | undefined;
  readonly isWide?: boolean;
}

const inputType = (kind: SeasonField['kind']): string => (kind === 'date' ? 'date' : 'text');
const inputMode = (kind: SeasonField['kind']): string | undefined =>
  kind === 'whole' ? 'numeric' : kind === 'number' || kind === 'share' ? 'decimal' : undefined;

function control({ id, field, text, faults, fill, care }: Asked, { send }: Scene): VNode {
  const described = [
    faults.length > 0 && `${id}-fault`,
    care !== undefined && `${id}-care`,
    field.hint !== undefined && `${id}-hint`,
  ]
    .filter(Boolean)
    .join(' ');
  const on = {
    input: (event: Event) => {
      fill(inputOf(event));
    },
    change: (event: Event) => {
      fill(inputOf(event));
    },
    blur: () => {
      send(leaveSeasonField, id);
    },
  };
  const common = {
    id,
    value: text,
    'aria-describedby': described || undefined,
    'aria-invalid': faults.length > 0 ? 'true' : undefined,
    on,
  };
  if (field.choices)
    return h(
      'select',
      common,
      field.choices.map((word) => h('option', { value: word }, word)),
    );
  return h('input', {
    ...common,
    type: inputType(field.kind),
    autocomplete: 'off',
    inputmode: inputMode(field.kind),
    'aria-required': field.isNeeded ? 'true' : undefined,
  });
}

export function askedField(asked: Asked, scene: Scene): VNode {
  const { id, field, faults, care, isWide } = asked;
  return h(
    'div',
    { class: `field${faults.length > 0 ? ' has-fault' : ''}${isWide ? ' wide' : ''}`, key: id },
    h('label', { for: id }, field.label, field.unit && h('span', { class: 'unit' }, ` (${field.unit})`)),
    control(asked, scene),
    h(
      'div',
      { class: 'below' },
      faultsView(id, faults),
      care !== undefined &&
        h(
          'p',
          { id: `${id}-care`, class: 'care' },
          h('span', { class: 'mark', 'aria-hidden': 'true' }, '!'),
          h('span', {}, care),
        ),
      field.hint !== undefined && hint(`${id}-hint`, field.hint),
    ),
  );
}

/** A name that stands there from the start is said; what somebody typed stays. */
const usualName = ({ kind, initial }: SeasonField, text: string): string =>
  kind === 'text' && text === initial ? say(text) : text;

export function singleField(field: SeasonField, scene: Scene, care?: string): VNode {
  const { season } = scene.state;
  const id = idOfPath(field.path);
  const fill = (text: string): void => {
    if (text !== season.form.texts[field.path]) scene.send(fillSeasonField, { path: field.path, text });
  };
  return askedField(
    {
      id,
      field,
      text: usualName(field, season.form.texts[field.path] ?? ''),
      faults: seasonFaults(season, id),
      fill,
      care,
      isWide: field.kind === 'text',
    },
    scene,
  );
}

/** A group whose usual values do is folded; a fault in it unfolds it. */
export function foldedGroup({ title, fields }: SeasonGroup, scene: Scene): VNode {
  const hasFault = fields.some(({ path }) => seasonFaults(scene.state.season, idOfPath(path)).length > 0);
  return h(
    'details',
    { class: 'more group', key: title, open: hasFault || undefined },
    h('summary', {}, title),
    h(
      'div',
      { class: 'fields' },
      fields.map((field) => singleField(field, scene)),
    ),
  );
}

const AREAS: Readonly<
  Record<ListKey, { readonly label: string; readonly hint: string; readonly example: string }>
> = {
  vats: {
    label: 'Vats',
    hint:
      'A line each: name; litres. Behind them eggs, fry or nursing when a vat holds only ' +
      'those. Rows copied from a sheet can be pasted.',
    example: 'Vat 1; 1000',
  },
  females: {
    label: 'Females',
    hint: 'A line each: tag; kilograms; family; last stripped on. Family and date may be missing.',
    example: 'F1; 1.2; line A; 2027-01-15',
  },
  males: {
    label: 'Males',
    hint: 'A line each: tag; family; last used on. Family and date may be missing.',
    example: 'M1; line B',
  },
};
const LEAST_ROWS = 4;
const MOST_ROWS = 10;

interface Area {
  readonly id: string;
  readonly label: string;
  readonly hint: string;
  readonly example: string;
  readonly text: string;
  readonly echo: string;
  readonly fill: (text: string) => void;
}
function areaView(
  { id, label, hint: words, example, text, echo, fill }: Area,
  { state, send }: Scene,
): VNode {
  const faults = seasonFaults(state.season, id);
  const rows = Math.max(LEAST_ROWS, Math.min(MOST_ROWS, text.split('\n').length + 1));
  return h(
    'div',
    { class: faults.length > 0 ? 'field has-fault' : 'field', key: id },
    h('label', { for: id }, label),
    hint(`${id}-hint`, words),
    h('textarea', {
      id,
      value: text,
      rows,
      spellcheck: 'false',
      autocomplete: 'off',
      placeholder: example,
      'aria-describedby': `${faults.length > 0 ? `${id}-fault ` : ''}${id}-echo ${id}-hint`,
      'aria-invalid': faults.length > 0 ? 'true' : undefined,
      on: {
        input: (event) => {
          fill(inputOf(event));
        },
        blur: () => {
          send(leaveSeasonField, id);
        },
      },
    }),
    h('div', { class: 'below' }, h('p', { id: `${id}-echo`, class: 'echo' }, echo), faultsView(id, faults)),
  );
}

export const listArea = (list: ListKey, scene: Scene): VNode => {
  const text = scene.state.season.form.lists[list];
  return areaView(
    {
      id: listId(list),
      ...AREAS[list],
      text,
      echo: echoOf(list, text),
      fill: (typed) => {
        scene.send(fillSeasonList, { list, text: typed });
      },
    },
    scene,
  );
};

export function monthsView(scene: Scene): VNode {
  const { season } = scene.state;
  const unknown = unknownMonths(season.form);
  const careFor = (month: number): string | undefined =>
    unknown.has(month) && (season.isAsked || season.touched.has(idOfPath(`temperatures.${month}`)))
      ? `${MONTH_NAMES[month] ?? ''} lies in the season: without its water no run can be planned for it.`
      : undefined;
  return h(
    'fieldset',
    { key: 'months' },
    h('legend', {}, 'Water by month, °C'),
    h(
      'p',
      { class: 'hint' },
      'What you expect in the vats at night. The waiting time after the injection hangs on it.',
    ),
    h(
      'div',
      { class: 'fields months' },
      WATER_BY_MONTH.map((field, month) => singleField(field, scene, careFor(month))),
    ),
  );
}

export function staffView(scene: Scene): VNode {
  const { state, send } = scene;
  const { form } = state.season;
  const off = daysIn(form.daysOff).length;
  const faults = seasonFaults(state.season, WEEKDAYS);
  return h(
    'fieldset',
    { key: 'staff' },
    h('legend', {}, 'Hands'),
    h(
      'div',
      { class: 'fields' },
      STAFF.map((field) => singleField(field, scene)),
    ),
    h(
      'div',
      {
        class: 'week',
        id: WEEKDAYS,
        role: 'group',
        tabindex: '-1',
        'aria-label': 'Days people strip on',
        'aria-describedby': faults.length > 0 ? `${WEEKDAYS}-fault` : undefined,
      },
      WEEKDAY_WORDS.map((word, i) =>
        h(
          'div',
          { class: 'weekday' },
          h('input', {
            type: 'checkbox',
            id: `season-weekday-${i + 1}`,
            checked: form.weekdays.includes(i + 1),
            on: {
              change: () => {
                send(toggleWeekday, i + 1);
              },
            },
          }),
          h('label', { for: `season-weekday-${i + 1}` }, word),
        ),
      ),
    ),
    faultsView(WEEKDAYS, faults),
    areaView(
      {
        id: DAYS_OFF,
        label: 'Days off',
        hint: 'Dates on which nobody strips, a line each.',
        example: '2027-04-02',
        text: form.daysOff,
        echo: off === 0 ? 'None.' : `${off} ${off === 1 ? 'day' : 'days'}`,
        fill: (text) => {
          send(fillDaysOff, text);
        },
      },
      scene,
    ),
  );
}
