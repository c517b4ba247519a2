import { describe, expect, it } from "vitest";
import type { Duty } from "../../../shared/duty/duty.ts";
import type { PumpText } from "../../../shared/duty/duty-text.ts";
import { type StagePressures, stagePressures } from "../../../shared/package/stage-pressures.ts";
import { dutyOf, dutyRead, type Fields, pumpText, QUARRY } from "../../support/duty-of.ts";

const PSI = 6894.757293168361;

const { points } = pumpText([
  ["0", "300"],
  ["1000", "250"],
  ["1500", "200"],
]);

/** Pumps of a flat-topped 300 ft at their running speed, level with the source; heads come out 5 % above, grade 2B. */
const duty = (fields: Fields, pump: Partial<PumpText> = {}): Duty =>
  dutyOf(
    {
      driver: "motor",
      pumpLevel: "98",
      deliveryLevel: "198",
      leastStaticHead: "",
      greatestStaticHead: "",
      temperature: "60",
      suctionFlange: "",
      dischargeFlange: "",
      gasket: "",
      arrangement: "series",
      ...fields,
    },
    { ...QUARRY, pump: { ...(QUARRY.pump as PumpText), speedRatio: "1", points, ...pump } },
  );

function shown(of: Duty): StagePressures {
  const pressures = stagePressures(of);
  if (pressures === undefined) throw new Error("no pressures");
  return pressures;
}

const linesOf = ({ lines }: StagePressures) =>
  lines.map(({ name, pressure, kind }) => [name, Math.round(pressure / PSI), kind]);

describe("pressures at the nozzles for the pane", () => {
  it("are those of the sheet", () => {
    // Water at 60 °F, 999.1 kg/m³: 0.43314 psi a foot; 315 ft are 136.44 psi a stage, 100 ft standing 43.31 psi.
    const { nozzles, classOffered } = shown(duty({ flangeClass: "150", pumpsRunning: "2" }));
    expect(classOffered).toBe("Class 150");
    const psi = nozzles.map(({ greatest }) => greatest / PSI);
    const wanted = [43.31, 136.44, 136.44, 272.88];
    for (const [i, expected] of wanted.entries()) expect(psi[i]).toBeCloseTo(expected, 1);
    expect(nozzles.map(({ label }) => label)).toEqual([
      "Stage 1 suction",
      "Stage 1 discharge",
      "Stage 2 suction",
      "Stage 2 discharge",
    ]);
    expect(nozzles.map(({ governs }) => governs)).toEqual([
      // QUARRY has a swing check in its discharge line.
      "check valve failed",
      "closed valve",
      "closed valve",
      "closed valve",
    ]);
    expect(nozzles.map(({ above, isFirst }) => [above, isFirst])).toEqual([
      [[], false],
      [[], false],
      [[], false],
      [[{ part: "flange", state: "fail" }], true],
    ]);
    expect(nozzles.at(-1)?.classNeeded).toBe("Class 300");
  });

  // ASME B16.42 cold: 250 and 640 psi; the trade's 260 and 680 psi (common practice).
  it("are compared with the classes in view and the next, and their trade figures", () => {
    expect(linesOf(shown(duty({ flangeClass: "150" })))).toEqual([
      ["Class 150", 250, "offered"],
      ["trade figure, Class 150", 260, "trade"],
    ]);
    expect(linesOf(shown(duty({ flangeClass: "150", pumpsRunning: "2" })))).toEqual([
      ["Class 150", 250, "offered"],
      ["Class 300", 640, "class"],
      ["trade figure, Class 150", 260, "trade"],
      ["trade figure, Class 300", 680, "trade"],
    ]);
    // The class offered is drawn though none of the pressures comes near it.
    expect(linesOf(shown(duty({ flangeClass: "300" }))).map(([name]) => name)).toContain("Class 300");
    expect(linesOf(shown(duty({ flangeClass: "" })))[0]).toEqual(["Class 150", 250, "class"]);
  });

  it("are rated by the size of the discharge in grey iron: ASME B16.1, 200 and 150 psi", () => {
    const grey = (size: string) =>
      linesOf(shown(duty({ casingMaterial: "A126 Class B", flangeClass: "125", dischargeFlange: size })))[0];
    expect(grey("12")).toEqual(["Class 125", 200, "offered"]);
    expect(grey("14")).toEqual(["Class 125", 150, "offered"]);
  });

  it("stay by PN where one is offered, which has no trade figure: EN 1092-2, PN10 is 10 bar, 145 psi", () => {
    expect(linesOf(shown(duty({ flangeClass: "PN10" })))).toEqual([["PN10", 145, "offered"]]);
  });

  it("name the parts that stand under too much, at their side", () => {
    const fields = {
      flangeClass: "150",
      casingWorkingPressure: "200",
      otherPart: "suction hose",
      otherPartPressure: "100",
    };
    const { nozzles, lines } = shown(duty({ ...fields, pumpsRunning: "2" }));
    const failing = nozzles.map(({ above }) => above.map(({ part, state }) => `${part} ${state}`));
    // 136.44 psi at the hose of stage 2; 272.88 at its discharge, flange 250 and casing 200.
    expect(failing).toEqual([[], [], ["suction hose fail"], ["flange fail", "casing fail"]]);
    expect(lines.filter(({ kind }) => kind === "part").map(({ name }) => name)).toEqual(["casing", "suction hose"]);
  });

  it("are nothing without a pump, or where they cannot be worked out", () => {
    const { pump: _, ...without } = QUARRY;
    expect(stagePressures(dutyRead(without))).toBeUndefined();
    // WCC has no PN in the standards held.
    expect(stagePressures(duty({ casingMaterial: "WCC", flangeClass: "PN16" }))).toBeUndefined();
  });
});
