import { CATALOGUE } from '../shared/catalogue';
import { lastErrors } from './lastErrors';
import { registerAll } from './register';

// The bundle Excel loads for calculation, and the pane page with it: one runtime serves both.
registerAll(CATALOGUE, CustomFunctions as unknown as Parameters<typeof registerAll>[1], lastErrors());
