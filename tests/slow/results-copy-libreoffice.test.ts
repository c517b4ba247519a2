import { beforeAll, describe, expect, it } from "vitest";
import { customerCopy } from "../../shared/calc-sheet/duty-sheets.ts";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import type { CellSpec, SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { writeWorkbook } from "../../shared/xlsx/write-workbook.ts";
import { specsOf } from "../shared/xlsx/patch/patching.ts";
import { allConverted } from "../support/libreoffice.ts";

function copyOf(duty: (typeof SAMPLE_DUTIES)[number]["duty"]): readonly SheetSpec[] {
  const copy = customerCopy(duty, "2026-03-09");
  if (!copy.ok) throw new Error(JSON.stringify(copy.findings));
  return copy.value.sheets(copy.value.wanted);
}

/** The cell of the first line called "Flow": its label stands in column B, its value in C. */
function flowOf(cells: readonly CellSpec[]): CellSpec {
  const row = cells.find(({ at, v }) => at.startsWith("B") && v === "Flow")?.at.slice(1);
  const flow = cells.find(({ at }) => at === `C${row}`);
  if (typeof flow?.v !== "number") throw new Error("the copy has no flow");
  return flow;
}

/** What each cell holds, but for the blank ones. */
const valuesOf = (sheets: readonly SheetSpec[]): ReadonlyMap<string, unknown> =>
  new Map(sheets.flatMap(({ cells }) => cells.flatMap(({ at, v }) => ((v ?? "") === "" ? [] : [[at, v] as const]))));

// Another program opens the copy, with the flow in it doubled, and saves it.
describe("a copy of results in LibreOffice", () => {
  const copies = SAMPLE_DUTIES.map(({ duty }) => copyOf(duty));
  let saved: readonly Uint8Array[];
  beforeAll(async () => {
    const doubled = copies.map(([sheet, ...others]): readonly SheetSpec[] => {
      const { at, v } = flowOf(sheet?.cells ?? []);
      const cells = (sheet?.cells ?? []).map((cell) => (cell.at === at ? { ...cell, v: 2 * Number(v) } : cell));
      return [{ ...(sheet as SheetSpec), cells }, ...others];
    });
    saved = await allConverted(
      doubled.map((sheets) => writeWorkbook({ sheets })),
      "xlsx",
    );
  });

  it.each(SAMPLE_DUTIES.map(({ name }, i) => ({ name, i })))(
    "changes nothing where its flow is doubled: $name",
    ({ i }) => {
      const copy = copies[i] ?? [];
      const flow = flowOf(copy[0]?.cells ?? []);
      const after = specsOf(saved[i] as Uint8Array);
      expect(after.flatMap(({ cells }) => cells.filter(({ f }) => f !== undefined))).toEqual([]);
      const [was, is] = [valuesOf(copy), valuesOf(after)];
      expect(is.get(flow.at)).toBe(2 * Number(flow.v));
      const off = [...was].filter(([at, value]) => {
        const now = is.get(at);
        if (typeof value === "number" && typeof now === "number")
          return Math.abs(now - value) > 1e-12 * Math.abs(value);
        return String(now).replace(/\s+/g, " ") !== String(value).replace(/\s+/g, " ");
      });
      expect(off.map(([at]) => at)).toEqual([flow.at]);
      expect(was.size).toBeGreaterThan(300);
    },
  );
});
