export declare const HEADER_RULES: readonly {
  readonly paths: string;
  readonly fits: RegExp;
  readonly headers: Readonly<Record<string, string>>;
}[];
export declare function headersOf(path: string): Readonly<Record<string, string>>;
