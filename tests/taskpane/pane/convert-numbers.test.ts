import { describe, expect, it } from "vitest";
import { convertNumbers, numbersThatDiffer } from "../../../taskpane/pane/convert-numbers.ts";
import { dutyText, type Fields } from "../../support/duty-of.ts";

const flanges = (fields: Fields, from: "US" | "SI" | "METRIC", to: "US" | "SI" | "METRIC") => {
  const { fields: found } = convertNumbers(dutyText(fields, { unitSet: from }), to);
  return { suction: found.suctionFlange, discharge: found.dischargeFlange, flangeClass: found.flangeClass };
};

// NPS and DN in pairs: ASME B36.10M and B16.5, from memory; DN is 25 times NPS from NPS 4 up.
describe("flange sizes in another unit set", () => {
  it.each([
    ["8", "US", "METRIC", "200"],
    ["20", "US", "METRIC", "500"],
    ["2.5", "US", "SI", "65"],
    ["3-1/2", "US", "SI", "3-1/2"],
    ["200", "METRIC", "US", "8"],
    ["20", "SI", "US", "3/4"],
    ["65", "METRIC", "US", "2-1/2"],
    ["225", "SI", "US", "DN225"],
    ["500", "SI", "METRIC", "500"],
    ["NPS 8", "US", "METRIC", "NPS 8"],
    ["DN200", "US", "METRIC", "DN200"],
    ["7", "US", "METRIC", "7"],
    ["", "US", "SI", ""],
  ] as const)("“%s” of %s is in %s “%s”", (text, from, to, wanted) => {
    expect(flanges({ suctionFlange: text, dischargeFlange: text }, from, to)).toMatchObject({
      suction: wanted,
      discharge: wanted,
    });
  });

  it.each([
    ["125 16", "US", "SI", "125 400"],
    ["125 400", "SI", "US", "125 16"],
    ["125 NPS 16", "US", "SI", "125 NPS 16"],
    ["PN16", "SI", "US", "PN16"],
    ["150", "US", "METRIC", "150"],
  ] as const)("beside a class: “%s” of %s is in %s “%s”", (text, from, to, wanted) => {
    expect(flanges({ flangeClass: text }, from, to).flangeClass).toBe(wanted);
  });

  it("are among what differs, and go there and back", () => {
    const typed = dutyText({ suctionFlange: "20", dischargeFlange: "NPS 6" }, { unitSet: "US" });
    const fields = numbersThatDiffer(typed, "METRIC").flatMap((place) => ("field" in place ? [place.field] : []));
    expect(fields).toContain("suctionFlange");
    expect(fields).not.toContain("dischargeFlange");
    expect(convertNumbers(convertNumbers(typed, "METRIC"), "US").fields.suctionFlange).toBe("20");
  });
});
