import ts from 'typescript';

/** A number somebody may have chosen: a constant by its name, or a number by the comparison it stands in. */
export interface Chosen {
  /** The name of the constant; `3 in steps >= 3` for a number without one. */
  readonly name: string;
  readonly isNamed: boolean;
  /** As it is written: 5, 30_000, 60 / 44.01. */
  readonly written: string;
  readonly start: number;
  readonly end: number;
}

const NAMED = /^[A-Z][A-Z0-9_]*$/;
const COMPARES: ReadonlySet<ts.SyntaxKind> = new Set([
  ts.SyntaxKind.LessThanToken,
  ts.SyntaxKind.LessThanEqualsToken,
  ts.SyntaxKind.GreaterThanToken,
  ts.SyntaxKind.GreaterThanEqualsToken,
]);
const COUNTS: ReadonlySet<ts.SyntaxKind> = new Set([
  ts.SyntaxKind.PlusToken,
  ts.SyntaxKind.MinusToken,
  ts.SyntaxKind.AsteriskToken,
  ts.SyntaxKind.SlashToken,
  ts.SyntaxKind.AsteriskAsteriskToken,
]);
const MATHS = /^Math\.\w+$/;
/** Nothing, one and what only lets rounding through are no choice. */
const TINY = 1e-5;

const hasNumber = (node: ts.Node): boolean =>
  ts.isNumericLiteral(node) || ts.forEachChild(node, (child) => hasNumber(child) || undefined) === true;
/** A number, or a sum of numbers and named ones. */
function isNumeric(node: ts.Expression): boolean {
  if (ts.isNumericLiteral(node)) return true;
  if (ts.isIdentifier(node)) return NAMED.test(node.text);
  if (ts.isPrefixUnaryExpression(node)) return isNumeric(node.operand);
  if (ts.isParenthesizedExpression(node)) return isNumeric(node.expression);
  if (ts.isCallExpression(node))
    return (
      MATHS.test(node.expression.getText()) && node.arguments.length > 0 && node.arguments.every(isNumeric)
    );
  return (
    ts.isBinaryExpression(node) &&
    COUNTS.has(node.operatorToken.kind) &&
    isNumeric(node.left) &&
    isNumeric(node.right)
  );
}

/** The numbers of one side of a comparison, down through sums and products. */
function numbersIn(node: ts.Expression): ts.NumericLiteral[] {
  if (ts.isNumericLiteral(node)) return [node];
  if (ts.isPrefixUnaryExpression(node)) return numbersIn(node.operand);
  if (ts.isParenthesizedExpression(node)) return numbersIn(node.expression);
  if (ts.isCallExpression(node) && MATHS.test(node.expression.getText()))
    return node.arguments.flatMap((argument) => numbersIn(argument));
  return ts.isBinaryExpression(node) && COUNTS.has(node.operatorToken.kind)
    ? [...numbersIn(node.left), ...numbersIn(node.right)]
    : [];
}
const isChoice = ({ text }: ts.NumericLiteral): boolean => {
  const value = Number(text.replaceAll('_', ''));
  return value !== 0 && value !== 1 && value > TINY;
};

/** Cases and examples stand beside the code and are no part of it. */
const QUIET = /^(NEAR|EXAMPLES|examples|near)$/;
const isQuiet = (node: ts.Node): boolean =>
  (ts.isVariableDeclaration(node) || ts.isPropertyAssignment(node)) && QUIET.test(node.name.getText());

/** Every number of a file that a case should stand on either side of. */
export function chosenIn(path: string, text: string): Chosen[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: Chosen[] = [];
  const add = (name: string, node: ts.Node, isNamed: boolean): void => {
    const before = found.filter((one) => one.name === name || one.name.startsWith(`${name} (`)).length;
    found.push({
      name: before === 0 ? name : `${name} (${before + 1})`,
      isNamed,
      written: node.getText().replace(/\s+/g, ' '),
      start: node.getStart(),
      end: node.getEnd(),
    });
  };
  const addDeclared = ({ name, initializer }: ts.VariableDeclaration): void => {
    if (!initializer) return;
    if (ts.isIdentifier(name) && NAMED.test(name.text) && hasNumber(initializer) && isNumeric(initializer))
      add(name.text, initializer, true);
    if (ts.isArrayBindingPattern(name) && ts.isArrayLiteralExpression(initializer))
      for (const [i, element] of name.elements.entries()) {
        const value = initializer.elements[i];
        if (!value || !ts.isBindingElement(element) || !NAMED.test(element.name.getText())) continue;
        if (hasNumber(value) && isNumeric(value)) add(element.name.getText(), value, true);
      }
  };
  const visit = (node: ts.Node): void => {
    if (isQuiet(node)) return;
    if (ts.isVariableDeclaration(node)) addDeclared(node);
    if (ts.isBinaryExpression(node) && COMPARES.has(node.operatorToken.kind)) {
      const said = node.getText().replace(/\s+/g, ' ').slice(0, 90);
      for (const number of [...numbersIn(node.left), ...numbersIn(node.right)])
        if (isChoice(number)) add(`${number.getText()} in ${said}`, number, false);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Where a file reads constants of these names: not where they are declared, imported or meant as a type. */
export function readsOf(
  path: string,
  text: string,
  names: ReadonlySet<string>,
): { readonly name: string; readonly start: number; readonly end: number }[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: { name: string; start: number; end: number }[] = [];
  const isRead = ({ parent }: ts.Node, node: ts.Identifier): boolean =>
    !(
      ts.isImportSpecifier(parent) ||
      ts.isExportSpecifier(parent) ||
      ts.isTypeQueryNode(parent) ||
      ts.isShorthandPropertyAssignment(parent) ||
      ((ts.isVariableDeclaration(parent) || ts.isBindingElement(parent) || ts.isPropertyAssignment(parent)) &&
        parent.name === node) ||
      (ts.isPropertyAccessExpression(parent) && parent.name === node)
    );
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node) && names.has(node.text) && isRead(node, node))
      found.push({ name: node.text, start: node.getStart(), end: node.getEnd() });
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}
