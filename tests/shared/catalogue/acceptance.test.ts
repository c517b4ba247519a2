import { describe, expect, it } from "vitest";
import { cell, refusal, remarks } from "../../support/cells.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";

const POINTS = [
  [180, 31.9],
  [220, 29.1],
  [250, 26.4],
  [280, 23.2],
  [310, 19.6],
] as const;

function figure(answer: unknown, name: string): unknown {
  const [names = [], values = []] = answer as readonly (readonly unknown[])[];
  const at = names.findIndex((heading) => String(heading).startsWith(name));
  if (at < 0) throw new Error(`no ${name} in ${names.join("; ")}`);
  return values[at];
}

describe("an acceptance test in cells", () => {
  const headed = [["flow", "head", "speed"], ...POINTS.map((point) => [...point, 1468])];
  const call = (
    points: readonly (readonly (string | number | null)[])[],
    rated: number | null,
    ...more: readonly (number | null)[]
  ) => [points, 250, 25.8, "2B", more[0] ?? null, more[1] ?? null, rated, "METRIC"] as const;

  it("carries the points to the rated speed", () => {
    const of = publishedCases("8-acceptance", "station").find(({ id }) => id === "s8-acceptance-011");
    if (of === undefined) throw new Error("no case");
    const answer = cell("ACCEPTANCETEST", ...call(headed, 1450));
    expectPublished(figure(answer, "head at the guaranteed flow") as number, "head_at_250", of);
    expectPublished(figure(answer, "flow at the guaranteed head") as number, "flow_at_25.8", of);
    expect(figure(answer, "verdict")).toBe("met");
  });

  it("takes the points in any order, and a test at the rated speed without speeds", () => {
    const answer = cell("ACCEPTANCETEST", ...call(headed, 1450));
    const [heading, ...rows] = headed;
    expect(cell("ACCEPTANCETEST", ...call([heading as string[], ...rows.reverse()], 1450))).toEqual(answer);
    // 26.4 m at 250 m³/h is a point of the test itself.
    expect(
      figure(
        cell(
          "ACCEPTANCETEST",
          ...call(
            POINTS.map((point) => [...point]),
            null,
          ),
        ),
        "head at",
      ),
    ).toBeCloseTo(26.4, 9);
  });

  it("asks for the speeds where some are missing, and for the rated one", () => {
    const some = [["flow", "head", "speed"], ...POINTS.map((point, i) => [...point, i === 2 ? null : 1468])];
    expect(refusal("ACCEPTANCETEST", ...call(some, 1450))).toMatch(/test points is missing.*every point/i);
    expect(refusal("ACCEPTANCETEST", ...call(headed, null))).toMatch(/rated speed is missing/i);
    expect(refusal("ACCEPTANCETEST", ...call(headed, 0))).toMatch(/rated speed/i);
    expect(remarks("ACCEPTANCETEST", ...call(headed, 1000))).toContain("check speed-far-from-curve");
  });
});
