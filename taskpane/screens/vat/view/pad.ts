import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import { shownDecimalMark } from '../../../pane/values/show';
import type { Scene } from '../../../pane/frame/parts';
import { wordsFor } from '../../../words/words';
import { nextField, pressKey, writeCard } from '../commands/vat';

/** Number keys for wet fingers: each at least 56 by 56. */
const ROWS = [
  [['7', '8', '9'], 'erase'],
  [['4', '5', '6'], 'next'],
  [['1', '2', '3'], 'point'],
] as const;

interface Key {
  readonly face: Child;
  readonly says?: string;
  readonly id: string;
  readonly act: () => void;
  readonly tone?: string;
}
const key = ({ face, says, id, act, tone = '' }: Key): VNode =>
  h('button', { type: 'button', id, class: `padkey ${tone}`, 'aria-label': says, on: { click: act } }, face);

/** What the keys do; the cards' own fields when nothing else is said. */
export interface PadActs {
  readonly press: (key: string) => void;
  readonly next: () => void;
  readonly write: () => void;
}
const cardActs = ({ send }: Scene): PadActs => ({
  press: (key) => {
    send(pressKey, key);
  },
  next: () => {
    send(nextField);
  },
  write: () => {
    send(writeCard);
  },
});

export function padView(scene: Scene, hasMore: boolean, acts: PadActs = cardActs(scene)): VNode {
  const { vat } = wordsFor(scene.state);
  const press = (what: string) => (): void => {
    acts.press(what);
  };
  return h(
    'div',
    { class: 'pad', role: 'group', 'aria-label': vat.pad },
    ROWS.map(([digits, last]) => [
      digits.map((face) => key({ face, id: `key-${face}`, act: press(face) })),
      last === 'erase'
        ? key({ face: '⌫', says: vat.erase, id: 'key-erase', act: press('erase') })
        : last === 'next'
          ? key({
              face: '→',
              says: vat.next,
              id: 'key-next',
              tone: hasMore ? 'go' : '',
              act: acts.next,
            })
          : key({ face: shownDecimalMark(), says: vat.point, id: 'key-point', act: press('.') }),
    ]),
    key({ face: '0', id: 'key-0', act: press('0') }),
    key({
      face: vat.write,
      id: 'key-write',
      tone: 'main',
      act: acts.write,
    }),
  );
}
