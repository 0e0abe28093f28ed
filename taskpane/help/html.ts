/** Text of a page, put together from pieces that are already safe. */
export interface Html {
  readonly html: string;
}
export type HtmlPiece = Html | string | number | false | undefined | readonly HtmlPiece[];

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

const textOf = (piece: HtmlPiece): string => {
  if (piece === false || piece === undefined) return '';
  if (typeof piece === 'string' || typeof piece === 'number') return escaped(String(piece));
  return 'html' in piece ? piece.html : piece.map(textOf).join('');
};

/** html`<p>${text}</p>`: what stands in the braces is escaped unless it is Html itself. */
export const html = (parts: TemplateStringsArray, ...pieces: readonly HtmlPiece[]): Html => ({
  html: parts.map((part, i) => part + textOf(pieces[i])).join(''),
});
