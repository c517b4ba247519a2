import { describe, expect, it } from "vitest";
import { pipesOf } from "../../../src/pipework/pipe-name.ts";
import { type PipeSizeInputs, pipeSize } from "../../../src/pipework/pipe-size.ts";
import { factsOf } from "../../support/facts.ts";
import { COLD_WATER, pipeOf } from "../../support/pipes.ts";

const sizes = [0.2, 0.1, 0.15].map((bore) => pipeOf(bore, 4.5e-5));
const area = (Math.PI / 4) * 0.15 ** 2;
const base: PipeSizeInputs = {
  flow: 2 * area,
  family: "made up",
  pipes: sizes,
  maxVelocity: 2.0001,
  maxGradient: null,
  liquid: COLD_WATER,
};

function size(change: Partial<PipeSizeInputs> = {}): string {
  const found = pipeSize({ ...base, ...change });
  return found.ok ? found.value.name : found.findings.map(({ code, subject }) => `${code} ${subject}`).join();
}

describe("pipe size", () => {
  it("is the smallest bore within the velocity", () => {
    expect(size()).toBe("ID 0.15 m");
    expect(size({ maxVelocity: 1.9999 })).toBe("ID 0.2 m");
    expect(size({ flow: 0.001 })).toBe("ID 0.1 m");
  });

  // 2 m/s in 150 mm steel with cold water: f about 0.0166 (Moody chart), 0.0166/0.15 × 0.2039 m = 2.26 m in 100 m.
  it("is the smallest bore within the gradient too", () => {
    expect(size({ maxGradient: 0.0235 })).toBe("ID 0.15 m");
    expect(size({ maxGradient: 0.0215 })).toBe("ID 0.2 m");
  });

  it("says so where none will do, with the largest size and how it runs", () => {
    const found = pipeSize({ ...base, flow: 1 });
    expect(found).toMatchObject({
      ok: false,
      findings: [{ code: "no-size-meets", given: "made up", facts: { largest: { pipe: "ID 0.2 m" } } }],
    });
    expect(factsOf(found, "no-size-meets").largest?.velocity.value).toBeCloseTo(31.83099, 5);
  });

  it.each([
    { why: "no flow", change: { flow: 0 }, say: "out-of-range flow" },
    { why: "a velocity of nothing", change: { maxVelocity: 0 }, say: "out-of-range maximum velocity" },
    { why: "a gradient of nothing", change: { maxGradient: 0 }, say: "out-of-range maximum gradient" },
  ])("refuses $why", ({ change, say }) => expect(size(change)).toBe(say));

  it("works on a family of the list", () => {
    const pipes = pipesOf("sch40");
    expect(pipes.ok && size({ pipes: pipes.value })).toBe("6in sch40");
  });
});
