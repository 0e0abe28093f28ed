import { EGGS_VARY, FIGURES, FIGURE_HEADINGS, SPREAD_HEADINGS } from './workings/figureList';
import { originOf } from './reading/origin';
import { heightFor, styled } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import { SPREAD_SHARES, eggSpreadOf, shareSpreadOf } from '../../season/figures/spreads';
import type { LivingPages } from './context';
import { HEAD } from './layout';

/**
 * What the season takes for granted, each figure with its range and where it comes from; and how much it
 * varies.
 */
export function figuresSheet(pages: LivingPages): SheetModel {
  const { book, assumed } = pages;
  const sheet = pages.sheet(
    'figures',
    'What the season takes for granted',
    'Type your own figures over ours as soon as you have them, or let Check learn them ' +
      'from your records. Poor and good are the ends that were published or are usual.',
    {
      widths: [2, 36, 11, 14, 14, 10, 12, 46, 52],
      tab: '6B5B95',
      freeze: { rows: HEAD, columns: 2 },
      print: { titleRows: [HEAD, HEAD] },
    },
  );
  sheet.row(`B${HEAD}`, FIGURE_HEADINGS, 'heading');
  FIGURES.forEach((a, i) => {
    const row = HEAD + 1 + i;
    const isFixed = a.setWhenPlanned === true && (a.key === 'rearingDays' || a.key === 'nurseryDays');
    const note = isFixed ? `${a.note} Counts when planned again.` : a.note;
    sheet
      .row(`B${row}`, [
        styled(a.label, 'text'),
        styled(assumed[a.key], 'input', { format: a.format }),
        styled(a.unit === 'share' ? '' : a.unit, 'text'),
        styled(a.low, 'input', { format: a.format }),
        styled(a.high, 'input', { format: a.format }),
        styled(
          book.assumptions[a.key] === undefined
            ? `=IF(ABS(C${row}-${a.planned})<0.000000001,"published","your own")`
            : 'your own',
          'cell',
        ),
        styled(originOf(a), 'text'),
        styled(note, 'text'),
      ])
      .height(row, heightFor([a.label, 36], [originOf(a), 46], [note, 52]));
    sheet.validate({ range: `C${row}`, kind: 'decimal', min: a.min, max: a.max, message: a.note }).validate({
      range: `E${row}:F${row}`,
      kind: 'decimal',
      min: 0,
      max: Math.max(a.max, a.high),
      message: 'Ends of what is usual.',
    });
    pages.define(a.key, sheet.ref(`C${row}`));
    pages.define(`${a.key}_low`, sheet.ref(`E${row}`));
    pages.define(`${a.key}_high`, sheet.ref(`F${row}`));
  });
  const end = HEAD + FIGURES.length;
  sheet.table({ name: 'season_figures', range: `B${HEAD}:I${end}` });
  spreads(pages, sheet, end + 3);
  return sheet.build();
}

function spreads(
  { book, assumed }: LivingPages,
  sheet: ReturnType<LivingPages['sheet']>,
  head: number,
): void {
  sheet.row(`B${head}`, SPREAD_HEADINGS, 'heading').put(`H${head}`, 'Whose', 'heading');
  SPREAD_SHARES.forEach((key, i) => {
    const { runs, season } = shareSpreadOf(book, assumed, key);
    sheet
      .row(`B${head + 1 + i}`, [
        styled(FIGURES.find((a) => a.key === key)?.label ?? key, 'text'),
        styled(runs, 'input', { format: '0.000' }),
        styled(season, 'input', { format: '0.000' }),
      ])
      .put(`H${head + 1 + i}`, book.spreads[key] ? 'your own' : 'chosen here, no source', 'text');
  });
  const last = head + 1 + SPREAD_SHARES.length;
  const eggs = eggSpreadOf(book);
  sheet
    .row(`B${last}`, [
      styled(EGGS_VARY, 'text'),
      styled(eggs.runs, 'input', { format: '0.000' }),
      styled(eggs.season, 'input', { format: '0.000' }),
      styled(eggs.females, 'input', { format: '0.000' }),
    ])
    .put(`H${last}`, book.spreads.eggs ? 'your own' : 'chosen here, no source', 'text');
  sheet
    .validate({
      range: `C${head + 1}:D${last - 1}`,
      kind: 'decimal',
      min: 0,
      max: 0.5,
      message: 'Standard deviation of the share.',
    })
    .validate({
      range: `C${last}:E${last}`,
      kind: 'decimal',
      min: 0,
      max: 2,
      message: 'Standard deviation of the logarithm.',
    });
  sheet
    .merge(
      `B${last + 1}:H${last + 1}`,
      'Standard deviations behind the odds; they count when planned again. Published hatch ' +
        'rates of two seasons at one station lie further apart than these.',
      'quiet',
    )
    .height(last + 1, 30);
}
