import { bytesOfFile } from '../../../host/files';
import type { Chosen } from '../commands/share';
import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import { button } from '../../../pane/frame/parts';

/** More than this makes no list a person reads; the rest is counted. */
const LISTED = 30;

export const counted = (n: number, one: string, many = `${one}s`): string =>
  n === 1 ? `1 ${one}` : `${n} ${many}`;

export const lines = (sentences: readonly Child[], empty?: string): Child =>
  sentences.length === 0
    ? empty !== undefined && h('p', { class: 'hint' }, empty)
    : h(
        'ul',
        { class: 'said' },
        sentences.slice(0, LISTED).map((one) => h('li', {}, one)),
        sentences.length > LISTED && h('li', {}, `and ${sentences.length - LISTED} more.`),
      );

interface TickOptions {
  readonly id: string;
  readonly isOn: boolean;
  readonly isOff?: boolean;
  readonly hint?: string;
}
export const tick = (face: Child, act: () => void, { id, isOn, hint }: TickOptions): VNode =>
  h(
    'div',
    { class: 'tick', key: id },
    h('input', {
      type: 'checkbox',
      id,
      checked: isOn,
      'aria-describedby': hint === undefined ? undefined : `${id}-hint`,
      on: { change: act },
    }),
    h(
      'div',
      { class: 'tick-text' },
      h('label', { for: id }, face),
      hint !== undefined && h('p', { id: `${id}-hint`, class: 'hint' }, hint),
    ),
  );

const chosenIn = (event: Event): Chosen | undefined => {
  const input = event.target;
  const file = input instanceof HTMLInputElement ? input.files?.[0] : undefined;
  return file && { name: file.name, size: file.size, read: () => bytesOfFile(file) };
};

interface PickerOptions {
  readonly id: string;
  readonly face: string;
  readonly label: string;
  readonly tone?: 'main' | 'plain';
  readonly isOff: boolean;
  readonly accept?: string;
}
/**
 * A button that opens the system's own dialog; the field behind it is not reached by keyboard a second time.
 */
export const filePicker = (
  { id, face, label, tone = 'plain', isOff, accept = '.xlsx' }: PickerOptions,
  take: (chosen: Chosen) => void,
): VNode =>
  h(
    'div',
    { class: 'picker' },
    button(
      face,
      () => {
        document.getElementById(`${id}-field`)?.click();
      },
      { id, tone, isOff },
    ),
    h('label', { for: `${id}-field`, class: 'unseen' }, label),
    h('input', {
      type: 'file',
      id: `${id}-field`,
      class: 'unseen',
      tabindex: '-1',
      accept,
      on: {
        change: (event) => {
          const chosen = chosenIn(event);
          if (chosen) take(chosen);
          // The same file may be chosen again, after it was saved anew.
          if (event.target instanceof HTMLInputElement) event.target.value = '';
        },
      },
    }),
  );
