import { describe, expect, it } from "vitest";
import { growsRougher } from "../../../shared/duty/aged-pipe.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import { dutyText } from "../../support/duty-of.ts";

/** The discharge pipe named so, and what is said at the box of the aged roughness. */
function said(pipe: string): readonly string[] {
  const dischargeLine = [{ ...dutyText().dischargeLine[0], pipe, length: "500 ft", fittings: "1 exit" }] as const;
  const { findings } = decodeDuty(dutyText({ agedRoughness: "0.3 mm" }, { dischargeLine }));
  return (findings.get("agedRoughness") ?? []).map(({ kind, code }) => `${kind} ${code}`);
}

describe("the roughness of aged pipe", () => {
  it("leaves a pipe that goes by its C as it is, and says so", () => {
    expect(said("8in sch40")).toEqual([]);
    expect(said("8in sch40 C 120")).toEqual(["check aged-roughness-not-of-c"]);
    expect(growsRougher({ roughness: 0, hazenWilliams: 120 }, 3e-4)).toBe(false);
    expect(growsRougher({ roughness: 0 }, 3e-4)).toBe(true);
  });
});
