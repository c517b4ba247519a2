import { describe, expect, it } from "vitest";
import { decodeDuty } from "../../../../shared/duty/decode.ts";
import type { DutyText } from "../../../../shared/duty/duty-text.ts";
import { loadDuty, saveDuty } from "../../../../shared/duty/saved.ts";
import { listOfAmounts } from "../../../../shared/duty/sums/amount-list.ts";
import { settleSums, sumsOf } from "../../../../shared/duty/sums/settle-sums.ts";
import { sumTree } from "../../../../shared/duty/sums/sum-parser.ts";
import { QUARRY } from "../../../support/duty-of.ts";

function settled(duty: DutyText) {
  return settleSums(duty, sumsOf(duty), sumTree);
}

function withFields(fields: Partial<DutyText["fields"]>, duty: DutyText = QUARRY): DutyText {
  return { ...duty, fields: { ...duty.fields, ...fields } };
}

describe("the sums of a duty", () => {
  it("stand in its boxes as typed, with what they come to, and are read by that", () => {
    const [row, ...rows] = QUARRY.dischargeLine;
    const typed = withFields(
      { flow: "2*500", deliveryLevel: "=120+35" },
      {
        ...QUARRY,
        dischargeLine: [{ ...(row as (typeof QUARRY.dischargeLine)[0]), length: "3*40 + 12'6\"" }, ...rows],
      },
    );
    const { duty, refused } = settled(typed);
    expect(refused.size).toBe(0);
    expect(duty.fields.flow).toBe("2*500 = 1000");
    expect(duty.fields.deliveryLevel).toBe("=120+35 = 155");
    expect(duty.dischargeLine[0]?.length).toBe("3*40 + 12'6\" = 132.5 ft");
    const plain = decodeDuty(withFields({ flow: "1000", deliveryLevel: "155" }, duty)).duty;
    const read = decodeDuty(duty).duty;
    expect([read.flow, read.deliveryLevel]).toEqual([plain.flow, plain.deliveryLevel]);
    expect(read.dischargeLine[0]?.segment?.length).toBeCloseTo(132.5 * 0.3048, 12);
    // Worked out once more it is the same duty.
    expect(settled(duty).duty).toBe(duty);
  });

  it("lose an answer that they do not give, and one that nobody can work out", () => {
    const { duty, refused } = settled(withFields({ flow: "2*600 = 1000", sourceLevel: "3/0 = 7" }));
    expect(duty.fields.flow).toBe("2*600 = 1200");
    expect(duty.fields.sourceLevel).toBe("3/0");
    expect(refused.get("sourceLevel")?.code).toBe("sum-divides-by-zero");
    expect(decodeDuty(duty).findings.get("sourceLevel")?.[0]?.code).toBe("sum-pending");
  });

  it("keep the unit their bare figures were read in when the unit set changes", () => {
    const { duty } = settled(withFields({ deliveryLevel: "3*40 + 12'6\"" }));
    expect(settled({ ...duty, unitSet: "METRIC" }).duty.fields.deliveryLevel).toBe("3*40 + 12'6\" = 132.5 ft");
  });

  it("are left as typed where they cannot be worked out here", () => {
    const typed = withFields({ flow: "2*500" });
    const { duty, refused } = settleSums(typed, sumsOf(typed), undefined);
    expect(duty).toBe(typed);
    expect(refused.get("flow")?.code).toBe("sum-not-loaded");
  });

  it("are none in texts, and in figures that read without them", () => {
    const duty = withFields({ customer: "2*3", flow: "1000", npshRequired: "1/2 ft", sourceLevel: "-5" });
    expect(sumsOf(duty)).toEqual([]);
  });

  it("come back with a saved duty", () => {
    const { duty } = settled(withFields({ flow: "2*500" }));
    const loaded = loadDuty(saveDuty(duty));
    expect(loaded.ok && loaded.value.fields.flow).toBe("2*500 = 1000");
  });
});

describe("several lengths in one box", () => {
  it.each([
    ["120 ft\n80 ft\n35", ["120 ft", "80 ft", "35"]],
    ["120, 80, 35", ["120", "80", "35"]],
    ["1,200, 80", ["1,200", "80"]],
    ["120 ft; 80 ft", ["120 ft", "80 ft"]],
  ])("are told one by one: %s", (text, parts) => {
    expect(listOfAmounts(text, "length", "US")).toEqual(parts);
  });

  it.each(["120", "1,200", "120, gate", "12'6\"", "", ",", "3+4, 5"])("are not seen in %s", (text) => {
    expect(listOfAmounts(text, "length", "US")).toBeUndefined();
  });
});
