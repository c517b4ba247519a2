import { describe, expect, it } from "vitest";
import { saveDuty } from "../../shared/duty/saved.ts";
import { startPaneDuty } from "../../workbench/pane-duty.ts";
import { QUARRY } from "../support/duty-of.ts";

const AT = 1_800_000_000_000;

describe("the duty of the pane before the grid is there", () => {
  it("opens as it was kept with the workbook, unless the pane keeps a newer one", () => {
    const duty = startPaneDuty({ text: saveDuty(QUARRY), at: AT }, false);
    expect(duty.opening()?.fields.flow).toBe(QUARRY.fields.flow);
    expect(startPaneDuty({ text: saveDuty(QUARRY), at: 0 }, false).opening()).toBeUndefined();
    expect(startPaneDuty(undefined, false).opening()).toBeUndefined();
  });

  it("is kept with the workbook though it was typed before there was one", () => {
    const duty = startPaneDuty(undefined, false);
    duty.changed({ ...QUARRY, fields: { ...QUARRY.fields, flow: "777" } });
    let told = 0;
    duty.follow(() => {
      told += 1;
    });
    expect(told).toBe(1);
    expect(duty.now()?.text).toContain("777");
    expect(duty.mark.isUnsaved()).toBe(true);
    duty.changed(QUARRY);
    expect(told).toBe(2);
  });

  it("asks nobody to keep what nobody typed", () => {
    const duty = startPaneDuty({ text: saveDuty(QUARRY), at: AT }, false);
    duty.follow(() => expect.unreachable());
    expect(duty.mark.isUnsaved()).toBe(false);
    expect(startPaneDuty(undefined, true).mark.isUnsaved()).toBe(true);
  });
});
