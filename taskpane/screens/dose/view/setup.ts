import type { DosingField } from '../../../../shared/dosing/fields';
import { DOSING_FIELDS, YES } from '../../../../shared/dosing/fields';
import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Scene } from '../../../pane/frame/parts';
import { button, inputOf } from '../../../pane/frame/parts';
import { shownUnit } from '../../../pane/values/units';
import { wordsFor } from '../../../words/words';
import { copySetup, fillSetup, keepSetup, leaveSetupField, openSetup, typeWho } from '../commands/setup';
import { setupIn, textsOf } from '../state/dose';
import type { SetupTexts } from '../state/setup';
import { readSetup, understoodOf, unitsOf } from '../state/setup';

type TextKey = Exclude<keyof SetupTexts, 'imperial'>;
const typed = (key: TextKey, { send }: Scene, isChoice = false) => ({
  [isChoice ? 'change' : 'input']: (event: Event) => {
    send(fillSetup, { key, text: inputOf(event) });
  },
  blur: () => {
    send(leaveSetupField, key);
  },
});

const choiceOf = (
  id: string,
  key: TextKey,
  value: string,
  choices: readonly (readonly [string, string])[],
  scene: Scene,
): VNode =>
  h(
    'select',
    { id, value, on: typed(key, scene, true) },
    choices.map(([one, said]) => h('option', { value: one, key: one, selected: one === value }, said)),
  );

const row = (id: string, label: Child, control: VNode, under?: Child, isWide = false): VNode =>
  h(
    'div',
    { class: isWide ? 'field wide' : 'field', key: id },
    h('label', { for: id }, label),
    control,
    under,
  );
/** Longer ones are cut where two fields stand side by side on a phone. */
const MOST_LETTERS = 16;
const isLong = ({ choices = [] }: DosingField): boolean =>
  choices.some(([, said]) => said.length > MOST_LETTERS);

function fieldView(field: DosingField, scene: Scene): VNode {
  const { state } = scene;
  const texts = textsOf(state, state.vat.vat);
  const fault =
    state.dose.isAsked || state.dose.touched.has(field.key)
      ? readSetup(texts).faults.get(field.key)
      : undefined;
  const id = `dose-${field.key}`;
  const value = texts[field.key];
  const said = `${id}-said`;
  const { unit } = shownUnit(field.unit, { units: unitsOf(texts, field, state.settings) });
  const understood = understoodOf(field, texts);
  const control = field.choices
    ? choiceOf(
        id,
        field.key,
        value,
        field.initial === null ? [['', '…'], ...field.choices] : field.choices,
        scene,
      )
    : h('input', {
        id,
        type: 'text',
        inputmode: field.key === 'spoon' ? 'text' : 'decimal',
        autocomplete: 'off',
        value,
        'aria-describedby': said,
        'aria-invalid': fault === undefined ? undefined : 'true',
        on: typed(field.key, scene),
      });
  return row(
    id,
    [field.label, unit && h('span', { class: 'unit' }, ` ${unit}`)],
    control,
    h(
      'p',
      { id: said, class: fault === undefined ? 'hint' : 'fault' },
      fault ?? [
        understood !== undefined && `${wordsFor(state).vat.dose.setup.taken(understood)} `,
        field.hint,
      ],
    ),
    isLong(field),
  );
}

const othersOf = ({ state }: Scene): readonly string[] =>
  state.vat.vats.filter((name) => name !== state.vat.vat && setupIn(state, name) !== undefined);

/** One press takes everything over from a vat that holds the same water. */
const sameAs = (scene: Scene): Child => {
  const { vat } = wordsFor(scene.state);
  const others = othersOf(scene);
  return (
    others.length > 0 &&
    h(
      'div',
      { class: 'parts', role: 'group', 'aria-label': vat.dose.sameWater('') },
      others.map((name, i) =>
        button(
          vat.dose.sameWater(vat.of(name)),
          () => {
            scene.send(copySetup, name);
          },
          { id: `dose-same-${i}`, tone: 'main' },
        ),
      ),
    )
  );
};

const ownFields = (scene: Scene): readonly Child[] => {
  const { state } = scene;
  const { dose, of } = wordsFor(state).vat;
  const texts = textsOf(state, state.vat.vat);
  const others = state.vat.vats.filter((name) => name !== state.vat.vat);
  return [
    row(
      'dose-sameAs',
      dose.setup.sameAs,
      choiceOf(
        'dose-sameAs',
        'sameAs',
        texts.sameAs,
        [['', dose.setup.none], ...others.map((name) => [name, of(name)] as const)],
        scene,
      ),
    ),
    row(
      'dose-airing',
      dose.setup.airing,
      choiceOf(
        'dose-airing',
        'airing',
        texts.airing,
        [
          ['can', dose.setup.can],
          ['cannot', dose.setup.cannot],
        ],
        scene,
      ),
    ),
    row(
      'dose-kind',
      dose.setup.kind,
      choiceOf(
        'dose-kind',
        'kind',
        texts.kind,
        [
          ['vat', dose.setup.vat],
          ['tank', dose.setup.tank],
        ],
        scene,
      ),
    ),
  ];
};

export function setupView(scene: Scene): readonly Child[] {
  const { state, send } = scene;
  const { dose } = wordsFor(state).vat;
  const texts = textsOf(state, state.vat.vat);
  const isShown = ({ part }: DosingField): boolean =>
    part === 'first' || (part === 'fish' && texts.stocked === YES);
  return [
    sameAs(scene),
    h(
      'div',
      { class: 'fields', id: 'dose-setup' },
      DOSING_FIELDS.filter(isShown).map((field) => fieldView(field, scene)),
      row(
        'dose-who',
        dose.setup.who,
        h('input', {
          id: 'dose-who',
          type: 'text',
          autocomplete: 'off',
          value: state.vat.who,
          on: {
            input: (event) => {
              send(typeWho, inputOf(event));
            },
          },
        }),
        h('p', { class: 'hint' }, dose.setup.whoHint),
      ),
      h(
        'details',
        { class: 'more' },
        h('summary', {}, dose.setup.more),
        DOSING_FIELDS.filter(({ part }) => part === 'more').map((field) => fieldView(field, scene)),
        ownFields(scene),
      ),
    ),
    h(
      'div',
      { class: 'parts' },
      button(
        dose.setup.ready,
        () => {
          send(keepSetup);
        },
        { id: 'dose-ready', tone: 'main' },
      ),
      setupIn(state, state.vat.vat) !== undefined &&
        button(
          dose.setup.leave,
          () => {
            send(openSetup, false);
          },
          { id: 'dose-leave', tone: 'quiet' },
        ),
    ),
  ];
}
