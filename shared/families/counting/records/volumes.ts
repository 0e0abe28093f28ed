import { lotEstimate } from '../kernels/lotEstimate';
import { litresFromMillilitres } from '../../../units/convert';
import {
  count,
  fishGram,
  gram,
  litre,
  millilitre,
  perLitre,
  perMillilitre,
  text,
} from '../../../units/quantities';
import { column, defineFunction, fields } from '../../../functions/define';
import { num, series } from '../../../functions/params';
import { confidenceParam } from './limits';
import { intervalBasis, sampleSlip } from './slips';

const countsParam = (what: string) =>
  series(count, {
    min: 0,
    max: 1e7,
    whole: true,
    pair: 'samples',
    doc: `${what} counted in each sample, in the same rows.`,
  });

const METHOD =
  'All counts together divided by all sample sizes together, times the whole lot. ' +
  'Interval from the spread of the samples around that ratio, t with one degree of ' +
  'freedom less than samples; a single sample gives the chance of the count alone and ' +
  'says so.';

export const eggsByVolume = defineFunction({
  id: 'EGGS.BYVOLUME',
  family: 'Counting',
  summary:
    'Number of eggs from their volume (settled or displaced) and a few measured and ' +
    'counted samples, with an interval.',
  questions: ['count eggs by volume', 'eggs in a measuring cylinder', 'cups of eggs'],
  params: {
    totalVolume: num(millilitre, {
      above: 0,
      max: 1e6,
      doc: 'Volume of all eggs, measured the same way as the samples.',
    }),
    sampleVolumes: series(millilitre, {
      above: 0,
      max: 1e5,
      pair: 'samples',
      doc: 'Volume of each sample, one per row.',
    }),
    sampleCounts: countsParam('Eggs'),
    confidence: confidenceParam,
  },
  returns: fields(
    {
      eggs: column('Eggs', count),
      low: column('Low', count),
      high: column('High', count),
      perMillilitre: column('Eggs per millilitre', perMillilitre),
      basis: column('Interval from', text),
    },
    'Eggs in the whole lot with its interval, eggs per millilitre, and what the interval rests on.',
  ),
  valid: 'Lot and samples measured the same way (both settled, or both by displacement)',
  sources: ['COCH77', 'GARW36', 'PIPER82'],
  help: `${METHOD} Displacement suits small lots and takes about twice the time of weighing (Piper et al. 1982).`,
  examples: [
    {
      args: [400, [[2], [2], [2]], [[1150], [1210], [1180]]],
      gives: '236,000',
      because: '3,540 eggs in 6 mL are 590 per mL, times 400 mL.',
    },
    {
      args: [0.4, [[2], [2]], [[1150], [1210]]],
      fails: { code: '#VALUE!', says: 'looks like litres' },
      because: 'The total was typed in litres, the samples in millilitres.',
    },
  ],
  compute: ({ totalVolume, sampleVolumes, sampleCounts, confidence }) => {
    const slip = sampleSlip(totalVolume, sampleVolumes, sampleCounts, {
      total: 'totalVolume',
      sizes: 'sampleVolumes',
      unit: 'mL',
      thousandfold: 'litres',
    });
    if (slip) return slip;
    const { total, low, high, ratio, samples } = lotEstimate(
      totalVolume,
      sampleVolumes,
      sampleCounts,
      confidence,
    );
    return { eggs: total, low, high, perMillilitre: ratio, basis: intervalBasis(samples) };
  },
});

export const larvaeByVolume = defineFunction({
  id: 'LARVAE.BYVOLUME',
  family: 'Counting',
  summary: 'Number of larvae in a vat from counted samples of its stirred water, with an interval.',
  questions: [
    'count larvae',
    'estimate fry by cup',
    'larvae per litre',
    'beaker sample',
    'estimating hatchlings',
    'how to count fry with cup',
    'tea spoon count',
    'count fry with cup',
  ],
  params: {
    vat: num(litre, { above: 0, max: 1e6, doc: 'Water in the vat.' }),
    sampleVolumes: series(millilitre, {
      above: 0,
      max: 1e6,
      pair: 'samples',
      doc: 'Volume of each sample, one per row, in millilitres.',
    }),
    sampleCounts: countsParam('Larvae'),
    confidence: confidenceParam,
  },
  returns: fields(
    {
      larvae: column('Larvae', count),
      low: column('Low', count),
      high: column('High', count),
      perLitre: column('Larvae per litre', perLitre),
      basis: column('Interval from', text),
    },
    'Larvae in the vat with its interval, larvae per litre, and what the interval rests on.',
  ),
  valid: 'Water stirred gently until the larvae are spread evenly; larvae crowd in corners and in the dark',
  sources: ['COCH77', 'GARW36'],
  help: `${METHOD} Take samples from top, middle and bottom; if they differ the interval widens, as it should.`,
  examples: [
    {
      args: [500, [[250], [250], [250], [250]], [[24], [31], [27], [30]]],
      gives: '56,000',
      because: '112 larvae in 1 L, times 500 L.',
    },
    {
      args: [0.5, [[250], [250], [250]], [[24], [31], [27]]],
      fails: { code: '#VALUE!', says: 'cubic metres' },
      because: 'A vat of half a litre cannot give three samples of 250 mL.',
    },
  ],
  compute: ({ vat, sampleVolumes, sampleCounts, confidence }) => {
    const litres = sampleVolumes.map(litresFromMillilitres);
    const slip = sampleSlip(vat, litres, sampleCounts, {
      total: 'vat',
      sizes: 'sampleVolumes',
      unit: 'L',
      thousandfold: 'cubic metres',
    });
    if (slip) return slip;
    const { total, low, high, ratio, samples } = lotEstimate(vat, litres, sampleCounts, confidence);
    return { larvae: total, low, high, perLitre: ratio, basis: intervalBasis(samples) };
  },
});

export const fishByWeight = defineFunction({
  id: 'FISH.BYWEIGHT',
  family: 'Counting',
  summary:
    'Number of fry or fingerlings from their total weight and a few weighed and counted ' +
    'samples, with an interval.',
  questions: [
    'how many fingerlings from weight',
    'number of fish in bucket',
    'total weight divide by average',
    'count juveniles by weight',
    'how many fingerlings for one kilo',
  ],
  params: {
    totalWeight: num(gram, {
      above: 0,
      max: 1e8,
      doc: 'Weight of all fish, drained the same way as the samples.',
    }),
    sampleWeights: series(gram, {
      above: 0,
      max: 1e6,
      pair: 'samples',
      doc: 'Weight of each sample of fish, one per row.',
    }),
    sampleCounts: countsParam('Fish'),
    confidence: confidenceParam,
  },
  returns: fields(
    {
      fish: column('Fish', count),
      low: column('Low', count),
      high: column('High', count),
      meanWeight: column('Mean weight', fishGram),
      basis: column('Interval from', text),
    },
    'Fish in the lot with its interval, mean weight of one fish, and what the interval rests on.',
  ),
  valid: 'Samples dipped from all over the lot; big fish escape the net first',
  sources: ['COCH77', 'GARW36', 'PIPER82'],
  help: `${METHOD} Count and weigh a whole lot once and later lots of the same size need only weighing (Piper et al. 1982).`,
  examples: [
    {
      args: [12000, [[210], [195], [205]], [[102], [99], [101]]],
      gives: '5,941',
      because: '302 fish in 610 g, times 12,000 g.',
    },
    {
      args: [12, [[210], [195]], [[102], [99]]],
      fails: { code: '#VALUE!', says: 'looks like kilograms' },
      because: 'The total was typed in kilograms.',
    },
  ],
  compute: ({ totalWeight, sampleWeights, sampleCounts, confidence }) => {
    const slip = sampleSlip(totalWeight, sampleWeights, sampleCounts, {
      total: 'totalWeight',
      sizes: 'sampleWeights',
      unit: 'g',
      thousandfold: 'kilograms',
    });
    if (slip) return slip;
    const { total, low, high, ratio, samples } = lotEstimate(
      totalWeight,
      sampleWeights,
      sampleCounts,
      confidence,
    );
    return { fish: total, low, high, meanWeight: 1 / ratio, basis: intervalBasis(samples) };
  },
});
