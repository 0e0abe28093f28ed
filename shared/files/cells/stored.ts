import type { CellSpan } from './cells';
import { Markup, rawText, textBetween } from '../package/xml';

/** A cell's last value as the file holds it. */
export interface StoredValue {
  /** n number, s shared string, str text, inlineStr text, b TRUE or FALSE, e error, d date. */
  readonly type: string;
  readonly raw: string;
}

export function storedValue(bytes: Uint8Array, cell: CellSpan): StoredValue | undefined {
  const type = cell.typeFrom < 0 ? 'n' : rawText(bytes, cell.typeFrom, cell.typeTo);
  if (cell.inlineFrom >= 0 && cell.valueFrom < 0)
    return { type: 'inlineStr', raw: inlineText(bytes, cell.inlineFrom, cell.inlineTo) };
  // A formula that gives an empty text may be stored without a value.
  if (cell.valueFrom < 0) return type === 'str' ? { type, raw: '' } : undefined;
  const raw = textBetween(bytes, cell.valueFrom, cell.valueTo);
  return raw === '' && type !== 'str' ? undefined : { type, raw };
}

/** The text of <t> elements; phonetic hints (rPh) are no part of it. */
export function inlineText(bytes: Uint8Array, from: number, to: number): string {
  const markup = new Markup(bytes);
  markup.at = from;
  let text = '';
  let phonetic = 0;
  while (markup.next() && markup.start < to) {
    if (markup.isNamed('rPh')) phonetic += markup.isClosing ? -1 : markup.isEmpty ? 0 : 1;
    if (phonetic > 0 || markup.isClosing || markup.isEmpty || !markup.isNamed('t')) continue;
    const start = markup.at;
    if (!markup.next()) break;
    text += textBetween(bytes, start, Math.min(markup.start, to));
  }
  return text;
}
