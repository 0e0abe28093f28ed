// Long: one screen from top to bottom.
import type { PlannedOrder, SeasonBook, SeasonChange } from '../../../../shared/season';
import { VERDICT_LOOKS, verdictOf, verdictText } from '../../../../shared/maths/verdict';
import type { Child, VNode } from '../../../pane/draw';
import { h } from '../../../pane/draw';
import { dayText, timeText, weekdayText } from '../../../../shared/units/dates';
import { grouped } from '../../../pane/show';
import type { SeasonMoment } from '../state/preview';
import { dayWords, delivered, fishWords, goodsWords, momentsOf, vatRowsOf, weeksOf } from '../state/preview';
import type { SeasonMade } from '../state/season';
import { banner, facts, section } from '../../../pane/parts';
import { vatsPicture } from './vats';

/** What a planned season comes to. Drawn once for a plan. */

const many = (n: number): string => grouped(Math.round(n));
const percent = (share: number): string => `${grouped(100 * share)} %`;

function verdict({ plan }: SeasonMade): Child {
  const { fish, ordered } = delivered(plan);
  const runs = `${plan.runs.length} ${plan.runs.length === 1 ? 'run' : 'runs'}`;
  const least = Math.min(1, ...plan.orders.map(({ odds }) => odds?.certainty ?? 1));
  const weakest = verdictOf(least);
  const sentences = (kind: 'cannot' | 'care'): readonly VNode[] =>
    plan.findings
      .filter(
        (finding) =>
          finding.kind === kind &&
          !(plan.shortfall && finding.kind === 'cannot' && finding.about === 'season'),
      )
      .map(({ message }) => h('p', {}, message));
  const [cannot, care] = [sentences('cannot'), sentences('care')];
  return [
    plan.canBeMet
      ? h(
          'div',
          { class: `verdict ${VERDICT_LOOKS[weakest].token}` },
          h('p', { class: 'big' }, verdictText(weakest)),
          h(
            'p',
            {},
            `${many(fish)} fish from ${runs}, on usual figures. The least sure order is met in ${percent(least)} of seasons.`,
          ),
        )
      : banner(
          'bad',
          h(
            'p',
            {},
            h(
              'strong',
              {},
              `Not all of it can be had: ${many(fish)} of ${many(ordered)} fish, from ${runs}.`,
            ),
          ),
          cannot,
        ),
    care.length > 0 && banner('warning', care),
  ];
}

const CHANGE_WORDS: Readonly<Record<SeasonChange['kind'], string>> = {
  moved: 'Moved',
  'new run': 'New',
  'run dropped': 'Dropped',
  fish: 'Fish',
};
const changesView = (changes: readonly SeasonChange[]): VNode =>
  section(
    'What changed',
    changes.length === 0
      ? h('p', {}, 'Nothing: the season in the workbook still holds.')
      : h(
          'ul',
          { class: 'changes' },
          changes.map(({ kind, message }) =>
            h('li', {}, h('span', { class: 'kind' }, CHANGE_WORDS[kind]), h('span', {}, message)),
          ),
        ),
  );

const helpView = ({ shortfall }: SeasonBook): Child =>
  shortfall &&
  section(
    'What would help',
    h(
      'p',
      {},
      shortfall.binding === undefined
        ? 'No single thing binds: several are short at once.'
        : ['What binds now: ', h('strong', {}, shortfall.binding), '.'],
    ),
    shortfall.changes.length === 0
      ? h(
          'p',
          {},
          'No single change that was tried brings more. Promise less, or change several things together.',
        )
      : h(
          'ol',
          { class: 'ranked' },
          shortfall.changes.map(({ what, gain }) =>
            h('li', {}, `${what}: `, h('strong', {}, `${many(gain)} more fish`)),
          ),
        ),
  );

function femalesText({ females, femalesForNinety }: PlannedOrder): string {
  if (femalesForNinety === undefined) return String(females);
  return `${females} · ${Number.isFinite(femalesForNinety) ? `${femalesForNinety} for nine seasons in ten` : 'no number makes it sure'}`;
}

const orderView = (planned: PlannedOrder): VNode => {
  const { order, odds, expected, runs, parents } = planned;
  return h(
    'li',
    { class: 'order-plan' },
    h('h4', {}, order.name),
    h('p', { class: 'hint' }, fishWords(planned)),
    facts([
      [
        'Expected',
        [
          h('strong', {}, many(expected)),
          expected < order.number * (1 - 1e-5) &&
            h('span', { class: 'short' }, `✕ ${many(order.number - expected)} short`),
        ],
      ],
      ...(odds
        ? [
            [
              'Poor, middle and good season',
              `${many(odds.p10)} · ${many(odds.p50)} · ${many(odds.p90)}`,
            ] as const,
            [
              'Met in',
              `${percent(odds.certainty)} of seasons, ${verdictText(verdictOf(odds.certainty))}`,
            ] as const,
          ]
        : []),
      ['Females', femalesText(planned)],
      ['Runs', runs.length === 0 ? 'none' : runs.join(', ')],
      ...(order.forBreeding ? [['Parents that count', grouped(parents, 1)] as const] : []),
    ]),
  );
};

/** So many are shown at once; the workbook has them all. */
const ORDERS_SHOWN = 12;
const ORDERS_FOLDED = 150;
const MOMENTS_SHOWN = 20;
const MOMENTS_FOLDED = 500;

const ordersView = ({ orders }: SeasonBook): VNode => {
  const folded = orders.slice(ORDERS_SHOWN, ORDERS_SHOWN + ORDERS_FOLDED);
  const rest = orders.length - ORDERS_SHOWN - folded.length;
  return section(
    'Orders',
    h(
      'p',
      { class: 'hint' },
      'A poor season is one in ten, a good one too. Chance was drawn from a seed: the same ' +
        'form gives the same odds.',
    ),
    h('ul', { class: 'order-plans' }, orders.slice(0, ORDERS_SHOWN).map(orderView)),
    folded.length > 0 &&
      h(
        'details',
        { class: 'more' },
        h('summary', {}, `${folded.length} more orders`),
        h('ul', { class: 'order-plans' }, folded.map(orderView)),
      ),
    rest > 0 && h('p', { class: 'hint' }, `The workbook lists ${many(rest)} more orders.`),
  );
};

const momentView = ({ at, run, order, what, more, isNight, isAllDay }: SeasonMoment): VNode =>
  h(
    'li',
    { class: isNight ? 'moment night' : 'moment' },
    h(
      'p',
      { class: 'when' },
      h('span', { class: 'day' }, `${weekdayText(at)} ${dayText(at)}`),
      ' ',
      h('span', { class: 'clock' }, isAllDay ? '' : timeText(at)),
      isNight && h('span', { class: 'night-word' }, ' night'),
    ),
    h(
      'div',
      { class: 'what' },
      h('p', {}, h('strong', {}, what), h('span', { class: 'amount' }, ` · run ${run}, ${order}`)),
      more !== '' && h('p', { class: 'hint' }, more),
    ),
  );

function calendarView(plan: SeasonBook): Child {
  const moments = momentsOf(plan);
  if (moments.length === 0) return undefined;
  const folded = moments.slice(MOMENTS_SHOWN, MOMENTS_SHOWN + MOMENTS_FOLDED);
  const rest = moments.length - MOMENTS_SHOWN - folded.length;
  return section(
    'Calendar',
    h('ol', { class: 'calendar' }, moments.slice(0, MOMENTS_SHOWN).map(momentView)),
    folded.length > 0 &&
      h(
        'details',
        { class: 'more' },
        h('summary', {}, `${folded.length} more, until ${dayWords(folded.at(-1)?.at ?? 0)}`),
        h('ol', { class: 'calendar' }, folded.map(momentView)),
      ),
    h(
      'p',
      { class: 'hint' },
      `The workbook lists every task${rest > 0 ? `, ${many(rest)} more of these,` : ''} and the feed day by day.`,
    ),
  );
}

const shoppingView = ({ purchases }: SeasonBook): Child =>
  purchases.length > 0 &&
  section(
    'Shopping, by the week to order in',
    facts(
      weeksOf(purchases).map(([week, items]) => [
        dayWords(week),
        items.map((item) => h('span', { class: 'goods' }, goodsWords(item))),
      ]),
    ),
  );

const signed = (n: number): string => `${n > 0 ? '+' : ''}${many(n)}`;
function moneyView({ money, cash }: SeasonBook): Child {
  const least = cash.reduce<(typeof cash)[number] | undefined>(
    (low, week) => (low && low.balance <= week.balance ? low : week),
    undefined,
  );
  const [swing] = money.swings;
  const isKnown = money.cost > 0 || money.sales > 0;
  if (!isKnown)
    return section(
      'Money',
      h(
        'p',
        { class: 'hint' },
        'No prices yet: put them under Prices, and a price at each order, to see what a fish costs.',
      ),
    );
  return section(
    'Money',
    facts([
      [
        'A fish costs',
        Number.isFinite(money.costPerFish) ? h('strong', {}, grouped(money.costPerFish, 3)) : '–',
      ],
      ['Sales', many(money.sales)],
      ['Costs', many(money.cost)],
      [money.profit < 0 ? 'Loss' : 'Profit', h('strong', {}, many(Math.abs(money.profit)))],
      [
        'Least money at hand',
        [
          many(money.leastBalance),
          least && h('span', { class: 'hint' }, `week of ${dayWords(least.begins)}`),
        ],
      ],
      ...(swing && swing.swing > 0
        ? [
            [
              'Moves the profit most',
              [
                swing.name,
                h(
                  'span',
                  { class: 'hint' },
                  `${signed(swing.atLow)} at its poor end, ${signed(swing.atHigh)} at its good end`,
                ),
              ],
            ] as const,
          ]
        : []),
    ]),
  );
}

const drawn = new WeakMap<SeasonMade, VNode>();
/** The same element for the same plan, so that typing in the form above does not draw it anew. */
export function resultView(made: SeasonMade): VNode {
  let view = drawn.get(made);
  if (!view) {
    const { plan, book, changes } = made;
    view = h(
      'div',
      { class: 'stack', key: 'season-plan' },
      verdict(made),
      changes && changesView(changes),
      helpView(plan),
      ordersView(plan),
      calendarView(plan),
      section('Vats', vatsPicture(vatRowsOf(book, plan)) ?? h('p', { class: 'hint' }, 'No vat is used.')),
      shoppingView(plan),
      moneyView(plan),
    );
    drawn.set(made, view);
  }
  return view;
}
