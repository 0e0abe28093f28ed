import { CATALOGUE } from '../../shared/catalogue';
import { lastErrors } from './lastErrors';
import type { Host } from './register';
import { registerAll } from './register';

// The bundle Excel loads for calculation, and the pane page with it: one runtime serves both. Where Office is
// absent (the pane
// alone in a browser) there is nothing to register with.
if (typeof CustomFunctions !== 'undefined')
  registerAll(CATALOGUE, CustomFunctions as unknown as Host, lastErrors());
