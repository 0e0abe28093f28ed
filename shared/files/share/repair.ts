import { repairedForm } from './references/calls';
import type { Opened } from './open';
import { judgeOf, openBook, scanSheets } from './open';
import type { Revived } from './revive';
import { needsReviving, revivedSentence, reviveSteps } from './revive';
import type { FindFunction } from '../../sheet/formula';
import type { ShareProgress } from './decisions/options';
import { Refusal } from '../package/refusal';
import type { Edit } from '../package/splice';
import { put } from '../package/splice';
import { Cells } from '../cells/cells';
import { all, textBetween, textOf, TreeReader } from '../package/xml';
import { escapeXml } from '../text';

export type Repair =
  | {
      readonly kind: 'made';
      readonly bytes: Uint8Array;
      readonly repaired: number;
      /** What else was done, a sentence each. */
      readonly sentences: readonly string[];
    }
  | { readonly kind: 'unchanged'; readonly sentence: string }
  | { readonly kind: 'refused'; readonly sentence: string };

/** Formulas of one part or name put into the spelling Excel looks for. */
class Speller {
  repaired = 0;
  constructor(private readonly opened: Opened) {}

  fix(text: string, from: number, to: number, sheet?: number): Edit[] {
    const better = repairedForm(text, this.opened.names.isDefinedFor(text, sheet));
    if (better === undefined) return [];
    this.repaired++;
    return [put(from, to, escapeXml(better))];
  }

  sheet(bytes: Uint8Array, index: number): Edit[] {
    const tree = new TreeReader(bytes, 'sheetData');
    const edits: Edit[] = [];
    for (let data = tree.run(); data; data = tree.run()) {
      const cells = new Cells(bytes, data.openEnd);
      while (cells.next()) {
        const { formulaOpenEnd: from, formulaCloseStart: to } = cells.cell;
        if (from >= 0 && to > from) edits.push(...this.fix(textBetween(bytes, from, to), from, to, index));
      }
      tree.seek(cells.closeAt);
    }
    return edits;
  }

  around(): void {
    const { pack, book, tables } = this.opened;
    for (const table of tables) {
      const found = pack.tree(table.part);
      if (found)
        pack.edit(
          table.part,
          all(found.root, 'calculatedColumnFormula', 'totalsRowFormula').flatMap((one) =>
            this.fix(textOf(found.bytes, one), one.openEnd, one.closeStart),
          ),
        );
    }
    pack.edit(
      book.part,
      book.names.flatMap((name) => this.fix(name.text, name.element.openEnd, name.element.closeStart)),
    );
  }
}

function* revivedOf(find: FindFunction, file: Uint8Array): Generator<ShareProgress, Revived | undefined> {
  const opened = yield* openBook(file);
  const scans = yield* scanSheets(opened, judgeOf(opened.names));
  return needsReviving(opened.pack, scans) ? yield* reviveSteps(find, file) : undefined;
}

/**
 * Calls that Excel tied to a foreign book ([2]!_xldudf_…) or that another program wrote in its own spelling
 * never find the add-in again. Here they get the spelling back that Excel looks for. Values stay, and where a
 * program without our functions left #NAME?, they are worked out again.
 */
export function* repairStepsBy(find: FindFunction, file: Uint8Array): Generator<ShareProgress, Repair> {
  try {
    const revived = yield* revivedOf(find, file);
    const opened = yield* openBook(revived?.bytes ?? file);
    const { pack, book } = opened;
    const speller = new Speller(opened);
    for (const sheet of book.sheets.filter((one) => one.isWorksheet)) {
      const bytes = pack.read(sheet.part);
      if (!bytes) continue;
      pack.edit(sheet.part, speller.sheet(bytes, sheet.index));
      yield { step: 'write', done: (sheet.index + 1) / book.sheets.length };
    }
    speller.around();
    if (speller.repaired === 0 && !revived)
      return {
        kind: 'unchanged',
        sentence:
          'Every Spawnbook formula in this file is spelled as Excel expects; there is nothing to repair.',
      };
    const packing = pack.save();
    let step = packing.next();
    for (; !step.done; step = packing.next()) yield { step: 'pack', done: step.value };
    const sentences = revived ? [revivedSentence(revived)] : [];
    return { kind: 'made', bytes: step.value, repaired: speller.repaired, sentences };
  } catch (error) {
    if (error instanceof Refusal) return { kind: 'refused', sentence: error.sentence };
    throw error;
  }
}
