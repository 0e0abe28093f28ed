import type { FarmRate } from '../../../../shared/learn';
import type { ShareBase, ShareQuestion } from '../../../../shared/records';
import type { Learned } from '../state/check';
import { LEAST_FOR_RATES } from '../state/check';
import { chooseTrend, choosePoint, sayShareBase, showLearned } from '../commands/learn';
import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import { grouped } from '../../../pane/values/show';
import { FEWEST_RUNS, GROUPINGS, isGrouping, isShare, percent, pictureOf, SHARES } from '../state/trend';
import type { Scene } from '../../../pane/frame/parts';
import { banner, button, facts, inputOf, section } from '../../../pane/frame/parts';
import { counted, lines } from '../../share/view/pieces';
import { trendPlot } from './trendPlot';

/** What the records teach: own rates beside the literature, and trends as a picture. */

const decimals = ({ format }: FarmRate): number => /\.(0+)/.exec(format)?.[1]?.length ?? 0;
/** A number and its sign stay on one line. */
const number = (rate: FarmRate, x: number): string =>
  rate.unit === 'share' ? percent(x).replace(' ', '\u00a0') : grouped(x, decimals(rate));
const unitOf = ({ unit }: FarmRate): string => (unit === 'share' || unit === '' ? '' : ` ${unit}`);

const rateLine = (rate: FarmRate): readonly [string, Child] => [
  `${rate.label}${unitOf(rate) === '' ? '' : `,${unitOf(rate)}`}`,
  [
    h(
      'span',
      { class: 'rate-now' },
      `${number(rate, rate.literature.value)} → `,
      h('strong', {}, number(rate, rate.value)),
    ),
    ' ',
    h(
      'span',
      { class: 'rate-rest' },
      `(${number(rate, rate.low)} to ${number(rate, rate.high)}; ${counted(rate.runs, 'run')})`,
    ),
  ],
];

const BASES: Readonly<Record<ShareBase, string>> = {
  eggs: 'Of all eggs',
  fertilised: 'Of the fertilised eggs',
};
const isBase = (text: string): text is ShareBase => text in BASES;

/** A hatch share is learned only once it is known of what: the two differ by the fertilisation. */
function shareQuestionView(question: ShareQuestion, at: number, { send }: Scene): VNode {
  const { sheet, header, share, records, base } = question;
  const id = `check-base-${at}`;
  return h(
    'div',
    { class: 'field', key: `${sheet ?? ''} ${header} ${at}` },
    h('label', { for: id }, `Hatch ${percent(share)}: of all eggs, or of the fertilised eggs?`),
    h(
      'select',
      {
        id,
        value: base ?? '',
        'aria-describedby': `${id}-hint`,
        on: {
          change: (event) => {
            const chosen = inputOf(event);
            if (isBase(chosen)) send(sayShareBase, { sheet, header, base: chosen });
          },
        },
      },
      base === undefined && h('option', { value: '' }, 'Choose'),
      Object.entries(BASES).map(([value, face]) => h('option', { value }, face)),
    ),
    h(
      'p',
      { id: `${id}-hint`, class: 'hint' },
      base === undefined
        ? `The book does not say it for the column “${header}”${sheet === undefined ? '' : ` on ${sheet}`} (${counted(records, 'record')}). Until you do, its hatch is left out of the rates.`
        : `As you said, for the column “${header}”.`,
    ),
  );
}

/** What the records say of the hatch and could not be used, with the reason. */
const hatchLeftOut = ({ rates }: Learned): readonly string[] =>
  rates.unused
    .filter(({ rate }) => rate === 'hatch')
    .map(({ because, count }) => `Hatch left out in ${counted(count, 'record')}: ${because}.`);

/** Preparations with runs of their own stand beside the farm; months only on the sheet. */
function ratesView({ rates: { rates }, accepted, records }: Learned): Child {
  const own = rates.filter(({ runs, kind }) => runs > 0 && typeof kind !== 'number');
  const without = rates.filter(({ runs, kind }) => runs === 0 && kind === undefined);
  const used = `${accepted} of ${counted(records, 'record')} ${records === 1 ? 'is' : 'are'} free of findings and used.`;
  if (own.length === 0)
    return h(
      'p',
      { class: 'hint' },
      `${used} None of them says two things that make a rate, such as eggs and hatched, or injection and strip time.`,
    );
  return [
    h('h4', {}, 'Literature → farm'),
    h(
      'p',
      { class: 'hint' },
      `${used} In brackets: where the mean of many runs lies with 95 % certainty, and how many runs it rests on.`,
    ),
    facts(own.map(rateLine)),
    without.length > 0 &&
      h(
        'p',
        { class: 'hint' },
        `No run speaks of: ${without.map(({ label }) => label.toLowerCase()).join(', ')}. There the literature stays.`,
      ),
  ];
}

const options = (list: Readonly<Record<string, string>>): VNode[] =>
  Object.entries(list).map(([value, face]) => h('option', { value }, face));
const choice = (
  id: string,
  label: string,
  value: string,
  list: Readonly<Record<string, string>>,
  change: (text: string) => void,
): VNode =>
  h(
    'div',
    { class: 'field' },
    h('label', { for: id }, label),
    h(
      'select',
      {
        id,
        value,
        on: {
          change: (event) => {
            change(inputOf(event));
          },
        },
      },
      options(list),
    ),
  );

function pictureView({ trends, verdicts }: Learned, { state, send }: Scene): Child {
  const { rate, by, point } = state.check.trend;
  const picture = pictureOf(trends[rate], by);
  if (typeof picture === 'string') return h('p', {}, picture);
  const chosen = point === undefined ? undefined : picture.points[point];
  return [
    trendPlot(picture, {
      point,
      choose: (at) => {
        send(choosePoint, at);
      },
    }),
    h(
      'p',
      { class: 'hint trend-point', 'aria-live': 'polite' },
      chosen?.says ?? 'Tap a point, or go to the picture with Tab and step with the arrow keys, to read it.',
    ),
    banner(
      picture.signals.length === 0 ? 'good' : 'warning',
      h(
        'p',
        {},
        picture.isTime
          ? verdicts[rate]
          : picture.signals.length === 0
            ? 'None stands out from the farm.'
            : `${picture.signals.length} of ${picture.points.length} ${picture.signals.length === 1 ? 'stands' : 'stand'} out from the farm.`,
      ),
    ),
    lines(picture.signals),
    picture.notes.map((note) => h('p', { class: 'hint' }, note)),
    h(
      'details',
      { class: 'more' },
      h('summary', {}, 'The picture in words'),
      h(
        'ul',
        { class: 'said' },
        picture.points.map(({ says }) => h('li', {}, says)),
      ),
    ),
  ];
}

function trendsView(learned: Learned, scene: Scene): Child {
  const {
    state: {
      check: { trend },
    },
    send,
  } = scene;
  return [
    h('h4', {}, 'Trends'),
    h(
      'div',
      { class: 'stack' },
      choice('trend-share', 'Share', trend.rate, SHARES, (rate) => {
        if (isShare(rate)) send(chooseTrend, { rate });
      }),
      choice('trend-by', 'Order', trend.by, GROUPINGS, (by) => {
        if (isGrouping(by)) send(chooseTrend, { by });
      }),
    ),
    pictureView(learned, scene),
  ];
}

export function learnedView(scene: Scene): Child {
  const { state, send } = scene;
  const { learned, result } = state.check;
  if (!result || result.report.records < LEAST_FOR_RATES) return undefined;
  const few = result.report.records < FEWEST_RUNS;
  return section(
    '3. What the records teach',
    !learned &&
      h(
        'div',
        { class: 'actions' },
        button(
          showLearned.label,
          () => {
            send(showLearned);
          },
          { id: 'check-learn', isOff: state.task !== undefined },
        ),
        h(
          'p',
          { class: 'hint' },
          `Your own hatch, survival and timing beside the literature${few ? '' : ', and what moves the hatch'}. Nothing is written.`,
        ),
      ),
    learned &&
      h(
        'div',
        {
          id: 'check-learned',
          class: 'stack',
          tabindex: '-1',
          role: 'group',
          'aria-label': 'What the records teach',
        },
        learned.questions.map((question, at) => shareQuestionView(question, at, scene)),
        ratesView(learned),
        lines(hatchLeftOut(learned)),
        trendsView(learned, scene),
      ),
  );
}
