import { count, gram, litre, meqPerLitre, millilitre, pH, text } from '../../../units/quantities';
import { millilitresFromLitres } from '../../../units/convert';
import type { CellError } from '../../../base/values';
import { isError, noSolution } from '../../../base/values';
import { alkalinityOf } from '../carbonate/carbonate';
import { constantsAt } from '../carbonate/constants';
import { doseTo } from '../carbonate/dose';
import { airedWater } from '../carbonate/readings';
import { boundDose, expected, medianDose } from '../titration/nextDose';
import { posterior } from '../titration/posterior';
import { column, defineFunction, fields, rows, value } from '../../../functions/define';
import { choice, num } from '../../../functions/params';
import { phParam, targetParam, volumeParam } from './bufferDose';
import {
  airOf,
  airParam,
  backgroundOf,
  dissolvedInParam,
  dissolvedParam,
  gramsOf,
  hardnessParam,
  materialOf,
  materialParam,
  modeParam,
  purityParam,
  temperatureParam,
  unreachable,
  waterBehind,
} from './inputs';
import { beliefsOf, meterParam, originParam } from './titrationInputs';

const ASSUMED = {
  unknown: 'Assumes a source of unknown carbon dioxide, most likely 1 to 40 mg/L.',
  aerated: 'Assumes water aerated for an hour or more, its carbon dioxide near that of the air.',
  well: 'Assumes well water with much carbon dioxide, most likely 5 to 150 mg/L.',
} as const;
const TRY =
  'One pH reading cannot tell; try it in a bucket first (BUFFER.TRIAL) or begin with ' +
  'the first part (BUFFER.NEXT).';

const bases = [
  'soda ash',
  'soda ash monohydrate',
  'washing soda',
  'baking soda',
  'hydrated lime',
  'quicklime',
  'caustic soda',
] as const;
const baseParam = choice(bases, { default: 'soda ash', doc: 'Product that raises pH.' });

export const bufferRange = defineFunction({
  id: 'BUFFER.RANGE',
  family: 'Water',
  summary:
    'With only a pH reading: the least, likely and most product a water may need, and a ' +
    'first part that is safe.',
  params: {
    volume: volumeParam,
    ph: phParam,
    target: num(pH, { min: 4, max: 10, default: 7, doc: 'pH wanted.' }),
    temperature: temperatureParam,
    material: baseParam,
    purity: purityParam,
    origin: originParam,
    meter: meterParam,
  },
  returns: fields(
    {
      low: column('At least', gram, '5 of 100 such waters need less.'),
      likely: column('Likely', gram),
      high: column('At most', gram, '5 of 100 such waters need more.'),
      first: column(
        'Safe first part',
        gram,
        'Keeps the chance of passing half a pH above the target at 3 in 100.',
      ),
      assumption: column('What this rests on', text),
    },
    'Grams for the whole volume, right after mixing.',
  ),
  valid: 'Fresh water, 0 to 40 °C; what is assumed about carbon dioxide is judgement, not a published figure',
  sources: ['PLBU82', 'PRACTICE'],
  cautions: ['SODA_ASH', 'LIME', 'AMMONIA'],
  examples: [
    {
      args: [1000, 6, 7],
      gives: [
        [
          '0.72',
          '8.7',
          '166',
          '0.70',
          'Assumes a source of unknown carbon dioxide, most likely 1 to 40 mg/L. One pH ' +
            'reading cannot tell; try it in a bucket first (BUFFER.TRIAL) or begin with the ' +
            'first part (BUFFER.NEXT).',
        ],
      ],
      because: 'The range spans two powers of ten: that is what one reading is worth.',
    },
    { args: [1000, 7.5, 7], fails: { code: '#NUM!', says: 'already' }, because: 'Already above the target.' },
  ],
  compute: ({ volume, ph, target, temperature, material, purity, origin, meter }) => {
    if (ph >= target)
      return noSolution(
        `No base is needed, because the water is already at pH ${ph}, the target being ${target}.`,
      );
    const b = beliefsOf({ temperature, material, origin, meter, alkalinity: undefined, conductivity: 0 });
    if (isError(b)) return b;
    const cloud = posterior(b, { doses: [0], readings: [ph] });
    const grams = (moles: number): number => gramsOf(materialOf(material), moles, volume, purity);
    return {
      low: grams(boundDose(b, cloud, target, 0.05)),
      likely: grams(medianDose(b, cloud, target)),
      high: grams(boundDose(b, cloud, target, 0.95)),
      first: grams(
        Math.min(boundDose(b, cloud, target + 0.5, 0.03), medianDose(b, cloud, Math.min(target, ph + 0.6))),
      ),
      assumption: `${ASSUMED[origin]} ${TRY}`,
    };
  },
});

export const bufferKit = defineFunction({
  id: 'BUFFER.KIT',
  family: 'Water',
  summary: 'With pH and an alkalinity kit: the dose, and how far the errors of meter and kit can carry it.',
  params: {
    volume: volumeParam,
    ph: num(pH, { min: 5.2, max: 11, doc: 'pH of the water now; below 5.2 a kit does not tell the dose.' }),
    target: targetParam,
    alkalinity: num(meqPerLitre, {
      above: 0,
      max: 20,
      doc: 'Alkalinity by the kit, meq/L (ALKALINITY.CONVERT turns dKH or mg/L into it).',
    }),
    temperature: temperatureParam,
    material: materialParam,
    purity: purityParam,
    kitStep: num(meqPerLitre, {
      above: 0,
      max: 2,
      default: 0.36,
      doc: 'What one drop or one mark of the kit stands for. 0.36 meq/L is 1 dKH.',
    }),
    meterError: num(pH, { above: 0, max: 1, default: 0.1, doc: 'How far the meter may be off.' }),
  },
  returns: fields(
    {
      dose: column('Dose', gram),
      low: column('At least', gram, 'Half a kit mark less alkalinity and the meter reading low.'),
      high: column('At most', gram, 'Half a kit mark more alkalinity and the meter reading high.'),
      advice: column('What to do', text),
    },
    'Grams for the whole volume, right after mixing.',
  ),
  valid: 'Fresh water, 0 to 40 °C, pH 5.2 and above',
  sources: ['PLBU82', 'PRACTICE'],
  cautions: ['SODA_ASH', 'LIME', 'ACID', 'AMMONIA'],
  examples: [
    {
      args: [1000, 6.5, 7, 1, 26],
      gives: [['34.7', '19.9', '56.5', 'Give half of the least dose, measure, and go on with BUFFER.NEXT.']],
      because: '0.1 pH of error is 26 % of the carbon dioxide, and one dKH is a coarse mark at 1 meq/L.',
    },
    {
      args: [1000, 7.5, 7, 1],
      fails: { code: '#VALUE!', says: 'only raises pH' },
      because: 'A base cannot lower pH.',
    },
  ],
  compute: ({ volume, ph, target, alkalinity, temperature, material, purity, kitStep, meterError }) => {
    const substance = materialOf(material);
    const at = (p: number, a: number): ReturnType<typeof doseTo> | CellError => {
      const known = waterBehind(
        {
          ph: p,
          alkalinity: a,
          carbonDioxide: undefined,
          temperature,
          hardness: 0,
          dissolved: 0,
          dissolvedIn: 'µS/cm',
          airCarbonDioxide: 420,
        },
        true,
      );
      return isError(known) ? known : doseTo(known.k, known.water, substance, target, 'closed');
    };
    const dose = at(ph, alkalinity);
    if (typeof dose !== 'number') return isError(dose) ? dose : unreachable(dose, material, target, 'closed');
    const corners = [-1, 1]
      .flatMap((p) =>
        [-1, 1].map((a) =>
          at(Math.max(5.2, ph + p * meterError), Math.max(0.01, alkalinity + (a * kitStep) / 2)),
        ),
      )
      // A corner already past the target needs none; one that cannot be is no corner.
      .map((x) => (typeof x === 'number' ? x : 'reason' in x && x.reason === 'already past' ? 0 : undefined))
      .filter((x) => x !== undefined);
    const grams = (moles: number): number => gramsOf(substance, moles, volume, purity);
    const least = Math.min(dose, ...corners);
    const most = Math.max(dose, ...corners);
    return {
      dose: grams(dose),
      low: grams(least),
      high: grams(most),
      advice:
        least === 0
          ? "Within the meter's error of the target: measure again before giving anything."
          : most > 1.3 * least
            ? 'Give half of the least dose, measure, and go on with BUFFER.NEXT.'
            : 'Give two thirds, measure, then the rest.',
    };
  },
});

const PARTS = [0.03, 0.2, 0.5, 0.8, 0.95] as const;

export const bufferTrial = defineFunction({
  id: 'BUFFER.TRIAL',
  family: 'Water',
  summary: 'A trial in a bucket: what to weigh, how much stock solution to add, and what to write down.',
  params: {
    ph: phParam,
    target: num(pH, { min: 4, max: 10, default: 7, doc: 'pH wanted.' }),
    bucket: num(litre, { above: 0, max: 1000, default: 10, doc: 'Water from the vat in the bucket.' }),
    stock: num(gram, {
      above: 0,
      max: 100,
      default: 5,
      doc: 'Product dissolved in one litre of stock solution, g. 5 g/L is handy: 1 mL in 1 L is 5 mg/L.',
    }),
    temperature: temperatureParam,
    material: baseParam,
    origin: originParam,
    meter: meterParam,
  },
  returns: rows(
    {
      step: column('Step', count),
      todo: column('What to do', text),
      stock: column('Stock to add', millilitre),
      product: column(
        'Product so far',
        gram,
        'Running total, as BUFFER.NEXT wants it with the bucket as the volume.',
      ),
      low: column('pH at least', pH),
      high: column('pH at most', pH),
    },
    'The trial, row by row; stop as soon as the target is reached.',
  ),
  valid: 'Fresh water, 0 to 40 °C',
  sources: ['PLBU82', 'PRACTICE'],
  cautions: ['SODA_ASH', 'LIME'],
  help:
    'Grams found for the bucket times vat litres over bucket litres is the dose for the ' +
    'vat. Stir the bucket gently: splashing drives carbon dioxide out and spoils the ' +
    "trial. Give the bucket's readings to BUFFER.NEXT, with the bucket as the volume, " +
    'for the best answer.',
  examples: [
    {
      args: [6, 7],
      gives: [
        [
          '0',
          'Dissolve 5 g of soda ash in 1 L for stock. Fill the bucket with 10 L from the vat, measure.',
          '',
          '0',
          '6',
          '6',
        ],
        [
          '1',
          'Add, stir gently, wait until the reading stands, write it down.',
          '1.0',
          '0.0050',
          '5.94',
          '6.71',
        ],
      ],
      because: 'The steps walk through what such a water may need.',
    },
    { args: [7.5, 7], fails: { code: '#NUM!', says: 'already' }, because: 'Already above the target.' },
  ],
  compute: ({ ph, target, bucket, stock, temperature, material, origin, meter }) => {
    if (ph >= target)
      return noSolution(
        `No base is needed, because the water is already at pH ${ph}, the target being ${target}.`,
      );
    const b = beliefsOf({ temperature, material, origin, meter, alkalinity: undefined, conductivity: 0 });
    if (isError(b)) return b;
    const cloud = posterior(b, { doses: [0], readings: [ph] });
    const totals = PARTS.map((q) => boundDose(b, cloud, target, q)).filter(Number.isFinite);
    const start = {
      step: 0,
      todo: `Dissolve ${stock} g of ${material} in 1 L for stock. Fill the bucket with ${bucket} L from the vat, measure.`,
      stock: null,
      product: 0,
      low: ph,
      high: ph,
    };
    let before = 0;
    return [
      start,
      ...totals.map((moles, i) => {
        const product = gramsOf(materialOf(material), moles, bucket, 1);
        const { low, high } = expected(b, cloud, moles);
        const row = {
          step: i + 1,
          todo: 'Add, stir gently, wait until the reading stands, write it down.',
          stock: millilitresFromLitres((product - before) / stock),
          product,
          low,
          high,
        };
        before = product;
        return row;
      }),
    ];
  },
});

const jar = {
  temperature: temperatureParam,
  hardness: hardnessParam,
  dissolved: dissolvedParam,
  dissolvedIn: dissolvedInParam,
  airCarbonDioxide: airParam,
};
const jarParam = num(pH, {
  min: 3,
  max: 10,
  doc: 'pH of a jar of the water after an hour of strong aeration.',
});

export const alkalinityAerated = defineFunction({
  id: 'ALKALINITY.AERATED',
  family: 'Water',
  summary: 'Alkalinity of a water from the pH of a jar of it that was aerated for an hour.',
  params: { jar: jarParam, ...jar },
  returns: value(meqPerLitre, 'Alkalinity; negative is mineral acid.'),
  valid:
    'Water in balance with the air; 0.1 pH of error is 26 % of the answer, stale air in a shed up to 0.38 pH',
  sources: ['PLBU82', 'NOAACO2'],
  help:
    'The cheapest way to an alkalinity without a kit: air fixes the carbon dioxide, so ' +
    'the pH tells the alkalinity. Use fresh outdoor air or give the carbon dioxide of ' +
    'the room.',
  examples: [
    { args: [7], gives: '0.064', because: '0.064 meq/L at 417 ppm and 25 °C by an independent solver.' },
    { args: [8], gives: '0.66', because: '0.659 meq/L at 417 ppm and 25 °C by an independent solver.' },
    {
      args: [12],
      fails: { code: '#VALUE!', says: 'from 3 to 10' },
      because: 'No fresh water stands there after aeration.',
    },
  ],
  compute: ({ jar: ph, airCarbonDioxide, ...rest }) => {
    const back = backgroundOf(rest);
    return isError(back)
      ? back
      : alkalinityOf(airedWater(constantsAt(rest.temperature), back, ph, airCarbonDioxide));
  },
});

export const bufferJar = defineFunction({
  id: 'BUFFER.JAR',
  family: 'Water',
  summary:
    'Dose from an aerated jar of the water: grams that bring the whole vat to the ' +
    'target, with the range of a 0.1 pH error.',
  params: {
    volume: volumeParam,
    jar: jarParam,
    target: targetParam,
    material: materialParam,
    purity: purityParam,
    mode: modeParam,
    ...jar,
  },
  returns: fields(
    {
      dose: column('Dose', gram),
      low: column('If the jar reads 0.1 low', gram, 'Dose if its true pH is 0.1 higher.'),
      high: column('If the jar reads 0.1 high', gram, 'Dose if its true pH is 0.1 lower.'),
      alkalinity: column('Alkalinity', meqPerLitre),
    },
    'For a vat aerated like the jar; open mode also serves a vat that is not aerated yet.',
  ),
  valid: 'Water in balance with the air, 0 to 40 °C',
  sources: ['PLBU82', 'NOAACO2'],
  cautions: ['SODA_ASH', 'LIME', 'ACID', 'AMMONIA'],
  examples: [
    {
      args: [1000, 5.5, 7, 'soda ash', 1, 'open'],
      gives: [['3.47', '3.40', '3.53', '-0.001']],
      because: 'Near pH 5.6 aerated water has no alkalinity; 0.065 meq/L brings it to 7.',
    },
    {
      args: [1000, 8, 7],
      fails: { code: '#VALUE!', says: 'only raises' },
      because: 'The jar is above the target.',
    },
  ],
  compute: ({ volume, jar: ph, target, material, purity, mode, airCarbonDioxide, ...rest }) => {
    const back = backgroundOf(rest);
    if (isError(back)) return back;
    const k = constantsAt(rest.temperature);
    const at = (p: number): ReturnType<typeof doseTo> =>
      doseTo(
        k,
        airedWater(k, back, p, airCarbonDioxide),
        materialOf(material),
        target,
        airOf(mode, airCarbonDioxide),
      );
    const dose = at(ph);
    if (typeof dose !== 'number') return unreachable(dose, material, target, mode);
    const grams = (moles: ReturnType<typeof doseTo>): number =>
      typeof moles === 'number' ? gramsOf(materialOf(material), moles, volume, purity) : 0;
    return {
      dose: grams(dose),
      low: grams(at(ph + 0.1)),
      high: grams(at(ph - 0.1)),
      alkalinity: alkalinityOf(airedWater(k, back, ph, airCarbonDioxide)),
    };
  },
});
