import { hasSignature } from '../leaveOut/addin';
import { typedForm } from '../references/calls';
import { lex } from '../references/lex';
import { problemsOf, spillProblems } from '../freeze';
import { judgeOf, openBook, scanSheets } from '../open';
import type { Opened } from '../open';
import type { Inspection, ShareProgress } from './options';
import type { FindFunction } from '../../../sheet/formula';
import type { Revived } from '../revive';
import { needsReviving, revivedSentence, reviveSteps } from '../revive';
import { Refusal } from '../../package/refusal';
import { editRules } from '../leaveOut/rules';
import type { SheetScan } from './scan';
import { attribute, child } from '../../package/xml';

const plural = (n: number, one: string, many: string): string => (n === 1 ? `1 ${one}` : `${n} ${many}`);

function notesOf(opened: Opened, scans: readonly SheetScan[], judge: ReturnType<typeof judgeOf>): string[] {
  const { book, names, pack } = opened;
  const notes: string[] = [];
  const calculation = child(book.root, 'calcPr');
  if (calculation && attribute(book.bytes, calculation, 'calcMode')?.value === 'manual')
    notes.push(
      'Calculation is set to manual: values may be older than what was typed last. Press ' +
        'F9 in Excel and save before making a copy.',
    );
  for (const name of book.names)
    if (names.isTainted(name))
      notes.push(
        `The name ${name.name} (${typedForm(name.text)}) has no value of its own: in a copy it holds #N/A, and cells that use it hold their last values.`,
      );
  for (const scan of scans) {
    const { dropped } = editRules(scan.bytes, scan.root, (text) =>
      judge.of(text, lex(text), scan.info.index) === 'own' ? 'drop' : 'keep',
    );
    for (const rule of dropped)
      notes.push(
        `${scan.info.name}!${rule.cells}: a ${rule.kind} with ${typedForm(rule.formula)} cannot be kept in a copy.`,
      );
    if (scan.whatIf.length > 0 && scans.some((one) => one.cells.some((cell) => cell.verdict === 'own')))
      notes.push(
        `${scan.info.name}: ${plural(scan.whatIf.length, 'what-if table becomes', 'what-if tables become')} values in a copy.`,
      );
  }
  if (hasSignature(pack)) notes.push('The workbook is signed. A copy cannot carry the signature.');
  return notes;
}

/** Says what a copy of this file would be, before any is made. */
export function* inspectStepsBy(
  find: FindFunction,
  file: Uint8Array,
  revived?: Revived,
): Generator<ShareProgress, Inspection> {
  try {
    const opened = yield* openBook(file);
    const judge = judgeOf(opened.names);
    const scans = yield* scanSheets(opened, judge);
    if (!revived && needsReviving(opened.pack, scans)) {
      const again = yield* reviveSteps(find, file);
      if (again) return yield* inspectStepsBy(find, again.bytes, again);
    }
    const problems = [...problemsOf(scans), ...(yield* spillProblems(opened, scans))];
    const sheets = scans.map((scan) => ({
      name: scan.info.name,
      calls: scan.cells.filter((cell) => cell.verdict === 'own').length,
      problems: problems.filter((problem) => problem.sheet === scan.info.name).length,
    }));
    return {
      refused: undefined,
      sheets,
      problems,
      calls: sheets.reduce((sum, sheet) => sum + sheet.calls, 0),
      stops: problems.some((problem) => problem.stops),
      notes: [...(revived ? [revivedSentence(revived)] : []), ...notesOf(opened, scans, judge)],
    };
  } catch (error) {
    if (error instanceof Refusal)
      return { refused: error.sentence, calls: 0, sheets: [], problems: [], stops: true, notes: [] };
    throw error;
  }
}
