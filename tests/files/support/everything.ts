import type { CellModel, ChartModel, StyleName, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { STYLES } from '../../../shared/sheet/workbook/styles';

/** A workbook with one of everything a model can say. */

const looks: Record<string, CellModel> = Object.fromEntries(
  (Object.keys(STYLES) as StyleName[]).flatMap((style, i) => [
    [`A${i + 1}`, { value: style, style }],
    [`B${i + 1}`, { value: i * 1.5, style, format: i % 2 ? '0.00' : '#,##0' }],
    [`C${i + 1}`, { style }],
  ]),
);
const chart = (kind: ChartModel['kind'], more: Partial<ChartModel> = {}): ChartModel => ({
  kind,
  title: `A ${kind} & more`,
  categories: 'Numbers!A2:A5',
  series: [
    { name: 'free', values: 'Numbers!B2:B5', isHidden: kind === 'occupancy' },
    { name: 'taken', values: 'Numbers!C2:C5', color: 'C8742A' },
    { name: 'third', values: 'Numbers!D2:D5' },
  ],
  from: 'F2',
  to: 'M14',
  ...more,
});

export const EVERYTHING: WorkbookModel = {
  title: 'One of "everything" <here>',
  settings: { spawnbookLanguage: 'en', spawnbookPane: 'x'.repeat(300) },
  names: [
    { name: 'season_water', refersTo: 'Numbers!$B$2', comment: 'a comment' },
    { name: 'season_list', refersTo: "'Looks & more'!$A$1:$A$9" },
  ],
  sheets: [
    {
      name: 'Numbers',
      widths: [4, 12.5, 9, 9, 30],
      tab: '2F7480',
      freeze: { rows: 1, columns: 2 },
      hasGridlines: false,
      isProtected: true,
      merges: ['A8:C8', 'E1:E3'],
      heights: { 1: 30, 8: 45.5 },
      print: { landscape: true, titleRows: [1, 1], footer: 'Foot & hand', breaksAbove: [6, 9] },
      tables: [{ name: 'numbers', range: 'A1:D5' }],
      validations: [
        { range: 'B2:B5', kind: 'decimal', min: 0.5, max: 40, message: 'Degrees of the water.' },
        { range: 'C2:C5', kind: 'whole', min: 1, max: 9, message: 'How many?' },
        { range: 'D2:D5', kind: 'date', min: 36526, max: 73050, message: 'A day.' },
        { range: 'A2:A5', kind: 'list', items: ['one', 'two "2"', 'three & more'], message: 'Pick one.' },
      ],
      conditionals: [
        { range: 'B2:B5', formula: '=$B2>20', style: 'warning' },
        { range: 'C2:C5', formula: '=AND($C2<>"",$C2<1)', style: 'bad' },
        { range: 'A2:D5', formula: '=$A2="x"', style: 'quiet' },
      ],
      charts: [
        chart('line', { xTitle: 'across', yTitle: 'up', valueFormat: '0.0' }),
        chart('column', { categoryFormat: 'd mmm', from: 'F16', to: 'M30' }),
        chart('occupancy', { valueRange: [46_000, 46_090], valueFormat: 'd mmm', from: 'F32', to: 'M46' }),
      ],
      cells: {
        A1: { value: 'Day', style: 'heading' },
        B1: { value: 'Water', style: 'heading' },
        C1: { value: 'Dead', style: 'heading' },
        D1: { value: 'Until', style: 'heading' },
        A2: { value: 46_000, format: 'd mmm yyyy', style: 'input' },
        A3: { value: 46_001.5, format: 'd mmm hh:mm', note: 'A note\nin two lines' },
        A4: { value: 46_002, format: 'yyyy-mm-dd' },
        A5: { value: ' two  blanks ' },
        B2: { value: 26.25, format: '0.0' },
        B3: { value: -1e-9 },
        B4: { value: 1e21 },
        B5: { value: 0.1 + 0.2 },
        C2: { value: true },
        C3: { value: false },
        C4: { value: { error: '#N/A', message: 'why' } },
        C5: { value: 3, format: '0" fish"' },
        D2: { formula: '=B2*2', value: 52.5 },
        D3: { formula: '=SUM(B2:B5)', value: 1, style: 'result' },
        D4: { formula: '=IF(A2="","",TEXT(A2,"d mmm"))', value: '9 Dec' },
        D5: { formula: '=SPAWN.AMMONIA.SHARE(8,B2)', value: 0.05, format: '0.0%' },
        E1: { value: 'merged' },
        A8: { value: 'long words over several cells', style: 'quiet' },
        E5: { formula: '=SPAWN.HORMONE.VOLUME(B2:B4)', spill: [3, 1], value: 1 },
        E6: { value: 2 },
        E7: { value: 3 },
        E8: { formula: '=season_water+INDEX(B2:B5,2)', value: 26.25 },
        E9: { formula: '=B2:B5>20', value: true },
        E10: { formula: '=COUNTIF(\'Looks & more\'!A1:A9,"in*")', value: 1 },
        E11: { formula: '=1/0', value: { error: '#DIV/0!' } },
      },
    },
    {
      name: 'Looks & more',
      widths: [],
      isHidden: true,
      print: { onePage: true, paper: 'A5', area: 'A1:B12' },
      cells: {
        ...looks,
        E1: {
          value: 'found',
          look: { ink: 'AA0011', fill: 'EEEEEE', isItalic: true, size: 13, align: 'right' },
        },
        E2: { value: 'found', look: { ink: '000000', border: 'medium', borderColor: '00AA11', wraps: true } },
        E3: {
          value: 'found',
          look: { ink: '000000', border: 'bottom', indent: 2, isOpen: true, isBold: true },
        },
      },
    },
  ],
};
