// Long: relations between columns are chosen, judged and told here; each step reads what the one before it kept.
import type { Link } from '../../meaning/links';
import { at, near, roundingOf } from '../../meaning/sampled';
import { PATTERNS } from '../../meaning/patterns';
import type { RecordTable } from '../../table';
import { plain } from '../show';
import type { At, Suspicion } from './suspect';
import { formulasIn, headingAt, isComputed, isSlip, oddness } from './suspect';

/** Relations worth judging by: the tightest to each result, and no second way of saying the same. */
function worthwhile(table: RecordTable): Link[] {
  const kept: Link[] = [];
  const bySet = new Set<string>();
  const worth = (link: Link): number =>
    rank(link) + (allowed(table, link) > CARRIED ? 0.08 : 0) + 0.001 * link.result;
  const strict = [...table.links].sort((a, b) => worth(b) - worth(a));
  for (const link of strict) {
    if (link.holds < 0.7 * link.tried) continue;
    const members = [link.result, ...link.inputs].sort((a, b) => a - b).join(' ');
    const key = link.kind === 'carry' ? `carry ${members}` : `${link.isRunning ? 'r' : ''}${members}`;
    if (bySet.has(key)) continue;
    bySet.add(key);
    const same = kept.filter((one) => one.result === link.result && one.kind !== 'carry');
    const isSaid = kept.some(
      (one) =>
        one.kind === 'sum' &&
        [link.result, ...link.inputs].every((c) => c === one.result || one.inputs.includes(c)),
    );
    if (link.isRunning && link.kind === 'sum' && isSaid) continue;
    if (
      link.kind === 'part' &&
      kept.some((one) => one.kind !== 'carry' && [one.result, ...one.inputs].includes(link.result))
    )
      continue;
    if (link.kind !== 'carry' && same.length > 0) continue;
    kept.push(link);
  }
  return kept;
}
const rank = ({ holds, tried, inputs, kind, factor }: Link): number =>
  holds / tried +
  Math.min(holds, 40) / 400 -
  0.01 * inputs.length -
  (kind === 'part' ? 0.2 : 0) -
  (kind === 'product' && !isPower(factor) ? 0.1 : 0);
const isPower = (x: number): boolean => Math.abs(Math.log10(x) - Math.round(Math.log10(x))) < 1e-6;

const valueAt = (table: RecordTable, column: number, record: number): number =>
  table.columns[column]?.plain[record] ?? NaN;

/** What the relation gives for every line; NaN where too little is said. */
function expectedOf(
  table: RecordTable,
  { kind, isRunning, inputs, signs, factor, result }: Link,
): Float64Array {
  const lists = inputs.map((column) => listAt(table, column));
  if (kind === 'carry') return above(lists[0] ?? NONE, table.length);
  if (kind !== 'sum') return productOf(lists, new Float64Array(table.length).fill(factor));
  const from = isRunning ? above(listAt(table, result), table.length) : new Float64Array(table.length);
  return sumOf(lists, signs, from);
}
const listAt = (table: RecordTable, column: number): Float64Array => table.columns[column]?.plain ?? NONE;
function productOf(lists: readonly Float64Array[], made: Float64Array): Float64Array {
  for (const list of lists) for (let i = 0; i < made.length; i++) made[i] = at(made, i) * at(list, i);
  return made;
}
function sumOf(lists: readonly Float64Array[], signs: readonly number[], made: Float64Array): Float64Array {
  const terms = new Uint8Array(made.length);
  for (const [k, list] of lists.entries()) {
    const sign = signs[k] ?? 1;
    for (let i = 0; i < made.length; i++) {
      const x = at(list, i);
      if (Number.isNaN(x)) continue;
      made[i] = at(made, i) + sign * x;
      terms[i] = 1;
    }
  }
  for (let i = 0; i < made.length; i++) if (terms[i] === 0) made[i] = NaN;
  return made;
}
const NONE = new Float64Array(0);
/** The numbers of the lines above. */
function above(list: Float64Array, length: number): Float64Array {
  const moved = new Float64Array(length).fill(NaN);
  moved.set(list.subarray(0, length - 1), 1);
  return moved;
}
/** How far off any relation may be; what rounding lets through comes on top. */
const LEAST_SLACK = 1e-4;

interface Judged {
  readonly seen: number;
  readonly expected: number;
  readonly cells: readonly At[];
  /** The value each cell would need for the relation to hold. */
  readonly needed: (at: At) => number;
}

function judgeSum(table: RecordTable, link: Link, record: number): Judged | undefined {
  const seen = valueAt(table, link.result, record);
  if (Number.isNaN(seen)) return undefined;
  const before = link.isRunning ? valueAt(table, link.result, record - 1) : 0;
  if (Number.isNaN(before)) return undefined;
  let expected = before;
  const cells: At[] = [{ record, column: link.result }];
  for (const [i, column] of link.inputs.entries()) {
    const x = valueAt(table, column, record);
    if (Number.isNaN(x)) continue;
    expected += (link.signs[i] ?? 1) * x;
    cells.push({ record, column });
  }
  if (cells.length < 2) return undefined;
  if (link.isRunning) cells.push({ record: record - 1, column: link.result });
  return {
    seen,
    expected,
    cells,
    needed: (at) => {
      if (at.column === link.result) return at.record === record ? expected : before + (seen - expected);
      const i = link.inputs.indexOf(at.column);
      return valueAt(table, at.column, record) + (link.signs[i] ?? 1) * (seen - expected);
    },
  };
}

function judgeProduct(table: RecordTable, link: Link, record: number): Judged | undefined {
  const seen = valueAt(table, link.result, record);
  const inputs = link.inputs.map((column) => valueAt(table, column, record));
  if (Number.isNaN(seen) || inputs.some(Number.isNaN)) return undefined;
  const expected = inputs.reduce((product, x) => product * x, link.factor);
  return {
    seen,
    expected,
    cells: [link.result, ...link.inputs].map((column) => ({ record, column })),
    needed: (at) =>
      at.column === link.result ? expected : valueAt(table, at.column, record) * (seen / expected),
  };
}

function judgeCarry(table: RecordTable, link: Link, record: number): Judged | undefined {
  const from = link.inputs[0] ?? 0;
  const [seen, expected] = [valueAt(table, link.result, record), valueAt(table, from, record - 1)];
  if (Number.isNaN(seen) || Number.isNaN(expected)) return undefined;
  return {
    seen,
    expected,
    cells: [
      { record, column: link.result },
      { record: record - 1, column: from },
    ],
    needed: (at) => (at.column === link.result && at.record === record ? expected : seen),
  };
}

/** How likely each cell is the one that is wrong: odd among its own, one slip from what would fit, never a formula. */
function shares(table: RecordTable, { cells, needed }: Judged): Suspicion['cells'] {
  const raw = cells.map((at) => {
    const meant = needed(at);
    const value = valueAt(table, at.column, at.record);
    const odd = Math.min(12, oddness(table, at));
    const slip = isSlip(value, tidy(meant)) ? 3 : 1;
    const isNegative = meant < 0 && value >= 0;
    const weight = isComputed(table, at) ? 0.02 : ((1 + 0.5 * odd) * slip) / (isNegative ? 4 : 1);
    return { ...at, weight, meant: tidy(meant) };
  });
  const sum = raw.reduce((all, { weight }) => all + weight, 0);
  return raw.map(({ weight, ...at }) => ({ ...at, share: weight / sum }));
}
const tidy = (value: number): number => Number(value.toPrecision(Number.isInteger(value) ? 12 : 4));

function sentenceOf(table: RecordTable, link: Link, { seen, expected }: Judged): string {
  const name = (column: number): string => `"${headingAt(table, column)}"`;
  const result = name(link.result);
  const shownExpected = plain(tidy(expected), 9);
  const tail = `${shownExpected} would follow, ${plain(seen, 9)} stands there`;
  if (link.kind === 'carry')
    return `${result} does not begin with the ${name(link.inputs[0] ?? 0)} of the line above, as the other lines do: ${tail}.`;
  if (link.kind === 'product')
    return `${result} does not follow from ${link.inputs.map(name).join(' and ')} as in the other lines: ${tail}.`;
  if (link.kind === 'part')
    return `${result} does not go with ${name(link.inputs[0] ?? 0)} as in the other lines: ${tail}.`;
  const terms = link.inputs
    .map((column, i) => `${(link.signs[i] ?? 1) < 0 ? '− ' : i > 0 ? '+ ' : ''}${name(column)}`)
    .join(' ');
  return link.isRunning
    ? `${result} does not go on from the line above with ${terms}: ${tail}.`
    : `${result} is not ${terms} as in the other lines: ${tail}.`;
}

/** What rounding of the inputs lets through. */
const slackOf = (table: RecordTable, link: Link, record: number): number =>
  (link.kind === 'part' ? 0.04 : 0.005) +
  link.inputs.reduce((sum, column) => {
    const x = valueAt(table, column, record);
    return sum + (x === 0 ? 0 : Math.min(0.03, roundingOf(x) / Math.abs(x)));
  }, 0);

/** Share of the lines whose opening may be another number than the line above ended with. */
const CARRIED = 0.25;
/**
 * Lines that may break a relation before it counts as chance: more where the meaning of the columns bears it
 * out, few where they are known to mean something else.
 */
function allowed(table: RecordTable, link: Link): number {
  const fields = [link.result, ...link.inputs].map((column) => table.mapping[column]?.field);
  if (link.kind === 'carry') return fields.includes('opening') ? CARRIED : 0.12;
  // A sum over all the tanks of a matrix is no chance.
  if (link.kind === 'sum' && !link.isRunning && isOverMatrix(table, link)) return 0.35;
  if (fields.every((field) => field !== undefined)) {
    const isKnown = PATTERNS.some(
      (pattern) =>
        pattern.kind === link.kind &&
        pattern.kind !== 'part' &&
        pattern.result === fields[0] &&
        fields.slice(1).every((field) => pattern.inputs.includes(field as never)),
    );
    if (isKnown) return 0.4;
    // A product without a factor of its own that holds so often is no chance, whatever the columns are thought to be.
    const isPlain = link.kind === 'product' && isPower(link.factor);
    return link.inputs.length > 2 ? 0.3 : isPlain ? 0.2 : 0.07;
  }
  return 0.2;
}
const isOverMatrix = (table: RecordTable, { inputs }: Link): boolean =>
  inputs.length >= 3 && inputs.every((column) => table.mapping[column]?.isRepeated);

const JUDGES = { carry: judgeCarry, sum: judgeSum, product: judgeProduct, part: judgeProduct } as const;
const isProduct = ({ kind }: Link): boolean => kind === 'product' || kind === 'part';
/** Lines in which the relation does not hold, and in how many it was tried. */
function brokenLines(
  table: RecordTable,
  link: Link,
): { readonly broken: readonly Judged[]; readonly tried: number } {
  const broken: Judged[] = [];
  // A formula follows what it reads, whatever the other lines do.
  const isFormula = link.kind === 'carry' ? () => false : formulasIn(table, link.result);
  const [wanted, stated] = [expectedOf(table, link), listAt(table, link.result)];
  let tried = 0;
  for (let record = 0; record < table.length; record++) {
    const seen = at(stated, record);
    const expected = at(wanted, record);
    if (Number.isNaN(seen) || Number.isNaN(expected) || isFormula(record)) continue;
    tried++;
    if (Math.abs(seen - expected) <= LEAST_SLACK * Math.abs(expected)) continue;
    const slack = isProduct(link) ? slackOf(table, link, record) : LEAST_SLACK;
    const judged = near(seen, expected, slack) ? undefined : JUDGES[link.kind](table, link, record);
    if (judged) broken.push(judged);
  }
  return { broken, tried };
}

/** Lines that break a relation which nearly all other lines keep. */
export function bySuspectLinks(table: RecordTable): Suspicion[] {
  return worthwhile(table).flatMap((link) => {
    const { broken, tried } = brokenLines(table, link);
    if (broken.length > Math.max(1, allowed(table, link) * tried)) return [];
    return broken.map((judged): Suspicion => ({
      rule: 'WHOLE.RELATION',
      weight: link.kind === 'part' ? 0.8 : link.holds >= 6 ? 1.6 : 1.2,
      cells: shares(table, judged),
      sentence: sentenceOf(table, link, judged),
    }));
  });
}
