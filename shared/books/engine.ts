/** Planning and the living book together: what the pane loads when a plan is first asked for. */
export { planBatches, planBatchesSteps } from '../season/batches';
export type { BatchOptions } from '../season/batches';
export { readOrderBook } from '../season/book/orderBook';
export { ownFigures } from '../season/book/ownFigures';
export {
  asOf,
  bookSheetNames,
  booksIn,
  cardsWorkbook,
  changesOf,
  livingBook,
  readBook,
  wordsOfBook,
} from './living';
export type { BookChange, BookPlan, BookRead, BookState, TypedActuals } from './living';
export { asksOfVats } from './living/workings/stillWater';
export { bookPlanOf, packState, unpackState } from './living/reading/keep';
export { isSameBook, withStrays } from './living/reading/strays';
export { BOOK_LANGUAGES } from './words';
export { remarkIn } from './words/words';
