/**
 * The one scale of verdicts: how surely something is met, in a word, a shape and a colour. Pane, sheets,
 * shared copies and functions read it here and nowhere else.
 */
export const VERDICTS = ['safe', 'likely', 'a coin toss', 'unlikely', 'cannot'] as const;
export type Verdict = (typeof VERDICTS)[number];

export interface VerdictLook {
  readonly word: Verdict;
  /** Tells the verdict where colours are not seen; all are in the set every font of an office program has. */
  readonly shape: string;
  /** Name of the colour where colours have names. */
  readonly token: 'safe' | 'likely' | 'toss' | 'unlikely' | 'cannot';
  /** Text and pale ground, as #rrggbb; the text has a contrast of at least 4.5 on white and on its ground. */
  readonly ink: string;
  readonly ground: string;
  /** Least share of seasons that has this verdict. */
  readonly from: number;
}

/** Least shares, chosen by the house: nine in ten, seven in ten, four in ten; no source. */
export const VERDICT_LOOKS: Readonly<Record<Verdict, VerdictLook>> = {
  safe: { word: 'safe', shape: '●', token: 'safe', ink: '#14532d', ground: '#dcf3e3', from: 0.9 },
  likely: { word: 'likely', shape: '▲', token: 'likely', ink: '#155e75', ground: '#dbf1f6', from: 0.7 },
  'a coin toss': {
    word: 'a coin toss',
    shape: '◊',
    token: 'toss',
    ink: '#713f12',
    ground: '#fbf0cd',
    from: 0.4,
  },
  unlikely: { word: 'unlikely', shape: '▼', token: 'unlikely', ink: '#9a3412', ground: '#fde6d8', from: 0 },
  cannot: { word: 'cannot', shape: '×', token: 'cannot', ink: '#7f1d1d', ground: '#f9dcdc', from: -Infinity },
};

/** Shares drawn or counted carry dust in their last digits. */
const DUST = 1e-9;
/**
 * The verdict of a share of seasons. In: share 0 to 1. Out: safe from 0.9, likely from 0.7, a coin toss from
 * 0.4, unlikely below; cannot where it is 0 or no number, or where `isPossible` says that nothing can be done.
 */
export function verdictOf(share: number, isPossible = true): Verdict {
  if (!isPossible || !(share > 0)) return 'cannot';
  return VERDICTS.find((word) => share >= VERDICT_LOOKS[word].from - DUST) ?? 'cannot';
}
/** The verdict as text: "● safe". */
export const verdictText = (verdict: Verdict): string => `${VERDICT_LOOKS[verdict].shape} ${verdict}`;
