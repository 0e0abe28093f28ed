import type { FieldName } from '../../fields';
import type { Link } from '../../meaning/links';
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

/** What the numbers prove is a reading even where the heading speaks for nothing. */
function prove(one: Looked | undefined, field: FieldName, worth: number): void {
  if (one && one.candidates.length > 0 && !scoreIn(one, field))
    one.candidates.push({ field, score: 0, words: one.evidence.words.get(field) ?? 0 });
  speakFor(one, [field], worth);
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
    columns.forEach((one, i) => speakFor(one, [fields[i] ?? 'balance'], i === 0 ? SURE + 1 : SURE));
    // In a box of money the words say what the money was for.
    for (const one of looked) {
      speakFor(one, ['reason'], -LIKELY);
      speakFor(one, ['description'], LIKELY / 2);
    }
    return;
  }
}

const SORTED_BESIDE = [
  'graded',
  'gradeSmall',
  'gradeMiddle',
  'gradeBig',
  'gradeCull',
  'weight',
  'length',
  'sampleCount',
  'sampleWeight',
] as const;
/** Counts side by side that add up beside lengths or weights are fish sorted by size, from small to big, then culls. */
function fishSorted(links: readonly Link[], looked: readonly Looked[]): void {
  const isMeasured = looked.some(({ candidates: [best] }) =>
    SORTED_BESIDE.some((field) => best?.field === field && best.words >= 0.6),
  );
  if (!isMeasured) return;
  for (const link of links) {
    const { inputs, result } = link;
    if (link.kind !== 'sum' || link.isRunning || !isSure(link) || inputs.length < 3 || inputs.length > 4)
      continue;
    const sorted = [...inputs].sort((a, b) => a - b);
    const isBeside = sorted.every((column, i) => column === (sorted[0] ?? 0) + i);
    if (!isBeside || link.signs.some((sign) => sign !== 1) || sorted.some((i) => isMoney(looked[i])))
      continue;
    const fields: readonly FieldName[] = ['gradeSmall', 'gradeMiddle', 'gradeBig', 'gradeCull'];
    sorted.forEach((column, i) => prove(looked[column], fields[i] ?? 'gradeCull', SURE));
    prove(looked[result], 'graded', SURE + 1);
    return;
  }
}

const isRead = (one: Looked | undefined, field: FieldName, least: number): boolean =>
  one?.candidates[0]?.field === field && one.candidates[0].words >= least;
/** More than this are no sample. */
const MOST_IN_SAMPLE = 150;
/** A few fish times their mean weight is what the sample weighed. */
function sampleWeighed(links: readonly Link[], looked: readonly Looked[]): void {
  for (const link of links) {
    const [a = -1, b = -1] = link.inputs;
    if (link.kind !== 'product' || !isSure(link)) continue;
    const mean = [a, b].find((column) => isRead(looked[column], 'weight', 0.5));
    if (mean === undefined) continue;
    const count = looked[mean === a ? b : a];
    const isFew = count && count.content.fractions === 0 && count.content.middle < MOST_IN_SAMPLE;
    if (!isFew || isRead(count, 'fish', 0.7)) continue;
    prove(count, 'sampleCount', LIKELY);
    prove(looked[link.result], 'sampleWeight', SURE);
    return;
  }
}

const MOST_RATES = 3;
/** Words that say so, and words that leave no doubt. */
const [SAID, CLEAR] = [0.6, 0.8];
/** Hardly changes, and its heading does not clearly say what else it is. */
const isRate = (one: Looked | undefined): boolean =>
  one !== undefined && one.content.kinds <= MOST_RATES && !((one.candidates[0]?.words ?? 0) >= CLEAR);
/** The only thing that follows from the weight of a female by a rate that hardly changes is what she is given. */
function doseGiven(links: readonly Link[], looked: readonly Looked[]): void {
  for (const link of links) {
    const [a = -1, b = -1] = link.inputs;
    if (link.kind !== 'product' || !isSure(link)) continue;
    const weight = [a, b].find((column) => isRead(looked[column], 'femaleWeight', SAID));
    if (weight === undefined) continue;
    const [rate, given] = [looked[weight === a ? b : a], looked[link.result]];
    if (!isRate(rate) || isRead(given, 'doseFirst', SAID) || isRead(given, 'doseSecond', SAID)) continue;
    prove(rate, 'hormoneDose', SURE);
    prove(given, 'hormoneVolume', LIKELY);
    return;
  }
}

export function byChains(links: readonly Link[], looked: readonly Looked[]): void {
  if (!stockKept(links, looked)) {
    saleMade(links, looked);
    boxKept(links, looked);
    fishSorted(links, looked);
    sampleWeighed(links, looked);
    doseGiven(links, looked);
  }
  const byScore = (a: Candidate, b: Candidate): number => b.score - a.score;
  for (const { candidates } of looked) candidates.sort(byScore);
}
