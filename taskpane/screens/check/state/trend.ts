import { grouped } from '../../../pane/values/show';
import type { Signal, TrendGroup, TrendRate, Trends, TrendView } from '../../../../shared/learn';

/**
 * What the picture of a trend shows, before it is drawn: points with their ends, the centre, and what stands
 * out in words.
 */

export type Grouping = 'run' | TrendView['by'];
export const GROUPINGS: Readonly<Record<Grouping, string>> = {
  run: 'run by run, in order of time',
  female: 'by female',
  male: 'by male',
  temperature: 'by water temperature',
  month: 'by month',
};
export const SHARES: Readonly<Record<TrendRate, string>> = {
  hatch: 'Eggs that hatch',
  fertilisation: 'Eggs fertilised',
};
export const isGrouping = (text: string): text is Grouping => text in GROUPINGS;
export const isShare = (text: string): text is TrendRate => text in SHARES;

export interface PicturePoint {
  readonly name: string;
  /** As short as the axis needs it. */
  readonly tick: string;
  readonly share: number;
  /** Control limits of a run, or the interval of a group; NaN where there are none. */
  readonly low: number;
  readonly high: number;
  readonly standsOut: 'above' | 'below' | 'row' | undefined;
  /** All of it in words. */
  readonly says: string;
}
export interface TrendPicture {
  readonly title: string;
  readonly isTime: boolean;
  readonly centre: number;
  readonly points: readonly PicturePoint[];
  /** One sentence for each point that stands out. */
  readonly signals: readonly string[];
  readonly notes: readonly string[];
}

const MOST_RUNS = 60;
const MOST_GROUPS = 30;
/** Fewer runs show chance, not a trend; the limits need as many. */
export const FEWEST_RUNS = 8;

export const percent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`;
const span = (low: number, high: number): string => `${percent(low)} to ${percent(high)}`;
const eggs = (k: number, n: number): string => `${grouped(k)} of ${grouped(n)}`;
const OUT: Readonly<Record<Signal, PicturePoint['standsOut']>> = {
  'above the limits': 'above',
  'below the limits': 'below',
  'nine in a row above': 'row',
  'nine in a row below': 'row',
};
const WORDS: Readonly<Record<Signal, string>> = {
  'above the limits': 'above the limits',
  'below the limits': 'below the limits',
  'nine in a row above': 'the ninth or later in a row above the centre',
  'nine in a row below': 'the ninth or later in a row below the centre',
};

function runPoints({ points, chart }: Trends): readonly PicturePoint[] {
  return points.flatMap(({ name, k, n }, i): PicturePoint[] => {
    const at = chart.points[i];
    if (!at) return [];
    const signal = at.signal ? WORDS[at.signal] : 'within the limits';
    return [
      {
        name,
        tick: name.replace(/ \d{4}$/, ''),
        share: at.share,
        low: at.low,
        high: at.high,
        standsOut: at.signal && OUT[at.signal],
        says: `${name}: ${percent(at.share)}, ${eggs(k, n)} eggs; ${signal}; limits ${span(at.low, at.high)}.`,
      },
    ];
  });
}

const tickOf = (by: TrendView['by'], name: string): string =>
  by === 'month'
    ? name.slice(0, 3)
    : by === 'temperature'
      ? name.replace(' to ', '–').replace(' °C', '°')
      : name;

/** A group stands out when its whole interval lies on one side of the farm. */
function groupPoint(
  { name, runs, k, n, share, expected, low, high }: TrendGroup,
  by: TrendView['by'],
  centre: number,
): PicturePoint {
  const standsOut = low > centre ? 'above' : high < centre ? 'below' : undefined;
  const side = standsOut ? `; all of that ${standsOut} the ${percent(centre)} of the farm` : '';
  return {
    name,
    tick: tickOf(by, name),
    share: expected,
    low,
    high,
    standsOut,
    says: `${name}: ${percent(expected)} expected, ${span(low, high)}${side}. Counted ${percent(share)}, ${eggs(k, n)} eggs in ${runs} ${runs === 1 ? 'run' : 'runs'}.`,
  };
}

const standingOut = (points: readonly PicturePoint[]): string[] =>
  points.filter(({ standsOut }) => standsOut !== undefined).map(({ says }) => says);

function ofRuns(trends: Trends): TrendPicture {
  const all = runPoints(trends);
  const points = all.slice(-MOST_RUNS);
  return {
    title: `${trends.label}, ${GROUPINGS.run}`,
    isTime: true,
    centre: trends.chart.centre,
    points,
    signals: standingOut(points),
    notes: all.length > points.length ? [`The latest ${points.length} of ${all.length} runs are shown.`] : [],
  };
}

/** Best and poorest where there are more groups than have room. */
const ends = <T>(list: readonly T[]): readonly T[] =>
  list.length <= MOST_GROUPS ? list : [...list.slice(0, MOST_GROUPS / 2), ...list.slice(-MOST_GROUPS / 2)];

function ofGroups(trends: Trends, { by, groups, without }: TrendView): TrendPicture {
  const { centre } = trends.chart;
  const all = groups.map((group) => groupPoint(group, by, centre));
  const points = by === 'female' || by === 'male' ? ends(all) : all.slice(-MOST_GROUPS);
  return {
    title: `${trends.label}, ${GROUPINGS[by]}`,
    isTime: false,
    centre,
    points,
    signals: standingOut(all),
    notes: [
      ...(all.length > points.length ? [`${points.length} of ${all.length} are shown.`] : []),
      ...(without > 0 ? [`${without} more ${without === 1 ? 'run does' : 'runs do'} not say it.`] : []),
      'Expected leans on the farm while there are few runs. A difference is not yet a ' +
        'cause: the best female may have had the best month.',
    ],
  };
}

/** A sentence instead, where there is too little to draw. */
export function pictureOf(trends: Trends, by: Grouping): TrendPicture | string {
  const runs = trends.points.length;
  if (runs < FEWEST_RUNS)
    return `${runs === 0 ? 'No run free of findings says' : runs === 1 ? 'One run free of findings says' : `Only ${runs} runs free of findings say`} how many eggs there were and how many of them ${trends.rate === 'hatch' ? 'hatched' : 'were fertilised'}; trends need ${FEWEST_RUNS}, and 20 are better.`;
  if (by === 'run') return ofRuns(trends);
  const view = trends.views.find((one) => one.by === by);
  return view && view.groups.length > 0
    ? ofGroups(trends, view)
    : `No run says the ${by === 'temperature' ? 'water temperature' : by}.`;
}

/** The picture in one breath, for whoever does not see it. */
export function spoken({ title, isTime, centre, points, signals }: TrendPicture): string {
  const [first, last] = [points[0], points.at(-1)];
  const shares = points.map(({ share }) => share);
  const from = first && last ? ` from ${first.name} to ${last.name}` : '';
  const what = isTime
    ? `${points.length} runs${from}`
    : `${points.length} ${points.length === 1 ? 'group' : 'groups'}${from}`;
  const out =
    signals.length === 0
      ? ' None stands out.'
      : ` ${signals.length} ${signals.length === 1 ? 'stands' : 'stand'} out, listed below.`;
  return `${title}: ${what}, shares from ${span(Math.min(...shares), Math.max(...shares))}; the farm's middle is ${percent(centre)}.${out}`;
}
