/**
 * The older container (compound file) holds either an encrypted .xlsx or an .xls. The directory names its
 * streams in UTF-16; "EncryptedPackage" is there only when the workbook has a password ([MS-OFFCRYPTO]
 * 2.3.4.4).
 */
const MARK = Uint8Array.from(
  [...'EncryptedPackage'].flatMap((letter) => [letter.charCodeAt(0), 0]).slice(0, -1),
);

export function looksEncrypted(file: Uint8Array): boolean {
  for (let at = file.indexOf(MARK[0] ?? 0); at >= 0; at = file.indexOf(MARK[0] ?? 0, at + 1))
    if (MARK.every((byte, i) => file[at + i] === byte)) return true;
  return false;
}
