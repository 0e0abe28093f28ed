import type { Package } from '../../package/package';
import type { Edit } from '../../package/splice';
import { cut, put } from '../../package/splice';
import type { Element } from '../../package/xml';
import { all, attribute, attributesOf, textOf } from '../../package/xml';
import { escapeXml } from '../../text';

/** Notes, comments and mentions keep their text; whose they are, and whom they call by name, goes. */

interface Part {
  readonly part: string;
  readonly bytes: Uint8Array;
  readonly root: Element;
}

const parts = (pack: Package, ...types: readonly string[]): Part[] =>
  pack.partsOfType(...types).flatMap((part) => {
    const found = pack.tree(part);
    return found ? [{ part, ...found }] : [];
  });

const comments = (pack: Package): Part[] => parts(pack, 'comments', 'comment');
const threads = (pack: Package): Part[] => parts(pack, 'threadedComment', 'threadedComments');
const persons = (pack: Package): Part[] => parts(pack, 'person', 'persons');

const isRealName = (name: string): boolean =>
  name.trim().length > 1 && !name.startsWith('tc=') && name !== ANYBODY;
const ANYBODY = 'Author';

/** Everybody the file names as an author, a person or in a mention. */
function namesIn(pack: Package): string[] {
  const names = new Set<string>();
  for (const { bytes, root } of comments(pack))
    for (const one of all(root, 'author')) names.add(textOf(bytes, one));
  for (const { bytes, root } of persons(pack))
    for (const one of all(root, 'person')) names.add(attribute(bytes, one, 'displayName')?.value ?? '');
  for (const { bytes, root } of threads(pack))
    for (const one of all(root, 'threadedComment'))
      for (const { from, to, text } of mentionsIn(bytes, one))
        names.add(text.slice(from, to).replace(/^@/, ''));
  return [...names].filter(isRealName).sort((a, b) => b.length - a.length);
}

interface Mention {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

function mentionsIn(bytes: Uint8Array, comment: Element): Mention[] {
  const [body] = all(comment, 'text');
  const text = body ? textOf(bytes, body) : '';
  return all(comment, 'mention').flatMap((one) => {
    const [start, length] = ['startIndex', 'length'].map((name) =>
      Number(attribute(bytes, one, name)?.value),
    );
    return start !== undefined &&
      length !== undefined &&
      start >= 0 &&
      length > 0 &&
      start + length <= text.length
      ? [{ from: start, to: start + length, text }]
      : [];
  });
}

const without = (text: string, names: readonly string[]): string =>
  names.reduce(
    (now, name) => now.replaceAll(`@${name}`, '@').replaceAll(`${name}:`, '').replaceAll(name, ''),
    text,
  );

/** Texts without the names, run by run. */
const textEdits = (bytes: Uint8Array, root: Element, names: readonly string[]): Edit[] =>
  all(root, 't', 'text')
    .filter((one) => one.children.length === 0)
    .flatMap((one) => {
      const text = textOf(bytes, one);
      const left = without(text, names);
      return left === text ? [] : [put(one.openEnd, one.closeStart, escapeXml(left.replace(/^\n/, '')))];
    });

const PERSON: readonly (readonly [string, string])[] = [
  ['displayName', ANYBODY],
  ['userId', ''],
  ['providerId', 'None'],
];

export function removePeople(pack: Package): string[] {
  const names = namesIn(pack);
  let count = 0;
  const edit = ({ part }: Part, edits: readonly Edit[]): void => {
    pack.edit(part, edits);
    count += edits.length;
  };
  const [notes, spoken, people] = [comments(pack), threads(pack), persons(pack)];
  for (const one of notes)
    edit(one, [
      ...all(one.root, 'author')
        .filter((author) => isRealName(textOf(one.bytes, author)))
        .map((author) => put(author.openEnd, author.closeStart, '')),
      ...textEdits(one.bytes, one.root, names),
    ]);
  for (const one of spoken)
    edit(one, [...all(one.root, 'mentions').map(cut), ...textEdits(one.bytes, one.root, names)]);
  for (const one of people)
    edit(
      one,
      all(one.root, 'person').flatMap((person) =>
        PERSON.flatMap(([name, instead]) => {
          const found = attributesOf(one.bytes, person).find((each) => each.name === name);
          return found && found.value !== instead ? [put(found.valueStart, found.valueEnd, instead)] : [];
        }),
      ),
    );
  return count > 0 ? ['Names of the people who wrote notes and comments, or were called in them.'] : [];
}

export const namesPeople = (pack: Package): boolean => namesIn(pack).length > 0;
