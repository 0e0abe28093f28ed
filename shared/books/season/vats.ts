import { addressOf } from '../../sheet/formula/address';
import type { SheetBuilder } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import type { VatStay } from '../../season/result';
import type { VatStageKey } from '../../season/orderBook';
import { VAT_STAGES } from '../../season/orderBook';
import { FISH, RUNS, STAYS, VATS } from './columns';
import type { Pages } from './context';
import { FIRST, HEAD, lastRow } from './context';

const SPARE_VATS = 4;
/** Column B, where the figures of the chart begin, counted from 0. */
const HELP = 1;
const at = (row: number, column: number): string => addressOf(row - 1, column);
/** Vats are emptied at eight in the morning. */
const MORNING = '8/24';

const DENSITY: Readonly<Record<VatStageKey, string>> = {
  eggs: '{eggsPerLitre}',
  fry: '{larvaePerLitre}',
  nursing: '{nurseryPerLitre}',
};
const FISH_IN: Readonly<Record<VatStageKey, keyof typeof FISH.letters>> = {
  eggs: 'eggs',
  fry: 'feeding',
  nursing: 'fry',
};

/** The vats there are, what each may hold, and who is in them when. */
export function vatsSheet(pages: Pages, bars: SheetBuilder): SheetModel {
  const { book, plan } = pages;
  const sheet = pages.sheet(
    'vats',
    'Vats',
    'One line a vat. New vats and what they may hold count when planned again. The ' +
      'picture shows who is in which vat; gaps are free or cleaning.',
    {
      widths: [2, ...VATS.widths, 12, 12, 12, 12],
      tab: '7FA6A9',
      freeze: { rows: HEAD, columns: 0 },
    },
  );
  VATS.headings(sheet);
  const c = VATS.letters;
  for (let i = 0; i < book.vats.length + SPARE_VATS; i++) {
    const [row, vat] = [FIRST + i, book.vats[i]];
    const holds = Object.fromEntries(
      VAT_STAGES.map((stage) => [stage, vat?.holds.includes(stage) ? 'yes' : 'no']),
    ) as Record<VatStageKey, string>;
    VATS.row(
      sheet,
      row,
      vat
        ? {
            vat: vat.name,
            litres: vat.litres,
            ...holds,
            stays: `=COUNTIFS(${STAYS.range('vat', plan.occupancy.length)},${c.vat}${row})`,
            days: `=SUMIFS(${STAYS.range('days', plan.occupancy.length)},${STAYS.range('vat', plan.occupancy.length)},${c.vat}${row})`,
          }
        : {},
    );
  }
  const last = lastRow(book.vats.length) + SPARE_VATS;
  sheet.table({ name: 'season_vats', range: `${VATS.first}${HEAD}:${VATS.last}${last}` });
  sheet.validate({
    range: `${c.litres}${FIRST}:${c.litres}${last}`,
    kind: 'decimal',
    min: 10,
    max: 200_000,
    message: 'Water in the vat in litres.',
  });
  sheet.validate({
    range: `${c.eggs}${FIRST}:${c.nursing}${last}`,
    kind: 'list',
    items: ['yes', 'no'],
    message: 'May it hold these?',
  });
  chartOf(pages, sheet, bars, last + 2);
  return sheet.build();
}

function chartOf({ book, plan }: Pages, sheet: SheetBuilder, bars: SheetBuilder, from: number): void {
  const stays = plan.occupancy;
  if (stays.length === 0) return;
  const column = (k: number): string =>
    bars.ref(`${at(FIRST, HELP + k)}:${at(HEAD + book.vats.length, HELP + k)}`);
  sheet.chart({
    kind: 'occupancy',
    title: 'Vats over the season',
    categories: column(0),
    valueFormat: 'd mmm',
    valueRange: [
      Math.floor(Math.min(...stays.map((s) => s.from))) - 1,
      Math.ceil(Math.max(...stays.map((s) => s.to))) + 1,
    ],
    series: Array.from({ length: mostStays({ book, plan }) }, (_, k) => [
      { name: `free ${k + 1}`, values: column(1 + 2 * k), isHidden: true },
      { name: `stay ${k + 1}`, values: column(2 + 2 * k), color: k % 2 === 0 ? '12454F' : 'C8742A' },
    ]).flat(),
    from: `B${from}`,
    to: `L${from + Math.max(16, 2 * book.vats.length)}`,
  });
}

const mostStays = ({ book, plan }: Pick<Pages, 'book' | 'plan'>): number =>
  Math.max(1, ...book.vats.map(({ name }) => plan.occupancy.filter((s) => s.vat === name).length));

/** Every stay of every vat: its times and fish follow the run, clashes and crowding are said. */
export function staysSheet(pages: Pages): SheetModel {
  const { book, plan } = pages;
  const stays = plan.occupancy;
  const c = STAYS.letters;
  const sheet = pages.sheet(
    'stays',
    'Who is in which vat',
    'Times follow Runs. After its last day a vat is cleaned and refilled before the next run.',
    {
      widths: [2, ...STAYS.widths],
      tab: '7FA6A9',
      freeze: { rows: HEAD, columns: 2 },
      print: { titleRows: [HEAD, HEAD] },
    },
  );
  STAYS.headings(sheet);
  stays.forEach((stay, i) => {
    const row = FIRST + i;
    const run = FIRST + stay.run - 1;
    const isNursed = (plan.runs[stay.run - 1]?.vats.length ?? 0) > 2;
    const litres = (name: string): string =>
      VATS.cell('litres', FIRST + book.vats.findIndex((v) => v.name === name));
    const mates = plan.runs[stay.run - 1]?.vats.find(({ stage }) => stage === stay.stage)?.names ?? [
      stay.vat,
    ];
    const leaves = `${RUNS.cell('due', run)}+${MORNING}`;
    const weaned = `${RUNS.cell('weaned', run)}+${MORNING}`;
    const [from, to] = {
      eggs: [RUNS.cell('strip', run), RUNS.cell('feed', run)],
      fry: [RUNS.cell('feed', run), isNursed ? weaned : leaves],
      nursing: [weaned, leaves],
    }[stay.stage] as [string, string];
    const next = stays[i + 1];
    STAYS.row(sheet, row, {
      vat: `=${VATS.cell('vat', FIRST + book.vats.findIndex((v) => v.name === stay.vat))}`,
      run: stay.run,
      stage: stay.stage,
      from: `=${from}`,
      to: `=${to}`,
      clean: stay.cleanAt > stay.to ? pages.fx(`=${c.to}${row}+{cleaningDays}`) : `=${c.to}${row}`,
      days: `=${c.to}${row}-${c.from}${row}`,
      fish: `=${FISH.cell(FISH_IN[stay.stage], run)}*${litres(stay.vat)}/(${mates.map(litres).join('+')})`,
      perLitre: `=${c.fish}${row}/${litres(stay.vat)}`,
      most: pages.fx(`=${DENSITY[stay.stage]}`),
      verdict:
        next?.vat === stay.vat
          ? `=IF(${c.clean}${row}>${c.from}${row + 1}+0.00001,"CLASH with run "&${c.run}${row + 1},IF(${c.perLitre}${row}>${c.most}${row}*1.001,"too many","fits"))`
          : `=IF(${c.perLitre}${row}>${c.most}${row}*1.001,"too many","fits")`,
    });
  });
  const last = lastRow(stays.length);
  if (stays.length > 0)
    sheet.table({ name: 'season_stays', range: `${STAYS.first}${HEAD}:${STAYS.last}${last}` });
  sheet
    .when({
      range: `${c.verdict}${FIRST}:${c.verdict}${last}`,
      formula: `=LEFT($${c.verdict}${FIRST},5)="CLASH"`,
      style: 'bad',
    })
    .when({
      range: `${c.verdict}${FIRST}:${c.verdict}${last}`,
      formula: `=$${c.verdict}${FIRST}="too many"`,
      style: 'warning',
    });
  return sheet.build();
}

/** Days free and days taken in turn, a row a vat: what a stacked bar draws. */
export function barsSheet(pages: Pages): SheetBuilder {
  const { book, plan } = pages;
  const sheet = pages.sheet(
    'bars',
    'Bars',
    'What the chart on Vats draws: for each vat the day its first run begins, then days ' +
      'taken and days free in turn.',
    { widths: [2, 16], tab: '7FA6A9' },
  );
  const cell = (key: 'from' | 'to', row: number): string => STAYS.cell(key, row);
  book.vats.forEach(({ name }, v) => {
    const own: readonly (VatStay & { readonly row: number })[] = plan.occupancy
      .map((s, i) => ({ ...s, row: FIRST + i }))
      .filter((s) => s.vat === name);
    const row = FIRST + v;
    sheet.put(at(row, HELP), `=${VATS.cell('vat', FIRST + v)}`, 'quiet');
    for (let k = 0; k < mostStays(pages); k++) {
      const stay = own[k];
      const before = own[k - 1];
      sheet.put(
        at(row, HELP + 1 + 2 * k),
        stay ? `=${cell('from', stay.row)}${before ? `-${cell('to', before.row)}` : ''}` : 0,
        'quiet',
        { format: '0.0' },
      );
      sheet.put(
        at(row, HELP + 2 + 2 * k),
        stay ? `=${cell('to', stay.row)}-${cell('from', stay.row)}` : 0,
        'quiet',
        { format: '0.0' },
      );
    }
  });
  return sheet;
}
