import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

/**
 * Every sentence of an error in the engine, read from its source: the texts handed to `refuse`, `outside` and
 * `noSolution`, with a 7 where a value is put in. What a condition chooses between stands once each.
 */

const MAKERS = new Set(['refuse', 'outside', 'noSolution', 'moreThanSample']);
const VALUE = '7';

const filesOf = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesOf(path) : path.endsWith('.ts') ? [path] : [];
  });

const pairs = (left: readonly string[], right: readonly string[]): readonly string[] =>
  left.flatMap((a) => right.map((b) => a + b));

type Names = ReadonlyMap<string, ts.Expression>;
/** All texts an expression can be. */
function textsOf(node: ts.Expression, names: Names): readonly string[] {
  if (ts.isStringLiteralLike(node)) return [node.text];
  if (ts.isParenthesizedExpression(node)) return textsOf(node.expression, names);
  if (ts.isConditionalExpression(node))
    return [...textsOf(node.whenTrue, names), ...textsOf(node.whenFalse, names)];
  if (ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.PlusToken)
    return pairs(textsOf(node.left, names), textsOf(node.right, names));
  if (ts.isTemplateExpression(node))
    return node.templateSpans.reduce<readonly string[]>(
      (all, { expression, literal }) =>
        pairs(
          all,
          textsOf(expression, names).map((text) => text + literal.text),
        ),
      [node.head.text],
    );
  const known = ts.isIdentifier(node) ? names.get(node.text) : undefined;
  return known && known !== node ? textsOf(known, names) : [VALUE];
}

export function errorTexts(folder: string): readonly (readonly [file: string, text: string])[] {
  return filesOf(folder).flatMap((path) => {
    const source = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true);
    const names = new Map<string, ts.Expression>();
    const found: (readonly [string, string])[] = [];
    const walk = (node: ts.Node): void => {
      if (ts.isVariableDeclaration(node) && ts.isIdentifier(node.name) && node.initializer)
        if (ts.isStringLiteralLike(node.initializer) || ts.isTemplateExpression(node.initializer))
          names.set(node.name.text, node.initializer);
      const [last] = ts.isCallExpression(node) ? node.arguments.slice(-1) : [];
      if (last && ts.isCallExpression(node) && MAKERS.has(node.expression.getText()))
        found.push(...textsOf(last, names).map((text) => [path, text] as const));
      ts.forEachChild(node, walk);
    };
    walk(source);
    return found.filter(([, text]) => /[a-z]{3}/.test(text));
  });
}
