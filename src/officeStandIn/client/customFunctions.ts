/** What a bundle of functions registers with: Excel's CustomFunctions, with a map behind it. */

type Body = (...args: unknown[]) => unknown;

export class CustomFunctionError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message ?? '');
  }
}
const ERROR_CODE = {
  invalidValue: '#VALUE!',
  notAvailable: '#N/A',
  divisionByZero: '#DIV/0!',
  invalidNumber: '#NUM!',
  nullReference: '#NULL!',
  invalidName: '#NAME?',
  invalidReference: '#REF!',
} as const;

/** Functions as registered, by id in capitals: the calculation engine calls these. */
export type Registry = Map<string, Body>;

/**
 * `later` takes what fetches code that comes after the first: whoever calculates here waits for all of it, because
 * a cell cannot wait for a promise.
 */
export function customFunctions(registry: Registry, later: (() => Promise<void>)[] = []) {
  const put = (id: string, body: Body): void => {
    registry.set(id.toUpperCase(), body);
  };
  return {
    Error: CustomFunctionError,
    ErrorCode: ERROR_CODE,
    prepare(fetchAll: () => Promise<void>): void {
      later.push(fetchAll);
    },
    associate(id: string | Readonly<Record<string, Body>>, body?: Body): void {
      if (typeof id === 'string') {
        if (body) put(id, body);
      } else for (const [name, one] of Object.entries(id)) put(name, one);
    },
  };
}
