import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../../shared/catalogue/entry.ts";
import { filledExample } from "../../../shared/help/filled-example.ts";
import { formulaText } from "../../../shared/help/formula-text.ts";
import { UNIT_SET_NAMES } from "../../../src/basis/quantities.ts";

const entry = (id: string): Entry => CATALOGUE.find((one) => one.id === id) as Entry;
const typed = (id: string, set: "US" | "SI" | "METRIC"): string =>
  formulaText(entry(id), filledExample(entry(id), set).args);

describe("an example for a reader", () => {
  it.each(UNIT_SET_NAMES)("of %s answers, for every function", (set) => {
    const refused = CATALOGUE.flatMap((one) => {
      const outcome = call(one, filledExample(one, set).args);
      return outcome.ok ? [] : [`${one.id}: ${outcome.error.message}`];
    });
    expect(refused).toEqual([]);
  });

  it("is one of the trade where there is one in the reader's units", () => {
    expect(typed("FRICTIONHEAD", "US")).toBe('=DUTY.FRICTIONHEAD(1200, "10in HDPE DR17", 1800)');
    expect(typed("FRICTIONHEAD", "SI")).toBe('=DUTY.FRICTIONHEAD(60, "DN200 sch40", 400, , , "SI")');
  });

  // 1 US gpm is 0.22712 m³/h, 1 ft 0.3048 m (NIST SP 811, Appendix B): 1200 gpm, 1800 ft, in four figures.
  it("is turned into the reader's units where none is, and asks nothing in the units before", () => {
    expect(typed("HAZENHEAD", "METRIC")).toBe('=DUTY.HAZENHEAD(272.5, "10in HDPE DR17", 548.6, 150, "METRIC")');
    expect(filledExample(entry("HAZENHEAD"), "METRIC").asks).toBeUndefined();
  });

  it("names the units of the numbers in its ranges, which are left as they are", () => {
    const { args } = filledExample(entry("RANKPUMPS"), "METRIC");
    expect(args.at(-1)).toBe("US");
  });

  it("is a formula that a cell takes", () => {
    // Letters of a formula: ISO/IEC 29500 programs take 8,192.
    for (const one of CATALOGUE)
      expect(formulaText(one, filledExample(one, "US").args).length, one.id).toBeLessThan(8192);
  });
});
