import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import type { CaseText } from "../../../shared/duty/duty-text.ts";
import { pumpOnDuty } from "../../../shared/package/pump-on-duty.ts";
import { shownSection } from "../../../shared/package/shown-section.ts";
import { cell as answerOf } from "../../support/cells.ts";
import { dutyOf, type Fields, pumpText, STRAIGHT_PUMP } from "../../support/duty-of.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { laidOut } from "../../support/laid-out.ts";
import { publishedCases } from "../../support/published-cases.ts";

function cellsOf(duty: Duty): (key: string) => unknown {
  const { cells } = workOut(dutyPlan(duty));
  return (key) => cells.get(key);
}

const [at20, at12] = publishedCases("6-npsh-flow", "station");
const [heated] = publishedCases("6-min-flow", "station");

/** The suction of the examination's third estimate, and a pump with the NPSH required of it. */
function lifted(lift: number): Duty {
  const npshRequired = [
    ["0", "5.5"],
    ["400", "7.4"],
    ["600", "8.6"],
    ["800", "9.7"],
    ["1000", "11"],
    ["1200", "12.5"],
  ] as const;
  return dutyOf(
    {
      flow: "600 gpm",
      sourceLevel: "0",
      pumpLevel: `${lift} ft`,
      deliveryLevel: `${lift + 20} ft`,
      temperature: "90 degF",
      altitude: "5500 ft",
      npshMargin: "2 ft",
    },
    {
      suctionLine: [{ pipe: "ID 8 in rough 0.03 mm", length: "40 ft", fittings: "K 1.5, 2 K 0.3" }],
      dischargeLine: [{ pipe: "8in sch40", length: "100 ft", fittings: "1 exit" }],
      pump: pumpText(npshRequired.map(([flow, npsh], i) => [`${flow} gpm`, `${130 - 8 * i} ft`, "", `${npsh} ft`])),
    },
  );
}

describe("flow at which the pump of the duty runs out of NPSH", () => {
  it.each([
    { of: at20, lift: 20 },
    { of: at12, lift: 12 },
  ])("is that of $of.id", ({ of, lift }) => {
    if (of === undefined) throw new Error("no case");
    expectPublished(cellsOf(lifted(lift))("npshRunsOut") as number, "flow_where_NPSHA_meets_NPSHR", of);
  });

  it("comes sooner with the margin to keep", () => {
    const cell = cellsOf(lifted(12));
    expect(cell("npshKeptTo") as number).toBeLessThan(cell("npshRunsOut") as number);
    // 2 ft of margin asked for, where 11.5 ft are there at 1200 gpm: none is left at 20 ft of lift.
    expect(cellsOf(lifted(20))("npshKeptTo")).toBe("no flow has enough");
    expect(cellsOf(lifted(-20))("npshRunsOut")).toBe("beyond the curve");
  });
});

describe("minimum flow of the pump of the duty", () => {
  it("is the greater of heating and hydraulics, each with its figure", () => {
    if (heated === undefined) throw new Error("no case");
    const points = [
      ["0", "720", ""],
      ["100", "716", "22"],
      ["200", "708", "38"],
      ["300", "696", "50"],
      ["400", "676", "59"],
      ["600", "616", "70"],
      ["800", "524", "74"],
    ] as const;
    const rows = points.map(([flow, head, efficiency]) => [`${flow} gpm`, `${head} ft`, efficiency]);
    const duty = (fields: Fields): Duty => dutyOf({ deliveryLevel: "500 ft", ...fields }, { pump: pumpText(rows) });
    const cell = cellsOf(duty({}));
    expectPublished(cell("thermalFlow") as number, "min_flow", heated);
    // 30 % of 800 gpm.
    expect(cell("hydraulicFlow")).toBeCloseTo(240, 6);
    expect(cell("leastFlowGoverns")).toBeCloseTo(240, 6);
    expect(cellsOf(duty({ leastPumpFlow: "300 gpm" }))("leastFlowGoverns")).toBeCloseTo(300, 6);
    expect(cellsOf(duty({ pumpsRunning: "2" }))("leastFlowGoverns")).toBeCloseTo(480, 6);
  });

  it("is said to be that of the duty as stated where it has cases", () => {
    const said = (cases: readonly CaseText[]): string =>
      JSON.stringify(dutyPlan(dutyOf({}, { pump: STRAIGHT_PUMP, cases })).items);
    expect(said([{ name: "hot", hours: "", fields: { temperature: "180 F" } }])).toContain(
      "heating among them, are judged for the duty as stated",
    );
    expect(said([])).not.toContain("judged for the duty as stated");
  });

  it("stands in the pane as on the sheet, and nowhere without efficiency and NPSH required", () => {
    const labels = shownSection(lifted(12), "flowLimits")?.figures.map(({ label }) => label);
    expect(labels).toEqual(["NPSH runs out at", "NPSH margin is kept up to"]);
    const bare = dutyOf(
      {},
      {
        pump: pumpText([
          ["0 gpm", "300 ft"],
          ["500 gpm", "280 ft"],
          ["1000 gpm", "200 ft"],
        ]),
      },
    );
    expect(shownSection(bare, "flowLimits")).toBeUndefined();
  });
});

describe("the acceptance cross of the duty", () => {
  const duty = (fields: Fields = {}): Duty =>
    dutyOf({ deliveryLevel: "200 ft", acceptanceGrade: "2B", ...fields }, { pump: STRAIGHT_PUMP });

  it("stands round the guaranteed duty with the band of ACCEPTANCETEST", () => {
    const cell = cellsOf(duty());
    const points = [
      ["flow", "head"],
      [400, 290],
      [600, 260],
      [800, 220],
    ];
    const [names = [], values = []] = answerOf(
      "ACCEPTANCETEST",
      points,
      cell("guaranteedFlow") as number,
      cell("guaranteedHead") as number,
      "2B",
    ) as readonly (readonly unknown[])[];
    const found = (name: string) => values[names.findIndex((heading) => String(heading).startsWith(name))];
    expect(cell("guaranteedFlow")).toBeCloseTo(600, 9);
    expect(cell("acceptedHeadLeast")).toBeCloseTo(found("minimum head") as number, 6);
    expect(cell("acceptedHeadMost")).toBeCloseTo(found("maximum head") as number, 6);
    expect(cell("acceptedFlowLeast")).toBeCloseTo(found("minimum flow") as number, 6);
    expect(cell("acceptedFlowMost")).toBeCloseTo(found("maximum flow") as number, 6);
    expect(cell("operatingFlow")).not.toBeCloseTo(600, 0);
  });

  it("is drawn on the head chart of the sheet and in the pane, of all pumps together", () => {
    const plan = dutyPlan(duty());
    const chart = laidOut(plan, workOut(plan)).duty.charts?.find(({ title }) => title === "Head of pump and system");
    expect(chart?.series.map(({ name }) => name).filter((name) => name.startsWith("acceptance"))).toHaveLength(1);
    const cell = cellsOf(duty({ pumpsRunning: "2" }));
    expect(cell("acceptanceCross.0.flow")).toBeCloseTo(600, 9);
    // 8 % of 600 gpm either way.
    expect(cell("acceptanceCross.3.flow")).toBeCloseTo(552, 6);
    expect(cell("acceptanceCross.4.flow")).toBeCloseTo(648, 6);
    const stroke = pumpOnDuty(duty())?.acceptance?.cross ?? [];
    const [up, down, middle, left, right] = stroke.map(({ flow, value }) => [flow, value] as const);
    if (!(up && down && middle && left && right)) throw new Error("the cross has not its five points");
    expect([up[0], down[0]]).toEqual([middle[0], middle[0]]);
    expect([left[1], right[1]]).toEqual([middle[1], middle[1]]);
    expect(pumpOnDuty(duty({ slurryGravity: "1.2", solidsGravity: "2.65" }))?.acceptance?.cross).toEqual([]);
  });
});
