// Long: the first page, block by block.
import { CAUTIONS } from '../../../functions/cautions';
import { VERDICTS, verdictText } from '../../../maths/verdict';
import type { SheetBuilder } from '../../../sheet/workbook/build';
import { heightFor, styled } from '../../../sheet/workbook/build';
import type { SheetModel } from '../../../sheet/workbook/model';
import type { LivingPages } from '../context';
import { WHOLE } from '../columns';
import { col } from '../table';
import { stillWater } from '../workings/stillWater';
import { VERDICT_STYLE } from '../workings/verdicts';

const LAST = 'J';
/** Whom a task is for, and the line of the task list it stands in. */
const BUYER = 'J';
const LINE = 'K';
const WIDTH = 140;
const LINES = { today: 10, tomorrow: 8, vats: 12, orders: 8, findings: 8 } as const;
const BOXES = 4;

function boxes(pages: LivingPages, sheet: SheetBuilder): void {
  const { plan } = pages;
  const box = (letter: string, label: string, content: string | number, format = '@'): void => {
    sheet
      .put(`${letter}${BOXES}`, label, 'heading')
      .put(
        `${letter}${BOXES + 1}`,
        styled(typeof content === 'string' ? pages.fx(content) : content, 'big', { format }),
      );
  };
  box('B', 'TODAY', '=TODAY()', 'ddd d mmm');
  sheet
    .merge(`C${BOXES}:D${BOXES}`, 'CHECKS', 'heading')
    .merge(
      `C${BOXES + 1}:D${BOXES + 1}`,
      pages.fx(
        '=IF(ISERROR({broken}+{unknown}),"? not calculated here",IF({unknown}>0,"? not calculated here",' +
          'IF({broken}=0,"● all hold","× "&{broken}&" do not hold")))',
      ),
      'big',
    );
  box('E', 'PROMISE', Math.floor(plan.promise), WHOLE);
  box('F', 'HOPE FOR', Math.floor(plan.hope), WHOLE);
  sheet
    .merge(`G${BOXES}:H${BOXES}`, 'ALL ORDERS', 'heading')
    .merge(`G${BOXES + 1}:H${BOXES + 1}`, verdictText(plan.verdict), VERDICT_STYLE[plan.verdict]);
  sheet
    .merge(`I${BOXES}:J${BOXES}`, 'NOT TICKED FROM THIS WEEK', 'heading')
    .merge(`I${BOXES + 1}:J${BOXES + 1}`, `=MAX(0,${pages.tables.tasks.range('late')})`, 'big', {
      format: '0',
    });
  sheet.height(BOXES, 30).height(BOXES + 1, 28);
  pages.define('today', sheet.ref(`B${BOXES + 1}`));
  const light = `$C$${BOXES + 1}`;
  sheet
    .when({ range: `C${BOXES + 1}:D${BOXES + 1}`, formula: `=LEFT(${light},1)="●"`, style: 'good' })
    .when({ range: `C${BOXES + 1}:D${BOXES + 1}`, formula: `=LEFT(${light},1)="×"`, style: 'bad' })
    .when({ range: `C${BOXES + 1}:D${BOXES + 1}`, formula: `=LEFT(${light},1)="?"`, style: 'warning' });
}

const section = (sheet: SheetBuilder, row: number, title: string): void => {
  for (const letter of 'BCDEFGHIJ') sheet.put(`${letter}${row}`, letter === 'B' ? title : '', 'section');
};

/** What stands on the first page on a day without work: the next task, of a list in the order of time. */
function nextWork({ tables: { tasks, calendar }, fx }: LivingPages): string {
  const when = tasks.range('when');
  const line = fx(`IFERROR(MATCH({today}+1,${when},1),0)+1`);
  const task = `TEXT(INDEX(${when},${line}),"ddd d mmm, hh:mm")&": "&INDEX(${calendar.range('what')},${line})`;
  const none = '"Nothing today, and nothing after it."';
  return `IFERROR(IF(N(INDEX(${when},${line}))>0,"Nothing today. Next: "&${task},${none}),${none})`;
}

/** Work of one day: the k-th task whose counter reaches k. */
function work(
  pages: LivingPages,
  sheet: SheetBuilder,
  from: number,
  which: 'today' | 'tomorrow',
  title: string,
): number {
  const { tasks, calendar } = pages.tables;
  const lines = LINES[which];
  section(sheet, from, title);
  for (let k = 0; k < lines; k++) {
    const row = from + 1 + k;
    const at = `$${LINE}${row}`;
    const of = (cell: string, otherwise = '""'): string => `=IF(ISNUMBER(${at}),${cell},${otherwise})`;
    sheet
      .put(`B${row}`, of(`ROUND(MOD(${tasks.lookup('when', at)},1)*1440,0)/1440`), 'cell', {
        format: 'hh:mm',
      })
      .put(`C${row}`, of(tasks.lookup('batch', at)), 'text')
      .merge(
        `D${row}:G${row}`,
        of(calendar.lookup('what', at), which === 'today' && k === 0 ? nextWork(pages) : '""'),
        'text',
      )
      .put(`H${row}`, of(calendar.lookup('amount', at)), 'cell', { format: '#,##0.##' })
      .put(`I${row}`, of(`${calendar.lookup('unit', at)}&""`), 'text')
      .put(
        `${LINE}${row}`,
        k === 0
          ? `=IFERROR(MATCH(1,${tasks.range(which)},0),"")`
          : `=IF(ISNUMBER(${LINE}${row - 1}),IFERROR(MATCH(1+${tasks.lookup(which, `${LINE}${row - 1}`)},${tasks.range(which)},0),""),"")`,
        'quiet',
        { format: '"line "0' },
      )
      .put(`${BUYER}${row}`, of(`${calendar.lookup('buyer', at)}&""`), 'text')
      .height(row, 28);
  }
  const more = `MAX(0,MAX(${tasks.range(which)})-${lines})`;
  sheet.merge(
    `B${from + 1 + lines}:${LAST}${from + 1 + lines}`,
    `=IF(${more}>0,"and "&${more}&" more on Calendar","")`,
    'quiet',
  );
  return from + lines + 3;
}

/** Headings of the vats that hold fish today. */
export const VATS_TODAY = {
  vat: col('Vat', 14, 'label'),
  batch: col('Batch', 9, 'text'),
  stage: col('Holds', 12, 'text'),
  fish: col('Fish', 14, 'cell', WHOLE),
  cysts: col('Cysts, g', 14, 'cell'),
  dry: col('Dry feed, g', 26, 'result'),
  meal: col('a meal, g', 13, 'cell'),
  perLitre: col('In a litre', 18, 'cell'),
  line: col('Line', 9, 'quiet'),
} as const;

/** The vats that hold fish today, with the food of the day. */
function vats(pages: LivingPages, sheet: SheetBuilder, from: number): number {
  const { stays, stayWorkings: w, days, workings } = pages.tables;
  const lines = Math.min(LINES.vats, Math.max(1, pages.book.vats.length));
  section(sheet, from, 'Vats today');
  sheet.row(
    `B${from + 1}`,
    Object.values(VATS_TODAY).map(({ title }) => title),
    'heading',
  );
  for (let k = 0; k < lines; k++) {
    const row = from + 2 + k;
    const at = `$J${row}`;
    const of = (cell: string): string => `=IF(ISNUMBER(${at}),${cell},"")`;
    const batch = `$C${row}`;
    const today = (key: 'fishNow' | 'cysts' | 'dry'): string =>
      `SUMIFS(${days.range(key)},${days.range('batch')},${batch},${days.range('date')},{today})`;
    // Fish of a batch stand in its vats by their water; what is read of the batch goes by the same part.
    const part = `${w.lookup('litres', at)}/MAX(1,SUMIFS(${w.range('litres')},${stays.range('batch')},${batch},${stays.range('stage')},$D${row}))`;
    const isFed = `$D${row}<>"eggs"`;
    sheet
      .put(`B${row}`, of(stays.lookup('vat', at)), 'label')
      .put(`C${row}`, of(stays.lookup('batch', at)), 'text')
      .put(`D${row}`, of(stays.lookup('stage', at)), 'text')
      .put(
        `E${row}`,
        pages.fx(
          of(`IF(${isFed},${today('fishNow')}*${part},${workings.find('eggs', 'batch', batch)}*${part})`),
        ),
        'cell',
        { format: WHOLE },
      )
      .put(`F${row}`, pages.fx(of(`IF(${isFed},${today('cysts')}*${part},0)`)), 'cell', {
        format: '#,##0.0;-#,##0.0;"–"',
      })
      .put(`G${row}`, pages.fx(of(`IF(${isFed},${today('dry')}*${part},0)`)), 'result', {
        format: '#,##0.0;-#,##0.0;"–"',
      })
      .put(`H${row}`, pages.fx(`=IF(ISNUMBER(${at}),$G${row}/{meals},"")`), 'cell', {
        format: '#,##0.0;-#,##0.0;"–"',
      })
      .put(`I${row}`, of(`IF(${w.lookup('litres', at)}>0,$E${row}/${w.lookup('litres', at)},0)`), 'cell', {
        format: '#,##0.0',
      })
      .put(
        `J${row}`,
        k === 0
          ? `=IFERROR(MATCH(1,${w.range('today')},0),"")`
          : `=IF(ISNUMBER(J${row - 1}),IFERROR(MATCH(1+${w.lookup('today', `J${row - 1}`)},${w.range('today')},0),""),"")`,
        'quiet',
        { format: '"line "0' },
      );
  }
  return from + lines + 3;
}

/** So many batches are seen at once; more stand on the sheet of days. */
const CARED = 5;
/** Water, air and food of each batch that is fed today. */
function care(pages: LivingPages, sheet: SheetBuilder, from: number): number {
  const { days } = pages.tables;
  const lines = Math.min(CARED, Math.max(1, pages.rows.batches.length));
  section(sheet, from, 'Water, air and food today');
  sheet.row(
    `B${from + 1}`,
    [
      'Batch',
      'Day fed',
      'Fish',
      'New water, L',
      'Of its vats',
      'No air: act within, min',
      'Grain, mm',
      'Usual dead, to',
      'Line',
    ],
    'heading',
  );
  for (let k = 0; k < lines; k++) {
    const row = from + 2 + k;
    const of = (key: keyof typeof days.letters): string =>
      `=IF(ISNUMBER($J${row}),${days.lookup(key, `$J${row}`)},"")`;
    const before = `J${row - 1}`;
    const next = `IFERROR(MATCH(1+${days.lookup('today', before)},${days.range('today')},0),"")`;
    sheet
      .put(`B${row}`, of('batch'), 'label')
      .put(`C${row}`, of('day'), 'cell', { format: '0' })
      .put(`D${row}`, of('fishNow'), 'cell', { format: WHOLE })
      .put(`E${row}`, of('change'), 'result', { format: WHOLE })
      .put(`F${row}`, of('changes'), 'cell', { format: '0.0" times"' })
      .put(`G${row}`, of('air'), 'result', { format: '0' })
      .put(`H${row}`, of('grain'), 'cell', { format: '0.0' })
      .put(`I${row}`, of('deadTo'), 'cell', { format: WHOLE })
      .put(
        `J${row}`,
        k === 0 ? `=IFERROR(MATCH(1,${days.range('today')},0),"")` : `=IF(ISNUMBER(${before}),${next},"")`,
        'quiet',
        { format: '"line "0' },
      );
  }
  const last = from + 1 + lines;
  sheet
    .when({
      range: `F${from + 2}:F${last}`,
      formula: `=AND(ISNUMBER($F${from + 2}),$F${from + 2}>1)`,
      style: 'warning',
    })
    .merge(
      `B${last + 1}:${LAST}${last + 1}`,
      'Change it in parts, aired and of the same temperature; more than their vats hold a day needs flow, ' +
        'more vats or less feed. Air gone: stop feed, switch the mains off before touching a pump, move the ' +
        'water by hand, then fresh aired water.',
      'quiet',
    )
    .height(last + 1, 30);
  const hard = stillWater(pages).slice(0, CARED);
  hard.forEach(({ message }, i) =>
    sheet
      .merge(`B${last + 2 + i}:${LAST}${last + 2 + i}`, message, 'warning')
      .height(last + 2 + i, heightFor([message, WIDTH - 20])),
  );
  return last + hard.length + 3;
}

function orders(pages: LivingPages, sheet: SheetBuilder, from: number): number {
  const { orders: o } = pages.tables;
  const shown = [...pages.book.orders.entries()]
    .filter(([, order]) => !order.cancelled && order.due >= pages.plan.plannedOn)
    .sort(([, a], [, b]) => a.due - b.due)
    .slice(0, LINES.orders);
  section(sheet, from, 'Next orders');
  sheet.row(
    `B${from + 1}`,
    ['Due', 'Order', 'Buyer', 'Fish', 'Now expected', 'Promise', 'Hope for', 'Verdict'],
    'heading',
  );
  shown.forEach(([, order], k) => {
    const row = from + 2 + k;
    const of = (key: keyof typeof o.letters): string =>
      `=IF(COUNTIFS(${o.range('order')},$C${row})=0,"",${o.find(key, 'order', `$C${row}`)}${key === 'buyer' ? '&""' : ''})`;
    sheet
      .put(`B${row}`, of('due'), 'cell', { format: 'ddd d mmm' })
      .put(`C${row}`, order.name, 'label')
      .put(`D${row}`, of('buyer'), 'text')
      .put(`E${row}`, of('number'), 'cell', { format: WHOLE })
      .put(`F${row}`, of('expected'), 'result', { format: WHOLE })
      .put(`G${row}`, of('promise'), 'cell', { format: WHOLE })
      .put(`H${row}`, of('hope'), 'cell', { format: WHOLE })
      .put(`I${row}`, of('verdict'), 'text');
    for (const word of VERDICTS)
      sheet.when({
        range: `I${row}`,
        formula: `=$I${row}="${verdictText(word)}"`,
        style: VERDICT_STYLE[word],
      });
  });
  return from + 3 + Math.max(1, shown.length);
}

export const SAID = 'Said on the day of planning';
/** Said where the plan has nothing to say: nothing at all, but for the vats, but for chance. */
export const NOTHING_SAID = 'Nothing stands in the way.';
const BUT_VATS = 'The orders can be met; what the vats ask for is said above.';
const BUT_CHANCE = 'Nothing but chance stands in the way: see the verdict.';
export const SAID_OF_NOTHING: readonly string[] = [NOTHING_SAID, BUT_VATS, BUT_CHANCE];
const nothingSaid = (pages: LivingPages): string =>
  stillWater(pages).length > 0
    ? BUT_VATS
    : pages.plan.verdict === 'safe' || pages.plan.verdict === 'likely'
      ? NOTHING_SAID
      : BUT_CHANCE;
/** Stands before what cannot be met, so that it shows without colour. */
export const CANNOT = '× ';

/** Said plainly, where formulas cannot be live. */
const ELSEWHERE =
  'Live formulas need the Spawnbook add-in in Excel, or its local sheet. In LibreOffice, Gnumeric or Excel ' +
  'without it, cells show the last values until they are calculated again; then they show an error and the ' +
  'checks say "not calculated here". A shared copy (Share in the pane) opens anywhere with every value. ' +
  'Setup, Brood fish, Figures, Notes and the workings are hidden sheets: right click on a sheet name, Unhide.';

function words(pages: LivingPages, sheet: SheetBuilder, from: number): void {
  let row = from;
  const say = (text: string, style: 'bad' | 'quiet' | 'warning'): void => {
    sheet
      .merge(`B${row}:${LAST}${row}`, text, style)
      .height(row, heightFor([text, style === 'quiet' ? WIDTH : WIDTH - 20]));
    row++;
  };
  const { findings } = pages.plan;
  section(sheet, row++, SAID);
  if (findings.length === 0) say(nothingSaid(pages), 'quiet');
  for (const { message, kind } of findings.slice(0, LINES.findings))
    say(kind === 'cannot' ? `${CANNOT}${message}` : message, kind === 'cannot' ? 'bad' : 'quiet');
  if (findings.length > LINES.findings)
    say(`and ${findings.length - LINES.findings} more sentences in the pane`, 'quiet');
  row++;
  say(ELSEWHERE, 'quiet');
  say(CAUTIONS['HORMONE'] ?? '', 'warning');
}

/** The first page: what to do today and tomorrow, whether everything holds, and how sure the orders are. */
export function todaySheet(pages: LivingPages): SheetModel {
  const sheet = pages.sheet(
    'today',
    pages.fx('={hatchery}&": today and tomorrow"'),
    'Follows the day. Tick what is done on Calendar, write what was counted on Counts.',
    {
      widths: [2, 20, 9, 18, 14, 14, 22, 13, 16, 15, 8],
      tab: '12454F',
      print: { onePage: true, landscape: false },
    },
  );
  boxes(pages, sheet);
  let row = work(pages, sheet, BOXES + 3, 'today', 'Today');
  row = work(pages, sheet, row, 'tomorrow', 'Tomorrow');
  row = vats(pages, sheet, row);
  row = care(pages, sheet, row);
  row = orders(pages, sheet, row);
  words(pages, sheet, row);
  return sheet.build();
}
