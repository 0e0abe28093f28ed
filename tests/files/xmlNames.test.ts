import { strToU8 } from 'fflate';
import { nameEnd } from '../../shared/files/package/xml';

/** Names end as XML 1.0 (fifth edition, productions 40 and 44) lets a tag go on: at a blank, a slash or its end. */
test.each([
  ['row>', 3],
  ['row/>', 3],
  ['row r="1">', 3],
  ['x:row\n>', 5],
  // Bytes that stop in the middle of a name.
  ['row', 3],
  ['', 0],
])('the name of <%s has %s signs', (tag, signs) => {
  expect(nameEnd(strToU8(tag), 0)).toBe(signs);
});
