import { estimateMeasured } from '../kernels/estimate';
import { rateSpec } from '../rates';
import { HOURS_PER_DAY } from '../../../units/convert';
import { celsius, count, hours, moment, ratio, share } from '../../../units/quantities';
import type { CellError } from '../../../base/values';
import { isError, refuse } from '../../../base/values';
import { confidenceParam } from '../../counting/records/limits';
import { column, defineFunction, fields } from '../../../functions/define';
import type { SeriesParam } from '../../../functions/params';
import { series } from '../../../functions/params';
import { SERIALS } from '../../timing/records/latency';
import { hatchingSpecies, hoursOf, preparation, profileFor } from '../../timing/records/profiles';
import { pooledOf, POOLING_SOURCES } from './pooled';

const at = (doc: string): SeriesParam<readonly number[]> => series(moment, { ...SERIALS, pair: 'run', doc });
const temperatures = series(celsius, {
  min: 0,
  max: 45,
  pair: 'run',
  doc: 'For each run: mean water temperature between the two.',
});
const NO_OWN_TABLE = { ownTemperatures: undefined, ownHours: undefined } as const;
const HELP =
  'Each run is set against the table at its own temperature; what is left is pooled ' +
  'over runs and leans on "as the table says" while runs are few. Runs whose water ' +
  'changed much are better summed with SPAWN.LOG.FINISH first.';

interface Runs {
  readonly from: readonly number[];
  readonly to: readonly number[];
  readonly water: readonly number[];
}
interface Named {
  readonly to: string;
  readonly from: string;
}

/** Hours taken and hours of the table for each run, or the first thing that stands in the way. */
function againstTable(
  stage: 'latency' | 'incubation',
  profile: string,
  { from, to, water }: Runs,
  names: Named,
): { readonly taken: number; readonly table: number }[] | CellError {
  const found: { taken: number; table: number }[] = [];
  for (const [i, start] of from.entries()) {
    const taken = ((to[i] ?? NaN) - start) * HOURS_PER_DAY;
    if (!(taken > 0))
      return refuse(
        `${names.to}, row ${i + 1}: it is not after ${names.from}. Was the date left on the day before?`,
      );
    const table = hoursOf(
      profileFor(stage, profile, NO_OWN_TABLE),
      water[i] ?? NaN,
      `temperatures, row ${i + 1}`,
    );
    if (isError(table)) return table;
    found.push({ taken, table });
  }
  return found;
}

const LIMITS = {
  nextLow: column('Next run low', hours),
  nextHigh: column('Next run high', hours),
  ownWeight: column('Weight of own runs', share),
  runs: column('Runs', count),
} as const;

export const latencyOffset = defineFunction({
  id: 'LATENCY.OFFSET',
  version: 2,
  family: 'Checks',
  summary:
    'Hours your fish ripen later than the table, learned from past runs: the offset the ' +
    'timing functions take.',
  questions: [
    'my fish need longer than the table to strip',
    'average of my past runs',
    'my fish take longer than the table',
  ],
  params: {
    injected: at('For each run: date and time of the injection.'),
    stripped: at('For each run: date and time of the strip that went well.'),
    temperatures,
    preparation,
    confidence: confidenceParam,
  },
  returns: fields(
    { offset: column('Offset', hours), low: column('Low', hours), high: column('High', hours), ...LIMITS },
    'Offset in hours, later is positive, with its interval and that of a single next run.',
  ),
  valid: 'Runs of one preparation within the rows of its table; strips at ripeness, not at convenience',
  sources: [...POOLING_SOURCES, 'GRAAF96', 'OKER15', 'CLARIIDPAGE'],
  cautions: ['HORMONE'],
  help: `${HELP} A strip delayed until staff came in says nothing about the fish: leave such runs out. The prior is 0 ± 2 h: published strips lie 0.2 to 4.5 h after the handbook table.`,
  examples: [
    {
      args: [
        [[46000.875], [46007.875], [46014.875]],
        [[46001.375], [46008.3958], [46015.4166]],
        [[25], [25], [25]],
        'handbook pituitary',
      ],
      gives: [['1.45', '0.49', '2.26', '-0.44', '3.18', '0.96', '3']],
      because: 'Stripped 1.0, 1.5 and 2.0 h after the 11 h of the handbook at 25 °C.',
    },
    {
      args: [[[46000.875]], [[46000.375]], [[25]]],
      fails: { code: '#VALUE!', says: 'the day before' },
      because: 'The date was not moved on after midnight.',
    },
    {
      args: [[[46000.875]], [[46001.375]], [[34]]],
      fails: { code: '#N/A', says: '20 to 33 °C' },
      because: 'The table ends at 33 °C.',
    },
  ],
  compute: ({ injected, stripped, temperatures: water, preparation: profile, confidence }) => {
    const runs = againstTable(
      'latency',
      profile,
      { from: injected, to: stripped, water },
      { to: 'stripped', from: 'injected' },
    );
    if (isError(runs)) return runs;
    // One preparation only, so nothing varies between kinds.
    const { scale, literature, farms, runs: spread, runsFactor } = rateSpec('latencyOffset');
    const got = estimateMeasured(
      { scale, literature, farms, runs: spread, runsFactor },
      [{ values: runs.map(({ taken, table }) => taken - table) }],
      confidence,
    ).farm;
    return { offset: got.value, ...pooledOf(got) };
  },
});

export const incubationFactor = defineFunction({
  id: 'INCUBATION.FACTOR',
  version: 2,
  family: 'Checks',
  summary: 'How many times the table your eggs take to hatch, learned from past runs.',
  questions: [
    'my eggs hatch later than the table',
    'learn hatch time from past runs',
    'own factor for incubation',
  ],
  params: {
    fertilised: at('For each run: date and time of fertilising.'),
    hatched: at('For each run: date and time when most had hatched.'),
    temperatures,
    species: hatchingSpecies,
    confidence: confidenceParam,
  },
  returns: fields(
    {
      factor: column('Factor', ratio),
      low: column('Low', ratio),
      high: column('High', ratio),
      nextLow: column('Next run low', ratio),
      nextHigh: column('Next run high', ratio),
      ownWeight: LIMITS.ownWeight,
      runs: LIMITS.runs,
    },
    'Hours taken ÷ hours of the table, with its interval and that of a single next run.',
  ),
  valid: 'Runs within the rows of the table of the species, hatch noted the same way each time',
  sources: [...POOLING_SOURCES, 'GRAAF96', 'AMPCLARIAS', 'ACEH19'],
  help: `${HELP} Multiply SPAWN.INCUBATION.HOURS by it. The prior is 1 ± 12 %.`,
  examples: [
    {
      args: [
        [[46000], [46010]],
        [[46001.2], [46011.25]],
        [[25], [25]],
      ],
      gives: [['0.982', '0.909', '1.075', '0.840', '1.153', '0.89', '2']],
      because: '28.8 and 30 h where the table says 30.',
    },
    {
      args: [[[46001]], [[46000]], [[25]]],
      fails: { code: '#VALUE!', says: 'not after' },
      because: 'Nothing hatches before it is fertilised.',
    },
  ],
  compute: ({ fertilised, hatched, temperatures: water, species, confidence }) => {
    const runs = againstTable(
      'incubation',
      species,
      { from: fertilised, to: hatched, water },
      { to: 'hatched', from: 'fertilised' },
    );
    if (isError(runs)) return runs;
    const got = estimateMeasured(
      rateSpec('incubationFactor'),
      [{ values: runs.map(({ taken, table }) => taken / table) }],
      confidence,
    ).farm;
    return { factor: got.value, ...pooledOf(got) };
  },
});
