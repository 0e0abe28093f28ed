// Long: one list of cases, each with the small book it needs
import type { Near } from '../../base/near';
import { drawSeasons } from '../batches/chance/odds';
import type { BatchProblem, PlanOn } from '../batches/problem';
import { batchProblemOf } from '../batches/problem';
import type { BatchSchedule } from '../batches/search/schedule';
import { emptyBatches } from '../batches/search/schedule';
import { search, worthOf } from '../batches/search/search';
import { isMetTask, serve, serveInTurns } from '../batches/search/serve';
import { TODAY, many, smallBook } from './small';

/**
 * Plans the search finds at the edge of its numbers. Where chance decides, the seed is one whose chance falls just
 * below or just above the number.
 */

const problem = (orders: number, vats: number, females: number): BatchProblem =>
  batchProblemOf(
    smallBook({
      vats: many(vats, (i) => ({ name: `V${i}`, litres: 400 + 50 * i })),
      females: many(females, (i) => ({ tag: `F${i}`, kilograms: 0.4 + 0.05 * i, family: `${i % 3}` })),
      males: many(females, (i) => ({ tag: `M${i}`, family: `${i % 4}` })),
      orders: many(orders, (i) => ({
        name: `O${i}`,
        product: i % 2 === 1 ? 'fry' : 'fingerlings',
        number: 2000 + 700 * ((7 * i) % 5),
        due: TODAY + (i % 2 === 1 ? 68 : 96) + 2 * i,
      })),
    }),
  ).problem;
/** Nights of a plan, as days from now, with females and fish. */
const nightsOf = ({ batches }: BatchSchedule): string =>
  [...batches.values()]
    .map(({ day, pairs, shares }) => {
      const fish = shares.reduce((sum, share) => sum + share.fish, 0);
      return `${day - TODAY}: ${pairs.length} ♀, ${Math.round(fish)}`;
    })
    .sort()
    .join('; ');
const found = (orders: number, seed: number, mostTries: number): string =>
  nightsOf(
    search(orders < 10 ? problem(orders, 4, 5) : problem(orders, 5, 6), {
      looks: 1e6,
      mostTries,
      seed,
      sequences: 1,
    }),
  );
/** One try of the search, as chance has it under a seed. */
const oneTry = (seed: number): string => found(10, seed, 1);

/** A schedule in which two orders of 1000 still lack so many fish: what it is worth. */
const worth = (...need: readonly number[]): number =>
  worthOf({
    problem: { tasks: [lacking(1000), lacking(1000)] },
    need,
    batches: new Map(),
  } as unknown as BatchSchedule);
const lacking = (wanted: number): object => ({ value: 1, wanted });
/** One order whole and 500 fish lacking of the other, or so many fish lacking in all and neither whole. */
const better = (lack: number): string => (worth(0, 500) > worth(lack / 2, lack / 2) ? 'whole' : 'more fish');
const isMet = (wanted: number, need: number): boolean =>
  isMetTask({ problem: { tasks: [{ wanted }] }, need: [need] } as unknown as BatchSchedule, 0);

const hatchery = (number: number, changes: object, planOn: PlanOn = 'certainty'): BatchSchedule =>
  emptyBatches(
    batchProblemOf(
      smallBook({ orders: [{ name: 'Pond', product: 'fry', number, due: TODAY + 68 }], ...changes }),
      planOn,
    ).problem,
  );
/** Fish a tiny female gives an order. */
function fromTiny(number: number): string {
  const schedule = hatchery(number, { females: [{ tag: 'F1', kilograms: 0.1 }], certainty: 0.5 });
  serve(schedule, 0);
  return nightsOf(schedule);
}
/** Nights for an order of which this part of a fish is left to find. */
function lastOf(need: number): string {
  const schedule = hatchery(5000, {});
  schedule.need[0] = need;
  serve(schedule, 0);
  return nightsOf(schedule);
}
const FARM = {
  females: many(40, (i) => ({ tag: `F${i}`, kilograms: 0.5 })),
  males: many(40, (i) => ({ tag: `M${i}` })),
  vats: many(40, (i) => ({ name: `V${i}`, litres: 2000 })),
  holdDays: 40,
};
/** Nights for an order of so many fish, one female a night. */
function oneANight(number: number): number {
  const schedule = hatchery(number, { ...FARM, staff: { femalesPerDay: 1 } }, 'mean');
  serve(schedule, 0);
  return schedule.batches.size;
}
/** Females for an order of so many fish, where orders are served in turns, a female at a time. */
function inTurns(number: number): number {
  const schedule = hatchery(number, { ...FARM, staff: { femalesPerDay: 40 } }, 'mean');
  serveInTurns(schedule, [0]);
  return [...schedule.batches.values()].reduce((sum, { pairs }) => sum + pairs.length, 0);
}
/** Seasons in a hundred that bring an order the fish another leaves, where its plan lacks this part of a fish. */
function leftFor(need: number): number {
  const orders = many(2, (i) => ({ name: `O${i}`, product: 'fry', number: 3000, due: TODAY + 68 }));
  const book = smallBook({ orders });
  const schedule = emptyBatches(batchProblemOf(book).problem);
  serve(schedule, 0);
  schedule.need[1] = need;
  return [...(drawSeasons(book, schedule, 100, 1).orders[1] ?? [])].filter((n) => n > 2999.5).length;
}

export const NEAR: readonly Near[] = [
  {
    number: 'Share of the worth of all orders that whole orders are worth more',
    value: 0.004,
    below: () => better(496.2),
    above: () => better(495.8),
    answers: ['whole', 'more fish'],
  },
  {
    number: 'Part of an order that may lack by rounding',
    value: 1e-5,
    below: () => isMet(5_000_000, 48),
    above: () => isMet(5_000_000, 53),
    answers: [true, false],
  },
  {
    number: 'Part of a fish that may lack of an order',
    value: 0.5,
    below: () => isMet(1000, 0.48),
    above: () => isMet(1000, 0.54),
    answers: [true, false],
  },
  {
    number: 'Part of an order that a female must give',
    value: 0.01,
    below: () => fromTiny(105_000),
    above: () => fromTiny(96_000),
    answers: ['', '53: 1 ♀, 1000'],
  },
  {
    number: 'Part of a fish for which no female is stripped',
    value: 0.5,
    below: () => lastOf(0.48),
    above: () => lastOf(0.53),
    answers: ['', '53: 1 ♀, 1'],
  },
  {
    number: 'Times eight nights that an order is given at the most',
    value: 2,
    below: () => oneANight(66_000),
    above: () => oneANight(112_000),
    answers: [12, 16],
  },
  {
    number: 'Times eight turns in which orders are given a female each',
    value: 2,
    below: () => inTurns(66_000),
    above: () => inTurns(112_000),
    answers: [12, 16],
  },
  {
    number: 'Part of a fish for which no fish of others are hoped for',
    value: 0.5,
    below: () => leftFor(0.48),
    above: () => leftFor(0.53),
    answers: [0, 64],
  },
  {
    number: 'Short orders that are tried anew with those whose batch is taken out',
    value: 12,
    below: () => found(20, 31, 1),
    above: () => found(20, 25, 1),
    answers: ['55: 2 ♀, 6112; 69: 2 ♀, 4360; 75: 2 ♀, 5647', '57: 2 ♀, 4772; 65: 2 ♀, 5561; 69: 2 ♀, 4526'],
  },
  {
    number: 'Chance that many batches are taken out',
    value: 0.3,
    below: () => oneTry(158),
    above: () => oneTry(193),
    answers: [
      '55: 2 ♀, 6112; 61: 1 ♀, 2218; 67: 3 ♀, 7457',
      '55: 2 ♀, 6112; 61: 1 ♀, 2218; 65: 2 ♀, 4899; 69: 1 ♀, 1605',
    ],
  },
  {
    number: 'Chance that orders are served in any sequence',
    value: 0.4,
    below: () => oneTry(178),
    above: () => oneTry(150),
    answers: [
      '55: 2 ♀, 6112; 65: 3 ♀, 7295; 69: 1 ♀, 1605',
      '55: 2 ♀, 6112; 61: 1 ♀, 2218; 65: 2 ♀, 4899; 69: 1 ♀, 1605',
    ],
  },
  {
    number: 'Chance that the order it is about comes first',
    value: 0.5,
    below: () => oneTry(417),
    above: () => oneTry(92),
    answers: [
      '55: 2 ♀, 6112; 61: 1 ♀, 2218; 63: 1 ♀, 1605; 67: 2 ♀, 4941',
      '55: 2 ♀, 6112; 65: 2 ♀, 4899; 69: 2 ♀, 4857',
    ],
  },
  {
    number: 'Chance that an order keeps its place by its day',
    value: 0.5,
    below: () => oneTry(29),
    above: () => oneTry(85),
    answers: ['55: 2 ♀, 6112; 61: 1 ♀, 2218; 65: 3 ♀, 6616', '55: 3 ♀, 7707; 61: 1 ♀, 2096; 67: 2 ♀, 5411'],
  },
  {
    number: 'Chance that it is about an order that is short',
    value: 0.7,
    below: () => oneTry(5),
    above: () => oneTry(13),
    answers: ['55: 2 ♀, 6112; 61: 1 ♀, 2218; 65: 2 ♀, 4899; 69: 1 ♀, 1605', '55: 4 ♀, 10492; 65: 2 ♀, 4899'],
  },
  {
    number: 'Chance that nothing strays from the usual choice',
    value: 0.3,
    below: () => oneTry(89),
    above: () => oneTry(9),
    answers: [
      '55: 2 ♀, 6112; 61: 1 ♀, 2218; 65: 3 ♀, 6616',
      '55: 2 ♀, 6112; 61: 1 ♀, 2218; 65: 2 ♀, 4899; 70: 1 ♀, 1605',
    ],
  },
  {
    number: 'Chance that orders are served in turns',
    value: 0.4,
    below: () => oneTry(30),
    above: () => oneTry(225),
    answers: ['55: 2 ♀, 6112; 61: 1 ♀, 2218; 65: 2 ♀, 4899; 69: 1 ♀, 1605', '55: 4 ♀, 10848; 67: 2 ♀, 4470'],
  },
  {
    number: 'Chance that a few females are the best givers',
    value: 0.5,
    below: () => oneTry(635),
    above: () => oneTry(1371),
    answers: [
      '55: 2 ♀, 6112; 61: 2 ♀, 4233; 65: 2 ♀, 4899',
      '55: 2 ♀, 6112; 61: 1 ♀, 2218; 65: 2 ♀, 4899; 69: 1 ♀, 1605',
    ],
  },
  {
    number: 'Orders of a small book, searched twice',
    value: 8,
    below: () => found(8, 2, 10),
    above: () => found(9, 3, 10),
    answers: ['55: 3 ♀, 7537; 64: 2 ♀, 5064', '55: 2 ♀, 4470; 65: 3 ♀, 7635'],
  },
  {
    number: 'Share of the worth of all orders that a step may be worse by at the beginning',
    value: 0.01,
    below: () => found(10, 12, 70),
    above: () => found(10, 19, 70),
    answers: ['54: 3 ♀, 7537; 67: 3 ♀, 8933', '55: 2 ♀, 6278; 67: 4 ♀, 10322'],
  },
  {
    number: 'Tries that bring nothing, until the search goes back to the best',
    value: 60,
    below: () => found(10, 4, 70),
    above: () => found(10, 46, 70),
    answers: ['55: 2 ♀, 5647; 62: 2 ♀, 6117; 67: 2 ♀, 4470', '55: 2 ♀, 6112; 65: 2 ♀, 4899; 69: 2 ♀, 4857'],
  },
];
