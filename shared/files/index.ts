export { isUnreadable, readXlsx } from './read';
export type { ReadResult } from './read';
export { writeXlsx } from './write';
export { lostInFile } from './write/lost';
