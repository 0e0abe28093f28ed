/** Settings after one was put or, with undefined, taken away. */
export function withSetting(
  settings: Readonly<Record<string, unknown>>,
  key: string,
  value: unknown,
): Readonly<Record<string, unknown>> {
  const others = Object.entries(settings).filter(([name]) => name !== key);
  return Object.fromEntries(value === undefined ? others : [...others, [key, value]]);
}
