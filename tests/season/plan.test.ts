import { isoDateOfSerial, serialOfIsoDate, weekdayOf } from '../../shared/units/dates';
import type { OrderBook, PlannedRun, SeasonBook } from '../../shared/season';
import { planSeasonBook } from '../../shared/season';
import { rngOf } from '../../shared/maths/rng';
import { number } from '../support/call';
import { BOOK, bookOf } from './support';

const NO_ODDS = { draws: 0 };
const START = serialOfIsoDate(BOOK.plannedOn) ?? NaN;

/** Random books, some easy, some that cannot be met. */
function anyBook(seed: number): OrderBook {
  const { even } = rngOf(seed);
  const pick = (n: number): number => Math.floor(even() * n);
  const families = 1 + pick(4);
  return bookOf({
    orders: Array.from({ length: 1 + pick(12) }, (_, i) => ({
      name: `o${i}`,
      product: even() < 0.4 ? 'fry' : 'fingerlings',
      number: 1000 + pick(80_000),
      due: isoDateOfSerial(START + 40 + pick(200)),
      price: 0.1,
    })),
    vats: Array.from({ length: 2 + pick(10) }, (_, i) => ({
      name: `v${i}`,
      litres: 200 + 100 * pick(15),
      holds: [['eggs', 'fry', 'nursing'], ['eggs'], ['fry', 'nursing'], ['eggs', 'fry']][pick(4)],
    })),
    females: Array.from({ length: 2 + pick(12) }, (_, i) => ({
      tag: `f${i}`,
      kilograms: 0.5 + pick(20) / 10,
      family: `x${pick(families)}`,
      ...(even() < 0.3 ? { lastUsed: START - pick(80) } : {}),
    })),
    males: Array.from({ length: 1 + pick(12) }, (_, i) => ({ tag: `m${i}`, family: `x${pick(families)}` })),
    malesSurvive: even() < 0.3,
    restDays: 20 + pick(80),
    cleaningDays: pick(5),
    holdDays: pick(8),
    staff: {
      stripFrom: 5 + pick(4),
      stripTo: 10 + pick(10),
      weekdays: even() < 0.5 ? [1, 2, 3, 4, 5] : [1, 2, 3, 4, 5, 6, 7],
      femalesPerDay: 1 + pick(6),
      ...(even() < 0.5 ? { injectFrom: 16, injectTo: 24 } : {}),
    },
  });
}

type Want = (ok: boolean, fault: string) => void;

function vatsKept(book: OrderBook, plan: SeasonBook, want: Want): void {
  const vatOf = new Map(book.vats.map((v) => [v.name, v]));
  for (const a of plan.occupancy) {
    want(vatOf.get(a.vat)?.holds.includes(a.stage) === true, `${a.vat} cannot hold ${a.stage}`);
    const densest = { eggs: 480, fry: 100, nursing: 50 }[a.stage];
    want(a.perLitre <= densest * (1 + 1e-6), `${a.vat} holds ${a.perLitre} a litre of ${a.stage}`);
    for (const b of plan.occupancy) {
      if (a === b || a.vat !== b.vat || a.from > b.from) continue;
      const pause = a.run === b.run ? 0 : book.cleaningDays;
      want(
        b.from >= a.to + pause - 1e-5,
        `${a.vat}: run ${a.run} until ${a.to}, run ${b.run} from ${b.from}`,
      );
    }
  }
}

function hoursKept({ staff, ...book }: OrderBook, run: PlannedRun, want: Want): void {
  const day = Math.floor(run.stripAt + 1e-9);
  const hour = (run.stripAt - day) * 24;
  const injectHour = (run.injectAt - Math.floor(run.injectAt)) * 24;
  want(
    hour >= staff.stripFrom - 1e-6 && hour <= staff.stripTo + 1e-6,
    `run ${run.run} is stripped at ${hour}`,
  );
  want(
    injectHour >= staff.injectFrom - 1e-6 && injectHour <= staff.injectTo + 1e-6,
    `run ${run.run} is injected at ${injectHour}`,
  );
  want(staff.weekdays.includes(weekdayOf(day)), `run ${run.run} falls on a day off`);
  want(
    run.readyAt <= run.due && run.readyAt >= run.due - book.holdDays,
    `run ${run.run} is ready on ${run.readyAt}, due ${run.due}`,
  );
  want(
    run.injectAt >= book.plannedOn + book.leadDays.hormone,
    `run ${run.run} is injected before the hormone is there`,
  );
}

function parentsKept(book: OrderBook, plan: SeasonBook, want: Want): void {
  const familyOf = new Map([...book.females, ...book.males].map((fish) => [fish.tag, fish.family]));
  const stripDays = new Map<string, number[]>(
    book.females.map((f) => [f.tag, f.lastUsed === undefined ? [] : [f.lastUsed]]),
  );
  const maleDays = new Map<string, number[]>();
  for (const run of plan.runs) {
    const day = Math.floor(run.stripAt + 1e-9);
    const served = new Map<string, number>();
    for (const { tag, male } of run.females) {
      for (const other of stripDays.get(tag) ?? [])
        want(
          Math.abs(other - day) >= book.restDays,
          `${tag} is stripped again after ${Math.abs(other - day)} days`,
        );
      stripDays.set(tag, [...(stripDays.get(tag) ?? []), day]);
      want(familyOf.get(tag) !== familyOf.get(male), `${tag} and ${male} are of one family`);
      served.set(male, (served.get(male) ?? 0) + 1);
    }
    for (const [male, females] of served) {
      want(females <= 2, `${male} serves ${females}`);
      for (const other of maleDays.get(male) ?? [])
        want(book.malesSurvive && Math.abs(other - day) >= book.restDays, `${male} is used again`);
      maleDays.set(male, [...(maleDays.get(male) ?? []), day]);
    }
  }
}

/** Every promise of the planner, looked at from outside. Gives sentences, none when all is well. */
function broken(book: OrderBook, plan: SeasonBook): string[] {
  const faults: string[] = [];
  const want: Want = (ok, fault) => {
    if (!ok) faults.push(fault);
  };
  vatsKept(book, plan, want);
  parentsKept(book, plan, want);
  const perDay = new Map<number, number>();
  for (const run of plan.runs) {
    hoursKept(book, run, want);
    const day = Math.floor(run.stripAt + 1e-9);
    perDay.set(day, (perDay.get(day) ?? 0) + run.females.length);
  }
  for (const [day, n] of perDay) want(n <= book.staff.femalesPerDay, `${n} females on day ${day}`);
  for (const { order, expected } of plan.orders)
    want(expected <= order.number * (1 + book.spare) + 1, `${order.name} gets too many`);
  return faults;
}

test('whatever the order book, no promise of the planner is broken', () => {
  let short = 0;
  let runs = 0;
  for (let seed = 1; seed <= 60; seed++) {
    const book = anyBook(seed);
    const plan = planSeasonBook(book, { ...NO_ODDS, effort: { work: 2e5, mostTries: 60, seed } });
    expect([seed, broken(book, plan)]).toEqual([seed, []]);
    runs += plan.runs.length;
    if (!plan.canBeMet) short++;
  }
  expect(runs).toBeGreaterThan(150);
  expect(short).toBeGreaterThan(10);
});

describe('the plan of two orders', () => {
  const book = bookOf();
  const plan = planSeasonBook(book);

  test('meets both and says how surely', () => {
    expect(plan.canBeMet).toBe(true);
    expect(plan.orders.map(({ expected }) => Math.round(expected))).toEqual([60_000, 40_000]);
    for (const { odds } of plan.orders) expect(odds && odds.p10 < odds.p50 && odds.p50 < odds.p90).toBe(true);
    expect(plan.findings.some(({ message }) => message.includes('of seasons'))).toBe(true);
  });

  test('divides by survival as the sheet function does', () => {
    // Hatch 59 %, yolk 80 %, fry 75 %, nursing 76 %, grading 95 %.
    const [run] = plan.runs;
    expect(run?.eggs).toBeCloseTo(
      number('CHAIN.START', run?.fish ?? NaN, [[0.59], [0.8], [0.75], [0.76], [0.95]]),
      3,
    );
  });

  test('takes its clock times from the sheet functions', () => {
    for (const run of plan.runs) {
      expect(run.injectAt).toBeCloseTo(
        number('INJECTION.TIME', run.stripAt, run.temperature, 'ready-made solution'),
        9,
      );
      expect(run.hatchAt).toBeCloseTo(number('HATCH.TIME', run.stripAt, run.temperature), 9);
      expect(run.firstFeedAt).toBeCloseTo(number('FEEDING.START', run.hatchAt, run.temperature), 9);
    }
  });

  test('what is bought is what is eaten, and ordered before it is used', () => {
    const bought = (item: string): number =>
      plan.purchases.filter((p) => p.item === item).reduce((sum, p) => sum + p.amount, 0);
    expect(bought('cysts')).toBeCloseTo(plan.feeding.reduce((sum, row) => sum + row.cysts, 0) / 1000, 9);
    expect(bought('dry feed')).toBeCloseTo(plan.feeding.reduce((sum, row) => sum + row.dry, 0) / 1000, 9);
    expect(bought('hormone')).toBeCloseTo(
      plan.runs.reduce((sum, run) => sum + run.hormone, 0),
      9,
    );
    for (const p of plan.purchases)
      expect(p.week + 6 + (p.item === 'dry feed' ? 7 : 14)).toBeGreaterThanOrEqual(p.usedFrom);
  });

  test('feed of a day is what the sheet functions give', () => {
    const row = plan.feeding.find(({ dry, cysts }) => dry > 0 && cysts > 0);
    expect(row?.cysts).toBeCloseTo(number('CYSTS.NEEDED', row?.fish ?? NaN, 75, 200_000, 0.8), 6);
    expect(row?.dry).toBeCloseTo(number('FEED.DAILY', row?.fish ?? NaN, row?.grams ?? NaN, 0.05), 6);
  });

  test('the last balance is the money at hand and the profit', () => {
    expect(plan.cash.at(-1)?.balance).toBeCloseTo(1500 + plan.money.profit, 6);
    expect(plan.money.sales).toBeCloseTo(100_000 * 0.12, 6);
    expect(plan.money.cost).toBeCloseTo(
      plan.money.costs.reduce((sum, { amount }) => sum + amount, 0),
      6,
    );
    expect(plan.money.costPerFish).toBeCloseTo(plan.money.breakEvenPrice, 9);
  });

  test('is the same every time', () => {
    expect(planSeasonBook(bookOf())).toEqual(plan);
  });
});

describe('when it cannot be met', () => {
  const says = (changes: object): { readonly text: string; readonly plan: SeasonBook } => {
    const plan = planSeasonBook(bookOf(changes), NO_ODDS);
    return { plan, text: plan.findings.map(({ message }) => message).join(' ') };
  };

  test('too few females', () => {
    const { plan, text } = says({ females: BOOK.females.slice(0, 2) });
    expect(text).toContain('What binds is rested females');
    expect(text).toContain('What helps most: one more female');
    expect(plan.canBeMet).toBe(false);
    expect(plan.shortfall?.changes[0]?.gain).toBeGreaterThan(10_000);
  });

  test('too little water', () => {
    const { text } = says({
      vats: [
        { name: 'a', litres: 800 },
        { name: 'b', litres: 300 },
      ],
    });
    expect(text).toContain('What binds is water in vats');
    expect(text).toContain('What helps most: one more vat of 800 L');
  });

  test('no males that are not brothers', () => {
    const { text } = says({
      females: BOOK.females.map((f) => ({ ...f, family: 'x' })),
      males: BOOK.males.map((m) => ({ ...m, family: 'x' })),
    });
    expect(text).toContain('What binds is unrelated males');
    expect(text).toContain('What helps most: two more unrelated males');
  });

  test('the water of the month is not known, or too cold', () => {
    const { text } = says({ temperatures: [null, null, null, null, null, 27, 27, 27, 27, 27, 27, 27] });
    expect(text).toContain('the water of the month is not known');
    expect(says({ temperatures: BOOK.temperatures.map(() => 19) }).text).toContain(
      'outside what was published',
    );
  });

  test('too late: goods cannot be there', () => {
    const { text, plan } = says({
      orders: [{ name: 'Soon', product: 'fry', number: 5000, due: '2027-01-25' }],
    });
    expect(text).toContain('goods ordered today come too late');
    expect(plan.runs).toEqual([]);
  });

  test('an impossible size is a sentence', () => {
    // Weaned at 18 mg: 2.5 mg growing 16.5 % a day for 12 days.
    expect(says({ orders: [{ ...BOOK.orders[0], grams: 0.015 }] }).text).toContain('Order them as fry');
    expect(says({ orders: [{ ...BOOK.orders[0], product: 'fry', grams: 40 }] }).text).toContain(
      'Order them as fingerlings',
    );
    expect(says({ orders: [{ ...BOOK.orders[1], grams: 5 }] }).plan.orders[0]?.product?.nurseryDays).toBe(44);
  });

  test('future brood fish want many parents', () => {
    expect(says({ orders: [{ ...BOOK.orders[0], forBreeding: true }] }).text).toContain(
      'Too few parents for future brood fish',
    );
  });

  test('rest is kept: a spring order leaves too few for one soon after', () => {
    const orders = [1, 2].map((i) => ({
      name: `order ${i}`,
      product: 'fry',
      number: 150_000,
      due: i === 1 ? '2027-03-20' : '2027-04-20',
      price: 0.1,
    }));
    const { plan } = says({
      orders,
      vats: Array.from({ length: 20 }, (_, i) => ({ name: `v${i}`, litres: 2000 })),
    });
    const used = plan.runs.flatMap((run) => run.females.map(({ tag }) => tag));
    expect(new Set(used).size).toBe(used.length);
    expect(plan.canBeMet).toBe(false);
  });
});

test('eggs by month: a poor month takes more females, and the runs still bring what is ordered', () => {
  const many = {
    females: Array.from({ length: 40 }, (_, i) => ({ tag: `F${i}`, kilograms: 1 })),
    males: Array.from({ length: 40 }, (_, i) => ({ tag: `M${i}` })),
    vats: Array.from({ length: 12 }, (_, i) => ({ name: `v${i}`, litres: 1000 })),
    staff: { femalesPerDay: 30 },
  };
  const poor = planSeasonBook(
    bookOf({ ...many, eggShares: Array.from({ length: 12 }, () => 0.05) }),
    NO_ODDS,
  );
  const usual = planSeasonBook(bookOf(many), NO_ODDS);
  expect(poor.canBeMet && usual.canBeMet).toBe(true);
  const females = (plan: SeasonBook): number => plan.runs.reduce((sum, run) => sum + run.females.length, 0);
  // Half the eggs of each: twice as many, or one fewer for what the usual plan had to spare.
  expect(females(poor)).toBeGreaterThanOrEqual(2 * females(usual) - 2);
  expect(poor.orders.map(({ expected }) => Math.round(expected))).toEqual([60_000, 40_000]);
});

test('a spare makes an order surer', () => {
  const sure = (spare: number): number =>
    planSeasonBook(
      bookOf({ spare, vats: Array.from({ length: 12 }, (_, i) => ({ name: `v${i}`, litres: 1000 })) }),
    ).orders[0]?.odds?.certainty ?? NaN;
  expect(sure(0.8)).toBeGreaterThan(sure(0) + 0.15);
});
