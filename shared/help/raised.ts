import type { FindingCode } from "../../src/basis/finding-code.ts";
import type { FindingKind } from "../../src/basis/result.ts";

/** The findings that something can raise, each with the kinds it is raised as; none where it is said in the answer. */
export type RaisedBy = { readonly [C in FindingCode]?: readonly FindingKind[] };

/** What the sources tell of findings, as tools/build/raised-findings.mjs reads it. */
export interface Raised {
  /** By the id of the function. */
  readonly own: Readonly<Record<string, RaisedBy>>;
  /** What the reading of any call can raise. */
  readonly common: RaisedBy;
}

export function codesOf(raised: RaisedBy): readonly (readonly [FindingCode, readonly FindingKind[]])[] {
  return Object.entries(raised) as unknown as readonly (readonly [FindingCode, readonly FindingKind[]])[];
}

/** What the build reads for the pages beside the catalogue. */
export interface HelpSources {
  readonly raised: Raised;
  /** docs/terms.md as it stands. */
  readonly terms: string;
}
