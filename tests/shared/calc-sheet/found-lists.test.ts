import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import type { BlockRow, PlanItem } from "../../../shared/calc-sheet/plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { shownSection } from "../../../shared/package/shown-section.ts";
import { workedDuty } from "../../../shared/package/worked-duty.ts";
import type { CellSpec } from "../../../shared/ports/sheet-spec.ts";
import { dutyOf, dutyRead, QUARRY } from "../../support/duty-of.ts";
import { laidOut } from "../../support/laid-out.ts";

interface Row {
  readonly where: string;
  readonly kind: string;
  readonly text: string;
}

/** The texts of the printed rows under a heading, up to the next: "Limit, discharge flange: …". */
function textsUnder(heading: string, duty = dutyRead(QUARRY)): readonly string[] {
  const plan = dutyPlan(duty);
  const worked = workOut(plan);
  const byRow = new Map<number, CellSpec[]>();
  for (const cell of laidOut(plan, worked).duty.cells) {
    const row = Number(/\d+$/.exec(cell.at)?.[0]);
    byRow.set(row, [...(byRow.get(row) ?? []), cell]);
  }
  const rows = [...byRow].sort(([a], [b]) => a - b).map(([, cells]) => cells);
  const isHead = (cells: readonly CellSpec[]): boolean => cells.some(({ style }) => style === "section");
  const first = rows.findIndex((cells) => isHead(cells) && cells.some(({ v }) => v === heading));
  const after = rows.slice(first + 1);
  const end = after.findIndex(isHead);
  return after.slice(0, end).flatMap((cells) => {
    const said = cells.find(({ style }) => style === "finding" || style === "statement");
    return said === undefined ? [] : [String(said.cached ?? said.v ?? "")];
  });
}

function printedUnder(heading: string, duty = dutyRead(QUARRY)): readonly Row[] {
  return textsUnder(heading, duty).flatMap((line) => {
    const [, kind = "", where = "", text = ""] = /^(\w+), (.*?): ([A-Z“].*|\d.*)$/.exec(line) ?? [];
    return kind === "" ? [] : [{ kind, where, text }];
  });
}

/** The boxes left blank that the customer is asked to confirm. */
function boxesTaken(items: readonly PlanItem[]): readonly BlockRow[] {
  const [, ...after] = items.slice(items.findIndex((item) => item.kind === "section" && item.id === "toConfirm"));
  const end = after.findIndex(({ kind }) => kind === "section");
  return after.slice(0, end).flatMap((item) => (item.kind === "blocks" ? item.blocks.flatMap(({ rows }) => rows) : []));
}

describe("the findings of a sheet", () => {
  it("are printed once each with the rows they concern, the gravest first", () => {
    const rows = printedUnder("Findings");
    const said = rows;
    expect(said.length).toBeGreaterThan(10);
    expect(new Set(said.map(({ text }) => text)).size).toBe(said.length);
    const kinds = ["Safety", "Limit", "Check"];
    const order = said.map(({ kind }) => kinds.indexOf(kind));
    expect(order).toEqual([...order].sort());
    // Both flanges of the sample are bolted, and both calls say the same of the wrench.
    const wrench = said.filter(({ text }) => text.startsWith("Bolt load is taken to come out up to 30 %"));
    expect(wrench.map(({ where }) => where)).toEqual(["Suction flange bolting; Discharge flange bolting"]);
  });

  it("say what the calls of the sheet say, whatever was assumed apart", () => {
    const { plan, worked } = workedDuty(dutyRead(QUARRY));
    const notes = plan.items.flatMap((item) =>
      item.kind === "finding" && item.expression.op === "notes" ? String(worked.cells.get(item.key)).split("\n") : [],
    );
    // Sources stand in the workings.
    const lines = new Set(notes.filter((line) => line !== "").map((line) => line.split(" [")[0]));
    const printed = [...printedUnder("Findings"), ...printedUnder("To confirm with the customer")]
      .filter(({ kind }) => ["Safety", "Limit", "Check", "Assumed"].includes(kind))
      .map(({ kind, text }) => `${kind}: ${text}`);
    expect(new Set(printed)).toEqual(lines);
  });

  it("stand in words where there are none", () => {
    const still = dutyOf({ altitude: "0" });
    const assumed = textsUnder("To confirm with the customer", still);
    expect(assumed).toContain("No call took anything for granted.");
  });
});

describe("what is to be confirmed with the customer", () => {
  it("lists each box left blank once, with the figure taken, live", () => {
    const { plan, worked } = workedDuty(dutyRead(QUARRY));
    const taken = boxesTaken(plan.items);
    const at = (label: string): unknown => worked.cells.get(taken.find((row) => row.label === label)?.key ?? "");
    expect([at("Source pressure"), at("Gasket shape"), at("Scatter of the tightening")]).toEqual([0, "ring", 30]);
    expect(taken.filter(({ label }) => label === "Source pressure")).toHaveLength(1);
    const { duty } = laidOut(plan, worked);
    const gasket = duty.cells.find(({ at }) => at === duty.names?.["confirm_gasket_shape"]);
    expect(gasket?.f).toBe("gasket_shape");
  });

  it("leaves out a box that was stated", () => {
    const stated = dutyRead({ ...QUARRY, fields: { ...QUARRY.fields, sourcePressure: "0" } });
    expect(boxesTaken(workedDuty(stated).plan.items).map(({ label }) => label)).not.toContain("Source pressure");
  });

  it("lists each work once that nobody has yet held the figures against", () => {
    const lines = textsUnder("To verify by the estimator");
    const unverified = lines.filter((line) => line.endsWith("not yet verified against the standard."));
    expect(unverified.length).toBeGreaterThan(2);
    expect(new Set(unverified).size).toBe(unverified.length);
    expect(unverified.some((line) => line.includes("ISO 3046-1"))).toBe(true);
  });

  it("is a section that a pane can show", () => {
    const shown = shownSection(dutyRead(QUARRY), "toConfirm");
    expect(shown?.figures.find(({ label }) => label === "Gasket shape")?.text).toBe("ring");
  });
});
