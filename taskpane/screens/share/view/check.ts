import { checkCopy, chooseCopy, typeDigest } from '../commands/check';
import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { CheckState } from '../state/share';
import { digestText } from '../state/share';
import type { Scene } from '../../../pane/frame/parts';
import { banner, button, hint, inputOf, section } from '../../../pane/frame/parts';
import { filePicker, lines } from './pieces';

/** Does a copy still hold the numbers it was made with? Says what the answer proves and what it does not. */

function resultView({ result, file }: CheckState): Child {
  if (!result) return undefined;
  if (result.kind !== 'checked')
    return banner(result.kind === 'refused' ? 'bad' : 'warning', h('p', {}, result.sentence));
  const { matches, workbook, date, sentences, digest } = result;
  const [first = '', ...rest] = sentences;
  return [
    banner(
      matches ? 'good' : 'bad',
      h('p', {}, h('strong', {}, matches ? 'It matches its page. ' : 'It does not match its page. '), first),
      h('p', {}, `${file?.name ?? ''}: copy of ${workbook}, made on ${date}.`),
    ),
    lines(rest),
    h('p', {}, 'Digest of everything on its page:'),
    h('p', { class: 'digest', tabindex: '0', 'aria-label': 'Digest of everything' }, digestText(digest)),
  ];
}

export function checkView({ state, send }: Scene): VNode {
  const { check } = state.share;
  const isOff = state.task !== undefined;
  return section(
    'Verify a copy',
    h(
      'p',
      {},
      'Somebody hands you a copy, or one comes back: see whether its numbers are those it was made with.',
    ),
    h(
      'form',
      {
        novalidate: true,
        on: {
          submit: (event) => {
            event.preventDefault();
            if (!isOff) send(checkCopy);
          },
        },
      },
      h(
        'div',
        { class: 'actions' },
        filePicker(
          {
            id: 'share-check-file',
            face: check.file ? 'Choose another copy' : 'Choose a copy',
            label: 'Copy to verify',
            isOff,
          },
          (chosen) => {
            send(chooseCopy, chosen);
          },
        ),
        check.file && h('p', { class: 'file-name' }, h('strong', {}, check.file.name)),
      ),
      h(
        'div',
        { class: check.fault === undefined ? 'field' : 'field has-fault' },
        h(
          'label',
          { for: 'share-digest' },
          'Digest you kept',
          h('span', { class: 'optional' }, ' – may stay empty'),
        ),
        h('input', {
          id: 'share-digest',
          type: 'text',
          autocomplete: 'off',
          spellcheck: 'false',
          value: check.digest,
          'aria-invalid': check.fault === undefined ? undefined : 'true',
          'aria-describedby':
            check.fault === undefined ? 'share-digest-hint' : 'share-digest-fault share-digest-hint',
          on: {
            input: (event) => {
              send(typeDigest, inputOf(event));
            },
          },
        }),
        check.fault !== undefined &&
          h(
            'p',
            { id: 'share-digest-fault', class: 'fault' },
            h('span', { class: 'mark', 'aria-hidden': 'true' }, '✕'),
            check.fault,
          ),
        hint(
          'share-digest-hint',
          'With it, even a page made anew on purpose is found out. Spaces do not matter.',
        ),
      ),
      h(
        'div',
        { class: 'actions' },
        button(
          checkCopy.label,
          () => {
            send(checkCopy);
          },
          { id: 'share-check', isOff },
        ),
      ),
    ),
    h(
      'div',
      { id: 'share-checked', class: 'stack', tabindex: '-1', 'aria-live': 'polite' },
      resultView(check),
    ),
  );
}
