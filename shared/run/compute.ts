import { daysFromHours, gramsFromKilograms, kilogramsFromGrams } from '../units/convert';
import type { Answer } from './ask';
import { ask, askRow, withAnswers } from './ask';
import type { Assumed } from '../families/assumptions';
import type { PlanForm } from './form';
import type { ResultKey } from './results';
import type { FeedingDay } from './steps';
import { feedingDays, stepsOf, vatStagesOf } from './steps';

export type Results = Readonly<Record<ResultKey, Answer>>;
export interface FeedRow extends FeedingDay {
  readonly date: Answer;
  readonly fish: Answer;
  readonly weight: number;
  readonly cysts: Answer;
  readonly dry: Answer;
}
export interface Computed {
  readonly results: Results;
  readonly numbers: readonly Answer[];
  readonly feed: readonly FeedRow[];
}

const TRIAL_LITRES = 10;
/** Eight o'clock, as a share of the day. */
const MORNING = 8 / 24;

const shares = (form: PlanForm, a: Assumed): number[] =>
  stepsOf(form.product).map(({ survival }) => a[survival]);

/** Numbers at each step, from eggs to the fish counted out. */
const numbersAlong = (eggs: Answer, survivals: readonly number[]): Answer[] => {
  const numbers: Answer[] = [eggs];
  for (const s of survivals) numbers.push(withAnswers([numbers.at(-1) ?? NaN], (n) => n * s));
  return numbers;
};

type Brood = Record<
  'femalesNeeded' | 'malesNeeded' | 'breedingNumber' | 'hormoneEach' | 'hormoneTotal',
  Answer
>;
function broodOf(form: PlanForm, a: Assumed, eggs: Answer): Brood {
  const femalesNeeded = ask(
    'SPAWN.FEMALES.NEEDED',
    eggs,
    form.femaleWeight,
    a.eggShare,
    a.eggsPerGram,
    a.ovulating,
  );
  const malesNeeded = withAnswers([femalesNeeded], (f) => Math.ceil(f / a.femalesPerMale));
  const hormoneEach = ask('SPAWN.HORMONE.VOLUME', form.femaleWeight, a.hormoneDose);
  return {
    femalesNeeded,
    malesNeeded,
    hormoneEach,
    breedingNumber: withAnswers([femalesNeeded, malesNeeded], (f, m) => (4 * f * m) / (f + m)),
    hormoneTotal: withAnswers([femalesNeeded, hormoneEach], (f, each) => f * each),
  };
}

type Times = Record<
  | 'latencyHours'
  | 'incubationHours'
  | 'yolkDays'
  | 'stripAt'
  | 'injectAt'
  | 'checkAt'
  | 'lateAt'
  | 'hatchAt'
  | 'hatchEndAt'
  | 'firstFeedAt'
  | 'feedFrom'
  | 'weanedAt'
  | 'readyAt'
  | 'beginOn',
  Answer
>;
/**
 * First meals after noon count as the next day's; a minute less than half a day keeps a meal at noon exactly
 * on its own day.
 */
const ALMOST_HALF_A_DAY = 719 / 1440;
/** Backwards from the wanted day to a strip at the hour people are there, then forwards from that strip. */
function timesOf(form: PlanForm, a: Assumed): Times {
  const { temperature, preparation } = form;
  const rearing = a.rearingDays + (form.product === 'fingerlings' ? a.nurseryDays : 0);
  const latencyHours = withAnswers(
    [ask('SPAWN.LATENCY.HOURS', temperature, preparation)],
    (h) => h + a.latencyOffset,
  );
  const incubationHours = ask('SPAWN.INCUBATION.HOURS', temperature);
  const yolkDays = withAnswers(
    [ask('SPAWN.FEEDING.START', form.wantedOn, temperature)],
    (at) => at - form.wantedOn,
  );
  const clock = form.stripHour / 24;
  const stripAt = withAnswers(
    [incubationHours, yolkDays],
    (h, yolk) => Math.floor(form.wantedOn - rearing + ALMOST_HALF_A_DAY - yolk - h / 24 - clock) + clock,
  );
  const injectAt = withAnswers([stripAt, latencyHours], (strip, h) => strip - h / 24);
  const [checkAt = NaN, , lateAt = NaN] = askRow(
    'SPAWN.STRIP.WINDOW',
    injectAt,
    temperature,
    preparation,
    a.latencyOffset,
  );
  const hatchAt = withAnswers([stripAt, incubationHours], (strip, h) => strip + daysFromHours(h));
  const [, hatchEndAt = NaN] = askRow('SPAWN.HATCH.WINDOW', stripAt, temperature);
  const firstFeedAt = withAnswers([hatchAt, yolkDays], (hatch, yolk) => hatch + yolk);
  const feedFrom = withAnswers([firstFeedAt], (at) => Math.floor(at + 0.5));
  return {
    latencyHours,
    incubationHours,
    yolkDays,
    stripAt,
    injectAt,
    checkAt,
    lateAt,
    hatchAt,
    hatchEndAt,
    firstFeedAt,
    feedFrom,
    weanedAt: withAnswers([feedFrom], (day) => day + a.rearingDays + MORNING),
    readyAt: withAnswers([feedFrom], (day) => day + rearing),
    beginOn: withAnswers([stripAt], (strip) => Math.floor(strip) - a.preparingDays),
  };
}

type Vats = Record<'vatsHatching' | 'vatsFry' | 'vatsNursing' | 'vatsNeeded', Answer>;
function vatsOf(form: PlanForm, a: Assumed, numbers: readonly Answer[]): Vats {
  const vats: Vats = { vatsHatching: 0, vatsFry: 0, vatsNursing: 0, vatsNeeded: 0 };
  for (const stage of vatStagesOf(form.product)) {
    vats[stage.result] = withAnswers([numbers[stage.step] ?? NaN], (n) =>
      Math.ceil(n / (a[stage.density] * form.vatLitres)),
    );
  }
  vats.vatsNeeded = withAnswers([vats.vatsHatching, vats.vatsFry, vats.vatsNursing], Math.max);
  return vats;
}

/** Whole fish; a product that falls short of one by the last bit of a double counts as whole. */
const wholeFish = (n: number): number => Math.floor(n + 1e-6);

type Most = Record<'mostByFemales' | 'mostByMales' | 'mostByVats' | 'mostFish', number>;
/** The most fish each of the things you have allows. */
function mostOf(form: PlanForm, a: Assumed): Most {
  const survivals = shares(form, a);
  const after = (step: number): number => survivals.slice(step).reduce((product, s) => product * s, 1);
  const perFemale =
    gramsFromKilograms(form.femaleWeight) * a.eggShare * a.eggsPerGram * a.ovulating * after(0);
  const mostByFemales = wholeFish(form.females * perFemale);
  const mostByMales = wholeFish(Math.floor(form.males * a.femalesPerMale) * perFemale);
  const mostByVats = wholeFish(
    Math.min(
      ...vatStagesOf(form.product).map(
        (stage) => form.vats * form.vatLitres * a[stage.density] * after(stage.step),
      ),
    ),
  );
  return {
    mostByFemales,
    mostByMales,
    mostByVats,
    mostFish: Math.min(mostByFemales, mostByMales, mostByVats),
  };
}

type Water = Record<'trialDose' | 'vatDose' | 'totalDose' | 'toxicNow' | 'toxicThen', Answer>;
function waterOf(form: PlanForm, vatsNeeded: Answer): Water {
  const { ph, phWanted, alkalinity, temperature, material } = form;
  const dose = (litres: number): Answer =>
    ph >= phWanted ? 0 : ask('SPAWN.BUFFER.AIRED', litres, ph, phWanted, alkalinity, temperature, material);
  const vatDose = dose(form.vatLitres);
  return {
    trialDose: dose(TRIAL_LITRES),
    vatDose,
    totalDose: withAnswers([vatDose, vatsNeeded], (g, n) => g * n),
    toxicNow: ask('SPAWN.AMMONIA.SHARE', ph, temperature),
    toxicThen: ask('SPAWN.AMMONIA.SHARE', phWanted, temperature),
  };
}

function feedOf(form: PlanForm, a: Assumed, numbers: readonly Answer[], feedFrom: Answer): FeedRow[] {
  const survivors = (index: number): Answer =>
    index < a.rearingDays
      ? withAnswers([numbers[2] ?? NaN], (n) => n * a.frySurvival ** (index / a.rearingDays))
      : withAnswers(
          [numbers[3] ?? NaN],
          (n) => n * a.nurserySurvival ** ((index - a.rearingDays) / a.nurseryDays),
        );
  const weightAt = (index: number): number =>
    a.startWeight *
    Math.exp(
      (a.fryGrowth * Math.min(index, a.rearingDays) + a.nurseryGrowth * Math.max(0, index - a.rearingDays)) /
        100,
    );
  return feedingDays(form, a).map((day) => {
    const fish = survivors(day.index);
    const weight = weightAt(day.index);
    const ration = (day.stage === 'nursing' ? a.nurseryRation : a.fryRation) * (1 - day.live);
    return {
      ...day,
      fish,
      weight,
      date: withAnswers([feedFrom], (first) => first + day.index),
      cysts:
        day.live > 0
          ? ask('SPAWN.CYSTS.NEEDED', fish, a.naupliiPerLarva * day.live, a.naupliiPerGram, a.naupliiHarvest)
          : 0,
      dry: day.live < 1 ? ask('SPAWN.FEED.DAILY', fish, weight, ration) : 0,
    };
  });
}

export function compute(form: PlanForm, a: Assumed): Computed {
  const survivals = shares(form, a);
  const eggsNeeded = ask(
    'SPAWN.CHAIN.START',
    form.wanted,
    survivals.map((s) => [s]),
  );
  const numbers = numbersAlong(eggsNeeded, survivals);
  const times = timesOf(form, a);
  const vats = vatsOf(form, a, numbers);
  const feed = feedOf(form, a, numbers, times.feedFrom);
  const total = (list: readonly Answer[]): Answer =>
    withAnswers(list, (...all) => all.reduce((sum, x) => sum + x, 0));
  const results: Results = {
    eggsNeeded,
    larvaeHatched: numbers[1] ?? NaN,
    larvaeFeeding: numbers[2] ?? NaN,
    fishWeaned: numbers[3] ?? NaN,
    ...broodOf(form, a, eggsNeeded),
    ...times,
    ...vats,
    ...mostOf(form, a),
    ...waterOf(form, vats.vatsNeeded),
    cystsFirst: feed[0]?.cysts ?? 0,
    cystsTotal: total(feed.map((row) => row.cysts)),
    feedTotal: withAnswers([total(feed.map((row) => row.dry))], kilogramsFromGrams),
  };
  return { results, numbers, feed };
}
