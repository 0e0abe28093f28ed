import { hatchWindow, stripWindow } from '../kernels/window';
import { daysFromHours } from '../../../units/convert';
import { celsius, moment, text } from '../../../units/quantities';
import type { CellError } from '../../../base/values';
import { isError } from '../../../base/values';
import { column, defineFunction, rows } from '../../../functions/define';
import { num } from '../../../functions/params';
import { SERIALS } from './latency';
import { hoursOf, offset, preparation, profileFor } from './profiles';

const NONE = { ownTemperatures: undefined, ownHours: undefined };

export const runClock = defineFunction({
  id: 'RUN.CLOCK',
  family: 'Timing',
  summary: 'Clock times of a whole African catfish run, from injection to the end of the yolk.',
  questions: [
    'timetable of a run',
    'calendar of hatchery run',
    'what time for everything',
    'timetable from injection reach feeding',
  ],
  params: {
    injected: num(moment, { ...SERIALS, doc: 'Date and time of the injection.' }),
    temperature: num(celsius, { min: 0, max: 45, doc: 'Water of the brood fish.' }),
    hatcheryTemperature: num(celsius, {
      min: 0,
      max: 45,
      optional: true,
      doc: 'Water of eggs and larvae; left out, the same.',
    }),
    preparation,
    offset,
  },
  returns: rows(
    { event: column('What', text), time: column('When', moment), note: column('Do', text) },
    'One row for each moment, in order.',
  ),
  version: 2,
  valid: 'African catfish, 20 to 33 °C, each water constant; thinner below 23 and above 28 °C',
  sources: [
    'OKER15',
    'WORLDAQ25',
    'AUDU23',
    'ACEH19',
    'GADISSA13',
    'AMPCLARIAS',
    'UKAKALU',
    'HOU15',
    'PROKES15',
    'RURANGWA98',
  ],
  cautions: ['HORMONE'],
  help:
    'The best strip is taken as the moment of fertilisation; the larval times are ' +
    'computed from one measurement. Times shift as the water does: give the readings to ' +
    'SPAWN.LOG.FINISH.',
  examples: [
    {
      args: [46000.875, 25],
      gives: [
        ['Injection', '46000.8750', ''],
        ['First look', '46001.2569', 'Press gently for eggs, then every half hour'],
        ['Strip and fertilise', '46001.3991', 'Best time; the window counts, not the minute'],
        ['Last hour tried', '46001.4797', 'Good eggs were still had then; nobody tested later well'],
        ['Count fertilised eggs', '46001.8991', 'The share at 12 h foretells the hatch'],
        ['First hatch', '46002.5241', ''],
        ['Most have hatched', '46002.6491', ''],
        ['Last hatch', '46002.9171', 'Take out shells and dead eggs'],
        ['First food', '46004.6256', 'Offer live food; look for full bellies'],
        ['Yolk gone', '46006.3826', 'All must be feeding'],
      ],
      because: 'Injected at 21:00 at 25 °C: strip at 09:35 (12.6 h), half hatched 30 h later.',
    },
    {
      args: [46000.875, 34],
      fails: { code: '#N/A', says: '20 to 33 °C' },
      because: 'Nobody tried so warm.',
    },
  ],
  compute: (args) => {
    const eggs = args.hatcheryTemperature ?? args.temperature;
    const latency = profileFor('latency', args.preparation, NONE);
    const incubation = profileFor('incubation', 'African catfish', NONE);
    const spans = [
      hoursOf(latency, args.temperature),
      hoursOf(incubation, eggs, 'hatcheryTemperature'),
      hoursOf(profileFor('first feed', 'African catfish', NONE), eggs, 'hatcheryTemperature'),
      hoursOf(profileFor('yolk gone', 'African catfish', NONE), eggs, 'hatcheryTemperature'),
    ];
    const wrong = spans.find((s): s is CellError => isError(s));
    if (wrong) return wrong;
    const [strip = NaN, hatch = NaN, feed = NaN, yolk = NaN] = spans.filter((s): s is number => !isError(s));
    if (isError(latency) || isError(incubation)) return [];
    const window = stripWindow(strip, latency.spread, args.offset);
    const hatching = hatchWindow(hatch, incubation.spread, incubation.species);
    const at = (h: number): number => args.injected + daysFromHours(h);
    const done = window.best + (hatching?.first ?? hatch);
    return [
      { event: 'Injection', time: at(0), note: '' },
      {
        event: 'First look',
        time: at(window.firstCheck),
        note: 'Press gently for eggs, then every half hour',
      },
      {
        event: 'Strip and fertilise',
        time: at(window.best),
        note: 'Best time; the window counts, not the minute',
      },
      {
        event: 'Last hour tried',
        time: at(window.lastTested),
        note: 'Good eggs were still had then; nobody tested later well',
      },
      {
        event: 'Count fertilised eggs',
        time: at(window.best + 12),
        note: 'The share at 12 h foretells the hatch',
      },
      { event: 'First hatch', time: at(done), note: '' },
      { event: 'Most have hatched', time: at(window.best + hatch), note: '' },
      {
        event: 'Last hatch',
        time: at(window.best + (hatching?.last ?? NaN)),
        note: 'Take out shells and dead eggs',
      },
      {
        event: 'First food',
        time: at(window.best + hatch + feed),
        note: 'Offer live food; look for full bellies',
      },
      { event: 'Yolk gone', time: at(window.best + hatch + yolk), note: 'All must be feeding' },
    ];
  },
});
