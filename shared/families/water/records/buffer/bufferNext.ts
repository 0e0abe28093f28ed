// Long: records of one subject, each with its texts, questions and examples.
import { gram, pH, ratio, share, text, count } from '../../../../units/quantities';
import { isError } from '../../../../base/values';
import { advise } from '../../titration/advise';
import { forecast, likelierProduct } from '../../titration/outlook';
import { column, defineFunction, rows } from '../../../../functions/define';
import { num } from '../../../../functions/params';
import { volumeParam } from './bufferDose';
import { gramsOf, materialOf } from '../inputs';
import {
  aimOf,
  aimParams,
  airingParam,
  alkalinityWithinParam,
  beliefsOf,
  common,
  dosesParam,
  logOf,
  notebook,
  readingsParam,
  targetOf,
} from './titrationInputs';
import { ACTION_WORDS, remarksFor, todoFor } from './titrationWords';

export const readingsExample: readonly (readonly number[])[] = [
  [0, 4.86],
  [3.66, 5.65],
  [8.54, 6.09],
];
/** The arguments from the window on, for a water read again after airing. */
const TOLD = [6.5, 7.5, 1, false, null, [[''], ['aired']], [[5.1], [6.9]], [[46000.3], [46000.4]]] as const;
const AIRED_TWICE = [6.5, 7.5, 1, false, null, [[''], ['aired'], ['aired']]] as const;
const FIRST_DOSE =
  'Dissolve this dose in a bucket, pour it in where the water moves, mix with the air on, wait a quarter of ' +
  'an hour, measure twice, write the pH down. Held back so as not to pass the top of the window.';
export const column1 = (rowsOf: readonly (readonly number[])[], i: number): number[][] =>
  rowsOf.map((r) => [r[i] ?? 0]);

export const bufferNext = defineFunction({
  id: 'BUFFER.NEXT',
  version: 5,
  family: 'Water',
  summary:
    'Next part-dose at the vat from the doses and pH readings so far: grams, spoons, pH ' +
    'to expect, what to do.',
  questions: [
    'next dose',
    'how much more to add',
    'ph after first dose',
    'step by step ph',
    'how much more soda',
    'dose and check',
    'I don add 2 spoon, remain how many',
    'how much remain to put',
    'when I go stop to put soda',
  ],
  params: {
    volume: volumeParam,
    doses: dosesParam,
    readings: readingsParam,
    target: targetOf,
    spoon: num(gram, {
      above: 0,
      max: 1000,
      optional: true,
      doc: 'Weight of one level measure of the product in your own spoon.',
    }),
    ...common,
    ...aimParams,
    ...notebook,
    airing: airingParam,
    alkalinityWithin: alkalinityWithinParam,
  },
  later: ['events', 'again', 'at', 'dosesAre', 'bufferRead', 'bufferValue', 'airing', 'alkalinityWithin'],
  returns: rows(
    {
      step: column('Step', count),
      todo: column('What to do', text),
      dose: column('Dose', gram),
      spoons: column('Spoons', ratio),
      total: column('Total by then', gram, 'Write this in the dose column beside the next reading.'),
      low: column('pH at least', pH, '5 of 100 readings lie lower.'),
      likely: column('pH likely', pH, 'At the next reading.'),
      high: column('pH at most', pH, '5 of 100 readings lie higher.'),
      remark: column('Remark', text),
      action: column('Action', text, '"air first", "dose", "wait", "read again", "done", "watch" or "stop".'),
      airedLow: column(
        'Aired at least',
        pH,
        'pH in the air of a shed, or of its own place once aired there; 10 of 100 end lower.',
      ),
      aired: column('Aired likely', pH, 'pH once the carbon dioxide has left.'),
      airedHigh: column('Aired at most', pH, '5 of 100 end higher.'),
      odds: column(
        'Chance of ending well',
        share,
        'Aired, between the bottom of the window and pH 8; below 0.9 where that range passes either.',
      ),
    },
    'First row: what to do now. Rows below: how it is likely to go on; each new reading changes them.',
  ),
  valid: 'Fresh water, 0 to 40 °C, products that raise pH, up to 40 readings of one dosing',
  sources: ['PLBU82', 'KOHL00', 'PRACTICE'],
  cautions: ['SODA_ASH', 'LIME', 'AMMONIA'],
  help:
    'Air comes before product: carbon dioxide leaves by itself and takes the pH up with it, so ' +
    'the vat is aired, or a jar of it shaken, before anything is given, and every dose is sized ' +
    'for the pH once aired. The readings are weighed against everything the water may be: its ' +
    'carbon dioxide, its acids, a meter that reads off, gas that moves, a dose that has not mixed ' +
    'yet, acids of peat and leaves. A part-dose is no more than twice the one before, keeps the ' +
    'chance of passing the top of the window at 3 in 100 (1 in 100 with a cheap meter, strips or ' +
    'lime), and a reading that does not fit is asked for again. Simulated on 330 waters of pH ' +
    '4.3 to 6.4 that nothing was tuned on, the meter held in a buffer first, followed until aired, and read again in ' +
    'the morning where that is asked for: more than 99 of 100 ended between 6.5 and 8, none of them ever passed 8; ' +
    'waters that air alone brings up got no product in 96 of 100; 4.9 readings on average, mornings included. The ' +
    'range after a dose held 93 of 100 times; in water brown as tea that nobody called brown 85 of 100: say that it ' +
    'is brown (origin "peat"). ' +
    '"Done" is said only where the whole range once aired lies inside; else "watch": read again tomorrow. Write the ' +
    'readings of one vat below each other; events says what happened between them. Beliefs ' +
    'before the first reading are judgement, not published figures.',
  examples: [
    {
      args: [
        1000,
        [[0], [0]],
        [[5.1], [6.9]],
        7,
        null,
        26,
        'soda ash',
        1,
        'unknown',
        null,
        0,
        'cheap',
        ...TOLD,
      ],
      gives: [
        [
          '0',
          'Stop: pH 6.90 is in the window. No more product; keep the air on and measure again tomorrow.',
          '0',
          '',
          '0',
          '6.7',
          '6.9',
          '7.1',
          '',
          'done',
          '6.7',
          '6.9',
          '7.3',
          '0.99',
        ],
      ],
      because: 'Air alone brought this water up.',
    },
    {
      args: [
        1000,
        [[0], [0], [0]],
        [[5.1], [5.55], [5.6]],
        7,
        5,
        26,
        'soda ash',
        1,
        'unknown',
        null,
        0,
        'good',
        ...AIRED_TWICE,
      ],
      gives: [
        ['1', FIRST_DOSE, '1.2', '0.23', '1.2', '5.9', '6.5', '6.8', '', 'dose', '6.1', '6.4', '6.6', '0.41'],
      ],
      because:
        'Aired water at pH 5.6 needs 3.3 g in all to stand at 7; the first part keeps the fresh pH below 7.5.',
    },
    {
      args: [1000, [[0]], [[6.95]]],
      gives: [
        [
          '0',
          'Stop: pH 6.95 is in the window. No more product; keep the air on and measure again tomorrow.',
          '0',
          '',
          '0',
          '6.8',
          '6.95',
          '7.1',
          'Once the carbon dioxide has left, the pH stands near 7.8 by itself: this water needs no product. ' +
            'One reading only: the answer rests on what such waters usually hold. The next reading tells far more. ' +
            'Once the gas has come to rest the pH may stand anywhere from 6.6 to 8.8: keep the air on, ' +
            'read it tomorrow, write that reading down with "night" beside it, and do what is said then.',
          'watch',
          '6.6',
          '7.8',
          '8.8',
          '0.51',
        ],
      ],
      because: 'In the window: no product.',
    },
    {
      args: [1000, [[0], [6], [4]], [[4.6], [5.5], [5.9]]],
      fails: { code: '#VALUE!', says: 'running totals' },
      because: 'Running totals cannot fall.',
    },
    {
      args: [1000, [[2], [4]], [[4.6], [5.5]]],
      fails: { code: '#VALUE!', says: 'before any product' },
      because: 'The reading before the first dose is needed.',
    },
    {
      args: [1000, [[0]], [[4.6]], 7, null, 25, 'hydrochloric acid'],
      fails: { code: '#VALUE!', says: 'lowers pH' },
      because: 'An acid cannot raise pH.',
    },
  ],
  compute: (a) => {
    const b = beliefsOf(a);
    if (isError(b)) return b;
    const aim = aimOf(a);
    if (isError(aim)) return aim;
    const log = logOf(a);
    if (isError(log)) return log;
    const advice = advise(b, log, aim);
    const { segment, cloud } = advice;
    const remark = remarksFor(
      a,
      { reasons: advice.reasons.slice(1) },
      likelierProduct(segment.beliefs, segment.series, cloud, a.material),
    );
    const grams = (moles: number): number => gramsOf(materialOf(a.material), moles, a.volume, a.purity);
    const spoons = (g: number): number | null => (a.spoon === undefined ? null : g / a.spoon);
    const given = grams(log.at(-1)?.dose ?? 0);
    const now = grams(advice.dose);
    const { low, likely, high } = advice.after;
    const firstRow = {
      step: advice.action === 'dose' ? 1 : 0,
      todo: todoFor(advice),
      dose: now,
      spoons: spoons(now),
      total: given + now,
      low,
      likely,
      high,
      remark,
      action: ACTION_WORDS[advice.action],
      airedLow: advice.aired.low,
      aired: advice.aired.likely,
      airedHigh: advice.aired.high,
      odds: advice.odds,
    };
    if (advice.action !== 'dose') return [firstRow];
    let total = given + now;
    const later = forecast(segment.beliefs, advice, aim).map(({ dose, reach }, i) => {
      const g = grams(dose);
      return {
        step: i + 2,
        todo: 'Likely next. The coming reading decides and narrows the range.',
        dose: g,
        spoons: spoons(g),
        total: (total += g),
        low: null,
        likely: null,
        high: null,
        remark: '',
        action: 'later',
        airedLow: reach.low,
        aired: reach.likely,
        airedHigh: reach.high,
        odds: null,
      };
    });
    return [firstRow, ...later];
  },
});
