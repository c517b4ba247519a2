import { describe, expect, it } from "vitest";
import { boxOf } from "../../../shared/ports/a1.ts";
import type { CellSpec, SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { QUARRY } from "../../support/duty-of.ts";
import { setOfDuty } from "../../support/laid-out.ts";
import { after } from "../../support/opened-again.ts";

const [duty, ...others] = setOfDuty(QUARRY).sheets(["Duty", "Estimate", "Workings"]) as readonly [
  SheetSpec,
  ...SheetSpec[],
];
const live = (text: string): readonly CellSpec[] =>
  duty.cells.filter(({ cached, f }) => f !== undefined && cached === text);

/** What a formula of nested IF(cell=0,…,…) says where these of its conditions hold. */
function saidBy(f: string, isAsWritten: readonly boolean[]): string {
  const said: Readonly<Record<string, string>> = Object.fromEntries(
    [...f.matchAll(/"([^"]*)"/g)].map(([, text], i) => [String(i), text as string]),
  );
  // Leaves stand in the order: all as written; then the last changed first.
  const at = isAsWritten.reduce((place, is) => place * 2 + (is ? 0 : 1), 0);
  return said[String(at)] ?? "";
}

describe("an input that nobody stated", () => {
  it("is assumed only as long as it stands as it was written: two in a row", () => {
    const words = live("assumed");
    expect(words.length).toBeGreaterThan(0);
    for (const { f = "" } of words) {
      expect(f.match(/=0,/g)).toHaveLength(3);
      expect(saidBy(f, [true, true])).toBe("assumed");
      expect(saidBy(f, [true, false])).toBe("assumed, stated");
      expect(saidBy(f, [false, true])).toBe("stated, assumed");
      expect(saidBy(f, [false, false])).toBe("stated");
    }
  });

  it("and one in a row with its own words", () => {
    const words = live("assumed (no input)");
    expect(words.length).toBeGreaterThan(0);
    for (const { f = "" } of words) expect(f).toMatch(/=0,"assumed \(no input\)","stated"\)$/);
  });

  it("is compared with the cell of the workings that counts it as changed", () => {
    const workings = others.at(-1) as SheetSpec;
    for (const { at, f = "" } of [...live("assumed"), ...live("assumed (no input)")]) {
      for (const [, cell = ""] of f.matchAll(/'?Workings'?!(\$C\$\d+)=0/g)) {
        const counted = workings.cells.find((one) => `$${one.at.replace(/(\d+)/, "$$$1")}` === cell)?.f ?? "";
        const [, name = ""] = /Duty'?!([a-z_0-9]+)/.exec(counted) ?? [];
        expect([at, boxOf(duty.names?.[name] ?? "").top]).toEqual([at, boxOf(at).top]);
      }
      expect(f).toContain("Workings");
    }
  });

  it("takes no words of the sheet for somebody's own when it is opened again", () => {
    const edited = after(QUARRY, (sheets) =>
      sheets.map((sheet) => ({
        ...sheet,
        cells: sheet.cells.map((cell) =>
          cell.cached === "assumed (no input)" && cell.f !== undefined ? { ...cell, cached: "stated" } : cell,
        ),
      })),
    );
    expect(edited.duty).toEqual(QUARRY);
    expect(edited.remarks).toEqual([]);
  });
});
