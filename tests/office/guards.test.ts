import { colourByRule, guardInputs } from '../../taskpane/host/writing/styling';
import type { SheetModel } from '../../shared/sheet/workbook/model';
import { STYLES } from '../../shared/sheet/workbook/styles';

/** What is asked of Excel for each kind of rule on cells that are typed into. */
interface Asked {
  rule?: unknown;
  ignoreBlanks?: boolean;
  errorAlert?: { readonly message: string };
  prompt?: unknown;
}
function guarded(sheet: Partial<SheetModel>): Record<string, Asked> {
  const asked: Record<string, Asked> = {};
  const worksheet = { getRange: (at: string) => ({ dataValidation: (asked[at] ??= {}) }) };
  guardInputs(worksheet as never, { cells: {}, ...sheet } as SheetModel);
  return asked;
}
const message = 'Mend it.';
const [min, max] = [1, 9];

test.each([
  [{ kind: 'list', items: ['a', 'b'] }, { list: { inCellDropDown: true, source: 'a,b' } }],
  [{ kind: 'whole', min, max }, { wholeNumber: { formula1: 1, formula2: 9, operator: 'Between' } }],
  [{ kind: 'decimal', min, max }, { decimal: { formula1: 1, formula2: 9, operator: 'Between' } }],
  [{ kind: 'date', min, max }, { date: { formula1: '=1', formula2: '=9', operator: 'Between' } }],
] as const)('%j', (validation, rule) => {
  expect(guarded({ validations: [{ range: 'B2:B4', message, ...validation }] })).toEqual({
    'B2:B4': {
      rule,
      ignoreBlanks: true,
      errorAlert: { showAlert: true, style: 'Stop', title: 'Please check', message },
    },
  });
});
test('sentences are cut at what Excel takes', () => {
  const long = 'x'.repeat(300);
  const asked = guarded({
    validations: [{ range: 'A1', kind: 'whole', min, max, message: long }],
    cells: { A1: { note: long } },
  });
  expect(asked['A1']?.errorAlert?.message).toHaveLength(255);
  expect(asked['A1']?.prompt).toMatchObject({ message: 'x'.repeat(255) });
});
test('a note keeps the rule of its cell, and gets one that allows everything where there is none', () => {
  const asked = guarded({
    validations: [{ range: 'B2:C3', kind: 'whole', min, max, message }],
    cells: { C3: { note: 'inside' }, C4: { note: 'outside' }, C5: { value: 1 } },
  });
  expect(asked['C3']).toEqual({ prompt: { showPrompt: true, title: '', message: 'inside' } });
  expect(asked['C4']?.rule).toEqual({ custom: { formula: '=TRUE' } });
  expect(asked['C5']).toBeUndefined();
});
test('a colour by a rule has its ink, and its ground where it has one', () => {
  for (const style of ['warning', 'quiet'] as const)
    for (const formula of ['=$A1>2', '$A1>2']) {
      const custom = { rule: { formula: '' }, format: { font: { color: '' }, fill: { color: '' } } };
      const worksheet = { getRange: () => ({ conditionalFormats: { add: () => ({ custom }) } }) };
      colourByRule(worksheet as never, { range: 'A1:A9', formula, style });
      expect(custom.rule.formula).toBe('=$A1>2');
      expect(custom.format.font.color).toBe(`#${STYLES[style].ink}`);
      expect(custom.format.fill.color).toBe(STYLES[style].fill ? `#${STYLES[style].fill}` : '');
    }
});
