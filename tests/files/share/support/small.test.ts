import { freeze, inspect } from '../../../../shared/catalogue/sharing';
import { runInSlices } from '../../../../shared/files/share/run';
import { text } from '../../../../shared/files/share/proof/page';
import { lex } from '../../../../shared/files/share/references/lex';
import { NameTable } from '../../../../shared/files/share/references/names';
import { ReferenceFinder } from '../../../../shared/files/share/references/references';
import { OPTIONS, simpleBook, unzip, worksheet } from './parts';

/** Small parts of the sharing, by hand. */
const sheets = ['Alpha', 'My sheet', 'Gamma'].map((name, index) => ({ name, index }));
const finder = new ReferenceFinder(new NameTable({ names: [], sheets } as never), []);
const sheetsIn = (formula: string): (number | undefined)[] =>
  finder.of(formula, lex(formula), 1, { row: 4, column: 4 }).found.map(({ sheet }) => sheet);

test.each<readonly [string, readonly number[]]>([
  ['A1', [1]],
  ['Alpha!A1', [0]],
  ["'My sheet'!A1", [1]],
  ['alpha!A1+Gamma!B2', [0, 2]],
  ['SUM(Alpha:Gamma!A1)', [0, 1, 2]],
  ["SUM('Alpha:My sheet'!A1)", [0, 1]],
  ["SUM('My sheet:Gamma'!A1)", [1, 2]],
  ['SUM(Gamma:Gamma!A1)', [2]],
  ['SUM(Gamma:Alpha!A1)', []],
  ['SUM(Alpha:Nowhere!A1)', []],
])('%s reads sheets %j', (formula, wanted) => {
  expect(sheetsIn(formula)).toEqual(wanted);
});

const CALL = { f: '_xldudf_SPAWN_AMMONIA_SHARE(8,25)', v: 0.0537 };
test('calls are counted over all sheets', () => {
  const { sheets: seen, calls } = inspect(
    simpleBook({
      sheets: {
        One: worksheet({ A1: CALL, A2: CALL }),
        Two: worksheet({ A1: { v: 1 } }),
        Three: worksheet({ B7: CALL }),
      },
    }),
  );
  expect([seen.map((sheet) => sheet.calls), calls]).toEqual([[2, 0, 1], 3]);
  expect(inspect(simpleBook({ sheets: { One: worksheet({ A1: { v: 1 } }) } })).calls).toBe(0);
});

function shared(
  before: string,
  style: number,
): { readonly book: string; readonly removed: readonly string[] } {
  const file = simpleBook({
    sheets: { One: worksheet({ A1: { v: 7, s: style } as never, B1: CALL }) },
    before,
  });
  const result = freeze(file, { ...OPTIONS, blank: ['One!A1'], personal: true });
  if (result.kind !== 'made') throw new Error(result.sentence);
  return { book: unzip(result.bytes)['xl/workbook.xml'] ?? '', removed: result.report.removed };
}
test('the folder goes with all that was wrapped around it, and with nothing else', () => {
  const path = '<x15ac:absPath xmlns:x15ac="x" url="C:\\Users\\someone\\"/>';
  const bare = shared(path, 0);
  expect(bare.book).not.toContain('absPath');
  expect(bare.removed).toContain('The folder the workbook lay in.');
  const { book } = shared(
    `<workbookPr/><mc:AlternateContent xmlns:mc="m"><mc:Choice Requires="x15">${path}</mc:Choice></mc:AlternateContent>`,
    0,
  );
  expect(book).not.toMatch(/absPath|AlternateContent|Choice/);
  expect(book).toContain('<workbookPr/>');
  expect(shared('<workbookPr/>', 0).removed).not.toContain('The folder the workbook lay in.');
});
test('formats are spoken of only where one was made plain', () => {
  expect(shared('', 0).removed.filter((line) => line.startsWith('Number formats'))).toEqual([]);
});

test('a text longer than a cell may hold is cut at its end', () => {
  const long = (n: number): string => `<${'x'.repeat(n - 2)}>`;
  const raw = (n: number): string => text(long(n)).value?.raw ?? '';
  expect(raw(32_000)).toBe(long(32_000));
  expect(raw(32_001)).toBe(`${long(32_001).slice(0, 32_000)} …`);
});

describe('steps and pauses', () => {
  function* steps(n: number): Generator<number, string> {
    for (let i = 1; i <= n; i++) yield i;
    return 'done';
  }
  const run = async (n: number, stride?: number, cancelAt = Infinity) => {
    const seen: number[] = [];
    let pauses = 0;
    const answer = await runInSlices(steps(n), {
      pause: () => {
        pauses += 1;
        return Promise.resolve();
      },
      onProgress: (step) => seen.push(step),
      isCancelled: () => pauses >= cancelAt,
      ...(stride === undefined ? {} : { stride }),
    });
    return [answer, seen.length, pauses];
  };
  test.each([
    [3, undefined, ['done', 3, 0]],
    [4, undefined, ['done', 4, 1]],
    [8, undefined, ['done', 8, 2]],
    [5, 1, ['done', 5, 5]],
    [5, 2, ['done', 5, 2]],
  ] as const)('%i steps with a pause every %s: %j', async (n, stride, wanted) => {
    expect(await run(n, stride)).toEqual(wanted);
  });
  test('cancelled at the second pause', async () => {
    expect(await run(20, 4, 2)).toEqual([undefined, 8, 2]);
  });
});
