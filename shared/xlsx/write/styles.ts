import { BORDER_COLORS, type BorderSide, type RuleSpec, type StyleSpec } from "../../ports/sheet-spec.ts";
import { BUILT_IN_FORMATS, FILE_VALIGN, USUAL_SIZE } from "../format-facts.ts";
import { attributes, DECLARATION, xmlAttribute } from "../xml-text.ts";
import { MAIN } from "./schemas.ts";

/** Gathers the formats of a workbook; each answers with its number in the file. */
export interface StyleTable {
  /** `asText` keeps a text such as "=5" or "1/2" a text when a user edits the cell. */
  readonly ofCell: (style: StyleSpec | undefined, asText: boolean) => number;
  readonly ofRule: (style: RuleSpec["style"]) => number;
  readonly part: () => string;
}

const FONT = "Arial";
const FIRST_OWN_FORMAT = 164;
const SIDES = ["left", "right", "top", "bottom"] as const satisfies readonly BorderSide[];
const formatNumbers = new Map(Object.entries(BUILT_IN_FORMATS).map(([number, code]) => [code, Number(number)]));

export function styleTable(): StyleTable {
  const formats = numbered();
  const fonts = numbered(font({}));
  const fills = numbered(
    '<fill><patternFill patternType="none"/></fill>',
    '<fill><patternFill patternType="gray125"/></fill>',
  );
  const borders = numbered(border({}));
  const cellStyles = numbered('<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>');
  const ruleStyles = numbered();

  const formatNumber = (code: string): number => formatNumbers.get(code) ?? FIRST_OWN_FORMAT + formats.numberOf(code);

  const cellStyle = (style: StyleSpec, asText: boolean): string => {
    const numFmtId = formatNumber(style.numFmt ?? "General");
    const fontId = fonts.numberOf(font(style));
    const fillId = style.fill === undefined ? 0 : fills.numberOf(fill(style.fill));
    const borderId = borders.numberOf(border(style.border ?? {}));
    const inside = alignment(style) + (style.unlocked === true ? '<protection locked="0"/>' : "");
    const facts = attributes({
      numFmtId,
      fontId,
      fillId,
      borderId,
      xfId: 0,
      quotePrefix: asText,
      applyNumberFormat: numFmtId > 0,
      applyFont: fontId > 0,
      applyFill: fillId > 0,
      applyBorder: borderId > 0,
      applyAlignment: alignment(style) !== "",
      applyProtection: style.unlocked === true,
    });
    return inside === "" ? `<xf${facts}/>` : `<xf${facts}>${inside}</xf>`;
  };

  return {
    ofCell: (style, asText) => cellStyles.numberOf(cellStyle(style ?? {}, asText)),
    ofRule: (style) => ruleStyles.numberOf(ruleStyle(style)),
    part: () =>
      `${DECLARATION}<styleSheet xmlns="${MAIN}">${
        formats.all().length === 0
          ? ""
          : list(
              "numFmts",
              formats
                .all()
                .map((code, i) => `<numFmt numFmtId="${FIRST_OWN_FORMAT + i}" formatCode="${xmlAttribute(code)}"/>`),
            )
      }${list("fonts", fonts.all())}${list("fills", fills.all())}${list("borders", borders.all())}${list(
        "cellStyleXfs",
        ['<xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>'],
      )}${list("cellXfs", cellStyles.all())}${list("cellStyles", [
        '<cellStyle name="Normal" xfId="0" builtinId="0"/>',
      ])}${list("dxfs", ruleStyles.all())}</styleSheet>`,
  };
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

function fill(color: string): string {
  return `<fill><patternFill patternType="solid"><fgColor rgb="FF${fileColor(color)}"/><bgColor indexed="64"/></patternFill></fill>`;
}

function border(sides: NonNullable<StyleSpec["border"]>): string {
  const drawn = SIDES.map((side) => {
    const weight = sides[side];
    return weight === undefined
      ? `<${side}/>`
      : `<${side} style="${weight}"><color rgb="FF${fileColor(BORDER_COLORS[weight])}"/></${side}>`;
  });
  return `<border>${drawn.join("")}<diagonal/></border>`;
}

function alignment({ align, valign, wrap, indent }: StyleSpec): string {
  const facts = attributes({
    // An indent counts only where the side is named.
    horizontal: align ?? (indent === undefined ? undefined : "left"),
    vertical: valign === undefined ? undefined : FILE_VALIGN[valign],
    wrapText: wrap,
    indent,
  });
  return facts === "" ? "" : `<alignment${facts}/>`;
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

function numbered(...first: readonly string[]): Numbered {
  const numbers = new Map(first.map((item, i) => [item, i]));
  return {
    numberOf: (item) => {
      const known = numbers.get(item);
      if (known !== undefined) return known;
      numbers.set(item, numbers.size);
      return numbers.size - 1;
    },
    all: () => [...numbers.keys()],
  };
}
