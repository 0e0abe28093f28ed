import { FIRST_DAY, LAST_DAY } from '../../units/dates';
import * as z from 'zod';
import { dayOf, listOf, maybeDay, maybeNumber, nameOf, numberOf, oneOf } from './fields';
import { VAT_STAGES } from '../figures/stages';
import { BATCH_STATES, COUNT_STAGES, EVENT_KINDS } from '../types';

/** The part of an order book that is alive: batches in the vats, what was counted, sold, ticked and paid. */

const moment = (label: string) =>
  numberOf(label, { min: FIRST_DAY, max: LAST_DAY + 1, unit: 'as a sheet keeps dates' });
const fish = (label: string) => numberOf(label, { min: 0, max: 50_000_000, unit: 'fish' });
const maybeFish = (label: string) => maybeNumber(label, { min: 0, max: 50_000_000, unit: 'fish' });

const clock = z.strictObject({
  temperature: numberOf('Water of the batch', { min: 5, max: 45, unit: '°C' }),
  latencyHours: numberOf('Hours from injection to strip', { min: 0, max: 100, unit: 'h' }),
  injectAt: moment('Injection'),
  checkAt: moment('First look'),
  stripAt: moment('Strip'),
  lateAt: moment('Latest strip'),
  hatchAt: moment('Hatch'),
  hatchEndAt: moment('End of the hatch'),
  firstFeedAt: moment('First food'),
  feedFrom: dayOf('First full day of feeding'),
  weanedAt: moment('Weaning'),
});

/** A batch that no longer moves; what was typed of it comes back from every plan as it was. */
export const batchSchema = z.strictObject({
  name: nameOf('Name of the batch', 30),
  state: oneOf('State of the batch', BATCH_STATES).default('growing'),
  clock,
  pairs: listOf(
    'Parents of the batch',
    z.strictObject({
      female: nameOf('Female of the batch', 30),
      male: nameOf('Male of the batch', 30),
      kilograms: numberOf('Weight of a female', { min: 0, max: 15, unit: 'kg' }),
    }),
    0,
    500,
  ).default([]),
  /** What was planned of it, for what is not counted yet. */
  eggs: fish('Eggs planned'),
  larvae: maybeFish('Larvae planned'),
  feeding: maybeFish('Larvae at first food planned'),
  weaned: maybeFish('Weaned fry planned'),
  counts: listOf(
    'Counts',
    z.strictObject({
      at: moment('Count'),
      stage: oneOf('What was counted', COUNT_STAGES),
      number: fish('Count'),
    }),
    0,
    2000,
  ).default([]),
  weighed: z
    .strictObject({
      on: dayOf('Day of the weighing'),
      grams: numberOf('Weight of one fish', { min: 0.0001, max: 100, unit: 'g' }),
    })
    .optional(),
  events: listOf(
    'Fish that left',
    z.strictObject({
      at: moment('Fish left'),
      kind: oneOf('Why fish left', EVENT_KINDS),
      number: fish('Fish that left'),
      order: nameOf('Order').optional(),
      paid: maybeNumber('Money received', { min: -1e12, max: 1e12 }),
      note: z.string().max(500).optional(),
    }),
    0,
    5000,
  ).default([]),
  stays: listOf(
    'Vats of the batch',
    z.strictObject({
      vat: nameOf('Vat of the batch', 30),
      stage: oneOf('What the vat holds', VAT_STAGES),
      from: moment('Vat taken from'),
      to: moment('Vat taken until'),
    }),
    0,
    2000,
  ).default([]),
  ticks: listOf(
    'Work done',
    z.strictObject({
      task: nameOf('Task', 200),
      at: moment('Work done').optional(),
      by: z.string().max(60).optional(),
    }),
    0,
    5000,
  ).default([]),
});
export type BookedBatch = z.output<typeof batchSchema>;

/** A batch an earlier plan had: planned again for the same night it keeps its name; no name is given twice. */
export const earlierSchema = z.strictObject({
  name: nameOf('Name of an earlier batch', 30),
  stripOn: maybeDay('Night of an earlier batch'),
});

/** Money that was paid (below 0) or received. */
export const bookedSchema = z.strictObject({
  date: dayOf('Date of the money'),
  what: nameOf('What was paid or received', 100),
  amount: numberOf('Amount', { min: -1e12, max: 1e12 }),
  batch: nameOf('Batch', 30).optional(),
  order: nameOf('Order').optional(),
});
export type BookedMoney = z.output<typeof bookedSchema>;

/** Days on which a vat cannot be used. */
export const outSchema = {
  outFrom: maybeDay('Out of use from'),
  outUntil: maybeDay('Out of use until'),
};
