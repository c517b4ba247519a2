import { describe, expect, it } from "vitest";
import type { Duty } from "../../../shared/duty/duty.ts";
import type { CaseText, DutyText, SegmentText } from "../../../shared/duty/duty-text.ts";
import { rankingCases } from "../../../shared/duty/ranking-cases.ts";
import { andThen } from "../../../src/basis/result.ts";
import { type ReadyPump, readyPump } from "../../../src/pump/ready-pump.ts";
import type { Selection } from "../../../src/pump/selection.ts";
import { rankedForStation, type StationCases, stationAsked } from "../../../src/station/station-ranking.ts";
import { BYPASS_CURVE, bypass } from "../../support/bypass.ts";
import { dutyOf, dutyRead, type Fields } from "../../support/duty-of.ts";
import { LEVEE } from "../../support/levee.ts";
import { publishedCases } from "../../support/published-cases.ts";

const [GPM, FEET] = [(231 * 0.0254 ** 3) / 60, 0.3048];

/** The pump chosen in a duty, as one of a table. */
function offered({ pump }: Duty): ReadyPump {
  if (pump === undefined) throw new Error("no pump");
  const { name, curve } = pump;
  return readyPump({ name, curves: [{ points: curve.points }], limits: {} });
}

function casesOf(duty: Duty): StationCases {
  const cases = rankingCases(duty);
  if (!cases.ok) throw new Error(JSON.stringify(cases.findings));
  return cases.value;
}

function rankedFor(duty: Duty): Selection {
  const selection = andThen(stationAsked(casesOf(duty)), (asked) =>
    rankedForStation(asked, { pumps: [offered(duty)] }),
  );
  if (!selection.ok) throw new Error(JSON.stringify(selection.findings));
  return selection.value;
}

const caseText = (name: string, fields: CaseText["fields"]): CaseText => ({ name, hours: "", fields });
const station = (fields: Fields = {}, change: Partial<DutyText> = {}) =>
  dutyRead(bypass({ pumpsRunning: "2", ...fields }, change));

describe("a bypass of two pumps, each with its own hose and branch", () => {
  const expected = publishedCases("6-shares").find(({ id }) => id === "share-002")?.expected ?? {};
  const [ranked] = rankedFor(station()).ranked;

  it("share-002: ranks each at half of 3,504 gpm and 49.0 ft, 121.8 % of best efficiency flow", () => {
    expect((2 * (ranked?.flow ?? 0)) / GPM / (expected["flow_total"]?.value ?? 0)).toBeCloseTo(1, 3);
    expect((ranked?.head ?? 0) / FEET / (expected["head"]?.value ?? 0)).toBeCloseTo(1, 3);
    expect((100 * (ranked?.bestFlowRatio ?? 0)) / (expected["percent_of_BEP"]?.value ?? 0)).toBeCloseTo(1, 3);
  });

  it("holds against it that it runs outside its preferred region", () => {
    expect(ranked?.keepsRules).toBe(false);
    expect(ranked?.reasonsAgainst[0]).toMatchObject({ code: "outside-region", facts: { most: { value: 1.2 } } });
  });

  it("share-001: has NPSH available of the flow of one hose", () => {
    const at = (publishedCases("6-shares")[0]?.expected["NPSHA"]?.value ?? 0) * FEET;
    const asked = stationAsked(casesOf(station()));
    if (!asked.ok) throw new Error("not asked");
    const [{ duty }] = asked.value.cases;
    expect((duty.npshAvailable?.(1500 * GPM) ?? 0) / at).toBeCloseTo(1, 3);
  });

  it("with other pumps running in a case, shares its rows again", () => {
    const cases = [caseText("one alone", { pumpsRunning: "1", flow: "1500" })];
    const [, alone] = casesOf(station({}, { cases }));
    expect(alone?.pumps).toBe(1);
    expect([...(alone?.suctionLine ?? []), ...(alone?.dischargeLine ?? [])].map(({ share }) => share)).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });
});

describe("the cases of a duty", () => {
  it("are the duty alone where it states no other, without a name", () => {
    expect(casesOf(station()).map(({ name }) => name)).toEqual([undefined]);
  });

  it("are named ends of the ranges, and the user's own after them", () => {
    const duty = station(
      { leastStaticHead: "20", greatestStaticHead: "28", agedRoughness: "0.05" },
      { cases: [caseText("storm", { flow: "3300" }), caseText("old main", { pipe: "aged" })] },
    );
    const cases = casesOf(duty);
    expect(cases.map(({ name, isRangeEnd = false }) => [name, isRangeEnd])).toEqual([
      ["as stated", false],
      ["minimum static head", true],
      ["maximum static head", true],
      ["aged pipe", true],
      ["maximum static head, aged pipe", true],
      ["storm", false],
      ["old main", false],
    ]);
    expect(cases.map(({ staticHead }) => staticHead / FEET)).toEqual(
      [24, 20, 28, 24, 28, 24, 24].map((head) => expect.closeTo(head, 9)),
    );
    const rough = cases.map(({ dischargeLine }) => (dischargeLine[1]?.pipe.roughness ?? 0) / 0.0254);
    expect(rough.map((inches) => inches > 0.049)).toEqual([false, false, false, true, true, false, true]);
    expect(cases[5]?.flow).toBeCloseTo(3300 * GPM, 12);
  });

  it("leave the ranking as it was where one is equal to the duty", () => {
    const again = rankedFor(station({}, { cases: [caseText("again", { flow: "3000" })] })).ranked[0];
    const once = rankedFor(station()).ranked[0];
    for (const key of ["score", "flow", "npshMargin", "keepsRules"] as const) expect(again?.[key]).toBe(once?.[key]);
  });

  // By hand: 12 ft of lift give nothing; a source that rises to 620 ft stands 20 ft over the pump, 8.65 psi of 70 °F water.
  it("count the source at its highest, and the suction pressure stated, behind a shut valve", () => {
    const suction = (fields: Fields): number => {
      const asked = stationAsked(casesOf(station(fields)));
      return asked.ok ? (asked.value.cases[0].duty.shutIn?.suctionPressure ?? Number.NaN) / 6894.757 : Number.NaN;
    };
    expect(suction({})).toBe(0);
    expect(suction({ highestSourceLevel: "620" })).toBeCloseTo(8.65, 2);
    expect(suction({ highestSourceLevel: "620", greatestSuctionPressure: "30" })).toBeCloseTo(30, 4);
    expect(suction({ sourcePressure: "10" })).toBeCloseTo(10 - 12 * 0.4326, 2);
  });

  it("fail without findings where a box cannot be read", () => {
    const cases = rankingCases({ ...station(), flow: undefined });
    expect(cases).toMatchObject({ ok: false, findings: [] });
  });
});

it("equal pumps with lines of their own are each as one pump with its share of the flow", () => {
  const own = (fields: Fields, share: string) =>
    rankedFor(
      dutyRead(
        bypass(fields, {
          dischargeLine: [{ pipe: "12in HDPE DR17", length: "3000", fittings: "1 exit", share }],
          pump: { ...BYPASS_CURVE, name: "own" },
        }),
      ),
    ).ranked[0];
  const three = own({ pumpsRunning: "3", flow: "4500" }, "each");
  const one = own({ flow: "1500" }, "");
  for (const key of ["flow", "head", "power", "npshMargin", "score"] as const) {
    expect((three?.[key] ?? 0) / (one?.[key] ?? 1), key).toBeCloseTo(1, 9);
  }
});

// Cases s6-npsh-flow-001 and -002: water of 90 °F at 5,500 ft through 40 ft of 8 in hose; NPSHR 12.5 ft at 1,200 gpm.
describe("a lift at 5,500 ft and 90 °F", () => {
  const NPSHR = [
    ["0", "60", "0", "5.5"],
    ["400", "58", "40 %", "7.4"],
    ["600", "55", "55 %", "8.6"],
    ["800", "51", "66 %", "9.7"],
    ["1000", "46", "72 %", "11"],
    ["1200", "40", "70 %", "12.5"],
    // Beyond the case, so that the curve does not end there.
    ["1300", "36", "66 %", "13.3"],
  ] as const;
  const points = NPSHR.map(([flow, head, efficiency, npshRequired]) => ({ flow, head, efficiency, npshRequired }));
  const lifted = (lift: string, flow: string, head: string) =>
    rankedFor(
      dutyOf(
        {
          liquid: "water",
          temperature: "90",
          altitude: "5500",
          flow,
          sourceLevel: "0",
          pumpLevel: lift,
          deliveryLevel: head,
        },
        {
          suctionLine: [{ pipe: "ID 8 in rough 0.03 mm", length: "40", fittings: "K 1.5, K 0.3, K 0.3" }],
          dischargeLine: [{ pipe: "ID 30 in rough 0.03 mm", length: "1", fittings: "1 exit" }],
          pump: { ...BYPASS_CURVE, name: "lifted", points },
        },
      ),
    );

  it("of 20 ft is refused at 1,200 gpm, 9.01 ft short", () => {
    const reason = lifted("20", "1190", "37.2").leftOut[0]?.reason;
    expect(reason?.code).toBe("npsh-too-high");
    expect(((reason?.found?.value ?? 0) - (reason?.limit?.value ?? 0)) / FEET).toBeCloseTo(9.01, 1);
    expect((reason?.limit?.value ?? 0) / FEET).toBeCloseTo(3.488, 1);
  });

  it("of 12 ft is refused beyond 1,116 gpm and short of its margin below", () => {
    expect(lifted("12", "1125", "39").leftOut[0]?.reason.code).toBe("npsh-too-high");
    const [ranked] = lifted("12", "1000", "43").ranked;
    expect(ranked?.flow).toBeLessThan(1116 * GPM);
    expect(ranked?.reasonsAgainst.map(({ code }) => code)).toContain("npsh-margin-below-wanted");
  });
});

describe("the bypass over a levee", () => {
  const row = ([pipe, length, fittings, , level]: readonly unknown[], share = ""): SegmentText => ({
    pipe: String(pipe),
    length: String(length),
    fittings: String(fittings),
    share,
    level: level === undefined || level === null ? "" : String(level),
  });
  const levee = (fields: Fields = {}, summit: number = LEVEE.summit, change: Partial<DutyText> = {}) => {
    const [branch, ...main] = LEVEE.discharge(summit) as readonly [readonly unknown[], ...(readonly unknown[])[]];
    return station(
      { flow: "2400", outlet: "submerged", frictionMargin: "0", ...fields },
      {
        suctionLine: LEVEE.suction.map((hose) => row(hose, "each")),
        dischargeLine: [row(branch, "each"), ...main.map((one) => row(one))],
        ...change,
      },
    );
  };
  const point = (duty: Duty) => {
    const [{ flow = 0, head = 0 } = {}] = rankedFor(duty).ranked;
    return [(2 * flow) / GPM, head / FEET] as const;
  };

  // Case s3-route-001 over the summit, share-002 through the full line; worked apart from this product.
  it("ranks its pair where it gives the head over the summit, and through the full line where a siphon is earned", () => {
    const [flow, head] = point(levee());
    expect(flow / 2607.902).toBeCloseTo(1, 3);
    expect(head / 59.2618).toBeCloseTo(1, 3);
    expect(point(levee({ summitValve: "vacuum primer" }))[0] / 3504.181).toBeCloseTo(1, 3);
    expect(point(levee({}, 612))[0] / 3504.181).toBeCloseTo(1, 3);
  });

  it("leaves out a pair that runs over it with less than the flow asked", () => {
    const missed = (fields: Fields, summit?: number) =>
      rankedFor(levee({ flow: "3000", ...fields }, summit)).leftOut.map(({ reason }) => reason.code);
    expect(missed({})).toEqual(["head-too-low"]);
    expect(missed({ summitValve: "vacuum primer" })).toEqual([]);
    // Case s3-route-002: −8.295 psi at the summit, 19.2 ft of water over the grade line.
    expect(missed({ summitValve: "vacuum primer", siphonHeight: "21 ft" })).toEqual([]);
    expect(missed({ summitValve: "vacuum primer", siphonHeight: "18 ft" })).toEqual(["head-too-low"]);
  });

  it("counts on the fall in the case whose flow clears it of air alone", () => {
    const cases = [caseText("storm", { flow: "3400" }), caseText("night", { flow: "3300" })];
    expect(casesOf(levee({}, LEVEE.summit, { cases })).map(({ runsFull }) => runsFull)).toEqual([false, true, false]);
  });
});
