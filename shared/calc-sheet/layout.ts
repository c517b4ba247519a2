import { printedUnit } from "../../src/basis/quantities.ts";
import { headerText } from "../catalogue/call.ts";
import { type Argument, type Cell, isRange, type Scalar } from "../catalogue/cell.ts";
import { absolute, addressOf, rangeOf } from "../ports/a1.ts";
import type { CellSpec, RuleSpec, SheetSpec, StyleSpec, XYChartSpec } from "../ports/sheet-spec.ts";
import type { Expression } from "./expression.ts";
import { type Addresses, formulaOf } from "./formula.ts";
import type { CalcSheetPlan, CurveItem, LineTableItem, PlanItem, ResultItem } from "./plan.ts";
import { numberFormat, resultStyle, STYLES } from "./styles.ts";
import { tableCell, type WorkedPlan } from "./work-out.ts";

// Columns: label or pipe; value or length; unit or fittings; then five for worked figures, merged for remarks.
const COLUMNS = [31, 12, 30, 10, 9.5, 11, 10, 10] as const;
const LABEL = 0;
const VALUE = 1;
const UNIT = 2;
const REMARK = 3;
const LAST = COLUMNS.length - 1;
/** Text answers of add-in functions stand here, outside the printed area; merged cells may not hold them. */
const WORKING = LAST + 2;
const WORKING_WIDTH = 14;
const CHART_ROWS = 19;
const LINE_HEIGHT = 13;

/** Gives each item of a plan its cells, with live formulas and the values worked out for them. */
export function layOut(plan: CalcSheetPlan, worked: WorkedPlan): SheetSpec {
  return new Layout(plan, worked).sheet();
}

class Layout {
  readonly #plan: CalcSheetPlan;
  readonly #worked: WorkedPlan;
  readonly #at = new Map<string, string>();
  readonly #tables = new Map<string, { top: number; bottom: number; columns: readonly string[] }>();
  readonly #cells: CellSpec[] = [];
  readonly #merges: string[] = [];
  readonly #rules: RuleSpec[] = [];
  readonly #charts: XYChartSpec[] = [];
  readonly #breaks: number[] = [];
  readonly #names: Record<string, string> = {};
  readonly #styles: Record<string, StyleSpec> = { ...STYLES };
  readonly #heights: Record<number, number> = {};
  #row = 0;

  constructor(plan: CalcSheetPlan, worked: WorkedPlan) {
    this.#plan = plan;
    this.#worked = worked;
  }

  sheet(): SheetSpec {
    this.#title();
    for (const item of this.#plan.items) this.#place(item);
    return {
      name: this.#plan.sheetName,
      columns: [...COLUMNS, 3, WORKING_WIDTH],
      rowHeights: this.#heights,
      styles: this.#styles,
      cells: this.#cells,
      merges: this.#merges,
      names: this.#names,
      rules: this.#rules,
      charts: this.#charts,
      gridlines: false,
      print: {
        area: rangeOf({ top: 0, left: 0, bottom: this.#row - 1, right: LAST }),
        orientation: "portrait",
        titleRows: "1:1",
        breaks: this.#breaks,
        header: "",
        footer: "&L&A&CAn aid to estimating: local codes and licensed practice govern&RPage &P of &N",
      },
    };
  }

  #title(): void {
    this.#put(LABEL, { v: this.#plan.title, style: "title" });
    this.#height(24);
    this.#row += 1;
    this.#put(LABEL, {
      v: `Shaded cells are inputs: change one and all that follows from it changes. Unit set ${this.#plan.unitSet}; every figure below is in the unit printed beside it.`,
      style: "legend",
    });
    this.#merge(LABEL, LAST);
    this.#height(LINE_HEIGHT * 2);
    this.#row += 1;
  }

  #place(item: PlanItem): void {
    switch (item.kind) {
      case "section":
        this.#section(item.text, item.newPage ?? false);
        break;
      case "text":
        this.#put(LABEL, { v: item.label, style: "label" });
        this.#merged(VALUE, LAST, { v: item.text, style: "text" });
        this.#next(item.text, WIDTHS.text);
        break;
      case "input":
        this.#input(item);
        break;
      case "result":
        this.#result(item);
        break;
      case "line":
        this.#line(item);
        break;
      case "curve":
        this.#curve(item);
        break;
      case "finding":
        this.#finding(item);
        break;
      case "statement":
        this.#merged(LABEL, LAST, { v: item.text, style: item.caution === true ? "caution" : "statement" });
        this.#next(item.text, WIDTHS.statement);
        break;
    }
  }

  #section(text: string, newPage: boolean): void {
    if (newPage) this.#breaks.push(this.#row);
    this.#height(8);
    this.#row += 1;
    for (let column = LABEL; column <= LAST; column += 1) {
      this.#put(column, { ...(column === LABEL ? { v: text } : {}), style: "section" });
    }
    this.#height(18);
    this.#row += 1;
  }

  #input(item: Extract<PlanItem, { kind: "input" }>): void {
    const { key, label, quantity, value, basis } = item;
    this.#put(LABEL, { v: label, style: "label" });
    const isText = typeof value === "string";
    this.#put(VALUE, { v: value, style: isText ? "inputText" : "inputNumber" });
    if (quantity !== undefined) this.#put(UNIT, { v: printedUnit(quantity, this.#plan.unitSet), style: "unit" });
    this.#merged(REMARK, LAST, { v: basis, style: "basis" });
    this.#name(key, VALUE);
    this.#next(basis, WIDTHS.remark, isText ? Math.ceil(value.length / COLUMNS[VALUE]) : 1);
  }

  #result({ key, label, quantity, expression, how, main = false }: ResultItem): void {
    const { unitSet } = this.#plan;
    const isVerdict = expression.op === "verdict";
    this.#put(LABEL, { v: label, style: main ? "labelMain" : "label" });
    this.#name(key, VALUE);
    const style = isVerdict ? "verdict" : this.#numberStyle(numberFormat(quantity, unitSet), main);
    this.#formula(VALUE, expression, key, style);
    if (quantity !== undefined) {
      this.#put(UNIT, { v: printedUnit(quantity, unitSet), style: main ? "unitMain" : "unit" });
    } else if (main) this.#put(UNIT, { style: "unitMain" });
    this.#merged(REMARK, LAST, { v: how, style: main ? "howMain" : "how" });
    if (isVerdict) {
      const ref = addressOf(this.#row, VALUE);
      this.#rules.push({ ref, when: `${ref}="${expression.less}"`, style: { color: "#B3261E", bold: true } });
    }
    this.#next(how, WIDTHS.remark, Math.ceil(label.length / COLUMNS[LABEL]));
  }

  #line(table: LineTableItem): void {
    const { unitSet } = this.#plan;
    const stated = ["pipe", headerText("length", "length", unitSet), "fittings"];
    stated.forEach((text, column) => {
      this.#put(column, { v: text, style: column === VALUE ? "tableHead" : "tableHeadText" });
    });
    table.worked.forEach(({ label, quantity }, i) => {
      this.#put(REMARK + i, { v: headerText(label, quantity, unitSet), style: "tableHead" });
    });
    this.#height(LINE_HEIGHT * 2);
    this.#row += 1;
    const top = this.#row;
    table.rows.forEach((row, i) => {
      const columns: readonly [keyof typeof row, string][] = [
        ["pipe", "inputText"],
        ["length", "inputNumber"],
        ["fittings", "inputText"],
      ];
      columns.forEach(([key, style], column) => {
        this.#put(column, { v: row[key], style });
        this.#at.set(tableCell(table.key, i, key), absolute(addressOf(this.#row, column)));
      });
      table.worked.forEach(({ key, quantity, expression }, j) => {
        const cell = tableCell(table.key, i, key);
        this.#at.set(cell, absolute(addressOf(this.#row, REMARK + j)));
        const style = this.#numberStyle(numberFormat(quantity, unitSet), false);
        this.#formula(
          REMARK + j,
          expression((of) => ({ op: "value", key: tableCell(table.key, i, of) })),
          cell,
          style,
        );
      });
      this.#next(row.fittings, COLUMNS[UNIT], Math.ceil(row.pipe.length / COLUMNS[LABEL]));
    });
    const bottom = this.#row - 1;
    this.#tables.set(table.key, { top, bottom, columns: table.worked.map(({ key }) => key) });
    this.#names[nameOf(table.key)] = rangeOf({ top, left: LABEL, bottom, right: UNIT });
  }

  #curve(curve: CurveItem): void {
    const top = this.#row;
    const spill = rangeOf({ top, left: REMARK, bottom: top + curve.rows - 1, right: REMARK + 1 });
    this.#at.set(curve.key, absolute(spill));
    const cached = this.#worked.cells.get(curve.key);
    curve.quantities.forEach((quantity, i) => {
      const style = this.#numberStyle(numberFormat(quantity, this.#plan.unitSet), false);
      for (let row = 1; row < curve.rows; row += 1) this.#cells.push({ at: addressOf(top + row, REMARK + i), style });
    });
    this.#cells.push({ at: addressOf(top, REMARK + 1), style: "tableHead" });
    this.#put(REMARK, {
      f: formulaOf(curve.expression, this.#addresses(), this.#plan.unitSet),
      spill,
      style: "tableHead",
      ...(cached === undefined ? {} : { cached }),
    });
    this.#heights[top + 1] = LINE_HEIGHT * 2;
    const column = (of: number): string => rangeOf({ top: top + 1, left: of, bottom: top + curve.rows - 1, right: of });
    this.#charts.push({
      at: rangeOf({ top, left: LABEL, bottom: top + CHART_ROWS - 1, right: UNIT }),
      title: curve.label,
      xTitle: curve.xTitle,
      yTitle: curve.yTitle,
      series: [
        { name: curve.label, x: column(REMARK), y: column(REMARK + 1), color: "#0B5A5E" },
        ...curve.marks.map(({ label, x, y }) => ({
          name: label,
          x: this.#cellAt(x).replaceAll("$", ""),
          y: this.#cellAt(y).replaceAll("$", ""),
          color: "#C2410C",
          markers: true,
          pointsOnly: true,
        })),
      ],
    });
    this.#row += CHART_ROWS;
  }

  #finding({ key, label, expression }: Extract<PlanItem, { kind: "finding" }>): void {
    this.#put(LABEL, { v: label, style: "label" });
    this.#at.set(key, absolute(addressOf(this.#row, WORKING)));
    this.#formula(WORKING, expression, key, "working");
    const cell = this.#cellAt(key);
    const answer = this.#worked.cells.get(key);
    const text = typeof answer === "string" ? answer : "";
    this.#merged(VALUE, LAST, {
      f: `IF(${cell}="","Nothing to remark.",${cell})`,
      cached: isText(answer) ? text || "Nothing to remark." : ((answer ?? null) as Cell),
      style: "finding",
    });
    this.#next(text, WIDTHS.text);
  }

  #formula(column: number, expression: Expression, key: string, style: string): void {
    const cached = this.#worked.cells.get(key);
    this.#put(column, {
      f: formulaOf(expression, this.#addresses(), this.#plan.unitSet),
      style,
      ...(cached === undefined ? {} : { cached: isRange(cached) ? (cached[0]?.[0] ?? null) : cached }),
    });
  }

  #addresses(): Addresses {
    return {
      cell: (key) => this.#cellAt(key),
      range: (table) => {
        const { top, bottom } = this.#tableAt(table);
        return absolute(rangeOf({ top, left: LABEL, bottom, right: UNIT }));
      },
      column: (table, column) => {
        const { top, bottom, columns } = this.#tableAt(table);
        const of = REMARK + columns.indexOf(column);
        return absolute(rangeOf({ top, left: of, bottom, right: of }));
      },
    };
  }

  #cellAt(key: string): string {
    const at = this.#at.get(key);
    if (at === undefined) throw new Error(`${key} is not on the sheet yet`);
    return at;
  }

  #tableAt(key: string): { top: number; bottom: number; columns: readonly string[] } {
    const at = this.#tables.get(key);
    if (at === undefined) throw new Error(`the table ${key} is not on the sheet yet`);
    return at;
  }

  #numberStyle(format: string, main: boolean): string {
    const key = `${main ? "main" : "number"} ${format}`;
    this.#styles[key] ??= resultStyle(format, main);
    return key;
  }

  #put(column: number, cell: Omit<CellSpec, "at">): void {
    this.#cells.push({ at: addressOf(this.#row, column), ...cell });
  }

  /** A cell with its style over a whole merged stretch, so that borders and fills close. */
  #merged(from: number, to: number, cell: Omit<CellSpec, "at"> & { readonly v?: Scalar }): void {
    this.#put(from, cell);
    for (let column = from + 1; column <= to; column += 1) {
      this.#put(column, cell.style === undefined ? {} : { style: cell.style });
    }
    this.#merge(from, to);
  }

  #merge(from: number, to: number): void {
    this.#merges.push(rangeOf({ top: this.#row, left: from, bottom: this.#row, right: to }));
  }

  #name(key: string, column: number): void {
    const at = addressOf(this.#row, column);
    this.#at.set(key, absolute(at));
    this.#names[nameOf(key)] = at;
  }

  #height(points: number): void {
    this.#heights[this.#row + 1] = points;
  }

  /** Leaves the row, high enough for its longest text. */
  #next(text: string, width: number, least = 1): void {
    const lines = Math.max(least, linesOf(text, width));
    this.#height(Math.max(15, lines * LINE_HEIGHT + 2));
    this.#row += 1;
  }
}

function widthFrom(first: number, last: number): number {
  return COLUMNS.slice(first, last + 1).reduce((total, width) => total + width, 0);
}

// Characters that fit on a line of each merged stretch: proportional 9-point text runs tighter than the column unit.
const TIGHTER = 1.2;
const WIDTHS = {
  text: widthFrom(VALUE, LAST) * TIGHTER,
  remark: widthFrom(REMARK, LAST) * TIGHTER,
  statement: widthFrom(LABEL, LAST) * TIGHTER,
} as const;

function linesOf(text: string, width: number): number {
  return text.split("\n").reduce((lines, part) => lines + Math.max(1, Math.ceil(part.length / width)), 0);
}

function isText(answer: Argument | undefined): answer is string {
  return typeof answer === "string";
}

/** "totalHead" as a sheet name for a cell: "total_head". Never shaped like a cell address. */
function nameOf(key: string): string {
  return key.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
}
