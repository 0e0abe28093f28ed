import { chosenIn } from './chosen';
import type { SourceText } from './longFiles';

/** File → number → how it was written when its cases caught it moving, and the case that did. */
export type Held = Readonly<Record<string, Readonly<Record<string, readonly [written: string, by: string]>>>>;
/** Why there is no pair → file → numbers. */
export type NearDebts = Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;

/** Files without a choice: texts, declarations of cases. */
const PLAIN = /\/(near[A-Z]?\w*|near\/[\w/]+|words\/(?!lexicon)\w+|\w*Words|sources)\.ts$/;
export const isPlain = (path: string): boolean => PLAIN.test(path);

interface Found {
  readonly path: string;
  readonly name: string;
  readonly written: string;
}
/** Every file is read once, whoever asks. */
const known = new WeakMap<readonly SourceText[], readonly Found[]>();
function numbersIn(files: readonly SourceText[]): readonly Found[] {
  let found = known.get(files);
  if (!found) known.set(files, (found = freshIn(files)));
  return found;
}
const freshIn = (files: readonly SourceText[]): Found[] =>
  files
    .filter(({ path }) => path.startsWith('shared/') && !isPlain(path))
    .flatMap(({ path, text }) => chosenIn(path, text).map(({ name, written }) => ({ path, name, written })));

/** How many numbers of the engine have a pair that holds. */
export function nearShare(files: readonly SourceText[], held: Held): string {
  const numbers = numbersIn(files);
  const holding = numbers.filter(({ path, name }) => held[path]?.[name] !== undefined).length;
  return `numbers somebody chose: ${holding} of ${numbers.length} have a pair that holds them`;
}

/** Numbers without a pair that holds and without a listed reason; pairs and debts of numbers that are gone. */
export function nearFaults(files: readonly SourceText[], held: Held, debts: NearDebts): string[] {
  const owed = new Map<string, string>(
    Object.entries(debts).flatMap(([reason, list]) =>
      Object.entries(list).flatMap(([file, names]) =>
        names.map((name) => [`${file}: ${name}`, reason] as const),
      ),
    ),
  );
  const numbers = numbersIn(files);
  const there = new Set<string>(numbers.map(({ path, name }) => `${path}: ${name}`));
  const texts = new Map(files.map(({ path, text }) => [path, text]));
  const isThere = (by: string): boolean => {
    const at = by.indexOf(': ');
    return texts.get(by.slice(0, at))?.includes(by.slice(at + 2)) ?? false;
  };
  const gone = [...owed.keys()]
    .filter((key) => !there.has(key))
    .map((key) => `${key} is listed as a debt and is gone: take it off the list`);
  const faults = numbers.flatMap(({ path, name, written }) => {
    const key = `${path}: ${name}`;
    const proof = held[path]?.[name];
    if (!proof)
      return owed.has(key) ? [] : [`${key} = ${written} has no pair: write one and run npm run near`];
    if (owed.has(key)) return [`${key} has its pair and is listed as a debt: take it off the list`];
    if (proof[0] !== written)
      return [`${key} was ${proof[0]} when its pair was tried: npm run near -- ${path}`];
    return isThere(proof[1]) ? [] : [`${key}: the case that held it is gone (${proof[1]})`];
  });
  return [...faults, ...gone];
}
