export { readOrderBook } from './book/orderBook';
export type { BookFault, BookedOrder, OrderBook, OrderBookInput, VatStageKey } from './book/orderBook';
export { planBatches, planBatchesSteps } from './batches';
export type { BatchOptions } from './batches';
export { ownFigures } from './book/ownFigures';
export type { OwnFigures } from './book/ownFigures';
