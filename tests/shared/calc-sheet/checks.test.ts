import { describe, expect, it } from "vitest";
import { dutySheets } from "../../../shared/calc-sheet/duty-sheets.ts";
import { call } from "../../../shared/catalogue/call.ts";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { boxOf, columnLetters } from "../../../shared/ports/a1.ts";
import type { SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { QUARRY } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";

const cellAt = ({ cells, names = {} }: SheetSpec, name: string) => cells.find(({ at }) => at === names[name]);

describe("a check of the sheet", () => {
  it.each(SAMPLE_DUTIES)("is 0 without a trace of rounding, and says that it agrees: $name", ({ duty }) => {
    const sheet = sheetsOf(duty).duty;
    for (const name of ["head_check", "npsh_check"]) {
      const check = cellAt(sheet, name);
      expect(check?.cached, name).toBe(0);
      expect(check?.f).toMatch(/^ROUND\(.*,6\)$/);
      const at = check?.at ?? "";
      const words = sheet.cells.find(({ f }) => f?.startsWith(`IF(ISNUMBER(${name}),`));
      expect(words?.cached).toMatch(/^Agrees: /);
      const rules = (sheet.rules ?? []).filter(({ ref }) => ref === at || ref === words?.at);
      expect(rules.map(({ when }) => when)).toEqual(Array(2).fill(`AND(ISNUMBER(${at}),${at}<>0)`));
    }
  });

  it("is not red for what governs a lift", () => {
    const sheet = sheetsOf(QUARRY).duty;
    const at = sheet.names?.["lift_governed_by"];
    expect(at).toBeDefined();
    expect((sheet.rules ?? []).filter(({ ref }) => ref === at)).toEqual([]);
  });
});

describe("a line table", () => {
  it("ends in a thin row of its own, which every range of it holds and no function reads", () => {
    const sheet = sheetsOf(QUARRY).duty;
    const { bottom, left, right } = boxOf(sheet.names?.["discharge_line"] ?? "");
    const ending = sheet.cells.filter(({ at }) => boxOf(at).top === bottom);
    expect(ending.every(({ v, f }) => v === undefined && f === undefined)).toBe(true);
    expect(sheet.rowHeights?.[bottom + 1]).toBeLessThan(6);
    expect(right - left).toBe(2);
    const sum = cellAt(sheet, "discharge_pipe_friction")?.f;
    expect(sum).toMatch(
      new RegExp(`^SUM\\(\\$[A-Z]+\\$${bottom + 1 - QUARRY.dischargeLine.length}:\\$[A-Z]+\\$${bottom + 1}\\)$`),
    );
    const rows = [["6in sch40", 100, "1 gate"]];
    const head = (line: readonly (readonly (string | number | null)[])[]): unknown =>
      call(CATALOGUE.find(({ id }) => id === "TDH") as never, [500, 10, line, rows, null, null, "water", 60, "US"]);
    expect(head([...rows, [null, null, null]])).toEqual(head(rows));
  });

  it("has worked cells that can be filled down: what they read of their own row moves with them", () => {
    const sheet = sheetsOf(QUARRY).duty;
    const { top, left, bottom, right } = boxOf(sheet.names?.["discharge_line"] ?? "");
    const worked = (row: number): readonly (readonly [number, string])[] =>
      sheet.cells.flatMap(({ at, f }) => {
        const box = boxOf(at);
        return f !== undefined && box.top === row && box.left > right ? [[box.left, f] as const] : [];
      });
    expect(bottom - top).toBeGreaterThan(1);
    for (const [column, f] of worked(top)) {
      const down = f.replaceAll(new RegExp(`(?<=\\$[A-Z])${top + 1}\\b`, "g"), String(top + 2));
      expect(down).not.toBe(f);
      expect(worked(top + 1).find(([at]) => at === column)?.[1]).toBe(down);
      expect(f).not.toMatch(new RegExp(`\\$[A-Z]+\\$${top + 1}\\b`));
    }
    expect(worked(top).length).toBeGreaterThan(2);
    expect(worked(top).some(([, f]) => f.includes(`$${columnLetters(left)}${top + 1}`))).toBe(true);
  });

  it("has a blank row below its end, and says CHANGED where something is typed there", () => {
    const { duty, workings } = sheetsOf(QUARRY);
    for (const line of ["suction_line", "discharge_line"]) {
      const { bottom, left, right } = boxOf(duty.names?.[line] ?? "");
      const below = duty.cells.filter(({ at }) => boxOf(at).top === bottom + 1);
      expect(below.filter(({ at }) => boxOf(at).left >= left && boxOf(at).left <= right)).toEqual([]);
      const range = `$${columnLetters(left)}$${bottom + 2}:$${columnLetters(right)}$${bottom + 2}`;
      expect(workings.cells.some(({ f = "" }) => f.includes(`COUNTA('${duty.name}'!${range})`))).toBe(true);
    }
  });

  it("is counted, and the title says CHANGED where a run was put in or taken out", () => {
    const set = dutySheets(QUARRY);
    if (!set.ok) throw new Error("no sheets");
    const [duty, ...rest] = set.value.sheets(set.value.wanted) as readonly [SheetSpec];
    const workings = (rest as readonly SheetSpec[]).at(-1);
    const said = duty.cells.find(({ f }) => f?.includes("CHANGED: a run was put into"));
    expect(said?.f).toMatch(/^IF\('.* workings'!runs_changed>0,"CHANGED: /);
    const counted = workings && cellAt(workings, "runs_changed")?.f;
    const cells =
      /^SUM\((C\d+),(C\d+),(C\d+),(C\d+),(C\d+),(C\d+),(C\d+),(C\d+)\)$/.exec(counted ?? "")?.slice(1) ?? [];
    const formulas = cells.map((at) => workings?.cells.find((cell) => cell.at === at)?.f);
    expect(formulas).toEqual([
      expect.stringContaining(`ROWS('${duty.name}'!suction_line)`),
      expect.stringMatching(/ROW\(.*\)-ROW\(/),
      expect.stringMatching(/ROW\(.*\)-ROW\(.*\)-ROWS\('.*'!suction_line\)/),
      expect.stringContaining("COUNTA("),
      expect.stringContaining(`ROWS('${duty.name}'!discharge_line)`),
      expect.stringMatching(/ROW\(.*\)-ROW\(/),
      expect.stringMatching(/ROW\(.*\)-ROW\(.*\)-ROWS\('.*'!discharge_line\)/),
      expect.stringContaining("COUNTA("),
    ]);
  });
});
