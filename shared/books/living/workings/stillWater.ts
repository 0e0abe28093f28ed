import type { PlanFinding } from '../../../season/types';
import { dayText } from '../../../units/dates';
import type { Near } from '../../../base/near';
import type { OrderBook } from '../../../season/book/orderBook';
import { LivingPages } from '../context';
import type { BookPlan } from '../layout';
import type { TypedActuals } from '../reading/typed';
import { writtenNumber } from '../../../units/writtenNumber';

/** More new water a day than this many times the vats is more than buckets bring; chosen here, no source. */
const BY_HAND = 1;
/** Less time than this without air and nobody is there in time; chosen here, no source. */
const MINUTES = 60;

/** The day of a batch on which its vats ask most of whoever minds them. */
interface Hardest {
  readonly on: number;
  readonly litres: number;
  readonly times: number;
  readonly minutes: number;
}
export function hardestDay(pages: LivingPages, batch: LivingPages['rows']['batches'][number]): Hardest {
  let hardest: Hardest = { on: batch.feedFrom, litres: 0, times: 0, minutes: Infinity };
  for (let day = 0; day < batch.leavesOn - batch.feedFrom; day++) {
    const gone = pages.rows.shares
      .filter((share) => share.batch === batch.name && share.on <= batch.feedFrom + day)
      .reduce((sum, share) => sum + pages.partOf(share), 0);
    const of = pages.day(batch, day, gone);
    const [litres, times, minutes] = [of.number('change'), of.number('changes'), of.number('air')];
    hardest = {
      on: times > hardest.times ? batch.feedFrom + day : hardest.on,
      litres: Math.max(hardest.litres, litres),
      times: Math.max(hardest.times, times),
      minutes: Math.min(hardest.minutes, minutes),
    };
  }
  return hardest;
}

const isHard = ({ times, minutes }: Pick<Hardest, 'times' | 'minutes'>): boolean =>
  times > BY_HAND || minutes < MINUTES;

/** What the vats of a plan ask for beyond buckets and a night's sleep: new water a day, minutes without air. */
export function stillWater(pages: LivingPages): PlanFinding[] {
  return pages.rows.batches
    .filter(({ state }) => state !== 'over' && state !== 'lost')
    .flatMap((batch): PlanFinding[] => {
      const hardest = hardestDay(pages, batch);
      if (!isHard(hardest)) return [];
      const { on, litres, times, minutes } = hardest;
      const water = `${writtenNumber(Math.round(litres))} L of new water a day, ${writtenNumber(times, 1)} times their vats, by ${dayText(on)}`;
      const air = `without air somebody must act within ${writtenNumber(Math.round(minutes))} minutes`;
      return [
        {
          kind: 'care',
          about: 'vats',
          message: `${batch.name}: its fish ask for ${water}; ${air}. Plan flow or more vats, and try the backup power.`,
        },
      ];
    });
}

/** The same of a book and a plan. */
export const asksOfVats = (book: OrderBook, plan: BookPlan, typed?: TypedActuals): PlanFinding[] =>
  stillWater(new LivingPages(book, plan, typed));

export const NEAR: readonly Near[] = [
  {
    number: 'new water that buckets bring, times the vats a day',
    value: BY_HAND,
    below: () => isHard({ times: 0.99, minutes: 600 }),
    above: () => isHard({ times: 1.01, minutes: 600 }),
    answers: [false, true],
  },
  {
    number: 'minutes without air that leave time to come',
    value: MINUTES,
    below: () => isHard({ times: 0, minutes: 59 }),
    above: () => isHard({ times: 0, minutes: 61 }),
    answers: [true, false],
  },
];
