import type { Near } from '../base/near';
import type { Verdict } from './verdict';
import { verdictOf } from './verdict';

/** The one scale of verdicts changes at numbers somebody chose; no bundle holds this file. */
const edge = (
  number: string,
  value: number,
  [below, above]: readonly [below: number, above: number],
  answers: readonly [below: Verdict, above: Verdict],
): Near => ({ number, value, below: () => verdictOf(below), above: () => verdictOf(above), answers });

export const NEAR: readonly Near[] = [
  edge('Least share of seasons that is safe', 0.9, [0.899, 0.901], ['likely', 'safe']),
  edge('Least share of seasons that is likely', 0.7, [0.699, 0.701], ['a coin toss', 'likely']),
  edge('Least share of seasons that is a coin toss', 0.4, [0.399, 0.401], ['unlikely', 'a coin toss']),
  edge('Dust in the last digits of a share', 1e-9, [0.899_999_998_96, 0.899_999_999_04], ['likely', 'safe']),
];
