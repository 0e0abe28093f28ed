import { CLARIAS_BASE } from './base';
import type { Profile } from './profile';
import { fromBand, fromClariasBase, fromTable } from './profile';

const CLARIAS = 'Clarias gariepinus';
/** Handbook hours ÷ measured hours at 25 and 28 °C: 27/30 and 22/24.25, which is 0.90 and 0.91: the first fish. */
const FIRST_OF_MIDDLE = 0.9; // share of the middle, GRAAF96 (memory) against AMPCLARIAS and ACEH19
const HALF_DEGREE = 'one temperature, taken to hold half a degree each side';

/** Fertilisation to hatching. */
export const INCUBATION_PROFILES: readonly Profile[] = [
  {
    ...fromTable(
      'incubation',
      'seen',
      [
        [20, (33 * (23 - CLARIAS_BASE)) / (20 - CLARIAS_BASE)],
        [23, 33],
        [25, 30],
        [28, 24.25],
        [33, 13.92],
      ],
      {
        name: 'African catfish',
        species: CLARIAS,
        source: 'ACEH19',
        note:
          '33 h at 23 °C (Gadissa and Devi 2013), 30 h at 25 and 13.9 h at 33 °C (a data collection), the middle of ' +
          '23.5 to 25.0 h at 28 °C; below 23 °C carried with base 15.4 °C. The first fish hatch about a tenth ' +
          'earlier, as the handbook hours say.',
      },
    ),
    tested: [23, 30],
    spread: [FIRST_OF_MIDDLE, 1],
  },
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
  {
    ...fromTable(
      'incubation',
      'seen',
      [
        [25, 29.5],
        [29, 23],
        [33, 16],
      ],
      {
        name: 'Heterobranchus longifilis',
        species: 'Heterobranchus longifilis',
        source: 'LEGENDRE91',
        note:
          '26 to 33 h at 25 and 14 to 18 h at 33 °C, two strains 19 to 27 h at 29 °C, the middles are used. ' +
          'Another trial hatched little at 29 and none at 32 °C.',
      },
    ),
    tested: [25, 29],
    spread: [19 / 23, 27 / 23],
  },
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
      name: 'handbook African catfish',
      species: CLARIAS,
      source: 'GRAAF96',
      note:
        'Handbook table recalled from memory; the printed page was not seen. Hours measured at 25 to 28 °C ' +
        'are 8 to 13 % longer.',
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
      'with base 15.4 °C. Another trial fed from 72 h: a full first day is day 3.',
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
