import type { Profile } from './profile';
import { fromBand, fromClariasBase, fromTable } from './profile';

const CLARIAS = 'Clarias gariepinus';
const HALF_DEGREE = 'one temperature, taken to hold half a degree each side';

/** Fertilisation to hatching. */
export const INCUBATION_PROFILES: readonly Profile[] = [
  fromTable(
    'incubation',
    'memory',
    [
      [20, 57],
      [21, 46],
      [22, 38],
      [23, 33],
      [24, 29],
      [25, 27],
      [26, 25],
      [27, 23],
      [28, 22],
      [29, 21],
      [30, 20],
    ],
    {
      name: 'African catfish',
      species: CLARIAS,
      source: 'GRAAF96',
      note:
        'Handbook table recalled from memory; the printed page was not seen. A measured 23.5 ' +
        'to 25.0 h at 28 °C is a little longer.',
    },
  ),
  fromTable(
    'incubation',
    'seen',
    [
      [25, 30],
      [33, 13.92],
    ],
    {
      name: 'African catfish to 33 °C',
      species: CLARIAS,
      source: 'AMPCLARIAS',
      note: 'Two rows, 1.25 d at 25 °C and 0.58 d at 33 °C; slower at 25 °C than the handbook table.',
    },
  ),
  fromBand('incubation', 27, 29, 23.5, 25, {
    name: 'African catfish at 28 °C',
    species: CLARIAS,
    source: 'ACEH19',
    note: '23.5 to 25.0 h at 28.0 ± 1.0 °C and pH 6.1 to 8.8, the middle is used; longer outside that pH.',
  }),
  fromBand('incubation', 28, 29, 21, 21, {
    name: 'Heterobranchus bidorsalis',
    species: 'Heterobranchus bidorsalis',
    source: 'BIDORLARV14',
    note: 'First hatch 21 h at 28.5 ± 0.5 °C.',
  }),
  fromBand('incubation', 27.5, 28.5, 72, 84, {
    name: 'Nile tilapia',
    species: 'Oreochromis niloticus',
    source: 'RANACONE',
    note: `72 to 84 h at 28 °C in an incubator, the middle is used; ${HALF_DEGREE}.`,
  }),
  fromBand('incubation', 27.5, 28.5, 90, 102, {
    name: 'Mozambique tilapia',
    species: 'Oreochromis mossambicus',
    source: 'RANACONE',
    note: `90 to 102 h at 28 °C in an incubator, the middle is used; ${HALF_DEGREE}.`,
  }),
  fromTable(
    'incubation',
    'seen',
    [
      [25, 14.7 * 24],
      [29, 7.3 * 24],
    ],
    {
      name: 'Karonga tilapia',
      species: 'Oreochromis karongae',
      source: 'KARONGA',
      note: '14.7 d at 25 °C and 7.3 d at 29 °C.',
    },
  ),
  fromTable(
    'incubation',
    'seen',
    [
      [26, 45.14],
      [33, 33.11],
    ],
    {
      name: 'common carp',
      species: 'Cyprinus carpio',
      source: 'CARPZERO',
      note: 'Means of three lots at 26 and at 33 °C.',
    },
  ),
];

/** Hatching to the first food taken. */
export const FEEDING_PROFILES: readonly Profile[] = [
  fromClariasBase('first feed', 28.05, 36, {
    name: 'African catfish',
    species: CLARIAS,
    source: 'HOU15',
    note:
      'First food at 36 h at 27.5 to 28.6 °C with yolk left; carried to other temperatures ' +
      'with base 15.4 °C. The handbook, from memory, starts feeding at 72 to 96 h.',
  }),
  fromTable(
    'first feed',
    'seen',
    [
      [24, 8 * 24],
      [28, 5 * 24],
      [30, 4 * 24],
    ],
    {
      name: 'Nile tilapia',
      species: 'Oreochromis niloticus',
      source: 'RANATEMP',
      note: 'Onset of feeding 8, 5 and 4 d after hatch at 24, 28 and 30 °C.',
    },
  ),
];

/** Hatching to the end of the yolk. */
export const YOLK_PROFILES: readonly Profile[] = [
  fromClariasBase('yolk gone', 28.05, 68, {
    name: 'African catfish',
    species: CLARIAS,
    source: 'HOU15',
    note: 'Yolk gone at 68 h at 27.5 to 28.6 °C; carried to other temperatures with base 15.4 °C.',
  }),
];
