import { BORDER_COLORS, type BorderSide, type StyleSpec } from "../../shared/ports/sheet-spec.ts";

/** Size of text where a style names none, in points. */
export const TEXT_SIZE = 10;

const EDGES = { top: "EdgeTop", bottom: "EdgeBottom", left: "EdgeLeft", right: "EdgeRight" } as const satisfies Record<
  BorderSide,
  string
>;
const WEIGHTS = { thin: "Thin", medium: "Medium" } as const;
const ACROSS = { left: "Left", center: "Center", right: "Right" } as const;
const DOWN = { top: "Top", middle: "Center", bottom: "Bottom" } as const;

/** Gives areas a style, all but the number format, which goes with the cells' contents. */
export function applyStyle(format: Excel.RangeFormat, style: StyleSpec): void {
  const { font } = format;
  if (style.size !== undefined && style.size !== TEXT_SIZE) font.size = style.size;
  if (style.bold !== undefined) font.bold = style.bold;
  if (style.italic !== undefined) font.italic = style.italic;
  if (style.color !== undefined) font.color = style.color;
  if (style.fill !== undefined) format.fill.color = style.fill;
  if (style.align !== undefined) format.horizontalAlignment = ACROSS[style.align];
  if (style.valign !== undefined) format.verticalAlignment = DOWN[style.valign];
  if (style.wrap !== undefined) format.wrapText = style.wrap;
  if (style.indent !== undefined) format.indentLevel = style.indent;
  if (style.unlocked !== undefined) format.protection.locked = !style.unlocked;
  for (const [side, weight] of Object.entries(style.border ?? {})) {
    const border = format.borders.getItem(EDGES[side as BorderSide]);
    border.style = "Continuous";
    border.weight = WEIGHTS[weight];
    border.color = BORDER_COLORS[weight];
  }
}
