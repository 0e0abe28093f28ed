import ts from 'typescript';

/** One small change of a file that a test should notice. */
export interface Mutant {
  readonly file: string;
  readonly line: number;
  readonly kind: Kind;
  readonly start: number;
  readonly end: number;
  readonly before: string;
  readonly after: string;
}
export type Kind = 'constant' | 'comparison' | 'sign' | 'off by one' | 'logic' | 'formula';

const COMPARISONS: Readonly<Partial<Record<ts.SyntaxKind, string>>> = {
  [ts.SyntaxKind.LessThanToken]: '<=',
  [ts.SyntaxKind.LessThanEqualsToken]: '<',
  [ts.SyntaxKind.GreaterThanToken]: '>=',
  [ts.SyntaxKind.GreaterThanEqualsToken]: '>',
  [ts.SyntaxKind.EqualsEqualsEqualsToken]: '!==',
  [ts.SyntaxKind.ExclamationEqualsEqualsToken]: '===',
};
const SIGNS: Readonly<Partial<Record<ts.SyntaxKind, string>>> = {
  [ts.SyntaxKind.PlusToken]: '-',
  [ts.SyntaxKind.MinusToken]: '+',
  [ts.SyntaxKind.AsteriskToken]: '/',
  [ts.SyntaxKind.SlashToken]: '*',
};
const LOGIC: Readonly<Partial<Record<ts.SyntaxKind, string>>> = {
  [ts.SyntaxKind.AmpersandAmpersandToken]: '||',
  [ts.SyntaxKind.BarBarToken]: '&&',
};

/** Properties that hold prose, looks or provenance: another number there changes no answer. */
const QUIET = new Set([
  ...[
    'width',
    'height',
    'widths',
    'version',
    'because',
    'note',
    'citation',
    'doi',
    'url',
    'printed',
    'questions',
  ],
  // Cases of tests that stand beside the code.
  ...['examples', 'near'],
]);
const QUIET_LISTS = /^(NEAR|EXAMPLES)$/;

const isQuiet = (node: ts.Node): boolean => {
  for (let at: ts.Node | undefined = node; at; at = at.parent) {
    if (ts.isImportDeclaration(at) || ts.isTypeNode(at) || ts.isInterfaceDeclaration(at)) return true;
    if (ts.isPropertyAssignment(at) && QUIET.has(at.name.getText())) return true;
    // The width of a column of a sheet.
    if (ts.isNumericLiteral(at) && ts.isCallExpression(at.parent) && at.parent.expression.getText() === 'col')
      return true;
    if (ts.isVariableDeclaration(at) && QUIET_LISTS.test(at.name.getText())) return true;
  }
  return false;
};

/** A tenth more; whole numbers below ten go up by one, which is the slip people make. */
const moved = (text: string): string => {
  const value = Number(text.replaceAll('_', ''));
  return Number.isInteger(value) && Math.abs(value) < 10 ? String(value + 1) : String(value * 1.1);
};

const isText = (node: ts.Expression): boolean =>
  ts.isStringLiteral(node) || ts.isTemplateExpression(node) || ts.isNoSubstitutionTemplateLiteral(node);
/** A sum of texts has no sign. */
const joinsText = (node: ts.BinaryExpression): boolean =>
  isText(node.left) ||
  isText(node.right) ||
  (ts.isBinaryExpression(node.left) && joinsText(node.left)) ||
  (ts.isBinaryExpression(node.right) && joinsText(node.right));

const isIndex = (node: ts.Node): boolean =>
  ts.isElementAccessExpression(node.parent) ||
  (ts.isCallExpression(node.parent) &&
    /\.(slice|at|splice|substring)$/.test(node.parent.expression.getText()));

const pieceOf = (node: ts.Node): ts.Node | undefined => {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node;
  if (ts.isTemplateHead(node)) return node.parent;
  if (ts.isTemplateMiddle(node) || ts.isTemplateTail(node)) return node.parent.parent;
  return undefined;
};
/** Text of a cell's formula: it begins as one, calls a function of ours, names a line in braces, or is a number. */
const FORMULA = /^['"`](=|\d+(\.\d+)?(\/\d+)?['"`]$)|SPAWN\.|(?<!\$)\{\w+\}/;
const FORMULA_PARTS = /(?<![\w.{"#$'])\d+(?:\.\d+)?(?![\w."%}])|[<>]=|(?<![<=])>(?!=)|<(?![>=])/g;
const FORMULA_COMPARISONS: Readonly<Record<string, string>> = { '<': '<=', '<=': '<', '>': '>=', '>=': '>' };

/** Every change that may be made in one file, in the order of its text. */
export function mutantsOf(file: string, text: string): Mutant[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: Mutant[] = [];
  const add = (kind: Kind, node: ts.Node, after: string): void => {
    const start = node.getStart();
    found.push({
      file,
      line: source.getLineAndCharacterOfPosition(start).line + 1,
      kind,
      start,
      end: node.getEnd(),
      before: node.getText(),
      after,
    });
  };
  /** The numbers and comparisons of a formula that stands in a text. */
  const addFormula = (node: ts.Node): void => {
    for (const match of node.getText().matchAll(FORMULA_PARTS)) {
      const start = node.getStart() + match.index;
      const [before] = match;
      found.push({
        file,
        line: source.getLineAndCharacterOfPosition(start).line + 1,
        kind: 'formula',
        start,
        end: start + before.length,
        before,
        after: FORMULA_COMPARISONS[before] ?? moved(before),
      });
    }
  };
  const visit = (node: ts.Node): void => {
    if (ts.isNumericLiteral(node) && !isQuiet(node))
      add(isIndex(node) ? 'off by one' : 'constant', node, moved(node.text));
    if (ts.isBinaryExpression(node) && !isQuiet(node)) {
      const { operatorToken } = node;
      const comparison = COMPARISONS[operatorToken.kind];
      const sign = joinsText(node) ? undefined : SIGNS[operatorToken.kind];
      const logic = LOGIC[operatorToken.kind];
      if (comparison) add('comparison', operatorToken, comparison);
      if (sign) add('sign', operatorToken, sign);
      if (logic) add('logic', operatorToken, logic);
    }
    const piece = pieceOf(node);
    if (piece && FORMULA.test(piece.getText()) && !isQuiet(node)) addFormula(node);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

export const mutated = (text: string, { start, end, after }: Mutant): string =>
  text.slice(0, start) + after + text.slice(end);
