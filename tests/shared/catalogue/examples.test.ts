import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import { formulaText } from "../../../shared/help/formula-text.ts";

const EXAMPLES = CATALOGUE.flatMap((entry) =>
  entry.examples.map((example) => ({ entry, example, formula: formulaText(entry, example.args) })),
);

// Each example states its source beside it in the catalogue, and the help pages print it.
describe("the worked examples of the help pages", () => {
  it("are there for every function", () => {
    expect(CATALOGUE.length).toBeGreaterThan(0);
    expect(new Set(EXAMPLES.map(({ entry }) => entry.id)).size).toBe(CATALOGUE.length);
  });

  it.each(EXAMPLES)("$formula", ({ entry, example }) => {
    const outcome = call(entry, example.args);
    if (!outcome.ok) throw new Error(outcome.error.message ?? outcome.error.error);
    const { value } = outcome;
    const isSpilled = Array.isArray(value);
    expect(isSpilled, "a spilled answer needs `part`, another takes none").toBe(example.part !== undefined);
    const [row, column] = example.part ?? [0, 0];
    const cell = isSpilled ? value[row]?.[column] : value;
    if (typeof example.answer === "string") {
      expect(cell).toBe(example.answer);
      return;
    }
    expect(example.within, "a number needs a tolerance").toBeGreaterThanOrEqual(0);
    expect(typeof cell).toBe("number");
    expect(Math.abs((cell as number) - example.answer), `answers ${String(cell)}`).toBeLessThanOrEqual(
      example.within ?? 0,
    );
    // A tolerance wider than a tenth of the answer would let almost anything pass.
    expect(example.within ?? 0).toBeLessThanOrEqual(Math.max(Math.abs(example.answer) * 0.1, 1e-9));
  });

  it.each(EXAMPLES)("$formula says where its answer comes from", ({ example }) => {
    expect(example.source.trim().length).toBeGreaterThan(3);
  });
});
