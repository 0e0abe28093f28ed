// Long: eleven kinds of table, a function each
/**
 * What registers hold, by seed: spawnings female by female, injections, stock by the week, sales with deposits, meals
 * of the day, temperatures of morning and evening, buffer, samples, sorting, cash, eggs to larvae; and what is spoilt
 * in them. Numbers from simple biology with scatter; the code under test has no part in them.
 */
import type { FieldName } from '../../../shared/records/fields';
import type { Draw } from '../../records/support/farm';
import { round } from '../../records/support/farm';

export type Kind = 'date' | 'clock' | 'number' | 'share' | 'text';
export type Under = 'Brood' | 'Injection' | 'Eggs' | 'Result' | 'Water' | 'Money' | 'Fish' | 'Feed' | 'Sizes';
/** One thing written down: what it may be read as, how it is written, in which unit. */
export interface Thing {
  readonly is: readonly FieldName[];
  readonly kind: Kind;
  readonly unit?: string;
  readonly digits?: number;
  readonly under?: Under;
}
const n = (is: FieldName | readonly FieldName[], unit?: string, digits = 0, under?: Under): Thing => ({
  is: typeof is === 'string' ? [is] : is,
  kind: unit === '%' ? 'share' : 'number',
  digits,
  ...(unit === undefined ? {} : { unit }),
  ...(under ? { under } : {}),
});
const t = (...is: FieldName[]): Thing => ({ is, kind: 'text' });
const clock = (...is: FieldName[]): Thing => ({ is, kind: 'clock' });
const THINGS: Readonly<Record<string, Thing>> = {
  run: t('run', 'serial'),
  date: { is: ['date', 'injectedOn'], kind: 'date' },
  female: { ...t('female'), under: 'Brood' },
  kg: n('femaleWeight', 'kg', 2, 'Brood'),
  after: n('femaleAfter', 'kg', 2, 'Brood'),
  rate: n('hormoneDose', 'ml/kg', 1, 'Injection'),
  dose: n('hormoneVolume', 'ml', 2, 'Injection'),
  product: { ...t('preparation'), under: 'Injection' },
  in: clock('injected', 'clock'),
  out: clock('stripped'),
  hours: n('latency', 'h', 2),
  temp: n('temperature', '°C', 1),
  grams: n('eggWeight', 'g', 0, 'Eggs'),
  perGram: n('eggsPerGram', undefined, 0, 'Eggs'),
  eggs: n('eggs', undefined, 0, 'Eggs'),
  white: n('eggsDead', undefined, 0, 'Eggs'),
  fert: n('fertilisedShare', '%', 1, 'Result'),
  hatched: n('hatched', undefined, 0, 'Result'),
  hatchp: n('hatchShare', '%', 1, 'Result'),
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
  ration: n('ration', '%', 1, 'Feed'),
  feed: n('feed', 'g', 0, 'Feed'),
  meal1: n('feed', 'g', 0, 'Feed'),
  meal2: n('feed', 'g', 0, 'Feed'),
  meal3: n('feed', 'g', 0, 'Feed'),
  feedAll: n(['feedTotal', 'feed'], 'g', 0, 'Feed'),
  tlow: n(['temperatureLow', 'temperature'], '°C', 1, 'Water'),
  thigh: n(['temperatureHigh', 'temperature'], '°C', 1, 'Water'),
  oxygen: n('oxygen', 'mg/l', 1, 'Water'),
  ph1: n('ph', undefined, 1, 'Water'),
  soda: n('materialDose', 'g'),
  volume: n('volume', 'l', 0, 'Water'),
  ph2: n('phAfter', undefined, 1, 'Water'),
  ammonia: n('ammonia', 'mg/l', 2, 'Water'),
  sampN: n('sampleCount'),
  sampW: n('sampleWeight', 'g', 1),
  length: n('length', 'cm', 1, 'Fish'),
  small: n('gradeSmall', undefined, 0, 'Sizes'),
  mid: n('gradeMiddle', undefined, 0, 'Sizes'),
  big: n('gradeBig', undefined, 0, 'Sizes'),
  sorted: n('graded', undefined, 0, 'Sizes'),
  what: t('description'),
  inMoney: n('income', undefined, 2, 'Money'),
  outMoney: n('expense', undefined, 2, 'Money'),
  balance: n('balance', undefined, 2, 'Money'),
  note: t('note'),
};
export const thing = (key: string): Thing => THINGS[key] ?? t('note');

export type Value = number | string | null;
export type Line = Record<string, Value>;
export interface Fault {
  readonly kind: string;
  readonly key: string;
  readonly to: (was: number, line: Line) => Value;
  readonly or?: readonly string[];
  /** An hour no clock shows, in the book's own way of writing. */
  readonly isNoHour?: true;
  /** The line above stands again: all of it, or this cell only. */
  readonly copies?: 'line' | 'cells';
  /** These two keys change places. */
  readonly swaps?: string;
}
export interface Table {
  readonly name: string;
  readonly keys: readonly string[];
  readonly lines: Line[];
  readonly sums?: readonly string[];
  readonly faults: readonly Fault[];
}
const times = (x: number) => (was: number) => was * x;
const less = (x: number) => (was: number) => was - x;
const more = (x: number) => (was: number) => was + x;
const kept = (was: number): number => was;
const to = (x: number, step: number): number => round(Math.round(x / step) * step, 6);
const whole = (draw: Draw, a: number, b: number): number => Math.floor(draw.between(a, b + 1));
/** Two digits beside each other turned round, the first two that differ. */
const turned = (x: number): number => {
  const digits = [...String(Math.round(x))];
  const i = digits.findIndex((one, at) => at > 0 && one !== digits[at - 1] && digits[at - 1] !== '0');
  if (i < 1 || digits[i] === '0') return x * 3;
  [digits[i - 1], digits[i]] = [digits[i] ?? '', digits[i - 1] ?? ''];
  return Number(digits.join(''));
};
const firstDay = (draw: Draw): number => 45_400 + whole(draw, 0, 500);

/** African catfish: hours by degree-hours over 15.4 °C (Okere et al. 2015, 108 to 132). */
export function pressing(draw: Draw): Table {
  const [degreeHours, per, rate] = [
    draw.between(108, 130),
    draw.between(610, 730),
    draw.pick([0.4, 0.5, 0.6, 0.8]),
  ];
  let day = firstDay(draw);
  const start = whole(draw, 1, 40);
  const lines = Array.from({ length: whole(draw, 10, 20) }, (_, i): Line => {
    day += whole(draw, 2, 7);
    const kg = round(draw.between(0.8, 3.4), 2);
    const temp = round(draw.bell(26.8, 0.9), 1);
    const [begun, hours] = [
      day + to(draw.between(17, 22.5), 0.25) / 24,
      to((degreeHours * draw.bell(1, 0.03)) / (temp - 15.4), 0.25),
    ];
    const grams = Math.round(kg * 1000 * draw.between(0.08, 0.17));
    const perGram = to(per * draw.bell(1, 0.03), 5);
    const eggs = grams * perGram;
    const [fert, hatchp] = [round(draw.bell(78, 6), 1), round(draw.bell(68, 6), 1)];
    const hatched = to((eggs * fert * hatchp) / 10_000, 100);
    return {
      run: start + i,
      date: day,
      female: `${draw.pick(['F', 'M', 'B'])}-${10 + 2 * i}`,
      kg,
      after: round(kg - grams / 1000 - draw.between(0.01, 0.05), 2),
      product: draw.pick(['pituitary', 'pituitary', 'extract']),
      rate,
      dose: round(kg * rate, 2),
      in: begun,
      out: begun + hours / 24,
      hours,
      temp,
      grams,
      perGram,
      eggs,
      fert,
      hatched,
      fry: to(hatched * draw.between(0.6, 0.82), 100),
      note: i % 5 === 2 ? 'ok' : null,
    };
  });
  const spare = ['female', 'after', 'rate', 'product', 'hours', 'temp', 'fert', 'fry', 'note'].filter(
    () => draw.random() < 0.4,
  );
  return {
    name: 'pressing',
    keys: Object.keys(lines[0] ?? {}).filter((key) => !spare.includes(key)),
    lines,
    sums: draw.random() < 0.5 ? ['grams', 'eggs', 'hatched'] : [],
    faults: [
      { kind: 'dose against weight', key: 'dose', to: times(5), or: ['kg', 'rate'] },
      { kind: 'impossible hour', key: 'in', to: kept, isNoHour: true, or: ['out', 'hours'] },
      { kind: 'am for pm', key: 'out', to: more(0.5), or: ['in', 'hours'] },
      { kind: 'product mismatch', key: 'eggs', to: turned, or: ['grams', 'perGram'] },
      { kind: 'extra nought', key: 'hatched', to: times(10), or: ['eggs', 'fry', 'fert', '+hatched'] },
      { kind: 'unit', key: 'kg', to: times(1000), or: ['dose', 'rate', 'after', 'grams'] },
      { kind: 'impossible share', key: 'fert', to: more(60) },
      { kind: 'Fahrenheit', key: 'temp', to: (was) => round(was * 1.8 + 32, 1), or: ['hours'] },
      { kind: 'mark lost', key: 'kg', to: times(10), or: ['dose', 'rate', 'after', 'grams'] },
      { kind: 'wrong year', key: 'date', to: less(365) },
      { kind: 'wrong total', key: '+grams', to: more(300) },
      { kind: 'line above again', key: 'grams', to: kept, copies: 'line' },
      { kind: 'more fry than larvae', key: 'fry', to: times(3), or: ['hatched'] },
    ],
  };
}

/** Eggs set and what came of them. */
export function incubating(draw: Draw): Table {
  let day = firstDay(draw);
  const lines = Array.from({ length: whole(draw, 9, 14) }, (_, i): Line => {
    day += whole(draw, 3, 6);
    const eggs = to(draw.between(40_000, 180_000), 500);
    const white = to(eggs * draw.between(0.15, 0.3), 100);
    const hatchp = round(draw.bell(52, 5), 1);
    const hatched = to((eggs * hatchp) / 100, 100);
    return {
      run: i + 1,
      date: day,
      tank: `${draw.pick(['B', 'N'])}${1 + (i % 4)}`,
      eggs,
      white,
      hatched,
      hatchp: round((100 * hatched) / eggs, 1),
      fry: to(hatched * draw.between(0.65, 0.85), 100),
    };
  });
  return {
    name: 'incubating',
    keys: Object.keys(lines[0] ?? {}).filter((key) => key !== 'white' || draw.random() < 0.6),
    lines,
    sums: ['eggs', 'hatched', 'fry'],
    faults: [
      { kind: 'share is not its counts', key: 'hatchp', to: less(21), or: ['eggs', 'hatched'] },
      {
        kind: 'more out than in',
        key: 'hatched',
        to: times(4),
        or: ['eggs', 'hatchp', 'fry', '+hatched'],
      },
      { kind: 'wrong total', key: '+hatched', to: more(20_000) },
      { kind: 'minus', key: 'fry', to: times(-1), or: ['hatched', '+fry'] },
      { kind: 'a word', key: 'hatched', to: () => '4l 2OO', or: ['hatchp'] },
      { kind: 'swapped', key: 'hatched', to: kept, swaps: 'fry', or: ['fry'] },
    ],
  };
}

export function weekly(draw: Draw): Table {
  let [open, day] = [to(draw.between(8_000, 50_000), 100), firstDay(draw)];
  const step = draw.pick([1, 7]);
  const lines = Array.from({ length: whole(draw, 12, 20) }, (_, i): Line => {
    const ins = i % 7 === 3 ? to(draw.between(500, 4000), 50) : 0;
    const sold = i > 3 && i % 3 === 1 ? to(draw.between(200, 1200), 50) : 0;
    const outs = i % 6 === 5 ? to(draw.between(200, 900), 50) : 0;
    const dead = whole(draw, 3, 80);
    const line = { date: day, open, ins, dead, outs, sold, close: open + ins - dead - outs - sold };
    open = line.close;
    day += step;
    return line;
  });
  return {
    name: 'weekly',
    keys: ['date', 'open', 'ins', 'dead', 'outs', 'sold', 'close'],
    lines,
    sums: draw.random() < 0.6 ? ['ins', 'dead', 'sold'] : [],
    faults: [
      { kind: 'ledger', key: 'close', to: more(600), or: ['open', 'ins', 'dead', 'outs', 'sold'] },
      { kind: 'minus', key: 'dead', to: times(-1), or: ['open', 'close', '+dead'] },
      {
        kind: 'oversold',
        key: 'sold',
        to: (_, line) => Number(line.open) + 900,
        or: ['open', 'close', '+sold'],
      },
      { kind: 'wrong total', key: '+dead', to: more(70) },
      { kind: 'wrong month', key: 'date', to: less(61) },
      { kind: 'extra nought', key: 'dead', to: times(100), or: ['open', 'close', '+dead'] },
    ],
  };
}

export function selling(draw: Draw): Table {
  let day = firstDay(draw);
  const each = draw.pick([0.2, 10, 30, 50, 500]);
  const first = whole(draw, 100, 700);
  const lines = Array.from({ length: whole(draw, 12, 22) }, (_, i): Line => {
    day += whole(draw, 0, 4);
    const [count, price] = [to(draw.between(100, 2500), 50), round(each * draw.pick([1, 1, 1, 1.2]), 2)];
    const amount = round(count * price, 2);
    const paid = draw.random() < 0.6 ? amount : to(amount * draw.between(0.3, 0.7), each < 1 ? 1 : 50);
    return {
      date: day,
      receipt: first + i,
      buyer: draw.pick(['Buyer A', 'Buyer B', 'Buyer C', 'Buyer D', 'Buyer E', 'Buyer F', 'Buyer G']),
      n: count,
      price,
      amount,
      paid,
      due: round(amount - paid, 2),
    };
  });
  return {
    name: 'selling',
    keys: Object.keys(lines[0] ?? {}).filter((key) => key !== 'receipt' || draw.random() < 0.7),
    lines,
    sums: ['n', 'amount', 'paid'],
    faults: [
      { kind: 'product mismatch', key: 'amount', to: turned, or: ['n', 'price', 'paid', 'due', '+amount'] },
      { kind: 'owed', key: 'due', to: more(444), or: ['amount', 'paid'] },
      { kind: 'wrong total', key: '+n', to: more(1000) },
      { kind: 'number again', key: 'receipt', to: less(1) },
      { kind: 'price', key: 'price', to: times(100), or: ['amount', 'n'] },
      { kind: 'a word', key: 'n', to: () => '5oo', or: ['amount'] },
      { kind: 'wrong year', key: 'date', to: more(365) },
      { kind: 'line above again', key: 'n', to: kept, copies: 'line' },
    ],
  };
}

export function meals(draw: Draw): Table {
  let [day, grams] = [firstDay(draw), draw.between(150, 400)];
  const lines = Array.from({ length: whole(draw, 12, 18) }, (): Line => {
    day += 1;
    grams *= draw.between(1.01, 1.06);
    const [meal1, meal2, meal3] = [0.35, 0.3, 0.35].map((part) =>
      to(grams * part * draw.between(0.9, 1.1), 5),
    );
    return {
      date: day,
      meal1: meal1 ?? 0,
      meal2: meal2 ?? 0,
      meal3: meal3 ?? 0,
      feedAll: (meal1 ?? 0) + (meal2 ?? 0) + (meal3 ?? 0),
      dead: whole(draw, 0, 25),
      tlow: round(draw.bell(25.4, 0.5), 1),
      thigh: round(draw.bell(28, 0.6), 1),
    };
  });
  return {
    name: 'meals',
    keys: Object.keys(lines[0] ?? {}),
    lines,
    sums: draw.random() < 0.5 ? ['feedAll', 'dead'] : [],
    faults: [
      { kind: 'sum', key: 'feedAll', to: more(120), or: ['meal1', 'meal2', 'meal3', '+feedAll'] },
      { kind: 'extra nought', key: 'meal2', to: times(10), or: ['feedAll', 'meal1', 'meal3'] },
      { kind: 'Fahrenheit', key: 'thigh', to: (was) => round(was * 1.8 + 32, 1), or: ['tlow'] },
      { kind: 'mark lost', key: 'tlow', to: times(10), or: ['thigh'] },
      { kind: 'wrong month', key: 'date', to: more(59) },
      { kind: 'minus', key: 'dead', to: (was) => -was - 1, or: ['+dead'] },
    ],
  };
}

export function feeding(draw: Draw): Table {
  let [day, count, grams] = [firstDay(draw), to(draw.between(3000, 9000), 10), draw.between(0.5, 2)];
  const tank = draw.pick(['3', 'C', 'N2']);
  const lines = Array.from({ length: whole(draw, 10, 14) }, (_, i): Line => {
    day += 4;
    count -= whole(draw, 4, 70);
    grams *= draw.between(1.15, 1.28);
    const mean = round(grams, 2);
    const [biomass, ration] = [round((count * mean) / 1000, 2), i < 5 ? 8 : 5];
    return {
      date: day,
      tank,
      fishN: count,
      mean,
      biomass,
      ration,
      feed: Math.round(biomass * ration * 10),
    };
  });
  return {
    name: 'feeding',
    keys: Object.keys(lines[0] ?? {}).filter((key) => key !== 'tank' || draw.random() < 0.5),
    lines,
    faults: [
      { kind: 'feed against biomass', key: 'feed', to: times(10), or: ['biomass', 'ration'] },
      { kind: 'product mismatch', key: 'biomass', to: times(1.6), or: ['fishN', 'mean', 'feed'] },
      { kind: 'weight falls', key: 'mean', to: times(0.3), or: ['biomass', 'fishN'] },
      { kind: 'extra nought', key: 'fishN', to: times(10), or: ['biomass', 'mean'] },
      { kind: 'mark lost', key: 'ration', to: times(10), or: ['feed', 'biomass'] },
    ],
  };
}

export function buffering(draw: Draw): Table {
  let day = firstDay(draw);
  const litres = draw.pick([500, 1000, 1500]);
  const lines = Array.from({ length: whole(draw, 14, 20) }, (_, i): Line => {
    day += i % 2;
    const low = round(draw.between(5.6, 6.5), 1);
    const soda = to(litres * draw.between(0.03, 0.06), 1);
    // A rough share of a carbonate balance: the logarithm of what was put to what was there (Stumm and Morgan).
    const rise = Math.log10(1 + soda / litres / 0.03) * 1.2;
    return {
      date: day,
      tank: `${draw.pick(['V', 'V'])}${1 + (i % 2)}`,
      tlow: round(draw.bell(25.6, 0.5), 1),
      thigh: round(draw.bell(28.2, 0.6), 1),
      oxygen: round(draw.bell(5.2, 0.5), 1),
      ph1: low,
      soda,
      volume: litres,
      ph2: round(low + rise, 1),
      ammonia: round(draw.between(0.05, 0.5), 2),
    };
  });
  return {
    name: 'buffering',
    keys: Object.keys(lines[0] ?? {}).filter(
      (key) => !['ammonia', 'oxygen', 'tank'].includes(key) || draw.random() < 0.7,
    ),
    lines,
    faults: [
      { kind: 'pH against dose', key: 'ph2', to: () => 10.8, or: ['ph1', 'soda'] },
      { kind: 'mark lost', key: 'ph1', to: times(10), or: ['ph2'] },
      { kind: 'Fahrenheit', key: 'thigh', to: (was) => round(was * 1.8 + 32, 1), or: ['tlow'] },
      { kind: 'mark lost', key: 'oxygen', to: times(10) },
      { kind: 'wrong month', key: 'date', to: more(61) },
      { kind: 'unit', key: 'soda', to: times(0.001), or: ['ph1', 'ph2', 'volume'] },
    ],
  };
}

export function injecting(draw: Draw): Table {
  let day = firstDay(draw);
  const rate = draw.pick([0.4, 0.5, 0.6]);
  const lines = Array.from({ length: whole(draw, 10, 16) }, (_, i): Line => {
    day += i % 3 === 0 ? 4 : 0;
    const kg = round(draw.between(0.8, 3.2), 2);
    return {
      date: day,
      female: `K${i + 21}`,
      kg,
      product: 'pituitary',
      rate,
      dose: round(kg * rate, 2),
      in: day + to(draw.between(17.5, 22), 0.25) / 24,
      note: null,
    };
  });
  return {
    name: 'injecting',
    keys: Object.keys(lines[0] ?? {}).filter((key) => key !== 'rate' || draw.random() < 0.5),
    lines,
    faults: [
      { kind: 'dose against weight', key: 'dose', to: times(4), or: ['kg', 'rate'] },
      { kind: 'nought lost', key: 'kg', to: (was) => round(was / 10, 2), or: ['dose', 'rate'] },
      { kind: 'impossible hour', key: 'in', to: kept, isNoHour: true },
      { kind: 'wrong year', key: 'date', to: less(365) },
      { kind: 'copied down', key: 'kg', to: kept, copies: 'cells', or: ['dose', 'rate'] },
    ],
  };
}

export function sampling(draw: Draw): Table {
  let [day, grams] = [firstDay(draw), draw.between(0.4, 1.2)];
  const lines = Array.from({ length: whole(draw, 9, 13) }, (): Line => {
    day += 5;
    grams *= draw.between(1.25, 1.4);
    const [count, mean] = [to(draw.between(20, 60), 5), round(grams, 2)];
    return {
      date: day,
      sampN: count,
      sampW: round(count * mean, 1),
      mean,
      length: round(4.7 * Math.cbrt(mean), 1),
    };
  });
  return {
    name: 'sampling',
    keys: Object.keys(lines[0] ?? {}),
    lines,
    faults: [
      { kind: 'mean is not its sample', key: 'mean', to: times(2), or: ['sampN', 'sampW'] },
      { kind: 'unit', key: 'length', to: times(10), or: ['mean'] },
      { kind: 'weight falls', key: 'sampW', to: times(0.1), or: ['mean', 'sampN'] },
    ],
  };
}

export function sorting(draw: Draw): Table {
  let day = firstDay(draw);
  const lines = Array.from({ length: whole(draw, 9, 13) }, (_, i): Line => {
    day += 3;
    const [small = 0, mid = 0, big = 0] = [1800, 4200, 700].map((x) =>
      Math.round(x * draw.between(0.7, 1.3)),
    );
    return { date: day, tank: `${1 + (i % 5)}`, small, mid, big, sorted: small + mid + big };
  });
  return {
    name: 'sorting',
    keys: Object.keys(lines[0] ?? {}),
    lines,
    sums: ['small', 'mid', 'big', 'sorted'],
    faults: [
      { kind: 'sum', key: 'sorted', to: more(700), or: ['small', 'mid', 'big', '+sorted'] },
      { kind: 'extra nought', key: 'mid', to: times(10), or: ['sorted', 'small', 'big', '+mid'] },
      { kind: 'wrong total', key: '+big', to: more(90), or: ['+sorted'] },
      { kind: 'minus', key: 'small', to: times(-1), or: ['sorted', '+small'] },
    ],
  };
}

export function cash(draw: Draw): Table {
  let [day, left] = [firstDay(draw), to(draw.between(20_000, 80_000), 100)];
  const lines = Array.from({ length: whole(draw, 14, 22) }, (_, i): Line => {
    day += whole(draw, 0, 3);
    const got = i % 3 === 1 ? to(draw.between(3_000, 25_000), 50) : 0;
    const spent = got ? 0 : to(draw.between(300, 6000), 50);
    left += got - spent;
    const what = got ? draw.pick(['fry', 'juveniles']) : draw.pick(['feed', 'salt', 'diesel', 'pay']);
    return { date: day, what, inMoney: got || null, outMoney: spent || null, balance: left };
  });
  return {
    name: 'cash',
    keys: Object.keys(lines[0] ?? {}),
    lines,
    sums: ['inMoney', 'outMoney'],
    faults: [
      { kind: 'running total', key: 'balance', to: turned, or: ['inMoney', 'outMoney'] },
      { kind: 'extra nought', key: 'outMoney', to: times(10), or: ['balance', '+outMoney'] },
      { kind: 'wrong total', key: '+inMoney', to: more(900) },
      { kind: 'wrong month', key: 'date', to: more(92) },
    ],
  };
}
