import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { entryNamed } from "../../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../../shared/catalogue/entry.ts";
import type { Argument } from "../../../shared/cells/cell.ts";

function outcomeOf(id: string, ...args: readonly Argument[]): ReturnType<typeof call> {
  return call(entryNamed(id) as Entry, [...args]);
}

/** The verdict of a material in a ranked list. */
function verdictOf(material: RegExp, ...args: readonly Argument[]): unknown {
  const outcome = outcomeOf("WETTEDPARTS", ...args);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return (outcome.value as readonly (readonly unknown[])[]).find(([, , name]) => material.test(String(name)))?.[3];
}

describe("a limit stated in °C", () => {
  // The two scales by definition: °F = 1.8 °C + 32.
  it.each([
    { fahrenheit: 77, celsius: 25, material: /^cast 316/, chlorides: 1000 },
    { fahrenheit: 140, celsius: 60, material: /^ductile iron$/, chlorides: 50 },
    { fahrenheit: 176, celsius: 80, material: /^NBR/, chlorides: 50 },
  ])(
    "gives $material the same verdict at $fahrenheit °F as at $celsius °C",
    ({ fahrenheit, celsius, material, chlorides }) => {
      const us = verdictOf(material, 7, fahrenheit, chlorides, 0, "soft");
      expect(us).toBe(verdictOf(material, 7, celsius, chlorides, 0, "soft", null, null, null, null, "SI"));
      expect(us).toMatch(/^suits/);
    },
  );

  it("takes the end of a range in either", () => {
    // ISO 3046-1 as held here: air from −40 to 60 °C.
    expect(outcomeOf("ENGINESITEPOWER", 100, 0, 140, "turbo").ok).toBe(true);
    expect(outcomeOf("ENGINESITEPOWER", 100, 0, 60, "turbo", "SI").ok).toBe(true);
    expect(outcomeOf("ENGINESITEPOWER", 100, 0, 141, "turbo").ok).toBe(false);
  });

  it("leaves a motor its rating at 3300 ft, and not above", () => {
    const factorAt = (feet: number): unknown => {
      const outcome = outcomeOf("MOTORDATA", 50, 1770, null, "NEMA", null, feet);
      return outcome.ok ? (outcome.value as readonly (readonly unknown[])[])[1]?.[6] : outcome;
    };
    // NEMA MG 1 and IEC 60034-1: 1000 m (3300 ft).
    expect(factorAt(3300)).toBe(1);
    expect(factorAt(3400)).toBeLessThan(1);
  });
});

describe("what is refused", () => {
  it.each([
    { why: "materials colder than −30 °C", args: ["WETTEDPARTS", 7, -31, 50, 0, "soft", null, null, null, null, "SI"] },
    { why: "materials hotter than 300 °C", args: ["WETTEDPARTS", 7, 301, 50, 0, "soft", null, null, null, null, "SI"] },
    { why: "NPS 22, which ASME B16.5 does not have", args: ["FLANGERATING", "A395", "150 NPS 22", 100] },
    { why: "a number for a material group without its point", args: ["FLANGERATING", 22, 150, 100] },
    { why: "a minimum sheave of nothing", args: ["BELTDRIVE", 30, 1460, 200, 250, 0.8, 0, "SI"] },
  ])("$why", ({ args: [id, ...args] }) => {
    expect(outcomeOf(String(id), ...args).ok).toBe(false);
  });

  it.each([
    { why: "the sizes beside NPS 22", args: ["FLANGERATING", "A395", "150 NPS 24", 100] },
    { why: "a group with its point", args: ["FLANGERATING", 2.2, 150, 100] },
    { why: "−30 and 300 °C", args: ["WETTEDPARTS", 7, 300, 50, 0, "soft", null, null, null, null, "SI"] },
  ])("but not $why", ({ args: [id, ...args] }) => {
    expect(outcomeOf(String(id), ...args).ok).toBe(true);
  });
});
