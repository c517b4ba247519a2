import type { IBorderStyleData, IStyleData, Nullable } from "@univerjs/core";
import { BORDER_COLORS, type BorderSide, type StyleSpec } from "../shared/ports/sheet-spec.ts";

/** The font of cells without a style; SheetSpec widths are counted in it. */
export const DEFAULT_STYLE: IStyleData = { ff: "Arial", fs: 10 };

const ACROSS = { left: 1, center: 2, right: 3 } as const;
const UPRIGHT = { top: 1, middle: 2, bottom: 3 } as const;
const LINE = { thin: 1, medium: 8 } as const;
const SIDES = { top: "t", bottom: "b", left: "l", right: "r" } as const;
const WRAP = 3;
const INDENT_PIXELS = 9;

export function gridStyle(style: StyleSpec): IStyleData {
  const border: Record<string, IBorderStyleData> = {};
  for (const side of Object.keys(SIDES) as BorderSide[]) {
    const width = style.border?.[side];
    if (width !== undefined) border[SIDES[side]] = { s: LINE[width], cl: { rgb: BORDER_COLORS[width] } };
  }
  return {
    ...DEFAULT_STYLE,
    fs: style.size ?? 10,
    ...(style.bold === true ? { bl: 1 } : {}),
    ...(style.italic === true ? { it: 1 } : {}),
    ...(style.color === undefined ? {} : { cl: { rgb: style.color } }),
    ...(style.fill === undefined ? {} : { bg: { rgb: style.fill } }),
    ...(style.align === undefined ? {} : { ht: ACROSS[style.align] }),
    ...(style.valign === undefined ? {} : { vt: UPRIGHT[style.valign] }),
    ...(style.wrap === true ? { tb: WRAP } : {}),
    ...(style.indent === undefined ? {} : { pd: { l: 2 + style.indent * INDENT_PIXELS } }),
    ...(style.numFmt === undefined ? {} : { n: { pattern: style.numFmt } }),
    ...(Object.keys(border).length === 0 ? {} : { bd: border }),
  };
}

/** What of a grid style a SheetSpec can say. Fonts, underlining and rotation are not among it. */
export function styleSpec(style: IStyleData): StyleSpec {
  const border: Partial<Record<BorderSide, "thin" | "medium">> = {};
  for (const side of Object.keys(SIDES) as BorderSide[]) {
    const line = style.bd?.[SIDES[side]];
    if (line !== null && line !== undefined && line.s !== 0) border[side] = line.s === LINE.thin ? "thin" : "medium";
  }
  const colour = hexColour(style.cl?.rgb);
  const fill = hexColour(style.bg?.rgb);
  const align = keyOf(ACROSS, style.ht);
  const valign = keyOf(UPRIGHT, style.vt);
  const indent = Math.round(((style.pd?.l ?? 2) - 2) / INDENT_PIXELS);
  return {
    ...(style.bl === 1 ? { bold: true } : {}),
    ...(style.it === 1 ? { italic: true } : {}),
    ...(style.fs === undefined || style.fs === 10 ? {} : { size: style.fs }),
    ...(colour === undefined ? {} : { color: colour }),
    ...(fill === undefined ? {} : { fill }),
    ...(align === undefined ? {} : { align }),
    ...(valign === undefined ? {} : { valign }),
    ...(style.tb === WRAP ? { wrap: true } : {}),
    ...(indent > 0 ? { indent } : {}),
    ...(style.n?.pattern === undefined || style.n.pattern === "" ? {} : { numFmt: style.n.pattern }),
    ...(Object.keys(border).length === 0 ? {} : { border }),
  };
}

function keyOf<K extends string>(codes: Readonly<Record<K, number>>, code: Nullable<number>): K | undefined {
  return (Object.keys(codes) as K[]).find((key) => codes[key] === code);
}

/** "#RRGGBB" of the grid's "#rgb", "#RRGGBB" or "rgb(r, g, b)". */
function hexColour(colour: Nullable<string>): string | undefined {
  if (typeof colour !== "string") return undefined;
  const long = /^#([0-9a-f]{6})/i.exec(colour)?.[1];
  if (long !== undefined) return `#${long.toUpperCase()}`;
  const short = /^#([0-9a-f]{3})$/i.exec(colour)?.[1];
  if (short !== undefined) return `#${[...short].map((digit) => digit + digit).join("")}`.toUpperCase();
  const parts = /^rgba?\((\d+),\s*(\d+),\s*(\d+)/.exec(colour);
  if (parts === null) return undefined;
  const hex = parts.slice(1, 4).map((part) => Number(part).toString(16).padStart(2, "0"));
  return `#${hex.join("")}`.toUpperCase();
}
