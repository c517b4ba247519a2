import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Comparison,
  excessOf,
  stateOf,
  VERDICT_STATES,
  VERDICT_SUBJECTS,
  verdictsOf,
} from "../../../src/judgement/verdict.ts";

const grey: Comparison = { found: 168.7, limit: 150, mustBe: "at most", broken: "fail", held: "pass" };

describe("the state of a figure against its limit", () => {
  // By definition of the states; the figures are those of NPS 16 grey iron, ASME B16.1 Class 125, 150 psi.
  it.each([
    ["above a rating", grey, "fail"],
    ["at the rating", { ...grey, found: 150 }, "pass"],
    ["at the rating but for rounding", { ...grey, found: 150 * (1 + 1e-12) }, "pass"],
    ["a billionth and more above", { ...grey, found: 150 * (1 + 1e-8) }, "fail"],
    ["above a recommendation", { ...grey, broken: "check" }, "check"],
    ["above at the careful end alone", { ...grey, atBest: 149 }, "check"],
    ["above at both ends", { ...grey, atBest: 151 }, "fail"],
    ["held, where an assumed figure decides", { ...grey, found: 100, held: "check" }, "check"],
    ["below what it must reach", { ...grey, found: 149.9, mustBe: "at least" }, "fail"],
    ["nothing against nothing", { ...grey, found: 0, limit: 0 }, "pass"],
    ["below zero against zero", { ...grey, found: -0.01, limit: 0, mustBe: "at least" }, "fail"],
  ] as const)("%s", (_, comparison, state) => {
    expect(stateOf(comparison)).toBe(state);
  });

  it("stated anywhere between its assumed ends never becomes worse, and never passes what failed at best", () => {
    const side = fc.constantFrom("at most" as const, "at least" as const);
    const figure = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(
        figure,
        figure,
        figure,
        fc.double({ min: 0, max: 1, noNaN: true }),
        side,
        (a, b, limit, share, mustBe) => {
          const [low, high] = [Math.min(a, b), Math.max(a, b)];
          const [found, atBest] = mustBe === "at most" ? [high, low] : [low, high];
          const facts = { limit, mustBe, broken: "fail", held: "pass" } as const;
          const assumed = VERDICT_STATES.indexOf(stateOf({ ...facts, found, atBest }));
          const stated = VERDICT_STATES.indexOf(stateOf({ ...facts, found: low + share * (high - low) }));
          if (assumed === VERDICT_STATES.indexOf("fail")) expect(stated).toBe(assumed);
          if (assumed === VERDICT_STATES.indexOf("pass")) expect(stated).toBe(assumed);
        },
      ),
    );
  });

  it("lies beyond its limit by a share of the greater of both", () => {
    expect(excessOf(grey)).toBeCloseTo(18.7 / 168.7, 12);
    expect(excessOf({ ...grey, mustBe: "at least" })).toBeCloseTo(-18.7 / 168.7, 12);
  });
});

describe("the verdict on a subject", () => {
  const judged = (subject: (typeof VERDICT_SUBJECTS)[number], state: (typeof VERDICT_STATES)[number], excess = 0) => ({
    subject,
    state,
    excess,
    isAdvice: false,
  });

  it("is the worst of its judgements, in the order fail, open, check, pass", () => {
    const all = [judged("head", "pass"), judged("head", "check"), judged("head", "open"), judged("head", "fail")];
    for (let left = all.length; left > 0; left -= 1) {
      expect(verdictsOf(all.slice(0, left))[0]?.state).toBe(all[left - 1]?.state);
    }
  });

  it("names the judgement furthest beyond its limit, and counts the others of its state", () => {
    const [verdict] = verdictsOf([
      judged("npsh", "fail", 0.1),
      judged("npsh", "fail", 0.4),
      judged("npsh", "fail", 0.2),
    ]);
    expect(verdict?.deciding.excess).toBe(0.4);
    expect(verdict?.others).toBe(2);
    expect(verdictsOf([judged("npsh", "pass"), judged("npsh", "pass")])[0]?.others).toBe(0);
  });

  it("passes by a limit before a recommendation, however near that is", () => {
    const advice = { ...judged("npsh", "pass", -0.01), isAdvice: true };
    expect(verdictsOf([advice, judged("npsh", "pass", -0.5)])[0]?.deciding.excess).toBe(-0.5);
    expect(verdictsOf([advice])[0]?.deciding).toBe(advice);
  });

  it("comes in the order of the calculation, and not at all where nothing was judged", () => {
    const reversed = [...VERDICT_SUBJECTS].reverse().map((subject) => judged(subject, "pass"));
    expect(verdictsOf(reversed).map(({ subject }) => subject)).toEqual(VERDICT_SUBJECTS);
    expect(verdictsOf([judged("pipe", "open")])).toHaveLength(1);
  });
});
