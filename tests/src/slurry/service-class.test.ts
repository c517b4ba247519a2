import { describe, expect, it } from "vitest";
import { serviceClassesFor } from "../../../src/slurry/service-class.ts";
import { SERVICE_CLASSES } from "../../../src/tables/slurry-service-classes.ts";

describe("slurry service classes", () => {
  it("are four, from light to very heavy", () => {
    expect(SERVICE_CLASSES.map(({ service }) => service)).toEqual(["light", "medium", "heavy", "very heavy"]);
  });

  // From memory of the standard, three spots; not held against it yet.
  it.each([
    [1, 123, 43, 31],
    [3, 52, 33, 26],
    [4, 40, 28, 23],
  ] as const)("suggest for class %d the limits remembered", (serviceClass, headPerStage, metal, elastomer) => {
    expect(SERVICE_CLASSES[serviceClass - 1]).toMatchObject({ serviceClass, headPerStage, metal, elastomer });
  });

  // Class 2: 66 m a stage, 38 m/s metal, 28 m/s elastomer.
  it.each([
    ["both limits", 66, 28, "within"],
    ["more head", 66.1, 28, "head above"],
    ["too fast for elastomer", 66, 38, "tip speed above for elastomer"],
    ["too fast for both", 66, 38.1, "tip speed above for metal and elastomer"],
    ["too much of all", 66.1, 38.1, "head above; tip speed above for metal and elastomer"],
  ])("judge %s", (_, headPerStage, tipSpeed, verdict) => {
    const judged = serviceClassesFor({ headPerStage, tipSpeed });
    expect(judged.ok && judged.value[1]?.verdict).toBe(verdict);
    expect(judged.findings.map(({ code, kind }) => `${kind} ${code}`)).toEqual(["check service-class-from-memory"]);
  });

  it.each([{ tipSpeed: -1 }, { headPerStage: -1 }])("are refused for %o", (change) => {
    expect(serviceClassesFor({ headPerStage: 66, tipSpeed: 38, ...change }).ok).toBe(false);
  });
});
