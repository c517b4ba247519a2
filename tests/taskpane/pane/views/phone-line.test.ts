import { describe, expect, it } from "vitest";
import { type DutyText, EMPTY_DUTY } from "../../../../shared/duty/duty-text.ts";
import { readPhoneLine } from "../../../../shared/duty/phone-line/read-phone-line.ts";
import type { PaneContext } from "../../../../taskpane/pane/context.ts";
import { next, openingState, type PaneEvent, type PaneState } from "../../../../taskpane/pane/state.ts";
import { phoneLineView } from "../../../../taskpane/pane/views/phone-line.ts";
import { markup } from "../../../support/markup.ts";

const SENTENCE = "1000 gpm, lift 12 ft, up 60 ft, 20 ft of 8in suction hose, 900 ft 8in HDPE DR17";

function after(events: readonly PaneEvent[], duty: DutyText = EMPTY_DUTY): PaneState {
  return events.reduce(next, openingState(duty));
}

function shown(state: PaneState): string {
  return markup(phoneLineView({ state } as PaneContext)).replace(/\s+/g, " ");
}

/** Reading what stands in the box; it is typed into an empty one. */
function read(text: string, of = ""): PaneEvent {
  return { type: "phone-read", of, read: { line: readPhoneLine(text, "US"), unitSet: "US" } };
}
const ACCEPT: PaneEvent = { type: "phone-accepted" };

describe("the phone line", () => {
  it("has a box by name, and changes no box of the duty while it is typed and read", () => {
    const state = after([{ type: "phone-typed", text: SENTENCE }, read(SENTENCE, SENTENCE)]);
    expect(state.duty).toBe(EMPTY_DUTY);
    expect(state.past).toEqual([]);
    expect(shown(openingState())).toContain("<label for=duty-phone>");
    expect(shown(openingState())).not.toContain("Accept");
  });

  it("shows each part with the box it goes to and the value as read", () => {
    const text = shown(after([read(SENTENCE)]));
    expect(text).toContain("5 parts understood; nothing is filled in before you accept.");
    for (const words of [
      "<b>Flow</b> 1000 gpm: 1,000 US gpm",
      "<b>Pump level</b> 12 ft",
      "levels are counted from the source, at 0",
      "<b>Delivery level</b> 12 ft + 60 ft: 72 ft",
      "<b>Suction line, row 1</b>",
      "<b>Discharge line, row 1</b>",
    ]) {
      expect(text).toContain(words);
    }
    expect(text).not.toContain("Boxes that hold something now");
  });

  it("keeps what was not understood letter for letter, with what would do as buttons", () => {
    const text = shown(after([read("63 l/s, 600 m DN200 PN10 PE")]));
    expect(text).toContain("1 part understood, 1 not;");
    expect(text).toMatch(/<q class="said-text">600 m DN200 PN10 PE<\/q> <strong class="said-not">not understood:/);
    expect(text).toMatch(/<button[^>]*> 600 m 200mm HDPE SDR17 PE100 <\/button>/);
  });

  it("offers nothing to accept where nothing is understood", () => {
    expect(shown(after([read("hello")]))).toContain("0 parts understood, 1 not; there is nothing to fill in.");
  });

  it("fills the boxes once accepted, as one step back, and is empty again", () => {
    const state = after([read(SENTENCE), ACCEPT]);
    expect(state.duty.fields).toMatchObject({ flow: "1000 gpm", sourceLevel: "0", pumpLevel: "12 ft" });
    expect(state.duty.dischargeLine).toEqual([{ pipe: "8in HDPE DR17", length: "900 ft", fittings: "" }]);
    expect(state.past.length).toBe(1);
    expect(state.phone).toEqual({ text: "" });
    expect(state.notice).toEqual({ kind: "changed", text: "Filled the boxes from the phone line." });
    expect(next(state, { type: "undone" }).duty).toBe(EMPTY_DUTY);
  });

  it("says before what a box holds now and what it would hold, and lets all others be", () => {
    const duty = { ...EMPTY_DUTY, fields: { ...EMPTY_DUTY.fields, flow: "800", npshRequired: "9" } };
    expect(shown(after([read("1000 gpm")], duty))).toContain("Flow: 800 US gpm, now 1000 gpm");
    const state = after([read("1000 gpm"), ACCEPT], duty);
    expect(state.duty.fields).toMatchObject({ flow: "1000 gpm", npshRequired: "9" });
  });

  it("names rows that would go where the sentence says all of a line", () => {
    const duty = { ...EMPTY_DUTY, dischargeLine: [{ pipe: "6in sch40", length: "50", fittings: "1 gate" }] };
    expect(shown(after([read("900 ft 8in HDPE DR17")], duty))).toContain("6in sch40");
  });

  it("converts plain numbers of the duty where the sentence is in another unit set, and says so", () => {
    const duty = { ...EMPTY_DUTY, fields: { ...EMPTY_DUTY.fields, npshRequired: "10" } };
    expect(shown(after([read("63 l/s, suction lift 4 m")], duty))).toContain("Units: US, now SI");
    const state = after([read("63 l/s, suction lift 4 m"), ACCEPT], duty);
    // 10 ft of 0.3048 m.
    expect(state.duty).toMatchObject({ unitSet: "SI", fields: { npshRequired: "3.048", flow: "63 l/s" } });
  });

  it("is left as typed, and read no more once it is changed", () => {
    expect(after([read("1000 gpm"), { type: "phone-left" }]).phone).toEqual({ text: "1000 gpm" });
    expect(after([read("1000 gpm"), { type: "phone-typed", text: "1000 gp" }]).phone).toEqual({ text: "1000 gp" });
  });

  it("loses nothing typed while it was being read, and is read again in another unit set", () => {
    const typed = after([{ type: "phone-typed", text: "1000 gpm, up" }, read("1000 gpm", "1000 gpm")]);
    expect(typed.phone).toEqual({ text: "1000 gpm, up" });
    const other = after([read("flow 1000"), { type: "units-picked", unitSet: "SI" }]);
    expect(shown(other)).not.toContain("Accept");
    expect(next(other, ACCEPT)).toBe(other);
  });
});
