import { describe, expect, it } from "vitest";
import { PACKAGE_SECTIONS } from "../../../shared/calc-sheet/duty-plan.ts";
import { FIELD_KEYS } from "../../../shared/duty/fields.ts";
import { STAGES } from "../../../taskpane/pane/stages.ts";

describe("the stages", () => {
  const steps = STAGES.flatMap((stage) => stage.steps);

  it("have each section of the package once", () => {
    const keys = steps.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    for (const { id } of PACKAGE_SECTIONS) expect(keys).toContain(id);
  });

  it("lead to every box of the duty", () => {
    const held = new Set(steps.flatMap(({ holds }) => holds ?? []));
    expect(FIELD_KEYS.filter((key) => !held.has(key))).toEqual([]);
  });
});
