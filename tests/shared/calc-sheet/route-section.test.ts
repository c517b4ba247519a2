import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import type { SegmentText } from "../../../shared/duty/duty-text.ts";
import { lineQuestions } from "../../../shared/duty/line-questions.ts";
import { pumpOnDuty } from "../../../shared/package/pump-on-duty.ts";
import { shownVerdicts } from "../../../shared/package/verdicts.ts";
import { cornerWords } from "../../../src/pump/envelope.ts";
import { dutyOf, dutyRead, dutyText, type Fields, pumpText } from "../../support/duty-of.ts";
import { judged } from "../../support/judged.ts";
import { laidOut } from "../../support/laid-out.ts";
import { LEVEE } from "../../support/levee.ts";

/** 231 in³ a minute in m³/s. */
const GPM = (231 * 0.0254 ** 3) / 60;
const CURVE = LEVEE.curve.slice(1).map(([flow, head]) => [`${flow} gpm`, `${head} ft`]);
const BASE: Fields = {
  flow: "3000 gpm",
  sourceLevel: "588 ft",
  pumpLevel: "600 ft",
  deliveryLevel: "612 ft",
  temperature: "70 degF",
  altitude: "600 ft",
  pumpsRunning: "2",
  outlet: "submerged",
};

function row([pipe, length, fittings, , level]: readonly unknown[], share = ""): SegmentText {
  return {
    pipe: String(pipe),
    length: `${length} ft`,
    fittings: String(fittings),
    share,
    level: level == null || level === "" ? "" : `${level} ft`,
  };
}

function levee(fields: Fields = {}, summit: number | string = LEVEE.summit, outlet = 612) {
  const [branch, up, down] = LEVEE.discharge(summit) as [readonly unknown[], readonly unknown[], readonly unknown[]];
  return dutyOf(
    { ...BASE, ...fields },
    {
      suctionLine: LEVEE.suction.map((hose) => row(hose, "each")),
      dischargeLine: [row(branch, "each"), row(up), row([...down.slice(0, 4), outlet])],
      pump: pumpText(CURVE),
    },
  );
}

function cellsOf(duty: ReturnType<typeof levee>) {
  const { cells } = workOut(dutyPlan(duty));
  return (key: string) => cells.get(key);
}

describe("a bypass of two pumps over a levee", () => {
  const cell = cellsOf(levee());
  const figure = (key: string) => cell(key) as number;

  // Case s3-route-001, worked apart from this product.
  it("fills over the summit with 2607.9 gpm at 59.26 ft", () => {
    expect(figure("fillFlow") / 2607.902).toBeCloseTo(1, 3);
    expect(figure("headWhileFilling") / 59.2618).toBeCloseTo(1, 3);
    expect(cell("fills")).toBe("fills");
    expect(figure("shutoffOver")).toBeCloseTo(72 - 52, 6);
  });

  // Case s3-route-002.
  it("has −8.295 psi at the summit and earns no siphon at a Froude number of 0.760", () => {
    expect(figure("summitPressure")).toBeCloseTo(-8.295, 2);
    expect(figure("froude")).toBeCloseTo(0.7596, 3);
    expect(cell("siphon")).toBe("not earned: air may stay in the leg");
    // 10 ft of branch and √(2000² − 40²) ft in plan.
    expect(figure("summitAt")).toBeCloseTo(2009.6, 3);
  });

  // The liquid over the outlet stands at 612 ft wherever the pipe ends under it, and the grade line with it.
  it("marches back from the liquid over a drowned outlet, in every case", () => {
    const low = cellsOf(levee({ casingMaterial: "ductile iron", flangeClass: "Class 150" }, LEVEE.summit, 605));
    expect(low("summitPressure") as number).toBeCloseTo(-8.295, 2);
    // 7 ft of water at 70 °F, 62.30 lb/ft³ / 144.
    expect(low("routePoints.3.pressure") as number).toBeCloseTo(3.028, 2);
    // The last run of LINEPRESSURES at its low end, the outlet.
    const [headings, ...runs] = low("linePressures") as readonly (readonly unknown[])[];
    const at = (name: string) => Number(runs[2]?.[headings?.findIndex((of) => String(of).startsWith(name)) ?? -1]);
    expect([at("running"), at("standing")].map((of) => of.toFixed(2))).toEqual(["3.03", "3.03"]);
  });

  it("asks which level is right where the outlet is not drowned", () => {
    const codes = (duty: ReturnType<typeof levee>) => lineQuestions(duty).map(({ finding }) => finding.code);
    expect(codes(levee({}, LEVEE.summit, 605))).not.toContain("level-not-at-end");
    expect(codes(levee({ outlet: "free" }, LEVEE.summit, 605))).toContain("level-not-at-end");
    expect(codes(levee({}, LEVEE.summit, 619))).toContain("level-not-at-end");
  });

  it("fails the head: held to the summit the pumps give 2608 gpm, not 3000", () => {
    const verdict = shownVerdicts(levee()).find(({ subject }) => subject === "head");
    expect(verdict?.state).toBe("fail");
    expect(verdict?.text).toMatch(/over the summit/);
    // The operating point is that of filling, case s3-route-001.
    expect(figure("operatingFlow") / 2607.902).toBeCloseTo(1, 3);
    expect(figure("operatingHead") / 59.2618).toBeCloseTo(1, 3);
    // 55.2 ft of the pair at 1500 gpm each against 52 ft of rise with the losses to the summit.
    expect(figure("headAsked")).toBeGreaterThan(60);
    expect(figure("headOverDuty")).toBeCloseTo(figure("headAtDuty") - figure("headAsked"), 9);
    // The rise of 52 ft bears no margin, the losses to the summit do: stated, and assumed where none is.
    const losses = figure("headAsked") - 52;
    const margin = cellsOf(levee({ frictionMargin: "10" }));
    expect(margin("headAsked") as number).toBeCloseTo(52 + 1.1 * losses, 6);
    const careful = (figure("headAtDuty") - 0.1 * losses).toFixed(1);
    expect(verdict?.text).toContain(`head at the duty flow, ${careful} of ${figure("headAsked").toFixed(1)} ft`);
    expect(verdict?.text).toContain("over the summit, without a siphon; less 10 % of the losses");
  });

  // The pair running full, worked apart from this product: 3504 gpm at 49.0 ft. An air valve at the summit keeps it from that.
  it("says how far the pumps run out should a siphon come by itself, where one may", () => {
    const full = (fields: Fields) => {
      const of = cellsOf(levee(fields));
      return [of("dutyRegion.0.flow"), of("dutyRegion.1.flow"), of("dutyRegion.1.head")].map((one) =>
        (one as number).toFixed(1),
      );
    };
    const [held, free] = ["2607.9", "3504.2"];
    expect(full({})).toEqual([held, free, "49.0"]);
    expect(full({ outlet: "free" })).toEqual([held, free, "49.0"]);
    expect(full({ summitValve: "air valve" })).toEqual([held, held, "59.3"]);
    expect(full({ summitValve: "vacuum primer" })).toEqual([free, free, "49.0"]);
  });

  // The same 3504.2 gpm; with an air valve there the pumps never give more than 2607.9.
  it("has it in the region of the pane, under its name, where the sheet has it", () => {
    const greatest = (fields: Fields) => {
      const region = pumpOnDuty(levee(fields))?.region;
      const corners = region?.corners.filter(({ flow }) => flow === region.greatestFlow) ?? [];
      return [((region?.greatestFlow ?? 0) / GPM).toFixed(1), ...corners.map(cornerWords)];
    };
    expect(greatest({})).toEqual(["3504.2", "normal static head, line running full, curve as drawn"]);
    expect(greatest({ summitValve: "air valve" })[0]).toBe("2607.9");
    expect(greatest({ summitValve: "vacuum primer" })[0]).toBe("3504.2");
    // 4 ft less to lift: both ends of the sheet's own range.
    const low = pumpOnDuty(levee({ leastStaticHead: "20 ft" }));
    const row = low?.cases.find(({ key }) => key === "full");
    expect((low?.region?.greatestFlow ?? 0) / (row?.flow as number)).toBeCloseTo(1, 4);
    expect(row?.flow as number).toBeGreaterThan(3510 * GPM);
  });

  // NPSH required is known at 3000 gpm; running full the pair gives 3504, held by an air valve 2608.
  it("is beyond what NPSH required was typed for where the line may run full", () => {
    const beyond = (fields: Fields) => {
      const [found] = judged(levee({ npshRequired: "10 ft", ...fields }), "npsh", /operating flow/);
      return `${found?.state}: ${found?.text}`;
    };
    expect(beyond({})).toMatch(/^check: .*3,504 of 3,000 US gpm/);
    expect(beyond({ summitValve: "vacuum primer" })).toMatch(/^check: .*3,504 of 3,000 US gpm/);
    expect(beyond({ summitValve: "air valve" })).toMatch(/^pass: /);
  });

  // Volumes of case s3-route-014: 1200 + 1000 ft of the fall run out, the rise stays.
  it("drains the fall, and stands to the summit, not to the outlet", () => {
    expect(figure("runsOut") / 22281.0).toBeCloseTo(1, 3);
    expect(figure("standingLevel")).toBeCloseTo(640, 9);
    // 28 ft of water at 70 °F: 12.11 psi, at 0.49115 psi an inch of mercury.
    expect(figure("hangingVacuum")).toBeCloseTo(24.66, 1);
  });

  it("asks for a valve at the summit", () => {
    expect([0, 1, 2].map((i) => cell(`airValvesShown.${i}.valve`))).toContain("combination");
  });

  it("says what head a summit below the grade line asks for: no more than running", () => {
    const low = cellsOf(levee({}, 612));
    expect(low("siphon")).toBe("not needed");
    expect(low("headToSelect") as number).toBeCloseTo(low("totalHead") as number, 6);
    expect(low("lineHead") as number).toBeCloseTo(low("totalHead") as number, 6);
    expect(judged(levee({}, 612), "head", /without a siphon/)).toEqual([]);
  });

  it("does not fill over a levee higher than the shutoff head", () => {
    const high = levee({}, 665);
    const of = cellsOf(high);
    // 665 − 588 = 77 ft against 72 ft.
    expect(of("shutoffOver") as number).toBeCloseTo(-5, 6);
    expect(of("fills")).toMatch(/^does not fill/);
    expect(judged(high, "head", /does not fill/).map(({ state }) => state)).toEqual(["fail"]);
  });

  it("draws the route along its chainage on the sheet", () => {
    const plan = dutyPlan(levee());
    const chart = laidOut(plan, workOut(plan)).duty.charts?.find(({ title }) => title === "Route");
    expect(chart?.series.map(({ name }) => name)).toEqual([
      "pipe",
      "grade line, running full",
      "minimum grade for a siphon",
    ]);
  });

  it("changes no head between the same ends", () => {
    const head = (summit: number | string) => cellsOf(levee({}, summit))("totalHead") as number;
    expect(head(640)).toBeCloseTo(head(612), 9);
    expect(head("")).toBeCloseTo(head(612), 9);
  });
});

/** 20 L/s through 300 mm pipe over a hill of 10 m to a free outlet at 2 m, from a pump at 0. */
function hill(pipes: readonly [string, string], levels: readonly [string, string], fields: Fields = {}) {
  return dutyOf(
    {
      flow: "20 L/s",
      sourceLevel: "0 m",
      pumpLevel: "0 m",
      deliveryLevel: levels[1],
      temperature: "20 degC",
      altitude: "0",
      ...fields,
    },
    {
      suctionLine: [{ pipe: "DN300 sch40", length: "1 m", fittings: "" }],
      dischargeLine: [
        { pipe: pipes[0], length: `${Math.hypot(100, 10)} m`, fittings: "", level: levels[0] },
        { pipe: pipes[1], length: `${Math.hypot(200, 8)} m`, fittings: "1 exit", level: levels[1] },
      ],
      pump: pumpText([
        ["0 L/s", "30 m"],
        ["20 L/s", "25 m"],
        ["40 L/s", "5 m"],
      ]),
    },
  );
}

// By hand: 4 m/s in 200 mm, V²/2g = 16 / 19.6133 = 0.815773 m; Re = 0.8 / 1.0034e-6 = 797289 and ε/D = 0.045 / 200 give by
// Colebrook f = 0.015140. Lost: 10 m and K 1 before the pump 1.4333 m, 40 m and K 3 to a summit 30 m over the source 4.9175 m,
// 40 m and K 2 from there 4.1018 m. 15 % by volume of SG 2.65 in SG 1 (998.2 kg/m³ at 20 °C): SG 1.2475, 1245.2545 kg/m³. Without
// a size of the solids, losses are those of the clear liquid in head of slurry.
describe("a slurry over a summit", () => {
  const PIPE = "ID 200 mm rough 0.045 mm";
  const run = (length: string, fittings: string, level = "") => ({ pipe: PIPE, length, fittings, level });
  const headAsked = (fields: Fields, summit = "30") => {
    const duty = dutyRead(
      dutyText(
        {
          flow: "0.125663706143592 m3/s",
          sourceLevel: "0",
          pumpLevel: "-2",
          deliveryLevel: "20",
          liquid: "SG 1, 1.0034 cSt, pv 2.3 kPa",
          solids: "31.8637274549",
          solidsGravity: "2.65",
          outlet: "free",
          summitValve: "air valve",
          ...fields,
        },
        {
          unitSet: "SI",
          suctionLine: [run("10", "K 1")],
          dischargeLine: [run("40", "K 3", summit), run("40", "K 2", "20")],
        },
      ),
    );
    return workOut(dutyPlan(duty)).cells.get("headAsked") as number;
  };

  it("asks for 30 m and the losses of 6.3509 m to the summit in slurry, the margin on the losses alone", () => {
    expect(headAsked({ frictionMargin: "0" })).toBeCloseTo(36.3509, 3);
    expect(headAsked({ frictionMargin: "10" })).toBeCloseTo(36.986, 3);
  });

  it("counts the pressure over the source in slurry: 50 kPa are 4.0945 m of it, not 5.1077 m of water", () => {
    expect(headAsked({ frictionMargin: "10", sourcePressure: "50 kPa" })).toBeCloseTo(36.986 - 4.0944, 3);
  });

  it("asks for the head through the line where that is more: 20 m and 10.4527 m, over a place at 21 m", () => {
    expect(headAsked({ frictionMargin: "0" }, "21")).toBeCloseTo(30.4527, 3);
  });
});

const PLAIN = "ID 300 mm rough 0.05 mm";

describe("a hill before a free outlet", () => {
  // Case s3-route-008: the line marched back from the outlet, not from the head of the pump.
  it("has −77.8 kPa at its summit whatever the pump gives, and is held to it", () => {
    const cell = cellsOf(hill([PLAIN, PLAIN], ["10 m", "2 m"]));
    const psi = 6.894757;
    expect((cell("summitPressure") as number) * psi).toBeCloseTo(-77.795, 1);
    // Start of the energy line 2.0835 m, less the velocity head of 0.0041 m.
    expect((cell("gradeLine.0.hydraulicGrade") as number) * 0.3048).toBeCloseTo(2.0794, 3);
    expect(cell("siphon")).toMatch(/^not earned: air comes out of solution, outlet not sealed, leg runs part full$/);
    expect(((cell("headOver") as number) - (cell("suctionPipe") as number)) * 0.3048).toBeCloseTo(10.0265, 3);
  });

  it("fails hose that the running line would flatten", () => {
    expect(
      judged(hill([PLAIN, "12in layflat"], ["10 m", "2 m"]), "pipe", /vacuum in discharge run 2/).map(
        ({ state }) => state,
      ),
    ).toContain("fail");
    expect(
      judged(hill([PLAIN, "12in layflat"], ["1 m", "2 m"]), "pipe", /vacuum in discharge run 2/).map(
        ({ state }) => state,
      ),
    ).not.toContain("fail");
  });

  it("holds each run at its own low end, below pump and delivery alike", () => {
    // The hollow lies 20 m below the pump: 30 m of shutoff and 20 m of depth, 50 × 9788.998 Pa = 70.99 psi at 20 °C.
    const low = cellsOf(
      hill([PLAIN, PLAIN], ["-9 m", "2 m"], { acceptanceGrade: "2B", dischargeHoseRating: "100 psi" }),
    );
    const high = cellsOf(
      hill([PLAIN, PLAIN], ["9 m", "2 m"], { acceptanceGrade: "2B", dischargeHoseRating: "100 psi" }),
    );
    const row = (of: typeof low) =>
      [0, 1, 2].map((i) => of(`pipeRuns.${i}.pressure`)).filter((found) => typeof found === "number") as number[];
    const [first] = row(low).slice(-2) as [number];
    const [dry] = row(high).slice(-2) as [number];
    // 9 m more of water: 9 × 9788.998 Pa.
    expect(first - dry).toBeCloseTo((9 * 9788.998) / 6894.757, 2);
  });

  it("cites the standard that rates each pipe", () => {
    const sources = (pipe: string) =>
      judged(hill([pipe, pipe], ["7 m", "2 m"]), "pipe", /^[^:]*: discharge run 1/).map(({ source }) => source);
    expect(sources("12in HDPE DR9").join()).toMatch(/AWWA M55/);
    expect(sources("12in HDPE DR9").join()).not.toMatch(/B31\.3/);
    expect(sources("12in sch40").join()).toMatch(/B31\.3/);
  });

  it("judges thin polyethylene by its running vacuum for long, and by a surge for a while", () => {
    const states = (pipe: string) =>
      judged(hill([pipe, pipe], ["7 m", "2 m"]), "pipe", /vacuum in discharge run 1/).map(({ state }) => state);
    expect(states("12in HDPE DR32.5")).toContain("fail");
    expect(states("12in HDPE DR9")).not.toContain("fail");
  });
});
