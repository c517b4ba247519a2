export declare const READ: readonly string[];
export declare const VARIABLES: readonly string[];
export declare function buildStamp(
  root: string,
  environment: Readonly<Record<string, string | undefined>>,
): { readonly isCurrent: () => boolean; readonly drop: () => void; readonly keep: () => void };
