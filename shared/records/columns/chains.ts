import type { FieldName } from '../fields';
import type { Link } from '../meaning/links';
import type { Candidate, Looked } from './looked';
import { scoreIn } from './looked';

/**
 * Relations that hang together say what a table is without a word: where the number at the start of a line is the
 * number at the end of the line above, and the end follows from the start, the table keeps a stock; where a product
 * less something is what is left, it is a sale; where a number goes on from line to line by one column and back by
 * another, it is money in a box or fish in a tank.
 */
const SURE = 2.6;
const LIKELY = 1.5;

function speakFor(one: Looked | undefined, fields: readonly FieldName[], worth: number): void {
  for (const field of fields) {
    const candidate = one && scoreIn(one, field);
    if (!candidate) continue;
    candidate.score += worth;
    candidate.because = 'the numbers of the table bear it out';
  }
}

const isSure = ({ holds, tried }: Link): boolean => tried >= 5 && holds >= 0.8 * tried;
const plusOf = ({ inputs, signs }: Link): number[] => inputs.filter((_, i) => signs[i] === 1);
const minusOf = ({ inputs, signs }: Link): number[] => inputs.filter((_, i) => signs[i] === -1);

function stockKept(links: readonly Link[], looked: readonly Looked[]): boolean {
  for (const carry of links) {
    const [closing] = carry.inputs;
    if (carry.kind !== 'carry' || closing === undefined || !isSure(carry)) continue;
    const sum = links.find(
      (one) =>
        one.kind === 'sum' && !one.isRunning && one.result === closing && plusOf(one).includes(carry.result),
    );
    if (!sum) continue;
    if (isMoney(looked[closing])) return false;
    speakFor(looked[carry.result], ['opening'], SURE);
    speakFor(looked[closing], ['closing'], SURE);
    for (const column of plusOf(sum))
      if (column !== carry.result) speakFor(looked[column], ['stocked', 'movedIn'], LIKELY);
    for (const column of minusOf(sum)) speakFor(looked[column], ['dead', 'sold', 'movedOut'], LIKELY);
    return true;
  }
  return false;
}

const FISH = [
  'closing',
  'opening',
  'stocked',
  'movedIn',
  'movedOut',
  'dead',
  'sold',
  'alive',
  'fish',
] as const;
const isFish = (one: Looked | undefined): boolean =>
  one !== undefined && FISH.some((field) => (one.evidence.words.get(field) ?? 0) >= 0.6);
const MONEY = ['amount', 'paid', 'due', 'balance', 'income', 'expense', 'priceEach', 'unitPrice'] as const;
const isMoney = (one: Looked | undefined): boolean =>
  one !== undefined &&
  (one.evidence.unit?.of === 'money' || MONEY.some((field) => (one.evidence.words.get(field) ?? 0) >= 0.6));

function saleMade(links: readonly Link[], looked: readonly Looked[]): void {
  for (const product of links) {
    if (product.kind !== 'product' || !isSure(product)) continue;
    const rests = links.filter(
      (one) =>
        one.kind === 'sum' &&
        !one.isRunning &&
        isSure(one) &&
        plusOf(one).length === 1 &&
        plusOf(one)[0] === product.result &&
        minusOf(one).length === 1,
    );
    // Paid is the sum less what is owed as well: what is left stands last.
    const rest = rests.find((one) => one.result > (minusOf(one)[0] ?? 0)) ?? rests[0];
    if (!rest) continue;
    speakFor(looked[product.result], ['amount'], SURE);
    speakFor(looked[rest.result], ['due'], SURE);
    speakFor(looked[minusOf(rest)[0] ?? -1], ['paid'], SURE);
    for (const column of product.inputs) {
      const one = looked[column];
      const isPrice = one !== undefined && one.content.kinds < 0.4 * one.content.numbers;
      speakFor(one, isPrice ? ['priceEach', 'unitPrice'] : ['sold', 'quantity'], SURE);
    }
    return;
  }
}

/** Most columns that say something speak of money, or of fish. */
function boxKept(links: readonly Link[], looked: readonly Looked[]): void {
  for (const link of links) {
    const [plus, minus] = [plusOf(link), minusOf(link)];
    if (link.kind !== 'sum' || !link.isRunning || !isSure(link) || plus.length !== 1 || minus.length !== 1)
      continue;
    const columns = [link.result, plus[0] ?? -1, minus[0] ?? -1].map((i) => looked[i]);
    if (!columns.some(isMoney) && columns.some(isFish)) continue;
    const fields: readonly FieldName[] = ['balance', 'income', 'expense'];
    columns.forEach((one, i) => speakFor(one, [fields[i] ?? 'balance'], SURE));
    return;
  }
}

export function byChains(links: readonly Link[], looked: readonly Looked[]): void {
  if (!stockKept(links, looked)) {
    saleMade(links, looked);
    boxKept(links, looked);
  }
  const byScore = (a: Candidate, b: Candidate): number => b.score - a.score;
  for (const { candidates } of looked) candidates.sort(byScore);
}
