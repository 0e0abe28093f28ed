import { VAT_STAGES } from '../../figures/stages';
import { addStay, chooseVats } from '../../vats';
import type { Batch, BatchSchedule } from './schedule';
import { copyOf, freeVats, fromOf, hasBegun, litresHeld, litresNeeded } from './schedule';

/**
 * The plan counts on the closest the fish may stand; where vats stand free they are spread. Twice the water: eggs
 * then lie 240 in a litre instead of 480 (YONG08: hatch falls as eggs lie closer), larvae swim 50 instead of 100
 * (MAKERERE: 88 % alive at 50, 64 % at 150), fry are nursed 25 instead of 50.
 */
const SPARSER = 2;

/** Water for all eggs or larvae its females give on average, those nobody ordered among them, at their closest. */
function litresOfAll({ problem }: BatchSchedule, batch: Batch, stage: number): number {
  const a = problem.assumed;
  const eggs = batch.eggs * (batch.shares[0]?.candidate.eggFactor ?? 1);
  return [eggs / a.eggsPerLitre, (eggs * a.hatch * a.yolkSurvival) / a.larvaePerLitre, 0][stage] ?? 0;
}

/** More vats for a stage of a batch, as long as any stand free from its beginning to its end. */
function spreadStage(schedule: BatchSchedule, batch: Batch, stage: number): void {
  const held = batch.holds.filter((hold) => hold.stage === stage);
  const from = fromOf(batch, stage);
  if (held.length === 0 || from === undefined || hasBegun(batch, stage)) return;
  const to = Math.max(...held.map((hold) => hold.to));
  const closest = Math.max(litresNeeded(schedule, batch, stage), litresOfAll(schedule, batch, stage));
  const missing = SPARSER * closest - litresHeld(schedule, batch, stage);
  if (missing <= 0) return;
  const taken = new Set(held.map(({ vat }) => vat));
  const free = freeVats(schedule, batch.id, stage, from, to).filter((vat) => !taken.has(vat));
  for (const vat of chooseVats(schedule.problem.vats, free, missing) ?? free) {
    batch.holds = [...batch.holds, { stage, vat, from, to }];
    addStay(schedule.occupancy[vat] ?? [], { from, to, run: batch.id });
  }
}

/** A found schedule with its fish spread over the vats nobody needs: fry first, who foul their water most. */
export function spreadOut(found: BatchSchedule): BatchSchedule {
  if (found.problem.without === 'vats') return found;
  const schedule = copyOf(found);
  const batches = [...schedule.batches.values()].sort((a, b) => a.day - b.day);
  for (let stage = VAT_STAGES.length - 1; stage >= 0; stage--)
    for (const batch of batches) spreadStage(schedule, batch, stage);
  return schedule;
}
