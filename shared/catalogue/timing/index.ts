import type { SheetFunction } from '../define';

export const timingFunctions: readonly SheetFunction[] = [];
