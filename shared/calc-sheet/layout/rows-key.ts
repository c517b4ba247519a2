/** The key under which the rows of a table of inputs are kept, headings apart. */
export function rowsKey(of: string): string {
  return `${of}.rows`;
}
