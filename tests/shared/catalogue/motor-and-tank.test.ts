import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { entryNamed } from "../../../shared/catalogue/catalogue.ts";
import type { Argument, Cell } from "../../../shared/cells/cell.ts";
import { cell, numberIn, refusal, remarks } from "../../support/cells.ts";

type Table = readonly (readonly Cell[])[];

/** The parts of a record by their names, units taken off. */
function record(id: string, ...args: readonly Argument[]): Readonly<Record<string, Cell>> {
  const [names = [], values = []] = cell(id, ...args) as Table;
  return Object.fromEntries(names.map((name, i) => [String(name).replace(/, [^,]+$/, ""), values[i] ?? null]));
}

describe("MOTORDATA", () => {
  // NEC Table 430.250 (amperes) and 10 CFR 431.25 Table 5, enclosed, 60 Hz (percent); slip by 1 − n/(120 f/p).
  it.each([
    // hp, rpm, volts, poles, A, %, slip %
    [5, 1750, 230, 4, 15.2, 89.5, 2.78],
    [10, 3500, 460, 2, 14, 90.2, 2.78],
    [25, 1180, 460, 6, 34, 93, 1.67],
    [50, 1770, 460, 4, 65, 94.5, 1.67],
    [75, 1780, 575, 4, 77, 95.4, 1.11],
    [100, 3560, 2300, 2, 26, 94.1, 1.11],
    [200, 1185, 460, 6, 240, 95.8, 1.25],
    [500, 1785, 460, 4, 590, 96.2, 0.83],
  ])("%d hp at %d rpm and %d V: %d poles, %f A, %f %%", (hp, rpm, volts, poles, amperes, percent, slip) => {
    const motor = record("MOTORDATA", hp, rpm, 1, "NEMA", volts);
    expect(motor["rating"]).toBeCloseTo(hp, 9);
    expect(motor["poles"]).toBe(poles);
    expect(motor["supply frequency"]).toBe(60);
    expect(motor["full-load current"]).toBe(amperes);
    expect(motor["full-load efficiency"]).toBeCloseTo(percent, 9);
    expect(motor["slip"]).toBeCloseTo(slip, 2);
    // Common practice, no source: 6 to 8 times full load, direct on line.
    expect(motor["maximum starting current"]).toBeCloseTo(8 * amperes, 9);
  });

  // IEC 60034-30-1, printed table of IE3, 50 Hz; I = P/(√3 V η 0.85), by hand.
  it.each([
    [7.5, 1450, 4, 90.4, 14.09],
    [22, 2940, 2, 92.7, 40.3],
    [55, 985, 6, 94.1, 99.25],
    [110, 1485, 4, 95.4, 195.8],
  ])("%f kW at %d rpm: %d poles, IE3 %f %%, %f A at 400 V", (kilowatts, rpm, poles, percent, amperes) => {
    const motor = record("MOTORDATA", kilowatts, rpm, 1, "IEC", 400, 0, 40, null, null, null, "SI");
    expect(motor["rating"]).toBeCloseTo(kilowatts, 9);
    expect(motor["poles"]).toBe(poles);
    expect(motor["supply frequency"]).toBe(50);
    expect(motor["full-load efficiency"]).toBeCloseTo(percent, 9);
    expect(Math.abs((motor["full-load current"] as number) / amperes - 1)).toBeLessThan(1e-3);
  });

  // Application manual for NEMA motors, reduction factors: 0.86 at 2000 m and 50 °C; NEMA MG 1 Table 10-4 list.
  it("takes the rating of which enough is left on site", () => {
    const site = [2000, 50, null, null, null, "SI"] as const;
    const hp = 0.745699871582;
    const motor = record("MOTORDATA", 25 * hp, 1770, 1, "NEMA", null, ...site);
    expect((motor["rating"] as number) / hp).toBeCloseTo(30, 9);
    expect(motor["output factor on site"]).toBeCloseTo(0.94 * 0.92, 9);
    expect(motor["output on site"]).toBeCloseTo(30 * hp * 0.8648, 9);
    expect(motor["power left on site"]).toBeCloseTo((30 * 0.8648 - 25) * hp, 9);
    expect(remarks("MOTORDATA", 25 * hp, 1770, 1, "NEMA", null, ...site)).toContain("check motor-raised-for-site");
    expect(cell("NOTES", "MOTORDATA", 25 * hp, 1770, 1, "NEMA", null, ...site)).toMatch(
      /a 18\.6 kW motor would fall short, so 22\.4 kW is taken/,
    );
    // 20 hp of 25: 21.62 hp are left, and the rating stays.
    expect(remarks("MOTORDATA", 20.5 * hp, 1770, 1, "NEMA", null, ...site)).toContain("check motor-derated-on-site");
    expect(remarks("MOTORDATA", 20.5 * hp, 1770, 1, "NEMA", null, 1000, 40, null, null, null, "SI").join()).not.toMatch(
      /site|derated/,
    );
  });

  it("keeps the service factor whole on site", () => {
    // By hand: 47 × 1.1 = 51.7 hp; 60 hp × 0.97 at 1500 m = 58.2; 55 × 1.1 = 60.5 asks for 75 hp.
    expect(record("MOTORDATA", 47, 1770, 1.1, "NEMA", null, "1500 m")["rating"]).toBeCloseTo(60, 9);
    expect(record("MOTORDATA", 53, 1770, 1.1, "NEMA", null, "1500 m")["rating"]).toBeCloseTo(75, 9);
  });

  // NEMA MG 1 Part 13 and EN 50347, not yet verified: tests/published/motor-frames.csv.
  it.each([
    [50, 3550, "NEMA", "326TS", "324TS"],
    [50, 1770, "NEMA", "326T", "326T"],
    [200, 1785, "NEMA", "447T", "445TS"],
    [75, 1180, "NEMA", "405T", "405T"],
    [100, 885, "NEMA", "445T", "445T"],
  ] as const)("of %d hp at %d rpm has frame %s: %s enclosed, %s open", (hp, rpm, series, frame, open) => {
    const motor = record("MOTORDATA", hp, rpm, 1, series);
    expect(motor["usual frame"]).toBe(frame);
    expect(motor["open frame"]).toBe(open);
    expect(remarks("MOTORDATA", hp, rpm, 1, series)).toContain("check motor-frame-usual");
  });

  it("has the short shaft for a coupling beside the frame for belts", () => {
    expect(record("MOTORDATA", 200, 1785)["frame for direct coupling"]).toBe("447TS");
    expect(record("MOTORDATA", 50, 1770)["frame for direct coupling"]).toBe("");
  });

  it.each([
    [15, 1460, "160L"],
    [55, 740, "315S"],
    [75, 985, "315S"],
    [160, 2960, "315L"],
  ])("of %d kW at %d rpm has IEC frame %s", (kilowatts, rpm, frame) => {
    expect(record("MOTORDATA", kilowatts, rpm, 1, "IEC", null, 0, 40, null, null, null, "SI")["usual frame"]).toBe(
      frame,
    );
  });

  it("leaves the frame to the maker where none is assigned, and says where some pack it smaller", () => {
    expect(record("MOTORDATA", 390, 1785)["usual frame"]).toBe("");
    expect(cell("NOTES", "MOTORDATA", 390, 1785)).toMatch(/frame by the maker/);
    expect(cell("NOTES", "MOTORDATA", 75, 1480, 1, "IEC", null, 0, 40, null, null, null, "SI")).toMatch(
      /frame 280S is the standard one; some makers pack this motor one size smaller, as 250M/i,
    );
  });

  // By hand: 60 Hz, four poles: 1600/1800 = 0.8889; 50 × 1.1 = 55 hp; 60 × 0.8889 = 53.3 falls short, 75 leaves 66.7.
  it("slows a motor of the supply where none runs at the speed from the line", () => {
    const motor = record("MOTORDATA", 50, 1600, 1.1, "NEMA", 460);
    expect(motor["rating"]).toBeCloseTo(75, 9);
    expect(motor["output factor by speed"]).toBeCloseTo(1600 / 1800, 12);
    expect(motor["output on site"]).toBeCloseTo(66.667, 3);
    expect([motor["poles"], motor["supply frequency"], motor["slip"]]).toEqual([4, 60, ""]);
    expect(motor["driven by"]).toBe("VFD, slowed");
    // 5252.11 × 66.667/1600 lbf·ft; NEC Table 430.250, 75 hp, 460 V; MG 1 Part 13.
    expect(motor["full-load torque"]).toBeCloseTo(218.84, 1);
    expect(motor["full-load current"]).toBe(96);
    expect(motor["usual frame"]).toBe("365T");
    expect(remarks("MOTORDATA", 50, 1600, 1.1)).toEqual([
      "check motor-speed-not-mains",
      "check motor-below-base-speed",
      "check motor-frame-usual",
    ]);
    // Common practice, no source: a drive gives 1 % less for each 100 m above 1000 m; 6000 ft is 1828.8 m.
    expect(cell("NOTES", "MOTORDATA", 50, 1600, 1.1, "NEMA", null, 6000)).toMatch(
      /drive \(VFD\) at this altitude gives 92 %/,
    );
    expect(record("MOTORDATA", 50, 1711, 1.1)["driven by"]).toBe("line start");
    expect(record("MOTORDATA", 50, 1709, 1.1)["driven by"]).toBe("VFD, slowed");
  });

  // By hand: 34.9 hp at 1487 rpm: 40 × 1487/1800 = 33.0 falls short, 50 leaves 41.3.
  it("takes the motor of the region's frequency, not one of another", () => {
    const motor = record("MOTORDATA", 34.9, 1487, 1, "NEMA");
    expect([motor["rating"], motor["poles"], motor["supply frequency"]]).toEqual([expect.closeTo(50, 9), 4, 60]);
    expect(motor["output on site"]).toBeCloseTo(41.31, 2);
    expect(cell("NOTES", "MOTORDATA", 34.9, 1487, 1, "NEMA")).toMatch(
      /4 poles runs at 1,487 rpm on 50 Hz: state the freq/,
    );
    expect(record("MOTORDATA", 50, 985, 1, "NEMA")["supply frequency"]).toBe(60);
    expect(record("MOTORDATA", 50, 985, 1, "NEMA", null, 0, 104, 50)).toMatchObject({
      poles: 6,
      "supply frequency": 50,
    });
  });

  // Line voltages met at one frequency alone: IEC 60038, ANSI C84.1 (from memory).
  it.each([
    ["IEC", 460, 60],
    ["IEC", 380, 50],
    ["NEMA", 400, 50],
    ["NEMA", 575, 60],
    ["NEMA", 230, 60],
    ["IEC", 690, 50],
  ])("reads the frequency of a %s motor off a supply of %d V: %d Hz", (series, volts, frequency) => {
    expect(record("MOTORDATA", "30 kW", 1440, 1, series, volts)["supply frequency"]).toBe(frequency);
  });

  it("raises a motor no more than a tenth above its speed", () => {
    const raised = record("MOTORDATA", 50, 1900, 1);
    expect([raised["driven by"], raised["poles"], raised["output factor by speed"]]).toEqual([
      "VFD, above base speed",
      4,
      1,
    ]);
    expect(remarks("MOTORDATA", 50, 1900, 1)).toContain("check motor-above-base-speed");
    expect(record("MOTORDATA", 50, 1981, 1)["poles"]).toBe(2);
    expect(record("MOTORDATA", 50, 4000, 1)["driven by"]).toBe("VFD, above base speed");
  });

  // By hand: 47.5/0.95 = 50.0 hp at the motor.
  it("drives through belts at its own speed, with what they take counted", () => {
    const belts = record("MOTORDATA", 47.5, 1250, 1, "NEMA", null, 0, 104, null, null, "belts");
    expect(belts["rating"]).toBeCloseTo(50, 9);
    expect([belts["poles"], belts["driven by"], belts["slip"], belts["full-load torque"]]).toEqual([
      4,
      "belts",
      "",
      "",
    ]);
    expect(belts["output factor by speed"]).toBe(1);
    expect(record("MOTORDATA", 47.6, 1250, 1, "NEMA", null, 0, 104, null, null, "belts")["rating"]).toBeCloseTo(60, 9);
  });

  // By hand: MG 1 and makers' bands, 0.94 at 6000 ft: 50 hp leave 47.0.
  it("judges the motor there is", () => {
    const fitted = (hp: number, feet: number, motor = 50) =>
      ["MOTORDATA", hp, 1770, 1, "NEMA", null, feet, 104, null, motor] as const;
    expect(record(...fitted(47, 6000))).toMatchObject({ "output on site": expect.closeTo(47, 9) });
    expect(remarks(...fitted(47, 6000))).not.toContain("limit motor-too-small");
    expect(remarks(...fitted(47.1, 6000))).toContain("limit motor-too-small");
    expect(cell("NOTES", ...fitted(104, 0, 100))).toMatch(
      /inside a nameplate service factor of 1\.15, which is no margin/,
    );
    expect(cell("NOTES", ...fitted(116, 0, 100))).not.toMatch(/1\.15/);
    expect(record(...fitted(30, 0, 37))["usual frame"]).toBe("");
    expect(remarks("MOTORDATA", 130, 1480, 1, "IEC", null, 0, 40, null, 150, null, "SI")).toContain(
      "check motor-rating-secondary",
    );
  });

  it("doubts a voltage that no motor runs at", () => {
    expect(remarks("MOTORDATA", 55, 1480, 1, "IEC", 40, 0, 40, null, null, null, "SI")).toContain(
      "check outside-usual-range",
    );
    expect(remarks("MOTORDATA", 55, 1480, 1, "IEC", 400, 0, 40, null, null, null, "SI").join()).not.toMatch(
      /usual-range/,
    );
    expect(remarks("MOTORDATA", 45, 1770, 1, "NEMA").join()).not.toMatch(/usual-range/);
    expect(remarks("MOTORDATA", 400, 1485, 1, "IEC", 6600, 0, 40, null, null, null, "SI")).toContain(
      "check motor-high-voltage",
    );
  });

  it("takes a synchronous speed with a caution", () => {
    const motor = record("MOTORDATA", 50, 1800, 1.1);
    expect(motor["slip"]).toBeCloseTo(0, 9);
    expect(remarks("MOTORDATA", 50, 1800, 1.1)).toContain("assumed motor-speed-synchronous");
    expect(remarks("MOTORDATA", 50, 1790, 1.1)).not.toContain("assumed motor-speed-synchronous");
  });

  it("does not carry a table to another frequency", () => {
    const iec = record("MOTORDATA", 50, 1770, 1.1, "IEC", 460, 0, 40, null, null, null, "SI");
    expect([iec["full-load efficiency"], iec["full-load current"], iec["usual frame"]]).toEqual(["", "", ""]);
    expect(remarks("MOTORDATA", 50, 1770, 1.1, "IEC", 460, 0, 40, null, null, null, "SI")).toEqual([
      "check motor-frame-not-held",
      "check motor-efficiency-other-supply",
      "check motor-current-not-known",
    ]);
    expect(record("MOTORDATA", 50, 1480, 1.1, "NEMA", 460, 0, 104, 50)["full-load current"]).toBe("");
  });

  it.each([
    // NEC Table 430.250, note on system voltages (from memory): 440 to 480 V read the 460 V column, 50 hp.
    [440, 65],
    [480, 65],
    [600, 52],
    [220, 130],
    [208, 143],
  ])("reads the code's column for a supply of %d V: %f A", (volts, amperes) => {
    expect(record("MOTORDATA", 45, 1770, 1.1, "NEMA", volts)["full-load current"]).toBe(amperes);
    expect(remarks("MOTORDATA", 45, 1770, 1.1, "NEMA", volts)).toContain("check motor-current-by-code");
  });

  it("works a current out where the code lists none, with a power factor said to be assumed", () => {
    // By hand: 50 hp = 37.285 kW; 37285/(√3 × 415 × 0.945 × 0.85) = 64.58 A.
    const supply = ["NEMA", "415 V", 0, 104, 60] as const;
    expect(record("MOTORDATA", 45, 1770, 1.1, ...supply)["full-load current"]).toBeCloseTo(64.58, 1);
    expect(remarks("MOTORDATA", 45, 1770, 1.1, ...supply)).toContain("assumed motor-power-factor-assumed");
    // 2.3 kV is listed from 60 hp.
    expect(record("MOTORDATA", 55, 1770, 1, "NEMA", "2.3 kV")["full-load current"]).toBe(16);
    expect(record("MOTORDATA", 45, 1770, 1.1)["full-load current"]).toBe("");
  });

  // SI 2021/745: IE4 from 75 kW to 200 kW, 2 to 6 poles, since July 2023; printed IE4, 4 poles, 75 kW: 96.0 %.
  it.each([
    [55, 1480, false],
    [75, 1480, true],
    [75, 735, false],
    [200, 1480, true],
    [250, 1480, false],
  ])("says of %d kW at %d rpm whether IE4 is due: %s", (kilowatts, rpm, due) => {
    const said = remarks("MOTORDATA", kilowatts, rpm, 1, "IEC", null, 0, 40, null, null, null, "SI");
    expect(said.includes("check motor-class-higher-due")).toBe(due);
    if (kilowatts === 75 && due) {
      expect(cell("NOTES", "MOTORDATA", kilowatts, rpm, 1, "IEC", null, 0, 40, null, null, null, "SI")).toContain(
        "IE4, 96 %",
      );
    }
  });

  // IEC 60034-1 (1 K per 100 m above 1000 m) and MG 1-14.4.3 (9000 ft), both from memory.
  it("says what a maker may allow, and takes no credit for it", () => {
    const of = (feet: number, celsius: string) => remarks("MOTORDATA", 50, 1770, 1.1, "NEMA", null, feet, celsius);
    expect(of(6000, "31 degC")).toContain("check motor-cool-air-credit");
    expect(of(6000, "32 degC")).not.toContain("check motor-cool-air-credit");
    expect(of(9000, "40 degC")).toContain("check motor-service-factor-credit");
    expect(of(9001, "40 degC")).not.toContain("check motor-service-factor-credit");
    expect(of(9000, "41 degC")).not.toContain("check motor-service-factor-credit");
    expect(of(3000, "20 degC").join()).not.toMatch(/credit/);
  });

  it("refuses what it cannot answer for", () => {
    expect(refusal("MOTORDATA", 0, 1770)).toMatch(/^#VALUE! Shaft power must be above 0 hp/);
    expect(refusal("MOTORDATA", 50, 0)).toMatch(/^#VALUE! Speed must be above 0 rpm/);
    expect(refusal("MOTORDATA", 50, 1770, 1, "NEMA", 0)).toMatch(/Line voltage must be above 0 V/);
    expect(refusal("MOTORDATA", 50, 1770, 1, "NEMA", 460, "4001 m")).toMatch(/Altitude must be at most/);
    expect(refusal("MOTORDATA", 50, 1770, 1, "NEMA", 460, 0, "61 degC")).toMatch(/Ambient temperature must be at most/);
    // By hand: 1000 hp × 0.86 at 3000 m leaves 860 hp.
    expect(refusal("MOTORDATA", 870, 1770, 1, "NEMA", null, "3000 m")).toMatch(
      /comes to 870 hp, above the maximum NEMA rating on site, 860 hp/,
    );
    expect(record("MOTORDATA", 859, 1770, 1, "NEMA", null, "3000 m")["rating"]).toBeCloseTo(1000, 9);
  });

  it("doubts a temperature of 0", () => {
    expect(remarks("MOTORDATA", 50, 1770, 1.1, "NEMA", null, 0, 0)).toContain("check zero-may-be-blank");
  });

  it("never gives more on a higher or hotter site, nor a smaller motor to a larger pump", () => {
    const altitude = fc.double({ min: -400, max: 4000, noNaN: true });
    const celsius = fc.double({ min: 1, max: 60, noNaN: true });
    const power = fc.double({ min: 0.4, max: 600, noNaN: true });
    fc.assert(
      fc.property(altitude, altitude, celsius, celsius, power, power, (z1, z2, t1, t2, p1, p2) => {
        const of = (p: number, z: number, t: number) =>
          record("MOTORDATA", p, 1480, 1, "IEC", null, z, t, null, null, null, "SI");
        const low = of(p1, Math.min(z1, z2), Math.min(t1, t2));
        const high = of(p1, Math.max(z1, z2), Math.max(t1, t2));
        expect(high["output factor on site"]).toBeLessThanOrEqual(low["output factor on site"] as number);
        expect(high["rating"]).toBeGreaterThanOrEqual(low["rating"] as number);
        const small = of(Math.min(p1, p2), z1, t1);
        const large = of(Math.max(p1, p2), z1, t1);
        expect(large["rating"]).toBeGreaterThanOrEqual(small["rating"] as number);
        expect(large["output on site"]).toBeGreaterThanOrEqual(Math.max(p1, p2) * (1 - 1e-8));
      }),
    );
  });
});

describe("ENGINELOAD", () => {
  // Common practice, no source: net is 3 % to 8 % below gross; usual 5 %.
  it("takes the losses off before the site", () => {
    expect(record("ENGINELOAD", 50, 100, 8, 0, 25, "turbo", 215, "SI")["net power"]).toBeCloseTo(92, 9);
    expect(record("ENGINELOAD", 50, 100, 0, 0, 25, "turbo", 215, "SI")["net power"]).toBeCloseTo(100, 9);
    expect(record("ENGINELOAD", 50, 100, null, 0, 25, "turbo", 215, "SI")["net power"]).toBeCloseTo(95, 9);
    expect(remarks("ENGINELOAD", 50, 100, null, 0, 25, "turbo", 215, "SI")).toEqual([
      "assumed engine-losses-assumed",
      "assumed engine-gross-rating-assumed",
    ]);
    expect(remarks("ENGINELOAD", 50, 100, 0, 0, 25, "turbo", 215, "SI")).toEqual(["check engine-rating-assumed"]);
    expect(remarks("ENGINELOAD", 50, 100, 9, 0, 25, "turbo", 215, "SI")).toContain("check outside-usual-range");
  });

  // By hand, ISO 3046-1 with 298 K: 1500 m is 84.56 kPa; α = 0.7981 − 0.7 × 0.2019 × 0.25 = 0.7628.
  // NFPA 20, from memory: 1500 m is 4621 ft over 300 ft, 13.86 %; 40 °C is 27 °F over 77 °F, 2.7 %.
  it("adjusts the net power to the site, and puts the quick rule beside it", () => {
    const engine = record("ENGINELOAD", 60, 100, 0, 1500, 40, "turbo", 215, "SI");
    expect(engine["power on site"]).toBeCloseTo(76.28, 1);
    expect(engine["load"]).toBeCloseTo((100 * 60) / 76.28, 1);
    expect(engine["power left"]).toBeCloseTo(16.28, 1);
    expect(engine["by rule of thumb"]).toBeCloseTo(83.44, 1);
  });

  // Common practice, no source: below 30 % wet stacking; fuel × 1.1 at 40 % load, × 1.3 at 25 %.
  it.each([
    [20, 20, "", ["engine-load-low", "fuel-load-outside"]],
    [25, 25, 8.318, ["engine-load-low", "fuel-part-load"]],
    [30, 30, 9.47, ["fuel-part-load"]],
    [40, 40, 11.262, ["fuel-part-load"]],
    [50, 50, 12.798, []],
    [100, 100, 25.595, []],
    [105, 105, 26.875, ["engine-too-small"]],
    [111, 111, "", ["engine-too-small", "fuel-load-outside"]],
  ] as const)("under %d kW of 100: load %d %%, %s L/h, %j", (kilowatts, percent, litres, said) => {
    const args = [kilowatts, 100, 0, 0, 25, "turbo", 215, "SI"] as const;
    const engine = record("ENGINELOAD", ...args);
    expect(engine["load"]).toBeCloseTo(percent, 9);
    if (litres === "") expect(engine["fuel rate"]).toBe("");
    else expect(engine["fuel rate"]).toBeCloseTo(litres, 2);
    const codes = remarks("ENGINELOAD", ...args).map((remark) => remark.split(" ")[1]);
    expect(codes).toEqual(["engine-rating-assumed", ...said]);
  });

  it("warns, with its rule, of an engine that is too small", () => {
    expect(remarks("ENGINELOAD", 100.1, 100, 0, 0, 25, "turbo", 215, "SI")).toContain("limit engine-too-small");
    expect(remarks("ENGINELOAD", 99.9, 100, 0, 0, 25, "turbo", 215, "SI").join()).not.toMatch(/small/);
  });

  // Common practice, no source: 265 g/kWh to 30 kW of rating; at full load 20 × 265/840 L/h.
  it("takes the usual consumption of an engine of its rating", () => {
    expect(record("ENGINELOAD", 20, 20, 0, 0, 25, "turbo", null, "SI")["fuel rate"]).toBeCloseTo((20 * 265) / 840, 6);
    // 205 g/kWh from 400 kW of rating, however little the pump takes of it: 250 × 205/840 L/h.
    expect(record("ENGINELOAD", 250, 400, 0, 0, 25, "turbo", null, "SI")["fuel rate"]).toBeCloseTo(
      (250 * 205) / 840,
      6,
    );
    expect(remarks("ENGINELOAD", 20, 20, 0, 0, 25, "turbo", null, "SI")).toContain("assumed fuel-consumption-assumed");
  });

  it("refuses what it cannot answer for", () => {
    expect(refusal("ENGINELOAD", 0, 100)).toMatch(/^#VALUE! Shaft power must be above 0 hp/);
    expect(refusal("ENGINELOAD", 50, 0)).toMatch(/^#VALUE! Rated power must be above 0 hp/);
    expect(refusal("ENGINELOAD", 50, 100, 50)).toMatch(/loss must be below 50 %/);
    expect(refusal("ENGINELOAD", 50, 100, 5, 0, 77, "turbo", "500 g/kWh")).toMatch(/at most 0\.658 lb\/hp-h/);
  });

  it("never gives more on a higher site, and never burns less under more load", () => {
    const altitude = fc.double({ min: -500, max: 5000, noNaN: true });
    const power = fc.double({ min: 30, max: 90, noNaN: true });
    fc.assert(
      fc.property(altitude, altitude, power, power, (z1, z2, p1, p2) => {
        const of = (p: number, z: number) => record("ENGINELOAD", p, 100, 5, z, 25, "natural", 215, "SI");
        expect(of(p1, Math.max(z1, z2))["power on site"]).toBeLessThanOrEqual(
          of(p1, Math.min(z1, z2))["power on site"] as number,
        );
        const less = of(Math.min(p1, p2), 0)["fuel rate"] as number;
        expect(of(Math.max(p1, p2), 0)["fuel rate"]).toBeGreaterThanOrEqual(less * (1 - 1e-12));
      }),
    );
  });
});

describe("FUELTANKHOURS and FUELTANKSIZE", () => {
  // tests/published/mechanical-drive.csv, O-S11: 400 L, 90 %, 25.6 L/h: 14.06 h.
  it("divide the usable tank by the fuel rate", () => {
    expect(numberIn("FUELTANKHOURS", 400, 25.6, 90, 0, "SI")).toBeCloseTo(14.0625, 9);
    expect(numberIn("FUELTANKHOURS", 400, 25.6, 90, 10, "SI")).toBeCloseTo(12.65625, 9);
    expect(numberIn("FUELTANKHOURS", 0.4, 25.6, 90, 0, "METRIC")).toBeCloseTo(14.0625, 9);
    expect(numberIn("FUELTANKHOURS", "100 gal", "2.5 gal/h")).toBeCloseTo(32.4, 9);
    expect(numberIn("FUELTANKSIZE", 14.0625, 25.6, 90, 0, "SI")).toBeCloseTo(400, 9);
  });

  it("take a fraction or percent and doubt a reserve of 0", () => {
    expect(numberIn("FUELTANKHOURS", 400, 25.6, 0.9)).toBe(numberIn("FUELTANKHOURS", 400, 25.6, "90 %"));
    expect(refusal("FUELTANKHOURS", 400, 25.6, 9.9)).toMatch(/must be at least 10 %; 9\.9 % was given/);
    expect(refusal("FUELTANKSIZE", 24, 25.6, 101)).toMatch(/at most 100 %/);
    expect(refusal("FUELTANKHOURS", 400, 0)).toMatch(/^#VALUE! Fuel rate must be above 0/);
    expect(refusal("FUELTANKHOURS", 400, 25.6, 90, 100)).toMatch(/Reserve must be below 100 %/);
    expect(remarks("FUELTANKHOURS", 400, 25.6, 90, 0)).toEqual(["check zero-may-be-blank"]);
    expect(remarks("FUELTANKHOURS", 400, 25.6, 89)).toEqual(["check outside-usual-range"]);
    expect(remarks("FUELTANKHOURS", 400, 25.6)).toEqual([]);
  });

  it("run in proportion to the tank, and come back from one another", () => {
    const some = fc.double({ min: 0.1, max: 1000, noNaN: true });
    fc.assert(
      fc.property(some, some, fc.double({ min: 1.1, max: 9, noNaN: true }), (tank, rate, times) => {
        const hours = numberIn("FUELTANKHOURS", tank, rate);
        expect(numberIn("FUELTANKHOURS", tank * times, rate) / hours).toBeCloseTo(times, 9);
        expect(numberIn("FUELTANKSIZE", hours, rate) / tank).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe("BELTDRIVE", () => {
  // By hand: 1460 × 200/250 × 0.985; π × 0.2 × 1460/60; 30/0.95; T = 9549.3 × 31.579/1460 = 206.55 N·m, F = 1.5 × 2T/0.2.
  it("gives speed, belt speed, power and pull", () => {
    const belts = record("BELTDRIVE", 30, 1460, 200, 250, 0.8, 150, "SI");
    expect(belts["pump speed"]).toBeCloseTo(1150.48, 1);
    expect(belts["belt speed"]).toBeCloseTo(15.29, 2);
    expect(belts["driver power"]).toBeCloseTo(31.579, 3);
    expect((belts["side pull"] as number) / 3098.2).toBeCloseTo(1, 3);
    expect((belts["maximum side pull"] as number) / (belts["minimum side pull"] as number)).toBeCloseTo(1.7 / 1.3, 9);
  });

  it("refuses what cannot run and cautions where the minimum sheave is not known", () => {
    expect(refusal("BELTDRIVE", 30, 1460, 140, 250, 0.8, 150, "SI")).toMatch(/below the minimum the motor's shaft/);
    expect(refusal("BELTDRIVE", 30, 1460, 200, 250, 0.2, 150, "SI")).toMatch(/two sheaves touching/);
    expect(refusal("BELTDRIVE", 30, 2960, 240, 250, 0.8, 150, "SI")).toMatch(/above 35 m\/s/);
    expect(remarks("BELTDRIVE", 30, 1460, 200, 250, 0.8, null, "SI")).toEqual(["check sheave-minimum-unknown"]);
  });
});

describe("housings and frames", () => {
  // SAE J617 and J620; tests/published/mechanical-drive.csv, O-A01, O-A02 and O-A04.
  it("match by number, and differ with both bolt circles", () => {
    const match = record("HOUSINGMATCH", 1, "SAE 1", "11 1/2", "SI");
    expect(match["pilot"]).toBeCloseTo(511.18, 6);
    expect(match["holes"]).toBe(12);
    expect(match["flywheel bolt circle"]).toBeCloseTo(333.38, 6);
    expect(match["flywheel in this housing"]).toBe("usual");
    expect(record("HOUSINGMATCH", "1", "1")["flywheel in this housing"]).toBe("not judged");
    expect(record("HOUSINGMATCH", "1", "1", "18")["flywheel in this housing"]).toBe("unusual");
    expect(remarks("HOUSINGMATCH", "1", "1", "18")).toEqual(["check flywheel-unusual-for-housing"]);
    expect(refusal("HOUSINGMATCH", "3", "4")).toMatch(/428\.62 mm.*381\.00 mm/);
    expect(refusal("HOUSINGMATCH", "7", "4")).toMatch(/^#N\/A/);
  });

  it("are listed in printed inches or millimetres with what was verified", () => {
    const inches = cell("FLYWHEELHOUSINGS", "US") as Table;
    const millimetres = cell("FLYWHEELHOUSINGS", "SI") as Table;
    // Nine housings of J617, ten flywheels of J620.
    expect(inches).toHaveLength(1 + 9 + 10);
    const number = (rows: Table, part: string, of: string) => rows.find((row) => row[0] === part && row[1] === of);
    expect(number(inches, "housing", "1")?.slice(2, 6)).toEqual(
      [20.125, 20.875, 21.75, 12].map((x) => expect.closeTo(x, 9)),
    );
    expect(number(millimetres, "housing", "1")?.slice(2, 4)).toEqual([511.18, 530.22].map((x) => expect.closeTo(x, 9)));
    expect(number(millimetres, "flywheel", "14")?.slice(2, 4)).toEqual(
      [466.72, 438.15].map((x) => expect.closeTo(x, 9)),
    );
    expect(number(inches, "flywheel", "11.5")?.[8]).toBe("1, 2, 3");
    for (const row of inches.slice(1)) expect(row[12]).toMatch(/looked up|data book|not yet verified/);
  });

  it("of motors are listed by standard", () => {
    const rows = cell("MOTORFRAMES", "US") as Table;
    const frame = (name: string) => rows.filter((row) => row[1] === name);
    // NEMA MG 1 Part 4: 326T is 8 in high, 12.5 × 12 in, shaft 2.125 × 5.25 in; 326TS 1.875 × 3.75 in.
    expect(frame("326T")[0]?.slice(3, 8)).toEqual([8, 12.5, 12, 2.125, 5.25].map((x) => expect.closeTo(x, 9)));
    expect(frame("326TS")[0]?.[2]).toMatch(/no belts/);
    // MG 1 JM: 254JM shaft 1.25 in, bolt circle 7.25 in, rabbet 8.5 in.
    expect([6, 10, 11].map((i) => frame("254JM")[0]?.[i])).toEqual([1.25, 7.25, 8.5].map((x) => expect.closeTo(x, 9)));
    // IEC 60072-1, from memory: 225 has shafts of 60 mm and, with two poles, 55 mm.
    const metric = (cell("MOTORFRAMES", "SI") as Table).filter((row) => row[1] === "225");
    expect(metric.map((row) => row[6])).toEqual([expect.closeTo(60, 9), expect.closeTo(55, 9)]);
  });
});

it("says every refusal of the new functions in the reader's own units", () => {
  const outcome = call(entryNamed("FUELTANKHOURS") ?? (undefined as never), [-1, 5, null, null, "METRIC"]);
  expect(outcome.ok ? "" : outcome.error.message).toBe("Tank volume must be above 0 m³; -1 m³ was given.");
});
