import { describe, expect, it } from "vitest";
import { type DutyText, EMPTY_OTHER_PUMP } from "../../../../shared/duty/duty-text.ts";
import type { PaneContext } from "../../../../taskpane/pane/context.ts";
import { stationPumpsView } from "../../../../taskpane/pane/views/station-pumps.ts";
import { workedOut } from "../../../../taskpane/pane/worked.ts";
import { QUARRY } from "../../../support/duty-of.ts";
import { markup } from "../../../support/markup.ts";

function shown(duty: DutyText): string {
  const context = { state: { duty }, worked: workedOut(duty) } as unknown as PaneContext;
  return markup(stationPumpsView(context)).replace(/\s+/g, " ");
}

describe("what the pumps of a station do, in the pane", () => {
  it("shows nothing of one pump by itself", () => {
    expect(shown(QUARRY).trim()).toBe("");
  });

  it("names each of unlike pumps with what it does, and what the rest does when one stops", () => {
    const other = { ...EMPTY_OTHER_PUMP, ...QUARRY.pump, name: "stand-in", speedRatio: "0.6" };
    const text = shown({ ...QUARRY, otherPumps: [other] });
    // 0.6 times the speed leaves 0.36 of the head: far below the header.
    expect(text).toMatch(/<th scope="row">stand-in<\/th>.*held shut/);
    expect(text).toMatch(/When a pump stops.*<th scope="row">stand-in stopped<\/th>/);
  });
});
