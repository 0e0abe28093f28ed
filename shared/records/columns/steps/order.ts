import type { FieldName } from '../../fields';
import { FAMILIES } from '../../meaning/families';
import type { Looked } from './looked';
import { isClaim } from './looked';

const ORDER_WEIGHS = 0.6;
const SURE_WORDS = 0.7;
/** They stand at the left of every kind of table. */
const EVERYWHERE: ReadonlySet<FieldName> = new Set(['run', 'serial', 'date', 'vat']);
const EVERYWHERE_SAYS = 0.2;

/**
 * People write down what comes first first: injection before stripping, eggs before larvae, price before sum. A meaning
 * that would stand where the sure columns of its kind of table leave room for it is likelier.
 */
export function byOrder(looked: readonly Looked[]): void {
  const sure = looked.flatMap(({ candidates: [best] }, i): (readonly [number, FieldName])[] =>
    best && isClaim(best) && (best.words >= SURE_WORDS || best.because !== undefined)
      ? [[i, best.field]]
      : [],
  );
  if (sure.length < 2) return;
  for (const [i, { candidates }] of looked.entries()) {
    for (const one of candidates) {
      const worth = inOrder(i, one.field, sure);
      // What a heading clearly says may stand anywhere.
      one.score += ORDER_WEIGHS * (one.words >= SURE_WORDS ? Math.max(0, worth) : worth);
    }
    candidates.sort((a, b) => b.score - a.score);
  }
}

/** From -1, against all sure columns beside it, to 1. */
function inOrder(column: number, field: FieldName, sure: readonly (readonly [number, FieldName])[]): number {
  let [sum, n] = [0, 0];
  for (const [other, its] of sure) {
    const step = other === column ? 0 : FAMILIES.between(field, its);
    if (step === 0) continue;
    // Near columns say more than far ones.
    const weight = (EVERYWHERE.has(its) ? EVERYWHERE_SAYS : 1) / Math.abs(other - column);
    sum += Math.sign(step) === Math.sign(other - column) ? weight : -weight;
    n += weight;
  }
  return n === 0 ? 0 : (sum / n) * Math.min(1, n / 1.5);
}
