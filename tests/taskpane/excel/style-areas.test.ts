import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addressOf, boxOf } from "../../../shared/ports/a1.ts";
import type { CellSpec, StyleSpec } from "../../../shared/ports/sheet-spec.ts";
import { settingsOf } from "../../../taskpane/excel/apply-style.ts";
import { LONGEST_ADDRESS } from "../../../taskpane/excel/joined-areas.ts";
import { styledAreas } from "../../../taskpane/excel/style-areas.ts";
import { cellsOf } from "../../support/memory-sheet.ts";

const STYLES = {
  plain: { bold: true },
  loud: { bold: true, color: "#B3261E" },
  lined: { border: { bottom: "thin" } },
  ruled: { border: { left: "thin" } },
  boxed: { border: { top: "thin", left: "medium" }, bold: true },
} as const satisfies Readonly<Record<string, StyleSpec>>;

type Style = keyof typeof STYLES;

/** What is set where: "bold true: A1:B2,D4". */
function setWhere(cells: readonly (readonly [at: string, style: Style])[]): readonly string[] {
  const specs = cells.map(([at, style]): CellSpec => ({ at, style }));
  return styledAreas(specs, STYLES).map(({ setting, addresses }) => `${setting.key}: ${addresses.join("|")}`);
}

describe("cells that are set alike", () => {
  const block = ["A1", "B1", "A2", "B2", "D4"];

  it.each<{ style: Style; set: readonly string[] }>([
    { style: "plain", set: ["bold true: A1:B2,D4"] },
    { style: "loud", set: ["bold true: A1:B2,D4", "color #B3261E: A1:B2,D4"] },
    { style: "lined", set: ["bottom thin: A1:B1,A2:B2,D4"] },
    { style: "ruled", set: ["left thin: A1:A2,B1:B2,D4"] },
    { style: "boxed", set: ["bold true: A1:B2,D4", "top thin: A1:B1,A2:B2,D4", "left medium: A1:A2,B1:B2,D4"] },
  ])("join as far as a border allows: $style", ({ style, set }) => {
    expect(setWhere(block.map((at) => [at, style]))).toEqual(set);
  });

  it("join whatever their styles are, and thin lines are drawn before heavier ones", () => {
    const cells = [
      ["A1", "boxed"],
      ["B1", "plain"],
      ["C1", "loud"],
      ["A2", "ruled"],
    ] as const;
    expect(setWhere(cells)).toEqual([
      "bold true: A1:C1",
      "color #B3261E: C1",
      "top thin: A1",
      "left thin: A2",
      "left medium: A1",
    ]);
  });

  it("never make an address longer than Excel takes", () => {
    const cells = Array.from({ length: 4000 }, (_, i) => addressOf(2 * i, 2 * (i % 20)));
    const [areas] = styledAreas(
      cells.map((at): CellSpec => ({ at, style: "plain" })),
      STYLES,
    );
    expect(areas?.addresses.length).toBeGreaterThan(1);
    for (const address of areas?.addresses ?? []) expect(address.length).toBeLessThanOrEqual(LONGEST_ADDRESS);
    expect(areas?.addresses.join(",").split(",").toSorted()).toEqual(cells.toSorted());
  });

  it("are each set to all that their style says, once, and to nothing else", () => {
    const cell = fc.tuple(fc.nat(12), fc.nat(12)).map(([row, column]) => addressOf(row, column));
    const styled = fc.tuple(cell, fc.constantFrom(...keysOf(STYLES)));
    fc.assert(
      fc.property(fc.uniqueArray(styled, { maxLength: 60, selector: ([at]) => at }), (cells) => {
        const set = setWhere(cells).flatMap((line) => {
          const [key = "", areas = ""] = line.split(": ");
          return areas.split(/[,|]/).flatMap((area) =>
            cellsOf(boxOf(area))
              .flat()
              .map((at) => `${at} ${key}`),
          );
        });
        const wanted = cells.flatMap(([at, style]) => settingsOf(STYLES[style]).map(({ key }) => `${at} ${key}`));
        expect(set.toSorted()).toEqual(wanted.toSorted());
      }),
    );
  });
});

function keysOf<T extends object>(record: T): (keyof T)[] {
  return Object.keys(record) as (keyof T)[];
}
