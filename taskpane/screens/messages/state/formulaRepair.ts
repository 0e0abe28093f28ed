import { CATALOGUE } from '../../../../shared/catalogue';
import { PREFIX } from '../../../../shared/functions/define';
import { tokenize } from '../../../../shared/sheet/formula/tokenize';

/**
 * Formulas that lost their functions: typed or opened before the functions were there, they keep a storage
 * spelling (_xldudf_SPAWN_…) or get tied to another file ('book.xlam'!… or [2]!…). Re-entering the plain
 * spelling mends them.
 */
const stored = (name: string): string => name.replaceAll('.', '_').toUpperCase();
const byStored = new Map(CATALOGUE.map((fn) => [stored(fn.name), fn.name]));
const MARK = '_XLDUDF_';

/** The name of our function behind any spelling of a call; undefined when it is not ours. */
export function ownName(spelling: string): string | undefined {
  const upper = spelling.toUpperCase();
  return byStored.get(stored(upper.startsWith(MARK) ? upper.slice(MARK.length) : upper));
}

/** Takes the foreign file in front, and the sign @ (one value only), off a call. */
const bare = (call: string): string => call.replace(/^@?(?:(?:'(?:[^']|'')+'|[^'!]+)!)?@?/u, '');

export const holdsOwnCall = (formula: unknown): formula is string =>
  typeof formula === 'string' &&
  formula.startsWith('=') &&
  new RegExp(`${PREFIX}[._]`, 'i').test(formula) &&
  tokenize(formula).some((token) => token.kind === 'call' && ownName(bare(token.text)) !== undefined);

const plainCall = (call: string): string => {
  const name = ownName(bare(call));
  const sign = call.startsWith('@') ? '@' : '';
  return name === undefined || call.toUpperCase() === sign + name ? call : sign + name;
};

/**
 * The formula with every call of ours in its plain spelling; texts in quotes and everything else stay as they
 * are.
 */
export const mendFormula = (formula: string): string =>
  formula.startsWith('=')
    ? `=${tokenize(formula)
        .map(({ kind, text }) => (kind === 'call' ? plainCall(text) : text))
        .join('')}`
    : formula;

export const isDamaged = (formula: string): boolean => mendFormula(formula) !== formula;
