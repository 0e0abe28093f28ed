import { bytesOf } from './xml';
import { join } from './container';

/** What to put in place of the bytes from `start` to `end`; '' takes them out. */
export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export const cut = (span: { readonly start: number; readonly end: number }): Edit => ({
  start: span.start,
  end: span.end,
  text: '',
});
export const put = (start: number, end: number, text: string): Edit => ({ start, end, text });

/** Applies edits; one that lies inside an earlier, larger one is dropped with it. */
export function splice(bytes: Uint8Array, edits: readonly Edit[]): Uint8Array {
  const chunks: Uint8Array[] = [];
  let at = 0;
  for (const edit of edits.toSorted((a, b) => a.start - b.start || b.end - a.end)) {
    if (edit.start < at) continue;
    if (edit.start > at) chunks.push(bytes.subarray(at, edit.start));
    if (edit.text) chunks.push(bytesOf(edit.text));
    at = edit.end;
  }
  chunks.push(bytes.subarray(at));
  return join(chunks);
}
