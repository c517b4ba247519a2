import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { call, type Outcome } from "../../../shared/catalogue/call.ts";
import {
  ATMOSPHERE,
  DENSITY,
  INUNITS,
  LIQUIDS,
  VAPORPRESSURE,
  VISCOSITY,
} from "../../../shared/catalogue/entries/liquid-and-site.ts";
import type { Entry } from "../../../shared/catalogue/entry.ts";
import type { Argument, Cell } from "../../../shared/cells/cell.ts";
import { liquidNamed } from "../../../src/liquid/liquid-name.ts";

const entries: readonly Entry[] = [DENSITY, VISCOSITY, VAPORPRESSURE, ATMOSPHERE, INUNITS, LIQUIDS];

function entry(id: string): Entry {
  const found = entries.find((one) => one.id === id);
  if (found === undefined) throw new Error(id);
  return found;
}

function outcome(id: string, ...args: readonly Argument[]): Outcome {
  return call(entry(id), args);
}

function value(id: string, ...args: readonly Argument[]): Cell | readonly (readonly Cell[])[] {
  const result = outcome(id, ...args);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

function refusal(id: string, ...args: readonly Argument[]): { readonly error: string; readonly message?: string } {
  const result = outcome(id, ...args);
  if (result.ok) throw new Error(`${id} answered ${JSON.stringify(result.value)}`);
  return result.error;
}

describe("arguments", () => {
  it("may leave out the temperature, which is then exactly 20 °C", () => {
    expect(value("DENSITY", "water")).toBe(value("DENSITY", "water", "20 degC"));
    expect(value("DENSITY", "water", null, "SI")).toBe(value("DENSITY", "water", 20, "SI"));
    expect(value("ATMOSPHERE")).toBe(value("ATMOSPHERE", 0));
  });

  it("take the temperature from the liquid's name where none is given, and refuse another", () => {
    expect(value("DENSITY", "water 90 F")).toBe(value("DENSITY", "water", 90));
    expect(value("DENSITY", "water 90 F", 90)).toBe(value("DENSITY", "water", 90));
    expect(value("DENSITY", "water 90 F", "32.2 degC")).toBe(value("DENSITY", "water", "32.2 degC"));
    expect(value("VAPORPRESSURE", "water 20 C", null, "SI")).toBe(value("VAPORPRESSURE", "water", 20, "SI"));
    expect(refusal("DENSITY", "water 90 F", 68)).toMatchObject({
      error: "#VALUE!",
      message: expect.stringContaining("the name of the liquid says 90 °F"),
    });
    expect(value("DENSITY", [["water 90 F"], ["water"]])).toEqual([
      [value("DENSITY", "water", 90)],
      [value("DENSITY", "water")],
    ]);
    expect(value("DENSITY", "water 90 F", [[90], [68]])).toEqual([
      [value("DENSITY", "water", 90)],
      [expect.objectContaining({ error: "#VALUE!" })],
    ]);
  });

  it("need the liquid", () => {
    expect(refusal("DENSITY")).toMatchObject({
      error: "#VALUE!",
      message: expect.stringContaining("Liquid is left out"),
    });
    expect(refusal("DENSITY", "", 60)).toMatchObject({ error: "#VALUE!" });
  });

  it.each([
    { why: "a liquid that is not known", args: ["vater"], error: "#N/A", words: "water" },
    { why: "a description that lacks a figure", args: ["3.5 cP"], error: "#VALUE!", words: "density" },
    { why: "ice", args: ["water", 20], error: "#VALUE!", words: "freezes at 32 °F" },
    { why: "ice, told in SI", args: ["water", -5, "SI"], error: "#VALUE!", words: "freezes at 0 °C" },
    { why: "a number in a text in two ways", args: ["water", "1,200", "SI"], error: "#VALUE!", words: "two ways" },
    { why: "a temperature difference", args: ["water", "60 K difference"], error: "#VALUE!", words: "another kind" },
    { why: "an unknown unit set", args: ["water", 60, "UK"], error: "#VALUE!", words: '"METRIC"' },
    { why: "a truth value", args: [true], error: "#VALUE!", words: "TRUE" },
  ])("refuse $why with $error and words", ({ args, error, words }) => {
    const refused = refusal("VISCOSITY", ...(args as Argument[]));
    expect(refused.error).toBe(error);
    expect(refused.message).toContain(words);
  });

  it("give an error value in an input back as itself", () => {
    expect(refusal("DENSITY", "water", { error: "#REF!" })).toEqual({ error: "#REF!" });
  });

  it("refuse the vapour pressure of a description without one", () => {
    expect(refusal("VAPORPRESSURE", "SG 1.1, 2 cP").message).toContain("pv 2.3 kPa");
    expect(value("VAPORPRESSURE", "SG 1.1, 2 cP, pv 2.3 kPa", null, "SI")).toBeCloseTo(2.3, 12);
  });

  it("check where a temperature is the number 0, which a blank cell arrives as", () => {
    const codes = (result: Outcome): readonly string[] => result.findings.map(({ code }) => code);
    expect(codes(outcome("DENSITY", "water", 0, "SI"))).toEqual(["zero-may-be-blank"]);
    expect(codes(outcome("DENSITY", "water", "0 degC"))).toEqual([]);
    expect(codes(outcome("DENSITY", "water", [[20], [0], [30]], "SI"))).toEqual(["zero-may-be-blank"]);
    expect(codes(outcome("DENSITY", "water", [[20], [30]], "SI"))).toEqual([]);
    // 0 °F: the ice speaks louder.
    expect(refusal("DENSITY", "water", 0).message).toContain("freezes");
  });
});

describe("answers", () => {
  it("spill down a column of temperatures, errors staying in their row", () => {
    const column = value("DENSITY", "water", [[50], [60], [-400], ["x"], [null]]) as readonly (readonly Cell[])[];
    expect(column).toHaveLength(5);
    expect(column[1]?.[0]).toBe(value("DENSITY", "water", 60));
    expect(column[2]?.[0]).toMatchObject({ error: "#VALUE!" });
    expect(column[3]?.[0]).toMatchObject({ error: "#VALUE!" });
    // A default is for an argument left out, not for a blank row (the functions' grammar).
    expect(column[4]?.[0]).toMatchObject({ error: "#VALUE!", message: expect.stringContaining("left out or blank") });
  });

  it("spill down a column of liquids", () => {
    const column = value("VISCOSITY", [["water"], ["sea water"], ["vater"]]) as readonly (readonly Cell[])[];
    expect(column[0]?.[0]).toBe(value("VISCOSITY", "water"));
    expect(column[1]?.[0]).toBe(value("VISCOSITY", "sea water"));
    expect(column[2]?.[0]).toMatchObject({ error: "#N/A" });
  });

  // Exact definitions, NIST SP 811, appendix B.
  const inUS = { DENSITY: 0.45359237 / 0.3048 ** 3, VISCOSITY: 1, VAPORPRESSURE: 6.894757293168361 };
  it.each(Object.entries(inUS))("%s is the same in US and SI units", (id, factor) => {
    fc.assert(
      fc.property(
        fc.double({ min: 33, max: 600, noNaN: true }),
        fc.constantFrom("water", "SG 1.2, 3 cSt, pv 2 psi"),
        (fahrenheit, liquid) => {
          const us = value(id, liquid, fahrenheit) as number;
          const si = value(id, liquid, `${fahrenheit} degF`, "SI") as number;
          const celsius = value(id, liquid, (fahrenheit - 32) / 1.8, "SI") as number;
          expect(Math.abs((us * factor) / si - 1)).toBeLessThan(1e-12);
          // The Celsius reading itself is rounded at 1e-14, which the vapour pressure enlarges.
          expect(Math.abs(celsius / si - 1)).toBeLessThan(1e-12);
        },
      ),
    );
  });

  it("of the atmosphere are the same in all three unit sets", () => {
    fc.assert(
      fc.property(fc.double({ min: -400, max: 8800, noNaN: true }), (metres) => {
        const si = value("ATMOSPHERE", metres, "SI") as number;
        const us = value("ATMOSPHERE", metres / 0.3048) as number;
        expect(Math.abs((us * 6.894757293168361) / si - 1)).toBeLessThan(1e-12);
        expect(value("ATMOSPHERE", metres, "METRIC")).toBeCloseTo(si / 100, 12);
      }),
    );
  });

  it("work a column of 10,000 rows", () => {
    const column = Array.from({ length: 10_000 }, (_, i) => [33 + i / 100]);
    expect(value("DENSITY", "water", column)).toHaveLength(10_000);
  });
});

describe("INUNITS", () => {
  it.each([
    ["45 L/s", "gpm", 45 / 0.0630901964],
    ["1 US gpm", "m3/h", 0.22712470704],
    ["5 ft 6 in", "in", 66],
    ["32 degF", "degC", 0],
    ["212 °F", "K", 373.15],
    ["18 °F difference", "K difference", 10],
    ["3.5 %", "g/kg", 35],
    ["30 psig", "bar(g)", 2.0684271879505],
    ["29.92 inHg", "psia", 14.69533365],
    // The short form: 0.226 · 100 − 195/100 and 0.22 · 550 − 135/550; ASTM D2161 prints 20.6 cSt for 100 SSU.
    ["100 SSU", "cSt", 20.65],
    ["550 SUS", "mm2/s", 120.754545454545],
    ["20.65 cSt", "SSU", 100],
    ["120.754545454545 cSt", "ssu", 550],
    ["1,200 gpm", "L/s", 75.70823568],
    ["450 g.p.m.", "gpm", 450],
    ["5½ in", "mm", 139.7],
    ["10+00", "ft", 1000],
  ] as const)("%s in %s is %d", (text, unit, expected) => {
    expect(value("INUNITS", text, unit)).toBeCloseTo(expected, 7);
  });

  it.each([
    ["45", "gpm", "#VALUE!", "without a unit"],
    [45, "gpm", "#VALUE!", "without a unit"],
    ["1,200 m3/h", "L/s", "#VALUE!", "two ways"],
    ["25 inHg vac", "kPa", "#VALUE!", "vac"],
    ["1 cSt", "SSU", "#VALUE!", "32 SSU"],
    ["45 L/s", "ft", "#VALUE!", "another kind"],
    ["45 L/s", "gpx", "#VALUE!", "not known"],
    ["1 MPa", "mPa", "#VALUE!", '"MPa"'],
    ["1 short ton", "ton", "#VALUE!", '"long ton"'],
    ["30 psig", "psia", "#VALUE!", "zeros"],
    ["30 psi", "psia", "#VALUE!", "zeros"],
    ["", "gpm", "#VALUE!", "left out"],
  ] as const)("%s in %s is refused", (text, unit, error, words) => {
    const refused = refusal("INUNITS", text, unit);
    expect(refused.error).toBe(error);
    expect(refused.message).toContain(words);
  });

  it("spills", () => {
    const column = value("INUNITS", [["1 ft"], ["1 yd"]], "in") as readonly (readonly number[])[];
    expect(column.map(([inches]) => Math.round((inches as number) * 1e9) / 1e9)).toEqual([12, 36]);
  });
});

describe("LIQUIDS", () => {
  const table = value("LIQUIDS", "SI") as readonly (readonly Cell[])[];

  it("spills a header and a row a liquid, in the reader's units", () => {
    expect(table[0]).toEqual(["liquid", "also", "lowest temperature, °C", "highest temperature, °C", "source"]);
    expect(table).toHaveLength(1 + 11 + 10 + 2);
    const us = value("LIQUIDS") as readonly (readonly Cell[])[];
    expect(us[0]?.[2]).toBe("lowest temperature, °F");
    expect([us[1]?.[2], us[1]?.[3]]).toEqual([32, 662]);
  });

  it("names liquids that every liquid argument takes, over the range it gives", () => {
    for (const [name, , lowest, highest] of table.slice(1)) {
      const liquid = liquidNamed(name as string);
      expect(liquid.ok, name as string).toBe(true);
      if (!liquid.ok || typeof lowest !== "number" || typeof highest !== "number") continue;
      expect(liquid.value.at(lowest + 273.15 + 1e-6).ok).toBe(true);
      expect(liquid.value.at(lowest + 273.15 - 0.01).ok).toBe(false);
      expect(liquid.value.at(highest + 273.15 - 1e-6).ok).toBe(true);
      expect(liquid.value.at(highest + 273.15 + 0.01).ok).toBe(false);
    }
  });
});
