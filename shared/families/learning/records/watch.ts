import { controlChart, LEAST_RUNS } from '../kernels/controlChart';
import { count, share, text } from '../../../units/quantities';
import { column, defineFunction, rows } from '../../../functions/define';
import { moreThanSample } from '../../counting/records/slips';
import { series } from '../../../functions/params';

export const rateLimits = defineFunction({
  id: 'RATE.LIMITS',
  family: 'Checks',
  summary: 'Control limits for a share run after run (hatch, survival …), and the runs that stand out.',
  questions: [
    'which runs stand out',
    'control limits for hatch rate',
    'is this hatch unusually bad',
    'control chart',
  ],
  params: {
    successes: series(count, {
      min: 0,
      max: 1e9,
      whole: true,
      pair: 'run',
      atLeast: LEAST_RUNS,
      doc: `For each run in order of time: how many hatched, lived … At least ${LEAST_RUNS} runs; 20 are better.`,
    }),
    samples: series(count, {
      min: 1,
      max: 1e9,
      whole: true,
      pair: 'run',
      atLeast: LEAST_RUNS,
      doc: 'For each run: out of how many.',
    }),
  },
  returns: rows(
    {
      run: column('Run', count),
      share: column('Share', share),
      centre: column('Centre', share),
      low: column('Lower limit', share),
      high: column('Upper limit', share),
      signal: column('Signal', text, 'Blank when nothing stands out.'),
    },
    'One row for each run.',
  ),
  valid: `At least ${LEAST_RUNS} runs in order of time; fewer than 20 are provisional`,
  sources: ['LANEY02', 'NISTPCHART', 'NELSON84'],
  help:
    'Limits widen with the spread between runs (Laney p′), never below what chance of ' +
    'the counting alone allows (p chart). Only two signals: a run beyond the limits, and ' +
    'nine in a row on one side of the centre. ' +
    ('A signal says look for what was different, not that someone erred; a fall in hatch ' +
      'may be season, water or an ageing female.'),
  examples: [
    {
      args: [
        [[40], [44], [22], [34], [24], [32], [28], [32], [34], [30]],
        [[200], [200], [200], [200], [200], [200], [200], [200], [200], [200]],
      ],
      gives: [['1', '0.200', '0.16', '0.057', '0.263', '']],
      because:
        'Ten samples of 200 from a statistics textbook, which prints a centre of 0.16 and ' +
        'plain limits of 0.0822 and 0.2378; the samples lie 1.33 times wider than chance, so ' +
        'do the limits.',
    },
    {
      args: [
        [[60], [60]],
        [[100], [100]],
      ],
      fails: { code: '#N/A', says: 'at least 8' },
      because: 'Two runs say nothing about what is usual.',
    },
  ],
  compute: ({ successes, samples }) => {
    const row = successes.findIndex((k, i) => k > (samples[i] ?? 0));
    if (row >= 0)
      return moreThanSample(
        successes[row] ?? NaN,
        samples[row] ?? NaN,
        `successes, row ${row + 1}`,
        'samples',
        'Were the two typed the wrong way round?',
      );
    const { centre, points } = controlChart(successes, samples);
    return points.map((p, i) => ({
      run: i + 1,
      share: p.share,
      centre,
      low: p.low,
      high: p.high,
      signal: p.signal ?? '',
    }));
  },
});
