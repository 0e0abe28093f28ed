import { ratio, text } from '../../../units/quantities';
import { defineFunction, value } from '../../../functions/define';
import { BLANK_CHECK } from '../../../functions/blankCheck';
import { flag, num } from '../../../functions/params';

export const blankCheck = defineFunction({
  id: BLANK_CHECK,
  family: 'Checks',
  summary: 'Tells whether this spreadsheet program hands a blank cell to functions as blank or as 0.',
  params: {
    cell: num(ratio, { optional: true, doc: 'Any blank cell.' }),
    isBlank: flag(true, 'Put ISBLANK of the same cell here: only then can a 0 that was typed be told apart.'),
  },
  returns: value(text, 'kept, zero, or filled when the cell is not blank.'),
  valid: 'The program it is asked in; older desktop builds of Excel differ from newer ones and from the web',
  sources: ['DEFINITION'],
  questions: [
    'is a blank cell the same as zero',
    'blank cell counted as 0',
    'empty cell read as zero',
    'does this excel hand over blanks as 0',
  ],
  help:
    'zero: blank cells of your own formulas arrive as 0. Write IF(B2="","",B2) in place of B2 where the cell ' +
    'may stay blank; the workbooks made here do so everywhere. kept: nothing to do.',
  examples: [
    { args: [null, true], gives: 'kept', because: 'The blank cell arrived as a blank.' },
    { args: [0, true], gives: 'zero', because: 'ISBLANK says blank, and a 0 arrived.' },
    { args: [0, false], gives: 'filled', because: 'A 0 was typed.' },
    {
      args: ['soon', false],
      fails: { code: '#VALUE!', says: 'got the text "soon"' },
      because: 'A text is no blank cell.',
    },
  ],
  compute: ({ cell, isBlank }) => (!isBlank ? 'filled' : cell === undefined ? 'kept' : 'zero'),
});
