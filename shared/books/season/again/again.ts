import { ASSUMPTIONS } from '../../../families/assumptions';
import type { OrderBook } from '../../../season/orderBook';
import { VAT_STAGES } from '../../../season/orderBook';
import { FEMALES, FISH, MALES, ORDERS, PAIRS, RUNS, STAYS, VATS } from '../columns';
import type { Title } from '../context';
import { TITLES } from '../context';
import { EGGS_VARY, FIGURES, FIGURE_HEADINGS, SPREAD_HEADINGS } from '../figures';
import type { PlanBefore } from '../../../season/compare';
import type { Entry, Line, ReadSheet } from './sheetReading';
import { dayOf, isYes, linesOf, numberIn, rowsUnder, setupOf, textIn } from './sheetReading';
import { SPREAD_SHARES, USUAL_EGG_SPREAD, usualShareSpread } from '../../../season/spreads';
import type { StandingRun } from './standing';
import { lastUses, standingRuns } from './standing';

/**
 * A season read back from the sheets it was written to, so that it can be planned again from what is there
 * now.
 */

const READ: readonly Title[] = [
  'setup',
  'orders',
  'parents',
  'vats',
  'runs',
  'fish',
  'pairs',
  'stays',
  'figures',
];

export const seasonSheetNames = (suffix: string): readonly string[] =>
  READ.map((title) => `${TITLES[title]}${suffix}`);

/** What stands behind the sheet names of each season in a workbook, the one that stands first in it first. */
export function seasonsIn(sheetNames: readonly string[]): readonly string[] {
  const names = new Set(sheetNames);
  return sheetNames
    .filter((name) => name.startsWith(TITLES.setup))
    .map((name) => name.slice(TITLES.setup.length))
    .filter((suffix) => seasonSheetNames(suffix).every((name) => names.has(name)));
}

/** An order book as it stands in cells: what readOrderBook checks. */
export type BookInput = { readonly [K in keyof OrderBook]?: unknown };
export type SeasonReading =
  | {
      readonly kind: 'read';
      readonly input: BookInput;
      readonly before: PlanBefore;
      readonly said: readonly string[];
    }
  | { readonly kind: 'unreadable'; readonly faults: readonly string[] };

const orderOf = (
  line: Line<keyof typeof ORDERS.letters>,
): Readonly<Record<string, Entry>> & { readonly forBreeding: boolean } => ({
  name: textIn(line.order),
  product: line.product,
  number: line.number,
  grams: line.grams,
  due: line.due,
  price: line.price,
  forBreeding: isYes(line.breeding),
});

/** Figures of the sheet that somebody typed or learned; ours, untouched, are left to us. */
export function figuresOf(sheet: ReadSheet): Readonly<Record<string, Entry>> {
  const rows = rowsUnder(sheet, FIGURE_HEADINGS);
  return Object.fromEntries(
    FIGURES.flatMap(({ key, label, planned }) => {
      const row = rows.find((r) => r.Figure === label);
      const value = row?.Value;
      // Ours, untouched, is left to us: a later edition may know it better.
      return row === undefined || value === undefined || (value === planned && row.Whose !== 'your own')
        ? []
        : [[key, value] as const];
    }),
  );
}

/** Deviations within this of the usual ones were not typed by anybody. */
const SAME = 5e-4;
const isNear = (x: Entry, usual: number): boolean => typeof x === 'number' && Math.abs(x - usual) <= SAME;

/**
 * Spreads somebody learned or typed; the usual ones are left out, so that they are not taken for the farm's
 * own.
 */
export function spreadsOf(
  sheet: ReadSheet,
  figures: Readonly<Record<string, Entry>>,
): Readonly<Record<string, unknown>> {
  const rows = rowsUnder(sheet, SPREAD_HEADINGS);
  const [what, runs, season, females] = SPREAD_HEADINGS;
  const shares = SPREAD_SHARES.flatMap((key) => {
    const row = rows.find((r) => r[what] === FIGURES.find((a) => a.key === key)?.label);
    const usual = usualShareSpread(numberIn(figures[key]) ?? ASSUMPTIONS[key].planned);
    return !row || (isNear(row[runs], usual.runs) && isNear(row[season], usual.season))
      ? []
      : [[key, { runs: row[runs], season: row[season] }] as const];
  });
  const eggs = rows.find((r) => r[what] === EGGS_VARY);
  const isUsual =
    !eggs ||
    (isNear(eggs[runs], USUAL_EGG_SPREAD.runs) &&
      isNear(eggs[season], USUAL_EGG_SPREAD.season) &&
      isNear(eggs[females], USUAL_EGG_SPREAD.females));
  return {
    ...Object.fromEntries(shares),
    ...(isUsual ? {} : { eggs: { runs: eggs[runs], season: eggs[season], females: eggs[females] } }),
  };
}

const fish = (n: number): string => Math.round(n).toLocaleString('en');
const standingSaid = (runs: readonly StandingRun[]): string[] =>
  runs.flatMap(({ run, order, why, fish: left }) => {
    if (why === undefined || why === 'over') return [];
    if (why === 'lost') return [`Run ${run} (${order}) is taken as lost: nothing of it is left.`];
    return [
      `Run ${run} (${order}) ${why === 'stripped' ? 'is in the vats' : 'is too near to move, its goods are ordered'}: kept as it is, with ${fish(left)} fish expected.`,
    ];
  });

/** What the season was to bring, by order: the runs that may still move, and all fish. */
function beforeOf(
  orders: readonly { readonly name: string; readonly underway: number }[],
  runs: readonly StandingRun[],
): PlanBefore {
  return {
    runs: runs
      .filter(({ why }) => why === undefined)
      .map(({ order, stripAt, planned }) => ({ order, stripAt, fish: planned })),
    orders: orders.map(({ name, underway }) => ({
      order: { name },
      expected: underway + runs.reduce((sum, run) => sum + (run.order === name ? run.planned : 0), 0),
    })),
  };
}

/** A fish's last use: what its line says, or a later run that was stripped of it. */
const lastUse = (typed: Entry, run: number | undefined): Entry =>
  run === undefined || (dayOf(typed) ?? -Infinity) >= run ? typed : run;

interface Found {
  readonly at: (title: Title) => ReadSheet;
  readonly orders: readonly Line<keyof typeof ORDERS.letters>[];
  readonly vats: readonly Line<keyof typeof VATS.letters>[];
}

function reading({ at, orders, vats }: Found, today: number): SeasonReading {
  const setup = setupOf(at('setup'));
  const pairs = linesOf(at('pairs'), PAIRS, 'run') ?? [];
  const leads = setup.leadDays as Readonly<Record<'hormone' | 'cysts', Entry>> | undefined;
  const lead = Math.max(numberIn(leads?.hormone) ?? 0, numberIn(leads?.cysts) ?? 0);
  const runs = standingRuns(
    {
      runs: linesOf(at('runs'), RUNS, 'run') ?? [],
      fish: linesOf(at('fish'), FISH, 'run') ?? [],
      pairs,
      stays: linesOf(at('stays'), STAYS, 'vat') ?? [],
    },
    today,
    lead,
  );
  const uses = lastUses(runs, pairs);
  const figures = figuresOf(at('figures'));
  const isPast = (order: Found['orders'][number]): boolean => (dayOf(order.due) ?? Infinity) <= today;
  const open = orders.filter((order) => !isPast(order));
  const openNames = new Set(open.map((order) => textIn(order.order)));
  return {
    kind: 'read',
    input: {
      ...setup,
      plannedOn: today,
      orders: open.map(orderOf),
      vats: vats.map((v) => ({
        name: textIn(v.vat),
        litres: v.litres,
        holds: VAT_STAGES.filter((stage) => isYes(v[stage])),
      })),
      females: (linesOf(at('parents'), FEMALES, 'female') ?? []).map((f) => ({
        tag: textIn(f.female),
        kilograms: f.kilograms,
        family: textIn(f.family) || undefined,
        lastUsed: lastUse(f.lastUsed, uses.get(`female ${textIn(f.female)}`)),
      })),
      males: (linesOf(at('parents'), MALES, 'male') ?? []).map((m) => ({
        tag: textIn(m.male),
        family: textIn(m.maleFamily) || undefined,
        lastUsed: lastUse(m.maleUsed, uses.get(`male ${textIn(m.male)}`)),
      })),
      underway: runs.flatMap((run) => run.underway.filter(({ order }) => openNames.has(order))),
      assumptions: figures,
      spreads: spreadsOf(at('figures'), figures),
    },
    before: beforeOf(
      orders.map((o) => ({ name: textIn(o.order), underway: numberIn(o.underway) ?? 0 })),
      runs,
    ),
    said: [
      ...standingSaid(runs.filter(({ order }) => openNames.has(order))),
      ...orders
        .filter(isPast)
        .map(
          (o) =>
            `${textIn(o.order)}: its day is past, so it is left out. If it is still owed, give it a new day on Orders.`,
        ),
    ],
  };
}

/**
 * The season of these sheets as an order book for planning again on a day: inputs as they stand now, runs in
 * the vats (or too near to move) as runs under way with the fish their counts leave, orders whose day is past
 * left out. Nothing is judged here: readOrderBook does.
 */
export function readSeason(sheets: readonly ReadSheet[], suffix: string, today: number): SeasonReading {
  const sheetOf = (title: Title): ReadSheet | undefined =>
    sheets.find(({ name }) => name === `${TITLES[title]}${suffix}`);
  const missing = READ.filter((title) => sheetOf(title) === undefined).map(
    (title) =>
      `There is no sheet “${TITLES[title]}${suffix}” in this workbook. A season needs it to be planned again.`,
  );
  if (missing.length > 0) return { kind: 'unreadable', faults: missing };
  const at = (title: Title): ReadSheet => sheetOf(title) ?? { name: '', values: [] };
  const [orders, vats] = [linesOf(at('orders'), ORDERS, 'order'), linesOf(at('vats'), VATS, 'vat')];
  if (orders && vats) return reading({ at, orders, vats }, today);
  return {
    kind: 'unreadable',
    faults: [...(orders ? [] : [TITLES.orders]), ...(vats ? [] : [TITLES.vats])].map(
      (name) =>
        `The headings of “${name}${suffix}” are not where they were written. Bring them back, or fill in the form by hand.`,
    ),
  };
}
