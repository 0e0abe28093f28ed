import type { Profile } from './profile';
import { CLARIAS_BASE, fromBand, fromClariasBase, fromTable } from './profile';

const CLARIAS = 'Clarias gariepinus';
/** Latency of the ready-made solution at 26.0 °C, h: 613 minutes (OKER15). */
const READY_MADE_HOURS = 613 / 60;
/**
 * 12 h gave most eggs at 26 to 27 °C (WORLDAQ25): the late end, as a share of the latency above carried to
 * 26.5 °C.
 */
const READY_MADE_LATEST = (12 * (26.5 - CLARIAS_BASE)) / (READY_MADE_HOURS * (26 - CLARIAS_BASE));

/** Injection to stripping, by hormone preparation. */
export const LATENCY_PROFILES: readonly Profile[] = [
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
      name: 'pituitary',
      species: CLARIAS,
      source: 'GRAAF96',
      note: 'Handbook table recalled from memory; the printed page was not seen.',
    },
  ),
  fromClariasBase('latency', 26, 745 / 60, {
    name: 'pituitary extract',
    species: CLARIAS,
    source: 'OKER15',
    note: '745 minutes measured at 26.0 ± 0.7 °C; carried to other temperatures with base 15.4 °C.',
  }),
  fromClariasBase('latency', 26, READY_MADE_HOURS, {
    name: 'ready-made solution',
    species: CLARIAS,
    source: 'OKER15',
    spread: [1, READY_MADE_LATEST],
    note:
      'GnRHa with domperidone, 0.5 mL/kg: 613 minutes measured at 26.0 ± 0.7 °C; carried ' +
      'to other temperatures with base 15.4 °C. Another trial had most eggs at 12 h at 26 ' +
      'to 27 °C.',
  }),
  fromTable(
    'latency',
    'seen',
    [
      [22, 20],
      [28, 12],
    ],
    {
      name: 'own-species pituitary',
      species: CLARIAS,
      source: 'CLARIIDPAGE',
      note: 'Fresh glands of the same species, donors 1.5 times the weight of the female; two rows.',
    },
  ),
  fromBand('latency', 26, 28, 14, 18, {
    name: 'tilapia pituitary',
    species: CLARIAS,
    source: 'TILAPIAGLAND',
    note: 'Acetone-dried, 6 to 10 mg/kg; 14 to 18 h at 27 ± 1 °C, the middle is used.',
  }),
  fromBand('latency', 26, 28, 14, 18, {
    name: 'Heterobranchus bidorsalis',
    species: 'Heterobranchus bidorsalis',
    source: 'BIDOR04',
    note: 'Carp pituitary, hCG or own glands; 14 to 18 h at 27 ± 1 °C, the middle is used.',
  }),
  fromBand('latency', 27, 29, 14, 14, {
    name: 'Heterobranchus longifilis',
    species: 'Heterobranchus longifilis',
    source: 'LONGIHCG',
    note: 'hCG 1500 IU/kg; stripped within 14 h at 28 ± 1 °C.',
  }),
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
];
