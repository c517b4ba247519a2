import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import type { DutyText, SegmentText } from "../../../shared/duty/duty-text.ts";
import { noteText } from "../../../shared/text/finding-text.ts";
import { bypass } from "../../support/bypass.ts";
import { cell, numberIn } from "../../support/cells.ts";
import { dutyRead, dutyText, type Fields } from "../../support/duty-of.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";

const caseOf = (id: string) => {
  const found = publishedCases("6-shares").find((one) => one.id === id);
  if (found === undefined) throw new Error(`no case ${id}`);
  return found;
};

type Figures = (key: string) => number;
const figuresOf = (typed: DutyText): Figures => {
  const { cells } = workOut(dutyPlan(dutyRead(typed)));
  return (key) => cells.get(key) as number;
};

/** The bypass with other rows of its discharge line. */
const withDischarge = (fields: Fields, ...rows: readonly SegmentText[]): DutyText =>
  bypass(fields, { dischargeLine: rows });

const ALL_LOST = ["totalHead", "npshAvailable", "suctionPipe", "suctionFittings", "dischargePipe", "dischargeFittings"];

function expectAlike(one: Figures, other: Figures, keys: readonly string[]): void {
  for (const key of keys) {
    expect(Number.isFinite(one(key)), key).toBe(true);
    expect(Math.abs(one(key) - other(key)), key).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(other(key))));
  }
}

describe("the two-pump bypass as a duty", () => {
  const cell = figuresOf(bypass({ pumpsRunning: "2", pumpsStandby: "1" }));

  it("share-001: loses head and NPSH by what each row carries", () => {
    const of = caseOf("share-001");
    expectPublished(cell("suctionPipe") + cell("suctionFittings"), "suction_loss", of);
    expectPublished(cell("dischargeLine.0.pipeHead") + cell("dischargeLine.0.fittingHead"), "branch_loss", of);
    expectPublished(cell("dischargeLine.1.pipeHead") + cell("dischargeLine.1.fittingHead"), "main_loss", of);
    expectPublished(cell("totalHead"), "TDH", of);
    expectPublished(cell("npshAvailable"), "NPSHA", of);
    expectPublished(cell("suctionLine.0.velocity"), "suction_velocity", of);
    const all = bypass({ pumpsRunning: "2" });
    const wrong = figuresOf({
      ...all,
      suctionLine: all.suctionLine.map((row) => ({ ...row, share: "all" })),
      dischargeLine: all.dischargeLine.map((row) => ({ ...row, share: "all" })),
    });
    expectPublished(wrong("totalHead"), "TDH_if_all_flow_in_each_run (wrong)", of);
    expectPublished(wrong("npshAvailable"), "NPSHA_if_all_flow_in_one_hose (wrong)", of);
    expectPublished(wrong("operatingFlow"), "wrong_answer_if_all_flow_in_each_run", caseOf("share-002"));
  });

  it("share-002: runs where its pumps meet the line", () => {
    const of = caseOf("share-002");
    expectPublished(cell("operatingFlow"), "flow_total", of);
    expectPublished(cell("operatingHead"), "head", of);
    expectPublished(cell("operatingFlow") / 2, "flow_each", of);
    expectPublished(cell("bestFlowPercent"), "percent_of_BEP", of);
    expect(workOut(dutyPlan(dutyRead(bypass({ pumpsRunning: "2" })))).cells.get("dutyRegion.0.place")).toBe("OUTSIDE");
  });

  it("share-014: draws, fills and buys so many runs", () => {
    const of = caseOf("share-014");
    expectPublished(cell("suctionVolume"), "prime_volume_each_pump", of);
    expectPublished(cell("suctionVolume") * 3, "suction_volume_installed_3", of);
    expectPublished(cell("dischargeLine.0.water") * 2, "branches_2", of);
    expectPublished(cell("dischargeLine.1.water"), "main_volume", of);
    expectPublished(cell("runningVolume"), "fill_volume_running_2", of);
    // Three hoses of 40 ft bought, two of them running.
    expect(cell("pipeQuantities.0.length")).toBeCloseTo(120, 9);
    expect(cell("pipeQuantities.1.length")).toBeCloseTo(30, 9);
    expect(cell("pipeQuantities.2.length")).toBeCloseTo(4200, 9);
  });
});

describe("shares of a duty", () => {
  it("are the same as each pump's and as one in so many", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 5 }), fc.integer({ min: 500, max: 5000 }), (pumps, flow) => {
        const fields = { pumpsRunning: String(pumps), flow: String(flow), deliveryLevel: "600" };
        const shared = (share: string): Figures => {
          const typed = bypass(fields);
          return figuresOf({
            ...typed,
            pump: undefined as never,
            suctionLine: typed.suctionLine.map((row) => ({ ...row, share })),
            dischargeLine: typed.dischargeLine.map((row, i) => (i === 0 ? { ...row, share } : row)),
          });
        };
        expectAlike(shared("each"), shared(`1/${pumps}`), [...ALL_LOST, "suctionVolume", "runningVolume"]);
      }),
      { numRuns: 8 },
    );
  });

  it("left blank are each pump's on the suction and all on the discharge", () => {
    const typed = bypass({ pumpsRunning: "2" });
    const stated = {
      ...typed,
      suctionLine: typed.suctionLine.map((row) => ({ ...row, share: "each" })),
      dischargeLine: typed.dischargeLine.map((row) => ({ ...row, share: row.share ?? "all" })),
    };
    expectAlike(figuresOf(typed), figuresOf(stated), [...ALL_LOST, "operatingFlow", "runningVolume"]);
    for (const all of ["1", "100 %"]) {
      const written = {
        ...stated,
        dischargeLine: typed.dischargeLine.map((row) => ({ ...row, share: row.share ?? all })),
      };
      expectAlike(figuresOf(written), figuresOf(stated), ALL_LOST);
    }
  });

  it("of twin hoses lose what PARALLELRUNS gives two equal ones", () => {
    const hose = { pipe: "8in layflat", length: "500", fittings: "1 exit" };
    const typed = dutyText({ flow: "1600", temperature: "60" }, { dischargeLine: [{ ...hose, share: "1/2" }] });
    const cell = figuresOf(typed);
    const twin = [hose.pipe, 500, hose.fittings];
    const half = numberIn("LINEHEAD", 800, [twin], "water", 60);
    expect(cell("dischargePipe") + cell("dischargeFittings")).toBeCloseTo(half, 9);
    expect(cell("dischargeLine.0.velocity")).toBeCloseTo(numberIn("VELOCITY", 800, hose.pipe), 9);
    expect(cell("pipeQuantities.1.length")).toBeCloseTo(1000, 9);
  });
});

describe("the air that a pump of a duty draws", () => {
  // 40 ft of 12 in hose holds 235.0075 US gal; the casing 20.
  it.each([
    ["1", "", 1],
    ["1", "1/2", 2],
    ["2", "", 1],
    ["2", "1/2", 1],
    ["2", "1/4", 2],
    ["3", "1/2", 2],
    ["2", "all", 1],
  ])("%s pumps, suction share “%s”: of %s runs", (pumpsRunning, share, runs) => {
    const typed = bypass({ pumpsRunning, casingVolume: "20 gal", airPump: "50 cfm" });
    const own = figuresOf({ ...typed, suctionLine: typed.suctionLine.map((row) => ({ ...row, share })) });
    expect(own("airVolume")).toBeCloseTo(20 + 235.0074505 * runs, 4);
    expect(own("suctionVolume")).toBeCloseTo(235.0074505 * runs, 4);
  });
});

describe("rows of a duty", () => {
  const MAIN = { pipe: "ID 15.7552941176 in rough 0.02 mm", fittings: "" };
  const BRANCH = { pipe: "ID 10.02 in rough 0.045 mm", length: "10", fittings: "1 swing check", share: "each" };

  it("cut in two change no figure of the line, the pumps or the route", () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 4100 }), fc.constantFrom("", "1/2", "all"), (at, share) => {
        const rows = (...lengths: readonly number[]): readonly SegmentText[] =>
          lengths.map((length, i) => ({
            ...MAIN,
            length: String(length),
            share,
            fittings: i === lengths.length - 1 ? "8 elbow 45, 1 exit" : "",
          }));
        const whole = figuresOf(withDischarge({ pumpsRunning: "2", deliveryLevel: "630" }, BRANCH, ...rows(4200)));
        const cut = figuresOf(
          withDischarge({ pumpsRunning: "2", deliveryLevel: "630" }, BRANCH, ...rows(at, 4200 - at)),
        );
        expectAlike(cut, whole, [...ALL_LOST, "operatingFlow", "operatingHead", "runningVolume", "surgePressure"]);
      }),
      { numRuns: 8 },
    );
  });

  it("with other levels between the same ends have the same head and flow where the fall is counted on", () => {
    const ask = (summit: string, summitValve = "vacuum primer"): Figures =>
      figuresOf(
        withDischarge(
          { pumpsRunning: "2", outlet: "submerged", summitValve },
          BRANCH,
          { ...MAIN, length: "2000", level: summit },
          { ...MAIN, length: "2200", fittings: "1 exit", level: "612" },
        ),
      );
    const [low, high] = [ask("606"), ask("640")];
    expectAlike(high, low, [...ALL_LOST, "operatingFlow", "operatingHead", "runningVolume"]);
    expect(high("headOver")).toBeGreaterThan(low("totalHead"));
    // Without a siphon the pumps are held to the summit, and to no summit that lies below the grade line.
    expect(ask("640", "air valve")("operatingFlow")).toBeLessThan(low("operatingFlow"));
    expectAlike(ask("606", "air valve"), low, ["operatingFlow", "operatingHead"]);
  });
});

describe("a piece of header", () => {
  const station = (words: Partial<SegmentText>): DutyText =>
    withDischarge(
      { pumpsRunning: "2" },
      { pipe: "10in sch40", length: "10", fittings: "1 swing check", share: "each", level: "600" },
      { pipe: "12in sch40", length: "20", fittings: "1 gate", share: "1/2", level: "600", ...words },
      { pipe: "18in HDPE DR17", length: "4200", fittings: "1 exit", level: "612" },
    );

  it("is one run by its word in either text, and two without", () => {
    const twin = figuresOf(station({}));
    const area = (cell: Figures): number => cell("dischargeLine.1.water");
    for (const words of [
      { pipe: "12in sch40 header" },
      { fittings: "header, 1 gate" },
      { fittings: "1 gate, header" },
    ]) {
      const header = figuresOf(station(words));
      expectAlike(header, twin, [...ALL_LOST, "operatingFlow"]);
      // The second run is 20 ft of 12 in pipe in every volume: of what is filled, of the route, and bought.
      for (const key of ["runningVolume", "lineVolume"])
        expect(twin(key) - header(key), key).toBeCloseTo(area(twin), 6);
      expect(twin("pipeQuantities.2.length") - header("pipeQuantities.2.length")).toBeCloseTo(20, 9);
    }
  });

  it("is asked about where it is not named, and not where it is", () => {
    const asked = (words: Partial<SegmentText>): readonly string[] =>
      (decodeDuty(station(words)).findings.get("dischargeLine.1.share") ?? []).map(({ code }) => code);
    expect(asked({})).toContain("share-may-be-header");
    expect(asked({ fittings: "header" })).toEqual([]);
  });
});

describe("rows of a duty that look as if they stood side by side", () => {
  const LEAD = { pipe: "10in sch40", length: "10", fittings: "" };
  const twins = (first: Partial<SegmentText>, second: Partial<SegmentText>, fields: Fields = {}): DutyText =>
    dutyText(
      { flow: "1500", ...fields },
      {
        dischargeLine: [
          LEAD,
          { pipe: "8in HDPE DR17", length: "900", fittings: "", share: "1/2", ...first },
          { pipe: "10in HDPE DR17", length: "900", fittings: "1 exit", share: "1/2", ...second },
        ],
      },
    );
  const asked = (typed: DutyText) =>
    [...decodeDuty(typed).findings].flatMap(([place, list]) =>
      list.flatMap((finding) =>
        finding.code === "rows-side-by-side" ? [{ place, facts: finding.facts, text: noteText(finding, "US") }] : [],
      ),
    );
  const divided = (): readonly number[] =>
    (
      cell("PARALLELRUNS", 1500, [
        ["8in HDPE DR17", 900, ""],
        ["10in HDPE DR17", 900, "1 exit"],
      ]) as number[][]
    )
      .slice(1)
      .map((row) => row[2] as number);

  it("are asked about at the share of the last, with the right shares and the heads that the typed ones give", () => {
    const [one, ...more] = asked(twins({}, {}));
    expect(more).toEqual([]);
    expect(one?.place).toBe("dischargeLine.2.share");
    expect(one?.facts).toMatchObject({ rows: "2 and 3", typed: "50 % and 50 %" });
    const head = (pipe: string, fittings: string): number => numberIn("LINEHEAD", 750, [[pipe, 900, fittings]]);
    expect(one?.facts.most?.value).toBeCloseTo(0.3048 * head("8in HDPE DR17", ""), 6);
    expect(one?.facts.least?.value).toBeCloseTo(0.3048 * head("10in HDPE DR17", "1 exit"), 6);
    const shares = divided().map((share) => `${Math.round(100 * share)} %`);
    expect(one?.text).toContain(`(about ${shares.join(" and ")}`);
  });

  it("say no heads where the shares typed are right within 2 %", () => {
    const [first = 0] = divided();
    const heads = (share: number) =>
      asked(twins({ share: `${100 * share} %` }, { share: `${100 * (1 - share)} %` })).map(({ facts }) => facts.most);
    expect(heads(first)).toEqual([undefined]);
    // Heads go with 1.8 times the share: 1 % of the share is 1.8 % of one head and 1 % of the other.
    expect(heads(first * 1.001)).toEqual([undefined]);
    expect(heads(first * 1.02)).toEqual([expect.objectContaining({ quantity: "head" })]);
  });

  it("are not asked about where each pump has both, or they are named or follow by their levels", () => {
    expect(asked(twins({ share: "each" }, { share: "each" }, { pumpsRunning: "2" }))).toEqual([]);
    expect(asked(twins({ fittings: "header" }, { fittings: "header, 1 exit" }))).toEqual([]);
    expect(asked(twins({ level: "20" }, { level: "100" }))).toEqual([]);
    expect(asked(twins({ share: "1/2" }, { share: "all" }))).toEqual([]);
    expect(asked(twins({ length: "unknown" }, {}))).toEqual([]);
  });

  it("leave the rest to be asked for where one of them stands alone, in the pane and on the sheet", () => {
    const rest = (typed: DutyText): readonly string[] =>
      [...decodeDuty(typed).findings].flatMap(([place, list]) =>
        list.some(({ code }) => code === "share-leaves-a-rest") ? [place] : [],
      );
    expect(rest(twins({ share: "62 %" }, { share: "all" }))).toEqual(["dischargeLine.1.share"]);
    expect(rest(twins({ share: "62 %" }, { share: "38 %" }))).toEqual([]);
    expect(rest(twins({ share: "62 %", fittings: "header" }, { share: "all" }))).toEqual([]);
    const notes = (typed: DutyText): string => JSON.stringify([...workOut(dutyPlan(dutyRead(typed))).cells.values()]);
    expect(notes(twins({ share: "62 %" }, { share: "all" }))).toContain("does the rest, 38 %, flow in another run");
    expect(notes(twins({ share: "1/2" }, { share: "all" }))).not.toContain("flow in another run");
  });

  it("stand in the findings of the sheet", () => {
    const notes = (typed: DutyText): string => JSON.stringify([...workOut(dutyPlan(dutyRead(typed))).cells.values()]);
    expect(notes(twins({}, {}))).toContain("A line is one path");
    expect(notes(twins({}, { share: "all" }))).not.toContain("A line is one path");
    expect(notes(twins({ fittings: "header" }, { fittings: "header, 1 exit" }))).not.toContain("A line is one path");
  });
});
