import type { BorderSide, RuleSpec, StyleSpec } from "../../ports/sheet-spec.ts";
import { BUILT_IN_FORMATS, FILE_VALIGN, USUAL_SIZE } from "../format-facts.ts";
import type { Archive } from "./archive.ts";
import { colorOf } from "./colors.ts";
import type { Limits } from "./limits.ts";
import { type Attributes, isOn, readPart } from "./xml-part.ts";

export interface ReadStyles {
  /** By the number that cells carry. */
  readonly cells: readonly StyleSpec[];
  /** By the number that conditional formats carry. */
  readonly rules: readonly RuleSpec["style"][];
  /** Whether the number of a cell with that style is a date or a time of day. */
  readonly dates: readonly boolean[];
}

type Font = Pick<StyleSpec, "bold" | "italic" | "size" | "color">;
type Border = NonNullable<StyleSpec["border"]>;
type Mutable<T> = { -readonly [K in keyof T]: T[K] };

const DATE_FORMATS = new Set([14, 15, 16, 17, 18, 19, 20, 21, 22, 45, 46, 47, ...range(27, 36), ...range(50, 58)]);
const VALIGN = new Map(
  Object.entries(FILE_VALIGN).map(([own, inFile]) => [inFile as string, own as keyof typeof FILE_VALIGN]),
);
const THICK = new Set([
  "medium",
  "thick",
  "double",
  "mediumDashed",
  "mediumDashDot",
  "mediumDashDotDot",
  "slantDashDot",
]);

/** Colours of the theme by their name there, "RRGGBB". */
export function themeColors(archive: Archive, path: string | undefined, limits: Limits): ReadonlyMap<string, string> {
  const colors = new Map<string, string>();
  if (path === undefined || !archive.has(path)) return colors;
  let name = "";
  let inScheme = false;
  readPart(
    archive,
    path,
    {
      open: (element, { val, lastClr }) => {
        if (element === "clrScheme") inScheme = true;
        else if (!inScheme) return;
        else if (element === "srgbClr" && val !== undefined) colors.set(name, val);
        else if (element === "sysClr" && lastClr !== undefined) colors.set(name, lastClr);
        else name = element;
      },
      close: (element) => {
        if (element === "clrScheme") inScheme = false;
      },
    },
    limits,
  );
  return colors;
}

export function readStyles(
  archive: Archive,
  path: string | undefined,
  theme: ReadonlyMap<string, string>,
  limits: Limits,
): ReadStyles {
  const formats = new Map<number, string>();
  const fonts: Font[] = [];
  const fills: (string | undefined)[] = [];
  const borders: Border[] = [];
  const cells: StyleSpec[] = [];
  const dates: boolean[] = [];
  const rules: RuleSpec["style"][] = [];
  if (path === undefined || !archive.has(path)) return { cells, rules, dates };

  let section = "";
  let font: Mutable<Font> = {};
  let fill: string | undefined;
  let solid = false;
  let border: Mutable<Border> = {};
  let style: Mutable<StyleSpec> = {};

  const open = (name: string, at: Attributes): void => {
    switch (name) {
      case "numFmts":
      case "fonts":
      case "fills":
      case "borders":
      case "cellStyleXfs":
      case "cellXfs":
      case "dxfs":
        section = name;
        break;
      case "numFmt":
        if (section === "numFmts") formats.set(Number(at["numFmtId"]), at["formatCode"] ?? "General");
        break;
      case "dxf":
      case "font":
        font = {};
        if (name === "dxf") fill = undefined;
        break;
      case "b":
        if (isOn(at["val"] ?? "1")) font.bold = true;
        break;
      case "i":
        if (isOn(at["val"] ?? "1")) font.italic = true;
        break;
      case "sz":
        if (Number(at["val"]) !== USUAL_SIZE && Number(at["val"]) > 0) font.size = Number(at["val"]);
        break;
      case "color":
        if (section === "fonts" || section === "dxfs") {
          const color = colorOf(at, theme);
          if (color !== undefined) font.color = color;
        }
        break;
      case "fill":
        fill = undefined;
        break;
      case "patternFill":
        solid = at["patternType"] === "solid" || (section === "dxfs" && at["patternType"] === undefined);
        break;
      case "fgColor":
        if (solid && section === "fills") fill = colorOf(at, theme);
        break;
      case "bgColor":
        // A conditional format keeps its plain fill in the background colour.
        if (solid && section === "dxfs") fill = colorOf(at, theme);
        break;
      case "border":
        border = {};
        break;
      case "left":
      case "right":
      case "top":
      case "bottom":
        if (at["style"] !== undefined && at["style"] !== "none")
          border[name satisfies BorderSide] = THICK.has(at["style"]) ? "medium" : "thin";
        break;
      case "xf":
        if (section === "cellXfs") {
          style = combined(at);
          dates.push(isDateFormat(Number(at["numFmtId"] ?? 0), formats));
        }
        break;
      case "alignment":
        if (section === "cellXfs") Object.assign(style, aligned(at));
        break;
      case "protection":
        if (section === "cellXfs" && at["locked"] !== undefined && !isOn(at["locked"])) style.unlocked = true;
        break;
    }
  };

  const combined = (at: Attributes): Mutable<StyleSpec> => {
    const id = Number(at["numFmtId"] ?? 0);
    const code = formats.get(id) ?? BUILT_IN_FORMATS[id];
    const background = fills[Number(at["fillId"] ?? 0)];
    const sides = borders[Number(at["borderId"] ?? 0)] ?? {};
    return {
      ...fonts[Number(at["fontId"] ?? 0)],
      ...(background === undefined ? {} : { fill: background }),
      ...(Object.keys(sides).length === 0 ? {} : { border: sides }),
      ...(code === undefined || code === "General" ? {} : { numFmt: code }),
    };
  };

  const close = (name: string): void => {
    if (name === "font" && section === "fonts") fonts.push(font);
    else if (name === "fill" && section === "fills") fills.push(fill);
    else if (name === "border" && section === "borders") borders.push(border);
    else if (name === "xf" && section === "cellXfs") cells.push(style);
    else if (name === "dxf") {
      const { bold, color } = font;
      rules.push({
        ...(bold === undefined ? {} : { bold }),
        ...(color === undefined ? {} : { color }),
        ...(fill === undefined ? {} : { fill }),
      });
    }
  };

  readPart(archive, path, { open, close }, limits);
  return { cells, rules, dates };
}

function aligned({ horizontal, vertical, wrapText, indent }: Attributes): Partial<StyleSpec> {
  const valign = VALIGN.get(vertical ?? "");
  return {
    ...(horizontal === "left" || horizontal === "center" || horizontal === "right" ? { align: horizontal } : {}),
    ...(valign === undefined || valign === "bottom" ? {} : { valign }),
    ...(isOn(wrapText) ? { wrap: true } : {}),
    ...(Number(indent) > 0 ? { indent: Number(indent) } : {}),
  };
}

/** Whether the number format of that id, looked up among the file's own, is one of dates or times of day. */
export function isDateFormat(id: number, formats: ReadonlyMap<number, string>): boolean {
  const code = formats.get(id);
  if (code === undefined) return DATE_FORMATS.has(id);
  // Left over when quoted text, escapes, fills and [colours] are gone; [h], [m] and [s] count hours.
  const letters = code.replace(/"[^"]*"|\\.|_.|\*.|\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi, "").replace(/general/gi, "");
  return /[dmyhs]/i.test(letters);
}

function range(from: number, to: number): readonly number[] {
  return Array.from({ length: to - from + 1 }, (_, i) => from + i);
}
