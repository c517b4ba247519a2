import { describe, expect, it } from "vitest";
import { withTextIn } from "../../../../shared/duty/boxes.ts";
import { decodeDuty } from "../../../../shared/duty/decode.ts";
import { type DutyText, EMPTY_OTHER_PUMP } from "../../../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../../../shared/duty/samples.ts";
import type { Mend } from "../../../../shared/package/mends/mend.ts";
import { mendsFor } from "../../../../shared/package/mends/mends.ts";
import { judgedRows } from "../../../../shared/package/verdicts.ts";
import type { VerdictSubject } from "../../../../src/judgement/verdict.ts";
import { dutyText, pumpText, QUARRY, STRAIGHT_PUMP } from "../../../support/duty-of.ts";

function mends(duty: DutyText, subject: VerdictSubject): readonly Mend[] {
  return mendsFor(duty, decodeDuty(duty)).ofVerdict(subject);
}

/** What fails of a subject. */
function failing(duty: DutyText, subject: VerdictSubject): readonly string[] {
  return judgedRows(decodeDuty(duty).duty)
    .filter((row) => row.subject === subject && row.state === "fail")
    .map(({ what }) => what);
}

const mended = (duty: DutyText, { place, text }: Mend): DutyText => withTextIn(duty, place, text);

/** H = 300 ft − 0.1 ft/gpm · Q at 1750 rpm. */
const LINE_PUMP = pumpText(
  [0, 250, 500, 750, 1000].map((flow) => [`${flow} gpm`, `${300 - 0.1 * flow} ft`, flow === 0 ? "" : "60"]),
  { speed: "1750 rpm", impellerDiameter: "14 in" },
);

describe("the speed that meets the duty", () => {
  const duty = dutyText({ flow: "700 gpm", deliveryLevel: "240 ft" }, { pump: LINE_PUMP });

  it("is left to the line of the selection where the pump comes from a ranking", () => {
    const pump = { ...LINE_PUMP, selectedFor: { flow: "600 gpm", head: "200 ft" } };
    expect(mends({ ...duty, pump }, "head")).toEqual([]);
  });

  it("is that at which the pump gives the head asked for", () => {
    const [mend, ...others] = mends(duty, "head");
    expect(others).toEqual([]);
    const rows = judgedRows(decodeDuty(duty).duty).filter(({ what }) => what.startsWith("head at the duty flow"));
    const [asked] = rows;
    // The pump gives 230 ft; what is missing to the limit is missing there. r² · 300 − r · 0.1 · 700 = head.
    const head = 230 + (asked?.limit as number) - (asked?.found as number);
    const ratio = (70 + Math.sqrt(70 ** 2 + 4 * 300 * head)) / 600;
    expect(mend?.place).toBe("pump.speedRatio");
    expect(Number(mend?.text)).toBeCloseTo(ratio, 5);
    expect(mend?.label).toBe(`Set ${Math.round(1750 * ratio).toLocaleString("en-US")} rpm`);
    expect(failing(duty, "head")).toContain("head at the duty flow");
    expect(failing(mended(duty, mend as Mend), "head")).toEqual([]);
  });

  it("meets it in every state of levels and pipe", () => {
    const more = withTextIn(QUARRY, "flow", "1300");
    expect(failing(more, "head").length).toBeGreaterThan(1);
    const [mend] = mends(more, "head");
    expect(failing(mended(more, mend as Mend), "head")).toEqual([]);
  });

  it.each([
    ["that is met", dutyText({}, { pump: LINE_PUMP })],
    ["far above the curve", withTextIn(duty, "deliveryLevel", "500 ft")],
    ["of unlike pumps", { ...duty, otherPumps: [{ ...EMPTY_OTHER_PUMP, ...STRAIGHT_PUMP, name: "other" }] }],
    ["with cases", { ...duty, cases: [{ name: "wet", hours: "", fields: { flow: "750 gpm" } }] }],
    ["of a slurry", withTextIn(SAMPLE_DUTIES[3]?.duty as DutyText, "flow", "260 m3/h")],
  ])("is not offered for a duty %s", (_, other) => {
    expect(mends(other, "head")).toEqual([]);
  });
});

describe("the pipe that holds", () => {
  const weak = dutyText(
    { deliveryLevel: "200 ft" },
    { pump: STRAIGHT_PUMP, dischargeLine: [{ pipe: '8" HDPE DR32.5', length: "500 ft", fittings: "1 exit" }] },
  );

  it("is of the least wall that will do, whatever else is typed of it", () => {
    // 302 ft of water over the outlet's level at the pump and 2 ft of suction: 131 psi and above.
    // AWWA M55, PE3608: 1600/(DR − 1) psi: DR13.5 holds 128, DR11 160.
    expect(mends(weak, "pipe")).toEqual([
      { label: 'Use “8" HDPE DR11”', place: "dischargeLine.0.pipe", text: '8" HDPE DR11' },
    ]);
    expect(failing(weak, "pipe")).not.toEqual([]);
    for (const mend of mends(weak, "pipe")) expect(failing(mended(weak, mend), "pipe")).toEqual([]);
  });

  it("is not offered for one that holds, nor where none does", () => {
    expect(mends(withTextIn(weak, "dischargeLine.0.pipe", "8in HDPE DR11"), "pipe")).toEqual([]);
    const none = withTextIn(withTextIn(weak, "deliveryPressure", "900 psi"), "sourcePressure", "900 psi");
    expect(failing(none, "pipe")).not.toEqual([]);
    expect(mends(none, "pipe").map(({ place }) => place)).not.toContain("dischargeLine.0.pipe");
  });
});

describe("the flange class that holds", () => {
  const weak = dutyText(
    {
      flangeClass: "150",
      casingMaterial: "ductile iron",
      deliveryLevel: "240 ft",
      suctionFlange: "NPS 10",
      dischargeFlange: "NPS 8",
      sourcePressure: "200 psi",
      deliveryPressure: "200 psi",
    },
    { pump: STRAIGHT_PUMP },
  );

  it("is that of both nozzles", () => {
    // Some 340 psi at shut-off: above the 250 psi of class 150 of ductile iron, below the 640 psi of class 300 (ASME B16.42).
    const [mend, ...others] = mends(weak, "pressure");
    expect(others).toEqual([]);
    expect(mend).toEqual({ label: "Use Class 300 flanges", place: "flangeClass", text: "Class 300" });
    expect(failing(weak, "pressure")).not.toEqual([]);
    expect(failing(mended(weak, mend as Mend), "pressure")).toEqual([]);
  });

  it("is not offered where more is said of the flange, nor where it holds", () => {
    expect(mends(withTextIn(weak, "flangeClass", "150 RF"), "pressure")).toEqual([]);
    expect(mends(withTextIn(weak, "flangeClass", "300"), "pressure")).toEqual([]);
  });
});
