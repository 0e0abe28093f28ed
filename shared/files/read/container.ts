import type { Unzipped } from 'fflate';
import { strFromU8, unzipSync } from 'fflate';
import { tagsNamed } from './scan';

/** A file that cannot be read, with the sentence that says why and what to do. */
export class Unreadable extends Error {}

const MOST_BYTES = 400e6;
/** Beyond this a part unpacks to so many times its size that it can only be a trap. */
const MOST_RATIO = 400;
const RATIO_MATTERS_FROM = 20e6;

const startsWith = (bytes: Uint8Array, ...signature: readonly number[]): boolean =>
  signature.every((byte, i) => bytes[i] === byte);
const includesUtf16 = (bytes: Uint8Array, word: string): boolean => {
  const head = strFromU8(bytes.subarray(0, 65_536), true);
  return head.includes([...word].join('\0'));
};

/** What else people pick by mistake. */
function otherKind(bytes: Uint8Array): string | undefined {
  if (bytes.length === 0) return 'The file is empty.';
  if (startsWith(bytes, 0xd0, 0xcf, 0x11, 0xe0)) {
    return includesUtf16(bytes, 'EncryptedPackage')
      ? 'The file is locked with a password. Open it in Excel, take the password off (File, ' +
          'Info, Protect Workbook), save it and try again.'
      : 'This is an old .xls file. Open it in Excel or LibreOffice and save it as .xlsx.';
  }
  if (startsWith(bytes, 0x50, 0x4b)) return undefined;
  if (startsWith(bytes, 0x25, 0x50, 0x44, 0x46))
    return 'This is a PDF, not a workbook. Ask for the .xlsx file it was made from.';
  const head = strFromU8(bytes.subarray(0, 200), true);
  if (/^\s*(<\?xml|<html|<!doctype)/i.test(head))
    return 'This is a web page or XML file, whatever its name says. Open it in Excel and save it as .xlsx.';
  return /^[\x20-\x7e\s\u0080-\u00ff]*$/.test(head) && /[,;\t]/.test(head)
    ? 'This looks like a text (CSV) file. Open it in the spreadsheet and save it as .xlsx.'
    : 'This is not an .xlsx workbook.';
}

function unzip(bytes: Uint8Array): Unzipped {
  let total = 0;
  const names = new Set<string>();
  let trap: string | undefined;
  try {
    return unzipSync(bytes, {
      filter: ({ name, size, originalSize }) => {
        total += originalSize;
        if (names.has(name))
          trap = 'The file holds the same part twice; it was not made by a spreadsheet program.';
        names.add(name);
        if (total > MOST_BYTES || (originalSize > RATIO_MATTERS_FROM && originalSize > size * MOST_RATIO))
          trap = 'The file unpacks to far more than a workbook would. It was not opened.';
        if (trap) throw new Unreadable(trap);
        return /\.(xml|rels|vml)$/i.test(name) || name === 'mimetype' || /workbook\.bin$/i.test(name);
      },
    });
  } catch (error) {
    if (error instanceof Unreadable) throw error;
    throw new Unreadable(
      'The file is damaged or was cut short while copying. Get it again, or open it in ' +
        'Excel and let Excel repair it.',
    );
  }
}

/** Rejoins 'xl/worksheets' and '../tables/table1.xml'. */
export function resolvePath(from: string, target: string): string {
  if (target.startsWith('/')) return target.slice(1);
  const parts = from.split('/').slice(0, -1);
  for (const step of target.split('/')) {
    if (step === '..') parts.pop();
    else if (step !== '.') parts.push(step);
  }
  return parts.join('/');
}

export interface Relation {
  readonly id: string;
  readonly kind: string;
  readonly target: string;
}

/** The parts of a workbook by path, and what each points at. */
export class Container {
  private readonly byLowerCase = new Map<string, string>();
  constructor(private readonly files: Unzipped) {
    for (const name of Object.keys(files)) this.byLowerCase.set(name.toLowerCase(), name);
  }

  /** A part as it is: a long sheet is read faster as bytes than as text. */
  bytes(path: string): Uint8Array | undefined {
    const name = this.byLowerCase.get(path.toLowerCase());
    return name === undefined ? undefined : this.files[name];
  }

  text(path: string): string | undefined {
    const bytes = this.bytes(path);
    if (!bytes) return undefined;
    if (startsWith(bytes, 0xff, 0xfe) || startsWith(bytes, 0xfe, 0xff))
      throw new Unreadable(
        'The file is written in an unusual alphabet coding (UTF-16). Open it in Excel and save it again.',
      );
    return strFromU8(startsWith(bytes, 0xef, 0xbb, 0xbf) ? bytes.subarray(3) : bytes);
  }

  /** Relations of a part ('' for the whole package); kind is the last word of the relation's type. */
  relations(path: string): readonly Relation[] {
    const at = path.lastIndexOf('/') + 1;
    const xml = this.text(`${path.slice(0, at)}_rels/${path.slice(at)}.rels`);
    if (xml === undefined) return [];
    return tagsNamed(xml, 'Relationship').flatMap((tag) =>
      tag.get('TargetMode') === 'External'
        ? []
        : [
            {
              id: tag.get('Id') ?? '',
              kind: (tag.get('Type') ?? '').split('/').at(-1) ?? '',
              target: resolvePath(path, tag.get('Target') ?? ''),
            },
          ],
    );
  }

  get paths(): readonly string[] {
    return Object.keys(this.files);
  }
}

export function openContainer(bytes: Uint8Array): Container {
  const other = otherKind(bytes);
  if (other) throw new Unreadable(other);
  const container = new Container(unzip(bytes));
  const kind = container.text('mimetype');
  if (kind?.includes('opendocument'))
    throw new Unreadable(
      'This is an OpenDocument file. Open it in LibreOffice and save it as .xlsx (Excel 2007-365).',
    );
  if (container.paths.some((path) => /workbook\.bin$/i.test(path)))
    throw new Unreadable('This is a binary workbook (.xlsb). Open it in Excel and save it as .xlsx.');
  return container;
}
