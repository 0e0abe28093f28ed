import { addressOf } from '../../formula/address';
import type { SheetBuilder } from '../../workbook/build';
import { styled } from '../../workbook/build';
import type { SheetModel } from '../../workbook/model';
import type { VatStay } from '../result';
import { DAY, HEAD, WHOLE, lastRow, sheetOf } from './context';
import type { Season } from './context';

/** Column B, where the figures of the chart begin, counted from 0. */
const HELP = 1;
const at = (row: number, column: number): string => addressOf(row - 1, column);

/** Who is in which vat when; one bar a vat, gaps are free or cleaning. */
export function vatsSheets(season: Season): readonly SheetModel[] {
  const { book, plan } = season;
  const stays = plan.occupancy;
  const most = Math.max(1, ...book.vats.map(({ name }) => stays.filter((s) => s.vat === name).length));
  const sheet = sheetOf(season, 'Vats', 'Vats', 'As planned; after its last day a vat is cleaned and refilled before the next run.', {
    widths: [2, 16, 7, 11, 14, 14, 14, 11, 11], tab: '7FA6A9', freeze: { rows: HEAD, columns: 0 }, print: { titleRows: [HEAD, HEAD] },
  });
  sheet.row(`B${HEAD}`, ['Vat', 'Run', 'Holds', 'From', 'To', 'Clean again', 'Fish', 'In a litre'], 'heading');
  stays.forEach((stay, i) => {
    sheet.row(`B${HEAD + 1 + i}`, [
      styled(stay.vat, 'label'), styled(stay.run, 'cell'), styled(stay.stage, 'cell'), styled(stay.from, 'cell', { format: DAY }), styled(stay.to, 'cell', { format: DAY }),
      styled(stay.cleanAt, 'cell', { format: DAY }), styled(stay.fish, 'cell', { format: WHOLE }), styled(stay.perLitre, 'cell', { format: '#,##0.0' }),
    ]);
  });
  const bars = barsSheet(season, most);
  const end = lastRow(stays.length);
  const column = (k: number): string => bars.ref(`${at(HEAD + 1, HELP + k)}:${at(HEAD + book.vats.length, HELP + k)}`);
  const [first, last] = [Math.min(...stays.map((s) => s.from)), Math.max(...stays.map((s) => s.to))];
  if (stays.length > 0) sheet.chart({
    kind: 'occupancy', title: 'Vats over the season', categories: column(0), valueFormat: 'd mmm', valueRange: [Math.floor(first) - 1, Math.ceil(last) + 1],
    series: Array.from({ length: most }, (_, k) => [
      { name: `free ${k + 1}`, values: column(1 + 2 * k), isHidden: true }, { name: `stay ${k + 1}`, values: column(2 + 2 * k), color: k % 2 === 0 ? '12454F' : 'C8742A' },
    ]).flat(), from: `B${end + 2}`, to: `I${end + 4 + Math.max(16, 2 * book.vats.length)}`,
  });
  return [sheet.build(), bars.build()];
}

/** Days free and days taken in turn, a row a vat: what a stacked bar draws. */
function barsSheet(season: Season, most: number): SheetBuilder {
  const { book, plan } = season;
  const sheet = sheetOf(season, 'Bars', 'Bars', 'What the chart on Vats draws: for each vat the day its first run begins, then days taken and days free in turn.', { widths: [2, 16], tab: '7FA6A9' });
  book.vats.forEach(({ name }, v) => {
    const own: readonly (VatStay & { readonly row: number })[] = plan.occupancy.map((s, i) => ({ ...s, row: HEAD + 1 + i })).filter((s) => s.vat === name);
    const row = HEAD + 1 + v;
    sheet.put(at(row, HELP), name, 'quiet');
    for (let k = 0; k < most; k++) {
      const stay = own[k];
      const before = own[k - 1];
      sheet.put(at(row, HELP + 1 + 2 * k), stay ? `=Vats!$E$${stay.row}${before ? `-Vats!$F$${before.row}` : ''}` : 0, 'quiet', { format: '0.0' });
      sheet.put(at(row, HELP + 2 + 2 * k), stay ? `=Vats!$F$${stay.row}-Vats!$E$${stay.row}` : 0, 'quiet', { format: '0.0' });
    }
  });
  return sheet;
}
