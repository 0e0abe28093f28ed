import { COMPUTING } from '../../shared/catalogue/computing';
import { GUIDE_IDS } from '../../shared/catalogue/guideIds';
import { lastErrors } from './lastErrors';
import type { Host } from './register';
import { registerAll, registerLater } from './register';

// The bundle Excel loads for calculation, and the pane page with it: one runtime serves both. Where Office is
// absent (the pane
// alone in a browser) there is nothing to register with.
if (typeof CustomFunctions !== 'undefined') {
  const host = CustomFunctions as unknown as Host;
  // The local sheet keeps blanks blank (tests/src/localsheet/functions.test.ts): nothing need be asked there.
  if (host.prepare) lastErrors().sawBlank('kept');
  registerAll(COMPUTING, host, lastErrors());
  registerLater(
    GUIDE_IDS,
    async () => (await import('../../shared/catalogue/guides')).GUIDES,
    host,
    lastErrors(),
  );
}
