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

/** One thing that a style sets of its cells. */
export interface Setting {
  /** The same for whatever sets the same. */
  readonly key: string;
  /** Settings are made in this order: an indent counts from its side, and of two borders on one line the heavier stays. */
  readonly order: number;
  /** The side whose edge is drawn. */
  readonly side?: BorderSide;
  readonly apply: (format: Excel.RangeFormat) => void;
}

/** What a style sets, all but the number format, which goes with the cells' contents. */
export function settingsOf(style: StyleSpec): readonly Setting[] {
  const { size, bold, italic, color, fill, align, valign, wrap, indent, unlocked, border = {} } = style;
  return [
    ...setting(0, "size", size === TEXT_SIZE ? undefined : size, ({ font }, value) => {
      font.size = value;
    }),
    ...setting(1, "bold", bold, ({ font }, value) => {
      font.bold = value;
    }),
    ...setting(2, "italic", italic, ({ font }, value) => {
      font.italic = value;
    }),
    ...setting(3, "color", color, ({ font }, value) => {
      font.color = value;
    }),
    ...setting(4, "fill", fill, (format, value) => {
      format.fill.color = value;
    }),
    ...setting(5, "align", align, (format, value) => {
      format.horizontalAlignment = ACROSS[value];
    }),
    ...setting(6, "valign", valign, (format, value) => {
      format.verticalAlignment = DOWN[value];
    }),
    ...setting(7, "wrap", wrap, (format, value) => {
      format.wrapText = value;
    }),
    ...setting(8, "indent", indent, (format, value) => {
      format.indentLevel = value;
    }),
    ...setting(9, "unlocked", unlocked, ({ protection }, value) => {
      protection.locked = !value;
    }),
    ...Object.entries(border).flatMap(([side, weight]) => edge(side as BorderSide, weight)),
  ];
}

function setting<T>(
  order: number,
  name: string,
  value: T | undefined,
  apply: (format: Excel.RangeFormat, value: T) => void,
): readonly Setting[] {
  if (value === undefined) return [];
  return [{ key: `${name} ${String(value)}`, order, apply: (format) => apply(format, value) }];
}

function edge(side: BorderSide, weight: keyof typeof WEIGHTS): readonly Setting[] {
  const draw = (format: Excel.RangeFormat): void => {
    const border = format.borders.getItem(EDGES[side]);
    border.style = "Continuous";
    border.weight = WEIGHTS[weight];
    border.color = BORDER_COLORS[weight];
  };
  return [{ key: `${side} ${weight}`, order: weight === "thin" ? 10 : 11, side, apply: draw }];
}
