import * as z from 'zod';
import { VERDICTS } from '../../../maths/verdict';
import { orderBookSchema } from '../../book/orderBook';
import { VAT_STAGES } from '../../figures/stages';
import { BATCH_STATES, COUNT_STAGES, EVENT_KINDS } from '../../types';

/** The form of a plan, for programs that read it. Days and times are sheet serials. */

const n = z.number();
const range = z.strictObject({ p10: n, p50: n, p90: n });
const clock = {
  temperature: n,
  latencyHours: n,
  injectAt: n,
  checkAt: n,
  stripAt: n,
  lateAt: n,
  hatchAt: n,
  hatchEndAt: n,
  firstFeedAt: n,
  feedFrom: n,
  weanedAt: n,
};
const batch = z.strictObject({
  ...clock,
  name: z.string(),
  state: z.enum(['planned', ...BATCH_STATES]),
  pairs: z.array(z.strictObject({ female: z.string(), male: z.string(), kilograms: n })),
  males: z.array(z.string()),
  hormone: n,
  eggs: n,
  larvae: n,
  feeding: n,
  weaned: n,
  promised: n,
  extra: n,
  leavesOn: n,
  counts: z.array(z.strictObject({ at: n, stage: z.enum(COUNT_STAGES), number: n })),
  events: z.array(
    z.strictObject({
      at: n,
      kind: z.enum(EVENT_KINDS),
      number: n,
      order: z.string().optional(),
      paid: n.optional(),
      note: z.string().optional(),
    }),
  ),
  weighed: z.strictObject({ on: n, grams: n }).optional(),
  alive: n.optional(),
  known: z.strictObject({ eggs: n, counted: n, lost: n, sold: n }).optional(),
});
const stay = z.strictObject({
  batch: z.string(),
  vat: z.string(),
  stage: z.enum(VAT_STAGES),
  from: n,
  to: n,
  cleanAt: n,
  fish: n.nullable(),
  perLitre: n.nullable(),
});
const allocation = z.strictObject({
  batch: z.string(),
  order: z.string(),
  on: n,
  ageDays: n,
  grams: n,
  fish: n,
  feeding: n,
  stage: z.enum(['fry', 'nursing']),
});
const orderPlan = z.strictObject({
  order: z.record(z.string(), z.unknown()),
  batches: z.array(z.string()),
  delivered: n,
  promise: n,
  hope: n,
  range,
  seasons: z.array(n).optional(),
  certainty: n,
  verdict: z.enum(VERDICTS),
  expected: n,
  parents: n,
  why: z.string().optional(),
});
const maybe = n.nullable();

export const planSchema = z.strictObject({
  plannedOn: n,
  wanted: n,
  batches: z.array(batch),
  orders: z.array(orderPlan),
  allocations: z.array(allocation),
  stays: z.array(stay),
  purchases: z.array(
    z.strictObject({ week: n, item: z.string(), amount: n, unit: z.string(), cost: n, usedFrom: n }),
  ),
  feeding: z.array(z.strictObject({ date: n, batch: z.string(), fish: n, grams: n, cysts: n, dry: n })),
  entries: z.array(
    z.strictObject({
      date: n,
      what: z.string(),
      amount: n,
      batch: z.string().optional(),
      order: z.string().optional(),
      isBooked: z.boolean(),
      isFixed: z.boolean(),
    }),
  ),
  cash: z.array(z.strictObject({ begins: n, moneyIn: n, moneyOut: n, balance: n })),
  /** null where nothing is sold. */
  money: z.strictObject({
    sales: n,
    costs: z.array(z.strictObject({ what: z.string(), amount: n })),
    cost: n,
    profit: n,
    margin: maybe,
    costPerFish: maybe,
    breakEvenPrice: maybe,
    breakEvenNumber: maybe,
    leastBalance: maybe,
    swings: z.array(z.unknown()),
  }),
  odds: z.strictObject({ profit: range, least: range, gain: n, solvent: n }).optional(),
  fish: range,
  promise: n,
  hope: n,
  verdict: z.enum(VERDICTS),
  canBeMet: z.boolean(),
  findings: z.array(
    z.strictObject({ kind: z.enum(['cannot', 'care']), about: z.string(), message: z.string() }),
  ),
  short: z
    .strictObject({
      binding: z.string().optional(),
      changes: z.array(z.strictObject({ what: z.string(), gain: n })),
      tried: z.array(z.string()),
    })
    .optional(),
});

type Json = Record<string, unknown>;
const isJson = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Entries that have a usual value need not be given, nor groups of such entries. */
function eased(schema: unknown): unknown {
  if (Array.isArray(schema)) return schema.map(eased);
  if (!isJson(schema)) return schema;
  const next = Object.fromEntries(Object.entries(schema).map(([key, value]) => [key, eased(value)]));
  const { properties, required } = next;
  if (!isJson(properties) || !Array.isArray(required)) return next;
  const isNeeded = (key: unknown): boolean => {
    const about = properties[String(key)];
    return isJson(about) && !('default' in about) && !(about.type === 'object' && !('required' in about));
  };
  const needed = required.filter(isNeeded);
  const rest = Object.fromEntries(Object.entries(next).filter(([key]) => key !== 'required'));
  return needed.length > 0 ? { ...rest, required: needed } : rest;
}

/** JSON schemas of an order book and of the plan made from it. */
export const seasonSchemas = (): { readonly book: unknown; readonly plan: unknown } => ({
  book: eased(z.toJSONSchema(orderBookSchema, { io: 'output', unrepresentable: 'any' })),
  plan: z.toJSONSchema(planSchema),
});
