import { evaluate } from '../../../shared/catalogue/calculation';
import { areaText, parseArea, quoteSheet, splitReference } from '../../../shared/sheet/formula/address';
import { tokenize } from '../../../shared/sheet/formula/tokenize';
import type { Cell, CellError, Grid } from '../../../shared/base/values';
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

// As Excel's own pages describe each function (from memory), one case on each side of every limit.
describe('numbers of the built-in functions', () => {
  const table = '{1,"a",10;2,"b",20;4,"d",40}';
  test.each<readonly [string, unknown]>([
    [`=INDEX(${table},2,2)`, 'b'],
    [`=INDEX(${table},3,1)`, 4],
    [`=SUM(INDEX(${table},0,3))`, 70],
    [`=SUM(INDEX(${table},2,0))`, 22],
    [`=INDEX(${table},4,1)`, '#REF!'],
    [`=INDEX(${table},1,4)`, '#REF!'],
    [`=INDEX(${table},-1,1)`, '#VALUE!'],
    [`=INDEX(${table},1,-1)`, '#VALUE!'],
    ['=INDEX({5,6,7},2)', 6],
    ['=INDEX({5;6;7},3)', 7],
    ['=MATCH(3,{1,2,4})', 2],
    ['=MATCH(4,{1,2,4},1)', 3],
    ['=MATCH(0.9,{1,2,4},1)', '#N/A'],
    ['=MATCH(3,{4,2,1},-1)', 1],
    ['=MATCH(5,{4,2,1},-1)', '#N/A'],
    ['=MATCH(2,{4,2,1},0)', 2],
    ['=MATCH("2",{4,2,1},0)', '#N/A'],
    ['=XLOOKUP(3,{1,2,4},{10,20,40},"none",1)', 40],
    ['=XLOOKUP(3,{1,2,4},{10,20,40},"none",-1)', 20],
    ['=XLOOKUP(3,{4,1,2},{40,10,20},"none",-1)', 20],
    ['=XLOOKUP(3,{9,4,5},{90,40,50},"none",1)', 40],
    ['=XLOOKUP(2,{1,2,4},{10,20,40},"none",1)', 20],
    ['=XLOOKUP(3,{1,2,4},{10,20,40},"none")', 'none'],
    ['=XLOOKUP(3,{1,2,4},{10,20,40})', '#N/A'],
    ['=XLOOKUP(0,{1,2,4},{10,20,40},"none",-1)', 'none'],
    ['=SUM(XLOOKUP(2,{1;2;4},{10,1;20,2;40,4}))', 22],
    [`=VLOOKUP(3,${table},3)`, 20],
    [`=VLOOKUP(3,${table},3,TRUE)`, 20],
    [`=VLOOKUP(3,${table},3,1)`, 20],
    [`=VLOOKUP(3,${table},3,FALSE)`, '#N/A'],
    [`=VLOOKUP(0,${table},3)`, '#N/A'],
    [`=VLOOKUP(2,${table},0)`, '#VALUE!'],
    [`=VLOOKUP(2,${table},1)`, 2],
    [`=VLOOKUP(2,${table},4)`, '#REF!'],
    ['=SUMIFS({1,2,3},{5,6,7},">6")', 3],
    ['=SUMIFS({1,2,3},{5,6,7},">=6")', 5],
    ['=SUMIFS({1,2,3},{5,6,7},"<6")', 1],
    ['=SUMIFS({1,2,3},{5,6,7},"<=6")', 3],
    ['=SUMIFS({1,2,3},{5,6,7},"<>6")', 4],
    ['=SUMIFS({1,2,3},{5,6,7},6)', 2],
    ['=SUMIFS({1,2,3},{5,6,7},"=6")', 2],
    ['=SUMIFS({1,2,3},{"a","b","c"},">b")', 3],
    ['=SUMIFS({1,2,3},{"a","b","c"},">=b")', 5],
    ['=SUMIFS({1,2,3},{"a","b","c"},"<b")', 1],
    ['=SUMIFS({1,2,3},{"a","b","c"},"<=B")', 3],
    ['=SUMIFS({1,2,3},{"a","b","c"},"<>b")', 4],
    ['=SUMIFS({1,2,3},{5,6,7},">5",{5,6,7},"<7")', 2],
    ['=SUMIFS({1,2,3},{"",2,""},"")', 4],
    ['=COUNTIFS({5,6,7},">5",{1,1,2},1)', 1],
    ['=COUNTIF({5,6,7},">5")', 2],
    ['=SUMIF({5,6,7},">5")', 13],
    ['=SUMIF({5,6,7},">5",{1,2,3})', 5],
    ['=AVERAGEIFS({1,2,4},{5,6,7},">5")', 3],
    ['=AVERAGEIFS({1,2,4},{5,6,7},">7")', '#DIV/0!'],
    ['=ROWS({1,2;3,4;5,6})', 3],
    ['=COLUMNS({1,2;3,4;5,6})', 2],
    ['=MEDIAN(3,1,2)', 2],
    ['=MEDIAN(4,1,2,3)', 2.5],
    ['=STDEV.S(1,2,3,4)', Math.sqrt(5 / 3)],
    ['=STDEV.S(1)', '#DIV/0!'],
    ['=MIN(3,1,2)', 1],
    // Without a number both are 0.
    ['=MIN(C1:C4)', 0],
    ['=MAX(C1:C4)', 0],
    // A list of two criteria gives two counts.
    ['=SUM(COUNTIFS({5,6,7,7},{5,7}))', 3],
    ['=ROWS(COUNTIFS({5,6,7,7},{5;7}))', 2],
    ['=MAX(3,1,2)', 3],
    ['=PRODUCT(2,3,4)', 24],
    ['=AVERAGE(2,3,4)', 3],
    ['=LOG(1000)', 3],
    ['=LOG(8,2)', 3],
    ['=POWER(2,10)', 1024],
    ['=SIGN(-2)', -1],
    ['=TRUNC(-2.79,1)', -2.7],
    ['=ROUND(1234.5,-2)', 1200],
    ['=MOD(7,-3)', -2],
    ['=MOD(7,0)', '#DIV/0!'],
    ['=CEILING(7,3)', 9],
    ['=CEILING(7,0)', 0],
    ['=FLOOR(7,3)', 6],
    ['=FLOOR(7,0)', '#DIV/0!'],
    ['=DATE(99,1,1)', 36161],
    ['=DATE(1899,12,31)', '=DATE(3799,12,31)'],
    ['=DATE(1900,3,1)', 61],
    ['=DATE(9999,12,31)', 2958465],
    ['=DATE(9999,12,32)', '#NUM!'],
    ['=DATE(10000,1,1)', '#NUM!'],
    ['=DATE(-1,1,1)', '#NUM!'],
    // The year is judged before the months are added to it.
    ['=DATE(-1,14,1)', '#NUM!'],
    ['=DATE(10000,-11,1)', '#NUM!'],
    ['=DATE(9999,0,31)', '=DATE(9998,12,31)'],
    // 832.4999999999999 in binary, 832.5 to the fifteen digits a cell has.
    ['=ROUND(8.325,2)', 8.33],
    ['=TIME(6,30,36)', (6 * 3600 + 30 * 60 + 36) / 86_400],
    ['=TIME(30,0,0)', 0.25],
    ['=TIME(0,0,-1)', '#NUM!'],
    ['=MONTH(39448)', 1],
    ['=DAY(39448.99)', 1],
    ['=HOUR(TIME(23,59,59))', 23],
    ['=MINUTE(TIME(23,59,59))', 59],
    ['=SECOND(TIME(23,59,58))', 58],
    ['=HOUR(0.9999999)', 0],
    ['=YEAR(2958465)', 9999],
    ['=YEAR(2958466)', '#NUM!'],
    ['=YEAR(-1)', '#NUM!'],
    ['=WEEKDAY(39446)', 1],
    ['=WEEKDAY(39445)', 7],
    ['=WEEKDAY(39446,2)', 7],
    ['=WEEKDAY(39447,2)', 1],
    ['=TEXT(0.5,"h:mm AM/PM")', '12:00 PM'],
    ['=TEXT(0,"h:mm AM/PM")', '12:00 AM'],
    ['=TEXT(13/24,"hh:mm:ss")', '13:00:00'],
    ['=TEXT(13/24+5/1440+7/86400,"h AM/PM, m:s")', '1 PM, 5:7'],
    ['=TEXT(39448,"yy/m/dd ddd mmmm")', '08/1/01 Tue January'],
    ['=TEXT(39448,"dd-mm-yyyy")', '01-01-2008'],
    ['=TEXT(39453,"dddd")', 'Sunday'],
    ['=TEXT(12,"000")', '012'],
    ['=TEXT(1.5,"0.0##")', '1.5'],
    ['=TEXT(1.5678,"0.0##")', '1.568'],
    ['=TEXT(1234567,"#,##0")', '1,234,567'],
    ['=TEXT(999,"#,##0")', '999'],
    ['=TEXT(-5,"0.0")', '-5.0'],
    ['=TEXT(-5,"0;(0)")', '(5)'],
    ['=TEXT(0,"0;(0);""none""")', 'none'],
    ['=TEXT(1,"0;(0);""none""")', '1'],
    ['=TEXT(0.125,"0%")', '13%'],
    ['=TEXT(1.25E+22,"0")', '12500000000000000000000'],
    ['=TEXT(2958466,"yyyy")', '#VALUE!'],
    ['=TEXT(1/3,"General")', '0.33333333333'],
    ['=TEXT(0,"0;(0);")', ''],
    ['=TEXT(5,"""fish""")', 'fish'],
    ['=TEXT(-5,"""fish""")', '-fish'],
  ])('%s', (formula, wanted) => {
    const got = run(formula);
    const answer = typeof wanted === 'string' && wanted.startsWith('=') ? run(wanted) : wanted;
    if (typeof answer === 'number') expect(got).toBeCloseTo(answer, 9);
    else expect(isError(got as Cell) ? (got as CellError).error : got).toBe(answer);
  });
});
