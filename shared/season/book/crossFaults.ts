import { isoDateOfSerial } from '../../units/dates';

/** Entries that are each possible but not together. */
interface Named {
  readonly name?: string;
  readonly tag?: string;
}
interface Book {
  readonly plannedOn: number;
  readonly orders: readonly {
    readonly key?: string | undefined;
    readonly name: string;
    readonly due: number;
  }[];
  readonly vats: readonly Named[];
  readonly females: readonly (Named & { readonly lastUsed?: number | undefined })[];
  readonly males: readonly (Named & { readonly lastUsed?: number | undefined })[];
  readonly batches?: readonly {
    readonly name: string;
    readonly state: string;
    readonly stays: readonly { readonly vat: string }[];
  }[];
  readonly booked?: readonly unknown[];
  readonly staff: {
    readonly stripFrom: number;
    readonly stripTo: number;
    readonly injectFrom: number;
    readonly injectTo: number;
  };
}
interface CrossFault {
  readonly path: (string | number)[];
  readonly message: string;
}

const repeats = (list: string, items: readonly Named[]): CrossFault[] => {
  const seen = new Map<string, number>();
  return items.flatMap(({ name, tag }, i) => {
    const word = (name ?? tag ?? '').toLowerCase();
    const first = seen.get(word);
    if (first === undefined) seen.set(word, i);
    return first === undefined
      ? []
      : [
          {
            path: [list, i],
            message: `${name ?? tag ?? ''}: stands in rows ${first + 1} and ${i + 1} of ${list}. Give each its own name.`,
          },
        ];
  });
};

/** A key typed twice would mix up what was sold of two orders. */
const keyRepeats = (orders: Book['orders']): CrossFault[] => {
  const seen = new Map<string, number>();
  return orders.flatMap(({ key }, i): CrossFault[] => {
    const word = key?.toLowerCase();
    if (word === undefined) return [];
    const first = seen.get(word);
    if (first === undefined) seen.set(word, i);
    return first === undefined
      ? []
      : [
          {
            path: ['orders', i, 'key'],
            message: `${key ?? ''}: is the key of rows ${first + 1} and ${i + 1} of orders. Empty the second; it then gets a key of its own.`,
          },
        ];
  });
};

/** Batches must use vats of the book, and no two have one name. */
const batchFaults = ({ batches = [], vats }: Book): CrossFault[] => {
  const known = new Set(vats.map(({ name }) => name));
  return [
    ...repeats('batches', batches),
    ...batches.flatMap(({ name, state, stays }, i) =>
      state === 'over' || state === 'lost'
        ? []
        : [...new Set(stays.map(({ vat }) => vat))]
            .filter((vat) => !known.has(vat))
            .map((vat) => ({
              path: ['batches', i, 'stays'],
              message: `${name}: stands in ${vat}, but there is no such vat in the book.`,
            })),
    ),
  ];
};

export function crossFaults(book: Book): CrossFault[] {
  const { plannedOn, staff } = book;
  // In a season that is under way, days gone by are its history.
  const isUnderWay = (book.batches?.length ?? 0) + (book.booked?.length ?? 0) > 0;
  return [
    ...keyRepeats(book.orders),
    ...repeats('vats', book.vats),
    ...repeats('females', book.females),
    ...repeats('males', book.males),
    ...book.orders.flatMap(({ name, due }, i) =>
      due > plannedOn || isUnderWay
        ? []
        : [
            {
              path: ['orders', i, 'due'],
              message: `${name}: is due on ${isoDateOfSerial(due)}, but the plan is made on ${isoDateOfSerial(plannedOn)}. Mend the date or take the order out.`,
            },
          ],
    ),
    ...[
      ...book.females.map((fish, i) => ['females', i, fish] as const),
      ...book.males.map((fish, i) => ['males', i, fish] as const),
    ].flatMap(([list, i, { tag, lastUsed }]) =>
      lastUsed === undefined || lastUsed <= plannedOn
        ? []
        : [
            {
              path: [list, i, 'lastUsed'],
              message: `${tag ?? ''}: was last used on ${isoDateOfSerial(lastUsed)}, which is after today, ${isoDateOfSerial(plannedOn)}.`,
            },
          ],
    ),
    ...batchFaults(book),
    ...(staff.stripTo > staff.stripFrom
      ? []
      : [
          {
            path: ['staff', 'stripTo'],
            message: 'Stripping until: must be later than stripping from. A night shift is two books.',
          },
        ]),
    ...(staff.injectTo > staff.injectFrom
      ? []
      : [{ path: ['staff', 'injectTo'], message: 'Injecting until: must be later than injecting from.' }]),
  ];
}
