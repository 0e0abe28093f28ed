import type { Package } from './package';
export const removePersonal = (pack: Package): string[] => (pack ? [] : []);
export const whatIsLeft = (pack: Package): string[] => (pack ? [] : []);
