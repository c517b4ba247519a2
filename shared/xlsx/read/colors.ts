import type { Attributes } from "./xml-part.ts";

/** The colours that older files call by number (ECMA-376 part 1, 18.8.27), from number 8; 0 to 7 repeat the first eight. */
const NUMBERED =
  `000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF 800000 008000 000080 808000 800080 008080 C0C0C0
808080 9999FF 993366 FFFFCC CCFFFF 660066 FF8080 0066CC CCCCFF 000080 FF00FF FFFF00 00FFFF 800080 800000 008080 0000FF
00CCFF CCFFFF CCFFCC FFFF99 99CCFF FF99CC CC99FF FFCC99 3366FF 33CCCC 99CC00 FFCC00 FF9900 FF6600 666699 969696 003366
339966 003300 333300 993300 993366 333399 333333`.split(/\s+/);

/** Order in which cells number the theme's colours, which is not the order the theme lists them in. */
export const THEME_ORDER = [
  "lt1",
  "dk1",
  "lt2",
  "dk2",
  "accent1",
  "accent2",
  "accent3",
  "accent4",
  "accent5",
  "accent6",
  "hlink",
  "folHlink",
];

/** "#RRGGBB" of a colour element; nothing where the file leaves the colour to the program. */
export function colorOf(attributes: Attributes, theme: ReadonlyMap<string, string>): string | undefined {
  const { rgb, indexed, theme: themed, tint } = attributes;
  if (isAutomatic(attributes)) return undefined;
  const number = Number(indexed);
  const base =
    rgb !== undefined
      ? rgb.slice(-6)
      : themed !== undefined
        ? theme.get(THEME_ORDER[Number(themed)] ?? "")
        : NUMBERED[number < 8 ? number : number - 8];
  if (base === undefined || !/^[0-9a-f]{6}$/i.test(base)) return undefined;
  return `#${tinted(base, Number(tint ?? 0)).toUpperCase()}`;
}

function isAutomatic({ auto, rgb, indexed, theme }: Attributes): boolean {
  return (
    auto !== undefined || (rgb === undefined && theme === undefined && (indexed === undefined || Number(indexed) > 63))
  );
}

/**
 * A tint moves the lightness towards white or black (ECMA-376 part 1, 18.8.19). Done on the three channels, which
 * gives the same colour for greys and one close to it for others.
 */
function tinted(hex: string, tint: number): string {
  if (!Number.isFinite(tint) || tint === 0) return hex;
  const channels = [0, 2, 4].map((i) => Number.parseInt(hex.slice(i, i + 2), 16));
  const moved = channels.map((c) => (tint < 0 ? c * (1 + tint) : c + (255 - c) * tint));
  return moved
    .map((c) =>
      Math.min(255, Math.max(0, Math.round(c)))
        .toString(16)
        .padStart(2, "0"),
    )
    .join("");
}
