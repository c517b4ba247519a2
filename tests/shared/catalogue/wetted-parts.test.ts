import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Argument } from "../../../shared/cells/cell.ts";
import { hardestLeast } from "../../../src/material/wear.ts";
import { CASTINGS } from "../../../src/tables/materials-cast.ts";
import { cell, refusal, remarks } from "../../support/cells.ts";

type Rows = readonly (readonly unknown[])[];

/** Clean neutral water at 20 °C with 50 mg/L of chloride, in SI, with what a case changes. */
const BASE = {
  pH: 7,
  temperature: 20,
  chlorides: 50,
  solids: 2,
  hardness: "soft",
  particleSize: 5,
  freePassage: 50,
  oxidiser: "0 mg/L",
  makeUp: "nothing else",
} satisfies Record<string, Argument>;
type Change = Partial<Record<keyof typeof BASE, Argument>>;

const argumentsOf = (change: Change): readonly Argument[] => [...Object.values({ ...BASE, ...change }), "SI"];
const rowsOf = (change: Change = {}): Rows => cell("WETTEDPARTS", ...argumentsOf(change)) as Rows;
const verdictOf = (material: string, change: Change): unknown => rowsOf(change).find((row) => row[2] === material)?.[3];
const firstMetal = (change: Change): unknown => rowsOf(change)[1]?.[2];

const IRON = "ductile iron";
const GREY = "grey iron";
const WHITE = "high-chrome white iron";
const CAST_316 = "cast 316 stainless";
const DUPLEX = "cast duplex CD4MCuN";
const BRONZE = "nickel-aluminium bronze";
const LINING = "natural rubber lining";

describe("WETTEDPARTS", () => {
  it("lists every kind of part in turn, best first in each", () => {
    const [headings, ...rows] = rowsOf();
    expect(headings).toEqual(["kind", "rank", "material", "verdict", "parts", "reasons", "cautions"]);
    const counts = new Map<unknown, number>();
    for (const [kind] of rows) counts.set(kind, (counts.get(kind) ?? 0) + 1);
    expect([...counts]).toEqual([
      ["metal", 10],
      ["lining", 1],
      ["elastomer", 5],
      ["seal faces", 5],
      ["bolts", 3],
      ["line", 5],
      ["dry parts", 1],
    ]);
    expect(rows.at(-1)?.slice(2, 4)).toEqual(["standard material", "left standard"]);
  });
});

describe("the first five arguments", () => {
  it("takes chlorides in ppm as mg/L, and says so", () => {
    expect(remarks("WETTEDPARTS", 7, 68, "50 ppm", 3, "soft")).toContain("check chlorides-by-mass");
    // 1001 mg/L rules 316 out, 999 does not.
    const of316 = (ppm: string): unknown =>
      (cell("WETTEDPARTS", 7, "20 degC", ppm, 0, null, null, null, 0, "none") as Rows).find(
        (row) => row[2] === CAST_316,
      )?.[3];
    expect(of316("1001 ppm")).toBe("not suited");
    expect(of316("999 ppm")).toBe("suits");
  });

  it("lists what is missing and does not guess", () => {
    expect(remarks("WETTEDPARTS", 7)).toContain("check material-data-missing");
    const blank = cell("WETTEDPARTS", 7) as Rows;
    expect(blank.find((row) => row[2] === CAST_316)?.[3]).toBe("not judged");
    expect(blank.find((row) => row[2] === IRON)?.[3]).toBe("not judged");
    expect((cell("WETTEDPARTS", 7, 68, 50) as Rows)[1]?.slice(2, 4)).toEqual([IRON, "suits with care"]);
    expect(remarks("WETTEDPARTS", 7, 0, 0, 0).filter((one) => one === "check zero-may-be-blank")).toHaveLength(3);
  });

  it("speaks in the reader's units", () => {
    expect(JSON.stringify(cell("WETTEDPARTS", 7, 158, 50, 0))).toContain("140 °F");
    expect(JSON.stringify(cell("WETTEDPARTS", 7, 70, 50, 0, null, null, null, null, null, "SI"))).toContain("60 °C");
  });

  it.each([
    ["a pH of 15", [15], /#VALUE! pH must be at most 14; 15 was given/],
    ["70 % of solids", [7, 68, 50, 70], /Solids by weight must be below 70 %; 70 % was given/],
    ["unknown particles", [7, 68, 50, 3, "moonlight"], /#N\/A Hardness “moonlight” is not known/],
    ["a hardness of 15", [7, 68, 50, 3, 15], /Hardness “15” is no hardness/],
  ])("refuses %s", (_, args, words) => {
    expect(refusal("WETTEDPARTS", ...args)).toMatch(words);
  });
});

// Every limit here is common practice, no source, unless it says otherwise.
describe("what the further arguments decide", () => {
  it.each([
    ["5 mg/L of oxidiser leaves 316", CAST_316, { oxidiser: 5 }, "suits with care"],
    ["more than 5 mg/L rules 316 out", CAST_316, { oxidiser: 5.01 }, "not suited"],
    ["2 mg/L of oxidiser leaves 316 free", CAST_316, { oxidiser: 2 }, "suits"],
    ["more than 5 mg/L leaves duplex, with care", DUPLEX, { oxidiser: "6 ppm" }, "suits with care"],
    ["ammonia rules copper alloys out", BRONZE, { makeUp: "ammonia" }, "not suited"],
    ["ammonia leaves iron", IRON, { makeUp: "ammonia" }, "suits"],
    // ISO 15156: not for sour service as pressure parts.
    ["sour gas rules grey iron out", GREY, { makeUp: "H2S" }, "not suited"],
    ["sour gas rules white iron out", WHITE, { makeUp: "H2S", solids: 30 }, "not suited"],
    ["sour gas rules copper alloys out", BRONZE, { makeUp: "H2S" }, "not suited"],
    ["sour gas leaves ductile iron, with care", IRON, { makeUp: "H2S" }, "suits with care"],
    ["particles below 6 mm leave a lining", LINING, { particleSize: 5.9 }, "suits"],
    ["particles of 6 mm cut a lining", LINING, { particleSize: 6 }, "not suited"],
    ["oil rules a lining out", LINING, { makeUp: "oil" }, "not suited"],
    ["65 °C leaves a lining", LINING, { temperature: 65 }, "suits"],
    ["above 65 °C a lining is near its limit", LINING, { temperature: 65.1 }, "suits with care"],
    ["above 70 °C a lining is out", LINING, { temperature: 70.1 }, "not suited"],
    ["75 mm leaves white iron", WHITE, { particleSize: 75, freePassage: 300, solids: 30 }, "suits"],
    ["above 75 mm white iron breaks", WHITE, { particleSize: 76, freePassage: 300, solids: 30 }, "not suited"],
    ["strong acid by name rules EPDM out", "EPDM", { pH: 0, makeUp: "sulphuric acid 80 %" }, "not suited"],
    ["a base by name rules FKM out", "FKM", { makeUp: "ammonia" }, "not suited"],
    ["PTFE stands it", "PTFE", { makeUp: "ammonia" }, "suits"],
  ] satisfies readonly (readonly [string, string, Change, string])[])("%s", (_, material, change, verdict) => {
    expect(verdictOf(material, change)).toBe(verdict);
  });

  it("offers no metal or lining for hydrofluoric acid and says to ask", () => {
    const wet = rowsOf({ makeUp: "hydrofluoric acid" }).filter(([kind]) => kind === "metal" || kind === "lining");
    expect(wet).toHaveLength(11);
    for (const row of wet) expect(["not suited", "not judged"]).toContain(row[3]);
    expect(remarks("WETTEDPARTS", ...argumentsOf({ makeUp: "hydrofluoric acid" }))).toContain(
      "check no-material-given",
    );
    expect(remarks("WETTEDPARTS", ...argumentsOf({}))).not.toContain("check no-material-given");
  });

  it("warns of hydrogen sulphide as a danger to people", () => {
    const said = (makeUp: string) => remarks("WETTEDPARTS", ...argumentsOf({ makeUp }));
    expect(said("hydrogen sulphide")).toContain("safety hydrogen-sulphide-gas");
    expect(said("raw sewage")).toContain("safety constituent-danger");
    expect(said("nothing else").filter((one) => one.startsWith("safety"))).toEqual([]);
  });

  it("names a first choice for each part", () => {
    const said = (change: Change): string =>
      String(cell("NOTES", "WETTEDPARTS", ...argumentsOf(change)))
        .split("\n")
        .find((line) => line.includes("by part")) ?? "";
    // 3 % of hard sand: iron with hardened wear parts; the sleeve in stainless.
    expect(said({ solids: 3, hardness: "hard sand" })).toContain(
      `casing ${IRON}; impeller ${IRON}; wear parts ${WHITE}; shaft sleeve cast 13Cr-4Ni`,
    );
    expect(said({ solids: 30, hardness: "hard sand" })).toContain(`impeller ${WHITE}`);
    // What is not judged is no choice: nothing is named for strong acid of unknown make-up.
    expect(said({ pH: 2, makeUp: null })).toBe("");
  });
});

describe("solids and what is missing", () => {
  it.each([
    [0, "soft", IRON],
    [0, "quartz", IRON],
    [4.9, "soft", IRON],
    [5, "quartz", WHITE],
    [20, "soft", IRON],
    [20.1, "soft", WHITE],
    [69.9, "soft", WHITE],
  ])("%s %% of %s ranks %3$s first", (solids, hardness, first) => {
    expect(firstMetal({ solids, hardness })).toBe(first);
  });

  it("offers no metal at the ends of the pH scale unless the liquid is named", () => {
    const offered = (change: Change): boolean =>
      rowsOf(change).some(([kind, , , verdict]) => kind === "metal" && String(verdict).startsWith("suits"));
    for (const pH of [0, 2, 3.9, 12.1, 14]) {
      for (const solids of [0, 35]) expect(offered({ pH, solids, hardness: "sand" }), `${pH} ${solids}`).toBe(false);
    }
    expect(offered({ pH: 2.9, makeUp: "acid mine water" })).toBe(true);
    expect(offered({ pH: 13, makeUp: "caustic" })).toBe(true);
  });

  it("lists what is missing, and nothing once all is stated", () => {
    const missing = (...args: readonly Argument[]): string => String(cell("NOTES", "WETTEDPARTS", ...args));
    const all = missing();
    for (const datum of [
      "pH",
      "temperature",
      "chlorides",
      "solids",
      "hardness",
      "size of the largest",
      "make-up",
      "oxidizer",
    ]) {
      expect(all).toMatch(new RegExp(`Still to be asked.*${datum}`));
    }
    expect(missing(...argumentsOf({ freePassage: null }))).toMatch(/Still to be asked.*: free passage/);
    expect(missing(...argumentsOf({}))).not.toContain("Still to be asked");
  });

  it.each([
    ["particles beyond the passage", { particleSize: 51 }, /#VALUE! Maximum particle size of 51 mm does not pass/],
    ["70 % of solids", { solids: 70 }, /must be below 70 %; 70 % was given/],
    ["a pH above 14", { pH: 14.1 }, /pH must be at most 14/],
    ["particles of no size", { particleSize: 0 }, /Maximum particle size must be above 0/],
    ["a negative oxidiser", { oxidiser: -1 }, /Oxidiser must be at least 0/],
    ["what is not known", { makeUp: "moonlight" }, /#N\/A Constituents “moonlight” is not known/],
    ["nothing else beside something", { makeUp: "nothing else, oil" }, /give one of the two/],
  ] satisfies readonly (readonly [string, Change, RegExp])[])("refuses %s", (_, change, words) => {
    expect(refusal("WETTEDPARTS", ...argumentsOf(change))).toMatch(words);
  });

  it("lets through particles as large as the passage, with a caution above a third of it unless they are soft", () => {
    const near = (particleSize: number, hardness: string | null): boolean =>
      remarks("WETTEDPARTS", ...argumentsOf({ particleSize, freePassage: 60, hardness })).includes(
        "check particle-near-passage",
      );
    expect(near(20, "sand")).toBe(false);
    expect(near(20.1, "sand")).toBe(true);
    expect(near(20.1, null)).toBe(true);
    expect(near(20.1, "soft")).toBe(false);
    expect(near(60, "sand")).toBe(true);
  });

  it("takes sizes in inches and an oxidiser in ppm", () => {
    const us = (...rest: readonly Argument[]) => refusal("WETTEDPARTS", 7, 68, 50, 2, "soft", ...rest);
    expect(us(3, 2.5, "0 mg/L", "nothing else", "US")).toContain("3 in does not pass the impeller, 2.5 in");
    expect(remarks("WETTEDPARTS", ...argumentsOf({ oxidiser: "2 ppm" }))).toContain("check chlorides-by-mass");
    expect(remarks("WETTEDPARTS", ...argumentsOf({ oxidiser: 0 }))).toContain("check zero-may-be-blank");
  });

  it("never brings a softer metal to the front with more solids, whatever else is in the liquid", () => {
    const hardness = (change: Change): number => {
      const casting = CASTINGS.find(({ name }) => name === firstMetal(change));
      if (casting === undefined) throw new Error("no casting first");
      return hardestLeast(casting);
    };
    const share = fc.double({ min: 0, max: 0.69, noNaN: true });
    const duties = fc.record({
      pH: fc.double({ min: 0, max: 14, noNaN: true }),
      temperature: fc.option(fc.double({ min: 1, max: 105, noNaN: true })),
      chlorides: fc.option(fc.double({ min: 0, max: 25_000, noNaN: true })),
      hardness: fc.constantFrom(null, "soft", "quartz"),
      particleSize: fc.option(fc.double({ min: 0.1, max: 150, noNaN: true })),
      freePassage: fc.option(fc.constantFrom(150, 200)),
      oxidiser: fc.option(fc.double({ min: 0, max: 20, noNaN: true })),
      makeUp: fc.constantFrom(null, "nothing else", "ammonia", "H2S", "caustic", "nitric acid", "hydrofluoric acid"),
    });
    fc.assert(
      fc.property(duties, share, share, (duty, one, other) => {
        const few = hardness({ ...duty, solids: Math.min(one, other) });
        expect(hardness({ ...duty, solids: Math.max(one, other) })).toBeGreaterThanOrEqual(few);
      }),
      { numRuns: 300 },
    );
  });
});
