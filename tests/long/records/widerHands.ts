// Long: ten kinds of table, how they are laid out, and what is spoilt in them
/**
 * Record books by seed: ten kinds of table in six languages, headings of widerWords.ts, laid out in turn as a plain
 * table, under two header rows, as one form per run down the sheet or beside each other, two tables side by side;
 * units in the heading, in the cells or nowhere; dates in four ways; decimal commas as text. What every column means
 * and which cell was spoilt is known because they were made.
 */
import type { Cell } from '../../../shared/base/values';
import type { FieldName } from '../../../shared/records/fields';
import type { ExampleCell } from '../../../shared/records/rules/rule';
import type { Draw } from '../../records/support/farm';
import { drawer, round } from '../../records/support/farm';
import type { StrangeBook, StrangeColumn, StrangeSheet } from './strangers';
import type { Tongue } from './widerWords';
import { formsOf, LANGUAGES } from './widerWords';
import { WrittenSheet } from './writtenSheet';

type Kind = 'date' | 'clock' | 'number' | 'share' | 'text';
/** One thing written down: what it may be read as, how it is written, in which unit. */
interface Thing {
  readonly is: readonly FieldName[];
  readonly kind: Kind;
  readonly unit?: string;
  readonly digits?: number;
  /** The word over it where there are two header rows. */
  readonly under?: 'Female' | 'Eggs' | 'Result' | 'Water' | 'Money' | 'Fish';
}
const n = (
  is: FieldName | readonly FieldName[],
  unit?: string,
  digits = 0,
  under?: Thing['under'],
): Thing => ({
  is: typeof is === 'string' ? [is] : is,
  kind: unit === '%' ? 'share' : 'number',
  digits,
  ...(unit === undefined ? {} : { unit }),
  ...(under ? { under } : {}),
});
const t = (...is: FieldName[]): Thing => ({ is, kind: 'text' });
const THINGS: Readonly<Record<string, Thing>> = {
  run: t('run', 'serial'),
  date: { is: ['date', 'injectedOn'], kind: 'date' },
  female: { ...t('female'), under: 'Female' },
  kg: n('femaleWeight', 'kg', 2, 'Female'),
  rate: n('hormoneDose', 'ml/kg', 1),
  dose: n('hormoneVolume', 'ml', 2),
  product: t('preparation'),
  in: { is: ['injected', 'clock'], kind: 'clock' },
  out: { is: ['stripped'], kind: 'clock' },
  hours: n('latency', 'h', 2),
  temp: n('temperature', '°C', 1, 'Water'),
  grams: n('eggWeight', 'g', 0, 'Eggs'),
  perGram: n('eggsPerGram', undefined, 0, 'Eggs'),
  eggs: n('eggs', undefined, 0, 'Eggs'),
  looked: n('sampleSize'),
  good: n('sampleGood'),
  fert: n('fertilisedShare', '%', 1, 'Result'),
  hatched: n('hatched', undefined, 0, 'Result'),
  hatchp: n('hatchShare', '%', 0, 'Result'),
  fry: n('fry', undefined, 0, 'Result'),
  open: n('opening', undefined, 0, 'Fish'),
  ins: n(['movedIn', 'stocked'], undefined, 0, 'Fish'),
  outs: n('movedOut', undefined, 0, 'Fish'),
  dead: n('dead', undefined, 0, 'Fish'),
  sold: n('sold', undefined, 0, 'Fish'),
  close: n(['closing', 'alive'], undefined, 0, 'Fish'),
  receipt: t('receipt'),
  buyer: t('customer'),
  n: n(['sold', 'quantity']),
  price: n(['priceEach', 'unitPrice'], undefined, 2, 'Money'),
  amount: n('amount', undefined, 2, 'Money'),
  paid: n(['paid', 'deposit'], undefined, 2, 'Money'),
  due: n(['due', 'balance'], undefined, 2, 'Money'),
  tank: t('vat'),
  fishN: n(['fish', 'stocked', 'alive'], undefined, 0, 'Fish'),
  mean: n('weight', 'g', 2, 'Fish'),
  biomass: n('biomass', 'kg', 2, 'Fish'),
  ration: n('ration', '%', 1),
  feed: n('feed', 'g'),
  kind: t('feedType'),
  time: { is: ['clock'], kind: 'clock' },
  oxygen: n('oxygen', 'mg/l', 1, 'Water'),
  ph1: n('ph', undefined, 1, 'Water'),
  soda: n('materialDose', 'g'),
  volume: n('volume', 'l', 0, 'Water'),
  ph2: n('phAfter', undefined, 1, 'Water'),
  ammonia: n('ammonia', 'mg/l', 2, 'Water'),
  sampN: n('sampleCount'),
  sampW: n('sampleWeight', 'g', 1),
  length: n('length', 'cm', 1, 'Fish'),
  small: n('gradeSmall', undefined, 0, 'Fish'),
  mid: n('gradeMiddle', undefined, 0, 'Fish'),
  big: n('gradeBig', undefined, 0, 'Fish'),
  cull: n('gradeCull', undefined, 0, 'Fish'),
  sorted: n('graded', undefined, 0, 'Fish'),
  what: t('description'),
  inMoney: n('income', undefined, 2, 'Money'),
  outMoney: n('expense', undefined, 2, 'Money'),
  balance: n('balance', undefined, 2, 'Money'),
  remedy: t('material'),
  strength: n('treatRate', 'ppm', 0),
  remedyG: n('treatAmount', 'g', 1),
  from: { is: ['startTime'], kind: 'clock' },
  till: { is: ['endTime'], kind: 'clock' },
  mins: n('minutes', 'min'),
  note: t('note'),
};
const thing = (key: string): Thing => THINGS[key] ?? t('note');

type Value = number | string | null;
type Line = Record<string, Value>;
interface Table {
  readonly keys: readonly string[];
  readonly lines: Line[];
  /** Columns summed at the foot. */
  readonly sums?: readonly string[];
  readonly faults: readonly Fault[];
}
interface Fault {
  readonly kind: string;
  readonly key: string;
  readonly to: (was: number, line: Line) => Value;
  readonly or?: readonly string[];
  /** Said as written, whatever the column's way of writing. */
  readonly as?: string;
  /** The whole line above stands again. */
  readonly copies?: true;
}
const times = (x: number) => (was: number) => was * x;
const to = (x: number, step: number): number => round(Math.round(x / step) * step, 6);
const START = 45_500;

/** African catfish: hours by degree-hours over 15.4 °C (Okere et al. 2015, 108 to 132). */
function spawning(draw: Draw): Table {
  let day = START + Math.floor(draw.between(0, 300));
  const [farm, per, rate] = [draw.between(106, 128), draw.between(600, 740), draw.pick([0.4, 0.5, 0.6])];
  const lines = Array.from({ length: 9 + Math.floor(draw.between(0, 9)) }, (_, i): Line => {
    day += 3 + Math.floor(draw.between(0, 6));
    const temp = round(draw.bell(26.6, 0.9), 1);
    const kg = round(draw.between(0.9, 3), 2);
    const begun = day + to(draw.between(18.5, 22.5), 0.25) / 24;
    const hours = to((farm * draw.bell(1, 0.03)) / (temp - 15.4), 0.25);
    const grams = Math.round(kg * 1000 * draw.between(0.09, 0.16));
    const perGram = to(per * draw.bell(1, 0.03), 5);
    const looked = to(draw.between(100, 180), 10);
    const good = Math.round(looked * draw.between(0.68, 0.9));
    const eggs = grams * perGram;
    const hatchp = Math.round(draw.bell(66, 7));
    const hatched = to((eggs * good * hatchp) / looked / 100, 100);
    return {
      run: i + 1,
      date: day,
      female: `${draw.pick(['F', 'B', 'K'])}${10 + i * 3}`,
      kg,
      rate,
      dose: round(kg * rate, 2),
      product: draw.pick(['pituitary', 'extract']),
      in: begun,
      out: begun + hours / 24,
      hours,
      temp,
      grams,
      perGram,
      eggs,
      looked,
      good,
      fert: round((100 * good) / looked, 1),
      hatched,
      hatchp,
      fry: to(hatched * draw.between(0.6, 0.8), 100),
      note: i % 4 === 1 ? 'ok' : null,
    };
  });
  const all = Object.keys(lines[0] ?? {});
  const spare = ['female', 'rate', 'product', 'hours', 'looked', 'hatchp', 'note'].filter(
    () => draw.random() < 0.5,
  );
  const hasSample = !spare.includes('looked');
  const keys = all.filter((key) => !spare.includes(key) && (hasSample || key !== 'good'));
  const or = (...list: string[]) => ({ or: list });
  return {
    keys,
    lines,
    faults: [
      { kind: 'dose against weight', key: 'dose', to: times(6), ...or('kg', 'rate') },
      { kind: 'no such hour', key: 'in', to: (was) => was, as: 'no hour', ...or('out', 'hours') },
      { kind: 'am for pm', key: 'out', to: (was) => was + 0.5, ...or('in', 'hours') },
      { kind: 'year slip', key: 'date', to: (was) => was - 365 },
      { kind: 'product', key: 'eggs', to: (was) => was + 90_000, ...or('grams', 'perGram') },
      { kind: 'nought too many', key: 'hatched', to: times(10), ...or('eggs', 'fry', 'hatchp') },
      { kind: 'kilograms for grams', key: 'kg', to: times(1000), ...or('dose', 'rate') },
      { kind: 'share is not its counts', key: 'fert', to: (was) => was - 37, ...or('looked', 'good') },
      { kind: 'mark lost', key: 'temp', to: times(10) },
      { kind: 'minus', key: 'grams', to: times(-1), ...or('eggs') },
      { kind: 'line above again', key: 'kg', to: (was) => was, copies: true },
    ],
  };
}

function stock(draw: Draw): Table {
  let [open, day] = [to(draw.between(9_000, 40_000), 100), START + Math.floor(draw.between(0, 300))];
  const lines = Array.from({ length: 16 }, (_, i): Line => {
    const ins = i % 6 === 2 ? to(draw.between(500, 3000), 50) : 0;
    const outs = i % 5 === 4 ? to(draw.between(300, 1500), 50) : 0;
    const sold = i > 5 && i % 3 === 0 ? to(draw.between(300, 1200), 50) : 0;
    const dead = Math.floor(draw.between(2, 70));
    const line = { date: day, open, ins, outs, dead, sold, close: open + ins - outs - dead - sold };
    open = line.close;
    day += 1 + Math.floor(draw.between(0, 3));
    return line;
  });
  return {
    keys: ['date', 'open', 'ins', 'dead', 'outs', 'sold', 'close'],
    lines,
    sums: ['dead', 'sold'],
    faults: [
      { kind: 'ledger', key: 'close', to: (was) => was + 800, or: ['open', 'dead', 'ins', 'outs', 'sold'] },
      { kind: 'minus', key: 'dead', to: times(-1), or: ['open', 'close'] },
      {
        kind: 'sale above stock',
        key: 'sold',
        to: (_, line) => Number(line.open) + 700,
        or: ['open', 'close'],
      },
      { kind: 'wrong total', key: '+dead', to: (was) => was + 90 },
      { kind: 'month slip', key: 'date', to: (was) => was + 61 },
      { kind: 'turned', key: 'open', to: (was) => was + 2700, or: ['close', 'dead'] },
    ],
  };
}

function sales(draw: Draw): Table {
  let day = START + Math.floor(draw.between(0, 300));
  const each = draw.pick([0.15, 12, 25, 400, 35]);
  const lines = Array.from({ length: 18 }, (_, i): Line => {
    day += Math.floor(draw.between(0, 4));
    const count = to(draw.between(200, 3000), 50);
    const price = round(each * draw.pick([1, 1, 1.2]), 2);
    const amount = round(count * price, 2);
    const paid = draw.random() < 0.6 ? amount : to(amount * draw.between(0.3, 0.8), each < 1 ? 1 : 50);
    const buyer = draw.pick(['A. One', 'B. Two', 'C. Three', 'D. Four', 'E. Five', 'F. Six']);
    return {
      date: day,
      receipt: 201 + i,
      buyer,
      n: count,
      price,
      amount,
      paid,
      due: round(amount - paid, 2),
    };
  });
  const keys = ['date', 'receipt', 'buyer', 'n', 'price', 'amount', 'paid', 'due'];
  return {
    keys: keys.filter((key) => key !== 'receipt' || draw.random() < 0.6),
    lines,
    sums: ['n', 'amount'],
    faults: [
      { kind: 'product', key: 'amount', to: times(10), or: ['n', 'price', 'paid', 'due'] },
      { kind: 'owed', key: 'due', to: (was) => was + 333, or: ['amount', 'paid'] },
      { kind: 'wrong total', key: '+amount', to: (was) => was + 500 },
      { kind: 'number again', key: 'receipt', to: (was) => was - 1 },
      { kind: 'price', key: 'price', to: times(100), or: ['amount', 'n'] },
      { kind: 'a word', key: 'n', to: () => 'l2OO' },
      { kind: 'year slip', key: 'date', to: (was) => was + 365 },
    ],
  };
}

function feeding(draw: Draw): Table {
  let day = START + Math.floor(draw.between(0, 300));
  let [count, grams] = [to(draw.between(4000, 9000), 10), draw.between(0.6, 1.5)];
  const tank = draw.pick(['2', 'B', 'N1']);
  const lines = Array.from({ length: 14 }, (_, i): Line => {
    day += 3;
    count -= Math.floor(draw.between(5, 80));
    grams *= draw.between(1.12, 1.25);
    const mean = round(grams, 2);
    const biomass = round((count * mean) / 1000, 2);
    const ration = i < 7 ? 6 : 4;
    return {
      date: day,
      tank,
      fishN: count,
      mean,
      biomass,
      ration,
      feed: Math.round(biomass * ration * 10),
      kind: draw.pick(['0.8', '1.2', '1.5']),
    };
  });
  const keys = Object.keys(lines[0] ?? {});
  return {
    keys: keys.filter((key) => !['tank', 'kind'].includes(key) || draw.random() < 0.6),
    lines,
    faults: [
      { kind: 'feed against fish', key: 'feed', to: times(10), or: ['biomass', 'ration'] },
      { kind: 'product', key: 'biomass', to: (was) => was * 1.7, or: ['fishN', 'mean', 'feed'] },
      { kind: 'fish get lighter', key: 'mean', to: times(0.3), or: ['biomass', 'fishN'] },
      { kind: 'mark lost', key: 'ration', to: times(10), or: ['feed', 'biomass'] },
      { kind: 'more fish with age', key: 'fishN', to: (was) => was + 6000, or: ['biomass', 'mean'] },
    ],
  };
}

function water(draw: Draw): Table {
  let day = START + Math.floor(draw.between(0, 300));
  const litres = draw.pick([600, 1000, 2000]);
  const lines = Array.from({ length: 18 }, (_, i): Line => {
    day += i % 2;
    const low = round(draw.between(5.6, 6.6), 1);
    // Bicarbonate on a carbonate balance lifts pH by the logarithm of what was there (Stumm and Morgan); a rough share.
    const grams = to(litres * draw.between(0.03, 0.06), 1);
    const rise = Math.log10(1 + grams / litres / 0.03) * 1.2;
    return {
      date: day,
      time: day + (i % 2 ? 16 : 7) / 24 + to(draw.between(0, 1), 0.25) / 24,
      tank: `V${1 + (i % 3)}`,
      temp: round(draw.bell(26.5, 0.8), 1),
      oxygen: round(draw.bell(5.4, 0.6), 1),
      ph1: low,
      soda: grams,
      volume: litres,
      ph2: round(low + rise, 1),
      ammonia: round(draw.between(0.05, 0.6), 2),
    };
  });
  const keys = Object.keys(lines[0] ?? {});
  return {
    keys: keys.filter((key) => !['ammonia', 'oxygen', 'tank'].includes(key) || draw.random() < 0.7),
    lines,
    faults: [
      { kind: 'Fahrenheit', key: 'temp', to: (was) => round(was * 1.8 + 32, 1) },
      { kind: 'pH cannot rise so', key: 'ph2', to: () => 10.9, or: ['ph1', 'soda'] },
      { kind: 'pH mark lost', key: 'ph1', to: times(10), or: ['ph2'] },
      { kind: 'no such hour', key: 'time', to: (was) => was, as: 'no hour' },
      { kind: 'oxygen mark lost', key: 'oxygen', to: times(10) },
      { kind: 'month slip', key: 'date', to: (was) => was - 61 },
    ],
  };
}

function hormones(draw: Draw): Table {
  let day = START + Math.floor(draw.between(0, 300));
  const rate = draw.pick([0.4, 0.5, 0.6]);
  const lines = Array.from({ length: 15 }, (_, i): Line => {
    day += i % 3 === 0 ? 4 : 0;
    const kg = round(draw.between(0.8, 3.2), 2);
    const dose = round(kg * rate, 2);
    const begun = day + to(draw.between(17.5, 22), 0.25) / 24;
    return { date: day, in: begun, female: `M${i + 31}`, kg, product: 'pituitary', rate, dose, note: null };
  });
  return {
    keys: ['date', 'in', 'female', 'kg', 'product', 'rate', 'dose', 'note'].filter(
      (key) => key !== 'rate' || draw.random() < 0.5,
    ),
    lines,
    faults: [
      { kind: 'dose against weight', key: 'dose', to: times(5), or: ['kg', 'rate'] },
      { kind: 'weight nought lost', key: 'kg', to: (was) => round(was / 10, 2), or: ['dose', 'rate'] },
      { kind: 'no such hour', key: 'in', to: (was) => was, as: 'no hour' },
      { kind: 'year slip', key: 'date', to: (was) => was - 365 },
      { kind: 'line above again', key: 'kg', to: (was) => was, copies: true },
    ],
  };
}

function sampling(draw: Draw): Table {
  let [day, grams] = [START + Math.floor(draw.between(0, 300)), draw.between(0.5, 1)];
  const lines = Array.from({ length: 12 }, (): Line => {
    day += 4;
    grams *= draw.between(1.2, 1.35);
    const count = to(draw.between(20, 60), 5);
    const mean = round(grams, 2);
    const [small, mid, big, cull] = [2200, 5200, 900, 90].map((x) => Math.round(x * draw.between(0.7, 1.3)));
    return {
      date: day,
      sampN: count,
      sampW: round(count * mean, 1),
      mean,
      length: round(4.7 * Math.cbrt(mean), 1),
      small: small ?? 0,
      mid: mid ?? 0,
      big: big ?? 0,
      cull: cull ?? 0,
      sorted: (small ?? 0) + (mid ?? 0) + (big ?? 0) + (cull ?? 0),
    };
  });
  return {
    keys: Object.keys(lines[0] ?? {}),
    lines,
    faults: [
      { kind: 'sum', key: 'sorted', to: (was) => was + 1000, or: ['small', 'mid', 'big', 'cull'] },
      { kind: 'mean is not its sample', key: 'mean', to: times(2), or: ['sampN', 'sampW'] },
      { kind: 'millimetres', key: 'length', to: times(10) },
      { kind: 'nought too many', key: 'mid', to: times(10), or: ['sorted', 'small', 'big'] },
      { kind: 'fish get lighter', key: 'sampW', to: times(0.1), or: ['mean', 'sampN'] },
    ],
  };
}

function cash(draw: Draw): Table {
  let [day, left] = [START + Math.floor(draw.between(0, 300)), to(draw.between(20_000, 60_000), 100)];
  const lines = Array.from({ length: 20 }, (_, i): Line => {
    day += Math.floor(draw.between(0, 3));
    const got = i % 3 === 1 ? to(draw.between(4_000, 20_000), 50) : 0;
    const spent = got ? 0 : to(draw.between(300, 6000), 50);
    left += got - spent;
    const what = got ? draw.pick(['fry', 'fingerlings']) : draw.pick(['feed', 'salt', 'fuel', 'wages']);
    return { date: day, what, inMoney: got || null, outMoney: spent || null, balance: left };
  });
  return {
    keys: ['date', 'what', 'inMoney', 'outMoney', 'balance'],
    lines,
    sums: ['inMoney', 'outMoney'],
    faults: [
      { kind: 'balance', key: 'balance', to: (was) => was + 1000, or: ['inMoney', 'outMoney'] },
      { kind: 'nought too many', key: 'outMoney', to: times(10), or: ['balance'] },
      { kind: 'minus', key: 'inMoney', to: times(-1), or: ['balance'] },
      { kind: 'wrong total', key: '+outMoney', to: (was) => was - 450 },
      { kind: 'month slip', key: 'date', to: (was) => was + 92 },
    ],
  };
}

function treatments(draw: Draw): Table {
  let day = START + Math.floor(draw.between(0, 300));
  const lines = Array.from({ length: 12 }, (_, i): Line => {
    day += 2 + Math.floor(draw.between(0, 5));
    const [litres, ppm] = [draw.pick([400, 600, 1000]), draw.pick([5, 10, 15, 25])];
    const [from, mins] = [day + to(draw.between(7, 15), 0.25) / 24, draw.pick([20, 30, 45, 60])];
    return {
      date: day,
      tank: `V${1 + (i % 4)}`,
      remedy: draw.pick(['salt', 'permanganate', 'formalin']),
      strength: ppm,
      volume: litres,
      remedyG: (ppm * litres) / 1000,
      from,
      till: from + mins / 1440,
      mins,
    };
  });
  return {
    keys: Object.keys(lines[0] ?? {}),
    lines,
    faults: [
      { kind: 'product', key: 'remedyG', to: times(10), or: ['strength', 'volume'] },
      { kind: 'end before start', key: 'till', to: (was) => was - 2 / 24, or: ['from', 'mins'] },
      { kind: 'span', key: 'mins', to: (was) => was + 55, or: ['from', 'till'] },
      { kind: 'no such hour', key: 'from', to: (was) => was, as: 'no hour', or: ['till', 'mins'] },
    ],
  };
}

const MAKERS = [spawning, stock, sales, feeding, water, hormones, sampling, cash, treatments] as const;

// How one book is written.
interface Style {
  readonly tongue: Tongue;
  readonly units: 'bracket' | 'slash' | 'cells' | 'none';
  readonly dates: 'serial' | 'dmy' | 'iso' | 'mdy';
  readonly clocks: 'serial' | 'h' | ':' | 'pm';
  readonly isComma: boolean;
  readonly isTwoRows: boolean;
  readonly title: boolean;
}
const COMMA: ReadonlySet<Tongue> = new Set(['fr', 'pt', 'es', 'id']);
function styleOf(draw: Draw, tongue: Tongue): Style {
  const isEnglish = tongue === 'en' || tongue === 'sw';
  return {
    tongue,
    units: draw.pick(['bracket', 'bracket', 'slash', 'cells', 'none'] as const),
    dates: draw.pick(['serial', 'dmy', 'iso', isEnglish ? 'mdy' : 'dmy'] as const),
    clocks: draw.pick(isEnglish ? (['serial', ':', 'pm'] as const) : (['serial', ':', 'h'] as const)),
    isComma: COMMA.has(tongue) && draw.random() < 0.6,
    isTwoRows: draw.random() < 0.35,
    title: draw.random() < 0.6,
  };
}
const pad = (x: number): string => String(x).padStart(2, '0');
function dateIn(serial: number, style: Style['dates']): [ExampleCell, string?] {
  const d = new Date(Date.UTC(1899, 11, 30) + Math.floor(serial) * 864e5);
  const [y, m, day] = [d.getUTCFullYear(), pad(d.getUTCMonth() + 1), pad(d.getUTCDate())];
  if (style === 'serial') return [Math.floor(serial), 'dd/mm/yyyy'];
  return [style === 'iso' ? `${y}-${m}-${day}` : style === 'dmy' ? `${day}/${m}/${y}` : `${m}/${day}/${y}`];
}
function clockIn(serial: number, style: Style['clocks']): [ExampleCell, string?] {
  const minutes = Math.round((serial % 1) * 1440) % 1440;
  const [h, m] = [Math.floor(minutes / 60), minutes % 60];
  if (style === 'serial') return [minutes / 1440, 'hh:mm'];
  if (style === 'pm') return [`${h % 12 === 0 ? 12 : h % 12}.${pad(m)} ${h < 12 ? 'am' : 'pm'}`];
  return [`${pad(h)}${style}${pad(m)}`];
}
const NO_HOUR: Readonly<Record<Style['clocks'], string>> = {
  serial: '25:70',
  h: '27h80',
  ':': '29:75',
  pm: '31.85 pm',
};
function written(key: string, value: Value, style: Style): [ExampleCell, string?] {
  const { kind, unit, digits = 0 } = thing(key);
  if (typeof value !== 'number') return [value];
  if (kind === 'date') return dateIn(value, style.dates);
  if (kind === 'clock') return clockIn(value, style.clocks);
  if (kind === 'text') return [value];
  const isWhole = digits === 0;
  const number = round(value, digits);
  const isInCells = style.units === 'cells' && unit !== undefined;
  const asText = isWhole
    ? String(number)
    : style.isComma
      ? number.toFixed(digits).replace('.', ',')
      : String(number);
  if (isInCells) return [`${asText}${unit === '%' ? '' : ' '}${unit}`];
  return [style.isComma && !isWhole ? asText : number];
}
function headed(key: string, draw: Draw, { tongue, units }: Style): string {
  const { unit } = thing(key);
  const words = draw.pick(formsOf(key, tongue));
  if (unit === undefined || units === 'cells' || units === 'none') return words;
  return units === 'bracket' ? `${words} (${unit})` : `${words}, ${unit}`;
}

class Leaf extends WrittenSheet implements StrangeSheet {
  readonly columns: StrangeColumn[] = [];
  /** Row of a line and column of a key, table by table. */
  readonly at: {
    readonly row: (line: number, key: string) => number;
    readonly column: (key: string, line: number) => number;
  }[] = [];
  describe(row: number, column: number, key: string): void {
    if (key !== 'note') this.columns.push({ sheet: this.name, row, column, fields: thing(key).is });
  }
}

/** Row by row; answers the first row below. */
function asTable(leaf: Leaf, table: Table, top: number, left: number, draw: Draw, style: Style): number {
  const { keys, lines, sums } = table;
  const unders = keys.map((key) => thing(key).under);
  const hasTwo = style.isTwoRows && unders.some((one, i) => one !== undefined && one === unders[i + 1]);
  const first = top + (hasTwo ? 2 : 1);
  keys.forEach((key, c) => {
    const under = unders[c];
    if (hasTwo && under && under !== unders[c - 1])
      leaf.put(top, left + c, draw.pick(formsOf(under, style.tongue)));
    leaf.put(first - 1, left + c, headed(key, draw, style));
    lines.forEach((line, i) => leaf.put(first + i, left + c, ...written(key, line[key] ?? null, style)));
    leaf.describe(first, left + c, key);
  });
  const foot = first + lines.length;
  if (sums) {
    leaf.put(foot, left, draw.pick(formsOf('total', style.tongue)));
    for (const key of sums) {
      const sum = lines.reduce((total, line) => total + Number(line[key] ?? 0), 0);
      leaf.put(foot, left + keys.indexOf(key), round(sum, 2));
    }
  }
  leaf.at.push({
    row: (line, key) => (key.startsWith('+') ? foot : first + line),
    column: (key) => left + keys.indexOf(key.replace('+', '')),
  });
  return foot + (sums ? 1 : 0);
}

/** One form a run, `across` of them beside each other. */
function asForms(leaf: Leaf, table: Table, top: number, draw: Draw, style: Style, across: number): void {
  const heads = table.keys.map((key) => headed(key, draw, style));
  const tall = table.keys.length + 1;
  const rowOf = (line: number): number => top + tall * Math.floor(line / across);
  const columnOf = (line: number): number => 3 * (line % across);
  table.lines.forEach((line, i) =>
    table.keys.forEach((key, k) => {
      leaf.put(rowOf(i) + k, columnOf(i), heads[k] ?? '');
      leaf.put(rowOf(i) + k, columnOf(i) + 1, ...written(key, line[key] ?? null, style));
      leaf.describe(rowOf(i) + k, columnOf(i) + 1, key);
    }),
  );
  leaf.at.push({
    row: (line, key) => rowOf(line) + table.keys.indexOf(key),
    column: (_, line) => columnOf(line) + 1,
  });
}

/** Deaths by day and vat, days down or across. */
// eslint-disable-next-line complexity -- days down or across at every place
function deaths(draw: Draw, style: Style, seed: number): Kept {
  const leaf = new Leaf('1');
  const [days, vats, isAcross] = [14, 4 + (seed % 3), seed % 2 === 1];
  leaf.put(0, 0, draw.pick(formsOf('deaths', style.tongue)));
  const place = (day: number, vat: number): [number, number] =>
    isAcross ? [3 + vat, 1 + day] : [3 + day, 1 + vat];
  const sums = Array.from({ length: days }, () => 0);
  const foot = Array.from({ length: vats }, () => 0);
  leaf.put(2, 0, draw.pick(formsOf(isAcross ? 'tank' : 'date', style.tongue)));
  for (let day = 0; day < days; day++) {
    const [cell, format] = dateIn(START + 40 + day, style.dates);
    leaf.put(isAcross ? 2 : 3 + day, isAcross ? 1 + day : 0, cell, format);
    for (let vat = 0; vat < vats; vat++) {
      leaf.put(isAcross ? 3 + vat : 2, isAcross ? 0 : 1 + vat, `${draw.pick(['V'])}${vat + 1}`);
      const dead = Math.floor(draw.between(0, 4) * draw.between(1, 8));
      leaf.put(...place(day, vat), dead);
      sums[day] = (sums[day] ?? 0) + dead;
      foot[vat] = (foot[vat] ?? 0) + dead;
    }
  }
  const total = draw.pick(formsOf('total', style.tongue));
  const [endRow, endColumn] = [3 + (isAcross ? vats : days), 1 + (isAcross ? days : vats)];
  leaf.put(endRow, 0, total);
  leaf.put(2, endColumn, total);
  (isAcross ? foot : sums).forEach((sum, i) => leaf.put(3 + i, endColumn, sum));
  (isAcross ? sums : foot).forEach((sum, i) => leaf.put(endRow, 1 + i, sum));
  const width = isAcross ? days : vats;
  for (let c = 0; c < width; c++) leaf.columns.push({ sheet: '1', row: 3, column: 1 + c, fields: ['dead'] });
  leaf.columns.push({ sheet: '1', row: 3, column: endColumn, fields: ['deadTotal', 'dead'] });
  leaf.columns.push({ sheet: '1', row: 3, column: 0, fields: [isAcross ? 'vat' : 'date'] });
  const spoil = (
    kind: string,
    at: readonly [number, number],
    cell: (was: number) => ExampleCell,
    or: (readonly [number, number])[],
  ): Spoilt => ({
    kind,
    leaf: 0,
    cells: [at, ...or],
    write: () => leaf.put(...at, cell(Number(leaf.cells[at[0]]?.[at[1]] ?? 0))),
  });
  const [day, vat] = [5 + (seed % 5), 1 + (seed % 3)];
  const at = place(day, vat);
  return {
    name: `deaths ${style.tongue}`,
    leaves: [leaf],
    faults: [
      spoil('wrong total', [3 + 2, endColumn], (was) => was + 10, []),
      spoil('wrong foot', [endRow, 2], (was) => was + 100, []),
      spoil('noughts', at, (was) => (was + 7) * 100, [
        [at[0], endColumn],
        [endRow, at[1]],
      ]),
      spoil('minus', at, (was) => -was - 3, [
        [at[0], endColumn],
        [endRow, at[1]],
      ]),
    ],
  };
}

interface Spoilt {
  readonly kind: string;
  readonly leaf: number;
  readonly cells: readonly (readonly [number, number])[];
  readonly write: () => void;
}
interface Kept {
  readonly name: string;
  readonly leaves: readonly Leaf[];
  readonly faults: readonly Spoilt[];
}

function spoilts(
  leaf: Leaf,
  leafIndex: number,
  at: number,
  table: Table,
  draw: Draw,
  style: Style,
): Spoilt[] {
  const where = leaf.at[at];
  if (!where) return [];
  return table.faults.flatMap((fault): Spoilt[] => {
    const { key, or = [] } = fault;
    if (!table.keys.includes(key.replace('+', ''))) return [];
    const full = table.lines.flatMap((line, i) =>
      i > 2 && i < table.lines.length - 1 && line[key.replace('+', '')] ? [i] : [],
    );
    const line = draw.pick(full);
    const spot = (one: string): readonly [number, number] => [where.row(line, one), where.column(one, line)];
    const others = fault.copies
      ? table.keys.map(spot)
      : or.filter((one) => table.keys.includes(one)).map(spot);
    return [
      {
        kind: fault.kind,
        leaf: leafIndex,
        cells: [spot(key), ...others],
        write: () => write(leaf, table, fault, line, spot, style),
      },
    ];
  });
}
function write(
  leaf: Leaf,
  table: Table,
  fault: Fault,
  line: number,
  spot: (key: string) => readonly [number, number],
  style: Style,
): void {
  const { key } = fault;
  const values = table.lines[line] ?? {};
  if (fault.copies) {
    const above = table.lines[line - 1] ?? {};
    for (const one of table.keys)
      if (one !== 'run') leaf.put(...spot(one), ...written(one, above[one] ?? null, style));
  } else if (fault.as) leaf.put(...spot(key), NO_HOUR[style.clocks]);
  else if (key.startsWith('+')) {
    const [row, column] = spot(key);
    leaf.put(row, column, fault.to(Number((leaf.cells[row]?.[column] ?? 0) as Cell), values));
  } else leaf.put(...spot(key), ...written(key, fault.to(Number(values[key] ?? 0), values), style));
}

const BOOKS = 20;
/** Book `b` of a seed: two tables of different kinds, or a matrix, each time in the next language and layout. */
// eslint-disable-next-line complexity -- the layouts in turn
function make(seed: number, b: number): Kept {
  const draw = drawer(seed * 31 + 7 * b + 1);
  const tongue = LANGUAGES[(b + seed) % LANGUAGES.length] ?? 'en';
  const style = styleOf(draw, tongue);
  if (b % 10 === 9) return deaths(draw, style, seed + b);
  const [one, two] = [MAKERS[b % MAKERS.length] ?? spawning, MAKERS[(b + 4 + seed) % MAKERS.length] ?? stock];
  const tables = [one(draw), two(draw)] as const;
  const leaf = new Leaf('1');
  const top = style.title ? 2 : 0;
  if (style.title) leaf.put(0, 0, draw.pick(['2025', 'No. 4', 'III']));
  const other = new Leaf('2');
  const isForm = (table: Table): boolean => 'kg' in (table.lines[0] ?? {}) && draw.random() < 0.5;
  const isBeside = b % 3 === 1;
  if (isForm(tables[0])) {
    asForms(leaf, tables[0], top, draw, style, draw.pick([1, 2]));
    asTable(other, tables[1], 0, 0, draw, style);
  } else {
    const below = asTable(leaf, tables[0], top, 0, draw, style);
    if (isBeside) asTable(leaf, tables[1], top, tables[0].keys.length + 1, draw, style);
    else if (b % 3 === 0) asTable(leaf, tables[1], below + 2, 0, draw, style);
    else asTable(other, tables[1], 1, 1, draw, style);
  }
  const isApart = other.cells.length > 0;
  return {
    name: `${one.name}+${two.name} ${tongue} ${style.units} ${style.dates} ${style.clocks}${style.isTwoRows ? ' two rows' : ''}${isBeside && !isApart ? ' beside' : ''}`,
    leaves: isApart ? [leaf, other] : [leaf],
    faults: [
      ...spoilts(leaf, 0, 0, tables[0], draw, style),
      ...(isApart
        ? spoilts(other, 1, 0, tables[1], draw, style)
        : spoilts(leaf, 0, 1, tables[1], draw, style)),
    ],
  };
}

const bookOf = ({ name, leaves }: Kept): StrangeBook => ({
  name,
  sheets: leaves,
  columns: leaves.flatMap(({ columns }) => columns),
});
export const cleanWider = (seed: number): StrangeBook[] =>
  Array.from({ length: BOOKS }, (_, b) => bookOf(make(seed, b)));

/** One fault a book, `each` of every book. */
export const spoiltWider = (seed: number, each: number): StrangeBook[] =>
  Array.from({ length: BOOKS }, (_, b) => b).flatMap((b) =>
    make(seed, b).faults.flatMap((_, f): StrangeBook[] => {
      if ((f + b + seed) % 4 >= each) return [];
      const kept = make(seed, b);
      const fault = kept.faults[f];
      const leaf = fault && kept.leaves[fault.leaf];
      if (!fault || !leaf) return [];
      fault.write();
      return [{ ...bookOf(kept), fault: { kind: fault.kind, sheet: leaf.name, cells: fault.cells } }];
    }),
  );
