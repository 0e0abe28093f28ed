import type { Assumed, AssumptionKey } from '../families/assumptions';
import type { PlanForm } from './form';

/** A step of the chain: which survival leads from it to the next. */
export interface ChainStep {
  readonly key: 'eggs' | 'larvae' | 'firstFeed' | 'fry' | 'fingerlings';
  /** What is counted here. */
  readonly label: string;
  readonly survival: AssumptionKey;
}

export const stepsOf = (product: PlanForm['product']): readonly ChainStep[] => [
  { key: 'eggs', label: 'Eggs stripped and fertilised', survival: 'hatch' },
  { key: 'larvae', label: 'Larvae hatched', survival: 'yolkSurvival' },
  { key: 'firstFeed', label: 'Larvae at first feed', survival: 'frySurvival' },
  ...(product === 'fingerlings'
    ? [{ key: 'fry', label: 'Fry weaned on dry feed', survival: 'nurserySurvival' } as const]
    : []),
  {
    key: product === 'fry' ? 'fry' : 'fingerlings',
    label: product === 'fry' ? 'Fry weaned, before grading' : 'Fingerlings, before grading',
    survival: 'gradingShare',
  },
];

/** A stage in vats: which fish, how close, from when to when. */
export interface VatStage {
  readonly result: 'vatsHatching' | 'vatsFry' | 'vatsNursing';
  readonly label: string;
  readonly density: 'eggsPerLitre' | 'larvaePerLitre' | 'nurseryPerLitre';
  /** Index of the chain step whose number fills the vats. */
  readonly step: number;
  readonly from: 'stripAt' | 'firstFeedAt' | 'weanedAt';
  readonly to: 'firstFeedAt' | 'weanedAt' | 'readyAt';
}

export const vatStagesOf = (product: PlanForm['product']): readonly VatStage[] => [
  {
    result: 'vatsHatching',
    label: 'Eggs and yolk larvae',
    density: 'eggsPerLitre',
    step: 0,
    from: 'stripAt',
    to: 'firstFeedAt',
  },
  {
    result: 'vatsFry',
    label: 'Feeding larvae and fry',
    density: 'larvaePerLitre',
    step: 2,
    from: 'firstFeedAt',
    to: 'weanedAt',
  },
  ...(product === 'fingerlings'
    ? [
        {
          result: 'vatsNursing',
          label: 'Nursing to fingerlings',
          density: 'nurseryPerLitre',
          step: 3,
          from: 'weanedAt',
          to: 'readyAt',
        } as const,
      ]
    : []),
];

/** A day of feeding, counted from the first feed. */
export interface FeedingDay {
  readonly index: number;
  readonly stage: 'live food' | 'weaning' | 'dry feed' | 'nursing';
  /** Share of the day's food that is live. */
  readonly live: number;
}

export function feedingDays(form: PlanForm, a: Assumed): readonly FeedingDay[] {
  const total = a.rearingDays + (form.product === 'fingerlings' ? a.nurseryDays : 0);
  return Array.from({ length: total }, (_, index) => {
    if (index >= a.rearingDays) return { index, stage: 'nursing', live: 0 };
    if (index < a.liveDays) return { index, stage: 'live food', live: 1 };
    return index < a.liveDays + a.weaningDays
      ? { index, stage: 'weaning', live: 0.5 }
      : { index, stage: 'dry feed', live: 0 };
  });
}
