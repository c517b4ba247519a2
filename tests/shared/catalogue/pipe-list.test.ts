import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { entryNamed } from "../../../shared/catalogue/catalogue.ts";
import type { Argument, Cell } from "../../../shared/cells/cell.ts";

function answer(id: string, ...args: readonly Argument[]) {
  const entry = entryNamed(id);
  if (entry === undefined) throw new Error(id);
  return call(entry, args);
}

function table(...args: readonly Argument[]): readonly (readonly Cell[])[] {
  const outcome = answer("PIPES", ...args);
  if (!outcome.ok || !Array.isArray(outcome.value)) throw new Error("no table");
  return outcome.value;
}

describe("BORE", () => {
  it("spills over a column and keeps each refusal in its row", () => {
    const outcome = answer("BORE", [["6in sch40"], ["6in sch45"], ["6in"]]);
    if (!outcome.ok) throw new Error("refused");
    const [first, second, third] = (outcome.value as readonly (readonly Cell[])[]).map((row) => row[0]);
    expect(first).toBeCloseTo(6.065, 9);
    expect(second).toMatchObject({ error: "#N/A" });
    expect(third).toMatchObject({ error: "#VALUE!" });
  });

  it.each([
    ["7in sch40", "#N/A", "Pipe “7in sch40” is not known; the nearest"],
    ["6in", "#VALUE!", 'Pipe “6in” is a nominal size without a family, which leaves its bore open; write "6in sch40"'],
    ["sch40", "#VALUE!", "Pipe “sch40” names a family without a size"],
    ["ID 154.1 mm", "#VALUE!", "Pipe “ID 154.1 mm” states no roughness"],
    [6, "#N/A", "Pipe “6” is not known"],
    [true, "#VALUE!", "Pipe was given as TRUE"],
    [null, "#VALUE!", "Pipe is left out or blank"],
  ])("refuses %j with %s in plain words", (given, error, words) => {
    const outcome = answer("BORE", given);
    if (outcome.ok) throw new Error("answered");
    expect(outcome.error.error).toBe(error);
    expect(outcome.error.message).toContain(words);
  });
});

describe("PIPES", () => {
  it("spills every pipe under a header with the units of the reader", () => {
    const rows = table();
    expect(rows[0]).toEqual([
      "name",
      "outside diameter, in",
      "wall, in",
      "inside diameter, in",
      "roughness, in",
      "standard",
      "source of roughness",
    ]);
    expect(rows).toHaveLength(2383);
    expect(rows.find(([name]) => name === "6in layflat")?.slice(1, 3)).toEqual(["", ""]);
  });

  it("lists DN sizes in millimetres to readers of SI", () => {
    const row = table("sch40", "SI").find(([name]) => name === "DN150 sch40");
    // Source: ASME B36.10M, NPS 6 schedule 40: 6.625 in and 0.280 in, at 25.4 mm.
    expect(row?.slice(1, 4)).toEqual([6.625 * 25.4, 0.28 * 25.4, 6.065 * 25.4].map((mm) => expect.closeTo(mm, 9)));
  });

  it("refuses a family it does not know", () => {
    const outcome = answer("PIPES", "sch45");
    if (outcome.ok) throw new Error("answered");
    expect(outcome.error).toMatchObject({ error: "#N/A" });
    expect(outcome.error.message).toContain("sch40");
  });
});
