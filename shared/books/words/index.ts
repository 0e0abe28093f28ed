import { fr } from './fr';
import type { BookWords } from './words';

/** Languages that books are written in beside English, by their code; another is one more file and one more line. */
export const BOOK_LANGUAGES: Readonly<Record<string, BookWords>> = { fr };
