import { LeftValues } from '../../../shared/files/share/leaveOut/values';

/** A typed title goes only when it says exactly what stood in a cell left out. */
const values = new LeftValues();
values.add({ type: 'n', raw: '4817.25' });
values.add({ type: 'str', raw: 'Hill ponds' });
values.add({ type: 'n', raw: '12' });

test.each([
  ['4817.25', true],
  ['4,817.25', true],
  ['4 817,25', true],
  [' hill Ponds ', true],
  ['4817.26', false],
  ['Price 4817.25', false],
  ['Hill ponds, May', false],
  ['Hill', false],
  // Too short to tell from chance.
  ['12', false],
  ['', false],
])('“%s” alone is such a value: %s', (text, is) => {
  expect(values.isWhole(text)).toBe(is);
});
