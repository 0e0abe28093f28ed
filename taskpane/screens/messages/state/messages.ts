import { evaluate } from '../../../../shared/catalogue/calculation';
import { quoteSheet, splitReference } from '../../../../shared/sheet/formula/address';
import type { Cell, CellError, ErrorCode, Grid } from '../../../../shared/base/values';
import { isError, isGrid } from '../../../../shared/base/values';
import { isDamaged, mendFormula } from './formulaRepair';
import type { CallCell, ErrorMemory, Mending, MendReport, RememberedError, Scan } from '../../../host/port';

export interface MessagesState {
  /** undefined until the workbook was looked through. */
  readonly report: Report | undefined;
  readonly mended: MendReport | undefined;
}

export interface Report {
  readonly calls: number;
  readonly sheets: number;
  readonly troubles: readonly Trouble[];
  readonly repairs: readonly Mending[];
  readonly blanks: ErrorMemory['blanks'];
}

/** A cell that shows an error, with the reason. */
export interface Trouble {
  readonly sheet: string;
  readonly address: string;
  /** 'text' when the formula stands in the cell as a text. */
  readonly code: ErrorCode | 'text';
  readonly formula: string;
  readonly sentence: string;
}

export const initialMessages: MessagesState = { report: undefined, mended: undefined };

/** What a code means when nothing more is known. */
const GENERAL: Readonly<Record<ErrorCode, string>> = {
  '#NAME?':
    'The sheet did not know this function when the formula was entered. “Re-enter formulas” mends it.',
  '#SPILL!':
    'The answer needs several cells and some of them are not empty. Clear the cells below and to the right.',
  '#BUSY!': 'The cell is still calculating. If it stays so, re-enter the formula.',
  '#REF!': 'The formula points to cells that are not there any more.',
  '#DIV/0!': 'Something in the formula is divided by zero or by a blank cell.',
  '#NULL!': 'Two ranges in the formula do not meet. Check for a space where a comma belongs.',
  '#NUM!': 'There is no answer for these numbers.',
  '#CALC!': 'Excel could not work this formula out.',
  '#VALUE!': 'An argument cannot be used. Open the function’s page to see what it takes.',
  '#N/A': 'The numbers are outside what was published, or there are too few of them.',
};

const firstError = (value: Cell | Grid): CellError | undefined =>
  isGrid(value) ? value.flat().find(isError) : isError(value) ? value : undefined;

/** Works the formula out again, in the pane, to hear its sentence. */
function recalculated(call: CallCell, scan: Scan): CellError | undefined {
  const unknown: CellError = { error: '#REF!' };
  return firstError(
    evaluate(mendFormula(call.formula), { reference: (text) => scan.lookUp(text, call.sheet) ?? unknown }),
  );
}

const keyOf = (sheet: string, address: string): string =>
  `${sheet.toLowerCase()}!${address.replaceAll('$', '').toUpperCase()}`;

const rememberedByKey = (remembered: readonly RememberedError[]): Map<string, RememberedError> =>
  new Map(
    remembered.map((one) => {
      const { sheet = '', area } = splitReference(one.address);
      return [keyOf(sheet, area), one];
    }),
  );

function troubleOf(
  call: CallCell,
  error: CellError,
  memory: Map<string, RememberedError>,
  scan: Scan,
): Trouble {
  const known = memory.get(keyOf(call.sheet, call.address));
  const place = { sheet: call.sheet, address: call.address, code: error.error, formula: call.formula };
  if (known?.code === error.error && known.message) return { ...place, sentence: known.message };
  const again = error.error === '#NAME?' || error.error === '#SPILL!' ? undefined : recalculated(call, scan);
  return {
    ...place,
    sentence: (again?.error === error.error ? again.message : undefined) ?? GENERAL[error.error],
  };
}

/** Errors inside a spilled answer: the first cell looks well, the functions remember the rest. */
function hiddenTroubles(calls: readonly CallCell[], memory: Map<string, RememberedError>): Trouble[] {
  return calls.flatMap(({ sheet, address, formula, value }) => {
    const known = memory.get(keyOf(sheet, address));
    return known && !isError(value)
      ? [
          {
            sheet,
            address,
            formula,
            code: known.code,
            sentence: `In the answer that starts here: ${known.message || GENERAL[known.code]}`,
          },
        ]
      : [];
  });
}

/** A cell of text format shows the formula itself instead of an answer. */
const isText = ({ formula, value }: CallCell): boolean => value === formula;
const AS_TEXT =
  'The cell is formatted as text, so the formula is not calculated. “Re-enter formulas” mends it.';
const textTrouble = ({ sheet, address, formula }: CallCell): Trouble => ({
  sheet,
  address,
  formula,
  code: 'text',
  sentence: AS_TEXT,
});

const repairsIn = (calls: readonly CallCell[]): Mending[] =>
  calls
    .filter(
      ({ formula, value }) =>
        isDamaged(formula) || value === formula || (isError(value) && value.error === '#NAME?'),
    )
    .map(({ sheet, address, formula, value }) => ({
      sheet,
      address,
      was: formula,
      formula: mendFormula(formula),
      showsValue: !isError(value) && value !== formula,
    }));

export function reportOf(
  scan: Scan,
  remembered: readonly RememberedError[],
  blanks: Report['blanks'] = 'unknown',
): Report {
  const memory = rememberedByKey(remembered);
  const troubles = scan.calls.flatMap((call) =>
    isError(call.value)
      ? [troubleOf(call, call.value, memory, scan)]
      : isText(call)
        ? [textTrouble(call)]
        : [],
  );
  return {
    blanks,
    calls: scan.calls.length,
    sheets: scan.sheets,
    troubles: [...troubles, ...hiddenTroubles(scan.calls, memory)],
    repairs: repairsIn(scan.calls),
  };
}

export const placeText = (sheet: string, address: string): string => `${quoteSheet(sheet)}!${address}`;
