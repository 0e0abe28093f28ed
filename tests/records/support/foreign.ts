// Long: books of invented farms in five languages, with headings as people there write them (from memory)
import type { FieldName } from '../../../shared/records/fields';
import type { ExampleCell } from '../../../shared/records/rules/rule';
import { drawer, round } from './farm';
import type { Draw } from './farm';

/** One column of a made book: what its header says, what it means, and where its cells stand. */
export interface MadeColumn {
  readonly field: FieldName | undefined;
  readonly column: number;
  readonly top: number;
  readonly rows: number;
}
export interface MadeBook {
  readonly name: string;
  readonly cells: ExampleCell[][];
  readonly formats: string[][];
  readonly columns: readonly MadeColumn[];
}

type Kind = 'spawn' | 'water' | 'stock' | 'sales' | 'feed' | 'cash';
type Heads = Readonly<Record<string, string>>;
interface Language {
  readonly name: string;
  readonly title: Readonly<Record<Kind, string>>;
  readonly heads: Readonly<Record<Kind, Heads>>;
  readonly total: string;
  readonly clock: (share: number) => string | number;
  readonly hormone: string;
  readonly buyers: readonly string[];
  readonly things: readonly string[];
}

const two = (n: number): string => String(n).padStart(2, '0');
const hm = (share: number, mark: string): string => {
  const minutes = Math.round(share * 1440) % 1440;
  return `${two(Math.floor(minutes / 60))}${mark}${two(minutes % 60)}`;
};

export const LANGUAGES: readonly Language[] = [
  {
    name: 'French',
    title: {
      spawn: 'Reproductions du trimestre',
      water: 'Suivi eau bacs',
      stock: 'Inventaire bac 3',
      sales: 'Carnet de vente',
      feed: 'Pesées et rations',
      cash: 'Caisse',
    },
    heads: {
      spawn: {
        run: 'N° de ponte',
        date: 'Jour',
        femaleWeight: 'Poids géniteur femelle (kg)',
        hormoneVolume: 'Quantité injectée (ml)',
        injected: "Heure d'injection",
        stripped: 'Heure du stripping',
        eggWeight: 'Masse des œufs (g)',
        eggsPerGram: "Nb d'œufs/g",
        eggs: "Nombre d'œufs",
        fertilisedShare: 'Taux de fécondation %',
        hatchShare: "Taux d'éclosion %",
        hatched: 'Larves obtenues',
        note: 'Observations',
      },
      water: {
        date: 'Date',
        vat: 'Bac',
        temperature: 'Température eau',
        ph: 'pH initial',
        materialDose: 'Bicarbonate ajouté (g)',
        phAfter: 'pH final',
        oxygen: 'O2 dissous mg/l',
        volume: 'Volume (litres)',
      },
      stock: {
        date: 'Date',
        opening: 'Stock initial',
        movedIn: 'Entrées',
        dead: 'Morts',
        sold: 'Vendus',
        closing: 'Stock final',
      },
      sales: {
        date: 'Date',
        customer: 'Acheteur',
        sold: 'Nombre vendu',
        priceEach: 'Prix unitaire FCFA',
        amount: 'Montant total',
        paid: 'Payé',
        due: 'Reste dû',
      },
      feed: {
        date: 'Date',
        fish: 'Effectif',
        weight: 'Poids moyen (g)',
        biomass: 'Biomasse (kg)',
        ration: 'Taux de nourrissage %',
        feed: 'Aliment distribué (g)',
      },
      cash: {
        date: 'Date',
        description: 'Libellé',
        income: 'Recettes',
        expense: 'Dépenses',
        balance: 'Solde',
      },
    },
    total: 'Total général',
    clock: (share) => hm(share, 'h'),
    hormone: 'hypophyse',
    buyers: ['M. Akossi', 'Ferme du lac', 'Mme Tchibo', 'Coop Ouidah'],
    things: ['aliment 2 mm', 'transport', 'sel', 'filets', 'main d’œuvre'],
  },
  {
    name: 'Portuguese',
    title: {
      spawn: 'Desovas',
      water: 'Controle da água',
      stock: 'Movimento do tanque',
      sales: 'Vendas',
      feed: 'Arraçoamento',
      cash: 'Fluxo de caixa',
    },
    heads: {
      spawn: {
        run: 'Nº da desova',
        date: 'Data',
        femaleWeight: 'Peso da matriz (kg)',
        hormoneVolume: 'Dose aplicada (mL)',
        injected: 'Hora da injeção',
        stripped: 'Hora da extrusão',
        eggWeight: 'Peso dos ovos (g)',
        eggsPerGram: 'Ovos por grama',
        eggs: 'Total de ovos',
        fertilisedShare: 'Fertilização (%)',
        hatchShare: 'Eclosão (%)',
        hatched: 'Larvas eclodidas',
        note: 'Obs.',
      },
      water: {
        date: 'Data',
        vat: 'Tanque',
        temperature: 'Temp. água (°C)',
        ph: 'pH antes',
        materialDose: 'Bicarbonato (g)',
        phAfter: 'pH depois',
        oxygen: 'OD (mg/L)',
        volume: 'Volume (L)',
      },
      stock: {
        date: 'Data',
        opening: 'Estoque inicial',
        movedIn: 'Entrada',
        dead: 'Mortalidade',
        sold: 'Vendidos',
        closing: 'Estoque final',
      },
      sales: {
        date: 'Data',
        customer: 'Cliente',
        sold: 'Qtd vendida',
        priceEach: 'Preço unit. (R$)',
        amount: 'Valor total',
        paid: 'Pago',
        due: 'A receber',
      },
      feed: {
        date: 'Data',
        fish: 'Nº de peixes',
        weight: 'Peso médio (g)',
        biomass: 'Biomassa (kg)',
        ration: 'Taxa alimentar %',
        feed: 'Ração (g)',
      },
      cash: {
        date: 'Data',
        description: 'Histórico',
        income: 'Entradas',
        expense: 'Saídas',
        balance: 'Saldo',
      },
    },
    total: 'Total geral',
    clock: (share) => hm(share, ':'),
    hormone: 'hipófise',
    buyers: ['Sítio Boa Vista', 'João', 'Dona Rita', 'Pesque e pague'],
    things: ['ração', 'frete', 'energia', 'cal', 'diária'],
  },
  {
    name: 'Spanish',
    title: {
      spawn: 'Desoves inducidos',
      water: 'Calidad de agua',
      stock: 'Kardex pila 2',
      sales: 'Ventas de alevines',
      feed: 'Muestreo y alimento',
      cash: 'Caja chica',
    },
    heads: {
      spawn: {
        run: 'Lote',
        date: 'Fecha',
        femaleWeight: 'Peso hembra (kg)',
        hormoneVolume: 'Volumen de hormona (cc)',
        injected: 'Hora inyección',
        stripped: 'Hora de desove',
        eggWeight: 'Peso de huevos (g)',
        eggsPerGram: 'Huevos/gramo',
        eggs: 'Huevos totales',
        fertilisedShare: '% fertilización',
        hatchShare: '% eclosión',
        hatched: 'Larvas',
        note: 'Observaciones',
      },
      water: {
        date: 'Fecha',
        vat: 'Pila',
        temperature: 'Temperatura °C',
        ph: 'pH inicial',
        materialDose: 'Bicarbonato (g)',
        phAfter: 'pH final',
        oxygen: 'Oxígeno mg/l',
        volume: 'Volumen (L)',
      },
      stock: {
        date: 'Fecha',
        opening: 'Existencia inicial',
        movedIn: 'Ingresos',
        dead: 'Muertos',
        sold: 'Vendidos',
        closing: 'Existencia final',
      },
      sales: {
        date: 'Fecha',
        customer: 'Comprador',
        sold: 'Cantidad',
        priceEach: 'Precio unitario',
        amount: 'Total $',
        paid: 'Abono',
        due: 'Saldo pendiente',
      },
      feed: {
        date: 'Fecha',
        fish: 'N° de peces',
        weight: 'Peso promedio (g)',
        biomass: 'Biomasa (kg)',
        ration: 'Tasa de alimentación %',
        feed: 'Alimento (g)',
      },
      cash: {
        date: 'Fecha',
        description: 'Concepto',
        income: 'Ingreso',
        expense: 'Egreso',
        balance: 'Saldo',
      },
    },
    total: 'Total',
    clock: (share) => hm(share, ':'),
    hormone: 'hipófisis',
    buyers: ['Finca El Roble', 'Marta', 'Don Chepe', 'Coop. Azul'],
    things: ['alimento', 'flete', 'luz', 'cal', 'jornal'],
  },
  {
    name: 'Indonesian',
    title: {
      spawn: 'Data pemijahan',
      water: 'Kualitas air',
      stock: 'Kartu stok kolam',
      sales: 'Buku penjualan',
      feed: 'Sampling dan pakan',
      cash: 'Buku kas',
    },
    heads: {
      spawn: {
        run: 'No. pemijahan',
        date: 'Tanggal',
        femaleWeight: 'Berat induk betina (kg)',
        hormoneVolume: 'Dosis suntik (ml)',
        injected: 'Jam suntik',
        stripped: 'Jam stripping',
        eggWeight: 'Berat telur (g)',
        eggsPerGram: 'Butir telur/g',
        eggs: 'Jumlah telur',
        fertilisedShare: 'FR (%)',
        hatchShare: 'Daya tetas (%)',
        hatched: 'Jumlah larva',
        note: 'Keterangan',
      },
      water: {
        date: 'Tgl',
        vat: 'Kolam',
        temperature: 'Suhu air (°C)',
        ph: 'pH awal',
        materialDose: 'Soda kue (g)',
        phAfter: 'pH akhir',
        oxygen: 'DO (mg/l)',
        volume: 'Volume air (liter)',
      },
      stock: {
        date: 'Tgl',
        opening: 'Stok awal',
        movedIn: 'Masuk',
        dead: 'Mati',
        sold: 'Terjual',
        closing: 'Stok akhir',
      },
      sales: {
        date: 'Tanggal',
        customer: 'Pembeli',
        sold: 'Jumlah ekor',
        priceEach: 'Harga/ekor',
        amount: 'Total harga (Rp)',
        paid: 'Dibayar',
        due: 'Sisa bayar',
      },
      feed: {
        date: 'Tanggal',
        fish: 'Populasi (ekor)',
        weight: 'Berat rata-rata (g)',
        biomass: 'Biomassa (kg)',
        ration: 'FR %',
        feed: 'Pakan (g)',
      },
      cash: {
        date: 'Tanggal',
        description: 'Uraian',
        income: 'Pemasukan',
        expense: 'Pengeluaran',
        balance: 'Saldo',
      },
    },
    total: 'Jumlah',
    clock: (share) => hm(share, '.'),
    hormone: 'hipofisa',
    buyers: ['Pak Budi', 'Bu Sri', 'UD Mina', 'Kang Asep'],
    things: ['pakan', 'bensin', 'listrik', 'kapur', 'upah'],
  },
  {
    name: 'Swahili and English',
    title: {
      spawn: 'Spawning book',
      water: 'Maji ya matanki',
      stock: 'Stock card pond B',
      sales: 'Mauzo ya vifaranga',
      feed: 'Feeding sheet',
      cash: 'Petty cash',
    },
    heads: {
      spawn: {
        run: 'Spawn No.',
        date: 'Tarehe',
        femaleWeight: 'Female wt (kg)',
        hormoneVolume: 'Hormone (ml)',
        injected: 'Time injected',
        stripped: 'Time stripped',
        eggWeight: 'Eggs wt (g)',
        eggsPerGram: 'Eggs per g',
        eggs: 'Total eggs',
        fertilisedShare: 'Fert. rate %',
        hatchShare: 'Hatch rate %',
        hatched: 'No. of hatchlings',
        note: 'Remarks',
      },
      water: {
        date: 'Tarehe',
        vat: 'Tanki',
        temperature: 'Joto la maji',
        ph: 'pH before',
        materialDose: 'Baking soda (g)',
        phAfter: 'pH after',
        oxygen: 'DO mg/l',
        volume: 'Water vol (l)',
      },
      stock: {
        date: 'Date',
        opening: 'Opening stock',
        movedIn: 'Received',
        dead: 'Mortality',
        sold: 'Sold',
        closing: 'Closing stock',
      },
      sales: {
        date: 'Tarehe',
        customer: 'Mteja',
        sold: 'Idadi ya samaki',
        priceEach: 'Bei moja',
        amount: 'Jumla ya pesa',
        paid: 'Amelipa',
        due: 'Salio',
      },
      feed: {
        date: 'Date',
        fish: 'No. of fish',
        weight: 'ABW (g)',
        biomass: 'Biomass (kg)',
        ration: 'Feeding rate (%)',
        feed: 'Feed given (g)',
      },
      cash: {
        date: 'Date',
        description: 'Particulars',
        income: 'Mapato',
        expense: 'Matumizi',
        balance: 'Balance',
      },
    },
    total: 'Jumla',
    clock: (share) => hm(share, ':'),
    hormone: 'pituitary',
    buyers: ['Otieno', 'Mama Njeri', 'Green Farm', 'Wekesa'],
    things: ['chakula', 'usafiri', 'stima', 'chokaa', 'kibarua'],
  },
];

export const KINDS: readonly Kind[] = ['spawn', 'water', 'stock', 'sales', 'feed', 'cash'];
const FIRST = 45_700;
type Row = Record<string, number | string | null>;

function spawnRows(draw: Draw, rows: number, language: Language): Row[] {
  const per = draw.between(610, 740);
  return Array.from({ length: rows }, (_, i): Row => {
    const weight = round(draw.between(0.8, 2.4), 2);
    const eggWeight = Math.round(weight * 1000 * draw.between(0.09, 0.16));
    const perGram = Math.round(draw.bell(per, 22));
    const eggs = eggWeight * perGram;
    const fertilised = Math.round(100 * draw.between(0.7, 0.9));
    const hatch = Math.round(100 * draw.between(0.55, 0.75));
    const injected = draw.between(0.83, 0.95);
    return {
      run: `P${i + 1}`,
      date: FIRST + 7 * i + Math.floor(draw.between(0, 4)),
      femaleWeight: weight,
      hormoneVolume: round(0.5 * weight, 2),
      injected: language.clock(injected),
      stripped: language.clock(injected + draw.between(0.42, 0.48) - 1),
      eggWeight,
      eggsPerGram: perGram,
      eggs,
      fertilisedShare: fertilised,
      hatchShare: hatch,
      hatched: Math.round((eggs * fertilised * hatch) / 1e4),
      note: i % 5 === 2 ? '...' : null,
    };
  });
}

function waterRows(draw: Draw, rows: number): Row[] {
  return Array.from({ length: rows }, (_, i): Row => {
    const ph = round(draw.bell(6.1, 0.15), 1);
    return {
      date: FIRST + Math.floor(i / 3),
      vat: `B${(i % 3) + 1}`,
      temperature: round(draw.bell(26.5, 0.9), 1),
      ph,
      materialDose: [60, 80, 100][i % 3] ?? 60,
      phAfter: round(ph + draw.between(0.5, 0.9), 1),
      oxygen: round(draw.bell(5.8, 0.5), 1),
      volume: [600, 800, 1000][i % 3] ?? 600,
    };
  });
}

function stockRows(draw: Draw, rows: number): Row[] {
  let closing = 20_000;
  return Array.from({ length: rows }, (_, i): Row => {
    const opening = closing;
    const movedIn = i % 6 === 3 ? 500 * Math.floor(draw.between(2, 9)) : 0;
    const dead = Math.floor(draw.between(3, 60));
    const sold = i % 3 === 1 ? 100 * Math.floor(draw.between(2, 14)) : 0;
    closing = opening + movedIn - dead - sold;
    return { date: FIRST + 2 * i, opening, movedIn, dead, sold, closing };
  });
}

function salesRows(draw: Draw, rows: number, { buyers }: Language): Row[] {
  const price = draw.pick([35, 45, 60]);
  return Array.from({ length: rows }, (_, i): Row => {
    const sold = 50 * Math.floor(draw.between(4, 80));
    const each = price + 5 * Math.floor(draw.between(0, 3));
    const amount = sold * each;
    const paid = i % 4 === 1 ? 1000 * Math.floor(amount / 2500) : amount;
    return {
      date: FIRST + 3 * i,
      customer: draw.pick(buyers),
      sold,
      priceEach: each,
      amount,
      paid,
      due: amount - paid,
    };
  });
}

function feedRows(draw: Draw, rows: number): Row[] {
  let fish = 5200;
  let weight = 0.8;
  return Array.from({ length: rows }, (_, i): Row => {
    fish -= Math.floor(draw.between(5, 60));
    weight = round(weight * draw.between(1.2, 1.32), 1 + Number(weight < 1));
    const biomass = round((fish * weight) / 1000, 2);
    const ration = Math.max(3, 12 - i);
    return { date: FIRST + 7 * i, fish, weight, biomass, ration, feed: Math.round(biomass * ration * 10) };
  });
}

function cashRows(draw: Draw, rows: number, { things, buyers }: Language): Row[] {
  let balance = 250_000;
  return Array.from({ length: rows }, (_, i): Row => {
    const isIncome = i % 3 === 0;
    const income = isIncome ? 500 * Math.floor(draw.between(40, 260)) : null;
    const expense = isIncome ? null : 500 * Math.floor(draw.between(5, 80));
    balance += (income ?? 0) - (expense ?? 0);
    return {
      date: FIRST + 2 * i,
      description: isIncome ? draw.pick(buyers) : draw.pick(things),
      income,
      expense,
      balance,
    };
  });
}

const ROWS: Readonly<Record<Kind, (draw: Draw, rows: number, language: Language) => Row[]>> = {
  spawn: spawnRows,
  water: waterRows,
  stock: stockRows,
  sales: salesRows,
  feed: feedRows,
  cash: cashRows,
};
const SIZE: Readonly<Record<Kind, number>> = {
  spawn: 16,
  water: 24,
  stock: 18,
  sales: 16,
  feed: 9,
  cash: 18,
};
const DATED: readonly string[] = ['date'];

/** A book of one table, with a title, two empty columns before it and a total where one is usual. */
export function madeTable(language: Language, kind: Kind, seed: number): MadeBook {
  const draw = drawer(seed);
  const heads = language.heads[kind];
  const fields = Object.keys(heads);
  const rows = ROWS[kind](draw, SIZE[kind], language);
  const left = seed % 2;
  const top = 2 + (seed % 2);
  const cells: ExampleCell[][] = [];
  const formats: string[][] = [];
  const put = (row: number, column: number, cell: ExampleCell, format = 'General'): void => {
    while (cells.length <= row) {
      cells.push([]);
      formats.push([]);
    }
    const [line, look] = [cells[row] ?? [], formats[row] ?? []];
    while (line.length <= column) {
      line.push(null);
      look.push('General');
    }
    line[column] = cell;
    look[column] = format;
  };
  put(0, left, `${language.title[kind]} 2025`);
  for (const [i, field] of fields.entries()) put(top, left + i, heads[field] ?? '');
  for (const [r, row] of rows.entries())
    for (const [i, field] of fields.entries())
      put(top + 1 + r, left + i, row[field] ?? null, DATED.includes(field) ? 'dd/mm/yyyy' : 'General');
  const summed = fields.filter((field) =>
    ['dead', 'sold', 'amount', 'paid', 'income', 'expense'].includes(field),
  );
  if (summed.length > 0 && kind !== 'stock') {
    put(top + 1 + rows.length, left, language.total);
    for (const field of summed)
      put(
        top + 1 + rows.length,
        left + fields.indexOf(field),
        rows.reduce((sum, row) => sum + Number(row[field] ?? 0), 0),
      );
  }
  return {
    name: `${language.name} ${kind}`,
    cells,
    formats,
    columns: fields.map((field, i) => ({
      field: field === 'note' ? undefined : (field as FieldName),
      column: left + i,
      top: top + 1,
      rows: rows.length,
    })),
  };
}

/** Forms below each other on one sheet: a label, then its value. */
export function madeForms(language: Language, seed: number): MadeBook {
  const draw = drawer(seed);
  const heads = language.heads.spawn;
  const fields = Object.keys(heads).filter((field) => field !== 'note');
  const runs = spawnRows(draw, 8, language);
  const cells: ExampleCell[][] = [];
  const formats: string[][] = [];
  const columns: MadeColumn[] = [];
  for (const run of runs) {
    for (const field of fields) {
      columns.push({ field: field as FieldName, column: 1, top: cells.length, rows: 1 });
      cells.push([heads[field] ?? '', run[field] ?? null]);
      formats.push(['General', field === 'date' ? 'dd/mm/yyyy' : 'General']);
    }
    cells.push([]);
    formats.push([]);
  }
  return { name: `${language.name} forms`, cells, formats, columns };
}

/** Deaths by day and tank, with the sum at the side and at the foot. */
export function madeMatrix(language: Language, seed: number): MadeBook {
  const draw = drawer(seed);
  const tanks = ['T1', 'T2', 'T3', 'T4'];
  const days = 20;
  const cells: ExampleCell[][] = [
    [`${language.heads.stock.dead ?? ''}`],
    [],
    [language.heads.stock.date ?? '', ...tanks, language.total],
  ];
  const formats: string[][] = [['General'], [], []];
  const foot = tanks.map(() => 0);
  for (let day = 0; day < days; day++) {
    const dead = tanks.map(() => Math.floor(draw.between(0, 30)));
    for (const [i, n] of dead.entries()) foot[i] = (foot[i] ?? 0) + n;
    cells.push([FIRST + day, ...dead, dead.reduce((a, b) => a + b, 0)]);
    formats.push(['dd/mm/yyyy', ...tanks.map(() => 'General'), 'General']);
  }
  cells.push([language.total, ...foot, foot.reduce((a, b) => a + b, 0)]);
  formats.push([]);
  return {
    name: `${language.name} matrix`,
    cells,
    formats,
    columns: [
      { field: 'date', column: 0, top: 3, rows: days },
      ...tanks.map((_, i): MadeColumn => ({ field: 'dead', column: i + 1, top: 3, rows: days })),
    ],
  };
}

export const foreignBooks = (seed: number): MadeBook[] =>
  LANGUAGES.flatMap((language, i) => [
    ...KINDS.map((kind, k) => madeTable(language, kind, seed + 17 * i + k)),
    madeForms(language, seed + 17 * i + 8),
    madeMatrix(language, seed + 17 * i + 9),
  ]);
