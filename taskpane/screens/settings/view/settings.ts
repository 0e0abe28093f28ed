import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Scene } from '../../../pane/frame/parts';
import { button, hint, inputOf, section } from '../../../pane/frame/parts';
import type { PaneSettings } from '../../../pane/keeping/settings';
import type { Language } from '../../../words/words';
import { LANGUAGE_NAMES, wordsFor } from '../../../words/words';
import { changeSetting, forgetAll } from '../commands/settings';

type Option = readonly [string, string];

const choice = (
  key: 'language' | 'numbers' | 'units',
  label: string,
  options: readonly Option[],
  { state, send }: Scene,
): VNode =>
  h(
    'div',
    { class: 'field' },
    h('label', { for: `setting-${key}` }, label),
    h(
      'select',
      {
        id: `setting-${key}`,
        value: state.settings[key],
        on: {
          change: (event) => {
            send(changeSetting, { [key]: inputOf(event) } as Partial<PaneSettings>);
          },
        },
      },
      options.map(([value, face]) => h('option', { value }, face)),
    ),
  );

const typed = (key: 'currency' | 'spoon', label: string, says: string, { state, send }: Scene): VNode =>
  h(
    'div',
    { class: 'field' },
    h('label', { for: `setting-${key}` }, label),
    h('input', {
      id: `setting-${key}`,
      type: 'text',
      autocomplete: 'off',
      value: state.settings[key],
      'aria-describedby': `setting-${key}-hint`,
      on: {
        input: (event) => {
          send(changeSetting, { [key]: inputOf(event) } as Partial<PaneSettings>);
        },
      },
    }),
    hint(`setting-${key}-hint`, says),
  );

const rings = ({ state, send }: Scene, label: string): VNode =>
  h(
    'div',
    { class: 'tick' },
    h('input', {
      id: 'setting-rings',
      type: 'checkbox',
      checked: state.settings.rings,
      on: {
        change: () => {
          send(changeSetting, { rings: !state.settings.rings });
        },
      },
    }),
    h('label', { for: 'setting-rings' }, label),
  );

export function settingsView(scene: Scene): readonly Child[] {
  const { settings } = wordsFor(scene.state);
  const languages = (Object.keys(LANGUAGE_NAMES) as Language[]).map((id): Option => [id, LANGUAGE_NAMES[id]]);
  return [
    h('h2', {}, settings.title),
    choice('language', settings.language, [['auto', settings.auto], ...languages], scene),
    choice(
      'numbers',
      settings.numbers,
      [
        ['auto', settings.auto],
        ['point', settings.point],
        ['comma', settings.comma],
      ],
      scene,
    ),
    choice(
      'units',
      settings.units,
      [
        ['metric', settings.metric],
        ['imperial', settings.imperial],
      ],
      scene,
    ),
    hint('setting-units-hint', settings.unitsHint),
    typed('currency', settings.currency, settings.currencyHint, scene),
    typed('spoon', settings.spoon, settings.spoonHint, scene),
    rings(scene, settings.rings),
    section(settings.rates, h('p', {}, settings.ratesHint)),
    h('p', { class: 'hint' }, settings.kept),
    h(
      'div',
      { class: 'actions' },
      button(
        settings.forget,
        () => {
          scene.send(forgetAll);
        },
        { id: 'settings-forget' },
      ),
    ),
  ];
}
