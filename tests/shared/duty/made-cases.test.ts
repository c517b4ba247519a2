import { describe, expect, it } from "vitest";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import { casesToMake, madeCases } from "../../../shared/duty/made-cases.ts";
import { dutyOf, dutyText, STRAIGHT_PUMP } from "../../support/duty-of.ts";

const RANGE = { leastStaticHead: "90 ft", greatestStaticHead: "112 ft", agedRoughness: "0.02 in" } as const;

describe("cases made of the range", () => {
  it("are its ends in new pipe and in aged, by the level of the source", () => {
    // The delivery stands at 100 ft.
    expect(madeCases(dutyOf(RANGE)).map(({ name, fields }) => [name, fields])).toEqual([
      ["minimum static head, new pipe", { sourceLevel: "10", pipe: "new" }],
      ["minimum static head, aged pipe", { sourceLevel: "10", pipe: "aged" }],
      ["maximum static head, new pipe", { sourceLevel: "-12", pipe: "new" }],
      ["maximum static head, aged pipe", { sourceLevel: "-12", pipe: "aged" }],
    ]);
    expect(madeCases(dutyOf({ agedRoughness: "0.02 in" })).map(({ name }) => name)).toEqual([
      "as stated, new pipe",
      "as stated, aged pipe",
    ]);
    expect(madeCases(dutyOf({ leastStaticHead: "95 ft" })).map(({ name }) => name)).toEqual(["minimum static head"]);
    expect(madeCases(dutyOf())).toEqual([]);
  });

  it("have one pump out where several share the flow, not where they stand in series", () => {
    const out = { name: "one pump out", hours: "", fields: { pumpsRunning: "2" } };
    expect(madeCases(dutyOf({ pumpsRunning: "3" }))).toEqual([out]);
    expect(madeCases(dutyOf({ pumpsRunning: "3", arrangement: "series" }))).toEqual([]);
  });

  it("read as the static heads they are made of, in any units", () => {
    for (const unitSet of ["US", "SI", "METRIC"] as const) {
      const typed = {
        ...dutyText({ ...RANGE, flow: "600 gpm", pumpLevel: "-2 ft", deliveryLevel: "100 ft" }),
        unitSet,
        pump: STRAIGHT_PUMP,
      };
      const cases = madeCases(decodeDuty(typed).duty);
      const { duty, isComplete } = decodeDuty({ ...typed, cases });
      expect(isComplete).toBe(true);
      const heads = duty.cases.map(({ duty: { deliveryLevel = 0, sourceLevel = 0 } }) => deliveryLevel - sourceLevel);
      [90, 90, 112, 112].forEach((head, i) => {
        expect(heads[i]).toBeCloseTo(head * 0.3048, 8);
      });
    }
  });

  it("are not made twice", () => {
    const duty = dutyOf({ leastStaticHead: "95 ft", pumpsRunning: "2" });
    const kept = [{ name: " One pump out", hours: "", fields: {} }];
    expect(casesToMake(duty, kept).map(({ name }) => name)).toEqual(["minimum static head"]);
  });
});
