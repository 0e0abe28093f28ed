/* eslint-disable complexity -- the rules stand one after another, as in the text */
import type { OrderBook } from '../../../shared/season';
import type { SeasonPlan } from '../../../shared/season/types';
import { assumed } from '../../../shared/families/assumptions';

/**
 * The rules of a season, written from their text and not from the planner: what a reader of the plan with a
 * pencil would check. Gives one sentence for each breach.
 */
const EPS = 1e-6;
const overlap = (a: { from: number; to: number }, b: { from: number; to: number }): boolean =>
  a.from < b.to - EPS && b.from < a.to - EPS;

export function breachesOf(book: OrderBook, plan: SeasonPlan): string[] {
  const bad: string[] = [];
  const a = assumed(book.assumptions);
  const say = (text: string): void => void bad.push(text);
  const vats = new Map(book.vats.map((vat) => [vat.name, vat]));
  const orders = new Map(book.orders.map((order) => [order.name, order]));
  const planned = plan.batches.filter(({ state }) => state === 'planned');
  const byName = new Map(plan.batches.map((batch) => [batch.name, batch]));
  if (byName.size !== plan.batches.length) say('two batches of one name');

  // Hours and days.
  for (const b of planned) {
    const day = Math.floor(b.stripAt);
    const weekday = ((day - 2) % 7) + 1; // serial 2 was a Monday
    const hour = (b.stripAt - day) * 24;
    const inject = (b.injectAt - Math.floor(b.injectAt)) * 24;
    if (day < book.plannedOn) say(`${b.name} is stripped in the past`);
    if (!book.staff.weekdays.includes(weekday) || book.staff.daysOff.includes(day))
      say(`${b.name} on a day off`);
    if (hour < book.staff.stripFrom - EPS * 24 || hour > book.staff.stripTo + EPS * 24)
      say(`${b.name} stripped at ${hour}`);
    if (inject < book.staff.injectFrom - 1e-4 || inject > book.staff.injectTo + 1e-4)
      say(`${b.name} injected at ${inject}`);
    if (!(
      b.injectAt < b.stripAt &&
      b.stripAt < b.hatchAt &&
      b.hatchAt < b.firstFeedAt &&
      b.firstFeedAt < b.weanedAt
    ))
      say(`${b.name}: hours out of order`);
    if (Math.floor(b.injectAt) - book.leadDays.hormone < book.plannedOn)
      say(`${b.name}: hormone comes too late`);
    if (b.pairs.length === 0) say(`${b.name} has no parents`);
  }
  // Hands, rest, kin, males.
  const perDay = new Map<number, number>();
  for (const b of plan.batches)
    perDay.set(Math.floor(b.stripAt), (perDay.get(Math.floor(b.stripAt)) ?? 0) + b.pairs.length);
  for (const b of planned)
    if ((perDay.get(Math.floor(b.stripAt)) ?? 0) > book.staff.femalesPerDay)
      say(`too few hands for ${b.name}`);
  const rest = Math.max(1, book.restDays);
  const families = {
    female: new Map(book.females.map((f) => [f.tag, f])),
    male: new Map(book.males.map((m) => [m.tag, m])),
  };
  for (const kind of ['female', 'male'] as const) {
    for (const [tag, fish] of families[kind]) {
      const uses = plan.batches
        .filter(({ pairs }) => pairs.some((pair) => pair[kind] === tag))
        .map((b) => ({ day: Math.floor(b.stripAt), isPlanned: b.state === 'planned', b }));
      if (fish.lastUsed !== undefined)
        uses.push({ day: fish.lastUsed, isPlanned: false, b: plan.batches[0] as never });
      uses.sort((x, y) => x.day - y.day);
      uses.forEach((use, i) => {
        const next = uses[i + 1];
        if (!next || !(use.isPlanned || next.isPlanned)) return;
        if (kind === 'male' && !book.malesSurvive) say(`${tag} is used twice`);
        else if (next.day - use.day < rest - EPS) say(`${tag} rests ${next.day - use.day} days`);
      });
      if (fish.goneOn !== undefined && uses.some(({ isPlanned }) => isPlanned))
        say(`${tag} is gone and is used`);
    }
  }
  for (const b of planned) {
    const females = b.pairs.map(({ female }) => female);
    if (new Set(females).size !== females.length) say(`${b.name}: a female twice`);
    for (const male of b.males)
      if (b.pairs.filter((pair) => pair.male === male).length > Math.max(1, Math.floor(a.femalesPerMale)))
        say(`${male} for too many females`);
    for (const { female, male } of b.pairs) {
      const [f, m] = [families.female.get(female), families.male.get(male)];
      if (!f || !m) say(`${b.name}: unknown parents ${female} ${male}`);
      else if (f.family !== undefined && f.family !== '' && f.family === m.family)
        say(`${female} and ${male} are kin`);
    }
  }
  // Vats: one batch at a time, cleaned between, allowed, not out of use.
  for (const [name, vat] of vats) {
    const stays = plan.stays.filter((stay) => stay.vat === name).sort((x, y) => x.from - y.from);
    stays.forEach((stay, i) => {
      if (!vat.holds.includes(stay.stage) && byName.get(stay.batch)?.state === 'planned')
        say(`${name} holds no ${stay.stage}`);
      for (const other of stays.slice(i + 1)) {
        if (overlap(stay, other)) say(`${name} is taken twice, by ${stay.batch} and ${other.batch}`);
        else if (
          stay.batch !== other.batch &&
          other.from - stay.to < book.cleaningDays - EPS &&
          [stay, other].some(({ batch }) => byName.get(batch)?.state === 'planned')
        )
          say(`${name} is not cleaned between ${stay.batch} and ${other.batch}`);
      }
      const out = {
        from: vat.outFrom ?? -Infinity,
        to: vat.outUntil === undefined ? Infinity : vat.outUntil + 1,
      };
      if (
        (vat.outFrom !== undefined || vat.outUntil !== undefined) &&
        byName.get(stay.batch)?.state === 'planned' &&
        overlap(stay, out)
      )
        say(`${name} is out of use`);
    });
  }
  // Orders: never more than asked; ready in time; not older than they may wait.
  for (const [name, order] of orders) {
    const got = plan.allocations.filter((x) => x.order === name).reduce((sum, { fish }) => sum + fish, 0);
    const sold = book.batches
      .flatMap(({ events }) => events)
      .filter((e) => e.kind === 'sold' && e.order === name)
      .reduce((sum, e) => sum + e.number, 0);
    if (got + sold > order.number + EPS && got > 0) say(`${name} gets ${got + sold} of ${order.number}`);
    if (order.cancelled && got > 0) say(`${name} is cancelled and gets fish`);
  }
  for (const x of plan.allocations) {
    const [b, order] = [byName.get(x.batch), orders.get(x.order)];
    if (!b || !order) {
      say(`fish of ${x.batch} to ${x.order}: no such thing`);
      continue;
    }
    // Days of growth from the weights: ln(w1/w0)/g, a hundredth of a day given away.
    const days = (from: number, to: number, growth: number): number =>
      Math.ceil((100 * Math.log(to / from)) / growth - 0.01);
    const weaned = a.startWeight * Math.exp((a.fryGrowth * a.rearingDays) / 100);
    const need =
      order.product === 'fry'
        ? order.grams === undefined
          ? a.rearingDays
          : Math.max(7, days(a.startWeight, order.grams, a.fryGrowth))
        : a.rearingDays +
          (order.grams === undefined ? a.nurseryDays : days(weaned, order.grams, a.nurseryGrowth));
    const ready = b.feedFrom + need;
    if (ready > order.due) say(`${x.order} is due before ${x.batch} is ready`);
    if (ready < order.due - book.holdDays) say(`${x.batch} waits ${order.due - ready} days for ${x.order}`);
    if (!Number.isInteger(x.fish) || x.fish < 1) say(`${x.fish} fish for ${x.order}`);
  }
  // Water and fish of each planned batch, by the fish that are promised.
  for (const b of planned) {
    const own = plan.allocations.filter(({ batch }) => batch === b.name);
    const nursed = own.filter(({ order }) => orders.get(order)?.product === 'fingerlings');
    const litresAt = (stage: string, time: number): number =>
      plan.stays
        .filter((s) => s.batch === b.name && s.stage === stage && s.from <= time + EPS && s.to >= time - EPS)
        .reduce((sum, s) => sum + (vats.get(s.vat)?.litres ?? 0), 0);
    const feeding = own.reduce((sum, x) => sum + x.feeding, 0);
    if (feeding > b.eggs * a.hatch * a.yolkSurvival * (1 + 1e-6) + 1)
      say(`${b.name} promises more fish than it has eggs for`);
    const check = (stage: string, time: number, number: number, perLitre: number): void => {
      if (number > litresAt(stage, time) * perLitre * (1 + 1e-6) + 1)
        say(`${b.name}: ${Math.round(number)} in ${litresAt(stage, time)} L of ${stage}`);
    };
    check('eggs', b.stripAt, feeding / (a.hatch * a.yolkSurvival), a.eggsPerLitre);
    check('fry', b.firstFeedAt, feeding, a.larvaePerLitre);
    for (const x of own) {
      const leaves = x.on + 8 / 24;
      if (orders.get(x.order)?.product === 'fry') {
        const still = own
          .filter((y) => orders.get(y.order)?.product === 'fry' && y.on >= x.on)
          .reduce((sum, y) => sum + y.feeding, 0);
        check('fry', leaves, still, a.larvaePerLitre);
      } else {
        const still =
          nursed.filter((y) => y.on >= x.on).reduce((sum, y) => sum + y.feeding, 0) * a.frySurvival;
        check('nursing', leaves, still, a.nurseryPerLitre);
      }
    }
  }
  // Every planned batch is for something, and money adds up.
  for (const b of planned)
    if (!plan.allocations.some(({ batch }) => batch === b.name)) say(`${b.name} is for nobody`);
  const total = plan.entries.reduce((sum, { amount }) => sum + amount, book.prices.atHand);
  const end = plan.cash.at(-1)?.balance ?? book.prices.atHand;
  if (Math.abs(total - end) > 1e-6 * Math.max(1, Math.abs(total)))
    say(`cash ends at ${end}, entries at ${total}`);
  return bad;
}
