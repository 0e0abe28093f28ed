import { addressOf } from '../../../sheet/formula/address';
import { eachCell } from '../../cells/values';
import { sharedStrings } from '../../cells/strings';
import type { PackageBook } from '../../package/book';
import type { Package } from '../../package/package';
import type { ShareProgress } from '../decisions/options';

/**
 * Texts in cells that tell where somebody is reached, or where a file of somebody lies. What was typed is never
 * taken out unasked; a copy that is to say nothing of people names it by its place.
 */

const ADDRESS =
  /(?:mailto|tel|sip|skype|callto):\S|[\w.+-]+@[\w-]+(?:\.[\w-]+)+|\\\\[^\\\s]+\\\S|\b[A-Za-z]:[\\/]\S|file:\/\/|\/(?:home|Users)\/\w/i;
/** So many places are read; more are counted. */
const FEW = 6;

export const isAddress = (text: string): boolean => ADDRESS.test(text);

/** The sentence about them; undefined where there is none. */
export function* typedAddresses(
  pack: Package,
  book: PackageBook,
): Generator<ShareProgress, string | undefined> {
  const strings = sharedStrings({ pack, book });
  const places: string[] = [];
  for (const [i, { name, part, isWorksheet }] of book.sheets.entries()) {
    const bytes = isWorksheet ? pack.read(part) : undefined;
    if (!bytes) continue;
    for (const done of eachCell(bytes, strings, ({ row, column }, value) => {
      if (value?.type !== 'n' && isAddress(value?.raw ?? ''))
        places.push(`${name}!${addressOf(row, column)}`);
    }))
      yield { step: 'write', done: (i + done) / book.sheets.length };
  }
  if (places.length === 0) return undefined;
  const rest = places.length - FEW;
  return `${places.length === 1 ? 'One text' : `${places.length} texts`} in cells ${places.length === 1 ? 'looks' : 'look'} like the address of a person or a folder: ${places.slice(0, FEW).join('; ')}${rest > 0 ? ` and ${rest} more` : ''}. What was typed stays; look whether it may go.`;
}
