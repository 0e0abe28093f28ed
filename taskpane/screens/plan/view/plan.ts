// Long: one screen from top to bottom.
import { isoDateOfSerial, dayText, timeText, weekdayText } from '../../../../shared/units/dates';
import type { PlanField } from '../../../../shared/run/fields';
import { planFieldList } from '../../../../shared/run/fields';
import { fillExample, fillField, leaveField, savePlan, writePlan } from '../commands/plan';
import type { Child, VNode } from '../../../pane/draw';
import { h } from '../../../pane/draw';
import { faultShown, isFieldKey, readForm, usualForm } from '../state/plan';
import type { ClockMoment, Preview } from '../state/preview';
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

/** Five questions make a plan; everything else has a usual answer that can be opened and changed. */
const FIVE: readonly string[] = ['wanted', 'product', 'wantedOn', 'females', 'femaleWeight', 'temperature'];
const FIRST_FIELDS = FIVE.flatMap((key) => planFieldList.find((field) => field.key === key) ?? []);
const OTHER_FIELDS = planFieldList.filter(({ key }) => !FIVE.includes(key));

const groupView = (group: PlanField['group'], scene: Scene): VNode =>
  h(
    'fieldset',
    { key: group },
    h('legend', {}, group),
    h(
      'div',
      { class: 'fields' },
      OTHER_FIELDS.filter((field) => field.group === group).map((field) => fieldView(field, scene)),
    ),
  );

const otherView = (scene: Scene): VNode => {
  const { plan } = scene.state;
  const { faults } = readForm(plan.texts);
  const hasFault = OTHER_FIELDS.some(({ key }) => faults.has(key));
  return h(
    'details',
    { class: 'more', id: 'plan-others', open: plan.isAsked && hasFault ? true : undefined },
    h('summary', {}, `Everything else (${OTHER_FIELDS.length})`, hasFault && ' – some still needed to write'),
    GROUPS.map((group) => groupView(group, scene)),
  );
};

const WANTED_MOMENTS = ['Strip', 'First hatch', 'Sale'] as const;

/** The answer, from the first question on: what to inject when, and what it rests on. */
function answerView({ state }: Scene): VNode {
  const { texts } = state.plan;
  const { form, taken } = usualForm(texts);
  const preview = form && previewOf(form);
  const inject = preview?.moments.find(({ key }) => key === 'inject');
  if (!preview || !inject)
    return h(
      'div',
      { id: 'plan-answer', class: 'card-answer plain', role: 'status' },
      h('p', { class: 'small' }, 'Type how many fish: the hour of the injection stands here.'),
    );
  const cannot = preview.findings.filter(({ kind }) => kind === 'cannot').length;
  const isSure = taken.length === 0;
  return h(
    'div',
    { id: 'plan-answer', class: `card-answer ${isSure && cannot > 0 ? 'bad' : 'plain'}`, role: 'status' },
    h(
      'p',
      { class: 'big' },
      `Inject ${preview.females} on ${weekdayText(inject.at)} ${dayText(inject.at)} at ${timeText(inject.at)}`,
    ),
    h(
      'p',
      { class: 'small' },
      preview.moments
        .filter(({ what }) => WANTED_MOMENTS.some((word) => what.startsWith(word)))
        .map(
          ({ what, at }) => `${what.split(/[,:;(]/)[0]}: ${weekdayText(at)} ${dayText(at)} ${timeText(at)}`,
        )
        .join(' · '),
    ),
    isSure
      ? h(
          'p',
          { class: 'small' },
          cannot > 0
            ? `✕ Not with what you have: ${cannot === 1 ? 'one thing stands' : `${cannot} things stand`} in the way, below.`
            : `On usual figures it fits what you have; if every step goes badly or well: ${preview.range}.`,
        )
      : h('p', { class: 'small' }, `Taken for granted so far: ${taken.join(', ')}.`),
  );
}

const momentView = ({ at, what, amount, remember }: ClockMoment): VNode => {
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
  canBeMet &&
    h(
      'p',
      { class: 'lead' },
      'On usual figures the order fits what you have. That is no promise: see the range.',
    ),
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
    h('h2', { class: 'unseen' }, 'One run'),
    answerView(scene),
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
        'fieldset',
        { key: 'five' },
        h('legend', { class: 'unseen' }, 'Five questions'),
        h(
          'div',
          { class: 'fields' },
          FIRST_FIELDS.map((field) => fieldView(field, scene)),
        ),
      ),
      otherView(scene),
    ),
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
