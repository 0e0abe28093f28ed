import { ruleReads } from '../../../shared/files/share/leaveOut/reads';
import { lex } from '../../../shared/files/share/references/lex';
import { NameTable } from '../../../shared/files/share/references/names';
import { ReferenceFinder } from '../../../shared/files/share/references/references';
import type { Area } from '../../../shared/sheet/formula/address';
import { parseArea } from '../../../shared/sheet/formula/address';

/** A rule is written for the first of its cells; in the others its references have moved as in a filled formula. */
const finder = new ReferenceFinder(new NameTable({ names: [], sheets: [] }), []);
const area = (text: string): Area => parseArea(text) ?? { top: -1, left: -1, bottom: -1, right: -1 };
const reads = (rule: string, ...cells: readonly string[]) =>
  ruleReads(finder, rule, lex(rule), 0, cells.map(area)).map((one) => one.area);

test.each([
  ['B2>5', ['C2:C9'], ['B2', 'B2:B9']],
  ['B$2>5', ['C2:C9'], ['B2', 'B2']],
  ['SUM(A2:B2)>5', ['C2:D9'], ['A2:B2', 'A2:C9']],
  ['B2>5', ['C2:C3', 'E7'], ['B2', 'B2:B3', 'D7']],
  ['B2>5', [], ['B2']],
])('%s over %s reads %s', (rule, cells, read) => {
  expect(reads(rule, ...cells)).toEqual(read.map(area));
});
