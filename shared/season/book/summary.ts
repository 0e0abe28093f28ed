import { styled } from '../../workbook/build';
import type { SheetModel } from '../../workbook/model';
import { CAUTIONS } from '../../cautions';
import { HEAD, MONEY, WHOLE, heightFor, lastRow, sheetOf } from './context';
import type { Season } from './context';
import { MONEY_CELLS } from './money';
import { ORDER_COLUMNS } from './orders';

const WIDTH = 118;
const HOW: readonly string[] = [
  'Every order is planned backwards: fish wanted divided by what survives each step; then a strip on the latest day that leaves the fish enough time, with females that have rested, males that are no kin, and vats that are free and clean.',
  'Odds come from seasons drawn by chance from a seed: hatch and survival vary from run to run and from season to season, eggs from female to female. How much they vary is chosen, not published, until your own runs say.',
  'Formulas that begin with SPAWN need the Spawnbook add-in to change; without it their last values stay.',
];

/** The season on one page: what is promised, what is earned, what stands in the way. */
export function summarySheet(season: Season): SheetModel {
  const { book, plan } = season;
  const sheet = sheetOf(season, 'Summary', `${book.hatchery}: the season`, 'Orders, money and odds at a glance; the other sheets say how.', { widths: [2, 24, 24, 24, 24, 22], tab: '12454F', print: { onePage: true } });
  const last = lastRow(plan.orders.length);
  const column = (letter: string): string => `Orders!$${letter}$${HEAD + 1}:$${letter}$${last}`;
  const boxes: readonly (readonly [string, string, string])[] = [
    ['FISH ORDERED', `=SUM(${column(ORDER_COLUMNS.number)})`, WHOLE], ['FISH PLANNED', `=SUM(${column(ORDER_COLUMNS.planned)})`, WHOLE],
    ['PROFIT', `=Money!$${MONEY_CELLS.profit.replace('C', 'C$')}`, MONEY], ['LEAST MONEY LEFT', `=Money!$${MONEY_CELLS.least.replace('C', 'C$')}`, MONEY], ['RUNS', `=${plan.runs.length}`, WHOLE],
  ];
  boxes.forEach(([label, formula, format], i) => {
    const letter = 'BCDEF'.charAt(i);
    sheet.put(`${letter}${HEAD}`, label, 'heading').put(`${letter}${HEAD + 1}`, styled(formula, 'big', { format }));
  });
  sheet.height(HEAD + 1, 26);
  let row = HEAD + 3;
  const block = (title: string, lines: readonly (readonly [string, 'bad' | 'quiet' | 'warning'])[]): void => {
    for (const letter of 'BCDEF') sheet.put(`${letter}${row}`, letter === 'B' ? title : '', 'section');
    row++;
    for (const [text, style] of lines) {
      sheet.merge(`B${row}:F${row}`, text, style).height(row, heightFor(text, WIDTH));
      row++;
    }
    row++;
  };
  block('Said on the day the plan was made', plan.findings.length > 0 ? plan.findings.map(({ message, kind }) => [message, kind === 'cannot' ? 'bad' : 'quiet'] as const) : [['Every order can be met.', 'quiet']]);
  block('How this plan works', HOW.map((text) => [text, 'quiet'] as const));
  block('Take care', ['HORMONE'].flatMap((key) => (CAUTIONS[key] ? [[CAUTIONS[key], 'warning'] as const] : [])));
  return sheet.build();
}
