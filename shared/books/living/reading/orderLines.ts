import { highestKey, isOrderKey, keyNumbered } from '../../../season/book/orderKeys';
import { lastingNames, meaningIn, planNames, severalSentence } from '../../../season/book/orderNames';
import type { ORDERS } from '../columns';
import type { Entry } from './sheetReading';
import { textIn } from './sheetReading';

/** The lines of Orders with key and buyer, also those of books that knew an order by its buyer alone. */

type Line = Readonly<Partial<Record<keyof typeof ORDERS, Entry>>>;
export type OrderLine = Line & {
  readonly key: string;
  readonly buyerName: string;
  /** What plans know it by. */
  readonly name: string;
};

const TYPED = ['buyer', 'product', 'number', 'grams', 'due', 'price', 'breeding', 'cancelled'] as const;

export interface OrderLines {
  readonly lines: readonly OrderLine[];
  /**
   * What a key, or the name of a buyer, that stands on another sheet means: the name plans know it by; '' where
   * the buyer has several orders.
   */
  readonly nameOf: (text: string) => string;
  /** The same as an order book takes it, also when other orders have come beside it. */
  readonly givenOf: (text: string) => string;
  /** What to say of a name that may mean several orders. */
  readonly doubtOf: (text: string) => string | undefined;
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
  const known = filled.map((line) => {
    const key = typedKey(line) ?? keyNumbered(++last);
    return { line, key, name: textIn(line.buyer) || textIn(line.order) || key };
  });
  const names = planNames(known);
  const lasting = lastingNames(known);
  const lines = known.map(({ line, key, name }, i): OrderLine => ({
    ...line,
    key,
    buyerName: name,
    name: names[i] ?? name,
  }));
  const places = new Map(lines.map(({ key }, i) => [key.toLowerCase(), i]));
  const meaning = meaningIn(known);
  /** The line of a text, those of a buyer with several orders, or none. Where buyers stand, a key goes first. */
  const placesOf = (text: string): readonly number[] => {
    const meant = meaning(text);
    const byKey = places.get(text.toLowerCase());
    if (byKey !== undefined && (hasBuyers || meant === undefined)) return [byKey];
    return meant === undefined ? [] : meant.kind === 'one' ? [meant.place] : meant.places;
  };
  const as =
    (texts: readonly string[]) =>
    (text: string): string => {
      const found = placesOf(text);
      return found.length > 1 ? '' : (texts[found[0] ?? NaN] ?? text);
    };
  return {
    lines,
    nameOf: as(names),
    givenOf: as(lasting),
    doubtOf: (text) => {
      const found = placesOf(text);
      return found.length > 1
        ? severalSentence(text, found.map((i) => lines[i]?.key ?? '').join(', '))
        : undefined;
    },
    keys: new Map(
      lines.flatMap(({ key, name, buyerName }) =>
        hasBuyers && places.has(buyerName.toLowerCase()) ? [] : [[name, key] as const],
      ),
    ),
  };
}
