import type { FindFunction } from '../formula';
import { addressOf, overlaps, parseAddress, parseArea } from '../formula/address';
import type { ParsedNode } from '../formula/parse';
import { isFault, parse } from '../formula/parse';
import { nativeFunction } from '../formula/natives';
import type { FormulaNode, Group } from './graph';
import type { Target } from './places';
import { Covering, formulaNodes, inOrder, isGroup } from './graph';
import { Places, targetOf, walk } from './places';
import type { ChartModel, SheetModel, WorkbookModel } from './model';

/**
 * Custom functions answer in rounds: every level of one needing another waits for a round, so a plan may not
 * stack them.
 */
export const DEEPEST = 2;

const LONGEST_SHEET_NAME = 31;
const LONGEST_NAME = 255;
const LONGEST_FORMULA = 8192;
/** Known to every host; here the day is handed in (calculateBy). */
const LAZY = new Set(['IF', 'IFERROR', 'IFNA', 'IFS', 'CHOOSE', 'TODAY']);

const sheetNameFaults = (name: string): string[] => [
  ...(name.length < 1 || name.length > LONGEST_SHEET_NAME
    ? [`sheet "${name}": a name has 1 to ${LONGEST_SHEET_NAME} characters`]
    : []),
  ...(/[[\]:*?/\\]/.test(name) || name.startsWith("'") || name.endsWith("'")
    ? [`sheet "${name}": [ ] : * ? / \\ and an outer ' are not allowed`]
    : []),
  ...(name.toLowerCase() === 'history' ? [`sheet "${name}": Excel keeps this name for itself`] : []),
];

const repeated = (what: string, names: readonly string[]): string[] => {
  const seen = new Set<string>();
  return names.flatMap((name) =>
    seen.size === seen.add(name.toLowerCase()).size ? [`${what} "${name}" occurs twice`] : [],
  );
};

const nameFaults = (model: WorkbookModel, places: Places): string[] => {
  const [home] = model.sheets;
  return model.names.flatMap(({ name, refersTo }) => [
    ...(/^[A-Za-z_\\][A-Za-z0-9_.\\?]*$/.test(name) &&
    name.length <= LONGEST_NAME &&
    !parseAddress(name) &&
    !/^([rc]|r\d*c\d*|true|false)$/i.test(name)
      ? []
      : [`name "${name}": letters, digits, dots and underscores, and not like a cell address`]),
    ...(home && refersTo.includes('!') && places.reference(refersTo.replace(/^=/, ''), home)
      ? []
      : [`name "${name}": ${refersTo} is not in this workbook`]),
  ]);
};

/**
 * Levels of custom functions that have to answer one after the other before this expression has its value.
 */
function depthOf(
  find: FindFunction,
  tree: ParsedNode | undefined,
  home: SheetModel,
  places: Places,
  depthAt: (target: Target) => number,
): number {
  if (!tree) return 0;
  const inner = (node: ParsedNode | undefined): number => depthOf(find, node, home, places, depthAt);
  switch (tree.kind) {
    case 'call': {
      const own = find(tree.name) ? 1 : 0;
      return own + Math.max(0, ...tree.args.map(inner));
    }
    case 'unary':
      return inner(tree.of);
    case 'binary':
      return Math.max(inner(tree.left), inner(tree.right));
    case 'reference':
    case 'name':
    case 'spill': {
      const target = targetOf(tree, places, home);
      return target === undefined || typeof target === 'string' ? 0 : depthAt(target);
    }
    default:
      return 0;
  }
}

/** Custom-function depth of every formula, by "Sheet!A1". */
export function customDepthsBy(find: FindFunction, model: WorkbookModel): Map<string, number> {
  const places = new Places(model);
  const nodes = formulaNodes(model, places);
  const covering = new Covering(nodes);
  const known = new Map<FormulaNode, number>();
  const groups = new Map<Group, number>();
  // What a range holds comes before whoever names it, so its depth is asked once.
  const depthAt = (target: Target): number => {
    const group = covering.within(target);
    if (!isGroup(group)) return known.get(group) ?? 0;
    let depth = groups.get(group);
    if (depth === undefined)
      groups.set(
        group,
        (depth = group.members.reduce((most, node) => Math.max(most, known.get(node) ?? 0), 0)),
      );
    return depth;
  };
  for (const node of inOrder(nodes, covering).order)
    known.set(node, depthOf(find, node.tree, node.sheet, places, depthAt));
  return new Map([...known].map(([node, depth]) => [`${node.sheet.name}!${node.address}`, depth]));
}

const callFaults = (find: FindFunction, tree: ParsedNode | undefined): string[] =>
  [...walk(tree)].flatMap((node) => {
    if (node.kind !== 'call') return [];
    const fn = find(node.name);
    if (!fn)
      return nativeFunction(node.name) || LAZY.has(node.name.toUpperCase())
        ? []
        : [`there is no function ${node.name}`];
    const least =
      fn.params.findLastIndex(
        (p) => !('optional' in p && p.optional) && !('default' in p && p.default !== undefined),
      ) + 1;
    const most = fn.params.length;
    return node.args.length < least || node.args.length > most
      ? [
          `${fn.name} takes ${least === most ? most : `${least} to ${most}`} arguments, got ${node.args.length}`,
        ]
      : [];
  });

const formulaFaults = (find: FindFunction, model: WorkbookModel, places: Places): string[] =>
  formulaNodes(model, places).flatMap((node) =>
    [
      ...node.faults,
      ...callFaults(find, node.tree),
      ...(node.formula.length > LONGEST_FORMULA ? ['the formula is longer than a cell can hold'] : []),
    ].map((fault) => `${node.sheet.name} ${node.address}: ${fault}`),
  );

const tableFaults = (sheet: SheetModel): string[] =>
  (sheet.tables ?? []).flatMap((table) => {
    const area = parseArea(table.range);
    if (!area || area.bottom <= area.top)
      return [`${sheet.name}: table ${table.name} needs a heading and a row`];
    const headings = Array.from(
      { length: area.right - area.left + 1 },
      (_, i) => sheet.cells[addressOf(area.top, area.left + i)]?.value,
    );
    return [
      ...(headings.some((h) => typeof h !== 'string' || h === '')
        ? [`${sheet.name}: every column of table ${table.name} needs a heading in words`]
        : []),
      ...repeated(
        `${sheet.name}: heading`,
        headings.filter((h) => typeof h === 'string'),
      ),
      ...Object.entries(sheet.cells).flatMap(([address, cell]) => {
        const place = parseAddress(address);
        return cell.spill &&
          place &&
          overlaps(area, {
            top: place.row,
            left: place.column,
            bottom: place.row + cell.spill[0] - 1,
            right: place.column + cell.spill[1] - 1,
          })
          ? [`${sheet.name} ${address}: an answer may not spill in table ${table.name}`]
          : [];
      }),
      ...(sheet.merges ?? []).flatMap((merge) => {
        const m = parseArea(merge);
        return m && overlaps(area, m) ? [`${sheet.name}: merged cells ${merge} in table ${table.name}`] : [];
      }),
    ];
  });

const ruleFaults = (find: FindFunction, sheet: SheetModel, places: Places): string[] => [
  ...(sheet.conditionals ?? []).flatMap((rule) => {
    const tree = parse(rule.formula);
    if (isFault(tree)) return [`${sheet.name}: the rule on ${rule.range} cannot be read: ${tree.fault}`];
    return [...walk(tree)].flatMap((node) => {
      if (node.kind === 'call' && find(node.name))
        return [
          `${sheet.name}: the rule on ${rule.range} calls ${node.name}; Excel never applies it. Point it at a helper cell.`,
        ];
      const target = targetOf(node, places, sheet);
      return typeof target === 'string' ? [`${sheet.name}: the rule on ${rule.range}: ${target}`] : [];
    });
  }),
  ...[...(sheet.conditionals ?? []), ...(sheet.validations ?? [])]
    .filter(({ range }) => !parseArea(range))
    .map(({ range }) => `${sheet.name}: ${range} is not a range`),
  ...(sheet.validations ?? []).flatMap((rule) =>
    rule.kind === 'list' && rule.items.join(',').length > 255
      ? [`${sheet.name}: the list on ${rule.range} is longer than Excel allows`]
      : [],
  ),
];

const chartFaults = (sheet: SheetModel, chart: ChartModel, places: Places): string[] => {
  const length = (range: string): number | undefined => {
    const target = places.reference(range, sheet);
    if (!target) return undefined;
    const { top, bottom, left, right } = target.area;
    return top === bottom || left === right ? Math.max(bottom - top, right - left) + 1 : undefined;
  };
  const wanted = length(chart.categories);
  return [
    ...(wanted === undefined
      ? [`${sheet.name}: chart "${chart.title}": ${chart.categories} is not one row or column`]
      : []),
    ...chart.series.flatMap((series) =>
      length(series.values) === wanted
        ? []
        : [`${sheet.name}: chart "${chart.title}": ${series.values} does not fit the categories`],
    ),
    ...(parseAddress(chart.from) && parseAddress(chart.to)
      ? []
      : [`${sheet.name}: chart "${chart.title}" has no place`]),
  ];
};

/** What would not work in one of the hosts, as sentences; none when all is well. */
export function lintWorkbookBy(find: FindFunction, model: WorkbookModel): string[] {
  const places = new Places(model);
  return [
    ...model.sheets.flatMap((sheet) => sheetNameFaults(sheet.name)),
    ...repeated(
      'sheet',
      model.sheets.map((sheet) => sheet.name),
    ),
    ...repeated('name', [
      ...model.names.map(({ name }) => name),
      ...model.sheets.flatMap((sheet) => (sheet.tables ?? []).map(({ name }) => name)),
    ]),
    ...nameFaults(model, places),
    ...formulaFaults(find, model, places),
    ...[...customDepthsBy(find, model)]
      .filter(([, depth]) => depth > DEEPEST)
      .map(([at, depth]) => `${at}: ${depth} levels of custom functions, at most ${DEEPEST}`),
    ...model.sheets.flatMap((sheet) => [
      ...tableFaults(sheet),
      ...ruleFaults(find, sheet, places),
      ...(sheet.charts ?? []).flatMap((chart) => chartFaults(sheet, chart, places)),
    ]),
  ];
}
