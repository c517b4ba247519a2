import { expect, it } from "vitest";
import { append } from "../../../src/basis/append.ts";

it("adds a list of any length, in order, to the one it is given", () => {
  const all = [-2, -1];
  append(
    all,
    Array.from({ length: 1_000_000 }, (_, i) => i),
  );
  expect(all.length).toBe(1_000_002);
  expect([all[0], all[1], all[2], all.at(-1)]).toEqual([-2, -1, 0, 999_999]);
});
