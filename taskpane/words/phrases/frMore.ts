import { recordPhrases } from '../../../shared/books/words/frRecords';
import type { Phrases } from '../../pane/phrases';
import { errorPhrases } from './errorsFr';
import { functionPhrases } from './functionsFr';
import { howPhrases } from './howFr';
import { sharePhrases } from './shareFr';

/** French of the places that are opened seldom: findings, rates and trends, shared copies, help of functions. */
export const phrases: Phrases = {
  ...errorPhrases,
  ...functionPhrases,
  ...howPhrases,
  ...recordPhrases,
  ...sharePhrases,
};
