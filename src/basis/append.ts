/** Adds a list to another, however long it is: as many arguments as a long column has rows overflow the call stack. */
export function append<T>(to: T[], more: readonly T[]): void {
  for (const one of more) to.push(one);
}
