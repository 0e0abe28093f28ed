import type { SheetFunction } from '../define';

export const broodFunctions: readonly SheetFunction[] = [];
