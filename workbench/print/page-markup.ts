import { marginLine, marginParts } from "../../shared/ports/margin-text.ts";
import { MARGINS } from "../../shared/ports/paper.ts";
import { BORDER_COLORS, type BorderSide, type StyleSpec } from "../../shared/ports/sheet-spec.ts";
import { type Pages, placeOn } from "./pages.ts";
import { escaped, type SeenCell, type SheetToPrint } from "./sheet-to-print.ts";

/** What headers and footers may say beside the page and the sheet, as it is to be read. */
export interface PrintFacts {
  readonly file: string;
  readonly date: string;
  readonly time: string;
  /** How small letters are set for the ones there are to be as wide as those the sheet was made for; 1 where they are. */
  readonly letters: number;
}

/** The pages of a sheet as markup; its looks are those of print.css. */
export function pagesMarkup(sheet: SheetToPrint, pages: Pages, facts: PrintFacts): string {
  const merged = new Set(
    sheet.merges.flatMap(({ top, left, bottom, right }) =>
      spanOf(top, bottom).flatMap((row) => spanOf(left, right).map((column) => `${row} ${column}`)),
    ),
  );
  return pages.rows.map((rows, i) => pageMarkup(sheet, pages, rows, i, facts, merged)).join("");
}

function pageMarkup(
  sheet: SheetToPrint,
  pages: Pages,
  rows: readonly number[],
  index: number,
  facts: PrintFacts,
  merged: ReadonlySet<string>,
): string {
  const { width, height, scale, columns } = pages;
  const { print, merges, drawings, cellAt } = sheet;
  const parts: string[] = [];
  const line = (text: string | undefined, edge: "top" | "bottom"): string => {
    if (text === undefined) return "";
    const all = { ...facts, page: index + 1, pages: pages.rows.length, sheet: sheet.name };
    const { left, center, right } = marginParts(text);
    const shown = [left, center, right].map((part) => {
      const { text: words, size = HEADER_SIZE } = marginLine(part, all);
      return `<span style="font-size:${round(size * facts.letters)}pt">${escaped(words)}</span>`;
    });
    const inset = `left:${MARGINS.left}in;right:${MARGINS.right}in;${edge}:${edge === "top" ? MARGINS.header : MARGINS.footer}in`;
    return `<div class="print-line" style="${inset}">${shown.join("")}</div>`;
  };
  const place = (box: { top: number; left: number; bottom: number; right: number }) => placeOn(pages, rows, box, sheet);
  for (const box of merges) {
    const at = place(box);
    const cell = cellAt(box.top, box.left);
    if (at !== undefined && cell !== undefined) parts.push(cellMarkup(cell, at, at.width, scale, facts.letters));
  }
  for (const row of rows)
    for (const [i, column] of columns.entries()) {
      if (merged.has(`${row} ${column}`)) continue;
      const cell = cellAt(row, column);
      if (cell === undefined) continue;
      const at = place({ top: row, left: column, bottom: row, right: column });
      if (at === undefined) continue;
      // A text that is not wrapped runs on over what is empty beside it.
      let room = at.width;
      for (let next = i + 1; runsOn(cell) && next < columns.length; next += 1) {
        const beside = columns[next] as number;
        if (merged.has(`${row} ${beside}`) || (cellAt(row, beside)?.text ?? "") !== "") break;
        room += sheet.widthOf(beside) * scale;
      }
      parts.push(cellMarkup(cell, at, room, scale, facts.letters));
    }
  for (const { at, markup } of drawings) {
    const room = place(at);
    if (room === undefined) continue;
    const { x, y, width: wide, height: high } = room;
    parts.push(
      `<div class="print-drawing" style="${boxStyle({ x, y, width: wide, height: high })}">${markup(wide / scale, high / scale)}</div>`,
    );
  }
  const area = `left:${MARGINS.left}in;top:${MARGINS.top}in;font-size:${round(USUAL_SIZE * scale * facts.letters)}pt`;
  return `<section class="print-page" style="width:${width}px;height:${height}px">${line(print?.header, "top")}<div class="print-area" style="${area}">${parts.join("")}</div>${line(print?.footer, "bottom")}</section>`;
}

/** Points of cells that say no size. */
const USUAL_SIZE = 10;
/** Points of a header that says no size. */
const HEADER_SIZE = 10;

function runsOn({ kind, style, text }: SeenCell): boolean {
  return text !== "" && kind === "text" && style.wrap !== true && (style.align ?? "left") === "left";
}

interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function boxStyle({ x, y, width, height }: Place): string {
  return `left:${round(x)}px;top:${round(y)}px;width:${round(width)}px;height:${round(height)}px`;
}

const ALIGN = { text: "left", number: "right", other: "center" } as const;
const UPRIGHT = { top: "flex-start", middle: "center", bottom: "flex-end" } as const;
const LINE = { thin: "1px", medium: "2px" } as const;
const INDENT = 9;

/** @param room px that its text has */
function cellMarkup({ text, kind, style }: SeenCell, at: Place, room: number, scale: number, letters: number): string {
  const align = style.align ?? ALIGN[kind];
  const looks = [
    boxStyle(at),
    `justify-content:${UPRIGHT[style.valign ?? "bottom"]}`,
    `text-align:${align}`,
    ...lookOf(style, scale * letters),
    ...(style.indent === undefined
      ? []
      : [`padding-${align === "right" ? "right" : "left"}:${round((2 + INDENT * style.indent) * scale)}px`]),
  ];
  const words =
    text === "" ? "" : `<span style="${room > at.width ? `width:${round(room)}px` : ""}">${escaped(text)}</span>`;
  const clips = text === "" ? "" : room > at.width ? " print-over" : " print-clip";
  return `<div class="print-cell${style.wrap === true ? " print-wrap" : ""}${clips}" style="${looks.join(";")}">${words}</div>`;
}

function lookOf({ bold, italic, size, color, fill, border }: StyleSpec, letters: number): readonly string[] {
  return [
    ...(bold === true ? ["font-weight:bold"] : []),
    ...(italic === true ? ["font-style:italic"] : []),
    ...(size === undefined ? [] : [`font-size:${round(size * letters)}pt`]),
    ...(color === undefined ? [] : [`color:${color}`]),
    ...(fill === undefined ? [] : [`background:${fill}`]),
    ...Object.entries(border ?? {}).map(
      ([side, weight]) => `border-${side as BorderSide}:${LINE[weight]} solid ${BORDER_COLORS[weight]}`,
    ),
  ];
}

function spanOf(first: number, last: number): readonly number[] {
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}

function round(px: number): number {
  return Math.round(px * 100) / 100;
}
