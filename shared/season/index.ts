export { VAT_STAGES, orderBookSchema, readOrderBook } from './orderBook';
export type { BookFault, BookedOrder, OrderBook, OrderBookInput, VatStageKey } from './orderBook';
export { planSeasonBook, planSeasonSteps } from './seasonBook';
export type { PlanOptions } from './seasonBook';
export type {
  Change,
  FeedingRow,
  Goods,
  PlannedOrder,
  PlannedRun,
  Purchase,
  SeasonBook,
  SeasonFinding,
  SeasonMoney,
  Shortfall,
  VatStay,
} from './result';
export { orderBookWorkbook } from './book';
export { compareSeasons } from './compare';
export type { PlanBefore, SeasonChange } from './compare';
export { readSeason, seasonSheetNames, seasonsIn } from './again';
export type { BookInput, SeasonReading } from './again';
export { ownFigures } from './ownFigures';
export type { OwnFigures } from './ownFigures';
