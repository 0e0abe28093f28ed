/** Codes of the published error list that this stand-in can answer with. */
export type FailureCode =
  | 'ItemNotFound'
  | 'ItemAlreadyExists'
  | 'AccessDenied'
  | 'InvalidArgument'
  | 'InvalidOperation'
  | 'InvalidObjectPath'
  | 'ApiNotFound'
  | 'NotImplemented'
  | 'FormulaLengthExceedsLimit'
  | 'GeneralException';

/** A refusal in the middle of a batch: actions before it stay done, later ones are not run. */
export class ApiFailure extends Error {
  constructor(
    readonly code: FailureCode,
    message: string,
  ) {
    super(message);
  }
}

export const fail = (code: FailureCode, message: string): never => {
  throw new ApiFailure(code, message);
};
