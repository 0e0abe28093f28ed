/**
 * Changes to the text of the embedded spreadsheet's packages, made while bundling. They are pinned to one
 * version; each names what it looks for, and a test fails when that text is no longer there.
 */
export interface Patch {
  readonly why: string;
  /** The file inside node_modules. */
  readonly file: RegExp;
  readonly find: RegExp;
  readonly put: string;
}

const EDITOR = /@univerjs\/sheets-formula-ui\/lib\/es\/index\.js$/;
/**
 * The list of functions under a formula has no entry marked until a person marks one, and Enter and Tab take
 * an entry only then: otherwise what stands in the cell is what was typed.
 */
const COMPLETION: readonly Patch[] = [
  {
    why: 'No entry is marked when the list opens.',
    file: EDITOR,
    find: /const \[active, setActive\] = useState\(0\);(?=\s+const isEnableMouseEnterOrOut)/,
    put: 'const [active, setActive] = useState(-1);',
  },
  {
    why: 'Nor when other entries come into it.',
    file: EDITOR,
    find: /if \(!searchList\.length\) return;(?=\s+const operationId = `sheet\.formula-embedding-editor\.search_function)/,
    put: 'setActive(-1); if (!searchList.length) return;',
  },
  {
    why: 'Enter and Tab belong to the list only while an entry is marked.',
    file: EDITOR,
    find: /binding: keyCode,\s+preconditions: \(\) => true,/,
    put:
      'binding: keyCode, preconditions: () => (keyCode !== KeyCode.ENTER && keyCode !== KeyCode.TAB) || ' +
      'stateRef.current.active >= 0,',
  },
];

const FORMULAS = /@univerjs\/sheets-formula\/lib\/es\/index\.js$/;
/**
 * The descriptions of 529 built-in functions repeat the keys of their texts, 0.2 MB of the first screen: two
 * functions spell them out again.
 */
const SHORTER: readonly Patch[] = [
  {
    why: 'Description and abstract of a function by its name.',
    file: FORMULAS,
    find: /description: "sheets-formula\.functionList\.([\w.]+)\.description",\s+abstract: "sheets-formula\.functionList\.\1\.abstract",/g,
    put: '...describedAs("$1"),',
  },
  {
    why: 'A parameter by its function, its name and its three values.',
    file: FORMULAS,
    find: /\{\s+name: "sheets-formula\.functionList\.([\w.]+)\.functionParameter\.(\w+)\.name",\s+detail: "sheets-formula\.functionList\.\1\.functionParameter\.\2\.detail",\s+example: ("(?:[^"\\]|\\.)*"),\s+require: ([01]),\s+repeat: ([01])\s+\}/g,
    put: 'parameterOf("$1", "$2", $3, $4, $5)',
  },
  {
    why: 'The two functions.',
    file: FORMULAS,
    find: /^(?=const FUNCTION_LIST_ARRAY = \[)/m,
    put:
      'function describedAs(name) { const key = "sheets-formula.functionList." + name; ' +
      'return { description: key + ".description", abstract: key + ".abstract" }; }\n' +
      'function parameterOf(name, one, example, require, repeat) { ' +
      'const key = "sheets-formula.functionList." + name + ".functionParameter." + one; ' +
      'return { name: key + ".name", detail: key + ".detail", example, require, repeat }; }\n',
  },
];

const ENGINE = /@univerjs\/engine-formula\/lib\/es\/index\.js$/;
/**
 * A change made while a calculation runs handed its own data to the calculation under way: that one went on
 * with the wrong cells, and sheets taken away meanwhile stayed in the list of what depends on what.
 */
const ONE_AT_A_TIME: readonly Patch[] = [
  {
    why: 'What a calculation works on is loaded when its turn comes, not while the one before still runs.',
    file: ENGINE,
    find: /this\._currentConfigService\.load\(formulaDatasetConfig\);\s+this\._runtimeService\.reset\(\);(\s+const cycleReferenceCount = [^;]*;)\s+(this\._isCalculateTreeModel = [^;]*;)\s+(this\._executeLock\.acquire\("FORMULA_EXECUTION_LOCK", async \(\) => \{)/,
    put: '$1 $3 this._currentConfigService.load(formulaDatasetConfig); this._runtimeService.reset(); $2',
  },
  {
    why: 'A calculation that was stopped has said so; it does not say a second time that it has ended.',
    file: ENGINE,
    find: /await this\._executeStep\(\);(\s+FORMULA_REF_TO_ARRAY_CACHE\.clear\(\);)/,
    put:
      'const isWhole = await this._executeStep();$1 if (isWhole === void 0) { ' +
      'CELL_INVERTED_INDEX_CACHE.clear(); this._runtimeService.reset(); return; }',
  },
  {
    why: 'Nor does one that was stopped among its arrays.',
    file: ENGINE,
    find: /await this\._apply\(true\);\s+return true;/,
    put: 'return (await this._apply(true)) == null ? void 0 : true;',
  },
  {
    why:
      'A formula of a sheet that was taken away stays in the list of what depends on what where it looked at a ' +
      'sheet that is still there. It has nothing to calculate, and that is no error.',
    file: ENGINE,
    find: /console\.error\("Dependency tree not found for treeId:", parentTreeId\);\s+continue;/,
    put: 'continue;',
  },
  {
    why: 'Asked to stop when its last cell was done, a calculation ends well: the next one begins all the same.',
    file: FORMULAS,
    find: /if \(state === FormulaExecutedStateType\.STOP_EXECUTION && this\._restartCalculation\) \{/,
    put: 'if (this._restartCalculation) {',
  },
  {
    why: 'And what it is to work on is not forgotten before.',
    file: FORMULAS,
    find: /_resetExecutingDirtyData\(\) \{(?=\s+this\._executingDirtyData)/,
    put: '_resetExecutingDirtyData() { if (this._restartCalculation) return;',
  },
];

/**
 * Comparisons look rows up in an index of what stands in a column. A list that a formula made says the place of
 * that formula as its own: it was looked up among cells, and its values were put into the index as theirs.
 */
const CELLS_ALONE: readonly Patch[] = [
  {
    why: 'What was read from cells says so.',
    file: ENGINE,
    find: /(const arrayValueObject = ArrayValueObject\.create\(arrayValueObjectData\);)(?=\s+useCache && FORMULA_REF_TO_ARRAY_CACHE\.set)/,
    put: '$1 arrayValueObject.isOfCells = true;',
  },
  {
    why: 'Only that is looked up.',
    file: ENGINE,
    find: /if \(batchOperatorType === 5\) \{(?=\s+const \{ rowsInCache, rowsNotInCache \})/,
    put: 'if (batchOperatorType === 5 && this.isOfCells) {',
  },
  {
    why: 'Only that is put into the index, a value at a time',
    file: ENGINE,
    find: /(?<=else result\[r\]\[column\] = ErrorValueObject\.create\("#N\/A"\);\s+)(?=CELL_INVERTED_INDEX_CACHE\.set\(unitId, sheetId, column \+ startColumn, )/,
    put: 'if (this.isOfCells) ',
  },
  {
    why: 'and as rows that are done.',
    file: ENGINE,
    find: /(?<=isCaseSensitive\);\s+)(?=CELL_INVERTED_INDEX_CACHE\.setContinueBuildingCache\(unitId, sheetId, column \+ startColumn, startRow, startRow \+ rowCount - 1\);)/,
    put: 'if (this.isOfCells) ',
  },
];

export const PATCHES: readonly Patch[] = [
  {
    why:
      'The engine keeps the parsed form of 5,000 formulas and walks all of them in the same order: a ' +
      'larger book misses every time and parses each formula anew at every edit.',
    file: ENGINE,
    find: /const FORMULA_CACHE_LRU_COUNT = 5e3;/,
    put: 'const FORMULA_CACHE_LRU_COUNT = 2e5;',
  },
  {
    why:
      'While an undo takes the sheet in front away, cells of other sheets change too, and nothing is drawn that ' +
      'could be out of date.',
    file: /@univerjs\/sheets-ui\/lib\/es\/index\.js$/,
    find: /_rangeToBounds\(ranges\) \{(?=\s+const \{ rowHeightAccumulation)/,
    put: '_rangeToBounds(ranges) { if (!this._sheetSkeletonManagerService.getCurrentParam()) return [];',
  },
  {
    why:
      'Class fields compiled to a call of Object.defineProperty are the hottest function of a calculation; ' +
      'a plain assignment does the same where no accessor stands in the way.',
    file: /@univerjs\/[a-z-]+\/lib\/es\/[a-z]+\.js$/,
    // Not "parent": a class of the drawing package has an accessor of that name.
    find: /\b_defineProperty\(this, "(?!parent")([A-Za-z_$][\w$]*)", /g,
    put: '(this.$1 = ',
  },
  {
    why:
      'A formula read once is remembered by its text alone, with its names already replaced: the same text in ' +
      'the next workbook would mean the cells of the last one. The workbook becomes part of the key.',
    file: ENGINE,
    find: /FormulaLexerNodeCache\.(get|set)\(formulaString/g,
    put: 'FormulaLexerNodeCache.$1((injectDefinedNameParam ? injectDefinedNameParam.unitId : "") + formulaString',
  },
  ...COMPLETION,
  ...SHORTER,
  ...ONE_AT_A_TIME,
  ...CELLS_ALONE,
  {
    why:
      'Several changes taken back in one step were taken back in the order they were made: the look given last ' +
      'brought back the value typed first. The last is taken back first.',
    file: /@univerjs\/core\/lib\/es\/index\.js$/,
    find: /item\.undoMutations\.push\(\.\.\.newItem\.undoMutations\);/,
    put: 'item.undoMutations.unshift(...newItem.undoMutations);',
  },
  {
    why:
      'A look spelled in another order of its keys was compared with every look of the workbook each time. What was ' +
      'found is remembered, and trusted while it still says the same.',
    file: /@univerjs\/core\/lib\/es\/index\.js$/,
    find: /if \(this\._cacheMap\.has\(styleObject\)\) return this\._cacheMap\.get\(styleObject\);\s+(const existingId = this\._getExistingStyleId\(data\);\s+)if \(existingId\) return existingId;/,
    put:
      'const known = this._cacheMap.get(styleObject); ' +
      'if (known !== undefined && Tools.diffValue(this._styles[known], data)) return known; ' +
      '$1if (existingId) { this._cacheMap.set(styleObject, existingId); return existingId; }',
  },
  {
    why:
      'Every text on the screen was read as a date, a time and a number at every drawing, to mark texts that look ' +
      'like numbers. The mark is turned off here; now the reading is too.',
    file: /@univerjs\/sheets-ui\/lib\/es\/index\.js$/,
    find: /(?=const cellRaw = pos\.rawData;\s+if \(!cellRaw \|\| cellRaw\.v === null \|\| cellRaw\.v === void 0\) return next\(cell\);)/,
    put: 'if (this._configService.getConfig("sheets-ui.config")?.disableForceStringMark) return next(cell); ',
  },
  {
    why: 'Tables for hyphenating English, built into the drawing package: cells are not hyphenated.',
    file: /@univerjs\/engine-render\/lib\/es\/index\.js$/,
    find: /^const EnUs = \[\n(?:\t.*\n)*?\];$/m,
    put: 'const EnUs = ["0", "{}", []];',
  },
];

/** Files with class fields to rewrite; in each the text must be found. */
export const WITH_FIELDS = ['core', 'engine-formula', 'engine-render', 'sheets', 'sheets-ui', 'ui', 'docs'];

/** The text with every change that belongs to its file. */
export const patched = (file: string, text: string): string =>
  PATCHES.filter((patch) => patch.file.test(file)).reduce(
    (done, { find, put }) => done.replace(find, put),
    text,
  );

/**
 * Packages that the drawing of cells needs only for long documents: what they do there is replaced by a few
 * lines of our own.
 */
export const STUBS: Readonly<Record<string, string>> = {
  'cjk-regex': 'cjk.ts',
  'opentype.js': 'fonts.ts',
  'franc-min': 'language.ts',
};
/** Tables for hyphenating documents in seventy languages; cells are not hyphenated. */
export const HYPHENATION = /^\.\/[a-z]{2,3}(-[a-z0-9]+)*-[\w-]{8}\.js$/;
