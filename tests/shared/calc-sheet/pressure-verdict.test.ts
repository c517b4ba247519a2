import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import type { DutyText, PumpText } from "../../../shared/duty/duty-text.ts";
import { stagesRead } from "../../../shared/duty/stages.ts";
import { type ShownVerdict, shownVerdicts } from "../../../shared/package/verdicts.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { dutyRead, dutyText, type Fields, pumpText } from "../../support/duty-of.ts";

/*
 * Hand calculations. A liquid of 1000 kg/m³: 1000 × 9.80665 × 0.3048 / 6894.757 = 0.433528 psi a foot; water at 68 °F
 * (998.206 kg/m³, IAPWS-IF97) 0.432751. Ratings to 100 °F: ASME B16.42 ductile iron Class 150 250 psi, Class 300 640;
 * ASME B16.1 grey iron Class 125 150 psi from NPS 14, 200 to NPS 12. ISO 9906, table 8: grade 2B 5 %, 3B 7 % of head.
 */
const THOUSAND = "1000 kg/m3, 1.002 cP, pv 2.34 kPa";

interface Case {
  readonly fields?: Fields;
  /** Greatest head, ft. */
  readonly shutoff?: number;
  readonly pump?: Partial<PumpText>;
  readonly unitSet?: UnitSetName;
  /** Fittings of the discharge line. */
  readonly fittings?: string;
}

const FLOWS = [0, 250, 500];

/** A pump level with its source, of 74 hp at most, ductile iron Class 150, casing as strong, grade 2B. */
function typed({ fields = {}, shutoff = 300, pump = {}, fittings = "1 exit", unitSet = "US" }: Case): DutyText {
  const rows = FLOWS.map((gpm, i) => [`${gpm} gpm`, `${shutoff * (1 - 0.1 * i)} ft`, i === 0 ? "" : "70"]);
  return dutyText(
    {
      flow: "400 gpm",
      pumpLevel: "0 ft",
      deliveryLevel: "20 ft",
      liquid: THOUSAND,
      acceptanceGrade: "2B",
      casingMaterial: "ductile iron",
      flangeClass: "150",
      casingWorkingPressure: "1000 psi",
      ...fields,
    },
    {
      unitSet,
      pump: pumpText(rows, { speed: "1800 rpm", impellerDiameter: "14 in", ...pump }),
      dischargeLine: [{ pipe: "8in sch40", length: "500 ft", fittings }],
    },
  );
}

function verdictOf(one: Case): ShownVerdict {
  const found = shownVerdicts(dutyRead(typed(one))).find(({ subject }) => subject === "pressure");
  if (found === undefined) throw new Error("no verdict on pressure");
  return found;
}

const stateOf = (one: Case) => verdictOf(one).state;

function cellOf(one: Case, key: string): unknown {
  return workOut(dutyPlan(dutyRead(typed(one)))).cells.get(key);
}

describe("the verdict on pressure", () => {
  it("derives the suction: source at 80 psig and 10 ft over the pump, shutoff 400 ft: 266 of 250 psig fails", () => {
    const one = (shutoff: number): Case => ({
      shutoff,
      fields: {
        liquid: "water",
        temperature: "68",
        sourcePressure: "80",
        pumpLevel: "-10",
        casingWorkingPressure: "250",
      },
    });
    expect(cellOf(one(400), "sourceGives")).toBeCloseTo(84.33, 2);
    expect(cellOf(one(400), "greatestPressure")).toBeCloseTo(266.1, 1);
    const found = verdictOf(one(400));
    expect(found.state).toBe("fail");
    expect(found.text).toContain("Fails: discharge flange ductile iron, 266 of 250 psig (Class 150, closed valve)");
    expect(found.besides.map(({ text }) => text).join()).toContain("Fails: casing, 266 of 250 psig");
    // (250 − 84.33)/(1.05 × 0.432751) = 364.60 ft.
    expect([364.6, 364.8].map((feet) => stateOf(one(feet)))).toEqual(["pass", "fail"]);
  });

  it("derives it from the level of an open source too: 160 ft above the pump and a shutoff of 400 ft, 250.9 psig", () => {
    const fields = {
      liquid: "water",
      temperature: "68",
      sourceLevel: "160",
      deliveryLevel: "480",
      casingWorkingPressure: "250",
    };
    expect(cellOf({ shutoff: 400, fields }, "greatestPressure")).toBeCloseTo(250.97, 1);
    expect(stateOf({ shutoff: 400, fields })).toBe("fail");
  });

  it("and at every stage after it: three in series, SG 1.3, 20 ft over the first: 253.0 psig", () => {
    // 20 × 1.3 × 0.4327 = 11.25; three of 136.4 ft with 5 %: 3 × 136.4 × 1.05 × 1.3 × 0.4327 = 241.7 psi.
    const one = { shutoff: 136.4 };
    const fields = {
      pumpsRunning: "3",
      arrangement: "series",
      liquid: "1297.7 kg/m3, 1 cP, pv 2.3 kPa",
      pumpLevel: "-20",
    };
    expect(cellOf({ ...one, fields }, "greatestPressure")).toBeCloseTo(252.97, 1);
    expect(stateOf({ ...one, fields })).toBe("fail");
  });

  it("counts the highest source level, and no typed suction pressure below what the source gives", () => {
    const suction = (fields: Fields) => cellOf({ fields: { pumpLevel: "-10", ...fields } }, "nozzleClasses.0.running");
    expect(suction({ highestSourceLevel: "90" })).toBeCloseTo(100 * 0.433528, 2);
    expect(suction({ greatestSuctionPressure: "20" })).toBeCloseTo(20, 6);
    expect(suction({ greatestSuctionPressure: "3" })).toBeCloseTo(10 * 0.433528, 2);
    const low = verdictOf({ fields: { pumpLevel: "-10", greatestSuctionPressure: "3" } });
    expect(low.state).toBe("check");
    expect(low.text).toBe(
      "Check: suction pressure stated, compared with source pressure and level, 3 of 4.3 psig: what the source gives is used.",
    );
    expect(cellOf({ fields: { pumpLevel: "-10", greatestSuctionPressure: "3" } }, "suctionNotes")).toMatch(/^Limit: /);
  });

  it("takes the size of the flange at every nozzle: grey iron NPS 16 at the suction, a column of 390 ft", () => {
    const one = (level: number, size = "16", fittings = "1 exit"): Case => ({
      shutoff: 100,
      fittings,
      fields: {
        liquid: "water",
        temperature: "68",
        casingMaterial: "grey iron",
        flangeClass: "125",
        suctionFlange: size,
        dischargeFlange: "8",
        deliveryLevel: String(level),
      },
    });
    // 390 × 0.432751 = 168.77 psi; 150 psi stand at 346.62 ft, 200 psi at 462.16 ft.
    const found = verdictOf(one(390));
    expect(found.text).toContain("Fails: suction flange NPS 16 grey iron, 169 of 150 psig (Class 125, pumps stopped)");
    expect([stateOf(one(346.6)), stateOf(one(346.8))]).toEqual(["pass", "fail"]);
    expect([stateOf(one(390, "12")), stateOf(one(462.1, "12")), stateOf(one(462.3, "12"))]).toEqual([
      "pass",
      "pass",
      "fail",
    ]);
    // A check valve holds the column off; that it fails is to check, and may be struck.
    const held = one(390, "16", "1 swing check, 1 exit");
    expect(verdictOf(held).text).toBe(
      "Check: suction flange NPS 16 grey iron, 169 of 150 psig (Class 125, check valve failed).",
    );
    expect(stateOf({ ...held, fields: { ...held.fields, checkFailure: "struck" } })).toBe("pass");
    expect(stateOf({ ...one(390), fields: { ...one(390).fields, checkFailure: "struck" } })).toBe("fail");
    // The size decides and is asked for.
    const { suctionFlange: _, ...unsized } = one(300).fields as Fields;
    expect(verdictOf({ shutoff: 100, fields: unsized }).text).toContain("Suction flange size not stated");
  });

  const STAGES = { shutoff: 620 } as const;
  const WATER = { liquid: "water", temperature: "68", pumpsRunning: "2", arrangement: "series" } as const;

  // Each material's ratings stand in the standard of its own flanges.
  it.each([
    ["ductile iron", "150", /ASME B16\.42/],
    ["WCB", "150", /ASME B16\.5/],
    ["A126 Class B", "125 NPS 8", /ASME B16\.1,/],
    ["ductile iron", "PN16", /EN 1092-2/],
  ])("of %s in %s cites the standard that rates it", (casingMaterial, flangeClass, standard) => {
    const { where, source } = verdictOf({ fields: { casingMaterial, flangeClass }, shutoff: 900 });
    expect(where).toContain("flange");
    expect(source).toMatch(standard);
  });

  it("rates a series stage by stage: 281.7, 281.7, 563.4 psig", () => {
    const low = { ...STAGES, fields: WATER };
    expect(stateOf(low)).toBe("fail");
    expect(cellOf(low, "firstToNeed")).toBe("Stage 1 discharge: first to need Class 300.");
    expect(stateOf({ ...STAGES, fields: { ...WATER, flangeClass: "300" } })).toBe("pass");
    const mixed = (stages: string) => verdictOf({ ...STAGES, fields: { ...WATER, stages } });
    expect(mixed("1: Class 300; 2: Class 300").state).toBe("pass");
    expect(mixed("2: Class 300").text).toContain("Fails: stage 1 discharge flange ductile iron, 282 of 250 psig");
    expect(mixed("1: Class 300, casing 280 psi; 2: Class 300").text).toContain("Fails: casing of stage 1, 282 of 280");
    // 250 ft higher: 281.72 − 108.19 = 173.53 psi at its suction, within Class 150; 455.25 at its discharge is not.
    expect(mixed("1: Class 300; 2: level 250 ft").text).toContain("Fails: stage 2 discharge flange ductile iron, 455");
  });

  it("fails the casing at the last discharge and not the hose between the stages", () => {
    const fields = {
      ...WATER,
      flangeClass: "300",
      casingWorkingPressure: "500",
      otherPart: "hose between stages 1 and 2",
      otherPartPressure: "300",
    };
    const found = verdictOf({ ...STAGES, fields });
    expect(found.text).toContain("Fails: casing of stage 2, 563 of 500 psig (closed valve)");
    expect(found.besides).toEqual([]);
    expect(stateOf({ ...STAGES, fields: { ...fields, casingWorkingPressure: "600" } })).toBe("pass");
    const weak = { ...fields, casingWorkingPressure: "600", otherPartPressure: "281" };
    expect(verdictOf({ ...STAGES, fields: weak }).text).toContain(
      "Fails: hose between stages 1 and 2, stage 1 discharge, 282 of 281 psig",
    );
  });

  it("takes the default grade where none is stated: dewatering 3B, 538.9 ft", () => {
    const at = (shutoff: number) =>
      verdictOf({ shutoff, fields: { acceptanceGrade: "", service: "dewatering", casingWorkingPressure: "250" } });
    // 250/(1.07 × 0.433528) = 538.94 ft; 250/0.433528 = 576.66 ft.
    expect([538.9, 539, 576.6, 576.7].map((feet) => at(feet).state)).toEqual(["pass", "check", "check", "fail"]);
    expect(at(560).text).toContain("assumed: head tolerance 7 %, grade 3B by default");
  });

  it("counts 10 % of speed for an engine whose high idle is not stated: 445.4 ft of grade 3B", () => {
    const at = (shutoff: number, fields: Fields = {}) =>
      verdictOf({ shutoff, fields: { acceptanceGrade: "3B", driver: "engine", ...fields } });
    // 250/(1.07 × 1.21 × 0.433528) = 445.41 ft.
    expect([445.4, 445.5, 538.9, 539].map((feet) => at(feet).state)).toEqual(["pass", "check", "check", "fail"]);
    expect(at(450).text).toContain("assumed: high idle 10 % over the running speed");
    // Stated, 1980 of 1800 rpm, it is no assumption.
    expect([445.4, 445.5].map((feet) => at(feet, { greatestSpeed: "1980" }).state)).toEqual(["pass", "fail"]);
    // Isochronous, 1 %: 250/(1.07 × 1.0201 × 0.433528) = 528.32 ft.
    expect([528.3, 528.4].map((feet) => at(feet, { governor: "isochronous" }).state)).toEqual(["pass", "fail"]);
    expect(stateOf({ shutoff: 538.9, fields: { acceptanceGrade: "3B", driver: "motor" } })).toBe("pass");
  });

  it("in metric and US units alike: ductile PN16 at 20 °C, 155.39 m", () => {
    // 16 bar/(1.05 × 1000 × 9.80665) = 155.39 m.
    const at = (metres: number, unitSet: UnitSetName): Case => ({
      shutoff: metres / 0.3048,
      unitSet,
      fields: { flangeClass: "PN16", temperature: "20 degC", dischargeFlange: "DN150", deliveryLevel: "20 ft" },
    });
    for (const unitSet of ["METRIC", "SI", "US"] as const) {
      expect([155.3, 155.4].map((metres) => stateOf(at(metres, unitSet)))).toEqual(["pass", "fail"]);
    }
    expect(verdictOf(at(160, "METRIC")).text).toContain("Fails: discharge flange DN150 ductile iron, 16.5 of 16 bar");
  });

  it("rates hot: ductile Class 150 at 250 °F is 225 psig", () => {
    const at = (psi: number) =>
      stateOf({
        shutoff: psi / (1.05 * 0.4335275),
        fields: { temperature: "250", liquid: "1000 kg/m3, 0.3 cP, pv 29 psi" },
      });
    expect([224.9, 225.1].map(at)).toEqual(["pass", "fail"]);
  });

  it("goes by the standard where the trade figure would pass: 250.1 to 260 psig", () => {
    const at = (psi: number): Case => ({ shutoff: psi / (1.05 * 0.4335275) });
    expect([249.9, 250.1, 259].map((psi) => stateOf(at(psi)))).toEqual(["pass", "fail", "fail"]);
    expect(cellOf(at(255), "tradeFigure")).toContain("it would pass Class 150, the standard does not");
  });

  it("counts a slurry by its weight with a head ratio of 1: SG 1.249, 439.7 ft against 549.2 on water", () => {
    // 250/(1.05 × 1.249 × 0.433528) = 439.72 ft. By weight 32.018 % of solids of SG 2.65 in 1000 kg/m³ make SG 1.249.
    const slurry = { solids: "32.018", solidsGravity: "2.65" };
    const at = (shutoff: number, fields: Fields) => stateOf({ shutoff, fields });
    expect([at(439.6, slurry), at(439.9, slurry), at(439.9, {})]).toEqual(["pass", "fail", "pass"]);
    expect([at(549.1, {}), at(549.3, {})]).toEqual(["pass", "fail"]);
    expect(at(439.6, { ...slurry, medianSize: "0.4 mm" })).toBe("pass");
    expect(at(439.9, { ...slurry, medianSize: "0.4 mm" })).toBe("fail");
  });

  it("prints a package test only where everything holds, beside the ceiling of the flange", () => {
    const fields = { casingWorkingPressure: "250", otherPart: "hose", otherPartPressure: "150" };
    expect(cellOf({ shutoff: 300, fields }, "packageTest")).toBeCloseTo(375, 6);
    const strong = { flangeClass: "300", casingWorkingPressure: "500" };
    // 856.8 ft with 5 %: 390 psi.
    expect(cellOf({ shutoff: 856.8, fields: strong }, "packageTest")).toBeCloseTo(750, 6);
    expect(cellOf({ shutoff: 856.8, fields: strong }, "testPressure")).toBeCloseTo(975, 6);
    expect(cellOf({ shutoff: 560 }, "packageTest")).toBe("none: the flange does not hold the discharge of the pump");
  });

  it("is to check without a casing working pressure, open without a material, a class or a head at zero flow", () => {
    const without = (fields: Fields) => verdictOf({ fields });
    expect(without({ casingWorkingPressure: "" }).text).toContain("Check: casing working pressure not stated");
    expect(without({ casingMaterial: "" }).text).toContain(
      "Open: flange rating: Casing and flange material not stated",
    );
    expect(without({ flangeClass: "" }).text).toContain("Open: flange rating: Flange class offered not stated");
    expect(without({ otherPart: "hose" }).text).toContain("Open: hose: Its maximum working pressure not stated");
    const late = pumpText([
      ["100 gpm", "300 ft"],
      ["300 gpm", "250 ft"],
      ["500 gpm", "200 ft"],
    ]).points;
    expect(verdictOf({ pump: { points: late } }).text).toContain("Open: head at zero flow");
    expect(verdictOf({ pump: { speed: "" }, fields: { greatestSpeed: "1900" } }).text).toContain("Open: maximum speed");
  });

  it("counts a vacuum as 0 and refuses one below absolute zero, −14.7 psig", () => {
    expect(cellOf({ fields: { greatestSuctionPressure: "-14.6" } }, "suctionPressure")).toBe(0);
    expect(stateOf({ fields: { greatestSuctionPressure: "-14.6" } })).toBe("pass");
    const { findings } = decodeDuty(typed({ fields: { greatestSuctionPressure: "-14.8" } }));
    expect(findings.get("greatestSuctionPressure")?.map(({ code }) => code)).toEqual(["out-of-range"]);
    // A standing level 100 ft below the pump is no column on it.
    expect(cellOf({ fields: { pumpLevel: "100" } }, "nozzleClasses.0.standing")).toBe(0);
  });

  it("says so where little of a limit is left: 249.9 of 250 psig", () => {
    expect(verdictOf({ shutoff: 249.9 / (1.05 * 0.4335275) }).text).toContain(
      "(Class 150, closed valve, over 95 % of it used)",
    );
  });
});

describe("the laws of the verdict on pressure", () => {
  const ORDER = ["pass", "check", "open", "fail"] as const;
  const rank = (one: Case): number => ORDER.indexOf(stateOf(one));

  it.each([
    ["source pressure", [0, 40, 80, 120].map((psi) => ({ fields: { sourcePressure: String(psi) } }))],
    ["source level", [0, 50, 150, 300].map((feet) => ({ fields: { highestSourceLevel: String(feet) } }))],
    ["liquid temperature", [70, 150, 250, 300].map((degrees) => ({ shutoff: 480, fields: hot(degrees) }))],
    [
      "density",
      [1000, 1100, 1300].map((density) => ({ shutoff: 480, fields: { liquid: `${density} kg/m3, 1 cP, pv 2 kPa` } })),
    ],
    ["shutoff head", [400, 500, 540, 560].map((shutoff) => ({ shutoff, fields: { acceptanceGrade: "" } }))],
    ["standing level", [100, 500, 700].map((feet) => ({ fields: { standingLevel: String(feet) } }))],
    [
      "solids",
      [0, 15, 40].map((percent) => ({ shutoff: 480, fields: { solids: String(percent), solidsGravity: "2.65" } })),
    ],
  ] satisfies [string, readonly Case[]][])("raising the %s never improves it", (_, cases) => {
    const ranks = cases.map(rank);
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
    // It decides somewhere among these.
    expect(ranks.at(-1)).toBeGreaterThan(ranks[0] as number);
  });

  it("stating more never turns a failure into a pass without a figure that justifies it", () => {
    const failing: Case = {
      shutoff: 600,
      fields: { acceptanceGrade: "", driver: "engine", casingWorkingPressure: "" },
    };
    const more: readonly Fields[] = [
      { service: "electric power" },
      { acceptanceGrade: "1B" },
      { governor: "isochronous" },
      { greatestSpeed: "1800" },
      { casingWorkingPressure: "1000" },
      { checkFailure: "struck" },
      { highestSourceLevel: "0" },
      { suctionFlange: "8", dischargeFlange: "6" },
    ];
    for (const fields of more) expect(stateOf({ ...failing, fields: { ...failing.fields, ...fields } })).toBe("fail");
    // A stronger class is such a figure.
    const strong = { ...failing.fields, flangeClass: "300", acceptanceGrade: "1B", governor: "isochronous" };
    expect(stateOf({ ...failing, fields: { ...strong, casingWorkingPressure: "600" } })).toBe("pass");
  });
});

function hot(degrees: number): Fields {
  return { temperature: String(degrees), liquid: "1000 kg/m3, 0.3 cP, pv 70 psi" };
}

describe("the box for stages that differ", () => {
  const read = (text: string) => stagesRead(text, "stages", "US");

  it("reads what each stage has of its own", () => {
    const found = read(
      "1: class 150, suction flange NPS 10, hose 300 psi; stage 2: PN40, WCB, casing 500 psi, level 730 ft, no check valve",
    );
    expect(found.ok && [...found.value]).toEqual([
      [
        1,
        { flangeClass: "class 150", suctionFlange: "NPS 10", part: "hose", partPressure: expect.closeTo(2068427, 0) },
      ],
      [
        2,
        {
          flangeClass: "PN40",
          material: "WCB",
          casing: expect.closeTo(3447379, 0),
          level: expect.closeTo(222.504, 6),
          checkValve: "no",
        },
      ],
    ]);
  });

  it.each([
    "Class 300",
    "0: WCB",
    "2: nonsense",
    "2: casing 500",
    "2: level 730",
    "2: Class 900",
    "2: WCB; 2: A536",
    "2: suction flange 8",
  ])("refuses “%s”", (text) => {
    expect(read(text).ok).toBe(false);
  });

  it("is said where it names a stage that the set has not", () => {
    const of = typed({ fields: { stages: "5: Class 300", pumpsRunning: "2", arrangement: "series" } });
    const texts = dutyPlan(dutyRead(of)).items.flatMap((item) => (item.kind === "statement" ? [item.text] : []));
    expect(texts).toContain("Stage 5 is stated, but only 2 pumps stand in series: what it says is NOT used.");
  });
});
