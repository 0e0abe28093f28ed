// Long: ten books, one function each
/**
 * Ten record books in six languages, as different hands keep them: abbreviations, two header rows, units in
 * brackets, dates in three orders, doses in IU and mg, vats called 1, 2, 3, sums on another sheet. Written before the
 * rules were tried on them; what every column means and which cell was spoilt is known because they were made.
 * Headings are from memory of how such books are kept; common practice, no source.
 */
import type { Cell } from '../../../shared/base/values';
import type { FieldName } from '../../../shared/records/fields';
import type { ExampleCell } from '../../../shared/records/rules/rule';
import type { Draw } from '../../records/support/farm';
import { drawer, round } from '../../records/support/farm';
import type { StrangeBook, StrangeColumn, StrangeSheet } from './strangers';
import { WrittenSheet } from './writtenSheet';

type Line = Readonly<Record<string, number>>;
interface Column {
  readonly key: string;
  readonly head: string | readonly string[];
  readonly is: readonly FieldName[];
  readonly cell: (line: Line, i: number) => ExampleCell;
  readonly format?: string;
}
interface Spoilt {
  readonly kind: string;
  readonly at: string;
  readonly to: (was: Cell) => ExampleCell;
  /** Columns of the same line a finding may name instead. */
  readonly or?: readonly string[];
  /** Line of the table; without it any. */
  readonly line?: number;
}

class Leaf extends WrittenSheet implements StrangeSheet {
  readonly columns: StrangeColumn[] = [];
  /** First cell of each column by its key. */
  readonly at = new Map<string, readonly [row: number, column: number, rows: number]>();
  text(row: number, ...cells: ExampleCell[]): void {
    cells.forEach((cell, i) => this.put(row, i, cell));
  }
  table(top: number, left: number, columns: readonly Column[], lines: readonly Line[]): number {
    const heads = Math.max(...columns.map(({ head }) => (typeof head === 'string' ? 1 : head.length)));
    columns.forEach(({ key, head, is, cell, format }, c) => {
      const words = typeof head === 'string' ? [...Array<string>(heads - 1).fill(''), head] : head;
      words.forEach((word, h) => this.put(top + h, left + c, word === '' ? null : word));
      lines.forEach((line, i) => this.put(top + heads + i, left + c, cell(line, i), format));
      if (is.length > 0)
        this.columns.push({ sheet: this.name, row: top + heads, column: left + c, fields: is });
      this.at.set(key, [top + heads, left + c, lines.length]);
    });
    return top + heads + lines.length;
  }
  /** A line of a form: what stands left, and what beside it. */
  field(
    row: number,
    column: number,
    key: string,
    label: string,
    is: readonly FieldName[],
    cell: ExampleCell,
    format?: string,
  ): void {
    this.put(row, column, label);
    this.put(row, column + 1, cell, format);
    this.columns.push({ sheet: this.name, row, column: column + 1, fields: is });
    this.at.set(key, [row, column + 1, 1]);
  }
}

interface Kept {
  readonly name: string;
  readonly leaves: readonly Leaf[];
  readonly faults: readonly Spoilt[];
}

const pad = (n: number): string => String(n).padStart(2, '0');
const clock = (serial: number, mark: string): string => {
  const minutes = Math.round((serial % 1) * 1440) % 1440;
  return `${pad(Math.floor(minutes / 60))}${mark}${pad(minutes % 60)}`;
};
const dayOf = (serial: number): Date => new Date(Date.UTC(1899, 11, 30) + Math.floor(serial) * 864e5);
const dmy = (serial: number, mark = '/'): string => {
  const d = dayOf(serial);
  return [pad(d.getUTCDate()), pad(d.getUTCMonth() + 1), d.getUTCFullYear()].join(mark);
};
const mdy = (serial: number): string => {
  const d = dayOf(serial);
  return `${d.getUTCMonth() + 1}/${d.getUTCDate()}/${d.getUTCFullYear()}`;
};
const MESES = ['ene', 'feb', 'mar', 'abr', 'may', 'jun', 'jul', 'ago', 'sep', 'oct', 'nov', 'dic'];
const dMes = (serial: number): string => {
  const d = dayOf(serial);
  return `${d.getUTCDate()}-${MESES[d.getUTCMonth()] ?? ''}-${String(d.getUTCFullYear()).slice(2)}`;
};
const comma = (x: number, digits: number): string => x.toFixed(digits).replace('.', ',');
const grouped = (x: number, mark: string): string => String(Math.round(x)).replace(/\B(?=(\d{3})+$)/g, mark);
const to = (x: number, step: number): number => Math.round(x / step) * step;
const DMY = 'dd/mm/yyyy';
const HM = 'hh:mm';
const num = (key: string) => (line: Line) => line[key] ?? null;

/** Spawnings of African catfish: hours by degree-hours over 15.4 °C (Okere et al. 2015, 108 to 132). */
function spawnings(
  draw: Draw,
  n: number,
  extra: (line: Record<string, number>, i: number) => void = () => undefined,
): Line[] {
  let day = 45_400 + Math.floor(draw.between(0, 500));
  const farm = draw.between(106, 128);
  const per = draw.between(600, 740);
  return Array.from({ length: n }, (_, i) => {
    day += 3 + Math.floor(draw.between(0, 8));
    const temp = round(draw.bell(26.6, 0.9), 1);
    const kg = round(draw.between(0.9, 3.2), 2);
    const injected = day + to(draw.between(18.5, 22.5), 0.25) / 24;
    const hours = to((farm * draw.bell(1, 0.04)) / (temp - 15.4), 0.25);
    const grams = Math.round(kg * 1000 * draw.between(0.09, 0.16));
    const perGram = to(per * draw.bell(1, 0.03), 5);
    const eggs = to(grams * perGram, 100);
    const fert = Math.round(draw.bell(80, 6));
    const hatch = Math.round(draw.bell(68, 8));
    const hatched = to((eggs * fert * hatch) / 10_000, 100);
    const line: Record<string, number> = {
      day,
      temp,
      kg,
      injected,
      hours,
      stripped: injected + hours / 24,
      grams,
      perGram,
      eggs,
      fert,
      hatch,
      hatched,
      fry: to(hatched * draw.between(0.6, 0.8), 100),
    };
    extra(line, i);
    return line;
  });
}

/** French forms down one sheet, hours 22h30, decimal commas, grams in one line and kilograms in another. */
function frenchForms(draw: Draw): Kept {
  const leaf = new Leaf('Pontes');
  leaf.text(0, "Cahier d'écloserie 2025");
  spawnings(draw, 8).forEach((line, i) => {
    const top = 2 + i * 17;
    const k = (key: string): string => `${key}${i}`;
    const put = (r: number, key: string, label: string, is: readonly FieldName[], cell: ExampleCell): void =>
      leaf.field(top + r, 0, k(key), label, is, cell);
    const { day, kg, injected, stripped, temp, grams, perGram, eggs, hatched, fry } = line as Record<
      string,
      number
    > &
      Line;
    const looked = to(draw.between(100, 180), 10);
    const good = Math.round((looked * (line.fert ?? 80)) / 100);
    put(0, 'run', 'Ponte n°', ['run', 'serial'], i + 1);
    put(1, 'day', 'Date', ['date', 'injectedOn'], dmy(day ?? 0));
    put(2, 'kg', 'Femelle (poids)', ['femaleWeight'], `${comma(kg ?? 0, 2)} kg`);
    put(3, 'dose', 'Hormone, dose', ['hormoneVolume'], `${comma(round((kg ?? 0) * 0.5, 2), 2)} ml`);
    put(4, 'in', 'Injectée à', ['injected'], clock(injected ?? 0, 'h'));
    put(5, 'out', 'Ovulation à', ['stripped'], clock(stripped ?? 0, 'h'));
    put(6, 'temp', "T° de l'eau", ['temperature'], comma(temp ?? 0, 1));
    put(7, 'grams', "Poids d'ovules (g)", ['eggWeight'], grams ?? 0);
    put(8, 'per', 'Ovules / g', ['eggsPerGram'], perGram ?? 0);
    put(9, 'eggs', "Nbre d'ovules", ['eggs'], grouped(eggs ?? 0, ' '));
    put(10, 'looked', 'Oeufs observés', ['sampleSize'], looked);
    put(11, 'good', 'dont fécondés', ['sampleGood'], good);
    put(12, 'fert', 'Taux fécond.', ['fertilisedShare'], `${comma(round((100 * good) / looked, 1), 1)} %`);
    put(13, 'hatched', 'Éclos', ['hatched'], grouped(hatched ?? 0, ' '));
    put(14, 'fry', 'Alevins nageants J+4', ['fry'], grouped(fry ?? 0, ' '));
  });
  return {
    name: 'French forms',
    leaves: [leaf],
    faults: [
      { kind: 'nought too many', at: 'eggs3', to: (was) => `${String(was)}0`, or: ['grams3', 'per3'] },
      { kind: 'no such hour', at: 'in4', to: () => '27h15' },
      { kind: 'mark lost', at: 'kg2', to: (was) => String(was).replace(',', ''), or: ['dose2'] },
      { kind: 'Fahrenheit', at: 'temp5', to: () => '79,8' },
      { kind: 'part over whole', at: 'good1', to: () => 290, or: ['looked1', 'fert1'] },
      { kind: 'share is not its counts', at: 'fert6', to: () => '41,2 %', or: ['looked6', 'good6'] },
      { kind: 'dose', at: 'dose4', to: () => '9,50 ml', or: ['kg4'] },
      { kind: 'more out than in', at: 'hatched2', to: (was) => `${String(was)}0`, or: ['eggs2', 'fry2'] },
      { kind: 'wrong year', at: 'day5', to: (was) => String(was).replace(/20(\d)(\d)$/, '20$10') },
    ],
  };
}

/** Portuguese stock book, two header rows, transfers between two tanks on two sheets. */
function portugueseStock(draw: Draw): Kept {
  const start = 45_700 + Math.floor(draw.between(0, 60));
  const n = 18;
  const moves = Array.from({ length: n }, (_, i) => (i % 5 === 3 ? to(draw.between(800, 2200), 50) : 0));
  const make = (name: string, first: number, isFrom: boolean): Leaf => {
    const leaf = new Leaf(name);
    leaf.text(0, `Viveiro: ${name}`);
    let open = first;
    const lines: Line[] = moves.map((moved, i) => {
      const dead = Math.floor(draw.between(3, 60));
      const sold = i > 8 && i % 3 === 0 ? to(draw.between(300, 1200), 50) : 0;
      const [ins, outs] = isFrom ? [0, moved] : [moved, 0];
      const close = open + ins - outs - dead - sold;
      const line = { day: start + 2 * i, open, ins, outs, dead, sold, close };
      open = close;
      return line;
    });
    const or0 = (key: string) => (line: Line) => (line[key] ? (line[key] ?? null) : null);
    const end = leaf.table(
      2,
      0,
      [
        { key: 'day', head: ['', 'Dia'], is: ['date'], cell: num('day'), format: DMY },
        { key: 'open', head: ['', 'Saldo ant.'], is: ['opening'], cell: num('open') },
        { key: 'ins', head: ['Entradas', 'Transf.'], is: ['movedIn', 'stocked'], cell: or0('ins') },
        { key: 'outs', head: ['Saídas', 'Transf.'], is: ['movedOut'], cell: or0('outs') },
        { key: 'dead', head: ['', 'Mortos'], is: ['dead'], cell: num('dead') },
        { key: 'sold', head: ['', 'Vendas'], is: ['sold'], cell: or0('sold') },
        { key: 'close', head: ['', 'Saldo'], is: ['closing'], cell: num('close') },
      ],
      lines,
    );
    leaf.put(end, 0, 'Soma');
    const sum = (key: string): number => lines.reduce((s, line) => s + (line[key] ?? 0), 0);
    leaf.put(end, 4, sum('dead'));
    leaf.put(end, 5, sum('sold'));
    leaf.at.set('deadSum', [end, 4, 1]);
    return leaf;
  };
  const [a, b] = [
    make('Tanque A', to(draw.between(38_000, 52_000), 100), true),
    make('Tanque B', to(draw.between(9_000, 15_000), 100), false),
  ];
  return {
    name: 'Portuguese stock',
    leaves: [a, b],
    faults: [
      {
        kind: 'ledger',
        at: 'close',
        to: (was) => Number(was) + 900,
        or: ['open', 'dead', 'sold', 'outs'],
        line: 7,
      },
      { kind: 'minus', at: 'dead', to: (was) => -Number(was), line: 5 },
      { kind: 'wrong total', at: 'deadSum', to: (was) => Number(was) + 100 },
      { kind: 'wrong month', at: 'day', to: (was) => Number(was) + 31, line: 6 },
      {
        kind: 'moved is not received',
        at: 'outs',
        to: (was) => Number(was) + 500,
        or: ['open', 'close'],
        line: 8,
      },
      { kind: 'a word', at: 'dead', to: () => '1O', line: 11 },
      { kind: 'noughts', at: 'sold', to: (was) => Number(was) * 100, or: ['close', 'open'], line: 12 },
    ],
  };
}

/** Spanish list with short headings; every cell is text, as a semicolon file gives it. */
function spanishList(draw: Draw): Kept {
  const leaf = new Leaf('desoves');
  const lines = spawnings(draw, 20);
  leaf.table(
    0,
    0,
    [
      { key: 'run', head: 'N° desove', is: ['run', 'serial'], cell: (_, i) => String(i + 1) },
      { key: 'day', head: 'Fecha', is: ['date', 'injectedOn'], cell: (l) => dMes(l.day ?? 0) },
      {
        key: 'kg',
        head: 'P. hembra (g)',
        is: ['femaleWeight'],
        cell: (l) => grouped(1000 * (l.kg ?? 0), '.'),
      },
      {
        key: 'dose',
        head: 'Dosis hipóf. (mg)',
        is: ['hormoneVolume'],
        cell: (l) => comma(4 * (l.kg ?? 0), 1),
      },
      { key: 'in', head: 'H. iny.', is: ['injected'], cell: (l) => clock(l.injected ?? 0, ':') },
      { key: 'out', head: 'H. desove', is: ['stripped'], cell: (l) => clock(l.stripped ?? 0, ':') },
      { key: 'hours', head: 'Hs.', is: ['latency'], cell: (l) => comma(l.hours ?? 0, 2) },
      { key: 'temp', head: 'T agua °C', is: ['temperature'], cell: (l) => comma(l.temp ?? 0, 1) },
      { key: 'grams', head: 'Ovas g', is: ['eggWeight'], cell: (l) => String(l.grams) },
      { key: 'fert', head: '% fec.', is: ['fertilisedShare'], cell: (l) => String(l.fert) },
      {
        key: 'larvae',
        head: 'Larvas (miles)',
        is: ['hatched'],
        cell: (l) => comma((l.hatched ?? 0) / 1000, 1),
      },
      { key: 'note', head: 'Obs.', is: ['note'], cell: (_, i) => (i % 6 === 2 ? 'agua turbia' : null) },
    ],
    lines,
  );
  return {
    name: 'Spanish list',
    leaves: [leaf],
    faults: [
      {
        kind: 'unit',
        at: 'kg',
        to: (was) => comma(Number(String(was).replace('.', '')) / 1000, 2),
        or: ['dose', 'grams'],
      },
      {
        kind: 'nought too many',
        at: 'dose',
        to: (was) => comma(10 * Number(String(was).replace(',', '.')), 1),
        or: ['kg'],
      },
      {
        kind: 'span is not its times',
        at: 'hours',
        to: (was) => comma(Number(String(was).replace(',', '.')) + 4, 2),
        or: ['in', 'out'],
      },
      {
        kind: 'wrong month',
        at: 'day',
        to: (was) =>
          String(was).replace(/-(\w+)-/, (_, m: string) => `-${MESES[(MESES.indexOf(m) + 1) % 12] ?? ''}-`),
        line: 9,
      },
      { kind: 'over a hundred', at: 'fert', to: () => '812' },
      {
        kind: 'one for a thousand',
        at: 'larvae',
        to: (was) => String(Math.round(1000 * Number(String(was).replace(',', '.')))),
      },
      {
        kind: 'morning for evening',
        at: 'in',
        to: (was) => `${pad(Number(String(was).slice(0, 2)) - 12)}${String(was).slice(2)}`,
        or: ['out', 'hours'],
      },
      {
        kind: 'nought lost',
        at: 'grams',
        to: (was) => String(Math.round(Number(was) / 10)),
        or: ['kg', 'larvae'],
      },
    ],
  };
}

/** Indonesian: deaths by day and tank with sums, a water log at its side. */
function indonesianMatrix(draw: Draw): Kept {
  const leaf = new Leaf('Pendederan');
  const start = 45_800 + Math.floor(draw.between(0, 40));
  const tanks = ['Bak 1', 'Bak 2', 'Bak 3', 'Bak 4'];
  const lines: Line[] = Array.from({ length: 21 }, (_, i) => {
    const line: Record<string, number> = { day: start + i };
    let sum = 0;
    tanks.forEach((_t, t) => {
      const dead = Math.floor(draw.between(0, 18) * draw.between(0.5, 2) * (t === 2 ? 1.5 : 1));
      line[`t${t}`] = dead;
      sum += dead;
    });
    line.sum = sum;
    line.am = round(draw.bell(26.2, 0.5), 1);
    line.pm = round((line.am ?? 0) + draw.between(1.2, 2.8), 1);
    line.ph = round(draw.bell(7.1, 0.2), 1);
    line.o2 = round(draw.bell(5.4, 0.5), 1);
    return line;
  });
  leaf.text(0, 'Catatan kematian benih & kualitas air');
  const end = leaf.table(
    2,
    0,
    [
      { key: 'day', head: ['', 'Tgl'], is: ['date'], cell: num('day'), format: 'dd-mmm' },
      ...tanks.map((name, t): Column => ({
        key: `t${t}`,
        head: [t === 0 ? 'Benih mati (ekor)' : '', name],
        is: ['dead'],
        cell: (l) => (l[`t${t}`] === 0 ? '-' : (l[`t${t}`] ?? null)),
      })),
      { key: 'sum', head: ['', 'Jml'], is: ['deadTotal', 'dead'], cell: num('sum') },
    ],
    lines,
  );
  leaf.put(end, 0, 'Total');
  tanks.forEach((_t, t) =>
    leaf.put(
      end,
      1 + t,
      lines.reduce((s, l) => s + (l[`t${t}`] ?? 0), 0),
    ),
  );
  leaf.put(
    end,
    5,
    lines.reduce((s, l) => s + (l.sum ?? 0), 0),
  );
  leaf.at.set('foot', [end, 3, 1]);
  leaf.table(
    2,
    8,
    [
      { key: 'wday', head: ['', 'Tgl'], is: ['date'], cell: num('day'), format: 'dd-mmm' },
      { key: 'am', head: ['Suhu (°C)', 'Pagi'], is: ['temperatureLow'], cell: num('am') },
      { key: 'pm', head: ['', 'Sore'], is: ['temperatureHigh'], cell: num('pm') },
      { key: 'ph', head: ['', 'pH'], is: ['ph'], cell: num('ph') },
      { key: 'o2', head: ['', 'DO'], is: ['oxygen'], cell: num('o2') },
    ],
    lines,
  );
  return {
    name: 'Indonesian matrix',
    leaves: [leaf],
    faults: [
      { kind: 'sum at the side', at: 'sum', to: (was) => Number(was) + 20, or: ['t0', 't1', 't2', 't3'] },
      { kind: 'sum at the foot', at: 'foot', to: (was) => Number(was) - 30 },
      {
        kind: 'nought too many',
        at: 't1',
        to: (was) => (typeof was === 'number' ? was * 10 : 90),
        or: ['sum'],
      },
      { kind: 'Fahrenheit', at: 'am', to: (was) => round(1.8 * Number(was) + 32, 1) },
      { kind: 'mark lost', at: 'ph', to: (was) => Number(was) * 10 },
      { kind: 'minus', at: 't2', to: () => -7, or: ['sum'] },
      { kind: 'turned', at: 'pm', to: (was) => Number([...String(was)].reverse().join('')) || 3.82 },
      { kind: 'wrong month', at: 'wday', to: (was) => Number(was) + 30, line: 10 },
    ],
  };
}

/** English of West Africa, short forms; fry sold stand on another sheet by batch. */
function westAfrican(draw: Draw): Kept {
  const [runs, sales] = [new Leaf('SPAWN'), new Leaf('SALES')];
  const lines = spawnings(draw, 15, (line) => {
    line.females = 1 + Math.floor(draw.between(0, 3));
    line.cost = to(draw.between(9, 14), 1);
  });
  runs.text(0, 'HATCHERY REC. 2024/25');
  runs.table(
    2,
    0,
    [
      { key: 'run', head: 'Batch', is: ['run', 'serial'], cell: (_, i) => `B${pad(i + 1)}` },
      { key: 'day', head: 'Dt inj', is: ['date', 'injectedOn', 'injected'], cell: num('day'), format: DMY },
      { key: 'kg', head: 'Brdr wt kg', is: ['femaleWeight'], cell: num('kg') },
      { key: 'dose', head: 'Horm ml', is: ['hormoneVolume'], cell: (l) => round(0.5 * (l.kg ?? 0), 2) },
      { key: 'in', head: 'Inj time', is: ['injected'], cell: (l) => (l.injected ?? 0) % 1, format: HM },
      { key: 'out', head: 'Strip time', is: ['stripped'], cell: (l) => (l.stripped ?? 0) % 1, format: HM },
      { key: 'temp', head: 'Temp', is: ['temperature'], cell: num('temp') },
      { key: 'grams', head: 'Egg wt (g)', is: ['eggWeight'], cell: num('grams') },
      { key: 'eggs', head: 'Est. eggs', is: ['eggs'], cell: (l) => (l.grams ?? 0) * 650 },
      { key: 'fert', head: 'Fert %', is: ['fertilisedShare'], cell: num('fert') },
      { key: 'hatched', head: "H'lings", is: ['hatched'], cell: num('hatched') },
      { key: 'fry', head: 'Fry d7', is: ['fry', 'alive'], cell: num('fry') },
      {
        key: 'surv',
        head: 'Surv %',
        is: ['survival'],
        cell: (l) => round((100 * (l.fry ?? 0)) / (l.hatched ?? 1), 1),
      },
    ],
    lines,
  );
  const sold: Line[] = lines.flatMap((line, i) => {
    const left = line.fry ?? 0;
    const first = to(left * draw.between(0.3, 0.5), 100);
    const second = to(left * draw.between(0.2, 0.4), 100);
    return [first, second].map((n, k) => {
      const price = draw.pick([8, 10, 12, 15]);
      const money = n * price;
      const paid = k === 0 ? money : to(money * 0.6, 100);
      return { day: (line.day ?? 0) + 35 + 4 * k, batch: i + 1, n, price, money, paid, due: money - paid };
    });
  });
  const end = sales.table(
    0,
    0,
    [
      { key: 's.day', head: 'Date', is: ['date'], cell: num('day'), format: DMY },
      { key: 's.batch', head: 'Batch', is: ['run'], cell: (l) => `B${pad(l.batch ?? 0)}` },
      { key: 's.who', head: 'Cust.', is: ['customer'], cell: (_, i) => `Buyer ${'ABCDEFG'[i % 7] ?? ''}` },
      { key: 's.n', head: 'Pcs', is: ['sold', 'quantity'], cell: num('n') },
      { key: 's.price', head: '@', is: ['priceEach', 'unitPrice'], cell: num('price') },
      { key: 's.money', head: 'Amt (N)', is: ['amount', 'income'], cell: num('money') },
      { key: 's.paid', head: 'Paid', is: ['paid'], cell: num('paid') },
      { key: 's.due', head: 'Bal', is: ['due', 'balance'], cell: num('due') },
    ],
    sold,
  );
  sales.put(end, 0, 'TOTAL');
  sales.put(
    end,
    3,
    sold.reduce((s, l) => s + (l.n ?? 0), 0),
  );
  sales.put(
    end,
    5,
    sold.reduce((s, l) => s + (l.money ?? 0), 0),
  );
  sales.at.set('s.sum', [end, 5, 1]);
  return {
    name: 'West African workbook',
    leaves: [runs, sales],
    faults: [
      { kind: 'nought too many', at: 'kg', to: (was) => Number(was) * 10, or: ['dose', 'grams'] },
      { kind: 'unit', at: 'grams', to: (was) => Number(was) / 1000, or: ['eggs'] },
      { kind: 'more out than in', at: 'fry', to: (was) => Number(was) * 3, or: ['hatched', 'surv'] },
      {
        kind: 'share is not its counts',
        at: 'surv',
        to: (was) => round(Number(was) - 25, 1),
        or: ['fry', 'hatched'],
      },
      { kind: 'morning for evening', at: 'in', to: (was) => Number(was) - 0.5, or: ['out'] },
      { kind: 'copied down', at: 'eggs', to: (was) => Number(was) + 13_000, or: ['grams'] },
      {
        kind: 'product',
        at: 's.money',
        to: (was) => Number(was) + 9_000,
        or: ['s.n', 's.price', 's.paid', 's.due'],
      },
      { kind: 'wrong total', at: 's.sum', to: (was) => Number(was) - 10_000 },
      {
        kind: 'sold above stock',
        at: 's.n',
        to: (was) => Number(was) * 10,
        or: ['s.price', 's.money', 's.batch'],
      },
      { kind: 'owed', at: 's.due', to: (was) => Number(was) + 700, or: ['s.money', 's.paid'] },
      { kind: 'no such batch', at: 's.batch', to: () => 'B91' },
      { kind: 'wrong year', at: 's.day', to: (was) => Number(was) - 365, line: 14 },
    ],
  };
}

/** Doses in IU and mg, two injections, two header rows. */
function doubleInjection(draw: Draw): Kept {
  const leaf = new Leaf('Induced breeding');
  const lines = spawnings(draw, 16, (line) => {
    line.iu = to(1000 * (line.kg ?? 0) * draw.bell(1, 0.01), 10);
    line.mg = round(3 * (line.kg ?? 0), 1);
    line.first = (line.injected ?? 0) - 10 / 24;
  });
  leaf.table(
    1,
    1,
    [
      { key: 'run', head: ['', 'Sl.'], is: ['serial', 'run'], cell: (_, i) => i + 1 },
      { key: 'day', head: ['', 'Date'], is: ['date', 'injectedOn'], cell: (l) => dmy(l.day ?? 0, '.') },
      { key: 'tag', head: ['Female', 'Tag'], is: ['female'], cell: (_, i) => `F-${200 + 7 * i}` },
      { key: 'kg', head: ['', 'Wt. (g)'], is: ['femaleWeight'], cell: (l) => Math.round(1000 * (l.kg ?? 0)) },
      { key: 'mg', head: ['1st inj.', 'PG (mg)'], is: ['doseFirst', 'hormoneVolume'], cell: num('mg') },
      { key: 't1', head: ['', 'Time'], is: ['injectedFirst'], cell: (l) => clock(l.first ?? 0, '.') },
      { key: 'iu', head: ['2nd inj.', 'HCG (IU)'], is: ['doseSecond', 'hormoneVolume'], cell: num('iu') },
      { key: 't2', head: ['', 'Time'], is: ['injected'], cell: (l) => clock(l.injected ?? 0, '.') },
      { key: 'out', head: ['Stripping', 'Time'], is: ['stripped'], cell: (l) => clock(l.stripped ?? 0, '.') },
      { key: 'grams', head: ['', 'Eggs (g)'], is: ['eggWeight'], cell: num('grams') },
      { key: 'lakh', head: ['', 'Eggs (lakh)'], is: ['eggs'], cell: (l) => round((l.eggs ?? 0) / 1e5, 2) },
      { key: 'temp', head: ['Water', 'Temp (°C)'], is: ['temperature'], cell: num('temp') },
      { key: 'fert', head: ['Result', 'Fert. (%)'], is: ['fertilisedShare'], cell: num('fert') },
      { key: 'hatch', head: ['', 'Hatch. (%)'], is: ['hatchShare'], cell: num('hatch') },
      {
        key: 'larvae',
        head: ['', 'Spawn (lakh)'],
        is: ['hatched', 'fry'],
        cell: (l) => round((l.hatched ?? 0) / 1e5, 2),
      },
    ],
    lines,
  );
  return {
    name: 'Two injections',
    leaves: [leaf],
    faults: [
      { kind: 'nought too many', at: 'iu', to: (was) => Number(was) * 10, or: ['kg'] },
      { kind: 'mark lost', at: 'mg', to: (was) => Number(was) * 10, or: ['kg'] },
      { kind: 'unit', at: 'kg', to: (was) => Number(was) / 1000, or: ['mg', 'iu', 'grams'] },
      {
        kind: 'strip before injection',
        at: 'out',
        to: (was) => clock(Number(String(was).slice(0, 2)) / 24 - 10 / 24 + 1, '.'),
        or: ['t2'],
      },
      { kind: 'times exchanged', at: 't1', to: () => '23.50', or: ['t2'] },
      { kind: 'mark lost', at: 'lakh', to: (was) => Number(was) * 100, or: ['grams'] },
      { kind: 'tag twice', at: 'run', to: (was) => Number(was) - 1, line: 7 },
      { kind: 'more out than in', at: 'larvae', to: (was) => Number(was) * 6, or: ['lakh', 'fert', 'hatch'] },
      { kind: 'share', at: 'hatch', to: (was) => Number(was) * 10 },
      {
        kind: 'no such day',
        at: 'day',
        to: (was) => `31.${String(was).slice(3, 5) === '04' ? '06' : '04'}.${String(was).slice(6)}`,
      },
    ],
  };
}

/** Water book of the United States and the Caribbean: Fahrenheit, ounces, vats called 1, 2, 3, month first. */
function vatWater(draw: Draw): Kept {
  const leaf = new Leaf('vat log');
  const start = 45_650 + Math.floor(draw.between(0, 90));
  const gallons = [150, 150, 210];
  const lines: Line[] = Array.from({ length: 36 }, (_, i) => {
    const vat = (i % 3) + 1;
    const before = round(draw.bell(6.4, 0.15), 1);
    const oz = round(((gallons[vat - 1] ?? 0) * draw.bell(1, 0.03)) / 75, 1);
    return {
      day: start + Math.floor(i / 3),
      at: (7 + draw.between(0, 1.4)) / 24,
      vat,
      gal: gallons[vat - 1] ?? 0,
      f: round(draw.bell(79.5, 1.1), 1),
      before,
      oz,
      after: round(before + 0.75 + draw.between(-0.1, 0.1), 1),
      o2: round(draw.bell(6, 0.4), 1),
    };
  });
  const ampm = (serial: number): string => {
    const minutes = Math.round(serial * 1440);
    return `${Math.floor(minutes / 60)}:${pad(minutes % 60)} AM`;
  };
  leaf.table(
    0,
    0,
    [
      { key: 'day', head: 'Date', is: ['date'], cell: (l) => mdy(l.day ?? 0) },
      { key: 'at', head: 'Time', is: ['clock'], cell: (l) => ampm(l.at ?? 0) },
      { key: 'vat', head: 'Vat', is: ['vat'], cell: num('vat') },
      { key: 'gal', head: 'Gal', is: ['volume'], cell: num('gal') },
      { key: 'f', head: 'Temp F', is: ['temperature'], cell: num('f') },
      { key: 'before', head: 'pH bef.', is: ['ph'], cell: num('before') },
      { key: 'oz', head: 'Soda oz', is: ['materialDose'], cell: num('oz') },
      { key: 'after', head: 'pH aft.', is: ['phAfter'], cell: num('after') },
      { key: 'o2', head: 'DO ppm', is: ['oxygen'], cell: num('o2') },
      {
        key: 'who',
        head: 'By',
        is: ['operator'],
        cell: (_, i) => ['JR', 'MK'][Math.floor(i / 3) % 2] ?? null,
      },
    ],
    lines,
  );
  return {
    name: 'Vat water',
    leaves: [leaf],
    faults: [
      { kind: 'Celsius', at: 'f', to: () => 26.4 },
      { kind: 'nought too many', at: 'oz', to: (was) => Number(was) * 10, or: ['gal', 'after'] },
      { kind: 'mark lost', at: 'before', to: (was) => Number(was) * 10 },
      { kind: 'turned', at: 'gal', to: (was) => (Number(was) === 150 ? 510 : 120), or: ['vat'] },
      { kind: 'no soda, pH up', at: 'oz', to: () => 0, or: ['before', 'after'] },
      { kind: 'no such hour', at: 'at', to: () => '7:75 AM' },
      {
        kind: 'wrong month',
        at: 'day',
        to: (was) => String(was).replace(/^(\d+)/, (m) => String((Number(m) % 12) + 1)),
        line: 17,
      },
      { kind: 'pH falls with soda', at: 'after', to: () => 5.1, or: ['before', 'oz'] },
    ],
  };
}

/** Growth and feed: French in one heading and English in the next. */
function mixedGrowth(draw: Draw): Kept {
  const leaf = new Leaf('Suivi');
  const start = 45_700;
  const bins = [1, 2, 3].map(() => ({ n: to(draw.between(6_000, 12_000), 50), w: draw.between(0.25, 0.5) }));
  const lines: Line[] = [];
  for (let week = 0; week < 7; week++)
    bins.forEach((bin, b) => {
      const sample = to(draw.between(40, 80), 10);
      const mean = round(bin.w, 2);
      const total = round(sample * mean, 1);
      const biomass = round((bin.n * mean) / 1000, 2);
      const rate = round(12 - week * 0.8, 1);
      lines.push({
        day: start + 7 * week,
        bin: b + 1,
        n: bin.n,
        sample,
        total,
        mean,
        biomass,
        rate,
        feed: round((biomass * rate) / 100, 3),
        price: 1.4,
      });
      bin.n -= to(bin.n * draw.between(0.02, 0.06), 10);
      bin.w *= draw.between(1.35, 1.6);
    });
  leaf.text(0, 'Suivi croissance / growth follow-up');
  leaf.table(
    2,
    0,
    [
      { key: 'day', head: 'Date pesée', is: ['date'], cell: num('day'), format: DMY },
      { key: 'bin', head: 'Bac', is: ['vat'], cell: num('bin') },
      { key: 'n', head: 'Nb fish', is: ['fish', 'alive'], cell: num('n') },
      { key: 'sample', head: 'Nb échant.', is: ['sampleCount', 'sampleSize'], cell: num('sample') },
      { key: 'total', head: 'Pds échant. (g)', is: ['sampleWeight'], cell: num('total') },
      { key: 'mean', head: 'PM (g)', is: ['weight'], cell: num('mean') },
      { key: 'biomass', head: 'Biomasse kg', is: ['biomass'], cell: num('biomass') },
      { key: 'rate', head: 'Ration %', is: ['ration'], cell: num('rate') },
      { key: 'feed', head: 'Feed kg/j', is: ['feed'], cell: num('feed') },
    ],
    lines,
  );
  return {
    name: 'Mixed growth',
    leaves: [leaf],
    faults: [
      {
        kind: 'mark lost',
        at: 'mean',
        to: (was) => Math.round(Number(was) * 100),
        or: ['total', 'sample', 'biomass'],
      },
      { kind: 'nought too many', at: 'n', to: (was) => Number(was) * 10, or: ['biomass'] },
      { kind: 'feed', at: 'feed', to: (was) => round(Number(was) * 4, 3), or: ['biomass', 'rate'] },
      { kind: 'unit', at: 'biomass', to: (was) => Math.round(Number(was) * 1000), or: ['n', 'mean'] },
      {
        kind: 'weight falls',
        at: 'total',
        to: (was) => round(Number(was) * 0.4, 1),
        or: ['mean', 'sample'],
        line: 12,
      },
      { kind: 'turned', at: 'sample', to: (was) => Number(was) + 27, or: ['total', 'mean'] },
      { kind: 'wrong year', at: 'day', to: (was) => Number(was) + 365, line: 9 },
    ],
  };
}

/** Money of a Spanish-speaking farm with month headings and a summary that adds them on a second sheet. */
function spanishMoney(draw: Draw): Kept {
  const [book, months] = [new Leaf('Ventas'), new Leaf('Resumen')];
  book.text(0, 'Fecha', 'Factura', 'Cliente', 'Cant.', 'P. unit.', 'Importe', 'Anticipo', 'Resta');
  const kinds: readonly (readonly FieldName[])[] = [
    ['date'],
    ['receipt', 'serial'],
    ['customer'],
    ['sold', 'quantity'],
    ['priceEach', 'unitPrice'],
    ['amount', 'income'],
    ['deposit', 'paid'],
    ['due', 'balance'],
  ];
  kinds.forEach((fields, column) => book.columns.push({ sheet: 'Ventas', row: 2, column, fields }));
  ['day', 'bill', 'who', 'n', 'price', 'money', 'paid', 'rest'].forEach((key, column) =>
    book.at.set(key, [2, column, 5]),
  );
  let [row, bill] = [1, 411];
  months.text(0, 'Mes', 'Peces', 'Total');
  (['fields'] as const).forEach(() => {
    months.columns.push(
      { sheet: 'Resumen', row: 1, column: 0, fields: ['month'] },
      { sheet: 'Resumen', row: 1, column: 1, fields: ['sold', 'quantity'] },
      { sheet: 'Resumen', row: 1, column: 2, fields: ['amount', 'income'] },
    );
  });
  ['Enero', 'Febrero', 'Marzo', 'Abril', 'Mayo'].forEach((name, m) => {
    book.put(row++, 0, name);
    const first = row;
    let [fish, money] = [0, 0];
    for (let i = 0; i < 6; i++) {
      const n = to(draw.between(500, 5000), 100);
      const price = draw.pick([0.15, 0.18, 0.2, 0.25]);
      const total = round(n * price, 2);
      const paid = draw.pick([total, to(total / 2, 5), 0]);
      [
        45_658 + 30 * m + 2 + 4 * i,
        `A-${bill++}`,
        `Cliente ${i + 1}`,
        n,
        price,
        total,
        paid,
        round(total - paid, 2),
      ].forEach((cell, column) => book.put(row, column, cell, column === 0 ? DMY : 'General'));
      fish += n;
      money += total;
      row++;
    }
    book.put(row, 2, 'Subtotal');
    book.put(row, 3, [fish, `=SUM(D${first + 1}:D${row})`]);
    book.put(row, 5, [round(money, 2), `=SUM(F${first + 1}:F${row})`]);
    months.text(1 + m, name, fish, round(money, 2));
    if (m === 1) months.at.set('m.money', [2, 2, 1]);
    if (m === 3) months.at.set('m.fish', [4, 1, 1]);
    if (m === 2) {
      book.at.set('sub', [row, 5, 1]);
    }
    row++;
  });
  const sub = book.at.get('sub');
  return {
    name: 'Spanish money',
    leaves: [book, months],
    faults: [
      { kind: 'product', at: 'money', to: (was) => Number(was) * 10, or: ['n', 'price', 'paid', 'rest'] },
      { kind: 'number twice', at: 'bill', to: (was) => `A-${Number(String(was).slice(2)) - 1}`, line: 3 },
      { kind: 'noughts', at: 'price', to: (was) => Number(was) * 100, or: ['n', 'money'] },
      { kind: 'owed', at: 'rest', to: (was) => Number(was) + 60, or: ['money', 'paid'] },
      {
        kind: 'sum over a part',
        at: 'sub',
        to: (was) => [round(Number(was) - 300, 2), `=SUM(F${(sub?.[0] ?? 0) - 5}:F${(sub?.[0] ?? 0) - 1})`],
      },
      { kind: 'month on another sheet', at: 'm.money', to: (was) => round(Number(was) + 200, 2) },
      { kind: 'month on another sheet', at: 'm.fish', to: (was) => Number(was) + 1000 },
      { kind: 'a word', at: 'n', to: () => 'dos mil' },
      { kind: 'minus', at: 'paid', to: () => -50, or: ['rest', 'money'] },
    ],
  };
}

/** Headings of which no list knows a word. */
function noWords(draw: Draw): Kept {
  const leaf = new Leaf('Q1');
  const lines = spawnings(draw, 16);
  leaf.table(
    0,
    0,
    [
      { key: 'a', head: 'Zr', is: [], cell: (_, i) => `Q${i + 1}` },
      { key: 'day', head: 'Ubv', is: ['date', 'injectedOn'], cell: num('day'), format: DMY },
      { key: 'kg', head: 'Mkq', is: [], cell: num('kg') },
      { key: 'grams', head: 'Olt', is: [], cell: num('grams') },
      { key: 'per', head: 'Olt-w', is: [], cell: num('perGram') },
      { key: 'eggs', head: 'Olt-r', is: ['eggs'], cell: (l) => (l.grams ?? 0) * (l.perGram ?? 0) },
      { key: 'hatched', head: 'Nev', is: [], cell: num('hatched') },
      { key: 'dead', head: 'Jek', is: [], cell: (l) => (l.hatched ?? 0) - (l.fry ?? 0) },
      { key: 'fry', head: 'Nev-b', is: [], cell: num('fry') },
    ],
    lines,
  );
  return {
    name: 'Words of no list',
    leaves: [leaf],
    faults: [
      { kind: 'product', at: 'eggs', to: (was) => Number(was) * 10, or: ['grams', 'per'] },
      { kind: 'turned', at: 'fry', to: (was) => Number(was) + 9_000, or: ['hatched', 'dead'] },
      { kind: 'mark lost', at: 'kg', to: (was) => Number(was) * 100 },
      { kind: 'minus', at: 'dead', to: (was) => -Number(was), or: ['hatched', 'fry'] },
      { kind: 'wrong year', at: 'day', to: (was) => Number(was) - 3653, line: 7 },
      { kind: 'a word', at: 'per', to: () => '65o' },
    ],
  };
}

const BOOKS: readonly ((draw: Draw) => Kept)[] = [
  frenchForms,
  portugueseStock,
  spanishList,
  indonesianMatrix,
  westAfrican,
  doubleInjection,
  vatWater,
  mixedGrowth,
  spanishMoney,
  noWords,
];

const bookOf = ({ name, leaves }: Kept): StrangeBook => ({
  name,
  sheets: leaves,
  columns: leaves.flatMap(({ columns }) => columns),
});

export const cleanOthers = (seed: number): StrangeBook[] =>
  BOOKS.map((make, b) => bookOf(make(drawer(seed + 17 * b))));

const plainOf = (cell: ExampleCell): Cell => (Array.isArray(cell) ? (cell[0] as Cell) : (cell as Cell));

const othersOf = (leaf: Leaf, fault: Spoilt, row: number): (readonly [number, number])[] =>
  (fault.or ?? []).flatMap((key) => {
    const other = leaf.at.get(key);
    return other ? [[other[2] === 1 ? other[0] : row, other[1]] as const] : [];
  });

/** Spoils one line that can hold the fault: a line in which nothing stands, or that stays the same, is passed over. */
function spoil(kept: Kept, fault: Spoilt, draw: Draw): StrangeBook | undefined {
  const leaf = kept.leaves.find((one) => one.at.has(fault.at));
  const [top, column, rows] = leaf?.at.get(fault.at) ?? [0, 0, 0];
  if (!leaf || rows === 0) return undefined;
  for (let tries = 0; tries < (fault.line === undefined ? 20 : 1); tries++) {
    const row = top + (fault.line ?? Math.min(rows - 1, Math.floor(draw.between(0, rows))));
    const was = plainOf(leaf.cells[row]?.[column] ?? null);
    if (was === null || was === 0) continue;
    const now = fault.to(was);
    if (now === was) continue;
    leaf.put(row, column, now, leaf.formats[row]?.[column]);
    return {
      ...bookOf(kept),
      fault: { kind: fault.kind, sheet: leaf.name, cells: [[row, column], ...othersOf(leaf, fault, row)] },
    };
  }
  return undefined;
}

/** One fault a book. */
export const spoiltOthers = (seed: number, each: number): StrangeBook[] =>
  BOOKS.flatMap((make, b) =>
    make(drawer(1)).faults.flatMap((_, f) =>
      Array.from({ length: each }, (_t, time): StrangeBook[] => {
        const draw = drawer(seed + 101 * b + 13 * f + 7 * time);
        const kept = make(draw);
        const fault = kept.faults[f];
        return (fault && [spoil(kept, fault, draw)].filter((book) => book !== undefined)) ?? [];
      }).flat(),
    ),
  );
