import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Scene } from '../../../pane/frame/parts';
import { button, inputOf } from '../../../pane/frame/parts';
import { calledOf } from '../../../../shared/season/book/orderKeys';
import { timeText } from '../../../../shared/units/dates';
import type { Words } from '../../../words/en';
import { typedShown } from '../../../pane/values/show';
import { shownUnit } from '../../../pane/values/units';
import { growthPicture } from '../../../pane/pictures/draw';
import { pictureWords, wordsFor } from '../../../words/words';
import { fishHere, growthOf, plannedAt } from '../state/growth';
import { standingIn } from '../state/standing';
import { markHour } from '../commands/notebook';
import { chooseField, closeCard, typeField } from '../commands/vat';
import type { CardAnswer, CardField, CardId } from '../state/cards';
import { CARDS, isPadCard } from '../state/cards';
import type { CardReading } from '../state/vat';
import { contextOf, fieldsOf, readCard, textOf } from '../state/vat';
import { padView } from './pad';
import { lineView } from './line';
import { headClock } from './timer';

const TONE_MARKS = { plain: '', good: '✓', warning: '!', bad: '✕' } as const;

/** The answer in the top third, large; what is still missing while there is none. */
function answerView(
  answer: CardAnswer | undefined,
  reading: CardReading,
  { vat }: Words,
  last: Child,
  oneOf: readonly string[] = [],
): VNode {
  const [fault] = reading.faults.values();
  const asked = reading.missing.length > 0 ? reading.missing.map(({ key }) => key) : oneOf;
  const needed = asked.map((key) => vat.fields[key] ?? key).join(', ');
  return h(
    'div',
    {
      id: 'card-answer',
      class: `card-answer ${answer?.tone ?? 'plain'}`,
      role: 'status',
      'aria-label': vat.answer,
    },
    answer
      ? [
          h(
            'p',
            { class: 'big' },
            TONE_MARKS[answer.tone] &&
              h('span', { class: 'mark', 'aria-hidden': 'true' }, `${TONE_MARKS[answer.tone]} `),
            answer.big,
          ),
          answer.small.map((text) => h('p', { class: 'small' }, text)),
        ]
      : [h('p', { class: 'small' }, fault ?? (needed ? vat.stillNeeded(needed) : vat.pad)), last],
  );
}

/** As the person reads and types it; money in the currency chosen. */
const unitOf = ({ key, unit }: CardField, { settings }: Scene['state']): string =>
  key === 'paid' ? settings.currency : shownUnit(unit, settings).unit;

const tileClasses = ({ kind, isOptional }: CardField, isChosen: boolean, isBad: boolean): string =>
  [
    'tile',
    isChosen && 'chosen',
    isBad && 'has-fault',
    isOptional && 'may-stay-empty',
    kind === 'text' && 'of-words',
  ]
    .filter(Boolean)
    .join(' ');

/** A field as a tile: its name, what stands in it, and whether the keys type into it. */
function tile(field: CardField, reading: CardReading, scene: Scene): VNode {
  const { state, send } = scene;
  const { vat } = wordsFor(state);
  const label = vat.fields[field.key] ?? field.key;
  const { units } = state.settings;
  const text = textOf(state.vat, field, units);
  const unit = unitOf(field, state);
  const id = `field-${field.key}`;
  const isBad = reading.faults.has(field.key);
  return h(
    'div',
    {
      class: tileClasses(field, state.vat.field === field.key, isBad),
      key: field.key,
    },
    h(
      'label',
      { for: id },
      label,
      unit !== '' && unit !== label && h('span', { class: 'unit' }, ` ${unit}`),
      field.isOptional && text === '' && h('span', { class: 'unseen' }, ` ${vat.optional}`),
    ),
    h('input', {
      id,
      type: 'text',
      // The pane's own keys type numbers; the screen keyboard would cover the answer.
      inputmode: field.kind === 'text' ? undefined : 'none',
      autocomplete: 'off',
      value: field.kind === 'text' ? text : typedShown(text),
      list: field.from && state.today.book ? `${id}-names` : undefined,
      'aria-invalid': isBad ? 'true' : undefined,
      on: {
        focus: () => {
          if (state.vat.field !== field.key) send(chooseField, field.key);
        },
        input: (event) => {
          send(typeField, { field: field.key, text: inputOf(event) });
        },
      },
    }),
    field.from && namesList(`${id}-names`, field.from, scene),
  );
}

/** Orders still open, or the females of batches to come: names need not be typed. */
function namesList(id: string, from: NonNullable<CardField['from']>, { state }: Scene): Child {
  const { book } = state.today;
  if (!book) return undefined;
  const names =
    from === 'orders'
      ? book.orders.filter((order) => !order.isCancelled && order.delivered < order.number).map(calledOf)
      : book.females;
  return h(
    'datalist',
    { id },
    names.map((value) => h('option', { value })),
  );
}

const cardHead = (card: CardId, scene: Scene): VNode => {
  const { vat } = wordsFor(scene.state);
  return h(
    'div',
    { class: 'card-head' },
    button(
      '‹',
      () => {
        scene.send(closeCard);
      },
      { id: 'card-back', tone: 'quiet', says: vat.back },
    ),
    h(
      'h2',
      { id: 'card-title', tabindex: '-1' },
      vat.cards[card],
      h('span', { class: 'card-vat' }, ` · ${vat.of(scene.state.vat.vat)}`),
    ),
    headClock(scene),
  );
};

const markCard = (scene: Scene): Child => {
  const { state, send } = scene;
  const { vat } = wordsFor(state);
  return [
    h(
      'div',
      { id: 'card-answer', class: 'card-answer plain', role: 'status' },
      h('p', { class: 'big' }, timeText(state.now)),
    ),
    h(
      'div',
      { class: 'card-grid' },
      Object.entries(vat.marks).map(([what, face]) =>
        h(
          'button',
          {
            type: 'button',
            id: `mark-${what}`,
            class: 'card-face',
            on: {
              click: () => {
                send(markHour, what);
              },
            },
          },
          face,
        ),
      ),
    ),
  ];
};

/** More fields than stand in one row are laid out in fours; seven begin with a wide one. */
const tilesClass = (n: number): string =>
  ['tiles', n > 4 && 'many', n === 7 && 'odd'].filter(Boolean).join(' ');

const batchHere = ({ state }: Scene): string | undefined =>
  standingIn(state.today.book, state.vat.vat, state.now)?.batch;
/** What was weighed so far against the plan, below the keys. */
const growthHere = (scene: Scene): Child => {
  const batch = batchHere(scene);
  return batch !== undefined && growthPicture(growthOf(scene.state, batch), pictureWords(scene.state));
};

export function cardView(card: CardId, scene: Scene): readonly Child[] {
  const { state } = scene;
  if (card === 'mark') return [cardHead(card, scene), markCard(scene)];
  if (!isPadCard(card)) return [];
  const words = wordsFor(state);
  const reading = readCard(state.vat, words, state.settings.units);
  const isWhole = reading.missing.length === 0 && reading.faults.size === 0;
  const planned = plannedAt(state.today.book, batchHere(scene), state.now);
  const fish = fishHere(state);
  const answer = isWhole
    ? CARDS[card].answer(reading.values, {
        ...contextOf(state.vat, state.now, words, state.settings.units),
        ...(planned === undefined ? {} : { planned }),
        ...(fish ? { fish } : {}),
      })
    : undefined;
  const last = state.vat.lines.filter((line) => line.vat === state.vat.vat).at(-1);
  return [
    cardHead(card, scene),
    answerView(
      answer,
      reading,
      words,
      last && h('ul', { class: 'lines', 'aria-label': words.vat.last }, lineView(last, scene, true)),
      CARDS[card].oneOf,
    ),
    h(
      'div',
      { class: tilesClass(fieldsOf(state.vat).length) },
      fieldsOf(state.vat).map((field) => tile(field, reading, scene)),
    ),
    padView(scene, reading.missing.length > 0),
    card === 'grow' && growthHere(scene),
  ];
}
