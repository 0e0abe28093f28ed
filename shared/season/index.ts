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
export { orderBookWorkbook } from '../books/season';
export { compareSeasons } from './compare';
export type { PlanBefore, SeasonChange } from './compare';
export { readSeason, seasonSheetNames, seasonsIn } from '../books/season/again/again';
export type { BookInput, SeasonReading } from '../books/season/again/again';
export { ownFigures } from './ownFigures';
export type { OwnFigures } from './ownFigures';
