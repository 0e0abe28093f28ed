// Long: the books of one generator, shape by shape
/**
 * Books the rules were not made for: other shapes, mixed languages, words that the author of the rules did not
 * take from the lists. What every column means and which cell was spoilt is known because they were made.
 * Headings are from memory of how such books are kept; common practice, no source.
 */
import type { FieldName } from '../../../shared/records/fields';
import type { ExampleCell } from '../../../shared/records/rules/rule';
import type { Draw } from '../../records/support/farm';
import { drawer, round } from '../../records/support/farm';
import { WrittenSheet } from './writtenSheet';

export interface StrangeSheet {
  readonly name: string;
  readonly cells: ExampleCell[][];
  readonly formats: string[][];
}
/** A column or line: the cells that hold it, and what a right reading may be called. */
export interface StrangeColumn {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly fields: readonly FieldName[];
}
export interface StrangeFault {
  readonly kind: string;
  readonly sheet: string;
  /** Cells a finding may name: the spoilt one first, then those it contradicts. */
  readonly cells: readonly (readonly [row: number, column: number])[];
}
export interface StrangeBook {
  readonly name: string;
  readonly sheets: readonly StrangeSheet[];
  readonly columns: readonly StrangeColumn[];
  readonly fault?: StrangeFault;
}

const FIRST = 45_720;
const DAY = 'dd/mm/yyyy';

class Page extends WrittenSheet implements StrangeSheet {
  number(row: number, column: number): number {
    return Number(this.cells[row]?.[column] ?? NaN);
  }
}

interface Made {
  readonly page: Page;
  readonly columns: StrangeColumn[];
  /** First row of data, number of rows, and the columns by name. */
  readonly top: number;
  readonly rows: number;
  readonly at: Readonly<Record<string, number>>;
}
type Head = readonly [name: string, texts: readonly string[], fields: readonly FieldName[]];

const hm = (share: number, mark: string): string => {
  const minutes = Math.round(share * 1440) % 1440;
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}${mark}${String(minutes % 60).padStart(2, '0')}`;
};

/** Spawnings without a single unit in the headings. */
const SPAWN: readonly Head[] = [
  ['run', ['Batch', 'Lot n°', 'Ponte', 'Lote', 'Angkatan', 'Kundi'], ['run', 'serial']],
  ['date', ['Day', 'Jour', 'Data', 'Fecha', 'Tgl', 'Siku'], ['date', 'injectedOn']],
  [
    'female',
    [
      'Weight of mother',
      'Poids de la mère',
      'Peso da matriz',
      'Peso reproductora',
      'Bobot induk',
      'Uzito wa mama',
    ],
    ['femaleWeight'],
  ],
  [
    'dose',
    [
      'Hormone injected',
      'Hormone injectée',
      'Hormônio aplicado',
      'Hormona aplicada',
      'Hormon disuntik',
      'Homoni',
    ],
    ['hormoneVolume'],
  ],
  [
    'in',
    ['Injected at', "Heure d'injection", 'Hora da injeção', 'Hora inyección', 'Jam suntik', 'Saa ya sindano'],
    ['injected'],
  ],
  [
    'out',
    ['Stripped at', 'Heure extraction', 'Hora da extrusão', 'Hora desove', 'Jam stripping', 'Saa ya kukamua'],
    ['stripped'],
  ],
  [
    'grams',
    [
      'Roe weight',
      'Poids des œufs',
      'Peso dos óvulos',
      'Peso de los huevos',
      'Berat telur',
      'Uzito wa mayai',
    ],
    ['eggWeight'],
  ],
  [
    'per',
    [
      'Eggs in one gram',
      'Œufs par gramme',
      'Ovos por grama',
      'Huevos por gramo',
      'Telur per gram',
      'Mayai kwa gramu',
    ],
    ['eggsPerGram'],
  ],
  [
    'eggs',
    ['All eggs', 'Total œufs', 'Total de ovos', 'Total de huevos', 'Jumlah telur', 'Jumla ya mayai'],
    ['eggs'],
  ],
  [
    'larvae',
    [
      'Hatched larvae',
      'Larves écloses',
      'Larvas eclodidas',
      'Larvas eclosionadas',
      'Larva menetas',
      'Viluwiluwi',
    ],
    ['hatched'],
  ],
];

function headed(page: Page, heads: readonly Head[], language: number, row: number, left: number): void {
  for (const [i, [, texts]] of heads.entries()) page.put(row, left + i, texts[language] ?? texts[0] ?? '');
}
function described(page: Page, heads: readonly Head[], top: number, left: number): StrangeColumn[] {
  return heads.map(([, , fields], i) => ({ sheet: page.name, row: top, column: left + i, fields }));
}
const places = (heads: readonly Head[], left: number): Record<string, number> =>
  Object.fromEntries(heads.map(([name], i) => [name, left + i]));

function spawnings(draw: Draw, language: number): Made {
  const page = new Page('Reg 1');
  const left = Math.floor(draw.between(0, 3));
  const top = 3;
  page.put(
    0,
    left,
    ['Spawning book', 'Registre', 'Registro', 'Registro', 'Catatan', 'Daftari'][language] ?? '',
  );
  headed(page, SPAWN, language, top - 1, left);
  const rows = 12 + Math.floor(draw.between(0, 10));
  const [perGram, hatch, share] = [draw.between(600, 780), draw.between(0.45, 0.65), draw.between(0.1, 0.15)];
  const isKilos = draw.random() < 0.6;
  let day = FIRST + Math.floor(draw.between(0, 200));
  for (let r = 0; r < rows; r++) {
    day += 1 + Math.floor(draw.between(0, 5));
    const kilos = round(draw.between(0.7, 2.4), 2);
    const grams = round(1000 * kilos * share * draw.between(0.8, 1.2), 1);
    const per = Math.round(perGram * draw.between(0.93, 1.07));
    const eggs = Math.round(grams * per);
    const at = draw.between(19, 22) / 24;
    const line: readonly (readonly [ExampleCell, string?])[] = [
      [r + 1],
      [day, DAY],
      [isKilos ? kilos : Math.round(1000 * kilos)],
      [round(0.5 * kilos, 2)],
      [hm(at, ':')],
      [hm(at + draw.between(9.5, 11) / 24, ':')],
      [grams],
      [per],
      [eggs],
      [Math.round(eggs * hatch * draw.between(0.85, 1.15))],
    ];
    for (const [i, [cell, format]] of line.entries()) page.put(top + r, left + i, cell, format);
  }
  return { page, columns: described(page, SPAWN, top, left), top, rows, at: places(SPAWN, left) };
}

/** Days down, tanks across, sums at the side and the foot. */
function matrix(draw: Draw, language: number): Made {
  const page = new Page('Sheet 2');
  const title = [
    'Deaths per tank',
    'Mortalité par bac',
    'Mortalidade por tanque',
    'Mortalidad por estanque',
    'Kematian per kolam',
    'Vifo kwa tangi',
  ];
  const total = ['Total', 'Total', 'Total', 'Total', 'Jumlah', 'Jumla'][language] ?? 'Total';
  const tanks = 5 + Math.floor(draw.between(0, 6));
  const prefix = ['Tank ', 'Bac ', 'Tq ', 'E', 'Kolam ', 'Tangi '][language] ?? 'T';
  page.put(0, 0, title[language] ?? '');
  page.put(2, 0, SPAWN[1]?.[1][language] ?? 'Date');
  for (let t = 0; t < tanks; t++) page.put(2, 1 + t, `${prefix}${t + 1}`);
  page.put(2, tanks + 1, total);
  const rows = 18;
  const foot = Array.from({ length: tanks + 1 }, () => 0);
  for (let r = 0; r < rows; r++) {
    page.put(3 + r, 0, FIRST + r, DAY);
    let sum = 0;
    for (let t = 0; t < tanks; t++) {
      const dead = Math.floor(draw.between(0, 3) * draw.between(1, 9));
      page.put(3 + r, 1 + t, dead);
      sum += dead;
      foot[t] = (foot[t] ?? 0) + dead;
    }
    page.put(3 + r, tanks + 1, sum);
    foot[tanks] = (foot[tanks] ?? 0) + sum;
  }
  page.put(3 + rows, 0, total);
  for (const [t, sum] of foot.entries()) page.put(3 + rows, 1 + t, sum);
  const columns: StrangeColumn[] = [
    { sheet: page.name, row: 3, column: 0, fields: ['date'] },
    ...Array.from({ length: tanks }, (_, t): StrangeColumn => ({
      sheet: page.name,
      row: 3,
      column: 1 + t,
      fields: ['dead'],
    })),
    { sheet: page.name, row: 3, column: tanks + 1, fields: ['deadTotal', 'dead'] },
  ];
  return { page, columns, top: 3, rows, at: { date: 0, tank: 1, sum: tanks + 1 } };
}

const STOCK: readonly Head[] = [
  ['date', ['Date', 'Date', 'Dia', 'Día', 'Hari', 'Tarehe'], ['date']],
  [
    'open',
    ['At start', 'Stock début', 'Estoque inicial', 'Existencia inicial', 'Stok awal', 'Mwanzo'],
    ['opening'],
  ],
  ['in', ['Put in', 'Entrées', 'Entradas', 'Entradas', 'Masuk', 'Walioingia'], ['movedIn', 'stocked']],
  ['dead', ['Died', 'Morts', 'Mortos', 'Muertos', 'Mati', 'Waliokufa'], ['dead']],
  ['sold', ['Sold', 'Vendus', 'Vendidos', 'Vendidos', 'Terjual', 'Waliouzwa'], ['sold', 'movedOut']],
  [
    'close',
    ['Left', 'Stock fin', 'Estoque final', 'Existencia final', 'Sisa', 'Waliobaki'],
    ['closing', 'alive'],
  ],
];
const SALES: readonly Head[] = [
  ['date', ['Date', 'Date', 'Data', 'Fecha', 'Tanggal', 'Tarehe'], ['date']],
  ['who', ['Customer', 'Client', 'Cliente', 'Cliente', 'Pembeli', 'Mteja'], ['customer']],
  ['n', ['Pieces', 'Quantité', 'Quantidade', 'Cantidad', 'Jumlah ekor', 'Idadi'], ['sold', 'quantity']],
  [
    'price',
    ['Price each', 'Prix unitaire', 'Preço unitário', 'Precio unitario', 'Harga per ekor', 'Bei kwa moja'],
    ['priceEach', 'unitPrice'],
  ],
  ['money', ['Amount', 'Montant', 'Valor total', 'Importe', 'Total harga', 'Jumla ya fedha'], ['amount']],
  ['paid', ['Paid', 'Payé', 'Pago', 'Pagado', 'Dibayar', 'Alicholipa'], ['paid', 'deposit']],
  ['owed', ['Owes', 'Reste dû', 'A receber', 'Debe', 'Sisa bayar', 'Deni'], ['due', 'dueRunning']],
];

/** A ledger and sales next to each other on one sheet. */
function besides(draw: Draw, language: number): Made {
  const page = new Page('Stock');
  const top = 2;
  const right = STOCK.length + 1;
  headed(page, STOCK, language, top - 1, 0);
  headed(page, SALES, language, top - 1, right);
  const rows = 16;
  let alive = 1000 * Math.round(draw.between(12, 40));
  const price = 5 * Math.round(draw.between(4, 30));
  for (let r = 0; r < rows; r++) {
    const moved = r % 6 === 5 ? 500 * Math.round(draw.between(2, 8)) : 0;
    const dead = Math.floor(draw.between(5, 90));
    const sold = r % 3 === 1 ? 100 * Math.round(draw.between(3, 12)) : 0;
    const left = alive + moved - dead - sold;
    for (const [i, cell] of [FIRST + r, alive, moved, dead, sold, left].entries())
      page.put(top + r, i, cell, i === 0 ? DAY : 'General');
    alive = left;
    const n = 100 * Math.round(draw.between(2, 30));
    const each = price + 5 * Math.floor(draw.between(0, 3));
    const paid = r % 4 === 3 ? Math.round(0.5 * n * each) : n * each;
    const sale = [
      FIRST + 3 * r,
      `K${1 + Math.floor(draw.between(0, 9))}`,
      n,
      each,
      n * each,
      paid,
      n * each - paid,
    ];
    for (const [i, cell] of sale.entries()) page.put(top + r, right + i, cell, i === 0 ? DAY : 'General');
  }
  return {
    page,
    columns: [...described(page, STOCK, top, 0), ...described(page, SALES, top, right)],
    top,
    rows,
    at: {
      ...places(STOCK, 0),
      ...Object.fromEntries(Object.entries(places(SALES, right)).map(([k, v]) => [`s.${k}`, v])),
    },
  };
}

const WATER: readonly Head[] = [
  ['date', ['Date', 'Date', 'Data', 'Fecha', 'Tgl', 'Tarehe'], ['date']],
  ['tank', ['Vat', 'Cuve', 'Caixa', 'Tina', 'Bak', 'Tangi'], ['vat']],
  [
    'am',
    ['Temp morning', 'Temp. matin', 'Temp. manhã', 'Temp. mañana', 'Suhu pagi', 'Joto asubuhi'],
    ['temperatureLow', 'temperature'],
  ],
  [
    'pm',
    ['Temp evening', 'Temp. soir', 'Temp. tarde', 'Temp. tarde', 'Suhu sore', 'Joto jioni'],
    ['temperatureHigh', 'temperature'],
  ],
  ['ph', ['pH', 'pH', 'pH', 'pH', 'pH', 'pH'], ['ph']],
  ['o2', ['Oxygen', 'Oxygène', 'Oxigênio', 'Oxígeno', 'Oksigen', 'Oksijeni'], ['oxygen']],
];
function water(draw: Draw, language: number): Made {
  const page = new Page('Log');
  headed(page, WATER, language, 0, 0);
  const rows = 24;
  for (let r = 0; r < rows; r++) {
    const low = round(draw.between(25, 27), 1);
    const line = [
      FIRST + Math.floor(r / 2),
      `V${1 + (r % 2)}`,
      low,
      round(low + draw.between(1, 2.5), 1),
      round(draw.between(6.6, 7.4), 1),
      round(draw.between(5, 7), 1),
    ];
    for (const [i, cell] of line.entries()) page.put(1 + r, i, cell, i === 0 ? DAY : 'General');
  }
  return { page, columns: described(page, WATER, 1, 0), top: 1, rows, at: places(WATER, 0) };
}

/** One form a sheet, the same spawnings line by line. */
function forms(draw: Draw, language: number): { readonly pages: Page[]; readonly columns: StrangeColumn[] } {
  const { page, top, rows, at } = spawnings(draw, language);
  const left = at.run ?? 0;
  const columns: StrangeColumn[] = [];
  const pages = Array.from({ length: Math.min(10, rows) }, (_, r) => {
    const form = new Page(`F${r + 1}`);
    form.put(0, 0, `No. ${r + 1}`);
    for (const [i, [, texts, fields]] of SPAWN.entries()) {
      if (i === 0) continue;
      form.put(1 + i, 0, texts[language] ?? '');
      form.put(1 + i, 1, page.cells[top + r]?.[left + i] ?? null, i === 1 ? DAY : 'General');
      columns.push({ sheet: form.name, row: 1 + i, column: 1, fields });
    }
    return form;
  });
  return { pages, columns };
}

export const LANGUAGE_NAMES = [
  'English',
  'French',
  'Portuguese',
  'Spanish',
  'Indonesian',
  'Swahili',
] as const;
type Shape = 'spawnings' | 'matrix' | 'besides' | 'water';
const SHAPES = { spawnings, matrix, besides, water } as const;

type Spoil = (made: Made, row: number, draw: Draw) => StrangeFault['cells'] | undefined;
const set = ({ page }: Made, row: number, column: number, change: (x: number) => ExampleCell): void => {
  const format = page.formats[row]?.[column] ?? 'General';
  page.put(row, column, change(page.number(row, column)), format);
};
/** Changes one number; `others` are columns of the line it then contradicts. */
const one =
  (name: string, change: (x: number, draw: Draw) => ExampleCell, others: readonly string[] = []): Spoil =>
  (made, row, draw) => {
    const column = made.at[name] ?? 0;
    const before = made.page.number(row, column);
    if (!(before > 0)) return undefined;
    set(made, row, column, (x) => change(x, draw));
    return made.page.number(row, column) === before
      ? undefined
      : [[row, column], ...others.map((other) => [row, made.at[other] ?? 0] as const)];
  };
const turned = (x: number): number => {
  const text = String(x);
  const i = [...text].findIndex(
    (digit, at) => at > 0 && digit !== text[at - 1] && /\d/.test(digit) && /\d/.test(text[at - 1] ?? ''),
  );
  if (i < 0) return x;
  return Number(`${text.slice(0, i - 1)}${text[i] ?? ''}${text[i - 1] ?? ''}${text.slice(i + 1)}`);
};
const month = (x: number): number => x + 31;

const FAULTS: readonly (readonly [kind: string, shape: Shape, spoil: Spoil])[] = [
  ['nought too many', 'spawnings', one('female', (x) => 10 * x)],
  ['mark lost', 'spawnings', one('dose', (x) => 10 * x, ['female'])],
  ['nought too many', 'spawnings', one('eggs', (x) => 10 * x, ['grams', 'per', 'larvae'])],
  ['digits turned', 'spawnings', one('eggs', turned, ['grams', 'per'])],
  ['digits turned', 'spawnings', one('grams', turned, ['eggs', 'per'])],
  ['more out than in', 'spawnings', one('larvae', (x) => 4 * x, ['eggs'])],
  ['minus', 'spawnings', one('larvae', (x) => -x)],
  ['a word', 'spawnings', one('per', () => 'abt')],
  ['wrong month', 'spawnings', one('date', month)],
  ['wrong year', 'spawnings', one('date', (x) => x - 365)],
  [
    'no such hour',
    'spawnings',
    (made, row) => {
      made.page.put(row, made.at.in ?? 0, '25:40');
      return [[row, made.at.in ?? 0]];
    },
  ],
  [
    'morning for evening',
    'spawnings',
    (made, row) => {
      made.page.put(row, made.at.in ?? 0, '08:35');
      return [
        [row, made.at.in ?? 0],
        [row, made.at.out ?? 0],
      ];
    },
  ],
  [
    'entered twice',
    'spawnings',
    (made, row) => {
      for (let i = 1; i < SPAWN.length; i++)
        made.page.put(
          row,
          (made.at.run ?? 0) + i,
          made.page.cells[row - 1]?.[(made.at.run ?? 0) + i] ?? null,
          i === 1 ? DAY : 'General',
        );
      return SPAWN.flatMap((_, i) => [
        [row, (made.at.run ?? 0) + i] as const,
        [row - 1, (made.at.run ?? 0) + i] as const,
      ]);
    },
  ],
  [
    'number twice',
    'spawnings',
    (made, row) => {
      made.page.put(row, made.at.run ?? 0, made.page.cells[row - 1]?.[made.at.run ?? 0] ?? null);
      return [
        [row, made.at.run ?? 0],
        [row - 1, made.at.run ?? 0],
      ];
    },
  ],
  ['sum at the side', 'matrix', one('sum', (x) => x + 10)],
  ['digits turned', 'matrix', one('tank', (x) => x + 27, ['sum'])],
  [
    'sum at the foot',
    'matrix',
    (made) => {
      const row = made.top + made.rows;
      set(made, row, made.at.tank ?? 1, (x) => x + 10);
      return [
        [row, made.at.tank ?? 1],
        [row, made.at.sum ?? 1],
      ];
    },
  ],
  ['wrong month', 'matrix', one('date', month)],
  ['minus', 'matrix', one('sum', (x) => -x)],
  ['ledger', 'besides', one('close', (x) => x + 1000, ['open', 'in', 'dead', 'sold'])],
  ['ledger', 'besides', one('open', turned, ['close', 'in', 'dead', 'sold'])],
  ['more than there was', 'besides', one('dead', (x) => 1000 * x, ['open', 'close'])],
  ['product', 'besides', one('s.money', turned, ['s.n', 's.price', 's.paid', 's.owed'])],
  ['nought too many', 'besides', one('s.price', (x) => 10 * x, ['s.n', 's.money'])],
  ['owed', 'besides', one('s.owed', (x) => x + 500, ['s.money', 's.paid'])],
  ['a word', 'besides', one('s.n', () => '4oo')],
  ['Fahrenheit', 'water', one('am', (x) => round(1.8 * x + 32, 1))],
  ['mark lost', 'water', one('ph', (x) => 10 * x)],
  ['nought too many', 'water', one('o2', (x) => 10 * x)],
  [
    'columns exchanged',
    'water',
    (made, row) => {
      const [a, b] = [made.at.am ?? 0, made.at.pm ?? 0];
      const [x, y] = [made.page.number(row, a), made.page.number(row, b)];
      made.page.put(row, a, y);
      made.page.put(row, b, x);
      return [
        [row, a],
        [row, b],
      ];
    },
  ],
  ['wrong year', 'water', one('date', (x) => x + 366)],
];

const tableBook = (shape: Shape, language: number, seed: number): Made =>
  SHAPES[shape](drawer(seed), language);

/** Clean books: every shape in every language, and forms one a sheet. */
export const cleanStrangers = (seed: number): StrangeBook[] =>
  LANGUAGE_NAMES.flatMap((name, language): StrangeBook[] => [
    ...(Object.keys(SHAPES) as Shape[]).map((shape, k): StrangeBook => {
      const { page, columns } = tableBook(shape, language, seed + 31 * language + k);
      return { name: `${name} ${shape}`, sheets: [page], columns };
    }),
    ((): StrangeBook => {
      const { pages, columns } = forms(drawer(seed + 31 * language + 9), language);
      return { name: `${name} forms`, sheets: pages, columns };
    })(),
  ]);

/** One fault a book, in two languages each. */
export const spoiltStrangers = (seed: number, each: number): StrangeBook[] =>
  FAULTS.flatMap(([kind, shape, spoil], f) =>
    Array.from({ length: each }, (_, time): StrangeBook | undefined => {
      const language = (f + time) % LANGUAGE_NAMES.length;
      const draw = drawer(seed + 900 + 13 * f + time);
      const made = tableBook(shape, language, seed + 500 + 13 * f + time);
      for (let tries = 0; tries < 12; tries++) {
        const row = made.top + 3 + Math.floor(draw.between(0, made.rows - 5));
        const cells = spoil(made, row, draw);
        if (cells)
          return {
            name: `${LANGUAGE_NAMES[language] ?? ''} ${shape}`,
            sheets: [made.page],
            columns: made.columns,
            fault: { kind, sheet: made.page.name, cells },
          };
      }
      return undefined;
    }).filter((book) => book !== undefined),
  );
