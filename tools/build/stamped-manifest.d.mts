import type { Hosting } from "./hosting.mjs";

export declare function stampedManifest(
  xml: string,
  hosting: Pick<Hosting, "base" | "version" | "supportAddress">,
): string;
