import type { Props } from '../../taskpane/pane/frame/draw';
import { h, patch } from '../../taskpane/pane/frame/draw';

let root: HTMLElement;
beforeEach(() => {
  root = document.createElement('div');
  document.body.replaceChildren(root);
});

test('an element that stays keeps its identity, focus and caret', () => {
  const view = (label: string): ReturnType<typeof h> =>
    h('div', {}, h('p', {}, label), h('input', { id: 'f', value: 'abc' }));
  patch(root, [view('one')]);
  const input = document.getElementById('f') as HTMLInputElement;
  input.focus();
  input.setSelectionRange(1, 1);
  patch(root, [view('two')]);
  expect(document.getElementById('f')).toBe(input);
  expect(document.activeElement).toBe(input);
  expect(input.selectionStart).toBe(1);
  expect(root.textContent).toBe('two');
});

test('children with keys follow when one is taken out in front of them', () => {
  const list = (keys: readonly string[]): ReturnType<typeof h> =>
    h(
      'ul',
      {},
      keys.map((key) => h('li', { key }, key)),
    );
  patch(root, [list(['a', 'b', 'c'])]);
  const c = root.querySelectorAll('li')[2];
  patch(root, [list(['c', 'a'])]);
  expect([...root.querySelectorAll('li')].map((li) => li.textContent)).toEqual(['c', 'a']);
  expect(root.querySelectorAll('li')[0]).toBe(c);
});

test('redrawing never piles listeners up, and a handler that is gone stays silent', () => {
  const calls: string[] = [];
  const view = (name?: string): ReturnType<typeof h> =>
    h(
      'button',
      name
        ? {
            on: {
              click: () => {
                calls.push(name);
              },
            },
          }
        : {},
    );
  patch(root, [view('first')]);
  patch(root, [view('second')]);
  root.querySelector('button')?.click();
  patch(root, [view()]);
  root.querySelector('button')?.click();
  patch(root, [view('third')]);
  root.querySelector('button')?.click();
  expect(calls).toEqual(['second', 'third']);
});

test('attributes that are no longer given go away; truths become bare attributes', () => {
  patch(root, [h('p', { 'aria-busy': 'true', hidden: true, title: 'x' })]);
  expect(root.querySelector('p')?.getAttribute('hidden')).toBe('');
  patch(root, [h('p', { title: undefined })]);
  const left = root.querySelector('p');
  expect([left?.hasAttribute('hidden'), left?.hasAttribute('aria-busy'), left?.title]).toEqual([
    false,
    false,
    '',
  ]);
});

test('what a user folds open stays open, unless the view says otherwise', () => {
  const view = (more: Props = {}): ReturnType<typeof h> =>
    h('details', more, h('summary', {}, 'More'), h('p', {}, 'inside'));
  patch(root, [view()]);
  root.querySelector('details')?.setAttribute('open', '');
  patch(root, [view({ class: 'x' })]);
  expect(root.querySelector('details')?.hasAttribute('open')).toBe(true);
  patch(root, [view({ open: false })]);
  expect(root.querySelector('details')?.hasAttribute('open')).toBe(false);
});

test('text is always text', () => {
  patch(root, [h('p', {}, '<img src=x onerror=alert(1)>')]);
  expect(root.querySelector('img')).toBeNull();
  expect(root.textContent).toBe('<img src=x onerror=alert(1)>');
});

test('a select shows the option its value names, also when the options are new', () => {
  const view = (value: string, options: readonly string[]): ReturnType<typeof h> =>
    h(
      'select',
      { value },
      options.map((o) => h('option', { value: o }, o)),
    );
  patch(root, [view('b', ['a', 'b'])]);
  expect(root.querySelector('select')?.value).toBe('b');
  patch(root, [view('d', ['c', 'd'])]);
  expect(root.querySelector('select')?.value).toBe('d');
});

test('drawings get the namespace that makes them visible', () => {
  patch(root, [h('svg', { viewBox: '0 0 1 1' }, h('rect', { width: 1 }))]);
  expect(root.querySelector('rect')?.namespaceURI).toBe('http://www.w3.org/2000/svg');
});
