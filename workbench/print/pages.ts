import { pageBreaks } from "../../shared/calc-sheet/layout/page-breaks.ts";
import { type Box, boxOf } from "../../shared/ports/a1.ts";
import { MARGINS, PAPER_POINTS } from "../../shared/ports/paper.ts";
import type { Paper } from "../../shared/ports/sheet-spec.ts";
import type { SheetToPrint } from "./sheet-to-print.ts";

/** CSS px of an inch and of a point. */
const INCH = 96;
const POINT = INCH / 72;

/** How a sheet lies on its pages. Sizes are CSS px. */
export interface Pages {
  readonly paper: Paper;
  readonly isLandscape: boolean;
  readonly width: number;
  readonly height: number;
  /** Of the cells on paper to those on the screen. */
  readonly scale: number;
  readonly columns: readonly number[];
  /** Rows of each page from the top down, the repeated ones first. */
  readonly rows: readonly (readonly number[])[];
}

/** Divides a sheet into pages, all columns of its area side by side: where it says a page ends, and wherever one is full. */
export function pagesOf(sheet: SheetToPrint, unnamed: Paper): Pages {
  const { print, heightOf, widthOf, used } = sheet;
  const paper = print?.paper ?? unnamed;
  const isLandscape = print?.orientation === "landscape";
  const upright = PAPER_POINTS[paper];
  const [width, height] = [upright.width * POINT, upright.height * POINT];
  const [across, down] = isLandscape ? [height, width] : [width, height];
  const area = print === undefined ? used : boxOf(print.area);
  const columns = span(area.left, area.right);
  const whole = columns.reduce((total, column) => total + widthOf(column), 0);
  const room = across - (MARGINS.left + MARGINS.right) * INCH;
  const scale = Math.min((print?.scale ?? 100) / 100, whole === 0 ? 1 : room / whole);
  const full = (down - (MARGINS.top + MARGINS.bottom) * INCH) / scale;
  const titles = titleRows(print?.titleRows);
  const tall = titles.reduce((total, row) => total + heightOf(row), 0);
  const last = titles.at(-1) ?? -1;
  const repeatsAt = (row: number): boolean => titles.length > 0 && row > last;
  // The sheet's own ends count whatever stands on a page; between them a page ends where it is full.
  const ends = [...new Set(print?.breaks ?? [])].filter((row) => row > area.top && row <= area.bottom);
  const stretches = [area.top, ...ends.sort((one, other) => one - other)];
  const starts = stretches.flatMap((first, i) => {
    const end = stretches[i + 1] ?? area.bottom + 1;
    const found = pageBreaks({
      count: end - first,
      heightOf: (row) => heightOf(first + row) + (row === 0 && repeatsAt(first) ? tall : 0),
      pageHeight: full,
      repeatedAt: (row) => (repeatsAt(first + row) ? tall : 0),
      breaks: [],
      together: sheet.drawings.flatMap(({ at }) =>
        at.top >= first && at.top < end ? [[at.top - first, Math.min(at.bottom, end - 1) - first] as const] : [],
      ),
    });
    return [0, ...found].map((row) => first + row);
  });
  const rows = starts.map((first, i) => {
    const own = span(first, (starts[i + 1] ?? area.bottom + 1) - 1);
    return repeatsAt(first) ? [...titles, ...own] : own;
  });
  return { paper, isLandscape, width: across, height: down, scale, columns, rows };
}

/** Where a box lies on a page below its margins, and its size there; nothing where it begins on another page. */
export function placeOn(
  { columns, scale }: Pages,
  rows: readonly number[],
  { top, left, bottom, right }: Box,
  { widthOf, heightOf }: SheetToPrint,
): { readonly x: number; readonly y: number; readonly width: number; readonly height: number } | undefined {
  const [row, column] = [rows.indexOf(top), columns.indexOf(left)];
  if (row < 0 || column < 0) return undefined;
  const sum = (of: readonly number[], size: (one: number) => number): number =>
    of.reduce((total, one) => total + size(one), 0) * scale;
  return {
    x: sum(columns.slice(0, column), widthOf),
    y: sum(rows.slice(0, row), heightOf),
    width: sum(span(left, right), widthOf),
    height: sum(span(top, bottom), heightOf),
  };
}

/** "3:4" as 0-based rows. */
function titleRows(rows: string | undefined): readonly number[] {
  const match = /^\$?(\d+):\$?(\d+)$/.exec(rows ?? "");
  return match === null ? [] : span(Number(match[1]) - 1, Number(match[2]) - 1);
}

function span(first: number, last: number): readonly number[] {
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
}
