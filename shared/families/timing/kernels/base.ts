/** Base temperature of African catfish embryos and larvae, °C (PROKES15). */
export const CLARIAS_BASE = 15.4;
