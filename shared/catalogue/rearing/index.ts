import type { SheetFunction } from '../define';

export const rearingFunctions: readonly SheetFunction[] = [];
