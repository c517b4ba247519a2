import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { entryNamed } from "../../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../../shared/catalogue/entry.ts";
import type { Argument } from "../../../shared/cells/cell.ts";

function refusal(name: string, ...args: readonly Argument[]): string {
  const outcome = call(entryNamed(name) as Entry, args);
  if (outcome.ok) throw new Error(`${name} answers`);
  return outcome.error.message ?? "";
}

describe("a refusal says what would do", () => {
  it("of a number that can be read in two ways: the whole amount, with its unit, both ways", () => {
    expect(refusal("VELOCITY", "1,200 m3/h", "6in sch40")).toBe(
      "Flow: “1,200 m3/h” can be read in two ways; write “1200 m3/h” or “1.200 m3/h”.",
    );
  });

  it("of a fitting that no name is near: where the names stand, and the coefficient", () => {
    expect(refusal("FITTINGK", "zzzz", "6in sch40")).toBe(
      "Fitting “zzzz” is not known; take a name that FITTINGS lists, or give the coefficient of each, such as “K 0.3”.",
    );
  });

  it("of what the argument is, in its own terms: head, two runs, a flow above 0, one fitting", () => {
    expect(refusal("HEADPRESSURE", -50)).toMatch(/^Head must be at least [-−]34\.0 ft; [-−]50 ft was given/);
    const row = ["6in sch40", 100];
    expect(refusal("PARALLELRUNS", 100, [row])).toMatch(/^At least two runs are needed/);
    expect(refusal("BRANCHFLOWS", [[...row, null, 10]], 100)).toMatch(/^At least two branches are needed/);
    const curve = [
      [0, 72],
      [1000, 60],
    ];
    expect(refusal("SPEEDTABLE", 0, curve, curve)).toMatch(/^Flow must be above 0/);
    for (const given of ["1 knife gate", "elbow 90 x 3"]) {
      expect(refusal("FITTINGK", given, "6in sch40"), given).toMatch(/one fitting without a number, such as “/);
    }
  });

  it("of a metal without a flange rating: the rated ones, not as if they were near", () => {
    expect(refusal("FLANGECLASS", "aluminum", 100)).not.toContain("nearest");
    expect(refusal("FLANGECLASS", "aluminum", 100)).toContain('"ductile iron"');
  });

  it("of a hose without its kind: the hoses of that size first", () => {
    expect(refusal("BORE", "10in hose")).toMatch(/nearest known: "10in suction hose", "10in discharge hose"/);
  });
});

describe("a figure that nobody has compared with its standard", () => {
  it("says so in one wording, in the lists and beside the answer", () => {
    for (const name of ["FLANGERATINGS", "CASTINGS", "FLYWHEELHOUSINGS", "MOTORFRAMES"]) {
      const outcome = call(entryNamed(name) as Entry, []);
      if (!outcome.ok) throw new Error(outcome.error.message);
      const texts = (outcome.value as readonly (readonly unknown[])[]).flat().map(String);
      expect(
        texts.some((text) => text.includes("not yet verified against the standard")),
        name,
      ).toBe(true);
      expect(
        texts.filter((text) => text.includes("from memory")),
        name,
      ).toEqual([]);
    }
    const notes = call(entryNamed("NOTES") as Entry, ["FLANGERATING", "ductile iron", "300 NPS 6", 100]);
    expect(notes.ok && notes.value).toMatch(/Class 300.*not yet verified against the standard, no second source/);
  });
});
