import { addressOf } from '../../../sheet/formula/address';
import type { SheetBuilder } from '../../../sheet/workbook/build';
import type { SheetModel } from '../../../sheet/workbook/model';
import type { BatchStay, SeasonBatch } from '../../../season/types';
import { VAT_STAGES } from '../../../season/figures/stages';
import { MORNING } from '../../../season/problem';
import type { WorkingKey } from '../columns';
import type { LivingPages } from '../context';
import { HEAD } from '../layout';

const NEAR = 1e-3;

const BEGINS = { strip: 'strip', feed: 'first feed', weaned: 'weaned' } as const;

/** What a stay ends with: a step of its batch, or the buyer of an order. */
function endOf({ plan }: LivingPages, batch: SeasonBatch | undefined, stay: BatchStay): string {
  if (!batch) return BEGINS.weaned;
  if (Math.abs(stay.to - batch.firstFeedAt) < NEAR) return BEGINS.feed;
  const leaving = plan.allocations.filter(
    (a) => a.batch === batch.name && Math.abs(a.on + MORNING - stay.to) < NEAR,
  );
  return leaving.at(-1)?.order ?? (Math.abs(stay.to - batch.weanedAt) < 1 ? BEGINS.weaned : '');
}

/** Where each stay begins and ends, in words its times are found by. */
export function stayWorkingsSheet(pages: LivingPages): SheetModel {
  const { stays, stayWorkings: w, vats, workings } = pages.tables;
  const sheet = pages.sheet('stays', 'What the stays on Vats hang on', 'Workings: nothing to type.', {
    widths: [2, ...w.widths],
    tab: '6B5B95',
  });
  w.headings(sheet);
  pages.rows.stays.forEach((stay, i) => {
    const row = w.first + i;
    const there = (key: keyof typeof stays.letters): string => stays.there(key, stays.first + i);
    const batch = pages.plan.batches.find(({ name }) => name === stay.batch);
    const ends = endOf(pages, batch, stay);
    const isFixed = batch?.state !== 'planned' || ends === '';
    w.line(sheet, row, {
      litres: `=${vats.find('litres', 'vat', there('vat'))}`,
      line: `=MATCH(${there('batch')},${workings.range('batch')},0)`,
      begins: { eggs: BEGINS.strip, fry: BEGINS.feed, nursing: BEGINS.weaned }[stay.stage],
      ends,
      fixedFrom: isFixed ? stay.from : {},
      fixedTo: isFixed ? stay.to : {},
      today: pages.fx(
        `=N(${w.here('today', row - 1)})+IF(AND(${there('from')}<{today}+1,${there('to')}>{today}+1/24),1,0)`,
      ),
    });
  });
  return sheet.build();
}

function staysTable(pages: LivingPages, sheet: SheetBuilder): void {
  const { stays, stayWorkings: w, workings, orders, shares, promises } = pages.tables;
  sheet.put(`B${stays.head - 1}`, 'Who is in which vat', 'section');
  stays.headings(sheet);
  pages.rows.stays.forEach((stay, i) => {
    const row = stays.first + i;
    const here = (key: keyof typeof stays.letters, at = row): string => stays.here(key, at);
    const own = (key: keyof typeof w.letters): string => w.there(key, w.first + i);
    const of = (key: WorkingKey): string => workings.lookup(key, own('line'));
    const byStage = (eggs: string, fry: string, nursing: string): string =>
      `IF(${here('stage')}="eggs",${eggs},IF(${here('stage')}="fry",${fry},${nursing}))`;
    const ends = `IF(${own('ends')}="${BEGINS.feed}",${of('feed')},IF(${own('ends')}="${BEGINS.weaned}",${of('weaned')}+8/24,IFERROR(${orders.find('due', 'order', own('ends'))},${promises.find('due', 'order', own('ends'))})+8/24))`;
    const mates = `SUMIFS(${w.range('litres')},${stays.range('batch')},${here('batch')},${stays.range('stage')},${here('stage')})`;
    // What is promised of them moves on, and with it what may be needed if fewer live, as far as there is room.
    const promised = `${of('fry')}*SUMIFS(${shares.range('part')},${shares.range('batch')},${here('batch')},${shares.range('stage')},"nursing")`;
    const nursed = `MAX(${promised},MIN(${of('fry')},${mates}*${pages.fx('{nurseryPerLitre}')}))`;
    stays.line(sheet, row, {
      vat: stay.vat,
      batch: stay.batch,
      stage: stay.stage,
      from: `=IF(ISNUMBER(${own('fixedFrom')}),${own('fixedFrom')},${byStage(of('strip'), of('feed'), `${of('weaned')}+8/24`)})`,
      to: `=IF(ISNUMBER(${own('fixedTo')}),${own('fixedTo')},${ends})`,
      // Fish that go on in their own water at once need no cleaning between; after a gap the vat is scrubbed.
      clean: pages.fx(
        `=${here('to')}+IF(AND(${here('vat', row + 1)}=${here('vat')},${here('batch', row + 1)}=${here('batch')},ABS(${here('from', row + 1)}-${here('to')})<0.01),0,{cleaningDays})`,
      ),
      days: `=${here('to')}-${here('from')}`,
      fish: `=IF(${mates}>0,${byStage(of('eggs'), of('feeding'), nursed)}*${own('litres')}/${mates},0)`,
      perLitre: `=IF(${own('litres')}>0,${here('fish')}/${own('litres')},0)`,
      most: pages.fx(`=${byStage('{eggsPerLitre}', '{larvaePerLitre}', '{nurseryPerLitre}')}`),
      verdict: `=IF(ISERROR(${here('perLitre')}),"not calculated here",IF(AND(${here('vat', row + 1)}=${here('vat')},${here('clean')}>${here('from', row + 1)}+0.00001),"CLASH below",IF(${here('perLitre')}>${here('most')}*1.001,"too many","fits")))`,
    });
  });
  const at = stays.here('verdict', stays.first);
  sheet
    .when({ range: stays.own('verdict'), formula: `=LEFT(${at},5)="CLASH"`, style: 'bad' })
    .when({ range: stays.own('verdict'), formula: `=${at}="too many"`, style: 'warning' });
}

/** The vats there are, what each may hold, and who is in them when. */
export function vatsSheet(pages: LivingPages, bars: SheetBuilder | undefined): SheetModel {
  const { vats, stays } = pages.tables;
  const { book } = pages;
  const sheet = pages.sheet(
    'vats',
    'Vats',
    'One line a vat; new vats and what they may hold count when planned again. Below, every stay: ' +
      'its times follow the batches.',
    {
      widths: [2, ...stays.widths],
      tab: '7FA6A9',
      freeze: { rows: HEAD, columns: 2 },
      print: { titleRows: [HEAD, HEAD], area: `A1:${stays.right}${stays.last}` },
    },
  );
  vats.headings(sheet);
  for (let i = 0; i < vats.lines; i++) {
    const [row, vat] = [vats.first + i, book.vats[i]];
    const name = vats.here('vat', row);
    const holds = Object.fromEntries(
      VAT_STAGES.map((stage) => [stage, vat ? (vat.holds.includes(stage) ? 'yes' : 'no') : {}]),
    );
    vats.line(sheet, row, {
      vat: vat?.name ?? {},
      litres: vat?.litres ?? {},
      ...holds,
      outFrom: vat?.outFrom ?? {},
      outUntil: vat?.outUntil ?? {},
      days: `=IF(${name}="",0,SUMIFS(${stays.range('days')},${stays.range('vat')},${name}))`,
    });
  }
  sheet.table({ name: 'season_vats', range: vats.area });
  sheet
    .validate({
      range: vats.own('litres'),
      kind: 'decimal',
      min: 10,
      max: 200_000,
      message: 'Water in the vat in litres.',
    })
    .validate({
      range: vats.own('eggs', 'nursing'),
      kind: 'list',
      items: ['yes', 'no'],
      message: 'May it hold these?',
    })
    .validateDays(vats.own('outFrom', 'outUntil'), 'Days it cannot be used.');
  staysTable(pages, sheet);
  if (bars && pages.rows.stays.length > 0) chart(pages, sheet, bars);
  return sheet.build();
}

const at = (row: number, column: number): string => addressOf(row - 1, column);
function mostStays({ book, rows }: LivingPages): number {
  const times = new Map(book.vats.map(({ name }) => [name, 0]));
  for (const { vat } of rows.stays) times.set(vat, (times.get(vat) ?? 0) + 1);
  return Math.max(1, ...book.vats.map(({ name }) => times.get(name) ?? 0));
}

function chart(pages: LivingPages, sheet: SheetBuilder, bars: SheetBuilder): void {
  const stays = pages.rows.stays;
  const lines = pages.book.vats.length;
  const column = (k: number): string => bars.ref(`${at(HEAD + 1, 1 + k)}:${at(HEAD + lines, 1 + k)}`);
  sheet.chart({
    kind: 'occupancy',
    title: 'Vats over the season',
    categories: column(0),
    valueFormat: 'd mmm',
    valueRange: [
      Math.floor(Math.min(...stays.map((s) => s.from))) - 1,
      Math.ceil(Math.max(...stays.map((s) => s.to))) + 1,
    ],
    series: Array.from({ length: mostStays(pages) }, (_, k) => [
      { name: `free ${k + 1}`, values: column(1 + 2 * k), isHidden: true },
      { name: `stay ${k + 1}`, values: column(2 + 2 * k), color: k % 2 === 0 ? '12454F' : 'C8742A' },
    ]).flat(),
    from: `N${HEAD}`,
    to: `X${HEAD + Math.max(16, 2 * lines)}`,
  });
}

/** Days free and days taken in turn, a row a vat: what the picture on Vats draws. */
export function barsSheet(pages: LivingPages): SheetBuilder {
  const { stays, vats } = pages.tables;
  const sheet = pages.sheet('bars', 'What the picture on Vats draws', 'Workings: nothing to type.', {
    widths: [2, 16],
    tab: '7FA6A9',
  });
  const most = mostStays(pages);
  pages.book.vats.forEach(({ name }, v) => {
    const own = pages.rows.stays.flatMap((s, i) => (s.vat === name ? [stays.first + i] : []));
    const row = HEAD + 1 + v;
    sheet.put(at(row, 1), `=${vats.there('vat', vats.first + v)}`, 'quiet');
    for (let k = 0; k < most; k++) {
      const [stay, before] = [own[k], own[k - 1]];
      const from =
        stay === undefined
          ? 0
          : `=${stays.there('from', stay)}${before === undefined ? '' : `-${stays.there('to', before)}`}`;
      const days = stay === undefined ? 0 : `=${stays.there('days', stay)}`;
      sheet.put(at(row, 2 + 2 * k), from, 'quiet', { format: '0.0' });
      sheet.put(at(row, 3 + 2 * k), days, 'quiet', { format: '0.0' });
    }
  });
  return sheet;
}
