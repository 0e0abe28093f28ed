import { CAUTIONS } from '../../functions/cautions';
import type { SheetBuilder } from '../../sheet/workbook/build';
import { heightFor } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import { RUNS, VATS, WATER } from './columns';
import type { Pages } from './context';
import { FIRST, HEAD, lastRow } from './context';

const C = WATER.letters;
const HOW: readonly string[] = [
  'Measure pH (and alkalinity) when the vats are full and the air has run for a night. ' +
    'Type it over the reading from Setup: the doses follow.',
  'Try the dose in a bucket of 10 L of vat water first: dissolve, air for an hour, ' +
    'read. If the bucket ends above the pH wanted, give less; the screen Dose of the ' +
    'pane works on from your readings.',
  'Give the vats the first half, dissolved in a bucket, spread over the surface, with ' +
    'the air on and no fish in. Read the next morning; give the rest only if the pH is ' +
    'still low.',
];
/** Without a pH, or with one high enough, there is no dose. */
const dose = (litres: string, row: number): string => {
  const call = (alkalinity: string): string =>
    `SPAWN.BUFFER.AIRED(${litres},${C.ph}${row},${C.wanted}${row},${alkalinity},${C.celsius}${row},{material})`;
  return `=IF(COUNT(${C.ph}${row}:${C.wanted}${row})<2,"",IF(${C.ph}${row}>=${C.wanted}${row},0,IF(ISNUMBER(${C.alkalinity}${row}),${call(`${C.alkalinity}${row}`)},${call('')})))`;
};
const toxic = (ph: keyof typeof C, row: number): string =>
  `=IF(ISNUMBER(${C[ph]}${row}),SPAWN.AMMONIA.SHARE(${C[ph]}${row},${C.celsius}${row}),"")`;

function lines(pages: Pages, sheet: SheetBuilder): void {
  const { book, plan, fx } = pages;
  plan.runs.forEach((run, i) => {
    const row = FIRST + i;
    const names = [...new Set(run.vats.flatMap((stage) => stage.names))];
    const litres = names.map((name) =>
      VATS.cell('litres', FIRST + book.vats.findIndex((v) => v.name === name)),
    );
    const reading = (key: 'ph' | 'phWanted' | 'alkalinity') =>
      book.water[key] === undefined ? {} : { value: book.water[key] };
    WATER.row(sheet, row, {
      run: run.run,
      fill: fx(`=INT(${RUNS.cell('strip', row)})-{preparingDays}`),
      vats: names.join(', '),
      litres: `=${litres.join('+')}`,
      ph: reading('ph'),
      wanted: reading('phWanted'),
      alkalinity: reading('alkalinity'),
      celsius: `=${RUNS.cell('water', row)}`,
      bucket: fx(dose('10', row)),
      half: `=IF(ISNUMBER(${C.bucket}${row}),${C.bucket}${row}*50,"")`,
      whole: fx(`=IF(ISNUMBER(${C.bucket}${row}),${C.bucket}${row}*${C.litres}${row}/10,"")`),
      toxicNow: toxic('ph', row),
      toxicThen: toxic('wanted', row),
    });
    sheet.height(row, Math.max(18, heightFor([names.join(', '), 26])));
  });
}

/**
 * The water of every run: readings, doses for a bucket and for the vats, the toxic part of the ammonia, and
 * room for what was given.
 */
export function waterSheet(pages: Pages): SheetModel {
  const runs = pages.plan.runs.length;
  const sheet = pages.sheet(
    'water',
    'Water: raising the pH',
    'One line a run, from the water on Setup until you measure. A dose from one pH ' +
      'reading is a first guess: the bucket decides.',
    {
      widths: [2, ...WATER.widths],
      tab: '7FA6A9',
      freeze: { rows: HEAD, columns: 2 },
      print: { titleRows: [HEAD, HEAD] },
    },
  );
  WATER.headings(sheet, 58);
  lines(pages, sheet);
  const last = lastRow(runs);
  const guard = (key: keyof typeof C, min: number, max: number, message: string): void => {
    sheet.validate({ range: `${C[key]}${FIRST}:${C[key]}${last}`, kind: 'decimal', min, max, message });
  };
  guard('ph', 3, 11, 'pH of this water, after the reading has stopped moving.');
  guard('wanted', 5, 9, 'pH you want, usually 6.5 to 7.5.');
  guard('alkalinity', 0, 20, 'Alkalinity in meq/L; empty if not measured.');
  guard('given', 0, 1e6, 'What was given, g.');
  guard('after', 3, 11, 'pH the morning after.');
  sheet.when({
    range: `${C.after}${FIRST}:${C.after}${last}`,
    formula: `=AND(ISNUMBER($${C.after}${FIRST}),OR($${C.after}${FIRST}<6.5,$${C.after}${FIRST}>7.5))`,
    style: 'warning',
  });
  let row = last + 2;
  const say = (text: string, style: 'quiet' | 'warning'): void => {
    sheet
      .merge(`B${row}:O${row}`, text, style)
      .height(row, heightFor([text, style === 'warning' ? 130 : 150]));
    row++;
  };
  HOW.forEach((text, i) => {
    say(`${i + 1}.  ${text}`, 'quiet');
  });
  for (const key of ['SODA_ASH', 'AMMONIA']) say(`Take care: ${CAUTIONS[key] ?? ''}`, 'warning');
  return sheet.build();
}
