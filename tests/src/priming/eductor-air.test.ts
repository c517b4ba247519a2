import { describe, expect, it } from "vitest";
import { type EductorAirInput, eductorAir } from "../../../src/priming/eductor-air.ts";

const CFM = 4.71947443e-4;
const PSI = 6894.757293168361;
const HP = 745.69987;
const INHG = 3386.389;
const base: EductorAirInput = {
  nozzleBore: 0.00635,
  motivePressure: 100 * PSI,
  airTemperature: 288.71,
  atmosphericPressure: 101_325,
};

function answerTo(change: Partial<EductorAirInput> = {}) {
  const found = eductorAir({ ...base, ...change });
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return found.value;
}

const codes = (change: Partial<EductorAirInput>): readonly string[] =>
  eductorAir({ ...base, ...change }).findings.map(({ code }) => code);

describe("what an eductor takes", () => {
  // Trade table, from memory: 1/4 in at 100 psi passes 104 ft³/min of standard air.
  it("passes 104 ft³/min through 1/4 in at 100 psi", () => {
    expect(Math.abs(answerTo().motiveAir / CFM - 104)).toBeLessThan(1.5);
  });

  // Common practice, no source: 4 to 5 ft³/min a horsepower; by hand 104/5 = 20.8 hp, 104/4 = 26 hp.
  it("asks for a compressor by the trade's figure", () => {
    const { least, most } = answerTo().compressorPower;
    expect(Math.abs(least / HP - 20.8)).toBeLessThan(0.3);
    expect(Math.abs(most / HP - 26)).toBeLessThan(0.4);
  });

  // Common practice, no source: 0.2 to 0.5 kg/kg, nothing beyond 25 to 27 inHg at sea level.
  it("draws a share of its motive air and reaches a vacuum in proportion to the atmosphere", () => {
    const { motiveAir, airDrawn, vacuum } = answerTo();
    expect(airDrawn.least / motiveAir).toBeCloseTo(0.2, 12);
    expect(airDrawn.most / motiveAir).toBeCloseTo(0.5, 12);
    expect(vacuum.least / INHG).toBeCloseTo(25, 4);
    expect(vacuum.most / INHG).toBeCloseTo(27, 4);
    expect(answerTo({ atmosphericPressure: 50_662.5 }).vacuum.most / INHG).toBeCloseTo(13.5, 4);
  });

  // By hand: 0.04042 × 12.566e-6 m² × 800 kPa / √293 K = 0.02374 kg/s (O-P07); / 1.225 kg/m³ = 0.01938 m³/s.
  it("goes with bore squared and absolute pressure, as worked by hand", () => {
    const air = answerTo({ nozzleBore: 0.004, motivePressure: 800_000 - 101_325, airTemperature: 293 }).motiveAir;
    expect(air).toBeCloseTo(0.01938, 4);
    expect(answerTo({ nozzleBore: 2 * base.nozzleBore }).motiveAir / answerTo().motiveAir).toBeCloseTo(4, 9);
  });

  it("always says its bands are practice, and the power rough away from 80 to 125 psi", () => {
    expect(codes({})).toEqual(["eductor-by-practice"]);
    expect(codes({ motivePressure: 80 * PSI })).toEqual(["eductor-by-practice"]);
    expect(codes({ motivePressure: 125 * PSI })).toEqual(["eductor-by-practice"]);
    expect(codes({ motivePressure: 79.9 * PSI })).toContain("eductor-power-rough");
    expect(codes({ motivePressure: 125.1 * PSI })).toContain("eductor-power-rough");
  });

  // Gas dynamics: choked from (6/5)^3.5 = 1.8929 times the back pressure, so from 0.8929 × 101.325 = 90.48 kPa gauge.
  it("refuses a pressure that does not choke the nozzle, and inputs that are none", () => {
    expect(eductorAir({ ...base, motivePressure: 90_600 }).ok).toBe(true);
    expect(codes({ motivePressure: 90_400 })).toEqual(["out-of-range"]);
    expect(codes({ nozzleBore: 0 })).toEqual(["out-of-range"]);
    expect(codes({ motivePressure: 0 })).toEqual(["out-of-range"]);
    expect(codes({ airTemperature: Number.NaN })).toEqual(["not-a-number"]);
  });
});
