import type { Content } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import { FEMALES, MALES, PAIRS } from './columns';
import type { Pages } from './context';
import { FIRST, HEAD, lastRow } from './context';

const SPARE_PARENTS = 6;
const text = (word: string | undefined): Content => (word === undefined || word === '' ? {} : word);
const maybe = (n: number | undefined): Content => n ?? {};

/** The brood fish there are, when each was last used, and how often the season takes her. */
export function parentsSheet(pages: Pages): SheetModel {
  const { book, plan } = pages;
  const { females, males } = book;
  const pairs = plan.runs.reduce((sum, run) => sum + run.females.length, 0);
  const sheet = pages.sheet(
    'parents',
    'Brood fish',
    'One line a fish. Fish of one family are brothers and sisters and are not paired. ' +
      'New fish and new dates count when planned again.',
    {
      widths: [2, ...FEMALES.widths, 2, ...MALES.widths],
      tab: 'C8742A',
      freeze: { rows: HEAD, columns: 0 },
      print: { titleRows: [HEAD, HEAD] },
    },
  );
  FEMALES.headings(sheet);
  MALES.headings(sheet);
  const [f, m] = [FEMALES.letters, MALES.letters];
  for (let i = 0; i < females.length + SPARE_PARENTS; i++) {
    const [row, fish] = [FIRST + i, females[i]];
    FEMALES.row(
      sheet,
      row,
      fish
        ? {
            female: fish.tag,
            kilograms: fish.kilograms,
            family: text(fish.family),
            lastUsed: maybe(fish.lastUsed),
            runs: `=COUNTIFS(${PAIRS.range('female', pairs)},${f.female}${row})`,
            rested: pages.fx(`=IF(ISNUMBER(${f.lastUsed}${row}),${f.lastUsed}${row}+{restDays},"")`),
          }
        : {},
    );
  }
  for (let i = 0; i < males.length + SPARE_PARENTS; i++) {
    const [row, fish] = [FIRST + i, males[i]];
    MALES.row(
      sheet,
      row,
      fish
        ? {
            male: fish.tag,
            maleFamily: text(fish.family),
            maleUsed: maybe(fish.lastUsed),
            females: `=COUNTIFS(${PAIRS.range('male', pairs)},${m.male}${row})`,
          }
        : {},
    );
  }
  const [lastFemale, lastMale] = [
    lastRow(females.length) + SPARE_PARENTS,
    lastRow(males.length) + SPARE_PARENTS,
  ];
  sheet
    .table({ name: 'season_females', range: `${FEMALES.first}${HEAD}:${FEMALES.last}${lastFemale}` })
    .table({ name: 'season_males', range: `${MALES.first}${HEAD}:${MALES.last}${lastMale}` });
  sheet.validate({
    range: `${f.kilograms}${FIRST}:${f.kilograms}${lastFemale}`,
    kind: 'decimal',
    min: 0.1,
    max: 15,
    message: 'Weight of this female in kg.',
  });
  sheet.validate({
    range: `${f.lastUsed}${FIRST}:${f.lastUsed}${lastFemale}`,
    kind: 'date',
    min: 36526,
    max: 73050,
    message: 'Day she was last stripped; empty if never.',
  });
  sheet.validate({
    range: `${m.maleUsed}${FIRST}:${m.maleUsed}${lastMale}`,
    kind: 'date',
    min: 36526,
    max: 73050,
    message: 'Day his milt was last taken; empty if never.',
  });
  sheet.when({
    range: `${f.female}${FIRST}:${f.rested}${lastFemale}`,
    formula: `=$${f.runs}${FIRST}=0`,
    style: 'quiet',
  });
  return sheet.build();
}
