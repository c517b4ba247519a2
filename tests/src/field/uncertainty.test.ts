import { describe, expect, it } from "vitest";
import { unitOf } from "../../../src/basis/units.ts";
import { INSTRUMENT_EXAMPLES, sizeOf, uncertaintyNamed } from "../../../src/field/uncertainty.ts";
import { FIELD_INSTRUMENTS, type Measured } from "../../../src/tables/field-instruments.ts";

const PSI = unitOf("psi").factor;

function read(text: string, of: Measured) {
  const found = uncertaintyNamed(text, of, "gauge");
  return found.ok ? found.value : found.findings.map(({ code }) => code);
}

const size = (text: string, of: Measured, reading: number): number => {
  const found = read(text, of);
  if (Array.isArray(found)) throw new Error(found.join());
  return sizeOf(found as Exclude<typeof found, readonly string[]>, reading);
};

describe("what an instrument is good for", () => {
  it("holds the kinds of the list in their order", () => {
    expect(FIELD_INSTRUMENTS).toHaveLength(12);
    expect(FIELD_INSTRUMENTS.map(({ kind, uncertainty }) => `${kind} ${uncertainty}`).slice(0, 5)).toEqual([
      "bourdon gauge 0.01",
      "test gauge 0.005",
      "pressure transmitter 0.0025",
      "magnetic meter 0.01",
      "clamp-on meter 0.05",
    ]);
  });

  it.each([
    // 1 % of 60 psi; half of that of a test gauge; of a compound gauge the whole of its scale.
    { text: "bourdon gauge 60 psi", reading: 30 * PSI, size: 0.6 * PSI },
    { text: "Test gauge 0 to 100 psi", reading: 30 * PSI, size: 0.5 * PSI },
    { text: "gauge -15 psi to 60 psi", reading: 0, size: 0.75 * PSI },
    { text: "transmitter 4 bar", reading: 1, size: 1000 },
    { text: "1 % of 60 psi", reading: 5, size: 0.6 * PSI },
    { text: "±0.5 psi", reading: 1e5, size: 0.5 * PSI },
    { text: "2 %", reading: 1e5, size: 2000 },
  ])("reads “$text” of a gauge", ({ text, reading, size: wanted }) => {
    expect(size(text, "pressure", reading)).toBeCloseTo(wanted, 6);
  });

  it.each([
    { text: "mag meter", of: "flow", part: 0.01 },
    { text: "Clamp-on", of: "flow", part: 0.05 },
    { text: "drop test", of: "flow", part: 0.03 },
    { text: "2,5 %", of: "flow", part: 0.025 },
    { text: "power analyser", of: "power", part: 0.015 },
    { text: "tacho", of: "speed", part: 0.001 },
  ] as const)("reads “$text” of $of", ({ text, of, part }) => {
    expect(size(text, of, 200)).toBeCloseTo(200 * part, 12);
  });

  it("refuses a gauge without its span, and what it does not know", () => {
    expect(read("bourdon gauge", "pressure")).toEqual(["gauge-span-missing"]);
    expect(read("bourdon gauge 60 to 0 psi", "pressure")).toEqual(["gauge-span-missing"]);
    expect(read("by eye", "flow")).toEqual(["name-unknown"]);
    expect(read("2 furlongs", "flow")).toEqual(["unit-unknown"]);
  });

  it("reads every example it offers", () => {
    for (const [of, texts] of Object.entries(INSTRUMENT_EXAMPLES)) {
      for (const text of texts) expect(read(text, of as Measured), text).not.toBeInstanceOf(Array);
    }
  });
});
