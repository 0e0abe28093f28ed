import { isoDateOfSerial, dayText, timeText, weekdayText } from '../../../../shared/units/dates';
import type { PlanField } from '../../../../shared/run/fields';
import { planFieldList } from '../../../../shared/run/fields';
import { fillExample, fillField, leaveField, savePlan, writePlan } from '../commands/plan';
import type { Child, VNode } from '../../../pane/draw';
import { h } from '../../../pane/draw';
import { faultShown, isFieldKey, readForm } from '../state/plan';
import type { Moment, Preview } from '../state/preview';
import { previewOf } from '../state/preview';
import { hasWorkbook } from '../../../pane/state';
import { occupancy } from './occupancy';
import type { Scene } from '../../../pane/parts';
import { banner, button, facts, hint, inputOf, section } from '../../../pane/parts';

const textOf = ({ state }: Scene, field: PlanField): string =>
  isFieldKey(field.key) ? state.plan.texts[field.key] : '';

const inputType = (field: PlanField): string =>
  field.kind === 'date' ? 'date' : field.kind === 'hour' ? 'time' : 'text';

function control(field: PlanField, fault: string | undefined, scene: Scene): VNode {
  const id = `plan-${field.key}`;
  const fill = (event: Event): void => {
    scene.send(fillField, { key: field.key, text: inputOf(event) });
  };
  const common = {
    id,
    value: textOf(scene, field),
    'aria-describedby': fault === undefined ? `${id}-hint` : `${id}-fault ${id}-hint`,
    'aria-invalid': fault === undefined ? undefined : 'true',
  };
  const on = {
    input: fill,
    change: fill,
    blur: () => {
      scene.send(leaveField, field.key);
    },
  };
  if (field.kind === 'choice')
    return h(
      'select',
      { ...common, on },
      field.choices.map((choice) => h('option', { value: choice }, choice)),
    );
  return h('input', {
    ...common,
    on,
    type: inputType(field),
    autocomplete: 'off',
    'aria-required': field.isOptional ? undefined : 'true',
    inputmode: field.kind === 'whole' ? 'numeric' : field.kind === 'number' ? 'decimal' : undefined,
    ...(field.kind === 'date' ? { min: isoDateOfSerial(field.min), max: isoDateOfSerial(field.max) } : {}),
  });
}

const WORDLESS = ['', 'pH', 'date', 'clock', 'fish', 'females', 'males', 'vats'];

function fieldView(field: PlanField, scene: Scene): VNode {
  const id = `plan-${field.key}`;
  const fault = faultShown(scene.state.plan, field.key);
  return h(
    'div',
    { class: fault === undefined ? 'field' : 'field has-fault', key: field.key },
    h(
      'label',
      { for: id },
      field.label,
      !WORDLESS.includes(field.unit) && h('span', { class: 'unit' }, ` (${field.unit})`),
      field.isOptional && h('span', { class: 'optional' }, ' – may stay empty'),
    ),
    control(field, fault, scene),
    h(
      'div',
      { class: 'below' },
      fault !== undefined &&
        h(
          'p',
          { id: `${id}-fault`, class: 'fault' },
          h('span', { class: 'mark', 'aria-hidden': 'true' }, '✕'),
          fault,
        ),
      hint(`${id}-hint`, field.hint),
    ),
  );
}

const groupView = (group: PlanField['group'], scene: Scene): VNode =>
  h(
    'fieldset',
    { key: group },
    h('legend', {}, group),
    h(
      'div',
      { class: 'fields' },
      planFieldList.filter((field) => field.group === group).map((field) => fieldView(field, scene)),
    ),
  );

const momentView = ({ at, what, amount, remember }: Moment): VNode => {
  return h(
    'li',
    { class: 'moment' },
    h(
      'p',
      { class: 'when' },
      h('span', { class: 'day' }, `${weekdayText(at)} ${dayText(at)}`),
      ' ',
      h('span', { class: 'clock' }, timeText(at)),
    ),
    h(
      'div',
      { class: 'what' },
      h('p', {}, h('strong', {}, what), amount && h('span', { class: 'amount' }, ` · ${amount}`)),
      h('p', { class: 'hint' }, remember),
    ),
  );
};

const findingsView = ({ findings, canBeMet }: Preview): Child => [
  canBeMet && banner('good', h('p', {}, 'The order can be met with what you have.')),
  ['cannot' as const, 'care' as const].map((kind) => {
    const sentences = findings.filter((finding) => finding.kind === kind);
    return (
      sentences.length > 0 &&
      banner(
        kind === 'cannot' ? 'bad' : 'warning',
        sentences.map(({ message }) => h('p', {}, message)),
      )
    );
  }),
];

const previewView = (preview: Preview): Child => [
  findingsView(preview),
  section(
    'In numbers',
    facts(
      preview.figures.map(({ label, value, note }) => [
        label,
        [h('strong', {}, value), note && h('span', { class: 'hint' }, note)],
      ]),
    ),
  ),
  section(
    'Calendar',
    h('ol', { class: 'calendar' }, preview.moments.map(momentView)),
    preview.more > 0 &&
      h('p', { class: 'hint' }, `The workbook lists ${preview.more} more tasks, and the feed day by day.`),
  ),
  section('Vats', occupancy(preview)),
];

const actions = ({ state, send }: Scene): VNode => {
  const isOff = state.task !== undefined;
  return h(
    'div',
    { class: 'actions' },
    hasWorkbook(state) &&
      button(
        writePlan.label,
        () => {
          send(writePlan);
        },
        { tone: 'main', isOff, id: 'plan-write' },
      ),
    button(
      savePlan.label,
      () => {
        send(savePlan);
      },
      { tone: hasWorkbook(state) ? 'plain' : 'main', isOff, id: 'plan-save' },
    ),
    h('p', { class: 'hint' }, 'New sheets only: nothing that is in the workbook now is changed.'),
  );
};

const GROUPS: readonly PlanField['group'][] = [...new Set(planFieldList.map((field) => field.group))];

export function planView(scene: Scene): readonly VNode[] {
  const { state, send } = scene;
  const { form, faults } = readForm(state.plan.texts);
  const missing = faults.size;
  return [
    h('h2', {}, 'Season plan'),
    h('p', { class: 'lead' }, 'From the fish a buyer wants back to the hour of the injection.'),
    h(
      'div',
      { class: 'quick' },
      button(
        fillExample.label,
        () => {
          send(fillExample);
        },
        { tone: 'quiet' },
      ),
    ),
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
      GROUPS.map((group) => groupView(group, scene)),
    ),
    h(
      'section',
      { class: 'preview', 'aria-label': 'Preview of the plan' },
      h('h2', {}, 'What it comes to'),
      form
        ? previewView(previewOf(form))
        : h(
            'p',
            { class: 'hint' },
            missing === 1
              ? 'One more field and the plan shows here.'
              : `${missing} more fields and the plan shows here.`,
          ),
    ),
    actions(scene),
  ];
}
