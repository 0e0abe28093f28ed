import { fakeWorld } from './fakePort';
import { bookWorld } from './bookWorld';
import type { Page } from './page';
import { EVERY_PLACE, openPage } from './page';
import { changeSetting } from '../../taskpane/screens/settings/commands/settings';
import { writeFileSync } from 'node:fs';

const CARDS: Record<string, string[]> = {
  weigh: ['1', 'point', '4'],
  eggs: ['2', '1', '0', 'next', '1', 'next', '6', '4', '0', 'next', '1', 'next', '7', '0', '0'],
  fry: ['6', '0', '0', 'next', '5', '0', '0', 'next', '2', '0', 'next', '2', '2'],
  grow: ['1', '0', '0', 'next', '1'],
  salt: ['6', '0', '0', 'next', '5', 'next', '3', '0'],
  dead: ['1', '2', '0', 'next', '9', '0', '0', 'next', '3'],
  feed: ['9', '0', '0', '0', 'next', '0', 'point', '0', '2', 'next', '8'],
  water: ['2', '6', 'next', '6', 'point', '4', 'next', '3'],
  look: ['8', '0', 'next', '1', '0', '0'],
  formalin: ['2', '0', 'next', '2', '0', '0', 'next', '1', '5'],
  hand: ['1', '0', '0'],
};
async function texts(language: 'en' | 'fr', withBook: boolean): Promise<Record<string, string[]>> {
  const world = withBook ? bookWorld() : fakeWorld();
  const page: Page = openPage('ready', world, 'settings');
  page.store.send(changeSetting, { language });
  await page.store.idle();
  await import('../../taskpane/words/phrases/fr');
  await new Promise((go) => setTimeout(go, 20));
  const out: Record<string, string[]> = {};
  const look = (name: string): void => {
    out[name] = page.all('*').flatMap((element) =>
      element.closest('[lang=en]') || ['CODE', 'OPTION'].includes(element.tagName)
        ? []
        : [...[...element.childNodes].flatMap((n) => (n.nodeType === 3 ? [n.textContent ?? ''] : [])),
           ...['aria-label', 'placeholder', 'title'].flatMap((n) => element.getAttribute(n) ?? [])]);
  };
  const key = async (...faces: string[]): Promise<void> => {
    for (const face of faces) { const k = page.all(`#key-${face}`)[0]; if (k) k.click(); await page.store.idle(); }
  };
  for (const place of EVERY_PLACE) { await page.go(place); look(place); }
  await page.go('vat');
  const back = async () => { page.all('#card-back')[0]?.click(); await page.store.idle(); };
  await back();
  for (const [card, faces] of Object.entries(CARDS)) {
    page.one(`#card-${card}`).click(); await page.store.idle();
    await key(...faces); look(`${card} filled`);
    await key('write'); look(`${card} noted`);
    await back();
  }
  look('vat lines');
  page.one('#card-dose').click(); await page.store.idle();
  look('dose setup');
  for (const [k, v] of Object.entries({ volume: '600', temperature: '26', spoon: '1' })) await page.type(`#dose-${k}`, v);
  const stocked = page.one('#dose-stocked') as HTMLSelectElement;
  stocked.value = 'no'; stocked.dispatchEvent(new Event('change', { bubbles: true })); await page.store.idle();
  page.one('#dose-ready').click(); await page.store.idle();
  look('dose first');
  await key('5', 'point', '1', 'write'); look('dose one');
  await key('5', 'point', '5', 'next', '5', 'point', '5', 'write'); look('dose two');
  page.all('details').forEach((d) => ((d as HTMLDetailsElement).open = true));
  look('dose details');
  for (const b of page.all('button')) if (/^(Given|Donné)/.test(b.textContent ?? '')) { b.click(); await page.store.idle(); look('dose given'); break; }
  await key('6', 'point', '9', 'next', '6', 'point', '9', 'write'); look('dose done');
  await page.go('plan');
  await page.press(language === 'en' ? 'Fill in an example' : 'Remplir un exemple');
  look('plan example');
  page.one('#mode-season').click(); await page.store.idle();
  await page.press(language === 'en' ? 'Fill in an example' : 'Remplir un exemple');
  await page.press(language === 'en' ? 'Work the plan out' : 'Calculer le plan');
  look('season plan');
  return out;
}
test('x', async () => {
  const lines: string[] = [];
  for (const withBook of [false, true]) {
    let en: Record<string, string[]> = {}, fr: Record<string, string[]> = {};
    try { en = await texts('en', withBook); fr = await texts('fr', withBook); } catch (e) { lines.push('ERROR ' + String((e as Error).stack)); }
    const seen = new Set<string>();
    for (const [name, list] of Object.entries(fr)) {
      const english = new Set(en[name] ?? []);
      for (const t of list) {
        if (!/[a-z]{3}/.test(t) || seen.has(t)) continue;
        const isSame = english.has(t);
        const isEnglish = /(?<!\p{L})(the|of|is|are|and|with|not|your|you|which|from|for|was|were|has|have|this|that|to|by|be|what|when|where|each|every|left|stock|give|bath)(?!\p{L})/iu.test(t);
        const isPoint = /\d\.\d/.test(t);
        if (isSame || isEnglish || isPoint) { seen.add(t); lines.push(`${withBook ? 'B' : '-'} ${name} [${isSame ? 'same ' : ''}${isEnglish ? 'en ' : ''}${isPoint ? 'point' : ''}] ${t}`); }
      }
    }
  }
  writeFileSync('/tmp/fr-same.txt', lines.join('\n'));
});
