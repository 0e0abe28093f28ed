import { evaluate } from '../../../shared/catalogue/calculation';
import { runLines } from '../../../shared/run/lines';
import type { Operand } from '../../../shared/sheet/formula';
import { isError } from '../../../shared/base/values';

/** From the water of a run to the fish counted out, each line by hand: a case on each side of every limit. */
type Given = Readonly<Record<string, Operand>>;
const DAY = 46_500;
const near = (value: number) => expect.closeTo(value, 9);
const months = (values: readonly number[]): Operand => [values.slice()];
const RUN: Given = {
  plannedOn: DAY - 60,
  strip: DAY + 1 / 3,
  measured: 26,
  preparation: 'ready-made solution',
  latencyOffset: 0,
  incubationFactor: 1,
  rearing: 12,
  rearingDays: 12,
  nursing: 14,
  nurseryDays: 28,
  nurserySurvival: 0.8,
  preparingDays: 3,
  kilograms: 4,
  females: 5,
  hormoneDose: 0.5,
  eggShare: 0.1,
  eggsPerGram: 700,
  ovulating: 0.9,
  toSet: 100_000,
  hatch: 0.5,
  yolkSurvival: 0.9,
  litresEggs: 300,
  litresFry: 400,
  litresNursing: 500,
  larvaePerLitre: 100,
  frySurvival: 0.75,
  gradingShare: 0.9,
  arriving: 0.98,
  startWeight: 0.002,
  fryGrowth: 20,
  nurseryGrowth: 8,
  naupliiPerLarva: 400,
  naupliiPerGram: 200_000,
  naupliiHarvest: 0.8,
  leadHormone: 14,
  ph: 5.8,
  phWanted: 8,
  alkalinity: 0.001,
  material: 'soda ash',
  eggShares: months(new Array<number>(12).fill(0)),
};
const of = (changes: Given = {}) => {
  const lines = runLines.open({ ...RUN, ...changes });
  return (key: string): Operand => lines.get(key);
};
const serial = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 864e5 + 25_569;

describe('water expected', () => {
  const WATER = [11, 12, 15, 18, 22, 26, 28, 27, 25, 21, 16, 13];
  const usual = (iso: string, water: readonly number[] = WATER): Operand =>
    of({ measured: null, strip: serial(iso) + 1 / 3, waterByMonth: months(water) })('usual');
  test.each([
    ['2027-04-15', 18 - 3 * (0.5 / 30)],
    ['2027-04-16', 18 + 4 * (0.5 / 30)],
    ['2027-04-30', 18 + 4 * (14.5 / 30)],
    ['2027-05-31', 22 + 4 * 0.5],
    ['2027-05-01', 22 - 4 * (14.5 / 30)],
    ['2027-01-01', 11 + 2 * (14.5 / 30)],
    ['2027-12-31', 13 - 2 * 0.5],
    ['2027-12-16', 13 - 2 * (0.5 / 30)],
    ['2027-11-20', 16 - 3 * (4.5 / 30)],
  ])('%s', (iso, celsius) => {
    expect(usual(iso)).toEqual(near(celsius));
  });
  test('below 10 °C a month was not filled in: none is expected from it or its neighbour', () => {
    const cold = (at: number, celsius: number) => WATER.map((was, i) => (i === at ? celsius : was));
    expect(isError(usual('2027-04-20', cold(3, 9.9)) as never)).toBe(true);
    expect(isError(usual('2027-04-20', cold(4, 9.9)) as never)).toBe(true);
    expect(usual('2027-04-20', cold(3, 10))).toEqual(near(10 + 12 * (4.5 / 30)));
    expect(usual('2027-04-20', cold(4, 10))).toEqual(near(18 - 8 * (4.5 / 30)));
    expect(usual('2027-04-20', cold(2, 9.9))).toEqual(near(18 + 4 * (4.5 / 30)));
  });
  test('what was measured comes first', () => {
    expect(of({ measured: 25, waterByMonth: months(WATER) })('water')).toBe(25);
    expect(of({ measured: null, waterByMonth: months(WATER) })('water')).toBe(
      of({ measured: null, waterByMonth: months(WATER) })('usual'),
    );
  });
});

describe('the clock', () => {
  const kept = of({ wasInject: DAY - 0.5 });
  const ask = (formula: string): Operand => evaluate(`=${formula}`);
  test('latency, injection, the window of stripping', () => {
    const hours = ask('SPAWN.LATENCY.HOURS(26,"ready-made solution")') as number;
    expect(of({ latencyOffset: 1.5 })('latency')).toEqual(near(hours + 1.5));
    expect(of()('inject')).toEqual(near(DAY + 1 / 3 - hours / 24));
    const window = (column: number): Operand =>
      ask(`INDEX(SPAWN.STRIP.WINDOW(${DAY - 0.5},26,"ready-made solution",0),1,${column})`);
    expect([kept('look'), kept('late')]).toEqual([window(1), window(3)]);
  });
  test('hatch and first food, stretched by what the own eggs take', () => {
    const strip = DAY + 1 / 3;
    const first = ask(`SPAWN.HATCH.TIME(${strip},26)`) as number;
    const last = ask(`INDEX(SPAWN.HATCH.WINDOW(${strip},26),1,2)`) as number;
    const yolk = (ask(`SPAWN.FEEDING.START(${strip},26)`) as number) - strip;
    const read = of({ incubationFactor: 1.2 });
    expect([read('hatchAt'), read('hatchEnd')]).toEqual([
      near(strip + 1.2 * (first - strip)),
      near(strip + 1.2 * (last - strip)),
    ]);
    expect(read('feed')).toEqual(near(strip + 1.2 * (first - strip) + yolk));
  });
  test.each([
    [0.49, 0],
    [0.5, 1],
  ])('a first meal at %f of the day: the first full day of feeding is %i later', (at, later) => {
    const read = of({ wasFeed: DAY + at });
    expect([read('fedFrom'), read('weaned'), read('ready'), read('fill'), read('ageAtReady')]).toEqual([
      DAY + later,
      DAY + later + 12,
      DAY + later + 26,
      DAY - 3,
      26,
    ]);
  });
});

describe('hormone', () => {
  const prepared = (kilograms: number, column: number, more = ''): Operand =>
    evaluate(`=INDEX(SPAWN.HORMONE.PREPARE(${kilograms},"own-species pituitary"${more}),1,${column})`);
  const glands = (changes: Given = {}) => of({ preparation: 'own-species pituitary', ...changes });
  test('a ready-made solution by its dose, others as they are prepared', () => {
    expect([of()('hormone'), of()('hormoneUnit'), of({ kilograms: 0 })('hormone')]).toEqual([2, 'mL', 0]);
    expect(of({ kilograms: 0.5 })('hormone')).toBe(0.25);
    expect([glands()('hormone'), glands()('hormoneUnit')]).toEqual([prepared(4, 1), prepared(4, 2)]);
    expect(glands({ kilograms: 0.5 })('hormone')).toEqual(prepared(0.5, 1));
    expect(glands({ kilograms: 0.001 })('hormone')).toEqual(prepared(0.01, 1));
    expect(prepared(0.01, 1)).not.toEqual(prepared(0.011, 1));
    expect(glands({ kilograms: 0.0105 })('saline')).toEqual(prepared(0.0105, 3));
  });
  test('salt water and donors', () => {
    expect([glands()('saline'), glands({ kilograms: 0 })('saline')]).toEqual([prepared(4, 3), 0]);
    expect(glands({ kilograms: 0.5 })('saline')).toEqual(prepared(0.5, 3));
    expect(glands()('donors')).toEqual(prepared(4, 6, ',,0.8'));
    expect(glands({ kilograms: 0.5, females: 1 })('donors')).toEqual(prepared(0.5, 6, ',,0.5'));
    expect(prepared(4, 6, ',,0.8')).not.toEqual(prepared(4, 6));
    expect([glands({ females: 0 })('donors'), glands({ kilograms: 0 })('donors')]).toEqual([0, 0]);
  });
  test('ordered in the week the delivery has to start in', () => {
    for (let day = 0; day < 7; day++) {
      const strip = DAY + day + 1.3;
      const start = Math.floor(of({ strip })('inject') as number) - 14;
      const weekday = new Date((start - 25_569) * 864e5).getUTCDay();
      expect(of({ strip })('hormoneWeek')).toBe(start - ((weekday + 6) % 7));
    }
    const late = of({ strip: DAY + 1.3, plannedOn: DAY + 7 })('hormoneWeek') as number;
    expect([late <= DAY + 7, late > DAY]).toEqual([true, true]);
    // Of a batch that was injected it is there.
    expect(of({ strip: DAY + 1.3, wasInject: DAY + 0.9 })('hormoneWeek')).toBe(0);
  });
});

describe('from eggs to fish', () => {
  test('eggs: of the month where it is known, what is set at most', () => {
    const expected = 4 * 1000 * 0.1 * 700 * 0.9;
    expect([of()('expected'), of()('eggs'), of({ toSet: 1e6 })('eggs')]).toEqual([
      expected,
      100_000,
      expected,
    ]);
    const shares = Array.from({ length: 12 }, (_, i) => (i === 3 ? 0.12 : 0));
    const month = (iso: string): Operand =>
      of({ strip: serial(iso), eggShares: months(shares) })('eggShareNow');
    expect([month('2027-04-01'), month('2027-04-30'), month('2027-03-31')]).toEqual([0.12, 0.12, 0.1]);
    expect(of({ eggsCounted: 1234 })('eggs')).toBe(1234);
  });
  test('larvae, larvae at first feed: as many as their vats hold', () => {
    expect([of()('larvae'), of({ hatchedCounted: 77 })('larvae')]).toEqual([50_000, 77]);
    expect(of()('feeding')).toBe(40_000);
    expect(of({ litresFry: 1000 })('feeding')).toBe(45_000);
    expect(of({ litresFry: 0 })('feeding')).toBe(45_000);
    expect(of({ litresFry: 0.5 })('feeding')).toBe(50);
    expect(of({ feedingCounted: 5 })('feeding')).toBe(5);
  });
  test.each([
    [12, 30_000],
    [6, 40_000 * 0.75 ** (14.4 / 20.4)],
    [2, 40_000 * 0.75 ** (7.2 / 20.4)],
  ])('fry weaned after %i days', (rearing, fry) => {
    expect(of({ rearing })('fry')).toEqual(near(fry));
  });
  test('fish counted out', () => {
    const out = 0.9 * 0.98;
    expect(of()('fish')).toEqual(near(30_000 * 0.8 ** 0.5 * out));
    expect(of({ nursing: 0 })('fish')).toEqual(near(30_000 * out));
    expect(of({ nursing: 0.5 })('fish')).toEqual(near(30_000 * 0.8 ** (0.5 / 28) * out));
    expect([of({ weanedCounted: 100, nursing: 0 })('fish'), of({ handedCounted: 9 })('fish')]).toEqual([
      near(100 * out),
      9,
    ]);
    expect(of()('grams')).toEqual(near(0.002 * Math.exp((20 * 12 + 8 * 14) / 100)));
  });
  test('by litre, by kilogram, by net', () => {
    const read = of();
    expect(['eggsInLitre', 'larvaeInLitre', 'perKilogram'].map(read)).toEqual([
      near(100_000 / 300),
      100,
      25_000,
    ]);
    expect(read('fryInLitre')).toEqual(near(60));
    expect(read('netArea')).toEqual(evaluate('=INDEX(SPAWN.NET.AREA(100000),1,1)'));
    expect(read('cystsFirst')).toEqual(evaluate('=SPAWN.CYSTS.NEEDED(40000,400,200000,0.8)'));
    const none = of({ litresEggs: 0, litresFry: 0, litresNursing: 0, kilograms: 0, toSet: 0 });
    for (const key of ['eggsInLitre', 'larvaeInLitre', 'fryInLitre', 'perKilogram', 'netArea', 'cystsFirst'])
      expect([key, none(key)]).toEqual([key, 0]);
    const little = of({
      litresEggs: 0.5,
      litresFry: 0.5,
      litresNursing: 0.5,
      kilograms: 0.5,
      larvaePerLitre: 1,
    });
    expect(['eggsInLitre', 'larvaeInLitre', 'fryInLitre'].map(little)).toEqual([near(63_000), 1, near(0.75)]);
    expect(little('perKilogram')).toBe(63_000);
    expect(Number(little('cystsFirst'))).toBeGreaterThan(0);
    expect(Number(of({ eggsCounted: 1 })('netArea'))).toBeGreaterThan(0);
  });
});

describe('water before the eggs go in', () => {
  const aired = (litres: number, alkalinity: string): number =>
    evaluate(`=SPAWN.BUFFER.AIRED(${litres},5.8,8,${alkalinity},26,"soda ash")`) as number;
  test('a bucket of ten litres stands for a thousand and for the vats', () => {
    const read = of();
    const bucket = aired(10, '0.001');
    expect(bucket).toBeGreaterThan(0);
    expect(['bucket', 'half', 'stock', 'halfEggs'].map(read)).toEqual([
      near(bucket),
      near((bucket * 100) / 2),
      near((bucket / 5) * 1000),
      near((bucket * 30) / 2),
    ]);
    expect(of({ alkalinity: null })('bucket')).toEqual(near(aired(10, '')));
  });
  test('no pH, no dose; a pH high enough, a dose of nothing', () => {
    for (const key of ['bucket', 'half', 'stock', 'halfEggs'])
      expect([of({ ph: null })(key), of({ phWanted: null })(key)]).toEqual(['', '']);
    expect([of({ ph: 8 })('bucket'), of({ ph: 8.1 })('bucket')]).toEqual([0, 0]);
    expect(Number(of({ ph: 7.4 })('bucket'))).toBeGreaterThan(0);
  });
  test('new water for a gram of feed: at the higher pH, at most 9, without one 7', () => {
    const change = (ph: number): Operand => evaluate(`=INDEX(SPAWN.WATER.CHANGE(1,1000,${ph},26),1,3)`);
    const at = (ph: Operand, phWanted: Operand): Operand => of({ ph, phWanted })('changePerGram');
    expect([at(5.8, 7.2), at(7.6, 7.2), at(null, 7.2)]).toEqual([change(7.2), change(7.6), change(7.2)]);
    expect([at(8.9, 7), at(9.4, 7), at(6, null)]).toEqual([change(8.9), change(9), change(7)]);
    expect(new Set([7, 7.2, 7.6, 8.9, 9].map(change)).size).toBe(5);
  });
  test('the toxic part of the ammonia', () => {
    const part = (ph: number): Operand => evaluate(`=SPAWN.AMMONIA.SHARE(${ph},26)`);
    expect([of()('toxicNow'), of()('toxicThen'), of({ ph: null })('toxicNow')]).toEqual([
      part(5.8),
      part(8),
      '',
    ]);
  });
});
