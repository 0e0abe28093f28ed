import { VERDICTS, VERDICT_LOOKS, verdictText } from '../../../maths/verdict';
import type { Verdict } from '../../../maths/verdict';
import type { SheetBuilder } from '../../../sheet/workbook/build';
import type { StyleName } from '../../../sheet/workbook/model';

/** The verdict of a share of seasons, in words, as a formula: thresholds from the one scale. */
export const verdictOfShare = (share: string): string => {
  const steps = VERDICTS.filter((word) => VERDICT_LOOKS[word].from > 0);
  const lowest = `IF(${share}>0,"${verdictText('unlikely')}","${verdictText('cannot')}")`;
  return steps.reduceRight(
    (rest, word) => `IF(${share}>=${VERDICT_LOOKS[word].from}-0.000000001,"${verdictText(word)}",${rest})`,
    lowest,
  );
};

export const VERDICT_STYLE: Readonly<Record<Verdict, StyleName>> = {
  safe: 'safe',
  likely: 'likely',
  'a coin toss': 'toss',
  unlikely: 'unlikely',
  cannot: 'bad',
};
/** Words that stand against an order whatever its odds. */
const AGAINST = ['too late', 'its day is past'] as const;
const AGAIN = 'plan again';

/** Colours a column of verdicts as the scale has it; the cell says the same in a word and a shape. */
export function colourVerdicts(sheet: SheetBuilder, range: string, first: string): void {
  for (const word of VERDICTS)
    sheet.when({ range, formula: `=${first}="${verdictText(word)}"`, style: VERDICT_STYLE[word] });
  for (const word of AGAINST) sheet.when({ range, formula: `=${first}="${word}"`, style: 'bad' });
  sheet.when({ range, formula: `=RIGHT(${first},${AGAIN.length})="${AGAIN}"`, style: 'warning' });
}
