/** The arguments of each function, by its name. */
export type Signatures = Readonly<Record<string, string>>;

export declare function signaturesOf(metadata: {
  readonly functions: readonly {
    readonly id: string;
    readonly parameters: readonly {
      readonly name: string;
      readonly optional?: boolean;
      readonly repeating?: boolean;
    }[];
  }[];
}): Signatures;
export declare function brokenNames(released: Signatures, now: Signatures): readonly string[];
