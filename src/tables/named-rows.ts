type Words<S extends string> = S extends `${infer First} ${infer Rest}`
  ? readonly [First, ...Words<Rest>]
  : readonly [S];

type Named<C extends readonly string[], T extends readonly unknown[]> = {
  readonly [I in keyof C as I extends `${number}` ? C[I] & string : never]: I extends keyof T ? T[I] : never;
};

/** The rows of a printed table as records. The heading names the columns, a space between, in the order of each row. */
export function namedRows<const H extends string, T extends readonly [unknown, ...unknown[]]>(
  heading: H,
  rows: readonly (T & { readonly length: Words<H>["length"] })[],
): readonly Named<Words<H>, T>[] {
  const names = heading.split(" ");
  return rows.map((row) => Object.fromEntries(names.map((name, i) => [name, row[i]])) as Named<Words<H>, T>);
}
