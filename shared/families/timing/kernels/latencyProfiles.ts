import { PREPARATIONS } from '../../preparations';
import type { Profile } from './profile';
import { fromBand, fromTable, fromWaiting } from './profile';

const CLARIAS = 'Clarias gariepinus';

/** Injection to stripping: every preparation of the list, then other fish, then the handbook. */
export const LATENCY_PROFILES: readonly Profile[] = [
  ...PREPARATIONS.map(({ name, waiting }) =>
    fromWaiting(waiting, {
      name,
      species: CLARIAS,
      source: waiting.source,
      note: `${waiting.says}; carried to other temperatures with base 15.4 °C.`,
    }),
  ),
  fromBand('latency', 26, 28, 14, 18, {
    name: 'Heterobranchus bidorsalis',
    species: 'Heterobranchus bidorsalis',
    source: 'BIDOR04',
    note: 'Carp pituitary, hCG or own glands; 14 to 18 h at 27 ± 1 °C, the middle is used.',
  }),
  {
    ...fromTable(
      'latency',
      'seen',
      [
        [27, 13],
        [30, 10.5],
      ],
      {
        name: 'Heterobranchus longifilis',
        species: 'Heterobranchus longifilis',
        source: 'LEGENDRE95',
        note:
          'hCG 1500 IU/kg: first eggs at 7 to 8 h, the spawn complete at 11 h at 30 °C, deformed larvae more ' +
          'often after that; stripped within 14 h at 28 ± 1 °C.',
      },
    ),
    spread: [7.5 / 10.5, 14 / 12.05],
    usual: [9.5 / 10.5, 11 / 10.5],
  },
  fromBand('latency', 26.5, 27.5, 11, 11, {
    name: 'grass carp',
    species: 'Ctenopharyngodon idella',
    source: 'SALMAN23',
    note: 'GnRHa with domperidone 0.4 mL/kg; 11 h at 27 °C, taken to hold half a degree each side.',
  }),
  fromBand('latency', 25, 26, 199 / 25.5, 199 / 25.5, {
    name: 'silver carp',
    species: 'Hypophthalmichthys molitrix',
    source: 'SILVERLAT',
    note: '199 °C·h above zero when stripped, read back at 25.5 °C only, half a degree each side.',
  }),
  fromTable(
    'latency',
    'memory',
    [
      [20, 21],
      [21, 18],
      [22, 15.5],
      [23, 13.5],
      [24, 12],
      [25, 11],
      [26, 10],
      [27, 9],
      [28, 8],
      [29, 7.5],
      [30, 7],
    ],
    {
      name: 'handbook pituitary',
      species: CLARIAS,
      source: 'GRAAF96',
      note:
        'Handbook table recalled from memory; the printed page was not seen. Every pituitary trial seen at 26 to ' +
        '28 °C took longer: use it for the first look.',
    },
  ),
];
