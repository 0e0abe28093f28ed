import type { Family, SheetFunction } from '../../../shared/functions/define';

/** A step of the job, in the order a run goes, with the functions that serve it. */
export interface JobStep {
  readonly key: string;
  readonly title: string;
  readonly about: string;
  readonly functions: readonly SheetFunction[];
}

const STEPS: readonly (Omit<JobStep, 'functions'> & { readonly family: Family })[] = [
  {
    key: 'water',
    family: 'Water',
    title: 'Water ready',
    about: 'Measure, air, dose a buffer in steps, measure again. Salt, oxygen, ammonia, volumes of vats.',
  },
  {
    key: 'brood',
    family: 'Brood fish',
    title: 'Brood fish chosen and dosed',
    about: 'How many females, which pairs, how much hormone, how much milt.',
  },
  {
    key: 'timing',
    family: 'Timing',
    title: 'When to strip, when they hatch, when they eat',
    about: 'Hours and degree-hours at your own water, also over a log of temperatures.',
  },
  {
    key: 'counting',
    family: 'Counting',
    title: 'Counts from samples',
    about: 'Eggs, hatch and fry from samples, with the range that fits what was counted.',
  },
  {
    key: 'rearing',
    family: 'Rearing',
    title: 'Feed, growth, grading, room',
    about: 'Rations, live food, growth, survival, density, water and oxygen.',
  },
  {
    key: 'money',
    family: 'Plan and money',
    title: 'Promise, price, cash',
    about: 'Odds of an order, cost of a fish, cash week by week.',
  },
  {
    key: 'checks',
    family: 'Checks',
    title: 'Records checked, rates learned',
    about: 'What cannot be right in a record, and your own rates from your own runs.',
  },
];

export const jobSteps = (functions: readonly SheetFunction[]): readonly JobStep[] =>
  STEPS.map(({ family, ...step }) => ({
    ...step,
    functions: functions.filter((fn) => fn.family === family),
  }));

/** The step a function belongs to. */
export const stepOf = (fn: SheetFunction, steps: readonly JobStep[]): JobStep | undefined =>
  steps.find(({ functions }) => functions.includes(fn));
