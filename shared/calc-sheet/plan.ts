import type { Citation } from "../../src/basis/citation.ts";
import type { Quantity, UnitSetName } from "../../src/basis/quantities.ts";
import type { Cell, CellError, Scalar } from "../cells/cell.ts";
import type { FieldKey } from "../duty/fields.ts";
import type { Logo } from "../duty/logo.ts";
import type { MarkerShape, Paper } from "../ports/sheet-spec.ts";
import type { Call, Expression, Handle, TableOf } from "./expression.ts";

/**
 * The sheets of a duty: the one that is printed and sent; what it costs, for nobody outside; and the tables that both rest
 * on. Nothing on the first or the last rests on the estimate.
 */
export type SheetId = "duty" | "estimate" | "workings";

/** What is stated, what is worked out and from what, in reading order. */
export interface Calculation {
  readonly unitSet: UnitSetName;
  readonly items: readonly PlanItem[];
}

/** A calc sheet before it has cells. */
export interface CalcSheetPlan extends Calculation {
  /** What its sheets are called after; may be empty. */
  readonly tag: string;
  readonly title: string;
  /** What every printed page says of the issue it belongs to. */
  readonly issue?: Readonly<Partial<Record<"project" | "item" | "revision" | "date", string>>>;
  /** What it is printed on: that of the reader's printer where left out. */
  readonly paper?: Paper;
  /** The numbers of the references that an item rests on. */
  readonly references?: ReadonlyMap<PlanItem, readonly number[]>;
}

export type PlanItem =
  | SectionItem
  | TitleBlockItem
  | TextItem
  | InputItem
  | ResultItem
  | LineTableItem
  | InputTableItem
  | SpillItem
  | WorkingItem
  | TableItem
  | ChartsItem
  | FindingItem
  | FoundListItem
  | OptionItem
  | VerdictsItem
  | BlocksItem
  | LinesItem
  | StatementItem;

/** A heading, and the name by which the pane finds what stands under it. */
export interface SectionItem {
  readonly kind: "section";
  readonly id: string;
  readonly text: string;
  /** It stands, with what is under it, on this sheet instead of that of the duty. */
  readonly sheet?: "estimate";
  /** It stands below what is printed, with what is under it. */
  readonly isUnprinted?: true;
  /** Of the pages at the head of the sheet: what is under it is worked out last, from all that follows. */
  readonly summary?: SummaryPart;
}

/**
 * Where a section of the summary stands: on its first page, without a heading, or on its second, which is the first too
 * where both have room there.
 */
export type SummaryPart = "first" | "second";

/** Who the sheet is from and for: the firm, the job, who signed it, and the last of its revisions. */
export interface TitleBlockItem {
  readonly kind: "titleBlock";
  readonly firm: JobText | undefined;
  readonly logo: Logo | undefined;
  /** Side by side, the first of each pair at the left. */
  readonly facts: readonly (readonly [left: JobText, right: JobText | undefined])[];
  /** Of each its name, initials and date. */
  readonly signed: readonly { readonly label: string; readonly boxes: readonly JobText[] }[];
  /** The latest first. */
  readonly revisions: readonly string[];
}

/** A box of the job step as it was filled. */
export interface JobText {
  readonly key: FieldKey;
  readonly label: string;
  readonly text: string;
}

/** A text of the job: a label and what the estimator wrote. */
export interface TextItem extends JobText {
  readonly kind: "text";
}

/** A stated figure or name in a cell of its own, with where it comes from. */
export interface InputItem {
  readonly kind: "input";
  readonly key: string;
  /** The box it comes of, where that is not its key. */
  readonly of?: FieldKey;
  /** The place of the box whose text it is, where that is no field of its key. */
  readonly box?: string;
  readonly label: string;
  readonly quantity?: Quantity;
  /** In the plan's unit set, or a text; an error where it cannot be read. */
  readonly value: Cell;
  readonly basis: string;
  /** An amount of money, or the price of one unit. */
  readonly money?: "amount" | "rate";
  /** What its basis says instead once the cell holds something else than was written; a basis of its own stays. */
  readonly onceChanged?: string;
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
  /** Said after it, live: the state it arises in. */
  readonly arisesIn?: Handle;
  readonly main?: boolean;
  /** A figure below this wants attention. */
  readonly badBelow?: number;
  /** A difference that is 0 while the sheet is whole; the sheet says so, or that it is not. */
  readonly isCheck?: true;
  /** One of several names, none of them better than another. */
  readonly isNoVerdict?: true;
  readonly isMoney?: true;
}

/** A cell of a line: as it was stated, worked out, or the error of a box that cannot be read. */
export type LineCell = Scalar | CellError | Expression;

export interface LineTableRow {
  readonly pipe: string;
  /** In the plan's unit set; as typed where it cannot be read. */
  readonly length: number | string;
  readonly fittings: string;
  /** What one run carries of the flow of the line, where the table has such a column. */
  readonly share?: LineCell;
  /** Of its end, where the table has such a column. */
  readonly level?: LineCell;
}

export interface WorkedColumn<C extends string = string> {
  readonly key: C;
  readonly label: string;
  readonly quantity?: Quantity;
  /** From one row's own cells: `cell("pipe")`, `cell("length")`, `cell("fittings")`, or one worked before it. */
  readonly expression: (cell: (column: keyof LineTableRow | NoInfer<C>) => Expression) => Expression;
  /** Stands in the workings, not in the printed table. */
  readonly isWorking?: boolean;
}

/** What a table of inputs is in the duty, and the rows that its own come of. */
export interface TypedRows {
  /** What the keys of its places begin with; they end with the keys of its columns. */
  readonly of: string;
  readonly rows: readonly number[];
}

/** A line: one row a segment, the columns stated and worked columns after them. */
export interface LineTableItem<C extends string = string> {
  readonly kind: "line";
  readonly key: string;
  readonly label: string;
  /** In the order in which functions take them; each row holds them all. */
  readonly stated: readonly StatedColumn[];
  readonly rows: readonly LineTableRow[];
  readonly typed?: TypedRows;
  readonly worked: readonly WorkedColumn<C>[];
}

export interface StatedColumn {
  readonly key: keyof LineTableRow;
  readonly label: string;
  readonly quantity?: Quantity;
}

/** Whether a cell is worked out. */
export function isExpression(cell: LineCell | undefined): cell is Expression {
  return typeof cell === "object" && cell !== null && "op" in cell;
}

/** Stated figures in rows under headings with their units; the range holds the headings. */
export interface InputTableItem<C extends string = string> {
  readonly kind: "inputTable";
  readonly key: string;
  readonly label: string;
  readonly columns: readonly TableColumn<C>[];
  /** In the plan's unit set; blank where nothing was stated. */
  readonly rows: readonly (readonly Scalar[])[];
  readonly typed?: TypedRows;
  /** What the figures are and where they come from, said beside them. */
  readonly basis: string;
}

export interface TableColumn<C extends string = string> {
  readonly key: C;
  readonly label: string;
  readonly quantity?: Quantity;
  /** In a printed table: a figure below this wants attention. */
  readonly badBelow?: number;
  readonly isMoney?: true;
}

/** A function's table or record, headings over figures, in the workings. */
export interface SpillItem {
  readonly kind: "spill";
  readonly key: string;
  readonly label: string;
  readonly expression: Expression;
  /** Headings among them. */
  readonly rows: number;
  readonly columns: readonly { readonly key: string; readonly quantity?: Quantity }[];
}

/** A table of figures that others rest on, in the workings. Its range holds the headings. */
export interface WorkingItem<C extends string = string> {
  readonly kind: "working";
  readonly key: string;
  readonly label: string;
  readonly rows: number;
  readonly columns: readonly WorkingColumn<C>[];
}

export interface WorkingColumn<C extends string = string> extends TableColumn<C> {
  /** A formula a cell, nothing for a blank one; or one formula that fills the column. */
  readonly cells: ((row: number) => Expression | null) | { readonly spill: Expression };
}

/** A printed table of worked figures, and of inputs where it says so, a label before each row. */
export interface TableItem<C extends string = string> {
  readonly kind: "table";
  readonly key: string;
  readonly heading: string;
  /** As many as stand beside the labels on the page. */
  readonly columns: readonly TableColumn<C>[];
  readonly rows: readonly { readonly label: string; readonly cells: readonly Expression[] }[];
  /** Where it holds inputs; the labels are those of the column "name". */
  readonly typed?: TypedRows;
}

/** One chart, or two side by side. */
export interface ChartsItem {
  readonly kind: "charts";
  /** As tall as the rest of the summary's first page leaves room for. */
  readonly fillsPage?: true;
  readonly charts: readonly ChartFacts[];
}

export interface ChartFacts {
  readonly title: string;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly secondTitle?: string;
  readonly xFromZero?: true;
  readonly series: readonly SeriesFacts[];
}

/** Where a series stands: a column of a table or spill, or a single cell. */
export type SeriesRange = Extract<Expression, { op: "column" }> | Handle;

export interface SeriesFacts {
  readonly name: string;
  readonly x: SeriesRange;
  readonly y: SeriesRange;
  readonly color: string;
  /** Only the first so many rows of its columns. */
  readonly rows?: number;
  readonly pointsOnly?: boolean;
  readonly marker?: MarkerShape;
  readonly dashed?: boolean;
  /** Dotted; with dashes, both in turn. */
  readonly dotted?: boolean;
  /** A frame or limit beside the curves. */
  readonly thin?: boolean;
  readonly secondAxis?: boolean;
}

/**
 * What one call remarks, live; printed in the list of all. Another expression than its notes is printed where it stands, or
 * beside the figure that says so.
 */
export interface FindingItem {
  readonly kind: "finding";
  readonly isSaidElsewhere?: true;
  readonly key: string;
  readonly label: string;
  readonly expression: Expression;
}

/** Findings as a printed list, as many rows as there are when the sheet is written; their sources stand in the workings. */
export interface FoundListItem {
  readonly kind: "foundList";
  /** The spilled answer of FINDINGS, and its rows under the headings. */
  readonly of: TableOf<"kind" | "finding" | "where">;
  readonly rows: number;
  /** Said where the list is empty. */
  readonly ifNone: string;
}

/** One of a ranked list: its name and verdict, and beside them what speaks for it, against it, and what it needs. */
export interface OptionItem {
  readonly kind: "option";
  readonly key: string;
  /** Printed above the first of the list. */
  readonly heading?: string;
  /** One that is not the first choice stands below what is printed, under this. */
  readonly appendix?: string;
  readonly name: Expression;
  readonly verdict: Expression;
  /** One after the other, each after its label; one without a text is left out. */
  readonly remarks: readonly { readonly label: string; readonly text: Expression }[];
}

/** The cell that counts the verdicts. */
export const VERDICT_COUNT = "verdictCount";

/** The verdicts, printed where they stand in the plan although they are drawn from all that follows. */
export interface VerdictsItem {
  readonly kind: "verdicts";
  /** How many of each. */
  readonly count: Expression;
  readonly rows: readonly {
    readonly key: string;
    readonly label: string;
    readonly state: Expression;
    readonly text: Expression;
  }[];
}

/** Figures in short columns side by side, each with its unit in its label. */
export interface BlocksItem {
  readonly kind: "blocks";
  /** At most three; the longest decides how tall they stand. */
  readonly blocks: readonly Block[];
}

export interface Block {
  /** Left out where another stands above. */
  readonly heading?: string;
  readonly rows: readonly BlockRow[];
}

export interface BlockRow {
  readonly key: string;
  readonly label: string;
  readonly quantity?: Quantity;
  /** The cell that it repeats, or the plain sum of a few. */
  readonly expression: Expression;
  readonly main?: true;
}

/** Live sentences under a heading, each after its label. */
export interface LinesItem {
  readonly kind: "lines";
  readonly heading: string;
  readonly rows: readonly { readonly key: string; readonly label: string; readonly text: Expression }[];
}

/** A printed sentence: a reference, a caution. */
export interface StatementItem {
  readonly kind: "statement";
  readonly text: string;
  /** Said before it, in the column of the numbers of lines. */
  readonly mark?: string;
  readonly cites?: Citation;
  /** It is the title of a work, which keeps the spelling of its publisher. */
  readonly isTitle?: true;
  readonly caution?: boolean;
  /** Printed in one paragraph with those beside it that run on too. */
  readonly runsOn?: true;
}

/**
 * In the order in which they can be worked out: inputs rest on nothing, wherever they stand, and what stands at the head of
 * the sheet rests on what follows.
 */
export function workingOrder(items: readonly PlanItem[]): readonly PlanItem[] {
  let isSummary = false;
  const inputs: PlanItem[] = [];
  const calculation: PlanItem[] = [];
  const summary: PlanItem[] = [];
  for (const item of items) {
    if (item.kind === "section") isSummary = item.summary !== undefined;
    if (item.kind === "input") inputs.push(item);
    else (isSummary ? summary : calculation).push(item);
  }
  return [...inputs, ...calculation, ...summary];
}

/** The items of each sheet, by the section that they stand under. */
export function itemsBySheet(items: readonly PlanItem[]): Readonly<Record<"duty" | "estimate", readonly PlanItem[]>> {
  const split = { duty: [] as PlanItem[], estimate: [] as PlanItem[] };
  let into = split.duty;
  for (const item of items) {
    if (item.kind === "section") into = split[item.sheet ?? "duty"];
    into.push(item);
  }
  return split;
}

/** What is printed of the items, and what stands below: sections that say so, and what is ranked below the first choice. */
export function byPrint(items: readonly PlanItem[]): Readonly<Record<"printed" | "unprinted", readonly PlanItem[]>> {
  let isPrinted = true;
  const printed: PlanItem[] = [];
  const unprinted: PlanItem[] = [];
  for (const item of items) {
    if (item.kind === "section") isPrinted = item.isUnprinted !== true;
    const isBelow = item.kind === "option" && item.appendix !== undefined;
    (isPrinted && !isBelow ? printed : unprinted).push(item);
  }
  return { printed, unprinted };
}

/** A worked figure in its cell. */
export function figure(
  { key, quantity }: Handle,
  label: string,
  expression: Expression,
  how: string,
  main?: "main",
): ResultItem {
  return {
    kind: "result",
    key,
    label,
    ...(quantity === undefined ? {} : { quantity }),
    expression,
    how,
    ...(main === undefined ? {} : { main: true }),
  };
}

/** A function's answer in the workings; a record of two rows unless more are said, headings among them. */
export function spill({ key, columns }: TableOf, label: string, expression: Call, rows = 2): SpillItem {
  return { kind: "spill", key, label, expression, rows, columns };
}

/** A working column as declared: its key, heading and cells. */
export type ColumnFacts<C extends string> = readonly [key: C, label: string, cells: WorkingColumn["cells"]];

/** A table of figures in the workings, its columns in the order given. */
export function working<C extends string>(
  of: TableOf<C>,
  label: string,
  rows: number,
  columns: readonly ColumnFacts<NoInfer<C>>[],
): WorkingItem<C> {
  const declared = new Map(of.columns.map((column) => [column.key, column]));
  const column = ([key, heading, cells]: ColumnFacts<C>): WorkingColumn<C> => ({
    ...(declared.get(key) ?? { key }),
    label: heading,
    cells,
  });
  return { kind: "working", key: of.key, label, rows, columns: columns.map(column) };
}

/** A sum held against the total that one function gives. */
export function check(of: Handle, label: string, expression: Expression, how: string): ResultItem {
  return { ...figure(of, label, expression, how), isCheck: true };
}

export function statement(text: string, caution?: "caution"): StatementItem {
  return { kind: "statement", text, ...(caution === undefined ? {} : { caution: true }) };
}

/** A result in words, with room for a sentence of them. */
export function inWords({ key }: Handle, label: string, expression: Expression): FindingItem {
  return { kind: "finding", key, label, expression };
}

/** What a call remarks, live. */
export function remark({ key }: Handle, label: string, of: Call): FindingItem {
  return { kind: "finding", key, label, expression: { op: "notes", of } };
}
