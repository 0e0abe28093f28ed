// Long: one column a line, for every table of the book.
import { Columns, DAY, MOMENT, MONEY, SHARE, WHOLE } from './context';

/**
 * The tables of a season: what each column holds and how it looks. Written by the sheets beside this file,
 * read back by shared/books/season/again.
 */

export const ORDERS = new Columns(
  {
    order: { title: 'Order', width: 24, style: 'input' },
    product: { title: 'Product', width: 12, style: 'input' },
    number: { title: 'Fish', width: 11, style: 'input', format: WHOLE },
    grams: { title: 'Weight of a fish, g', width: 10, style: 'input', format: '0.00' },
    due: { title: 'Due', width: 14, style: 'input', format: DAY },
    price: { title: 'Price', width: 9, style: 'input', format: '#,##0.00##' },
    breeding: { title: 'For breeding', width: 10, style: 'input' },
    planned: { title: 'Planned', width: 11, style: 'result', format: WHOLE },
    underway: { title: 'Of them under way', width: 11, style: 'cell', format: WHOLE },
    short: { title: 'Short', width: 11, style: 'cell', format: WHOLE },
    verdict: { title: 'Verdict', width: 15, style: 'text' },
    females: { title: 'Females', width: 9, style: 'cell', format: WHOLE },
    p10: { title: 'One season in ten below', width: 11, style: 'cell', format: WHOLE },
    p50: { title: 'Half below', width: 11, style: 'cell', format: WHOLE },
    p90: { title: 'Nine in ten below', width: 11, style: 'cell', format: WHOLE },
    certainty: { title: 'Met in', width: 9, style: 'cell', format: '0%' },
    ninety: { title: 'Females for 90 %', width: 11, style: 'cell', format: WHOLE },
    sales: { title: 'Sales', width: 13, style: 'result', format: MONEY },
  } as const,
  'orders',
);

export const FEMALES = new Columns(
  {
    female: { title: 'Female', width: 12, style: 'input' },
    kilograms: { title: 'Weight, kg', width: 10, style: 'input', format: '0.00' },
    family: { title: 'Family', width: 14, style: 'input' },
    lastUsed: { title: 'Last stripped', width: 14, style: 'input', format: DAY },
    runs: { title: 'Runs', width: 7, style: 'cell', format: '0' },
    rested: { title: 'Rested again', width: 14, style: 'cell', format: DAY },
  } as const,
  'parents',
);
export const MALES = new Columns(
  {
    male: { title: 'Male', width: 12, style: 'input' },
    maleFamily: { title: 'Family of the male', width: 14, style: 'input' },
    maleUsed: { title: 'Milt taken', width: 14, style: 'input', format: DAY },
    females: { title: 'Females', width: 9, style: 'cell', format: '0' },
  } as const,
  'parents',
  8,
);

export const VATS = new Columns(
  {
    vat: { title: 'Vat', width: 18, style: 'input' },
    litres: { title: 'Water, L', width: 12, style: 'input', format: WHOLE },
    eggs: { title: 'Eggs', width: 9, style: 'input' },
    fry: { title: 'Fry', width: 9, style: 'input' },
    nursing: { title: 'Nursing', width: 11, style: 'input' },
    stays: { title: 'Stays', width: 9, style: 'cell', format: '0' },
    days: { title: 'Days taken', width: 11, style: 'cell', format: '0.0' },
  } as const,
  'vats',
);

/** Moments of a run: the year stands with the due day. */
const SHORT = 'ddd d mmm hh:mm';
/** The clock of each run. */
export const RUNS = new Columns(
  {
    run: { title: 'Run', width: 6, style: 'cell', format: '0' },
    order: { title: 'Order', width: 22, style: 'label' },
    pairs: { title: 'Females × males', width: 24, style: 'text' },
    usual: { title: 'Water expected, °C', width: 10, style: 'cell', format: '0.0' },
    measured: { title: 'Water measured, °C', width: 10, style: 'blank', format: '0.0' },
    water: { title: 'Water, °C', width: 8, style: 'result', format: '0.0' },
    latency: { title: 'Latency, h', width: 8, style: 'cell', format: '0.0' },
    inject: { title: 'Inject at', width: 17, style: 'result', format: SHORT },
    strip: { title: 'Strip at', width: 16, style: 'input', format: SHORT },
    late: { title: 'Too late to strip', width: 16, style: 'cell', format: SHORT },
    hatch: { title: 'First hatch', width: 16, style: 'cell', format: SHORT },
    feed: { title: 'First feed', width: 16, style: 'cell', format: SHORT },
    fedFrom: { title: 'Fed from', width: 11, style: 'cell', format: 'd mmm yy' },
    rearing: { title: 'Days of rearing', width: 8, style: 'cell', format: '0' },
    weaned: { title: 'Weaned', width: 11, style: 'cell', format: 'd mmm yy' },
    nursing: { title: 'Days of nursing', width: 8, style: 'cell', format: '0' },
    ready: { title: 'Ready', width: 11, style: 'cell', format: 'd mmm yy' },
    due: { title: 'Due', width: 11, style: 'cell', format: 'd mmm yy' },
  } as const,
  'runs',
);

/** From the females of each run to the fish counted out. */
export const FISH = new Columns(
  {
    run: { title: 'Run', width: 6, style: 'cell', format: '0' },
    order: { title: 'Order', width: 22, style: 'label' },
    product: { title: 'Product', width: 12, style: 'text' },
    kilograms: { title: 'Females, kg', width: 10, style: 'cell', format: '0.00' },
    hormone: { title: 'Hormone, mL', width: 10, style: 'cell', format: '0.00' },
    hormoneWeek: { title: 'Order hormone in week from', width: 14, style: 'cell', format: DAY },
    males: { title: 'Males', width: 8, style: 'cell', format: '0' },
    expected: { title: 'Eggs of these females', width: 12, style: 'cell', format: WHOLE },
    toSet: { title: 'Eggs to set', width: 12, style: 'input', format: WHOLE },
    eggs: { title: 'Eggs', width: 12, style: 'cell', format: WHOLE },
    larvae: { title: 'Larvae hatched', width: 12, style: 'cell', format: WHOLE },
    feeding: { title: 'Larvae feeding', width: 12, style: 'cell', format: WHOLE },
    fry: { title: 'Fry weaned', width: 12, style: 'cell', format: WHOLE },
    fish: { title: 'Fish counted out', width: 12, style: 'result', format: WHOLE },
    planned: { title: 'Fish when planned', width: 12, style: 'cell', format: WHOLE },
  } as const,
  'fish',
);

export const PAIRS = new Columns(
  {
    run: { title: 'Run', width: 6, style: 'cell', format: '0' },
    female: { title: 'Female', width: 12, style: 'label' },
    male: { title: 'Male', width: 12, style: 'label' },
    kilograms: { title: 'Weight, kg', width: 11, style: 'input', format: '0.00' },
    dose: { title: 'Hormone, mL', width: 11, style: 'result', format: '0.00' },
    inject: { title: 'Inject at', width: 19, style: 'cell', format: MOMENT },
    injected: { title: 'Injected at', width: 19, style: 'blank', format: MOMENT },
    strip: { title: 'Strip at', width: 19, style: 'cell', format: MOMENT },
    stripped: { title: 'Stripped at', width: 19, style: 'blank', format: MOMENT },
    grams: { title: 'Eggs, g', width: 10, style: 'blank', format: '#,##0.0' },
    alive: { title: 'Alive of 100', width: 10, style: 'blank', format: '0' },
  } as const,
  'pairs',
);

/** What is counted in the night of the strip and the day after. */
export const EGG_COUNTS = new Columns(
  {
    run: { title: 'Run', width: 6, style: 'cell', format: '0' },
    order: { title: 'Order', width: 22, style: 'label' },
    grams: { title: 'Eggs stripped, g', width: 10, style: 'cell', format: '#,##0.0' },
    g1: { title: 'Sample 1, g', width: 9, style: 'blank', format: '0.00' },
    g2: { title: 'Sample 2, g', width: 9, style: 'blank', format: '0.00' },
    g3: { title: 'Sample 3, g', width: 9, style: 'blank', format: '0.00' },
    n1: { title: 'Eggs in 1', width: 9, style: 'blank', format: WHOLE },
    n2: { title: 'Eggs in 2', width: 9, style: 'blank', format: WHOLE },
    n3: { title: 'Eggs in 3', width: 9, style: 'blank', format: WHOLE },
    eggs: { title: 'Eggs estimated', width: 12, style: 'result', format: WHOLE },
    eggsLow: { title: 'at least', width: 11, style: 'cell', format: WHOLE },
    eggsHigh: { title: 'at most', width: 11, style: 'cell', format: WHOLE },
    looked: { title: 'Eggs looked at', width: 9, style: 'blank', format: '0' },
    alive: { title: 'Alive', width: 9, style: 'blank', format: '0' },
    fertilised: { title: 'Fertilised', width: 10, style: 'result', format: SHARE },
    fertilisedLow: { title: 'not below', width: 10, style: 'cell', format: SHARE },
    fertilisedHigh: { title: 'not above', width: 10, style: 'cell', format: SHARE },
  } as const,
  'eggCounts',
);

/** What is counted from the hatch on. */
export const FRY_COUNTS = new Columns(
  {
    run: { title: 'Run', width: 6, style: 'cell', format: '0' },
    order: { title: 'Order', width: 22, style: 'label' },
    hatched: { title: 'Larvae hatched', width: 11, style: 'blank', format: WHOLE },
    litres: { title: 'Water of the larvae, L', width: 10, style: 'blank', format: WHOLE },
    ml1: { title: 'Sample 1, mL', width: 9, style: 'blank', format: WHOLE },
    ml2: { title: 'Sample 2, mL', width: 9, style: 'blank', format: WHOLE },
    ml3: { title: 'Sample 3, mL', width: 9, style: 'blank', format: WHOLE },
    l1: { title: 'Larvae in 1', width: 9, style: 'blank', format: WHOLE },
    l2: { title: 'Larvae in 2', width: 9, style: 'blank', format: WHOLE },
    l3: { title: 'Larvae in 3', width: 9, style: 'blank', format: WHOLE },
    larvae: { title: 'Larvae at first feed', width: 12, style: 'result', format: WHOLE },
    larvaeLow: { title: 'at least', width: 11, style: 'cell', format: WHOLE },
    larvaeHigh: { title: 'at most', width: 11, style: 'cell', format: WHOLE },
    weaned: { title: 'Fry weaned', width: 11, style: 'blank', format: WHOLE },
    handed: { title: 'Fish counted out', width: 11, style: 'blank', format: WHOLE },
    remark: { title: 'Remark', width: 32, style: 'blank' },
  } as const,
  'fryCounts',
);

export const STAYS = new Columns(
  {
    vat: { title: 'Vat', width: 18, style: 'label' },
    run: { title: 'Run', width: 6, style: 'cell', format: '0' },
    stage: { title: 'Holds', width: 10, style: 'text' },
    from: { title: 'From', width: 19, style: 'cell', format: MOMENT },
    to: { title: 'To', width: 19, style: 'cell', format: MOMENT },
    clean: { title: 'Clean again', width: 19, style: 'cell', format: MOMENT },
    days: { title: 'Days', width: 8, style: 'cell', format: '0.0' },
    fish: { title: 'Fish', width: 11, style: 'cell', format: WHOLE },
    perLitre: { title: 'In a litre', width: 10, style: 'cell', format: '#,##0.0' },
    most: { title: 'At most', width: 9, style: 'cell', format: '#,##0' },
    verdict: { title: 'Verdict', width: 18, style: 'text' },
  } as const,
  'stays',
);

export const WATER = new Columns(
  {
    run: { title: 'Run', width: 6, style: 'cell', format: '0' },
    fill: { title: 'Fill and air on', width: 14, style: 'cell', format: DAY },
    vats: { title: 'Vats', width: 26, style: 'text' },
    litres: { title: 'Water, L', width: 10, style: 'cell', format: WHOLE },
    ph: { title: 'pH now', width: 8, style: 'input', format: '0.0' },
    wanted: { title: 'pH wanted', width: 8, style: 'input', format: '0.0' },
    alkalinity: { title: 'Alkalinity, meq/L', width: 10, style: 'input', format: '0.00' },
    celsius: { title: 'Water, °C', width: 8, style: 'cell', format: '0.0' },
    bucket: { title: 'Trial bucket of 10 L, g', width: 10, style: 'result', format: '0.00' },
    half: { title: 'First half for 1,000 L, g', width: 11, style: 'cell', format: '#,##0.0' },
    whole: { title: 'All its vats, g', width: 11, style: 'result', format: '#,##0' },
    toxicNow: { title: 'Toxic part of the ammonia now', width: 11, style: 'cell', format: '0.00%' },
    toxicThen: { title: 'Toxic part at the pH wanted', width: 11, style: 'cell', format: '0.00%' },
    given: { title: 'Given, g', width: 9, style: 'blank', format: '#,##0.0' },
    after: { title: 'pH the next morning', width: 9, style: 'blank', format: '0.0' },
    ammonia: { title: 'Total ammonia, mg/L', width: 10, style: 'blank', format: '0.00' },
  } as const,
  'water',
);

export const FEED_RUNS = new Columns(
  {
    date: { title: 'Date', width: 14, style: 'cell', format: DAY },
    run: { title: 'Run', width: 6, style: 'cell', format: '0' },
    day: { title: 'Day of feeding', width: 8, style: 'cell', format: '0' },
    fish: { title: 'Fish expected', width: 11, style: 'cell', format: WHOLE },
    grams: { title: 'Mean weight, g', width: 10, style: 'cell', format: '0.000' },
    live: { title: 'Live part', width: 8, style: 'cell', format: '0%' },
    onLive: { title: 'Larvae to fill with live food', width: 12, style: 'cell', format: WHOLE },
    cysts: { title: 'Cysts, g', width: 10, style: 'result', format: '#,##0.0;-#,##0.0;"–"' },
    ration: { title: 'Dry, of body weight', width: 9, style: 'cell', format: SHARE },
    dry: { title: 'Dry feed, g', width: 11, style: 'result', format: '#,##0.0;-#,##0.0;"–"' },
    cystsWeek: { title: 'Order cysts in week from', width: 14, style: 'cell', format: DAY },
    dryWeek: { title: 'Order feed in week from', width: 14, style: 'cell', format: DAY },
  } as const,
  'feedRuns',
);

export const FEED_DAYS = new Columns(
  {
    date: { title: 'Date', width: 16, style: 'cell', format: DAY },
    runs: { title: 'Runs fed', width: 8, style: 'cell', format: '0' },
    fish: { title: 'Fish fed', width: 12, style: 'cell', format: WHOLE },
    set: {
      title: 'Cysts to set for tomorrow, g',
      width: 13,
      style: 'result',
      format: '#,##0.0;-#,##0.0;"–"',
    },
    dry: { title: 'Dry feed, g', width: 13, style: 'result', format: '#,##0.0;-#,##0.0;"–"' },
    meal: { title: 'Dry feed a meal, g', width: 12, style: 'cell', format: '#,##0.0;-#,##0.0;"–"' },
    done: { title: 'Done', width: 10, style: 'blank' },
  } as const,
  'feed',
);

export const SHOPPING = new Columns(
  {
    week: { title: 'Week from', width: 15, style: 'cell', format: DAY },
    hormone: { title: 'Hormone, mL', width: 13, style: 'result', format: '#,##0.00;-#,##0.00;"–"' },
    cysts: { title: 'Cysts, kg', width: 13, style: 'result', format: '#,##0.000;-#,##0.000;"–"' },
    feed: { title: 'Dry feed, kg', width: 13, style: 'result', format: '#,##0.00;-#,##0.00;"–"' },
    cost: { title: 'Cost', width: 13, style: 'cell', format: '#,##0.00;-#,##0.00;"–"' },
    done: { title: 'Done', width: 12, style: 'blank' },
  } as const,
  'shopping',
);

export const CASH = new Columns(
  {
    week: { title: 'Week from', width: 30, style: 'cell', format: DAY },
    sales: { title: 'In', width: 16, style: 'cell', format: MONEY },
    goods: { title: 'Goods', width: 16, style: 'cell', format: MONEY },
    runs: { title: 'Runs', width: 16, style: 'cell', format: MONEY },
    vats: { title: 'Vats', width: 14, style: 'cell', format: MONEY },
    rent: { title: 'Rent and wages', width: 14, style: 'cell', format: MONEY },
    left: { title: 'Left', width: 16, style: 'result', format: MONEY },
  } as const,
  'money',
);
