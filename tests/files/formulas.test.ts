import { fromFile, shifted, toFile } from '../../shared/files/formulas';

describe('as typed ⇄ as stored', () => {
  test.each([
    ['=SPAWN.AMMONIA.SHARE(B2,C2)', '_xldudf_SPAWN_AMMONIA_SHARE(B2,C2)'],
    ['=SUM(1,SPAWN.CHAIN.START(100,A1:A3)*2)', 'SUM(1,_xldudf_SPAWN_CHAIN_START(100,A1:A3)*2)'],
    ['=SUM(B1#)', 'SUM(_xlfn.ANCHORARRAY(B1))'],
    ["=XLOOKUP(A1,'My fish'!$B$2:$B$9,C2:C9)", "_xlfn.XLOOKUP(A1,'My fish'!$B$2:$B$9,C2:C9)"],
    ['=FILTER(A1:A9,B1:B9>0)', '_xlfn._xlws.FILTER(A1:A9,B1:B9>0)'],
    ['=LET(x,A1,x*IFNA(x,2))', '_xlfn.LET(_xlpm.x,A1,_xlpm.x*_xlfn.IFNA(_xlpm.x,2))'],
    ['=IF(A1="SPAWN.AMMONIA.SHARE(1,2)",1,2)', 'IF(A1="SPAWN.AMMONIA.SHARE(1,2)",1,2)'],
    ['=LAMBDA(x,y,x*y)(2,A1)', '_xlfn.LAMBDA(_xlpm.x,_xlpm.y,_xlpm.x*_xlpm.y)(2,A1)'],
    ['=MAP(A1:A3,LAMBDA(v,SUM(v,1)))', '_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.v,SUM(_xlpm.v,1)))'],
    ['=LET(f,LAMBDA(x,x+1),f(2))', '_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.x,_xlpm.x+1),_xlpm.f(2))'],
    ['=@A1:A3*2', '_xlfn.SINGLE(A1:A3)*2'],
    ['=ROUNDUP(fish_wanted/7,0)', 'ROUNDUP(fish_wanted/7,0)'],
    ['=SPAWN.BUFFER.DOSE(1000,5.8,7,,26.5)', '_xldudf_SPAWN_BUFFER_DOSE(1000,5.8,7,,26.5)'],
  ])('%s', (typed, stored) => {
    expect(toFile(typed)).toBe(stored);
    expect(fromFile(stored)).toBe(typed);
  });

  test.each([
    [
      'lower case, as another program saves it',
      '_xldudf_spawn_ammonia_share(B2,C2)',
      '=SPAWN.AMMONIA.SHARE(B2,C2)',
    ],
    [
      'bound to another book by Excel',
      '[2]!_xldudf_SPAWN_AMMONIA_SHARE(B2,C2)',
      '=SPAWN.AMMONIA.SHARE(B2,C2)',
    ],
    [
      'bound to an add-in file',
      "'C:\\tools\\other.xlam'!_xldudf_SPAWN_AMMONIA_SHARE(B2,C2)",
      '=SPAWN.AMMONIA.SHARE(B2,C2)',
    ],
    [
      'bound to a bare file name',
      'FUNCRES.XLAM!_xldudf_SPAWN_AMMONIA_SHARE(B2,C2)',
      '=SPAWN.AMMONIA.SHARE(B2,C2)',
    ],
    [
      'without its brackets, handed to MAP',
      '_xlfn.MAP(A1:A3,_xldudf_SPAWN_AMMONIA_SHARE)',
      '=MAP(A1:A3,SPAWN.AMMONIA.SHARE)',
    ],
    ['a function of another add-in stays as it is', '_xldudf_OTHER_THING(1)', '=_xldudf_OTHER_THING(1)'],
    ['single value mark', '_xlfn.SINGLE(A1:A3)+1', '=@A1:A3+1'],
  ])('%s', (_title, stored, typed) => {
    expect(fromFile(stored)).toBe(typed);
  });

  test('a name written in small letters is stored in capitals', () => {
    expect(toFile('=spawn.ammonia.share(1,2)')).toBe('_xldudf_SPAWN_AMMONIA_SHARE(1,2)');
  });
});

test.each([
  ['=A1+$A1+A$1+$A$1', 2, 1, '=B3+$A3+B$1+$A$1'],
  ["=SUM('Feed 1'!B2:C3)*2", 1, 0, "=SUM('Feed 1'!B3:C4)*2"],
  ['=SUM(A:A)+SUM(2:$3)', 1, 2, '=SUM(C:C)+SUM(3:$3)'],
  ['="A1"&A1', 1, 0, '="A1"&A2'],
  ['=A1', -1, 0, '=#REF!'],
  ['=LOG10(A1)', 1, 1, '=LOG10(B2)'],
])('%s moved by %i rows and %i columns', (formula, down, right, moved) => {
  expect(shifted(formula, down, right)).toBe(moved);
});
