import { expect, it } from "vitest";
import { dutyText, QUARRY } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";

// House choice: what one person reads before signing.
it.each([
  ["the quarry's pump with all that belongs to it", QUARRY, 8],
  ["head and suction only", dutyText(), 2],
] as const)("%s prints on no more pages than a reader has patience for, on either paper", (_, typed, most) => {
  for (const paper of ["A4", "Letter"]) {
    const { print } = sheetsOf({ ...typed, fields: { ...typed.fields, paper } }).duty;
    expect(print?.scale).toBe(80);
    expect((print?.breaks?.length ?? 0) + 1, paper).toBeLessThanOrEqual(most);
  }
});
