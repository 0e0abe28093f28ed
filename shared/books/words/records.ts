import { fr } from './fr';
import { recordPhrases as frRecords } from './frRecords';
import { CHECK_SHEETS } from './sheetNames';
import type { BookWords } from './words';

/** What the check of records, the rates and the trends write: the words of the books in a language and more. */
export const RECORD_LANGUAGES: Readonly<Record<string, BookWords>> = {
  fr: {
    ...fr,
    sheets: { ...fr.sheets, ...CHECK_SHEETS.fr },
    phrases: { ...frRecords, ...fr.phrases },
  },
};
