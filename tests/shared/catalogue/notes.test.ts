import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import {
  ATMOSPHERE,
  DENSITY,
  INUNITS,
  LIQUIDS,
  VAPORPRESSURE,
  VISCOSITY,
} from "../../../shared/catalogue/entries/liquid-and-site.ts";
import { notesEntry } from "../../../shared/catalogue/entries/notes.ts";
import { defineEntry } from "../../../shared/catalogue/entry.ts";
import { text } from "../../../shared/catalogue/parameter.ts";
import type { Argument, Cell } from "../../../shared/cells/cell.ts";
import { succeed } from "../../../src/basis/result.ts";

/** Answers with the shape of the range it was given, and finds nothing. */
const seen: (readonly (readonly Cell[])[])[] = [];
const rangeReader = defineEntry({
  id: "RANGEREADER",
  group: "Lists",
  summary: "",
  method: "",
  cites: [{ source: "house", at: "test" }],
  parameters: {
    cells: {
      takes: "range",
      about: "",
      example: "",
      read: (cells: readonly (readonly Cell[])[]) => {
        seen.push(cells);
        return succeed(cells);
      },
    },
    word: text({ about: "", example: "" }, (given) => succeed(given)),
  },
  unitless: true,
  answer: { kind: "text", name: "" },
  examples: [{ args: [], answer: "", source: "" }],
  run: () => succeed("read"),
});

const notes = notesEntry([DENSITY, VISCOSITY, VAPORPRESSURE, ATMOSPHERE, INUNITS, LIQUIDS, rangeReader]);

function notesOf(...args: readonly Argument[]): Cell | readonly (readonly Cell[])[] {
  const outcome = call(notes, args);
  return outcome.ok ? outcome.value : outcome.error;
}

describe("NOTES", () => {
  it.each([["DENSITY"], ["density"], ["DUTY.DENSITY"], [" =duty.Density "]])("knows %s", (name) => {
    expect(notesOf(name, "water")).toBe("");
  });

  it("gives each finding of the call on a line, in the units of that call", () => {
    const text = notesOf("DENSITY", "water", 250, "SI") as string;
    expect(text.split("\n")).toHaveLength(2);
    expect(text).toMatch(/^Check: Water at 250 °C has a vapour pressure/);
    expect(notesOf("DENSITY", "water", "250 degC")).toContain("482 °F");
  });

  it("says the error of a call that is one", () => {
    expect(notesOf("DENSITY", "water", 20)).toBe("Error: Water freezes at 32 °F; a temperature of 20 °F was given.");
    expect(notesOf("DENSITY")).toMatch(/^Error: Liquid is left out/);
    expect(notesOf("DENSITY", "water", 60, "US", 1)).toMatch(/^Error: DENSITY takes at most 3 arguments/);
    expect(notesOf("DENSITY", "water", { error: "#DIV/0!" })).toBe("Error: #DIV/0!");
  });

  it("is #N/A with the nearest names for an unknown function", () => {
    expect(notesOf("DENSTY", "water")).toMatchObject({ error: "#N/A", message: expect.stringContaining("DENSITY") });
    expect(notesOf("NOTES", "DENSITY")).toMatchObject({ error: "#N/A" });
    expect(notesOf()).toMatchObject({ error: "#VALUE!" });
  });

  it("passes ranges on untouched", () => {
    const range = [
      ["a", 1],
      [null, { error: "#N/A" }],
    ];
    seen.length = 0;
    expect(notesOf("RANGEREADER", [["a", 1, null]], "x")).toBe("");
    expect(seen).toEqual([[["a", 1, null]]]);
    // An error inside a range that is read whole is the error of the call.
    expect(notesOf("RANGEREADER", range, "x")).toBe("Error: #N/A");
  });

  it("gathers the findings of a spilled call, each once, and no more than a cell can hold", () => {
    expect(notesOf("DENSITY", "water", [[0], [0], [20]], "SI")).toMatch(/^Check: [^\n]*$/);
    const hot = Array.from({ length: 400 }, (_, i) => [110 + i / 10]);
    const text = notesOf("DENSITY", "water", hot, "SI") as string;
    expect(text.split("\n")).toHaveLength(61);
    expect(text).toMatch(/… and 340 more$/);
    expect(text.length).toBeLessThan(32_767);
  });

  it("spills over a column of function names", () => {
    expect(notesOf([["DENSITY"], ["VISCOSITY"]], "water")).toEqual([[""], [""]]);
  });
});
