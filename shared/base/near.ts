/**
 * A number somebody chose, with a case just below it and a case just above it that must come out differently.
 * A module exports a list of them as NEAR beside its numbers; one generated test runs both sides of each.
 */
export interface Near {
  /** What the number is, as a sentence names it. */
  readonly number: string;
  readonly value: number;
  /** The answer for a case just below the number. */
  readonly below: () => unknown;
  /** The answer for a case just above it. */
  readonly above: () => unknown;
  readonly answers: readonly [below: unknown, above: unknown];
}
