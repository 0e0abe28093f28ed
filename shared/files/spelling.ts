import { PREFIX } from '../functions/define';

/**
 * How a call of ours is written in a file, in one place. Excel looks for _xldudf_SPAWN_BUFFER_DOSE: under its
 * own name it would show #NAME? for ever, whether or not the add-in is there. Ids keep to letters and digits
 * joined by dots, so the dots can be told from the underscores of the file and no table is asked.
 */

export const CUSTOM_PREFIX = '_xldudf_';
const MARKS = String.raw`(?:@|_xlfn\.|_xlws\.|_xludf\.|_xll\.|_xlpm\.)*`;
const STORED = new RegExp(`^${MARKS}${CUSTOM_PREFIX}${PREFIX}_([A-Z0-9_.]+)$`, 'i');
const TYPED = new RegExp(`^${MARKS}${PREFIX}\\.([A-Z0-9_.]+)$`, 'i');

/** SPAWN.BUFFER.DOSE → _xldudf_SPAWN_BUFFER_DOSE */
export const storedName = (name: string): string => CUSTOM_PREFIX + name.toUpperCase().replaceAll('.', '_');

export interface OwnName {
  /** As typed: SPAWN.BUFFER.DOSE. */
  readonly name: string;
  /** Was it written as Excel stores it? */
  readonly isStored: boolean;
}

/** A word of a formula as the name of a function of ours, in every spelling a file can hold. */
export function ownName(word: string): OwnName | undefined {
  if (word.length <= PREFIX.length) return undefined;
  const stored = STORED.exec(word);
  const id = (stored ?? TYPED.exec(word))?.[1];
  return id === undefined
    ? undefined
    : { name: `${PREFIX}.${id.replaceAll('_', '.').toUpperCase()}`, isStored: stored !== null };
}

/** Is a name as somebody types it one of ours? */
export const isOwnTyped = (word: string): boolean => TYPED.test(word);
