export interface Hosting {
  /** The folder the add-in is served from, ending in "/". */
  readonly base: string;
  readonly isLocal: boolean;
  readonly isOfficeOwn: boolean;
  /** Where a page finds office.js. */
  readonly officeScript: string;
  /** "1.0.0.471": that of the package, then the number of the build. */
  readonly version: string;
  readonly supportAddress: string;
  readonly hasOwnSupport: boolean;
}

export declare const DEVELOPMENT_BASE: string;
export declare const HOSTING_VARIABLES: readonly string[];
export declare function hostingOf(
  environment: Readonly<Record<string, string | undefined>>,
  packageVersion: string,
): Hosting;
