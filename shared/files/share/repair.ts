import { repairedForm } from './references/calls';
import { openBook } from './open';
import type { ShareProgress } from './decisions/options';
import { Refusal } from '../package/refusal';
import type { Edit } from '../package/splice';
import { put } from '../package/splice';
import { Cells } from '../cells/cells';
import { all, textBetween, textOf, TreeReader } from '../package/xml';
import { escapeXml } from '../text';

export type Repair =
  | { readonly kind: 'made'; readonly bytes: Uint8Array; readonly repaired: number }
  | { readonly kind: 'unchanged'; readonly sentence: string }
  | { readonly kind: 'refused'; readonly sentence: string };

/**
 * Calls that Excel tied to a foreign book ([2]!_xldudf_…) or that another program wrote in its own spelling
 * never find the add-in again. Here they get the spelling back that Excel looks for; values stay.
 */
export function* repairSteps(file: Uint8Array): Generator<ShareProgress, Repair> {
  try {
    const { pack, book, tables, names } = yield* openBook(file);
    let repaired = 0;
    const fix = (text: string, from: number, to: number, sheet?: number): Edit[] => {
      const better = repairedForm(text, names.isDefinedFor(text, sheet));
      if (better === undefined) return [];
      repaired++;
      return [put(from, to, escapeXml(better))];
    };
    for (const sheet of book.sheets.filter((one) => one.isWorksheet)) {
      const bytes = pack.read(sheet.part);
      if (!bytes) continue;
      const tree = new TreeReader(bytes, 'sheetData');
      const edits: Edit[] = [];
      for (let data = tree.run(); data; data = tree.run()) {
        const cells = new Cells(bytes, data.openEnd);
        while (cells.next()) {
          const { formulaOpenEnd: from, formulaCloseStart: to } = cells.cell;
          if (from >= 0 && to > from) edits.push(...fix(textBetween(bytes, from, to), from, to, sheet.index));
        }
        tree.seek(cells.closeAt);
      }
      pack.edit(sheet.part, edits);
      yield { step: 'write', done: (sheet.index + 1) / book.sheets.length };
    }
    for (const table of tables) {
      const found = pack.tree(table.part);
      if (found)
        pack.edit(
          table.part,
          all(found.root, 'calculatedColumnFormula', 'totalsRowFormula').flatMap((one) =>
            fix(textOf(found.bytes, one), one.openEnd, one.closeStart),
          ),
        );
    }
    pack.edit(
      book.part,
      book.names.flatMap((name) => fix(name.text, name.element.openEnd, name.element.closeStart)),
    );
    if (repaired === 0)
      return {
        kind: 'unchanged',
        sentence:
          'Every Spawnbook formula in this file is spelled as Excel expects; there is nothing to repair.',
      };
    const packing = pack.save();
    let step = packing.next();
    for (; !step.done; step = packing.next()) yield { step: 'pack', done: step.value };
    return { kind: 'made', bytes: step.value, repaired };
  } catch (error) {
    if (error instanceof Refusal) return { kind: 'refused', sentence: error.sentence };
    throw error;
  }
}
