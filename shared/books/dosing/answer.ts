import type { SheetBuilder } from '../../sheet/workbook/build';
import {
  HAS_ANSWER,
  IS_DOSE,
  IS_FISH_IN,
  IS_GIVEN,
  IS_HINDERED,
  IS_LIME,
  DOSES,
  LEVELS,
  VERDICT,
  fx,
  now,
} from './layout';
import { LEAST_ON_SCALE, STOCK_STRENGTH } from '../../dosing/spoons';
import { AIR_FIRST, MEASURE_AMMONIA, WAIT, limeAndFish, unreachableWith } from '../../dosing/words';

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;
/** A sentence with the contents of cells in it: § stands for the product, ¤ for the pH wanted. */
const filled = (sentence: string): string =>
  fx(quoted(sentence).replaceAll('§', '"&{material}&"').replaceAll('¤', '"&TEXT({target},"0.0")&"'));
const grams = (cell: string): string => `TEXT(${cell},IF(${cell}<1,"0.00",IF(${cell}<100,"0.0","0")))`;

const MISSING = fx(
  'IF(NOT(ISNUMBER({volume})),"Type the water in the ' +
    'vat.",IF(NOT(ISNUMBER({temperature})),"Type the water temperature.",' +
    'IF(NOT(ISTEXT({stocked})),"Say whether fish, eggs or larvae are in the vat.",' +
    `IF(COUNT(${LEVELS})=0,"Write the pH before any product in the first row of the log.",` +
    `IF(COUNT(${DOSES})>=COUNT(${LEVELS}),"Every dose needs the pH read after it in its row; the first row is the pH before any product.",` +
    ('"Something typed cannot be used: the rows must follow in time, the wished pH ' +
      'must lie inside the window, and every value must fit the hint of its cell. (#NAME? ' +
      'below: the Spawnbook functions are not here.)")))))'),
);

const HINDRANCE =
  `IF(ISERROR(${now('dose')}),${filled(unreachableWith('§', '¤'))},IF(${IS_LIME},${filled(limeAndFish('§'))},` +
  fx(`IF(ISNUMBER({ammonia}),"Ammonia: "&${VERDICT},${quoted(MEASURE_AMMONIA)})))`);

const SPOONS = `IF(ISNUMBER(${now('spoons')}),"   =   "&TEXT(${now('spoons')},"0.0")&" level spoons","")`;
/** Too little for a spoon or a scale: the same in a stock solution. */
const STOCK = `IF(${now('dose')}<${LEAST_ON_SCALE},"   =   "&TEXT(${now('dose')}/${STOCK_STRENGTH}*1000,"0")&" mL of a stock of ${STOCK_STRENGTH} g in 1 L","")`;
const EXPECT =
  `"Expect pH "&TEXT(${now('likely')},"0.00")&"; in 9 of 10 such waters between "&TEXT(${now('low')},"0.00")&" and "&TEXT(${now('high')},"0.00")` +
  `&". Then "&${grams(now('total'))}&" g have gone in. Write the grams you gave beside the pH you read next."`;

const AIRED =
  `"Once aired${'"'}&IF(${IS_GIVEN},""," without product")&" pH "&TEXT(${now('aired')},"0.0")&"; in 9 of 10 such waters between "` +
  `&TEXT(${now('airedLow')},"0.0")&" and "&TEXT(${now('airedHigh')},"0.0")&"."`;

export const NOTHING = 'GIVE NOTHING';
export const NOTHING_NOW = 'GIVE NOTHING NOW';

/** Lime and fish: the function answers with its refusal only. */
const IS_REFUSED = `AND(${IS_FISH_IN},${IS_LIME})`;

const LINES: readonly (readonly [formula: string, style: 'big' | 'quiet', height: number])[] = [
  [
    `=IF(${IS_REFUSED},"${NOTHING}",IF(NOT(${HAS_ANSWER}),"NO ANSWER YET",IF(${IS_DOSE},IF(${IS_HINDERED},"${NOTHING}","GIVE NOW   "&${grams(now('dose'))}&" g"&${SPOONS}&${STOCK}),IF(${now('action')}="stop","${NOTHING_NOW}",UPPER(${now('action')})))))`,
    'big',
    30,
  ],
  [
    `=IF(${IS_REFUSED},${filled(limeAndFish('§'))},IF(NOT(${HAS_ANSWER}),${MISSING},IF(${IS_DOSE},IF(${IS_HINDERED},${HINDRANCE},${now('todo')}),${now('todo')})))`,
    'quiet',
    30,
  ],
  [`=IF(${IS_GIVEN},${EXPECT},"")`, 'quiet', 18],
  [`=IF(${IS_GIVEN},${quoted(WAIT)},"")`, 'quiet', 30],
  [`=IF(${HAS_ANSWER},${AIRED},${quoted(AIR_FIRST)})`, 'quiet', 30],
  // What hinders the dose stands above already.
  [
    fx(
      `=IF(${IS_FISH_IN},IF(ISNUMBER({ammonia}),IF(OR(${VERDICT}="",AND(${IS_DOSE},${IS_HINDERED})),"","Ammonia: "&${VERDICT}),IF(${HAS_ANSWER},"",${quoted(MEASURE_AMMONIA)})),"")`,
    ),
    'quiet',
    18,
  ],
  [`=IF(${HAS_ANSWER},${now('remark')}&"","")`, 'quiet', 44],
];
const FIRST_LINE = 5;

/** The answer in large letters, and under it what to do, what to expect and what to mind. */
export function answerLines(sheet: SheetBuilder): void {
  sheet.put('B4', 'Now', 'section');
  for (const column of 'CDEFGHIJ') sheet.put(`${column}4`, '', 'section');
  LINES.forEach(([formula, style, height], i) => {
    const row = FIRST_LINE + i;
    sheet.merge(`B${row}:J${row}`, formula, style).height(row, height);
  });
  sheet
    .when({ range: 'B5:J5', formula: `=$B$5="${NOTHING}"`, style: 'bad' })
    .when({ range: 'B5:J5', formula: `=$B$5="${NOTHING_NOW}"`, style: 'good' });
  for (const row of [FIRST_LINE + LINES.length - 2, FIRST_LINE + LINES.length - 1])
    sheet.when({ range: `B${row}:J${row}`, formula: `=$B$${row}<>""`, style: 'warning' });
}
