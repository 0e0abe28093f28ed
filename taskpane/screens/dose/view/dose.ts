// Long: one screen, drawn from top to bottom.
import type { VatAdvice } from '../../../../shared/dosing/vat';
import type { VatSentences } from '../../../../shared/dosing/say';
import { gramsText, measuresText, shortCautions, stateOf, vatSentences } from '../../../../shared/dosing/say';
import { VERDICT_LOOKS, verdictOf } from '../../../../shared/maths/verdict';
import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Scene } from '../../../pane/frame/parts';
import { button, inputOf } from '../../../pane/frame/parts';
import { shownUnit } from '../../../pane/values/units';
import { grouped, typedShown } from '../../../pane/values/show';
import { pathPicture } from '../../../pane/pictures/draw';
import { momentOf, pictureWords, wordsFor } from '../../../words/words';
import { takeLineBack } from '../../vat/commands/notebook';
import { closeCard } from '../../vat/commands/vat';
import { lineText, lineView } from '../../vat/view/line';
import { padView } from '../../vat/view/pad';
import {
  chooseDoseField,
  chooseDoseVat,
  chooseWhat,
  giveDose,
  nextDoseField,
  pressDoseKey,
  showMore,
  typeDose,
  writeReading,
} from '../commands/dose';
import { newWater, openSetup } from '../commands/setup';
import { waitOver } from '../state/clocks';
import type { DraftField, DraftWhat } from '../state/dose';
import {
  FIELD_UNITS,
  WHATS,
  adviceFor,
  draftOf,
  fieldsFor,
  isTank,
  pathOf,
  setupIn,
  tankFacts,
  whatOf,
} from '../state/dose';
import { setupView } from './setup';

const MARKS = { plain: '', good: '✓', warning: '!', bad: '✕' } as const;
const two = (n: number): string => String(n).padStart(2, '0');
const leftText = (days: number): string => {
  const seconds = Math.max(0, Math.round(days * 86_400));
  return seconds >= 3600
    ? `${Math.floor(seconds / 3600)}:${two(Math.floor((seconds % 3600) / 60))} h`
    : `${Math.floor(seconds / 60)}:${two(seconds % 60)}`;
};

/** Time left at a vat that waits; undefined where nothing runs. */
const leftAt = ({ state }: Scene, name: string): string | undefined => {
  const until = waitOver(state, name);
  return until === undefined || until <= state.now ? undefined : leftText(until - state.now);
};

/** Every vat with its state: which one needs somebody next is seen without opening it. */
const vatList = (scene: Scene): VNode => {
  const { state, send } = scene;
  const { vat } = wordsFor(state);
  return h(
    'div',
    { class: 'dose-vats', role: 'group', 'aria-label': vat.which },
    state.vat.vats.map((name, i) => {
      const advice = adviceFor(state, name);
      const { tone, word } = advice ? stateOf(advice) : { tone: 'plain' as const, word: '' };
      const left = leftAt(scene, name);
      return h(
        'button',
        {
          type: 'button',
          key: name,
          id: `dose-vat-${i}`,
          class: `chip state ${tone}`,
          'aria-pressed': state.vat.vat === name ? 'true' : 'false',
          on: {
            click: () => {
              send(chooseDoseVat, name);
            },
          },
        },
        h('span', {}, name),
        word !== '' &&
          h(
            'span',
            { class: 'state-word' },
            `${MARKS[tone]} ${vat.dose.states[word] ?? word}${left === undefined ? '' : ` ${left}`}`,
          ),
      );
    }),
  );
};

const TONES = {
  refused: 'bad',
  readFirst: 'plain',
  mix: 'plain',
  airFirst: 'warning',
  dose: 'warning',
  waitSettle: 'plain',
  readAgain: 'warning',
  done: 'good',
  watch: 'plain',
  stop: 'bad',
} as const satisfies Readonly<Record<VatAdvice['action'], string>>;

/** A part-dose is no end yet: where nothing more is due, the chance of ending well is worth a word. */
const ENDS: ReadonlySet<VatAdvice['action']> = new Set(['done', 'watch', 'stop']);

/** The answer: what to do in large letters, what to mind, what will come of it. */
function answerView(scene: Scene, advice: VatAdvice, said: VatSentences): VNode {
  const { state } = scene;
  const { odds } = advice;
  const { fault } = state.dose;
  // What was typed cannot be taken: the answer before it must not look like the answer to it.
  const tone = fault === undefined ? TONES[advice.action] : 'bad';
  const isEnd = ENDS.has(advice.action) && fault === undefined;
  const look = isEnd && odds !== undefined ? VERDICT_LOOKS[verdictOf(odds)] : undefined;
  const { dose } = wordsFor(state).vat;
  return h(
    'div',
    { id: 'card-answer', class: `card-answer dose-answer ${tone}`, role: 'status', tabindex: '0' },
    fault === undefined
      ? h(
          'p',
          { class: 'big' },
          MARKS[tone] && h('span', { class: 'mark', 'aria-hidden': 'true' }, `${MARKS[tone]} `),
          said.headline,
        )
      : h('p', { class: 'fault', role: 'alert' }, `${MARKS[tone]} ${fault}`),
    shortCautions(advice).map((text) => h('p', { class: 'small caution', key: text }, `⚠ ${text}`)),
    said.expect !== '' &&
      h(
        'p',
        { class: 'small' },
        said.expect,
        look &&
          h(
            'span',
            { class: `odds verdict-word ${look.token}` },
            ` ${look.shape} ${dose.endsWell(look.word)}`,
          ),
      ),
    h('p', { class: 'small' }, said.todo),
    tankView(scene),
  );
}

const givenButton = (scene: Scene, advice: VatAdvice): Child => {
  if (advice.action !== 'dose' || !advice.measures) return undefined;
  const { dose } = wordsFor(scene.state).vat;
  const typed = (draftOf(scene.state).texts.grams ?? '').trim();
  const what = typed === '' ? measuresText(advice.measures) : '';
  const grams = typed === '' ? gramsText(advice.measures.grams) : typed;
  return button(
    dose.given(what === `${grams} g` ? '' : what, grams),
    () => {
      scene.send(giveDose);
    },
    { id: 'dose-given', tone: 'main' },
  );
};

const whatChips = (scene: Scene, chosen: DraftWhat): VNode => {
  const { state, send } = scene;
  const { dose } = wordsFor(state).vat;
  const shown = WHATS.filter(
    (what) => what !== 'reading' && (what !== 'refill' || isTank(state, state.vat.vat)),
  );
  return h(
    'div',
    { class: 'dose-whats', role: 'group', 'aria-label': dose.before },
    shown.map((what) =>
      h(
        'button',
        {
          type: 'button',
          key: what,
          id: `dose-what-${what.replace(' ', '-')}`,
          class: 'chip',
          'aria-pressed': what === chosen ? 'true' : 'false',
          on: {
            click: () => {
              send(chooseWhat, what);
            },
          },
        },
        dose.whats[what],
      ),
    ),
  );
};

/** "Water °F": the field with the unit it is typed in. */
const fieldLabel = (field: DraftField, { state }: Scene): string =>
  [
    wordsFor(state).vat.dose.fields[field],
    field !== 'grams' && shownUnit(FIELD_UNITS[field] ?? '', state.settings).unit,
  ]
    .filter(Boolean)
    .join(' ');

const tile = (field: DraftField, scene: Scene): VNode => {
  const { state, send } = scene;
  const { optional } = wordsFor(state).vat;
  const id = `field-${field}`;
  const isChosen = state.dose.field === field;
  const isNeeded = field === 'ph' || field === 'shown';
  return h(
    'div',
    { class: `tile${isChosen ? ' chosen' : ''}${isNeeded ? '' : ' may-stay-empty'}`, key: field },
    h(
      'label',
      { for: id },
      fieldLabel(field, scene),
      !isNeeded && h('span', { class: 'unseen' }, ` ${optional}`),
    ),
    h('input', {
      id,
      type: 'text',
      inputmode: 'none',
      autocomplete: 'off',
      value: typedShown(draftOf(state).texts[field] ?? ''),
      'aria-invalid': state.dose.fault !== undefined && isChosen ? 'true' : undefined,
      on: {
        focus: () => {
          if (!isChosen) send(chooseDoseField, field);
        },
        input: (event) => {
          send(typeDose, { field, text: inputOf(event) });
        },
      },
    }),
  );
};

const amountText = ({ state }: Scene, litres: number): string => {
  const { unit, fromMetric } = shownUnit('L', state.settings);
  return `${grouped(fromMetric(litres))} ${unit}`;
};
const phText = (ph: number): string => grouped(ph, 1);

/** What stands in a tank, and what raw water would make of it. */
const tankView = (scene: Scene): Child => {
  const facts = tankFacts(scene.state);
  const { dose } = wordsFor(scene.state).vat;
  if (!facts) return undefined;
  const { tank, vats, topUp } = facts;
  return [
    h(
      'p',
      { class: 'small', id: 'tank-now' },
      dose.tank(amountText(scene, tank.litres), vats, String(tank.mixMinutes)),
    ),
    topUp &&
      h(
        'p',
        { class: 'small', id: 'tank-top-up' },
        dose.topUp(
          amountText(scene, topUp.litres),
          phText(topUp.aired.likely),
          phText(topUp.aired.low),
          phText(topUp.aired.high),
        ),
      ),
  ];
};

/** The way of the pH as a picture, with the same numbers as a table under it. */
const pathView = (scene: Scene, advice: VatAdvice): Child => {
  const { state } = scene;
  const { dose } = wordsFor(state).vat;
  const data = pathOf(state, advice, { at: (at) => momentOf(state, at), next: dose.next, aired: dose.aired });
  return data && pathPicture(data, pictureWords(state));
};

const moreView = (scene: Scene, advice: VatAdvice, said: VatSentences): VNode => {
  const { state, send } = scene;
  const { dose, last } = wordsFor(state).vat;
  const lines = state.vat.lines.filter((line) => line.vat === state.vat.vat || line.vat === '').slice(-12);
  return h(
    'details',
    {
      class: 'more',
      id: 'dose-more',
      open: state.dose.isMoreOpen,
      on: {
        toggle: (event) => {
          const isOpen = (event.target as HTMLDetailsElement).open;
          if (isOpen !== state.dose.isMoreOpen) send(showMore, isOpen);
        },
      },
    },
    h('summary', {}, dose.more),
    // Above the keys the dose has their place; a vat may have been topped up instead.
    advice.action === 'dose' && whatChips(scene, whatOf(state, advice)),
    said.why.map((text) => h('p', { key: text }, text)),
    said.cautions.map((text) => h('p', { class: 'caution', key: text }, `⚠ ${text}`)),
    state.dose.isMoreOpen && pathView(scene, advice),
    h('h3', {}, last),
    h(
      'ul',
      { class: 'lines' },
      [...lines].reverse().map((line) => lineView(line, scene, false)),
    ),
    button(
      dose.newWater,
      () => {
        send(newWater);
      },
      { id: 'dose-new-water' },
    ),
  );
};

/** The last line of this vat can be taken back where it was written. */
const undo = (scene: Scene): Child => {
  const { state, send } = scene;
  const line = state.vat.lines.filter(({ vat }) => vat === state.vat.vat).at(-1);
  const { vat } = wordsFor(state);
  return (
    line &&
    button(
      '↶',
      () => {
        send(takeLineBack, line.id);
      },
      { id: 'line-back', tone: 'quiet', says: `${vat.undo}: ${lineText(line, scene)}` },
    )
  );
};

const atVat = (scene: Scene, advice: VatAdvice): readonly Child[] => {
  const { state, send } = scene;
  const setup = setupIn(state, state.vat.vat);
  if (!setup) return [];
  const said = vatSentences(setup, advice);
  const what = whatOf(state, advice);
  const texts = draftOf(state).texts;
  return [
    answerView(scene, advice, said),
    h('div', { class: 'dose-top' }, givenButton(scene, advice) || whatChips(scene, what), undo(scene)),
    h(
      'div',
      { class: 'tiles' },
      fieldsFor(what, advice.action === 'dose').map((field) => tile(field, scene)),
    ),
    padView(scene, (texts.ph ?? '') !== '' && (texts.again ?? '') === '', {
      press: (key) => {
        send(pressDoseKey, key);
      },
      next: () => {
        send(nextDoseField);
      },
      write: () => {
        send(writeReading);
      },
    }),
    moreView(scene, advice, said),
  ];
};

/** Before the set-up of a vat is whole there is nothing to read for. */
const isSettingUp = ({ state }: Scene): boolean =>
  state.dose.isSetupOpen || setupIn(state, state.vat.vat) === undefined;

/** The way back, every vat, the set-up: one row, so that answer and keys fit below it. */
const topRow = (scene: Scene): VNode => {
  const { send, state } = scene;
  const { vat } = wordsFor(state);
  return h(
    'div',
    { class: 'dose-top' },
    h(
      'h2',
      { id: 'card-title', class: 'unseen', tabindex: '-1' },
      `${vat.cards.dose} · ${vat.of(state.vat.vat)}`,
    ),
    button(
      '‹',
      () => {
        send(closeCard);
      },
      { id: 'card-back', tone: 'quiet', says: vat.back },
    ),
    vatList(scene),
    !isSettingUp(scene) &&
      button(
        '✎',
        () => {
          send(openSetup, true);
        },
        { id: 'dose-open-setup', tone: 'quiet', says: vat.dose.setup.open },
      ),
  );
};

export function doseView(scene: Scene): readonly Child[] {
  const { state } = scene;
  const advice = adviceFor(state, state.vat.vat);
  return [
    h(
      'div',
      { class: 'dosing' },
      topRow(scene),
      ...(isSettingUp(scene) || !advice ? setupView(scene) : atVat(scene, advice)),
    ),
  ];
}
