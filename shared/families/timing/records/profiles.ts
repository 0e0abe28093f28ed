import { DEFAULT_PREPARATION, PREPARATION_NAMES, PREPARATION_WORDS } from '../../preparations';
import { FEEDING_PROFILES, INCUBATION_PROFILES, YOLK_PROFILES } from '../kernels/incubationProfiles';
import { LATENCY_PROFILES } from '../kernels/latencyProfiles';
import type { Profile, LifeStage } from '../kernels/profile';
import { curveFromHours, hoursAt } from '../kernels/rateCurve';
import { kills } from '../kernels/tolerance';
import { celsius, hours } from '../../../units/quantities';
import type { CellError } from '../../../base/values';
import { isError } from '../../../base/values';
import { choice, num, series } from '../../../functions/params';
import * as say from './say';

export const PROFILES: Readonly<Record<LifeStage, readonly Profile[]>> = {
  latency: LATENCY_PROFILES,
  incubation: INCUBATION_PROFILES,
  'first feed': FEEDING_PROFILES,
  'yolk gone': YOLK_PROFILES,
};

const STAGES = ['latency', 'incubation', 'first feed', 'yolk gone'] as const;
const byName: Readonly<Record<LifeStage, ReadonlyMap<string, Profile>>> = {
  latency: new Map(LATENCY_PROFILES.map((p) => [p.name, p])),
  incubation: new Map(INCUBATION_PROFILES.map((p) => [p.name, p])),
  'first feed': new Map(FEEDING_PROFILES.map((p) => [p.name, p])),
  'yolk gone': new Map(YOLK_PROFILES.map((p) => [p.name, p])),
};

/** What a choice of waiting time may name: the list of preparations, then other fish, then the handbook. */
const WAITING = [
  ...PREPARATION_NAMES,
  'Heterobranchus bidorsalis',
  'Heterobranchus longifilis',
  'grass carp',
  'silver carp',
  'handbook pituitary',
] as const;
const HATCHING = [
  'African catfish',
  'African catfish to 33 °C',
  'African catfish at 28 °C',
  'Heterobranchus longifilis',
  'Heterobranchus bidorsalis',
  'Nile tilapia',
  'Mozambique tilapia',
  'Karonga tilapia',
  'common carp',
  'handbook African catfish',
] as const;
const FEEDING = ['African catfish', 'Nile tilapia'] as const;
const YOLK = ['African catfish'] as const;
const NAMES = [
  ...WAITING,
  ...HATCHING.filter((n) => n !== 'Heterobranchus bidorsalis' && n !== 'Heterobranchus longifilis'),
] as const;

const CATFISH_WORDS = {
  catfish: 'African catfish',
  clarias: 'African catfish',
  'clarias gariepinus': 'African catfish',
} as const;
const TILAPIA_WORDS = { 'oreochromis niloticus': 'Nile tilapia', tilapia: 'Nile tilapia' } as const;

export const preparation = choice(WAITING, {
  doc:
    'Hormone preparation; waiting times differ by hours between them. SPAWN.PROFILE.LIST ' +
    'shows them all with their standing.',
  aliases: {
    ...PREPARATION_WORDS,
    longifilis: 'Heterobranchus longifilis',
    bidorsalis: 'Heterobranchus bidorsalis',
  },
  default: DEFAULT_PREPARATION,
});
export const hatchingSpecies = choice(HATCHING, {
  doc:
    "Whose hatching table is used; for a hybrid, the mother's. SPAWN.PROFILE.LIST shows them all with " +
    'their standing.',
  aliases: {
    ...CATFISH_WORDS,
    ...TILAPIA_WORDS,
    'oreochromis mossambicus': 'Mozambique tilapia',
    'oreochromis karongae': 'Karonga tilapia',
    carp: 'common carp',
    'cyprinus carpio': 'common carp',
    longifilis: 'Heterobranchus longifilis',
    bidorsalis: 'Heterobranchus bidorsalis',
    'hybrid of a catfish mother': 'African catfish',
    'hybrid of a heterobranchus mother': 'Heterobranchus longifilis',
  },
  default: 'African catfish',
});
export const feedingSpecies = choice(FEEDING, {
  doc: 'Whose larvae.',
  aliases: { ...CATFISH_WORDS, ...TILAPIA_WORDS },
  default: 'African catfish',
});
export const yolkSpecies = choice(YOLK, {
  doc: 'Whose larvae; only African catfish is published here.',
  aliases: CATFISH_WORDS,
  default: 'African catfish',
});
export const stage = choice(STAGES, {
  doc: 'Which stretch of the run: latency, incubation, first feed or yolk gone.',
  default: 'incubation',
});
export const anyProfile = choice(NAMES, {
  doc:
    'Preparation or species whose table is used; left out, "ready-made solution" for latency and ' +
    '"African catfish" for the others.',
  aliases: { ...CATFISH_WORDS, ...PREPARATION_WORDS },
  optional: true,
});

/** Warmest and coldest water the functions take at all; a reading in °F falls outside and is named. */
export const water = num(celsius, { min: 0, max: 45, doc: 'Water temperature, as it stays until then.' });
export const offset = num(hours, {
  min: -12,
  max: 12,
  default: 0,
  doc: "The hatchery's own correction in hours, learned from past runs: later is positive.",
});

/** A table of the user's own, in place of a built-in one. */
export const ownTable = {
  ownTemperatures: series(celsius, {
    min: 0,
    max: 45,
    pair: 'own',
    optional: true,
    doc:
      'Temperatures of a table of your own, used in place of the built-in one. The deadly ' +
      'limits of built-in species are not applied to it.',
  }),
  ownHours: series(hours, {
    above: 0,
    max: 5000,
    pair: 'own',
    optional: true,
    doc: 'Hours of your own table, one for each temperature.',
  }),
};
interface OwnTable {
  readonly ownTemperatures: readonly number[] | undefined;
  readonly ownHours: readonly number[] | undefined;
}

function makeOwn(
  stageName: LifeStage,
  temperatures: readonly number[],
  ownHours: readonly number[],
): Profile | CellError {
  const table = temperatures.map((t, i) => [t, ownHours[i] ?? NaN] as const).sort((a, b) => a[0] - b[0]);
  if (table.length < 2) return say.oneRowTable();
  for (const [i, row] of table.entries()) {
    const before = table[i - 1];
    if (!before) continue;
    if (row[0] === before[0]) return say.repeatedRow(row[0]);
    if (row[1] > before[1]) return say.slowerWhenWarmer(before, row);
  }
  return {
    stage: stageName,
    name: 'your own table',
    curve: curveFromHours(table),
    spread: [1, 1],
    usual: [1, 1],
    tested: [table[0]?.[0] ?? NaN, table.at(-1)?.[0] ?? NaN],
    source: 'DEFINITION',
    standing: 'seen',
    species: '',
    tolerance: undefined,
    note: 'Your own table.',
  };
}

/** The lists of a call are read once and shared by its rows, so a table is built once for them all. */
const ownProfiles = new WeakMap<readonly number[], Profile | CellError>();

export function profileFor(
  stageName: LifeStage,
  name: string,
  { ownTemperatures, ownHours }: OwnTable,
): Profile | CellError {
  if (!ownTemperatures && !ownHours)
    return (
      byName[stageName].get(name) ??
      say.notForStage(
        name,
        stageName,
        PROFILES[stageName].map((p) => p.name),
      )
    );
  if (!ownTemperatures || !ownHours) return say.halfATable();
  let own = ownProfiles.get(ownHours);
  if (!own) ownProfiles.set(ownHours, (own = makeOwn(stageName, ownTemperatures, ownHours)));
  return own;
}

/** Hours of a stage at one temperature, or the limit that stands in the way. */
export function hoursOf(
  profile: Profile | CellError,
  temperature: number,
  at = 'temperature',
): number | CellError {
  if (isError(profile)) return profile;
  if (profile.tolerance && kills(profile.tolerance, temperature))
    return say.lethal(at, temperature, profile.tolerance);
  const answer = hoursAt(profile.curve, temperature);
  return Number.isNaN(answer) ? say.beyondTable(at, temperature, profile) : answer;
}
