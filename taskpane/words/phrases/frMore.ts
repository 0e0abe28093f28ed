import { recordPhrases } from '../../../shared/books/words/frRecords';
import type { Phrases } from '../../pane/phrases';
import { functionPhrases } from './functionsFr';
import { sharePhrases } from './shareFr';

/** French of the places that are opened seldom: findings, rates and trends, shared copies, help of functions. */
export const phrases: Phrases = { ...functionPhrases, ...recordPhrases, ...sharePhrases };
