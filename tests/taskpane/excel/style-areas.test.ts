import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addressOf, boxOf } from "../../../shared/ports/a1.ts";
import type { CellSpec, StyleSpec } from "../../../shared/ports/sheet-spec.ts";
import { LONGEST_ADDRESS, styledAreas } from "../../../taskpane/excel/style-areas.ts";
import { cellsOf } from "../../support/memory-sheet.ts";

const STYLES = {
  plain: { bold: true },
  lined: { border: { bottom: "thin" } },
  ruled: { border: { left: "thin" } },
  boxed: { border: { top: "thin", left: "thin" } },
} as const satisfies Readonly<Record<string, StyleSpec>>;

function addressesOf(style: keyof typeof STYLES, cells: readonly string[]): string {
  return styledAreas(
    cells.map((at): CellSpec => ({ at, style })),
    STYLES,
  )
    .flatMap(({ addresses }) => addresses)
    .join("|");
}

describe("cells of one style", () => {
  const block = ["A1", "B1", "A2", "B2", "D4"];

  it.each([
    { style: "plain", addresses: "A1:B2,D4" },
    { style: "lined", addresses: "A1:B1,A2:B2,D4" },
    { style: "ruled", addresses: "A1:A2,B1:B2,D4" },
    { style: "boxed", addresses: "A1,B1,A2,B2,D4" },
  ] as const)("join as far as the $style border allows", ({ style, addresses }) => {
    expect(addressesOf(style, block)).toBe(addresses);
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

  it("are each covered once, and no other cell", () => {
    const cell = fc.tuple(fc.nat(12), fc.nat(12)).map(([row, column]) => addressOf(row, column));
    fc.assert(
      fc.property(fc.uniqueArray(cell, { maxLength: 60 }), fc.constantFrom(...keysOf(STYLES)), (cells, style) => {
        const covered = addressesOf(style, cells)
          .split(/[,|]/)
          .filter((area) => area !== "")
          .flatMap((area) => cellsOf(boxOf(area)).flat());
        expect(covered.toSorted()).toEqual(cells.toSorted());
      }),
    );
  });
});

function keysOf<T extends object>(record: T): (keyof T)[] {
  return Object.keys(record) as (keyof T)[];
}
