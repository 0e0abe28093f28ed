import type { DosingField, DosingKey } from '../../../../shared/dosing/fields';
import { DOSING_FIELDS, YES, dosingField } from '../../../../shared/dosing/fields';
import { fillDoseField, leaveDoseField, showVat } from '../commands/dose';
import { doseFaultShown } from '../state/dose';
import type { VNode } from '../../../pane/draw';
import { h } from '../../../pane/draw';
import type { Scene } from '../../../pane/parts';
import { hint, inputOf } from '../../../pane/parts';

function control(field: DosingField, fault: string | undefined, { state, send }: Scene): VNode {
  const id = `dose-${field.key}`;
  const text = state.dose.texts[field.key];
  const fill = (event: Event): void => {
    send(fillDoseField, { key: field.key, text: inputOf(event) });
  };
  const common = {
    id,
    value: text,
    'aria-invalid': fault === undefined ? undefined : 'true',
    'aria-required': field.isRequired ? 'true' : undefined,
    'aria-describedby': fault === undefined ? `${id}-hint` : `${id}-fault ${id}-hint`,
    on: {
      input: fill,
      change: fill,
      blur: () => {
        send(leaveDoseField, field.key);
      },
    },
  };
  if (!field.choices)
    return h('input', { ...common, type: 'text', inputmode: 'decimal', autocomplete: 'off' });
  return h(
    'select',
    common,
    field.initial === null && h('option', { value: '' }, 'Choose…'),
    field.choices.map(([value, said]) => h('option', { value }, said)),
  );
}

function fieldView(field: DosingField, scene: Scene): VNode {
  const id = `dose-${field.key}`;
  const fault = doseFaultShown(scene.state.dose, field.key);
  return h(
    'div',
    { class: fault === undefined ? 'field' : 'field has-fault', key: field.key },
    h(
      'label',
      { for: id },
      field.label,
      field.unit !== '' && h('span', { class: 'unit' }, ` (${field.unit})`),
      !field.isRequired && h('span', { class: 'optional' }, ' – may stay empty'),
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

const fields = (part: DosingField['part'], scene: Scene): readonly VNode[] =>
  DOSING_FIELDS.filter((field) => field.part === part).map((field) => fieldView(field, scene));

/** The vat in one line, for when the questions are folded away. */
const summary = ({ state }: Scene): string => {
  const said = (key: DosingKey): string => {
    const { unit } = dosingField(key);
    return `${state.dose.texts[key]}${unit === '' ? '' : ` ${unit}`}`;
  };
  return `${said('volume')}, ${said('material')}, ${said('temperature')}, to pH ${said('target')}${state.dose.texts.stocked === YES ? ', fish in' : ''}`;
};

/** `open` is kept by the state, so that the questions fold away when the readings begin. */
const folds = (isOpen: boolean, scene: Scene) => ({
  click: (event: Event): void => {
    event.preventDefault();
    scene.send(showVat, !isOpen);
  },
});

export function vatView(scene: Scene): VNode {
  const { dose } = scene.state;
  const isOpen = dose.isVatOpen;
  return h(
    'details',
    { class: 'vat', open: isOpen },
    h(
      'summary',
      { id: 'dose-vat', on: folds(isOpen, scene) },
      h('span', { class: 'vat-title' }, 'The vat and the product'),
      !isOpen && h('span', { class: 'vat-line' }, summary(scene)),
    ),
    h(
      'div',
      { class: 'fields' },
      fields('first', scene),
      dose.texts.stocked === YES && fields('fish', scene),
    ),
    h(
      'details',
      { class: 'more' },
      h('summary', {}, 'More, if you know it: alkalinity, window, meter'),
      h('div', { class: 'fields' }, fields('more', scene)),
    ),
  );
}
