import { expect, it } from "vitest";
import { speltOtherwise } from "../../../shared/catalogue/spelt-otherwise.ts";

it("texts that American spelling changes are found wherever they stand in a call, each once", () => {
  const table = [
    ["pump", "seal"],
    ["Harbour 6", "centre"],
    ["Harbour 6", " centre "],
    ["Harbour 6", 400],
    ["Quay 6", "Harbour 6"],
    [{ error: "#N/A" }, null],
  ] as const;
  expect(speltOtherwise([1200, table, "Grey iron", null, "SI"])).toEqual(["Harbour 6", "centre", "Grey iron"]);
  expect(speltOtherwise(["gray iron", [["Quay 6", 12]]])).toEqual([]);
});
