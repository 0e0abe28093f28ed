import { faultOf } from '../../shared/dosing/ask';
import { DOSING_FIELDS, dosingField, paramOf } from '../../shared/dosing/fields';
import { gramsText } from '../../shared/dosing/say';

describe('the questions', () => {
  test('every one fills an argument of the catalogue, and every choice is one that argument takes', () => {
    for (const field of DOSING_FIELDS) {
      const param = paramOf(field.fills);
      expect([field.key, param?.name]).toEqual([field.key, field.fills[1]]);
      if (param?.kind !== 'choice') continue;
      for (const [value] of field.choices ?? []) expect(param.choices).toContain(value);
    }
  });

  test('faults are sentences of the argument under the name of the question', () => {
    expect(faultOf(dosingField('volume'), null)).toMatch(/^Water in the vat: a number is needed/);
    expect(faultOf(dosingField('volume'), -5)).toMatch(/^Water in the vat: expected a number above 0/);
    expect(faultOf(dosingField('temperature'), 82)).toMatch(/^Water temperature: .*°F/);
    expect(faultOf(dosingField('stocked'), null)).toMatch(/choose one/);
    expect(faultOf(dosingField('spoon'), null)).toBeUndefined();
  });
});

test('grams are printed as a scale shows them', () => {
  expect([0, 0.238, 1.19, 22, 40.73, 115.8].map(gramsText)).toEqual([
    '0',
    '0.24',
    '1.2',
    '22',
    '40.7',
    '116',
  ]);
});
