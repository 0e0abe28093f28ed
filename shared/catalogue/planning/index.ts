import type { SheetFunction } from '../define';
import { chainEnd, chainStart } from './chain';

export const planningFunctions: readonly SheetFunction[] = [chainStart, chainEnd];
