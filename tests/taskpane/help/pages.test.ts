import { CATALOGUE } from '../../../shared/catalogue';
import { SOURCES } from '../../../shared/families/sources';
import { html } from '../../../taskpane/help/html';
import { helpTexts } from '../../../src/build/derivedAssets';
import { helpPages } from '../../../taskpane/help/pages';

const texts = helpTexts();
const pages = helpPages(CATALOGUE, SOURCES, texts);
const documentOf = (text: string): Document => new DOMParser().parseFromString(text, 'text/html');
const documents = new Map(pages.map(({ name, text }) => [name, documentOf(text)]));

test('an index and one page for every function', () => {
  expect(pages.map(({ name }) => name)).toEqual(
    expect.arrayContaining(['index.html', ...CATALOGUE.map(({ id }) => `${id}.html`)]),
  );
  // Beside functions and guides: the index, how far to trust the numbers, one run beside print, what changed.
  expect(pages).toHaveLength(CATALOGUE.length + texts.guides.length + 4);
});

test('every link leads to a page and a place that are there', () => {
  for (const [name, page] of documents)
    for (const link of page.querySelectorAll('a')) {
      const [file = '', place] = (link.getAttribute('href') ?? '').split('#');
      const target = file === '' ? page : documents.get(file);
      expect([name, file, target !== undefined]).toEqual([name, file, true]);
      if (place) expect([name, place, target?.getElementById(place) !== null]).toEqual([name, place, true]);
    }
});

test('every function is reached from a step of the job, once', () => {
  const index = documents.get('index.html');
  const linked = [...(index?.querySelectorAll('table a') ?? [])].map((link) => link.textContent);
  expect([...linked].sort()).toEqual(CATALOGUE.map(({ name }) => name).sort());
});

test.each(CATALOGUE.map((fn) => [fn.id, fn] as const))(
  '%s: arguments, sources, cautions, examples',
  (id, fn) => {
    const page = documents.get(`${id}.html`);
    const text = page?.body.textContent ?? '';
    expect(page?.querySelectorAll('h1')).toHaveLength(1);
    expect([...(page?.querySelectorAll('tbody th code') ?? [])].map((code) => code.textContent)).toEqual(
      fn.params.map(({ name }) => name),
    );
    expect(page?.querySelectorAll('.examples > li')).toHaveLength(fn.examples.length);
    for (const key of fn.sources) expect(text).toContain(SOURCES[key]?.citation.slice(0, 40));
    expect(page?.querySelectorAll('.caution p')).toHaveLength(fn.cautions.length);
    // Words of the program, not of the trade.
    expect(text).not.toMatch(/undefined|NaN|\[object/);
  },
);

test('what a record says is shown, never run', () => {
  expect(html`<p>${'<b>&"'}</p>`.html).toBe('<p>&lt;b&gt;&amp;&quot;</p>');
});
