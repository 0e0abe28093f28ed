// Long: one table of sentences, a line a code.
import { CAUTIONS } from '../functions/cautions';
import { reasonText } from '../families/water/records/buffer/titrationWords';
import type { AdviceReason } from '../families/water/titration/advise';
import type { Measures } from './spoons';
import type { VatAction, VatAdvice, VatReason, VatSetup } from './vat';

/** What a person at the vat is told: drawn last, from the values of the advice. */
export interface VatSentences {
  /** The few words in large letters. */
  readonly headline: string;
  readonly todo: string;
  readonly expect: string;
  /** What does not fit, and what the answer rests on. */
  readonly why: readonly string[];
  readonly cautions: readonly string[];
}

/** Grams as a scale shows them. */
export const gramsText = (grams: number): string =>
  grams === 0
    ? '0'
    : grams < 1
      ? grams.toFixed(2)
      : grams < 100
        ? grams.toFixed(1).replace(/\.0$/, '')
        : String(Math.round(grams));

const FRACTIONS = ['', '¼', '½', '¾'] as const;
const countText = (count: number): string => {
  const quarters = Math.round(count * 4);
  const whole = Math.floor(quarters / 4);
  return `${whole > 0 ? whole : ''}${FRACTIONS[quarters % 4] ?? ''}`;
};

/** A dose as it is measured out: "2½ level spoons of 5 g". */
export const measuresText = (m: Measures): string => {
  if (m.by === 'scale') return `${gramsText(m.grams)} g`;
  if (m.by === 'spoons')
    return `${countText(m.count)} level ${m.count > 1 ? 'spoons' : 'spoon'} of ${gramsText(m.each)} g`;
  return `${m.millilitres} mL of stock`;
};

const stockText = (m: Measures | undefined, material: string): string =>
  m?.stock
    ? ` Stock: ${gramsText(m.stock.grams)} g of ${material} in ${m.stock.litres === 1 ? '1 litre' : `${m.stock.litres} litres`} of clean water, stirred; made fresh today.`
    : '';

const HEADLINES: Readonly<Record<VatAction, string>> = {
  refused: 'No answer',
  readFirst: 'Read the pH',
  mix: 'Mix, then read',
  airFirst: 'Air first',
  dose: 'Give',
  waitSettle: 'Wait, read again',
  readAgain: 'Read again',
  done: 'Done',
  watch: 'No product; read again tomorrow',
  stop: 'Add nothing',
};

type OwnReason = Exclude<VatReason, AdviceReason>;
const ph = (x: number): string => (Math.round(x * 100) / 100).toFixed(2).replace(/0$/, '');
const OWN: { readonly [C in OwnReason['code']]: (reason: Extract<OwnReason, { code: C }>) => string } = {
  refusal: ({ sentence }) => sentence,
  meterUnchecked: () =>
    'First hold the meter in a buffer of pH 7 and write down what it shows: a meter that reads low makes the ' +
    'dose too big.',
  meterOff: ({ by }) =>
    Math.abs(by) < 0.005
      ? 'The meter was right in its buffer.'
      : `The meter shows ${ph(Math.abs(by))} too ${by > 0 ? 'much' : 'little'} in its buffer: that is taken off every reading.`,
  sameWater: ({ as }) =>
    `The reading fits the water of vat ${as}, so the dose starts from what was learnt there.`,
  otherWater: ({ as }) =>
    `This is not the water of vat ${as}: the reading does not fit. It is dosed by itself.`,
  measureAmmonia: () =>
    'Fish are in the water: measure total ammonia before the pH is raised, and type it in the set-up.',
  ammonia: ({ safe }) =>
    `Ammonia: with what was measured the pH must not pass ${ph(safe)}. Exchange water first, feed nothing, measure again.`,
  given: ({ grams, read }) =>
    `pH ${ph(read)} was read, then ${gramsText(grams)} g went in. Keep the water moving, then read at both ends of the vat.`,
};
const isOwn = (reason: VatReason): reason is OwnReason => reason.code in OWN;
const reasonSaid = (reason: VatReason): string =>
  isOwn(reason) ? (OWN[reason.code] as (one: OwnReason) => string)(reason) : reasonText(reason);

const to1 = (x: number): string => x.toFixed(1);
const expectOf = ({ action, now, aired }: VatAdvice): string => {
  if (!now || !aired || action === 'readAgain' || action === 'waitSettle') return '';
  const soon = `Next reading ${to1(now.low)} to ${to1(now.high)}`;
  const end = `aired ${to1(aired.low)} to ${to1(aired.high)}`;
  return action === 'dose' || action === 'mix' ? `${soon}; ${end}.` : `pH once ${end}.`;
};

/** Short words for the headline of one reason, where they say more than the action's. */
const headlineOf = (advice: VatAdvice): string => {
  if (advice.action === 'dose' && advice.measures) return `Give ${measuresText(advice.measures)}`;
  const [first] = advice.reasons;
  if (first?.code === 'measureAmmonia' || first?.code === 'ammonia') return 'Stop: ammonia';
  return HEADLINES[advice.action];
};

export function vatSentences(setup: VatSetup, advice: VatAdvice): VatSentences {
  const [first, ...rest] = advice.reasons;
  const grams =
    advice.action === 'dose' && advice.measures ? ` That is ${gramsText(advice.measures.grams)} g.` : '';
  return {
    headline: headlineOf(advice),
    todo: `${grams}${stockText(advice.measures, setup.material)} ${first ? reasonSaid(first) : ''}`.trim(),
    expect: expectOf(advice),
    why: rest.map(reasonSaid),
    cautions: advice.cautions.map((key) => CAUTIONS[key] ?? ''),
  };
}

export type VatTone = 'plain' | 'good' | 'warning' | 'bad';
/** A vat in the list: one short word, its colour and mark. */
export const stateOf = ({ action }: VatAdvice): { readonly word: string; readonly tone: VatTone } =>
  STATES[action];
const STATES: Readonly<Record<VatAction, { readonly word: string; readonly tone: VatTone }>> = {
  refused: { word: 'look', tone: 'bad' },
  readFirst: { word: 'read', tone: 'plain' },
  mix: { word: 'mixing', tone: 'plain' },
  airFirst: { word: 'air', tone: 'warning' },
  dose: { word: 'dose', tone: 'warning' },
  waitSettle: { word: 'wait', tone: 'plain' },
  readAgain: { word: 'read again', tone: 'warning' },
  done: { word: 'done', tone: 'good' },
  watch: { word: 'tomorrow', tone: 'plain' },
  stop: { word: 'stop', tone: 'bad' },
};

/** What must be seen beside the dose itself; the whole caution stands one press away. */
const SHORT: Readonly<Record<string, string>> = {
  SODA_ASH: 'Goggles and gloves; dissolve it in a bucket first; never onto fish or eggs.',
  LIME: 'Burns and blinds: goggles, gloves, dust mask; stir it into water; never with fish.',
  CAUSTIC: 'Burns at once: goggles, long gloves; into plenty of cold water; never with fish.',
  AMMONIA: 'Fish are in: know the ammonia; no more than 0.3 pH a step.',
};
export const shortCautions = ({ action, cautions }: VatAdvice): readonly string[] =>
  action === 'dose' ? cautions.flatMap((key) => SHORT[key] ?? []) : [];
