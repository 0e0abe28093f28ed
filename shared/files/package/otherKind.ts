import { strFromU8 } from 'fflate';
import { looksEncrypted } from './compound';
import { REFUSED } from './refusal';

const startsWith = (bytes: Uint8Array, ...signature: readonly number[]): boolean =>
  signature.every((byte, i) => bytes[i] === byte);

/** What else people pick by mistake, as the sentence that says so; undefined for a zip archive. */
export function otherKind(file: Uint8Array): string | undefined {
  if (file.length === 0) return REFUSED.empty;
  if (startsWith(file, 0xd0, 0xcf, 0x11, 0xe0))
    return looksEncrypted(file) ? REFUSED.password : REFUSED.oldFormat;
  if (startsWith(file, 0x50, 0x4b)) return undefined;
  if (startsWith(file, 0x25, 0x50, 0x44, 0x46)) return REFUSED.pdf;
  const head = strFromU8(file.subarray(0, 200), true);
  if (/^\s*(<\?xml|<html|<!doctype)/i.test(head)) return REFUSED.webPage;
  return /^[\x20-\x7e\s\u0080-\u00ff]*$/.test(head) && /[,;\t]/.test(head)
    ? REFUSED.textTable
    : REFUSED.notZip;
}
