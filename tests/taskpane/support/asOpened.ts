import { initialState } from '../../../taskpane/pane/keeping/state';
import { setHostLanguage, speak, wordsFor } from '../../../taskpane/words/words';

/** The language and numbers of a pane just opened: a file that runs after others finds what it would find alone. */
export function asOpened(): void {
  const state = initialState(0, 'today');
  setHostLanguage('en');
  void speak(state);
  wordsFor(state);
}
