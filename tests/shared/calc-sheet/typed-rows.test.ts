import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import type { SegmentText } from "../../../shared/duty/duty-text.ts";
import { convertNumbers, numbersThatDiffer } from "../../../taskpane/pane/convert-numbers.ts";
import { dutyRead, dutyText, pumpText } from "../../support/duty-of.ts";
import { LEVEE } from "../../support/levee.ts";

const CURVE = LEVEE.curve.slice(1).map(([flow, head]) => [`${flow} gpm`, `${head} ft`]);

function row([pipe, length, fittings]: readonly unknown[], more: Partial<SegmentText> = {}): SegmentText {
  return { pipe: String(pipe), length: `${length} ft`, fittings: String(fittings), ...more };
}

/** The two-pump bypass of cases s1-shares-001 and -002, its rows with these shares. */
function bypass(shares: { readonly hose?: string; readonly branch?: string; readonly main?: string } = {}) {
  const [branch, up, down] = LEVEE.discharge() as [readonly unknown[], readonly unknown[], readonly unknown[]];
  const fields = {
    flow: "3000 gpm",
    sourceLevel: "588 ft",
    pumpLevel: "600 ft",
    deliveryLevel: "612 ft",
    temperature: "70 degF",
    altitude: "600 ft",
    pumpsRunning: "2",
  };
  const share = (of: string | undefined) => (of === undefined ? {} : { share: of });
  return dutyText(fields, {
    suctionLine: LEVEE.suction.map((hose) => row(hose, share(shares.hose))),
    dischargeLine: [row(branch, share(shares.branch ?? "each")), row(up, share(shares.main)), row(down)],
    pump: pumpText(CURVE),
  });
}

const cellsOf = (typed: ReturnType<typeof bypass>) => {
  const { cells } = workOut(dutyPlan(dutyRead(typed)));
  return (key: string) => cells.get(key) as number;
};

describe("rows of a line that say what they carry", () => {
  it("lose head at the flow of each pump and of all: 42.66 ft, and 20.05 ft of NPSH", () => {
    const cell = cellsOf(bypass());
    expect(cell("totalHead") / 42.6593).toBeCloseTo(1, 3);
    expect(cell("suctionLine.0.velocity")).toBeCloseTo(4.255, 2);
    expect(cell("suctionLine.0.share")).toBe(0.5);
  });

  it("let two pumps give 3504 gpm at 49.0 ft", () => {
    const cell = cellsOf(bypass());
    expect(cell("operatingFlow") / 3504.18).toBeCloseTo(1, 3);
    expect(cell("operatingHead") / 48.9995).toBeCloseTo(1, 3);
  });

  it("take a blank on the suction for each pump's, and 1/2 for the same", () => {
    expect(cellsOf(bypass({ hose: "each", branch: "1/2" }))("totalHead")).toBeCloseTo(
      cellsOf(bypass())("totalHead"),
      9,
    );
  });

  it("lose it all in one run where all is said: 46.79 ft", () => {
    expect(cellsOf(bypass({ hose: "all", branch: "all" }))("totalHead") / 46.79).toBeCloseTo(1, 3);
  });

  it.each(["0", "1.2", "-1/2", "half of it"])("refuse a share of %s at its box", (share) => {
    const { findings, isComplete } = decodeDuty(bypass({ main: share }));
    expect(isComplete).toBe(false);
    expect(findings.get("dischargeLine.1.share")?.map(({ kind }) => kind)).toContain("error");
  });

  it("refuse a level that the length of the run does not reach", () => {
    const typed = bypass();
    const dischargeLine = typed.dischargeLine.map((one, i) => (i === 0 ? { ...one, level: "615 ft" } : one));
    const { findings, isComplete } = decodeDuty({ ...typed, dischargeLine });
    expect(isComplete).toBe(false);
    expect(findings.get("dischargeLine.0.level")?.map(({ code }) => code)).toContain("line-climbs-beyond-length");
  });

  it("keep their levels in another unit set", () => {
    const typed = { ...bypass(), unitSet: "US" as const, dischargeLine: [row(["8in sch40", 1, ""], { level: "640" })] };
    expect(numbersThatDiffer(typed, "SI")).toContainEqual({ line: "dischargeLine", row: 0, column: "level" });
    expect(convertNumbers(typed, "SI").dischargeLine[0]?.level).toBe("195.072");
  });
});
