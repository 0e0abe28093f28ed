import { gram, pH, text } from '../../../units/quantities';
import { isError } from '../../../base/values';
import { solve } from '../carbonate/carbonate';
import { pressureOfCO2 } from '../carbonate/constants';
import { doseTo, withDose } from '../carbonate/dose';
import { ruleGrams, RULE_RISE, verdictOf } from '../carbonate/fieldRule';
import { MATERIALS } from '../carbonate/materials';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { num } from '../../../functions/params';
import { phParam, volumeParam } from './buffer/bufferDose';
import {
  airParam,
  alkalinityParam,
  carbonDioxideParam,
  dissolvedInParam,
  dissolvedParam,
  gramsOf,
  hardnessParam,
  molesOf,
  temperatureParam,
  waterBehind,
} from './inputs';

const RULE = '1 g of soda ash in 200 L lifts pH by about 2';

export const bufferRule = defineFunction({
  id: 'BUFFER.RULE',
  family: 'Water',
  summary: `The field rule: ${RULE}. Common practice, no source.`,
  questions: ['rule of thumb soda ash', 'does the field rule hold', '5g per 1000L rule'],
  params: {
    volume: volumeParam,
    rise: num(pH, { above: 0, max: 6, default: RULE_RISE, doc: 'Wished rise of pH.' }),
  },
  returns: value(gram, 'Grams of soda ash by the rule.'),
  valid:
    'Common practice, no source: right for aerated water of pH 4.2 to 5.6 with next to ' +
    'no alkalinity, wrong elsewhere; see BUFFER.RULECHECK',
  sources: ['PRACTICE'],
  cautions: ['SODA_ASH', 'AMMONIA'],
  examples: [
    { args: [200], gives: '1.0', because: 'The rule itself.' },
    { args: [1000, 2.5], gives: '6.25', because: 'In proportion, as the rule is used.' },
    { args: [0], fails: { code: '#VALUE!', says: 'above 0' }, because: 'A volume is above 0.' },
  ],
  compute: ({ volume, rise }) => ruleGrams(volume, rise),
});

export const bufferRuleCheck = defineFunction({
  id: 'BUFFER.RULECHECK',
  family: 'Water',
  summary: 'Says for this water whether the field rule holds, overshoots or falls short, and by how much.',
  questions: [
    'does the rule of thumb dose fit my water',
    'will the field rule overshoot',
    'is the grams per cubic metre rule right here',
    'one gram for 200 litre, e correct?',
  ],
  params: {
    ph: phParam,
    target: num(pH, { min: 4, max: 10, default: 7, doc: 'pH wanted.' }),
    alkalinity: alkalinityParam,
    temperature: temperatureParam,
    carbonDioxide: carbonDioxideParam,
    hardness: hardnessParam,
    dissolved: dissolvedParam,
    dissolvedIn: dissolvedInParam,
    airCarbonDioxide: airParam,
  },
  returns: fields(
    {
      rule: column('Rule, per 1000 L', gram),
      now: column('pH after the rule, now', pH),
      aired: column('pH after the rule, aired', pH),
      offNow: column('Off the target now', pH, 'Above 0 is overshoot.'),
      offAired: column('Off the target aired', pH),
      right: column('Right dose now, per 1000 L', gram, 'Blank when there is none.'),
      verdict: column('Verdict', text),
    },
    'The rule held against the solved water; within 0.5 pH it is said to hold.',
  ),
  valid: 'Fresh water, 0 to 40 °C. The rule is common practice, no source; the check is computed',
  sources: ['PRACTICE', 'PLBU82'],
  cautions: ['SODA_ASH', 'AMMONIA'],
  examples: [
    {
      args: [4.6, 6.6, null, 25, 4.7],
      gives: [['5', '6.3', '7.0', '-0.3', '0.4', '7.3', 'The rule holds, freshly mixed and aired.']],
      because: 'With 4.7 mg/L of CO2 the rule lifts 4.58 to 6.25.',
    },
    {
      args: [6, 7, 1, 26],
      gives: [
        [
          '2.5',
          '6.02',
          '8.20',
          '-0.98',
          '1.20',
          '145',
          'Freshly mixed the rule falls short by 1.0 pH; once aired it overshoots by 1.2 pH.',
        ],
      ],
      because: 'At 1 meq/L and pH 6 the water needs 145 mg/L, the rule gives 2.5.',
    },
    {
      args: [7.2, 7, 1],
      fails: { code: '#VALUE!', says: 'above the present' },
      because: 'The rule only lifts.',
    },
  ],
  compute: ({ target, ...readings }) => {
    if (target <= readings.ph)
      return {
        error: '#VALUE!' as const,
        message: `target: expected a pH above the present ${readings.ph}, got ${target}. The rule only lifts pH.`,
      };
    const known = waterBehind(readings, true);
    if (isError(known)) return known;
    const soda = MATERIALS['soda ash'];
    const rule = ruleGrams(1000, target - readings.ph);
    const dosed = withDose(known.water, soda, molesOf(soda, rule, 1000, 1));
    const now = solve(known.k, dosed, { kind: 'closed' }).ph;
    const aired = solve(known.k, dosed, {
      kind: 'open',
      pressure: pressureOfCO2(readings.airCarbonDioxide),
    }).ph;
    const moles = doseTo(known.k, known.water, soda, target, 'closed');
    return {
      rule,
      now,
      aired,
      offNow: now - target,
      offAired: aired - target,
      right: typeof moles === 'number' ? gramsOf(soda, moles, 1000, 1) : null,
      verdict: verdictOf(now - target, aired - target),
    };
  },
});
