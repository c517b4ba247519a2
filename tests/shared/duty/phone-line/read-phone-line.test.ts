import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decodeDuty } from "../../../../shared/duty/decode.ts";
import { EMPTY_DUTY } from "../../../../shared/duty/duty-text.ts";
import { type PhoneLine, withProposal } from "../../../../shared/duty/phone-line/phone-line.ts";
import { readPhoneLine } from "../../../../shared/duty/phone-line/read-phone-line.ts";
import type { UnitSetName } from "../../../../src/basis/quantities.ts";

const SUCTION = "suctionLine";
const DISCHARGE = "dischargeLine";

/** Boxes by their texts; a line as "pipe | length | fittings" of its rows. */
function boxesOf({ proposal: { unitSet, fields, lines } }: PhoneLine): Readonly<Record<string, string>> {
  const rows = Object.entries(lines).map(([line, segments]) => [
    line,
    (segments ?? [])
      .map(({ pipe, length, fittings }) => [pipe, length, fittings].filter((text) => text !== "").join(" | "))
      .join(" / "),
  ]);
  return { ...(unitSet && { units: unitSet }), ...fields, ...Object.fromEntries(rows) };
}

function unreadOf({ parts }: PhoneLine): readonly string[] {
  return parts.filter(({ kind }) => kind === "not understood").map(({ text }) => text);
}

/** As estimators note it. Common practice, no source; worked out by hand. */
const UNDERSTOOD: readonly (readonly [string, UnitSetName, Readonly<Record<string, string>>])[] = [
  [
    "1000 gpm, lift 12 ft, up 60 ft, 20 ft of 8in suction hose, 900 ft 8in HDPE DR17",
    "US",
    {
      flow: "1000 gpm",
      sourceLevel: "0",
      pumpLevel: "12 ft",
      deliveryLevel: "12 ft + 60 ft = 72 ft",
      [SUCTION]: "8in suction hose | 20 ft",
      [DISCHARGE]: "8in HDPE DR17 | 900 ft",
    },
  ],
  [
    "1000 gpm lift 12 ft up 60 ft 20 ft of 8in suction hose 900 ft 8in HDPE DR17",
    "US",
    {
      flow: "1000 gpm",
      sourceLevel: "0",
      pumpLevel: "12 ft",
      deliveryLevel: "12 ft + 60 ft = 72 ft",
      [SUCTION]: "8in suction hose | 20 ft",
      [DISCHARGE]: "8in HDPE DR17 | 900 ft",
    },
  ],
  [
    "63 l/s, 4 m suction lift, 18 m static, 600 m 200mm HDPE SDR17 PE100, water 20 C",
    "US",
    {
      units: "SI",
      flow: "63 l/s",
      sourceLevel: "0",
      pumpLevel: "4 m",
      deliveryLevel: "18 m",
      liquid: "water",
      temperature: "20 C",
      [DISCHARGE]: "200mm HDPE SDR17 PE100 | 600 m",
    },
  ],
  // Flow
  ["1000 gpm", "US", { flow: "1000 gpm" }],
  ["1,200 gpm", "US", { flow: "1,200 gpm" }],
  ["flow 1000", "US", { flow: "1000" }],
  ["flow 1,000", "US", { flow: "1,000" }],
  ["flow of 250", "METRIC", { flow: "250" }],
  ["flow rate: 45 L/s", "SI", { flow: "45 L/s" }],
  ["450 m3/h", "METRIC", { flow: "450 m3/h" }],
  ["450 m³/h", "SI", { units: "METRIC", flow: "450 m³/h" }],
  ["1.5 MGD", "SI", { units: "US", flow: "1.5 MGD" }],
  ["pump 1000 gpm", "US", { flow: "1000 gpm" }],
  // Pumps
  ["two pumps 1,500 gpm each", "US", { pumpsRunning: "2", flow: "2*1,500 gpm = 3000 US gpm" }],
  ["2 pumps, 100 m3/h each", "METRIC", { pumpsRunning: "2", flow: "2*100 m3/h = 200 m³/h" }],
  ["3 pumps, 3000 gpm total", "US", { pumpsRunning: "3", flow: "3000 gpm" }],
  ["two pumps in series, 800 gpm", "US", { pumpsRunning: "2", arrangement: "series", flow: "800 gpm" }],
  ["2 duty 1 standby, 60 l/s each", "SI", { pumpsRunning: "2", pumpsStandby: "1", flow: "2*60 l/s = 120 L/s" }],
  ["one pump, 600 gpm, 1 standby", "US", { pumpsRunning: "1", flow: "600 gpm", pumpsStandby: "1" }],
  // Heights
  ["suction lift 12 ft", "US", { sourceLevel: "0", pumpLevel: "12 ft" }],
  ["12 ft suction lift", "US", { sourceLevel: "0", pumpLevel: "12 ft" }],
  ["suction lift of 4 m", "SI", { sourceLevel: "0", pumpLevel: "4 m" }],
  ["12 ft lift, 60 ft up", "US", { sourceLevel: "0", pumpLevel: "12 ft", deliveryLevel: "12 ft + 60 ft = 72 ft" }],
  ["lift 12, up 60", "US", { sourceLevel: "0", pumpLevel: "12", deliveryLevel: "12 ft + 60 ft = 72 ft" }],
  ["lift 4, up 18", "SI", { sourceLevel: "0", pumpLevel: "4", deliveryLevel: "4 m + 18 m = 22 m" }],
  ["lift 12'6\", up 60 ft", "US", { sourceLevel: "0", pumpLevel: "12'6\"", deliveryLevel: "12'6\" + 60 ft = 72.5 ft" }],
  ["flooded 5 ft, up 40 ft", "US", { sourceLevel: "0", pumpLevel: "-5 ft", deliveryLevel: "-5 ft + 40 ft = 35 ft" }],
  [
    "1.5 m flooded suction, 12 m rise",
    "SI",
    { sourceLevel: "0", pumpLevel: "-1.5 m", deliveryLevel: "-1.5 m + 12 m = 10.5 m" },
  ],
  [
    "suction lift 10 ft, down 30 ft",
    "US",
    { sourceLevel: "0", pumpLevel: "10 ft", deliveryLevel: "10 ft - 30 ft = -20 ft" },
  ],
  ["suction lift 10 ft, static head 70 ft", "US", { sourceLevel: "0", pumpLevel: "10 ft", deliveryLevel: "70 ft" }],
  ["4 m suction lift, total static 18 m", "SI", { sourceLevel: "0", pumpLevel: "4 m", deliveryLevel: "18 m" }],
  // Levels
  ["source 98, pump 110, delivery 174", "US", { sourceLevel: "98", pumpLevel: "110", deliveryLevel: "174" }],
  [
    "source 30 m, pump 33.5 m, delivery 53 m",
    "SI",
    { sourceLevel: "30 m", pumpLevel: "33.5 m", deliveryLevel: "53 m" },
  ],
  [
    "water level 98 ft, pump at 110 ft, discharge at 174 ft",
    "US",
    { sourceLevel: "98 ft", pumpLevel: "110 ft", deliveryLevel: "174 ft" },
  ],
  [
    "source level 98 ft, suction lift 12 ft, up 64 ft",
    "US",
    { sourceLevel: "98 ft", pumpLevel: "98 ft + 12 ft = 110 ft", deliveryLevel: "110 ft + 64 ft = 174 ft" },
  ],
  ["pump at 110 ft, suction lift 12 ft", "US", { pumpLevel: "110 ft", sourceLevel: "110 ft - 12 ft = 98 ft" }],
  // Lines
  ["900 ft 8in HDPE DR17", "US", { [DISCHARGE]: "8in HDPE DR17 | 900 ft" }],
  ["900' of 8\" HDPE DR17", "US", { [DISCHARGE]: "8\" HDPE DR17 | 900'" }],
  ["8in HDPE DR17, 900 ft", "US", { [DISCHARGE]: "8in HDPE DR17 | 900 ft" }],
  ["8in HDPE DR17 x 900 ft", "US", { [DISCHARGE]: "8in HDPE DR17 | 900 ft" }],
  ["900 ft, 8in HDPE DR17", "US", { [DISCHARGE]: "8in HDPE DR17 | 900 ft" }],
  ["20 ft 8in suction hose", "US", { [SUCTION]: "8in suction hose | 20 ft" }],
  ["6 m of 200mm suction hose", "SI", { [SUCTION]: "200mm suction hose | 6 m" }],
  ["300 m DN150 sch40", "SI", { [DISCHARGE]: "DN150 sch40 | 300 m" }],
  ["20 ft 8in sch40 on suction", "US", { [SUCTION]: "8in sch40 | 20 ft" }],
  [
    "suction: 20 ft 8in sch40; discharge: 50 ft 8in sch40",
    "US",
    { [SUCTION]: "8in sch40 | 20 ft", [DISCHARGE]: "8in sch40 | 50 ft" },
  ],
  ["suction 20 ft of 8in sch40", "US", { [SUCTION]: "8in sch40 | 20 ft" }],
  ["50 ft 6in layflat, 800 ft 8in HDPE DR17", "US", { [DISCHARGE]: "6in layflat | 50 ft / 8in HDPE DR17 | 800 ft" }],
  // Fittings
  ["900 ft 8in HDPE DR17, 2 ells, 1 gate", "US", { [DISCHARGE]: "8in HDPE DR17 | 900 ft | 2 ells, 1 gate" }],
  ["20 ft 8in suction hose with foot valve", "US", { [SUCTION]: "8in suction hose | 20 ft | foot valve" }],
  [
    "20 ft 8in suction hose, 900 ft 8in HDPE DR17, foot valve, 2 90s, 1 exit",
    "US",
    { [SUCTION]: "8in suction hose | 20 ft | foot valve", [DISCHARGE]: "8in HDPE DR17 | 900 ft | 2 90s, 1 exit" },
  ],
  [
    "20 ft 8in sch40 on suction, 300 ft 8in sch40, two elbows on the suction, swing check",
    "US",
    { [SUCTION]: "8in sch40 | 20 ft | two elbows", [DISCHARGE]: "8in sch40 | 300 ft | swing check" },
  ],
  // Liquid
  ["sea water", "US", { liquid: "sea water" }],
  ["water 20 C", "SI", { liquid: "water", temperature: "20 C" }],
  ["water at 90 F", "US", { liquid: "water", temperature: "90 F" }],
  ["raw sewage", "US", { liquid: "raw sewage" }],
  ["SG 1.12, 3.5 cP, pv 2.3 kPa", "SI", { liquid: "SG 1.12, 3.5 cP, pv 2.3 kPa" }],
  ["at 60 F", "US", { temperature: "60 F" }],
  // Site, pressures, NPSH
  ["at 3000 ft altitude", "US", { altitude: "3000 ft" }],
  ["at 3,000 ft altitude", "US", { altitude: "3,000 ft" }],
  [
    "1,200 ft 8in HDPE DR17, lift 12,up 60",
    "US",
    {
      sourceLevel: "0",
      pumpLevel: "12",
      deliveryLevel: "12 ft + 60 ft = 72 ft",
      [DISCHARGE]: "8in HDPE DR17 | 1,200 ft",
    },
  ],
  ["altitude 900 m", "SI", { altitude: "900 m" }],
  ["900 m above sea level", "SI", { altitude: "900 m" }],
  ["at sea level", "US", { altitude: "0" }],
  ["30 psi at the end", "US", { deliveryPressure: "30 psi" }],
  ["delivery pressure 2 bar", "METRIC", { deliveryPressure: "2 bar" }],
  ["against 30 psi", "US", { deliveryPressure: "30 psi" }],
  ["5 psi at source", "US", { sourcePressure: "5 psi" }],
  ["NPSHR 12", "US", { npshRequired: "12" }],
  ["12 ft NPSHr", "US", { npshRequired: "12 ft" }],
  ["NPSH required 3.5 m", "SI", { npshRequired: "3.5 m" }],
  ["NPSH margin 3 ft", "US", { npshMargin: "3 ft" }],
  ["10 % margin on losses", "US", { frictionMargin: "10 %" }],
  ["dewatering", "US", { service: "dewatering" }],
  // Slurry
  [
    "20 % solids by weight, solids SG 2.65, d50 0.5 mm",
    "SI",
    { solids: "20 %", solidsGravity: "2.65", medianSize: "0.5 mm" },
  ],
  ["12 % solids by volume, d85 1 mm, fines 5 %", "SI", { solidsByVolume: "12 %", coarseSize: "1 mm", fines: "5 %" }],
  ["slurry SG 1.2", "SI", { slurryGravity: "1.2" }],
];

describe("a duty said in one sentence", () => {
  it("has enough examples", () => expect(UNDERSTOOD.length).toBeGreaterThanOrEqual(60));

  it.each(UNDERSTOOD)("%s (%s)", (text, unitSet, boxes) => {
    const line = readPhoneLine(text, unitSet);
    expect(unreadOf(line)).toEqual([]);
    expect(boxesOf(line)).toEqual(boxes);
  });

  it.each([
    ["lift 60 ft", "of the suction, or of the whole"],
    ["discharge lift 60 ft", "from the pump or from the liquid"],
    ["static 60 ft", "where does the pump stand"],
    ["up 60 ft", "where does the pump stand"],
    ["discharge pressure 80 psi", "beside the pump or at the end"],
    ["30 psi", "at which end"],
    ["20 % solids", "by weight or by volume"],
    ["10 % margin", "a margin on what"],
    ["60 ft", "what is it of"],
    ["TDH 120 ft", "total head is worked out"],
    ["8in HDPE DR17", "how long is it"],
    ["2 ells", "which pipe do they stand in"],
    ["20 ft of 8in suction hose, 600 ft of 8in hdpe, 2 ells", "the pipe said before them is not understood"],
    ["20 ft of 8in suction hose, 8in hose, 2 ells", "the pipe said before them is not understood"],
    ["20 ft of 8in suction hose, 8in HDPE DR17, 2 ells", "the pipe said before them is not understood"],
    ["1000 gpm, 1200 gpm", "said twice"],
    ["100 m3/h, flow 50", "said twice"],
    ["suction lift 4 m, up 10 ft, NPSHR 12", "no unit"],
    ["source 98, pump 110, suction lift 12", "said already"],
    ["suction lift 3 ft, flooded 2 ft", "said twice"],
    ["altitude 1000000 ft", "must be at most"],
    ["about a lot", "nothing here reads this"],
    ["x".repeat(501), "up to 500 letters"],
  ])("leaves open what nobody can know, and says why: %s", (text, why) => {
    const { parts } = readPhoneLine(text, "US");
    const remarks = parts.filter(({ kind }) => kind === "not understood").flatMap((part) => part.remarks);
    expect(remarks.join(" ")).toContain(why);
  });

  it.each([
    ["two pumps, 1,500 gpm", "US", ["1,500 gpm each", "1,500 gpm in total"]],
    ["flow 1,000", "METRIC", ["flow 1000", "flow 1.000"]],
    ["600 m DN200 PN10 PE", "SI", ["600 m 200mm HDPE SDR17 PE100", "600 m 200mm HDPE SDR13.6 PE80"]],
    ["900 ft of 8in hdpe", "US", ["900 ft of 8in HDPE DR17"]],
    ["8in hose 20 ft", "US", ["8in suction hose 20 ft"]],
    ["on the suction 20 ft 8in hose", "US", ["on the suction 20 ft 8in suction hose"]],
    ["300 ft 8in sch40, 1 tee", "US", ["tee run", "tee branch"]],
    ["lift 60 ft", "US", ["suction lift 60 ft", "static 60 ft"]],
  ] as const)("offers what would do in place of %s", (text, unitSet, instead) => {
    const part = readPhoneLine(text, unitSet).parts.find(({ kind }) => kind === "not understood");
    expect(part?.instead).toEqual(expect.arrayContaining([...instead]));
  });

  it("proposes nothing of a part that it does not understand", () => {
    expect(boxesOf(readPhoneLine("two pumps, 1,500 gpm", "US"))).toEqual({ pumpsRunning: "2" });
    expect(boxesOf(readPhoneLine("water 9000 C", "SI"))).toEqual({});
  });

  it("takes the unit set of the units, where all are of one", () => {
    for (const [text, set] of [
      ["63 l/s, suction lift 4 m", "SI"],
      ["200 m3/h, suction lift 4 m", "METRIC"],
      ["suction lift 4 m", undefined],
      ["1000 gpm, suction lift 4 m", undefined],
    ] as const) {
      expect(readPhoneLine(text, "US").proposal.unitSet, text).toBe(set);
    }
  });

  it("comes to the amounts said, in the duty that it fills", () => {
    const { proposal } = readPhoneLine("two pumps 1,500 gpm each, lift 12 ft, up 60 ft, 900 ft 8in HDPE DR17", "US");
    const { duty } = decodeDuty(withProposal(EMPTY_DUTY, proposal));
    // 3000 gal of 231 in³ in a minute; 72 ft and 900 ft of 0.3048 m.
    expect(duty.flow).toBeCloseTo((3000 * 231 * 0.0254 ** 3) / 60, 12);
    expect(duty.deliveryLevel).toBeCloseTo(72 * 0.3048, 12);
    expect(duty.dischargeLine[0]?.segment?.length).toBeCloseTo(900 * 0.3048, 12);
  });

  it("comes to the same duty in US and in metric units", () => {
    const us = readPhoneLine("1000 gpm, suction lift 10 ft, up 50 ft, 200 ft 8in sch40", "US").proposal;
    const metric = readPhoneLine(
      "63.0901964 l/s, suction lift 3.048 m, up 15.24 m, 60.96 m DN200 sch40",
      "SI",
    ).proposal;
    const [one, other] = [us, metric].map(
      (each) => decodeDuty(withProposal({ ...EMPTY_DUTY, unitSet: each.unitSet ?? "SI" }, each)).duty,
    );
    for (const key of ["flow", "sourceLevel", "pumpLevel", "deliveryLevel"] as const) {
      expect(one?.[key], key).toBeCloseTo(other?.[key] as number, 8);
    }
  });

  const PIECES = UNDERSTOOD.flatMap(([text]) => text.split(/(?<=[ ,])/)).concat(
    "\n",
    ";",
    "=",
    "-",
    "1",
    ".",
    "'",
    "(",
    "½",
    "\u00a0",
    "2 ",
  );
  const anyText = fc.oneof(
    fc.string(),
    fc.array(fc.constantFrom(...PIECES), { maxLength: 14 }).map((all) => all.join("")),
  );

  it("accounts for every letter of any text, and never throws", () => {
    fc.assert(
      fc.property(anyText, fc.constantFrom<UnitSetName>("US", "SI", "METRIC"), (text, unitSet) => {
        const { parts, proposal } = readPhoneLine(text, unitSet);
        expect(parts.map((part) => part.text).join("")).toBe(text);
        for (const { kind, text: joining, remarks } of parts) {
          if (kind === "between") expect(joining).not.toMatch(/\d/);
          if (kind === "not understood") expect(remarks.join("")).not.toBe("");
        }
        // What is proposed is read by the boxes it goes to.
        const { findings } = decodeDuty(
          withProposal({ ...EMPTY_DUTY, unitSet: proposal.unitSet ?? unitSet }, proposal),
        );
        for (const key of Object.keys(proposal.fields)) {
          const errors = (findings.get(key) ?? []).filter(({ kind, code }) => kind === "error" && code !== "left-out");
          expect([key, errors.filter(({ code }) => /^(?:not-a|unit|number|name|choice|sum)/.test(code))]).toEqual([
            key,
            [],
          ]);
        }
      }),
      { numRuns: 100 },
    );
  });

  it("takes its own offers", () => {
    for (const [text, unitSet] of [
      ["900 ft of 8in hdpe", "US"],
      ["flow 1,000", "METRIC"],
      ["30 psi", "US"],
    ] as const) {
      const part = readPhoneLine(text, unitSet).parts.find(({ kind }) => kind === "not understood");
      for (const offer of part?.instead ?? []) expect(unreadOf(readPhoneLine(offer, unitSet)), offer).toEqual([]);
    }
  });
});
