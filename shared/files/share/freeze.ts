// Long: one pass over a workbook; the steps share its state.
import { append } from '../append';
import { Spills } from './references/anchors';
import { addSheet, freeName } from './proof/addSheet';
import { removeSettings } from '../settings';
import { chartsThrough, removeAddins, removeCalcChain, removeSignatures } from './leaveOut/addin';
import { LastValues, nativeForm } from './decisions/alive';
import { blocksOf } from './decisions/blocks';
import type { Block } from './decisions/blocks';
import { typedForm } from './references/calls';
import type { SheetFacts } from './proof/digests';
import { sheetFacts } from './proof/digests';
import type { SheetEdits } from './decisions/edits';
import { settleSpills, sheetEdits } from './decisions/edits';
import { planExclusion } from './leaveOut/leaveOut';
import type { LeaveOut } from './leaveOut/leaveOut';
import { hasHeaderWords, personalInSheet, removePersonal } from './leaveOut/personal';
import { readBook } from '../package/book';
import { placesText } from './places';
import { typedAddresses } from './proof/addresses';
import { heldOfPeople, NOBODY, whatIsLeft } from './proof/remaining';
import type { Kept, Proof } from './proof/search';
import { searchCopy } from './proof/search';
import { proofSentences } from './proof/sentences';
import { lex } from './references/lex';
import type { Opened } from './open';
import { judgeOf, openBook, scanSheets } from './open';
import type { FreezeOptions, FreezeReport, FreezeResult, ShareProgress } from './decisions/options';
import { ownWords, pageRows } from './proof/page';
import { isPageName, isSeal, PAGE_WORDS } from './proof/pageWords';
import { blankSpill, problemOf } from './decisions/problems';
import type { ShareProblem } from './decisions/problems';
import { Refusal } from '../package/refusal';
import type { RuleFate } from './leaveOut/rules';
import { editRules } from './leaveOut/rules';
import type { FormulaCell, Judge, SheetScan } from './decisions/scan';
import type { Edit } from '../package/splice';
import { put } from '../package/splice';
import type { Revived } from './revive';
import { needsReviving, revivedSentence, reviveSteps } from './revive';
import { sharedStrings } from '../cells/strings';
import { editTable } from './references/tables';
import { eachCell } from '../cells/values';
import { escapeXml } from '../text';
import type { FindFunction } from '../../sheet/formula';

const MAKER = 'Spawnbook';
const NOTHING = 'No formula of Spawnbook is in this workbook: it can be shared as it is.';
const ALREADY = 'This copy is frozen already: no formula of Spawnbook is left in it.';

/** Everything in one place while a copy is made. */
interface Work extends Opened {
  readonly options: FreezeOptions;
  /** Our functions: their versions stand on the page, their native twins may take over. */
  readonly find: FindFunction;
  readonly judge: Judge;
  readonly leave: LeaveOut | undefined;
  readonly scans: readonly SheetScan[];
  readonly problems: readonly ShareProblem[];
  /** Set when another program had left #NAME? in our formulas. */
  readonly revived: Revived | undefined;
}

/** Problems of our own formulas; cells to be emptied cannot have any. */
export function problemsOf(scans: readonly SheetScan[]): ShareProblem[] {
  return scans.flatMap((scan) =>
    scan.cells
      .filter((cell) => cell.verdict === 'own')
      .map((cell) => problemOf(scan.info.name, cell))
      .filter((one) => one !== undefined),
  );
}

/** Formulas that fill several cells, some of which hold nothing. */
export function* spillProblems(
  { pack, book }: Opened,
  scans: readonly SheetScan[],
): Generator<ShareProgress, ShareProblem[]> {
  const problems: ShareProblem[] = [];
  const strings = sharedStrings({ pack, book });
  for (const scan of scans) {
    const wide = scan.cells.filter(
      (cell) =>
        cell.verdict === 'own' &&
        cell.kind === 'array' &&
        (cell.area.bottom > cell.area.top || cell.area.right > cell.area.left),
    );
    if (wide.length === 0) continue;
    const steps = sheetFacts(
      scan.bytes,
      strings,
      wide.map((cell) => [cell.area]),
      true,
    );
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield { step: 'read', done: step.value };
    for (const [i, facts] of step.value.blocks.entries()) {
      const cell = wide[i];
      const size = cell ? (cell.area.bottom - cell.area.top + 1) * (cell.area.right - cell.area.left + 1) : 0;
      if (cell && facts.held < size) problems.push(blankSpill(scan.info.name, cell, size - facts.held));
    }
  }
  return problems;
}

/**
 * Formulas that can live on as native ones: all their calls have a twin, and the twin gives the value in the
 * cell.
 */
function* nativeTwins(work: Work): Generator<ShareProgress, Map<FormulaCell, string>> {
  const twins = new Map<FormulaCell, string>();
  if (!work.options.keepAlive) return twins;
  const wished = work.scans
    .flatMap((scan) =>
      scan.cells
        .filter(
          (cell) =>
            cell.verdict === 'own' && cell.value && !work.names.uses(cell.text, cell.pieces, scan.info.index),
        )
        .map((cell) => ({ scan, cell, native: nativeForm(cell.text, work.find) })),
    )
    .filter((one) => one.native !== undefined);
  if (wished.length === 0) return twins;
  const values = new LastValues(work.book, work.names, work.tables, work.find);
  const strings = sharedStrings(work);
  for (const { info } of work.book.sheets
    .filter((sheet) => sheet.isWorksheet)
    .map((one) => ({ info: one }))) {
    const bytes = work.pack.read(info.part);
    if (!bytes) continue;
    for (const done of eachCell(bytes, strings, (cell, value) => {
      if (value) values.set(info.index, cell.row, cell.column, value);
    }))
      yield { step: 'read', done };
  }
  for (const { scan, cell, native } of wished)
    if (native !== undefined && values.agrees(scan.info.index, cell, native)) twins.set(cell, native);
  return twins;
}

/** Rules, names and table columns have no cached value: they go, or read a range in place of a spill. */
const fateOfText =
  (work: Work, spills: Spills, sheet: number | undefined) =>
  (text: string, cells = ''): RuleFate => {
    const pieces = lex(text);
    const verdict = work.judge.of(text, pieces, sheet ?? -1);
    if (verdict === 'own' || verdict === 'cut') return 'drop';
    if (work.leave?.ruleTells(text, pieces, sheet ?? -1, cells)) return 'drop';
    if (verdict === 'keep' || spills.isEmpty) return 'keep';
    const rewritten = spills.rewrite(text, pieces, sheet);
    return rewritten === undefined ? 'drop' : rewritten === text ? 'keep' : { text: rewritten };
  };

/** Rules of one kind in one line: a book that is coloured line by line has hundreds. */
const ruleSentences = (places: ReadonlyMap<string, readonly string[]>): string[] =>
  [...places].map(([what, all]) => {
    const [first = ''] = all;
    if (all.length === 1) return `${first}: a ${what} was removed.`;
    return `${placesText(all)}: a ${what} was removed from each.`;
  });

/** Conditional formats, validations, table columns. */
function editAround(work: Work, spills: Spills, fates: readonly SheetEdits[]): string[] {
  const said: string[] = [];
  const rules = new Map<string, string[]>();
  for (const { scan, edits } of fates) {
    const around = editRules(scan.bytes, scan.root, fateOfText(work, spills, scan.info.index));
    for (const rule of around.dropped) {
      const what = `${rule.kind}${work.leave?.values?.inFormula(rule.formula) ? '' : ` with ${typedForm(rule.formula)}`}`;
      const same = rules.get(what) ?? [];
      rules.set(what, same);
      same.push(`${scan.info.name}!${rule.cells}`);
    }
    const blanks = [
      ...(work.leave?.editsOf(scan) ?? []),
      ...(work.options.personal ? personalInSheet(work.pack, scan) : []),
    ];
    work.pack.edit(scan.info.part, [...edits, ...around.edits, ...blanks]);
  }
  said.push(...ruleSentences(rules));
  for (const table of work.tables.filter((one) => work.leave?.exclusion.keeps(one.sheet) ?? true)) {
    const { edits, dropped } = editTable(work.pack, table, (text, sheet) =>
      fateOfText(work, spills, sheet)(text),
    );
    work.pack.edit(table.part, edits);
    for (const column of dropped) said.push(`${column}: the formula that fills new rows was removed.`);
  }
  return said;
}

function nameEdits(work: Work, spills: Spills, said: string[]): Edit[] {
  const { book, names } = work;
  return book.names.flatMap((name) => {
    const sheet = name.scope;
    if (names.isTainted(name)) {
      said.push(
        `The name ${name.name}${work.leave?.values?.inFormula(name.text) ? '' : ` (${typedForm(name.text)})`} holds #N/A now; cells that used it hold their last values.`,
      );
      return [put(name.element.openEnd, name.element.closeStart, '#N/A')];
    }
    if (work.leave?.dropsName(name)) return [];
    const fate =
      spills.isEmpty || !/ANCHORARRAY/i.test(name.text)
        ? 'keep'
        : spills.rewrite(name.text, work.names.pieces.get(name) ?? [], sheet);
    return fate === undefined || fate === 'keep' || fate === name.text
      ? []
      : [put(name.element.openEnd, name.element.closeStart, escapeXml(fate))];
  });
}

function* addPage(
  work: Work,
  fates: readonly SheetEdits[],
  others: readonly string[],
  people: readonly string[],
): Generator<ShareProgress, { page: string; digest: string; blocks: number }> {
  const blocks: Block[] = [];
  const sheets: { name: string; facts: SheetFacts }[] = [];
  const strings = sharedStrings(work);
  for (const [i, { scan, lines }] of fates.entries()) {
    const own = blocksOf(scan.info.name, scan.info.index, lines);
    append(blocks, own);
    const steps = sheetFacts(
      work.pack.read(scan.info.part) ?? scan.bytes,
      strings,
      own.map((block) => block.areas),
    );
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield { step: 'page', done: (i + step.value) / fates.length };
    sheets.push({ name: scan.info.name, facts: step.value });
    yield { step: 'page', done: (i + 1) / fates.length };
  }
  const { options, pack } = work;
  const { language = 'en' } = options;
  const book = readBook(pack);
  const rows = pageRows({
    workbook: options.workbook,
    date: options.date,
    maker: options.maker ?? MAKER,
    blocks,
    find: work.find,
    sheets,
    others,
    people,
    language,
    say: sayOf(work),
  });
  const page = freeName(
    book.sheets.map((sheet) => sheet.name),
    PAGE_WORDS[language].name,
  );
  pack.edit(book.part, addSheet(pack, book, page, rows));
  return {
    page,
    blocks: blocks.length,
    digest: rows.find((row) => isSeal(row[0]?.value.raw))?.[1]?.value.raw ?? '',
  };
}

function* steps(
  file: Uint8Array,
  options: FreezeOptions,
  find: FindFunction,
  revived?: Revived,
): Generator<ShareProgress, FreezeResult> {
  const opened = yield* openBook(file);
  const leave = yield* planExclusion(opened, options);
  const judge = judgeOf(opened.names, leave?.exclusion);
  const scans = leave?.scans ?? (yield* scanSheets(opened, judge));
  if (!revived && needsReviving(opened.pack, scans)) {
    const again = yield* reviveSteps(find, file);
    if (again) return yield* steps(again.bytes, options, find, again);
  }
  const problems = [...problemsOf(scans), ...(yield* spillProblems(opened, scans))];
  const stopping = problems.filter((problem) => problem.stops);
  if (stopping.length > 0 && !options.acceptProblems) {
    const [first] = stopping;
    const more = stopping.length > 1 ? ` (and ${stopping.length - 1} more)` : '';
    return {
      kind: 'refused',
      sentence: `No copy was made, because cells hold no finished value. ${first?.sentence ?? ''}${more}`,
      problems,
    };
  }
  return yield* make({ ...opened, options, find, leave, judge, scans, problems, revived }, file);
}

/** Our own words in the language of the page. */
const sayOf =
  ({ options: { say } }: Work) =>
  (text: string): string =>
    say?.(text) ?? text;

/** What changed around the cells, for the page and the report. */
function sayOthers(work: Work, fates: readonly SheetEdits[]): string[] {
  const said = chartsThrough(work.pack, (text) => work.names.uses(text, lex(text), undefined)).map(
    (chart) =>
      `${chart.replace(/^.*\//, '')}: this chart draws a name that is frozen; it shows what it last drew.`,
  );
  const whatIf = total(fates, (one) => one.whatIf);
  if (whatIf > 0)
    said.push(
      `${whatIf} what-if table${whatIf === 1 ? '' : 's'} became values: with frozen numbers every row would say the same.`,
    );
  const cuts = total(fates, (one) => one.cut);
  if (cuts > 0)
    said.push(
      `${cuts} other formula${cuts === 1 ? '' : 's'} became values, because they read what is not in this copy or a spilled range that cannot be told.`,
    );
  return said;
}

const total = (fates: readonly SheetEdits[], of: (one: SheetEdits) => number): number =>
  fates.reduce((sum, one) => sum + of(one), 0);

function* make(work: Work, file: Uint8Array): Generator<ShareProgress, FreezeResult> {
  const { pack, book, leave } = work;
  const twins = yield* nativeTwins(work);
  const native = (cell: FormulaCell): string | undefined => twins.get(cell);
  const spills = new Spills(book, work.names);
  const frozen = settleSpills(work.scans, spills, native);
  const fates = work.scans.map((scan) => sheetEdits(scan, spills, frozen, native, frozen.size > 0));
  yield { step: 'write', done: 0 };
  const others = editAround(work, spills, fates);
  const bookEdits = nameEdits(work, spills, others);
  if (work.revived) {
    const kept = new Set(work.scans.map(({ info }) => info.name));
    others.push(revivedSentence(work.revived, (sheet) => kept.has(sheet)));
  }
  others.push(...sayOthers(work, fates));
  if (frozen.size > 0 || leave?.isChanging) removeCalcChain(pack, book);
  const removed = removeRest(work, bookEdits);
  pack.edit(book.part, bookEdits);
  if (!pack.isChanged)
    return {
      kind: 'unchanged',
      bytes: file,
      sentence: book.sheets.some((sheet) => isPageName(sheet.name)) ? ALREADY : NOTHING,
    };
  const say = sayOf(work);
  const people = (yield* peopleIn(work)).map(say);
  const changed = [...others, ...removed].map(say);
  const page = yield* addPage(work, fates, changed, people);
  const saved = yield* savePackage(work);
  const proof =
    leave?.values &&
    (yield* searchCopy(saved.bytes, leave.values, keptOf(work, people, [...others, ...removed])));
  const stray =
    saved.stray.length > 0
      ? [`${saved.stray.length} parts that nothing in the workbook leads to were not copied.`]
      : [];
  return {
    kind: 'made',
    bytes: saved.bytes,
    report: reportOf(work, fates, frozen, {
      page,
      removed: [...others, ...removed, ...stray],
      people,
      proof,
    }),
  };
}

/** Sentences of ours without a word of the workbook. */
const OWN_SENTENCE =
  /^(?:\d+ (?:cells were emptied|sheets are left out|texts that only|other formula)|One sheet is left out|Links, filters|Shapes, pictures|Number formats of|The record of changes|The preview picture)/;

function keptOf(work: Work, people: readonly string[], changes: readonly string[]): Kept {
  const { book, leave, options } = work;
  const say = sayOf(work);
  const places = new Map(book.sheets.map(({ name, index }) => [name, index]));
  return {
    said: new Set([
      ...ownWords({ language: options.language ?? 'en', say }),
      ...people,
      ...changes.filter((one) => OWN_SENTENCE.test(one)).map(say),
    ]),
    isSafeSum: (sheet, place) => leave?.isSafeSum(sheet, place) ?? false,
    indexOf: (name) => places.get(name) ?? -1,
  };
}

/** What the copy holds of people and what could not be taken out, or that there is nothing. */
function* peopleIn({ pack, options, scans }: Work): Generator<ShareProgress, string[]> {
  const book = readBook(pack);
  const typed = options.personal ? yield* typedAddresses(pack, book) : undefined;
  const hasHeaders = !options.personal && scans.some(({ bytes, root }) => hasHeaderWords(bytes, root));
  const held = heldOfPeople(pack, book, hasHeaders);
  return [
    ...whatIsLeft(pack, book),
    ...held,
    ...(typed === undefined ? [] : [typed]),
    ...(held.length === 0 ? [NOBODY] : []),
  ];
}

function removeRest({ pack, book, leave, options }: Work, bookEdits: Edit[]): string[] {
  const removed = [
    ...removeAddins(pack),
    ...removeSettings(pack, book),
    ...(leave?.apply(bookEdits) ?? []),
    ...(options.personal ? removePersonal(pack, book, bookEdits) : []),
  ];
  return pack.isChanged || bookEdits.length > 0 ? [...removed, ...removeSignatures(pack)] : removed;
}

function* savePackage({
  pack,
  before,
  options,
}: Work): Generator<ShareProgress, { readonly bytes: Uint8Array; readonly stray: readonly string[] }> {
  const stray = pack.tidy(before);
  const packing = pack.save(options.level);
  let step = packing.next();
  for (; !step.done; step = packing.next()) yield { step: 'pack', done: step.value };
  return { bytes: step.value, stray };
}

interface Made {
  readonly page: { readonly page: string; readonly digest: string; readonly blocks: number };
  readonly removed: readonly string[];
  /** What the copy holds of people. */
  readonly people: readonly string[];
  readonly proof: Proof | undefined;
}

const reportOf = (
  work: Work,
  fates: readonly SheetEdits[],
  frozen: ReadonlySet<FormulaCell>,
  { page, removed, people, proof }: Made,
): FreezeReport => ({
  frozen: total(fates, (one) => one.frozen),
  alive: total(fates, (one) => one.alive),
  cut: total(fates, (one) => one.cut),
  kept: total(
    fates,
    (one) =>
      one.scan.kept +
      one.scan.cells.filter(
        (cell) => (cell.verdict === 'spill' || cell.verdict === 'keep') && !frozen.has(cell),
      ).length,
  ),
  blocks: page.blocks,
  page: page.page,
  digest: page.digest,
  problems: work.problems,
  removed: proof?.places.length === 0 ? [...removed, ...proofSentences(proof)] : removed,
  left: [...(proof && proof.places.length > 0 ? proofSentences(proof) : []), ...people],
  proof,
});

/** Makes the copy step by step; between two steps the caller may show progress, or stop. */
export function* freezeStepsBy(
  find: FindFunction,
  file: Uint8Array,
  options: FreezeOptions,
): Generator<ShareProgress, FreezeResult> {
  try {
    return yield* steps(file, options, find);
  } catch (error) {
    if (error instanceof Refusal) return { kind: 'refused', sentence: error.sentence, problems: [] };
    throw error;
  }
}
