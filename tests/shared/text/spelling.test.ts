import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { CATALOGUE, entryNamed } from "../../../shared/catalogue/catalogue.ts";
import { FITTINGK } from "../../../shared/catalogue/entries/pipe-and-friction.ts";
import type { Entry } from "../../../shared/catalogue/entry.ts";
import { type Argument, isRange } from "../../../shared/cells/cell.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import { spelt } from "../../../shared/text/spelling.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { liquidNamed } from "../../../src/liquid/liquid-name.ts";
import { castingNamed } from "../../../src/material/casting-name.ts";
import { makeUpNamed } from "../../../src/material/make-up.ts";
import { particleNamed } from "../../../src/material/particle.ts";
import { fittingNamed } from "../../../src/pipework/fitting-name.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { boltFinishNamed } from "../../../src/pressure/bolt-finish.ts";
import { gasketNamed } from "../../../src/pressure/gasket-name.ts";
import { pressureMaterialNamed } from "../../../src/pressure/pressure-material.ts";
import { inUnits } from "../../support/cells.ts";
import { foreignWords } from "../../support/spelling.ts";

// Spellings: any dictionary of British and of American English.
describe("spelling by unit set", () => {
  it.each([
    ["Vapour pressure of grey-iron pumps, 3 litres", "Vapor pressure of gray-iron pumps, 3 liters"],
    ["GALVANISED centreline; Sulphuric", "GALVANIZED centerline; Sulfuric"],
    ["two tonnes, 5 mm, meter, disc", "two tonnes, 5 mm, meter, disc"],
    ["vapourPressure, Greyhound, Litreage", "vapourPressure, Greyhound, Litreage"],
  ])("%s", (british, american) => {
    expect(spelt(british, "US")).toBe(american);
    for (const units of ["SI", "METRIC"] as const) expect(spelt(british, units)).toBe(british);
  });

  it("says the same again, however many texts came between", () => {
    for (let i = 0; i < 10_050; i += 1) {
      expect(spelt(`${i} litres`, "US")).toBe(`${i} liters`);
      expect(spelt("centre", "US")).toBe("center");
    }
    expect(spelt("0 litres", "US")).toBe("0 liters");
  });

  it("leaves what was typed as it was typed", () => {
    const finding = {
      code: "name-unknown",
      kind: "error",
      subject: "vapour pressure",
      given: "grey harbour metal",
      suggestions: ["grey iron"],
    } as const;
    expect(findingText(finding, "US")).toMatch(/^Vapor pressure .*“grey harbour metal”.*gray iron/);
    expect(findingText(finding, "SI")).toMatch(/^Vapour pressure .*“grey harbour metal”.*grey iron/);
  });
});

/** A pump whose suction stands under a vacuum of 5 psi, by the name it was given. */
it("leaves the name of a pump as it was given, in findings and in refusals", () => {
  const entry = entryNamed("NOZZLECLASSES") as Entry;
  const said = (name: string, suction: number) => {
    const pumps = [
      ["pump", "maximum head"],
      [name, 400],
    ] as const;
    const outcome = call(entry, [pumps, suction, "grey iron", 125, 1, 0, null, null, 70]);
    return [...outcome.findings.map((finding) => findingText(finding, "US")), outcome.ok ? "" : outcome.error.message];
  };
  expect(said("Harbour 6", -5).join(" ")).toContain("Suction of Harbour 6 is under a vacuum of 10.2 inHg");
  expect(said("Harbour 6", -5).join(" ")).not.toContain("Harbor");
  const refused = call(entry, [
    [
      ["pump", "maximum head"],
      ["Harbour 6", -400],
    ],
    0,
    "A395",
    150,
  ]);
  expect(refused.ok ? "" : refused.error.message).toMatch(/Harbour 6/);
});

const EXAMPLES = CATALOGUE.filter(({ unitless }) => !unitless).flatMap((entry) =>
  entry.examples.map(({ args }) => ({ entry, args })),
);

/** Texts of an answer; titles of works are spelt as their publishers spell them. */
function textsOf({ answer }: Entry, value: Argument): readonly string[] {
  const columns = "columns" in answer ? answer.columns : [];
  if (!isRange(value)) return [String(value)];
  return value.flatMap((row) => row.filter((_, i) => columns[i]?.isTitle !== true).map(String));
}

describe.each<UnitSetName>(["US", "SI", "METRIC"])("what functions answer in %s", (units) => {
  it("has no word in the other spelling, but those that the call brought", () => {
    const found = EXAMPLES.flatMap(({ entry, args }) => {
      const given = inUnits(entry, args, units);
      const outcome = call(entry, given);
      const notes = outcome.findings.map((finding) => findingText(finding, units));
      const answer = outcome.ok ? textsOf(entry, outcome.value) : [outcome.error.message ?? ""];
      return foreignWords([...answer, ...notes], given, units).map((word) => `${entry.id}: ${word}`);
    });
    expect([...new Set(found)]).toEqual([]);
  });
});

describe("names are read in both spellings", () => {
  it.each<[read: (text: string) => unknown, british: string, american: string]>([
    [(text) => pressureMaterialNamed(text), "grey iron", "gray iron"],
    [(text) => pressureMaterialNamed(text), "nickel-aluminium bronze", "nickel-aluminum bronze"],
    [(text) => castingNamed(text, "casting"), "Grey iron", "Gray iron"],
    [(text) => pipeNamed(text), "ID 154 mm galvanised steel", "ID 154 mm galvanized steel"],
    [(text) => pipeNamed(text), "6in quick-connect aluminium", "6in quick-connect aluminum"],
    [(text) => fittingNamed(text, "fitting"), "mitre 45", "miter 45"],
    [(text) => fittingNamed(text, "fitting"), "centre-guided check", "center-guided check"],
    [(text) => boltFinishNamed(text), "hot-dip galvanised, dry", "hot-dip galvanized, dry"],
    [(text) => boltFinishNamed(text), "molybdenum disulphide paste", "molybdenum disulfide paste"],
    [(text) => gasketNamed(text), "fibre 1/16 in", "fiber 1/16 in"],
    [(text) => particleNamed(text, "solids"), "haematite", "hematite"],
    [(text) => liquidNamed(text), "demineralised water", "demineralized water"],
    [(text) => makeUpNamed(text, "constituents"), "sulphuric acid 5 %", "sulfuric acid 5 %"],
    [(text) => makeUpNamed(text, "constituents"), "hydrogen sulphide", "hydrogen sulfide"],
  ])("%#: %s", (read, british, american) => {
    const first = read(british) as { readonly ok: boolean; readonly value?: unknown };
    const second = read(american) as typeof first;
    expect(first.ok).toBe(true);
    const withoutName = (value: unknown): string => JSON.stringify(value).replaceAll(american, british);
    expect(withoutName(second.value)).toBe(withoutName(first.value));
  });

  it("by functions", () => {
    expect(call(FITTINGK, ["miter 90", "6in sch40"])).toEqual(call(FITTINGK, ["mitre 90", "6in sch40"]));
  });
});
