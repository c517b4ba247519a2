import type { Compilation } from "webpack";

/** What a package that is shipped says of its licence. */
export interface Shipped {
  readonly name: string;
  readonly version: string;
  /** An SPDX expression. */
  readonly licence: string | undefined;
  readonly people: readonly string[];
  readonly home: string | undefined;
  /** Licence and notice files, whole. */
  readonly texts: readonly string[];
}

export declare const ALLOWED: readonly string[];
export declare function packageFolders(compilation: Compilation): ReadonlySet<string>;
export declare function shippedPackage(folder: string): Shipped;
export declare function licenceProblems(packages: readonly Shipped[]): readonly string[];
export declare function isAllowed(expression: string): boolean;
export declare function noticesText(packages: readonly Shipped[], officeTerms: string | undefined): string;
