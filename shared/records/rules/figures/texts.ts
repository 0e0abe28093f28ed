import { fieldSpec, isTextField, NUMERIC_FIELDS } from '../../fields';
import type { RecordTable } from '../../table';
import { cellOf } from '../../table';
import type { TableRule, TableVerdict } from '../rule';
import { nounOf } from '../show';

const LONGEST_SHOWN = 40;

function unreadable(table: RecordTable): readonly TableVerdict[] {
  return table.mapping.flatMap(({ field }) => {
    if (!field || isTextField(field)) return [];
    return (table.read[field]?.unreadable ?? []).flatMap((record): TableVerdict[] => {
      const spot = table.spot(record, field);
      const text = spot ? String(cellOf(spot)).slice(0, LONGEST_SHOWN) : '';
      return [
        {
          record,
          field,
          seen: `"${text}"`,
          expected: fieldSpec(field).kind === 'moment' ? 'a date' : 'a number',
          sentence: `"${text}" stands where the ${nounOf(field)} belongs: it was not read.`,
        },
      ];
    });
  });
}

function asText(table: RecordTable): readonly TableVerdict[] {
  // In a text file every number is text; it is a fault only beside real numbers.
  const hasNumbers = table.mapping.some(
    ({ field }) =>
      field &&
      !isTextField(field) &&
      (table.read[field]?.asText ?? 0) === 0 &&
      table.numbers[field]?.some((x) => !Number.isNaN(x)),
  );
  if (!hasNumbers) return [];
  return table.mapping.flatMap(({ field, header }) => {
    if (!field || isTextField(field)) return [];
    const count = table.read[field]?.asText ?? 0;
    const first =
      count === 0
        ? -1
        : [...(table.numbers[field] ?? [])].findIndex((x, i) => {
            const spot = table.spot(i, field);
            return !Number.isNaN(x) && spot !== undefined && typeof cellOf(spot) === 'string';
          });
    return first < 0
      ? []
      : [
          {
            record: first,
            field,
            seen: `${count} as text`,
            expected: 'numbers',
            sentence: `${count} of the values of "${header}" are stored as text: formulas that add them up leave them out.`,
          },
        ];
  });
}

function units(table: RecordTable): readonly TableVerdict[] {
  return table.mapping.flatMap(({ field, isAgainstHeader, header, unit, reasons }) => {
    const spot = field && table.spot(0, field);
    const said = reasons.find((reason) => reason.startsWith('the header says')) ?? '';
    return field && spot && isAgainstHeader
      ? [
          {
            spot,
            seen: said,
            expected: `the unit of the header`,
            sentence: `The values of "${header}" do not look like its unit: ${said}. They are read as ${unit ?? ''}; say so if that is wrong.`,
          },
        ]
      : [];
  });
}

const HEAD = ['Run', 'Egg weight (g)', 'Eggs per gram'] as const;
const kilograms = [
  ['Female', 'Female weight (kg)', 'Egg weight (g)'],
  ['F1', 1250, 140],
  ['F2', 980, 121],
  ['F3', 1430, 188],
] as const;

export const textRules: readonly TableRule[] = [
  {
    id: 'TEXT.UNREADABLE',
    scope: 'table',
    severity: 'look',
    title: 'Words where a number belongs',
    needs: NUMERIC_FIELDS.map((name) => [name]),
    check: unreadable,
    checks: 'Texts in columns of numbers or dates that cannot be read as one.',
    why: 'The row is missing from everything worked out from the column.',
    sources: ['DEFINITION'],
    examples: [
      {
        sheets: { Runs: [HEAD, ['R1', 121, 655], ['R2', 'muddy', 690], ['R3', 118, 701]] },
        says: '"muddy"',
        because: 'No number.',
      },
      {
        sheets: { Runs: [HEAD, ['R1', 121, 655], ['R2', '134 g', 690], ['R3', '-', 701]] },
        because: 'A unit behind the number is read, a dash is nothing.',
      },
    ],
  },
  {
    id: 'TEXT.NUMBER',
    scope: 'table',
    severity: 'look',
    title: 'Numbers stored as text',
    needs: NUMERIC_FIELDS.map((name) => [name]),
    check: asText,
    checks: 'Numbers and dates that stand as text beside columns of real numbers.',
    why: 'SUM and AVERAGE pass over them without a word.',
    sources: ['DEFINITION'],
    examples: [
      {
        sheets: { Runs: [HEAD, ['R1', '121', 655], ['R2', 134, 690], ['R3', 118, 701]] },
        says: '1 of the values',
        because: '"121" is text.',
      },
      { sheets: { Runs: [HEAD, ['R1', 121, 655], ['R2', 134, 690]] }, because: 'All numbers.' },
    ],
  },
  {
    id: 'UNIT.HEADER',
    scope: 'table',
    severity: 'unlikely',
    title: 'The header names another unit',
    needs: NUMERIC_FIELDS.map((name) => [name]),
    check: units,
    checks: 'Columns whose values are usual only in another unit than the one in the header.',
    why: 'Whoever reads the header later is wrong by a thousand.',
    sources: ['PRACTICE'],
    examples: [
      { sheets: { Runs: kilograms }, says: 'do not look like its unit', because: 'Females of 1,250 kg.' },
      {
        sheets: {
          Runs: [
            ['Female', 'Female weight (g)', 'Egg weight (g)'],
            ['F1', 1250, 140],
            ['F2', 980, 121],
          ],
        },
        because: 'Grams, as the header says.',
      },
    ],
  },
];
