import type { FieldName } from '../../../shared/records/fields';
import { bell, chance } from '../../support/chance';

/**
 * Record books of invented farms. A farm keeps four tables: spawning runs, batches in vats, water dosing and
 * daily feed. Numbers are drawn with the spread such numbers have; times follow from temperature by
 * degree-hours, not by the code under test.
 */
export type Value = number | string | null;
export type FarmRow = Partial<Record<FieldName, Value>>;
export interface FarmTable {
  readonly name: string;
  readonly fields: readonly FieldName[];
  readonly rows: FarmRow[];
  formula?: { readonly field: FieldName; readonly of: readonly [FieldName, FieldName] };
}
export interface Farm {
  readonly tables: readonly FarmTable[];
}

export interface Draw {
  readonly random: () => number;
  readonly between: (a: number, b: number) => number;
  readonly bell: (mean: number, sd: number) => number;
  readonly pick: <T>(list: readonly T[]) => T;
}
export const drawer = (seed: number): Draw => {
  const random = chance(seed);
  for (let i = 0; i < 5; i++) random();
  return {
    random,
    between: (a, b) => a + (b - a) * random(),
    bell: (mean, sd) => mean + sd * Math.max(-2.6, Math.min(2.6, bell(random))),
    pick: (list) => list[Math.floor(random() * list.length)] as (typeof list)[number],
  };
};
export const round = (value: number, digits: number): number =>
  Math.round(value * 10 ** digits) / 10 ** digits;
/** Whole minutes, as clocks are read. */
const minute = (serial: number): number => Math.round(serial * 1440) / 1440;

const FIRST_DAY = 45_900;

function spawning(draw: Draw, rows: number, isWild: boolean): FarmTable {
  const perGram = draw.between(620, 760);
  const good = draw.between(0.74, 0.86);
  const hatch = draw.between(0.5, 0.66);
  const alive = draw.between(0.55, 0.72);
  const preparation = isWild
    ? draw.pick(['pituitary', 'ready-made solution', 'pituitary extract'])
    : 'pituitary';
  // °C·h over 15.4 °C from injection to strip: 102 by the handbook table, 108 and 132 measured (Okere et al.
  // 2015).
  const warmth = isWild
    ? ({ pituitary: 104, 'ready-made solution': 112, 'pituitary extract': 128 }[preparation] ?? 104)
    : draw.pick([102, 108]);
  let day = FIRST_DAY + Math.floor(draw.between(0, 300));
  const list = Array.from({ length: rows }, (_, i): FarmRow => {
    day += 1 + Math.floor(draw.between(0, 6));
    // In the dry season females give less and less of it hatches; water swings more on a farm in the open.
    const season = isWild ? 0.55 + 0.45 * Math.cos((2 * Math.PI * (day - FIRST_DAY)) / 365) ** 2 : 1;
    const femaleWeight = round(draw.between(isWild ? 0.45 : 0.8, isWild ? 3.6 : 1.9), 2);
    const temperature = round(draw.bell(26.6, isWild ? 1.2 : 0.8), 1);
    const injected = minute(day + draw.between(0.77, 0.9));
    const stripped = minute(injected + ((warmth / (temperature - 15.4)) * draw.bell(1, 0.02)) / 24);
    const fertilisedAt = minute(stripped + draw.between(0.006, 0.02));
    const incubationTemperature = round(temperature + draw.between(-0.4, 0.8), 1);
    const hatchedAt = minute(
      fertilisedAt + ((280 / (incubationTemperature - 15.4)) * draw.bell(1, 0.02)) / 24,
    );
    const eggWeight = round(1000 * femaleWeight * draw.bell(0.13 * season, 0.015), 1);
    const eggsPerGram = Math.round(draw.bell(perGram, 28));
    const eggs = Math.round(eggWeight * eggsPerGram);
    const sampleSize = 80 + Math.floor(draw.between(0, 60));
    const sampleGood = Math.round(sampleSize * Math.min(0.97, draw.bell(good, 0.045)));
    const fertilisedShare = round(sampleGood / sampleSize, 2);
    const fertilised = Math.round(eggs * fertilisedShare);
    const hatchShare = round(draw.bell(hatch * season, isWild ? 0.08 : 0.05), 2);
    const hatched = Math.round(fertilised * (hatchShare + draw.between(-0.004, 0.004)));
    const survival = round(draw.bell(alive, 0.05), 2);
    return {
      run: `S${i + 1}`,
      date: day,
      female: `F${1 + Math.floor(draw.between(0, 40))}`,
      femaleWeight,
      preparation,
      hormoneDose: 0.5,
      hormoneVolume: round(femaleWeight * 0.5, 2),
      injected,
      temperature,
      stripped,
      eggWeight,
      eggsPerGram,
      eggs,
      sampleSize,
      sampleGood,
      fertilisedShare,
      fertilised,
      fertilisedAt,
      incubationTemperature,
      hatchedAt,
      hatched,
      hatchShare,
      fry: Math.round(hatched * (survival + draw.between(-0.004, 0.004))),
      survival,
    };
  });
  return {
    name: 'Spawning',
    fields: Object.keys(list[0] ?? {}) as FieldName[],
    rows: list,
    formula: { field: 'eggs', of: ['eggWeight', 'eggsPerGram'] },
  };
}

function batches(draw: Draw, rows: number): FarmTable {
  const free = [1, 2, 3, 4, 5, 6].map((vat) => ({ vat, from: FIRST_DAY + vat * 3 }));
  const list = Array.from({ length: rows }, (_, i): FarmRow => {
    const place = free.reduce((a, b) => (b.from < a.from ? b : a));
    const stockedAt = place.from;
    const days = 24 + Math.floor(draw.between(0, 12));
    const emptiedAt = stockedAt + days;
    place.from = emptiedAt + 1 + Math.floor(draw.between(0, 5));
    const stocked = Math.round(draw.between(3800, 6200));
    const startWeight = round(draw.between(0.8, 1.6), 2);
    const rate = draw.bell(6.4, 0.4);
    const endWeight = round(startWeight * Math.exp((rate * days) / 100), 2);
    const survival = round(draw.bell(0.82, 0.03), 2);
    const alive = Math.round(stocked * (survival + draw.between(-0.004, 0.004)));
    const feed = Math.round((endWeight * alive - startWeight * stocked) * draw.bell(1.15, 0.06));
    return {
      run: `B${i + 1}`,
      vat: `V${place.vat}`,
      stockedAt,
      stocked,
      startWeight,
      emptiedAt,
      days,
      alive,
      survival,
      endWeight,
      feed,
      growthRate: round((100 * Math.log(endWeight / startWeight)) / days, 2),
      conversion: round(feed / (endWeight * alive - startWeight * stocked), 2),
    };
  });
  return { name: 'Batches', fields: Object.keys(list[0] ?? {}) as FieldName[], rows: list };
}

/** Soft water dosed with soda ash to about neutral; 3 to 30 mg/L is what such water takes. */
function dosing(draw: Draw, rows: number): FarmTable {
  let day = FIRST_DAY;
  const list = Array.from({ length: rows }, (): FarmRow => {
    day += Math.floor(draw.between(0, 3));
    const volume = draw.pick([400, 800, 1000, 1500]);
    const ph = round(draw.bell(5.9, 0.15), 1);
    return {
      date: day,
      vat: `V${1 + Math.floor(draw.between(0, 6))}`,
      volume,
      ph,
      material: 'soda ash',
      materialDose: round((volume * draw.between(12, 18)) / 1000, 1),
      phAfter: round(draw.bell(7, 0.12), 1),
      oxygen: round(draw.bell(6.4, 0.4), 1),
    };
  });
  return { name: 'Water', fields: Object.keys(list[0] ?? {}) as FieldName[], rows: list };
}

function feeding(draw: Draw, rows: number): FarmTable {
  let [fish, weight] = [Math.round(draw.between(3500, 6000)), draw.between(0.9, 1.4)];
  const list = Array.from({ length: rows }, (_, i): FarmRow => {
    const dead = Math.floor(draw.between(0, 25));
    fish -= dead;
    weight *= 1 + draw.bell(0.045, 0.004);
    const shownWeight = round(weight, 2);
    return {
      date: FIRST_DAY + 200 + i,
      vat: 'V3',
      fish,
      dead,
      weight: shownWeight,
      ration: 0.08,
      feed: Math.round(fish * shownWeight * 0.08 * draw.bell(1, 0.02)),
      temperature: round(draw.bell(27, 0.5), 1),
    };
  });
  return { name: 'Feeding', fields: Object.keys(list[0] ?? {}) as FieldName[], rows: list };
}

/** What a formula reads, and what names the record, is always there. */
const KEPT: ReadonlySet<string> = new Set(['run', 'eggs', 'eggWeight', 'eggsPerGram']);
/** Cells that were never filled in. */
const withGaps = (table: FarmTable, draw: Draw): FarmTable => ({
  ...table,
  rows: table.rows.map((row) =>
    Object.fromEntries(
      Object.entries(row).map(([name, value]) => [
        name,
        !KEPT.has(name) && draw.random() < 0.06 ? null : value,
      ]),
    ),
  ),
});

/**
 * The same with seasons, other preparations, wide ranges and cells left blank: clean records that are harder
 * to believe.
 */
export const makeWildFarm = (seed: number, size = 60): Farm => {
  const draw = drawer(seed * 104_729 + 7);
  return {
    tables: [
      spawning(draw, size, true),
      batches(draw, Math.round(size * 0.7)),
      dosing(draw, size),
      feeding(draw, Math.round(size * 0.7)),
    ].map((table) => withGaps(table, draw)),
  };
};

export const makeFarm = (seed: number, size = 36): Farm => {
  const draw = drawer(seed * 7919 + 13);
  return {
    tables: [
      spawning(draw, size, false),
      batches(draw, Math.round(size * 0.7)),
      dosing(draw, size),
      feeding(draw, Math.round(size * 0.8)),
    ],
  };
};
