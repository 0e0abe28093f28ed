import { highestKey, isOrderKey, keyNumbered } from '../../../season/orderKeys';
import type { ORDERS } from '../columns';
import type { Entry } from './sheetReading';
import { textIn } from './sheetReading';

/** The lines of Orders with key and buyer, also those of books that knew an order by its buyer alone. */

type Line = Readonly<Partial<Record<keyof typeof ORDERS, Entry>>>;
export type OrderLine = Line & { readonly key: string; readonly name: string };

const TYPED = ['buyer', 'product', 'number', 'grams', 'due', 'price', 'breeding', 'cancelled'] as const;

export interface OrderLines {
  readonly lines: readonly OrderLine[];
  /** What a key, or the name of a buyer, that stands on another sheet means: the name plans know it by. */
  readonly nameOf: (text: string) => string;
  /** Name to key, for what was typed under the name. */
  readonly keys: ReadonlyMap<string, string>;
}

/** `others`: texts of other sheets that may hold keys; a number that stands in one is not given anew. */
export function orderLinesOf(all: readonly Line[], others: Iterable<unknown>): OrderLines {
  const hasBuyers = all.some((line) => 'buyer' in line);
  const filled = all.filter(
    (line) =>
      TYPED.some((key) => line[key] !== undefined) ||
      (line.order !== undefined && !(hasBuyers && isOrderKey(textIn(line.order)))),
  );
  const typedKey = (line: Line): string | undefined => {
    const text = textIn(line.order);
    return text !== '' && (hasBuyers || isOrderKey(text)) ? text : undefined;
  };
  let last = highestKey([...filled.map(typedKey), ...others]);
  const lines = filled.map((line): OrderLine => {
    const key = typedKey(line) ?? keyNumbered(++last);
    return { ...line, key, name: textIn(line.buyer) || textIn(line.order) || key };
  });
  const byKey = new Map(lines.map(({ key, name }) => [key.toLowerCase(), name]));
  const isName = new Set(lines.map(({ name }) => name));
  return {
    lines,
    nameOf: (text) => (hasBuyers || !isName.has(text) ? (byKey.get(text.toLowerCase()) ?? text) : text),
    keys: new Map(
      lines.flatMap(({ key, name }) =>
        hasBuyers && byKey.has(name.toLowerCase()) ? [] : [[name, key] as const],
      ),
    ),
  };
}
