/** Text of a page, put together from pieces that are already safe. */
export interface Html {
  readonly html: string;
}
export type Piece = Html | string | number | false | undefined | readonly Piece[];

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

const textOf = (piece: Piece): string => {
  if (piece === false || piece === undefined) return '';
  if (typeof piece === 'string' || typeof piece === 'number') return escaped(String(piece));
  return 'html' in piece ? piece.html : piece.map(textOf).join('');
};

/** html`<p>${text}</p>`: what stands in the braces is escaped unless it is Html itself. */
export const html = (parts: TemplateStringsArray, ...pieces: readonly Piece[]): Html => ({
  html: parts.map((part, i) => part + textOf(pieces[i])).join(''),
});
