import type { LogArgs } from '../../families/timing/records/track';
import { finish, progress } from '../../families/timing/records/track';
import { hatchingSpecies, hoursOf, preparation, profileFor } from '../../families/timing/records/profiles';
import type { ChoiceParam } from '../../functions/params';
import type { RunRecord } from '../../records/schema';
import type { LifeStage } from '../../families/timing/kernels/profile';
import { HOURS_PER_DAY } from '../../units/convert';
import type { CellError } from '../../base/values';
import { isError } from '../../base/values';
import { DEFAULT_PREPARATION } from '../../families/preparations';
import type { RateKey } from '../../families/learning/rates';
import { OWN_HORMONE } from '../../families/learning/rates';
import type { Reader, Seen, ObserveSettings, Unused } from './reading';

/** Latency against the table of the preparation, incubation against the table of the species. */

const NO_OWN_TABLE = { ownTemperatures: undefined, ownHours: undefined } as const;
/** Silences of a log that are bridged, h: two readings a day. */
const LONGEST_GAP = 12;

/** The word of the list that is meant, whatever its letter case or alias. */
const chosen = (param: ChoiceParam, word: string): string | undefined => {
  const wanted = word.trim().toLowerCase();
  return (
    param.choices.find((c) => c.toLowerCase() === wanted) ??
    Object.entries(param.aliases ?? {}).find(([alias]) => alias.toLowerCase() === wanted)?.[1]
  );
};

const sentence = (error: CellError): string => (error.message ?? error.error).replace(/\.$/, '');

interface Span {
  readonly stage: LifeStage;
  readonly name: string;
  readonly start: number | undefined;
  readonly end: number | undefined;
  readonly hours: number;
  readonly temperature: number | undefined;
}

const covers = ({ times }: NonNullable<ObserveSettings['log']>, from: number, to: number): boolean =>
  (times[0] ?? Infinity) <= from + LONGEST_GAP / HOURS_PER_DAY &&
  (times.at(-1) ?? -Infinity) >= to - LONGEST_GAP / HOURS_PER_DAY;

/**
 * Hours the table says for the water of this run, from the log where it covers the run, else from the mean
 * temperature.
 */
function tableHours(span: Span, log: ObserveSettings['log']): number | CellError | undefined {
  if (log && span.start !== undefined && span.end !== undefined && covers(log, span.start, span.end)) {
    const last = log.temperatures.at(-1);
    const args: LogArgs = {
      start: span.start,
      ...log,
      expected: last,
      stage: span.stage,
      profile: span.name,
      longestGap: LONGEST_GAP,
      ...NO_OWN_TABLE,
    };
    if (span.stage === 'incubation') {
      const done = progress(args, span.end);
      return isError(done) ? done : span.hours / done;
    }
    const at = finish(args);
    return isError(at) ? at : (at - span.start) * HOURS_PER_DAY;
  }
  return span.temperature === undefined
    ? undefined
    : hoursOf(profileFor(span.stage, span.name, NO_OWN_TABLE), span.temperature);
}

const hoursBetween = (from: number | undefined, to: number | undefined): number | undefined =>
  from === undefined || to === undefined ? undefined : (to - from) * HOURS_PER_DAY;

type Against = { readonly hours: number } | Unused;
function against(rate: RateKey, span: Span, log: ObserveSettings['log']): Against {
  const hours = tableHours(span, log);
  if (hours === undefined) return { rate, because: 'the water temperature is not in the record' };
  return isError(hours) ? { rate, because: sentence(hours) } : { hours };
}

/** A hormone of no table, or none named, is its own kind, compared with the table that plans use. */
function hormoneOf(word: string | undefined): { readonly kind: string; readonly name: string } {
  const known = word === undefined ? undefined : chosen(preparation, word);
  return { kind: known ?? OWN_HORMONE, name: known ?? DEFAULT_PREPARATION };
}

function latency({ values: v }: RunRecord, settings: ObserveSettings): Seen | Unused | undefined {
  const rate = 'latencyOffset';
  const hours = v.latency?.value ?? hoursBetween(v.injected?.value, v.stripped?.value);
  if (hours === undefined) return undefined;
  const { kind, name } = hormoneOf(v.preparation?.value ?? settings.preparation);
  const table = against(
    rate,
    {
      stage: 'latency',
      name,
      start: v.injected?.value,
      end: v.stripped?.value,
      hours,
      temperature: v.temperature?.value,
    },
    settings.log,
  );
  return 'because' in table ? table : { rate, kind, value: hours - table.hours };
}

function incubation({ values: v }: RunRecord, settings: ObserveSettings): Seen | Unused | undefined {
  const [start, end] = [(v.fertilisedAt ?? v.stripped)?.value, v.hatchedAt?.value];
  const hours = v.incubationHours?.value ?? hoursBetween(start, end);
  return hours === undefined ? undefined : incubated(v, settings, { start, end, hours });
}

function incubated(
  v: RunRecord['values'],
  settings: ObserveSettings,
  { start, end, hours }: Pick<Span, 'start' | 'end' | 'hours'>,
): Seen | Unused {
  const rate = 'incubationFactor';
  if (!(hours > 0)) return { rate, because: 'the hatch is not after the fertilising' };
  const word = v.species?.value ?? settings.species ?? 'African catfish';
  const name = chosen(hatchingSpecies, word);
  if (name === undefined) return { rate, because: `there is no hatching table for "${word}"` };
  const temperature = (v.incubationTemperature ?? v.temperature)?.value;
  const table = against(rate, { stage: 'incubation', name, start, end, hours, temperature }, settings.log);
  return 'because' in table ? table : { rate, value: hours / table.hours };
}

export const clockRates: Reader = (record, settings) =>
  [latency(record, settings), incubation(record, settings)].filter((x) => x !== undefined);
