import { appendFileSync } from 'node:fs';

/**
 * Half a unit of the last printed digit: the tolerance belongs to the printed value, not to the test's
 * author.
 */
export const printedTolerance = (printed: string): number => {
  const [, mantissa = '', exponent = '0'] =
    /^[+-]?([\d.]+)(?:e([+-]?\d+))?$/i.exec(printed.replaceAll(',', '')) ?? [];
  const decimals = mantissa.includes('.') ? mantissa.length - mantissa.indexOf('.') - 1 : 0;
  return 0.5 * 10 ** (Number(exponent) - decimals) * (1 + 1e-9);
};

export const agreesWithPrinted = (got: unknown, printed: string): boolean => {
  const expected = Number(printed.replaceAll(',', ''));
  return printed.trim() !== '' && Number.isFinite(expected) && typeof got === 'number'
    ? Math.abs(got - expected) <= printedTolerance(printed)
    : String(got) === printed;
};

/**
 * `npm run trust` runs the reference tests with PRINTED_LOG and keeps every comparison, so that the page on how
 * far to trust the numbers shows what was printed beside what we give.
 */
function noted(got: unknown, printed: string, agrees: boolean): void {
  const log = process.env['PRINTED_LOG'];
  if (!log) return;
  const { testPath, currentTestName } = expect.getState();
  const test = (testPath ?? '').replace(/^.*\/tests\//, 'tests/');
  appendFileSync(log, `${JSON.stringify({ test, name: currentTestName, printed, got, agrees })}\n`);
}

expect.extend({
  toAgreeWithPrinted(received: unknown, printed: string) {
    const pass = agreesWithPrinted(received, printed);
    noted(received, printed, pass);
    return {
      pass,
      message: () =>
        `expected ${String(received)} ${pass ? 'not ' : ''}to agree with the printed value ${printed}`,
    };
  },
});

declare global {
  // eslint-disable-next-line @typescript-eslint/no-namespace -- jest's own way to add a matcher
  namespace jest {
    interface Matchers<R> {
      toAgreeWithPrinted(printed: string): R;
    }
  }
}
