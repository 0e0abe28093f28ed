// Long: records of one subject, each with its texts, questions and examples.
import { ratioEstimate } from '../../counting/kernels/ratioEstimate';
import { hatchTime, hatchingWater } from '../kernels/cystHatching';
import { milligramsFromGrams, millilitresFromLitres } from '../../../units/convert';
import {
  celsius,
  count,
  gPerLitre,
  gram,
  hours,
  litre,
  mgPerGram,
  microgram,
  millilitre,
  perGram,
  ratio,
  text,
} from '../../../units/quantities';
import { noSolution, outside, refuse } from '../../../base/values';
import { confidenceParam } from '../../counting/records/limits';
import { SHARE_COLUMNS, shareInterval } from '../../counting/records/shares';
import { intervalBasis } from '../../counting/records/slips';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { num, series } from '../../../functions/params';

const cystsParam = num(gram, { above: 0, max: 1e5, doc: 'Dry cysts put in.' });
const whole = (doc: string) => num(count, { min: 0, max: 1e9, whole: true, doc });

export const cystsWater = defineFunction({
  id: 'CYSTS.WATER',
  family: 'Rearing',
  summary:
    'Water, salt and vessels to hatch Artemia cysts: 5 g per litre below 20 L, 2 g per ' +
    'litre in larger vessels.',
  questions: ['litres of salt water to hatch artemia', 'grams of cysts per day', 'salt for artemia'],
  params: {
    cysts: cystsParam,
    vessel: num(litre, {
      above: 0,
      max: 10000,
      optional: true,
      doc: 'Water in one of your vessels. Left out: one vessel of the size needed.',
    }),
    salinity: num(gPerLitre, {
      min: 0,
      max: 300,
      default: 25,
      published: {
        min: 5,
        max: 35,
        source: 'NEW02',
        because: 'Artemia cysts hatch at 5 to 35 g/L and fail above 85 to 90.',
      },
      doc: 'Salt in the hatching water: 25 g/L if left out.',
    }),
    temperature: num(celsius, {
      min: 0,
      max: 50,
      default: 27,
      published: { max: 33, source: 'NEW02', because: 'Above 33 °C the cysts are stopped for good.' },
      doc: 'Temperature of the hatching water: 27 °C if left out; best 25 to 28.',
    }),
  },
  returns: fields(
    {
      volume: column('Water', litre),
      density: column('Cysts', gPerLitre),
      vessels: column('Vessels', count),
      salt: column('Salt', gram),
      bicarbonate: column('Baking soda up to', gram),
      advice: column('In words', text),
    },
    'Water in all, cysts per litre, whole vessels, salt, and the most baking soda to keep the pH above 8.',
  ),
  valid: '25 to 28 °C, 5 to 35 g/L salt, pH above 8, light on the water, strong aeration, about 24 h',
  sources: ['NEW02', 'CONETEST', 'LAVENS96'],
  help:
    'The density follows the vessel: a vessel below 20 L takes 5 g per litre, any larger ' +
    'one 2. Without a vessel size, up to 100 g of cysts go at 5 g/L into less than 20 L; ' +
    'more needs 2 g/L at once, so the water jumps from 20 to 50 L there. Baking soda up ' +
    'to 1 g per litre. 24 h at 25 to 28 °C is from memory of FAO Paper 361.',
  examples: [
    {
      args: [27.1],
      gives: [['5.42', '5', '1', '135.5', '5.42', 'Light, strong air, about 24 h.']],
      because: '27.1 g at 5 g/L; 25 g/L of salt.',
    },
    {
      args: [120],
      gives: [['60', '2', '1', '1500', '60', 'Light, strong air, about 24 h.']],
      because: 'More than fits below 20 L, so 2 g/L.',
    },
    {
      args: [27.1, 50],
      gives: [['13.55', '2', '1', '338.75', '13.55', 'Light, strong air, about 24 h.']],
      because: 'A 50 L vessel takes 2 g/L.',
    },
    { args: [27.1, null, 90], fails: { code: '#N/A', says: '5 to 35' }, because: 'Too salty to hatch.' },
    {
      args: [27.1, null, null, 34],
      fails: { code: '#N/A', says: 'stopped for good' },
      because: 'Too warm: the cysts die.',
    },
  ],
  compute: ({ cysts, vessel, salinity, temperature }) => {
    const { volume, density, vessels } = hatchingWater(cysts, vessel);
    const slow =
      temperature < 25
        ? 'Below 25 °C hatching is slower. '
        : temperature > 28
          ? 'Warmer than the usual 25 to 28 °C. '
          : '';
    return {
      volume,
      density,
      vessels,
      salt: volume * salinity,
      bicarbonate: volume,
      advice: `${slow}Light, strong air, about 24 h.`,
    };
  },
});

export const cystsEfficiency = defineFunction({
  id: 'CYSTS.EFFICIENCY',
  family: 'Rearing',
  summary: 'Nauplii per gram of cysts in your own tin, from counted samples of a hatch, with an interval.',
  questions: ['is this tin good', 'compare tins', 'tin bad?'],
  params: {
    sampleCounts: series(count, {
      min: 0,
      max: 1e6,
      whole: true,
      doc: 'Nauplii counted in each sample, one per row.',
    }),
    sampleVolume: num(millilitre, { above: 0, max: 1000, doc: 'Volume of each sample.' }),
    vessel: num(litre, { above: 0, max: 10000, doc: 'Water the hatch stands in.' }),
    cysts: cystsParam,
    confidence: confidenceParam,
  },
  returns: fields(
    {
      perGram: column('Nauplii per gram', perGram),
      low: column('Low', perGram),
      high: column('High', perGram),
      basis: column('Interval from', text),
    },
    'Hatching efficiency with its interval, and what the interval rests on.',
  ),
  valid: 'Nauplii spread evenly by strong air before sampling',
  sources: ['ASEM13', 'LAVENS96', 'COCH77'],
  help:
    'Mean count ÷ sample volume × water ÷ cysts. With samples of 0.25 mL from 80 mL over ' +
    '1.6 g that is mean × 200 (formula of FAO Paper 361, from memory).',
  examples: [
    {
      args: [[[1150], [1156], [1153]], 0.25, 0.08, 1.6],
      gives: '230,600',
      because: 'Mean 1,153 × 200, the recalled sample formula; 230,600 is a published strain.',
    },
    {
      args: [[[1150], [1156]], 250, 0.08, 1.6],
      fails: { code: '#VALUE!', says: 'less than' },
      because: 'The samples would be larger than the whole hatch: microlitres typed as millilitres.',
    },
  ],
  compute: ({ sampleCounts, sampleVolume, vessel, cysts, confidence }) => {
    const lot = millilitresFromLitres(vessel);
    if (sampleCounts.length * sampleVolume > lot)
      return refuse(
        `vessel: ${vessel} L is less than the samples together, ${sampleCounts.length} × ${sampleVolume} mL. Were the samples typed in microlitres, or the vessel in cubic metres?`,
      );
    const {
      ratio: perMl,
      low,
      high,
    } = ratioEstimate(
      sampleCounts.map(() => sampleVolume),
      sampleCounts,
      lot,
      confidence,
    );
    const scale = lot / cysts;
    if (perMl * scale > 400000)
      return refuse(
        `sampleCounts: this makes ${Math.round(perMl * scale)} nauplii per gram, more than there are cysts in a gram. Check the sample volume and the grams of cysts.`,
      );
    return {
      perGram: perMl * scale,
      low: low * scale,
      high: high * scale,
      basis: intervalBasis(sampleCounts.length),
    };
  },
});

export const cystsHatched = defineFunction({
  id: 'CYSTS.HATCHED',
  family: 'Rearing',
  summary:
    'Hatching percentage of cysts: free nauplii of all that could have hatched, with its Wilson interval.',
  questions: [
    'hatching percentage of artemia',
    'share of cysts that hatched',
    'test a tin of artemia',
    'artemia not hatching',
    'artemia no hatch',
  ],
  params: {
    nauplii: whole('Free-swimming nauplii in the sample.'),
    umbrella: whole('Nauplii still hanging in their membrane (umbrella stage).'),
    unhatched: whole('Full cysts that did not hatch, made visible by dissolving the shells.'),
    confidence: confidenceParam,
  },
  returns: fields(SHARE_COLUMNS, 'Share hatched and the two ends of its interval.'),
  valid: 'Empty shells are not counted',
  sources: ['ASEM13', 'LAVENS96', 'WILS27'],
  help:
    'Nauplii ÷ (nauplii + umbrella stages + unhatched full cysts). Formula from memory ' +
    'of FAO Paper 361; the definition, nauplii per 100 full cysts, was read.',
  examples: [
    {
      args: [173, 20, 57],
      gives: '0.692',
      because: '173 of 250, the published percentage of strain KKT1 (69.2 %).',
    },
    {
      args: [0, 0, 0],
      fails: { code: '#N/A', says: 'nothing was counted' },
      because: 'No share of nothing.',
    },
  ],
  compute: ({ nauplii, umbrella, unhatched, confidence }) => {
    const all = nauplii + umbrella + unhatched;
    return all === 0
      ? outside('nauplii: nothing was counted. Take a larger sample.')
      : shareInterval(nauplii, all, confidence, false);
  },
});

export const cystsOutput = defineFunction({
  id: 'CYSTS.OUTPUT',
  family: 'Rearing',
  summary:
    'Dry weight of nauplii that a gram of cysts gives: the yield that compares tins of different strains.',
  questions: [
    'how much nauplii does a gram of cysts give',
    'yield of a tin of artemia',
    'compare two tins of cysts',
  ],
  params: {
    perGram: num(perGram, {
      min: 1000,
      max: 400000,
      doc: 'Nauplii per gram of cysts (SPAWN.CYSTS.EFFICIENCY).',
    }),
    nauplius: num(microgram, {
      above: 0.5,
      max: 10,
      doc: 'Dry weight of one nauplius, in micrograms (strains lie near 2 to 4).',
    }),
  },
  returns: value(mgPerGram, 'Dry nauplii per gram of cysts; about 600 mg is best quality.'),
  valid: 'Fresh first-stage nauplii',
  sources: ['ASEM13', 'KKT1'],
  examples: [
    {
      args: [230600, 2.866],
      gives: '661',
      because: 'Published for strain KKT1: 230,600 nauplii per gram and 661 mg/g.',
    },
    {
      args: [230600, 0.002866],
      fails: { code: '#VALUE!', says: 'nauplius' },
      because: 'Milligrams were typed instead of micrograms.',
    },
  ],
  // Micrograms per gram over a thousand are milligrams per gram.
  compute: ({ perGram: efficiency, nauplius }) => (efficiency * nauplius) / milligramsFromGrams(1),
});

export const cystsSynchrony = defineFunction({
  id: 'CYSTS.SYNCHRONY',
  family: 'Rearing',
  summary:
    'How evenly cysts hatch: hours from 10 % to 90 % of the final hatch, from readings through the night.',
  questions: [
    'do cysts hatch all at once',
    'hours between first and last artemia',
    'how even is the artemia hatch',
  ],
  params: {
    readings: series(hours, {
      min: 0,
      max: 96,
      pair: 'curve',
      atLeast: 2,
      doc: 'Hours since the cysts went into water, rising.',
    }),
    hatched: series(ratio, {
      min: 0,
      max: 1e9,
      pair: 'curve',
      atLeast: 2,
      doc: 'Nauplii counted (or share hatched) at each reading, in the same rows.',
    }),
  },
  returns: fields(
    { t10: column('10 % at', hours), t90: column('90 % at', hours), synchrony: column('Spread', hours) },
    'Hours to 10 %, to 90 %, and between them.',
  ),
  valid: 'Readings that begin before 10 % and go on until no more hatch',
  sources: ['ASEM13'],
  help:
    'Straight lines between readings; the last reading counts as the full hatch. Harvest ' +
    'near the 90 % hour: earlier loses nauplii, later they have burnt their reserves.',
  examples: [
    {
      args: [
        [[12], [22]],
        [[0], [100]],
      ],
      gives: [['13', '21', '8']],
      because: 'A straight rise over 10 h: 10 % after 1 h, 90 % after 9 h.',
    },
    {
      args: [
        [[12], [22], [18]],
        [[0], [100], [60]],
      ],
      fails: { code: '#VALUE!', says: 'row 3' },
      because: 'The hours must rise.',
    },
  ],
  compute: ({ readings, hatched }) => {
    const back = readings.findIndex((t, i) => i > 0 && t <= (readings[i - 1] ?? 0));
    if (back > 0)
      return refuse(`readings, row ${back + 1}: the hours must rise from row to row. Sort the rows by time.`);
    const drop = hatched.findIndex((h, i) => i > 0 && h < (hatched[i - 1] ?? 0));
    if (drop > 0)
      return refuse(
        `hatched, row ${drop + 1}: fewer than in the row before. Enter the total hatched so far, not the new ones.`,
      );
    const [t10, t90] = [hatchTime(readings, hatched, 0.1), hatchTime(readings, hatched, 0.9)];
    if (Number.isNaN(t10) || Number.isNaN(t90))
      return noSolution('More than 10 % had hatched at the first reading: begin reading earlier.');
    return { t10, t90, synchrony: t90 - t10 };
  },
});

export const cystsDecapsulation = defineFunction({
  id: 'CYSTS.DECAPSULATION',
  family: 'Rearing',
  summary: 'Bleach, caustic soda and water to take the shells off Artemia cysts (figures from memory).',
  questions: ['bleach for taking the shell off cysts', 'decapsulate artemia', 'remove shells'],
  params: {
    cysts: cystsParam,
    chlorine: num(gPerLitre, {
      min: 10,
      max: 200,
      doc: 'Active chlorine in the bleach, g per litre, from its label (household bleach is often near 40).',
    }),
  },
  returns: fields(
    {
      bleach: column('Bleach', litre),
      caustic: column('Caustic soda', gram),
      total: column('Solution in all', litre),
      water: column('Salt water to add', litre),
      advice: column('In words', text),
    },
    'Bleach, caustic soda (sodium hydroxide), final volume and the water that makes it up.',
  ),
  valid: 'From memory of FAO Paper 361, not looked up: check before use',
  sources: ['LAVENS96'],
  cautions: ['BLEACH'],
  help:
    'Recalled figures: 0.5 g active chlorine, 0.15 g caustic soda and 14 mL of solution ' +
    'per gram of cysts; soak the cysts 1 to 2 h first, keep below 40 °C with ice, rinse ' +
    'well, stop with 0.1 % sodium thiosulphate.',
  examples: [
    {
      args: [10, 100],
      gives: [
        [
          '0.05',
          '1.5',
          '0.14',
          '0.09',
          'Keep below 40 °C, rinse well, stop with 0.1 % sodium thiosulphate. Figures from memory.',
        ],
      ],
      because: '10 g × 0.5 g chlorine ÷ 100 g/L.',
    },
    {
      args: [10, 20],
      fails: { code: '#NUM!', says: 'too weak' },
      because: 'The bleach alone would be more than the solution.',
    },
  ],
  compute: ({ cysts, chlorine }) => {
    const bleach = (cysts * 0.5) / chlorine;
    const total = (cysts * 14) / millilitresFromLitres(1);
    if (bleach > total)
      return noSolution(
        `Bleach of ${chlorine} g/L is too weak: it must hold at least 36 g/L of active chlorine.`,
      );
    return {
      bleach,
      caustic: cysts * 0.15,
      total,
      water: total - bleach,
      advice: 'Keep below 40 °C, rinse well, stop with 0.1 % sodium thiosulphate. Figures from memory.',
    };
  },
});
