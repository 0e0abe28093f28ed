import { holdsOwnCall, isDamaged, mendFormula } from '../../../taskpane/screens/messages/state/formulaRepair';

test.each([
  ['=_xldudf_SPAWN_BUFFER_DOSE(1000,4.6,7)', '=SPAWN.BUFFER.DOSE(1000,4.6,7)'],
  ['=_XLDUDF_spawn_buffer_dose(A1,B1,7)', '=SPAWN.BUFFER.DOSE(A1,B1,7)'],
  ['=[2]!_xldudf_SPAWN_BUFFER_DOSE(A1,B1,7)', '=SPAWN.BUFFER.DOSE(A1,B1,7)'],
  ["='FUNCRES.XLAM'!_xldudf_SPAWN_HATCH_TIME(A1,26)", '=SPAWN.HATCH.TIME(A1,26)'],
  ["='C:\\Users\\x\\[OLD.XLAM]Sheet1'!_xldudf_SPAWN_HATCH_TIME(A1,26)", '=SPAWN.HATCH.TIME(A1,26)'],
  ["='my book.xlsx'!SPAWN.HATCH.TIME(A1,26)+1", '=SPAWN.HATCH.TIME(A1,26)+1'],
  [
    '=IF(A1>0,_xldudf_SPAWN_AMMONIA_SHARE(8,25),_xldudf_SPAWN_AMMONIA_SHARE(7,25))',
    '=IF(A1>0,SPAWN.AMMONIA.SHARE(8,25),SPAWN.AMMONIA.SHARE(7,25))',
  ],
  ['=@_xldudf_SPAWN_AMMONIA_SHARE(8,25)', '=@SPAWN.AMMONIA.SHARE(8,25)'],
])('%s is mended', (damaged, mended) => {
  expect(holdsOwnCall(damaged)).toBe(true);
  expect(isDamaged(damaged)).toBe(true);
  expect(mendFormula(damaged)).toBe(mended);
  expect(mendFormula(mended)).toBe(mended);
});

test.each([
  '=SPAWN.BUFFER.DOSE(1000,4.6,7)',
  '=SUM(A1:A3)',
  '="_xldudf_SPAWN_HATCH_TIME(1)"',
  '=_xldudf_OTHER_HATCH_TIME(1)',
  "='Spawn log'!A1",
  '=SPAWN_RATE*2',
  'SPAWN.HATCH.TIME(1)',
])('%s stays as it is', (formula) => {
  expect(mendFormula(formula)).toBe(formula);
});

test('a text or a name that only looks like ours is not taken for a call', () => {
  expect(holdsOwnCall('="SPAWN.HATCH.TIME(1)"')).toBe(false);
  expect(holdsOwnCall('=SPAWN.NO.SUCH(1)')).toBe(false);
  expect(holdsOwnCall(12)).toBe(false);
});
