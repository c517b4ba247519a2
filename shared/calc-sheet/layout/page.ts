import type { Quantity } from "../../../src/basis/quantities.ts";
import { isRange, type Scalar } from "../../cells/cell.ts";
import { absolute, addressOf, type Box, boxOf, rangeOf } from "../../ports/a1.ts";
import type { CellSpec, RuleSpec, SheetSpec, StyleSpec, XYChartSpec } from "../../ports/sheet-spec.ts";
import type { Expression } from "../expression.ts";
import { type Addresses, formulaOf, NOT_PLACED } from "../formula.ts";
import type { CalcSheetPlan, SeriesRange } from "../plan.ts";
import { numberFormat, resultStyle, STYLES, workingStyle } from "../styles.ts";
import type { WorkedPlan } from "../work-out.ts";
import { COLUMNS, GAP_WIDTH, LAST, LINE_HEIGHT, linesOf, NOTES_WIDTH, ROW_HEIGHT, WORKING_WIDTH } from "./columns.ts";
import { pageBreaks } from "./page-breaks.ts";

/** Heads by their style: so many rows before and after are printed on one page with them. */
const HEADS: Readonly<Record<string, { readonly before: number; readonly after: number }>> = {
  section: { before: 1, after: 2 },
  listHead: { before: 0, after: 1 },
  tableHead: { before: 0, after: 2 },
  tableHeadText: { before: 0, after: 2 },
};

/** A table on the sheet: what its range covers, the rows of its figures, and where each of its columns stands. */
export interface TablePlace {
  readonly range: Box;
  readonly top: number;
  readonly bottom: number;
  readonly columns: Readonly<Record<string, number>>;
}

const STYLE_OF = {
  number: (format: string) => resultStyle(format, false),
  main: (format: string) => resultStyle(format, true),
  // A figure or the verdict in its place: either stands at its own side of the cell.
  verdict: (format: string): StyleSpec => ({ ...STYLES.verdict, numFmt: format }),
  working: workingStyle,
} as const;

/** The sheet while it is filled from the top down: cells, styles and where each keyed cell came to stand. */
export class Page {
  readonly plan: CalcSheetPlan;
  readonly worked: WorkedPlan;
  /** 0-based row that is being filled, on the printed page and beside it. */
  row = 0;
  workingRow = 0;
  /** The next free row of the column of notes. */
  notesRow = 0;
  readonly #at = new Map<string, string>();
  readonly #tables = new Map<string, TablePlace>();
  readonly #cells: CellSpec[] = [];
  readonly #merges: string[] = [];
  readonly #rules: RuleSpec[] = [];
  readonly #charts: (() => XYChartSpec)[] = [];
  readonly #breaks: number[] = [];
  readonly #together: [first: number, last: number][] = [];
  readonly #names: Record<string, string> = {};
  readonly #styles: Record<string, StyleSpec> = { ...STYLES };
  readonly #later: (() => void)[] = [];
  readonly #heights: Record<number, number> = {};
  #lastWorking = -1;
  readonly #addresses: Addresses = {
    cell: (key) => this.cellAt(key),
    range: (table) => {
      const at = this.tableAt(table);
      return at === undefined ? NOT_PLACED : absolute(rangeOf(at.range));
    },
    column: (table, column) => {
      const at = this.columnRange(table, column);
      return at === undefined ? NOT_PLACED : absolute(at);
    },
    part: (record, place, row) => {
      const at = this.tableAt(record);
      if (at === undefined) return { first: NOT_PLACED, cell: NOT_PLACED };
      return {
        first: absolute(addressOf(at.range.top, at.range.left)),
        cell: absolute(addressOf(at.top + row, at.range.left + place)),
      };
    },
  };

  constructor(plan: CalcSheetPlan, worked: WorkedPlan) {
    this.plan = plan;
    this.worked = worked;
  }

  sheet(): SheetSpec {
    const working =
      this.#lastWorking < 0 ? [] : [GAP_WIDTH, ...Array<number>(this.#lastWorking + 1).fill(WORKING_WIDTH)];
    return {
      name: this.plan.sheetName,
      columns: [...COLUMNS, GAP_WIDTH, NOTES_WIDTH, ...working],
      rowHeights: this.#heights,
      styles: this.#styles,
      cells: this.#cells,
      merges: this.#merges,
      names: this.#names,
      rules: this.#rules,
      charts: this.#charts.map((told) => told()),
      gridlines: false,
      print: {
        area: rangeOf({ top: 0, left: 0, bottom: this.row - 1, right: LAST }),
        orientation: "portrait",
        ...(this.plan.paper === undefined ? {} : { paper: this.plan.paper }),
        titleRows: "1:1",
        breaks: this.#pageBreaks(),
        header: "",
        footer: "&L&A&CAn aid to estimating: local codes and licensed practice govern&RPage &P of &N",
      },
    };
  }

  #pageBreaks(): readonly number[] {
    return pageBreaks({
      count: this.row,
      heightOf: (row) => this.#heights[row + 1] ?? ROW_HEIGHT,
      repeated: this.#heights[1] ?? ROW_HEIGHT,
      breaks: this.#breaks,
      together: [
        ...this.#together,
        ...this.#charts.map((told) => told()).map(({ at }): [number, number] => [boxOf(at).top, boxOf(at).bottom]),
      ],
    });
  }

  /** Fills rows left free here once everything else stands, for what rests on cells further down. */
  later(rows: number, fill: () => void): void {
    const at = this.row;
    this.row += rows;
    this.#later.push(() => {
      this.row = at;
      fill();
    });
  }

  finish(): void {
    const end = this.row;
    for (const fill of this.#later) fill();
    this.row = end;
  }

  put(column: number, cell: Omit<CellSpec, "at">, row = this.row): void {
    this.#cells.push({ at: addressOf(row, column), ...cell });
    const head = cell.style === undefined ? undefined : HEADS[cell.style];
    if (head !== undefined) this.#together.push([row - head.before, row + head.after]);
  }

  /** A cell with its style over a whole merged stretch, so that borders and fills close. */
  merged(from: number, to: number, cell: Omit<CellSpec, "at"> & { readonly v?: Scalar }): void {
    this.put(from, cell);
    for (let column = from + 1; column <= to; column += 1) {
      this.put(column, cell.style === undefined ? {} : { style: cell.style });
    }
    this.merge({ top: this.row, left: from, bottom: this.row, right: to });
  }

  merge(box: Box): void {
    this.#merges.push(rangeOf(box));
  }

  /** A worked cell: its formula, and the value worked out for it under its key. */
  formula(column: number, expression: Expression, key: string, style: string, row = this.row): void {
    const cached = this.worked.cells.get(key);
    this.put(
      column,
      {
        f: this.formulaText(expression),
        style,
        ...(cached === undefined ? {} : { cached: isRange(cached) ? (cached[0]?.[0] ?? null) : cached }),
      },
      row,
    );
  }

  /** A formula that fills a range from this cell on. */
  spill(box: Box, expression: Expression, key: string, style: string): void {
    const cached = this.worked.cells.get(key);
    this.put(
      box.left,
      {
        f: this.formulaText(expression),
        spill: rangeOf(box),
        style,
        ...(cached === undefined ? {} : { cached }),
      },
      box.top,
    );
  }

  formulaText(expression: Expression): string {
    return formulaOf(expression, this.#addresses, this.plan.unitSet);
  }

  /** Names a cell of this row on the sheet, and keeps its address. */
  name(key: string, column: number): void {
    this.keep(key, column);
    this.#names[nameOf(key)] = addressOf(this.row, column);
  }

  nameTable(key: string): void {
    const at = this.tableAt(key);
    if (at !== undefined) this.#names[nameOf(key)] = rangeOf(at.range);
  }

  keep(key: string, column: number, row = this.row): void {
    this.#at.set(key, absolute(addressOf(row, column)));
  }

  keepTable(key: string, place: TablePlace): void {
    this.#tables.set(key, place);
  }

  /** Also keeps a spilled table as a range that functions take by its key. */
  keepSpill(key: string, place: TablePlace): void {
    this.keepTable(key, place);
    this.#at.set(key, absolute(rangeOf(place.range)));
  }

  cellAt(key: string): string | undefined {
    return this.#at.get(key);
  }

  tableAt(key: string): TablePlace | undefined {
    return this.#tables.get(key);
  }

  columnRange(table: string, column: string): string | undefined {
    const place = this.tableAt(table);
    const at = place?.columns[column];
    if (place === undefined || at === undefined) return undefined;
    return rangeOf({ top: place.top, left: at, bottom: place.bottom, right: at });
  }

  /** The range of a series, without dollar signs; undefined where this sheet does not hold it. */
  seriesRange(range: SeriesRange): string | undefined {
    return range.op === "value"
      ? this.cellAt(range.key)?.replaceAll("$", "")
      : this.columnRange(range.key, range.column);
  }

  rule(rule: RuleSpec): void {
    this.#rules.push(rule);
  }

  /** A chart, told once all cells have their place: what it draws may stand below it. */
  chart(chart: () => XYChartSpec): void {
    this.#charts.push(chart);
  }

  /** Ends the printed page after the row before this one, full or not. */
  breakPage(): void {
    this.#breaks.push(this.row);
  }

  numberStyle(quantity: Quantity | undefined, kind: keyof typeof STYLE_OF = "number"): string {
    const format = numberFormat(quantity, this.plan.unitSet);
    const key = `${kind} ${format}`;
    this.#styles[key] ??= STYLE_OF[kind](format);
    return key;
  }

  height(points: number, row = this.row): void {
    this.#heights[row + 1] = points;
  }

  /** Leaves the row, high enough for its longest text. */
  next(text: string, width: number, least = 1): void {
    const lines = Math.max(least, linesOf(text, width));
    this.height(Math.max(ROW_HEIGHT, lines * LINE_HEIGHT + 2));
    this.row += 1;
  }

  /** Says that working tables reach so many columns from their first. */
  reachWorking(columns: number): void {
    this.#lastWorking = Math.max(this.#lastWorking, columns - 1);
  }
}

/** "totalHead" as a sheet name for a cell: "total_head". Never shaped like a cell address. */
function nameOf(key: string): string {
  return key.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
}
