import { readXlsx, writeXlsx } from '../../../shared/files';
import { isProvenSingle } from '../../../shared/files/write/scalar';
import { Places } from '../../../shared/sheet/workbook/places';
import { expectKept } from '../../support/kept';
import { EVERYTHING as MODEL } from '../support/everything';
import { partsOf, readable } from '../support/support';

/** A workbook with one of everything a model can say, written and read: every part of the file, and what comes back. */

test('every part of the file', () => {
  const parts = partsOf(writeXlsx(MODEL));
  expectKept(
    'file-parts',
    Object.fromEntries(
      Object.entries(parts).map(([path, text]) => [path, text.replace(/></g, '>\n<').split('\n')]),
    ),
  );
});

test('what is read of it', () => {
  expectKept('file-read', readable(readXlsx(writeXlsx(MODEL))));
});

test('which formulas are proven to work with single cells', () => {
  const names = (
    'SUM AVERAGE COUNT MIN MAX PRODUCT MEDIAN STDEV.S AND OR ROWS COLUMNS SUMPRODUCT COUNTIF AVERAGEIF SUMIF SUMIFS ' +
    'COUNTIFS AVERAGEIFS MAXIFS MINIFS LARGE SMALL PERCENTILE PERCENTILE.INC PERCENTILE.EXC QUARTILE QUARTILE.INC ' +
    'QUARTILE.EXC RANK RANK.EQ RANK.AVG MATCH XMATCH VLOOKUP HLOOKUP LOOKUP INDEX ABS ROUND DATE IF IFERROR TEXT ' +
    'MOD CHOOSE XLOOKUP TRANSPOSE SPAWN.AMMONIA.SHARE'
  ).split(' ');
  const [home] = MODEL.sheets;
  if (!home) throw new Error('no sheet');
  const places = new Places(MODEL);
  const proven = (formula: string): string => (isProvenSingle(formula, places, home) ? '1' : '0');
  expectKept(
    'file-single',
    names.map((name) => {
      const marks = [1, 2, 3, 4, 6, 8, 12].map((count) =>
        Array.from({ length: count }, (_, at) =>
          proven(
            `=${name}(${Array.from({ length: count }, (__, i) => (i === at ? 'B2:B5' : 'B2')).join(',')})`,
          ),
        ).join(''),
      );
      return `${name} ${marks.join(' ')} ${proven(`=${name}(B2,0)`)}${proven(`=${name}(B2:B5,0)`)}${proven(`=${name}()`)}`;
    }),
  );
});
