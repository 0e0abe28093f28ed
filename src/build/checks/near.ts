import { chosenIn } from './chosen';
import type { SourceText } from './longFiles';

/** File → number → how it was written when its cases caught it moving, and the case that did. */
export type Held = Readonly<Record<string, Readonly<Record<string, readonly [written: string, by: string]>>>>;
/** Why there is no pair → file → numbers. */
export type NearDebts = Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;

/** Files without a choice: texts, declarations of cases. */
const PLAIN = /\/(near[A-Z]?\w*|near\/\w+|words\/(?!lexicon)\w+|\w*Words|sources)\.ts$/;
export const isPlain = (path: string): boolean => PLAIN.test(path);

/** The numbers of the engine, and which of them have a pair that holds or a listed reason why not. */
export function nearFaults(files: readonly SourceText[], held: Held, debts: NearDebts): string[] {
  const owed = new Map(
    Object.entries(debts).flatMap(([reason, list]) =>
      Object.entries(list).flatMap(([file, names]) =>
        names.map((name) => [`${file}: ${name}`, reason] as const),
      ),
    ),
  );
  const numbers = new Map(
    files
      .filter(({ path }) => path.startsWith('shared/') && !isPlain(path))
      .flatMap(({ path, text }) =>
        chosenIn(path, text).map(
          ({ name, written }) => [`${path}: ${name}`, { path, name, written }] as const,
        ),
      ),
  );
  const texts = new Map(files.map(({ path, text }) => [path, text]));
  const isThere = (by: string): boolean => {
    const at = by.indexOf(': ');
    return texts.get(by.slice(0, at))?.includes(by.slice(at + 2)) ?? false;
  };
  return [...numbers].flatMap(([key, { path, name, written }]) => {
    const proof = held[path]?.[name];
    if (!proof)
      return owed.has(key) ? [] : [`${key} = ${written} has no pair: write one and run npm run near`];
    if (owed.has(key)) return [`${key} has its pair and is listed as a debt: take it off the list`];
    if (proof[0] !== written)
      return [`${key} was ${proof[0]} when its pair was tried: npm run near -- ${path}`];
    return isThere(proof[1]) ? [] : [`${key}: the case that held it is gone (${proof[1]})`];
  });
}
