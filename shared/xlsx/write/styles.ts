import { greatestOf } from "../../../src/numeric/extremes.ts";
import { BORDER_COLORS, type BorderSide, type RuleSpec, type StyleSpec } from "../../ports/sheet-spec.ts";
import { BUILT_IN_FORMATS, FILE_VALIGN, USUAL_SIZE } from "../format-facts.ts";
import { attributes, DECLARATION, xmlAttribute } from "../xml-text.ts";
import { MAIN } from "./schemas.ts";

/** Gathers the formats of a workbook; each answers with its number in the file. */
export interface StyleTable {
  /** `asText` keeps a text such as "=5" or "1/2" a text when a user edits the cell. */
  readonly ofCell: (style: StyleSpec | undefined, asText: boolean) => number;
  readonly ofRule: (style: RuleSpec["style"]) => number;
}

/** How many elements of each list a file has already, and its own number formats. */
export interface StyleStart {
  readonly fonts: number;
  readonly fills: number;
  readonly borders: number;
  readonly cellXfs: number;
  readonly dxfs: number;
  readonly numFmts: ReadonlyMap<string, number>;
}

/** The lists of a styles part, and what was gathered into each. */
export type StyleLists = Readonly<
  Record<"numFmts" | "fonts" | "fills" | "borders" | "cellXfs" | "dxfs", readonly string[]>
>;

export interface GatheredStyles extends StyleTable {
  /** Numbers of elements written elsewhere, each added where it is new. */
  readonly numberOf: Readonly<Record<"font" | "fill" | "border" | "cellXf" | "numFmt", (item: string) => number>>;
  readonly added: () => StyleLists;
}

const FONT = "Arial";
/**
 * Points of the font that columns are measured by; cells have their own. Its widest digit is 7 px to programs that draw to
 * the px and 7.04 px (5.28 pt) to others: a column is as wide in all of them. At 10 points it would be 7 px and 7.42 px.
 */
const NORMAL_SIZE = 9.5;
const FIRST_OWN_FORMAT = 164;
const SIDES = ["left", "right", "top", "bottom"] as const satisfies readonly BorderSide[];
const builtIn = new Map(Object.entries(BUILT_IN_FORMATS).map(([number, code]) => [code, Number(number)]));

export function gatheredStyles(start: StyleStart): GatheredStyles {
  const fonts = numbered(start.fonts);
  const fills = numbered(start.fills);
  const borders = numbered(start.borders);
  const cellXfs = numbered(start.cellXfs);
  const dxfs = numbered(start.dxfs);
  const formats = numbered(
    Math.max(FIRST_OWN_FORMAT, greatestOf([...start.numFmts.values()].map((number) => number + 1))),
  );
  const formatNumber = (code: string): number => builtIn.get(code) ?? start.numFmts.get(code) ?? formats.numberOf(code);

  const cellStyle = (style: StyleSpec, asText: boolean): string => {
    const numFmtId = formatNumber(style.numFmt ?? "General");
    const fontId = fonts.numberOf(font(style));
    const fillId = style.fill === undefined ? 0 : fills.numberOf(fill(style.fill));
    const borderId = borders.numberOf(border(style.border ?? {}));
    const aligned = alignment(style);
    const inside = aligned + (style.unlocked === true ? '<protection locked="0"/>' : "");
    const facts = attributes({
      numFmtId,
      fontId,
      fillId,
      borderId,
      xfId: 0,
      quotePrefix: asText,
      applyNumberFormat: numFmtId > 0,
      // No cell has the font of the columns.
      applyFont: true,
      applyFill: fillId > 0,
      applyBorder: borderId > 0,
      applyAlignment: aligned !== "",
      applyProtection: style.unlocked === true,
    });
    return inside === "" ? `<xf${facts}/>` : `<xf${facts}>${inside}</xf>`;
  };

  return {
    ofCell: (style, asText) => cellXfs.numberOf(cellStyle(style ?? {}, asText)),
    ofRule: (style) => dxfs.numberOf(ruleStyle(style)),
    numberOf: {
      font: fonts.numberOf,
      fill: fills.numberOf,
      border: borders.numberOf,
      cellXf: cellXfs.numberOf,
      numFmt: formatNumber,
    },
    added: () => ({
      numFmts: formats
        .all()
        .map((code) => `<numFmt numFmtId="${formats.numberOf(code)}" formatCode="${xmlAttribute(code)}"/>`),
      fonts: fonts.all(),
      fills: fills.all(),
      borders: borders.all(),
      cellXfs: cellXfs.all(),
      dxfs: dxfs.all(),
    }),
  };
}

/** The styles of a file that has none yet. */
export function styleTable(): StyleTable & { readonly part: () => string } {
  const nothing: StyleStart = { fonts: 0, fills: 0, borders: 0, cellXfs: 0, dxfs: 0, numFmts: new Map() };
  const gathered = gatheredStyles(nothing);
  // The first of each list are what a cell without a format has.
  for (const pattern of ["none", "gray125"])
    gathered.numberOf.fill(`<fill><patternFill patternType="${pattern}"/></fill>`);
  gathered.ofCell({}, false);
  const normalFont = gathered.numberOf.font(font({ size: NORMAL_SIZE }));
  const part = (): string => {
    const { numFmts, fonts, fills, borders, cellXfs, dxfs } = gathered.added();
    const formats = numFmts.length === 0 ? "" : list("numFmts", numFmts);
    const plain = list("cellStyleXfs", [`<xf numFmtId="0" fontId="${normalFont}" fillId="0" borderId="0"/>`]);
    const normal = list("cellStyles", ['<cellStyle name="Normal" xfId="0" builtinId="0"/>']);
    return `${DECLARATION}<styleSheet xmlns="${MAIN}">${formats}${list("fonts", fonts)}${list("fills", fills)}${list("borders", borders)}${plain}${list("cellXfs", cellXfs)}${normal}${list("dxfs", dxfs)}</styleSheet>`;
  };
  return { ofCell: gathered.ofCell, ofRule: gathered.ofRule, part };
}

/** "#RRGGBB" as the file has it. */
export function fileColor(color: string): string {
  const digits = /^#([0-9a-f]{6})$/i.exec(color)?.[1];
  if (digits === undefined) throw new Error(`not a colour: ${color}`);
  return digits.toUpperCase();
}

function font({ bold, italic, size, color }: StyleSpec): string {
  return `<font>${bold === true ? "<b/>" : ""}${italic === true ? "<i/>" : ""}<sz val="${size ?? USUAL_SIZE}"/>${
    color === undefined ? '<color auto="1"/>' : `<color rgb="FF${fileColor(color)}"/>`
  }<name val="${FONT}"/><family val="2"/></font>`;
}

export function fill(color: string): string {
  return `<fill><patternFill patternType="solid"><fgColor rgb="FF${fileColor(color)}"/><bgColor indexed="64"/></patternFill></fill>`;
}

function border(sides: NonNullable<StyleSpec["border"]>): string {
  return `<border>${SIDES.map((side) => borderSide(side, sides[side])).join("")}<diagonal/></border>`;
}

export function borderSide(side: BorderSide, weight: "thin" | "medium" | undefined): string {
  return weight === undefined
    ? `<${side}/>`
    : `<${side} style="${weight}"><color rgb="FF${fileColor(BORDER_COLORS[weight])}"/></${side}>`;
}

function alignment(style: StyleSpec): string {
  const facts = attributes(alignmentFacts(style));
  return facts === "" ? "" : `<alignment${facts}/>`;
}

export function alignmentFacts({ align, valign, wrap, indent }: StyleSpec) {
  return {
    // An indent counts only where the side is named.
    horizontal: align ?? (indent === undefined ? undefined : "left"),
    vertical: valign === undefined ? undefined : FILE_VALIGN[valign],
    wrapText: wrap === true ? 1 : undefined,
    indent,
  };
}

function ruleStyle({ bold, color, fill: background }: RuleSpec["style"]): string {
  const letters = `${bold === true ? "<b/>" : ""}${color === undefined ? "" : `<color rgb="FF${fileColor(color)}"/>`}`;
  return `<dxf>${letters === "" ? "" : `<font>${letters}</font>`}${
    background === undefined
      ? ""
      : `<fill><patternFill><bgColor rgb="FF${fileColor(background)}"/></patternFill></fill>`
  }</dxf>`;
}

function list(name: string, items: readonly string[]): string {
  return `<${name} count="${items.length}">${items.join("")}</${name}>`;
}

interface Numbered {
  readonly numberOf: (item: string) => number;
  readonly all: () => readonly string[];
}

/** Items with their numbers, the first of them `start`. */
function numbered(start: number): Numbered {
  const numbers = new Map<string, number>();
  return {
    numberOf: (item) => {
      const known = numbers.get(item);
      if (known !== undefined) return known;
      numbers.set(item, start + numbers.size);
      return start + numbers.size - 1;
    },
    all: () => [...numbers.keys()],
  };
}
