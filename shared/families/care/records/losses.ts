import { FIRST_FOOD, lossCode, usualLoss } from '../kernels/losses';
import type { LossCode } from '../kernels/losses';
import { count, days, share, text } from '../../../units/quantities';
import { refuse } from '../../../base/values';
import { column, defineFunction, fields } from '../../../functions/define';
import { num } from '../../../functions/params';

const SAYS: Readonly<Record<LossCode, string>> = {
  usual: 'Usual for this age. Siphon and count again tonight.',
  look: 'More than usual: look at oxygen, temperature, leftover feed and size spread; count again tonight.',
  act: 'Act now: change part of the water, stop the feed, take out the dead, look for the cause (SPAWN.LARVAE.WHY).',
};

export const deathsExpected = defineFunction({
  id: 'DEATHS.EXPECTED',
  version: 2,
  family: 'Rearing',
  summary: 'Dead fish to expect in a day, and whether what you counted is a reason to worry.',
  params: {
    alive: num(count, { min: 1, max: 1e9, doc: 'Fish alive in the morning, as well as you know.' }),
    days: num(days, { min: 0, max: 200, doc: 'Days since hatching.' }),
    dead: num(count, {
      min: 0,
      max: 1e9,
      optional: true,
      doc: 'Dead counted today, eaten ones not among them.',
    }),
    yesterday: num(count, { min: 0, max: 1e9, optional: true, doc: 'Dead counted the day before.' }),
    food: num(days, {
      min: 1,
      max: 12,
      default: FIRST_FOOD,
      doc: 'First full day of food, in days since hatching: 3 if left out; later in cool water.',
    }),
  },
  returns: fields(
    {
      from: column('Usual from', count),
      to: column('Usual to', count),
      share: column('Lost today', share),
      code: column('Code', text, 'usual, look or act; blank without a count.'),
      says: column('In words', text),
    },
    'From survivals in print, at an even rate.',
  ),
  valid: 'Larvae and fry of African catfish in vats; the limits are drawn here from printed survivals',
  sources: ['MAKERERE', 'KAWAMURA17', 'KISANGANI', 'PRACTICE'],
  questions: [
    'how many deaths a day are normal',
    'fry are dying',
    'daily mortality',
    'when to worry about dead fry',
    'is it normal that larvae die',
  ],
  help:
    'Good trials lost 0.3 to 1.6 % a day from day 7, ordinary ones 2 to 4, bad ones 6 to 10; ' +
    'hatch to day 3 up to 8 %. Up to the first day of food 8 % a day is usual, on the three ' +
    'days after it 4 %: larvae that never learned to eat die then. Bodies understate: eaten fish leave ' +
    'none, so recount every week.',
  examples: [
    {
      args: [20000, 10, 150],
      gives: [['60', '300', '0.0075', 'usual', SAYS.usual]],
      because: '0.75 % on day 10.',
    },
    { args: [20000, 10, 900], gives: [['60', '300', '0.045', 'act', SAYS.act]], because: '4.5 % in a day.' },
    {
      args: [20000, 10, 450, 200],
      gives: [['60', '300', '0.0225', 'act', SAYS.act]],
      because: 'Doubled in a day, and above 2 %.',
    },
    {
      args: [20000, 2],
      gives: [['400', '1600', '', '', 'Count the dead morning and evening.']],
      because: 'Up to 8 % a day before the first food.',
    },
    {
      args: [20000, 5, 700],
      gives: [['300', '800', '0.035', 'usual', SAYS.usual]],
      because: 'Day 5: 3.5 %, larvae that never learned to eat.',
    },
    {
      args: [20000, 5, 1200, null, 5],
      gives: [['400', '1600', '0.06', 'usual', SAYS.usual]],
      because: 'Cool water: food from day 5 on, so day 5 is the first.',
    },
    {
      args: [100, 10, 200],
      fails: { code: '#VALUE!', says: 'more than' },
      because: 'More dead than there were.',
    },
  ],
  compute: ({ alive, days: age, dead, yesterday, food }) => {
    if (dead !== undefined && dead > alive)
      return refuse(`dead: ${dead} is more than the ${alive} fish there were.`);
    const [from, to] = usualLoss(age, food);
    if (dead === undefined)
      return {
        from: from * alive,
        to: to * alive,
        share: '',
        code: '',
        says: 'Count the dead morning and evening.',
      };
    const code = lossCode(
      dead / alive,
      age,
      yesterday === undefined ? undefined : yesterday / (alive + yesterday),
      food,
    );
    return { from: from * alive, to: to * alive, share: dead / alive, code, says: SAYS[code] };
  },
});
