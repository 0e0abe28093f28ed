import { hopesOf } from '../../shared/season/batches/chance/odds';
import type { Batch, BatchSchedule } from '../../shared/season/batches/search/schedule';

/** An order that is short, and a batch of its day whose fish stand in vats as larvae and as fry until these days. */
const hoped = (larvaeTo: number, fryTo: number) => {
  const candidate = {
    day: 100,
    spans: [
      [101, 104],
      [104, 120],
    ],
  };
  const task = { candidates: [candidate], product: { survivals: [1, 1, 0.9, 0.9], nurseryDays: 0 } };
  const assumed = { frySurvival: 0.9, nurserySurvival: 0.9, gradingShare: 1, arriving: 1 };
  const holds = [
    { stage: 0, to: larvaeTo },
    { stage: 1, to: fryTo },
  ];
  const batch = { id: 1, day: 100, fixed: undefined, shares: [], holds };
  return hopesOf({ problem: { tasks: [task], assumed }, need: [500] } as unknown as BatchSchedule, [
    batch as unknown as Batch,
  ]);
};
test('an order that is short may hope for a batch whose fish stand in their last vats until it is due', () => {
  expect(hoped(104, 120)).toEqual([[{ batch: 0, scale: 1, isNursed: false }]]);
  expect(hoped(104, 119)).toEqual([[]]);
  expect(hoped(103, 120)).toEqual([[{ batch: 0, scale: 1, isNursed: false }]]);
});
