// Calculation needs of a function's record its parameters and its arithmetic; examples, help, sources and
// most descriptions are read
// by the pane, the function list and the tests. This webpack loader empties them for the calculation bundle,
// which Excel loads on
// every start.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { root } from '../install.mjs';

/** Files that hold records: sheet functions, rules of the checks, sources. */
export const RECORD_FILES =
  /shared[\\/](families[\\/](\w+[\\/])?(records[\\/]|sources\.ts)|records[\\/](functions|rules)[\\/]).*/;

const NO_TEXT = "''";
const EMPTY = {
  examples: '[]',
  sources: '[]',
  cautions: '[]',
  questions: '[]',
  summary: NO_TEXT,
  help: NO_TEXT,
  valid: NO_TEXT,
  title: NO_TEXT,
  checks: NO_TEXT,
  why: NO_TEXT,
  // The spreadsheet's own formula for it, which a shared copy may use.
  native: 'undefined',
};
/** Of a function nothing in the calculation reads these: they go with their names. */
const GONE = ['examples', 'questions', 'summary', 'help', 'valid', 'family'];
/** A table names a source and its standing, not where a copy was read. */
const OF_SOURCES = ['note', 'url', 'doi'];
/** Position of the description among the arguments of these. */
const DESCRIBED = { flag: 1, value: 1, fields: 1, rows: 1, column: 2 };
/** No sentence quotes the description of a parameter. */
const PARAMETERS = ['num', 'choice', 'series', 'texts'];

const isText = (node) =>
  ts.isStringLiteralLike(node) || (ts.isBinaryExpression(node) && isText(node.left) && isText(node.right));
const properties = (node) =>
  node && ts.isObjectLiteralExpression(node) ? node.properties.filter(ts.isPropertyAssignment) : [];
const named = (list, name) => list.find((property) => property.name.getText() === name);

/** What can go from one record, known by its id and its examples: [expression, what stands there instead]. */
function unneededOfRecord(node) {
  const fields = properties(node);
  if (!named(fields, 'id') || !named(fields, 'examples')) return [];
  const isFunction =
    ts.isCallExpression(node.parent) && node.parent.expression.getText() === 'defineFunction';
  const goes = (field) => isFunction && GONE.includes(field.name.getText());
  // A text of its own name outside the record, `help,`: nothing reads it then, and it goes with the record's.
  const shorthand = (isFunction ? node.properties.filter(ts.isShorthandPropertyAssignment) : [])
    .filter(({ name }) => name.getText() in EMPTY)
    .map((field) => [field, `${field.name.getText()}: ${EMPTY[field.name.getText()]}`]);
  const written = fields
    .filter(
      (field) =>
        goes(field) ||
        (field.name.getText() in EMPTY &&
          (isFunction || isText(field.initializer) || ts.isArrayLiteralExpression(field.initializer))),
    )
    .map((field) => (goes(field) ? [field, ''] : [field.initializer, EMPTY[field.name.getText()]]));
  return [...written, ...shorthand];
}

/** Where answers name a source. A source whose key stands nowhere there is read by the pane alone. */
const NAMERS = [
  'timing/kernels',
  'feeding/kernels',
  'growth/kernels',
  'learning',
  'learning/kernels',
  'learning/records',
].map((folder) => `shared/families/${folder}`);
let keysNamed;
function namedInAnswers(key) {
  keysNamed ??= new Set(
    NAMERS.flatMap((folder) =>
      readdirSync(join(root, folder))
        .filter((file) => file.endsWith('.ts') && file !== 'sources.ts')
        .flatMap((file) =>
          [...readFileSync(join(root, folder, file), 'utf8').matchAll(/'([A-Z][A-Z0-9]+)'/g)].map(
            ([, found]) => found,
          ),
        ),
    ),
  );
  return keysNamed.has(key);
}

/** sources({ … }) with what answers print of it. */
function slimSources(list) {
  const kept = properties(list)
    .filter(({ name }) => namedInAnswers(name.getText()))
    .map(
      ({ name, initializer }) =>
        `${name.getText()}: { ${properties(initializer)
          .filter((field) => !OF_SOURCES.includes(field.name.getText()))
          .map((field) => field.getText())
          .join(', ')} }`,
    );
  const spread = list.properties.filter(ts.isSpreadAssignment).map((part) => part.getText());
  return [[list, `{ ${[...spread, ...kept].join(', ')} }`]];
}

/** What can go from one call. */
function unneededOfCall(node) {
  const callee = node.expression.getText();
  if (callee === 'sources' && node.arguments[0] && ts.isObjectLiteralExpression(node.arguments[0]))
    return slimSources(node.arguments[0]);
  if (PARAMETERS.includes(callee)) {
    const doc = named(
      properties(node.arguments[1]).concat(properties(node.arguments[0])),
      'doc',
    )?.initializer;
    return doc && isText(doc) ? [[doc, NO_TEXT]] : [];
  }
  const doc = Object.hasOwn(DESCRIBED, callee) ? node.arguments[DESCRIBED[callee]] : undefined;
  return doc && isText(doc) ? [[doc, NO_TEXT]] : [];
}

/** Behind the comma that follows a property, if one does. */
const afterComma = (text, end) => end + (/^\s*,/.exec(text.slice(end))?.[0].length ?? 0);

/** The places in the file whose text is not needed, last first. */
function unneeded(source) {
  const places = [];
  const visit = (node) => {
    const found = ts.isCallExpression(node) ? unneededOfCall(node) : unneededOfRecord(node);
    for (const [expression, put] of found)
      places.push({
        start: expression.getStart(source),
        end: put === '' ? afterComma(source.text, expression.getEnd()) : expression.getEnd(),
        put,
      });
    ts.forEachChild(node, visit);
  };
  visit(source);
  return places.sort((a, b) => b.start - a.start);
}

export function slimRecords(text, name = 'record.ts') {
  const places = unneeded(ts.createSourceFile(name, text, ts.ScriptTarget.Latest, true));
  return places.reduce((rest, { start, end, put }) => rest.slice(0, start) + put + rest.slice(end), text);
}

export default function loader(text) {
  return slimRecords(text, this.resourcePath);
}
