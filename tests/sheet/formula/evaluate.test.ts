import { evaluate } from '../../../shared/catalogue/calculation';
import { areaText, parseArea, quoteSheet, splitReference } from '../../../shared/sheet/formula/address';
import { tokenize } from '../../../shared/sheet/formula/tokenize';
import type { Cell, Grid } from '../../../shared/base/values';
import { isError } from '../../../shared/base/values';

const cells: Record<string, Cell | Grid> = {
  A1: 2,
  A2: null,
  'A1:A3': [[1], [null], ['x']],
  'B1:B4': [[10], [20], [30], [40]],
  'C1:C4': [['hatch'], ['Feed'], ['hatch'], ['sale']],
  "'My sheet'!B2": 7,
  D1: { error: '#DIV/0!' },
};
const run = (formula: string): unknown =>
  evaluate(formula, {
    reference: (text) => (text in cells ? (cells[text] as Cell) : null),
    name: (name) => (name === 'Rate' ? 0.25 : { error: '#NAME?' }),
  });

// Values as Microsoft's function reference documents them, or exact arithmetic.
test.each([
  ['=1+2*3', 7],
  ['=-2^2', 4],
  ['=2^3^2', 64],
  ['=50%', 0.5],
  ['=(1+2)*3', 9],
  ['="a"&1', 'a1'],
  ['=1=1', true],
  ['="A"="a"', true],
  ['=A1+A2', 2],
  ['=SUM(A1:A3,4)', 5],
  ['=IF(A1>1,"yes","no")', 'yes'],
  ['=IF(FALSE,1/0,5)', 5],
  ['=IFERROR(1/0,-1)', -1],
  ['=ROUND(2.5,0)', 3],
  ['=ROUND(-2.5,0)', -3],
  ['=ROUND(1.005,2)', 1.01],
  ['=ROUNDUP(3.2,0)', 4],
  ['=ROUNDUP(-3.14159,1)', -3.2],
  ['=ROUNDDOWN(31415.92654,-2)', 31400],
  ['=CEILING(2.5,1)', 3],
  ['=FLOOR(1.58,0.1)', 1.5],
  ['=MOD(-3,2)', 1],
  ['=INT(-8.9)', -9],
  ['=INDEX(B1:B4,3)', 30],
  ['=MATCH(25,B1:B4,1)', 2],
  ['=MATCH("FEED",C1:C4,0)', 2],
  ['=XLOOKUP("sale",C1:C4,B1:B4)', 40],
  ['=XLOOKUP(25,B1:B4,C1:C4,"none",-1)', 'Feed'],
  ['=SUMIFS(B1:B4,C1:C4,"hatch")', 40],
  ['=COUNTIFS(B1:B4,">=20",C1:C4,"hatch")', 1],
  ['=SUMPRODUCT(B1:B4,{1;0;0;2})', 90],
  ['=SUMPRODUCT((C1:C4="hatch")*B1:B4)', 40],
  ['=DATE(2008,1,1)', 39448],
  ['=YEAR(39448)', 2008],
  ['=WEEKDAY(39448)', 3],
  ['=WEEKDAY(39448,2)', 2],
  ['=HOUR(0.75)', 18],
  ['=MINUTE(TIME(7,45,0))', 45],
  ['=TEXT(1234.567,"#,##0.00")', '1,234.57'],
  ['=TEXT(0.285,"0.0%")', '28.5%'],
  ['=TEXT(39448.75,"d mmm yyyy hh:mm")', '1 Jan 2008 18:00'],
  ['=TEXT(39448,"dddd")', 'Tuesday'],
  ['=TEXT(-0.001,"0.00")', '0.00'],
  ['=TEXT(5,"0 ""fish""")', '5 fish'],
  ["='My sheet'!B2*Rate", 1.75],
  ['=COUNTA(A1:A3)', 2],
  ['=COUNT(A1:A3)', 1],
  ['=MEDIAN(B1:B4)', 25],
  ['=AND(TRUE,1>0)', true],
  ['=NOT(OR(FALSE,FALSE))', true],
  ['=TEXTJOIN(", ",TRUE,C1:C4)', 'hatch, Feed, hatch, sale'],
  ['=N("x")', 0],
  ['=CHOOSE(2,"a","b")', 'b'],
  ['=IFS(FALSE,1,TRUE,2)', 2],
  ['=VLOOKUP(2,{1,"a";2,"b"},2,FALSE)', 'b'],
  ['=LET(1)', '#NAME?'],
  ['=1/0', '#DIV/0!'],
  ['=SQRT(-1)', '#NUM!'],
  ['=D1+1', '#DIV/0!'],
  ['="x"*2', '#VALUE!'],
  ['=NoSuch(1)', '#NAME?'],
])('%s', (formula, wanted) => {
  const got = run(formula);
  expect(isError(got) ? got.error : got).toEqual(wanted);
});

test('arrays stretch and answer in their own shape', () => {
  expect(run('={1,2;3,4}*10')).toEqual([
    [10, 20],
    [30, 40],
  ]);
  expect(run('=B1:B4>15')).toEqual([[false], [true], [true], [true]]);
  expect(run('=IF(B1:B4>15,B1:B4,0)')).toEqual([[0], [20], [30], [40]]);
});

test('our functions take nested calls and array constants', () => {
  expect(run('=ROUND(SPAWN.AMMONIA.SHARE(8,25),4)')).toBe(0.0537);
  expect((run('=spawn.ammonia.share({7;8},25)') as number[][]).length).toBe(2);
});

test.each([
  ['=1+', 'ends too early', 4],
  ['=SUM(1', 'closing bracket', 7],
  ['=(1', 'closing bracket', 4],
  ['=1 2', '"2" is not expected', 4],
  ['={1,2;3}', 'not equally long', 8],
  ['="a', 'closing quotation mark', 2],
])('%s says what is wrong and where', (formula, says, at) => {
  const got = run(formula);
  expect(isError(got) && got.message).toContain(says);
  expect(isError(got) && got.message).toContain(`at character ${at}`);
});

test('deep nesting is refused, not a crash', () => {
  const got = run(`=${'('.repeat(5000)}1${')'.repeat(5000)}`);
  expect(isError(got) && got.message).toContain('nested too deeply');
});

test.each([
  '=IF(\'It\'\'s\'!A1>2,SPAWN.HATCH.TIME(B2,C2)&"say ""hi""",[2]!_xldudf_SPAWN_X(A1:B9))',
  '=Log[[#This Row],[pH]]+Table1[Hatch %]',
  '=SUM($A$1:$B$9,A:A,3:7)%',
  '=A18#*2 + @Name',
  '=Sheet1!B2',
])('tokens keep every character of %s', (formula) => {
  const tokens = tokenize(formula);
  expect(tokens.map((token) => token.text).join('')).toBe(formula.slice(1));
  expect(tokens.some((token) => token.kind === 'unknown')).toBe(false);
});

test('addresses round-trip', () => {
  for (const text of ['A1', 'Z9', 'AA10', 'XFD1048576', 'B2:D9'])
    expect(areaText(parseArea(text) ?? { top: 0, left: 0, bottom: 0, right: 0 })).toBe(text);
  expect(parseArea('XFE1')).toBeUndefined();
  expect(splitReference("'It''s'!A1:B2")).toEqual({ sheet: "It's", area: 'A1:B2' });
  expect(quoteSheet("It's")).toBe("'It''s'");
  expect(quoteSheet('AB1')).toBe("'AB1'");
});
