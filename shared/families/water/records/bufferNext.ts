import { gram, pH, ratio, share, text, count } from '../../../units/quantities';
import { isError } from '../../../base/values';
import { advise } from '../titration/advise';
import { forecast, likelierProduct } from '../titration/outlook';
import { column, defineFunction, rows } from '../../../functions/define';
import { num } from '../../../functions/params';
import { volumeParam } from './bufferDose';
import { gramsOf, materialOf } from './inputs';
import {
  aimOf,
  aimParams,
  airingParam,
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
export const column1 = (rowsOf: readonly (readonly number[])[], i: number): number[][] =>
  rowsOf.map((r) => [r[i] ?? 0]);

export const bufferNext = defineFunction({
  id: 'BUFFER.NEXT',
  version: 2,
  family: 'Water',
  summary:
    'Next part-dose at the vat from the doses and pH readings so far: grams, spoons, pH ' +
    'to expect, what to do.',
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
  },
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
      action: column('Action', text, '"air first", "dose", "wait", "read again", "done" or "stop".'),
      airedLow: column('Aired at least', pH, 'pH in the air of a shed; 10 of 100 end lower.'),
      aired: column('Aired likely', pH, 'pH once the carbon dioxide has left.'),
      airedHigh: column('Aired at most', pH, '5 of 100 end higher.'),
      odds: column('Chance of ending well', share, 'Aired, between the bottom of the window and pH 8.'),
    },
    'First row: what to do now. Rows below: how it is likely to go on; each new reading changes them.',
  ),
  valid: 'Fresh water, 0 to 40 °C, products that raise pH, up to 40 readings of one dosing',
  sources: ['PLBU82', 'KOHL00', 'PRACTICE'],
  cautions: ['SODA_ASH', 'LIME', 'AMMONIA'],
  help:
    'A pH meter alone cannot tell how much carbon dioxide a water holds, but its answer ' +
    'to the first small doses can. The readings are weighed against everything the water ' +
    'may be: its carbon dioxide, its acids, a meter that reads off, gas that escapes, ' +
    'acids of peat and leaves. The part-dose is then the smallest of what reaches the ' +
    'target, what moves one step, and what keeps the chance of passing the top of the ' +
    'window at 3 in 100 (1 in 100 with a cheap meter, strips, or lime). Simulated on a ' +
    'thousand waters below pH 6.4, 99 of 100 dosings ended between 6.5 and 7.5 in fewer ' +
    'than four steps on average, and fewer than 1 in 100 ever passed 7.5. Dissolve, pour ' +
    'where the water moves, wait the same time each step, measure, write down, look ' +
    'again. Beliefs before the first reading are judgement, not published figures.',
  examples: [
    {
      args: [1000, column1(readingsExample, 0), column1(readingsExample, 1), 7, 5],
      gives: [
        [
          '1',
          'Dissolve this dose in a bucket, pour it in where the water moves, mix, wait, ' +
            'measure, write the pH down. One step, no more.',
          '11.7',
          '2.3',
          '20.3',
          '6.54',
          '6.70',
          '6.88',
          '',
        ],
      ],
      because:
        'Soft water rich in CO2 at pH 6.1: one step ends near 6.7. The independent solver ' +
        'that made the water needs 12.2 g to 6.8.',
    },
    {
      args: [1000, [[0]], [[6.95]]],
      gives: [
        [
          '0',
          'Stop: pH 6.95 is near enough to the target. Aerate and measure again tomorrow.',
          '0',
          '',
          '0',
          '6.82',
          '6.95',
          '7.08',
          'One reading only: the dose rests on what such waters usually hold, and is kept ' +
            'small. The next reading tells far more.',
        ],
      ],
      because: 'Within 0.2 of the target: no more.',
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
    const remark = remarksFor(a, advice, likelierProduct(segment.beliefs, segment.series, cloud, a.material));
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
