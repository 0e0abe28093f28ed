/** Text in XML, and the way the format hides characters XML cannot hold. */

/** The characters XML 1.0 forbids. */
const FORBIDDEN = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/g;
const hidden = (character: string): string =>
  `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`;

const ENTITIES = new Map([
  ['&', '&amp;'],
  ['<', '&lt;'],
  ['>', '&gt;'],
  ['"', '&quot;'],
]);
export const escapeXml = (text: string): string =>
  text.replace(FORBIDDEN, '').replace(/[&<>"]/g, (c) => ENTITIES.get(c) ?? c);

const HALF_A_PAIR = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

/**
 * Cell text: _x0041_ in the text itself must not read as a hidden character. A lone half of a surrogate pair
 * is replaced.
 */
export const escapeCellText = (text: string): string =>
  text
    .replace(HALF_A_PAIR, '\uFFFD')
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_')
    .replace(FORBIDDEN, hidden)
    .replace(/\r/g, '_x000D_')
    .replace(/[&<>]/g, (c) => ENTITIES.get(c) ?? c);

/**
 * Some control characters are written _x000D_; an underscore before that spelling is itself written _x005F_.
 */
export const revealCellText = (text: string): string =>
  text.includes('_x')
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)))
    : text;

const NAMED = new Map([
  ['amp', '&'],
  ['lt', '<'],
  ['gt', '>'],
  ['quot', '"'],
  ['apos', "'"],
]);
export const unescapeXml = (text: string): string =>
  text.includes('&')
    ? text.replace(
        /&(?:#x([0-9a-fA-F]{1,6})|#(\d{1,7})|([A-Za-z]{2,4}));/g,
        (whole, hex?: string, decimal?: string, name?: string) => {
          const code = hex ? parseInt(hex, 16) : decimal ? Number(decimal) : undefined;
          if (code !== undefined) return code <= 0x10ffff ? String.fromCodePoint(code) : '';
          return NAMED.get(name ?? '') ?? whole;
        },
      )
    : text;
