import type { Area } from '../../sheet/formula/address';
import type { ParsedNode } from '../../sheet/formula/parse';
import { isFault, parse } from '../../sheet/formula/parse';
import type { Places } from '../../sheet/workbook/places';
import { targetOf } from '../../sheet/workbook/places';
import type { SheetModel } from '../../sheet/workbook/model';

/**
 * Is a formula proven to work with single cells only? Excel reads a plain stored formula as it read them before
 * answers could spill: a range where one cell is wanted becomes the cell of the same row. Whatever is not proven
 * is stored as an array, which means the same with a single answer.
 */

const ranges = (names: string): string[] => names.split(' ');
/** Functions that take ranges whole and answer one cell, whatever the argument. */
const WHOLE = new Set(
  ranges(
    'SUM AVERAGE AVERAGEA COUNT COUNTA COUNTBLANK MIN MAX MINA MAXA PRODUCT MEDIAN MODE STDEV STDEVP STDEV.S ' +
      'STDEV.P VAR VARP VAR.S VAR.P SUMSQ DEVSQ GEOMEAN HARMEAN AND OR XOR ROWS COLUMNS SUMPRODUCT NPV IRR ' +
      'CONCAT COUNTIF AVERAGEIF SUMIF SUMIFS COUNTIFS AVERAGEIFS MAXIFS MINIFS AGGREGATE SUBTOTAL LARGE SMALL ' +
      'PERCENTILE PERCENTILE.INC PERCENTILE.EXC QUARTILE QUARTILE.INC QUARTILE.EXC RANK RANK.EQ RANK.AVG ' +
      'CORREL SLOPE INTERCEPT RSQ MATCH VLOOKUP HLOOKUP LOOKUP TEXTJOIN ISREF XMATCH',
  ),
);
/** Of these the arguments listed take ranges; all others want one cell. */
const RANGE_ARGUMENTS = new Map<string, readonly number[]>([
  ['MATCH', [1]],
  ['XMATCH', [1]],
  ['VLOOKUP', [1]],
  ['HLOOKUP', [1]],
  ['LOOKUP', [1, 2]],
  ['LARGE', [0]],
  ['SMALL', [0]],
  ['COUNTIF', [0]],
  ['SUMIF', [0, 2]],
  ['AVERAGEIF', [0, 2]],
  ['SUMIFS', [0, 1, 3, 5, 7, 9, 11]],
  ['AVERAGEIFS', [0, 1, 3, 5, 7, 9, 11]],
  ['MAXIFS', [0, 1, 3, 5, 7, 9, 11]],
  ['MINIFS', [0, 1, 3, 5, 7, 9, 11]],
  ['COUNTIFS', [0, 2, 4, 6, 8, 10]],
  ['PERCENTILE', [0]],
  ['PERCENTILE.INC', [0]],
  ['PERCENTILE.EXC', [0]],
  ['QUARTILE', [0]],
  ['QUARTILE.INC', [0]],
  ['QUARTILE.EXC', [0]],
  ['RANK', [1]],
  ['RANK.EQ', [1]],
  ['RANK.AVG', [1]],
]);
/** One cell in each argument, one cell out. */
const SINGLE = new Set(
  ranges(
    'ABS SQRT EXP LN LOG LOG10 POWER SIGN INT TRUNC ROUND ROUNDUP ROUNDDOWN MOD CEILING FLOOR MROUND EVEN ODD PI ' +
      'SIN COS TAN ASIN ACOS ATAN ATAN2 RADIANS DEGREES DATE TIME YEAR MONTH DAY HOUR MINUTE SECOND WEEKDAY ' +
      'WEEKNUM EDATE EOMONTH TODAY NOW RAND RANDBETWEEN NOT IF IFERROR IFNA IFS CHOOSE SWITCH ISNUMBER ISTEXT ' +
      'ISBLANK ISERROR ISERR ISNA ISLOGICAL N NA TRUE FALSE T LEN TRIM UPPER LOWER PROPER LEFT RIGHT MID FIND ' +
      'SEARCH SUBSTITUTE REPLACE REPT TEXT VALUE CONCATENATE EXACT CHAR CODE DATEVALUE TIMEVALUE HYPERLINK FACT ' +
      'COMBIN QUOTIENT GCD LCM FIXED DOLLAR CEILING.MATH FLOOR.MATH NUMBERVALUE DAYS ISEVEN ISODD',
  ),
);

const isOne = (area: Area): boolean => area.top === area.bottom && area.left === area.right;

class Prover {
  constructor(
    private readonly places: Places,
    private readonly home: SheetModel,
  ) {}

  /** One cell in, one cell out, all the way down. */
  single(node: ParsedNode | undefined): boolean {
    if (!node) return true;
    switch (node.kind) {
      case 'literal':
        return true;
      case 'unary':
        return this.single(node.of);
      case 'binary':
        return this.single(node.left) && this.single(node.right);
      case 'call':
        return this.call(node.name.toUpperCase(), node.args);
      case 'reference':
        if (/\[\s*(?:@|\[#This Row\])/i.test(node.text)) return true;
        return this.isOneCell(node);
      case 'name':
        return this.isOneCell(node);
      default:
        return false;
    }
  }

  private isOneCell(node: ParsedNode): boolean {
    const target = targetOf(node, this.places, this.home);
    return target !== undefined && typeof target !== 'string' && isOne(target.area);
  }

  /** A range as it stands, or one cell; no reckoning on a range. */
  private range(node: ParsedNode | undefined): boolean {
    return node?.kind === 'reference' || node?.kind === 'name' || node?.kind === 'spill' || this.single(node);
  }

  private call(name: string, args: readonly (ParsedNode | undefined)[]): boolean {
    if (SINGLE.has(name)) return args.every((arg) => this.single(arg));
    if (name === 'INDEX')
      return (
        this.range(args[0]) &&
        args.length > 1 &&
        args.slice(1).every((arg) => arg !== undefined && this.single(arg) && !isZero(arg))
      );
    // It reckons on ranges by itself, as it always did.
    if (name === 'SUMPRODUCT') return true;
    if (!WHOLE.has(name)) return false;
    const wanted = RANGE_ARGUMENTS.get(name);
    return args.every((arg, i) => (wanted && !wanted.includes(i) ? this.single(arg) : this.range(arg)));
  }
}

const isZero = (node: ParsedNode): boolean => node.kind === 'literal' && node.value === 0;

export function isProvenSingle(formula: string, places: Places, home: SheetModel): boolean {
  const tree = parse(formula);
  return (
    !isFault(tree) &&
    !/[@#{]/.test(formula.replace(/"[^"]*"|\[[^\]]*\]/g, '')) &&
    new Prover(places, home).single(tree)
  );
}
