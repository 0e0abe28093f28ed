// Long: records of one subject, each with its texts, questions and examples.
import { clusteredShare } from '../kernels/clusteredShare';
import { countedStage, stageProduct } from '../kernels/stageProduct';
import { count, share, text } from '../../../units/quantities';
import { refuse } from '../../../base/values';
import { column, defineFunction, fields } from '../../../functions/define';
import { num, series } from '../../../functions/params';
import { confidenceParam } from './limits';
import { SHARE_COLUMNS, shareInterval } from './shares';
import { moreThanSample } from './slips';

const whole = (min: number, doc: string) => num(count, { min, max: 1e9, whole: true, doc });

export const fertilisationShare = defineFunction({
  id: 'FERTILISATION.SHARE',
  family: 'Counting',
  summary: 'Share of eggs fertilised, from a counted sample, with its Wilson interval.',
  questions: [
    'fertilisation rate',
    'how many eggs are fertile',
    'good eggs out of 100',
    'calculate fertilization rate',
    'fertility %',
    'how to know fertility',
    'how many egg take',
  ],
  params: {
    fertilised: whole(0, 'Eggs in the sample that are fertilised.'),
    eggs: whole(1, 'All eggs in the sample, dead ones too.'),
    confidence: confidenceParam,
  },
  returns: fields(SHARE_COLUMNS, 'Share fertilised and the two ends of its interval.'),
  valid:
    'Eggs taken from several spots; about 12 h after fertilising the count agrees well with the later hatch',
  sources: ['WILS27', 'NEWC98'],
  examples: [
    { args: [81, 263], gives: [['0.3080', '0.2553', '0.3662']], because: 'Newcombe 1998 table I.' },
    {
      args: [263, 81],
      fails: { code: '#VALUE!', says: 'wrong way round' },
      because: 'More fertilised than there were eggs.',
    },
  ],
  compute: ({ fertilised, eggs, confidence }) =>
    fertilised > eggs
      ? moreThanSample(
          fertilised,
          eggs,
          'fertilised',
          'eggs',
          'Were the two typed the wrong way round, or were dead eggs left out of the total?',
        )
      : shareInterval(fertilised, eggs, confidence, false),
});

export const hatchShare = defineFunction({
  id: 'HATCH.SHARE',
  family: 'Counting',
  summary: 'Share of fertilised eggs that hatched, from counted eggs, with its Wilson interval.',
  questions: [
    'hatch rate',
    'how many hatched out of',
    'percent hatch',
    'what is my hatching rate',
    'haching rate',
    'hatch percent',
  ],
  params: {
    hatched: whole(0, 'Larvae that hatched from those eggs.'),
    fertilised: whole(
      1,
      'Fertilised eggs that were followed. Give all eggs instead if you want the hatch of all eggs.',
    ),
    confidence: confidenceParam,
  },
  returns: fields(SHARE_COLUMNS, 'Share hatched and the two ends of its interval.'),
  valid: 'Both numbers counted on the same eggs',
  sources: ['WILS27', 'NEWC98'],
  help:
    'Say which hatch you mean: of fertilised eggs or of all eggs. Mixing them is the ' +
    'commonest reason why two farms cannot compare.',
  examples: [
    { args: [180, 200], gives: [['0.9000', '0.8506', '0.9343']], because: 'Wilson interval for 180 of 200.' },
    {
      args: [640, 600],
      fails: { code: '#VALUE!', says: 'more hatched than fertilised' },
      because: 'The two came from different counts.',
    },
  ],
  compute: ({ hatched, fertilised, confidence }) =>
    hatched > fertilised
      ? moreThanSample(
          hatched,
          fertilised,
          'hatched',
          'fertilised',
          'There cannot be more hatched than fertilised: likely the fertilised eggs were ' +
            'counted in a sample and the larvae in the whole vat, or the two were typed the ' +
            'wrong way round.',
        )
      : shareInterval(hatched, fertilised, confidence, false),
});

export const survivalShare = defineFunction({
  id: 'SURVIVAL.SHARE',
  family: 'Counting',
  summary: 'Share of fish still alive, from the number stocked and the number now, with its Wilson interval.',
  questions: [
    'survival rate',
    'how many survived',
    'how many fish do I still have',
    'survial rate',
    'survivality',
    'how many go remain',
    'how many survive',
  ],
  params: {
    alive: whole(0, 'Fish alive now.'),
    stocked: whole(1, 'Fish at the start.'),
    confidence: confidenceParam,
  },
  returns: fields(SHARE_COLUMNS, 'Share alive and the two ends of its interval.'),
  valid: 'Both numbers really counted; if they are estimates, carry them with SPAWN.STAGES.PRODUCT',
  sources: ['WILS27', 'NEWC98'],
  examples: [
    { args: [298, 400], gives: [['0.7450', '0.7001', '0.7852']], because: 'Wilson interval for 298 of 400.' },
    {
      args: [420, 400],
      fails: { code: '#VALUE!', says: 'fish from another vat' },
      because: 'More alive than were stocked.',
    },
  ],
  compute: ({ alive, stocked, confidence }) =>
    alive > stocked
      ? moreThanSample(
          alive,
          stocked,
          'alive',
          'stocked',
          'Were fish from another vat added, was the stocking number too low, or were the two ' +
            'typed the wrong way round?',
        )
      : shareInterval(alive, stocked, confidence, false),
});

const overRow = (k: readonly number[], n: readonly number[]): number =>
  k.findIndex((x, i) => x > (n[i] ?? 0));

export const shareSamples = defineFunction({
  id: 'SHARE.SAMPLES',
  family: 'Counting',
  summary: 'Share from several separate samples, with an interval that widens when the samples disagree.',
  questions: [
    'share from several samples',
    'samples that disagree',
    'pooled percentage of samples',
    'sampling error',
  ],
  params: {
    successes: series(count, {
      min: 0,
      max: 1e9,
      whole: true,
      pair: 'samples',
      doc: 'How many in each sample have the mark, one per row.',
    }),
    samples: series(count, {
      min: 1,
      max: 1e9,
      whole: true,
      pair: 'samples',
      doc: 'How many were looked at in each sample, in the same rows.',
    }),
    confidence: confidenceParam,
  },
  returns: fields(
    { ...SHARE_COLUMNS, verdict: column('In words', text) },
    'The pooled share, its interval, and whether the samples clump.',
  ),
  valid: 'Samples from different spots or trays of one lot',
  sources: ['COCH77', 'WILS27'],
  help:
    'On each side the wider of two intervals: from the spread between the samples (t), ' +
    "and Wilson's for the pooled count. Dead eggs sit together, so one scoop is not a " +
    'fair picture.',
  examples: [
    {
      args: [
        [[90], [50]],
        [[100], [100]],
      ],
      gives: [
        [
          '0.7',
          '0',
          '1',
          'The samples differ: with 2 of them almost nothing is settled. Count more samples.',
        ],
      ],
      because: 'Two samples 40 points apart: t with one degree of freedom is 12.7.',
    },
    {
      args: [
        [[90], [105]],
        [[100], [100]],
      ],
      fails: { code: '#VALUE!', says: 'row 2' },
      because: 'The second row has more marked than looked at.',
    },
  ],
  compute: ({ successes, samples, confidence }) => {
    const row = overRow(successes, samples);
    if (row >= 0)
      return refuse(
        `successes, row ${row + 1}: ${successes[row]} is more than the sample of ${samples[row]}. Were the two typed the wrong way round?`,
      );
    const { share: pooled, low, high, isClumped } = clusteredShare(successes, samples, confidence);
    const few =
      low === 0 && high === 1
        ? `with ${samples.length} of them almost nothing is settled. Count more samples.`
        : 'the interval is wider than the pooled count alone would give.';
    const verdict =
      samples.length === 1
        ? 'One sample: clumping cannot be seen.'
        : isClumped
          ? `The samples differ: ${few}`
          : 'The samples agree as well as chance allows.';
    return { share: pooled, low, high, verdict };
  },
});

export const stagesProduct = defineFunction({
  id: 'STAGES.PRODUCT',
  family: 'Counting',
  summary:
    'A start number times the counted shares of several stages, with the uncertainty of ' +
    'every stage carried along.',
  questions: ['all survivals multiplied', 'from eggs to fingerlings how many', 'work back from order'],
  params: {
    start: num(count, { above: 0, max: 1e12, doc: 'Number at the start: eggs, larvae.' }),
    successes: series(count, {
      min: 0,
      max: 1e9,
      whole: true,
      pair: 'stages',
      doc: "Of each stage's sample, how many came through; one stage per row.",
    }),
    samples: series(count, {
      min: 1,
      max: 1e9,
      whole: true,
      pair: 'stages',
      doc: "How many were in each stage's sample, in the same rows.",
    }),
    startLow: num(count, {
      above: 0,
      max: 1e12,
      optional: true,
      doc: 'Low end of the start number, if it is an estimate itself.',
    }),
    startHigh: num(count, { above: 0, max: 1e12, optional: true, doc: 'High end of the start number.' }),
    confidence: confidenceParam,
  },
  returns: fields(
    {
      number: column('Number', count),
      low: column('Low', count),
      high: column('High', count),
      share: column('Share of start', share),
    },
    'Number that comes through all stages, its interval, and the share of the start.',
  ),
  valid: 'Each stage counted on its own sample',
  sources: ['ZOUD08', 'WILS27'],
  help:
    'Each share gets its Wilson interval; the intervals are joined on logarithms as the ' +
    'square root of the sum of squares, so the answer is narrower than multiplying all ' +
    'worst cases and wider than pretending the shares are exact.',
  examples: [
    { args: [10000, [[80], [50]], [[100], [100]]], gives: '4,000', because: '80 % of 50 % of 10,000.' },
    {
      args: [10000, [[80], [120]], [[100], [100]]],
      fails: { code: '#VALUE!', says: 'row 2' },
      because: 'In the second stage more came through than were there.',
    },
  ],
  compute: ({ start, successes, samples, startLow, startHigh, confidence }) => {
    const row = overRow(successes, samples);
    if (row >= 0)
      return refuse(
        `successes, row ${row + 1}: ${successes[row]} came through a stage that had ${samples[row]}. More hatched than fertilised? Check which count is which.`,
      );
    const [low, high] = [startLow ?? start, startHigh ?? start];
    if (low > start || high < start)
      return refuse(`startLow and startHigh must enclose start: got ${low} to ${high} around ${start}.`);
    const answer = stageProduct(
      { value: start, low, high },
      successes.map((k, i) => countedStage(k, samples[i] ?? NaN, confidence)),
    );
    return { number: answer.value, low: answer.low, high: answer.high, share: answer.share };
  },
});
