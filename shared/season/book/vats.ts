import { addressOf } from '../../formula/address';
import { styled } from '../../workbook/build';
import type { SheetModel } from '../../workbook/model';
import type { VatStay } from '../result';
import { DAY, HEAD, WHOLE, lastRow, sheetOf } from './context';
import type { Season } from './context';

/** Column M, where the chart's helper block begins, counted from 0. */
const HELP = 12;
const at = (row: number, column: number): string => addressOf(row - 1, column);

/** Who is in which vat when; one bar a vat, gaps are free or cleaning. */
export function vatsSheet(season: Season): SheetModel {
  const { book, plan } = season;
  const stays = plan.occupancy;
  const most = Math.max(1, ...book.vats.map(({ name }) => stays.filter((s) => s.vat === name).length));
  const sheet = sheetOf(season, 'Vats', 'Vats', 'As planned; after its last day a vat is cleaned and refilled before the next run.', {
    widths: [2, 16, 7, 11, 14, 14, 14, 11, 11, 2, 2, 2, 16], tab: '7FA6A9', freeze: { rows: HEAD, columns: 0 }, print: { titleRows: [HEAD, HEAD] },
  });
  sheet.row(`B${HEAD}`, ['Vat', 'Run', 'Holds', 'From', 'To', 'Clean again', 'Fish', 'In a litre'], 'heading');
  stays.forEach((stay, i) => {
    sheet.row(`B${HEAD + 1 + i}`, [
      styled(stay.vat, 'label'), styled(stay.run, 'cell'), styled(stay.stage, 'cell'), styled(stay.from, 'cell', { format: DAY }), styled(stay.to, 'cell', { format: DAY }),
      styled(stay.cleanAt, 'cell', { format: DAY }), styled(stay.fish, 'cell', { format: WHOLE }), styled(stay.perLitre, 'cell', { format: '#,##0.0' }),
    ]);
  });
  helper(sheet, season, most);
  const end = lastRow(stays.length);
  const column = (k: number): string => sheet.ref(`${at(HEAD + 1, HELP + k)}:${at(HEAD + book.vats.length, HELP + k)}`);
  const [first, last] = [Math.min(...stays.map((s) => s.from)), Math.max(...stays.map((s) => s.to))];
  if (stays.length > 0) sheet.chart({
    kind: 'occupancy', title: 'Vats over the season', categories: column(0), valueFormat: 'd mmm', valueRange: [Math.floor(first) - 1, Math.ceil(last) + 1],
    series: Array.from({ length: most }, (_, k) => [
      { name: `free ${k + 1}`, values: column(1 + 2 * k), isHidden: true }, { name: `stay ${k + 1}`, values: column(2 + 2 * k), color: k % 2 === 0 ? '12454F' : 'C8742A' },
    ]).flat(), from: `B${end + 2}`, to: `I${end + 4 + Math.max(16, 2 * book.vats.length)}`,
  });
  return sheet.build();
}

/** Days free and days taken in turn, a row a vat: what a stacked bar draws. */
function helper(sheet: ReturnType<typeof sheetOf>, { book, plan }: Season, most: number): void {
  sheet.put(at(HEAD, HELP), 'For the chart: days free, days taken', 'quiet');
  book.vats.forEach(({ name }, v) => {
    const own: readonly (VatStay & { readonly row: number })[] = plan.occupancy.map((s, i) => ({ ...s, row: HEAD + 1 + i })).filter((s) => s.vat === name);
    const row = HEAD + 1 + v;
    sheet.put(at(row, HELP), name, 'quiet');
    for (let k = 0; k < most; k++) {
      const stay = own[k];
      const before = own[k - 1];
      sheet.put(at(row, HELP + 1 + 2 * k), stay ? `=E${stay.row}${before ? `-F${before.row}` : ''}` : 0, 'quiet', { format: '0.0' });
      sheet.put(at(row, HELP + 2 + 2 * k), stay ? `=F${stay.row}-E${stay.row}` : 0, 'quiet', { format: '0.0' });
    }
  });
}
