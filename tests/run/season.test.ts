import { planSeason } from '../../shared/run';
import { ASSUMPTIONS } from '../../shared/families/assumptions';
import { SOURCES } from '../../shared/families/sources';
import { number } from '../support/call';
import { formOf, planOf } from './support';

const HOUR = 1 / 24;
const value = (answer: unknown): number => {
  if (typeof answer !== 'number') throw new Error(`no number: ${JSON.stringify(answer)}`);
  return answer;
};

describe('the chain', () => {
  /**
   * Russian coursework on a pike farm (PIKEPLAN): 335,100 kg of fish of 0.3 kg back through survivals of 90,
   * 75, 70 and 70 %.
   */
  test.each([
    [[0.9], '1.241'],
    [[0.9, 0.75], '1.655'],
    [[0.9, 0.75, 0.7], '2.364'],
    [[0.9, 0.75, 0.7, 0.7], '3.377'],
  ] as const)('survivals %j give %s million', (survivals, printed) => {
    expect(
      number(
        'CHAIN.START',
        335_100 / 0.3,
        survivals.map((s) => [s]),
      ) / 1e6,
    ).toAgreeWithPrinted(printed);
  });

  /**
   * SRAC 1803: 70 % hatch, 70 % survival to swim-up, half of the females spawn, 3,000 eggs a pound: printed
   * 1,350 to 2,000 lb.
   */
  test('a million channel catfish fry take females within the printed range', () => {
    const pounds = number('CHAIN.START', 1e6, [[0.7], [0.7], [0.5]]) / 3000;
    expect(pounds).toBeGreaterThanOrEqual(1350);
    expect(pounds).toBeLessThanOrEqual(2000);
  });

  /**
   * STERLETCHAIN adds half for a loss of half and prints 15 million for 10: what that leaves is not what is
   * wanted.
   */
  test('adding the loss would fall short', () => {
    expect(number('CHAIN.END', 15e6, 0.5)).toBe(7.5e6);
    expect(number('CHAIN.START', 10e6, 0.5)).toBe(20e6);
  });

  test('the plan ends with the number wanted', () => {
    const { steps, assumed } = planOf();
    const eggs = value(steps[0]?.number);
    expect(eggs * steps.reduce((product, { survival }) => product * assumed[survival], 1)).toBeCloseTo(
      40_000,
      6,
    );
    expect(steps.map(({ key }) => key)).toEqual(['eggs', 'larvae', 'firstFeed', 'fry', 'fingerlings']);
    expect(planOf({ product: 'fry' }).steps.map(({ key }) => key)).toEqual([
      'eggs',
      'larvae',
      'firstFeed',
      'fry',
    ]);
  });

  /**
   * Computed here from the means of GRAAF95 and DADEBO00: the rains (59.1 % hatch, eggs 14.3 % of body
   * weight) and the dry season (28.4 %, 1.3 %), 32.3 % through the pond, 669 eggs a gram: 5.48 and 125.3 kg
   * of females for 100,000 fingerlings.
   */
  test.each([
    [0.591, 0.143, '5.48'],
    [0.284, 0.013, '125.3'],
  ])('hatch %f and egg share %f take %s kg of females (consistency)', (hatch, eggShare, printed) => {
    const { results } = planOf({
      wanted: 100_000,
      femaleWeight: 1,
      assumptions: {
        hatch,
        eggShare,
        yolkSurvival: 1,
        frySurvival: 1,
        nurserySurvival: 0.323,
        gradingShare: 1,
        ovulating: 1,
      },
    });
    const kilograms = value(results.eggsNeeded) / (1000 * eggShare * 669);
    expect(kilograms).toAgreeWithPrinted(printed);
    expect(results.femalesNeeded).toBe(Math.ceil(kilograms));
  });
});

describe('the clock', () => {
  test('the strip is at the hour asked for, the injection before it by the waiting time', () => {
    for (const stripHour of [0, 7, 12.5, 23.75]) {
      const { stripAt, injectAt } = planOf({ stripHour }).results;
      expect(((value(stripAt) % 1) * 24 + 24) % 24).toBeCloseTo(stripHour, 6);
      expect(value(stripAt) - value(injectAt)).toBeCloseTo(
        number('LATENCY.HOURS', 26.5, 'ready-made solution') * HOUR,
        9,
      );
    }
  });

  test('the injection is the one the sheet function gives for that strip, with the own offset too', () => {
    const { stripAt, injectAt, checkAt, lateAt } = planOf({ assumptions: { latencyOffset: 2 } }).results;
    expect(value(injectAt)).toBeCloseTo(
      number('INJECTION.TIME', value(stripAt), 26.5, 'ready-made solution', 2),
      9,
    );
    expect(value(checkAt)).toBeLessThan(value(stripAt));
    expect(value(lateAt)).toBeGreaterThan(value(stripAt));
  });

  test('the fish are ready on the day wanted or the day before, never later', () => {
    for (let hour = 0; hour < 24; hour += 0.5)
      for (const temperature of [23, 25, 27, 30]) {
        const form = formOf({ stripHour: hour, temperature });
        const slack = form.wantedOn - value(planSeason(form).results.readyAt);
        expect([0, 1]).toContain(slack);
      }
  });

  test('cooler water: earlier strip, longer waits', () => {
    const [cool, warm] = [planOf({ temperature: 23 }).results, planOf({ temperature: 29 }).results];
    expect(value(cool.stripAt)).toBeLessThan(value(warm.stripAt));
    expect(value(cool.latencyHours)).toBeGreaterThan(value(warm.latencyHours));
  });

  test('tasks are in order of time, from ordering to handing over', () => {
    const { tasks } = planOf();
    const times = tasks.map(({ when }) => value(when));
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(tasks[0]?.key).toBe('order');
    expect(tasks.at(-1)?.key).toBe('sale');
    expect(new Set(tasks.map(({ key }) => key)).size).toBe(tasks.length);
    for (const { howMuch, amount } of tasks)
      expect(typeof howMuch).toBe(amount === undefined ? 'undefined' : 'number');
  });
});

describe('feeding', () => {
  test('live food first, half and half, then dry; the dry total is the days added up', () => {
    const { feed, results } = planOf({ product: 'fry' });
    expect(feed.map(({ stage }) => stage)).toEqual([
      ...Array<string>(5).fill('live food'),
      ...Array<string>(4).fill('weaning'),
      ...Array<string>(3).fill('dry feed'),
    ]);
    expect(feed[0]).toMatchObject({ dry: 0, live: 1 });
    expect(feed.at(-1)).toMatchObject({ cysts: 0, live: 0 });
    expect(value(results.feedTotal)).toBeCloseTo(
      feed.reduce((sum, { dry }) => sum + value(dry), 0) / 1000,
      9,
    );
  });

  test('fish run from the larvae that feed to the fish before grading', () => {
    const { feed, steps, assumed } = planOf();
    expect(value(feed[0]?.fish)).toBeCloseTo(value(steps[2]?.number), 6);
    expect(value(feed[assumed.rearingDays]?.fish)).toBeCloseTo(value(steps[3]?.number), 6);
    expect(feed).toHaveLength(40);
  });
});

describe('what cannot be met is said, not thrown', () => {
  const said = (changes: object): string[] =>
    planOf(changes)
      .findings.filter(({ kind }) => kind === 'cannot')
      .map(({ about, message }) => `${about} | ${message}`);

  test('females short, with the most that can be promised', () => {
    const [sentence = ''] = said({ females: 2 });
    expect(sentence).toMatch(
      /^females \| The order cannot be met, because it takes 3 females of 1\.2 kg and you have 2\. With those the most to promise is [\d,]+ fingerlings\./,
    );
    const most = Number(/promise is ([\d,]+)/.exec(sentence)?.[1]?.replaceAll(',', ''));
    expect(said({ females: 2, wanted: most })).toEqual([]);
    expect(said({ females: 2, wanted: most + 1 })).toHaveLength(1);
  });

  test.each([
    ['males', { males: 1 }],
    ['vats', { vats: 1 }],
  ])('%s short: the most named is met, one more is not', (about, changes) => {
    const [sentence = ''] = said(changes);
    expect(sentence.startsWith(`${about} | The order cannot be met, because it takes`)).toBe(true);
    const most = Number(/promise is ([\d,]+)/.exec(sentence)?.[1]?.replaceAll(',', ''));
    expect(said({ ...changes, wanted: most })).toEqual([]);
    expect(said({ ...changes, wanted: most + 1 })).toHaveLength(1);
  });

  test('nothing at all', () => {
    expect(said({ females: 0, males: 0, vats: 0 })).toHaveLength(3);
    expect(said({ females: 0 })[0]).toContain('promise is no fingerlings');
    expect(planOf({ females: 0 }).canBeMet).toBe(false);
  });

  test('too late: the earliest day to promise is in time', () => {
    const [sentence = ''] = said({ plannedOn: '2027-04-01' });
    expect(sentence).toMatch(
      /^wantedOn \| The order cannot be met, because the vats would have to be filled on .* The earliest day to promise is (.*)\.$/,
    );
    const earliest = new Date(`${/promise is \w{3} (.*)\.$/.exec(sentence)?.[1] ?? ''} UTC`)
      .toISOString()
      .slice(0, 10);
    expect(said({ plannedOn: '2027-04-01', wantedOn: earliest })).toEqual([]);
    expect(said({ plannedOn: '2027-04-01', wantedOn: isoDayBefore(earliest) })).toHaveLength(1);
  });

  test('readings that fit no water give a sentence and a plan without a dose', () => {
    const plan = planOf({ ph: 4.5, alkalinity: 3 });
    expect(plan.results.vatDose).toMatchObject({ error: expect.any(String) });
    expect(plan.findings.find(({ about }) => about === 'ph')?.message).toMatch(
      /^No dose for these readings\. /,
    );
    expect(typeof plan.results.stripAt).toBe('number');
  });

  test('water that is high enough needs nothing', () => {
    expect(planOf({ ph: 7.4 }).results).toMatchObject({ vatDose: 0, trialDose: 0, totalDose: 0 });
  });
});

const isoDayBefore = (iso: string): string =>
  new Date(Date.parse(iso) - 86_400_000).toISOString().slice(0, 10);

test('every assumption lies in its own range, names a source and says where it stands', () => {
  for (const a of Object.values(ASSUMPTIONS)) {
    const [low, high] = [Math.min(a.low, a.high), Math.max(a.low, a.high)];
    expect({
      key: a.key,
      fits: a.planned >= low && a.planned <= high && a.planned >= a.min && a.planned <= a.max,
    }).toEqual({ key: a.key, fits: true });
    expect(a.sources.filter((key) => !(key in SOURCES))).toEqual([]);
    expect(a.note.length).toBeGreaterThan(10);
  }
});
