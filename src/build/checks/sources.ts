import type { Source } from '../../../shared/functions/source';

/** Source key → why no reference test holds its printed values yet. */
export type Debts = Readonly<Record<string, string>>;

/**
 * Every source that was seen is tied to a reference test that names its key, or is a debt with a reason. A debt
 * that was paid, or whose source is gone, is a fault as well.
 */
export function sourceFaults(
  sources: Readonly<Record<string, Source>>,
  referenceTests: readonly string[],
  debts: Debts,
): string[] {
  const isTied = (key: string): boolean =>
    referenceTests.some((text) => new RegExp(`\\b${key}\\b`).test(text));
  const untied = Object.entries(sources).filter(
    ([key, { standing }]) => standing === 'seen' && !isTied(key) && !(debts[key] ?? ''),
  );
  return [
    ...untied.map(([key]) => `${key} was seen and no reference test names it: write one, or list the debt`),
    ...Object.keys(debts)
      .filter((key) => !(key in sources))
      .map((key) => `${key} is listed as a debt and is no source any more`),
    ...Object.keys(debts)
      .filter((key) => key in sources && isTied(key))
      .map((key) => `${key} is listed as a debt and has its reference test: take it off the list`),
  ];
}
