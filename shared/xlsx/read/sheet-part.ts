import type { Cell } from "../../cells/cell.ts";
import { addressOf, boxOf } from "../../ports/a1.ts";
import type { Paper, PrintSpec, RuleSpec } from "../../ports/sheet-spec.ts";
import { COLUMN_MARGIN, PAPER_SIZES } from "../format-facts.ts";
import { decodeFormula, type SharedFormula, sharedFormula } from "../formula-text.ts";
import { readCellText } from "../xml-text.ts";
import type { Archive } from "./archive.ts";
import type { Limits } from "./limits.ts";
import { refuse } from "./refusal.ts";
import type { ReadStyles } from "./styles-part.ts";
import { checkText, withinText } from "./text-length.ts";
import type { ReadCell, ReadRow } from "./workbook-content.ts";
import { type Attributes, isOn, readPart } from "./xml-part.ts";

/** A drop-down as the file has it: its source may be a text in quotes, a range, or a name. */
export interface RawList {
  readonly ref: string;
  readonly source: string;
  readonly help?: string;
  readonly strict: boolean;
  readonly asks?: true;
}

/** What one worksheet part says, before the names of the workbook are known. */
export interface SheetContent {
  readonly rows: readonly ReadRow[];
  readonly columns: readonly number[];
  readonly rowHeights: Readonly<Record<number, number>>;
  readonly merges: readonly string[];
  readonly lists: readonly RawList[];
  readonly rules: readonly RuleSpec[];
  readonly freezeRows: number;
  readonly gridlines: boolean;
  readonly print: Pick<PrintSpec, "orientation" | "paper" | "scale" | "breaks" | "header" | "footer">;
}

/** What the cells of a sheet are read with. */
export interface SheetReading {
  readonly name: string;
  readonly strings: readonly string[];
  readonly styles: ReadStyles;
  readonly counted1904: boolean;
  /** Counts filled cells of the workbook and refuses one too many. */
  readonly count: (cells: number) => void;
  /** Counts the letters of its formulas, and refuses beyond what all may have. */
  readonly countFormula: (letters: number) => void;
}

const LAST_ROW = 1_048_576;
const LAST_COLUMN = 16_384;
/** A formula of a file carries marks that a reader of it does not see. */
const FORMULA_STORED = 2;
/** Days from the first day of one calendar to that of the other. */
const DAYS_1900_TO_1904 = 1462;
const DAY = 86_400_000;

interface OpenCell {
  readonly type: string;
  readonly style: number;
  formula?: { readonly attributes: Attributes; text: string };
  value: string;
  inline: string;
}

export function readSheet(archive: Archive, path: string, reading: SheetReading, limits: Limits): SheetContent {
  const rows: { row: number; cells: ReadCell[] }[] = [];
  const columns: number[] = [];
  const rowHeights: Record<number, number> = {};
  const merges: string[] = [];
  const lists: RawList[] = [];
  const rules: RuleSpec[] = [];
  const breaks: number[] = [];
  const words: { oddHeader?: string; oddFooter?: string } = {};
  const shared = new Map<string, { readonly at: SharedFormula; readonly row: number; readonly column: number }>();
  let freezeRows = 0;
  let gridlines = true;
  let orientation: PrintSpec["orientation"] = "portrait";
  let paper: Paper | undefined;
  let scale: number | undefined;
  let fits = false;

  let row = -1;
  let column = -1;
  let cell: OpenCell | undefined;
  let readings = 0;
  let ruleRange = "";
  let rule: { style: number; when: string } | undefined;
  let list: { ref: string; source: string; help: string | undefined; strict: boolean; asks: boolean } | undefined;
  let take: ((text: string) => void) | undefined;
  let isWorksheet = false;
  let widths = 0;

  /** Keeps what stands at each area of a list, and refuses more areas than a sheet has. */
  const keepAreas = <T>(kept: T[], references: string, of: (ref: string) => T): void => {
    for (const ref of areas(references)) {
      if (kept.length >= limits.areas)
        refuse("too-large", `Sheet ${reading.name} has more than ${limits.areas} merged cells, rules or drop-downs.`);
      kept.push(of(ref));
    }
  };
  const where = (): string => `Sheet ${reading.name}, ${addressOf(row, column)}: its text`;

  const place = (reference: string | undefined): void => {
    if (reference === undefined) column += 1;
    else {
      const box = /^[A-Z]{1,3}[1-9][0-9]{0,6}$/.test(reference)
        ? boxOf(reference)
        : refuse("damaged", `Sheet ${reading.name}: "${reference}" is not a cell.`);
      row = box.top;
      column = box.left;
    }
    if (row < 0 || row >= LAST_ROW || column >= LAST_COLUMN)
      refuse("damaged", `Sheet ${reading.name} has a cell beyond the last row or column.`);
  };

  const open = (name: string, at: Attributes): void => {
    if (!isWorksheet && name !== "worksheet")
      refuse("damaged", `What stands for sheet ${reading.name} is not a worksheet. Save the workbook again.`);
    isWorksheet = true;
    switch (name) {
      case "row": {
        row = at["r"] === undefined ? row + 1 : Number(at["r"]) - 1;
        if (!(Number.isInteger(row) && row >= 0 && row < LAST_ROW))
          refuse("damaged", `Sheet ${reading.name}: "${at["r"]}" is not a row.`);
        column = -1;
        const height = Number(at["ht"]);
        if (isOn(at["customHeight"]) && height > 0) rowHeights[row + 1] = height;
        break;
      }
      case "c":
        place(at["r"]);
        cell = { type: at["t"] ?? "n", style: Number(at["s"] ?? 0), value: "", inline: "" };
        break;
      case "v":
        take = (text) => {
          if (cell === undefined) return;
          cell.value += text;
          checkText(cell.value, where, limits);
        };
        break;
      case "f":
        if (cell !== undefined) {
          const formula = { attributes: at, text: "" };
          cell.formula = formula;
          take = (text) => {
            formula.text += text;
            if (formula.text.length > FORMULA_STORED * limits.formula) refuseFormula();
          };
        }
        break;
      case "rPh":
        readings += 1;
        break;
      case "t":
        if (readings === 0)
          take = (text) => {
            if (cell === undefined) return;
            cell.inline += text;
            checkText(cell.inline, where, limits);
          };
        break;
      case "col":
        widths += setWidths(columns, at);
        if (widths > 2 * LAST_COLUMN)
          refuse("damaged", `Sheet ${reading.name} states its column widths over and over.`);
        break;
      case "mergeCell":
        keepAreas(merges, at["ref"] ?? "", (ref) => ref);
        break;
      case "sheetView":
        gridlines = isOn(at["showGridLines"] ?? "1");
        break;
      case "pane":
        if (at["state"] === "frozen" || at["state"] === "frozenSplit") freezeRows = Number(at["ySplit"] ?? 0);
        break;
      case "conditionalFormatting":
        ruleRange = at["sqref"] ?? "";
        break;
      case "cfRule":
        rule = at["type"] === "expression" ? { style: Number(at["dxfId"] ?? -1), when: "" } : undefined;
        break;
      case "formula":
        take = (text) => {
          if (rule !== undefined) rule.when += text;
        };
        break;
      case "dataValidation":
        list =
          at["type"] === "list"
            ? { ref: at["sqref"] ?? "", source: "", help: at["prompt"], strict: isStrict(at), asks: asks(at) }
            : undefined;
        break;
      case "formula1":
        take = (text) => {
          if (list !== undefined) list.source += text;
        };
        break;
      case "sqref":
        take = (text) => {
          if (list !== undefined) list.ref += text;
        };
        break;
      case "pageSetup":
        if (at["orientation"] === "landscape") orientation = "landscape";
        paper = (["A4", "Letter"] as const).find((one) => at["paperSize"] === String(PAPER_SIZES[one]));
        scale = at["scale"] === undefined ? undefined : Number(at["scale"]);
        break;
      case "pageSetUpPr":
        fits = isOn(at["fitToPage"]);
        break;
      case "oddHeader":
      case "oddFooter":
        take = (text) => {
          words[name] = (words[name] ?? "") + text;
        };
        break;
      case "brk":
        if (Number(at["id"]) > 0 && at["max"] !== String(LAST_ROW - 1)) breaks.push(Number(at["id"]));
        break;
    }
  };

  const close = (name: string): void => {
    if (["v", "f", "t", "formula", "formula1", "sqref", "oddHeader", "oddFooter"].includes(name)) take = undefined;
    if (name === "rPh") readings -= 1;
    else if (name === "c" && cell !== undefined) {
      keep(cell);
      cell = undefined;
    } else if (name === "cfRule" && rule !== undefined) {
      const style = reading.styles.rules[rule.style];
      if (style !== undefined) {
        const when = decodeFormula(rule.when);
        keepAreas(rules, ruleRange, (ref) => ({ ref, when, style }));
      }
      rule = undefined;
    } else if (name === "dataValidation" && list !== undefined) {
      const { source, help, strict, asks } = list;
      keepAreas(lists, list.ref, (ref) => ({
        ref,
        source,
        strict,
        ...(asks ? { asks } : {}),
        ...(help === undefined ? {} : { help }),
      }));
      list = undefined;
    }
  };

  const keep = (open: OpenCell): void => {
    const read = cellValue(open, reading, addressOf(row, column));
    const value = typeof read === "string" ? withinText(read, where, limits) : read;
    const formula = formulaOf(open);
    if (formula !== undefined) reading.countFormula(formula.length);
    const styled = open.style > 0 && Object.keys(reading.styles.cells[open.style] ?? {}).length > 0;
    if (value === null && formula === undefined && !styled) return;
    const spill = formula === undefined ? undefined : spillOf(open, row, column);
    reading.count(spill === undefined ? 1 : cellsIn(spill));
    if (rows.at(-1)?.row !== row) rows.push({ row, cells: [] });
    rows.at(-1)?.cells.push({
      row,
      column,
      value,
      style: open.style,
      ...(formula === undefined ? {} : { formula }),
      ...(spill === undefined ? {} : { spill }),
    });
  };

  const refuseFormula = (): never =>
    refuse(
      "too-large",
      `Sheet ${reading.name}, ${addressOf(row, column)}: its formula has more than ${limits.formula} characters, the most that a cell holds.`,
    );

  const formulaOf = ({ formula }: OpenCell): string | undefined => {
    if (formula === undefined) return undefined;
    const { t, si = "" } = formula.attributes;
    if (t === "shared" && formula.text === "") {
      const first = shared.get(si);
      return first === undefined ? undefined : first.at(row - first.row, column - first.column);
    }
    if (formula.text === "") return undefined;
    const text = decodeFormula(formula.text);
    if (text.length > limits.formula) refuseFormula();
    if (t === "shared") shared.set(si, { at: sharedFormula(text), row, column });
    return text;
  };

  readPart(archive, path, { open, close, text: (text) => take?.(text) }, limits);
  return {
    rows,
    columns,
    rowHeights,
    merges,
    lists,
    rules,
    freezeRows,
    gridlines,
    print: {
      orientation,
      ...(paper === undefined ? {} : { paper }),
      ...(fits || !(scale !== undefined && scale >= 10 && scale <= 400) ? {} : { scale }),
      ...(breaks.length === 0 ? {} : { breaks }),
      ...(words.oddHeader === undefined ? {} : { header: words.oddHeader }),
      ...(words.oddFooter === undefined ? {} : { footer: words.oddFooter }),
    },
  };
}

function cellValue({ type, value, inline, style }: OpenCell, reading: SheetReading, at: string): Cell {
  switch (type) {
    case "s": {
      if (value === "") return null;
      return reading.strings[Number(value)] ?? refuse("damaged", `Sheet ${reading.name}, ${at}: its text is missing.`);
    }
    case "str":
      return readCellText(value);
    case "inlineStr":
      return readCellText(inline);
    case "b":
      return isOn(value);
    case "e":
      return { error: value };
    case "d":
      return dayNumber(value) ?? refuse("damaged", `Sheet ${reading.name}, ${at}: "${value}" is not a date.`);
    default: {
      if (value === "") return null;
      const number = Number(value);
      if (!Number.isFinite(number))
        return refuse("damaged", `Sheet ${reading.name}, ${at}: "${value}" is not a number.`);
      return reading.counted1904 && reading.styles.dates[style] === true ? number + DAYS_1900_TO_1904 : number;
    }
  }
}

/** The range that an array formula fills, where that is more than its own cell. */
function spillOf({ formula }: OpenCell, row: number, column: number): string | undefined {
  const ref = formula?.attributes["t"] === "array" ? areas(formula.attributes["ref"] ?? "")[0] : undefined;
  if (ref === undefined) return undefined;
  const { top, left } = boxOf(ref);
  return top === row && left === column && cellsIn(ref) > 1 ? ref : undefined;
}

function cellsIn(ref: string): number {
  const { top, left, bottom, right } = boxOf(ref);
  return (bottom - top + 1) * (right - left + 1);
}

/** Days from 1899-12-30 of an ISO date, which is how sheets count from March 1900 on. */
function dayNumber(iso: string): number | undefined {
  const zoned = /Z$|[+-]\d\d:\d\d$/.test(iso) || !iso.includes("T");
  const time = Date.parse(zoned ? iso : `${iso}Z`);
  return Number.isNaN(time) ? undefined : (time - Date.UTC(1899, 11, 30)) / DAY;
}

/** Sets the widths of a run of columns and tells how many. */
function setWidths(columns: number[], at: Attributes): number {
  const first = Number(at["min"]) - 1;
  const last = Math.min(Number(at["max"]), LAST_COLUMN) - 1;
  const width = Number(at["width"]);
  // A run to the last column is the format of the empty rest of the sheet.
  if (!(first >= 0 && last >= first && width >= 0) || last === LAST_COLUMN - 1) return 0;
  while (columns.length < first) columns.push(USUAL_WIDTH);
  for (let i = first; i <= last; i += 1)
    columns[i] = isOn(at["hidden"]) ? 0 : Math.max(0, Math.round((width - COLUMN_MARGIN) * 1000) / 1000);
  return last - first + 1;
}

/** Characters, where a file says nothing. */
const USUAL_WIDTH = 8.43;

function isStrict(at: Attributes): boolean {
  return isOn(at["showErrorMessage"]) && (at["errorStyle"] ?? "stop") === "stop";
}

function asks(at: Attributes): boolean {
  return isOn(at["showErrorMessage"]) && at["errorStyle"] === "warning";
}

function areas(references: string): readonly string[] {
  return references
    .split(" ")
    .filter((reference) => /^\$?[A-Z]{1,3}\$?[1-9]\d{0,6}(:\$?[A-Z]{1,3}\$?[1-9]\d{0,6})?$/.test(reference));
}
