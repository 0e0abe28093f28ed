import { formatNumber } from '../sheet/formula/textFormat';
import type { CellError } from '../base/values';
import { isError } from '../base/values';
import type { Answer } from './ask';
import type { Assumed } from '../families/assumptions';
import { ASSUMPTIONS } from '../families/assumptions';
import type { Results } from './compute';
import type { PlanForm } from './form';
import type { FieldKey } from './fields';
import type { ResultKey } from './results';
import { stepsOf } from './steps';

/** cannot: the order cannot be met as it stands. care: it can, but look at this. */
export interface RunFinding {
  readonly kind: 'cannot' | 'care';
  /** The field of the form it is about. */
  readonly about: FieldKey;
  readonly message: string;
}

const many = (n: number): string => formatNumber(n, '#,##0');
const onDay = (serial: number): string => formatNumber(serial, 'ddd d mmm yyyy');

const exceeds = (needed: Answer, have: number): needed is number => !isError(needed) && needed > have;

function shortages(form: PlanForm, r: Results): RunFinding[] {
  const most = (key: ResultKey): string => {
    const n = r[key];
    return isError(n) || n < 1 ? `no ${form.product}` : `${many(n)} ${form.product}`;
  };
  const { femalesNeeded, malesNeeded, vatsNeeded } = r;
  const plural = (n: number, one: string): string => `${many(n)} ${one}${n === 1 ? '' : 's'}`;
  return [
    ...(exceeds(femalesNeeded, form.females)
      ? [
          {
            kind: 'cannot',
            about: 'females',
            message: `The order cannot be met, because it takes ${plural(femalesNeeded, 'female')} of ${form.femaleWeight} kg and you have ${many(form.females)}. With those the most to promise is ${most('mostByFemales')}. Heavier females, a riper month or two runs would help.`,
          } as const,
        ]
      : []),
    ...(exceeds(malesNeeded, form.males)
      ? [
          {
            kind: 'cannot',
            about: 'males',
            message: `The order cannot be met, because it takes ${plural(malesNeeded, 'male')} and you have ${many(form.males)}. With those the most to promise is ${most('mostByMales')}, unless one male serves more females.`,
          } as const,
        ]
      : []),
    ...(exceeds(vatsNeeded, form.vats)
      ? [
          {
            kind: 'cannot',
            about: 'vats',
            message: `The order cannot be met, because it takes ${plural(vatsNeeded, 'vat')} of ${many(form.vatLitres)} L and you have ${many(form.vats)}. With those the most to promise is ${most('mostByVats')}.`,
          } as const,
        ]
      : []),
  ];
}

function timing(form: PlanForm, a: Assumed, r: Results): RunFinding[] {
  const { plannedOn, wantedOn } = form;
  const { beginOn, stripAt } = r;
  if (plannedOn === undefined || isError(beginOn) || isError(stripAt)) return [];
  if (beginOn < plannedOn) {
    const earliest = wantedOn + Math.ceil(plannedOn - beginOn);
    return [
      {
        kind: 'cannot',
        about: 'wantedOn',
        message: `The order cannot be met, because the vats would have to be filled on ${onDay(beginOn)} and the plan is made on ${onDay(plannedOn)}. The earliest day to promise is ${onDay(earliest)}.`,
      },
    ];
  }
  const orderOn = Math.floor(stripAt) - a.orderDays;
  return orderOn < plannedOn
    ? [
        {
          kind: 'care',
          about: 'wantedOn',
          message: `Goods should have been ordered on ${onDay(orderOn)}: buy near by, or make sure they come before ${onDay(beginOn)}.`,
        },
      ]
    : [];
}

const failed = (
  r: Results,
  keys: readonly ResultKey[],
  about: FieldKey,
  kind: RunFinding['kind'],
  lead: string,
): RunFinding[] => {
  const first = keys.map((key) => r[key]).find((answer): answer is CellError => isError(answer));
  return first ? [{ kind, about, message: `${lead}${first.message ?? first.error}` }] : [];
};

function cares(form: PlanForm, a: Assumed, r: Results): RunFinding[] {
  const poor = stepsOf(form.product).reduce(
    (n, { survival }) => n * Math.min(a[survival], ASSUMPTIONS[survival].low),
    isError(r.eggsNeeded) ? NaN : r.eggsNeeded,
  );
  return [
    ...failed(r, ['vatDose'], 'ph', 'care', 'No dose for these readings. '),
    ...(form.phWanted > 8 && !isError(r.toxicThen)
      ? [
          {
            kind: 'care',
            about: 'phWanted',
            message: `At pH ${form.phWanted} ${formatNumber(r.toxicThen, '0%')} of the ammonia is toxic. 7 to 7.5 is enough.`,
          } as const,
        ]
      : []),
    ...(Number.isFinite(poor)
      ? [
          {
            kind: 'care',
            about: 'wanted',
            message: `If every step comes out at its poor end, these eggs give ${many(poor)} ${form.product} instead of ${many(form.wanted)}. Promise what you can replace.`,
          } as const,
        ]
      : []),
    ...(!isError(r.breedingNumber) && r.breedingNumber < 50
      ? [
          {
            kind: 'care',
            about: 'males',
            message: `So few parents are enough for sale, not for new brood fish: they count as ${formatNumber(r.breedingNumber, '0.0')} unrelated parents, and a line wants 50 or more.`,
          } as const,
        ]
      : []),
  ];
}

/** What stands in the way of the order, and what to look at, as sentences. */
export const findingsOf = (form: PlanForm, a: Assumed, r: Results): readonly RunFinding[] => [
  ...failed(r, ['stripAt', 'injectAt', 'firstFeedAt'], 'temperature', 'cannot', 'No times can be given. '),
  ...shortages(form, r),
  ...timing(form, a, r),
  ...cares(form, a, r),
];
