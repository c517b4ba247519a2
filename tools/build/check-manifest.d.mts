/** What was built: the folder it will be served from, and its files by their paths in that. */
export interface Built {
  readonly base: string;
  readonly file: (path: string) => Uint8Array | undefined;
}

export declare function manifestProblems(xml: string, built?: Built): readonly string[];
export declare function manifestNamespace(xml: string): string | undefined;
