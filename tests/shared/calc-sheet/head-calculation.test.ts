import { describe, expect, it } from "vitest";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import { type DutyText, EMPTY_DUTY } from "../../../shared/duty/duty-text.ts";
import { headAndSuction } from "../../../shared/package/head-and-suction.ts";
import { workedDuty } from "../../../shared/package/worked-duty.ts";
import { workedHead } from "../../../shared/package/worked-head.ts";
import { AUDITED } from "../../support/audited-duties.ts";
import { dutyText, QUARRY } from "../../support/duty-of.ts";
import { hostilePlaces, UNREADABLE } from "../../support/hostile-places.ts";
import { readTooEarly } from "../../support/plan-order.ts";

/** Head and suction worked out by themselves, and as they stand in the whole; both with what was remarked. */
function bothOf(typed: DutyText) {
  const { duty } = decodeDuty(typed);
  const [alone, whole] = [workedHead(duty), workedDuty(duty)];
  const read = (of: typeof alone) => {
    const { findings, ...figures } = headAndSuction(duty, of);
    return { ...figures, findings: [...alone.findings.keys()].map((key) => [key, findings.get(key)]) };
  };
  return { alone: read(alone), whole: read(whole), plan: alone.plan };
}

const { pump, ...WITHOUT_PUMP } = QUARRY;

const DUTIES = [...AUDITED, { name: "nothing stated", duty: EMPTY_DUTY }, { name: "no pump", duty: dutyText() }];

// One calculation, said once: what is shown first is not another than what the sheet is written from.
describe("head and suction, worked out before the rest", () => {
  it.each(DUTIES)("come to what they are in the whole: $name", ({ duty }) => {
    const { alone, whole, plan } = bothOf(duty);
    expect(alone).toEqual(whole);
    expect(readTooEarly(plan)).toEqual([]);
  });

  it("are what they are in the whole whichever box cannot be read", () => {
    for (const { key, holding } of hostilePlaces(WITHOUT_PUMP)) {
      const { alone, whole } = bothOf(holding(UNREADABLE));
      expect(alone, key).toEqual(whole);
    }
  });

  it("have figures where enough is stated", () => {
    // By hand: from 0 to 100 ft, by a pump 2 ft below its source.
    const { alone } = bothOf(dutyText());
    expect(alone.staticHead).toBeCloseTo(100 * 0.3048, 9);
    expect(alone.suctionLift).toBeCloseTo(-2 * 0.3048, 9);
    expect(alone.npshAvailable).toBeTypeOf("number");
    expect(alone.systemCurve).toHaveLength(13);
  });
});
