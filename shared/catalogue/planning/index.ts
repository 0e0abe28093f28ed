import type { SheetFunction } from '../define';

export const planningFunctions: readonly SheetFunction[] = [];
