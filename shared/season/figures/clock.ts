import { FEEDING_PROFILES, INCUBATION_PROFILES } from '../../families/timing/kernels/incubationProfiles';
import { LATENCY_PROFILES } from '../../families/timing/kernels/latencyProfiles';
import type { Profile } from '../../families/timing/kernels/profile';
import { hoursAt } from '../../families/timing/kernels/rateCurve';
import { kills } from '../../families/timing/kernels/tolerance';
import { hatchWindow, stripWindow } from '../../families/timing/kernels/window';
import type { OrderBook } from '../book/orderBook';
import { midnightOf, weekdayOf } from '../../units/dates';

/** Clock times of a run that do not depend on what is sold: from the injection to the first meals. */
export interface RunClock {
  readonly temperature: number;
  readonly latencyHours: number;
  readonly injectAt: number;
  readonly checkAt: number;
  readonly stripAt: number;
  readonly lateAt: number;
  readonly hatchAt: number;
  readonly hatchEndAt: number;
  readonly firstFeedAt: number;
  /** First full day of feeding. */
  readonly feedFrom: number;
}
/** Why no run can be stripped on a day. */
export type NoRun = 'day off' | 'no temperature' | 'temperature' | 'hours';

/** Water is expected to pass through the value of a month in its middle. */
const MIDDLE = 15;

/**
 * Water expected on a day: straight between the middles of two months. NaN when a month it needs is unknown.
 * Example: 26 °C in March and 28 °C in April give 27 °C at the end of March.
 */
export function temperatureOn(temperatures: readonly (number | null | undefined)[], day: number): number {
  const date = midnightOf(day);
  const month = date.getUTCMonth();
  const here = temperatures[month] ?? NaN;
  const beyond = date.getUTCDate() - 1 - MIDDLE + (day - Math.floor(day));
  if (beyond === 0) return here;
  const next = temperatures[(month + (beyond > 0 ? 1 : 11)) % 12] ?? NaN;
  return here + (next - here) * Math.min(0.5, Math.abs(beyond) / 30);
}

const profile = (list: readonly Profile[], name: string): Profile | undefined =>
  list.find((p) => p.name === name);
const SPECIES = 'African catfish';

/** Hours of a stage in water of a temperature; NaN outside what was published, or where it kills. */
const hoursIn = (of: Profile | undefined, temperature: number): number =>
  !of || (of.tolerance && kills(of.tolerance, temperature)) ? NaN : hoursAt(of.curve, temperature);

export interface Stages {
  readonly latency: Profile | undefined;
  readonly incubation: Profile | undefined;
  readonly feeding: Profile | undefined;
}
export const stagesFor = (preparation: string): Stages => ({
  latency: profile(LATENCY_PROFILES, preparation),
  incubation: profile(INCUBATION_PROFILES, SPECIES),
  feeding: profile(FEEDING_PROFILES, SPECIES),
});

const HALF_HOUR = 0.5;
/**
 * First hour of the shift at which both the strip and the injection before it fall into their hours;
 * undefined when there is none.
 */
function stripHour(staff: OrderBook['staff'], latencyHours: number): number | undefined {
  for (let hour = staff.stripFrom; hour <= staff.stripTo + 1e-9; hour += HALF_HOUR) {
    const inject = (((hour - latencyHours) % 24) + 24) % 24;
    if (inject >= staff.injectFrom - 1e-9 && inject <= staff.injectTo + 1e-9) return hour;
  }
  return undefined;
}

/** The clock of a run stripped on a day, or what stands in the way. */
export function clockOn(
  book: Pick<OrderBook, 'staff' | 'temperatures'>,
  stages: Stages,
  /** The farm's own hours against the tables: later to ripen by so many hours, to hatch so many times as long. */
  { latencyOffset: offset, incubationFactor }: { latencyOffset: number; incubationFactor: number },
  day: number,
): RunClock | NoRun {
  const { staff } = book;
  if (!staff.weekdays.includes(weekdayOf(day)) || staff.daysOff.includes(day)) return 'day off';
  const temperature = temperatureOn(book.temperatures, day + 0.5);
  if (Number.isNaN(temperature)) return 'no temperature';
  const tableHours = hoursIn(stages.latency, temperature);
  const tableIncubation = hoursIn(stages.incubation, temperature);
  const incubation = incubationFactor * tableIncubation;
  const yolk = hoursIn(stages.feeding, temperature);
  if (Number.isNaN(tableHours + incubation + yolk)) return 'temperature';
  const latencyHours = tableHours + offset;
  const hour = stripHour(staff, latencyHours);
  if (hour === undefined) return 'hours';
  const stripAt = day + hour / 24;
  const injectAt = stripAt - latencyHours / 24;
  const window = stripWindow(tableHours, stages.latency?.spread ?? [1, 1], offset);
  const last =
    incubationFactor *
    (hatchWindow(tableIncubation, stages.incubation?.spread ?? [1, 1], stages.incubation?.species ?? '')
      ?.last ?? tableIncubation);
  const firstFeedAt = stripAt + (incubation + yolk) / 24;
  return {
    temperature,
    latencyHours,
    injectAt,
    stripAt,
    checkAt: injectAt + window.firstCheck / 24,
    lateAt: injectAt + window.lastTested / 24,
    hatchAt: stripAt + incubation / 24,
    hatchEndAt: stripAt + last / 24,
    firstFeedAt,
    feedFrom: Math.floor(firstFeedAt + 0.5),
  };
}
