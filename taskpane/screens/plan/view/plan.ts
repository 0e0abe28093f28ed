// Long: one screen from top to bottom.
import { assumptionList } from '../../../../shared/families/assumptions';
import type { Assumption, AssumptionKey } from '../../../../shared/families/assumptions';
import { VERDICT_LOOKS, verdictText } from '../../../../shared/maths/verdict';
import type { PlanField } from '../../../../shared/season/one';
import { FIVE_GROUPS, firstFields, otherFields } from '../../../../shared/season/one';
import { isoDateOfSerial, dayText, timeText, weekdayText } from '../../../../shared/units/dates';
import {
  enterPlan,
  fillExample,
  fillField,
  leaveField,
  saveCards,
  savePlan,
  writePlan,
} from '../commands/plan';
import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import { dotsPicture, funnelPicture } from '../../../pane/pictures/draw';
import type { PictureWords } from '../../../pane/pictures/types';
import { pictureWords } from '../../../words/words';
import { faultShown, figureKey, isTextKey, readForm, usualForm } from '../state/plan';
import type { MadeRun, Moment } from '../state/run';
import { hasWorkbook } from '../../../pane/keeping/state';
import { phraseLanguage, say } from '../../../pane/phrases';
import { grouped } from '../../../pane/values/show';
import { occupancy } from './occupancy';
import type { Scene } from '../../../pane/frame/parts';
import { banner, button, facts, hint, inputOf, section } from '../../../pane/frame/parts';

const textOf = ({ state }: Scene, key: string): string => (isTextKey(key) ? state.plan.texts[key] : '');

/** A name that stands there from the start is said; what somebody typed stays. */
const shownText = (field: PlanField, text: string): string =>
  field.kind === 'text' && text === field.initial ? say(text) : text;

const inputType = (field: PlanField): string =>
  field.kind === 'date' ? 'date' : field.kind === 'hour' ? 'time' : 'text';

function control(field: PlanField, fault: string | undefined, scene: Scene): VNode {
  const id = `plan-${field.key.replace('.', '-')}`;
  const fill = (event: Event): void => {
    scene.send(fillField, { key: field.key, text: inputOf(event) });
  };
  const common = {
    id,
    value: shownText(field, textOf(scene, field.key)),
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
    placeholder: 'usual' in field && field.usual !== undefined ? String(field.usual) : undefined,
    'aria-required': field.isOptional ? undefined : 'true',
    inputmode: field.kind === 'whole' ? 'numeric' : field.kind === 'number' ? 'decimal' : undefined,
    ...(field.kind === 'date' ? { min: isoDateOfSerial(field.min), max: isoDateOfSerial(field.max) } : {}),
  });
}

const WORDLESS = ['', 'share', 'pH', 'date', 'clock', 'fish', 'females', 'males', 'vats'];

function fieldView(field: PlanField, scene: Scene): VNode {
  const id = `plan-${field.key.replace('.', '-')}`;
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

/** Everything else has a usual answer that can be opened and changed. */
const groupView = (group: string, fields: readonly PlanField[], scene: Scene): VNode =>
  h(
    'fieldset',
    { key: group },
    h('legend', {}, group),
    h(
      'div',
      { class: 'fields' },
      fields.filter((field) => field.group === group).map((field) => fieldView(field, scene)),
    ),
  );

/** A figure the plan takes for granted, as a field that may stay empty. */
const figureField = (a: Assumption<AssumptionKey>): PlanField => ({
  key: figureKey(a.key),
  label: a.label,
  group: 'Work',
  kind: 'number',
  unit: a.unit === 'share' ? '' : a.unit,
  min: a.min,
  max: a.max,
  format: a.format,
  isOptional: true,
  hint: `Taken as ${plainFigure(a, a.planned)}, usual ${plainFigure(a, a.low)} to ${plainFigure(a, a.high)}. ${a.note}`,
});
const plainFigure = ({ unit }: Assumption, n: number): string =>
  unit === 'share' ? `${Number((100 * n).toFixed(1))} %` : String(n);
const FIGURE_FIELDS = assumptionList.map(figureField);

const otherView = (scene: Scene): VNode => {
  const { plan } = scene.state;
  const { faults } = readForm(plan.texts);
  const hasFault = [...otherFields, ...FIGURE_FIELDS].some(({ key }) => faults.has(key));
  return h(
    'details',
    { class: 'more', id: 'plan-others', open: plan.isAsked && hasFault ? true : undefined },
    h('summary', {}, 'Everything else, taken as usual', hasFault && ' – something cannot be used'),
    OTHER_GROUPS.map((group) => groupView(group, otherFields, scene)),
    h(
      'details',
      { class: 'more', id: 'plan-figures' },
      h('summary', {}, `Figures taken for granted (${FIGURE_FIELDS.length})`),
      h('p', { class: 'hint' }, 'Put in your own where you have counted; a share as 59 % or 0.59.'),
      h(
        'div',
        { class: 'fields' },
        FIGURE_FIELDS.map((field) => fieldView(field, scene)),
      ),
    ),
  );
};

const momentText = (at: number): string => `${weekdayText(at)} ${dayText(at)} ${timeText(at)}`;
const many = (n: number): string => grouped(Math.floor(n + 1e-6));
const females = (n: number): string => (n === 1 ? '1 female' : `${grouped(n)} females`);

/** What is said of the odds: the verdict, what may be promised, what a poor run brings. */
function oddsView({ plan, form, preview }: MadeRun): Child {
  const [order] = plan.orders;
  if (!order) return undefined;
  const enough = preview.nine === undefined ? 'No number of females makes it nine in ten.' : '';
  return [
    h(
      'p',
      { class: `verdict-line ${VERDICT_LOOKS[order.verdict].token}` },
      h('strong', {}, verdictText(order.verdict)),
      `: ${Math.round(100 * order.certainty)} of 100 such runs bring all ${many(form.wanted)}. `,
      h('strong', {}, `Promise ${many(order.promise)}, hope for ${many(order.hope)}.`),
    ),
    plan.batches.length > 0 &&
      h(
        'p',
        { class: 'small' },
        `All fish of a poor run ${many(plan.fish.p10)}, of a middling one ${many(plan.fish.p50)}, of a good one ${many(plan.fish.p90)}. `,
        enough === '' ? `Nine runs in ten take ${females(preview.nine ?? 0)}.` : enough,
      ),
  ];
}

/**
 * The answer in one line. It lies behind the answer and comes out under the places as the answer scrolls away,
 * so that later questions are answered with it in sight; who listens has the answer itself.
 */
function answerLine({ state }: Scene): Child {
  const { texts, made } = state.plan;
  const [inject] = made?.preview.hours ?? [];
  const [order] = made?.plan.orders ?? [];
  if (!made || !inject || !order || !usualForm(texts).form) return undefined;
  return h(
    'div',
    { id: 'plan-line', class: `answer-line${made.texts === texts ? '' : ' stale'}`, 'aria-hidden': 'true' },
    h('strong', { class: `verdict-word ${VERDICT_LOOKS[order.verdict].token}` }, verdictText(order.verdict)),
    ` · inject ${momentText(inject.at)}`,
  );
}

/** The answer, from the first question on: what to inject when, how sure it is, and what it rests on. */
function answerView({ state }: Scene): VNode {
  const { texts, made } = state.plan;
  const { form, taken } = usualForm(texts);
  const isTyped = texts.wanted.trim() !== '';
  if (!form || !made)
    return h(
      'div',
      { id: 'plan-answer', class: 'card-answer plain', role: 'status', tabindex: '-1' },
      h(
        'p',
        { class: 'small' },
        form
          ? 'Working it out…'
          : isTyped
            ? 'A field cannot be used yet: see below.'
            : 'Type how many fish: the hour of the injection stands here.',
      ),
    );
  const { preview } = made;
  const [inject, ...rest] = preview.hours;
  const isStale = made.texts !== texts;
  return h(
    'div',
    {
      id: 'plan-answer',
      class: `card-answer plain${isStale ? ' stale' : ''}`,
      role: 'status',
      tabindex: '-1',
    },
    h(
      'p',
      { class: 'big' },
      inject
        ? `Inject ${females(preview.females)} on ${momentText(inject.at)}`
        : 'No night can be planned: see below.',
    ),
    inject &&
      h(
        'p',
        { class: 'small' },
        rest.map(({ what, at }) => `${what} ${momentText(at)}`).join(' · '),
        preview.nights > 1 && `. The first of ${preview.nights} nights.`,
      ),
    oddsView(made),
    taken.length > 0 && h('p', { class: 'small' }, `Taken for granted so far: ${taken.join(', ')}.`),
    isStale && h('p', { class: 'small' }, 'Working it out anew…'),
  );
}

const momentView = ({ at, what, amount }: Moment): VNode =>
  h(
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
    ),
  );

const findingsView = ({ plan, preview }: MadeRun): Child =>
  (['cannot', 'care'] as const).map((kind) => {
    const sentences = [
      ...plan.findings.filter((finding) => finding.kind === kind),
      ...(kind === 'care' ? preview.care.map((message) => ({ message })) : []),
    ];
    return (
      sentences.length > 0 &&
      banner(
        kind === 'cannot' ? 'bad' : 'warning',
        sentences.map(({ message }) => h('p', {}, message)),
      )
    );
  });

/** Ten seasons as dots, and from eggs to fry. */
const chanceView = ({ plan }: MadeRun, how: PictureWords): Child => {
  const [batch] = plan.batches;
  const orders = plan.orders.flatMap(({ order, seasons }) =>
    seasons ? [{ name: order.name, wanted: order.number, seasons }] : [],
  );
  return [
    orders.length > 0 && dotsPicture({ orders }, how),
    batch &&
      funnelPicture(
        {
          steps: (['eggs', 'larvae', 'feeding', 'weaned'] as const).map((stage) => ({
            name: how.words.stageNames[stage] ?? stage,
            planned: batch[stage],
            counted: undefined,
          })),
        },
        how,
      ),
  ];
};

const drawn = new WeakMap<MadeRun, { readonly view: Child; readonly language: string }>();
/** The same elements for the same plan, so that typing in the form does not draw them anew. */
function previewView(made: MadeRun, how: PictureWords): Child {
  const known = drawn.get(made);
  const language = phraseLanguage();
  if (known?.language === language) return known.view;
  const { preview, form } = made;
  const view = [
    findingsView(made),
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
      h('p', { class: 'hint' }, 'The workbook has it too, to tick off, and the feed and water day by day.'),
    ),
    section('Vats', occupancy(preview.bars, form.vats)),
    chanceView(made, how),
  ];
  drawn.set(made, { view, language });
  return view;
}

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
    button(
      saveCards.label,
      () => {
        send(saveCards);
      },
      { isOff, id: 'plan-cards' },
    ),
    h('p', { class: 'hint' }, 'New sheets only: nothing that is in the workbook now is changed.'),
  );
};

const OTHER_GROUPS = [...new Set(otherFields.map((field) => field.group))];

const isEnterInField = (event: Event): boolean =>
  event instanceof KeyboardEvent && event.key === 'Enter' && event.target instanceof HTMLInputElement;

export function planView(scene: Scene): readonly Child[] {
  const { state, send } = scene;
  return [
    h('h2', { class: 'unseen' }, 'One run'),
    answerLine(scene),
    answerView(scene),
    h(
      'form',
      {
        novalidate: true,
        on: {
          submit: (event) => {
            event.preventDefault();
          },
          // Enter in a field goes on to the next open question.
          keydown: (event) => {
            if (!isEnterInField(event)) return;
            event.preventDefault();
            send(enterPlan);
          },
        },
      },
      FIVE_GROUPS.map((group) => groupView(group, firstFields, scene)),
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
      h('h2', {}, 'Result'),
      state.plan.made
        ? previewView(state.plan.made, pictureWords(state))
        : h('p', { class: 'hint' }, 'It grows from the first question on.'),
    ),
    actions(scene),
  ];
}
