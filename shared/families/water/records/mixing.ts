// Long: records of one subject, each with its texts, questions and examples.
import {
  celsius,
  litre,
  litrePerMinute,
  hours,
  meqPerLitre,
  perHour,
  pH,
  ratio,
  seconds,
} from '../../../units/quantities';
import { isError, noSolution } from '../../../base/values';
import { alkalinityOf, solve } from '../carbonate/carbonate';
import { constantsAt, pressureOfCO2 } from '../carbonate/constants';
import { afterExchange, exchangeFor, mixed } from '../kernels/mixing';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { choice, num } from '../../../functions/params';
import { airParam, alkalinityParam, temperatureParam, waterBehind } from './inputs';

const volume = (doc: string): ReturnType<typeof num<'L'>> => num(litre, { above: 0, max: 1e7, doc });
const reading = (doc: string): ReturnType<typeof num<'pH'>> => num(pH, { min: 0, max: 14, doc });
const plain = { carbonDioxide: undefined, hardness: 0, dissolved: 0, dissolvedIn: 'µS/cm' as const };

export const waterMix = defineFunction({
  id: 'WATER.MIX',
  family: 'Water',
  summary: 'Two waters poured together: pH right away and once aired, alkalinity and temperature.',
  questions: [
    'mix two waters',
    'pH when I mix waters',
    'add hot water to tank temperature',
    'mix rain water with borehole',
  ],
  params: {
    volumeA: volume('Litres of the first water.'),
    phA: reading('pH of the first water.'),
    volumeB: volume('Litres of the second water.'),
    phB: reading('pH of the second water.'),
    alkalinityA: alkalinityParam,
    alkalinityB: alkalinityParam,
    temperatureA: temperatureParam,
    temperatureB: temperatureParam,
    airCarbonDioxide: airParam,
  },
  returns: fields(
    {
      ph: column('pH now', pH),
      aired: column('pH once aired', pH),
      alkalinity: column('Alkalinity', meqPerLitre),
      temperature: column('Temperature', celsius),
    },
    'The mixture; alkalinity and carbon are conserved, pH is not an average.',
  ),
  valid: 'Fresh water, 0 to 40 °C; an alkalinity left out means that water is taken as aerated',
  sources: ['PLBU82'],
  cautions: ['AMMONIA'],
  examples: [
    {
      args: [500, 4.5, 500, 7.8, null, 1],
      gives: [['7.4', '7.9', '0.48', '25']],
      because: 'Acid rain water and a well: the mean of the two pH, 6.15, would be far off.',
    },
    {
      args: [500, 4.5, 500, 7.8, 1],
      fails: { code: '#N/A', says: 'below pH 5.2' },
      because: 'Carbon of the acid water is not to be had from pH and alkalinity.',
    },
    {
      args: [0, 4.5, 500, 7.8],
      fails: { code: '#VALUE!', says: 'above 0' },
      because: 'A volume is above 0.',
    },
  ],
  compute: (a) => {
    const one = waterBehind(
      {
        ...plain,
        ph: a.phA,
        alkalinity: a.alkalinityA,
        temperature: a.temperatureA,
        airCarbonDioxide: a.airCarbonDioxide,
      },
      true,
    );
    if (isError(one)) return one;
    const two = waterBehind(
      {
        ...plain,
        ph: a.phB,
        alkalinity: a.alkalinityB,
        temperature: a.temperatureB,
        airCarbonDioxide: a.airCarbonDioxide,
      },
      true,
    );
    if (isError(two)) return two;
    const water = mixed(one.water, a.volumeA, two.water, a.volumeB);
    const k = constantsAt(water.temperature);
    return {
      ph: solve(k, water, { kind: 'closed' }).ph,
      aired: solve(k, water, { kind: 'open', pressure: pressureOfCO2(a.airCarbonDioxide) }).ph,
      alkalinity: alkalinityOf(water),
      temperature: water.temperature,
    };
  },
});

const amount = (doc: string): ReturnType<typeof num<''>> => num(ratio, { min: 0, max: 1e6, doc });
const methodParam = choice(['drain', 'flow'] as const, {
  default: 'drain',
  doc:
    '"drain" takes water out first and refills once; "flow" runs new water through a ' +
    'mixed vat that overflows.',
  aliases: { refill: 'drain', overflow: 'flow' },
});

export const exchangeVolume = defineFunction({
  id: 'EXCHANGE.VOLUME',
  family: 'Water',
  summary:
    'Litres to exchange to bring anything dissolved (ammonia, salt, nitrite) from one level to another.',
  questions: [
    'how much water to change',
    'percent water change',
    'how many litres to drain',
    'how much water I go change',
  ],
  params: {
    volume: volume('Water in the vat.'),
    present: amount('Level now, any unit.'),
    wanted: amount('Level wanted, same unit.'),
    incoming: num(ratio, {
      min: 0,
      max: 1e6,
      default: 0,
      doc: 'Level in the new water, same unit. 0 when left out.',
    }),
    method: methodParam,
  },
  returns: value(litre, 'Litres of new water.'),
  valid: 'Anything that only mixes; not for pH (WATER.MIX)',
  sources: ['DEFINITION'],
  examples: [
    { args: [1000, 2, 0.5], gives: '750', because: 'Three quarters out for a quarter left.' },
    { args: [1000, 2, 0.5, 0, 'flow'], gives: '1386', because: 'Flow-through needs ln 4 volumes.' },
    {
      args: [1000, 2, 0.5, 0.8],
      fails: { code: '#NUM!', says: 'new water' },
      because: 'New water at 0.8 cannot bring 0.5.',
    },
    { args: [1000, 2, 3], fails: { code: '#NUM!', says: 'between' }, because: 'More than there is.' },
  ],
  compute: (a) => {
    const litres = exchangeFor(a.volume, a.present, a.wanted, a.incoming, a.method);
    return Number.isFinite(litres)
      ? litres
      : noSolution(
          'Cannot be reached, because the wanted level is not between the present one and that ' +
            'of the new water.',
        );
  },
});

export const exchangeResult = defineFunction({
  id: 'EXCHANGE.RESULT',
  family: 'Water',
  summary: 'Level of anything dissolved after exchanging some litres.',
  questions: [
    'level after changing water',
    'what is left after a water change',
    'ammonia after exchanging half the water',
  ],
  params: {
    volume: volume('Water in the vat.'),
    exchanged: num(litre, { min: 0, max: 1e8, doc: 'Litres of new water.' }),
    present: amount('Level before, any unit.'),
    incoming: num(ratio, {
      min: 0,
      max: 1e6,
      default: 0,
      doc: 'Level in the new water, same unit. 0 when left out.',
    }),
    method: methodParam,
  },
  returns: value(ratio, 'Level after, same unit.'),
  valid: 'Anything that only mixes; not for pH (WATER.MIX)',
  sources: ['DEFINITION'],
  examples: [
    { args: [1000, 300, 2], gives: '1.400', because: 'Seven tenths are left.' },
    {
      args: [1000, 1200, 2],
      fails: { code: '#NUM!', says: 'more than the vat holds' },
      because: 'Draining cannot take out more than is in.',
    },
  ],
  compute: (a) => {
    const level = afterExchange(a.volume, a.exchanged, a.present, a.incoming, a.method);
    return Number.isNaN(level)
      ? noSolution(
          'exchanged: more than the vat holds cannot be drained at once. Use "flow", or drain twice.',
        )
      : level;
  },
});

export const turnoverTime = defineFunction({
  id: 'FLOW.TURNOVER',
  family: 'Water',
  summary: 'Hours in which a flow renews the vat once.',
  questions: ['flow rate of my tap', 'turnover per hour', 'how fast water dey run'],
  params: {
    volume: volume('Water in the vat.'),
    flow: num(litrePerMinute, { above: 0, max: 1e6, doc: 'Inflow.' }),
  },
  returns: value(hours, 'Hours per turnover. In a mixed vat 63 % is new water by then.'),
  valid: 'Exact',
  sources: ['DEFINITION'],
  examples: [
    { args: [1200, 10], gives: '2.0', because: '1200 L at 600 L an hour.' },
    {
      args: [1200, 0],
      fails: { code: '#VALUE!', says: 'above 0' },
      because: 'Still water is never renewed.',
    },
  ],
  compute: ({ volume: litres, flow }) => litres / flow / 60,
});

export const flowNeeded = defineFunction({
  id: 'FLOW.NEEDED',
  family: 'Water',
  summary: 'Inflow for a wished number of turnovers an hour.',
  questions: ['inflow for so many turnovers', 'how much water must run in', 'flow for my vat per hour'],
  params: {
    volume: volume('Water in the vat.'),
    turnovers: num(perHour, { above: 0, max: 60, doc: 'Turnovers per hour.' }),
  },
  returns: value(litrePerMinute, 'Inflow.'),
  valid: 'Exact',
  sources: ['DEFINITION'],
  examples: [
    { args: [1200, 0.5], gives: '10.0', because: '600 L an hour.' },
    { args: [-1, 0.5], fails: { code: '#VALUE!', says: 'above 0' }, because: 'A volume is above 0.' },
  ],
  compute: ({ volume: litres, turnovers }) => (litres * turnovers) / 60,
});

export const flowMeasured = defineFunction({
  id: 'FLOW.MEASURED',
  family: 'Water',
  summary: 'Flow from the seconds it takes to fill a bucket.',
  questions: [
    'litres per minute with a bucket and a watch',
    'time to fill bucket',
    'measure flow with bucket and watch',
  ],
  params: {
    bucket: volume('Bucket filled.'),
    time: num(seconds, { above: 0, max: 86400, doc: 'Seconds it took.' }),
  },
  returns: value(litrePerMinute, 'Flow.'),
  valid: 'Exact; time three fills and take the mean',
  sources: ['DEFINITION'],
  examples: [
    { args: [10, 40], gives: '15.0', because: '10 L in two thirds of a minute.' },
    { args: [10, 0], fails: { code: '#VALUE!', says: 'above 0' }, because: 'No bucket fills in no time.' },
  ],
  compute: ({ bucket, time }) => (bucket * 60) / time,
});
