import type { LineKey } from "../duty-text.ts";
import type { FieldKey } from "../fields.ts";
import type { SaidAmount } from "./amounts.ts";

/** What a part of a sentence says. */
export type Said =
  | { readonly what: "field"; readonly key: FieldKey; readonly text: string }
  | { readonly what: "flow"; readonly amount: SaidAmount; readonly of: "each" | "all" | undefined }
  | { readonly what: "pumps"; readonly count: number; readonly arrangement: "series" | "parallel" | undefined }
  | { readonly what: "height"; readonly kind: Height; readonly amount: SaidAmount }
  | { readonly what: "liquid"; readonly text: string; readonly temperature: string | undefined }
  | { readonly what: "run"; readonly pipe: string; readonly length: SaidAmount; readonly line: LineKey }
  | { readonly what: "pipe"; readonly pipe: string; readonly line: LineKey }
  | { readonly what: "length"; readonly length: SaidAmount }
  | { readonly what: "fittings"; readonly text: string; readonly line: LineKey | undefined }
  | { readonly what: "side"; readonly line: LineKey }
  | { readonly what: "refused"; readonly remark: string; readonly instead: readonly string[]; readonly isRun?: true };

/**
 * lift: of the pump above the source. flooded: of the source above the pump. rise, drop: of the delivery from the pump. static:
 * of the delivery above the source. either: a lift that may be of the pump or of the whole.
 */
export type Height =
  | "lift"
  | "either"
  | "flooded"
  | "rise"
  | "drop"
  | "static"
  | "source level"
  | "pump level"
  | "delivery level";

/** A part of a sentence and what it says. */
export interface SaidPart {
  readonly from: number;
  readonly to: number;
  readonly said: Said;
}

/** As many letters of a text as were read, and what they say. */
export interface ReadPart {
  readonly length: number;
  readonly said: Said;
}
