// Calculation needs of a function's record its parameters and its arithmetic; examples, help and sources are read by the pane, the
// function list and the tests. This webpack loader empties them for the calculation bundle, which Excel loads on every start.
import ts from 'typescript';

const EMPTY = { examples: '[]', sources: '[]', cautions: '[]', summary: "''", help: "''", valid: "''" };

/** The places of defineFunction({ … }) whose values are not needed, last first. */
function unneeded(source) {
  const places = [];
  const visit = (node) => {
    if (ts.isCallExpression(node) && node.expression.getText(source) === 'defineFunction') {
      const [record] = node.arguments;
      if (record && ts.isObjectLiteralExpression(record))
        for (const property of record.properties)
          if (ts.isPropertyAssignment(property) && property.name.getText(source) in EMPTY)
            places.push({ start: property.initializer.getStart(source), end: property.initializer.getEnd(), put: EMPTY[property.name.getText(source)] });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return places.sort((a, b) => b.start - a.start);
}

export function slimRecords(text, name = 'record.ts') {
  if (!text.includes('defineFunction(')) return text;
  const places = unneeded(ts.createSourceFile(name, text, ts.ScriptTarget.Latest, true));
  return places.reduce((rest, { start, end, put }) => rest.slice(0, start) + put + rest.slice(end), text);
}

export default function loader(text) {
  return slimRecords(text, this.resourcePath);
}
