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

/** A hundredth for each percent: the value of a cell that shows 12.5 % is 0.125. */
test.each([
  ['0.125', '12.5%', true],
  ['0.125', '12,5%', true],
  ['12.5', '12.5%', true],
  ['0.125', '125%', false],
  ['12.5', '1250%', true],
])('%s left out is found in “%s”: %s', (raw, text, is) => {
  const left = new LeftValues();
  left.add({ type: 'n', raw });
  expect(left.in(text)).toBe(is);
});
