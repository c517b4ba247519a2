import { describe, expect, it } from "vitest";
import { remembered } from "../../../src/basis/remembered.ts";

describe("a function whose answers are remembered", () => {
  const counted = () => {
    let times = 0;
    const of = remembered((list: readonly number[], by: number, to: number | null) => {
      times += 1;
      return list.map((n) => n * by + (to ?? 0));
    });
    return { of, times: () => times };
  };

  it("is worked once for the same object and figures, and gives the same answer again", () => {
    const { of, times } = counted();
    const list = [1, 2];
    expect(of(list, 3, null)).toEqual([3, 6]);
    expect(of(list, 3, null)).toBe(of(list, 3, null));
    expect(times()).toBe(1);
  });

  it.each([
    ["another figure", [4, null]],
    ["another figure in a later place", [3, 1]],
    ["nothing beside 0", [3, 0]],
    ["0 beside less than 0", [-0, null]],
  ] as const)("is worked again for %s", (_, [by, to]) => {
    const { of, times } = counted();
    const list = [1, 2];
    of(list, by === 0 ? 0 : 3, null);
    expect(of(list, by, to)).toEqual(list.map((n) => n * by + (to ?? 0)));
    expect(times()).toBe(2);
  });

  it("is worked again for another object, though it holds the same", () => {
    const { of, times } = counted();
    of([1, 2], 3, null);
    of([1, 2], 3, null);
    expect(times()).toBe(2);
  });

  it("answers rightly however many figures it was asked for", () => {
    const { of } = counted();
    const list = [1, 2];
    for (const round of [1, 2])
      for (let by = 0; by < 100; by += 1) expect([round, by, of(list, by, null)]).toEqual([round, by, [by, 2 * by]]);
  });
});
