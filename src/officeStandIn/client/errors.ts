/** What calls reject with: the code says which refusal it is, the message is for developers. */
export class OfficeError extends Error {
  override readonly name = 'RichApi.Error';
  readonly traceMessages: readonly string[] = [];
  readonly debugInfo: { readonly code: string; readonly message: string; readonly errorLocation: string };

  constructor(
    readonly code: string,
    message: string,
    errorLocation = '',
  ) {
    super(message);
    this.debugInfo = { code, message, errorLocation };
  }
}

export const notLoaded = (type: string, name: string): OfficeError =>
  new OfficeError(
    'PropertyNotLoaded',
    `'${name}' has not been loaded: call load("${name}") on the object and wait for context.sync() before reading it.`,
    `${type}.${name}`,
  );
