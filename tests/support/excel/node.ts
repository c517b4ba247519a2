import type { MemoryChart, MemorySeries, MemorySheet } from "../memory-sheet.ts";

/** An XML text kept in the workbook. */
export interface XmlPart {
  readonly id: string;
  readonly xml: string;
}

/** Parts of a sheet that have nothing of their own to be known by. */
type SheetPart =
  | "sheet"
  | "protection"
  | "charts"
  | "names"
  | "freezePanes"
  | "pageLayout"
  | "headersFooters"
  | "margins"
  | "breaks"
  | "shapes";

/** Something a request can name. `ref` is an A1 range, or several parted by commas. */
export type Node =
  | { readonly kind: "workbook" | "application" | "worksheets" | "missing" }
  | { readonly kind: "xmlParts"; readonly namespace?: string }
  | { readonly kind: "xmlPart"; readonly part: XmlPart }
  | { readonly kind: SheetPart; readonly sheet: MemorySheet }
  | { readonly kind: "range" | "areas" | "validation" | "rules"; readonly sheet: MemorySheet; readonly ref: string }
  | { readonly kind: "name"; readonly sheet: MemorySheet; readonly name: string }
  | { readonly kind: "chart" | "seriesList" | "axes"; readonly sheet: MemorySheet; readonly chart: MemoryChart }
  | { readonly kind: "series"; readonly sheet: MemorySheet; readonly chart: MemoryChart; readonly series: MemorySeries }
  /** Anything that only takes settings; each goes to `set` under the way it came. */
  | {
      readonly kind: "bag";
      readonly sheet: MemorySheet;
      readonly path: string;
      readonly set: (name: string, value: unknown) => void;
    };

export type NodeOf<K extends Node["kind"]> = Node & { readonly kind: K };

/** What the parts of the workbook in memory know of one another. */
export interface Book {
  readonly sheets: MemorySheet[];
  readonly xmlParts: XmlPart[];
  active: string;
  /** The cell the user has selected on the active sheet. */
  selected: string;
  /** The user has protected the workbook's structure. */
  isStructureProtected: boolean;
  calculationMode: "Automatic" | "AutomaticExceptTables" | "Manual";
  /** Names of the sheets that take no changes but to what is unlocked. */
  readonly protected: Set<string>;
  /** How many more looks at values find functions still busy. */
  busy: number;
  /** Series that Excel makes by itself for a new chart. */
  readonly guessedSeries: number;
  /** What a formula answers: a value, or rows of them that spill. Undefined where nothing is planned for it. */
  readonly answerOf: (sheet: string, at: string, formula: string) => unknown;
  /** Whether a cell of a spill reads as the formula of its anchor. Which it does in Excel is not known here. */
  readonly showsAnchorInSpill: boolean;
  /** Cells given contents through the API since the start, in order. */
  readonly entered: string[];
  /** Events that Excel has been asked to tell of. */
  readonly events: Set<string>;
  readonly newId: (kind: string) => string;
}

/** The members of one kind of object, by name: what leads on to others, what does something, what is set, what is read. */
export interface Members<K extends Node["kind"]> {
  readonly steps?: Readonly<Record<string, (node: NodeOf<K>, args: readonly unknown[], book: Book) => Node>>;
  readonly calls?: Readonly<Record<string, (node: NodeOf<K>, args: readonly unknown[], book: Book) => unknown>>;
  readonly settings?: Readonly<Record<string, (node: NodeOf<K>, value: unknown, book: Book) => void>>;
  readonly reads?: Readonly<Record<string, (node: NodeOf<K>, book: Book) => unknown>>;
  /** Of a collection: its items, each with what it is found again by and what can be read of it. */
  readonly items?: (
    node: NodeOf<K>,
    book: Book,
  ) => readonly { readonly id: string; readonly facts: Readonly<Record<string, unknown>> }[];
}
