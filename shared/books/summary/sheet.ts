// Long: one page, its blocks in the order they are printed.
import { ASSUMPTIONS } from '../../families/assumptions';
import { PRODUCTS } from '../../run/fields';
import { named } from '../../run/results';
import type { ChainStep } from '../../run/steps';
import { stepsOf, vatStagesOf } from '../../run/steps';
import { SheetBuilder, styled } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import { assumptionKeys, MET, MOMENTS, NOT_COUNTED, NOT_MET, PLAIN, TAKES, TO_BUY, TRUST } from './content';
import type { PlanPlaces } from './places';

const WHOLE = '#,##0';
const DAY = 'd mmm yyyy';
const MOMENT = 'd mmm yyyy hh:mm';
/** Columns of an assumption, counted from its value: poor end, good end, where from. */
const LOW = 2;
const HIGH = 3;
const ORIGIN = 4;
const TABLE = 13;
const FULL_WIDTH = 128;
const ORIGIN_WIDTH = 50;
const LINE = 13.5;

/** What the blocks of the page share. */
interface Page {
  readonly sheet: SheetBuilder;
  readonly plan: PlanPlaces;
  readonly product: (typeof PRODUCTS)[number];
  readonly steps: readonly ChainStep[];
  readonly fx: (formula: string) => string;
}

const heightOf = (text: string, width: number): number => Math.ceil(text.length / width) * LINE + 3;

function section({ sheet }: Page, columns: string, row: number, title: string): void {
  [...columns].forEach((column, i) => sheet.put(`${column}${row}`, i === 0 ? title : '', 'section'));
}

/** Rows of the table of steps: the first holds the eggs, the last what the buyer gets. */
const first = TABLE + 1;
const lastOf = ({ steps }: Page): number => first + steps.length;

function boxes(page: Page, takes: number): void {
  const { sheet, fx, product } = page;
  const last = lastOf(page);
  const box = (range: string, head: string, formula: string, format?: string): void => {
    const below = range.replaceAll('4', '5');
    const look = format === undefined ? {} : { format };
    if (range.includes(':'))
      sheet.merge(range, head, 'heading').merge(below, styled(fx(formula), 'big', look), 'big', look);
    else sheet.put(range, head, 'heading').put(below, styled(fx(formula), 'big', look));
  };
  box('B4', `${product.toUpperCase()} TO BE SOLD`, '={wanted}', WHOLE);
  box('C4:D4', 'READY ON', '={readyAt}', DAY);
  box('E4:F4', 'EVERY STEP POOR', `=E${last}`, WHOLE);
  box('H4', 'EVERY STEP GOOD', `=F${last}`, WHOLE);
  // Points at cells, not at names: LibreOffice works a formula over names out anew when it opens the plan
  // without the add-in.
  box(
    'I4:J4',
    'FISH AND VATS',
    `=IF(AND(${TAKES.map((_, i) => `C${takes + 2 + i}<=D${takes + 2 + i}`).join(',')}),"enough","not enough")`,
  );
  sheet
    .height(5, 26)
    .when({ range: 'I5:J5', formula: '=$I$5="not enough"', style: 'bad' })
    .when({ range: 'I5:J5', formula: '=$I$5="enough"', style: 'good' });
}

function words(page: Page): void {
  const { sheet } = page;
  section(page, 'BCDEFGHIJ', 7, 'In plain words');
  PLAIN.forEach((text, i) =>
    sheet.merge(`B${8 + i}:J${8 + i}`, text, 'quiet').height(8 + i, heightOf(text, FULL_WIDTH)),
  );
  const last = lastOf(page);
  sheet
    .merge(
      'B10:J10',
      page.fx(`=IF(ISNUMBER(E${last}),IF(E${last}>={wanted},"${MET}","${NOT_MET}"),"${NOT_COUNTED}")`),
      'quiet',
    )
    .height(10, heightOf(NOT_MET, FULL_WIDTH));
}

function stepsTable(page: Page): void {
  const { sheet, fx, plan, steps, product } = page;
  section(page, 'BCDEF', TABLE - 1, 'How many are left at each step');
  sheet
    .row(
      `B${TABLE}`,
      ['Step', 'Comes through', 'As planned', 'Every step poor', 'Every step good'],
      'heading',
    )
    .height(TABLE, 30);
  const labels = [
    ...steps.map(({ label }) => label),
    `${product === 'fry' ? 'Fry' : 'Fingerlings'} counted out to the buyer`,
  ];
  labels.forEach((label, i) => {
    const row = first + i;
    const step = steps[i];
    const before = steps[i - 1];
    const from = row - 1;
    const lows = before && plan.beside(before.survival, LOW);
    const highs = before && plan.beside(before.survival, HIGH);
    sheet.row(`B${row}`, [
      styled(label, 'label'),
      step ? styled(fx(`={${step.survival}}`), 'cell', { format: '0%' }) : styled('', 'cell'),
      styled(before ? `=D${from}*C${from}` : fx('={eggsNeeded}'), 'result', { format: WHOLE }),
      styled(before ? `=E${from}*MIN(C${from},${lows ?? ''})` : `=D${row}`, 'cell', { format: WHOLE }),
      styled(before ? `=F${from}*MAX(C${from},${highs ?? ''})` : `=D${row}`, 'cell', { format: WHOLE }),
    ]);
  });
}

function moments(page: Page): number {
  const { sheet, fx, product } = page;
  section(page, 'HIJ', TABLE - 1, 'When');
  sheet.row(`H${TABLE}`, ['What happens', 'On', ''], 'heading').merge(`I${TABLE}:J${TABLE}`, 'On', 'heading');
  const shown = MOMENTS.filter(([, key]) => product === 'fingerlings' || key !== 'weanedAt');
  shown.forEach(([label, key, kind], i) => {
    const format = kind === 'day' ? DAY : MOMENT;
    sheet
      .put(`H${first + i}`, label, 'label')
      .merge(`I${first + i}:J${first + i}`, styled(fx(`={${key}}`), 'cell', { format }), 'cell', { format });
  });
  return first + shown.length;
}

function charts(page: Page, from: number, stages: number): void {
  const { sheet, plan, product } = page;
  const rows = `${first}:B${lastOf(page)}`;
  const column = (letter: string): string => sheet.ref(`${letter}${rows.replace('B', letter)}`);
  sheet.chart({
    kind: 'column',
    title: 'From eggs to fish for sale',
    categories: column('B'),
    yTitle: 'number',
    valueFormat: WHOLE,
    from: `B${from}`,
    to: `F${from + 14}`,
    series: [
      { name: 'as planned', values: column('D') },
      { name: 'every step poor', values: column('E') },
      { name: 'every step good', values: column('F') },
    ],
  });
  const last = stages + vatStagesOf(product).length - 1;
  const [begin, end] = [plan.value('stripAt'), plan.value('readyAt')];
  sheet.chart({
    kind: 'occupancy',
    title: 'Days in the vats',
    categories: sheet.ref(`H${stages}:H${last}`),
    valueFormat: 'd mmm',
    from: `H${from}`,
    to: `J${from + 14}`,
    series: [
      { name: 'from', values: sheet.ref(`I${stages}:I${last}`), isHidden: true },
      { name: 'days in the vats', values: sheet.ref(`J${stages}:J${last}`) },
    ],
    ...(typeof begin === 'number' && typeof end === 'number'
      ? { valueRange: [Math.floor(begin) - 1, Math.ceil(end) + 1] as const }
      : {}),
  });
}

function assumptions(page: Page, from: number): number {
  const { sheet, fx, plan, product } = page;
  section(page, 'BCDEFGHIJ', from, 'What is taken for granted');
  sheet
    .row(`B${from + 1}`, ['Figure', 'Planned', 'Poor', 'Good', 'Unit'], 'heading')
    .merge(`H${from + 1}:J${from + 1}`, 'Where the figure comes from', 'heading');
  assumptionKeys(product).forEach((key, i) => {
    const row = from + 2 + i;
    const { label, format, unit } = ASSUMPTIONS[key];
    sheet
      .row(`B${row}`, [
        styled(label, 'label'),
        styled(fx(`={${key}}`), 'result', { format }),
        styled(`=${plan.beside(key, LOW)}`, 'cell', { format }),
        styled(`=${plan.beside(key, HIGH)}`, 'cell', { format }),
        styled(unit === 'share' ? '' : unit, 'unit'),
      ])
      .merge(`H${row}:J${row}`, styled(`=${plan.beside(key, ORIGIN)}`, 'quiet'), 'quiet')
      .height(row, Math.max(heightOf(label, 32), heightOf(plan.textBeside(key, ORIGIN), ORIGIN_WIDTH)));
  });
  return from + 2 + assumptionKeys(product).length;
}

function needs(page: Page, from: number): number {
  const { sheet, fx } = page;
  section(page, 'BCDEF', from, 'What it takes');
  sheet
    .row(`B${from + 1}`, ['For this run', 'Needed', 'At hand', 'Verdict', ''], 'heading')
    .merge(`E${from + 1}:F${from + 1}`, 'Verdict', 'heading');
  TAKES.forEach(([label, needed, have], i) => {
    const row = from + 2 + i;
    sheet
      .row(`B${row}`, [
        styled(label, 'label'),
        styled(fx(`={${needed}}`), 'result', { format: WHOLE }),
        styled(fx(`={${have}}`), 'cell', { format: WHOLE }),
      ])
      .merge(
        `E${row}:F${row}`,
        styled(`=IF(C${row}<=D${row},"enough","short by "&(C${row}-D${row}))`, 'cell'),
        'cell',
      );
  });
  const buy = from + 2 + TAKES.length;
  TO_BUY.forEach(([label, key, format, unit], i) => {
    const row = buy + i;
    sheet.row(`B${row}`, [
      styled(`To buy: ${label.charAt(0).toLowerCase()}${label.slice(1)}`, 'label'),
      styled(fx(`=IF(ISNUMBER({${key}}),{${key}},"–")`), 'result', { format }),
      styled(unit, 'unit'),
    ]);
  });
  return buy + TO_BUY.length;
}

function stageRows(page: Page, from: number): number {
  const { sheet, fx, product } = page;
  section(page, 'HIJ', from, 'In the vats');
  sheet.row(`H${from + 1}`, ['Stage', 'From', 'Days'], 'heading');
  vatStagesOf(product).forEach((stage, i) => {
    sheet.row(`H${from + 2 + i}`, [
      styled(stage.label, 'label'),
      styled(fx(`={${stage.from}}`), 'cell', { format: DAY }),
      styled(fx(`={${stage.to}}-{${stage.from}}`), 'cell', { format: '0.0' }),
    ]);
  });
  return from + 2 + vatStagesOf(product).length;
}

/** A price may be tried without the add-in, in a copy too. */
function prices(page: Page, from: number): void {
  const { sheet } = page;
  const last = lastOf(page);
  section(page, 'HIJ', from, 'What a price would bring');
  sheet
    .put(`H${from + 1}`, 'Type a price for one fish', 'label')
    .merge(`I${from + 1}:J${from + 1}`, styled({}, 'input', { format: '#,##0.00' }), 'input', {
      format: '#,##0.00',
    });
  (
    [
      ['Brings in, as planned', 'D'],
      ['Brings in, every step poor', 'E'],
      ['Every step good, if all sell', 'F'],
    ] as const
  ).forEach(([label, column], i) => {
    const row = from + 2 + i;
    sheet.put(`H${row}`, label, 'label').merge(
      `I${row}:J${row}`,
      styled(`=IF(ISNUMBER($I$${from + 1}),$I$${from + 1}*${column}${last},"–")`, 'cell', {
        format: WHOLE,
      }),
      'cell',
      { format: WHOLE },
    );
  });
  sheet.validate({
    range: `I${from + 1}`,
    kind: 'decimal',
    min: 0,
    max: 1e9,
    message: 'Price of one fish, in any money. It is used on this page only.',
  });
}

export function summarySheet(plan: PlanPlaces): SheetModel {
  const product = PRODUCTS.find((one) => one === plan.value('product')) ?? 'fry';
  const hatchery = String(plan.value('hatchery') ?? '');
  const sheet = new SheetBuilder(`Summary${plan.suffix.replaceAll('_', ' ')}`, {
    widths: [2, 32, 13, 13, 13, 13, 2, 29, 13, 11],
    tab: '12454F',
    isProtected: true,
    hasGridlines: false,
    print: { onePage: true, footer: `${hatchery} · the season on one page` },
  });
  const page: Page = {
    sheet,
    plan,
    product,
    steps: stepsOf(product),
    fx: (formula) => named(formula, plan.suffix),
  };
  sheet.put('B1', page.fx('={hatchery}&": the season on one page"'), 'title').height(1, 26);
  sheet.put(
    'B2',
    'For a reader who does not breed fish. Every figure follows the season plan in this workbook.',
    'subtitle',
  );
  words(page);
  stepsTable(page);
  const pictures = Math.max(lastOf(page) + 1, moments(page)) + 1;
  const taken = pictures + 16;
  const below = assumptions(page, taken) + 1;
  const vats = stageRows(page, below);
  boxes(page, below);
  charts(page, pictures, below + 2);
  prices(page, vats + 1);
  const trust = Math.max(needs(page, below), vats + 6) + 1;
  section(page, 'BCDEFGHIJ', trust, 'How far to trust it');
  TRUST.forEach((text, i) =>
    sheet
      .merge(`B${trust + 1 + i}:J${trust + 1 + i}`, text, 'quiet')
      .height(trust + 1 + i, heightOf(text, FULL_WIDTH)),
  );
  return sheet.build();
}
