import type { Child, VNode } from './draw';
import { h } from './draw';
import type { Send } from '../command';
import { stopTask } from './navigate';
import type { PaneState } from '../keeping/state';

/** What every view gets. */
export interface Scene {
  readonly state: PaneState;
  readonly send: Send;
}

interface ButtonOptions {
  readonly id?: string;
  readonly tone?: 'main' | 'plain' | 'quiet';
  readonly isOff?: boolean;
  /** Spoken name where the face alone does not say which. */
  readonly says?: string;
}

/** A button that stays reachable by keyboard while it is off, so that a screen reader can say so. */
export const button = (
  face: Child,
  act: () => void,
  { id, tone = 'plain', isOff = false, says }: ButtonOptions = {},
): VNode =>
  h(
    'button',
    {
      type: 'button',
      id,
      class: `button ${tone}`,
      'aria-disabled': isOff ? 'true' : undefined,
      'aria-label': says,
      on: {
        click: () => {
          if (!isOff) act();
        },
      },
    },
    face,
  );

export const hint = (id: string, text: string): VNode => h('p', { id, class: 'hint' }, text);

/** The mark in front says the same as the colour. */
const MARKS = { good: '✓', warning: '!', bad: '✕' } as const;
export const banner = (tone: keyof typeof MARKS, ...content: Child[]): VNode =>
  h(
    'div',
    { class: `banner ${tone}` },
    h('span', { class: 'mark', 'aria-hidden': 'true' }, MARKS[tone]),
    h('div', { class: 'banner-text' }, ...content),
  );

export const section = (title: string, ...content: Child[]): VNode =>
  h('section', { class: 'block' }, h('h3', {}, title), ...content);

export const facts = (rows: readonly (readonly [string, Child])[]): VNode =>
  h(
    'dl',
    { class: 'facts' },
    rows.map(([term, value]) => h('div', { class: 'fact' }, h('dt', {}, term), h('dd', {}, value))),
  );

export const inputOf = (event: Event): string => {
  const { target } = event;
  return target instanceof HTMLInputElement ||
    target instanceof HTMLSelectElement ||
    target instanceof HTMLTextAreaElement
    ? target.value
    : '';
};

export const progress = ({ state, send }: Scene): VNode | undefined =>
  state.task &&
  h(
    'div',
    { class: 'progress' },
    h('progress', { max: state.task.total, value: state.task.done, 'aria-label': state.task.label }),
    h(
      'div',
      { class: 'progress-line' },
      h('span', {}, state.task.isStopping ? 'Stopping…' : `${state.task.label}…`),
      state.task.canStop &&
        button(
          stopTask.label,
          () => {
            send(stopTask);
          },
          { id: 'task-stop', isOff: state.task.isStopping === true },
        ),
    ),
  );
