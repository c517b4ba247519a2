import type { ICellData, IDataValidationRule, IRange, IStyleData, Nullable } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/preset-sheets-core";
import type { Cell } from "../shared/cells/cell.ts";
import { absolute, addressOf, type Box, rangeOf } from "../shared/ports/a1.ts";
import { NAMESPACE } from "../shared/ports/namespace.ts";
import { referenceParts, writtenFrom } from "../shared/ports/reference.ts";
import type { CellSpec, ListSpec, RuleSpec, SheetSpec, StyleSpec } from "../shared/ports/sheet-spec.ts";
import { greatestOf } from "../src/numeric/extremes.ts";
import { isChartAnchor } from "./grid-charts.ts";
import { namedFormula } from "./grid-formula.ts";
import type { Grid, GridHost } from "./grid-host.ts";
import { cellContent, columnCharacters, rowPoints } from "./grid-sheet.ts";
import { styleSpec } from "./grid-style.ts";

type CellRows = Readonly<Record<string, Readonly<Record<string, ICellData | null>>>>;

/** Of a column nobody has set. */
export const DEFAULT_COLUMN_PIXELS = 88;

/**
 * Every sheet of the grid as data, with the user's edits: what a downloaded file is written from. Formulas carry the
 * answers they have now: settled ones, where the caller has waited for them. Of looks, what a SheetSpec can say is kept: no fonts, underlining or comments, and no pictures but those of our own sheets.
 */
export function gridSnapshot(grid: Grid, host: GridHost): readonly SheetSpec[] {
  const sheets = grid.api.getActiveWorkbook()?.getSheets() ?? [];
  const names = new Map(
    sheets.map((sheet) => [sheet.getSheetName().toLowerCase(), namesByRange(grid, sheet)] as const),
  );
  return sheets.map((sheet) => sheetSnapshot(grid, host, sheet, names));
}

/** The name of each range of a sheet that has one. */
function namesByRange(grid: Grid, sheet: FWorksheet): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(namesOn(grid, sheet))
      .map(([name, range]) => [absolute(range), name] as const)
      // Of two names of one range the first is taken.
      .reverse(),
  );
}

function namesOn({ api, inside }: Grid, sheet: FWorksheet): Readonly<Record<string, string>> {
  const names = inside.namesOf(api.getActiveWorkbook()?.getId() ?? "", sheet.getSheetId());
  return Object.fromEntries(
    names.flatMap(({ name, range }) => (isChartAnchor(name) || range === undefined ? [] : [[name, range] as const])),
  );
}

function sheetSnapshot(
  grid: Grid,
  host: GridHost,
  sheet: FWorksheet,
  names: ReadonlyMap<string, ReadonlyMap<string, string>>,
): SheetSpec {
  const { api, inside, messages } = grid;
  const workbook = api.getActiveWorkbook();
  if (workbook === null) throw new Error("no workbook is open");
  const book = workbook.getId();
  const id = sheet.getSheetId();
  const data = sheet.getSheet().getConfig();
  const workbookStyles = workbook.getWorkbook().getStyles();
  const styles = new Map<string, { readonly key: string; readonly spec: StyleSpec }>();

  const styleKey = (style: Nullable<string | IStyleData>): string | undefined => {
    if (typeof style !== "string" && typeof style !== "object") return undefined;
    if (style === null) return undefined;
    const given = typeof style === "string" ? host.styleOf(style) : undefined;
    const own = workbookStyles.get(style);
    const spec = given ?? (own === null || own === undefined ? {} : styleSpec(own));
    if (Object.keys(spec).length === 0) return undefined;
    const text = JSON.stringify(spec);
    const known = styles.get(text) ?? { key: `style ${styles.size + 1}`, spec };
    styles.set(text, known);
    return known.key;
  };

  const answerAt = (row: number, column: number): Cell => {
    const own = data.cellData[row]?.[column];
    const holds = own?.v !== undefined && own.v !== null;
    const content = cellContent(holds || own?.p ? own : inside.spilledCell(book, id, row, column));
    if (typeof content !== "object" || content === null) return content;
    const message = messages.errorAt({ sheet: id, row, column });
    return message === undefined ? content : { ...content, message };
  };

  const answersIn = (box: Box): readonly (readonly Cell[])[] =>
    Array.from({ length: box.bottom - box.top + 1 }, (_, i) =>
      Array.from({ length: box.right - box.left + 1 }, (__, j) => answerAt(box.top + i, box.left + j)),
    );

  /** As a file holds it: the grid knows no names in formulas. */
  const written = (formula: string): string =>
    namedFormula(withUpperCaseCalls(formula.replace(/^=/, "")), names, sheet.getSheetName().toLowerCase());

  const cells: CellSpec[] = [];
  for (const [row, line] of Object.entries(data.cellData as CellRows)) {
    for (const [column, cell] of Object.entries(line)) {
      const at = { row: Number(row), column: Number(column) };
      const key = styleKey(cell?.s);
      const style = key === undefined ? {} : { style: key };
      const address = addressOf(at.row, at.column);
      const formula = inside.formulaOf(book, id, at.row, at.column);
      if (formula !== undefined && formula !== "") {
        const f = written(formula);
        const spill = inside.spillOf(book, id, at.row, at.column);
        const answer = answerAt(at.row, at.column);
        const filled = spill !== undefined && !isBlocked(answer) && isWide(spill) ? spill : undefined;
        cells.push({
          at: address,
          f,
          ...(filled === undefined ? { cached: answer } : { spill: rangeOf(filled), cached: answersIn(filled) }),
          ...style,
        });
        continue;
      }
      const content = cellContent(cell);
      if (content === null && key === undefined) continue;
      const v = typeof content === "object" && content !== null ? content.error : content;
      cells.push({ at: address, ...(v === null ? {} : { v }), ...style });
    }
  }

  const lists = sheet.getDataValidations().flatMap(({ rule }) => listSpecs(rule, sheet.getSheetName()));
  const rules = sheet.getConditionalFormattingRules().flatMap(({ ranges, rule }): RuleSpec[] => {
    if (rule.type !== "highlightCell" || !("subType" in rule) || rule.subType !== "formula") return [];
    const look = styleSpec(rule.style);
    const style = {
      ...(look.color === undefined ? {} : { color: look.color }),
      ...(look.fill === undefined ? {} : { fill: look.fill }),
      ...(look.bold === undefined ? {} : { bold: look.bold }),
    };
    return ranges.map((range) => ({ ref: a1(range), when: written(String(rule.value)), style }));
  });
  const lastColumn = Math.max(-1, greatestOf(Object.keys(data.columnData).map(Number)));
  return {
    name: sheet.getSheetName(),
    columns: Array.from({ length: lastColumn + 1 }, (_, i) =>
      columnCharacters(data.columnData[i]?.w ?? DEFAULT_COLUMN_PIXELS),
    ),
    rowHeights: Object.fromEntries(
      Object.entries(data.rowData).flatMap(([row, { h, ia } = {}]) =>
        h === undefined || ia !== 0 ? [] : [[Number(row) + 1, rowPoints(h)]],
      ),
    ),
    styles: Object.fromEntries([...styles.values()].map(({ key, spec }) => [key, spec])),
    cells,
    merges: data.mergeData.map(a1),
    names: namesOn(grid, sheet),
    lists,
    rules,
    ...host.keptOf(id),
    ...(data.freeze.ySplit > 0 ? { freezeRows: data.freeze.ySplit } : {}),
    ...(data.showGridlines === 0 ? { gridlines: false } : {}),
  };
}

function listSpecs(
  { type, formula1, prompt, ranges, showErrorMessage, errorStyle }: IDataValidationRule,
  sheet: string,
): ListSpec[] {
  if (type !== "list" || formula1 === undefined) return [];
  const items = formula1.startsWith("=") ? { from: fromOn(sheet, formula1.slice(1)) } : listItems(formula1);
  const [STOP, WARNING] = [1, 2];
  return (ranges as readonly IRange[]).map((range) => ({
    ref: a1(range),
    items,
    ...(prompt === undefined || prompt === "" ? {} : { help: prompt }),
    ...(errorStyle === STOP && showErrorMessage === true ? { strict: true } : {}),
    ...(errorStyle === WARNING && showErrorMessage === true ? { asks: true } : {}),
  }));
}

function fromOn(sheet: string, reference: string): string {
  const { sheet: on = sheet, target } = referenceParts(reference);
  // The grid puts the workbook's own id before the sheet.
  return writtenFrom(sheet, on.replace(/^\[[^\]]*\]/, ""), target.replaceAll("$", ""));
}

/** The grid keeps the items of a list as JSON; a list made in its own dialog, with commas between. */
function listItems(text: string): readonly string[] {
  try {
    const items: unknown = JSON.parse(text);
    if (Array.isArray(items)) return items.map(String);
  } catch {
    // Not JSON, then.
  }
  return text.split(",");
}

function a1({ startRow, startColumn, endRow, endColumn }: IRange): string {
  return rangeOf({ top: startRow, left: startColumn, bottom: endRow, right: endColumn });
}

function isWide({ top, left, bottom, right }: Box): boolean {
  return top !== bottom || left !== right;
}

function isBlocked(answer: Cell): boolean {
  return typeof answer === "object" && answer !== null && answer.error === "#SPILL!";
}

/** The grid takes duty.bore( as it comes; a file is written with the released spelling. */
function withUpperCaseCalls(formula: string): string {
  const call = new RegExp(String.raw`("(?:[^"]|"")*")|\b(${NAMESPACE}\.[\w.]+)(?=\()`, "gi");
  return formula.replace(call, (whole, quoted?: string) => (quoted === undefined ? whole.toUpperCase() : whole));
}
