import { append } from '../../append';
import type { Spills } from '../references/anchors';
import { lex } from '../references/lex';
import type { BlockCell } from './blocks';
import type { FormulaCell, SheetScan } from './scan';
import type { Edit } from '../../package/splice';
import { put } from '../../package/splice';
import { nameEnd, rawText } from '../../package/xml';
import { escapeXml } from '../../text';

/** What becomes of each formula that the scan brought up, and the edits that do it. */

/** 'value' loses its formula; a text replaces it; 'same' keeps it. */
type Fate = 'value' | 'same' | { readonly text: string };

export interface SheetEdits {
  readonly scan: SheetScan;
  readonly edits: readonly Edit[];
  /** Our formulas, for the page. */
  readonly lines: readonly BlockCell[];
  readonly frozen: number;
  readonly alive: number;
  readonly cut: number;
  readonly whatIf: number;
}

export const isAnswer = (cell: FormulaCell): boolean => cell.verdict === 'own';

/**
 * Cells whose spill references cannot be told become values too, which may freeze further spills: repeated
 * until quiet.
 */
export function settleSpills(
  scans: readonly SheetScan[],
  spills: Spills,
  native: (cell: FormulaCell) => string | undefined,
): Set<FormulaCell> {
  const frozen = new Set<FormulaCell>();
  const freeze = (scan: SheetScan, cell: FormulaCell): void => {
    frozen.add(cell);
    if (cell.kind === 'array') spills.add(scan.info.index, cell.area);
  };
  for (const scan of scans)
    for (const cell of scan.cells)
      if ((cell.verdict === 'own' && native(cell) === undefined) || cell.verdict === 'cut')
        freeze(scan, cell);
  for (let grew = !spills.isEmpty; grew;) {
    grew = false;
    for (const scan of scans) {
      for (const cell of scan.cells) {
        if (
          cell.verdict !== 'spill' ||
          frozen.has(cell) ||
          spills.rewrite(cell.text, cell.pieces, scan.info.index) !== undefined
        )
          continue;
        freeze(scan, cell);
        grew = true;
      }
    }
  }
  return frozen;
}

function fateOf(
  cell: FormulaCell,
  sheet: number,
  spills: Spills,
  frozen: ReadonlySet<FormulaCell>,
  native: string | undefined,
): Fate {
  if (frozen.has(cell)) return 'value';
  // The whole cell goes, by an edit of its own.
  if (cell.verdict === 'blank') return 'same';
  const text = native ?? cell.text;
  const pieces = native === undefined ? cell.pieces : lex(native);
  const rewritten = spills.isEmpty ? text : (spills.rewrite(text, pieces, sheet) ?? text);
  return rewritten === cell.text ? 'same' : { text: rewritten };
}

const cutValue = ({ span, value }: FormulaCell): Edit[] => [
  put(span.formulaStart, span.formulaEnd, ''),
  ...(span.cmFrom >= 0 ? [put(span.cmFrom, span.cmTo, '')] : []),
  // A rich error loses its rich half; entities and pictures keep theirs.
  ...(value?.type === 'e' && span.vmFrom >= 0 ? [put(span.vmFrom, span.vmTo, '')] : []),
];

function rewriteFormula(bytes: Uint8Array, { span, kind }: FormulaCell, text: string): Edit {
  if (kind === 'array') return put(span.formulaOpenEnd, span.formulaCloseStart, escapeXml(text));
  const tag = rawText(bytes, span.formulaStart + 1, nameEnd(bytes, span.formulaStart + 1));
  return put(span.formulaStart, span.formulaEnd, `<${tag}>${escapeXml(text)}</${tag}>`);
}

export function sheetEdits(
  scan: SheetScan,
  spills: Spills,
  frozen: ReadonlySet<FormulaCell>,
  native: (cell: FormulaCell) => string | undefined,
  freezesWhatIf: boolean,
): SheetEdits {
  const fates = new Map<FormulaCell, Fate>();
  const broken = new Set<object>();
  for (const cell of scan.cells) {
    const fate = fateOf(cell, scan.info.index, spills, frozen, native(cell));
    fates.set(cell, fate);
    if (cell.group && (fate !== 'same' || cell.verdict === 'blank')) broken.add(cell.group);
  }
  const edits: Edit[] = [];
  for (const [cell, fate] of fates) {
    if (fate === 'value') edits.push(...cutValue(cell));
    else if (fate !== 'same') edits.push(rewriteFormula(scan.bytes, cell, fate.text));
    // The text of a shared formula may just have gone: those that stay get their own.
    else if (cell.group && broken.has(cell.group) && cell.verdict !== 'blank')
      edits.push(rewriteFormula(scan.bytes, cell, cell.text));
  }
  if (freezesWhatIf) append(edits, scan.whatIf.flatMap(cutValue));
  const lines = scan.cells
    .filter(isAnswer)
    .map((cell) => ({ cell, native: frozen.has(cell) ? undefined : native(cell) }));
  return {
    scan,
    edits,
    lines,
    frozen: lines.filter((line) => line.native === undefined).length,
    alive: lines.filter((line) => line.native !== undefined).length,
    cut: scan.cells.filter((cell) => cell.verdict !== 'own' && frozen.has(cell)).length,
    whatIf: freezesWhatIf ? scan.whatIf.length : 0,
  };
}
