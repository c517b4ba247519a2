import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { type Argument, isRange } from "../../../shared/cells/cell.ts";
import type { CaseText, DutyText, SegmentText } from "../../../shared/duty/duty-text.ts";
import { dutyRead, dutyText, type Fields, pumpText } from "../../support/duty-of.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { judged } from "../../support/judged.ts";
import { LEVEE } from "../../support/levee.ts";
import { readTooEarly } from "../../support/plan-order.ts";
import { publishedCases } from "../../support/published-cases.ts";

const PUMP = pumpText(LEVEE.curve.slice(1).map(([flow, head]) => [`${flow} gpm`, `${head} ft`]));
const BASE: Fields = {
  flow: "2400 gpm",
  sourceLevel: "588 ft",
  pumpLevel: "600 ft",
  deliveryLevel: "612 ft",
  temperature: "70 degF",
  altitude: "600 ft",
  pumpsRunning: "2",
  fillingFlow: "1500 gpm",
  casingMaterial: "ductile iron",
  flangeClass: "Class 150",
};

function row([pipe, length, fittings, , level]: readonly unknown[], share = ""): SegmentText {
  const at = level == null || level === "" ? "" : `${level} ft`;
  return { pipe: String(pipe), length: `${length} ft`, fittings: String(fittings), share, level: at };
}

function levee(fields: Fields = {}, cases: readonly CaseText[] = [], summit: number | "" = LEVEE.summit): DutyText {
  const [branch, up, down] = LEVEE.discharge(summit) as [readonly unknown[], readonly unknown[], readonly unknown[]];
  const bare = (of: readonly unknown[]) => (summit === "" ? of.slice(0, 4) : of);
  return dutyText(
    { ...BASE, ...fields },
    {
      suctionLine: LEVEE.suction.map((hose) => row(hose, "each")),
      dischargeLine: [row(bare(branch), "each"), row(bare(up)), row(bare(down))],
      pump: PUMP,
      cases,
    },
  );
}

const caseOf = (fields: CaseText["fields"], name = "one"): CaseText => ({ name, hours: "", fields });

function cellsOf(typed: DutyText): (key: string) => Argument {
  const { cells } = workOut(dutyPlan(dutyRead(typed)));
  return (key) => cells.get(key) ?? null;
}

function near(found: Argument, expected: Argument, what: string): void {
  if (typeof expected !== "number") expect(found, what).toEqual(expected);
  else
    expect(Math.abs(Number(found) - expected), `${what}: ${found} for ${expected}`).toBeLessThanOrEqual(
      1e-7 * Math.max(1, Math.abs(expected)),
    );
}

/** The key of what stands under it, row by row. */
function rowsOf(of: Argument): readonly (readonly unknown[])[] {
  if (!isRange(of)) throw new Error(JSON.stringify(of));
  return of.slice(1);
}

describe("the route in a case", () => {
  const OVERRIDES: readonly (readonly [string, CaseText["fields"]])[] = [
    ["flow", { flow: "1900 gpm" }],
    ["source level", { sourceLevel: "583 ft" }],
    ["delivery level", { deliveryLevel: "619 ft" }],
    ["source pressure", { sourcePressure: "3 psi" }],
    ["delivery pressure", { deliveryPressure: "4 psi" }],
    ["liquid", { liquid: "sea water" }],
    ["temperature", { temperature: "110 degF" }],
    ["altitude", { altitude: "4000 ft" }],
    ["pumps running", { pumpsRunning: "1" }],
    [
      "all",
      { flow: "1800 gpm", sourceLevel: "585 ft", temperature: "95 degF", altitude: "2000 ft", pumpsRunning: "1" },
    ],
  ];

  it.each(OVERRIDES)("is filled, held and pressed as that of the duty stated so: %s", (what, fields) => {
    const own = cellsOf(levee({}, [caseOf(fields)]));
    const base = cellsOf(levee(fields as Fields));
    near(own("routeStates.0.headToFill"), base("fillHead"), `${what}, head to fill`);
    near(own("caseResults.0.headToSelect"), base("headAsked"), `${what}, head asked for`);
    const record = (of: Argument) => rowsOf(of)[0] as readonly Argument[];
    record(base("normalRecord")).forEach((of, i) => {
      near(record(own("case1Record"))[i] as Argument, of, `${what}, operating point, column ${i + 1}`);
    });
    const key = own("case1LinePressures") === null ? "linePressures" : "case1LinePressures";
    const [found, due] = [rowsOf(own(key)), rowsOf(base("linePressures"))];
    due.forEach((cells, i) => {
      cells.forEach((of, column) => {
        near(found[i]?.[column] as Argument, of as Argument, `${what}, run ${i + 1}, column ${column}`);
      });
    });
    const nozzles = rowsOf(base("nozzleClasses"));
    const heading = base("nozzleClasses") as readonly (readonly unknown[])[];
    const at = (name: string): number =>
      (heading[0] as readonly unknown[]).findIndex((of) => String(of).startsWith(name));
    nozzles.forEach((cells, nozzle) => {
      const greatest = Math.max(Number(cells[at("running")]), Number(cells[at("standing")]));
      near(own(`caseNozzles.1.careful${nozzle}`), greatest, `${what}, nozzle ${nozzle + 1}`);
    });
  });

  it("stands on the sheet before all that reads it", () => {
    const cases = OVERRIDES.map(([name, fields]) => caseOf(fields, name));
    expect(readTooEarly(dutyPlan(dutyRead(levee({}, cases))))).toEqual([]);
    expect(readTooEarly(dutyPlan(dutyRead(levee({ outlet: "submerged", agedRoughness: "0.02 in" }, cases))))).toEqual(
      [],
    );
  });

  // 0.825 + 0.25 √(28/2200) is 0.853, which 3000 gpm × 0.853/0.7596 = 3369 gpm reach (case s3-route-002). Running full
  // the pair gives 3504 gpm, held to the summit 2608 gpm (s7-cases-004, s3-route-001).
  it("counts on the fall in the case whose flow clears it of air, and in no other", () => {
    const cases = [caseOf({ flow: "3400 gpm" }, "storm"), caseOf({ flow: "3300 gpm" }, "wet")];
    const flows = (typed: DutyText) =>
      ["normal", "case1", "case2"].map((key) => Math.round(Number(rowsOf(cellsOf(typed)(`${key}Record`))[0]?.[0])));
    expect(flows(levee({ outlet: "submerged" }, cases))).toEqual([2608, 3504, 2608]);
    expect(flows(levee({ outlet: "submerged", flow: "3400 gpm" }, cases))).toEqual([3504, 3504, 2608]);
  });

  it("fails the head by the case in which the line does not fill, by name", () => {
    // The pair at shutoff lifts 72 ft: from 588 ft to 660, from 565 ft to 637, 3 ft short of the summit.
    const low = caseOf({ sourceLevel: "565 ft" }, "drought");
    const duty = dutyRead(levee({}, [low]));
    const [row] = judged(duty, "head", /while the line fills, drought/);
    expect(row?.state).toBe("fail");
    expect(judged(duty, "head", /flow over the summit while/)[0]?.state).toBe("pass");
  });

  it("judges the fill at the ends of the ranges: with a greater static head the source may stand lower", () => {
    // 30 to 47 ft of static head: 23 ft lower 565 ft, as above; or the delivery higher, and the line fills.
    const duty = dutyRead(levee({ greatestStaticHead: "47 ft" }));
    expect(judged(duty, "head", /while the line fills, maximum static head/)[0]?.state).toBe("check");
  });

  it("names the case of the minimum flow for the vacuum at the summit", () => {
    // Marched back from the outlet the summit stands higher over a grade line with less loss: less flow, more vacuum.
    const typed = levee({}, [caseOf({ flow: "1000 gpm" }, "night"), caseOf({ flow: "2300 gpm" }, "day")]);
    expect(cellsOf(typed)("linePressureLimits.1.leastIn")).toBe("night");
    expect(cellsOf(typed)("linePressureLimits.2.greatestIn")).toMatch(/^As stated/);
  });

  it("gives the pair of the published bypass in a case that states nothing, to the last digit", () => {
    const one = publishedCases("7-cases", "station").find(({ id }) => id === "s7-cases-004");
    if (one === undefined) throw new Error("no such case");
    const typed = levee(
      { flow: "3000 gpm", fillingFlow: "", casingMaterial: "", flangeClass: "" },
      [caseOf({}, "same")],
      "",
    );
    const cell = cellsOf(typed);
    const record = (key: string) => rowsOf(cell(key))[0] as readonly Argument[];
    expectPublished(Number(record("case1Record")[0]), "flow_total", one);
    expect(record("case1Record")).toEqual(record("normalRecord"));
  });
});
