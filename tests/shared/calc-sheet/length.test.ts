import { expect, it } from "vitest";
import { convertNumbers } from "../../../taskpane/pane/convert-numbers.ts";
import { dutyText, QUARRY } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";
import { OWN_SETTINGS } from "../../support/printed-duties.ts";

const LIFTED = dutyText({ pumpLevel: "6 ft" });

// House choice: what one person reads before signing.
it.each([
  ["the quarry's pump with all that belongs to it", QUARRY, 8],
  ["the same by settings of its own", OWN_SETTINGS, 8],
  ["head and suction only", dutyText(), 2],
  ["the same with a suction lift", LIFTED, 2],
  ["the same in metric units", convertNumbers(LIFTED, "METRIC"), 2],
] as const)("%s prints on no more pages than a reader has patience for, on either paper", (_, typed, most) => {
  for (const paper of ["A4", "Letter"]) {
    const { print } = sheetsOf({ ...typed, fields: { ...typed.fields, paper } }).duty;
    expect(print?.scale).toBe(80);
    expect((print?.breaks?.length ?? 0) + 1, paper).toBeLessThanOrEqual(most);
  }
});
