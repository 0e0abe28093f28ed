import type { RecordTable, Spot } from '../../table';
import { EARLIEST, LATEST } from '../figures/dates';
import type { AuditOptions, BookRule, TableVerdict } from '../rule';
import { plain, shown } from '../show';

/** One vat taken by one record, from day to day. */
interface Stay {
  readonly vat: string;
  readonly from: number;
  readonly to: number;
  readonly spot: Spot;
}

const endOf = (from: number, emptied: number, days: number): number =>
  Number.isNaN(emptied) ? from + days : emptied;
const isDate = (value: number): boolean => value >= EARLIEST && value < LATEST;

const namesOf = (text: string): string[] =>
  text
    .split(/[,;+&/]| and /)
    .map((word) => word.trim().toLowerCase())
    .filter(Boolean);

function staysOf(table: RecordTable): Stay[] {
  const { vat } = table.texts;
  const { stockedAt, emptiedAt, days, date } = table.numbers;
  const start = stockedAt ?? date;
  if (!vat || !start || (!emptiedAt && !days)) return [];
  const at = (list: Float64Array | undefined, i: number): number => list?.[i] ?? NaN;
  return vat.flatMap((names, i) => {
    const from = at(start, i);
    const to = endOf(from, at(emptiedAt, i), at(days, i));
    const spot = table.spot(i, 'vat');
    return isDate(from) && isDate(to) && to >= from && spot
      ? namesOf(names).map((name) => ({ vat: name, from, to, spot }))
      : [];
  });
}

const whole = (value: number): string => shown('stockedAt', Math.floor(value));

function twice(tables: readonly RecordTable[]): readonly TableVerdict[] | string {
  const stays = tables.flatMap(staysOf).sort((a, b) => a.from - b.from);
  if (stays.length === 0) return 'no table says which vat was in use from when to when';
  const open = new Map<string, Stay>();
  const found: TableVerdict[] = [];
  for (const stay of stays) {
    const before = open.get(stay.vat);
    // Emptied and filled on the same day is a change-over.
    if (before && stay.from < Math.floor(before.to))
      found.push({
        spot: stay.spot,
        related: [before.spot],
        seen: `in use until ${whole(before.to)}`,
        expected: `free on ${whole(stay.from)}`,
        sentence: `Vat ${stay.vat.toUpperCase()} is filled on ${whole(stay.from)} while another batch is in it until ${whole(before.to)}.`,
      });
    if (!before || stay.to > before.to) open.set(stay.vat, stay);
  }
  return found;
}

const ownedBy = (tables: readonly RecordTable[], options: AuditOptions): number => {
  const kept = tables.flatMap((table) => [...(table.numbers.vatsOwned ?? [])]).filter((x) => x > 0);
  return options.vatsOwned ?? (kept.length > 0 ? Math.max(...kept) : NaN);
};

function counted(table: RecordTable, owned: number): TableVerdict[] {
  const list = table.numbers.vatsInUse;
  if (!list) return [];
  return [...list].flatMap((value, i) =>
    value > owned
      ? [
          {
            record: i,
            spot: table.spot(i, 'vatsInUse') ?? table.home(i),
            seen: plain(value),
            expected: `at most ${plain(owned)}`,
            sentence: `${plain(value)} vats are in use, but there are only ${plain(owned)}.`,
          },
        ]
      : [],
  );
}

function together(tables: readonly RecordTable[], owned: number): TableVerdict[] {
  const stays = tables.flatMap(staysOf).sort((a, b) => a.from - b.from);
  let open: Stay[] = [];
  let isOver = false;
  const found: TableVerdict[] = [];
  for (const stay of stays) {
    open = [...open.filter((one) => Math.floor(one.to) > stay.from && one.vat !== stay.vat), stay];
    const wasOver = isOver;
    isOver = open.length > owned;
    // One finding for each time the limit is passed, not for every batch while it is.
    if (isOver && !wasOver)
      found.push({
        spot: stay.spot,
        related: open.slice(0, -1).map(({ spot }) => spot),
        seen: `${open.length} vats on ${whole(stay.from)}`,
        expected: `at most ${plain(owned)}`,
        sentence: `On ${whole(stay.from)} ${open.length} vats are in use at once, but there are only ${plain(owned)}.`,
      });
  }
  return found;
}

function tooMany(
  tables: readonly RecordTable[],
  _: unknown,
  options: AuditOptions,
): readonly TableVerdict[] | string {
  const owned = ownedBy(tables, options);
  if (Number.isNaN(owned))
    return 'the number of vats of the farm is not known; say it in the options or in a cell "Number of vats"';
  return [...tables.flatMap((table) => counted(table, owned)), ...together(tables, owned)];
}

const HEAD = ['Vat', 'Stocking date', 'End date', 'Stocked'] as const;
const OWNED = {
  Farm: [
    ['Vats owned', 2],
    ['Fish in tank', 100],
    ['Dead', 3],
    ['Mean weight (g)', 2],
  ],
};

export const vatRules: readonly BookRule[] = [
  {
    id: 'VAT.TWICE',
    scope: 'book',
    severity: 'impossible',
    title: 'One vat, two batches',
    needs: [
      ['vat', 'stockedAt', 'emptiedAt'],
      ['vat', 'stockedAt', 'days'],
      ['vat', 'date', 'days'],
    ],
    check: twice,
    checks: 'Batches whose days in the same vat overlap.',
    why: 'Either a date or a vat number is wrong, or two batches were mixed and neither can be counted.',
    sources: ['DEFINITION'],
    examples: [
      {
        sheets: {
          Batches: [
            HEAD,
            ['V1', 46_001, 46_030, 5120],
            ['V2', 46_004, 46_033, 4930],
            ['V1', 46_025, 46_050, 5075],
          ],
        },
        says: 'Vat V1 is filled',
        because: 'Five days of overlap.',
      },
      {
        sheets: {
          Batches: [
            HEAD,
            ['V1', 46_001, 46_030, 5120],
            ['V2', 46_004, 46_033, 4930],
            ['V1', 46_030, 46_050, 5075],
          ],
        },
        because: 'Changed over on the same day.',
      },
    ],
  },
  {
    id: 'VATS.MORE',
    scope: 'book',
    severity: 'impossible',
    title: 'More vats in use than there are',
    needs: [['vatsInUse'], ['vat', 'stockedAt', 'emptiedAt'], ['vat', 'stockedAt', 'days']],
    check: tooMany,
    checks: 'Vats in use at one time against the number of vats of the farm.',
    why: 'An end date was not written down, or a vat is called by two names.',
    sources: ['DEFINITION'],
    examples: [
      {
        sheets: {
          Batches: [
            HEAD,
            ['V1', 46_001, 46_030, 5120],
            ['V2', 46_004, 46_033, 4930],
            ['V3', 46_010, 46_040, 5075],
          ],
          ...OWNED,
        },
        says: '3 vats are in use',
        because: 'Two are owned.',
      },
      {
        sheets: {
          Batches: [
            HEAD,
            ['V1', 46_001, 46_030, 5120],
            ['V2', 46_004, 46_033, 4930],
            ['V3', 46_030, 46_050, 5075],
          ],
          ...OWNED,
        },
        because: 'The third starts when the first ends.',
      },
    ],
  },
];
