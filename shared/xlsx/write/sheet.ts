import { rangeOf } from "../../ports/a1.ts";
import { MARGINS } from "../../ports/paper.ts";
import type { PrintSpec, RuleSpec, SheetSpec } from "../../ports/sheet-spec.ts";
import { COLUMN_MARGIN, PAPER_SIZES } from "../format-facts.ts";
import { encodeFormula } from "../formula-text.ts";
import { attributes, DECLARATION, xmlText } from "../xml-text.ts";
import { type CellTables, sheetData } from "./cell-elements.ts";
import { dataValidations, type ListSheet } from "./drop-downs.ts";
import type { FileCell } from "./file-cells.ts";
import { MAIN, RELATIONSHIPS } from "./schemas.ts";
import type { StyleTable } from "./styles.ts";

export interface SheetTables extends CellTables {
  readonly lists: ListSheet;
}

const LAST_COLUMN = 16_383;

/** The text of a worksheet part; its drawing, where it has charts or pictures, is rId1. The order of the elements is the schema's. */
export function sheetPart(
  spec: SheetSpec,
  cells: ReadonlyMap<string, FileCell>,
  tables: SheetTables,
  isShown: boolean,
): string {
  return [
    `${DECLARATION}<worksheet xmlns="${MAIN}" xmlns:r="${RELATIONSHIPS}">`,
    spec.print === undefined || spec.print.scale !== undefined ? "" : '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>',
    `<dimension ref="${extent(cells)}"/>`,
    view(spec, isShown),
    '<sheetFormatPr defaultRowHeight="12.75"/>',
    columns(spec.columns),
    sheetData(spec, cells, tables),
    spec.isProtected === true ? '<sheetProtection sheet="1" objects="1" scenarios="1"/>' : "",
    merges(spec.merges ?? []),
    rules(spec.rules ?? [], tables.styles),
    dataValidations(spec.lists ?? [], tables.lists),
    `<pageMargins${attributes(MARGINS)}/>`,
    spec.print === undefined ? "" : printed(spec.print),
    (spec.charts ?? []).length + (spec.pictures ?? []).length === 0 ? "" : '<drawing r:id="rId1"/>',
    "</worksheet>",
  ].join("");
}

function extent(cells: ReadonlyMap<string, FileCell>): string {
  let bottom = 0;
  let right = 0;
  for (const { row, column } of cells.values()) {
    bottom = Math.max(bottom, row);
    right = Math.max(right, column);
  }
  return rangeOf({ top: 0, left: 0, bottom, right });
}

function view({ gridlines, freezeRows = 0 }: SheetSpec, shown: boolean): string {
  const facts = attributes({
    showGridLines: gridlines === false ? "0" : undefined,
    tabSelected: shown,
    workbookViewId: "0",
  });
  const below = `A${freezeRows + 1}`;
  const pane =
    freezeRows === 0
      ? ""
      : `<pane ySplit="${freezeRows}" topLeftCell="${below}" activePane="bottomLeft" state="frozen"/><selection pane="bottomLeft" activeCell="${below}" sqref="${below}"/>`;
  return `<sheetViews><sheetView${facts}>${pane}</sheetView></sheetViews>`;
}

function columns(widths: readonly number[]): string {
  if (widths.length === 0) return "";
  const lines = widths.map(
    (width, i) => `<col min="${i + 1}" max="${i + 1}" width="${width + COLUMN_MARGIN}" customWidth="1"/>`,
  );
  return `<cols>${lines.join("")}</cols>`;
}

function merges(ranges: readonly string[]): string {
  if (ranges.length === 0) return "";
  const lines = ranges.map((range) => `<mergeCell ref="${range.replaceAll("$", "")}"/>`);
  return `<mergeCells count="${ranges.length}">${lines.join("")}</mergeCells>`;
}

function rules(specs: readonly RuleSpec[], styles: StyleTable): string {
  return specs
    .map(
      ({ ref, when, style }, i) =>
        `<conditionalFormatting sqref="${ref.replaceAll("$", "")}"><cfRule type="expression" dxfId="${styles.ofRule(
          style,
        )}" priority="${i + 1}"><formula>${xmlText(encodeFormula(when))}</formula></cfRule></conditionalFormatting>`,
    )
    .join("");
}

/** At the scale stated, or one page wide and as many long as it takes; on whatever paper the reader has where none is named. */
function printed({ orientation, paper, scale, header, footer, breaks = [] }: PrintSpec): string {
  const paperSize = paper === undefined ? undefined : PAPER_SIZES[paper];
  const setup = `<pageSetup${attributes(
    scale === undefined ? { paperSize, orientation, fitToWidth: 1, fitToHeight: 0 } : { paperSize, scale, orientation },
  )}/>`;
  const line = (tag: "oddHeader" | "oddFooter", text: string | undefined): string => {
    return text === undefined ? "" : `<${tag}>${xmlText(text)}</${tag}>`;
  };
  const around =
    header === undefined && footer === undefined
      ? ""
      : `<headerFooter>${line("oddHeader", header)}${line("oddFooter", footer)}</headerFooter>`;
  const ends = breaks.map((row) => `<brk id="${row}" max="${LAST_COLUMN}" man="1"/>`);
  return `${setup}${around}${
    ends.length === 0
      ? ""
      : `<rowBreaks count="${ends.length}" manualBreakCount="${ends.length}">${ends.join("")}</rowBreaks>`
  }`;
}
