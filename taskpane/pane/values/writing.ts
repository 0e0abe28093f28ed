import type { StateChange } from '../command';
import type { WriteOutcome } from '../../host/port';
import type { ShownAnswer } from '../keeping/state';

/** The first few, and how many more. */
const LISTED = 3;
export const list = (names: readonly string[]): string => {
  const shown = names
    .slice(0, LISTED)
    .map((name) => `“${name}”`)
    .join(', ');
  return names.length > LISTED ? `${shown} and ${names.length - LISTED} more` : shown;
};

/** Short, and nothing a sheet or a name may not hold. */
const SUFFIX = /^[\p{L}\p{N}]{1,8}$/u;
export const isSuffix = (word: string): boolean => SUFFIX.test(word);

export interface Written {
  readonly done: (sheets: readonly string[]) => string;
  /** What would be written, in a question: the plan, the dosing sheet. */
  readonly what: string;
  readonly again: ShownAnswer;
}

/** Written, or a question because sheets of these names are there. */
export function outcomeChange(outcome: WriteOutcome, { done, what, again }: Written): StateChange {
  if (outcome.kind === 'written')
    return (now) => ({ ...now, notice: { tone: 'good', text: done(outcome.sheets) } });
  const sheets = outcome.sheets.length === 1 ? 'There is a sheet' : 'There are sheets';
  const taken =
    outcome.sheets.length > 0
      ? `${sheets} called ${list(outcome.sheets)} already`
      : `The names ${list(outcome.names)} are in use already`;
  return (now) => ({
    ...now,
    focus: 'question',
    question: {
      text: `${taken}. Nothing was changed. Write ${what} beside ${outcome.sheets.length === 1 ? 'it' : 'them'}?`,
      word: { label: 'Put behind every sheet name', value: outcome.free.trim() },
      answers: [again, { label: 'Cancel', act: 'dismiss' }],
    },
  });
}

/** A name as a file may bear it: letters and digits of every script, the rest as hyphens. */
export const fileWord = (name: string, otherwise: string): string =>
  name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || otherwise;

export const badSuffix = (word: string): string =>
  `“${word}” cannot go behind a sheet name: use one to eight letters or digits.`;
