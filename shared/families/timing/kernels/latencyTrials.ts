import type { PreparationName } from '../../preparations';

/** What one trial saw after an injection, as printed. A temperature the text does not give is undefined. */
export interface LatencyTrial {
  readonly preparation: PreparationName | 'not named' | 'frog pituitary';
  readonly fish: string;
  readonly temperature: readonly [number, number] | undefined;
  readonly hours: readonly [number, number];
  readonly kind: 'tried' | 'measured' | 'best' | 'bad';
  readonly result: string;
  readonly source: string;
}

type Row = readonly [
  LatencyTrial['preparation'],
  string,
  readonly [number, number] | undefined,
  readonly [number, number],
  LatencyTrial['kind'],
  string,
  string,
];
const CLARIAS = 'Clarias gariepinus';
const BIDORSALIS = 'Heterobranchus bidorsalis';
const LONGIFILIS = 'Heterobranchus longifilis';
const READY = 'ready-made solution';
const OWN = 'own-species pituitary';
const CARP = 'carp pituitary';

const ROWS: readonly Row[] = [
  [READY, CLARIAS, [26, 26], [613 / 60, 613 / 60], 'measured', 'hatch 83.5 %', 'OKER15'],
  [READY, CLARIAS, [26, 27], [8, 10], 'tried', 'fertilised at both hours', 'WORLDAQ25'],
  [
    READY,
    CLARIAS,
    [26, 27],
    [12, 12],
    'best',
    'most eggs, 83.6 % fertilised; the last hour tried',
    'WORLDAQ25',
  ],
  [
    READY,
    `${CLARIAS}, ${LONGIFILIS}`,
    [26.3, 28],
    [8, 11.5],
    'measured',
    'fry survival 79 to 93 %',
    'OLUBIYI05',
  ],
  [READY, CLARIAS, undefined, [7, 9], 'measured', 'fertilised 88 %', 'NGUEKU15'],
  [READY, CLARIAS, undefined, [11, 15], 'tried', 'fertilised 98 to 99 %; best hatch 64 % at 13 h', 'AUDU23'],
  [READY, CLARIAS, undefined, [17, 17], 'bad', 'hatch 2 %', 'AUDU23'],
  [READY, CLARIAS, undefined, [11, 11], 'measured', 'females of African catfish', 'ATAGUBA24'],
  [READY, LONGIFILIS, undefined, [12, 12], 'measured', 'females of Heterobranchus', 'ATAGUBA24'],
  [READY, CLARIAS, undefined, [10.1, 10.1], 'measured', 'fertilised 75 %, hatch 69 %', 'YULIANTI20'],
  [CARP, CLARIAS, [23, 23], [13.5, 13.5], 'tried', 'fertilised 80.5 %, hatch 42.9 %', 'GADISSA13'],
  [CARP, CLARIAS, [26, 26], [745 / 60, 745 / 60], 'measured', 'pituitary extract; hatch 63.7 %', 'OKER15'],
  [CARP, BIDORSALIS, [26, 28], [14, 18], 'measured', 'also hCG or own glands; hatch over 84 %', 'BIDOR04'],
  [OWN, CLARIAS, [22, 22], [20, 20], 'measured', 'practice', 'CLARIIDPAGE'],
  [OWN, CLARIAS, [28, 28], [12, 12], 'measured', 'practice', 'CLARIIDPAGE'],
  [OWN, CLARIAS, [23, 23], [13.5, 13.5], 'tried', 'fertilised 76.9 %, hatch 45.3 %', 'GADISSA13'],
  [OWN, CLARIAS, [26, 28], [17, 17], 'tried', 'larvae at every dose, best 4 mg/kg', 'MOSHAAND'],
  [OWN, CLARIAS, undefined, [11.88, 11.88], 'measured', 'ovulated', 'VILLANUEVA25'],
  [OWN, CLARIAS, undefined, [10, 12], 'measured', 'all females ovulated', 'DOCTOLERO'],
  [
    'tilapia pituitary',
    `${CLARIAS}, ${BIDORSALIS}`,
    [26, 28],
    [14, 18],
    'measured',
    'fry survival 79 to 85 %',
    'TILAPIAGLAND',
  ],
  ['tilapia pituitary', CLARIAS, undefined, [17.59, 17.59], 'measured', 'ovulated', 'VILLANUEVA25'],
  [
    'hCG',
    LONGIFILIS,
    [30, 30],
    [7.5, 11],
    'measured',
    'first eggs hatched 94 %; 18,000 at 8 h, 72,000 at 11 h',
    'LEGENDRE95',
  ],
  ['hCG', LONGIFILIS, [27, 29], [14, 14], 'tried', 'within this; 76 % normal larvae', 'LONGIHCG'],
  ['LHRHa with pimozide', CLARIAS, undefined, [9, 12], 'measured', 'also without pimozide', 'SHARAF12'],
  [
    'frog pituitary',
    'Clarias anguillaris',
    [26, 27],
    [9, 14],
    'measured',
    'two glands best, 98 % fertilised',
    'TSADU',
  ],
  ['not named', CLARIAS, [29.5, 29.5], [14, 14], 'best', 'best of 10 to 22 h', 'AGBEBI'],
];

export const LATENCY_TRIALS: readonly LatencyTrial[] = ROWS.map(
  ([preparation, fish, temperature, hours, kind, result, source]) => ({
    preparation,
    fish,
    temperature,
    hours,
    kind,
    result,
    source,
  }),
);
