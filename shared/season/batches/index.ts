export { planBatches, planBatchesSteps } from './plan';
export type { BatchOptions } from './plan';
export { liveShare, standingOf } from './alive';
export type { BatchStanding } from './alive';
export { deliveredTo } from './problem';
export { carriedOver, standsFrom } from './carry';
