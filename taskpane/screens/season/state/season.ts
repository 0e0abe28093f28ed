import type { Marked } from '../../../host/port';
import { isoDateOfSerial } from '../../../../shared/units/dates';
import type { BookChange, BookRead } from '../../../../shared/books/engine';
import type { OrderBook } from '../../../../shared/season/book/orderBook';
import type { PlanFinding, SeasonPlan } from '../../../../shared/season/types';
import type { Words } from '../../../words/en';
import { en } from '../../../words/en';
import type { Faults } from './faults';
import { faultsOf } from './faults';
import type { SeasonForm } from './form';
import { formOfInput, initialForm } from './form';

export const PLAN_MODES = ['run', 'season'] as const;
export type PlanMode = (typeof PLAN_MODES)[number];

export interface SeasonState {
  readonly mode: PlanMode;
  /** The day the pane was opened, as a serial. */
  readonly today: number;
  readonly form: SeasonForm;
  /** Ids of fields the user has left: only these complain before the plan is asked for. */
  readonly touched: ReadonlySet<string>;
  readonly isAsked: boolean;
  /** The page of orders on show, from 0. */
  readonly page: number;
  /** Rows of a sheet to become orders. */
  readonly pasted: string;
  readonly made: SeasonMade | undefined;
  readonly again: Again | undefined;
  /** What stands behind the sheets' names of the season last written over: it can be taken back. */
  readonly back: string | undefined;
  /** Cells of the sheet of tables that could not be used when it was read last. */
  readonly marks: readonly Marked[];
}

/** A plan, and the form it was made from: another form since then makes it outdated. */
export interface SeasonMade {
  readonly form: SeasonForm;
  readonly book: OrderBook;
  readonly plan: SeasonPlan;
  /** What its vats ask for beyond buckets and a night's sleep. */
  readonly asks?: readonly PlanFinding[];
  /** Against the season in the workbook, when it was planned again. */
  readonly changes: readonly BookChange[] | undefined;
}

/** What was read of a season in the workbook. */
export interface Again {
  /** Seasons found, by what stands behind their sheets' names; the newest last. */
  readonly seasons: readonly string[];
  readonly chosen: string;
  readonly read: AgainRead | undefined;
  readonly faults: readonly string[];
}
export interface AgainRead {
  readonly suffix: string;
  /** The book that stands in the workbook: compared with, and written over. */
  readonly before: BookRead;
  readonly said: readonly string[];
}

export const initialSeason = (today: number): SeasonState => ({
  mode: 'run',
  today,
  form: initialForm(today),
  touched: new Set(),
  isAsked: false,
  page: 0,
  pasted: '',
  made: undefined,
  again: undefined,
  back: undefined,
  marks: [],
});

export const isOutdated = ({ made, form }: SeasonState): boolean => made !== undefined && made.form !== form;

/** So many orders stand on one page: a thousand at once would make the pane crawl. */
export const ROWS_SHOWN = 10;
export const pagesOf = ({ orders }: SeasonForm): number => Math.max(1, Math.ceil(orders.length / ROWS_SHOWN));

const NONE: readonly string[] = [];
/** The sentences beside a field, when it is time to show them. */
export function seasonFaults({ form, touched, isAsked }: SeasonState, id: string): readonly string[] {
  if (!isAsked && !touched.has(id)) return NONE;
  const faults: Faults = faultsOf(form);
  return faults.get(id) ?? NONE;
}

const days = (today: number, ahead: number): string => isoDateOfSerial(today + ahead);

/** An invented small hatchery with four orders in one season. */
export const exampleForm = (today: number, names: Words['example'] = en.example): SeasonForm =>
  formOfInput(
    {
      hatchery: names.hatchery,
      plannedOn: days(today, 0),
      orders: [
        { name: names.mills, product: 'fingerlings', number: 6000, due: days(today, 82), price: 0.12 },
        { name: names.school, product: 'fry', number: 15_000, due: days(today, 68), price: 0.03 },
        {
          name: names.sand,
          product: 'fingerlings',
          number: 5000,
          due: days(today, 138),
          price: 0.13,
        },
        { name: names.marsh, product: 'fry', number: 20_000, due: days(today, 125), price: 0.03 },
      ],
      vats: Array.from({ length: 6 }, (_, i) => ({
        name: `${names.vat} ${i + 1}`,
        litres: i < 4 ? 1000 : 600,
      })),
      females: [1.4, 1.7, 1.2, 1.5, 1.9, 1.3, 1.6, 1.4, 1.1, 1.5, 1.3, 1.8].map((kilograms, i) => ({
        tag: `F${i + 1}`,
        kilograms,
        family: `${names.line} ${'ABC'.charAt(i % 3)}`,
      })),
      males: Array.from({ length: 10 }, (_, i) => ({
        tag: `M${i + 1}`,
        family: `${names.line} ${'ABC'.charAt((i + 1) % 3)}`,
      })),
      temperatures: [25.5, 26, 27, 27.5, 28, 27.5, 27, 26.5, 26.5, 27, 26.5, 26],
      staff: { weekdays: [1, 2, 3, 4, 5, 6] },
      prices: {
        cystsPerKilogram: 60,
        feedPerKilogram: 2,
        hormonePerMillilitre: 3,
        male: 8,
        perRun: 40,
        perVatDay: 0.5,
        perMonth: 300,
        atHand: 1500,
      },
      water: { ph: 6.4, phWanted: 7, alkalinity: 1.2 },
    },
    today,
  );
