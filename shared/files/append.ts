/** Adds many at once; spreading them into push() would overflow the stack from about a hundred thousand on. */
export function append<T>(list: T[], more: readonly T[]): void {
  for (const one of more) list.push(one);
}
