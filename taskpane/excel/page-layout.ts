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

interface MarginParts {
  readonly left: string;
  readonly center: string;
  readonly right: string;
}

/** "&LDuty&RPage &P" taken apart; what stands before any mark is centred, as in a file. "&&" is a plain ampersand. */
export function marginParts(text: string): MarginParts {
  const parts = { L: "", C: "", R: "" };
  let side: keyof typeof parts = "C";
  for (const piece of text.match(/&[\s\S]|[^&]+|&/g) ?? []) {
    const mark = /^&([LCR])$/.exec(piece)?.[1];
    if (mark === undefined) parts[side] += piece;
    else side = mark as keyof typeof parts;
  }
  return { left: parts.L, center: parts.C, right: parts.R };
}
