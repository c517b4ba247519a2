import type { Citation } from "../../src/basis/citation.ts";
import type { Quantity, UnitSetName } from "../../src/basis/quantities.ts";
import type { Scalar } from "../catalogue/cell.ts";
import type { Expression } from "./expression.ts";

/** A calc sheet before it has cells: what is stated, what is worked out and from what, in reading order. */
export interface CalcSheetPlan {
  readonly sheetName: string;
  readonly title: string;
  readonly unitSet: UnitSetName;
  readonly items: readonly PlanItem[];
}

export type PlanItem =
  | SectionItem
  | TextItem
  | InputItem
  | ResultItem
  | LineTableItem
  | CurveItem
  | FindingItem
  | StatementItem;

/** A heading. */
export interface SectionItem {
  readonly kind: "section";
  readonly text: string;
  /** Starts a new printed page. */
  readonly newPage?: boolean;
}

/** A title-block text: a label and what the estimator wrote. */
export interface TextItem {
  readonly kind: "text";
  readonly label: string;
  readonly text: string;
}

/** A stated figure or name in a cell of its own, with where it comes from. */
export interface InputItem {
  readonly kind: "input";
  readonly key: string;
  readonly label: string;
  readonly quantity?: Quantity;
  /** In the plan's unit set, or a text. */
  readonly value: Scalar;
  readonly basis: string;
}

/** A worked figure. */
export interface ResultItem {
  readonly kind: "result";
  readonly key: string;
  readonly label: string;
  readonly quantity?: Quantity;
  readonly expression: Expression;
  /** How it comes about, in a few words or a formula. */
  readonly how: string;
  readonly main?: boolean;
}

export interface LineTableRow {
  readonly pipe: string;
  /** In the plan's unit set. */
  readonly length: number;
  readonly fittings: string;
}

export interface WorkedColumn {
  readonly key: string;
  readonly label: string;
  readonly quantity?: Quantity;
  /** From one row's own cells: `cell("pipe")`, `cell("length")`, `cell("fittings")`. */
  readonly expression: (cell: (column: keyof LineTableRow) => Expression) => Expression;
}

/** A line: one row a segment, the stated columns pipe, length, fittings and worked columns beside them. */
export interface LineTableItem {
  readonly kind: "line";
  readonly key: string;
  readonly label: string;
  readonly rows: readonly LineTableRow[];
  readonly worked: readonly WorkedColumn[];
}

/** A spilled two-column table with a chart over it, and points marked on the chart. */
export interface CurveItem {
  readonly kind: "curve";
  readonly key: string;
  readonly label: string;
  readonly expression: Expression;
  readonly rows: number;
  /** Of the two columns. */
  readonly quantities: readonly [Quantity, Quantity];
  readonly xTitle: string;
  readonly yTitle: string;
  readonly marks: readonly { readonly label: string; readonly x: string; readonly y: string }[];
}

/** The live findings of one call. */
export interface FindingItem {
  readonly kind: "finding";
  readonly key: string;
  readonly label: string;
  readonly expression: Expression;
}

/** A printed sentence: a reference, a caution. */
export interface StatementItem {
  readonly kind: "statement";
  readonly text: string;
  readonly cites?: Citation;
  readonly caution?: boolean;
}
