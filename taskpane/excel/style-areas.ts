import { type Box, boxOf } from "../../shared/ports/a1.ts";
import type { CellSpec, StyleSpec } from "../../shared/ports/sheet-spec.ts";
import { type Setting, settingsOf } from "./apply-style.ts";
import { addressesOf, rectangles } from "./joined-areas.ts";

/** The cells that one setting of a style holds for, as addresses of several areas each, short enough for one call. */
export interface StyledAreas {
  readonly setting: Setting;
  readonly addresses: readonly string[];
}

/**
 * Groups cells by what they are set to, whatever styles that is of. Neighbours join into one rectangle, except across a
 * side that is bordered: Excel draws an area's edges, the style means each cell's.
 */
export function styledAreas(
  cells: readonly CellSpec[],
  styles: Readonly<Record<string, StyleSpec>>,
): readonly StyledAreas[] {
  const settings = new Map(Object.entries(styles).map(([name, style]) => [name, settingsOf(style)]));
  const groups = new Map<string, { setting: Setting; members: (readonly [row: number, column: number])[] }>();
  for (const { at, style } of cells) {
    if (style === undefined) continue;
    const own = settings.get(style);
    if (own === undefined) throw new Error(`the sheet has no style “${style}”`);
    const { top, left } = boxOf(at);
    for (const setting of own) {
      const group = groups.get(setting.key);
      if (group === undefined) groups.set(setting.key, { setting, members: [[top, left]] });
      else group.members.push([top, left]);
    }
  }
  return [...groups.values()]
    .toSorted((a, b) => a.setting.order - b.setting.order)
    .map(({ setting, members }) => ({ setting, addresses: addressesOf(areasOf(setting, members)) }));
}

function areasOf({ side }: Setting, members: readonly (readonly [row: number, column: number])[]): readonly Box[] {
  return rectangles(members, side !== "left" && side !== "right", side !== "top" && side !== "bottom");
}
