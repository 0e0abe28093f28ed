import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { patched } from '../../../src/build/sheet/patches';
import type { startSheet as StartSheet } from './support/engine';

/**
 * A list that a formula made is compared as it is, in the engine as it is bundled: not looked up among cells that
 * happen to stand where the formula does.
 */

jest.setTimeout(120_000);
const ENGINE = '@univerjs/engine-formula';
const NAMED_AS = `${ENGINE}/lib/es/index.js`;
const fileOf = createRequire(__filename).resolve(ENGINE);

jest.doMock(ENGINE, () => {
  const text = patched(NAMED_AS, readFileSync(fileOf, 'utf8'));
  const module = { exports: {} };

  new Function('require', 'exports', 'module', text)(require, module.exports, module);
  return module.exports;
});

const CELLS: Readonly<Record<string, string | number>> = {
  A1: 'B1',
  A2: 'B2',
  A3: 'B3',
  C1: 'B1',
  C2: 'B1',
  C3: 'B2',
  C4: 'B7',
  H1: 3,
  H2: 4,
  H3: 5,
  H4: 6,
};
/** By hand, as a person types them into cells under one another. */
const FORMULAS = {
  F1: ['=SUMPRODUCT((COUNTIFS(A1:A3,C1:C4)=0)*1)', 1],
  F2: ['=SUMPRODUCT((COUNTIFS(C1:C4,A1:A3)=0)*1)', 1],
  F3: ['=SUMPRODUCT((COUNTIFS(C1:C4,A1:A3)=2)*1)', 1],
  F4: ['=SUMPRODUCT((SUMIFS(H1:H4,C1:C4,A1:A3)>4.5)*1)', 2],
  F5: ['=SUMPRODUCT((H1:H4*2=8)*1)', 1],
  F6: ['=SUMPRODUCT((H1:H4=8)*1)', 0],
  F7: ['=SUMPRODUCT((H1:H4=4)*1)', 1],
  F8: ['=SUMPRODUCT((A1:C4="B1")*1)', 3],
  F9: ['=SUMPRODUCT((A1:C4&"x"="B1x")*1)', 3],
  F10: ['=SUMPRODUCT((A1:C4="B2")*1)', 2],
} as const;

test('comparisons of lists are right when all formulas are worked out at once', async () => {
  const { startSheet } = (await import('./support/engine')) as { startSheet: typeof StartSheet };
  const sheet = startSheet();
  for (const [at, content] of Object.entries(CELLS)) await sheet.set(at, content);
  await sheet.setAll(Object.fromEntries(Object.entries(FORMULAS).map(([at, [text]]) => [at, text])));
  const got = Object.entries(FORMULAS).map(([at, [text]]) => [text, sheet.get(at)]);
  expect(got).toEqual(Object.values(FORMULAS).map(([text, wanted]) => [text, wanted]));
  sheet.close();
});
