import { CLOCK_LINES } from './clock';
import { DAY_LINES } from './days';
import { FISH_LINES } from './fish';
import { LineTable } from './read';
import { WATER_LINES } from './water';

export type { Given, Line } from './declare';
export { filled } from './declare';
export { RUN_GIVEN } from './given';
export type { GivenKey } from './given';
export { LineReader, LineTable } from './read';
export { CLOCK_LINES, DAY_LINES, FISH_LINES, WATER_LINES };

/** Every figure of a run. */
export const RUN_LINES = { ...CLOCK_LINES, ...FISH_LINES, ...WATER_LINES } as const;
export type RunLineKey = keyof typeof RUN_LINES;
/** Every figure of a run on a day. */
export type DayLineKey = keyof typeof DAY_LINES;

export const runLines = new LineTable<RunLineKey>(RUN_LINES);
export const dayLines = new LineTable<DayLineKey>(DAY_LINES);
