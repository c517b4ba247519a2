import type { Cell, Scalar } from "../cells/cell.ts";

/** A sheet as plain data, the same for Excel, the workbench and the .xlsx file. Cell addresses are A1, no sheet name, but in formulas and charts. */
export interface SheetSpec {
  /** Wanted name. The host takes a free one when it is taken, and says which. */
  readonly name: string;
  /** Column widths in characters of the default font, from column A. */
  readonly columns: readonly number[];
  /** Row heights in points, by 1-based row. */
  readonly rowHeights?: Readonly<Record<number, number>>;
  readonly styles: Readonly<Record<string, StyleSpec>>;
  readonly cells: readonly CellSpec[];
  readonly merges?: readonly string[];
  /** Sheet-scoped names and the range each stands for. */
  readonly names?: Readonly<Record<string, string>>;
  readonly lists?: readonly ListSpec[];
  readonly rules?: readonly RuleSpec[];
  readonly charts?: readonly XYChartSpec[];
  readonly pictures?: readonly PictureSpec[];
  readonly freezeRows?: number;
  readonly gridlines?: boolean;
  /** Nothing on it can be changed, but what is unlocked, until a reader takes the protection off; there is no password. The grid of the workbench lets all be changed. */
  readonly isProtected?: true;
  readonly print?: PrintSpec;
}

export interface CellSpec {
  readonly at: string;
  /** A constant. Text is written as text whatever it begins with. */
  readonly v?: Scalar;
  /** A formula in English with comma separators, without the leading "=". Add-in functions as DUTY.NAME(…). */
  readonly f?: string;
  /** The range a spilling formula fills, this cell its top left. */
  readonly spill?: string;
  /** What the formula answers, worked out in memory; rows of cells for a spill. Files keep it; live hosts ignore it. */
  readonly cached?: Cell | readonly (readonly Cell[])[];
  /** A key of `styles`. */
  readonly style?: string;
}

/** Colours of the two weights of border, the same in every host: quiet lines round inputs, ink under heads. */
export const BORDER_COLORS = { thin: "#A9B8BA", medium: "#1C2B2D" } as const;

export type BorderSide = "top" | "bottom" | "left" | "right";

export interface StyleSpec {
  readonly bold?: boolean;
  readonly italic?: boolean;
  /** Points; 10 where left out. */
  readonly size?: number;
  /** "#RRGGBB" */
  readonly color?: string;
  readonly fill?: string;
  readonly align?: "left" | "center" | "right";
  readonly valign?: "top" | "middle" | "bottom";
  readonly wrap?: boolean;
  readonly indent?: number;
  /** Excel format code. */
  readonly numFmt?: string;
  readonly border?: Readonly<Partial<Record<BorderSide, "thin" | "medium">>>;
  /** Input cells stay editable when a user protects the sheet. */
  readonly unlocked?: boolean;
}

/** A drop-down. `items` in the list, or `from` a range of this sheet, or of another with its name before it. */
export interface ListSpec {
  readonly ref: string;
  readonly items: readonly string[] | { readonly from: string };
  readonly help?: string;
  /** Refuse what is not in the list. */
  readonly strict?: boolean;
  /** Ask before what is not in the list is taken. */
  readonly asks?: boolean;
}

/** A conditional format; `when` is a formula for the top-left cell of `ref`. */
export interface RuleSpec {
  readonly ref: string;
  readonly when: string;
  readonly style: Pick<StyleSpec, "color" | "fill" | "bold">;
}

/** What tells points apart on a print without colour. */
export type MarkerShape = "circle" | "square" | "diamond" | "triangle" | "cross";

export interface XYSeries {
  readonly name: string;
  /** Ranges of this sheet, or of another with its name before them: "'P-101 workings'!A3:A27". */
  readonly x: string;
  readonly y: string;
  readonly color?: string;
  readonly markers?: boolean;
  /** Draw no line between points. */
  readonly pointsOnly?: boolean;
  /** A circle where left out. */
  readonly marker?: MarkerShape;
  readonly dashed?: boolean;
  /** Dotted; with dashes, both in turn. */
  readonly dotted?: boolean;
  /** A frame or limit beside the curves. */
  readonly thin?: boolean;
  /** Read against the right-hand axis. */
  readonly secondAxis?: boolean;
}

export interface XYChartSpec {
  /** Range the chart covers. */
  readonly at: string;
  readonly title: string;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly secondTitle?: string;
  /** The horizontal axis begins at 0 whatever the figures. */
  readonly xFromZero?: true;
  readonly series: readonly XYSeries[];
}

/** A picture in the top left corner of a range, as large as that holds it in its own proportions. */
export interface PictureSpec {
  readonly at: string;
  readonly type: "png" | "jpeg";
  /** The file. */
  readonly base64: string;
  readonly widthPx: number;
  readonly heightPx: number;
  /** What a screen reader says of it. */
  readonly altText: string;
}

export type Paper = "A4" | "Letter";

export interface PrintSpec {
  readonly area: string;
  readonly orientation: "portrait" | "landscape";
  /** That of the reader's printer where left out. */
  readonly paper?: Paper;
  /** Percent; where left out, whatever brings all columns on one page. A page ends where `breaks` say only at a stated scale. */
  readonly scale?: number;
  /** Rows repeated on each page, such as "1:3". */
  readonly titleRows?: string;
  /** Rows after which a page ends. */
  readonly breaks?: readonly number[];
  readonly header?: string;
  readonly footer?: string;
}
