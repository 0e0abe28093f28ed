import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import { clashes, freeSuffix, withSuffix } from '../../../taskpane/host/writing/rename';

const model: WorkbookModel = {
  title: 'two sheets',
  names: [{ name: 'wanted', refersTo: "'Start here'!$B$2" }],
  sheets: [
    {
      name: 'Start here',
      widths: [],
      cells: { B2: { value: 5 }, B3: { formula: "=wanted*'Start here'!B2+Log!A1" } },
    },
    {
      name: 'Log',
      widths: [],
      tables: [{ name: 'Feeding', range: 'A1:B3' }],
      cells: { C1: { formula: '=SUM(Feeding[Grams])&"wanted Log!A1"&wanted()&Other!B2' } },
      charts: [
        {
          kind: 'line',
          title: 'Feed',
          categories: 'Log!$A$2:$A$3',
          series: [{ name: 'Grams', values: "'Log'!$B$2:$B$3" }],
          from: 'E1',
          to: 'H9',
        },
      ],
      conditionals: [{ range: 'A1', formula: '=wanted>3', style: 'bad' }],
    },
  ],
};

test('every formula follows the new names, texts and foreign names do not', () => {
  const renamed = withSuffix(model, ' 2');
  expect(renamed.sheets.map((sheet) => sheet.name)).toEqual(['Start here 2', 'Log 2']);
  expect(renamed.names).toEqual([{ name: 'wanted_2', refersTo: "'Start here 2'!$B$2" }]);
  expect(renamed.sheets[0]?.cells['B3']?.formula).toBe("=wanted_2*'Start here 2'!B2+'Log 2'!A1");
  expect(renamed.sheets[1]?.cells['C1']?.formula).toBe(
    '=SUM(Feeding_2[Grams])&"wanted Log!A1"&wanted()&Other!B2',
  );
  expect(renamed.sheets[1]?.tables).toEqual([{ name: 'Feeding_2', range: 'A1:B3' }]);
  expect(renamed.sheets[1]?.charts?.[0]).toMatchObject({
    categories: "'Log 2'!$A$2:$A$3",
    series: [{ values: "'Log 2'!$B$2:$B$3" }],
  });
  expect(renamed.sheets[1]?.conditionals?.[0]?.formula).toBe('=wanted_2>3');
});

test('no suffix changes nothing', () => {
  expect(withSuffix(model, '')).toBe(model);
});

test('a long sheet name keeps to the length sheets may have', () => {
  const long = { ...model, sheets: [{ name: 'A name of exactly thirty-one ch', widths: [], cells: {} }] };
  const [sheet] = withSuffix(long, ' 12').sheets;
  expect(sheet?.name).toHaveLength(31);
  expect(sheet?.name.endsWith(' 12')).toBe(true);
});

test('clashes ignore letter case, and the suffix offered is free everywhere', () => {
  const used = { sheets: ['START HERE', 'log 2'], names: ['Wanted_3'] };
  expect(clashes(model, used)).toEqual({ sheets: ['Start here'], names: [] });
  expect(freeSuffix(model, used)).toBe(' 4');
});
