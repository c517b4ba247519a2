import { describe, expect, it } from "vitest";
import { SERVICE_CLASSES, type ServiceClassInputs, serviceLimits } from "../../../src/slurry/service-class.ts";

const base: ServiceClassInputs = { serviceClass: 2, wearParts: "metal", headPerStage: 66, tipSpeed: 38 };

describe("slurry service classes", () => {
  it("holds four, from light to very heavy", () => {
    expect(Object.keys(SERVICE_CLASSES)).toEqual(["1", "2", "3", "4"]);
  });

  // From memory of the standard, three spots; not held against it yet.
  it.each([
    [1, 123, 43, 31],
    [3, 52, 33, 26],
    [4, 40, 28, 23],
  ] as const)("suggests for class %d the limits remembered", (serviceClass, head, metal, elastomer) => {
    const { headPerStage, tipSpeed } = SERVICE_CLASSES[serviceClass];
    expect([headPerStage, tipSpeed.metal, tipSpeed.elastomer]).toEqual([head, metal, elastomer]);
  });

  it.each([
    ["both limits", {}, []],
    ["more head", { headPerStage: 66.1 }, ["head per stage"]],
    ["more speed", { tipSpeed: 38.1 }, ["impeller tip speed"]],
    ["elastomer", { wearParts: "elastomer" }, ["impeller tip speed"]],
    ["slower elastomer", { wearParts: "elastomer", tipSpeed: 28 }, []],
  ] as const)("remarks at %s", (_, change, subjects) => {
    const { findings } = serviceLimits({ ...base, ...change });
    expect(findings.map(({ subject }) => subject)).toEqual(subjects);
    for (const { severity } of findings) expect(severity).toBe("caution");
  });

  it("refuses a negative speed", () => {
    expect(serviceLimits({ ...base, tipSpeed: -1 }).ok).toBe(false);
  });
});
