import { describe, expect, it } from "vitest";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { addressOf, boxOf } from "../../../shared/ports/a1.ts";
import type { CellSpec, SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { dutyText, pumpText, QUARRY } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";
import { after, typed } from "../../support/opened-again.ts";

const RUNS = 110;

/** A line of more runs than two pages hold, and a pump whose curve is as long. */
const LONG: DutyText = dutyText(
  { paper: "A4", curveFlow: "" },
  {
    dischargeLine: Array.from({ length: RUNS }, (_, i) => ({
      pipe: "8in sch40",
      length: String(10 + i),
      fittings: i === RUNS - 1 ? "1 exit" : "1 elbow 45",
    })),
    pump: pumpText(
      Array.from({ length: 160 }, (_, i) => [`${5 * i} gpm`, `${(300 - (5 * i) ** 2 / 10_000).toFixed(4)} ft`]),
      { speed: "1780 rpm", impellerDiameter: "14 in" },
    ),
  },
);

const sheet = sheetsOf(LONG).duty;

function rowsOf({ cells }: SheetSpec): ReadonlyMap<number, readonly CellSpec[]> {
  const rows = new Map<number, CellSpec[]>();
  for (const cell of cells) {
    const { top } = boxOf(cell.at);
    rows.set(top, [...(rows.get(top) ?? []), cell]);
  }
  return rows;
}

const rows = rowsOf(sheet);
const shown = ({ v, cached }: CellSpec): unknown => cached ?? v;
const textsOf = (row: number): readonly unknown[] =>
  (rows.get(row) ?? []).map(shown).filter((text) => text !== undefined && text !== null);
const heightOf = (row: number): number => sheet.rowHeights?.[row + 1] ?? 0;

describe.each([
  ["a line", "discharge_line", -1, "Discharge line"],
  ["the curve of a pump", "pump_curve", 0, "Curve of the pump"],
] as const)("%s that is longer than two pages", (_, name, above, title) => {
  const { top, bottom, left, right } = boxOf(sheet.names?.[name] ?? "");
  const head = top + above;
  const ends = (sheet.print?.breaks ?? []).filter((end) => end > top && end <= bottom);

  it("says its section and its heads again at the top of each page", () => {
    expect(ends.length).toBeGreaterThanOrEqual(2);
    for (const end of ends) {
      expect(textsOf(end)).toEqual([expect.stringMatching(new RegExp(`^\\d+ {2}${title}, continued$`))]);
      expect(textsOf(end + 1)).toEqual(textsOf(head));
      expect(heightOf(end + 1)).toBe(heightOf(head));
    }
  });

  it("has them as formulas, which stand under the heads", () => {
    for (const end of ends) {
      const heads = (rows.get(end + 1) ?? []).filter(({ f }) => f !== undefined);
      expect(heads.length).toBeGreaterThanOrEqual(right - left + 1);
      for (const { at, f } of heads) {
        const column = boxOf(at).left;
        expect(f?.replaceAll("$", "")).toBe(addressOf(head, column));
      }
    }
  });

  it("leaves neither a head nor a row of it alone on a page", () => {
    for (const end of [...ends, bottom + 1]) {
      const before = [top, ...ends].findLast((one) => one < end) ?? top;
      expect(end - before).toBeGreaterThanOrEqual(4);
    }
    for (const row of [head, ...ends.map((end) => end + 1)]) {
      for (const next of [row + 1, row + 2]) expect(sheet.print?.breaks).not.toContain(next);
    }
  });
});

describe("a duty with tables over pages", () => {
  it("comes back from its sheet as it was", () => {
    const back = after(LONG);
    expect(back.taken).toEqual([]);
    expect(back.remarks).toEqual([]);
    expect(back.duty).toEqual(LONG);
  });

  it("comes back with what was typed after a page's end", () => {
    const { top } = boxOf(sheet.names?.["discharge_line"] ?? "");
    const row = [...rows].find(([, cells]) => cells.some(({ v }) => v === 10 + RUNS - 3))?.[0] ?? 0;
    const back = after(LONG, typed("discharge_line", 777, row - top, 1));
    expect(back.remarks).toEqual([]);
    expect(back.taken.map(({ place, before, after: now }) => ({ place, before, now }))).toEqual([
      { place: `dischargeLine.${RUNS - 3}.length`, before: String(10 + RUNS - 3), now: "777" },
    ]);
  });

  it("says which worked cells were emptied, those under repeated heads too", () => {
    const { top, right } = boxOf(sheet.names?.["discharge_line"] ?? "");
    const row = [...rows].find(([, cells]) => cells.some(({ v }) => v === 10 + RUNS - 3))?.[0] ?? 0;
    // Fittings take two columns; the bore stands after them.
    const bore = right - boxOf(sheet.names?.["discharge_line"] ?? "").left + 2;
    const back = after(LONG, typed("discharge_line", null, row - top, bore));
    expect(back.remarks.map(({ text }) => text)).toEqual([
      "Discharge line: a cell of “bore” emptied: it is worked out again.",
    ]);
  });

  it("is not cut where a page has room for all of it", () => {
    const short = sheetsOf(dutyText({ paper: "A4" }, QUARRY)).duty;
    for (const name of ["suction_line", "discharge_line", "pump_curve"]) {
      const { top, bottom } = boxOf(short.names?.[name] ?? "");
      expect((short.print?.breaks ?? []).filter((end) => end >= top && end <= bottom)).toEqual([]);
    }
  });
});
