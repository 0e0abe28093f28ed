import { figuresApart } from '../../../../shared/units/phrases';
import { CAUTIONS } from '../../../../shared/functions/cautions';
import { defaultText, expects, isRequired } from '../../../../shared/functions/describe';
import type { NamedParam, SheetFunction } from '../../../../shared/functions/define';
import { HEADINGS } from '../../../../shared/functions/define';
import type { CallDraft } from '../state/answer';
import { draftOf, sizeOf } from '../state/answer';
import { openFunction } from '../state/functions';
import { wordsFor } from '../../../words/words';
import {
  closePage,
  fillArgument,
  insertBelow,
  insertFormula,
  nameAnswer,
  takeSelection,
} from '../commands/functions';
import type { Child, VNode } from '../../../pane/frame/draw';
import { english, h } from '../../../pane/frame/draw';
import { hasWorkbook, isFree } from '../../../pane/keeping/state';
import { labelOf } from '../../../pane/values/show';
import { answerView } from './answer';
import { functionHelp } from './help';
import type { Scene } from '../../../pane/frame/parts';
import { banner, button, hint, inputOf } from '../../../pane/frame/parts';

const fieldId = (param: NamedParam): string => `argument-${param.name}`;

const label = (param: NamedParam): VNode => {
  const unit = 'quantity' in param ? param.quantity.unit : '';
  return h(
    'label',
    { for: fieldId(param) },
    english('span', {}, labelOf(param.name)),
    unit && !['text', 'pH'].includes(unit) && h('span', { class: 'unit' }, ` (${unit})`),
    !isRequired(param) && h('span', { class: 'optional' }, ' – may be left out'),
  );
};

const isMoment = (param: NamedParam): boolean => 'quantity' in param && /^date/.test(param.quantity.unit);

/** What it is, what it takes, and what is taken where it is left out: a sentence each. */
const limits = (param: NamedParam): readonly string[] => {
  const fallback = defaultText(param);
  const isListed = param.kind === 'choice' || param.kind === 'flag';
  return [
    param.doc,
    ...(isListed
      ? []
      : [
          ` Takes ${isMoment(param) ? 'a date and time as 2026-05-01 22:30, or a cell' : figuresApart(expects(param))}.`,
        ]),
    ...(fallback === undefined || isListed || /left out/i.test(param.doc)
      ? []
      : [` Left out: ${figuresApart(fallback)}.`]),
  ];
};

const choiceBox = (param: NamedParam, options: readonly string[], { state, send }: Scene): VNode =>
  h(
    'select',
    {
      id: fieldId(param),
      value: state.functions.texts[param.name] ?? '',
      'aria-describedby': `${fieldId(param)}-hint`,
      on: {
        change: (event) => {
          send(fillArgument, { param: param.name, text: inputOf(event) });
        },
      },
    },
    h('option', { value: '' }, isRequired(param) ? 'Choose…' : `As usual (${defaultText(param) ?? 'none'})`),
    options.map((option) => h('option', { value: option }, option)),
  );

const textBox = (param: NamedParam, { state, send }: Scene): VNode =>
  h('input', {
    id: fieldId(param),
    type: 'text',
    autocomplete: 'off',
    spellcheck: 'false',
    value: state.functions.texts[param.name] ?? '',
    inputmode: param.kind === 'number' && !isMoment(param) && !hasWorkbook(state) ? 'decimal' : undefined,
    'aria-describedby': `${fieldId(param)}-hint`,
    'aria-required': isRequired(param) ? 'true' : undefined,
    on: {
      input: (event) => {
        send(fillArgument, { param: param.name, text: inputOf(event) });
      },
    },
  });

function argumentField(param: NamedParam, scene: Scene): VNode {
  const { state, send } = scene;
  const current = state.functions.texts[param.name] ?? '';
  const words =
    param.kind === 'choice' ? param.choices : param.kind === 'flag' ? ['TRUE', 'FALSE'] : undefined;
  // A word taken from the sheet is no option of the box: then the field shows the reference as text.
  const isBox = words !== undefined && (current === '' || words.includes(current));
  const take =
    hasWorkbook(state) &&
    param.kind !== 'flag' &&
    button(
      'Use selection',
      () => {
        send(takeSelection, param.name);
      },
      { isOff: !isFree(state), says: `Use selection: ${labelOf(param.name)}` },
    );
  return h(
    'div',
    { class: 'field', key: param.name },
    label(param),
    h('div', { class: 'with-button' }, isBox ? choiceBox(param, words, scene) : textBox(param, scene), take),
    english('p', { id: `${fieldId(param)}-hint`, class: 'hint' }, ...limits(param)),
  );
}

const insertion = (draft: CallDraft, scene: Scene): Child => {
  const { state, send } = scene;
  if (!hasWorkbook(state))
    return hint('function-insert-hint', 'Open Spawnbook in a workbook to insert this formula.');
  const { find } = wordsFor(state);
  const isOff = !isFree(state) || draft.state.kind === 'incomplete' || draft.state.kind === 'unreadable';
  return [
    placeLine(draft, scene),
    isOneValue(scene) && namedBox(scene),
    h(
      'div',
      { class: 'actions' },
      button(
        find.insert,
        () => {
          send(insertFormula);
        },
        { tone: 'main', isOff, id: 'function-insert' },
      ),
      button(
        find.free,
        () => {
          send(insertBelow);
        },
        { tone: 'quiet', isOff, id: 'function-insert-below' },
      ),
    ),
  ];
};

/** The selected cell and how far the answer reaches from it. */
const placeLine = (draft: CallDraft, { state }: Scene): Child => {
  const { cell } = state.why;
  if (!cell) return undefined;
  const { find } = wordsFor(state);
  const { rows, columns } =
    draft.state.kind === 'answer' ? sizeOf(draft.state.value) : { rows: 1, columns: 1 };
  const size = rows > 1 || columns > 1 ? find.size(rows, columns) : '';
  return h('p', { class: 'hint', id: 'insert-place' }, find.where(`${cell.sheet}!${cell.address}`, size));
};
const isOneValue = ({ state }: Scene): boolean => openFunction(state.functions)?.returns.kind === 'value';
const namedBox = ({ state, send }: Scene): VNode =>
  h(
    'div',
    { class: 'tick' },
    h('input', {
      id: 'insert-named',
      type: 'checkbox',
      checked: state.functions.isNamed,
      on: {
        change: () => {
          send(nameAnswer, !state.functions.isNamed);
        },
      },
    }),
    h('label', { for: 'insert-named' }, wordsFor(state).find.named),
  );

/** The heading switch comes last in a call but is no question of the trade: it stays out of the way. */
const argumentFields = (fn: SheetFunction, scene: Scene): { readonly asked: Child; readonly more: Child } => {
  const required = fn.params.filter((param) => param.name !== HEADINGS && isRequired(param));
  const others = fn.params.filter((param) => !required.includes(param));
  const hasFilledOther = others.some((param) => (scene.state.functions.texts[param.name] ?? '') !== '');
  return {
    asked: required.map((param) => argumentField(param, scene)),
    more:
      others.length > 0 &&
      h(
        'details',
        { class: 'more', open: hasFilledOther || required.length === 0 ? true : undefined },
        h(
          'summary',
          {},
          others.length === 1
            ? '1 more argument, may be left out'
            : `${others.length} more arguments, may be left out`,
        ),
        others.map((param) => argumentField(param, scene)),
      ),
  };
};

const cautions = (fn: SheetFunction): Child =>
  fn.cautions.length > 0 &&
  banner(
    'warning',
    h('strong', {}, 'Take care. '),
    fn.cautions.map((key) => h('p', {}, CAUTIONS[key] ?? '')),
  );

export function functionPage(fn: SheetFunction, scene: Scene): readonly VNode[] {
  const draft = draftOf(fn, scene.state.functions);
  const { asked, more } = argumentFields(fn, scene);
  const isLoose = !fn.params.some(isRequired);
  return [
    h(
      'div',
      { class: 'back' },
      button(
        '‹ All functions',
        () => {
          scene.send(closePage);
        },
        { tone: 'quiet' },
      ),
    ),
    h(
      'h2',
      { id: 'function-title', tabindex: '-1', class: 'function-name' },
      fn.name.split('.').flatMap((part, i) => (i > 0 ? ['.', h('wbr'), part] : [part])),
    ),
    english('p', { class: 'lead' }, fn.summary),
    h(
      'section',
      { class: 'block', 'aria-label': 'Fill in' },
      asked,
      // The answer stays near what is asked, however much may be left out.
      !isLoose && answerView(fn, draft, scene),
      more,
      isLoose && answerView(fn, draft, scene),
      cautions(fn),
      insertion(draft, scene),
    ),
    ...functionHelp(fn, scene),
  ];
}
