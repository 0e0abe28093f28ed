import { readFileSync } from 'node:fs';
import { patched, PATCHES, STUBS, WITH_FIELDS } from '../../../src/build/sheet/patches';
import * as cjk from '../../../src/build/sheet/stubs/cjk';

const ONE_AFTER_ANOTHER =
  /its turn comes|nothing to calculate|a second time that it has ended|among its arrays|ends well|not forgotten before/;
/** The pinned packages still hold the text that is changed while bundling. */
const fileOf = (name: string): string => `node_modules/@univerjs/${name}/lib/es/index.js`;
const textOf = (name: string): string => readFileSync(fileOf(name), 'utf8');

test('the pinned version is the one the changes were written for', () => {
  const { devDependencies } = JSON.parse(readFileSync('package.json', 'utf8')) as {
    devDependencies: Record<string, string>;
  };
  const versions = Object.entries(devDependencies).filter(([name]) => name.startsWith('@univerjs/'));
  expect(versions.length).toBeGreaterThan(20);
  expect(new Set(versions.map(([, version]) => version))).toEqual(new Set(['0.25.1']));
});

test('the size of the cache of parsed formulas is found once and changed', () => {
  const text = textOf('engine-formula');
  const [cache] = PATCHES;
  expect(text.match(new RegExp(cache?.find.source ?? '', 'g'))).toHaveLength(1);
  const done = patched(fileOf('engine-formula'), text);
  expect(done).toContain('const FORMULA_CACHE_LRU_COUNT = 2e5;');
  expect(done).toContain('new FormulaAstLRU(FORMULA_CACHE_LRU_COUNT)');
});

test('formulas read once are remembered by workbook and text', () => {
  const text = textOf('engine-formula');
  expect(text.match(/FormulaLexerNodeCache\.get\(formulaString\)/g)).toHaveLength(1);
  expect(text.match(/FormulaLexerNodeCache\.set\(formulaString, /g)).toHaveLength(1);
  expect(text).toContain('treeBuilder(formulaString, transformSuffix = true, injectDefinedNameParam) {');
  // What is handed in names the workbook.
  expect(text).toContain('const { unitId, getValueByName, getSheetName } = param;');
  const done = patched(fileOf('engine-formula'), text);
  expect(done.match(/FormulaLexerNodeCache\.(get|set)\(\(injectDefinedNameParam/g)).toHaveLength(2);
});

test('a look found once by comparing is remembered', () => {
  const text = textOf('core');
  expect(text.match(/const existingId = this\._getExistingStyleId\(data\);/g)).toHaveLength(1);
  // The same comparison by which the engine finds it.
  expect(text).toContain('if (Tools.diffValue(_styles[id], data)) return id;');
  const done = patched(fileOf('core'), text);
  expect(done).toContain(
    'if (existingId) { this._cacheMap.set(styleObject, existingId); return existingId; }',
  );
  expect(done).toContain('const known = this._cacheMap.get(styleObject);');
});

test('texts are not read as numbers for a mark that is turned off', () => {
  const text = textOf('sheets-ui');
  expect(text.match(/const cellRaw = pos\.rawData;\s+if \(!cellRaw \|\|/g)).toHaveLength(1);
  // The reading comes after it, and after the reading the engine asks the same.
  expect(text).toMatch(
    /const cellRaw = pos\.rawData;[\s\S]{0,2000}disableForceStringMark\) return next\(cell\);/,
  );
  expect(patched(fileOf('sheets-ui'), text)).toMatch(
    /disableForceStringMark\) return next\(cell\); const cellRaw = pos\.rawData;/,
  );
});

test('the drawing of changed cells asks whether a sheet is in front', () => {
  const text = textOf('sheets-ui');
  expect(text.match(/_rangeToBounds\(ranges\) \{/g)).toHaveLength(1);
  expect(patched(fileOf('sheets-ui'), text)).toContain(
    '_rangeToBounds(ranges) { if (!this._sheetSkeletonManagerService.getCurrentParam()) return [];',
  );
});

test('the list of functions: each of the three places is found once', () => {
  const text = textOf('sheets-formula-ui');
  const patches = PATCHES.filter(({ file }) => file.source.includes('sheets-formula-ui'));
  expect(patches).toHaveLength(3);
  for (const { find } of patches) expect(text.match(new RegExp(find.source, 'g'))).toHaveLength(1);
  const done = patched(fileOf('sheets-formula-ui'), text);
  expect(done).toContain('useState(-1)');
  // What the changed lines name is there.
  expect(text).toMatch(/const stateRef = useStateRef\(\{\s+searchList,\s+active\s+\}\)/);
  expect(text).toContain('setActive((pre)');
});

test('descriptions of functions are shorter and say the same', () => {
  const text = textOf('sheets-formula');
  const done = patched(fileOf('sheets-formula'), text);
  expect(done.match(/\.\.\.describedAs\("/g)).toHaveLength(529);
  expect(done.match(/parameterOf\("/g)).toHaveLength(1296);
  expect(done.match(/^function (describedAs|parameterOf)\(/gm)).toHaveLength(2);
  expect(text.length - done.length).toBeGreaterThan(250_000);
  // One list of the two texts, run: the values are the same, whichever way they are written.
  const list = (from: string): unknown => {
    const at = from.indexOf('const FUNCTION_LIST_LOOKUP = [');
    const body = from.slice(from.indexOf('[', at), from.indexOf('\n];', at) + 2);
    const helpers = from.match(/^function (?:describedAs|parameterOf)\(.*$/gm)?.join('\n') ?? '';
    return new Function('FUNCTION_NAMES_LOOKUP', 'FunctionType', `${helpers}\nreturn ${body};`)(
      new Proxy({}, { get: (_, key) => key }),
      { Lookup: 'lookup' },
    ) as unknown;
  };
  expect(list(done)).toEqual(list(text));
  expect(list(text)).toContainEqual(expect.objectContaining({ functionName: 'VLOOKUP' }));
});

test('one calculation after another: each of the six places is found once', () => {
  const patches = PATCHES.filter(({ why }) => ONE_AFTER_ANOTHER.test(why));
  expect(patches).toHaveLength(6);
  const named = { engine: textOf('engine-formula'), trigger: textOf('sheets-formula') };
  const found = patches.map(({ file, find }) => {
    const text = file.test(fileOf('engine-formula')) ? named.engine : named.trigger;
    return text.match(new RegExp(find.source, 'g'))?.length;
  });
  expect(found).toEqual([1, 1, 1, 1, 1, 1]);
  const engine = patched(fileOf('engine-formula'), named.engine);
  expect(engine).toMatch(/FORMULA_EXECUTION_LOCK", async \(\) => \{ this\._currentConfigService\.load\(/);
  expect(engine.match(/_currentConfigService\.load\(formulaDatasetConfig\)/g)).toHaveLength(1);
  // A calculation that was stopped answers nothing; every other one answers something.
  expect(named.engine).toMatch(/markedAsStopFunctionsExecuted\(\);\s+[^;]+;\s+return;/);
  expect(patched(fileOf('sheets-formula'), named.trigger)).toContain('if (this._restartCalculation) {');
});

test('lists are compared by themselves: each of the four places is found once', () => {
  const text = textOf('engine-formula');
  const patches = PATCHES.filter(({ put }) => put.includes('isOfCells'));
  expect(patches).toHaveLength(4);
  for (const { find } of patches) expect(text.match(new RegExp(find.source, 'g'))).toHaveLength(1);
  expect(text).not.toContain('isOfCells');
  expect(patched(fileOf('engine-formula'), text).match(/\bisOfCells\b/g)).toHaveLength(4);
});

test('several changes in one step: the place is found once', () => {
  const text = textOf('core');
  expect(text.match(/item\.undoMutations\.push\(\.\.\.newItem\.undoMutations\);/g)).toHaveLength(1);
  expect(patched(fileOf('core'), text)).toContain('item.undoMutations.unshift(...newItem.undoMutations);');
});

test('the tables for hyphenating English are found once and taken out', () => {
  const text = textOf('engine-render');
  const hyphens = PATCHES.find(({ put }) => put.startsWith('const EnUs'));
  expect(text.match(new RegExp(hyphens?.find.source ?? '', 'gm'))).toHaveLength(1);
  const done = patched(fileOf('engine-render'), text);
  expect(text.length - done.length).toBeGreaterThan(50_000);
  // The reader of the tables still takes what stands there: levels, a tree as JSON, exceptions.
  expect(text).toContain('const [levelsTableStr, patternStr] = pattern;');
});

test.each(WITH_FIELDS)('class fields of %s become assignments, and nothing else changes', (name) => {
  const text = textOf(name);
  const fields = text.match(/\b_defineProperty\(this, "[A-Za-z_$][\w$]*", /g)?.length ?? 0;
  expect(fields).toBeGreaterThan(10);
  const done = patched(fileOf(name), text);
  const left = [...done.matchAll(/\b_defineProperty\(this, (\S+),/g)].map(([, key]) => key);
  // What stays: keys that are no plain names, and the one name that has an accessor.
  expect(left.filter((key) => key?.startsWith('"') && key !== '"parent"')).toEqual([]);
  const open = (code: string): number => code.split('(').length - code.split(')').length;
  expect(open(done)).toBe(open(text));
});

test('no setter on a prototype of the changed packages bears the name of a changed field', () => {
  for (const name of WITH_FIELDS) {
    const text = textOf(name);
    const fields = new Set(
      [...text.matchAll(/\b_defineProperty\(this, "([A-Za-z_$][\w$]*)", /g)].map(([, field]) => field),
    );
    const setters = [...text.matchAll(/^\tset ([A-Za-z_$][\w$]*)\(/gm)].map(([, field]) => field);
    expect(setters.filter((field) => field !== 'parent' && fields.has(field))).toEqual([]);
  }
});

test('what is stubbed is still asked for by the drawing package only, with these members', () => {
  const text = textOf('engine-render');
  for (const name of Object.keys(STUBS)) expect(text).toContain(`from "${name}"`);
  expect([...new Set([...text.matchAll(/\bcjk\.(\w+)\(/g)].map(([, member]) => member))].sort()).toEqual([
    'all',
    'letters',
    'punctuations',
  ]);
});

test('Chinese, Japanese and Korean signs are told from others', async () => {
  // The package itself is the judge: every sign of the basic plane, letters and punctuation.
  const theirs = (await import('cjk-regex' as string)) as typeof cjk;
  const differing = (ours: RegExp, other: RegExp): number => {
    let count = 0;
    for (let code = 0x20; code < 0xd800; code++) {
      const sign = String.fromCharCode(code);
      if (ours.test(sign) !== other.test(sign)) count++;
    }
    return count;
  };
  expect(differing(cjk.letters().toRegExp(), theirs.letters().toRegExp())).toBeLessThan(600);
  expect(differing(cjk.all().toRegExp(), theirs.all().toRegExp())).toBeLessThan(700);
  for (const sign of ['漢', 'か', 'カ', '한'])
    expect([
      cjk.letters().toRegExp().test(sign),
      theirs.letters().toRegExp().test(sign),
      cjk.all().toRegExp().test(sign),
    ]).toEqual([true, true, true]);
  for (const sign of ['a', 'é', '7', ' ', '°', '…', 'Ж'])
    expect([cjk.all().toRegExp().test(sign), cjk.letters().toRegExp().test(sign)]).toEqual([false, false]);
});
