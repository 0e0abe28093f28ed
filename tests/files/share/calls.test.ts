import { argumentsAfter } from '../../../shared/files/share/references/calls';
import { LastValues, nativeForm } from '../../../shared/files/share/decisions/alive';
import { NameTable } from '../../../shared/files/share/references/names';
import { findFunction } from '../../../shared/catalogue';

/** Arguments of a call as Excel parts them: brackets, braces, texts, sheet names and table columns keep their commas. */
test.each<readonly [string, readonly string[], number]>([
  ['F(A1,B2)', ['A1', 'B2'], 8],
  ['F(A1, B2 ,3)+1', ['A1', ' B2 ', '3'], 12],
  ['F()', [], 3],
  ['F( )', [], 4],
  ['F(,)', ['', ''], 4],
  ['F(G(1,2),3)', ['G(1,2)', '3'], 11],
  ['F({1,2;3,4},5)', ['{1,2;3,4}', '5'], 14],
  ['F("a,b)",1)', ['"a,b)"', '1'], 11],
  ["F('My, sheet'!A1,2)", ["'My, sheet'!A1", '2'], 19],
  ['F(T[[#All],[a,b]],2)', ['T[[#All],[a,b]]', '2'], 20],
])('%s', (text, args, end) => {
  expect(argumentsAfter(text, 0)).toEqual({ args, end });
});
test.each(['F', 'F(A1', 'F(A1,(2)'])('%s is no whole call', (text) => {
  expect(argumentsAfter(text, 0)).toBeUndefined();
});
test('the call behind a place in the text', () => {
  expect(argumentsAfter('F(1)+G(2,3)', 4)).toEqual({ args: ['2', '3'], end: 11 });
});

test.each<readonly [string, string]>([
  ['SPAWN.FEED.DAILY(B2,C2,D2)', 'B2*C2*D2'],
  ['1+SPAWN.FEED.DAILY(B2,C2+1,D2)', '1+(B2*(C2+1)*D2)'],
  ['A1+1', 'A1+1'],
])('%s is left behind as %s', (text, native) => {
  expect(nativeForm(text, findFunction)).toBe(native);
});

test('last values are found where they were set', () => {
  const values = new LastValues({ sheets: [] }, new NameTable({ names: [], sheets: [] }), [], findFunction);
  values.set(0, 0, 0, { type: 'n', raw: '5' });
  values.set(0, 1, 2, { type: 'str', raw: 'fry' });
  values.set(0, 2, 16_383, { type: 'b', raw: '1' });
  values.set(1, 0, 1, { type: 'e', raw: '#N/A' });
  const at = (text: string, sheet = 0): unknown => values.resolver(sheet, 0).reference?.(text);
  expect(['A1', 'C2', 'XFD3', 'B1'].map((text) => at(text))).toEqual([5, 'fry', true, null]);
  expect(at('B1', 1)).toEqual({ error: '#N/A' });
  expect(at('A1:C2')).toEqual([
    [5, null, null],
    [null, null, 'fry'],
  ]);
});
