import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { entryNamed } from "../../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../../shared/catalogue/entry.ts";
import type { Argument } from "../../../shared/cells/cell.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import { amountText } from "../../../shared/text/words.ts";
import { UNIT_SET_NAMES } from "../../../src/basis/quantities.ts";
import { amount, type Finding } from "../../../src/basis/result.ts";
import { inUnits, refusal } from "../../support/cells.ts";

function said(name: string, code: string, args: readonly Argument[]): readonly string[] {
  const entry = entryNamed(name) as Entry;
  return UNIT_SET_NAMES.map((units) => {
    const given = inUnits(entry, args, units);
    const found = call(entry, given).findings.find((finding) => finding.code === code);
    return found === undefined ? "" : findingText(found, units);
  });
}

describe("a vacuum is told in inHg or mbar", () => {
  // 1 inHg = 3386.389 Pa = 33.86389 mbar (NIST SP 811).
  it.each([
    [25 * 3386.389, "25 inHg", "847 mbar"],
    [10_000, "3.0 inHg", "100 mbar"],
    [50_000, "14.8 inHg", "500 mbar"],
  ])("%d Pa", (pascals, us, metric) => {
    const texts = UNIT_SET_NAMES.map((units) => amountText(amount("vacuum", pascals), units));
    expect(texts).toEqual([us, metric, metric]);
  });

  it("of a blank-off that nobody stated", () => {
    const line = [["6in sch40", "4.572 m"]];
    const [us, ...others] = said("PRIMETIME", "blank-off-assumed", [line, "3 m", "24 L/s", "50 L"]);
    expect(us).toMatch(/a vacuum of 25 inHg at sea level is taken.* at 27 inHg, the better end/);
    for (const text of others) expect(text).toMatch(/a vacuum of 847 mbar at sea level is taken.* at 914 mbar, the/);
  });

  it.each<[Finding, RegExp, RegExp]>([
    [
      {
        code: "suction-vacuum-as-zero",
        kind: "check",
        subject: "suction of pump 2",
        found: amount("vacuum", 33_863.89),
      },
      /under a vacuum of 10 inHg/,
      /under a vacuum of 339 mbar/,
    ],
    [
      {
        code: "booster-below-atmosphere",
        kind: "limit",
        subject: "booster",
        found: amount("vacuum", 33_863.89),
        limit: { quantity: "gaugePressure", value: 30_000, side: "at least" },
        cites: { source: "practice", at: "x" },
      },
      /a vacuum of 10 inHg at its inlet.*keep 4\.4 psig there/,
      /a vacuum of 339 mbar at its inlet.*keep (30 kPa|0\.30? bar)\(g\) there/,
    ],
  ])("%#", (finding, us, others) => {
    expect(findingText(finding, "US")).toMatch(us);
    for (const units of ["SI", "METRIC"] as const) expect(findingText(finding, units)).toMatch(others);
  });

  it("where the engine finds it at the pump inlet", () => {
    // 20 ft of water of 68 °F: 62.32 × 20/144 = 8.655 psi = 17.62 inHg; 1 gpm loses next to nothing.
    expect(refusal("NPSHA", "1 gpm", "20 ft", [["6in lay-flat", 40]])).toMatch(
      /collapses under the vacuum of 17\.6 inHg/,
    );
  });
});

// 1.893 of the air at sea level, 14.696 psia, less that air: 13.1 psig.
it("a motive pressure stated by gauge is refused by gauge", () => {
  expect(refusal("EDUCTORAIR", 0.25, 10)).toMatch(/Motive pressure must be at least 13 psig; 10 psig was given/);
  expect(refusal("EDUCTORAIR", 0.25, 13.05)).toMatch(/at least 13\.1\d* psig; 13\.05 psig/);
});
