import { SOURCES } from '../../sources';
import { PREPARATION_NAMES, PREPARATION_WORDS } from '../../preparations';
import { LATENCY_TRIALS } from '../kernels/latencyTrials';
import type { Profile } from '../kernels/profile';
import { evidenceAt } from '../kernels/profile';
import { stripWindow } from '../kernels/window';
import { celsius, hours, text } from '../../../units/quantities';
import { isError } from '../../../base/values';
import { column, defineFunction, rows, value } from '../../../functions/define';
import { choice } from '../../../functions/params';
import { hoursOf, offset, preparation, profileFor, water } from './profiles';
import { degrees } from './say';

const NONE = { ownTemperatures: undefined, ownHours: undefined };
const FROM = [
  'OKER15',
  'WORLDAQ25',
  'OLUBIYI05',
  'GADISSA13',
  'MOSHAAND',
  'LEGENDRE95',
  'AUDU23',
  'AGBEBI',
] as const;
const QUESTIONS = [
  'when do I strip the female',
  'how many hours after injection',
  'is it too late to strip',
  'are the eggs over-ripe',
  'latency at my temperature',
];

export const stripEvidence = defineFunction({
  id: 'STRIP.EVIDENCE',
  family: 'Timing',
  summary: 'Every trial behind the waiting time of a hormone: hours, temperature, what came of it, source.',
  params: {
    preparation: choice(['all', ...PREPARATION_NAMES] as const, {
      default: 'all',
      aliases: PREPARATION_WORDS,
      doc: 'One preparation, or all with those that name none.',
    }),
  },
  returns: rows(
    {
      preparation: column('Preparation', text),
      fish: column('Fish', text),
      low: column('From', celsius, 'Blank where the text gives no temperature.'),
      high: column('To', celsius),
      from: column('Hours from', hours),
      to: column('Hours to', hours),
      result: column('What came of it', text),
      source: column('Source', text),
    },
    'One row for each trial, bad ends too.',
  ),
  valid: 'As reported, mostly in abstracts; one to four females a trial',
  sources: FROM,
  questions: [...QUESTIONS, 'studies and trials of latency', 'latency hours that were published'],
  help: 'Check hours are often fixed beforehand: "10 h" may mean that somebody looked at 10 h.',
  examples: [
    {
      args: ['tilapia pituitary'],
      gives: [
        [
          'tilapia pituitary',
          'Clarias gariepinus, Heterobranchus bidorsalis',
          '26',
          '28',
          '14',
          '18',
          'fry survival 79 to 85 %',
          SOURCES.TILAPIAGLAND?.citation ?? '',
        ],
        [
          'tilapia pituitary',
          'Clarias gariepinus',
          '',
          '',
          '17.59',
          '17.59',
          'ovulated',
          SOURCES.VILLANUEVA25?.citation ?? '',
        ],
      ],
      because: 'Two trials were seen.',
    },
    { args: ['goat'], fails: { code: '#VALUE!', says: 'expected one of' }, because: 'Not in the list.' },
  ],
  compute: ({ preparation: wanted }) =>
    LATENCY_TRIALS.filter((t) => wanted === 'all' || t.preparation === wanted).map((t) => ({
      preparation: t.preparation,
      fish: t.fish,
      low: t.temperature?.[0] ?? '',
      high: t.temperature?.[1] ?? '',
      from: t.hours[0],
      to: t.hours[1],
      result: t.result,
      source: SOURCES[t.source]?.citation ?? '',
    })),
});

const oneDecimal = (h: number): string => h.toFixed(1);

/** The sentence a worker needs for one preparation in water of one temperature. */
function adviceOf(profile: Profile, latency: number, temperature: number, later: number): string {
  const window = stripWindow(latency, profile.spread, later);
  const [from, to] = profile.usual.map((share) => oneDecimal(latency * share + later));
  const usual =
    from === to
      ? `The table says ${from} h`
      : `Most trials stripped, or did best, between ${from ?? ''} and ${to ?? ''} h`;
  const thin =
    evidenceAt(profile, temperature) === 'thin'
      ? ` No trial at ${degrees(temperature)} °C: carried from ${degrees(profile.tested[0])} to ${degrees(profile.tested[1])} °C, so look early and often.`
      : '';
  return (
    `Look from ${oneDecimal(window.firstCheck)} h, every half hour; strip when eggs run freely at a light press, not before. ` +
    `${usual}. Good eggs were still had at ${oneDecimal(window.lastTested)} h; later than this nobody has tested well.${thin}`
  );
}

export const stripAdvice = defineFunction({
  id: 'STRIP.ADVICE',
  family: 'Timing',
  summary: 'When to look, strip and what was tried, in one sentence for a preparation and a temperature.',
  params: { temperature: water, preparation, offset },
  returns: value(text, 'Hours after the injection, with a warning where no trial was.'),
  valid: 'As SPAWN.STRIP.WINDOW',
  sources: FROM,
  cautions: ['HORMONE'],
  questions: QUESTIONS,
  examples: [
    {
      args: [27],
      gives:
        'Look from 7.6 h, every half hour; strip when eggs run freely at a light press, not before. Most trials ' +
        'stripped, or did best, between 9.3 and 11.5 h. Good eggs were still had at 12.0 h; later than this nobody ' +
        'has tested well.',
      because: '12 h was best at 26 to 27 °C, and the last hour tried.',
    },
    {
      args: [31],
      gives:
        'Look from 5.6 h, every half hour; strip when eggs run freely at a light press, not before. Most trials ' +
        'stripped, or did best, between 6.9 and 8.5 h. Good eggs were still had at 8.9 h; later than this nobody ' +
        'has tested well. No trial at 31 °C: carried from 26 to 28 °C, so look early and often.',
      because: 'Warmer than any trial, so marked.',
    },
    { args: [34], fails: { code: '#N/A', says: 'strip at night' }, because: 'Nobody tried so warm.' },
  ],
  compute: (args) => {
    const profile = profileFor('latency', args.preparation, NONE);
    if (isError(profile)) return profile;
    const latency = hoursOf(profile, args.temperature);
    return isError(latency) ? latency : adviceOf(profile, latency, args.temperature, args.offset);
  },
});
