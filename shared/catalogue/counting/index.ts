import type { SheetFunction } from '../define';

export const countingFunctions: readonly SheetFunction[] = [];
