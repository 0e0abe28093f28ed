/**
 * An implicit-intersection sign before a function and the file format's own prefixes mean nothing to the
 * engine.
 */
export const cleanFormula = (formula: string): string =>
  /[@_]/.test(formula)
    ? formula.replace(/@(?=[A-Za-z_][\w.]*\()/g, '').replace(/_xlfn\.(_xlws\.)?/gi, '')
    : formula;
