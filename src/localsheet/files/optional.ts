/** { key: value }, or nothing when there is no value: optional properties stay absent. */
export const given = <K extends string, V>(
  key: K,
  value: V | undefined | null | '' | false,
): { readonly [P in K]?: V } =>
  (value === undefined || value === null || value === '' || value === false ? {} : { [key]: value }) as {
    readonly [P in K]?: V;
  };
