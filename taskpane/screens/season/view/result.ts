// Long: one screen from top to bottom.
import type { BookChange } from '../../../../shared/books/engine';
import { preparationNamed } from '../../../../shared/families/preparations';
import { calledOf } from '../../../../shared/season/book/orderKeys';
import type { OrderPlan, SeasonPlan } from '../../../../shared/season/types';
import { VERDICT_LOOKS, verdictOf, verdictText } from '../../../../shared/maths/verdict';
import type { Verdict } from '../../../../shared/maths/verdict';
import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import { cashPicture, dotsPicture, funnelPicture } from '../../../pane/pictures/draw';
import type { PictureWords } from '../../../pane/pictures/types';
import { dayText, timeText, weekdayText } from '../../../../shared/units/dates';
import { phraseLanguage } from '../../../pane/phrases';
import { grouped, money, shownCurrency } from '../../../pane/values/show';
import type { SeasonMoment } from '../state/preview';
import { dayWords, fishWords, goodsWords, momentsOf, vatRowsOf, weeksOf } from '../state/preview';
import type { SeasonMade } from '../state/season';
import { banner, facts, section } from '../../../pane/frame/parts';
import { vatsPicture } from './vats';

/** What a planned season comes to: the promise first. Drawn once for a plan. */

const many = (n: number): string => grouped(Math.round(n));
const whole = (n: number): string => grouped(Math.floor(n + 1e-6));
const percent = (share: number): string => `${grouped(100 * share)} %`;
/** A share that falls short of what was asked for never reads as the same number. */
export const shortPercent = (share: number, wanted: number): string =>
  share < wanted && percent(share) === percent(wanted)
    ? `${(Math.floor(1000 * share) / 10).toFixed(1)} %`
    : percent(share);
const oneOrMore = (n: number, one: string, more: string): string => `${n} ${n === 1 ? one : more}`;

/** A verdict in its word, its shape and its colour. */
const verdictWord = (verdict: Verdict): VNode =>
  h('strong', { class: `verdict-word ${VERDICT_LOOKS[verdict].token}` }, verdictText(verdict));

function promiseView({ plan }: SeasonMade): Child {
  const open = plan.orders.filter(({ order }) => !order.cancelled && order.due >= plan.plannedOn);
  const ordered = open.reduce((sum, { order, delivered }) => sum + order.number - delivered, 0);
  const least = open.reduce((low, { certainty }) => Math.min(low, certainty), 1);
  const batches = plan.batches.filter(({ state }) => state === 'planned').length;
  const females = plan.batches.reduce(
    (sum, { state, pairs }) => sum + (state === 'planned' ? pairs.length : 0),
    0,
  );
  return h(
    'div',
    { class: `verdict ${VERDICT_LOOKS[plan.verdict].token}`, id: 'season-promise' },
    h('p', { class: 'big' }, `Promise ${whole(plan.promise)}, hope for ${whole(plan.hope)}`),
    h(
      'p',
      {},
      `${many(ordered)} fish are ordered${plan.promise > ordered ? ', the others are yours to sell' : ''}; ${oneOrMore(batches, 'batch', 'batches')} of ${oneOrMore(females, 'female', 'females')}.`,
    ),
    h(
      'p',
      {},
      'All orders: ',
      verdictWord(plan.verdict),
      open.length === 0
        ? ''
        : ` – the least sure is met in ${shortPercent(least, plan.wanted)} of seasons; ${percent(plan.wanted)} was asked for.`,
    ),
  );
}

function findingsView({ plan, asks }: SeasonMade): Child {
  const sentences = (kind: 'cannot' | 'care'): readonly VNode[] =>
    [...plan.findings, ...(asks ?? [])]
      .filter((finding) => finding.kind === kind && !(plan.short && finding.about === 'season'))
      .map(({ message }) => h('p', {}, message));
  const [cannot, care] = [sentences('cannot'), sentences('care')];
  return [cannot.length > 0 && banner('bad', cannot), care.length > 0 && banner('warning', care)];
}

const CHANGE_WORDS: Readonly<Record<BookChange['kind'], string>> = {
  kept: 'Kept',
  moved: 'Moved',
  'new batch': 'New',
  'batch dropped': 'Dropped',
  order: 'Order',
};
const changesView = (changes: readonly BookChange[]): VNode =>
  section(
    'What changes in the season',
    changes.every(({ kind }) => kind === 'kept')
      ? h('p', {}, 'Nothing: the season in the workbook still holds.')
      : h(
          'ul',
          { class: 'changes' },
          changes.map(({ kind, message }) =>
            h('li', {}, h('span', { class: 'kind' }, CHANGE_WORDS[kind]), h('span', {}, message)),
          ),
        ),
  );

const helpView = ({ short }: SeasonPlan): Child =>
  short &&
  section(
    'What would help',
    h(
      'p',
      {},
      short.binding === undefined
        ? 'No single thing binds: several are short at once.'
        : ['What binds now: ', h('strong', {}, short.binding), '.'],
    ),
    short.changes.length === 0
      ? h('p', {}, `None of these helps: ${short.tried.join('; ')}. Promise less, or later.`)
      : h(
          'ol',
          { class: 'ranked' },
          short.changes.map(({ what, gain }) =>
            h('li', {}, `${what}: `, h('strong', {}, `${many(gain)} more fish`)),
          ),
        ),
  );

const orderView = (planned: OrderPlan): VNode => {
  const { order, certainty, verdict, promise, hope, range, delivered, batches, parents, why } = planned;
  return h(
    'li',
    { class: 'order-plan' },
    h(
      'h4',
      {},
      calledOf(order),
      ' ',
      order.cancelled ? h('span', { class: 'hint' }, 'cancelled') : verdictWord(verdict),
    ),
    h('p', { class: 'hint' }, fishWords(planned)),
    !order.cancelled &&
      facts([
        ...(delivered > 0 ? [['Handed over already', many(delivered)] as const] : []),
        [
          'Promise, hope for',
          [
            h('strong', {}, `${whole(promise)} · ${whole(hope)}`),
            promise < order.number &&
              h('span', { class: 'short' }, `✕ ${many(order.number - promise)} short`),
          ],
        ],
        ['The whole order comes in', `${percent(certainty)} of seasons`],
        ['Poor, middle and good season', `${many(range.p10)} · ${many(range.p50)} · ${many(range.p90)}`],
        ['Batches', batches.length === 0 ? (why ?? 'none') : batches.join(', ')],
        ...(order.forBreeding ? [['Parents that count', grouped(parents, 1)] as const] : []),
      ]),
  );
};

/** So many are shown at once; the workbook has them all. */
const ORDERS_SHOWN = 12;
const ORDERS_FOLDED = 150;
const MOMENTS_SHOWN = 20;
const MOMENTS_FOLDED = 500;

const ordersView = ({ orders }: SeasonPlan): VNode => {
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

const momentView = ({ at, batch, order, what, more, isNight, isAllDay }: SeasonMoment): VNode =>
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
      h(
        'p',
        {},
        h('strong', {}, what),
        h('span', { class: 'amount' }, ` · ${batch}${order === '' ? '' : `, ${order}`}`),
      ),
      more !== '' && h('p', { class: 'hint' }, more),
    ),
  );

function calendarView({ plan, book }: SeasonMade): Child {
  const moments = momentsOf(plan, preparationNamed(book.preparation)?.unit ?? 'mL');
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

const shoppingView = ({ purchases }: SeasonPlan): Child =>
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

const coins = (n: number): string => money(Math.round(n));
const signed = (n: number): string => `${n > 0 ? '+' : ''}${coins(n)}`;
function moneyView({ money: accounts, cash, odds }: SeasonPlan, how: PictureWords): Child {
  const least = cash.reduce<(typeof cash)[number] | undefined>(
    (low, week) => (low && low.balance <= week.balance ? low : week),
    undefined,
  );
  const [swing] = accounts.swings;
  const isKnown = accounts.cost > 0 || accounts.sales > 0;
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
        Number.isFinite(accounts.costPerFish) ? h('strong', {}, money(accounts.costPerFish, 3)) : '–',
      ],
      ['Sales', coins(accounts.sales)],
      ['Costs', coins(accounts.cost)],
      [accounts.profit < 0 ? 'Loss' : 'Profit', h('strong', {}, coins(Math.abs(accounts.profit)))],
      ...(odds
        ? [
            [
              'A profit in',
              [`${percent(odds.gain)} of seasons `, verdictWord(verdictOf(odds.gain))],
            ] as const,
            [
              'Poor, middle and good season',
              `${coins(odds.profit.p10)} · ${coins(odds.profit.p50)} · ${coins(odds.profit.p90)}`,
            ] as const,
            [
              'Never out of money in',
              [`${percent(odds.solvent)} of seasons `, verdictWord(verdictOf(odds.solvent))],
            ] as const,
          ]
        : []),
      [
        'Least money at hand',
        [
          coins(accounts.leastBalance),
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
    cashPicture({ weeks: cash.map(({ begins, balance }) => ({ from: begins, left: balance })) }, how),
  );
}

/** Ten seasons of each order still open: how often the whole order comes, and how far the others fall short. */
const seasonsView = ({ orders }: SeasonPlan, how: PictureWords): Child => {
  const open = orders.flatMap(({ order, seasons }) =>
    seasons && !order.cancelled ? [{ name: calledOf(order), wanted: order.number, seasons }] : [],
  );
  return open.length > 0 && dotsPicture({ orders: open.slice(0, MOST_DOTTED) }, how);
};
/** More orders than this are read in their list. */
const MOST_DOTTED = 12;

/** From eggs to fry of the first batch still to come. */
const funnelView = ({ batches }: SeasonPlan, how: PictureWords): Child => {
  const batch = batches.find(({ state }) => state === 'planned') ?? batches[0];
  if (!batch) return undefined;
  const counted = (stage: string): number | undefined =>
    batch.counts.findLast((count) => count.stage === stage)?.number;
  const names = how.words.stageNames;
  return funnelPicture(
    {
      steps: (['eggs', 'larvae', 'feeding', 'weaned'] as const).map((stage) => ({
        name: `${batch.name} ${names[stage] ?? stage}`,
        planned: batch[stage],
        counted: counted(stage),
      })),
    },
    how,
  );
};

const drawn = new WeakMap<SeasonMade, { readonly view: VNode; readonly language: string }>();
/** The same element for the same plan, so that typing in the form above does not draw it anew. */
export function resultView(made: SeasonMade, how: PictureWords): VNode {
  const known = drawn.get(made);
  const language = `${phraseLanguage()} ${shownCurrency()}`;
  if (known?.language === language) return known.view;
  const { plan, book, changes } = made;
  const view = h(
    'div',
    { class: 'stack', key: 'season-plan' },
    promiseView(made),
    findingsView(made),
    changes && changesView(changes),
    helpView(plan),
    ordersView(plan),
    seasonsView(plan, how),
    calendarView(made),
    section('Vats', vatsPicture(vatRowsOf(book, plan)) ?? h('p', { class: 'hint' }, 'No vat is used.')),
    funnelView(plan, how),
    shoppingView(plan),
    moneyView(plan, how),
  );
  drawn.set(made, { view, language });
  return view;
}
