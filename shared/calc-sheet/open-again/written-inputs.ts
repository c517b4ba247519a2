import * as v from "valibot";
import { type Quantity, UNIT_SETS } from "../../../src/basis/quantities.ts";
import type { Scalar } from "../../cells/cell.ts";
import { type WrittenBlock, writtenBlock } from "./written-blocks.ts";

/** A sheet that holds inputs. */
export type InputSheet = "duty" | "estimate";

/** A named cell that was written as an input. */
export interface WrittenBox {
  readonly sheet: InputSheet;
  readonly name: string;
  readonly label: string;
  /** The box it comes of, as placeKey has it; left out where the duty has none: nothing typed there can be taken over. */
  readonly place?: string;
  readonly written: Scalar;
  readonly quantity?: Quantity;
  /** What stands in its row under BASIS_NAME, where that is an input too. */
  readonly basis?: string;
}

/** A named range of inputs: a row each, the headings above them inside it where it has any. */
export interface WrittenTable {
  readonly sheet: InputSheet;
  readonly name: string;
  readonly label: string;
  /** What the keys of its places begin with: "suctionLine", "pump.points", "cases". */
  readonly of: string;
  readonly headings: 0 | 1;
  /** Its columns from the left, by the last part of the key. */
  readonly columns: readonly { readonly key: string; readonly label: string; readonly quantity?: Quantity }[];
  readonly rows: readonly WrittenRow[];
}

export interface WrittenRow {
  /** The row of the duty it comes of. */
  readonly row: number;
  readonly cells: readonly WrittenCell[];
}

/** What was written into a cell of a table; `f` where that was a formula, which says what holds while nothing is stated. */
export type WrittenCell = { readonly v: Scalar } | { readonly f: true };

/** A named cell that was written as a formula. */
export interface WrittenResult {
  readonly sheet: InputSheet;
  readonly name: string;
  readonly label: string;
}

/** Columns of formulas in the rows of a named range. */
export interface WrittenWorked {
  readonly sheet: InputSheet;
  readonly name: string;
  readonly label: string;
  /** Rows of the range, those of headings at its top among them. */
  readonly rows: number;
  readonly headings: 0 | 1;
  /** Counted from the left of the range; how many of its cells hold a formula. */
  readonly columns: readonly { readonly across: number; readonly label: string; readonly filled: number }[];
}

/** What was written of a duty, to be held against what stands there later. */
export interface WrittenInputs {
  readonly boxes: readonly WrittenBox[];
  readonly tables: readonly WrittenTable[];
  readonly results: readonly WrittenResult[];
  readonly worked: readonly WrittenWorked[];
  /** Tables that figures rest on: those of the workings are held with the inputs of the duty. */
  readonly blocks: readonly WrittenBlock[];
}

export const NO_INPUTS: WrittenInputs = { boxes: [], tables: [], results: [], worked: [], blocks: [] };

/** The inputs of one sheet. */
export function inputsOn(sheet: InputSheet, { boxes, tables, results, worked, blocks }: WrittenInputs): WrittenInputs {
  const isThere = (one: { readonly sheet: InputSheet }): boolean => one.sheet === sheet;
  const held = sheet === "duty" ? "workings" : sheet;
  return {
    boxes: boxes.filter(isThere),
    tables: tables.filter(isThere),
    results: results.filter(isThere),
    worked: worked.filter(isThere),
    blocks: blocks.filter((one) => one.sheet === held),
  };
}

/** The name of the column in which a sheet says where each input comes from. */
export const BASIS_NAME = "basis_texts";

const sheet = v.picklist(["duty", "estimate"]);
const scalar = v.union([v.number(), v.string(), v.boolean(), v.null()]);
const quantity = v.exactOptional(
  v.custom<Quantity>((name) => typeof name === "string" && Object.hasOwn(UNIT_SETS.SI, name)),
);
const label = v.string();
const name = v.string();

export const writtenInputs = v.object({
  boxes: v.array(
    v.object({
      sheet,
      name,
      label,
      place: v.exactOptional(v.string()),
      written: scalar,
      quantity,
      basis: v.exactOptional(v.string()),
    }),
  ),
  tables: v.array(
    v.object({
      sheet,
      name,
      label,
      of: v.string(),
      headings: v.picklist([0, 1]),
      columns: v.array(v.object({ key: v.string(), label, quantity })),
      rows: v.array(
        v.object({
          row: v.pipe(v.number(), v.integer(), v.minValue(0)),
          cells: v.array(v.union([v.object({ v: scalar }), v.object({ f: v.literal(true) })])),
        }),
      ),
    }),
  ),
  results: v.array(v.object({ sheet, name, label })),
  // Records of before said nothing of them.
  worked: v.optional(
    v.array(
      v.object({
        sheet,
        name,
        label,
        rows: v.number(),
        headings: v.picklist([0, 1]),
        columns: v.array(v.object({ across: v.number(), label, filled: v.number() })),
      }),
    ),
    [],
  ),
  blocks: v.optional(v.array(writtenBlock), []),
});

/** What a record says of the inputs; nothing where it is not whole. */
export function readWrittenInputs(json: string): WrittenInputs | undefined {
  let data: unknown;
  try {
    data = JSON.parse(json);
  } catch {
    return undefined;
  }
  const parsed = v.safeParse(writtenInputs, data);
  return parsed.success ? parsed.output : undefined;
}
