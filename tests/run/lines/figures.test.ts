import { evaluate } from '../../../shared/catalogue/calculation';
import { dayLines, shareLines } from '../../../shared/run/lines';
import type { Operand } from '../../../shared/sheet/formula';

/** The numbers of the lines of a run, worked out by hand from round figures: a case on each side of every limit. */
type Given = Readonly<Record<string, Operand>>;
const DAY = 46_500;
const near = (value: number) => expect.closeTo(value, 9);
/** 1 + 3.6 of the first day of food, 1.6 more on each of three: twelve days die like 20.4 later ones. */
const DEATH_DAYS = { 1: 4.6, 2: 7.2, 4: 12.4, 6: 14.4, 12: 20.4 } as const;
const mondayOf = (serial: number): number => {
  const weekday = new Date((Math.floor(serial) - 25_569) * 864e5).getUTCDay();
  return Math.floor(serial) - ((weekday + 6) % 7);
};

describe('a run on one day of feeding', () => {
  const RUN: Given = {
    plannedOn: DAY - 60,
    fedFrom: DAY,
    hatchAt: DAY - 3.4,
    day: 2,
    leaves: DAY + 40,
    rearing: 12,
    nursing: 14,
    feeding: 1000,
    fry: 750,
    nurserySurvival: 0.8,
    nurseryDays: 28,
    startWeight: 0.002,
    grown: 20,
    growing: 15,
    weighedDay: 6,
    nurseryGrowth: 8,
    liveDays: 5,
    weaningDays: 3,
    naupliiPerLarva: 400,
    naupliiPerGram: 200_000,
    naupliiHarvest: 0.8,
    fryRation: 0.02,
    nurseryRation: 0.03,
    meals: 5,
    litresFry: 400,
    litresNursing: 900,
    changePerGram: 2,
    leadCysts: 14,
    leadFeed: 10,
  };
  const on = (changes: Given) => {
    const lines = dayLines.open({ ...RUN, ...changes });
    return (key: string): Operand => lines.get(key);
  };
  test.each([
    [{ day: 0 }, 1000],
    [{ day: 1 }, 1000 * 0.75 ** (DEATH_DAYS[1] / DEATH_DAYS[12])],
    [{ day: 2 }, 1000 * 0.75 ** (DEATH_DAYS[2] / DEATH_DAYS[12])],
    [{ day: 4 }, 1000 * 0.75 ** (DEATH_DAYS[4] / DEATH_DAYS[12])],
    [{ day: 12 }, 750],
    [{ day: 19 }, 750 * 0.8 ** (7 / 28)],
    [{ day: 26 }, 750 * 0.8 ** (14 / 28)],
    [{ day: 39 }, 750 * 0.8 ** (14 / 28)],
    [{ day: 40 }, 0],
    [{ day: 2, isLost: 'lost' }, 0],
    [{ day: 12, left: 0.25 }, 562.5],
    [{ day: 19, nursing: 0 }, 750],
    [{ day: 19, nursing: 1 }, 750 * 0.8 ** (1 / 28)],
    [{ day: 2, feeding: 1, fry: 0.5 }, 0.5 ** (DEATH_DAYS[2] / DEATH_DAYS[12])],
    [{ day: 2, feeding: 0, fry: 0 }, 0],
  ])('fish %j', (changes, fish) => {
    expect(on(changes as unknown as Given)('fishNow')).toEqual(near(fish));
  });
  test.each([
    [2, 40],
    [6, 120],
    [8, 150],
    [12, 210],
    [14, 226],
  ])('on day %i larvae have grown by %f %%', (day, percent) => {
    expect(on({ day })('gramsNow')).toEqual(near(0.002 * Math.exp(percent / 100)));
  });
  test.each([
    [4, 1],
    [5, 0.5],
    [7, 0.5],
    [8, 0],
  ])('of the food of day %i this share is live: %f', (day, live) => {
    const read = on({ day, left: 0 });
    expect([read('live'), read('onLive')]).toEqual([live, near((read('fishNow') as number) * live)]);
    expect(Number(read('cysts')) > 0).toBe(live > 0);
  });
  test('cysts are those of the larvae filled with live food', () => {
    const read = on({ day: 2 });
    expect(read('cysts')).toEqual(evaluate(`=SPAWN.CYSTS.NEEDED(${String(read('onLive'))},400,200000,0.8)`));
    expect(on({ day: 2, isLost: 'lost' })('cysts')).toBe(0);
    expect(Number(on({ day: 0, feeding: 0.5, fry: 0.5 })('cysts'))).toBeGreaterThan(0);
  });
  test('what fish can eat is asked between 0.6 mg and 150 g', () => {
    const eaten = (startWeight: number): Operand => on({ day: 0, startWeight })('eaten');
    for (const [grams, asked] of [
      [0.0001, 0.0006],
      [0.00065, 0.00065],
      [149, 149],
      [150, 150],
      [400, 150],
    ] as const)
      expect([grams, eaten(grams)]).toEqual([grams, evaluate(`=SPAWN.RATION.GUIDE(${asked})`)]);
    expect(eaten(0.00065)).not.toBe(eaten(0.0001));
    expect(eaten(140)).not.toBe(eaten(400));
  });
  test('dry feed: the figure of the stage, at most what they can eat, less what is live', () => {
    const ration = (changes: Given) => on(changes)('ration');
    expect(ration({ day: 11 })).toBe(0.02);
    expect(ration({ day: 12 })).toBe(0.03);
    expect(ration({ day: 5 })).toBe(0.01);
    const read = on({ day: 9, fryRation: 0.9 });
    expect(read('ration')).toEqual(near((read('eaten') as number) / 0.9));
    const dry = on({ day: 12, startWeight: 0.001 });
    expect(dry('dry')).toEqual(near(750 * 0.001 * Math.exp(2.1) * 0.03));
    expect(dry('meal')).toEqual(near((750 * 0.001 * Math.exp(2.1) * 0.03) / 5));
  });
  test('grain is asked from 0.6 mg on', () => {
    const grain = (startWeight: number): Operand => on({ day: 0, startWeight })('grain');
    const upTo = (grams: number): Operand => evaluate(`=INDEX(SPAWN.FEED.GRAIN(${grams}),1,2)`);
    for (const grams of [0.0006, 0.01, 0.2, 2]) expect([grams, grain(grams)]).toEqual([grams, upTo(grams)]);
    expect(grain(0.0001)).toEqual(upTo(0.0006));
    expect(typeof upTo(0.0006)).toBe('number');
  });
  test('water they are in and water to change', () => {
    const litres = (changes: Given) => on(changes)('litresNow');
    expect([litres({ day: 11 }), litres({ day: 12 })]).toEqual([400, 900]);
    expect([litres({ day: 12, litresNursing: 0 }), litres({ day: 12, litresNursing: 0.5 })]).toEqual([
      400, 0.5,
    ]);
    const read = on({ day: 5 });
    const [fish = NaN, grams = NaN, eaten = NaN] = ['fishNow', 'gramsNow', 'eaten'].map(
      (key) => read(key) as number,
    );
    const fed = fish * grams * (0.01 + (0.5 * eaten) / 0.9);
    expect([read('change'), read('changes')]).toEqual([near(2 * fed), near((2 * fed) / 400)]);
    expect(on({ day: 5, litresFry: 0 })('changes')).toBe(0);
    expect(on({ day: 5, litresFry: 0.5 })('changes')).toEqual(near((2 * fed) / 0.5));
  });
  test('air: from one fish on, in any water', () => {
    const minutes = (fish: number, grams: number, litres: number): Operand =>
      on({ day: 0, feeding: fish, startWeight: grams, litresFry: litres })('air');
    const asked = (fish: number, grams: number, litres: number): Operand =>
      evaluate(`=INDEX(SPAWN.AIR.MINUTES(${fish},${grams},${litres},7),1,1)`);
    expect(minutes(0.99, 0.01, 10)).toBe(1440);
    expect(minutes(1, 20, 0.5)).toEqual(asked(1, 20, 0.5));
    expect(minutes(500, 20, 0)).toBe(1440);
    expect(minutes(500, 300, 1000)).toEqual(asked(500, 150, 1000));
    expect(minutes(500, 140, 1000)).toEqual(asked(500, 140, 1000));
    expect(minutes(90_000, 0.0001, 50)).toEqual(asked(90_000, 0.0006, 50));
    expect(minutes(90_000, 0.00065, 50)).toEqual(asked(90_000, 0.00065, 50));
    expect(asked(90_000, 0.0006, 50)).not.toBe(asked(90_000, 0.00065, 50));
  });
  test('deaths: whole days after the hatch up to 200, first food on day 1 to 12', () => {
    const most = (changes: Given) => on({ feeding: 10_000, fry: 10_000, nursing: 0, ...changes })('deadTo');
    const asked = (days: number, first: number, fish = 10_000): Operand =>
      evaluate(`=INDEX(SPAWN.DEATHS.EXPECTED(${fish},${days},,,${first}),1,2)`);
    expect(most({ day: 2 })).toEqual(asked(5, 3));
    expect(most({ day: 30 })).toEqual(asked(33, 3));
    expect(most({ day: 190, leaves: DAY + 400 })).toEqual(asked(193, 3));
    expect(most({ day: 300, leaves: DAY + 400 })).toEqual(asked(200, 3));
    expect(most({ day: 3, hatchAt: DAY - 0.4 })).toEqual(asked(3, 1));
    expect(most({ day: 2, hatchAt: DAY - 11.2 })).toEqual(asked(13, 11));
    expect(most({ day: 2, hatchAt: DAY - 12.2 })).toEqual(asked(14, 12));
    expect(most({ day: 3, hatchAt: DAY - 15.2 })).toEqual(asked(18, 12));
    expect(most({ day: 0, feeding: 1, fry: 1 })).toEqual(asked(3, 3, 1));
    expect(most({ day: 0, feeding: 0.9, fry: 0.9 })).toBe(0);
  });
  test('goods are ordered in the week their delivery has to start in, never before the plan', () => {
    for (let day = 0; day < 8; day++) {
      const read = on({ day });
      expect(read('cystsWeek')).toBe(mondayOf(DAY + day - 1 - 14));
      expect(read('dryWeek')).toBe(mondayOf(DAY + day - 10));
    }
    const late = on({ day: 2, plannedOn: DAY });
    expect([late('cystsWeek'), late('dryWeek')]).toEqual([mondayOf(DAY), mondayOf(DAY)]);
  });
});

describe('the fish of a batch for one order', () => {
  const SHARE: Given = {
    on: DAY + 20,
    fedFrom: DAY,
    rearing: 12,
    nursing: 14,
    startWeight: 0.002,
    grown: 20,
    growing: 15,
    weighedDay: 6,
    nurseryGrowth: 8,
    wanted: 1,
    feeding: 1000,
    fry: 750,
    part: 0.5,
    nurserySurvival: 0.8,
    nurseryDays: 28,
    gradingShare: 0.9,
    arriving: 0.98,
    price: 0.1,
    weaned: DAY + 12,
  };
  const of = (changes: Given) => {
    const lines = shareLines.open({ ...SHARE, ...changes });
    return (key: string): Operand => lines.get(key);
  };
  test.each([
    [-3, 0, 0, 0],
    [5, 5, 0, 100],
    [12, 12, 0, 210],
    [13, 12, 1, 218],
    [26, 12, 14, 322],
    [30, 12, 14, 354],
  ])('%i days after the first food', (age, reared, nursed, percent) => {
    const read = of({ on: DAY + age });
    expect([read('age'), read('reared'), read('nursed'), read('latestStrip')]).toEqual([
      age,
      reared,
      nursed,
      DAY + 12 + nursed,
    ]);
    if (age >= 0) expect(read('gramsThen')).toEqual(near(0.002 * Math.exp(percent / 100)));
  });
  test.each([
    [{ on: DAY + 4 }, 1000 * 0.75 ** (DEATH_DAYS[4] / DEATH_DAYS[12])],
    [{ on: DAY + 12 }, 750],
    [{ on: DAY + 19 }, 750 * 0.8 ** (7 / 28)],
    [{ on: DAY + 60 }, 750 * 0.8 ** (14 / 28)],
    [{ on: DAY + 2, feeding: 1, fry: 0.5 }, 0.5 ** (DEATH_DAYS[2] / DEATH_DAYS[12])],
    [{ on: DAY + 2, feeding: 0, fry: 0 }, 0],
    [{ isLost: 'lost' }, 0],
  ])('fish counted out %j', (changes, alive) => {
    const read = of(changes as unknown as Given);
    const fish = alive * 0.5 * 0.9 * 0.98;
    expect([read('fishThen'), read('earns')]).toEqual([near(fish), near(fish * 0.1)]);
    expect(read('leftShare')).toBe('isLost' in changes ? 0 : 1);
  });
  test('larvae and fry by the part of the order', () => {
    const read = of({});
    expect([read('larvaeFor'), read('fryFor')]).toEqual([500, 375]);
  });
  const EVEN: Given = { weighedDay: null, growing: 20 };
  // The growth a weight needs, in percent; a hundredth of a day late still counts as the day.
  test.each([
    ['no weight was ordered', {}, undefined, undefined],
    ['the start weight', EVEN, 0, 0],
    ['even growth, to the day', EVEN, 100, 5],
    ['just inside the hundredth', EVEN, 20 * 5.0098, 5],
    ['just outside it', EVEN, 20 * 5.0102, 6],
    ['before the weighing', {}, 100, 5],
    ['at the weighing', {}, 119.99, 6],
    ['after the weighing', {}, 150, 8],
    ['the last day of rearing', {}, 209.99, 12],
    ['in the nursery', {}, 226, 14],
    ['no growth at all', { ...EVEN, grown: 0, growing: 0, nurseryGrowth: 0 }, 0.985, 12 + 99],
    ['hardly any growth after the weighing', { growing: 0.005 }, 120.0205, 9],
    ['hardly any before the weighing', { grown: 0.005, weighedDay: 12 }, 0.0205, 3],
  ] as const)('heavy enough: %s', (_, changes, percent, day) => {
    const wanted = percent === undefined ? null : 0.002 * Math.exp(percent / 100);
    expect(of({ ...(changes as unknown as Given), wanted })('heavyOn')).toBe(
      day === undefined ? 0 : DAY + day,
    );
  });
  test('fish ordered lighter than larvae are heavy enough at once', () => {
    expect(of({ wanted: 0.0001 })('heavyOn')).toBe(DAY);
  });
});
