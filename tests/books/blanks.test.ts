import { findFunction } from '../../shared/catalogue';
import { callFunction } from '../../shared/catalogue/calculation';
import { dosingWorkbook } from '../../shared/books/dosing/sheet';
import { calculateBy } from '../../shared/sheet/workbook/calculate';
import { keepBlanks } from '../../shared/sheet/workbook/blanks';
import type { CellModel, SheetModel, WorkbookModel } from '../../shared/sheet/workbook/model';
import { STYLES } from '../../shared/sheet/workbook/styles';
import { dosingTemplate } from '../../templates/dosing.template';
import { seasonPlanTemplate } from '../../templates/season-plan.template';
import { BACKYARD, seasonTemplate } from '../../templates/season.template';
import { drawsFrom } from '../support/draws';
import { zeroHostCalls } from '../support/zeroHost';

/** Older desktop builds of Excel hand a blank cell to a custom function as 0; what a book says must not change. */

const TODAY = 46_420;
/** An error is its code: the sentence may speak of a 0 or of a blank. */
const shown = (value: CellModel['value']): CellModel['value'] | string =>
  typeof value === 'object' && 'error' in value ? value.error : value;
const valuesOn = (model: WorkbookModel, calls: typeof callFunction): Map<string, CellModel['value']> =>
  new Map(
    calculateBy(findFunction, model, TODAY, calls).model.sheets.flatMap((sheet) =>
      Object.entries(sheet.cells).map(
        ([address, { value }]) => [`${sheet.name}!${address}`, shown(value)] as const,
      ),
    ),
  );
function differing(model: WorkbookModel): string[] {
  const zero = valuesOn(model, zeroHostCalls);
  return [...valuesOn(model, callFunction)]
    .filter(([at, value]) => JSON.stringify(zero.get(at)) !== JSON.stringify(value))
    .map(([at, value]) => `${at}: ${JSON.stringify(value)} → ${JSON.stringify(zero.get(at))}`);
}

/** Cells that stand open for typing lose what is in them, each with this chance. */
function emptied(model: WorkbookModel, share: number, seed: number): WorkbookModel {
  const { uniform } = drawsFrom(seed);
  const sheetOf = (sheet: SheetModel): SheetModel => ({
    ...sheet,
    cells: Object.fromEntries(
      Object.entries(sheet.cells).map(([address, cell]) => {
        const isOpen = cell.style !== undefined && STYLES[cell.style].isOpen === true;
        const { value, ...rest } = cell;
        return [
          address,
          isOpen && cell.formula === undefined && value !== undefined && uniform() < share ? rest : cell,
        ];
      }),
    ),
  });
  return { ...model, sheets: model.sheets.map(sheetOf) };
}

const smaller = { ...BACKYARD, orders: (BACKYARD.orders as unknown[]).slice(0, 1) };
const BOOKS: readonly (readonly [string, () => WorkbookModel])[] = [
  ['one run', seasonPlanTemplate],
  ['dosing', dosingTemplate],
  ['season', () => seasonTemplate(smaller)],
];

test.each(BOOKS)(
  '%s: the same on a host that hands blanks over as 0, filled in and half empty',
  (_name, make) => {
    const model = make();
    expect(differing(model)).toEqual([]);
    for (const [share, seed] of [
      [0.1, 1],
      [0.3, 2],
      [1, 3],
    ] as const)
      expect([seed, differing(emptied(model, share, seed)).slice(0, 5)]).toEqual([seed, []]);
  },
);

test('dosing with none to ten readings', () => {
  const vat = { ...dosingVat, alkalinity: null };
  for (const n of [0, 1, 9, 10]) {
    const readings = Array.from({ length: n }, (_, i) => ({
      at: 46_000 + i / 50,
      what: i === 1 ? 'aired' : '',
      grams: i > 1 ? 1 : null,
      ph: 5.2 + i * 0.1,
      again: i % 2 === 0 ? 5.2 + i * 0.1 : null,
    }));
    expect([n, differing(dosingWorkbook(vat, readings)).slice(0, 3)]).toEqual([n, []]);
  }
});
const dosingVat: Parameters<typeof dosingWorkbook>[0] = {
  volume: 600,
  material: 'soda ash',
  purity: 0.98,
  spoon: 5,
  temperature: 26,
  target: 7,
  stocked: 'no',
  ammonia: null,
  alkalinity: null,
  kit: '°d',
  bottom: 6.5,
  top: 7.5,
  origin: 'well',
  meter: 'good',
};

test('without it the host would be believed: the same call, its cells named plainly', () => {
  const plain: WorkbookModel = {
    title: 'plain',
    names: [],
    sheets: [
      {
        name: 'Vat',
        widths: [],
        cells: {
          A1: { value: 600 },
          B1: { value: 5.5 },
          C1: { value: 7 },
          E1: { formula: '=SPAWN.BUFFER.DOSE(A1,B1,C1,D1)' },
          E2: { formula: '=SUM(D1,SPAWN.BUFFER.DOSE(A1, B1 ,C1,D1))+D1' },
        },
      },
    ],
  };
  expect(differing(plain)).toHaveLength(2);
  const kept = keepBlanks(findFunction, plain);
  expect(differing(kept)).toEqual([]);
  expect([kept.sheets[0]?.cells.E1?.formula, kept.sheets[0]?.cells.E2?.formula]).toEqual([
    '=SPAWN.BUFFER.DOSE(A1,B1,C1,IF(D1="","",D1))',
    '=SUM(D1,SPAWN.BUFFER.DOSE(A1, B1 ,C1,IF(D1="","",D1)))+D1',
  ]);
});

test('rows of zeros at the end of a list are blank rows where zero cannot be, and only there', () => {
  const call = (doses: number[], levels: number[]) =>
    callFunction('SPAWN.BUFFER.NEXT')?.([600, doses.map((x) => [x]), levels.map((x) => [x]), 7]);
  expect(call([0, 4, 0, 0], [5.2, 5.4, 0, 0])).toEqual(call([0, 4], [5.2, 5.4]));
  expect(call([0, 4, 8], [5.2, 5.4, 0])).toMatchObject({ error: '#VALUE!' });
  expect(call([0, 0, 4], [5.2, 0, 5.4])).toMatchObject({ error: '#VALUE!' });
});
