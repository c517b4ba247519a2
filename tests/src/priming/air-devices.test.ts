import { describe, expect, it } from "vitest";
import { airDraw, BETTER_BLANK_OFF, DEFAULT_BLANK_OFF, USUAL_AIR_PUMP } from "../../../src/priming/air-pump.ts";
import { describedAirPump } from "../../../src/priming/described-air-pump.ts";
import { motiveAir } from "../../../src/priming/eductor.ts";
import { pumpDownTime } from "../../../src/priming/pump-down.ts";
import { AIR_EDUCTOR, DIAPHRAGM_AIR_PUMP } from "../../../src/tables/suction-air-pumps.ts";

const CFM = 4.71947443e-4;
const INHG = 3386.389;

describe("air pumps", () => {
  // Common practice, no source: about 50 ft³/min; blank-off 25 to 27 inHg.
  it("has the trade figures", () => {
    expect([DIAPHRAGM_AIR_PUMP.freeAir, DIAPHRAGM_AIR_PUMP.leastBlankOff, DIAPHRAGM_AIR_PUMP.greatestBlankOff]).toEqual(
      [50, 25, 27],
    );
    expect([AIR_EDUCTOR.leastBlankOff, AIR_EDUCTOR.greatestBlankOff]).toEqual([25, 27]);
    expect(USUAL_AIR_PUMP.freeAir).toBeCloseTo(50 * CFM, 8);
  });

  // By hand: 101 325 − 27 × 3386.389 = 9892 Pa; − 25 × … = 16 665 Pa.
  it("takes 27 inHg to the nearest kPa, and 25 inHg for the poorer end", () => {
    expect(DEFAULT_BLANK_OFF).toBeCloseTo(16_665.3, 1);
    expect(BETTER_BLANK_OFF).toBeCloseTo(101_325 - 27 * INHG, 1);
  });

  it("falls in a straight line to nothing at the blank-off, which goes with the atmosphere", () => {
    const sea = airDraw({ freeAir: 0.02, blankOff: 10_000, leak: 0 }, 101_325, 0);
    expect(sea.netFreeAir(101_325)).toBeCloseTo(0.02, 12);
    expect(sea.netFreeAir((101_325 + 10_000) / 2)).toBeCloseTo(0.01, 12);
    expect(sea.netFreeAir(10_000)).toBeCloseTo(0, 12);
    expect(sea.limit).toBeCloseTo(10_000, 6);
    const high = airDraw({ freeAir: 0.02, blankOff: 10_000, leak: 0 }, 101_325 / 2, 0);
    expect(high.limit).toBeCloseTo(5000, 6);
    expect(high.netFreeAir(101_325 / 2)).toBeCloseTo(0.02, 12);
  });

  it("draws nothing at its limit, with a leak and vapour too", () => {
    const draw = airDraw({ freeAir: 0.02, blankOff: 10_000, leak: 0.003 }, 95_000, 7000);
    expect(draw.netFreeAir(draw.limit)).toBeCloseTo(0, 12);
    expect(draw.limit).toBeGreaterThan(10_000);
  });
});

describe("an air pump in words", () => {
  it.each([
    ["50 cfm", 50 * CFM, null, null],
    ["23.6 L/s", 0.0236, null, null],
    ["23.6 L/s, blank-off 10 kPa(a)", 0.0236, 10_000, null],
    ["50 cfm; blank off 26 inHg; leak 2 cfm", 50 * CFM, 101_325 - 26 * INHG, 2 * CFM],
    ["50 cfm, leak 1 L/s, blankoff 91.325 kPa vacuum", 50 * CFM, 10_000, 0.001],
    ["50 cfm, blank-off 26 inHg vacuum", 50 * CFM, 101_325 - 26 * INHG, null],
  ])("reads %s", (text, freeAir, blankOff, leak) => {
    const read = describedAirPump(text, "air pump capacity");
    if (!read.ok) throw new Error(JSON.stringify(read.findings));
    expect(read.value.freeAir).toBeCloseTo(freeAir, 8);
    if (blankOff === null) expect(read.value.blankOff).toBeNull();
    else expect(read.value.blankOff).toBeCloseTo(blankOff, 3);
    if (leak === null) expect(read.value.leak).toBeNull();
    else expect(read.value.leak).toBeCloseTo(leak, 8);
  });

  it.each([
    ["50", "unit-missing"],
    ["50 psi", "unit-wrong-kind"],
    ["50 cfm, blank-off 10 kPa", "blank-off-ambiguous"],
    ["50 cfm, blank-off 10 m", "unit-wrong-kind"],
    ["50 cfm, 26 inHg", "air-pump-part-unread"],
    ["50 cfm, leak 1 cfm, leak 2 cfm", "air-pump-part-unread"],
    ["50 cfm, leak fast", "not-a-number"],
  ])("refuses %s", (text, code) => {
    expect(describedAirPump(text, "air pump capacity").findings[0]?.code).toBe(code);
  });
});

describe("pumping a closed vessel down", () => {
  const base = { volume: 1, displacement: 0.0236, startPressure: 101_325, endPressure: 50_000, ultimatePressure: 0 };

  // By hand: with p_u = 10 kPa, (1/0.0236) ln(91.325/40) = 34.983 s.
  it("counts the pressure it ends at", () => {
    const time = pumpDownTime({ ...base, ultimatePressure: 10_000 });
    expect(time.ok && time.value).toBeCloseTo(34.98, 1);
  });

  it("refuses an end at or below the ultimate pressure, or above the start", () => {
    expect(pumpDownTime({ ...base, ultimatePressure: 50_000 }).findings[0]?.code).toBe("out-of-range");
    expect(pumpDownTime({ ...base, endPressure: 101_326 }).findings[0]?.code).toBe("out-of-range");
    expect(pumpDownTime({ ...base, volume: 0 }).findings[0]?.code).toBe("out-of-range");
    expect(pumpDownTime({ ...base, endPressure: 101_325 })).toMatchObject({ ok: true, value: 0 });
  });
});

describe("motive air of an eductor", () => {
  const base = { nozzleDiameter: 0.00635, motivePressure: 790_800, motiveTemperature: 288.71, backPressure: 101_325 };

  // Trade table: 1/4 in orifice at 100 psig passes 104 scfm (air at 0.0765 lb/ft³ = 1.225 kg/m³), at 60 °F.
  it("passes 104 scfm through 1/4 in at 100 psig", () => {
    const mass = motiveAir(base);
    if (!mass.ok) throw new Error("refused");
    expect(Math.abs(mass.value / 1.225 / CFM - 104)).toBeLessThan(1.5);
  });

  // Gas dynamics: choked from (6/5)^3.5 = 1.8929 times the back pressure.
  it("refuses a nozzle that is not choked", () => {
    expect(motiveAir({ ...base, motivePressure: 1.894 * 101_325 }).ok).toBe(true);
    expect(motiveAir({ ...base, motivePressure: 1.892 * 101_325 }).findings[0]?.code).toBe("out-of-range");
  });
});
