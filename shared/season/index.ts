export { readOrderBook } from './orderBook';
export type { BookFault, BookedOrder, OrderBook, OrderBookInput, VatStageKey } from './orderBook';
export { planBatches, planBatchesSteps } from './batches';
export type { BatchOptions } from './batches';
export { ownFigures } from './ownFigures';
export type { OwnFigures } from './ownFigures';
