import { type Cell, isRange } from "../../cells/cell.ts";
import type { Field } from "../../duty/field.ts";
import { absolute, addressOf, type Box, boxOf, rangeOf } from "../../ports/a1.ts";
import { LIMITS } from "../../ports/check/limits.ts";
import { roomIn } from "../../ports/column-room.ts";
import type {
  CellSpec,
  ListSpec,
  PictureSpec,
  RuleSpec,
  SheetSpec,
  StyleSpec,
  XYChartSpec,
} from "../../ports/sheet-spec.ts";
import { heightOf, linesIn } from "../../ports/text-width.ts";
import { spelt } from "../../text/spelling.ts";
import type { Expression } from "../expression.ts";
import { tableCell } from "../expression.ts";
import { formulaOf } from "../formula.ts";
import { runsOf, type WrittenBlock } from "../open-again/written-blocks.ts";
import {
  BASIS_NAME,
  type InputSheet,
  type WrittenBox,
  type WrittenTable,
  type WrittenWorked,
} from "../open-again/written-inputs.ts";
import type { CalcSheetPlan, ChartFacts, InputItem, PlanItem, SheetId } from "../plan.ts";
import { numberFormat, resultStyle, type Shown, STYLES, UNIT_PRICE_FORMAT, workingStyle } from "../styles.ts";
import type { WorkedPlan } from "../work-out.ts";
import type { AddressBook, SeenAddresses, SheetNames, TablePlace } from "./address-book.ts";
import type { ChoiceBook } from "./choices.ts";
import { LABEL, NUMBER, REFERENCE, REMARK, ROW_HEIGHT, type Stretch, WORKING_WIDTH } from "./columns.ts";
import type { InputBook } from "./input-book.ts";
import { pageBreaks, pageHeight, scaleFor } from "./page-breaks.ts";
import { rangeName } from "./range-name.ts";

/** Heads by their style: so many rows before and after are printed on one page with them. */
const HEADS: Readonly<Record<string, { readonly before: number; readonly after: number }>> = {
  columnHead: { before: 0, after: 2 },
  section: { before: 1, after: 2 },
  listHead: { before: 0, after: 1 },
  tableHead: { before: 0, after: 2 },
  blockHead: { before: 0, after: 2 },
  tableHeadText: { before: 0, after: 2 },
  tableHeadLabel: { before: 0, after: 2 },
};

/**
 * Points that the chart of the summary is given: what is wanted where all stands on one page, for a chart of one system has
 * a short key; the least where pumps and systems fill a page, for titles and key take some 130; and never a poster.
 */
const FILLING = { least: 210, wanted: 190, most: 330 } as const;

const STYLE_OF = {
  number: (format: string) => resultStyle(format, false),
  main: (format: string) => resultStyle(format, true),
  // A figure or the verdict in its place: either stands at its own side of the cell.
  verdict: (format: string): StyleSpec => ({ ...STYLES.verdict, numFmt: format }),
  verdictMain: (format: string): StyleSpec => ({ ...STYLES.verdict, ...STYLES.textMain, numFmt: format }),
  working: workingStyle,
  block: (format: string): StyleSpec => ({ ...STYLES.blockValue, numFmt: format }),
  blockMain: (format: string): StyleSpec => ({ ...STYLES.blockValue, bold: true, numFmt: format }),
} as const;

/** The text of a formula, from the texts of the expressions in it. */
export type FormulaText = (textOf: (expression: Expression) => string) => string;

/** A cell before it has an address, its formula before any cell has one. */
export type CellContent = Omit<CellSpec, "at" | "f"> & { readonly f?: FormulaText };

/** What all sheets of a plan have in common. */
export interface Common {
  readonly plan: CalcSheetPlan;
  readonly worked: WorkedPlan;
  readonly addresses: AddressBook;
  readonly inputs: InputBook;
  readonly choices: ChoiceBook;
  /** What was written into each input stands beside it, to be opened again. */
  readonly isRecorded: boolean;
}

/** Where a printed page ends: the row that the next begins with, as it lies before headings are repeated. */
export interface Cut {
  readonly row: number;
  /** The heading of its section is repeated above it. */
  readonly isInSection: boolean;
}

/** A printed table: the row of its heads and its last row, 0-based. */
interface PrintedTable {
  readonly head: number;
  readonly bottom: number;
}

/** A table that figures rest on, and where its formulas stand, counted from its label. */
interface PlacedBlock {
  readonly label: string;
  readonly top: number;
  readonly formulas: (readonly [across: number, down: number])[];
}

/** A sheet while it is filled from the top down. Formulas are written last, when every cell of every sheet has its place. */
export class Page {
  readonly id: SheetId;
  readonly plan: CalcSheetPlan;
  readonly worked: WorkedPlan;
  /** 0-based row that is being filled. */
  row = 0;
  readonly #addresses: AddressBook;
  readonly #inputs: InputBook;
  readonly #choices: ChoiceBook;
  readonly #isRecorded: boolean;
  readonly #workings: Page | undefined;
  readonly #columns: number[];
  readonly #cells: (CellContent & { readonly at: string })[] = [];
  readonly #merges: string[] = [];
  readonly #rules: RuleSpec[] = [];
  readonly #lists: ((seen: SeenAddresses) => ListSpec)[] = [];
  readonly #pictures: PictureSpec[] = [];
  readonly #charts: { readonly chart: ChartFacts; readonly box: Box }[] = [];
  readonly #breaks: number[] = [];
  readonly #together: [first: number, last: number][] = [];
  readonly #names: Record<string, string> = {};
  readonly #styles: Record<string, StyleSpec> = { ...STYLES };
  readonly #heights: Record<number, number> = {};
  /** Points that the texts of a row need. */
  readonly #needed: number[] = [];
  /** Rows with which sections begin, and their titles. */
  readonly #sections: { readonly top: number; readonly title: string }[] = [];
  #lines = 0;
  /** References shown in this section. */
  readonly #citedHere = new Set<number>();
  readonly #cuts: readonly Cut[];
  readonly #tables: PrintedTable[] = [];
  /** Rows repeated so far, in all and by the cut that they stand at. */
  #repeated = 0;
  readonly #continued = new Map<number, number>();
  #heads: number | undefined;
  readonly #blocks: PlacedBlock[] = [];
  #block: PlacedBlock | undefined;
  readonly #atFoot: ((workings: Page) => void)[] = [];
  /** The first row that is not printed. */
  #end: number | undefined;
  #lastBasis: number | undefined;
  #heading: (() => void) | undefined;
  #filling: { readonly top: number; readonly rows: number } | undefined;
  #secondPage: number | undefined;

  /**
   * @param workings the sheet of its tables; without one they stand at its foot, below what is printed
   * @param cuts what `cuts` said of the same sheet when it was filled before
   */
  constructor(
    id: SheetId,
    { plan, worked, addresses, inputs, choices, isRecorded }: Common,
    columns: readonly number[],
    { workings, cuts = [] }: { readonly workings?: Page; readonly cuts?: readonly Cut[] } = {},
  ) {
    this.id = id;
    this.#cuts = cuts;
    this.plan = plan;
    this.worked = worked;
    this.#addresses = addresses;
    this.#inputs = inputs;
    this.#choices = choices;
    this.#isRecorded = isRecorded;
    this.#columns = [...columns];
    this.#workings = workings;
  }

  /** Places a table that others rest on, where it is on no row of the page. */
  work(place: (workings: Page) => void): void {
    if (this.#workings === undefined) {
      this.#atFoot.push(place);
      return;
    }
    this.#heading?.();
    this.#heading = undefined;
    place(this.#workings);
  }

  /** What the workings that follow belong to: said above the first of them. */
  headWorkings(place: (workings: Page) => void): void {
    const workings = this.#workings;
    this.#heading = workings === undefined ? undefined : () => place(workings);
  }

  /** Ends what is printed. */
  endPrint(): void {
    this.#end = this.row;
    this.row += 2;
  }

  /** Tables without a sheet of their own stand below all else. */
  finish(): void {
    if (this.#end === undefined) this.endPrint();
    for (const place of this.#atFoot) place(this);
  }

  sheet(
    names: SheetNames,
    print: Pick<NonNullable<SheetSpec["print"]>, "orientation" | "header" | "footer">,
  ): SheetSpec {
    const seen = this.#addresses.seenFrom(this.id, names);
    const textAt = (f: FormulaText, at: string): string => {
      const beside = this.#addresses.seenFrom(this.id, names, boxOf(at).top);
      return f((expression) => formulaOf(expression, beside, this.plan.unitSet));
    };
    const printed = {
      top: 0,
      left: 0,
      bottom: Math.max(0, (this.#end ?? this.row) - 1),
      right: this.#columns.length - 1,
    };
    return {
      name: names[this.id] ?? "",
      columns: this.#columns,
      rowHeights: this.#heights,
      styles: this.#styles,
      cells: this.#cells.map(({ f, ...cell }) => (f === undefined ? cell : { ...cell, f: textAt(f, cell.at) })),
      merges: this.#merges,
      names: {
        ...this.#names,
        ...(this.#lastBasis === undefined
          ? {}
          : { [BASIS_NAME]: rangeOf({ top: 0, left: REMARK, bottom: this.#lastBasis, right: REMARK }) }),
      },
      ...(this.#lists.length === 0 ? {} : { lists: this.#lists.map((list) => list(seen)) }),
      rules: this.#rules,
      charts: this.#charts.map(({ chart, box }) => chartSpec(chart, box, seen)),
      ...(this.#pictures.length === 0 ? {} : { pictures: this.#pictures }),
      gridlines: false,
      print: {
        area: rangeOf(printed),
        ...(this.plan.paper === undefined ? {} : { paper: this.plan.paper }),
        ...(print.orientation === "portrait"
          ? {
              scale: scaleFor(this.#columns, this.plan.paper),
              breaks: this.#cuts.map(({ row }) => row + this.#repeatedBefore(row)),
            }
          : {}),
        ...(this.#heads === undefined ? {} : { titleRows: `${this.#heads + 1}:${this.#heads + 1}` }),
        ...print,
      },
    };
  }

  /** With what printed pages begin. */
  cuts(): readonly Cut[] {
    const count = this.#end ?? this.row;
    const full = pageHeight(this.#columns, this.plan.paper);
    const heightAt = (row: number): number => this.#heightOf(row);
    const heads = this.#heads;
    const found = pageBreaks({
      count,
      heightOf: heightAt,
      pageHeight: full,
      repeatedAt: (row) =>
        (heads === undefined || row <= heads ? 0 : heightAt(heads)) +
        (this.#isInSection(row) ? ROW_HEIGHT : 0) +
        this.#tables.reduce((sum, { head, bottom }) => sum + (row > head && row <= bottom ? heightAt(head) : 0), 0),
      breaks: this.#breaks,
      together: [
        ...this.#together,
        ...this.#charts.map(({ box }): [number, number] => [box.top, box.bottom]),
        ...keptWhole(
          this.#tables.map(({ head, bottom }) => [head, bottom]),
          heightAt,
          KEPT.table * full,
        ),
        ...keptWhole(
          this.#sections.map(({ top }, i) => [top, Math.min(this.#sections[i + 1]?.top ?? count, count) - 1]),
          heightAt,
          KEPT.section * full,
        ),
      ],
    });
    return found.map((row) => ({ row, isInSection: this.#isInSection(row) }));
  }

  #isInSection(row: number): boolean {
    const [first] = this.#sections;
    return first !== undefined && row > first.top && !this.#sections.some(({ top }) => top === row);
  }

  /** Rows that are repeated above a row of the sheet as it lay without them. */
  #repeatedBefore(row: number): number {
    return [...this.#continued].reduce((sum, [cut, rows]) => sum + (cut < row ? rows : 0), 0);
  }

  /** Repeats the heading of the section where a printed page begins within it. */
  continueHere(): void {
    this.#continue(undefined);
  }

  /**
   * Before a row of a table: repeats its heads too where a printed page begins with it. They are formulas that show those
   * of the table, so that none is taken for an input, and functions pass over them as a heading said again. Answers how
   * many rows of heads that made.
   */
  continueTable(head: number): 0 | 1 {
    return this.#continue(head) ? 1 : 0;
  }

  #continue(head: number | undefined): boolean {
    const was = this.row - this.#repeated;
    const cut = this.#cuts.find(({ row }) => row === was);
    if (cut === undefined || this.#continued.has(was)) return false;
    const top = this.row;
    if (cut.isInSection) this.#repeatSection();
    if (head !== undefined) this.#repeatHeads(head);
    this.#continued.set(was, this.row - top);
    this.#repeated += this.row - top;
    return true;
  }

  /** In one cell, before the columns that a table may stand in. */
  #repeatSection(): void {
    const v = `${this.#sections.length}  ${this.#sections.at(-1)?.title}, continued`;
    for (let column = NUMBER; column <= REFERENCE; column += 1) {
      this.put(column, { ...(column === NUMBER ? { v } : {}), style: "continued" });
    }
    this.height(ROW_HEIGHT);
    this.row += 1;
  }

  #repeatHeads(head: number): void {
    const inHead = (at: string): boolean => boxOf(at).top === head;
    for (const { at, v, style } of this.#cells.filter((cell) => inHead(cell.at))) {
      const column = boxOf(at).left;
      const shown = v === undefined || v === null ? {} : { f: () => absolute(at), cached: v };
      this.put(column, { ...shown, ...(style === undefined ? {} : { style }) });
    }
    for (const at of this.#merges.filter(inHead)) this.merge({ ...boxOf(at), top: this.row, bottom: this.row });
    this.height(this.#heightOf(head));
    this.row += 1;
  }

  /** A table that stands: a short one is printed on one page, a long one with its heads on each. */
  table(head: number, bottom: number): void {
    this.#tables.push({ head, bottom });
  }

  put(column: number, cell: CellContent, row = this.row): void {
    this.#measure(column, column, cell, row);
    this.#place(column, cell, row);
  }

  #place(column: number, cell: CellContent, row: number): void {
    this.#cells.push({ at: addressOf(row, column), ...cell });
    if (cell.f !== undefined && this.#block !== undefined) this.#block.formulas.push([column, row - this.#block.top]);
    const head = cell.style === undefined ? undefined : HEADS[cell.style];
    if (head !== undefined) this.#together.push([row - head.before, row + head.after]);
  }

  /** A cell with its style over a whole merged stretch, so that borders and fills close. */
  merged(from: number, to: number, cell: CellContent): void {
    this.#measure(from, to, cell, this.row);
    this.#place(from, cell, this.row);
    for (let column = from + 1; column <= to; column += 1) {
      this.put(column, cell.style === undefined ? {} : { style: cell.style });
    }
    if (to > from) this.merge({ top: this.row, left: from, bottom: this.row, right: to });
  }

  /** Keeps how high the row has to be for this text in its columns. */
  #measure(from: number, to: number, { v, cached, style }: CellContent, row: number): void {
    const text = typeof v === "string" ? v : cached;
    const font = style === undefined ? {} : (this.#styles[style] ?? {});
    if (typeof text !== "string" || font.wrap !== true) return;
    const room = roomIn(this.#columns.slice(from, to + 1), font.indent);
    this.#needed[row] = Math.max(this.#needed[row] ?? 0, heightOf(linesIn(text, room, font), font));
  }

  /** A worked text over a merged stretch: a plain formula, for a merged cell holds no answer of the add-in. */
  across([from, to]: Stretch, expression: Expression, key: string, style: string): void {
    const cached = this.worked.cells.get(key);
    this.merged(from, to, { f: (textOf) => textOf(expression), cached: (cached ?? null) as Cell, style });
  }

  /** Rows that stand on one page, both counted, where one holds them all. */
  together(first: number, last: number): void {
    this.#together.push([first, last]);
  }

  merge(box: Box): void {
    this.#merges.push(rangeOf(box));
  }

  /**
   * A worked cell: its formula, and the value worked out for it under its key. What nothing moves stands as it is in the
   * workings; where a sheet is held against its formulas once it is opened again, it is one of them.
   */
  formula(column: number, expression: Expression, key: string, style: string, row = this.row): void {
    if (expression.op === "constant" && this.id === "workings") {
      this.put(column, { v: expression.value, style }, row);
      return;
    }
    const cached = this.worked.cells.get(key);
    this.put(
      column,
      {
        f: (textOf) => textOf(expression),
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
        f: (textOf) => textOf(expression),
        spill: rangeOf(box),
        style,
        ...(cached === undefined ? {} : { cached }),
      },
      box.top,
    );
  }

  /** Names a cell of this row on the sheet, and keeps its address. */
  name(key: string, column: number): void {
    this.keep(key, column);
    this.#names[this.#addresses.name(key)] = addressOf(this.row, column);
  }

  /** An input in a cell of this row, named by its key. */
  input(key: string, column: number, box: Omit<WrittenBox, "sheet" | "name">): void {
    this.name(key, column);
    this.#inputs.boxes.push({ sheet: this.#inputSheet, name: rangeName(key), ...box });
    this.#inputs.cells.push({ sheet: this.#inputSheet, key, label: box.label, written: box.written });
    if (box.basis !== undefined) this.#lastBasis = this.row;
  }

  /** What is said of inputs that nobody stated: live where the sheet knows whether they were changed since. */
  whileAsWritten(
    keys: readonly string[],
    text: string,
    changed: (isChanged: readonly boolean[]) => string,
  ): CellContent {
    if (!this.#isRecorded) return { v: text };
    const said = (
      left: readonly string[],
      seen: readonly boolean[],
      textOf: (expression: Expression) => string,
    ): string => {
      const [key, ...rest] = left;
      if (key === undefined) return `"${seen.includes(true) ? changed(seen) : text}"`;
      const isAsWritten = `${textOf({ op: "value", key: changedKey(key) })}=0`;
      return `IF(${isAsWritten},${said(rest, [...seen, false], textOf)},${said(rest, [...seen, true], textOf)})`;
    };
    return { f: (textOf) => said(keys, [], textOf), cached: text };
  }

  /** A table of inputs, which is kept already, in a range named by its key. */
  inputTable(key: string, range: Box, table: Omit<WrittenTable, "sheet" | "name">): void {
    this.#names[rangeName(key)] = rangeOf(range);
    this.#inputs.tables.push({ sheet: this.#inputSheet, name: rangeName(key), ...table });
    const all = this.#addresses.tableAt(key)?.range ?? range;
    const rows = all.bottom - all.top + 1;
    this.#inputs.ranges.push({ sheet: this.#inputSheet, key, label: `${table.label}: rows`, rows });
    for (const [i, { cells }] of table.rows.entries()) {
      for (const [j, cell] of cells.entries()) {
        const { key: of = "", label = "" } = table.columns[j] ?? {};
        if ("v" in cell)
          this.#inputs.cells.push({
            sheet: this.#inputSheet,
            key: tableCell(key, i, of),
            label: `${table.label}, row ${i + 1}: ${label}`,
            written: cell.v,
          });
      }
    }
  }

  /** A result in a cell of this row, named by its key. */
  result(key: string, column: number, label: string): void {
    this.name(key, column);
    if (this.id !== "workings") this.#inputs.results.push({ sheet: this.#inputSheet, name: rangeName(key), label });
  }

  /** Columns of worked cells in the rows of a named range, `across` counted from its left. */
  workedColumns(name: string, worked: Omit<WrittenWorked, "sheet" | "name">): void {
    this.#inputs.worked.push({ sheet: this.#inputSheet, name, ...worked });
  }

  /** Begins a table that figures rest on, so many columns wide, under its label: its formulas are held against what stands there later. */
  beginBlock(label: string, columns: number): void {
    this.#block = { label, top: this.row, formulas: [] };
    this.#blocks.push(this.#block);
    this.put(0, { v: label, style: "workingLabel" });
    this.reach(columns, WORKING_WIDTH);
    this.row += 1;
  }

  /** The tables that hold formulas. */
  blocks(): readonly WrittenBlock[] {
    const { id } = this;
    if (id === "duty") return [];
    return this.#blocks.flatMap(({ formulas, ...block }) =>
      formulas.length === 0 ? [] : [{ sheet: id, ...block, formulas: runsOf(formulas) }],
    );
  }

  get #inputSheet(): InputSheet {
    if (this.id === "workings") throw new Error("the workings hold no input");
    return this.id;
  }

  nameRange(name: string, range: Box): void {
    this.#names[name] = rangeOf(range);
  }

  nameTable(key: string): void {
    const at = this.#addresses.tableAt(key);
    if (at !== undefined) this.#names[this.#addresses.name(key)] = rangeOf(at.range);
  }

  keep(key: string, column: number, row = this.row): void {
    this.#addresses.keep(key, this.id, { top: row, left: column, bottom: row, right: column });
  }

  keepRange(key: string, box: Box): void {
    this.#addresses.keep(key, this.id, box);
  }

  keepTable(key: string, place: Omit<TablePlace, "sheet">): void {
    this.#addresses.keepTable(key, { sheet: this.id, ...place });
  }

  /** Also keeps a spilled table as a range that functions take by its key. */
  keepSpill(key: string, place: Omit<TablePlace, "sheet">): void {
    this.keepTable(key, place);
    this.#addresses.keep(key, this.id, place.range);
  }

  tableAt(key: string): TablePlace | undefined {
    return this.#addresses.tableAt(key);
  }

  rule(rule: RuleSpec): void {
    this.#rules.push(rule);
  }

  /**
   * Offers names in a cell of this row, and asks about what is none of them where nothing else may stand there: a stop
   * would refuse other words and the other spelling, which are read.
   */
  offer(column: number, { choices, takesNoOther }: Pick<Field, "choices" | "takesNoOther"> = {}): void {
    if (choices === undefined) return;
    const names = choices.map((name) => spelt(name, this.plan.unitSet));
    const ref = addressOf(this.row, column);
    const place = this.#choices.placeOf(names);
    this.#lists.push((seen) => {
      const from = place === undefined ? undefined : seen.series(place);
      return { ref, items: from === undefined ? names : { from }, ...(takesNoOther === true ? { asks: true } : {}) };
    });
  }

  chart(chart: ChartFacts, box: Box): void {
    this.#charts.push({ chart, box });
  }

  picture(picture: Omit<PictureSpec, "at">, box: Box): void {
    this.#pictures.push({ ...picture, at: rangeOf(box) });
  }

  /** Reserves these rows for what is as tall as the first page of the summary leaves room for. */
  fill(rows: number): void {
    this.#filling = { top: this.row, rows };
    this.row += rows;
  }

  /** From here on the summary stands on a second page, where one has no room for all of it. */
  startSecondPage(): void {
    this.#secondPage ??= this.row;
  }

  /** Ends the summary: gives its chart what room its first page leaves, where there is a second. */
  endSummary(): void {
    const full = pageHeight(this.#columns, this.plan.paper);
    const { top, rows } = this.#filling ?? { top: 0, rows: 0 };
    const heightTo = (end: number): number => {
      let height = 0;
      for (let row = 0; row < end; row += 1) if (row < top || row >= top + rows) height += this.#heightOf(row);
      return height;
    };
    const isOnePage = heightTo(this.row) + (rows === 0 ? 0 : FILLING.wanted) <= full;
    const second = isOnePage ? undefined : this.#secondPage;
    let room: number = FILLING.wanted;
    if (second !== undefined) {
      const [rest, above] = [full - heightTo(second), full - heightTo(top)];
      // A first page that has no room for all that is its own runs on into the second: no page for its last lines. The
      // chart ends it where the room above those is enough.
      const isWhole = rest >= (rows === 0 ? 0 : FILLING.least);
      if (isWhole) this.#breaks.push(second);
      if (isWhole || above >= FILLING.least) room = isWhole ? rest : above;
    }
    const points = Math.min(FILLING.most, room);
    for (let row = top; row < top + rows; row += 1) this.height(Math.floor((10 * points) / rows) / 10, row);
  }

  #heightOf(row: number): number {
    return this.#heights[row + 1] ?? ROW_HEIGHT;
  }

  numberStyle(quantity: Shown, kind: keyof typeof STYLE_OF = "number"): string {
    const format = numberFormat(quantity, this.plan.unitSet);
    const key = `${kind} ${format}`;
    this.#styles[key] ??= STYLE_OF[kind](format);
    return key;
  }

  /** Of a stated figure: as it was typed; one that was brought over from another unit by as many figures as are of use. */
  inputStyle(value: unknown, money?: InputItem["money"]): string {
    const format = typeof value === "number" ? (moneyFormat(value, money) ?? shortFormat(value)) : undefined;
    if (format === undefined) return "inputNumber";
    const key = `inputNumber ${format}`;
    this.#styles[key] ??= { ...STYLES.inputNumber, numFmt: format };
    return key;
  }

  height(points: number, row = this.row): void {
    // No host has a higher one; what a longer text has beyond is read in its cell.
    this.#heights[row + 1] = Math.min(points, LIMITS.rowHeight);
  }

  /** Leaves the row, high enough for its longest text; the next is the first of a page where one begins there. */
  next(): void {
    this.nextOfRange();
    this.continueHere();
  }

  /** Leaves a little room before what follows. */
  space(points: number): void {
    this.height(points);
    this.row += 1;
  }

  /** Leaves a row of a range that nothing may stand in. */
  nextOfRange(): void {
    this.height(Math.max(ROW_HEIGHT, this.#needed[this.row] ?? 0));
    this.row += 1;
  }

  /** This row heads the columns, on every page from here on. */
  headColumns(): void {
    this.#heads = this.row;
  }

  /** Begins a section: the number it is quoted by. */
  startSection(title: string): string {
    this.#sections.push({ top: this.row, title });
    this.#lines = 0;
    this.#citedHere.clear();
    return String(this.#sections.length);
  }

  /** Gives the row the number it is quoted by, and the references of what stands in it. */
  number(item?: PlanItem, style: "lineNumber" | "listNumber" = "lineNumber"): void {
    if (this.#sections.length === 0) return;
    this.#lines += 1;
    this.put(NUMBER, { v: `${this.#sections.length}.${this.#lines}`, style });
    if (item !== undefined) this.cite(item);
  }

  /** The references of an item that its section has not yet shown, in this row. */
  cite(item: PlanItem): void {
    if (this.#sections.length === 0) return;
    const cited = (this.plan.references?.get(item) ?? []).filter((number) => !this.#citedHere.has(number));
    for (const number of cited) this.#citedHere.add(number);
    if (cited.length > 0) this.put(REFERENCE, { v: `[${inRuns(cited)}]`, style: "reference" });
  }

  /** Where what a row is about stands: after the number of the row, and from the edge where rows have none. */
  get labels(): Stretch {
    return this.#sections.length === 0 ? [NUMBER, LABEL] : [LABEL, LABEL];
  }

  /** Says that the sheet has at least so many columns, and how wide those are that it had not. */
  reach(columns: number, width: number): void {
    while (this.#columns.length < columns) this.#columns.push(width);
  }
}

/** The key of the cell that says whether an input was changed since the sheet was written. */
export function changedKey(input: string): string {
  return `changed: ${input}`;
}

/** A section or a table of no more than this share of a page is not cut. House choice. */
const KEPT = { section: 0.1, table: 0.2 } as const;

/** "4–9, 11": three or more in a row as from and to. */
function inRuns(numbers: readonly number[]): string {
  const runs: [first: number, last: number][] = [];
  for (const number of numbers) {
    const run = runs.at(-1);
    if (run?.[1] === number - 1) run[1] = number;
    else runs.push([number, number]);
  }
  return runs
    .map(([first, last]) =>
      last - first > 1 ? `${first}–${last}` : first === last ? String(first) : `${first}, ${last}`,
    )
    .join(", ");
}

/** Of each stretch of rows what stays on one page: all of a small one; its heading and what it begins with, and its last rows. */
function keptWhole(
  stretches: readonly (readonly [first: number, last: number])[],
  heightAt: (row: number) => number,
  small: number,
): readonly (readonly [first: number, last: number])[] {
  return stretches.flatMap(([first, last]) => {
    let height = 0;
    for (let row = first; row <= last; row += 1) height += heightAt(row);
    if (height <= small) return [[first, last] as const];
    return [[first, Math.min(last, first + 3)] as const, [Math.max(first, last - 1), last] as const];
  });
}

/** Digits of a figure that nobody typed, and those of it that are shown. House choice. */
const TYPED = 9;
const SHOWN = 4;

/** Of stated money: no decimal of what was typed is hidden. */
function moneyFormat(value: number, money: InputItem["money"]): string | undefined {
  if (money === undefined) return undefined;
  return money === "amount" && Number.isInteger(value) ? numberFormat("money", "SI") : UNIT_PRICE_FORMAT;
}

/** A number format for a figure that conversion gave more digits than anybody types. */
function shortFormat(value: number): string | undefined {
  if (String(value).replace(/[-.]|e.*$/g, "").length <= TYPED) return undefined;
  const places = SHOWN - 1 - Math.floor(Math.log10(Math.abs(value)));
  return places <= 0 ? "#,##0" : `#,##0.${"0".repeat(Math.min(places, 12))}`;
}

function chartSpec({ series, ...titles }: ChartFacts, box: Box, seen: SeenAddresses): XYChartSpec {
  return {
    at: rangeOf(box),
    ...titles,
    series: series.flatMap(({ x, y, rows, ...rest }) => {
      const [xs, ys] = [seen.series(x, rows), seen.series(y, rows)];
      if (xs === undefined || ys === undefined) return [];
      return [{ ...rest, ...(rest.pointsOnly === true ? { markers: true } : {}), x: xs, y: ys }];
    }),
  };
}
