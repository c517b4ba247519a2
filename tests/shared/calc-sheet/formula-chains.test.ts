import { expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { AUDITED } from "../../support/audited-duties.ts";
import { dutyRead } from "../../support/duty-of.ts";
import { longestChain } from "../../support/longest-chain.ts";

// Whoever follows a figure by clicking passes three of our functions at most before he stands at inputs.
it.each(AUDITED)("a sheet chains no more than three of our functions: $name", ({ duty }) => {
  const longest = longestChain(dutyPlan(dutyRead(duty)));
  expect(longest).toBeGreaterThan(0);
  expect(longest).toBeLessThanOrEqual(3);
});
