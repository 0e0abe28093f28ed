import { INCUBATION_PROFILES } from '../../../families/timing/kernels/incubationProfiles';
import { LATENCY_PROFILES } from '../../../families/timing/kernels/latencyProfiles';
import type { Profile } from '../../../families/timing/kernels/profile';
import { hoursAt } from '../../../families/timing/kernels/rateCurve';
import { LAST_HATCH_SHARE, stripWindow } from '../../../families/timing/kernels/window';
import { hoursFromDays } from '../../../units/convert';
import type { AuditOptions, LatencyOffsets, RowRule, RuleFinding, RuleVerdict } from '../rule';
import { hoursText, plain } from '../show';

/**
 * A farm's own fish and thermometer may differ from every published one by this share (common practice, no
 * source).
 */
const OWN = 0.15;
/**
 * A trial that does not name its hormone did best at 14 h at 29.5 °C (AGBEBI): it counts where the record
 * names none either, half a degree around.
 */
const NAMELESS = { low: 29, high: 30, hours: 14 } as const;

const words = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((word) => word.length > 3);
const isAlike = (profile: Profile, named: string): boolean =>
  words(`${profile.name} ${profile.note.split(/[.;:]/)[0] ?? ''}`).some((word) =>
    words(named).includes(word),
  );

/**
 * Profiles that may be meant: those that share a word with what was written down, else all of the species.
 */
function profilesFor(list: readonly Profile[], named: string, species: string): readonly Profile[] {
  const kind = species.trim().toLowerCase();
  const ofSpecies = list.filter((p) =>
    kind === ''
      ? p.species.startsWith('Clarias')
      : isAlike(p, kind) || p.species.toLowerCase().includes(kind) || kind.includes(p.species.toLowerCase()),
  );
  const base = ofSpecies.length > 0 ? ofSpecies : kind === '' ? list : [];
  const alike = named === '' ? [] : base.filter((p) => isAlike(p, named));
  return alike.length > 0 ? alike : base;
}

interface Span {
  readonly low: number;
  readonly high: number;
  readonly from: string;
}
const spanOf = (spans: readonly Span[]): Span | undefined =>
  spans.length === 0
    ? undefined
    : {
        low: Math.min(...spans.map((s) => s.low)),
        high: Math.max(...spans.map((s) => s.high)),
        from: [...new Set(spans.map((s) => s.from))].join(', '),
      };

/** The same few temperatures come again and again, under the same offsets. */
const known = new WeakMap<LatencyOffsets, Map<string, Map<number, Span | undefined>>>();
const MOST_REMEMBERED = 2000;
function remember(
  offsets: LatencyOffsets,
  kind: string,
  temperature: number,
  compute: () => Span | undefined,
): Span | undefined {
  const spans = known.get(offsets) ?? new Map<string, Map<number, Span | undefined>>();
  known.set(offsets, spans);
  if (spans.size > MOST_REMEMBERED) spans.clear();
  const byTemperature = spans.get(kind) ?? new Map<number, Span | undefined>();
  spans.set(kind, byTemperature);
  if (byTemperature.size > MOST_REMEMBERED) byTemperature.clear();
  if (!byTemperature.has(temperature)) byTemperature.set(temperature, compute());
  return byTemperature.get(temperature);
}

const NO_OFFSETS: LatencyOffsets = { whole: 0, by: {} };
const offsetFor = ({ whole, by }: LatencyOffsets, profile: string): number => by[profile] ?? whole;

/**
 * Hours after injection in which a strip can be right, over all profiles that may be meant; undefined outside
 * their temperatures.
 */
export const latencySpan = (
  temperature: number,
  preparation: string,
  species: string,
  offsets = NO_OFFSETS,
): Span | undefined =>
  remember(offsets, `latency|${preparation}|${species}`, temperature, () =>
    spanOf([
      ...nameless(temperature, preparation, offsets.whole),
      ...profilesFor(LATENCY_PROFILES, preparation, species).flatMap((profile) => {
        const hours = hoursAt(profile.curve, temperature);
        if (!Number.isFinite(hours)) return [];
        const { firstCheck, lastTested } = stripWindow(
          hours,
          profile.spread,
          offsetFor(offsets, profile.name),
        );
        return [{ low: firstCheck * (1 - OWN), high: lastTested * (1 + OWN), from: profile.name }];
      }),
    ]),
  );

const nameless = (temperature: number, preparation: string, offset: number): Span[] => {
  if (preparation !== '' || !(temperature >= NAMELESS.low && temperature <= NAMELESS.high)) return [];
  const { firstCheck, lastTested } = stripWindow(NAMELESS.hours, [1, 1], offset);
  return [{ low: firstCheck, high: lastTested, from: 'a trial without a named hormone' }];
};

/**
 * Hours from fertilisation in which a hatch can be noted: from the first of the fastest table to the last of
 * the slowest.
 */
export const hatchSpan = (temperature: number, species: string): Span | undefined =>
  remember(NO_OFFSETS, `hatch|${species}`, temperature, () =>
    spanOf(
      profilesFor(INCUBATION_PROFILES, '', species).flatMap((profile) => {
        const hours = hoursAt(profile.curve, temperature);
        return Number.isFinite(hours)
          ? [
              {
                low: hours * profile.spread[0] * (1 - OWN),
                high: hours * Math.max(LAST_HATCH_SHARE, profile.spread[1]),
                from: profile.name,
              },
            ]
          : [];
      }),
    ),
  );

const elapsed = (
  said: RuleFinding,
  end: 'stripped' | 'hatchedAt',
  start: 'injected' | 'fertilisedAt',
  stated: 'latency' | 'incubationHours',
): { readonly hours: number; readonly isStated: boolean } => {
  const hours = hoursFromDays(said.num(end) - said.num(start));
  return Number.isNaN(hours) ? { hours: said.num(stated), isStated: true } : { hours, isStated: false };
};

const ownWords = (offsets: LatencyOffsets | undefined): string =>
  offsets ? ', moved by your own rates' : '';

function latencyVerdict(said: RuleFinding, { latencyOffsets }: AuditOptions): RuleVerdict | undefined {
  const { hours, isStated } = elapsed(said, 'stripped', 'injected', 'latency');
  const temperature = said.num('temperature');
  const span = latencySpan(temperature, said.text('preparation'), said.text('species'), latencyOffsets);
  if (!span || !(hours >= 0) || (hours >= span.low && hours <= span.high)) return undefined;
  return {
    field: isStated ? 'latency' : 'stripped',
    with: isStated ? ['temperature'] : ['injected', 'temperature'],
    seen: hoursText(hours),
    expected: `${hoursText(span.low)} to ${hoursText(span.high)}`,
    sentence: `${hoursText(hours)} from injection to strip does not fit ${plain(temperature, 3)} °C: ${hoursText(span.low)} to ${hoursText(span.high)} would (${span.from}${ownWords(latencyOffsets)}).`,
  };
}

function hatchVerdict(said: RuleFinding): RuleVerdict | undefined {
  const { hours, isStated } = elapsed(said, 'hatchedAt', 'fertilisedAt', 'incubationHours');
  const own = said.num('incubationTemperature');
  const temperature = Number.isNaN(own) ? said.num('temperature') : own;
  const span = hatchSpan(temperature, said.text('species'));
  if (!span || !(hours >= 0) || (hours >= span.low && hours <= span.high)) return undefined;
  return {
    field: isStated ? 'incubationHours' : 'hatchedAt',
    with: [
      ...(isStated ? [] : (['fertilisedAt'] as const)),
      Number.isNaN(own) ? 'temperature' : 'incubationTemperature',
    ],
    seen: hoursText(hours),
    expected: `${hoursText(span.low)} to ${hoursText(span.high)}`,
    sentence: `${hoursText(hours)} from fertilisation to hatch does not fit ${plain(temperature, 3)} °C: ${hoursText(span.low)} to ${hoursText(span.high)} would.`,
  };
}

export const timingRules: readonly RowRule[] = [
  {
    id: 'LATENCY.FIT',
    scope: 'row',
    severity: 'unlikely',
    title: 'Latency does not fit the temperature',
    check: latencyVerdict,
    needs: [
      ['injected', 'stripped', 'temperature'],
      ['latency', 'temperature'],
    ],
    checks:
      'Hours from injection to strip against the published windows at that temperature, of ' +
      'the preparation named or of all for the species, widened by 15 %; moved by the ' +
      "farm's own offset where a sheet of its rates says one.",
    why:
      'Warmth sets the hour: at 20 °C it is three times as long as at 30 °C. A strip at ' +
      'the wrong hour loses the eggs, a wrong time or temperature loses the record.',
    sources: ['GRAAF96', 'OKER15', 'AUDU23', 'AGBEBI', 'PROKES15'],
    examples: [
      {
        record: { injected: 46_000.875, stripped: 46_001.875, temperature: 28 },
        says: 'does not fit 28 °C',
        because: '24 h at 28 °C: a day too many.',
      },
      { record: { latency: 4, temperature: 25 }, says: '4 h', because: 'Too early for any preparation.' },
      {
        record: { injected: 46_000.875, stripped: 46_001.3333, temperature: 25 },
        because: '11 h at 25 °C, the handbook table (from memory).',
      },
      {
        record: { latency: 12.4, temperature: 26, preparation: 'pituitary' },
        because: 'Measured with pituitary extract.',
      },
      {
        record: { latency: 40, temperature: 17 },
        because: 'No table reaches 17 °C, so nothing can be said.',
      },
    ],
  },
  {
    id: 'HATCH.FIT',
    scope: 'row',
    severity: 'unlikely',
    title: 'Hatch time does not fit the temperature',
    check: hatchVerdict,
    needs: [
      ['fertilisedAt', 'hatchedAt', 'incubationTemperature'],
      ['fertilisedAt', 'hatchedAt', 'temperature'],
      ['incubationHours', 'incubationTemperature'],
      ['incubationHours', 'temperature'],
    ],
    checks:
      'Hours from fertilisation to hatch against the published tables at that temperature, ' +
      'from first to last hatch.',
    why:
      'Eggs hatch by warmth, not by habit: a hatch a day early or late is a wrong date or ' +
      'a wrong reading.',
    sources: ['GRAAF96', 'ACEH19', 'AMPCLARIAS', 'UKAKALU'],
    examples: [
      {
        record: { fertilisedAt: 46_001, hatchedAt: 46_003.5, incubationTemperature: 28 },
        says: '60 h',
        because: '22 to 25 h are published at 28 °C.',
      },
      { record: { incubationHours: 24, incubationTemperature: 28 }, because: 'Between 23.5 and 25.0 h.' },
      { record: { incubationHours: 30, incubationTemperature: 25 }, because: '1.25 d at 25 °C.' },
    ],
  },
];
