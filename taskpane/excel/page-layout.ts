import { marginParts } from "../../shared/ports/margin-text.ts";
import { MARGINS } from "../../shared/ports/paper.ts";
import type { PrintSpec } from "../../shared/ports/sheet-spec.ts";

/** How the sheet prints: its area, at its scale or one page wide, titles on every page. */
export function layOutPages(sheet: Excel.Worksheet, print: PrintSpec): void {
  const { pageLayout } = sheet;
  pageLayout.setPrintArea(print.area);
  pageLayout.orientation = print.orientation === "landscape" ? "Landscape" : "Portrait";
  if (print.paper !== undefined) pageLayout.paperSize = print.paper;
  pageLayout.zoom = print.scale === undefined ? { horizontalFitToPages: 1 } : { scale: print.scale };
  pageLayout.setPrintMargins("Inches", MARGINS);
  if (print.titleRows !== undefined) pageLayout.setPrintTitleRows(`$${print.titleRows.replace(":", ":$")}`);
  const margins = pageLayout.headersFooters.defaultForAllPages;
  if (print.header !== undefined) {
    const { left, center, right } = marginParts(print.header);
    if (left !== "") margins.leftHeader = left;
    if (center !== "") margins.centerHeader = center;
    if (right !== "") margins.rightHeader = right;
  }
  if (print.footer !== undefined) {
    const { left, center, right } = marginParts(print.footer);
    if (left !== "") margins.leftFooter = left;
    if (center !== "") margins.centerFooter = center;
    if (right !== "") margins.rightFooter = right;
  }
  for (const row of print.breaks ?? []) sheet.horizontalPageBreaks.add(`A${row + 1}`);
}
