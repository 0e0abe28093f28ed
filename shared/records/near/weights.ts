// Long: small tables, as data
import type { Near } from '../../base/near';
import type { Line } from './check';
import { check, edge } from './check';

/**
 * What a column is read as is a sum of weights. Of each weight there are two small tables that lie at its edge: the
 * first is read otherwise when the weight is a little less, the second when it is a little more.
 */
const meanings = (values: readonly Line[]): string =>
  check(values)
    .tables.map(({ mapping }) => mapping.map(({ field }) => field ?? 'open').join(' '))
    .join(' | ');

export const NEAR: readonly Near[] = [
  edge(
    'Weight of a product by meaning that words bear out',
    2.6,
    meanings,
    [
      [
        ['Miúdos', 'Médios', 'Os grandes', 'Tortos', 'Total separado'],
        [2386, 4958, 840, 111, 8295],
        [1869, 4022, 1012, 116, 7019],
        [2032, 5707, 899, 104, 8742],
        [2664, 5604, 751, 108, 9127],
        [2742, 5883, 915, 74, 9614],
      ],
      [
        [],
        ['Reproductora', null, null, null, 'Hora desove', 'Ovos'],
        ['Hembra N°', 'Peso reproductora', 'Dose por kg', 'Cantidad inyectada', null, 'Gramos de ovas'],
        ['F-10', '1,50', '0,5', '0,75', '05:15', 238],
        ['F-12', '1,72', '0,5', '0,86', '05:30', 197],
        ['B-14', '2,64', '0,5', '1,32', '09:30', 211],
        ['M-16', '2,13', '0,5', '1,07', '08:15', 350],
        ['B-18', '3,00', '0,5', '1,50', '06:30', 419],
        ['B-20', '1,62', '0,5', '0,81', '08:45', 140],
      ],
    ],
    [
      'gradeSmall gradeMiddle gradeBig gradeCull graded',
      'female femaleWeight femaleAfter hormoneVolume stripped eggWeight',
    ],
  ),
  edge(
    'Weight of a relation between columns',
    1.4,
    meanings,
    [
      [
        ['Miúdos', 'Médios', 'Os grandes', 'Tortos', 'Total separado'],
        [2386, 4958, 840, 111, 8295],
        [1869, 4022, 1012, 116, 7019],
        [2032, 5707, 899, 104, 8742],
        [2664, 5604, 751, 108, 9127],
        [2742, 5883, 915, 74, 9614],
      ],
      [
        [null, 'Poissons'],
        ['Jour de travail', 'Têtes dans le bac', 'Moyenne par tête, g', 'Poids de tous, kg'],
        ['28/10/2024', 4036, '1,20', '4,84'],
        ['31/10/2024', 3984, '1,40', '5,58'],
        ['03/11/2024', 3913, '1,59', '6,22'],
        ['06/11/2024', 3898, '1,79', '6,98'],
      ],
    ],
    ['gradeSmall gradeMiddle gradeBig gradeCull graded', 'date gradeBig weight biomass'],
  ),
  edge(
    'Least of words that make a column a thing',
    0.38,
    meanings,
    [
      [
        ['In', 'Out'],
        ['20:00', '07:00'],
      ],
      [[], ['Caixa 1', 'Total geral'], [8, 18], [3, 37]],
    ],
    ['open endTime', 'vat deadTotal'],
  ),
  edge(
    'Weight of the order of the columns',
    0.6,
    meanings,
    [
      [
        [
          'Nº no puçá',
          'Pesagem total (g)',
          'Média por cabeça (g)',
          'Miúdos',
          'Médios',
          'Os grandes',
          'Tortos',
          'Total separado',
        ],
        [35, '36,4', '1,04', 2386, 4958, 840, 111, 8295],
        [30, '38,4', '1,28', 1869, 4022, 1012, 116, 7019],
        [45, '74,3', '1,65', 2032, 5707, 899, 104, 8742],
        [50, '109,5', '2,19', 2664, 5604, 751, 108, 9127],
        [40, '114,0', '2,85', 2742, 5883, 915, 74, 9614],
        [35, '125,3', '3,58', 1719, 5941, 733, 64, 8457],
      ],
      [
        [null, 'Poissons'],
        ['Jour de travail', 'Têtes dans le bac', 'Moyenne par tête, g', 'Poids de tous, kg'],
        ['28/10/2024', 4036, '1,20', '4,84'],
        ['31/10/2024', 3984, '1,40', '5,58'],
        ['03/11/2024', 3913, '1,59', '6,22'],
        ['06/11/2024', 3898, '1,79', '6,98'],
      ],
    ],
    [
      'sampleCount sampleWeight weight gradeSmall gradeMiddle gradeBig gradeCull graded',
      'date gradeBig weight biomass',
    ],
  ),
  edge(
    'Words that place a column in the order',
    0.7,
    meanings,
    [
      [
        ['2025'],
        ['Written on', 'Clock at injection', 'Brooder code', 'Mother fish mass'],
        ['23/01/2025', '20:45', 'M31', '2.62 kg'],
        ['23/01/2025', '19:30', 'M32', '2.66 kg'],
        ['23/01/2025', '18:15', 'M33', '1.89 kg'],
        ['27/01/2025', '17:30', 'M34', '3.02 kg'],
        ['27/01/2025', '21:45', 'M35', '1.69 kg'],
        ['27/01/2025', '19:15', 'M36', '3.13 kg'],
      ],
      [
        ['Data do trabalho', 'pH de partida', 'Água no tanque', 'pH obtido'],
        ['24/08/2024', 5.7, 2000, 6.2],
        ['25/08/2024', 6.4, 2000, 6.9],
      ],
    ],
    ['date injected female femaleWeight', 'date ph volume phAfter'],
  ),
  edge(
    'Share a heading keeps without the words above it',
    0.88,
    meanings,
    [
      [
        [],
        ['Vats 1', null, 'Vats 3', null, 'Total'],
        ['Mortality recorded', 'How many remain', 'Mortality recorded', 'How many remain'],
        [4, 5396, 0, 4200, 14],
        [5, 5391, 6, 4194, 15],
      ],
      [
        [],
        ['Inducción', null, null, 'Aplicado às', 'Hora desove'],
        ['Tipo de hormona', 'Dose por kg', 'Cantidad inyectada', null, null, 'N° eclosionados'],
        ['pituitary', '0,5', '0,75', '18:15', '05:15', 66500],
        ['pituitary', '0,5', '1,32', '21:45', '09:30', 63800],
      ],
    ],
    ['dead alive | dead alive feedTotal', 'injected stripped open | category preparation hormoneVolume run'],
  ),
  edge(
    'Worth of a meaning made of general words',
    0.6,
    meanings,
    [
      [
        [],
        ['Para qué', 'Cobrado', 'Gastado', 'Queda en caja'],
        ['salt', null, 3600, 17900],
        ['fry', 18350, null, 36250],
        ['wages', null, 3950, 32300],
        ['salt', null, 1350, 30950],
        ['fingerlings', 5950, null, 36900],
        ['salt', null, 650, 34200],
      ],
      [
        ['Dinheiro', null],
        ['Dinheiro que entrou', 'Resta em caixa'],
        ['4400,00', '52050,00'],
      ],
    ],
    ['description income expense balance', 'paid vat'],
  ),
  edge(
    'Weight of the words',
    4,
    meanings,
    [
      [
        ['Mes', 'Total'],
        ['Enero', 3025],
      ],
      [
        ['Lote', 'P1'],
        ['Peso hembra (kg)', 1.54],
        ['Volumen de hormona (cc)', 0.77],
        ['Hora inyección', '21:18'],
        ['Hora de desove', '07:40'],
        ['Peso de huevos (g)', 196],
        ['Huevos/gramo', 621],
        ['Huevos totales', 121716],
      ],
    ],
    ['month amount', 'run femaleWeight hormoneVolume injected stripped weight eggWeight eggs'],
  ),
  edge(
    'Worth of a word nobody knows',
    2.5,
    meanings,
    [
      [
        [],
        ['Fecha del trabajo', 'Para qué', 'Cobrado', 'Gastado', 'Queda en caja'],
        ['2024-11-01', 'salt', null, 3600, 17900],
        ['2024-11-01', 'fry', 18350, null, 36250],
        ['2024-11-03', 'wages', null, 3950, 32300],
        ['2024-11-03', 'salt', null, 1350, 30950],
        ['2024-11-05', 'fingerlings', 5950, null, 36900],
        ['2024-11-05', 'feed', null, 2050, 34850],
      ],
      [
        ['Dinheiro', null],
        ['Dinheiro que entrou', 'Resta em caixa'],
        ['4400,00', '52050,00'],
      ],
    ],
    ['date description income expense balance', 'paid vat'],
  ),
  edge(
    'Share of a meaning that all words of a heading bear',
    0.8,
    meanings,
    [
      [
        [null, 'Poissons'],
        ['Jour de travail', 'Têtes dans le bac', 'Moyenne par tête, g', 'Poids de tous, kg'],
        ['28/10/2024', 4036, '1,20', '4,84'],
        ['31/10/2024', 3984, '1,40', '5,58'],
        ['03/11/2024', 3913, '1,59', '6,22'],
        ['06/11/2024', 3898, '1,79', '6,98'],
      ],
      [
        [],
        ['Vats 1', null, 'Vats 3', null, 'Total'],
        ['Mortality recorded', 'How many remain', 'Mortality recorded', 'How many remain'],
        [4, 5396, 0, 4200, 14],
        [5, 5391, 6, 4194, 15],
      ],
    ],
    ['date gradeBig weight biomass', 'dead alive | dead alive feedTotal'],
  ),
];
