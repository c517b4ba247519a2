import { describe, expect, it } from "vitest";
import { savedMark } from "../../../workbench/keep/saved-mark.ts";

describe("what is known to be saved", () => {
  it("is nothing until the user has seen the file, and then what was in it", () => {
    const mark = savedMark();
    expect(mark.isUnsaved()).toBe(false);
    mark.edited();
    expect(mark.isUnsaved()).toBe(true);
    mark.handedOver();
    expect(mark.isUnsaved()).toBe(true);
    mark.arrived();
    expect(mark.isUnsaved()).toBe(false);

    mark.edited();
    mark.handedOver();
    mark.edited();
    mark.arrived();
    expect(mark.isUnsaved()).toBe(true);
  });

  it.each([true, false])("is as told where other work comes, whatever was handed over before (unsaved: %s)", (is) => {
    const mark = savedMark();
    mark.edited();
    mark.handedOver();
    mark.restart(is);
    expect(mark.isUnsaved()).toBe(is);
    mark.arrived();
    expect(mark.isUnsaved()).toBe(is);
    mark.edited();
    expect(mark.isUnsaved()).toBe(true);
  });
});
