import type { PlanForm } from './form';
import type { Assumed } from '../families/assumptions';

/**
 * Something to do. Times and amounts are formulas over the names of the plan, so the workbook and the plan
 * say the same.
 */
export interface PlanTask {
  readonly key: string;
  readonly at: string;
  readonly what: string;
  readonly amount?: string;
  readonly unit?: string;
  readonly format?: string;
  readonly remember: string;
}

const WHOLE = '#,##0';

const preparing: readonly PlanTask[] = [
  {
    key: 'order',
    at: '=INT({stripAt})-{orderDays}+8/24',
    what: 'Order hormone, cysts, feed and what raises the pH',
    remember: 'The amounts stand on Start under "To buy".',
  },
  {
    key: 'clean',
    at: '={beginOn}-1+8/24',
    what: 'Scrub, rinse and dry vats, trays and hoses; test the air pumps',
    amount: '={vatsNeeded}',
    unit: 'vats',
    format: WHOLE,
    remember: 'Spare pump and power for the night at hand?',
  },
  {
    key: 'fill',
    at: '={beginOn}+8/24',
    what: 'Fill the vats and start the air',
    amount: '={vatsNeeded}',
    unit: 'vats',
    format: WHOLE,
    remember:
      'Measure pH, alkalinity and total ammonia in the evening, temperature at night. Type them on Start.',
  },
  {
    key: 'trial',
    at: '={beginOn}+1+8/24',
    what: 'Try the dose in a bucket of 10 L vat water',
    amount: '={trialDose}',
    unit: 'g',
    format: '0.00',
    remember: 'Dissolve, air for an hour, read the pH. Goggles and gloves.',
  },
  {
    key: 'dose1',
    at: '={beginOn}+1+15/24',
    what: 'First half of the dose into every vat, dissolved in a bucket first',
    amount: '={vatDose}/2',
    unit: 'g a vat',
    format: '#,##0.0',
    remember: 'No fish in the water. Stop if the trial bucket passed the pH you want.',
  },
  {
    key: 'dose2',
    at: '={beginOn}+2+8/24',
    what: 'Read the pH; if it is still low give the second half',
    amount: '={vatDose}/2',
    unit: 'g a vat',
    format: '#,##0.0',
    remember: 'Read again in the evening. Do not chase the last tenth.',
  },
];

const spawning: readonly PlanTask[] = [
  {
    key: 'choose',
    at: '=INT({injectAt})-1+16/24',
    what: 'Choose ripe females, keep each alone and covered; no more feed',
    amount: '={femalesNeeded}',
    unit: 'females',
    format: WHOLE,
    remember: 'Soft round belly; eggs run at a light press. Keep one or two in reserve.',
  },
  {
    key: 'weigh',
    at: '={injectAt}-1/24',
    what: 'Weigh every female and draw up her dose',
    amount: '={hormoneTotal}',
    unit: 'mL in all',
    format: '0.00',
    remember: 'Sheet Brood works out each dose from her weight.',
  },
  {
    key: 'inject',
    at: '={injectAt}',
    what: 'Inject',
    amount: '={hormoneEach}',
    unit: 'mL each',
    format: '0.00',
    remember: 'Write down the clock time and the water temperature. Ask a vet; local rules come first.',
  },
  {
    key: 'check',
    at: '={checkAt}',
    what: 'First check: do eggs run?',
    remember: 'Press lightly, every half hour from now. Cooler water means later.',
  },
  {
    key: 'males',
    at: '={stripAt}-0.5/24',
    what: 'Milt ready: males killed humanely, testes dry and clean',
    amount: '={malesNeeded}',
    unit: 'males',
    format: WHOLE,
    remember:
      'Milt dies within minutes undiluted in the warm, within two once wet. Each female ' +
      'with one male keeps families apart.',
  },
  {
    key: 'strip',
    at: '={stripAt}',
    what: 'Strip into a dry bowl, weigh the eggs, mix with milt, add water, spread',
    amount: '={eggsNeeded}',
    unit: 'eggs',
    format: WHOLE,
    remember: 'Dry hands and fish. Shade. Eggs in one layer.',
  },
  {
    key: 'late',
    at: '={lateAt}',
    what: 'Too late from here: eggs still in the fish are over-ripe',
    remember: 'Do not mix them with the good ones.',
  },
  {
    key: 'fertilised',
    at: '={stripAt}+12/24',
    what: 'Count 100 eggs: how many are alive?',
    amount: '=100',
    unit: 'eggs',
    format: WHOLE,
    remember: 'Clear and greenish is alive, white is dead. This share foretells the hatch.',
  },
];

const larvae: readonly PlanTask[] = [
  {
    key: 'hatch',
    at: '={hatchAt}',
    what: 'First larvae hatch',
    amount: '={larvaeHatched}',
    unit: 'larvae',
    format: WHOLE,
    remember: 'Dark, calm, clean water, plenty of air.',
  },
  {
    key: 'hatchEnd',
    at: '={hatchEndAt}',
    what: 'Last larvae hatch: siphon out shells and dead eggs',
    remember: 'They rot and use up the oxygen. Estimate how many hatched: type it on Chain.',
  },
  {
    key: 'cysts',
    at: '={firstFeedAt}-1',
    what: 'Set the first cysts to hatch, then every day at this hour',
    amount: '={cystsFirst}',
    unit: 'g',
    format: '#,##0.0',
    remember:
      'At most 2 g a litre of salt water, strong light and air, 25 to 28 °C, about 24 ' +
      'hours. Amounts by day on Feed.',
  },
  {
    key: 'firstFeed',
    at: '={firstFeedAt}',
    what: 'First meal of live food',
    amount: '={meals}',
    unit: 'meals a day',
    format: WHOLE,
    remember: 'They search the bottom with yolk still left. Full orange bellies after a meal.',
  },
  {
    key: 'wean',
    at: '={feedFrom}+{liveDays}+8/24',
    what: 'Start weaning: dry starter first, live food after',
    remember: 'Half and half. Siphon leftovers after every meal.',
  },
  {
    key: 'dry',
    at: '={feedFrom}+{liveDays}+{weaningDays}+8/24',
    what: 'Dry feed alone',
    remember: 'Bellies full? If not, give live food a day or two longer.',
  },
];

const ending = (form: PlanForm, a: Assumed): readonly PlanTask[] => {
  const weeks = form.product === 'fingerlings' ? Math.max(0, Math.ceil(a.nurseryDays / 7) - 1) : 0;
  return [
    form.product === 'fry'
      ? {
          key: 'weaned',
          at: '={weanedAt}',
          what: 'Fry weaned: take out the big ones, count a sample',
          amount: '={fishWeaned}',
          unit: 'fry',
          format: WHOLE,
          remember: 'Type the count on Chain. The few big ones eat the rest.',
        }
      : {
          key: 'weaned',
          at: '={weanedAt}',
          what: 'Grade by size, count, spread over the nursing vats',
          amount: '={vatsNursing}',
          unit: 'vats',
          format: WHOLE,
          remember: 'Type the count on Chain. The few big ones eat the rest.',
        },
    ...Array.from({ length: weeks }, (_, i): PlanTask => ({
      key: `grade${i + 1}`,
      at: `=INT({weanedAt})+${7 * (i + 1)}+8/24`,
      what: 'Weigh a sample, take out the big ones',
      remember: 'New mean weight, new ration.',
    })),
    {
      key: 'fast',
      at: '={wantedOn}-1+6/24',
      what: 'Last meal; clean water, bags and oxygen ready',
      remember: 'Empty fish travel better.',
    },
    {
      key: 'sale',
      at: '={wantedOn}+6/24',
      what: 'Count out and hand over',
      amount: '={wanted}',
      unit: form.product,
      format: WHOLE,
      remember: 'Cool of the morning. Write down how many were really there: the next plan uses it.',
    },
  ];
};

/** Everything to do in a run, not yet in order of time. */
export const tasksOf = (form: PlanForm, a: Assumed): readonly PlanTask[] => [
  ...preparing,
  ...spawning,
  ...larvae,
  ...ending(form, a),
];
