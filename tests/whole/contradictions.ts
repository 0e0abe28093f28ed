import { evaluate } from '../../shared/catalogue/calculation';
import { isGrid } from '../../shared/base/values';
import { LivingPages } from '../../shared/books/living';
import { stillWater } from '../../shared/books/living/workings/stillWater';
import { EVENTS_IN_ORDER } from '../../shared/run/lines';
import { assumedOf } from '../../shared/season/figures/growth';
import type { OrderBook } from '../../shared/season/book/orderBook';
import type { SeasonBatch, SeasonPlan } from '../../shared/season/types';
import { verdictOf } from '../../shared/maths/verdict';

/** The tool's own functions, asked about the plan's own numbers. One sentence a contradiction. */

const ask = (formula: string): readonly unknown[] => {
  const got = evaluate(formula);
  return isGrid(got) ? (got[0] ?? []) : [got];
};
const numberOf = (formula: string, column = 0): number => Number(ask(formula)[column]);
const near = (a: number, b: number, part = 1e-6): boolean =>
  Math.abs(a - b) <= part * Math.max(1e-9, Math.abs(a), Math.abs(b));

class Doubts {
  readonly said: string[] = [];
  unless(holds: boolean, sentence: () => string): void {
    if (!holds) this.said.push(sentence());
  }
}

function hours(doubts: Doubts, pages: LivingPages, batch: SeasonBatch): void {
  const of = pages.reader(batch);
  const { preparation } = pages.book;
  const [water, offset, inject] = [of.number('water'), pages.assumed.latencyOffset, of.number('inject')];
  const [look = NaN, , late = NaN] = ask(
    `=SPAWN.STRIP.WINDOW(${inject},${water},"${preparation}",${offset})`,
  ).map(Number);
  doubts.unless(
    look <= batch.stripAt + 1e-6 && late >= batch.stripAt - 1e-6,
    () => `${batch.name}: strip outside the window of SPAWN.STRIP.WINDOW`,
  );
  doubts.unless(
    offset !== 0 ||
      ask(`=SPAWN.CHECK.LATENCY(${inject},${batch.stripAt},${water},"${preparation}")`)[0] === 'ok',
    () => `${batch.name}: SPAWN.CHECK.LATENCY doubts its own waiting time`,
  );
  doubts.unless(
    ask(`=SPAWN.CHECK.HATCHTIME(${batch.stripAt},${of.number('hatchAt')},${water})`)[0] === 'ok',
    () => `${batch.name}: SPAWN.CHECK.HATCHTIME doubts the hatch`,
  );
  doubts.unless(
    Math.abs(of.number('hatchAt') - batch.hatchAt) < 1 / 1440,
    () => `${batch.name}: the workbook's clock says another hatch than the plan`,
  );
}

function events(doubts: Doubts, pages: LivingPages, batch: SeasonBatch): void {
  const at = new Map(
    pages.rows.tasks
      .filter((task) => task.batch === batch.name && task.later === 0 && task.order === '')
      .map((task) => [task.task, task.when]),
  );
  for (const chain of EVENTS_IN_ORDER) {
    const known = chain.flatMap((key) => (at.has(key) ? [[key, at.get(key) ?? NaN] as const] : []));
    known.slice(1).forEach(([key, when], i) => {
      const [before, was] = known[i] ?? ['', NaN];
      doubts.unless(when >= was - 1e-9, () => `${batch.name}: ${key} comes before ${before}`);
    });
  }
}

function hormoneAndEggs(doubts: Doubts, pages: LivingPages, batch: SeasonBatch): void {
  const of = pages.reader(batch);
  const kilograms = of.number('kilograms');
  const own = pages.book.preparation === 'ready-made solution' ? `,${pages.assumed.hormoneDose}` : '';
  const [amount, unit] = ask(`=SPAWN.HORMONE.PREPARE(${kilograms},"${pages.book.preparation}"${own})`);
  doubts.unless(
    near(Number(amount), of.number('hormone')),
    () => `${batch.name}: hormone is not what it asks`,
  );
  doubts.unless(
    unit === of.get('hormoneUnit'),
    () => `${batch.name}: hormone in ${String(of.get('hormoneUnit'))}`,
  );
  doubts.unless(
    near(of.number('netArea'), numberOf(`=SPAWN.NET.AREA(${of.number('eggs')})`)),
    () => `${batch.name}: the net is not what SPAWN.NET.AREA asks`,
  );
}

/** The dose of the plan, poured: where the aired vat ends. */
function dose(doubts: Doubts, pages: LivingPages, batch: SeasonBatch): void {
  const of = pages.reader(batch);
  const { ph, alkalinity, material, phWanted } = pages.book.water;
  const grams = 2 * of.number('halfEggs');
  const litres = Number(pages.givenOf(batch).litresEggs);
  if (ph === undefined || alkalinity === undefined || !(grams > 0) || !(litres > 0)) return;
  const water = of.number('water');
  const aired = numberOf(
    `=SPAWN.BUFFER.OUTCOME(${litres},${grams},${ph},${alkalinity},${water},"${material}")`,
    1,
  );
  doubts.unless(
    aired >= 6.5 - 0.05 && aired <= 8.05 && near(aired, phWanted, 0.02),
    () => `${batch.name}: its dose ends at pH ${aired.toFixed(2)} once aired, ${phWanted} was wanted`,
  );
}

const FULL = { eggs: 'eggs', fry: 'fry in tanks' } as const;
function density(doubts: Doubts, pages: LivingPages): void {
  for (const stay of pages.plan.stays) {
    if (stay.stage === 'nursing') continue;
    const litres = pages.book.vats.find(({ name }) => name === stay.vat)?.litres ?? NaN;
    const code = ask(`=SPAWN.STOCKING.CHECK(${stay.fish},"${FULL[stay.stage]}",${litres})`).at(-1);
    doubts.unless(code !== 'above', () => `${stay.vat}: ${stay.stage} too close for SPAWN.STOCKING.CHECK`);
  }
}

/** Weight, food, water and air of a few days. */
function days(doubts: Doubts, pages: LivingPages, batch: SeasonBatch): void {
  const a = assumedOf(pages.assumed, batch);
  const length = batch.leavesOn - batch.feedFrom;
  const isSaid = stillWater(pages).some(({ message }) => message.startsWith(`${batch.name}:`));
  const reader = pages.reader(batch);
  for (const day of new Set([0, 4, 8, length - 1].filter((d) => d >= 0 && d < length))) {
    const of = pages.day(batch, day);
    const [fish, grams, dry, eaten, live] = (['fishNow', 'gramsNow', 'dry', 'eaten', 'live'] as const).map(
      (key) => of.number(key),
    ) as [number, number, number, number, number];
    const reared = of.number('reared');
    const weaned = numberOf(`=SPAWN.GROWTH.WEIGHT(${a.startWeight},${a.fryGrowth},${reared})`);
    doubts.unless(
      // How they grew before they were weighed is the weighing's.
      (batch.weighed && batch.feedFrom + day < batch.weighed.on) ||
        near(grams, numberOf(`=SPAWN.GROWTH.WEIGHT(${weaned},${a.nurseryGrowth},${day - reared})`)),
      () => `${batch.name}: weight on day ${day} is not growth`,
    );
    if (fish < 1) continue;
    doubts.unless(
      near(dry, numberOf(`=SPAWN.FEED.DAILY(${fish},${grams},${of.number('ration')})`)),
      () => `${batch.name}: feed on day ${day} is not SPAWN.FEED.DAILY`,
    );
    doubts.unless(
      of.number('ration') <= numberOf(`=SPAWN.RATION.GUIDE(${Math.max(0.0006, grams)})`) / 0.9 + 1e-9,
      () => `${batch.name}: more feed on day ${day} than they can eat`,
    );
    const litres = of.number('litresNow');
    if (!(litres > 0)) continue;
    const food = dry + (fish * grams * live * eaten) / 0.9;
    const pH = Math.max(pages.book.water.phWanted, pages.book.water.ph ?? 0);
    const [change = NaN, times = NaN] = ask(
      `=SPAWN.WATER.CHANGE(${food},${litres},${Math.min(9, pH)},${reader.number('water')})`,
    ).map(Number);
    doubts.unless(
      near(change, of.number('change')) && near(times, of.number('changes')),
      () => `${batch.name}: water to change on day ${day} is not SPAWN.WATER.CHANGE`,
    );
    const [act = NaN] = ask(`=SPAWN.AIR.MINUTES(${fish},${Math.max(0.0006, grams)},${litres})`).map(Number);
    doubts.unless(near(act, of.number('air')), () => `${batch.name}: minutes without air on day ${day}`);
    doubts.unless(
      isSaid || (times <= 1 && act >= 60),
      () => `${batch.name}: a full still vat passes in silence`,
    );
  }
}

/** Deaths of every day of the plan, beside what SPAWN.DEATHS.EXPECTED calls usual at that age. */
function deaths(doubts: Doubts, pages: LivingPages, batch: SeasonBatch): void {
  const of = pages.reader(batch);
  const hatchAt = of.number('hatchAt');
  const food = Math.max(1, Math.floor(of.number('fedFrom') - hatchAt));
  for (let day = 0; day + 1 < batch.leavesOn - batch.feedFrom; day++) {
    const [now, next] = [day, day + 1].map((d) => pages.day(batch, d).number('fishNow')) as [number, number];
    if (now < 100) continue;
    const age = Math.floor(batch.feedFrom + day - hatchAt);
    const row = ask(`=SPAWN.DEATHS.EXPECTED(${now},${age},${now - next},,${food})`);
    doubts.unless(
      row[3] === 'usual' && near(Number(row[1]), pages.day(batch, day).number('deadTo')),
      () =>
        `${batch.name}: day ${day}, ${(100 * (1 - next / now)).toFixed(1)} % dead, age ${age}: ${String(row[3])}`,
    );
  }
}

function orders(doubts: Doubts, pages: LivingPages, plan: SeasonPlan): void {
  for (const { order, promise, hope, certainty, verdict } of plan.orders) {
    const shares = plan.allocations.filter((share) => share.order === order.name);
    const fish = shares.reduce((sum, share) => sum + share.fish, 0);
    doubts.unless(
      fish <= order.number + 1e-6,
      () => `${order.name}: ${fish} to hand over, ${order.number} ordered`,
    );
    doubts.unless(
      promise <= order.number && hope <= order.number,
      () => `${order.name}: more promised than ordered`,
    );
    doubts.unless(verdict === verdictOf(certainty), () => `${order.name}: ${verdict} at ${certainty}`);
    for (const share of shares) {
      const ready = pages.share(share)?.number('latestStrip') ?? NaN;
      doubts.unless(ready <= share.on + 1e-6, () => `${order.name}: handed over before it is ready`);
    }
  }
}

/** Everything the tool's own functions say against a plan. */
export function contradictions(book: OrderBook, plan: SeasonPlan): string[] {
  const pages = new LivingPages(book, plan);
  const doubts = new Doubts();
  for (const batch of plan.batches) {
    hours(doubts, pages, batch);
    events(doubts, pages, batch);
    hormoneAndEggs(doubts, pages, batch);
    dose(doubts, pages, batch);
    days(doubts, pages, batch);
    deaths(doubts, pages, batch);
  }
  density(doubts, pages);
  orders(doubts, pages, plan);
  return doubts.said;
}
